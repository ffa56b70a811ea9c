/** What commands mean as edits of the workbook. No looks, no storage. */
import type { UnitCode } from '../quantities/index.ts';
import {
  EditRefused, LIMITS, aroundLines, cellAt, emptySheet, freeSheetName, pastedLines, seenCells, seenIn, sheetById,
  type Area, type Cell, type CellAddress, type CellChange, type Edit, type Look,
} from '../workbook/index.ts';
import { attempt } from './attempt.ts';
import type { Desk } from './desk.ts';
import { cellsInWords, linesInWords, sayDone, unseen } from './out-of-sight.ts';

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

/** As many as are selected and show: what is hidden among them is not counted in, and not removed. */
export function structure(desk: Desk, what: 'insertRows' | 'removeRows' | 'insertColumns' | 'removeColumns'): void {
  const { sheet, area } = desk;
  const axis = what.endsWith('Rows') ? 'rows' : 'columns';
  const lines = seenIn(sheet, area)[axis];
  const edit = (at: number, count: number): Edit => ({ do: what, sheet: sheet.id, at, count });
  if (what.startsWith('insert') || lines.runs.length === 1) {
    const done = desk.do(edit(what.startsWith('insert') ? (axis === 'rows' ? area.top : area.left) : lines.at(0), lines.count));
    if (done && what.startsWith('remove')) sayDone(desk, `Removed ${linesInWords(lines.count, axis)}`, unseen(sheet, area, axis));
    return;
  }
  if (lines.runs.length * Math.max(1, sheet.rows.length) > MOST_WORK) {
    desk.say(`The ${linesInWords(lines.count, axis)} that show lie in ${lines.runs.length.toLocaleString('en')} places with hidden ones in between, which is too much at once. Sort the rows first, so that they lie together, or remove fewer.`);
    return;
  }
  // From the end on, so that those before stay where they are.
  const edits = lines.runs.toReversed().map(([first, last]) => edit(first, last - first + 1));
  const done = desk.do({ do: 'many', label: `remove ${linesInWords(lines.count, axis)} from ${sheet.name}`, edits });
  if (done) sayDone(desk, `Removed ${linesInWords(lines.count, axis)}`, unseen(sheet, area, axis));
}

/** Stretches that are removed one after another, times the rows that are looked through for each. */
const MOST_WORK = 2_000_000;

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

/** Empties the cells that show. */
export function clearArea(desk: Desk, area: Area): void {
  const { sheet } = desk;
  const cells = [...seenCells(sheet, area)]
    .filter(({ cell }) => cell.raw !== '')
    .map(({ row, col, cell }): CellChange => ({ row, col, cell: emptied(cell) }));
  const left = unseen(sheet, area);
  if (cells.length) {
    if (desk.do({ do: 'setCells', sheet: area.sheet, cells })) sayDone(desk, `Emptied ${cellsInWords(cells.length)}`, left);
  } else if (left !== '') desk.say(`There is nothing to empty in the cells that show; ${left} left as before.`);
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

/**
 * Text from elsewhere, as rows of cells, into the rows and columns that show,
 * from the selection's top left: one edit. Fills a selection into which it
 * goes a whole number of times.
 */
export function pasteTable(desk: Desk, table: readonly (readonly string[])[], area: Area): void {
  const { sheet } = desk;
  const [height, width] = [table.length, Math.max(1, ...table.map((texts) => texts.length))];
  let where: Area | null = null;
  const done = attempt(desk, () => {
    const { rows, columns } = pastedLines(sheet, area, height, width);
    if (rows.count * columns.count > LIMITS.paste) throw new EditRefused(`That would fill ${cellsInWords(rows.count * columns.count)} of ${sheet.name}; at most ${LIMITS.paste.toLocaleString('en')} can be pasted at once. Copy a smaller part.`);
    where = aroundLines(area.sheet, { rows, columns });
    const cells: CellChange[] = [];
    for (let down = 0; down < rows.count; down++) {
      const texts = table[down % height]!;
      for (let across = 0; across < columns.count; across++) {
        const raw = texts[across % width];
        // A line that is shorter than others leaves the rest as it is.
        if (raw === undefined) continue;
        const [row, col] = [rows.at(down), columns.at(across)];
        const before = cellAt(sheet, row, col);
        cells.push({ row, col, cell: raw === '' ? emptied(before) : { ...before, raw } });
      }
    }
    return { do: 'many', label: `paste ${cellsInWords(cells.length)} in ${sheet.name}`, edits: [{ do: 'setCells', sheet: sheet.id, cells }] };
  });
  if (!where) return;
  desk.selectArea(where);
  if (done) sayDone(desk, `Pasted ${cellsInWords(height * width)}`, unseen(sheet, where));
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

/** One cell may be marked while it is empty; of a larger selection only the filled cells that show are. */
function selectedCells(desk: Desk): { row: number; col: number; cell: Cell }[] {
  const { rows, columns } = seenIn(desk.sheet, desk.area);
  if (rows.count === 1 && columns.count === 1) {
    const [row, col] = [rows.at(0), columns.at(0)];
    return [{ row, col, cell: cellAt(desk.sheet, row, col) ?? { raw: '' } }];
  }
  return [...seenCells(desk.sheet, desk.area)];
}

function changeSelected(desk: Desk, change: (cell: Cell) => Cell): void {
  const left = unseen(desk.sheet, desk.area);
  const cells = selectedCells(desk).map(({ row, col, cell }): CellChange => {
    const next = change(cell);
    return { row, col, cell: next.raw === '' ? emptied(next) : next };
  });
  if (cells.length && desk.do({ do: 'setCells', sheet: desk.sheetId, cells })) sayDone(desk, `Changed how ${cellsInWords(cells.length)} show`, left);
}
