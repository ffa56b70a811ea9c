import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { amountIn, readQuantity } from '../../../src/quantities/index.ts';
import { EditRefused, apply, fillEdit } from '../../../src/workbook/index.ts';
import type { Book, Edit, NamedArea } from '../../../src/workbook/index.ts';
import { area, bookOf, textsOf } from './help.ts';

const CHARTS: NamedArea[] = [
  { name: 'ladies', kind: 'chart', area: area(2, 0, 0, 1, 5) },
  { name: 'odd', kind: 'chart', area: area(2, 3, 0, 4, 5) },
];
const SKIRT = [['size', "'00", '0', '2', '4', 'Tall 4'], ['bust', '80 cm'], [], ['size', '16', '18', '20', '24', '28'], ['bust', '90 cm']];

/** Fills a column downwards from its first cells. */
function down(given: readonly string[], count: number, copy = false): string[] {
  const book = bookOf(given.map((text) => [text]), SKIRT, CHARTS);
  const last = given.length - 1;
  const { book: after } = apply(fillEdit(book, area(1, 0, 0, last, 0), area(1, 0, 0, last + count, 0), { copy }), book);
  return Array.from({ length: count }, (_, at) => textsOf(after, 1)[given.length + at]?.[0] ?? '');
}

describe('a series goes on', () => {
  test.each<[string[], string[]]>([
    [['10', '12'], ['14', '16', '18']],
    [['10', '12', '14'], ['16', '18']],
    [['3', '1'], ['-1', '-3']],
    [['0.5', '0.75'], ['1.00', '1.25']],
    [['1,5', '2'], ['2,5', '3,0']],
    [['0.1', '0.2'], ['0.3', '0.4', '0.5', '0.6', '0.7']],
    [['10 cm', '12 cm'], ['14 cm', '16 cm']],
    [['2.5 cm', '5 cm'], ['7.5 cm', '10.0 cm']],
    [['5 %', '10 %'], ['15 %']],
    [['2 1/4 in', '2 1/2 in'], ['2 3/4 in', '3 in', '3 1/4 in']],
    [['1/8"', '1/4"'], ['3/8"', '1/2"', '5/8"']],
    [['2¼ in', '2½ in'], ['2 3/4 in', '3 in']],
    [['5/8 in', '1/4 in'], ['-1/8 in']],
    [['1 yd 4 in', '1 yd 8 in'], ['1 yd 12 in', '1 yd 16 in']],
  ])('%j: %j', (given, wanted) => {
    expect(down(given, wanted.length).map((text) => readQuantity(text))).toEqual(wanted.map((text) => readQuantity(text)));
    if (!given[0]!.includes('yd')) expect(down(given, wanted.length)).toEqual(wanted);
  });

  test.each<[string[], string[]]>([
    [['2026-02-27'], ['2026-02-28', '2026-03-01']],
    [['2026-01-05', '2026-01-12'], ['2026-01-19']],
    [['2026-01-31', '2026-02-28'], ['2026-03-28']],
    [['2025-11-30', '2025-12-30'], ['2026-01-30', '2026-02-28', '2026-03-30']],
    [['2024-05-01', '2025-05-01'], ['2026-05-01']],
    [['Button 1'], ['Button 2', 'Button 3']],
    [['Button 2', 'Button 4'], ['Button 6']],
    [['Piece 09'], ['Piece 10', 'Piece 11']],
    [['007'], ['008']],
    [['XS'], ['S', 'M', 'L', 'XL', 'XXL', '3XL', '4XL']],
    [['XS', 'M'], ['XL', '3XL']],
    [['2XL', 'XL'], ['L', 'M']],
    [['xs', 's'], ['m', 'l']],
    [["'00", '0'], ['2', '4', 'Tall 4']],
    [['18', '20'], ['24', '28']],
  ])('%j: %j', (given, wanted) => expect(down(given, wanted.length)).toEqual(wanted));

  test('ends where a chart ends, and leaves the rest as it is', () => {
    expect(down(['4', 'Tall 4'], 2)).toEqual(['', '']);
  });

  test('backwards, upwards from its last cells', () => {
    const book = bookOf([[], [], ['10 cm'], ['12 cm']]);
    const { book: after } = apply(fillEdit(book, area(1, 2, 0, 3, 0), area(1, 0, 0, 3, 0)), book);
    expect(textsOf(after, 1)).toEqual([['6 cm'], ['8 cm'], ['10 cm'], ['12 cm']]);
  });
});

describe('what is no series is copied', () => {
  test.each<[string[], string[]]>([
    [['10'], ['10', '10']],
    [['91 cm'], ['91 cm', '91 cm']],
    [['10', '12', '15'], ['10', '12', '15', '10']],
    [['10 cm', '12 in'], ['10 cm', '12 in']],
    [['Hem'], ['Hem', 'Hem']],
    [['a', '', 'b'], ['a', '', 'b']],
    [['12 buttons'], ['12 buttons']],
    [['2026-02-30'], ['2026-02-30']],
    [['10/12'], ['10/12']],
    [['-5'], ['-5']],
    [['S/M'], ['S/M']],
  ])('%j: %j', (given, wanted) => expect(down(given, wanted.length)).toEqual(wanted));

  test('and what is one, when copies are asked for', () => {
    expect(down(['10', '12'], 3, true)).toEqual(['10', '12', '10']);
  });
});

