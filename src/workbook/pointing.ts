/** How records point at cells: by a formula that is one reference with its sheet, such as `=Fit!B4`. */
import { isFormula, readArea } from '../formula/index.ts';
import { sheetNamed } from './book.ts';
import type { Area, Book, CellAddress } from './types.ts';

/** The cells that a record's formula means; `null` when they are gone, or it is no such formula. */
export function areaPointedAt(book: Book, formula: string): Area | null {
  const area = isFormula(formula) ? readArea(formula.slice(1)) : undefined;
  const sheet = area?.sheet === undefined ? undefined : sheetNamed(book, area.sheet);
  return area && sheet ? { ...area, sheet: sheet.id } : null;
}

/** The same of one cell, or the first of several. */
export function cellPointedAt(book: Book, formula: string): CellAddress | null {
  const area = areaPointedAt(book, formula);
  return area && { sheet: area.sheet, row: area.top, col: area.left };
}
