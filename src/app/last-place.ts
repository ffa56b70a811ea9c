/** Where she was in a workbook, so that the next start comes back to it. Of this device, and no fact of the workbook. */
import { areaName, readArea } from '../formula/index.ts';
import type { Desk } from './desk.ts';

const keyOf = (book: string): string => `tape-and-tally place ${book}`;

export function comeBack(desk: Desk): void {
  try {
    const [sheet = '', area = ''] = (localStorage.getItem(keyOf(desk.book.id)) ?? '').split(' ');
    const place = readArea(area);
    if (place && desk.book.sheets.some(({ id }) => id === Number(sheet))) desk.selectArea({ ...place, sheet: Number(sheet) });
  } catch {
    // A browser that keeps nothing begins at the beginning.
  }
}

export function rememberPlace(desk: Desk): void {
  addEventListener('pagehide', () => {
    try {
      localStorage.setItem(keyOf(desk.book.id), `${desk.sheetId} ${areaName(desk.area)}`);
    } catch {
      // As above.
    }
  });
}
