/** Where things are called: the words that locate a cell for a person. */
import { cellName } from '../formula/index.ts';
import { cellAt, type Book, type CellAddress, type Sheet } from '../workbook/index.ts';

const isWords = (raw: string): boolean => raw !== '' && !raw.startsWith('=') && !/^[-+\d.,¼-¾⅐-⅞]/.test(raw);

/** The text that names a row: the nearest words to the left of the cell, in its own row. */
export function rowLabel(sheet: Sheet, row: number, col: number): string {
  for (let left = col - 1; left >= 0; left--) {
    const raw = cellAt(sheet, row, left)?.raw ?? '';
    if (isWords(raw)) return raw;
  }
  return '';
}

/** The text that names a column: the nearest heading above the cell. */
export function columnLabel(sheet: Sheet, row: number, col: number): string {
  for (let above = row - 1; above >= 0; above--) {
    const cell = cellAt(sheet, above, col);
    if (cell?.look?.heading && !cell.raw.startsWith('=')) return cell.raw;
  }
  return '';
}

/** Under no heading of their own section figures side by side go by the headings further up, as they do on the screen. */
export function headingFurtherUp(sheet: Sheet, row: number, col: number): string {
  for (let above = row - 1; above >= 0; above--) {
    const cell = cellAt(sheet, above, col);
    if (cell?.look?.heading && cell.raw !== '' && !cell.raw.startsWith('=')) return cell.raw;
  }
  return '';
}

const besideOthers = (sheet: Sheet, row: number): boolean => (sheet.rows[row] ?? []).filter((cell) => cell && cell.raw !== '' && !isWords(cell.raw)).length > 1;

export function sheetOf(book: Book, cell: CellAddress): Sheet | undefined {
  return book.sheets.find((sheet) => sheet.id === cell.sheet);
}

/** "Waist ease · Fit B6": the label first, because people know the words better than the place. */
export function placeName(book: Book, cell: CellAddress): string {
  const sheet = sheetOf(book, cell);
  const place = `${sheet?.name ?? ''} ${cellName(cell.row, cell.col)}`.trim();
  const label = sheet ? rowLabel(sheet, cell.row, cell.col) : '';
  return label ? `${label} · ${place}` : place;
}

/** The two parted, and the column with the row: "Ease on this body, Waist" and "Fit C13". */
export function cellNamed(cell: CellAddress, book: Book): { readonly label: string; readonly place: string } {
  const sheet = sheetOf(book, cell);
  if (!sheet) return { label: '', place: placeName(book, cell) };
  const { row, col } = cell;
  const words = [rowLabel(sheet, row, col), columnLabel(sheet, row, col) || (besideOthers(sheet, row) ? headingFurtherUp(sheet, row, col) : '')].filter((each) => each !== '');
  return { label: words.join(', '), place: `${sheet.name} ${cellName(cell.row, cell.col)}` };
}
