/** Formulas that share a syntax tree must mean the same. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { shiftCopy, toEngine } from '../../../src/formula/index.ts';
import { isFault } from '../../../src/quantities/index.ts';
import { relativeText } from '../../../workers/reckon/formulas.ts';
import type { Formulas } from '../../../workers/reckon/formulas.ts';
import { Host } from '../../../workers/reckon/host.ts';
import { HyperFormula } from '../../../workers/reckon/internals.ts';
import type { Place } from '../../../workers/reckon/internals.ts';
import { Desk } from './desk.ts';

const NAMES = ['waist', 'full bust', 'XYZ1', 'LOG10'];
const plain = HyperFormula.buildEmpty({
  licenseKey: 'gpl-v3', maxRows: 1_000_000, maxColumns: 1_000, functionArgSeparator: ',', arrayColumnSeparator: ';', arrayRowSeparator: '|',
});
plain._crudOperations.operations.addSheetWithId(1, 'S1');

/** The tree that a formula has without any sharing; formulas that cannot be read share nothing. */
function treeOf(formula: string, place: Place): string {
  const translated = toEngine(formula, { sheets: [{ id: 1, name: 'Fit' }], names: NAMES, ownSheet: 1 });
  if (isFault(translated)) return 'fault';
  const { ast, errors } = plain._parser.parse(translated.text, place);
  return errors.length > 0 ? 'error' : JSON.stringify(ast);
}

const piece = fc.oneof(
  { weight: 4, arbitrary: fc.tuple(fc.constantFrom('', '$'), fc.constantFrom('A', 'B', 'AA', 'ALL', 'ALM', 'XYZ', 'CM', 'IN', 'LOG', 'E'), fc.constantFrom('', '$'), fc.constantFrom('1', '2', '3', '10', '1000000', '1000001', '0')).map((parts) => parts.join('')) },
  fc.constantFrom('+', '-', '*', '/', '^', '&', '=', '<>', '<=', ':', ',', ';', '(', ')', '%', ' ', '  ', '"', "'", '!', '.'),
  fc.constantFrom('SUM(', 'sum(', 'LOG10(', 'LOG10 (', 'IF(', 'SIZE.AT(', 'TT.QUANTITY(', 'OFFSET(', 'waist', 'full bust', 'TRUE', 'Fit!', "'Fit'!", '"A1"', '#REF!'),
  fc.constantFrom('1', '2.5', '.5', '5.', '1e3', '1E5', '3/8', '2 1/4', '12', '½'),
  fc.constantFrom('cm', ' cm', 'in', ' in', '"', 'cm2', ' cm2', 'm', ' m', 'yd 4 in', '°', '²'),
);
const sane = fc.tuple(
  fc.constantFrom('A1', '$B$2', 'C$3', '$D4', 'SUM(A1:B2)', 'SUM($A$1:$B2)', 'SUM(A1:$B$2)', 'SUM(B2:A1)', '2.5', '3 cm', '1/4 in', 'MAX(A1,3 cm)'), fc.constantFrom('+', ' - ', '*', ' / ', '&', '>=', '&"a b"&', '; '), fc.constantFrom('A2', '$A1', '5', '2 1/4 in', '(B1+1)', 'IF(A1>2,A1,B1)'),
).map((parts) => parts.join(''));
const formula = fc.oneof(sane, fc.array(piece, { minLength: 1, maxLength: 7 }).map((pieces) => pieces.join(''))).map((text) => `=${text}`);
const place = fc.record({ sheet: fc.constant(1), row: fc.nat(12), col: fc.nat(6) }, { noNullPrototype: true });

describe('sharing', () => {
  test('two formulas with one relative text have one tree', () => {
    let shared = 0;
    fc.assert(fc.property(formula, place, place, fc.boolean(), formula, (text, here, there, moved, another) => {
      const key = relativeText(text, here);
      const other = moved ? shiftCopy(text, there.row - here.row, there.col - here.col) : another;
      if (key === undefined || key !== relativeText(other, there)) return;
      shared += 1;
      expect(treeOf(other, there), `${text} and ${other}`).toBe(treeOf(text, here));
    }), { numRuns: 20_000 });
    expect(shared).toBeGreaterThan(1_000);
  }, 120_000);

  test.each(['="A1"', '=IF(A1;"x";B1)', '=A1+B1', '=SUM(A1:B9)*2', '=A1*2 1/4 in', '=IF(A1>3 cm, B1, C1)', '=-$A$1', '=A1 + 1'])('%s is shared', (text) => {
    expect(relativeText(text, { sheet: 1, row: 0, col: 0 })).toBeDefined();
  });

  test.each(['=2"A1"', '=waist', '=Fit!A1', '=XYZ1', '=5 cm2', '=LOG10 (1)', '=A1:$B2', '=SUM(1,2)', '=TRUE', '=A1 B1', '=A1.5', '=ALM1', '=A1000001', "=5'", '=½'])('%s is read by itself', (text) => {
    expect(relativeText(text, { sheet: 1, row: 0, col: 0 })).toBeUndefined();
  });
});

