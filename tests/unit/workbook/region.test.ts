import { describe, expect, test } from 'vitest';
import { apply, cellAt, firstRowIsHeadings, hasNeighbours, regionAround } from '../../../src/workbook/index.ts';
import { area, bookOf } from './help.ts';

const sheetOf = (texts: readonly (readonly string[])[]) => bookOf(texts).sheets[0]!;

describe('the block around a cell', () => {
  const sheet = sheetOf([
    ['a', 'b', '', 'x'],
    ['c', '', '', 'y'],
    [],
    ['', 'far'],
    ['', '', 'diagonal'],
  ]);
  test.each([
    [0, 0, area(1, 0, 0, 1, 1)], [1, 1, area(1, 0, 0, 1, 1)], [0, 3, area(1, 0, 3, 1, 3)], [4, 2, area(1, 3, 1, 4, 2)],
    [9, 9, area(1, 9, 9)],
  ])('at row %d, column %d', (row, col, wanted) => expect(regionAround(sheet, row, col)).toEqual(wanted));

  test('an empty cell beside it belongs to it', () => {
    expect(regionAround(sheet, 1, 2)).toEqual(area(1, 0, 0, 1, 3));
  });
  test('a look without a text is nothing to it', () => {
    const book = apply({ do: 'setCells', sheet: 1, cells: [{ row: 0, col: 1, cell: { raw: '', look: { strong: true } } }] }, bookOf([['a', '', 'b']])).book;
    expect(regionAround(book.sheets[0]!, 0, 0)).toEqual(area(1, 0, 0));
  });
  test('what lies right beside a block is told', () => {
    expect(hasNeighbours(sheet, area(1, 0, 0, 1, 1))).toBe(false);
    expect(hasNeighbours(sheet, area(1, 0, 0, 1, 0))).toBe(true);
    expect(hasNeighbours(sheet, area(1, 0, 2, 1, 2))).toBe(true);
  });
});

describe('a first row of headings', () => {
  const guess = (texts: readonly (readonly string[])[], frozen = 0): boolean => {
    const book = apply({ do: 'setFrozen', sheet: 1, rows: frozen, columns: 0 }, bookOf(texts)).book;
    const sheet = book.sheets[0]!;
    return firstRowIsHeadings(sheet, area(1, 0, 0, texts.length - 1, 5), (row, col) => /^\d/.test(cellAt(sheet, row, col)?.raw ?? ''));
  };
  test('words over figures', () => expect(guess([['Part', 'Width'], ['Back', '40 cm']])).toBe(true));
  test('not figures over figures, nor words over words', () => {
    expect(guess([['Back', '40 cm'], ['Front', '41 cm']])).toBe(false);
    expect(guess([['Back', 'wool'], ['Front', 'silk']])).toBe(false);
    expect(guess([['Part', 'Width']])).toBe(false);
  });
  test('a row that is kept in view, or marked', () => {
    expect(guess([['size', '10'], ['bust', 'wool']], 1)).toBe(true);
    const book = apply({ do: 'setCells', sheet: 1, cells: [{ row: 0, col: 0, cell: { raw: 'a', look: { heading: true } } }] }, bookOf([['a'], ['b']])).book;
    expect(firstRowIsHeadings(book.sheets[0]!, area(1, 0, 0, 1, 0), () => false)).toBe(true);
  });
});
