/**
 * A cutting layout to scale: cloth with its selvedges, fold and one way, pieces
 * with grain lines, order and names, what is left, and rulers along both edges.
 * Lengths are mm on the cloth: along it from the cut end, across it from the
 * selvedge or the fold, which is drawn lowest, so that the right side of the
 * pieces is seen.
 */
import { area, box, line, polar } from './draw.ts';
import { boxOf, labelIn, lineIn, type Spot } from './lay-shape.ts';
import { place } from './scale.ts';

export type LayPoint = readonly [along: number, across: number];

export interface LaidPiece {
  /** The same for as long as it lies there. */
  readonly id: number;
  /** The order of cutting, from 1. */
  readonly order: number;
  readonly name: string;
  /** Such as “cut 2” or “cut 1 on the fold”. */
  readonly count: string;
  /** As it lies, with its allowance. */
  readonly outline: readonly LayPoint[];
  /** The way from its top to its bottom, degrees anticlockwise from along the cloth. */
  readonly grain: number;
  /** Of a second list. */
  readonly second: boolean;
  /** What is wrong with where it lies; empty when nothing is. */
  readonly wrong: string;
  /** Two points by which it is laid with a tape. */
  readonly points?: readonly [LayPoint, LayPoint];
}

export type LayEdge = 'selvedge' | 'fold' | 'cut edge';

export interface DrawnLay {
  /** Of the cloth as it lies. */
  readonly width: number;
  /** As much of the length as is drawn. */
  readonly length: number;
  /** Where it is cut off, when it is to be bought. */
  readonly cutAt: number | null;
  readonly edges: { readonly low: LayEdge; readonly high: LayEdge; readonly start: LayEdge };
  /** Across, where the folded part ends. */
  readonly foldAt: number | null;
  readonly oneWay: boolean;
  readonly remnant: readonly LayPoint[] | null;
  readonly flaws: readonly (readonly LayPoint[])[];
  readonly left: { readonly at: LayPoint; readonly length: number; readonly width: number; readonly words: readonly [along: string, across: string] } | null;
  readonly pieces: readonly LaidPiece[];
}

export interface LayScale {
  /** Units of the picture for a mm. */
  readonly scale: number;
  /** Size of letters in units of the picture. */
  readonly text: number;
}

export type LayLook = 'lay-cloth' | 'lay-odd' | 'lay-flaw' | 'lay-selvedge' | 'lay-fold' | 'lay-cut' | 'lay-left' | 'lay-grain' | 'lay-head' | 'lay-dim' | 'lay-point' | 'lay-way';

export type LayMark =
  | { readonly kind: 'path'; readonly look: LayLook; readonly d: string }
  | { readonly kind: 'text'; readonly look: 'lay-name' | 'lay-soft' | 'lay-strong'; readonly x: number; readonly y: number; readonly anchor: 'start' | 'middle' | 'end'; readonly text: string; readonly turned?: true };

export interface DrawnPiece {
  readonly id: number;
  readonly second: boolean;
  readonly wrong: boolean;
  /** Its outline. */
  readonly d: string;
  readonly marks: readonly LayMark[];
}

/** The cloth's corner of cut end and highest edge is 0 0; the rulers are pictures of their own. */
export interface LayPicture {
  readonly width: number;
  readonly height: number;
  readonly under: readonly LayMark[];
  readonly pieces: readonly DrawnPiece[];
  readonly over: readonly LayMark[];
}

export function layPicture(lay: DrawnLay, { scale, text }: LayScale): LayPicture {
  const spot = ([along, across]: LayPoint): Spot => [along * scale, (lay.width - across) * scale];
  const [width, height] = [lay.length * scale, lay.width * scale];
  return {
    width: place(width),
    height: place(height),
    under: [...cloth(lay, spot, width, height, text), ...remains(lay, spot, scale, text)],
    pieces: lay.pieces.map((piece) => drawnPiece(piece, spot, lay.oneWay, text)),
    over: edges(lay, width, height, scale, text),
  };
}

/** An arrow's head in proportion to the letters beside it. */
function head(tip: Spot, angle: number, text: number): string {
  return area(tip, polar(tip, text * 0.55, angle + Math.PI - 0.35), polar(tip, text * 0.55, angle + Math.PI + 0.35));
}

