import { describe, expect, test } from 'vitest';
import { EditRefused, LIMITS, apply, cellAt, emptyBook, filledCells, sheetById, usedArea } from '../../../src/workbook/index.ts';
import type { Book, Cell, CellChange } from '../../../src/workbook/index.ts';
import { bookOf, textsOf } from './help.ts';

const set = (book: Book, ...cells: CellChange[]): Book => apply({ do: 'setCells', sheet: 1, cells }, book).book;
const put = (row: number, col: number, cell: Cell | null): CellChange => ({ row, col, cell });

describe('the normal form', () => {
  const empty = emptyBook('x');

  test('an emptied cell takes its row and the rows above it away', () => {
    const full = set(empty, put(5, 3, { raw: 'x' }));
    expect(full.sheets[0]?.rows).toStrictEqual([undefined, undefined, undefined, undefined, undefined, [undefined, undefined, undefined, { raw: 'x' }]]);
    expect(set(full, put(5, 3, null))).toStrictEqual(empty);
    expect(set(full, put(5, 3, { raw: '' }))).toStrictEqual(empty);
  });

  test('nothing is kept that says nothing', () => {
    const odd = { raw: 'x', look: {}, note: '', input: undefined } as unknown as Cell;
    expect(cellAt(set(empty, put(0, 0, odd)).sheets[0]!, 0, 0)).toStrictEqual({ raw: 'x' });
    expect(set(empty, put(0, 0, { raw: '', look: { unit: undefined } as never }))).toBe(empty);
  });

  test('a look, a note or an input mark keeps an empty cell there, and the engine is not told', () => {
    const change = { do: 'setCells', sheet: 1, cells: [put(1, 1, { raw: '', input: true }), put(2, 0, { raw: '', note: 'n' })] } as const;
    const { book, effects } = apply(change, empty);
    expect([...filledCells(book.sheets[0]!)]).toEqual([
      { row: 1, col: 1, cell: { raw: '', input: true } }, { row: 2, col: 0, cell: { raw: '', note: 'n' } },
    ]);
    expect(effects).toEqual([]);
  });

  test('no array has a hole', () => {
    const { rows } = set(empty, put(2, 2, { raw: 'x' })).sheets[0]!;
    expect(Object.keys(rows)).toEqual(['0', '1', '2']);
    expect(Object.keys(rows[2]!)).toEqual(['0', '1', '2']);
  });
});

test('a sheet that is not touched, and a row that is not touched, are the same objects', () => {
  const before = bookOf([['1', '2'], ['3'], ['4']], [['5']]);
  const after = set(before, put(1, 0, { raw: 'new' }));
  expect(after.sheets[1]).toBe(before.sheets[1]);
  expect(after.sheets[0]?.rows[0]).toBe(before.sheets[0]?.rows[0]);
  expect(after.sheets[0]?.rows[2]).toBe(before.sheets[0]?.rows[2]);
  expect(textsOf(after, 1)).toEqual([['1', '2'], ['new'], ['4']]);
  expect(textsOf(before, 1)).toEqual([['1', '2'], ['3'], ['4']]);
});

test('only what was typed is told to the engine, in the order given', () => {
  const book = bookOf([['1', '2']]);
  const { effects } = apply({
    do: 'setCells', sheet: 1,
    cells: [put(0, 1, null), put(0, 0, { raw: '1', look: { strong: true } }), put(3, 0, { raw: '=A1' })],
  }, book);
  expect(effects).toEqual([{ do: 'cells', sheet: 1, cells: [{ row: 0, col: 1, raw: '' }, { row: 3, col: 0, raw: '=A1' }] }]);
});

test('a note by itself is a change that can be undone', () => {
  const book = bookOf([['1']]);
  const { book: after, inverse, effects } = apply({ do: 'setCells', sheet: 1, cells: [put(0, 0, { raw: '1', note: 'with shoes' })] }, book);
  expect(cellAt(after.sheets[0]!, 0, 0)).toStrictEqual({ raw: '1', note: 'with shoes' });
  expect(effects).toEqual([]);
  expect(apply(inverse, after).book).toStrictEqual(book);
});

test('the last of two changes to one cell counts, and both are undone', () => {
  const book = bookOf([['first']]);
  const { book: after, inverse } = apply({ do: 'setCells', sheet: 1, cells: [put(0, 0, { raw: 'a' }), put(0, 0, { raw: 'b' })] }, book);
  expect(textsOf(after, 1)).toEqual([['b']]);
  expect(apply(inverse, after).book).toStrictEqual(book);
});

describe('limits', () => {
  const book = emptyBook('x');
  const longest = 'x'.repeat(LIMITS.characters);

  test('the last row, the last column and the longest text are still allowed', () => {
    const full = set(book, put(LIMITS.rows - 1, LIMITS.columns - 1, { raw: longest }));
    expect(usedArea(full.sheets[0]!)).toEqual({ sheet: 1, top: 0, left: 0, bottom: 999_999, right: 999 });
  });

  test.each<[string, CellChange, RegExp]>([
    ['a row too many', put(LIMITS.rows, 0, { raw: 'x' }), /Sheet 1, which has 1,000,000 rows and 1,000 columns/],
    ['a column too many', put(0, LIMITS.columns, { raw: 'x' }), /past the edge/],
    ['half a row', put(0.5, 0, { raw: 'x' }), /past the edge/],
    ['a row before the first', put(-1, 0, null), /past the edge/],
    ['a text too long', put(3, 1, { raw: `${longest}x` }), /B4 of Sheet 1 has 32,768 characters; a cell can hold 32,767/],
    ['a note too long', put(3, 1, { raw: 'x', note: `${longest}x` }), /note for B4/],
  ])('%s is refused', (_what, change, sentence) => {
    expect(() => set(book, change)).toThrow(EditRefused);
    expect(() => set(book, change)).toThrow(sentence);
  });

  test('a refused edit among several refuses them all', () => {
    const edits = [{ do: 'setTitle', title: 'T', person: 'P' }, { do: 'removeSheet', sheet: 7 }] as const;
    expect(() => apply({ do: 'many', label: 'both', edits }, book)).toThrow('no longer in this workbook');
    expect(book.title).toBe('');
  });

  test('an edit of a kind that is not known is refused', () => {
    expect(() => apply({ do: 'fold' } as never, book)).toThrow(EditRefused);
  });
});

test('an empty sheet has no used area', () => {
  expect(usedArea(sheetById(emptyBook('x'), 1)!)).toBeNull();
});
