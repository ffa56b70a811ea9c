import fc from 'fast-check';
import { expect, test } from 'vitest';
import { Repeats, rewriteReferences, shiftCopy } from '../../../src/formula/index.ts';
import type { ChangeOfReferences } from '../../../src/formula/index.ts';

const SHEETS = [{ id: 1, name: 'Fit' }, { id: 2, name: 'Skirt' }] as const;

const reference = fc.tuple(fc.constantFrom('', '$'), fc.constantFrom('A', 'B', 'D', 'H'), fc.constantFrom('', '', '$'), fc.integer({ min: 1, max: 14 })).map((parts) => parts.join(''));
const block = fc.tuple(reference, reference).map((ends) => ends.join(':'));
const formula = fc.array(fc.oneof({ weight: 3, arbitrary: reference }, { weight: 2, arbitrary: block }, { weight: 1, arbitrary: fc.constantFrom('2 cm', '"A1"', 'Fit!A3', 'Skirt!B2', 'b2', 'C:C', '3:4', 'waist') }), { minLength: 1, maxLength: 4 })
  .map((parts) => `=${parts.join('+')}`);
const change = fc.record({ do: fc.constantFrom('insertRows' as const, 'removeRows' as const, 'insertColumns' as const, 'removeColumns' as const), sheet: fc.constantFrom(1, 1, 1, 2), at: fc.nat(12), count: fc.integer({ min: 1, max: 3 }) });

test('columns of formulas that say the same: each comes to what it does by itself, and what is called exact comes back', () => {
  let exacts = 0;
  fc.assert(fc.property(fc.array(formula, { minLength: 1, maxLength: 3 }), change, fc.array(fc.tuple(fc.nat(19), fc.nat(2), formula), { maxLength: 3 }), (columns, what, odd) => {
    const repeats = new Repeats(what, SHEETS);
    const opposite = { ...what, do: ({ insertRows: 'removeRows', removeRows: 'insertRows', insertColumns: 'removeColumns', removeColumns: 'insertColumns' } as const)[what.do] } as ChangeOfReferences;
    for (const own of SHEETS) {
      for (let row = 0; row < 20; row++) {
        for (const [col, first] of columns.entries()) {
          const raw = odd.find(([at, across]) => at === row && across === col)?.[2] ?? shiftCopy(first, row, 0);
          const { text, exact } = repeats.rewrite(raw, own, row, col);
          expect(text, raw).toBe(rewriteReferences(raw, own, SHEETS, what));
          if (!exact) continue;
          exacts++;
          expect(rewriteReferences(text, own, SHEETS, opposite), `${raw} by ${text}`).toBe(raw);
        }
      }
    }
  }), { numRuns: 3_000 });
  expect(exacts).toBeGreaterThan(10_000);
});
