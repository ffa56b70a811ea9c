import { describe, expect, test } from 'vitest';
import { EditRefused, LIMITS, apply } from '../../../src/workbook/index.ts';
import type { Area, Book, Edit, NamedArea } from '../../../src/workbook/index.ts';
import { area, bookOf, textsOf } from './help.ts';

const named = (name: string, at: Area): NamedArea => ({ name, area: at, kind: 'cells' });
const areaOf = (book: Book, name: string): Area | null | undefined => book.names.find((other) => other.name === name)?.area;

function thereAndBack(edit: Edit, book: Book): Book {
  const { book: after, inverse } = apply(edit, book);
  expect(apply(inverse, after).book).toStrictEqual(book);
  return after;
}

describe('rows', () => {
  const book = bookOf(
    [['1'], ['2'], ['3'], ['=SUM(a1:$A$3)', '=A2', '=Skirt!A2']],
    [['=Fit!A3'], ['=a1']],
    [named('waist', area(1, 1, 0)), named('all', area(1, 0, 0, 2, 0)), named('elsewhere', area(2, 1, 0))],
  );

  test('inserted: cells, formulas on every sheet and names move along', () => {
    const after = thereAndBack({ do: 'insertRows', sheet: 1, at: 1, count: 2 }, book);
    expect(textsOf(after, 1)).toEqual([['1'], [], [], ['2'], ['3'], ['=SUM(a1:$A$5)', '=A4', '=Skirt!A2']]);
    expect(textsOf(after, 2)).toEqual([['=Fit!A5'], ['=a1']]);
    expect(areaOf(after, 'waist')).toEqual(area(1, 3, 0));
    expect(areaOf(after, 'all')).toEqual(area(1, 0, 0, 4, 0));
    expect(areaOf(after, 'elsewhere')).toEqual(area(2, 1, 0));
  });

  test('inserted: the engine is told of the rows alone, and the way back is as short', () => {
    const edit: Edit = { do: 'insertRows', sheet: 1, at: 1, count: 2 };
    const { effects, inverse } = apply(edit, book);
    expect(effects).toEqual([edit]);
    expect(inverse).toEqual({ ...edit, do: 'removeRows' });
  });

  test('removed: a formula whose cells are gone says so, and its own spelling comes back', () => {
    const after = thereAndBack({ do: 'removeRows', sheet: 1, at: 1, count: 2 }, book);
    expect(textsOf(after, 1)).toEqual([['1'], ['=SUM(a1:$A$1)', '=#REF!', '=Skirt!A2']]);
    expect(textsOf(after, 2)).toEqual([['=#REF!'], ['=a1']]);
    expect(areaOf(after, 'waist')).toBeNull();
    expect(areaOf(after, 'all')).toEqual(area(1, 0, 0, 0, 0));
  });

  test('removed: the engine is told that a name stands for nothing now, and what it was on the way back', () => {
    const edit: Edit = { do: 'removeRows', sheet: 1, at: 1, count: 1 };
    const { effects, inverse, book: after } = apply(edit, book);
    expect(effects).toEqual([edit, { do: 'name', name: 'waist', target: { area: null } }]);
    expect(apply(inverse, after).effects).toContainEqual({ do: 'name', name: 'waist', target: { area: area(1, 1, 0) } });
  });

  test('past the last typed row the engine is told of each formula, because it moves none there', () => {
    const far = bookOf([['=A9', '=B1']], [], [named('far', area(1, 8, 0))]);
    const { effects } = apply({ do: 'insertRows', sheet: 1, at: 5, count: 1 }, far);
    expect(effects).toEqual([
      { do: 'insertRows', sheet: 1, at: 5, count: 1 },
      { do: 'cells', sheet: 1, cells: [{ row: 0, col: 0, raw: '=A10' }] },
      { do: 'name', name: 'far', target: { area: area(1, 9, 0) } },
    ]);
  });

  test('where nothing is, nothing changes', () => {
    const edit: Edit = { do: 'insertRows', sheet: 1, at: 500, count: 3 };
    expect(apply(edit, book)).toMatchObject({ book, effects: [] });
    expect(apply(edit, book).book).toBe(book);
  });

  test('a sheet that no change reaches is the same object', () => {
    const two = bookOf([['1'], ['2']], [['=A1'], ['x']]);
    expect(apply({ do: 'insertRows', sheet: 1, at: 0, count: 1 }, two).book.sheets[1]).toBe(two.sheets[1]);
  });
});

