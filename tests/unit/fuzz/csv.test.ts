import fc from 'fast-check';
import Papa from 'papaparse';
import { expect, test } from 'vitest';
import { chartSheetEdit } from '../../../src/app/chart-edit.ts';
import { needsGuard, readTable, writeCsv } from '../../../src/tables/index.ts';
import { apply, emptyBook, filledCells, readBook, writeBook } from '../../../src/workbook/index.ts';
import { HOSTILE_TEXTS, NO_FIGURE, TIME, fuzz, typed } from './cases.ts';

const field = fc.oneof(typed, fc.constantFrom('bust', 'waist', 'hip', 'size', '10', '12', '14', '84 cm', '33 1/2', '"quoted"', '"open', 'a,b', 'a;b', ''), fc.constantFrom(...HOSTILE_TEXTS));
const grid = fc.array(fc.array(field, { maxLength: 7 }), { maxLength: 9 });
const charts = fc.tuple(fc.constantFrom(',', ';', '\t'), fc.array(fc.array(fc.integer({ min: 20, max: 140 }), { minLength: 3, maxLength: 3 }), { minLength: 2, maxLength: 4 }), field)
  .map(([by, rows, odd]) => [['size', '10', '12', '14'], ...rows.map((figures, at) => [['bust', 'waist', 'hip', odd][at]!, ...figures.map(String)])].map((row) => row.join(by)).join('\n'));
const text = fc.oneof(
  { weight: 3, arbitrary: charts },
  { weight: 3, arbitrary: fc.tuple(grid, fc.constantFrom(',', ';', '\t'), fc.constantFrom('\n', '\r\n', '\r')).map(([rows, by, end]) => rows.map((row) => row.join(by)).join(end)) },
  { weight: 1, arbitrary: fc.string({ unit: 'binary', maxLength: 200 }) },
);
const input: fc.Arbitrary<string | Uint8Array> = fc.oneof({ weight: 5, arbitrary: text }, { weight: 1, arbitrary: fc.uint8Array({ maxLength: 300 }) });

test('CSV in', () => {
  let charted = 0;
  fuzz('CSV', fc.tuple(input, grid), ([given, rows]) => {
    const reading = readTable(given);
    if ('sentence' in reading) {
      expect(reading.sentence.length).toBeGreaterThan(10);
      expect(reading.sentence).not.toMatch(NO_FIGURE);
    } else {
      charted++;
      const book = emptyBook('a');
      const made = apply(chartSheetEdit(reading, { sheet: 'Chart', name: 'chart' }, book).edit, book).book;
      expect(readBook(writeBook(made)).problems).toEqual([]);
      for (const { cell } of filledCells(made.sheets.at(-1)!)) expect(cell.raw.startsWith('='), `${cell.raw} is worked out`).toBe(false);
    }
    out(rows);
  });
  expect(charted, 'some of them are charts').toBeGreaterThan(10);
}, TIME);

/** What goes out comes in again, with an apostrophe before what a program might work out. */
function out(rows: readonly (readonly string[])[]): void {
  const { text: csv } = writeCsv(rows.map((row) => row.map((each) => ({ kind: 'text', text: each }))), {
    numbers: 'exact', show: { system: 'own', inchStep: 8 }, unit: 'cells', separator: ',', decimalMark: '.', mark: false,
  });
  const fields = Papa.parse<string[]>(csv, { delimiter: ',', newline: '\r\n' }).data.flat();
  for (const each of fields) expect(needsGuard(each), `${each} goes out unguarded`).toBe(false);
  const given = rows.flat();
  for (const each of fields) if (each !== '') expect(given.includes(each) || given.includes(each.slice(1)), `${each} is what went in`).toBe(true);
}
