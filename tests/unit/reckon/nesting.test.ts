/**
 * Lengths at random places of random formulas. Ten times every length must give
 * ten times a length, a hundred times an area and the same number, however the
 * functions are nested; and nothing typed makes the engine fail or show what is
 * no number.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { UNITS } from '../../../src/quantities/index.ts';
import type { CellChange } from '../../../src/workbook/index.ts';
import { Results } from '../../../src/reckoning/results.ts';
import { Engine } from '../../../workers/reckon/engine.ts';
import { ADDED_NAMES, policyOf } from '../../../workers/reckon/functions/policy.ts';
import { HyperFormula } from '../../../workers/reckon/internals.ts';
import { Desk, said } from './desk.ts';
import { formula as tree, TYPED } from './small-evaluator.ts';

/** Random formulas held against the small evaluator. */
const EVALUATED = 100_000;
/** Random formulas of any functions; `npm run test:nestings` tries 100,000. */
const NESTINGS = Number(process.env['NESTINGS'] ?? 6_000);

const CELLS = (scale: number): Record<string, string> => ({
  A1: `${20 * scale} cm`, A2: `${30 * scale} cm`, A3: `${50 * scale} cm`, A4: `${10 * scale} in`, B1: '2', B2: '3', B3: '5', C1: `${400 * scale * scale} cm2`, C2: '25 %', C3: 'wide', C4: 'TRUE',
  D1: `${10 * scale}–${40 * scale} cm`, D2: '1/0', D3: '', D4: '2026-11-03',
});

/** Their results hang on chance, on how a length is written, or on how many of its unit it is. */
const LEFT_OUT = new Set(['RAND', 'RANDBETWEEN', 'NOW', 'TODAY', 'CONCATENATE', 'EXACT', 'FIND', 'LEFT', 'LEN', 'MID', 'REPLACE', 'REPT', 'RIGHT', 'SEARCH', 'SPLIT', 'SUBSTITUTE', 'TEXT', 'TEXTJOIN', 'VALUE', 'INT', 'ROUND', 'ROUNDDOWN', 'ROUNDUP', 'TRUNC']);
const FUNCTIONS = [...HyperFormula.buildEmpty({ licenseKey: 'gpl-v3' })._functionRegistry.getRegisteredFunctionIds(), ...ADDED_NAMES]
  .filter((name) => !LEFT_OUT.has(name) && policyOf(name).does !== 'absent');
const OFTEN = FUNCTIONS.filter((name) => policyOf(name).does !== 'refuses');

const { formula } = fc.letrec<{ formula: string; value: string }>((tie) => ({
  formula: tie('value').map((text) => `=${text}`),
  value: fc.oneof({ maxDepth: 4, withCrossShrink: true },
    { weight: 3, arbitrary: fc.constantFrom('A1', 'A2', 'A3', 'A4', 'A1:A3', 'A1:A4', 'B1', 'B2', 'B1:B3', 'C1', 'A1:C3') },
    { weight: 1, arbitrary: fc.constantFrom('C2', 'C3', 'C4', 'D1', 'D2', 'D3', 'D4', '2', '0.5', '1', '"x"', '0', 'TRUE', '""', 'A:A', '{1;2}') },
    { weight: 3, arbitrary: fc.tuple(tie('value'), fc.constantFrom('+', '-', '*', '/', '^', '=', '<', '>=', '<>'), tie('value')).map(([a, sign, b]) => `(${a}${sign}${b})`) },
    { weight: 1, arbitrary: fc.tuple(fc.constantFrom('-', '+'), tie('value')).map((parts) => parts.join('')) },
    { weight: 6, arbitrary: fc.tuple(fc.oneof({ weight: 5, arbitrary: fc.constantFrom(...OFTEN) }, { weight: 1, arbitrary: fc.constantFrom(...FUNCTIONS) }), fc.array(tie('value'), { minLength: 1, maxLength: 3 }))
      .map(([name, args]) => `${name}(${args.join(';')})`) }),
}));

/** Formulas in every eighth column, so that blocks of results find room. */
const inCells = (formulas: readonly string[]): CellChange[] => formulas.map((raw, i) => ({ row: 20 + 12 * Math.floor(i / 12), col: 8 + 8 * (i % 12), cell: { raw } }));

describe('random nestings', () => {
  test('let no bare millimetre out', () => {
    const [small, large] = [new Desk(CELLS(1)), new Desk(CELLS(10))];
    let figures = 0;
    fc.assert(fc.property(fc.array(formula, { minLength: 60, maxLength: 60 }), (formulas) => {
      for (const desk of [small, large]) desk.edit({ do: 'setCells', sheet: 1, cells: inCells(formulas) });
      for (const { row, col, cell } of inCells(formulas)) {
        const [one, ten] = [small.results.at(1, row, col), large.results.at(1, row, col)];
        if (one.kind !== 'quantity' || ten.kind !== 'quantity') continue;
        figures += 1;
        const power = { number: 0, length: 1, area: 2, angle: 0 }[UNITS[one.unit].dimension];
        const due = one.value * 10 ** power;
        expect(Math.abs(ten.value - due) <= 1e-6 * Math.max(Math.abs(due), 1e-9), `${cell!.raw} gave ${said(one)}, and ${said(ten)} with ten times every length`).toBe(true);
      }
    }), { numRuns: Math.ceil(NESTINGS / 60) });
    console.log(`${Math.ceil(NESTINGS / 60) * 60} random formulas with every length ten times as long: ${figures} gave figures, and none a bare length`);
    expect(figures).toBeGreaterThan(NESTINGS / 10);
  }, 600_000);
});

