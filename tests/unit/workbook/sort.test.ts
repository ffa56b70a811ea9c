import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { tokenize } from '../../../src/formula/index.ts';
import { readQuantity } from '../../../src/quantities/index.ts';
import { EditRefused, apply, cellAt, hiddenRows, labelOf, letterRank, orderOf, sortEdit } from '../../../src/workbook/index.ts';
import type { Area, Book, PlainValue, SortKey, ValueAt } from '../../../src/workbook/index.ts';
import { area, bookOf, textsOf } from './help.ts';

/** What a typed text gives; formulas give what the second argument says. */
function plain(raw: string, results: Readonly<Record<string, string>> = {}): PlainValue {
  if (raw === '') return { kind: 'empty' };
  if (raw.startsWith('=')) return plain(results[raw] ?? '');
  const reading = readQuantity(raw);
  if (reading.kind === 'quantity') return { kind: 'number', value: reading.quantity.value, dimension: reading.quantity.dimension };
  if (raw === 'yes' || raw === 'no') return { kind: 'truth', truth: raw === 'yes' };
  return { kind: 'text', text: raw.replace(/^'/, '') };
}
const valuesOf = (book: Book, results = {}): ValueAt => (row, col) => plain(cellAt(book.sheets[0]!, row, col)?.raw ?? '', results);

function sorted(book: Book, at: Area, keys: readonly SortKey[], results = {}): Book {
  const applied = apply(sortEdit(book, at, keys, valuesOf(book, results)), book);
  expect(apply(applied.inverse, applied.book).book).toStrictEqual(book);
  return applied.book;
}
const column = (texts: readonly string[]): Book => bookOf(texts.map((text) => [text]));
const sortedColumn = (texts: readonly string[], descending = false): string[] =>
  textsOf(sorted(column(texts), area(1, 0, 0, texts.length - 1), [{ col: 0, descending }]), 1).map(([text = '']) => text);

describe('the order', () => {
  test('lengths by length, whatever their units', () => {
    expect(sortedColumn(['1 yd', '50 cm', '2 1/4 in', '1 m', '900 mm'])).toEqual(['2 1/4 in', '50 cm', '900 mm', '1 yd', '1 m']);
  });
  test('numbers by number, texts as people order them', () => {
    expect(sortedColumn(['10', '9', '-1', '1.5'])).toEqual(['-1', '1.5', '9', '10']);
    expect(sortedColumn(['Button 10', 'button 2', 'Ärmel', 'Zip', 'apron'])).toEqual(['apron', 'Ärmel', 'button 2', 'Button 10', 'Zip']);
  });
  test('letter sizes by size', () => {
    expect(sortedColumn(['L', '3XL', 'S', 'XXS', 'XL', 'M', 'XS', '2XL'])).toEqual(['XXS', 'XS', 'S', 'M', 'L', 'XL', '2XL', '3XL']);
    expect(sortedColumn(['M/L', 'S', 'M', 'S/M'])).toEqual(['S', 'S/M', 'M', 'M/L']);
  });
  test('00 before 0 before 2', () => {
    expect(sortedColumn(['2', "'00", '10', '0', "'000"])).toEqual(["'000", "'00", '0', '2', '10']);
  });
  test('a column that is not all sizes is text', () => {
    expect(sortedColumn(['XS', 'M', 'Large bag'])).toEqual(['Large bag', 'M', 'XS']);
  });
  test('the order of a chart, when all are its labels', () => {
    const book = bookOf(
      [['Tall'], ['Petite 8'], ['Petite 6']],
      [['size', 'Petite 6', 'Petite 8', 'Petite 10', 'Tall'], ['bust', '80 cm', '84 cm', '88 cm', '92 cm']],
      [{ name: 'ladies', kind: 'chart', area: area(2, 0, 0, 1, 4) }],
    );
    expect(textsOf(sorted(book, area(1, 0, 0, 2), [{ col: 0 }]), 1)).toEqual([['Petite 6'], ['Petite 8'], ['Tall']]);
  });
  test('figures before texts before yes and no; empty ones last either way', () => {
    expect(sortedColumn(['text', '', 'yes', '5 cm', '3'])).toEqual(['3', '5 cm', 'text', 'yes']);
    expect(sortedColumn(['text', '', 'yes', '5 cm', '3'], true)).toEqual(['yes', 'text', '5 cm', '3']);
  });
  test('letters rank as EN 13402-3 has them, and nothing else does', () => {
    expect(['XXS', 'XS', 'S', 'M', 'L', 'XL', 'XXL', '3XL'].map(letterRank)).toEqual([-3, -2, -1, 0, 1, 2, 3, 4]);
    expect(['2XL', 'xs', 'Extra small', '3X', 'M (10)', 'S/M'].map(letterRank)).toEqual([3, -2, -2, 4, 0, -0.5]);
    expect(['', 'XM', 'SL', 'Hem', '10', 'X', 'S/'].map(letterRank)).toEqual([null, null, null, null, null, null, null]);
  });
  test('it is one order: antisymmetric and transitive over any values', () => {
    const value = fc.oneof(
      fc.constantFrom<PlainValue>({ kind: 'truth', truth: true }, { kind: 'truth', truth: false }, { kind: 'error' }),
      fc.record({ kind: fc.constant('number' as const), value: fc.constantFrom(-1, 0, 2, 25.4), dimension: fc.constantFrom('number' as const, 'length' as const) }),
      fc.record({ kind: fc.constant('text' as const), text: fc.constantFrom('S', 'M', 'XL', '00', '0', 'b2', 'b10', 'B2') }),
    );
    fc.assert(fc.property(fc.array(value, { minLength: 3, maxLength: 9 }), (values) => {
      const order = orderOf(values, [['S', 'M', '0', '00', 'XL']]);
      for (const a of values) for (const b of values) {
        expect(Math.sign(order(a, b))).toBe(0 - Math.sign(order(b, a)));
        for (const c of values) if (order(a, b) <= 0 && order(b, c) <= 0) expect(order(a, c)).toBeLessThanOrEqual(0);
      }
    }));
  });
});

describe('rows', () => {
  const book = bookOf(
    [['Part', 'Width', 'Cut', 'Of all'], ['Sleeve', '30 cm', '=B2+2 cm', '=B2/SUM($B$2:$B$4)'], ['Back', '40 cm', '=B3+2 cm', '=B3/SUM($B$2:$B$4)'], ['Collar', '10 cm', '=B4+2 cm', '=B4/SUM($B$2:$B$4)'], ['', '=SUM(B2:B4)', '=B4', '=collar']],
    [['=Fit!B4', '=Fit!C2', '=B2']],
    [{ name: 'collar', kind: 'cells', area: area(1, 3, 1) }, { name: 'widths', kind: 'cells', area: area(1, 1, 1, 3, 1) }],
  );

  test('move as wholes, and everything that points at them follows', () => {
    const after = sorted(book, area(1, 1, 0, 3, 3), [{ col: 1 }]);
    expect(textsOf(after, 1)).toEqual([
      ['Part', 'Width', 'Cut', 'Of all'],
      ['Collar', '10 cm', '=B2+2 cm', '=B2/SUM($B$2:$B$4)'], ['Sleeve', '30 cm', '=B3+2 cm', '=B3/SUM($B$2:$B$4)'], ['Back', '40 cm', '=B4+2 cm', '=B4/SUM($B$2:$B$4)'],
      ['', '=SUM(B2:B4)', '=B2', '=collar'],
    ]);
    expect(textsOf(after, 2)).toEqual([['=Fit!B2', '=Fit!C3', '=B2']]);
    expect(after.names.map((each) => each.area)).toEqual([area(1, 1, 1), area(1, 1, 1, 3, 1)]);
  });

  test('by what formulas give, and by several keys', () => {
    const results = { '=B2+2 cm': '32 cm', '=B3+2 cm': '42 cm', '=B4+2 cm': '12 cm' };
    expect(textsOf(sorted(book, area(1, 1, 0, 3, 3), [{ col: 2, descending: true }], results), 1).map(([first]) => first)).toEqual(['Part', 'Back', 'Sleeve', 'Collar', '']);
    const pairs = bookOf([['b', '2'], ['a', '2'], ['c', '1'], ['a', '1']]);
    expect(textsOf(sorted(pairs, area(1, 0, 0, 3, 1), [{ col: 0 }, { col: 1, descending: true }]), 1)).toEqual([['a', '2'], ['a', '1'], ['b', '2'], ['c', '1']]);
  });

  test('equal ones keep their order', () => {
    const same = bookOf([['b', '1'], ['a', '2'], ['b', '3'], ['a', '4']]);
    expect(textsOf(sorted(same, area(1, 0, 0, 3, 1), [{ col: 0 }]), 1).map(([, second]) => second)).toEqual(['2', '4', '1', '3']);
  });

  test('looks, notes and input marks go along; of whole columns only what is filled', () => {
    const marked = apply({ do: 'setCells', sheet: 1, cells: [{ row: 0, col: 0, cell: { raw: 'z', look: { strong: true }, note: 'last', input: true } }, { row: 1, col: 0, cell: { raw: 'a' } }] }, bookOf([])).book;
    const after = sorted(marked, area(1, 0, 0, 999_999, 999), [{ col: 0 }]);
    expect(after.sheets[0]!.rows).toEqual([[{ raw: 'a' }], [{ raw: 'z', look: { strong: true }, note: 'last', input: true }]]);
  });

  test('what is hidden stays hidden', () => {
    const hiding = apply({ do: 'many', label: '', edits: [
      { do: 'setHidden', sheet: 1, axis: 'rows', runs: [[3, 3]] },
      { do: 'setFilter', sheet: 1, filter: { area: { top: 1, left: 0, bottom: 3, right: 3 }, conditions: [], hides: [[1, 1]] } },
    ] }, book).book;
    const after = sorted(hiding, area(1, 1, 0, 3, 3), [{ col: 1 }]);
    expect(after.sheets[0]!.hidden!.rows).toEqual([[1, 1]]);
    expect(after.sheets[0]!.filter!.hides).toEqual([[2, 2]]);
    expect(hiddenRows(after.sheets[0]!)).toEqual([[1, 2]]);
  });

  test('are told in the label', () => {
    const edit = sortEdit(book, area(1, 1, 0, 3, 3), [{ col: 1 }], valuesOf(book));
    expect(edit).toEqual({ do: 'orderRows', area: area(1, 1, 0, 3, 3), order: [2, 0, 1] });
    expect(labelOf(edit, book)).toBe('sort 3 rows in Fit');
  });
});

describe('refused, with a sentence', () => {
  const refusal = (texts: string[][], at: Area, names = []): string => {
    const book = bookOf(texts, [], names);
    try {
      apply(sortEdit(book, at, [{ col: 0 }], valuesOf(book)), book);
    } catch (error) {
      if (error instanceof EditRefused) return error.sentence;
      throw error;
    }
    return '';
  };

  test('a formula that speaks of the row above', () => {
    expect(refusal([['b', '1', '=B1'], ['a', '2', '=C1+B2']], area(1, 0, 0, 1, 2))).toBe(
      'C2 of Fit uses C1 in another of these rows, and would have other neighbours after sorting: write C$1 if just that is meant, or sort without it.',
    );
  });
  test('one filled down that looks two rows up; but one cell that uses another is followed', () => {
    const far = [['d', '1'], ['c', '2'], ['b', '3', '=B1'], ['a', '4', '=B2']];
    expect(refusal(far, area(1, 0, 0, 3, 2))).toContain('C3 of Fit uses B1 in another of these rows');
    far[3]![2] = '=B4';
    const book = bookOf(far);
    expect(textsOf(sorted(book, area(1, 0, 0, 3, 2), [{ col: 0 }]), 1)).toEqual([['a', '4', '=B1'], ['b', '3', '=B4'], ['c', '2'], ['d', '1']]);
  });
  test('a block of some of the rows', () => {
    expect(refusal([['c', '1'], ['b', '2'], ['a', '3'], ['', '=SUM(B1:B2)']], area(1, 0, 0, 2, 1))).toBe('');
    expect(refusal([['c', '1'], ['a', '2'], ['b', '3'], ['', '=SUM(B1:B2)']], area(1, 0, 0, 2, 1))).toContain('B4 of Fit uses B1:B2, which sorting would take apart');
  });
  test('a name for some of the rows', () => {
    const book = bookOf([['c'], ['a'], ['b']], [], [{ name: 'two', kind: 'cells', area: area(1, 0, 0, 1, 0) }]);
    expect(() => sorted(book, area(1, 0, 0, 2, 0), [{ col: 0 }])).toThrow('The name two stands for A1:A2, which sorting would take apart');
  });
  test('cells of a row of which only some move', () => {
    expect(refusal([['b', '1', '2'], ['a', '2', '3'], ['', '=SUM(A1:C1)']], area(1, 0, 0, 1, 1))).toContain('B3 of Fit uses A1:C1');
  });
  test('what is in order already, or nothing at all', () => {
    expect(refusal([['a'], ['b']], area(1, 0, 0, 1, 0))).toBe('The 2 rows of A1:A2 are in that order already.');
    expect(refusal([['a']], area(1, 0, 0, 9, 0))).toContain('There are no two filled rows to sort in A1:A10 of Fit');
  });
});

test('a single cell that a formula uses is the same cell after any sort', () => {
  const texts = fc.array(fc.tuple(fc.constantFrom('a', 'b', 'c', ''), fc.constantFrom('1 cm', '2 in', '', '=A$2', '=$A$4', '=A:A')), { minLength: 2, maxLength: 7 });
  let done = 0;
  fc.assert(fc.property(texts, fc.array(fc.tuple(fc.nat(6), fc.nat(1)), { maxLength: 4 }), (rows, outside) => {
    const book = bookOf([...rows.map((row) => [...row]), ...outside.map(([row, col]) => ['', '', `=${'AB'[col]}${row + 1}`])]);
    const block = area(1, 0, 0, rows.length - 1, 1);
    let edit;
    try {
      edit = sortEdit(book, block, [{ col: 0 }, { col: 1 }], valuesOf(book));
    } catch (error) {
      expect(error).toBeInstanceOf(EditRefused);
      return;
    }
    done += 1;
    const after = apply(edit, book).book;
    const [was, is] = [book.sheets[0]!, after.sheets[0]!];
    const bottom = rows.length;
    outside.forEach(([row, col], at) => {
      const formula = cellAt(is, bottom + at, 2)!.raw;
      const { from } = tokenize(formula).find((token) => token.reference)!.reference!;
      const old = cellAt(was, row, col)?.raw ?? '';
      const now = cellAt(is, from.row!, from.col!)?.raw ?? '';
      if (!old.startsWith('=')) expect(now).toBe(old);
      else expect(now.startsWith('=')).toBe(true);
    });
    const filled = (lines: readonly (readonly string[])[]): string[] => lines.slice(0, bottom).map(([first = '']) => first).filter((text) => text !== '').sort();
    expect(filled(textsOf(after, 1))).toEqual(filled(rows));
  }), { numRuns: 1500 });
  expect(done).toBeGreaterThan(300);
});
