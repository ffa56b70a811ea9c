/**
 * Which rows, or columns, show. Each that shows has a rank: how many show
 * before it. Where nothing is hidden a rank is the number itself and nothing
 * is looked up; else by halves, because a filter may leave very many stretches.
 */
import type { Runs } from '../workbook/types.ts';

export class Shown {
  /** How many show; at least one, for a sheet without a cell cannot be used. */
  readonly count: number;
  readonly #firsts: readonly number[];
  readonly #lasts: readonly number[];
  /** How many are hidden before each stretch, and in all. */
  readonly #before: readonly number[];

  /** @param runs hidden ones: ascending, none touching the next; they may reach past the end. */
  constructor(runs: Runs, readonly total: number) {
    const inside = runs.filter(([first]) => first < total);
    const all = inside.length === 1 && inside[0]![0] === 0 && inside[0]![1] >= total - 1;
    const kept = all ? [] : inside;
    this.#firsts = kept.map(([first]) => first);
    this.#lasts = kept.map(([, last]) => Math.min(last, total - 1));
    const before = [0];
    for (let at = 0; at < kept.length; at++) before.push(before[at]! + this.#lasts[at]! - this.#firsts[at]! + 1);
    this.#before = before;
    this.count = total - before[kept.length]!;
  }

  /** True when nothing is hidden. */
  get all(): boolean {
    return this.#firsts.length === 0;
  }

  has(index: number): boolean {
    const run = lastAtMost(this.#firsts, index);
    return run < 0 || index > this.#lasts[run]!;
  }

  /** How many show before it; for a hidden one the rank of the next that shows. */
  rank(index: number): number {
    const run = lastAtMost(this.#firsts, index);
    if (run < 0) return index;
    const hidden = this.#before[run + 1]!;
    return Math.max(index, this.#lasts[run]! + 1) - hidden;
  }

  /** The one of a rank; the nearest end when there is none. */
  at(rank: number): number {
    const wanted = Math.max(0, Math.min(this.count - 1, rank));
    if (this.all) return wanted;
    // The last stretch that begins at or before the place the rank would have without it.
    let low = -1;
    let high = this.#firsts.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (this.#firsts[middle]! - this.#before[middle]! <= wanted) low = middle;
      else high = middle - 1;
    }
    return wanted + this.#before[low + 1]!;
  }

  /** Itself when it shows; else the next that does, or the last. */
  nearest(index: number): number {
    return this.has(index) ? index : this.at(this.rank(index));
  }

  /** The one so many on from it among those that show, as far as they reach. */
  step(index: number, by: number): number {
    if (this.all) return Math.max(0, Math.min(this.total - 1, index + by));
    const from = this.rank(index);
    return this.at(by > 0 && !this.has(index) ? from + by - 1 : from + by);
  }

  /** The hidden stretch that ends right before it. */
  hiddenBefore(index: number): readonly [first: number, last: number] | null {
    const run = lastAtMost(this.#firsts, index - 1);
    return run >= 0 && this.#lasts[run] === index - 1 ? [this.#firsts[run]!, index - 1] : null;
  }

  /** The hidden stretch after it that reaches to the end. */
  hiddenToEnd(index: number): readonly [first: number, last: number] | null {
    const run = this.#firsts.length - 1;
    return run >= 0 && this.#firsts[run] === index + 1 && this.#lasts[run] === this.total - 1 ? [index + 1, this.total - 1] : null;
  }

  /** How many of a stretch are hidden. */
  hiddenIn(first: number, last: number): number {
    return this.all ? 0 : last + 1 - first - (this.rank(last + 1) - this.rank(first));
  }
}

/** The last place in an ascending list whose number is at most `n`; -1 when there is none. */
export function lastAtMost(list: ArrayLike<number>, n: number): number {
  let low = -1;
  let high = list.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (list[middle]! <= n) low = middle;
    else high = middle - 1;
  }
  return low;
}
