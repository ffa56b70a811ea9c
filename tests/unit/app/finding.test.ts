/** Finding in a small workbook, at once, and in one so large that it is looked through in slices. */
import { expect, test, vi } from 'vitest';
import { Desk } from '../../../src/app/desk.ts';
import { Finding } from '../../../src/app/finding.ts';
import { NO_WISH, type FindWish } from '../../../src/panels/index.ts';
import { apply, type Book, type Cell } from '../../../src/workbook/index.ts';
import { area, bookOf } from '../workbook/help.ts';

const wish = (text: string): FindWish => ({ ...NO_WISH, text });

function finding(book: Book): { desk: Desk; found: Finding; settled: () => Promise<void> } {
  const desk = new Desk(book);
  const found = new Finding(() => desk, () => undefined);
  return { desk, found, settled: () => vi.waitFor(() => { if (found.looking) throw new Error('still looking'); }, { timeout: 60_000, interval: 5 }) };
}

const ROWS = 60_000;
const LARGE = apply({
  do: 'addSheet', at: 1,
  sheet: { id: 3, name: 'Large', widths: {}, rows: Array.from({ length: ROWS }, (_, row): Cell[] => Array.from({ length: 12 }, (_, col) => ({ raw: `piece ${row} ${col}` }))) },
}, bookOf([['piece']])).book;

test('a small workbook is looked through at once; next goes round', () => {
  const { desk, found } = finding(bookOf([['hem', 'x'], ['y', 'hem']]));
  found.seek(wish('hem'));
  expect([found.looking, found.count]).toEqual([false, 2]);
  for (const place of [area(1, 0, 0), area(1, 1, 1), area(1, 0, 0)]) {
    found.step(1);
    expect(desk.area).toEqual(place);
  }
});

test('a large one is looked through in slices, and next waits for the end of it', async () => {
  const { desk, found, settled } = finding(LARGE);
  found.seek(wish('piece 59999 11'));
  expect(found.looking).toBe(true);
  found.step(1);
  expect(desk.sheetId).toBe(1);
  await settled();
  await Promise.resolve();
  expect(found.count).toBe(1);
  expect(desk.area).toEqual(area(3, ROWS - 1, 11));
});

test('only the last wish counts, however long the one before would have taken', async () => {
  const { found, settled } = finding(LARGE);
  found.seek(wish('piece'));
  expect(found.looking).toBe(true);
  found.seek(wish('piece 5 5'));
  found.step(1);
  await settled();
  await new Promise((done) => setTimeout(done, 50));
  expect(found.rows.map(({ text }) => text)).toEqual(Array.from({ length: 1 }, () => 'piece 5 5'));
});

test('all is replaced in one step, once all is found', async () => {
  const { desk, found, settled } = finding(LARGE);
  found.seek(wish('piece 59999 1'));
  found.replace(null, 'part');
  await settled();
  await vi.waitFor(() => expect(desk.history.done.length).toBe(1), { timeout: 60_000 });
  expect(desk.book.sheets[1]!.rows[ROWS - 1]!.map((cell) => cell!.raw).filter((raw) => raw.startsWith('part'))).toEqual(['part', 'part0', 'part1']);
});
