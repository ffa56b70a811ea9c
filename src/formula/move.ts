/** Where rows and columns stand after some of them went to another place among them. */
import type { LineMove, Run } from './types.ts';

/** The two neighbouring stretches that change places: `[low, middle)` and `[middle, high)`. To a place among themselves nothing moves. */
function stretches({ at, count, to }: LineMove): { readonly low: number; readonly middle: number; readonly high: number } {
  if (to >= at && to <= at + count) return { low: at, middle: at, high: at };
  return to <= at ? { low: to, middle: at, high: at + count } : { low: at, middle: at + count, high: to };
}

/** Where one row or column is afterwards. */
export function placeAfterMove(place: number, move: LineMove): number {
  const { low, middle, high } = stretches(move);
  if (place < low || place >= high) return place;
  return place < middle ? place + high - middle : place - (middle - low);
}

/** The move that undoes it. */
export function moveBack({ at, count, to }: LineMove): LineMove {
  if (to >= at && to <= at + count) return { at, count, to };
  return to < at ? { at: to, count, to: at + count } : { at: to - count, count, to: at };
}

/**
 * What a run of rows or columns is afterwards. As long as its members stay side
 * by side it is still the same ones: moved within it, or to its very edge, they
 * stay in it. Otherwise it is as if places were put in at the one end and taken
 * out at the other: what leaves it no longer belongs, what comes between does.
 */
export function runAfterMove({ first, last }: Run, move: LineMove): Run {
  const { low, middle, high } = stretches(move);
  const all = (first <= low && last >= high - 1) || low === high;
  const outside = last < low || first >= high;
  const inOne = first >= low && last < high && (last < middle || first >= middle);
  if (all || outside) return { first, last };
  if (inOne) return { first: placeAfterMove(first, move), last: placeAfterMove(last, move) };
  const { at, count, to } = move;
  const source = at >= to ? at + count : at;
  const end = source + count;
  const start = first >= to ? first + count : first;
  const stop = last >= to ? last + count : last;
  return {
    first: start >= end ? start - count : Math.min(start, source),
    last: stop >= end ? stop - count : Math.min(stop, source - 1),
  };
}