const path = (look: LayLook, d: string): LayMark => ({ kind: 'path', look, d });
const words = (x: number, y: number, said: string, anchor: 'start' | 'middle' | 'end', look: 'lay-name' | 'lay-soft' | 'lay-strong', turned = false): LayMark =>
  ({ kind: 'text', look, x: place(x), y: place(y), anchor, text: said, ...(turned && { turned }) });

function cloth({ remnant, flaws, cutAt }: DrawnLay, spot: (at: LayPoint) => Spot, width: number, height: number, text: number): LayMark[] {
  return [
    remnant ? path('lay-odd', box(0, 0, width, height)) : path('lay-cloth', box(0, 0, width, height)),
    ...(remnant ? [path('lay-cloth', area(...remnant.map(spot)))] : []),
    ...flaws.flatMap((flaw) => {
      const at = flaw.map(spot);
      const [x, y] = [Math.min(...at.map(([each]) => each)), Math.max(...at.map(([, each]) => each))];
      return [path('lay-flaw', area(...at)), words(x, y + text, 'flaw', 'start', 'lay-soft')];
    }),
    ...(cutAt === null ? [] : [path('lay-cut', line(spot([cutAt, 0]), [spot([cutAt, 0])[0], 0]))]),
  ];
}

function remains({ left }: DrawnLay, spot: (at: LayPoint) => Spot, scale: number, text: number): LayMark[] {
  if (!left) return [];
  const [x, low] = spot(left.at);
  const [w, h] = [left.length * scale, left.width * scale];
  const y = low - h;
  const marks = [path('lay-left', box(x, y, w, h))];
  if (w < text * 3 || h < text * 3) return marks;
  const off = text * 0.9;
  return [
    ...marks,
    path('lay-dim', line([x, y + off], [x + w, y + off])), path('lay-head', head([x, y + off], Math.PI, text) + head([x + w, y + off], 0, text)),
    path('lay-dim', line([x + off, y], [x + off, y + h])), path('lay-head', head([x + off, y], -Math.PI / 2, text) + head([x + off, y + h], Math.PI / 2, text)),
    words(x + w / 2, y + off + text * 1.3, left.words[0], 'middle', 'lay-strong'),
    h > text * 6 ? words(x + off + text * 1.3, y + h / 2, left.words[1], 'middle', 'lay-strong', true) : words(x + off + text * 0.5, y + h / 2 + text * 0.8, left.words[1], 'start', 'lay-strong'),
  ];
}

function drawnPiece(piece: LaidPiece, spot: (at: LayPoint) => Spot, oneWay: boolean, text: number): DrawnPiece {
  const outline = piece.outline.map(spot);
  const d = area(...outline);
  const angle = (-piece.grain * Math.PI) / 180;
  const named = `${piece.order} ${piece.name}`;
  const { x, y, lines } = labelIn(outline, wordingsOf(piece, named), text);
  const [top, bottom] = lineIn(outline, angle, boxOf(lines, x, y, text));
  const marks: LayMark[] = [];
  if (Math.hypot(bottom[0] - top[0], bottom[1] - top[1]) > text) {
    // One head where the cloth has one way: it flies from the piece's top to its bottom.
    const heads = head(bottom, angle, text) + (oneWay ? '' : head(top, angle + Math.PI, text));
    marks.push(path('lay-grain', line(top, bottom)), path('lay-head', heads));
  }
  lines.forEach((said, i) => marks.push(words(x, y + i * text * 1.25, said, 'middle', i === 0 ? 'lay-strong' : 'lay-name')));
  piece.points?.map(spot).forEach((at, i) => {
    marks.push(path('lay-point', area(...[0, 1, 2, 3].map((quarter) => polar(at, text * 0.28, (quarter * Math.PI) / 2)))));
    const [inX, inY] = towards(at, [x, y], text * 1.1);
    marks.push(words(inX, inY + text * 0.35, i === 0 ? 'A' : 'B', 'middle', 'lay-name'));
  });
  return { id: piece.id, second: piece.second, wrong: piece.wrong !== '', d, marks };
}

