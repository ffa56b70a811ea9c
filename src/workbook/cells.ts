/**
 * Cells and rows in their normal form, so that equal contents are equal
 * structures:
 * - a cell has no key that says nothing (no empty look or note, `input` only
 *   when true, acknowledged pins only on a formula) and is there only if something was typed, marked or noted;
 * - a row ends with a cell, the list of rows ends with a row;
 * - an empty place before that is `undefined`, never an array's hole, which
 *   also keeps the arrays fast.
 */
import { LIMITS, counted, isIndex } from './limits.ts';
import { EditRefused } from './refused.ts';
import type { Acknowledged, Cell, CellChange, Look, Row, Sheet } from './types.ts';
import { cellName, isFormula } from '../formula/index.ts';

export interface TypedCell {
  readonly row: number;
  readonly col: number;
  readonly raw: string;
}

/** What a change of cells comes to. */
export interface CellsChanged {
  readonly sheet: Sheet;
  /** The cells before, so that setting them in this order undoes the change. */
  readonly before: readonly CellChange[];
  /** Those whose typed text changed: what the engine must know. */
  readonly typed: readonly TypedCell[];
}

const LOOK_KEYS = ['unit', 'step', 'decimals', 'strong', 'italic', 'border', 'heading', 'align'] as const satisfies readonly (keyof Look)[];

function sameLook(a: Look | undefined, b: Look | undefined): boolean {
  return a === b || LOOK_KEYS.every((key) => a?.[key] === b?.[key]);
}

export function sameCell(a: Cell | undefined, b: Cell | undefined): boolean {
  if (a === b) return true;
  if (!a || !b) return false;
  return a.raw === b.raw && a.input === b.input && a.note === b.note && sameLook(a.look, b.look) && sameAcknowledged(a.acknowledged, b.acknowledged);
}

export function sameAcknowledged(a: readonly Acknowledged[] = [], b: readonly Acknowledged[] = []): boolean {
  return a === b || (a.length === b.length && a.every(({ print, note }, i) => print === b[i]!.print && note === b[i]!.note));
}

function normalLook(look: Look | undefined): Look | undefined {
  if (!look) return undefined;
  const kept = LOOK_KEYS.filter((key) => look[key] !== undefined);
  if (kept.length === 0) return undefined;
  if (kept.length === Object.keys(look).length) return look;
  return Object.fromEntries(kept.map((key) => [key, look[key]]));
}

/** The same cell without anything that says nothing; `undefined` when that leaves nothing. */
export function normalCell(cell: Cell | null | undefined): Cell | undefined {
  if (!cell) return undefined;
  const look = normalLook(cell.look);
  const { raw, input, note } = cell;
  if (raw === '' && !look && !input && !note) return undefined;
  const acknowledged = cell.acknowledged?.length && isFormula(raw) ? cell.acknowledged : undefined;
  const keys = 1 + (look ? 1 : 0) + (input ? 1 : 0) + (note ? 1 : 0) + (acknowledged ? 1 : 0);
  if (look === cell.look && keys === Object.keys(cell).length) return cell;
  return { raw, ...(look && { look }), ...(input && { input }), ...(note && { note }), ...(acknowledged && { acknowledged }) };
}

/** Takes the empty places off the end, in place. */
function trim<T>(list: (T | undefined)[]): (T | undefined)[] {
  let length = list.length;
  while (length > 0 && list[length - 1] === undefined) length--;
  list.length = length;
  return list;
}

/** A row in normal form from cells in normal form; takes the array over. */
export function normalRow(cells: (Cell | undefined)[]): Row | undefined {
  return trim(cells).length === 0 ? undefined : cells;
}

/** Rows in normal form from rows in normal form; takes the array over. */
export function normalRows(rows: (Row | undefined)[]): readonly (Row | undefined)[] {
  return trim(rows);
}

/** Puts into a list at a place that may lie beyond its end. */
function put<T>(list: (T | undefined)[], at: number, value: T | undefined): void {
  while (list.length < at) list.push(undefined);
  list[at] = value;
}

/** Refuses text that a cell cannot hold. */
export function checkText(sheet: Sheet, row: number, col: number, text: string, what = 'text'): void {
  if (text.length <= LIMITS.characters) return;
  throw new EditRefused(
    `The ${what} for ${cellName(row, col)} of ${sheet.name} has ${counted(text.length)} characters; a cell can hold ${counted(LIMITS.characters)}.`,
  );
}

function checkChange(sheet: Sheet, { row, col, cell }: CellChange): void {
  if (!isIndex(row, LIMITS.rows) || !isIndex(col, LIMITS.columns)) {
    throw new EditRefused(
      `That would go past the edge of ${sheet.name}, which has ${counted(LIMITS.rows)} rows and ${counted(LIMITS.columns)} columns.`,
    );
  }
  if (!cell) return;
  checkText(sheet, row, col, cell.raw);
  if (cell.note) checkText(sheet, row, col, cell.note, 'note');
}

/**
 * Sets cells; copies only the list of rows and the rows that change. The same
 * sheet comes back when nothing changes. Throws `EditRefused` beyond the limits.
 */
export function withCells(sheet: Sheet, changes: Iterable<CellChange>): CellsChanged {
  const rows = new Map<number, (Cell | undefined)[]>();
  const before: CellChange[] = [];
  const typed: TypedCell[] = [];
  // Changes mostly come row by row: the row in hand is not looked up again for each.
  let at = -1;
  let given: Row | undefined;
  let cells: (Cell | undefined)[] | undefined;
  for (const change of changes) {
    checkChange(sheet, change);
    const row = change.row + 0; // -0 is 0
    const col = change.col + 0;
    if (row !== at) {
      at = row;
      cells = rows.get(row);
      given = sheet.rows[row];
    }
    const old = (cells ?? given)?.[col];
    const cell = normalCell(change.cell);
    if (sameCell(old, cell)) continue;
    if (!cells) rows.set(row, cells = given?.slice() ?? []);
    put(cells, col, cell);
    before.push({ row, col, cell: old ?? null });
    if ((old?.raw ?? '') !== (cell?.raw ?? '')) typed.push({ row, col, raw: cell?.raw ?? '' });
  }
  if (before.length === 0) return { sheet, before, typed };
  const list = sheet.rows.slice();
  for (const [row, changed] of rows) put(list, row, normalRow(changed));
  return { sheet: { ...sheet, rows: normalRows(list) }, before: before.reverse(), typed };
}

/** Any rows, holes and empty cells and all, in normal form. */
export function tidyRows(sheet: Sheet): readonly (Row | undefined)[] {
  const list: (Row | undefined)[] = [];
  for (let row = 0; row < sheet.rows.length; row++) {
    const given = sheet.rows[row];
    const cells: (Cell | undefined)[] = [];
    for (let col = 0; col < (given?.length ?? 0); col++) {
      const cell = normalCell(given?.[col]);
      if (cell) checkChange(sheet, { row, col, cell });
      cells.push(cell);
    }
    list.push(normalRow(cells));
  }
  return normalRows(list);
}