describe('random formulas', () => {
  test('come to what a small evaluator says, in number and in kind', () => {
    const desk = new Desk(TYPED);
    let figures = 0;
    let errors = 0;
    fc.assert(fc.property(fc.array(tree, { minLength: 100, maxLength: 100 }), (trees) => {
      desk.edit({ do: 'setCells', sheet: 1, cells: trees.map(({ text }, i) => ({ row: 20 + Math.floor(i / 10), col: 8 + (i % 10), cell: { raw: `=${text}` } })) });
      for (const [i, { text, work }] of trees.entries()) {
        const due = work(new Map());
        const got = desk.results.at(1, 20 + Math.floor(i / 10), 8 + (i % 10));
        if (due === 'error') {
          errors += 1;
          expect(got.kind, `=${text} should be an error, and gave ${said(got)}`).toBe('error');
          continue;
        }
        figures += 1;
        const power = got.kind === 'quantity' ? { number: 0, length: 1, area: 2, angle: -1 }[UNITS[got.unit].dimension] : undefined;
        expect(power, `=${text} should be ${due.value} mm^${due.power}, and gave ${said(got)}`).toBe(due.power);
        const value = got.kind === 'quantity' ? got.value : NaN;
        expect(Math.abs(value - due.value) <= 1e-7 * Math.max(1, Math.abs(due.value)), `=${text} should be ${due.value}, and gave ${value}`).toBe(true);
      }
    }), { numRuns: EVALUATED / 100 });
    console.log(`${figures + errors} random formulas as a small evaluator has them: ${figures} figures, ${errors} errors`);
    expect(figures).toBeGreaterThan(EVALUATED / 10);
    expect(errors).toBeGreaterThan(EVALUATED / 10);
  }, 600_000);
});

describe('hostile cells', () => {
  const odd = fc.oneof(
    fc.string({ maxLength: 30 }), fc.string({ unit: 'binary', maxLength: 12 }),
    fc.array(fc.constantFrom('=', '+', '-', '(', ')', '"', "'", 'A1', '$', ':', '!', '#', '%', '2', '1/0', ' 1/4', ' in', 'SUM(', 'IF(', ';', ',', '{', '}', '|', '&', '^', '\u2212', '½', '__proto__', 'constructor', '\u202e', '\u0000', '1e308', '9'.repeat(40)), { maxLength: 12 }).map((pieces) => pieces.join('')),
    fc.constantFrom('=__proto__', '=constructor', '=toString(1)', '=hasOwnProperty()', '=A1:A1:A1', '=((((((((((1))))))))))', `=${'('.repeat(200)}`, `=${'1+'.repeat(600)}1`, `=${'-'.repeat(3000)}1`, '=SUM(A1:ALL1000000)&""', '=A0', '=1e400', '=0/0', '=TT.QUANTITY(1;99)', '=REPT("x";1e9)', '=SEQUENCE(9;9)', '=ARRAY_CONSTRAIN(A1:B2;0;1)', '=ARRAY_CONSTRAIN(A1:B2;1;-1)', '=TRANSPOSE(A:A)', '=FILTER(A1:A3;A1:A3)', '=INDEX(A1:B2;0;0)', '=SEQUENCE(0)', '={1;2|3}', '=SEQUENCE(-1;2)'),
  );

  test('never make the engine fail, and every result can be shown', () => {
    const desk = new Desk({ A1: '1 cm', B1: '=A1*2' });
    let turn = 0;
    fc.assert(fc.property(fc.array(odd, { minLength: 1, maxLength: 8 }), (texts) => {
      const cells = texts.flatMap((raw, i): CellChange[] => [{ row: 3 + i, col: 2, cell: raw === '' ? null : { raw } }, { row: 3 + i, col: 3, cell: { raw: `=C${4 + i}+A1` } }]);
      desk.edit({ do: 'setCells', sheet: 1, cells });
      for (const { kind, number, text } of desk.last.sheets) {
        expect(number.every(Number.isFinite)).toBe(true);
        expect(text.every((each) => typeof each === 'string')).toBe(true);
        expect(kind.every((each) => each <= 5)).toBe(true);
      }
      for (let i = 0; i < texts.length; i++) expect(desk.show(`D${4 + i}`)).not.toMatch(/undefined|NaN|Infinity|\[object/);
      expect(desk.show('B1')).toBe('2 cm');
      if (++turn % 20 !== 0) return;
      const fresh = new Results();
      fresh.apply(new Engine().open(1, desk.book));
      for (let row = 3; row < 12; row++) for (const col of [2, 3]) expect(fresh.at(1, row, col)).toEqual(desk.results.at(1, row, col));
    }), { numRuns: 600 });
  }, 120_000);
});