/** The best first; a long name goes over two lines before anything is left out. */
function wordingsOf({ order, name, count, wrong }: LaidPiece, named: string): readonly (readonly string[])[] {
  const parts = named.split(' ');
  const half = Math.ceil((parts.length + 1) / 2);
  const twoLines = parts.length > 2 ? [parts.slice(0, half).join(' '), parts.slice(half).join(' ')] : [String(order), name];
  const more = wrong === '' ? count : wrong;
  return [[named, more], [...twoLines, more], [named], twoLines, [String(order), ...(wrong === '' ? [] : [wrong])], [String(order)]];
}

function towards([x, y]: Spot, [toX, toY]: Spot, far: number): Spot {
  const length = Math.hypot(toX - x, toY - y) || 1;
  return [x + ((toX - x) / length) * far, y + ((toY - y) / length) * far];
}

function edges({ edges: { low, high, start }, foldAt, oneWay, width: across, cutAt }: DrawnLay, width: number, height: number, scale: number, text: number): LayMark[] {
  const edge = (kind: LayEdge, d: string): LayMark[] => (kind === 'cut edge' ? [] : [path(kind === 'fold' ? 'lay-fold' : 'lay-selvedge', d)]);
  const end = cutAt === null ? width : Math.min(width, cutAt * scale);
  const marks = [
    ...edge(low, line([0, height], [width, height])),
    ...edge(high, line([0, 0], [width, 0])),
    ...edge(start, line([0, 0], [0, height])),
    words(end / 2, height + text * 1.15, low, 'middle', 'lay-soft'),
    words(end / 2, -text * 0.45, high, 'middle', 'lay-soft'),
    words(-text * 0.5, height / 2, start === 'cut edge' ? 'cut end' : start, 'middle', 'lay-soft', true),
  ];
  if (foldAt !== null) {
    const y = (across - foldAt) * scale;
    marks.push(path('lay-selvedge', line([0, y], [width, y])), words(width - text * 0.5, y - text * 0.4, 'the upper layer ends here', 'end', 'lay-soft'));
  }
  if (oneWay) {
    const y = -text * 0.75, from = Math.min(width * 0.1, text * 6);
    marks.push(path('lay-way', line([text, y], [text + from, y])), path('lay-head', head([text + from, y], 0, text)), words(text * 2 + from, y + text * 0.35, 'one way', 'start', 'lay-soft'));
  }
  return marks;
}

/** One of the rulers, from 0 on. Its numbers stand beside the cloth, at the far side of its ticks. */
export interface LayRuler {
  readonly length: number;
  readonly ticks: string;
  readonly numbers: readonly { readonly at: number; readonly text: string }[];
}

/** How thick a ruler is, in letters. */
export const RULER = 2.1;

/**
 * @param axis `across` counts from the lower edge up
 * @param length mm
 */
export function layRuler(axis: 'along' | 'across', length: number, unit: 'cm' | 'in', { scale, text }: LayScale): LayRuler {
  const each = unit === 'cm' ? 10 : 25.4;
  const numbered = [1, 2, 5, 10, 20, 50, 100, 200].find((step) => step * each * scale >= text * 3.2) ?? 500;
  const small = Math.max(numbered / 10, [0.1, 0.25, 0.5, 1, 2, 5, 10, 50].find((step) => step * each * scale >= 4) ?? 100);
  const count = Math.floor(length / (small * each) + 1e-9);
  const numbers: { at: number; text: string }[] = [];
  let ticks = '';
  const room = RULER * text;
  for (let i = 0; i <= count; i++) {
    const value = i * small;
    const whole = Math.abs(value / numbered - Math.round(value / numbered)) < 1e-6;
    const half = Math.abs((2 * value) / numbered - Math.round((2 * value) / numbered)) < 1e-6;
    const along = axis === 'along' ? value * each * scale : (length - value * each) * scale;
    const long = room * (whole ? 0.5 : half ? 0.34 : 0.2);
    ticks += axis === 'along' ? line([along, room - long], [along, room]) : line([room - long, along], [room, along]);
    if (whole) numbers.push({ at: place(along), text: String(Math.round(value * 100) / 100) });
  }
  return { length: place(length * scale), ticks, numbers };
}
