import { describe, expect, it } from 'vitest';
import { down, isFault, nearest, quantity, up } from '../../../src/quantities/index.ts';
import type { Fault, Quantity, UnitCode } from '../../../src/quantities/index.ts';

type Round = (q: Quantity, step: Quantity) => Quantity | Fault;

function rounded(round: Round, amount: number, unit: UnitCode, step: number, stepUnit: UnitCode): Quantity {
  const result = round(quantity(amount, unit), quantity(step, stepUnit));
  if (isFault(result)) throw new Error(result.sentence);
  return result;
}

describe('nearest, up and down', () => {
  it.each<[number, UnitCode, number, UnitCode, number, number, number]>([
    // amount, step, then down, nearest, up in the step's unit
    [39.5625, 'in', 0.125, 'in', 39.5, 39.625, 39.625],
    [-39.5625, 'in', 0.125, 'in', -39.625, -39.5, -39.5],
    [-2.0625, 'in', 0.125, 'in', -2.125, -2, -2],
    [2.0625, 'in', 0.125, 'in', 2, 2.125, 2.125],
    [2.1, 'in', 0.125, 'in', 2, 2.125, 2.125],
    [2.125, 'in', 0.125, 'in', 2.125, 2.125, 2.125],
    [7.3, 'cm', 0.5, 'cm', 7, 7.5, 7.5],
    [7.2, 'cm', 0.5, 'cm', 7, 7, 7.5],
    [0.3, 'cm', 0.1, 'cm', 0.3, 0.3, 0.3],
    [0.1 + 0.2, 'cm', 0.1, 'cm', 0.3, 0.3, 0.3],
    [2.31, 'm', 0.1, 'm', 2.3, 2.3, 2.4],
    [10.5, '', 1, '', 10, 11, 11],
    [-10.5, '', 1, '', -11, -10, -10],
    [12.5, '%', 5, '%', 10, 15, 15],
    [0, 'cm', 5, 'mm', 0, 0, 0],
    [-0.01, 'cm', 1, 'cm', -1, 0, 0],
  ])('%d %s to %d %s', (amount, unit, step, stepUnit, below, near, above) => {
    expect(rounded(down, amount, unit, step, stepUnit).value).toBe(quantity(below, stepUnit).value);
    expect(rounded(nearest, amount, unit, step, stepUnit).value).toBe(quantity(near, stepUnit).value);
    expect(rounded(up, amount, unit, step, stepUnit).value).toBe(quantity(above, stepUnit).value);
  });

  it('counts as on a mark what is off by the noise of doubles only', () => {
    for (let eighth = -2000; eighth <= 2000; eighth += 1) {
      const length = quantity(eighth / 8, 'in');
      const off = { ...length, value: length.value * (1 + 3e-16) };
      for (const round of [up, down, nearest]) expect(round(off, quantity(0.125, 'in'))).toEqual(length);
    }
    expect(rounded(up, 1.000001, 'cm', 1, 'cm').value).toBe(20);
    expect(rounded(down, 0.999999, 'cm', 1, 'cm').value).toBe(0);
  });

  it('shows in the unit of the length, or of the step where that is of the other system', () => {
    expect(rounded(nearest, 25, 'cm', 0.0625, 'in')).toEqual(quantity(9.8125, 'in'));
    expect(rounded(nearest, 1.023, 'm', 5, 'mm')).toEqual({ value: 1025, dimension: 'length', unit: 'm' });
    expect(rounded(up, 1.1, 'yd', 1, 'in').unit).toBe('yd');
    expect(rounded(up, 3, '%', 1, '').unit).toBe('%');
    expect(rounded(down, 2.5, 'in', 1, 'cm')).toEqual(quantity(6, 'cm'));
  });

  it('leaves a number alone that has no room for steps', () => {
    expect(rounded(nearest, 1e20, '', 1, '').value).toBe(1e20);
  });

  it('never gives a negative zero', () => {
    for (const round of [nearest, up]) expect(Object.is(rounded(round, -0.1, 'cm', 1, 'cm').value, 0)).toBe(true);
  });

  it.each<[number, UnitCode, number, UnitCode, string]>([
    [5, 'cm', 0, 'cm', 'A step of 0 cm cannot be rounded to: write a step above 0.'],
    [5, 'cm', -1, 'mm', 'A step of −1 mm cannot be rounded to: write a step above 0.'],
    [5, 'cm', 2, '', '5 cm cannot be rounded to steps of 2: the step must be a length, such as 1/8 in or 5 mm.'],
    [5, '', 2, 'cm', '5 cannot be rounded to steps of 2 cm: the step must be a number without a unit.'],
    [5, 'cm2', 2, 'cm', '5 cm² cannot be rounded to steps of 2 cm: the step must be an area, such as 1 cm².'],
    [5, 'deg', 2, '', '5° cannot be rounded to steps of 2: the step must be an angle, such as 1°.'],
  ])('%d %s to %d %s is refused', (amount, unit, step, stepUnit, sentence) => {
    for (const round of [nearest, up, down]) expect(round(quantity(amount, unit), quantity(step, stepUnit))).toEqual({ sentence });
  });

  it('refuses more steps than can be counted', () => {
    expect(isFault(nearest(quantity(1e300, ''), quantity(1e-300, '')))).toBe(true);
  });
});
