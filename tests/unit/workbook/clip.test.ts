import { describe, expect, test } from 'vitest';
import { EditRefused, LIMITS, apply, copyFrom, cutEdit, labelOf, pasteEdit, pastedArea } from '../../../src/workbook/index.ts';
import type { Area, Book } from '../../../src/workbook/index.ts';
import { area, bookOf, textsOf } from './help.ts';

const book = bookOf([['1', '=A1*2'], ['', '=$A$1+B1'], ['', '', 'old', 'old']], [['x']]);

function paste(from: Area, at: Area): Book {
  return apply(pasteEdit(copyFrom(book, from), book, at), book).book;
}

test('relative references move, fixed ones stay', () => {
  expect(textsOf(paste(area(1, 0, 1, 1, 1), area(1, 3, 2)), 1).slice(3)).toEqual([['', '', '=B4*2'], ['', '', '=$A$1+C4']]);
});

test('a text that begins otherwise is never adjusted', () => {
  const plain = bookOf([['A1 and B2']]);
  expect(textsOf(apply(pasteEdit(copyFrom(plain, area(1, 0, 0)), plain, area(1, 1, 1)), plain).book, 1)[1]).toEqual(['', 'A1 and B2']);
});

test('what would leave the sheet becomes an error', () => {
  expect(textsOf(paste(area(1, 0, 1), area(2, 0, 0)), 2)).toEqual([['=#REF!*2']]);
});

test('empty cells of the clip empty the cells they land on', () => {
  expect(textsOf(paste(area(1, 0, 0, 1, 1), area(1, 2, 2)), 1).slice(2)).toEqual([['', '', '1', '=C3*2'], ['', '', '', '=$A$1+D3']]);
});

test('looks, marks and notes are copied', () => {
  const cell = { raw: '74 cm', look: { unit: 'in' }, input: true, note: 'n' } as const;
  const marked = apply({ do: 'setCells', sheet: 1, cells: [{ row: 0, col: 0, cell }] }, book).book;
  const after = apply(pasteEdit(copyFrom(marked, area(1, 0, 0)), marked, area(2, 4, 0)), marked).book;
  expect(after.sheets[1]?.rows[4]?.[0]).toStrictEqual(cell);
});

describe('repeats', () => {
  const clip = copyFrom(book, area(1, 0, 0, 0, 1));

  test('into a selection that is a multiple, each with its own references', () => {
    expect(pastedArea(clip, book, area(1, 4, 0, 5, 3))).toEqual(area(1, 4, 0, 5, 3));
    expect(textsOf(paste(area(1, 0, 0, 0, 1), area(1, 4, 0, 5, 3)), 1).slice(4)).toEqual([
      ['1', '=A5*2', '1', '=C5*2'], ['1', '=A6*2', '1', '=C6*2'],
    ]);
  });

  test('once, in its own size, into any other', () => {
    expect(pastedArea(clip, book, area(1, 4, 0, 4, 2))).toEqual(area(1, 4, 0, 4, 1));
    expect(pastedArea(clip, book, area(1, 4, 5))).toEqual(area(1, 4, 5, 4, 6));
  });
});

test('a paste is one edit with a name', () => {
  const edit = pasteEdit(copyFrom(book, area(1, 0, 0, 1, 1)), book, area(2, 0, 0, 3, 5));
  expect(labelOf(edit, book)).toBe('paste 24 cells in Skirt');
  const { book: after, inverse } = apply(edit, book);
  expect(apply(inverse, after).book).toStrictEqual(book);
});

test('a whole column can be copied onto another', () => {
  const column = copyFrom(book, area(1, 0, 1, LIMITS.rows - 1, 1));
  const after = apply(pasteEdit(column, book, area(1, 0, 4, LIMITS.rows - 1, 4)), book).book;
  expect(after.sheets[0]?.rows.map((row) => row?.[4]?.raw)).toEqual(['=D1*2', '=$A$1+E1', undefined]);
});

test('an empty block pasted over everything is quick', () => {
  const after = paste(area(1, 8, 8), area(1, 0, 0, LIMITS.rows - 1, LIMITS.columns - 1));
  expect(after.sheets[0]?.rows).toEqual([]);
});

test('a paste past the edge or of too much is refused', () => {
  const clip = copyFrom(book, area(1, 0, 0, 1, 1));
  expect(() => pasteEdit(clip, book, area(1, 999_999, 0))).toThrow(EditRefused);
  expect(() => pasteEdit(clip, book, area(1, 999_999, 0))).toThrow('The 2 rows and 2 columns that were copied do not fit there');
  expect(() => pasteEdit(copyFrom(book, area(1, 0, 0)), book, area(1, 0, 0, LIMITS.rows - 1, 0))).toThrow('would fill 1,000,000 cells of Fit');
});

test('cut and paste is a move', () => {
  const edit = cutEdit(copyFrom(book, area(1, 0, 0)), book, { sheet: 2, row: 3, col: 0 });
  expect(edit).toEqual({ do: 'moveCells', from: area(1, 0, 0), to: { sheet: 2, row: 3, col: 0 } });
});
