/** The block of filled cells in which a cell stands, as eyes would see it: bounded by empty rows and columns, or by the sheet's edge. */
import { cellAt, usedColumns } from './book.ts';
import type { Area, Sheet } from './types.ts';

type Box = { top: number; left: number; bottom: number; right: number };

/** The cell alone when nothing stands in it or beside it. */
export function regionAround(sheet: Sheet, row: number, col: number): Area {
  const box: Box = { top: row, left: col, bottom: row, right: col };
  const [lastRow, lastCol] = [sheet.rows.length - 1, usedColumns(sheet) - 1];
  const rowFilled = (at: number): boolean => some(Math.max(0, box.left - 1), Math.min(lastCol, box.right + 1), (c) => filled(sheet, at, c));
  const colFilled = (at: number): boolean => some(Math.max(0, box.top - 1), Math.min(lastRow, box.bottom + 1), (r) => filled(sheet, r, at));
  for (let grew = true; grew;) {
    grew = false;
    while (box.bottom < lastRow && rowFilled(box.bottom + 1)) [box.bottom, grew] = [box.bottom + 1, true];
    while (box.top > 0 && rowFilled(box.top - 1)) [box.top, grew] = [box.top - 1, true];
    while (box.right < lastCol && colFilled(box.right + 1)) [box.right, grew] = [box.right + 1, true];
    while (box.left > 0 && colFilled(box.left - 1)) [box.left, grew] = [box.left - 1, true];
  }
  return { sheet: sheet.id, ...box };
}

/** True when filled cells lie right beside the block: they would stay where they are while it changes. */
export function hasNeighbours(sheet: Sheet, { top, left, bottom, right }: Omit<Area, 'sheet'>): boolean {
  const last = Math.min(bottom, sheet.rows.length - 1);
  return [left - 1, right + 1].some((col) => col >= 0 && some(top, last, (row) => filled(sheet, row, col)));
}

function some(from: number, to: number, test: (at: number) => boolean): boolean {
  for (let at = from; at <= to; at++) if (test(at)) return true;
  return false;
}

const filled = (sheet: Sheet, row: number, col: number): boolean => (cellAt(sheet, row, col)?.raw ?? '') !== '';

/**
 * Whether the first row of a block is likely to be its headings: marked as
 * such, kept in view, or words over figures. Only a guess, for a box to tick.
 */
export function firstRowIsHeadings(sheet: Sheet, { top, left, bottom, right }: Omit<Area, 'sheet'>, isFigure: (row: number, col: number) => boolean): boolean {
  if (bottom === top) return false;
  const cols = Array.from({ length: Math.min(right, usedColumns(sheet) - 1) - left + 1 }, (_, at) => left + at).filter((col) => filled(sheet, top, col));
  if (cols.length === 0) return false;
  if (cols.some((col) => cellAt(sheet, top, col)?.look?.heading) || (sheet.frozen && sheet.frozen.rows === top + 1)) return true;
  return cols.every((col) => !isFigure(top, col)) && cols.some((col) => isFigure(top + 1, col));
}