describe('columns', () => {
  const widths: Edit[] = [2, 5].map((col): Edit => ({ do: 'setWidth', sheet: 1, col, width: 100 + col }));
  const plain = bookOf([['1', '2', '3'], ['x'], ['=$C1', '=SUM(A1:C1)', '', '', '=b2']], [], [named('hip', area(1, 0, 2))]);
  const book = apply({ do: 'many', label: '', edits: widths }, plain).book;

  test('inserted: widths move along', () => {
    const after = thereAndBack({ do: 'insertColumns', sheet: 1, at: 1, count: 1 }, book);
    expect(textsOf(after, 1)).toEqual([['1', '', '2', '3'], ['x'], ['=$D1', '', '=SUM(A1:D1)', '', '', '=c2']]);
    expect(after.sheets[0]?.widths).toEqual({ 3: 102, 6: 105 });
    expect(areaOf(after, 'hip')).toEqual(area(1, 0, 3));
    expect(after.sheets[0]?.rows[1]).toBe(book.sheets[0]?.rows[1]);
  });

  test('removed: widths and cells come back', () => {
    const after = thereAndBack({ do: 'removeColumns', sheet: 1, at: 2, count: 3 }, book);
    expect(textsOf(after, 1)).toEqual([['1', '2'], ['x'], ['=#REF!', '=SUM(A1:B1)']]);
    expect(after.sheets[0]?.widths).toEqual({ 2: 105 });
    expect(areaOf(after, 'hip')).toBeNull();
  });
});

test('a name for whole columns stays one when rows come and go', () => {
  const whole = area(1, 0, 1, LIMITS.rows - 1, 2);
  const book = bookOf([['1'], ['2']], [], [named('chart', whole)]);
  const { book: after, effects } = apply({ do: 'insertRows', sheet: 1, at: 1, count: 4 }, book);
  expect(areaOf(after, 'chart')).toEqual(whole);
  // The engine, which knows blocks by their corners only, is told so.
  expect(effects).toContainEqual({ do: 'name', name: 'chart', target: { area: whole } });
  expect(areaOf(apply({ do: 'removeRows', sheet: 1, at: 0, count: 1 }, book).book, 'chart')).toEqual(whole);
});

describe('at the edge of a sheet', () => {
  const bottom = apply({ do: 'setCells', sheet: 1, cells: [{ row: LIMITS.rows - 1, col: 0, cell: { raw: 'last' } }] }, bookOf([['=A999999', '=A1000000']])).book;

  test('rows that would push filled cells off are refused', () => {
    expect(() => apply({ do: 'insertRows', sheet: 1, at: 0, count: 1 }, bottom)).toThrow(EditRefused);
    expect(() => apply({ do: 'insertRows', sheet: 1, at: 0, count: 1 }, bottom)).toThrow('no room in Fit for 1 more row');
  });

  test('a reference that is pushed off comes back as it was', () => {
    const book = bookOf([['1', '=A999999', '=a1000000'], ['2']]);
    const after = thereAndBack({ do: 'insertRows', sheet: 1, at: 1, count: 1 }, book);
    expect(textsOf(after, 1)[0]).toEqual(['1', '=A1000000', '=#REF!']);
  });

  test.each<[Edit['do'], number, number]>([
    ['insertRows', 0, 0], ['insertRows', -1, 1], ['insertRows', 0.5, 1], ['insertRows', 999_999, 2], ['removeRows', 0, 1_000_001],
    ['insertColumns', 1000, 1], ['removeColumns', 999, 2], ['removeColumns', 0, Number.NaN],
  ])('%s at %d, %d of them, is refused', (act, at, count) => {
    expect(() => apply({ do: act, sheet: 1, at, count } as Edit, bottom)).toThrow(EditRefused);
  });
});
