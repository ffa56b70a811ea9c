/** Rows and columns that change places, and rows that are sorted: the engine told step by step knows the same as one told all at once. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { apply, sortEdit, EditRefused, type Edit, type PlainValue, type ValueAt } from '../../../src/workbook/index.ts';
import { UNITS } from '../../../src/quantities/index.ts';
import { Desk, type Cells } from './desk.ts';

const FIT: Cells = {
  A1: 'Part', B1: 'Width', C1: 'With seams', D1: 'Share',
  A2: 'Sleeve', B2: '30 cm', C2: '=B2+3 cm', D2: '=B2/SUM(B$2:B$6)',
  A3: 'Back', B3: '16 in', C3: '=B3+3 cm', D3: '=B3/SUM(B$2:B$6)',
  A4: 'Collar', B4: '10 cm', C4: '=B4+3 cm', D4: '=B4/SUM(B$2:B$6)',
  A5: 'Cuff', B5: '22 cm', C5: '=B5+3 cm', D5: '=B5/$B$2',
  A6: 'Pocket', B6: '=B4*1.5', C6: '=B6+3 cm', D6: '=collar',
  B8: '=SUM(B2:B6)', C8: '=Skirt!A1', D8: '=SUM(3:3)', E8: '=MAX(C:C)',
};
const SKIRT: Cells = { A1: '=Fit!B4', A2: '=Fit!C2*2', A3: '=SUM(Fit!B2:C6)', A4: '=A1+1 cm' };

function desk(): Desk {
  const made = new Desk(['Fit', FIT], ['Skirt', SKIRT]);
  made.name('collar', 'B4');
  return made;
}

/** All that shows, sheet by sheet, row by row. */
function all(of: Desk): string[][][] {
  return of.book.sheets.map((_, sheet) => Array.from({ length: 14 }, (__, row) => Array.from('ABCDEFG', (letter) => of.show(`${letter}${row + 1}`, sheet))));
}

function expectAsOpened(of: Desk): void {
  const known = all(of);
  const anew = desk();
  anew.book = of.book;
  anew.revision = of.revision;
  anew.open();
  expect(known).toEqual(all(anew));
}

const valuesOf = (of: Desk): ValueAt => (row, col): PlainValue => {
  const result = of.results.at(1, row, col);
  if (result.kind === 'quantity') return { kind: 'number', value: result.value, dimension: UNITS[result.unit].dimension };
  return result.kind === 'text' ? { kind: 'text', text: result.text } : { kind: 'empty' };
};

describe('a row that is moved', () => {
  test('takes its figures along, and nothing that uses them changes', () => {
    const of = desk();
    const before = ['B8', 'C8', 'E8', 'D6', 'D5'].map((cell) => of.show(cell));
    of.edit({ do: 'moveRows', sheet: 1, at: 3, count: 1, to: 1 });
    expect(of.show('A2')).toBe('Collar');
    expect(of.show('C2')).toBe('13 cm');
    expect(of.show('B6')).toBe('15 cm');
    expect(['B8', 'C8', 'E8', 'D6'].map((cell) => of.show(cell))).toEqual(before.slice(0, 4));
    expect(of.show('A1', 1)).toBe('10 cm');
    expectAsOpened(of);
  });

  test('is never beside figures of another row while the engine is at work', () => {
    const of = desk();
    const edit: Edit = { do: 'moveRows', sheet: 1, at: 1, count: 1, to: 6 };
    const shown: string[] = [];
    const { engine } = of;
    const told = engine.apply.bind(engine);
    engine.apply = (revision, effects) => {
      for (const cell of ['B2', 'C2', 'B5', 'B6', 'C6']) shown.push(of.show(cell));
      return told(revision, effects);
    };
    of.edit(edit);
    // The rows that moved up are right at once; the one that moved down is not known yet, and not shown as another's.
    expect(shown).toEqual(['16 in', '17.181102362204724 in', '15 cm', '', '']);
    expect(of.show('C6')).toBe('33 cm');
  });
});

/** What a cell gives, whatever unit it shows in: a sum shows in the unit of its first cell, which may be another now. */
function worth(of: Desk, cell: string, sheet = 0): string {
  const result = of.result(cell, sheet);
  return result.kind === 'quantity' ? `${result.value.toFixed(9)} ${UNITS[result.unit].dimension}` : of.show(cell, sheet);
}

