/** From a layout to what is drawn and said of it: both from the same figures. */
import { boundsOf, clothLength, clothWidth, foldDepth, type Cloth, type Laid, type Outline, type Point } from '../lay/index.ts';
import type { DrawnLay, LaidPiece, LayEdge } from '../pictures/index.ts';
import { inBase, isFault, quantity, show, up, type ShowAs } from '../quantities/index.ts';
import { leftOf, nameOf, outlineOf, type Found } from './lay-found.ts';
import type { Wrongs } from './lay-hand.ts';

/** Cloth to buy is drawn a little beyond where it is cut off. */
const BEYOND = 60;

/** Both systems, in the order that the workbook shows them. */
export function lengthInWords(mm: number, as: ShowAs): string {
  const { main, also } = show(inBase(mm, as.system === 'in' ? 'in' : 'cm'), { ...as, system: 'both', decimals: undefined });
  return also === undefined ? main : `${main} (${also})`;
}

/** As `lengthInWords`, never shorter than it is: for cloth to cut. */
export function lengthUp(mm: number, as: ShowAs): string {
  const upTo = (step: ReturnType<typeof quantity>): number => {
    const rounded = up(inBase(mm, step.unit), step);
    return isFault(rounded) ? mm : rounded.value;
  };
  const cm = show(inBase(upTo(quantity(0.1, 'cm')), 'cm'), { ...as, system: 'cm', decimals: undefined }).main;
  const inches = show(inBase(upTo(quantity(1 / as.inchStep, 'in')), 'in'), { ...as, system: 'in', decimals: undefined }).main;
  return as.system === 'in' ? `${inches} (${cm})` : `${cm} (${inches})`;
}

/** In the workbook's own system only: for drawings, where room is short. */
export const shortLength = (mm: number, as: ShowAs): string => show(inBase(mm, as.system === 'in' ? 'in' : 'cm'), { ...as, system: 'own', decimals: undefined }).main;

export const percent = (part: number, as: ShowAs): string => show(inBase(part, '%'), { ...as, system: 'own', decimals: 1 }).main;

/** Positions in the list of laid, in the order of cutting: from the cut end on, and from the lower edge up. */
export function cuttingOrder(found: Found): readonly number[] {
  const starts = found.layout.laid.map((laid) => boundsOf(outlineOf(found, laid)).from);
  return starts.map((_, id) => id).sort((a, b) => starts[a]![0] - starts[b]![0] || starts[a]![1] - starts[b]![1] || a - b);
}

/** What comes of one place. */
export function countInWords(found: Found, { place, way }: Laid): string {
  const { onFold, layers } = found.places[place]!;
  if (onFold) return 'cut 1 on the fold';
  if (layers === 2) return 'cut 2';
  return way.mirrored && !found.cloth.alike ? 'cut 1, face down' : 'cut 1';
}

export function edgesOf({ fold }: Cloth, remnant: boolean): DrawnLay['edges'] {
  const side: LayEdge = remnant ? 'cut edge' : 'selvedge';
  switch (fold) {
    case 'lengthwise': case 'partly': return { low: 'fold', high: side, start: 'cut edge' };
    case 'crosswise': return { low: side, high: side, start: 'fold' };
    case 'open': return { low: side, high: side, start: 'cut edge' };
  }
}

/** Two points of the outline that lie far from each other: where a tape tells best how the piece lies. */
export function twoPoints(outline: Outline): readonly [Point, Point] {
  let best: readonly [Point, Point] = [outline[0]!, outline[0]!];
  let far = -1;
  for (const [i, one] of outline.entries()) {
    for (const other of outline.slice(i + 1)) {
      const distance = Math.hypot(one[0] - other[0], one[1] - other[1]);
      if (distance > far + 1e-6) [best, far] = [[one, other], distance];
    }
  }
  return best[0][0] <= best[1][0] ? best : [best[1], best[0]];
}

export function drawingOf(found: Found, as: ShowAs, { wrongs, points = false }: { readonly wrongs?: Wrongs; readonly points?: boolean } = {}): DrawnLay {
  const { layout, cloth } = found;
  const atHand = clothLength(cloth);
  const order = cuttingOrder(found);
  const left = wrongs ? null : leftOf(found);
  const pieces = layout.laid.map((laid, id): LaidPiece => {
    const outline = outlineOf(found, laid);
    return {
      id, order: order.indexOf(id) + 1, name: nameOf(found, laid.place), count: countInWords(found, laid), outline, grain: laid.way.turn,
      second: found.places[laid.place]!.piece >= found.first,
      wrong: wrongs?.has(id) ? wrongInShort(wrongs.get(id)!) : '',
      ...(points && { points: twoPoints(outline) }),
    };
  });
  return {
    width: clothWidth(cloth),
    length: Math.max(atHand ?? layout.length + BEYOND, layout.length),
    cutAt: atHand === null ? layout.length : null,
    edges: edgesOf(cloth, cloth.remnant !== undefined),
    foldAt: cloth.fold === 'partly' ? foldDepth(cloth) : null,
    oneWay: cloth.oneWay,
    remnant: cloth.remnant ?? null,
    flaws: cloth.flaws,
    left: left && { at: left.at, length: left.length, width: left.width, words: [`${shortLength(left.length, as)} left`, shortLength(left.width, as)] },
    pieces,
  };
}

function wrongInShort(sentences: readonly string[]): string {
  const [first = ''] = sentences;
  if (/overlap/.test(first)) return 'overlaps';
  if (/sticks out|reaches beyond/.test(first)) return 'off the cloth';
  if (/nearer/.test(first)) return 'too near';
  return 'lies wrong';
}

/** Where a piece lies, in words. */
export function placeInWords(found: Found, id: number, as: ShowAs, wrongs?: Wrongs): string {
  const laid = found.layout.laid[id]!;
  const { from } = boundsOf(outlineOf(found, laid));
  const order = cuttingOrder(found).indexOf(id) + 1;
  const { fold } = found.cloth;
  const start = fold === 'crosswise' ? 'the fold' : 'the cut end', low = fold === 'lengthwise' || fold === 'partly' ? 'the fold' : 'the lower selvedge';
  const turned = laid.way.turn === 0 ? '' : `, turned ${Math.round(laid.way.turn * 10) / 10}°`;
  const where = `${order}: ${nameOf(found, laid.place)}, ${countInWords(found, laid)}${turned}, ${shortLength(from[0], as)} from ${start}, ${shortLength(from[1], as)} from ${low}`;
  const wrong = wrongs?.get(id);
  return wrong ? `${where}. ${wrong.join(' ')}` : where;
}
