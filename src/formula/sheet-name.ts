import { startsWord, wordEnd } from './characters.ts';
import type { SheetName } from './types.ts';

export interface SheetScan {
  readonly name: string;
  /** The place after the `!`. */
  readonly end: number;
}

/** Reads `Hem!` or `'My sheet'!` at a place. */
export function scanSheet(text: string, at: number): SheetScan | undefined {
  if (text.charCodeAt(at) === 39) {
    const close = closingQuote(text, at);
    if (close < 0 || text.charCodeAt(close + 1) !== 33 || close === at + 1) return undefined;
    return { name: text.slice(at + 1, close).replaceAll("''", "'"), end: close + 2 };
  }
  if (!startsWord(text, at)) return undefined;
  const end = wordEnd(text, at);
  return text.charCodeAt(end) === 33 ? { name: text.slice(at, end), end: end + 1 } : undefined;
}

/** Where the quote that opens at `at` closes, a doubled quote standing for one inside; -1 when it does not. */
export function closingQuote(text: string, at: number): number {
  const quote = text.charCodeAt(at);
  for (let p = at + 1; p < text.length; p += 1) {
    if (text.charCodeAt(p) !== quote) continue;
    if (text.charCodeAt(p + 1) !== quote) return p;
    p += 1;
  }
  return -1;
}

/** One spelling for all ways to write a sheet's name: case does not matter. */
export function foldSheet(name: string): string {
  return name.normalize('NFC').toLowerCase();
}

const indexes = new WeakMap<readonly SheetName[], Map<string, number>>();

/** The id of the sheet of that name. */
export function sheetIdOf(name: string, sheets: readonly SheetName[]): number | undefined {
  let index = indexes.get(sheets);
  if (index === undefined) {
    index = new Map(sheets.map((sheet) => [foldSheet(sheet.name), sheet.id]));
    indexes.set(sheets, index);
  }
  return index.get(foldSheet(name));
}