describe('formulas', () => {
  test('move with the cells they are filled into', () => {
    const book = bookOf([['1', '=A1*$A$1', '=SUM(A$1:A1)'], ['2']]);
    const { book: after } = apply(fillEdit(book, area(1, 0, 1, 0, 2), area(1, 0, 1, 2, 2)), book);
    expect(textsOf(after, 1)).toEqual([['1', '=A1*$A$1', '=SUM(A$1:A1)'], ['2', '=A2*$A$1', '=SUM(A$1:A2)'], ['', '=A3*$A$1', '=SUM(A$1:A3)']]);
  });
  test('two that take turns go on taking turns', () => {
    const book = bookOf([['=B1', 'x'], ['=B2+1', 'y']]);
    const { book: after } = apply(fillEdit(book, area(1, 0, 0, 1, 0), area(1, 0, 0, 4, 0)), book);
    expect(textsOf(after, 1).map(([first]) => first)).toEqual(['=B1', '=B2+1', '=B3', '=B4+1', '=B5']);
  });
  test('across', () => {
    const book = bookOf([['=A9', '12', '14']]);
    const { book: after } = apply(fillEdit(book, area(1, 0, 0, 0, 0), area(1, 0, 0, 0, 2)), book);
    expect(textsOf(after, 1)).toEqual([['=A9', '=B9', '=C9']]);
  });
});

test('looks and input marks are filled too, and a cell keeps its own note', () => {
  const cells = [
    { row: 0, col: 0, cell: { raw: '10', look: { strong: true } as const, input: true as const, note: 'first' } },
    { row: 1, col: 0, cell: { raw: 'old', note: 'measured' } },
  ];
  const book = apply({ do: 'setCells', sheet: 1, cells }, bookOf([])).book;
  const { book: after } = apply(fillEdit(book, area(1, 0, 0, 0, 0), area(1, 0, 0, 2, 0)), book);
  expect(after.sheets[0]!.rows.slice(1)).toEqual([
    [{ raw: '10', look: { strong: true }, input: true, note: 'measured' }], [{ raw: '10', look: { strong: true }, input: true }],
  ]);
});

test('what does not show is neither read nor filled', () => {
  const hidden: Edit = { do: 'setHidden', sheet: 1, axis: 'rows', runs: [[1, 1], [3, 3]] };
  const book = apply(hidden, bookOf([['10'], ['99'], ['12'], ['kept']])).book;
  const edit = fillEdit(book, area(1, 0, 0, 2, 0), area(1, 0, 0, 5, 0));
  expect(edit).toMatchObject({ label: 'fill 2 cells in Fit' });
  expect(textsOf(apply(edit, book).book, 1).map(([first]) => first)).toEqual(['10', '99', '12', 'kept', '14', '16']);
});

describe('refused', () => {
  const book: Book = bookOf([['1', '2'], ['3', '4']]);
  test.each([
    ['two ways at once', area(1, 0, 0), area(1, 0, 0, 3, 3)],
    ['nothing to fill', area(1, 0, 0), area(1, 0, 0)],
    ['outside of what is given', area(1, 1, 0), area(1, 2, 0, 3, 0)],
    ['not the whole breadth', area(1, 0, 0), area(1, 0, 0, 2, 1)],
  ])('%s', (_, source, target) => expect(() => fillEdit(book, source, target)).toThrow('one direction at a time'));
  test('more than a page can hold', () => {
    expect(() => fillEdit(book, area(1, 0, 0, 0, 9), area(1, 0, 0, 999_999, 9))).toThrow(EditRefused);
  });
});

test('lengths in steps of an eighth go on exactly, to the last 64th', () => {
  const inches = fc.integer({ min: 1, max: 640 });
  fc.assert(fc.property(inches, fc.integer({ min: 1, max: 64 }), fc.integer({ min: 1, max: 40 }), (start, step, count) => {
    const text = (parts: number): string => {
      const [whole, rest] = [Math.floor(parts / 64), parts % 64];
      return rest === 0 ? `${whole} in` : whole === 0 ? `${rest}/64 in` : `${whole} ${rest}/64 in`;
    };
    const filled = down([text(start), text(start + step)], count);
    filled.forEach((each, at) => {
      const reading = readQuantity(each);
      if (reading.kind !== 'quantity') throw new Error(`${each} is no figure`);
      expect(reading.quantity.unit).toBe('in');
      expect(amountIn(reading.quantity, 'in') * 64).toBe(start + step * (at + 2));
    });
  }), { numRuns: 300 });
});

test('any texts: what is filled is undone exactly, and a formula stays one', () => {
  const text = fc.oneof(fc.constantFrom('1', '2 cm', 'XS', 'a 1', '=A1', '=$B$2+A9', '', '2026-01-01'), fc.string({ maxLength: 8 }));
  fc.assert(fc.property(fc.array(fc.array(text, { minLength: 2, maxLength: 2 }), { minLength: 1, maxLength: 3 }), fc.integer({ min: 1, max: 5 }), fc.boolean(), (rows, count, copy) => {
    const book = bookOf(rows);
    const edit = fillEdit(book, area(1, 0, 0, rows.length - 1, 1), area(1, 0, 0, rows.length - 1 + count, 1), { copy });
    const { book: after, inverse } = apply(edit, book);
    expect(apply(inverse, after).book).toStrictEqual(book);
    textsOf(after, 1).forEach((line, row) => line.forEach((raw, col) => {
      expect(raw.startsWith('=')).toBe((rows[row % rows.length]![col] ?? '').startsWith('='));
    }));
  }), { numRuns: 500 });
});
