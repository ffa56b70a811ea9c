import { describe, expect, test } from 'vitest';
import { EditRefused, apply, freeName, freeSheetName, nameFault, sheetNameFault, sheetNamed } from '../../../src/workbook/index.ts';
import type { Edit, NamedArea } from '../../../src/workbook/index.ts';
import { area, bookOf, frozen, textsOf } from './help.ts';

const waist: NamedArea = { name: 'waist', area: area(1, 0, 0), kind: 'cells' };
const setName = (name: string, target: Omit<NamedArea, 'name'> | null = { area: area(1, 0, 0), kind: 'cells' }): Edit => ({ do: 'setName', name, target });

describe('names for cells', () => {
  const book = bookOf([['74 cm', '=waist * 2', '=full bust + WAIST']], [['=waist']], [waist]);

  // hip1 is no cell: a sheet's last column is ALL.
  test.each(['full bust', 'hip1', 'bust1', 'Hüfte', 'taille_2', 'обхват', '  hip  ', 'back waist length'])('%j can be a name', (name) => {
    expect(nameFault(name, book)).toBeNull();
    expect(apply(setName(name), book).book.names.map((named) => named.name)).toContain(name.trim());
  });

  test.each<[string, RegExp]>([
    ['', /needs at least one letter/], ['A1', /name of a cell/], ['ab12', /name of a cell/], 
    ['size a1', /name of a cell/], ['in', /is a unit/], ['cm', /is a unit/], ['Yards', /is a unit/], ['true', /meaning of its own/], ['FALSE', /meaning of its own/],
    ['1st', /begins with a letter/], ['_x', /begins with a letter/], ['__proto__', /begins with a letter/], ['SUM(', /only letters/], ['a+b', /only letters/],
    ['Fit!A1', /only letters/], ['x'.repeat(61), /at most 60 characters; this one has 61/], ['WAIST', /waist is already used/],
  ])('%j cannot', (name, sentence) => {
    expect(nameFault(name, book)).toMatch(sentence);
    if (name !== 'WAIST') expect(() => apply(setName(name), book)).toThrow(EditRefused);
  });

  test('a name may keep itself when it is replaced', () => {
    expect(nameFault('Waist', book, 'waist')).toBeNull();
  });

  test('pointed elsewhere a name keeps its spelling, and only a new place is told', () => {
    const moved = apply(setName('WAIST', { area: area(2, 0, 0), kind: 'cells' }), book);
    expect(moved.book.names).toEqual([{ ...waist, area: area(2, 0, 0) }]);
    expect(moved.effects).toEqual([{ do: 'name', name: 'waist', target: { area: area(2, 0, 0) } }]);
    expect(apply(setName('waist', { area: area(1, 0, 0), kind: 'chart' }), book).effects).toEqual([]);
    expect(apply(setName('waist'), book).book).toBe(book);
  });

  test('names are kept in order', () => {
    const names = ['hip', 'Bust', 'full bust', 'ankle'].reduce((now, name) => apply(setName(name), now).book, book).names;
    expect(names.map(({ name }) => name)).toEqual(['ankle', 'Bust', 'full bust', 'hip', 'waist']);
  });

  test('formulas that speak of a name are read anew when it comes and when it goes', () => {
    const { effects } = apply(setName('full bust'), book);
    expect(effects).toEqual([
      { do: 'name', name: 'full bust', target: { area: area(1, 0, 0) } },
      { do: 'cells', sheet: 1, cells: [{ row: 0, col: 2, raw: '=full bust + WAIST' }] },
    ]);
    expect(apply(setName('waist', null), book).effects).toEqual([
      { do: 'name', name: 'waist', target: null },
      { do: 'cells', sheet: 1, cells: [{ row: 0, col: 1, raw: '=waist * 2' }, { row: 0, col: 2, raw: '=full bust + WAIST' }] },
      { do: 'cells', sheet: 2, cells: [{ row: 0, col: 0, raw: '=waist' }] },
    ]);
  });

  test('renamed: formulas follow, and their own spelling comes back', () => {
    const { book: after, inverse } = apply({ do: 'renameName', name: 'Waist', to: 'waist at rest' }, book);
    expect(textsOf(after, 1)[0]).toEqual(['74 cm', '=waist at rest * 2', '=full bust + waist at rest']);
    expect(textsOf(after, 2)[0]).toEqual(['=waist at rest']);
    expect(after.names).toEqual([{ ...waist, name: 'waist at rest' }]);
    expect(apply(inverse, after).book).toStrictEqual(book);
  });

  test('renamed: a formula that had the new name before there was one keeps it when that is undone', () => {
    const { book: after, inverse } = apply({ do: 'renameName', name: 'waist', to: 'full bust' }, book);
    expect(textsOf(after, 1)[0]?.[2]).toBe('=full bust + full bust');
    expect(textsOf(apply(inverse, after).book, 1)[0]?.[2]).toBe('=full bust + WAIST');
  });

  test('renamed: only its case', () => {
    const { book: after, inverse } = apply({ do: 'renameName', name: 'waist', to: 'Waist' }, book);
    expect(textsOf(after, 2)).toEqual([['=Waist']]);
    expect(apply(inverse, after).book).toStrictEqual(book);
  });

  test.each<[Edit, RegExp]>([
    [setName('hem', null), /no name hem/], [{ do: 'renameName', name: 'hem', to: 'x y' }, /no name hem/],
    [setName('hem', { area: area(9, 0, 0), kind: 'cells' }), /not in this workbook/],
    [setName('hem', { area: area(1, 2, 0, 1, 0), kind: 'cells' }), /not in this workbook/],
    [setName('hem', { area: area(1, 0, 0, 0, 1000), kind: 'cells' }), /not in this workbook/],
  ])('%j is refused', (edit, sentence) => {
    expect(() => apply(edit, book)).toThrow(EditRefused);
    expect(() => apply(edit, book)).toThrow(sentence);
  });

  test('a formula that would become too long for its cell refuses the change', () => {
    const long = `=${'waist+'.repeat(4000)}1`;
    const full = apply({ do: 'setCells', sheet: 1, cells: [{ row: 4, col: 1, cell: { raw: long } }] }, book).book;
    expect(() => apply({ do: 'renameName', name: 'waist', to: 'waist over the slip' }, full)).toThrow(EditRefused);
    expect(() => apply({ do: 'renameName', name: 'waist', to: 'waist over the slip' }, full)).toThrow('B5 of Fit has 80,002 characters');
  });

  test('a free name is numbered', () => {
    expect(freeName('hip', book)).toBe('hip');
    const second = apply(setName('waist 2'), book).book;
    expect(freeName('Waist', second)).toBe('Waist 3');
    const long = apply(setName('x'.repeat(60)), book).book;
    expect(freeName('x'.repeat(60), long)).toBe(`${'x'.repeat(58)} 2`);
  });
});