test('a column of formulas goes the same way as each by itself', () => {
  const cells = Object.fromEntries(Array.from({ length: 40 }, (_, i) => [[`A${i + 1}`, `${i + 1} cm`], [`B${i + 1}`, `=A${i + 1}*2+$A$1`], [`C${i + 1}`, `=SUM(A$1:A${i + 1})`]]).flat() as [string, string][]);
  const desk = new Desk(cells);
  expect([desk.show('B40'), desk.show('C40')]).toEqual(['81 cm', '820 cm']);
});

describe('going down a column', () => {
  const host = new Host();
  host.formulas.setMeanings([{ id: 1, name: 'Fit' }], NAMES);
  const told = (formulas: Formulas, text: string, at: Place): string => {
    const { ast, errors } = formulas.treeOf(text, at);
    return errors.length > 0 ? 'error' : JSON.stringify(ast);
  };

  test('a formula is what it is by itself, whatever stood above', () => {
    let alike = 0;
    fc.assert(fc.property(formula, formula, fc.array(fc.tuple(fc.boolean(), fc.nat(9)), { minLength: 3, maxLength: 8 }), fc.nat(5), (first, second, steps, col) => {
      let row = 3;
      for (const [other, step] of steps) {
        row += step === 9 ? 1_000 : 1;
        const copied = shiftCopy(other ? second : first, row - 3, 0);
        // Now and then one that points elsewhere, as a slip of the hand would have it.
        const text = step === 0 ? copied.replace(/\d/, '7') : step === 1 ? copied.replace(/(\d)/, '0$1') : step === 2 ? `${copied} ` : copied;
        const at = { sheet: 1, row, col };
        const by = new Host();
        by.formulas.setMeanings([{ id: 1, name: 'Fit' }], NAMES);
        const tree = told(host.formulas, text, at);
        if (tree !== 'error') alike += 1;
        expect(tree, text).toBe(told(by.formulas, text, at));
      }
    }), { numRuns: 40 });
    expect(alike).toBeGreaterThan(30);
  }, 120_000);

  test.each([
    ['=B1+C9', '=B2+C10', '=B3+C11', '=B4+C11'], ['=$B$1*B1', '=$B$1*B2', '=$B$1*B3', '=$B$2*B4'], ['=B1', '=B2', '=B3', '=B'], ['=B1', '=B2', '=B3', '=B04'],
    ['=B1', '=B2', '=B3', '=B4:B5'], ['=B1', '=B2', '=B3', '=B4(1)'], ['=B1&"B1"', '=B2&"B1"', '=B3&"B1"', '=B4&"B4"'], ['=B1', '=B2', '=B3', '=B44'],
  ])('%s, %s, %s, then %s', (...texts) => {
    const cells = { B1: '1', B2: '2', B3: '3', B4: '4', B5: '5', B44: '44', C9: '9', C10: '10', C11: '11', C12: '12' };
    const desk = new Desk({ ...cells, ...Object.fromEntries(texts.map((text, i) => [`A${i + 1}`, text])) });
    texts.forEach((text, i) => expect(desk.show(`A${i + 1}`)).toBe(new Desk({ ...cells, [`A${i + 1}`]: text }).show(`A${i + 1}`)));
  });
});

test('more kinds of formulas than are kept still go right', () => {
  const desk = new Desk({ A1: '1' });
  desk.edit({ do: 'setCells', sheet: 1, cells: Array.from({ length: 21_000 }, (_, row) => ({ row, col: 1, cell: { raw: `=$A$1+${row}` } })) });
  expect([desk.show('B1'), desk.show('B20500'), desk.show('B21000')]).toEqual(['1', '20500', '21000']);
}, 30_000);
