/** Empty workbooks and looking things up in full ones. */
import { isFormula, sameName } from '../formula/index.ts';
import type { Area, Book, Cell, NamedArea, Sheet, SheetId } from './types.ts';

/** A workbook with one empty sheet. */
export function emptyBook(id: string): Book {
  return {
    id,
    title: '',
    person: '',
    settings: { show: 'own', inchStep: 8 },
    sheets: [emptySheet(1, 'Sheet 1')],
    names: [],
    nextSheetId: 2,
  };
}

export function emptySheet(id: SheetId, name: string): Sheet {
  return { id, name, rows: [], widths: {} };
}

/** Row and column count from 0. */
export function cellAt(sheet: Sheet, row: number, col: number): Cell | undefined {
  return sheet.rows[row]?.[col];
}

export function sheetById(book: Book, id: SheetId): Sheet | undefined {
  return book.sheets.find((sheet) => sheet.id === id);
}

/** Without regard to case. */
export function sheetNamed(book: Book, name: string): Sheet | undefined {
  return book.sheets.find((sheet) => sameName(sheet.name, name));
}

/** Without regard to case. */
export function nameCalled(book: Book, name: string): NamedArea | undefined {
  return book.names.find((named) => sameName(named.name, name));
}

/** How many columns have something in them, counted from the first. */
export function usedColumns(sheet: Sheet): number {
  let most = 0;
  for (const row of sheet.rows) if (row && row.length > most) most = row.length;
  return most;
}

/** The least block from A1 that holds every cell; `null` when there is none. */
export function usedArea(sheet: Sheet): Area | null {
  if (sheet.rows.length === 0) return null;
  return { sheet: sheet.id, top: 0, left: 0, bottom: sheet.rows.length - 1, right: usedColumns(sheet) - 1 };
}

export interface PlacedCell {
  readonly row: number;
  readonly col: number;
  readonly cell: Cell;
}

/** Every cell that is there, in reading order; of a block only, when one is given. */
export function* filledCells(sheet: Sheet, within?: Omit<Area, 'sheet'>): Generator<PlacedCell> {
  const { top = 0, left = 0, bottom = Infinity, right = Infinity } = within ?? {};
  const lastRow = Math.min(bottom, sheet.rows.length - 1);
  for (let row = top; row <= lastRow; row++) {
    const cells = sheet.rows[row];
    if (!cells) continue;
    const lastCol = Math.min(right, cells.length - 1);
    for (let col = left; col <= lastCol; col++) {
      const cell = cells[col];
      if (cell) yield { row, col, cell };
    }
  }
}

/** Every cell with a formula. */
export function* formulaCells(sheet: Sheet): Generator<PlacedCell> {
  for (let row = 0; row < sheet.rows.length; row++) {
    const cells = sheet.rows[row];
    if (!cells) continue;
    for (let col = 0; col < cells.length; col++) {
      const cell = cells[col];
      if (cell && isFormula(cell.raw)) yield { row, col, cell };
    }
  }
}

export function withSheet(book: Book, sheet: Sheet): Book {
  return { ...book, sheets: book.sheets.map((other) => (other.id === sheet.id ? sheet : other)) };
}
