import { MAX_COLUMNS, MAX_ROWS } from '../formula/index.ts';
import { EditRefused } from './refused.ts';

/** How much a workbook may hold. Counts, not last indices. */
export const LIMITS = {
  rows: MAX_ROWS,
  columns: MAX_COLUMNS,
  /** Characters of what is typed in a cell, and of a note. */
  characters: 32_767,
  /** Characters of a name and of a sheet's name. */
  name: 60,
  /** Characters of a title, of a person's name and of the line about a sheet. */
  line: 200,
  /** Cells that one paste may fill. */
  paste: 500_000,
  /** A column's width in CSS pixels. */
  narrowest: 24,
  widest: 1_200,
  /** Rows, and columns, that can be kept in view; more would leave no room for the rest. */
  frozen: 40,
  sheets: 250,
  records: 2_000,
  /** Digits after the decimal mark that a look may ask for. */
  decimals: 10,
  /** Places in all rows of a file, empty ones counted up to the last filled one: what fits in a page's memory. */
  places: 20_000_000,
  /** Sheets are numbered from 1; far above what hands can make, far below where whole numbers end. */
  sheetId: 1_000_000_000,
} as const satisfies Record<string, number>;

/** A whole number for a sentence: 32,767. */
export function counted(n: number): string {
  return n.toLocaleString('en-GB');
}

/** "1 row", "12 rows". */
export function plural(n: number, one: string, many = `${one}s`): string {
  return `${counted(n)} ${n === 1 ? one : many}`;
}

export function isIndex(n: unknown, limit: number): n is number {
  return Number.isInteger(n) && (n as number) >= 0 && (n as number) < limit;
}

/** Refuses a line of text that is too long. */
export function checkLine(text: string, what: string): void {
  if (text.length > LIMITS.line) {
    throw new EditRefused(`${what} has ${counted(text.length)} characters; it can have at most ${LIMITS.line}.`);
  }
}
