/** A cell that was typed anew does not go on showing what it gave before. */
import { expect, test } from 'vitest';
import { KIND, Results, type ChangeSet } from '../../../src/reckoning/index.ts';
import type { Effect } from '../../../src/workbook/types.ts';

const numbers = (revision: number, ...cells: (readonly [row: number, col: number, value: number])[]): ChangeSet => ({
  revision, whole: false, took: 0,
  sheets: [{
    sheet: 1, row: Uint32Array.from(cells, ([row]) => row), col: Uint16Array.from(cells, ([, col]) => col),
    kind: new Uint8Array(cells.length).fill(KIND.quantity), number: Float64Array.from(cells, ([, , value]) => value),
    unit: new Uint8Array(cells.length), high: null, text: [],
  }],
});
const typed = (sheet: number, ...cells: (readonly [row: number, col: number])[]): Effect => ({ do: 'cells', sheet, cells: cells.map(([row, col]) => ({ row, col, raw: 'x' })) });
const value = (results: Results, row: number, col: number): number | null => {
  const result = results.at(1, row, col);
  return result.kind === 'quantity' ? result.value : null;
};

test('it gives nothing until the worker has answered; all others stay', () => {
  const results = new Results();
  results.apply(numbers(1, [0, 0, 1], [0, 1, 2], [300, 0, 3]));
  results.shift(2, [typed(1, [0, 0], [300, 0], [5, 9]), typed(2, [0, 1])]);
  expect([value(results, 0, 0), value(results, 0, 1), value(results, 300, 0)]).toEqual([null, 2, null]);
  results.apply(numbers(2, [0, 0, 7], [300, 0, 8]));
  expect([value(results, 0, 0), value(results, 0, 1), value(results, 300, 0)]).toEqual([7, 2, 8]);
});

test('a late answer to an earlier edit does not bring the old figure back', () => {
  const results = new Results();
  results.shift(2, [{ do: 'insertRows', sheet: 1, at: 0, count: 1 }, typed(1, [1, 0])]);
  results.apply(numbers(1, [0, 0, 1], [1, 0, 2]));
  expect([value(results, 1, 0), value(results, 2, 0)]).toEqual([null, 2]);
});

test('an answer that has taken it in already is left alone', () => {
  const results = new Results();
  results.apply(numbers(3, [0, 0, 1]));
  results.shift(2, [typed(1, [0, 0])]);
  expect(value(results, 0, 0)).toBe(1);
});
