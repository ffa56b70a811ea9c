/**
 * Where the cells of a late answer stand now. While the worker answers one
 * edit, the next may already have put rows in; its answer speaks of the rows
 * as they were.
 */
import type { Effect, SheetId } from '../workbook/types.ts';
import type { SheetChanges } from './protocol.ts';

/** In `row`: this cell is no more. */
export const GONE = 0xffff_ffff;

export interface Places {
  readonly row: Uint32Array;
  readonly col: Uint16Array;
}

type Shift = Extract<Effect, { count: number }>;
export type Ordering = Extract<Effect, { do: 'orderRows' }>;

export const sheetOf = (effect: Extract<Effect, { sheet: SheetId }> | Ordering): SheetId => (effect.do === 'orderRows' ? effect.area.sheet : effect.sheet);

/** Where each row of a block stands after they changed places. */
export function rowsAfterOrder({ area, order }: Ordering): (row: number) => number {
  const to = new Int32Array(order.length);
  for (let at = 0; at < order.length; at++) to[order[at]!] = area.top + at;
  return (row) => (row < area.top || row > area.bottom ? row : to[row - area.top]!);
}


export function isShift(effect: Effect): effect is Shift {
  switch (effect.do) {
    case 'insertRows': case 'removeRows': case 'insertColumns': case 'removeColumns': return true;
    default: return false;
  }
}

/** True when the effect moves results or does away with some: what a cell gave before it was typed anew is nothing to it now. */
export const movesResults = (effect: Effect): boolean => effect.do !== 'name' && effect.do !== 'layouts';

export function sheetIsKept(sheet: SheetId, effects: readonly Effect[]): boolean {
  return effects.every((effect) => effect.do !== 'sheets' || effect.sheets.some(({ id }) => id === sheet));
}

/** More than the columns of a sheet, so that row and column make one number. */
const COLUMNS = 1024;

/** The places of `changes` after `effects`; `GONE` rows for cells that went out with their row or column, or were typed anew. */
export function placesAfter(changes: SheetChanges, effects: readonly Effect[]): Places {
  const steps = effects.filter((effect) => (isShift(effect) || effect.do === 'cells' || effect.do === 'orderRows') && sheetOf(effect) === changes.sheet);
  if (steps.length === 0) return changes;
  const row = changes.row.slice();
  const col = changes.col.slice();
  for (const shift of steps) {
    if (shift.do === 'cells') {
      const typed = new Set(shift.cells.map((cell) => cell.row * COLUMNS + cell.col));
      for (let i = 0; i < row.length; i++) if (row[i] !== GONE && typed.has(row[i]! * COLUMNS + col[i]!)) row[i] = GONE;
      continue;
    }
    if (shift.do === 'orderRows') {
      const { left, right } = shift.area;
      const rowAfter = rowsAfterOrder(shift);
      for (let i = 0; i < row.length; i++) if (row[i] !== GONE && col[i]! >= left && col[i]! <= right) row[i] = rowAfter(row[i]!);
      continue;
    }
    if (!isShift(shift)) continue;
    const along = shift.do === 'insertRows' || shift.do === 'removeRows' ? row : col;
    const inserts = shift.do === 'insertRows' || shift.do === 'insertColumns';
    for (let i = 0; i < row.length; i++) {
      const place = along[i]!;
      if (row[i] === GONE || place < shift.at) continue;
      if (inserts) along[i] = place + shift.count;
      else if (place < shift.at + shift.count) row[i] = GONE;
      else along[i] = place - shift.count;
    }
  }
  return { row, col };
}
