/** The signs of formulas, in cells: the same answers and the same refusals as `src/quantities` gives. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { add, compare, divide, exactText, isFault, multiply, power, quantity, subtract } from '../../../src/quantities/index.ts';
import type { Fault, Quantity, UnitCode } from '../../../src/quantities/index.ts';
import { Desk } from './desk.ts';

const FIGURES: readonly [number, UnitCode][] = [[12.5, 'cm'], [2.25, 'in'], [3, ''], [5, '%'], [240, 'cm2'], [30, 'deg'], [2, 'yd'], [0, ''], [0, 'mm']];
const SUMS: readonly [string, (a: Quantity, b: Quantity) => Quantity | Fault][] = [['+', add], ['-', subtract], ['*', multiply], ['/', divide], ['^', power]];

const cells = Object.fromEntries(FIGURES.flatMap(([amount, unit], i) => {
  const text = exactText(quantity(amount, unit));
  return [[`A${i + 1}`, text], [`B${i + 1}`, text]];
}));

describe('every sign with every pair of kinds', () => {
  const desk = new Desk(cells);

  test.each(SUMS)('%s', (sign, sum) => {
    FIGURES.forEach(([amount, unit], i) => FIGURES.forEach(([other, otherUnit], k) => {
      const due = sum(quantity(amount, unit), quantity(other, otherUnit));
      const formula = `=A${i + 1}${sign}B${k + 1}`;
      const got = desk.work(formula);
      if (isFault(due)) expect(got, formula).toMatch(/^! /);
      else expect(got, formula).toBe(exactText(due));
      if (isFault(due)) expect(got.endsWith(due.sentence) || got === '! Divides by 0.', `${formula}: ${got}`).toBe(true);
    }));
  });

  test.each([['=', 0], ['<', -1], ['>', 1]] as const)('%s', (sign, wanted) => {
    FIGURES.forEach(([amount, unit], i) => FIGURES.forEach(([other, otherUnit], k) => {
      const due = compare(quantity(amount, unit), quantity(other, otherUnit));
      const formula = `=A${i + 1}${sign}B${k + 1}`;
      const got = desk.work(formula);
      if (isFault(due)) expect(got.startsWith('! ') && got.endsWith(due.sentence), `${formula}: ${got}`).toBe(true);
      else expect(got, formula).toBe(due === wanted ? 'TRUE' : 'FALSE');
    }));
  });
});

test('random sums of lengths are those of src/quantities', () => {
  const figure = fc.tuple(fc.integer({ min: -4000, max: 4000 }).map((n) => n / 8), fc.constantFrom<UnitCode>('cm', 'in', 'mm', 'm'));
  const desk = new Desk({});
  fc.assert(fc.property(figure, figure, fc.constantFrom(...SUMS.slice(0, 4)), ([a, unit], [b, otherUnit], [sign, sum]) => {
    const [first, second] = [quantity(a, unit), quantity(b, otherUnit)];
    desk.type({ A1: exactText(first), B1: exactText(second), C1: `=A1${sign}B1` });
    const due = sum(first, second);
    const got = desk.result('C1');
    if (isFault(due)) expect(got.kind).toBe('error');
    // A difference that is nothing but the noise of doubles is nothing here.
    else expect(got).toEqual({ kind: 'quantity', value: Math.abs(due.value) < 1e-13 * Math.abs(first.value) ? 0 : due.value, unit: due.unit });
  }), { numRuns: 500 });
});

describe('what stands beside a figure with a unit', () => {
  const desk = new Desk({ A1: '10 cm', A2: '2', A3: 'wide', A4: '86–90 cm', A5: '2026-11-03', A6: 'TRUE', B1: '=A1', D1: '=DATE(2026,11,3)' });

  test.each([
    ['=A1+A2', 'A2: 2 has no unit: write 2 cm or 2 in.'],
    ['=A2-A1', 'A2: 2 has no unit: write 2 cm or 2 in.'],
    ['=A1+B9', 'B9 has no value yet.'],
    ['=B9-A1', 'B9 has no value yet.'],
    ['=A1*B9', 'B9 has no value yet.'],
    ['=A1/B9', 'B9 has no value yet.'],
    ['=A1+A3', 'A3: “wide” is text, not a number.'],
    ['=A1+""', 'An empty text is not a number.'],
    ['=A1+"5 cm"', '“5 cm” is text here, not a figure: take off the quotation marks, or put the figure in a cell of its own.'],
    ['="5 cm"=A1', '“5 cm” is text here, not a figure: take off the quotation marks, or put the figure in a cell of its own.'],
    ['=A4*2', '86.0–90.0 cm is two figures: write the one to reckon with.'],
    ['=-A4', '86.0–90.0 cm is two figures: write the one to reckon with.'],
    ['=A4<A1', '86.0–90.0 cm is two figures: write the one to reckon with.'],
    ['=A1+A6', 'A6: 1 has no unit: write 1 cm or 1 in.'],
    ['=A1+D1', 'A date and a figure with a unit do not go together.'],
    ['=A1%', '10 cm has a unit already and cannot be a percent.'],
    ['=A1>5', '5 has no unit: write 5 cm or 5 in.'],
    ['=5=A1', '5 has no unit: write 5 cm or 5 in.'],
    ['=A1>B9', 'B9 has no value yet.'],
    ['=A1>"x"', '“x” is text, not a number.'],
  ])('%s is refused', (formula, sentence) => expect(desk.sentence(formula)).toBe(sentence));

  test.each([
    ['=A1=A3', 'FALSE'], ['=A1<>A3', 'TRUE'], ['=A1=B9', 'FALSE'], ['=A1=""', 'FALSE'], ['=A1=A6', 'FALSE'], ['=A4=A4', 'TRUE'], ['=A1=100 mm', 'TRUE'],
    ['=8*1/8 in=1 in', 'TRUE'], ['=0.1 in+0.2 in=0.3 in', 'TRUE'], ['=A1&"!"', '10.0 cm!'], ['="about "&2 3/8 in', 'about 2 ⅜ in'], ['=A4&""', '86.0–90.0 cm'],
    ['=5%&""', '5 %'], ['=0.1+0.2&""', '0.3'], ['=D1&""', '2026-11-03'], ['=+A1', '10 cm'], ['=-A1', '-10 cm'], ['=D1+1', '2026-11-04'], ['=D1-DATE(2026,11,1)', '2'],
  ])('%s gives %s', (formula, shown) => expect(desk.work(formula)).toBe(shown));
});

describe('plain numbers stay plain', () => {
  const desk = new Desk({ A1: '5', A2: '' });

  test.each([
    ['=A1+A2', '5'], ['=A2+1', '1'], ['=A1*A2', '0'], ['="3"+4', '7'], ['=TRUE+1', '2'], ['=0.1+0.2-0.3', '0'], ['=-2^2', '4'], ['=2^3^2', '64'], ['=50%', '50 %'], ['=200*50%', '100'],
    ['=1/0', '! Divides by 0.'], ['=A1/A2', '! Divides by 0.'], ['="a"+1', '! “a” is text, not a number.'], ['=9^999', '! The result is larger than a cell can hold, or is no number.'],
    ['=(-1)^0.5', '! The result is larger than a cell can hold, or is no number.'], ['="a"<"b"', 'TRUE'], ['=A2=0', 'TRUE'], ['=A2=""', 'TRUE'], ['=-0', '0'],
  ])('%s gives %s', (formula, shown) => expect(desk.work(formula)).toBe(shown));
});

test('the left unit is the one a result shows in', () => {
  const desk = new Desk({ A1: '1 in', A2: '2.54 cm' });
  expect([desk.work('=A1+A2'), desk.work('=A2+A1'), desk.work('=A1*A2'), desk.work('=2*A1'), desk.work('=A1*A1/A2')]).toEqual(['2 in', '5.08 cm', '1 in²', '2 in', '1 in']);
});

test('nothing is rounded on the way', () => {
  const desk = new Desk({ A1: '1 yd', A2: '=A1/3', A3: '=A2/7', A4: '=A3*21' });
  const { value } = desk.result('A4') as { value: number };
  expect(Math.abs(value - 914.4)).toBeLessThan(1e-12 * 914.4);
  expect(desk.work('=A4=A1')).toBe('TRUE');
});
