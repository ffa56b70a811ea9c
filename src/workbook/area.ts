/** Blocks of cells: their size, and where they go when rows and columns come and go. */
import { EditRefused } from './refused.ts';
import { LIMITS, isIndex } from './limits.ts';
import type { Area, CellAddress } from './types.ts';

export type Axis = 'rows' | 'columns';

export interface Shift {
  readonly axis: Axis;
  readonly kind: 'insert' | 'remove';
  readonly at: number;
  readonly count: number;
}

export const areaHeight = (area: Omit<Area, 'sheet'>): number => area.bottom - area.top + 1;
export const areaWidth = (area: Omit<Area, 'sheet'>): number => area.right - area.left + 1;

export function holds(area: Area, row: number, col: number): boolean {
  return row >= area.top && row <= area.bottom && col >= area.left && col <= area.right;
}

export function within(inner: Area, outer: Area): boolean {
  return inner.sheet === outer.sheet && holds(outer, inner.top, inner.left) && holds(outer, inner.bottom, inner.right);
}

export function sameArea(a: Area | null, b: Area | null): boolean {
  if (a === null || b === null) return a === b;
  return a.sheet === b.sheet && a.top === b.top && a.left === b.left && a.bottom === b.bottom && a.right === b.right;
}

export function isArea(area: Omit<Area, 'sheet'>): boolean {
  return isIndex(area.top, LIMITS.rows) && isIndex(area.bottom, LIMITS.rows)
    && isIndex(area.left, LIMITS.columns) && isIndex(area.right, LIMITS.columns)
    && area.top <= area.bottom && area.left <= area.right;
}

/** The block of this one's size at another place. */
export function areaAt(area: Area, to: CellAddress): Area {
  return {
    sheet: to.sheet, top: to.row, left: to.col,
    bottom: to.row + areaHeight(area) - 1, right: to.col + areaWidth(area) - 1,
  };
}

export function checkArea(area: Area): void {
  if (!isArea(area)) throw new EditRefused('That block of cells lies outside the sheet.');
}

/** Both ends of a run of rows or columns after a shift; `null` when nothing of it is left. */
function shiftRun(first: number, last: number, shift: Shift, limit: number): readonly [number, number] | null {
  const { at, count } = shift;
  if (shift.kind === 'insert') {
    const start = first >= at ? first + count : first;
    const end = Math.min(last >= at ? last + count : last, limit - 1);
    return start <= end ? [start, end] : null;
  }
  const past = at + count;
  const start = first < at ? first : first < past ? at : first - count;
  const end = last < at ? last : last < past ? at - 1 : last - count;
  return start <= end ? [start, end] : null;
}

/** True for whole columns when rows come or go, and the other way round: they stay whole, as `B:B` does in a formula. */
export function isWhole(area: Area, axis: Axis): boolean {
  return axis === 'rows' ? areaHeight(area) === LIMITS.rows : areaWidth(area) === LIMITS.columns;
}

/** Where a block of the same sheet is after a shift; `null` when it was removed whole. */
export function shiftArea(area: Area, shift: Shift): Area | null {
  if (isWhole(area, shift.axis)) return area;
  if (shift.axis === 'rows') {
    const run = shiftRun(area.top, area.bottom, shift, LIMITS.rows);
    return run && { ...area, top: run[0], bottom: run[1] };
  }
  const run = shiftRun(area.left, area.right, shift, LIMITS.columns);
  return run && { ...area, left: run[0], right: run[1] };
}

export function opposite(shift: Shift): Shift {
  return { ...shift, kind: shift.kind === 'insert' ? 'remove' : 'insert' };
}
