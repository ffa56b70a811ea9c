/** What commands about rows, columns and the look of cells mean as edits. */
import {
  LIMITS, cellAt, countOf, fillEdit, filterEdit, hiddenColumns, hiddenRows, inRuns, joinRuns, seenCells, seenIn, usedArea, withoutRun,
  type Area, type Cell, type CellChange, type Look, type Runs, type Sheet,
} from '../workbook/index.ts';
import type { LookChange } from '../panels/index.ts';
import { attempt } from './attempt.ts';
import { textAt, valueAt } from './cell-values.ts';
import type { Desk } from './desk.ts';
import { cellsInWords, sayDone, unseen } from './out-of-sight.ts';

/** A selection of whole columns or rows goes only as far as anything is filled. */
function withinUsed(sheet: Sheet, area: Area): Area {
  const used = usedArea(sheet);
  const whole = { rows: area.bottom - area.top + 1 >= LIMITS.rows, columns: area.right - area.left + 1 >= LIMITS.columns };
  return {
    ...area,
    bottom: whole.rows ? Math.max(area.top, used?.bottom ?? 0) : area.bottom,
    right: whole.columns ? Math.max(area.left, used?.right ?? 0) : area.right,
  };
}

/** The first rows of the selection up to the first empty one go on through the rest; all of them filled, the first alone does. */
export function fillDown(desk: Desk, copy = false): void {
  const area = withinUsed(desk.sheet, desk.area);
  const { rows } = seenIn(desk.sheet, area);
  if (rows.count < 2) {
    desk.say('Select the cells to fill as well: those that go on, and the empty ones below them.');
    return;
  }
  const given = leading(rows.count, (at) => isFilled(desk.sheet, { ...area, top: rows.at(at), bottom: rows.at(at) }));
  fill(desk, { ...area, bottom: rows.at(given - 1) }, area, copy);
}

export function fillRight(desk: Desk, copy = false): void {
  const area = withinUsed(desk.sheet, desk.area);
  const { columns } = seenIn(desk.sheet, area);
  if (columns.count < 2) {
    desk.say('Select the cells to fill as well: those that go on, and the empty ones to their right.');
    return;
  }
  const given = leading(columns.count, (at) => isFilled(desk.sheet, { ...area, left: columns.at(at), right: columns.at(at) }));
  fill(desk, { ...area, right: columns.at(given - 1) }, area, copy);
}

function isFilled(sheet: Sheet, area: Area): boolean {
  for (const { cell } of seenCells(sheet, area)) if (cell.raw !== '') return true;
  return false;
}

/** Fills a block from a part of it; false, with a sentence said, when that is refused. */
export function fill(desk: Desk, from: Area, to: Area, copy = false): boolean {
  const left = unseen(desk.sheet, to);
  const done = attempt(desk, () => fillEdit(desk.book, from, to, { copy }));
  if (done) sayDone(desk, 'Filled the cells that show', left);
  return done;
}

/** How many places are filled before the first empty one; 1 when none or all are. */
function leading(count: number, isFilled: (at: number) => boolean): number {
  let filled = 0;
  while (filled < count && isFilled(filled)) filled++;
  return filled === 0 || filled === count ? 1 : filled;
}

/** Rows or columns of the selection change places with the one before or after them, over whatever is hidden there. */
export function moveLines(desk: Desk, axis: 'rows' | 'columns', by: 1 | -1): void {
  const { sheet, top, bottom, left, right } = desk.area;
  const [first, last] = axis === 'rows' ? [top, bottom] : [left, right];
  const limit = axis === 'rows' ? LIMITS.rows : LIMITS.columns;
  const to = placeShown(hiddenOn(desk.sheet, axis), by < 0 ? first - 1 : last + 1, by, limit);
  if (to === null) return;
  const { selection } = desk;
  const count = last - first + 1;
  const done = desk.do({ do: axis === 'rows' ? 'moveRows' : 'moveColumns', sheet, at: first, count, to: by < 0 ? to : to + 1 });
  if (!done && desk.reading !== null) return;
  const shift = by < 0 ? to - first : to - last;
  const move = <T extends { row: number; col: number }>(place: T): T => (axis === 'rows' ? { ...place, row: place.row + shift } : { ...place, col: place.col + shift });
  desk.select({ anchor: move(selection.anchor), focus: move(selection.focus) });
}

export function hide(desk: Desk, axis: 'rows' | 'columns'): void {
  const { sheet, top, bottom, left, right } = desk.area;
  const [first, last] = axis === 'rows' ? [top, bottom] : [left, right];
  const runs = joinRuns(desk.sheet.hidden?.[axis] ?? [], [[first, last]]);
  if (!desk.do({ do: 'setHidden', sheet, axis, runs })) return;
  stepOut(desk, axis, first, last);
}

