import { describe, expect, test } from 'vitest';
import { EditRefused, apply, cellAt, copyFrom, pasteEdit, readBook, sheetById, templateFrom, writeBook } from '../../../src/workbook/index.ts';
import type { Book, Edit } from '../../../src/workbook/index.ts';
import { area, bookOf } from './help.ts';

const SEEN = [{ print: 'abc', note: 'zip at the side' }];
const seen = (book: Book, row: number, col: number, sheet = 1) => cellAt(sheetById(book, sheet)!, row, col)?.acknowledged;
const acknowledge: Edit = { do: 'acknowledge', sheet: 1, row: 1, col: 0, pins: SEEN };
const plain = bookOf([['94 cm'], ['=EASE(A1, 90 cm)']]);
const book = apply(acknowledge, plain).book;

describe('acknowledging a pin', () => {
  test('is kept with its note, tells the engine nothing, and can be undone', () => {
    const done = apply(acknowledge, plain);
    expect(seen(done.book, 1, 0)).toEqual(SEEN);
    expect(done.effects).toEqual([]);
    expect(apply(done.inverse, done.book).book).toStrictEqual(plain);
    expect(apply(acknowledge, done.book).book).toBe(done.book);
  });

  test('follows its cell through rows, columns, moves and sorting by hand', () => {
    const after = (edit: Edit) => apply(edit, book).book;
    expect(seen(after({ do: 'insertRows', sheet: 1, at: 0, count: 3 }), 4, 0)).toEqual(SEEN);
    expect(seen(after({ do: 'insertColumns', sheet: 1, at: 0, count: 1 }), 1, 1)).toEqual(SEEN);
    expect(seen(after({ do: 'removeRows', sheet: 1, at: 0, count: 1 }), 0, 0)).toEqual(SEEN);
    expect(seen(after({ do: 'moveRows', sheet: 1, at: 1, count: 1, to: 0 }), 0, 0)).toEqual(SEEN);
    expect(seen(after({ do: 'moveCells', from: area(1, 1, 0), to: { sheet: 2, row: 5, col: 3 } }), 5, 3, 2)).toEqual(SEEN);
  });

  test('stays when the cell is typed anew, whose print then decides, and goes with the formula', () => {
    const cell = cellAt(sheetById(book, 1)!, 1, 0)!;
    const typed = (raw: string) => apply({ do: 'setCells', sheet: 1, cells: [{ row: 1, col: 0, cell: { ...cell, raw } }] }, book).book;
    expect(seen(typed('=EASE(A1, 91 cm)'), 1, 0)).toEqual(SEEN);
    expect(seen(typed('5 cm'), 1, 0)).toBeUndefined();
  });

  test('is not copied: another cell has pins of its own', () => {
    const copied = apply(pasteEdit(copyFrom(book, area(1, 1, 0)), book, area(1, 1, 2)), book).book;
    expect(cellAt(sheetById(copied, 1)!, 1, 2)).toEqual({ raw: '=EASE(C1, 90 cm)' });
    expect(JSON.stringify(templateFrom(book, 1, 'Mine', ''))).not.toContain('zip');
  });

  test('comes back from a file', () => {
    expect(readBook(JSON.parse(JSON.stringify(writeBook(book)))).book).toStrictEqual(book);
  });

  test('is refused for an empty cell and for a note that is too long', () => {
    expect(() => apply({ ...acknowledge, row: 7 } as Edit, plain)).toThrow(EditRefused);
    expect(() => apply({ ...acknowledge, pins: [{ print: 'a', note: 'x'.repeat(40_000) }] } as Edit, plain)).toThrow('can hold');
  });
});
