/** What commands mean as edits of the workbook. No looks, no storage. */
import type { UnitCode } from '../quantities/index.ts';
import { cellAt, emptySheet, freeSheetName, sheetById, usedArea, type Area, type Cell, type CellAddress, type CellChange, type Edit, type Look, type Sheet } from '../workbook/index.ts';
import type { Desk } from './desk.ts';

export function addBlankSheet(desk: Desk): void {
  const id = desk.book.nextSheetId;
  const at = desk.book.sheets.indexOf(desk.sheet) + 1;
  if (desk.do({ do: 'addSheet', sheet: emptySheet(id, freeSheetName('New sheet', desk.book)), at })) desk.openSheet(id);
}

export function moveSheet(desk: Desk, by: number): void {
  desk.do({ do: 'moveSheet', sheet: desk.sheetId, to: desk.book.sheets.indexOf(desk.sheet) + by });
}

export function turnSheet(desk: Desk, by: number): void {
  const { sheets } = desk.book;
  const next = sheets[(sheets.indexOf(desk.sheet) + by + sheets.length) % sheets.length];
  if (next) desk.openSheet(next.id);
}

export function structure(desk: Desk, what: 'insertRows' | 'removeRows' | 'insertColumns' | 'removeColumns'): void {
  const { sheet, top, left, bottom, right } = desk.area;
  const rows = what.endsWith('Rows');
  desk.do({ do: what, sheet, at: rows ? top : left, count: rows ? bottom - top + 1 : right - left + 1 });
}

/** Marks every selected cell, unless all are marked already: then takes the marks off. */
export function toggleInput(desk: Desk): void {
  const marked = selectedCells(desk).every(({ cell }) => cell.input);
  changeSelected(desk, ({ input: _, ...cell }) => (marked ? cell : { ...cell, input: true }));
}

export function toggleLook(desk: Desk, mark: 'heading' | 'strong'): void {
  const marked = selectedCells(desk).every(({ cell }) => cell.look?.[mark]);
  changeSelected(desk, (cell) => withLook(cell, { [mark]: marked ? undefined : true }));
}

export function showUnit(desk: Desk, unit: UnitCode | null): void {
  changeSelected(desk, (cell) => withLook(cell, { unit: unit ?? undefined }));
}

export function clearArea(desk: Desk, area: Area): void {
  const cells = filledIn(desk.sheet, area)
    .filter(({ cell }) => cell.raw !== '')
    .map(({ row, col, cell }): CellChange => ({ row, col, cell: emptied(cell) }));
  if (cells.length) desk.do({ do: 'setCells', sheet: area.sheet, cells });
}

/** Types into one cell, keeping how it looks. False when it was refused. */
export function typeInto(desk: Desk, { sheet, row, col }: CellAddress, raw: string): boolean {
  const page = sheetById(desk.book, sheet);
  const before = page && cellAt(page, row, col);
  if ((before?.raw ?? '') === raw) return true;
  const cell = raw === '' ? emptied(before) : { ...before, raw };
  return desk.do({ do: 'setCells', sheet, cells: [{ row, col, cell }] });
}

/** Columns whose widths change at once are one edit. */
export function setWidths(desk: Desk, widths: readonly { readonly col: number; readonly width: number | null }[]): void {
  const edits = widths.map(({ col, width }): Edit => ({ do: 'setWidth', sheet: desk.sheetId, col, width }));
  if (edits.length) desk.do(edits.length === 1 ? edits[0]! : { do: 'many', label: `set the width of ${edits.length} columns in ${desk.sheet.name}`, edits });
}

/** Text from elsewhere, as rows of cells, into the sheet from the selection's top left: one edit. */
export function pasteTable(desk: Desk, table: readonly (readonly string[])[], area: Area): void {
  const cells = table.flatMap((texts, down) => texts.map((raw, across): CellChange => {
    const row = area.top + down;
    const col = area.left + across;
    const before = cellAt(desk.sheet, row, col);
    return { row, col, cell: raw === '' ? emptied(before) : { ...before, raw } };
  }));
  if (cells.length) desk.do({ do: 'many', label: `paste ${cells.length} ${cells.length === 1 ? 'cell' : 'cells'} in ${desk.sheet.name}`, edits: [{ do: 'setCells', sheet: area.sheet, cells }] });
}

/** Without its text a cell keeps its marks; without marks there is nothing left of it. */
function emptied(cell: Cell | undefined): Cell | null {
  return cell && (cell.look || cell.input || cell.note) ? { ...cell, raw: '' } : null;
}

function withLook(cell: Cell, change: Partial<Record<keyof Look, unknown>>): Cell {
  const { look, ...rest } = cell;
  const next = Object.fromEntries(Object.entries({ ...look, ...change }).filter(([, value]) => value !== undefined));
  return Object.keys(next).length ? { ...rest, look: next as Look } : rest;
}

/** The filled cells of an area; a selection of whole columns must not walk a million empty rows. */
export function filledIn(sheet: Sheet, area: Area): { row: number; col: number; cell: Cell }[] {
  const used = usedArea(sheet);
  const found: { row: number; col: number; cell: Cell }[] = [];
  if (!used) return found;
  for (let row = area.top; row <= Math.min(area.bottom, used.bottom); row++) {
    for (let col = area.left; col <= Math.min(area.right, used.right); col++) {
      const cell = cellAt(sheet, row, col);
      if (cell) found.push({ row, col, cell });
    }
  }
  return found;
}

/** One cell may be marked while it is empty; of a larger selection only the filled cells are. */
function selectedCells(desk: Desk): { row: number; col: number; cell: Cell }[] {
  const { top, left, bottom, right } = desk.area;
  if (top === bottom && left === right) {
    return [{ row: top, col: left, cell: cellAt(desk.sheet, top, left) ?? { raw: '' } }];
  }
  return filledIn(desk.sheet, desk.area);
}

function changeSelected(desk: Desk, change: (cell: Cell) => Cell): void {
  const cells = selectedCells(desk).map(({ row, col, cell }): CellChange => {
    const next = change(cell);
    return { row, col, cell: next.raw === '' ? emptied(next) : next };
  });
  if (cells.length) desk.do({ do: 'setCells', sheet: desk.sheetId, cells });
}
