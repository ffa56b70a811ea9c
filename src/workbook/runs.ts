/** Stretches of rows or columns in their normal form: ascending, none empty, none touching the next. */
import { placeAfterMove } from '../formula/index.ts';
import type { LineMove } from '../formula/index.ts';
import type { Shift } from './area.ts';
import type { Runs } from './types.ts';

type Pair = readonly [first: number, last: number];

export const NO_RUNS: Runs = [];

/** Any stretches, in normal form; what lies outside of the first `limit` places is left out. */
export function normalRuns(pairs: Iterable<Pair>, limit = Infinity): Runs {
  const sorted = Array.from(pairs, ([first, last]): Pair => [Math.max(0, first) + 0, Math.min(last, limit - 1)])
    .filter(([first, last]) => first <= last)
    .sort((a, b) => a[0] - b[0]);
  const runs: [number, number][] = [];
  for (const [first, last] of sorted) {
    const before = runs.at(-1);
    if (before && first <= before[1] + 1) before[1] = Math.max(before[1], last);
    else runs.push([first, last]);
  }
  return runs;
}

export function runsOf(places: Iterable<number>): Runs {
  return normalRuns(Array.from(places, (place): Pair => [place, place]));
}

export function sameRuns(a: Runs, b: Runs): boolean {
  return a === b || (a.length === b.length && a.every(([first, last], at) => first === b[at]![0] && last === b[at]![1]));
}

/** How many places are in them. */
export function countOf(runs: Runs): number {
  return runs.reduce((sum, [first, last]) => sum + last - first + 1, 0);
}

/** Looks by halves: a filter may leave very many stretches. */
export function inRuns(runs: Runs, place: number): boolean {
  let [low, high] = [0, runs.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (runs[middle]![1] < place) low = middle + 1;
    else high = middle;
  }
  return low < runs.length && runs[low]![0] <= place;
}

export function joinRuns(a: Runs, b: Runs): Runs {
  if (a.length === 0) return b;
  return b.length === 0 ? a : normalRuns([...a, ...b]);
}

/** Those of `runs` that are not between `first` and `last`. */
export function withoutRun(runs: Runs, first: number, last: number): Runs {
  return runs.flatMap(([start, end]): Pair[] => {
    if (end < first || start > last) return [[start, end]];
    return ([[start, first - 1], [last + 1, end]] as Pair[]).filter(([from, to]) => from <= to);
  });
}

/** What comes in between is not among them, even in the middle of a stretch. */
export function shiftRuns(runs: Runs, { kind, at, count }: Shift, limit: number): Runs {
  if (runs.every(([, last]) => last < at)) return runs;
  if (kind === 'remove') {
    return normalRuns(withoutRun(runs, at, at + count - 1).map(([first, last]): Pair => (first < at ? [first, last] : [first - count, last - count])));
  }
  const moved = cutAt(runs, [at]).map(([first, last]): Pair => (first < at ? [first, last] : [first + count, last + count]));
  return moved.filter(([first]) => first < limit).map(([first, last]): Pair => [first, Math.min(last, limit - 1)]);
}

export function moveRuns(runs: Runs, move: LineMove): Runs {
  const { at, count, to } = move;
  return normalRuns(cutAt(runs, [at, at + count, to]).map(([first, last]): Pair => [placeAfterMove(first, move), placeAfterMove(last, move)]));
}

/** The same places in stretches of which none reaches over one of the cuts. */
function cutAt(runs: Runs, cuts: readonly number[]): readonly Pair[] {
  return cuts.reduce<readonly Pair[]>((pieces, cut) => pieces.flatMap(([first, last]): Pair[] => (
    first < cut && cut <= last ? [[first, cut - 1], [cut, last]] : [[first, last]])), runs);
}
