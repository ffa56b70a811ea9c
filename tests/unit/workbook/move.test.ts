import { expect, test } from 'vitest';
import { EditRefused, apply } from '../../../src/workbook/index.ts';
import type { Area, Edit, SheetId } from '../../../src/workbook/index.ts';
import { area, bookOf, textsOf } from './help.ts';

const move = (from: Area, sheet: SheetId, row: number, col: number): Edit => ({ do: 'moveCells', from, to: { sheet, row, col } });

test('what points at moved cells follows, what stands in them keeps pointing where it did', () => {
  const book = bookOf([['1', '=A1', '=$A$1+B1'], ['2', '=SUM(A1:A2)', '=SUM(A2:A3)']]);
  const { book: after, inverse } = apply(move(area(1, 0, 0, 1, 1), 1, 4, 2), book);
  expect(textsOf(after, 1)).toEqual([
    ['', '', '=$C$5+D5'], ['', '', '=SUM(A2:A3)'], [], [], ['', '', '1', '=C5'], ['', '', '2', '=SUM(C5:C6)'],
  ]);
  expect(apply(inverse, after).book).toStrictEqual(book);
});

test('cells that move onto part of themselves are not lost', () => {
  const book = bookOf([['1', '2', '3', '=C1']]);
  const { book: after, inverse } = apply(move(area(1, 0, 0, 0, 2), 1, 0, 1), book);
  expect(textsOf(after, 1)).toEqual([['', '1', '2', '3']]); // the formula stood where 3 now stands
  expect(apply(inverse, after).book).toStrictEqual(book);
});

test('to another sheet: formulas on both follow, and those that moved still mean their old sheet', () => {
  const book = bookOf([['1', '=A1+C1', '5'], ['=B1']], [['=Fit!B1', 'under']]);
  const { book: after } = apply(move(area(1, 0, 1), 2, 0, 1), book);
  expect(textsOf(after, 1)).toEqual([['1', '', '5'], ['=Skirt!B1']]);
  expect(textsOf(after, 2)).toEqual([['=Skirt!B1', '=Fit!A1+Fit!C1']]);
});

test('looks, marks and notes go along; names follow when all of their cells move', () => {
  const book = apply({
    do: 'setCells', sheet: 1, cells: [{ row: 0, col: 0, cell: { raw: '74 cm', input: true, note: 'n', look: { strong: true } } }],
  }, bookOf([], [], [
    { name: 'waist', area: area(1, 0, 0), kind: 'cells' }, { name: 'both', area: area(1, 0, 0, 1, 0), kind: 'chart' },
  ])).book;
  const { book: after, effects } = apply(move(area(1, 0, 0), 2, 2, 3), book);
  expect(after.sheets[1]?.rows[2]?.[3]).toStrictEqual({ raw: '74 cm', input: true, note: 'n', look: { strong: true } });
  expect(after.names).toEqual([
    { name: 'both', area: area(1, 0, 0, 1, 0), kind: 'chart' }, { name: 'waist', area: area(2, 2, 3), kind: 'cells' },
  ]);
  expect(effects).toContainEqual({ do: 'name', name: 'waist', target: { area: area(2, 2, 3) } });
  expect(effects).not.toContainEqual(expect.objectContaining({ name: 'both' }));
});

test('a move to where the cells are changes nothing', () => {
  const book = bookOf([['1']]);
  expect(apply(move(area(1, 0, 0), 1, 0, 0), book).book).toBe(book);
});

test('a move past the edge is refused', () => {
  expect(() => apply(move(area(1, 0, 0, 1, 0), 1, 999_999, 0), bookOf([['1'], ['2']]))).toThrow(EditRefused);
  expect(() => apply(move(area(1, 0, 0, 1, 0), 1, 999_999, 0), bookOf([['1'], ['2']]))).toThrow('past the edge of Fit');
  expect(() => apply(move(area(1, 3, 0, 1, 0), 1, 0, 0), bookOf([['1'], ['2']]))).toThrow(EditRefused);
});
