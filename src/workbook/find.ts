/** Find and replace: in what was typed, in formulas, in notes, and (to find only) in what formulas give. */
import { isFormula } from '../formula/index.ts';
import { cellAt, sheetById } from './book.ts';
import { plural } from './limits.ts';
import { EditRefused } from './refused.ts';
import type { Book, Cell, CellChange, Edit, Sheet, SheetId } from './types.ts';

export type FindPlace = 'value' | 'formula' | 'note' | 'result';

export interface FindQuery {
  /** As it is; no sign in it means anything else. */
  readonly text: string;
  readonly places: Readonly<Record<FindPlace, boolean>>;
  /** The text must be all that is there. */
  readonly whole: boolean;
  /** `bust` does not find `Bust`. */
  readonly matchCase: boolean;
  /** Only this sheet; `null` looks through all. */
  readonly sheet: SheetId | null;
}

export interface FoundText {
  readonly sheet: SheetId;
  readonly row: number;
  readonly col: number;
  readonly place: FindPlace;
  /** All of the text in which it was found. */
  readonly text: string;
  /** How often it is in there. */
  readonly times: number;
}

/** What a cell's result shows, empty when it has none. */
export type ShownAt = (sheet: SheetId, row: number, col: number) => string;

/** The text as a pattern that finds just it. */
function patternOf({ text, whole, matchCase }: FindQuery): RegExp {
  const plain = text.replace(/[\\^$.*+?()[\]{}|/]/g, (sign) => `\\${sign}`);
  return new RegExp(whole ? `^\\s*${plain}\\s*$` : plain, matchCase ? 'gu' : 'giu');
}

/** Finds in one row at a time, so that whoever looks through very many can do it in slices. */
export type RowFinder = (sheet: Sheet, row: number) => readonly FoundText[];

const NONE: readonly FoundText[] = [];

export function rowFinder(query: FindQuery, shownAt?: ShownAt): RowFinder {
  if (query.text === '') return () => NONE;
  const pattern = patternOf(query);
  const { places } = query;
  return (sheet, row) => {
    let found: FoundText[] | null = null;
    const look = (col: number, place: FindPlace, text: string): void => {
      const times = text.match(pattern)?.length ?? 0;
      if (times > 0) (found ??= []).push({ sheet: sheet.id, row, col, place, text, times });
    };
    const cells = sheet.rows[row] ?? [];
    for (let col = 0; col < cells.length; col++) {
      const cell = cells[col];
      if (!cell) continue;
      if (isFormula(cell.raw)) {
        if (places.formula) look(col, 'formula', cell.raw);
        if (places.result && shownAt) look(col, 'result', shownAt(sheet.id, row, col));
      } else if (places.value && cell.raw !== '') look(col, 'value', cell.raw);
      if (places.note && cell.note) look(col, 'note', cell.note);
    }
    return found ?? NONE;
  };
}

/** All places in the order of the sheets and in reading order; none for an empty text. */
export function findAll(book: Book, query: FindQuery, shownAt?: ShownAt): readonly FoundText[] {
  if (query.text === '') return NONE;
  const findIn = rowFinder(query, shownAt);
  const found: FoundText[] = [];
  for (const sheet of book.sheets) {
    if (query.sheet !== null && sheet.id !== query.sheet) continue;
    for (let row = 0; row < sheet.rows.length; row++) for (const each of findIn(sheet, row)) found.push(each);
  }
  return found;
}

/** A text in pieces, for marking what was found in it. */
export function partsFound(text: string, query: FindQuery): readonly { readonly text: string; readonly found: boolean }[] {
  const parts: { text: string; found: boolean }[] = [];
  let done = 0;
  for (const match of query.text === '' ? [] : text.matchAll(patternOf(query))) {
    if (match.index > done) parts.push({ text: text.slice(done, match.index), found: false });
    parts.push({ text: match[0], found: true });
    done = match.index + match[0].length;
  }
  return done < text.length ? [...parts, { text: text.slice(done), found: false }] : parts;
}

/** What becomes of a text; the same text where nothing is found in it. */
export function replaced(text: string, query: FindQuery, by: string): string {
  return query.text === '' ? text : text.replace(patternOf(query), () => by);
}

/**
 * The edit that replaces in some of the places that were found: one step.
 * Results are what they are; only what was typed can be replaced.
 *
 * @throws EditRefused when nothing of it can be, or when it makes a text that no cell can hold
 */
export function replaceEdit(book: Book, found: readonly FoundText[], query: FindQuery, by: string): Edit {
  const bySheet = new Map<SheetId, Map<string, CellChange>>();
  let times = 0;
  for (const { sheet: id, row, col, place } of found) {
    const sheet = sheetById(book, id);
    if (!sheet || place === 'result') continue;
    const cells = bySheet.get(id) ?? new Map<string, CellChange>();
    const key = `${row} ${col}`;
    const now = cells.get(key)?.cell ?? cellAt(sheet, row, col);
    const next = now && cellWith(now, place, query, by);
    if (!next || next === now) continue;
    cells.set(key, { row, col, cell: next });
    bySheet.set(id, cells);
    times += 1;
  }
  if (times === 0) throw new EditRefused(`There is nothing here in which “${query.text}” could be replaced: a result changes only with what it comes from.`);
  const cells = [...bySheet.values()].reduce((sum, each) => sum + each.size, 0);
  const [only] = bySheet.size === 1 ? [...bySheet.keys()] : [];
  const where = only === undefined ? 'the workbook' : sheetById(book, only)?.name ?? '';
  return {
    do: 'many',
    label: `replace ${short(query.text)} in ${plural(cells, 'cell')} of ${where}`,
    edits: [...bySheet].map(([sheet, each]): Edit => ({ do: 'setCells', sheet, cells: [...each.values()] })),
  };
}

const short = (text: string): string => `“${text.length > 24 ? `${text.slice(0, 23)}…` : text}”`;

/** The same cell when it does not hold the text any more. */
function cellWith(cell: Cell, place: FindPlace, query: FindQuery, by: string): Cell {
  if (place === 'note') {
    const note = replaced(cell.note ?? '', query, by);
    return note === (cell.note ?? '') ? cell : { ...cell, note };
  }
  if (isFormula(cell.raw) !== (place === 'formula')) return cell;
  const raw = replaced(cell.raw, query, by);
  return raw === cell.raw ? cell : { ...cell, raw };
}