const moves: fc.Arbitrary<Edit> = fc.record({
  do: fc.constantFrom('moveRows' as const, 'moveColumns' as const), sheet: fc.constantFrom(1, 1, 2), at: fc.nat(7), count: fc.integer({ min: 1, max: 3 }), to: fc.nat(12),
});

test('any moves: the engine ends where one told all at once begins', () => {
  fc.assert(fc.property(fc.array(moves, { minLength: 1, maxLength: 5 }), (edits) => {
    const of = desk();
    for (const edit of edits) of.edit(edit);
    expectAsOpened(of);
  }), { numRuns: 60 });
}, 120_000);

const orders: fc.Arbitrary<Edit> = fc.record({ top: fc.nat(6), left: fc.nat(2), width: fc.nat(4), seeds: fc.array(fc.nat(20), { minLength: 2, maxLength: 5 }), sheet: fc.constantFrom(1, 1, 2) })
  .map(({ top, left, width, seeds, sheet }) => {
    const rows = seeds.map((_, at) => at);
    return { do: 'orderRows', area: { sheet, top, left, bottom: top + seeds.length - 1, right: left + width }, order: seeds.map((seed) => rows.splice(seed % rows.length, 1)[0]!) };
  });
const texts = fc.constantFrom(
  '=B2*2', '=SUM(A3:C3)', '=SUM(B4:C4)+1', '=SUM(A2:C3)', '=A5', '=$B$4', '=B$3', '=collar', '=SUM(B:B)', '=ROW()', '=ROW(B3)', '=Skirt!A1', '=Fit!B3', '=B3*', '=nonsense(B3)', '=TRANSPOSE(B2:B4)', '=MATCH(10 cm;B:B;0)',
  '=B2&"x"', '5 cm', '2', '', '=PLEAT.DEPTH(B2,B3,B4)', '=SUM(3:3)', '=b4 + 1 cm', '=IF(B2>B3;A2;A3)',
);
const typing = fc.array(fc.tuple(fc.constantFrom(...'ABCDE'), fc.integer({ min: 1, max: 9 }), texts), { minLength: 1, maxLength: 4 });

test('any order of rows: the engine ends where one told all at once begins, there and back', () => {
  let done = 0;
  fc.assert(fc.property(fc.array(fc.tuple(typing, orders, fc.boolean()), { minLength: 1, maxLength: 4 }), (steps) => {
    const of = desk();
    for (const [cells, edit, back] of steps) {
      of.type(Object.fromEntries(cells.map(([letter, row, raw]) => [`${letter}${row}`, raw])));
      const before = of.book;
      let inverse;
      try {
        inverse = apply(edit, before).inverse;
      } catch (error) {
        if (!(error instanceof EditRefused)) throw error;
        continue;
      }
      of.edit(edit);
      done += 1;
      if (!back) continue;
      of.edit(inverse);
      expect(of.book).toStrictEqual(before);
    }
    expectAsOpened(of);
  }), { numRuns: Number(process.env['ORDERS'] ?? 400) });
  expect(done).toBeGreaterThan(200);
}, 240_000);

const outsideOf = (of: Desk): string[] => [worth(of, 'B8'), worth(of, 'C8'), worth(of, 'E8'), worth(of, 'A1', 1), worth(of, 'A2', 1), worth(of, 'A3', 1)];

test('sorting never changes a result, only where it stands', () => {
  let sorted = 0;
  fc.assert(fc.property(fc.constantFrom(0, 1, 2, 3), fc.boolean(), fc.integer({ min: 1, max: 3 }), (col, descending, right) => {
    const of = desk();
    // A whole row would be taken apart by sorting a part of its columns.
    of.type({ D8: '' });
    const rows = (at: Desk): string[] => Array.from({ length: 5 }, (_, row) => Array.from('ABCD'.slice(0, right + 1), (letter) => worth(at, `${letter}${row + 2}`)).join(' | ')).sort();
    const [before, outside] = [rows(of), outsideOf(of)];
    let edit: Edit;
    try {
      edit = sortEdit(of.book, { sheet: 1, top: 1, left: 0, bottom: 5, right }, [{ col: Math.min(col, right), descending }], valuesOf(of));
    } catch (error) {
      expect(error).toBeInstanceOf(EditRefused);
      return;
    }
    sorted += 1;
    of.edit(edit);
    expect(rows(of)).toEqual(before);
    expect(outsideOf(of)).toEqual(outside);
    expectAsOpened(of);
  }), { numRuns: 24 });
  expect(sorted).toBeGreaterThan(5);
});
