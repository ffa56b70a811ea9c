import { describe, expect, test } from 'vitest';
import { show, readQuantity } from '../../../src/quantities/index.ts';
import { apply, cellAt, filterEdit, labelOf } from '../../../src/workbook/index.ts';
import type { Condition, PlainValue } from '../../../src/workbook/index.ts';
import { area, bookOf } from './help.ts';

const BOOK = bookOf([
  ['Part', 'Width', 'Cut'], ['Sleeve', '30 cm', '2'], ['Back', '40.04 cm', '1'], ['Collar', '4 in', ''], ['Pocket bag', '12 cm', '4'],
]);
const raw = (row: number, col: number): string => cellAt(BOOK.sheets[0]!, row, col)?.raw ?? '';
function valueAt(row: number, col: number): PlainValue {
  const text = raw(row, col);
  const reading = readQuantity(text);
  if (text === '') return { kind: 'empty' };
  return reading.kind === 'quantity' ? { kind: 'number', ...reading.quantity } : { kind: 'text', text };
}
function textAt(row: number, col: number): string {
  const reading = readQuantity(raw(row, col));
  return reading.kind === 'quantity' ? show(reading.quantity, { system: 'own', inchStep: 8 }).main : raw(row, col);
}
const hides = (...conditions: Condition[]): readonly (readonly number[])[] => {
  const edit = filterEdit(BOOK, area(1, 1, 0, 999_999, 2), conditions, valueAt, textAt);
  if (edit.do !== 'setFilter' || !edit.filter) throw new Error('no filter');
  expect(edit.filter.area).toEqual({ top: 1, left: 0, bottom: 4, right: 2 });
  expect(labelOf(edit, BOOK)).toBe('show only rows that match in Fit');
  expect(apply(edit, BOOK).book.sheets[0]!.filter).toEqual(edit.filter);
  return edit.filter.hides;
};

describe('rows that match', () => {
  test.each<[Condition['test'], number, string, (readonly number[])[]]>([
    ['more', 1, '12 cm', [[3, 4]]],
    ['atLeast', 1, '12 cm', [[3, 3]]],
    ['less', 1, '12 cm', [[1, 2], [4, 4]]],
    ['atMost', 1, '5 in', [[1, 2]]],
    ['is', 1, '0.3 m', [[2, 4]]],
    ['is', 1, '40.0 cm', [[1, 1], [3, 4]]],
    ['isNot', 1, '4 in', [[3, 3]]],
    ['is', 0, ' collar ', [[1, 2], [4, 4]]],
    ['has', 0, 'BA', [[1, 1], [3, 3]]],
    ['hasNot', 0, 'ba', [[2, 2], [4, 4]]],
    ['empty', 2, '', [[1, 2], [4, 4]]],
    ['filled', 2, '', [[3, 3]]],
    ['atLeast', 2, '2', [[2, 3]]],
  ])('%s in column %d: %s', (way, col, text, wanted) => expect(hides({ col, test: way, text })).toEqual(wanted));

  test('meet every condition', () => {
    expect(hides({ col: 1, test: 'more', text: '12 cm' }, { col: 2, test: 'more', text: '1' })).toEqual([[2, 4]]);
    expect(hides()).toEqual([]);
  });
});

describe('refused', () => {
  test.each<[Condition, string]>([
    [{ col: 1, test: 'more', text: '12' }, 'The figures in column B of Fit have a unit: write one after 12, such as cm or in.'],
    [{ col: 2, test: 'more', text: '12 cm' }, 'The figures in column C of Fit are not of that kind'],
    [{ col: 1, test: 'less', text: 'wide' }, '“wide” is no figure with which column B of Fit could be compared'],
    [{ col: 0, test: 'has', text: ' ' }, 'Column A of Fit cannot be matched with nothing'],
    [{ col: 0, test: 'is', text: 'Cuff' }, 'No row of A2:C5 of Fit matches; all stay as they are.'],
  ])('%j', (condition, sentence) => expect(() => hides(condition)).toThrow(sentence));

  test('where nothing is', () => {
    expect(() => filterEdit(BOOK, area(1, 20, 0, 30, 2), [], valueAt, textAt)).toThrow('There is nothing to match in A21:C31 of Fit.');
  });
});
