/** A layout as pages, and as an SVG file in mm. */
import { clothWidth } from '../lay/index.ts';
import type { LayPlan, LayPlanRow, LayToScale, PaperHead } from '../panels/index.ts';
import { layPages, layPicture, type DrawnLay, type LayMark } from '../pictures/index.ts';
import type { ShowAs } from '../quantities/index.ts';
import type { Found } from './lay-found.ts';
import { cuttingOrder, drawingOf, shortLength } from './lay-view.ts';

const SCALES = [1, 2, 5, 10] as const;

export function scalesOf(drawing: DrawnLay): readonly { readonly scale: number; readonly label: string }[] {
  return SCALES.map((scale) => {
    const pages = layPages(drawing, scale).tiles.length + 1;
    return { scale, label: scale === 1 ? `full size: ${pages} pages` : `one to ${scale}: ${pages} pages` };
  });
}

export function planOf(found: Found, as: ShowAs, name: string, sentences: readonly string[], head: PaperHead): LayPlan {
  const drawing = drawingOf(found, as, { points: true });
  const { fold } = found.cloth;
  const folded = fold === 'lengthwise' || fold === 'partly';
  const text = ([along, across]: readonly [number, number]): readonly [string, string] => [shortLength(along, as), shortLength(folded ? clothWidth(found.cloth) - across : across, as)];
  const rows = cuttingOrder(found).map((id): LayPlanRow => {
    const piece = drawing.pieces[id]!;
    const [a, b] = piece.points!;
    return { order: piece.order, name: piece.name, count: piece.count, a: text(a), b: text(b) };
  });
  return { ...head, what: 'lay plan', name, sentences, drawing, rows, from: [fold === 'crosswise' ? 'from the fold' : 'from the cut end', folded ? 'from the upper edge, away from the fold' : 'from the lower selvedge'] };
}

export const toScaleOf = (found: Found, as: ShowAs, name: string, sentences: readonly string[], head: PaperHead, scale: number): LayToScale =>
  ({ ...head, what: 'lay to scale', name, sentences, drawing: drawingOf(found, as), scale });

/** Black on white, a line of 0.5 mm for what is cut. */
const STYLE: Readonly<Record<string, string>> = {
  'lay-cloth': 'fill="#fff" stroke="#999" stroke-width="0.3"', 'lay-odd': 'fill="none" stroke="#999" stroke-width="0.3" stroke-dasharray="3 3"',
  'lay-flaw': 'fill="#eee" stroke="#000" stroke-width="0.4" stroke-dasharray="2 2"', 'lay-selvedge': 'fill="none" stroke="#000" stroke-width="1"',
  'lay-fold': 'fill="none" stroke="#000" stroke-width="1" stroke-dasharray="9 4"', 'lay-cut': 'fill="none" stroke="#000" stroke-width="0.6" stroke-dasharray="8 3 2 3"',
  'lay-left': 'fill="none" stroke="#000" stroke-width="0.4" stroke-dasharray="4 3"', 'lay-grain': 'fill="none" stroke="#000" stroke-width="0.3"',
  'lay-head': 'fill="#000"', 'lay-dim': 'fill="none" stroke="#000" stroke-width="0.3"', 'lay-point': 'fill="#000"', 'lay-way': 'fill="none" stroke="#000" stroke-width="0.4"',
};

const LETTERS = 9;
const AROUND = 15;

const escaped = (text: string): string => text.replace(/[<>&"]|\p{Cc}/gu, (character) => `&#${character.codePointAt(0)!};`).replace(/&#(?:[0-8]|1[124-9]|2\d|3[01]|127);/g, '');

const written = (mark: LayMark): string => (mark.kind === 'path' ? `<path ${STYLE[mark.look] ?? ''} d="${mark.d}"/>`
  : `<text x="${mark.x}" y="${mark.y}" text-anchor="${mark.anchor}" font-size="${LETTERS}" font-family="sans-serif"${mark.look === 'lay-strong' ? ' font-weight="bold"' : ''}${mark.turned ? ` transform="rotate(-90 ${mark.x} ${mark.y})"` : ''}>${escaped(mark.text)}</text>`);

/** One unit is a mm of cloth; the page is as large as the cloth. */
export function svgOf(found: Found, as: ShowAs, title: string): string {
  const picture = layPicture(drawingOf(found, as), { scale: 1, text: LETTERS });
  const [width, height] = [picture.width + 2 * AROUND, picture.height + 2 * AROUND];
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="${-AROUND} ${-AROUND} ${width} ${height}">`,
    `<title>${escaped(title)}</title>`,
    ...picture.under.map(written),
    ...picture.pieces.flatMap(({ id, d, marks }) => [`<g id="piece-${id + 1}">`, `<path fill="none" stroke="#000" stroke-width="0.5" d="${d}"/>`, ...marks.map(written), '</g>']),
    ...picture.over.map(written),
    '</svg>', '',
  ].join('\n');
}