/** The selection goes on beside what was hidden, where it can be seen. */
function stepOut(desk: Desk, axis: 'rows' | 'columns', first: number, last: number): void {
  const runs = hiddenOn(desk.sheet, axis);
  const next = placeShown(runs, last + 1, 1, axis === 'rows' ? LIMITS.rows : LIMITS.columns) ?? placeShown(runs, first - 1, -1, Infinity);
  if (next === null) return;
  const { focus } = desk.selection;
  const cell = axis === 'rows' ? { row: next, col: focus.col } : { row: focus.row, col: next };
  desk.select({ anchor: cell, focus: cell });
}

const hiddenOn = (sheet: Sheet, axis: 'rows' | 'columns'): Runs => (axis === 'rows' ? hiddenRows(sheet) : hiddenColumns(sheet));

/** The nearest place that shows, from there on; `null` when there is none. */
function placeShown(runs: Runs, from: number, by: 1 | -1, limit: number): number | null {
  for (let place = from; place >= 0 && place < limit; place += by) if (!inRuns(runs, place)) return place;
  return null;
}

/** Shows what is hidden in the selection; when nothing is, all that is hidden. */
export function unhide(desk: Desk, axis: 'rows' | 'columns'): void {
  const { sheet, top, bottom, left, right } = desk.area;
  const runs = desk.sheet.hidden?.[axis] ?? [];
  const [first, last] = axis === 'rows' ? [top, bottom] : [left, right];
  const rest = withoutRun(runs, first, last);
  const next = countOf(rest) === countOf(runs) ? [] : rest;
  desk.do({ do: 'setHidden', sheet, axis, runs: next });
}

/** Keeps the rows above the active cell and the columns left of it in view. */
export function freeze(desk: Desk): void {
  const { row, col } = desk.selection.focus;
  if (row === 0 && col === 0) {
    desk.say('Go to the first cell that is to scroll: the rows above it and the columns left of it stay in view.');
    return;
  }
  desk.do({ do: 'setFrozen', sheet: desk.sheetId, rows: row, columns: col });
}

export function unfreeze(desk: Desk): void {
  desk.do({ do: 'setFrozen', sheet: desk.sheetId, rows: 0, columns: 0 });
}

/** Matches the rows of the filter that is on once more. */
export function filterAgain(desk: Desk): void {
  const { sheet } = desk;
  const { filter } = sheet;
  if (!filter) return;
  const before = filter.hides;
  const done = attempt(desk, () => filterEdit(desk.book, { sheet: sheet.id, ...filter.area }, filter.conditions, valueAt(desk, sheet.id), textAt(desk, sheet.id)));
  if (!done && before === desk.sheet.filter?.hides && desk.said === '') desk.say('The same rows match as before.');
}

export function filterOff(desk: Desk): void {
  desk.do({ do: 'setFilter', sheet: desk.sheetId, filter: null });
}

/** Up to so many selected cells get a look though they are empty, so that borders can be drawn around nothing. */
const MOST_EMPTY = 2_000;

function cellsToLook(desk: Desk): { row: number; col: number; cell: Cell }[] {
  const { rows, columns } = seenIn(desk.sheet, desk.area);
  if (rows.count * columns.count > MOST_EMPTY) return [...seenCells(desk.sheet, desk.area)];
  const cells: { row: number; col: number; cell: Cell }[] = [];
  for (const row of rows) {
    for (const col of columns) cells.push({ row, col, cell: cellAt(desk.sheet, row, col) ?? { raw: '' } });
  }
  return cells;
}

export function changeLook(desk: Desk, change: LookChange): void {
  const cells = cellsToLook(desk).map(({ row, col, cell }): CellChange => {
    const look = Object.fromEntries(Object.entries({ ...cell.look, ...change }).filter(([, value]) => value !== undefined)) as Look;
    return { row, col, cell: { ...cell, look } };
  });
  setLooks(desk, cells);
}

export function lookOff(desk: Desk): void {
  const cells = [...seenCells(desk.sheet, desk.area)].filter(({ cell }) => cell.look)
    .map(({ row, col, cell: { look: _, ...cell } }): CellChange => ({ row, col, cell }));
  setLooks(desk, cells);
}

function setLooks(desk: Desk, cells: readonly CellChange[]): void {
  const left = unseen(desk.sheet, desk.area);
  if (cells.length && desk.do({ do: 'setCells', sheet: desk.sheetId, cells })) sayDone(desk, `Changed how ${cellsInWords(cells.length)} show`, left);
}

/** True when the selected cells do not all look alike; of very many this is not looked at. */
export function looksMixed(desk: Desk): boolean {
  const { top, left, bottom, right } = desk.area;
  const count = (bottom - top + 1) * (right - left + 1);
  if (count === 1 || count > MOST_EMPTY) return false;
  const { row, col } = desk.selection.focus;
  const wanted = JSON.stringify(Object.entries(cellAt(desk.sheet, row, col)?.look ?? {}).sort());
  return [...seenCells(desk.sheet, desk.area)].some(({ cell }) => JSON.stringify(Object.entries(cell.look ?? {}).sort()) !== wanted);
}
