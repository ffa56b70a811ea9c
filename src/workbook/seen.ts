/**
 * Which rows and columns of a block show. What is done to a block of cells is
 * done to those: nobody means to change what she cannot see.
 */
import { filledCells, usedColumns } from './book.ts';
import type { PlacedCell } from './book.ts';
import { hiddenColumns, hiddenRows } from './showing.ts';
import { countOf } from './runs.ts';
import type { Area, Runs, Sheet } from './types.ts';

/** Rows or columns in order, some left out. */
export class Lines {
  /** Ascending, none touching the next. */
  readonly runs: Runs;
  readonly count: number;
  /** How many come before each stretch. */
  readonly #before: readonly number[];

  constructor(runs: Runs) {
    this.runs = runs;
    const before: number[] = [];
    let sum = 0;
    for (const [first, last] of runs) {
      before.push(sum);
      sum += last - first + 1;
    }
    this.#before = before;
    this.count = sum;
  }

  /** The first one is 0; at least one must be there. */
  at(index: number): number {
    let [low, high] = [0, this.runs.length - 1];
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (this.#before[middle]! <= index) low = middle;
      else high = middle - 1;
    }
    return this.runs[low]![0] + index - this.#before[low]!;
  }

  *[Symbol.iterator](): Generator<number> {
    for (const [first, last] of this.runs) for (let place = first; place <= last; place++) yield place;
  }
}

/** The places from one to another that are not hidden. */
export function shownBetween(hidden: Runs, first: number, last: number): Lines {
  const runs: [number, number][] = [];
  let from = first;
  for (const [start, end] of hidden) {
    if (end < from) continue;
    if (start > last) break;
    if (start > from) runs.push([from, start - 1]);
    from = end + 1;
  }
  if (from <= last) runs.push([from, last]);
  return new Lines(runs);
}

/** So many places that are not hidden, from one on; `null` when the sheet ends before. */
export function shownFrom(hidden: Runs, first: number, count: number, limit: number): Lines | null {
  const runs: [number, number][] = [];
  let wanted = count;
  for (const [start, end] of shownBetween(hidden, first, limit - 1).runs) {
    const taken = Math.min(wanted, end - start + 1);
    runs.push([start, start + taken - 1]);
    wanted -= taken;
    if (wanted === 0) return new Lines(runs);
  }
  return null;
}

export interface Seen {
  readonly rows: Lines;
  readonly columns: Lines;
}

/** The rows and columns of a block that show. */
export function seenIn(sheet: Sheet, { top, left, bottom, right }: Omit<Area, 'sheet'>): Seen {
  return { rows: shownBetween(hiddenRows(sheet), top, bottom), columns: shownBetween(hiddenColumns(sheet), left, right) };
}

/** The block around some rows and columns. */
export function aroundLines(sheet: Area['sheet'], { rows, columns }: Seen): Area {
  return { sheet, top: rows.at(0), left: columns.at(0), bottom: rows.at(rows.count - 1), right: columns.at(columns.count - 1) };
}

/** Every cell of a block that is there and shows, in reading order. */
export function* seenCells(sheet: Sheet, area: Omit<Area, 'sheet'>): Generator<PlacedCell> {
  const { rows, columns } = seenIn(sheet, area);
  for (const [top, bottom] of rows.runs) {
    if (columns.runs.length === 1) {
      const [left, right] = columns.runs[0]!;
      yield* filledCells(sheet, { top, left, bottom, right });
      continue;
    }
    for (let row = top; row <= Math.min(bottom, sheet.rows.length - 1); row++) {
      for (const [left, right] of columns.runs) yield* filledCells(sheet, { top: row, left, bottom: row, right });
    }
  }
}

/** How many rows and columns of a block do not show, as far as anything is filled. */
export function unseenIn(sheet: Sheet, { top, left, bottom, right }: Omit<Area, 'sheet'>): { readonly rows: number; readonly columns: number } {
  const inside = (hidden: Runs, first: number, last: number): number =>
    countOf(hidden.flatMap(([start, end]) => (end < first || start > last ? [] : [[Math.max(start, first), Math.min(end, last)] as const])));
  return {
    rows: inside(hiddenRows(sheet), top, Math.min(bottom, sheet.rows.length - 1)),
    columns: sheet.hidden ? inside(hiddenColumns(sheet), left, Math.min(right, usedColumns(sheet) - 1)) : 0,
  };
}