test.each<[string, string, string]>([
  ['Misses 2025 (in).csv', 'Misses 2025 in .csv', 'Misses 2025 (in).csv'], ['12-18 hips', 'hips', '12-18 hips'], ['A1', 'name', 'A1'],
  ['', 'name', 'Sheet'], ['a\u0000b\nc', 'a b c', 'a b c'], ['y'.repeat(80), 'y'.repeat(60), 'y'.repeat(60)],
  ['Fit', 'Fit', 'Fit 2'], ['😀'.repeat(40), 'name', '😀'.repeat(30)], [`x${'😀'.repeat(40)}`, 'x', `x${'😀'.repeat(29)}`],
])('%j as a wish always makes names that are allowed', (wish, name, sheetName) => {
  const book = bookOf([]);
  expect(freeName(wish, book)).toBe(name);
  expect(freeSheetName(wish, book)).toBe(sheetName);
  expect(nameFault(freeName(wish, book), book)).toBeNull();
  expect(sheetNameFault(freeSheetName(wish, book), book)).toBeNull();
});

describe('sheets', () => {
  const book = bookOf([['1', '=Skirt!A1', '=Hem!A1']], [['=fit!A1', "='Fit'!$A$1:B2"]], [waist]);

  test.each(["Aunt's", 'a!b', '[1]', 'x:y', '*', 'A1', '2026', 'für mich', '__proto__'])('%j can be a sheet', (name) => {
    expect(sheetNameFault(name, book)).toBeNull();
    const { book: after, inverse } = apply({ do: 'renameSheet', sheet: 1, name }, book);
    expect(sheetNamed(after, name)?.id).toBe(1);
    // The formula that follows must find the sheet again: renaming it once more proves that.
    const again = apply({ do: 'renameSheet', sheet: 1, name: 'Last' }, after).book;
    expect(textsOf(again, 2)).toEqual([['=Last!A1', '=Last!$A$1:B2']]);
    expect(apply(inverse, after).book).toStrictEqual(book);
  });

  test.each<[string, RegExp]>([
    ['', /needs a name/], ['   ', /needs a name/], ['SKIRT', /already a sheet called Skirt/], ['x'.repeat(61), /at most 60/], ['a\u0000b', /cannot be seen/],
  ])('%j cannot', (name, sentence) => {
    expect(sheetNameFault(name, book)).toMatch(sentence);
    expect(() => apply({ do: 'renameSheet', sheet: 1, name }, book)).toThrow(EditRefused);
  });

  test('a sheet may be renamed in its case, and spaces are put in order', () => {
    expect(sheetNameFault('FIT', book, 1)).toBeNull();
    expect(apply({ do: 'renameSheet', sheet: 1, name: '  My \n fit ' }, book).book.sheets[0]?.name).toBe('My fit');
    expect(freeSheetName('skirt', book)).toBe('skirt 2');
  });

  test('renamed to what a formula already spoke of: the engine reads that formula anew, and undo leaves it alone', () => {
    const { book: after, effects, inverse } = apply({ do: 'renameSheet', sheet: 2, name: 'Hem' }, book);
    expect(textsOf(after, 1)).toEqual([['1', '=Hem!A1', '=Hem!A1']]);
    expect(effects).toEqual([
      { do: 'sheets', sheets: [{ id: 1, name: 'Fit' }, { id: 2, name: 'Hem' }] },
      { do: 'cells', sheet: 1, cells: [{ row: 0, col: 1, raw: '=Hem!A1' }, { row: 0, col: 2, raw: '=Hem!A1' }] },
    ]);
    expect(apply(inverse, after).book).toStrictEqual(book);
  });

  test('added: comes with its cells, and formulas that waited for it are read anew', () => {
    const sheet = frozen({ id: 3, name: 'Hem', rows: [[{ raw: '5' }, undefined], []], widths: {}, about: '' });
    const { book: after, effects, inverse } = apply({ do: 'addSheet', sheet, at: 0 }, book);
    expect(after.sheets.map(({ id }) => id)).toEqual([3, 1, 2]);
    expect(after.sheets[0]).toStrictEqual({ id: 3, name: 'Hem', rows: [[{ raw: '5' }]], widths: {} });
    expect(after.nextSheetId).toBe(4);
    expect(effects.slice(1)).toEqual([
      { do: 'cells', sheet: 3, cells: [{ row: 0, col: 0, raw: '5' }] },
      { do: 'cells', sheet: 1, cells: [{ row: 0, col: 2, raw: '=Hem!A1' }] },
    ]);
    expect(apply(inverse, after).book).toStrictEqual(book);
  });

  test('removed: formulas and names say so, its number is not used again, and all comes back', () => {
    const { book: after, effects, inverse } = apply({ do: 'removeSheet', sheet: 1 }, book);
    expect(textsOf(after, 2)).toEqual([['=#REF!', '=#REF!']]);
    expect(after.names).toEqual([{ ...waist, area: null }]);
    expect(after.nextSheetId).toBe(book.nextSheetId);
    expect(effects).toEqual([
      { do: 'sheets', sheets: [{ id: 2, name: 'Skirt' }] },
      { do: 'cells', sheet: 2, cells: [{ row: 0, col: 0, raw: '=#REF!' }, { row: 0, col: 1, raw: '=#REF!' }] },
      { do: 'name', name: 'waist', target: { area: null } },
    ]);
    expect(apply(inverse, after).book).toStrictEqual(book);
  });

  test('the last sheet stays', () => {
    const one = apply({ do: 'removeSheet', sheet: 2 }, book).book;
    expect(() => apply({ do: 'removeSheet', sheet: 1 }, one)).toThrow('A workbook needs a sheet');
  });

  test.each<Edit>([
    { do: 'addSheet', sheet: { id: 1, name: 'New', rows: [], widths: {} }, at: 0 },
    { do: 'addSheet', sheet: { id: 0, name: 'New', rows: [], widths: {} }, at: 0 },
    { do: 'addSheet', sheet: { id: 3, name: 'fit', rows: [], widths: {} }, at: 0 },
    { do: 'addSheet', sheet: { id: 3, name: 'New', rows: [], widths: {} }, at: 3 },
    { do: 'addSheet', sheet: { id: 3, name: 'New', rows: [], widths: { 0: 5 } }, at: 0 },
    { do: 'moveSheet', sheet: 1, to: 2 }, { do: 'setWidth', sheet: 1, col: 0, width: Number.NaN }, { do: 'setWidth', sheet: 1, col: 1000, width: 80 },
    { do: 'setAbout', sheet: 1, about: 'x'.repeat(201) }, { do: 'setTitle', title: 'x'.repeat(201), person: '' },
    { do: 'setCells', sheet: 7, cells: [] }, { do: 'insertRows', sheet: 7, at: 0, count: 1 },
  ])('%j is refused', (edit) => {
    expect(() => apply(edit, book)).toThrow(EditRefused);
  });
});
