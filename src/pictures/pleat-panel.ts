/** Pleated cloth from the right side: flat with its fold and placement lines, folded, and tapered from hip to waist. */
import type { ShowAs, UnitCode } from '../quantities/index.ts';
import { area, line, torn } from './draw.ts';
import type { Point } from './draw.ts';
import type { Dim } from './lanes.ts';
import type { Picture } from './marks.ts';
import type { PleatKind } from './pleat-section.ts';
import { overlap } from './pleat-section.ts';
import { MARGIN, Plate } from './plate.ts';
import { fit } from './scale.ts';
import { counted, sayIn, sentences } from './words.ts';

export interface PleatPanel {
  readonly kind: PleatKind;
  readonly pleats: number;
  /** Of one fold, mm. */
  readonly depth: number;
  /** Width when pleated, mm. */
  readonly finished: number;
  /** At each side edge, mm. */
  readonly allowance: number;
  readonly unit: UnitCode;
}

/** More pleats than this are too narrow to tell apart: the first ones are drawn and the cloth goes on. */
const MOST = { knife: 4, box: 2, inverted: 2 } as const;
const FLAT = 46;
const FOLDED = 34;

/** Where lines lie on one pleat that takes `spacing` folded, from its beginning: edges of folds, and what they are laid to. */
function flatLines(kind: PleatKind, spacing: number, depth: number): { folds: number[]; places: number[]; edges: number[]; pairs: (readonly [number, number])[] } {
  const take = 2 * depth;
  if (kind === 'knife') {
    const half = spacing / 2;
    return { folds: [half], places: [half + take], edges: [half], pairs: [[half, half + take]] };
  }
  if (kind === 'box') {
    return { folds: [take, take + spacing], places: [0, 2 * take + spacing], edges: [0, spacing], pairs: [[take, 0], [take + spacing, 2 * take + spacing]] };
  }
  const half = spacing / 2;
  return { folds: [half, half + 2 * take], places: [half + take], edges: [half], pairs: [[half, half + take], [half + 2 * take, half + take]] };
}

