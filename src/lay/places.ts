/**
 * From pieces to places: what has to be laid on this cloth, folded or open.
 * On cloth folded lengthwise each place is cut from two layers, the second
 * mirrored; a piece on the fold lies on it as drawn. On open cloth a pair is
 * one as drawn and one mirrored, and a piece on the fold is opened out.
 */
import { boundsOf, laidOutline, withoutRepeats } from './outline.ts';
import type { Cloth, Outline, Piece, Place, Way } from './types.ts';

/** The width in which pieces lie. */
export const clothWidth = ({ width, fold }: Cloth): number => (fold === 'lengthwise' ? width / 2 : width);

/** With one-way cloth only turns of less than a quarter are left; 0 if the list allows none of those. */
function turnsOf({ turns }: Piece, { oneWay }: Cloth): readonly number[] {
  if (!oneWay) return turns;
  const upright = turns.filter((turn) => Math.cos((turn * Math.PI) / 180) > 1e-9);
  return upright.length > 0 ? upright : [0];
}

/** All ways in which a place of the piece may lie, not counting the mirrored half of pairs on open cloth. */
export function waysOf(piece: Piece, cloth: Cloth): readonly Way[] {
  const folded = cloth.fold === 'lengthwise';
  if (folded && piece.cut === 'fold') {
    // On the fold only the piece's two ends can be exchanged: a half turn that keeps the fold edge where it is.
    const turns = turnsOf(piece, cloth).filter((turn) => ((turn % 360) + 360) % 360 === 180);
    return [{ turn: 0, mirrored: false }, ...turns.map((turn) => ({ turn, mirrored: true }))];
  }
  // From two layers come both of a pair, whichever way up it lies.
  const both = cloth.alike || (folded && piece.cut === 'pair');
  return turnsOf(piece, cloth).flatMap((turn) => (both ? [false, true] : [false]).map((mirrored) => ({ turn, mirrored })));
}

export function placesOf(pieces: readonly Piece[], cloth: Cloth): readonly Place[] {
  return pieces.flatMap((piece, index) => {
    if (piece.count === 0) return [];
    const outline = withoutRepeats(piece.outline);
    const ways = waysOf(piece, cloth);
    const place = (more: Partial<Place>): Place => ({ piece: index, outline, count: piece.count, ways, onFold: false, ...more });
    if (cloth.fold === 'lengthwise') {
      if (piece.cut === 'fold') return [place({ onFold: true })];
      if (piece.cut === 'pair') return [place({})];
      // The lower layer gives the mirror image: of use when that is the same, or may be turned over.
      return [place({ count: cloth.alike || isSymmetric(outline) ? Math.ceil(piece.count / 2) : piece.count })];
    }
    if (piece.cut === 'fold') return [place({ outline: openedOut(outline) })];
    if (piece.cut === 'single') return [place({})];
    if (cloth.alike) return [place({ count: 2 * piece.count })];
    return [place({}), place({ ways: ways.map(({ turn, mirrored }) => ({ turn, mirrored: !mirrored })) })];
  });
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
