/**
 * Rounding to fractions of an inch. Rows marked "own arithmetic" follow from
 * the fractions alone; the two rules for ties are OpenFormula's (OASIS
 * OpenDocument 1.4 Part 4, OASIS Standard 2025-10-06, s. 6.17.4 MROUND and
 * s. 6.17.5 ROUND; github.com/oasis-tcs/odf-tc), with examples of our own.
 */
import { describe, expect, it } from 'vitest';
import { add, amountIn, divide, isFault, nearest, quantity, readQuantity, showText } from '../../src/quantities/index.ts';
import type { Fault, Quantity } from '../../src/quantities/index.ts';
import { FRACTIONS } from './data/fraction-rounding.ts';
import { checkAll } from './reckon.ts';

function sure(x: Quantity | Fault): Quantity {
  if (isFault(x)) throw new Error(x.sentence);
  return x;
}

function read(text: string): Quantity {
  const reading = readQuantity(text);
  if (reading.kind !== 'quantity') throw new Error(text);
  return reading.quantity;
}

const inEighths = (q: Quantity): string => showText(q, { system: 'own', inchStep: 8, plain: true });
const inSixteenths = (q: Quantity): string => showText(q, { system: 'own', inchStep: 16, plain: true });

describe('to the nearest fraction (own arithmetic, exact)', () => {
  it.each<[string, 8 | 16, string]>([
    ['23.4 in', 8, '23 3/8 in'],
    ['37.19 in', 16, '37 3/16 in'],
    ['9.8425 in', 8, '9 7/8 in'],
    ['15.97 in', 8, '16 in'],
    ['11.99 in', 16, '12 in'],
    ['0.3 in', 16, '5/16 in'],
  ])('%s to 1/%d in is %s', (text, part, expected) => {
    const q = read(text);
    expect(showText(q, { system: 'own', inchStep: part, plain: true })).toBe(expected);
    expect(sure(nearest(q, quantity(1 / part, 'in')))).toEqual(read(expected));
  });

  it('25 cm to 1/16 in is 9.8125 in', () => {
    expect(amountIn(sure(nearest(read('25 cm'), read('1/16 in'))), 'in')).toBe(9.8125);
  });

  it('23 5/8 + 1 3/16 + 7/8 is 25 11/16', () => {
    const sum = sure(add(sure(add(read('23 5/8 in'), read('1 3/16 in'))), read('7/8 in')));
    expect(inSixteenths(sum)).toBe('25 11/16 in');
    expect(Math.abs(sum.value - read('25 11/16 in').value)).toBeLessThan(1e-12);
  });

  it('37 1/2 ÷ 4 is 9 3/8', () => {
    expect(sure(divide(read('37 1/2 in'), quantity(4, '')))).toEqual(read('9 3/8 in'));
  });

  it('is at most 1/32 in, 0.79375 mm, off at 1/16 in', () => {
    const step = read('1/16 in');
    const off = (q: Quantity): number => Math.abs(sure(nearest(q, step)).value - q.value);
    const worst = Array.from({ length: 20_001 }, (_, i) => off(quantity((i - 10_000) / 320, 'in'))).reduce((a, b) => Math.max(a, b));
    expect(Math.abs(worst - 0.79375)).toBeLessThanOrEqual(1e-9);
  });
});

describe('ties (OpenFormula)', () => {
  it('−2 1/16 to 1/8 is −2 where a value is rounded (MROUND, s. 6.17.4: the greater)', () => {
    expect(amountIn(sure(nearest(read('-2 1/16 in'), read('1/8 in'))), 'in')).toBe(-2);
  });

  it('−2 1/16 to 1/8 is −2 1/8 where it is shown (ROUND, s. 6.17.5: away from zero)', () => {
    expect(inEighths(read('-2 1/16 in'))).toBe('-2 1/8 in');
  });
});

checkAll('fractions in cells', FRACTIONS);