export function pleatPanel(input: PleatPanel, as: ShowAs): Picture {
  const { kind, pleats, depth, finished, allowance } = input;
  const say = sayIn(input.unit, as);
  const spacing = finished / pleats;
  const take = (kind === 'knife' ? 2 : 4) * depth;
  const cut = finished + pleats * take + 2 * allowance;
  const shown = Math.min(pleats, MOST[kind]);
  const whole = shown === pleats;
  const lines = flatLines(kind, spacing, depth);

  const plate = new Plate();
  const drawnWidth = allowance + shown * (spacing + take) + (whole ? allowance : 0);
  const k = fit(drawnWidth, 0, plate.width - 2 * MARGIN - 20, 0);
  const start = MARGIN + 10;
  const flatAt = (pleat: number, mm: number): number => start + (allowance + pleat * (spacing + take) + mm) * k;
  const foldedAt = (pleat: number, mm: number): number => start + (allowance + pleat * spacing + mm) * k;

  plate.caption(`Flat: ${say.length(cut)} to cut`);
  const above: Dim[] = [];
  if (allowance > 0) above.push({ from: start, to: start + allowance * k, text: say.length(allowance) });
  plate.above(above);
  const top = plate.y;
  const right = start + drawnWidth * k;
  plate.path('cloth', strip(start, right, top, FLAT, whole));
  if (allowance > 0) plate.path('seam', line([start + allowance * k, top], [start + allowance * k, top + FLAT]));
  if (allowance > 0 && whole) plate.path('seam', line([right - allowance * k, top], [right - allowance * k, top + FLAT]));
  for (let i = 0; i < shown; i += 1) {
    for (const mm of lines.places) if (whole || flatAt(i, mm) < right - 4) plate.path('place', line([flatAt(i, mm), top + 1], [flatAt(i, mm), top + FLAT - 1]));
    for (const mm of lines.folds) plate.path('fold', line([flatAt(i, mm), top], [flatAt(i, mm), top + FLAT]));
    for (const [from, to] of lines.pairs) plate.path('thin', laidOver(flatAt(i, from), flatAt(i, to), top + FLAT / 2));
  }
  const below: Dim[] = [];
  const [fold, placed] = lines.pairs.at(-1)!;
  if (depth > 0) below.push({ from: flatAt(0, Math.min(fold, placed)), to: flatAt(0, Math.max(fold, placed)), text: `${say.length(2 * depth)} folds away` });
  const [faceFrom, faceTo] = faceOn(kind, lines, shown, (pleat, mm) => flatAt(pleat, mm));
  if (faceTo > faceFrom) below.push({ from: faceFrom, to: faceTo, text: `${say.length(spacing)} shows` });
  plate.below(below, top + FLAT);

  plate.caption(`Folded: ${say.length(finished)}${allowance > 0 ? ' between the seams' : ''}`);
  const foldedTop = plate.y + 2;
  const foldedRight = start + (allowance + shown * spacing + (whole ? allowance : 0)) * k;
  plate.path('cloth', strip(start, foldedRight, foldedTop, FOLDED, whole));
  for (let i = 0; i < shown; i += 1) {
    for (const mm of lines.edges) if (whole || foldedAt(i, mm) < foldedRight - 4) plate.path('edge', line([foldedAt(i, mm), foldedTop], [foldedAt(i, mm), foldedTop + FOLDED]));
    if (depth > 0) for (const mm of innerFolds(kind, spacing, depth)) plate.path('old', hidden(foldedAt(i, mm), start, foldedRight, foldedTop));
  }
  const first = lines.edges[0]!;
  plate.below(shown > 1 ? [{ from: foldedAt(0, first), to: foldedAt(1, first), text: `${say.length(spacing)} apart` }] : [], foldedTop + FOLDED);

  plate.key([['fold', 'fold line'], ['place', 'placement line: the fold is laid to it'], ['old', 'fold underneath']]);
  const over = overlap(kind, depth, spacing);
  plate.notes(
    whole ? counted(pleats, `${kind} pleat`) + '.' : `The first ${shown} of ${pleats} ${kind} pleats … and ${pleats - shown} more.`,
    over > 0 && `Folds overlap by ${say.length(over)} on the wrong side.`,
    'Widths are to scale.',
  );
  return plate.done(sentences(
    `A panel of ${say.length(cut)}, pleated to ${say.length(finished)} by ${counted(pleats, `${kind} pleat`)}, ${say.length(spacing)} apart, each fold ${say.length(depth)} deep.`,
    allowance > 0 && `A seam allowance of ${say.length(allowance)} is at each side.`,
    over > 0 && `Folds overlap on the wrong side by ${say.length(over)}.`,
  ));
}

/** A strip of cloth, torn on the right where it goes on. */
function strip(left: number, right: number, top: number, height: number, whole: boolean): string {
  const end: Point[] = whole ? [[right, top], [right, top + height]] : torn(right, top, top + height);
  return area([left, top], ...end, [left, top + height]);
}

/** The arrow from a fold line to its placement line. */
function laidOver(from: number, to: number, y: number): string {
  const way = Math.sign(to - from);
  if (Math.abs(to - from) < 9) return '';
  const tip = to - way * 2.5;
  return line([from + way * 2.5, y], [tip, y]) + line([tip - way * 4, y - 3], [tip, y], [tip - way * 4, y + 3]);
}

/** What shows of the cloth between two folds. */
function faceOn(kind: PleatKind, lines: ReturnType<typeof flatLines>, shown: number, at: (pleat: number, mm: number) => number): readonly [number, number] {
  if (kind === 'box') return [at(0, lines.folds[0]!), at(0, lines.folds[1]!)];
  if (shown < 2) return [0, 0];
  return [at(0, kind === 'knife' ? lines.places[0]! : lines.folds[1]!), at(1, lines.folds[0]!)];
}

function innerFolds(kind: PleatKind, spacing: number, depth: number): number[] {
  if (kind === 'knife') return [spacing / 2 - depth];
  if (kind === 'box') return [depth, spacing - depth];
  return [spacing / 2 - depth, spacing / 2 + depth];
}

