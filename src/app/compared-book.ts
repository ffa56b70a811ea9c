/**
 * A case from another workbook: the inputs that are compared, as they are
 * called there. Pure.
 */
import { isFormula } from '../formula/index.ts';
import { cellAt, nameCalled, sheetNamed, type Book, type CellAddress, type Sheet } from '../workbook/index.ts';
import { columnLabel, rowLabel } from './places.ts';

/** Inputs that are taken when none is compared yet. */
const MOST = 60;

/** What is typed there for the same input; `null` where there is none, or where it is worked out. */
export function typedThere(book: Book, other: Book, cell: CellAddress): string | null {
  const there = sameInput(book, other, cell);
  const raw = there && cellAt(there.sheet, there.row, there.col)?.raw;
  return raw && !isFormula(raw) ? raw : null;
}

/** Every input of this workbook for which something else is typed there, in reading order. */
export function inputsThatDiffer(book: Book, other: Book): readonly CellAddress[] {
  const found: CellAddress[] = [];
  for (const sheet of book.sheets) {
    sheet.rows.forEach((row, at) => row?.forEach((cell, col) => {
      if (!cell?.input || isFormula(cell.raw) || found.length >= MOST) return;
      const address = { sheet: sheet.id, row: at, col };
      const raw = typedThere(book, other, address);
      if (raw !== null && raw.trim() !== cell.raw.trim()) found.push(address);
    }));
  }
  return found;
}

interface Found {
  readonly sheet: Sheet;
  readonly row: number;
  readonly col: number;
}

/** By its name if it has one; else by its sheet's name and the words beside and above it. */
function sameInput(book: Book, other: Book, { sheet: id, row, col }: CellAddress): Found | null {
  const sheet = book.sheets.find((each) => each.id === id);
  if (!sheet) return null;
  const name = book.names.find(({ area }) => area && area.sheet === id && area.top === row && area.bottom === row && area.left === col && area.right === col);
  const named = name && nameCalled(other, name.name)?.area;
  const page = named && other.sheets.find((each) => each.id === named.sheet);
  if (named && page) return { sheet: page, row: named.top, col: named.left };
  const there = sheetNamed(other, sheet.name);
  const label = rowLabel(sheet, row, col);
  if (!there || label === '') return null;
  const heading = columnLabel(sheet, row, col);
  // Where the same words stand in a column more than once, the first is the first there; rows may have been added since.
  const alike = (page: Sheet): number[] => page.rows.flatMap((_, at) => (rowLabel(page, at, col) === label && columnLabel(page, at, col) === heading ? [at] : []));
  const same = alike(there)[alike(sheet).indexOf(row)];
  return same === undefined ? null : { sheet: there, row: same, col };
}
