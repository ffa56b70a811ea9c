/**
 * Where the list to buy stands in a workbook. A list is told by its headings,
 * on whichever sheet it is: what to buy by a heading row with “Needed” and “To
 * buy”; what is needed and what is at home are named blocks that begin with
 * “Needed” or “There is”. Pure.
 */
import { cellAt, type Area, type Book, type Sheet } from '../workbook/index.ts';

export interface BuyTable {
  readonly sheet: Sheet;
  /** Columns by their headings in small letters. */
  readonly columns: ReadonlyMap<string, number>;
  /** Which column says what to ask for. */
  readonly what: number;
  /** Those that buy something. */
  readonly rows: readonly number[];
  /** The heading's row, and the first empty row below. */
  readonly top: number;
  readonly end: number;
}

/** A named block of rows, each with its thing in the first column. */
export interface ListBlock {
  readonly name: string;
  readonly sheet: Sheet;
  readonly area: Area;
  readonly columns: ReadonlyMap<string, number>;
  readonly rows: readonly number[];
}

export const fold = (text: string): string => text.trim().replace(/\s+/g, ' ').toLowerCase();

const rawAt = (sheet: Sheet, row: number, col: number): string => cellAt(sheet, row, col)?.raw ?? '';

export function buyTables(book: Book): readonly BuyTable[] {
  return book.sheets.flatMap((sheet) => sheet.rows.flatMap((row, top) => {
    const columns = headingsOf(sheet, top);
    if (!row?.some((cell) => cell?.look?.heading) || !columns.has('needed') || !columns.has('to buy')) return [];
    const what = Math.min(...columns.values());
    const rows: number[] = [];
    let end = top + 1;
    for (; sheet.rows[end]?.some((cell) => cell && cell.raw !== '' && !cell.look?.heading); end++) {
      if (rawAt(sheet, end, what) !== '' && ['to buy', 'needed'].some((heading) => rawAt(sheet, end, columns.get(heading)!) !== '')) rows.push(end);
    }
    return [{ sheet, columns, what, rows, top, end }];
  }));
}

/** The column that says how much: what is needed, where nothing is worked out from it. */
export function buyColumn({ sheet, columns }: BuyTable, row: number): number {
  const [buy, needed] = [columns.get('to buy')!, columns.get('needed')!];
  return rawAt(sheet, row, buy) === '' ? needed : buy;
}

/** @param heading of the column with figures: “needed” or “there is” */
export function listBlocks(book: Book, heading: 'needed' | 'there is'): readonly ListBlock[] {
  return book.names.flatMap(({ name, area, kind }) => {
    const sheet = kind === 'cells' && area ? book.sheets.find(({ id }) => id === area.sheet) : undefined;
    if (!area || !sheet) return [];
    const columns = headingsOf(sheet, area.top, area.left, area.right);
    if (!columns.has(heading) || columns.has('to buy') || columns.get(heading) === area.left) return [];
    const rows: number[] = [];
    for (let row = area.top + 1; row <= area.bottom; row++) if (rawAt(sheet, row, area.left) !== '') rows.push(row);
    return [{ name, sheet, area, columns, rows }];
  });
}

/** The sheet is for the shop and not for the cutting table. */
export const isForTheShop = (book: Book, sheet: Sheet): boolean => buyTables({ ...book, sheets: [sheet] }).length > 0;

function headingsOf(sheet: Sheet, row: number, left = 0, right = Infinity): Map<string, number> {
  const columns = new Map<string, number>();
  sheet.rows[row]?.forEach((cell, col) => {
    if (col < left || col > right || !cell || cell.raw === '' || cell.raw.startsWith('=')) return;
    const text = fold(cell.raw);
    if (!columns.has(text)) columns.set(text, col);
  });
  return columns;
}