/** A line underneath, unless it lies beyond what is drawn. */
const hidden = (x: number, left: number, right: number, top: number): string => (x > left && x < right ? line([x, top], [x, top + FOLDED]) : '');

export interface PleatEdges {
  readonly pleats: number;
  /** Width when pleated, mm. */
  readonly finished: number;
  readonly unit: UnitCode;
}

/** A pleated width with the edges of its pleats, whatever their kind and depth. */
export function pleatEdges({ pleats, finished, unit }: PleatEdges, as: ShowAs): Picture {
  const say = sayIn(unit, as);
  const spacing = finished / pleats;
  const shown = Math.min(pleats, 8);
  const whole = shown === pleats;
  const plate = new Plate();
  const start = MARGIN + 10;
  const k = fit(shown * spacing, 0, plate.width - 2 * start, 0);
  plate.above([{ from: start, to: start + spacing * k, text: `${say.length(spacing)} from edge to edge` }]);
  const top = plate.y;
  const right = start + shown * spacing * k;
  plate.path('cloth', strip(start, right, top, FLAT, whole));
  for (let i = 1; i < shown + (whole ? 0 : 1); i += 1) {
    const x = start + i * spacing * k;
    if (x < right - 4) plate.path('edge', line([x, top], [x, top + FLAT]));
  }
  plate.below(whole ? [{ from: start, to: right, text: say.length(finished) }] : [], top + FLAT);
  plate.notes(
    whole ? `${counted(pleats, 'pleat')}.` : `The first ${shown} of ${pleats} pleats … and ${pleats - shown} more, ${say.length(finished)} in all.`,
    'Widths are to scale.',
  );
  return plate.done(`${counted(pleats, 'pleat')} on a finished width of ${say.length(finished)}, ${say.length(spacing)} from the edge of one to the edge of the next.`);
}

export interface PleatDeepen {
  readonly kind: PleatKind;
  readonly pleats: number;
  /** Finished widths, mm. */
  readonly hip: number;
  readonly waist: number;
  readonly unit: UnitCode;
}

/** The space of one pleat at the waist and at the hip: what it is narrower by goes into its folds. */
export function pleatDeepen({ kind, pleats, hip, waist, unit }: PleatDeepen, as: ShowAs): Picture {
  const say = sayIn(unit, as);
  const edges = kind === 'knife' ? 2 : 4;
  const deeper = (hip - waist) / pleats / edges;
  const [below, above] = [hip / pleats, waist / pleats];
  const plate = new Plate();
  const start = MARGIN + 14;
  const k = fit(Math.max(above, below), 0, plate.width - 2 * start, 0);
  const middle = plate.width / 2;
  const [halfTop, halfBottom] = [(above * k) / 2, (below * k) / 2];
  plate.caption('One pleat from its right side');
  plate.above([{ from: middle - halfTop, to: middle + halfTop, text: `${say.length(above)} at the waist` }]);
  const top = plate.y;
  const height = 84;
  plate.path('piece', area([middle - halfTop, top], [middle + halfTop, top], [middle + halfBottom, top + height], [middle - halfBottom, top + height]));
  for (const side of [-1, 1]) {
    plate.path('new-cloth', area([middle + side * halfTop, top], [middle + side * halfBottom, top], [middle + side * halfBottom, top + height]));
  }
  plate.below([{ from: middle - halfBottom, to: middle + halfBottom, text: `${say.length(below)} at the hip` }], top + height);
  const [folds, change] = [kind === 'knife' ? 'Its fold' : 'Each of its two folds', deeper < 0 ? 'shallower' : 'deeper'];
  plate.key([['new-cloth', `${say.length(Math.abs(below - above))} ${deeper < 0 ? 'less' : 'more'} folds away at the waist: ${folds.toLowerCase()} is ${say.length(Math.abs(deeper))} ${change}`]]);
  plate.notes(`${counted(pleats, `${kind} pleat`)}.`, 'Widths are to scale, heights are not.');
  return plate.done(
    `One of ${counted(pleats, `${kind} pleat`)}: ${say.length(below)} wide at the hip, ${say.length(above)} at the waist. ${folds} is ${say.length(Math.abs(deeper))} ${change} at the waist.`,
  );
}
