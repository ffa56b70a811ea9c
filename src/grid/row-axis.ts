/**
 * Where the rows of a sheet lie one under another, in CSS pixels: most have
 * the usual height, hidden ones none, and a row with several lines of text in
 * a cell is taller, up to `MOST_LINES`. Only rows that differ are written down;
 * finding a place is arithmetic where there are none, and by halves where
 * there are.
 */
import type { Runs } from '../workbook/types.ts';
import { Shown, lastAtMost } from './shown.ts';

export const ROW_HEIGHT = 30;
/** What each line of text after the first adds. */
export const LINE_HEIGHT = 20;
/** More lines than these are not shown; a mark says how many there are. */
export const MOST_LINES = 6;

export interface RowsOfView {
  readonly rowCount: number;
  readonly hidden?: { readonly rows: Runs };
  readonly tall?: readonly (readonly [row: number, lines: number])[];
}

/** How many lines of a row show. */
export const linesShown = (lines: number): number => Math.max(1, Math.min(MOST_LINES, lines));

export class RowAxis {
  readonly shown: Shown;
  /** Of all rows. */
  readonly height: number;
  /** Rows taller than usual that show, and how much all of them up to and with each add. */
  readonly #tall: readonly number[];
  readonly #lines: readonly number[];
  readonly #added: readonly number[];

  constructor({ rowCount, hidden, tall = [] }: RowsOfView) {
    this.shown = new Shown(hidden?.rows ?? [], rowCount);
    const taller = tall.filter(([row, lines]) => row < rowCount && lines > 1 && this.shown.has(row));
    this.#tall = taller.map(([row]) => row);
    this.#lines = taller.map(([, lines]) => linesShown(lines));
    let sum = 0;
    this.#added = this.#lines.map((lines) => (sum += (lines - 1) * LINE_HEIGHT));
    this.height = this.shown.count * ROW_HEIGHT + sum;
  }

  get rowCount(): number {
    return this.shown.total;
  }

  /** From the top of the first row; a hidden row lies where the next one does. One past the last is the end of all. */
  top(row: number): number {
    const before = this.#tall.length === 0 ? -1 : lastAtMost(this.#tall, row - 1);
    return this.shown.rank(row) * ROW_HEIGHT + (before < 0 ? 0 : this.#added[before]!);
  }

  /** Lines that show, from 1. */
  lines(row: number): number {
    if (this.#tall.length === 0) return 1;
    const at = lastAtMost(this.#tall, row);
    return at >= 0 && this.#tall[at] === row ? this.#lines[at]! : 1;
  }

  heightOf(row: number): number {
    return this.shown.has(row) ? ROW_HEIGHT + (this.lines(row) - 1) * LINE_HEIGHT : 0;
  }

  /** The row at a height; the nearest that shows when it lies outside. */
  at(y: number): number {
    if (this.#tall.length === 0) return this.shown.at(Math.floor(y / ROW_HEIGHT));
    // The last tall row that begins at or above.
    let low = -1;
    let high = this.#tall.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (this.top(this.#tall[middle]!) <= y) low = middle;
      else high = middle - 1;
    }
    if (low < 0) return this.shown.at(Math.floor(y / ROW_HEIGHT));
    const tall = this.#tall[low]!;
    const below = y - this.top(tall) - this.heightOf(tall);
    return below < 0 ? tall : this.shown.at(this.shown.rank(tall) + 1 + Math.floor(below / ROW_HEIGHT));
  }
}
