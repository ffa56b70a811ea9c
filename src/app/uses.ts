/** What a formula reads, by its text: its references and its names, as blocks of cells. */
import { foldName, isFormula, referencesIn, sameName, tokenize } from '../formula/index.ts';
import { LIMITS, cellAt, sheetById, type Area, type Book, type CellAddress, type SheetId } from '../workbook/index.ts';

export function areasIn(raw: string, book: Book, own: SheetId): Area[] {
  if (!isFormula(raw)) return [];
  const names = book.names.map(({ name }) => name);
  const written = referencesIn(raw, names).flatMap(({ sheet: name, area }): Area[] => {
    const sheet = name === undefined ? own : book.sheets.find((each) => sameName(each.name, name))?.id;
    return sheet === undefined ? [] : [{ ...area, sheet, bottom: Math.min(area.bottom, LIMITS.rows - 1), right: Math.min(area.right, LIMITS.columns - 1) }];
  });
  const named = tokenize(raw, names).filter(({ kind }) => kind === 'name').flatMap(({ text }): Area[] => {
    const area = book.names.find(({ name }) => foldName(name) === foldName(text))?.area;
    return area ? [area] : [];
  });
  return [...written, ...named];
}

export const holds = ({ sheet, top, left, bottom, right }: Area, cell: CellAddress): boolean =>
  sheet === cell.sheet && cell.row >= top && cell.row <= bottom && cell.col >= left && cell.col <= right;

/** True when the formula in a cell reads another cell itself, not through others. */
export function reads(book: Book, cell: CellAddress, other: CellAddress): boolean {
  const sheet = sheetById(book, cell.sheet);
  const raw = (sheet && cellAt(sheet, cell.row, cell.col)?.raw) ?? '';
  return areasIn(raw, book, cell.sheet).some((area) => holds(area, other));
}
