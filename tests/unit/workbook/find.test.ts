import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { apply, findAll, partsFound, replaceEdit, replaced } from '../../../src/workbook/index.ts';
import type { FindQuery } from '../../../src/workbook/index.ts';
import { bookOf, textsOf } from './help.ts';

const EVERYWHERE = { value: true, formula: true, note: true, result: true };
const query = (text: string, more: Partial<FindQuery> = {}): FindQuery => ({ text, places: EVERYWHERE, whole: false, matchCase: false, sheet: null, ...more });

const BOOK = apply({
  do: 'setCells', sheet: 1, cells: [{ row: 2, col: 0, cell: { raw: 'Back', note: 'as the bust was measured' } }],
}, bookOf([['Bust', '91 cm', '=B1*2'], ['Full bust', '96 cm', '=SUM(B1:B2)']], [['=Fit!B1', 'bust (full)']])).book;

const places = (of: FindQuery, shown?: (sheet: number, row: number, col: number) => string) =>
  findAll(BOOK, of, shown).map(({ sheet, row, col, place, times }) => `${sheet} ${row} ${col} ${place} ${times}`);

describe('finding', () => {
  test('in values, formulas and notes, sheet after sheet in reading order', () => {
    expect(places(query('bust'))).toEqual(['1 0 0 value 1', '1 1 0 value 1', '1 2 0 note 1', '2 0 1 value 1']);
    expect(places(query('B1'))).toEqual(['1 0 2 formula 1', '1 1 2 formula 1', '2 0 0 formula 1']);
  });
  test('in what formulas give, when it is told', () => {
    const shown = (sheet: number, row: number, col: number) => (sheet === 1 && col === 2 ? `${row + 182} cm` : '');
    expect(places(query('182', { places: { ...EVERYWHERE, formula: false } }), shown)).toEqual(['1 0 2 result 1']);
    expect(places(query('182'))).toEqual([]);
  });
  test('by case, whole cells, one sheet, some of the places', () => {
    expect(places(query('bust', { matchCase: true }))).toEqual(['1 1 0 value 1', '1 2 0 note 1', '2 0 1 value 1']);
    expect(places(query('bust', { whole: true }))).toEqual(['1 0 0 value 1']);
    expect(places(query('bust', { sheet: 2 }))).toEqual(['2 0 1 value 1']);
    expect(places(query('bust', { places: { value: false, formula: false, note: true, result: false } }))).toEqual(['1 2 0 note 1']);
  });
  test('no sign means anything but itself', () => {
    expect(places(query('(full)'))).toEqual(['2 0 1 value 1']);
    expect(places(query('.'))).toEqual([]);
    expect(places(query('*'))).toEqual(['1 0 2 formula 1']);
    expect(places(query(''))).toEqual([]);
    fc.assert(fc.property(fc.string({ minLength: 1, maxLength: 8 }), fc.string({ maxLength: 4 }), fc.string({ maxLength: 4 }), (text, before, after) => {
      const all = before + text + after;
      expect(findAll(bookOf([[`'${all}`]]), query(text, { matchCase: true })).length).toBe(1);
      expect(replaced(all, query(text, { matchCase: true }), text)).toBe(all);
    }));
  });
});

test('a text comes in pieces, for marking', () => {
  expect(partsFound('Full bust, high bust', query('BUST'))).toEqual([
    { text: 'Full ', found: false }, { text: 'bust', found: true }, { text: ', high ', found: false }, { text: 'bust', found: true },
  ]);
  expect(partsFound('hip', query('bust'))).toEqual([{ text: 'hip', found: false }]);
  expect(partsFound('', query('bust'))).toEqual([]);
});

describe('replacing', () => {
  test('all of them is one edit, told by its label, undone exactly', () => {
    const wanted = query('bust');
    const edit = replaceEdit(BOOK, findAll(BOOK, wanted), wanted, 'Chest');
    expect(edit).toMatchObject({ do: 'many', label: 'replace “bust” in 4 cells of the workbook' });
    const { book, inverse } = apply(edit, BOOK);
    expect(textsOf(book, 1).map(([first]) => first)).toEqual(['Chest', 'Full Chest', 'Back']);
    expect(book.sheets[0]!.rows[2]![0]).toEqual({ raw: 'Back', note: 'as the Chest was measured' });
    expect(textsOf(book, 2)[0]![1]).toBe('Chest (full)');
    expect(apply(inverse, book).book).toStrictEqual(BOOK);
  });
  test('one of them, in a formula', () => {
    const wanted = query('B1');
    const edit = replaceEdit(BOOK, findAll(BOOK, wanted).slice(0, 1), wanted, 'B2');
    expect(edit).toMatchObject({ label: 'replace “B1” in 1 cell of Fit' });
    expect(textsOf(apply(edit, BOOK).book, 1).map((line) => line[2] ?? '')).toEqual(['=B2*2', '=SUM(B1:B2)', '']);
  });
  test('what stands for more elsewhere is plain text here', () => {
    expect(replaced('a b', query('b'), '$&$1')).toBe('a $&$1');
    expect(replaced(' Bust ', query('bust', { whole: true }), 'Hip')).toBe('Hip');
  });
  test('with nothing empties the cell', () => {
    const wanted = query('91 cm', { whole: true });
    expect(textsOf(apply(replaceEdit(BOOK, findAll(BOOK, wanted), wanted, ''), BOOK).book, 1)[0]).toEqual(['Bust', '', '=B1*2']);
  });
  test('in a value and its note at once', () => {
    const book = apply({ do: 'setCells', sheet: 1, cells: [{ row: 0, col: 0, cell: { raw: 'hip', note: 'hip, high' } }] }, bookOf([])).book;
    const wanted = query('hip');
    expect(apply(replaceEdit(book, findAll(book, wanted), wanted, 'seat'), book).book.sheets[0]!.rows[0]![0]).toEqual({ raw: 'seat', note: 'seat, high' });
  });
  test('a result, or what is there no more, is refused', () => {
    const wanted = query('182');
    const found = findAll(BOOK, wanted, () => '182 cm');
    expect(found.length).toBeGreaterThan(0);
    expect(() => replaceEdit(BOOK, found, wanted, '1')).toThrow('a result changes only with what it comes from');
    const stale = findAll(BOOK, query('bust'));
    expect(() => replaceEdit(bookOf([['x']]), stale, query('bust'), '1')).toThrow('There is nothing here');
  });
});
