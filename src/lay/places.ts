/**
 * From pieces to places: what has to be laid on this cloth, folded or open.
 * A place in a folded part is cut from two layers, the lower one mirrored. In
 * one layer a pair is one as drawn and one mirrored, and a piece on the fold is
 * opened out, as it is on cloth folded crosswise, where no fold runs along the
 * grain.
 */
import { clothWidth, foldDepth, stretchOf } from './cloth.ts';
import { areaOf, boundsOf, laidOutline, withoutRepeats } from './outline.ts';
import type { Cloth, Outline, Piece, Place, Way } from './types.ts';

const between0And360 = (turn: number): number => ((turn % 360) + 360) % 360;

/** A print is met only by pieces that all lie the same way up. */
export const meetsPrint = ({ matches }: Pick<Piece, 'matches'>, { repeat }: Cloth): boolean => (matches?.length ?? 0) > 0 && repeat !== undefined && (repeat.along > 0 || repeat.across > 0);

/** With one-way cloth only turns of less than a quarter are left; 0 if the list allows none of those. */
function turnsOf(piece: Piece, cloth: Cloth): readonly number[] {
  const { turns } = piece;
  const upright = cloth.oneWay ? turns.filter((turn) => Math.cos((turn * Math.PI) / 180) > 1e-9) : turns;
  const left = upright.length > 0 ? upright : [0];
  return meetsPrint(piece, cloth) ? left.slice(0, 1) : left;
}

/** All ways in which a place of the piece may lie, not counting the mirrored half of pairs in a single layer. */
export function waysOf(piece: Piece, cloth: Cloth, layers: 1 | 2 = cloth.fold === 'open' ? 1 : 2): readonly Way[] {
  const [longer, wider] = stretchOf(cloth);
  const stretched = (way: Way): Way => (longer === 1 && wider === 1 ? way : { ...way, stretch: [longer, wider] });
  if (layers === 2 && piece.cut === 'fold' && cloth.fold !== 'crosswise') {
    // On the fold only the piece's two ends can be exchanged: a half turn that keeps the fold edge where it is.
    const turns = meetsPrint(piece, cloth) ? [] : turnsOf(piece, cloth).filter((turn) => between0And360(turn) === 180);
    return [{ turn: 0, mirrored: false }, ...turns.map((turn) => ({ turn, mirrored: true }))].map(stretched);
  }
  // From two layers come both of a pair, whichever way up it lies.
  const both = !meetsPrint(piece, cloth) && (cloth.alike || (layers === 2 && piece.cut === 'pair'));
  const turns = layers === 2 && cloth.fold === 'crosswise' && givesTwo(piece, cloth) ? headToTail(piece, cloth) : turnsOf(piece, cloth);
  return turns.flatMap((turn) => (both ? [false, true] : [false]).map((mirrored) => stretched({ turn, mirrored })));
}

/** Folded crosswise the lower of the two lies the other way round, which has to be allowed as well. */
export function headToTail(piece: Piece, cloth: Cloth): readonly number[] {
  const turns = turnsOf({ ...piece, matches: [] }, cloth);
  const allowed = new Set(turns.map(between0And360));
  const left = turns.filter((turn) => allowed.has(between0And360(turn + 180)));
  return meetsPrint(piece, cloth) ? left.slice(0, 1) : left;
}

/** True when both layers of a fold are of use: the lower gives the mirror image, which has to be wanted, the same, or to be turned over. */
export const givesTwo = ({ cut, outline }: Piece, { alike }: Cloth): boolean => cut !== 'single' || alike || isSymmetric(withoutRepeats(outline));

export function placesOf(pieces: readonly Piece[], cloth: Cloth): readonly Place[] {
  if (cloth.fold === 'partly') return partlyFolded(pieces, cloth);
  return pieces.flatMap((piece, index) => (cloth.fold === 'open' ? singleLayer(piece, index, piece.count, cloth) : twoLayers(piece, index, piece.count, cloth)));
}

function place(piece: Piece, index: number, count: number, layers: 1 | 2, cloth: Cloth, more: Partial<Place> = {}): readonly Place[] {
  if (count === 0) return [];
  const matches = meetsPrint(piece, cloth) ? { matches: piece.matches } : {};
  return [{ piece: index, outline: withoutRepeats(piece.outline), count, ways: waysOf(piece, cloth, layers), onFold: false, layers, ...matches, ...more }];
}

function singleLayer(piece: Piece, index: number, count: number, cloth: Cloth): readonly Place[] {
  if (piece.cut === 'fold') return place(piece, index, count, 1, cloth, { outline: openedOut(withoutRepeats(piece.outline)) });
  if (piece.cut === 'single') return place(piece, index, count, 1, cloth);
  if (cloth.alike && !meetsPrint(piece, cloth)) return place(piece, index, 2 * count, 1, cloth);
  const mirrored = waysOf(piece, cloth, 1).map((way) => ({ ...way, mirrored: !way.mirrored }));
  return [...place(piece, index, count, 1, cloth), ...place(piece, index, count, 1, cloth, { ways: mirrored })];
}

function twoLayers(piece: Piece, index: number, count: number, cloth: Cloth): readonly Place[] {
  if (piece.cut === 'fold' && cloth.fold === 'crosswise') return place(piece, index, Math.ceil(count / 2), 2, cloth, { outline: openedOut(withoutRepeats(piece.outline)) });
  if (piece.cut === 'fold') return place(piece, index, count, 2, cloth, { onFold: true });
  if (piece.cut === 'pair') return place(piece, index, count, 2, cloth);
  return place(piece, index, givesTwo(piece, cloth) ? Math.ceil(count / 2) : count, 2, cloth);
}

