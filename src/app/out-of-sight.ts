/**
 * What is done to a block of cells is done to those that show. What does not,
 * because of a filter or because it was hidden by hand, stays as it is, and
 * that is said.
 */
import { unseenIn, type Area, type Sheet } from '../workbook/index.ts';
import type { Desk } from './desk.ts';

const counted = (count: number, one: string): string => `${count.toLocaleString('en')} ${one}${count === 1 ? '' : 's'}`;

export const cellsInWords = (count: number): string => counted(count, 'cell');
export const linesInWords = (count: number, axis: 'rows' | 'columns'): string => counted(count, axis.slice(0, -1));

/** "12 hidden rows", or nothing when all of the block shows. */
export function unseen(sheet: Sheet, area: Area, axis?: 'rows' | 'columns'): string {
  const { rows, columns } = unseenIn(sheet, area);
  return [
    rows > 0 && axis !== 'columns' && counted(rows, 'hidden row'),
    columns > 0 && axis !== 'rows' && counted(columns, 'hidden column'),
  ].filter(Boolean).join(' and ');
}

/** Says what was done, when something was left out of it. */
export function sayDone(desk: Desk, done: string, left: string): void {
  if (left !== '') desk.say(`${done}; ${left} left as before.`);
}