/** Pieces on the fold go into the fold, and of the rest as much that the fold and the single part beside it fill up alike, the largest first. */
function partlyFolded(pieces: readonly Piece[], cloth: Cloth): readonly Place[] {
  const depth = foldDepth(cloth), single = clothWidth(cloth) - depth;
  let inFold = 0, beside = 0;
  const counts = pieces.map(() => ({ folded: 0, single: 0 }));
  const size = (piece: Piece): number => areaOf(piece.outline);
  pieces.forEach((piece, i) => {
    if (piece.cut !== 'fold') return;
    counts[i]!.folded = piece.count;
    inFold += (piece.count * size(piece)) / depth;
  });
  const order = pieces.map((_, i) => i).filter((i) => pieces[i]!.cut !== 'fold').sort((a, b) => size(pieces[b]!) - size(pieces[a]!) || a - b);
  for (const i of order) {
    const piece = pieces[i]!;
    const area = size(piece);
    const fitsBeside = across(piece, waysOf(piece, cloth, 1)) <= single * (1 + 1e-9), fitsFold = across(piece, waysOf(piece, cloth, 2)) <= depth * (1 + 1e-9);
    const two = givesTwo(piece, cloth);
    const each = piece.cut === 'pair' ? 2 : 1;
    for (let left = piece.count; left > 0;) {
      // What comes out of one place in the fold is one pair, or two single pieces.
      const taken = two && piece.cut === 'single' ? Math.min(2, left) : 1;
      const foldLoad = inFold + area / depth, besideLoad = beside + (taken * each * area) / single;
      const useful = two && taken * each === 2;
      const folded = fitsFold && (!fitsBeside || (useful && Math.max(foldLoad, beside) <= Math.max(inFold, besideLoad)));
      if (folded) inFold = foldLoad;
      else beside = besideLoad;
      counts[i]![folded ? 'folded' : 'single'] += two || !folded ? taken : 1;
      left -= two || !folded ? taken : 1;
    }
  }
  return pieces.flatMap((piece, i) => [...twoLayers(piece, i, counts[i]!.folded, cloth), ...singleLayer(piece, i, counts[i]!.single, cloth)]);
}

/** The least width that the piece takes of the cloth. */
function across({ outline }: Piece, ways: readonly Way[]): number {
  return Math.min(...ways.map((way) => {
    const { from, to } = boundsOf(laidOutline(outline, way, [0, 0]));
    return to[1] - from[1];
  }));
}

/** How deep cloth may be folded partly to try: so wide as the pieces on the fold need, as one more piece beside them needs, and as the widest pair needs. */
export function foldChoices(pieces: readonly Piece[], cloth: Cloth): readonly number[] {
  const half = cloth.width / 2;
  if (cloth.foldAt !== undefined) return [cloth.foldAt];
  const wanted = pieces.filter(({ count }) => count > 0);
  const room = cloth.gap;
  const least = Math.max(0, ...wanted.filter(({ cut }) => cut === 'fold').map((piece) => across(piece, waysOf(piece, cloth, 2))));
  const pairs = wanted.filter((piece) => piece.cut !== 'fold' && givesTwo(piece, cloth) && piece.cut === 'pair').map((piece) => across(piece, waysOf(piece, cloth, 2)));
  const beside = Math.max(0, ...wanted.filter((piece) => piece.cut === 'single').map((piece) => across(piece, waysOf(piece, cloth, 1))));
  const depths = [least, ...pairs, ...pairs.map((width) => least + room + width), (cloth.width - beside) / 2, half]
    .map((depth) => depth * (1 + 1e-6))
    .filter((depth) => depth >= least && depth > 0 && depth <= half * (1 + 1e-6))
    .map((depth) => Math.min(depth, half))
    .sort((a, b) => a - b)
    .filter((depth, i, all) => i === 0 || depth > all[i - 1]! * 1.02);
  // At most six, spread over them all.
  const most = 6;
  return depths.length <= most ? depths : Array.from({ length: most }, (_, i) => depths[Math.round((i * (depths.length - 1)) / (most - 1))]!);
}

/** The whole of a piece of which the half above across = 0 is drawn. */
function openedOut(half: Outline): Outline {
  const highest = boundsOf(half).to[1];
  const onFold = ([, across]: readonly [number, number]): boolean => Math.abs(across) <= highest * 1e-9;
  const n = half.length;
  // Begin behind the fold edge, so that the points off it are one run.
  const start = half.findIndex((point, i) => onFold(point) && !onFold(half[(i + 1) % n]!));
  const around = Array.from({ length: n }, (_, i) => half[(start + i) % n]!);
  const last = around.findIndex((point, i) => i > 0 && onFold(point));
  const run = around.slice(0, last + 1);
  const back = run.slice(1, -1).reverse().map(([along, across]) => [along, -across] as const);
  return [[run[0]![0], 0], ...run.slice(1, -1), [run[run.length - 1]![0], 0], ...back];
}

/** True when the mirror image covers the outline, as it lies or after a half turn. */
function isSymmetric(outline: Outline): boolean {
  return [0, 180].some((turn) => {
    const mirror = laidOutline(outline, { turn, mirrored: true }, [0, 0]);
    const one = boundsOf(outline), other = boundsOf(mirror);
    const slack = Math.max(one.to[0] - one.from[0], one.to[1] - one.from[1]) * 1e-6;
    return mirror.every(([along, across]) => outline.some(([a, c]) =>
      Math.abs(along - other.from[0] - (a - one.from[0])) <= slack && Math.abs(across - other.from[1] - (c - one.from[1])) <= slack));
  });
}
