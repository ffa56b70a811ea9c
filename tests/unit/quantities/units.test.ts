import { describe, expect, it } from 'vitest';
import { amountIn, exactAmount, exactText, inBase, isFault, quantity, readQuantity, UNIT_CODES, unitNamed, UNITS } from '../../../src/quantities/index.ts';
import type { UnitCode } from '../../../src/quantities/index.ts';

describe('UNITS', () => {
  it('has every code, by its place', () => {
    expect(Object.keys(UNITS).sort()).toEqual([...UNIT_CODES].sort());
    for (const code of UNIT_CODES) expect(UNITS[code].code).toBe(code);
    // Bytes in kept results stand for these places: they may grow, never change.
    expect(UNIT_CODES).toEqual(['', '%', 'mm', 'cm', 'm', 'in', 'ft', 'yd', 'mm2', 'cm2', 'm2', 'in2', 'ft2', 'yd2', 'deg', 'rad']);
  });

  it('has areas that are the squares of its lengths', () => {
    for (const length of ['mm', 'cm', 'm', 'in', 'ft', 'yd'] as const) {
      expect(UNITS[`${length}2`].size).toBeCloseTo(UNITS[length].size ** 2, 8);
      expect(UNITS[`${length}2`].system).toBe(UNITS[length].system);
    }
  });
});

describe('unitNamed', () => {
  it.each<[string, UnitCode]>([
    ['in', 'in'], ['inch', 'in'], ['inches', 'in'], ['"', 'in'], ['″', 'in'], ['”', 'in'], ["''", 'in'], ['In', 'in'], ['IN', 'in'], ['in.', 'in'], [' in ', 'in'],
    ['cm', 'cm'], ['CM', 'cm'], ['Cm', 'cm'], ['centimetres', 'cm'], ['mm', 'mm'], ['MM', 'mm'], ['m', 'm'], ['metre', 'm'], ['Metres', 'm'], ['meter', 'm'],
    ['ft', 'ft'], ['foot', 'ft'], ['feet', 'ft'], ["'", 'ft'], ['′', 'ft'], ['yd', 'yd'], ['yds', 'yd'], ['Yard', 'yd'], ['yards', 'yd'],
    ['cm2', 'cm2'], ['cm²', 'cm2'], ['cm^2', 'cm2'], ['sq cm', 'cm2'], ['sq in', 'in2'], ['sq. in.', 'in2'], ['Square Inches', 'in2'], ['m²', 'm2'], ['sq  yd', 'yd2'], ['ft²', 'ft2'], ['mm2', 'mm2'],
    ['deg', 'deg'], ['°', 'deg'], ['degrees', 'deg'], ['rad', 'rad'], ['%', '%'], ['percent', '%'], ['per cent', '%'],
  ])('%s is %s', (text, code) => {
    expect(unitNamed(text)).toBe(code);
  });

  it.each(['', ' ', 'M', 'M²', 'M2', 'sq M', 'M.', 'furlong', 'cmm', 'to', 'constructor', '__proto__', 'toString', '..', 'in..', 'x'.repeat(1000), '2', '²'])('%j is none', (text) => {
    expect(unitNamed(text)).toBeUndefined();
  });

  it('knows the sign of every unit, as shown and as kept', () => {
    for (const code of UNIT_CODES.filter((c) => c !== '')) {
      expect(unitNamed(UNITS[code].sign)).toBe(code);
      expect(unitNamed(code)).toBe(code);
      if (code !== '%') expect(unitNamed(UNITS[code].words)).toBe(code);
    }
  });
});

describe('quantity, inBase and amountIn', () => {
  it('takes an amount as the decimal that it prints as', () => {
    expect(quantity(1.005, 'm').value).toBe(1005);
    expect(quantity(0.57, 'm').value).toBe(570);
    expect(quantity(2.2, 'in').value).toBe(55.88);
    expect(quantity(1e-7, 'm').value).toBe(1e-4);
    expect(quantity(1.5e21, 'cm').value).toBe(1.5e22);
    expect(quantity(-3.5, '%').value).toBe(-0.035);
    expect(quantity(3, '%')).toEqual({ value: 0.03, dimension: 'number', unit: '%' });
    expect(quantity(Infinity, 'cm').value).toBe(Infinity);
  });

  it('gives amounts back', () => {
    const amounts = Array.from({ length: 6001 }, (_, i) => [(i - 3000) / 64, (i - 3000) / 10]).flat();
    for (const unit of UNIT_CODES) {
      expect(amounts.map((amount) => amountIn(quantity(amount, unit), unit) - amount).filter((off) => off !== 0), unit).toEqual([]);
    }
    expect(Math.abs(amountIn(quantity(1 / 3, 'in'), 'in') - 1 / 3)).toBeLessThan(1e-16);
    expect(amountIn(quantity(1, 'in'), 'cm')).toBe(2.54);
    expect(amountIn(quantity(1, 'yd'), 'in')).toBe(36);
    expect(amountIn(quantity(180, 'deg'), 'rad')).toBeCloseTo(Math.PI, 12);
    expect(amountIn(quantity(50, '%'), '')).toBe(0.5);
  });

  it('is loud about a unit of another dimension', () => {
    expect(() => amountIn(quantity(1, 'cm'), 'cm2')).toThrow(RangeError);
    expect(() => amountIn(quantity(1, 'cm'), '')).toThrow('length cannot be counted without a unit');
    expect(() => exactAmount(quantity(1, ''), 'cm')).toThrow(RangeError);
  });

  it('makes zero of negative zero', () => {
    for (const q of [quantity(-0, 'cm'), inBase(-0, 'in')]) expect(Object.is(q.value, 0)).toBe(true);
  });
});

describe('isFault', () => {
  it('knows faults from everything else', () => {
    expect(isFault({ sentence: 'No.' })).toBe(true);
    for (const x of [null, undefined, 1, 'sentence', quantity(1, 'cm'), readQuantity('1/0')]) expect(isFault(x)).toBe(false);
  });
});

describe('exactText and exactAmount', () => {
  const exact = (text: string): string => {
    const reading = readQuantity(text);
    if (reading.kind !== 'quantity') throw new Error(text);
    return exactText(reading.quantity);
  };
  it.each([
    ['2 1/4 in', '2.25 in'], ['5,5 cm', '5.5 cm'], ['-3/8 in', '-0.375 in'], ['1 yd 4 in', '1 yd 4 in'], ['-1 yd 4 in', '-1 yd 4 in'], ['1/3 yd', '0 yd 12 in'], ['1 yd 9 in', '1.25 yd'], ["5'6\"", '5.5 ft'], ['5 ft 6 1/2 in', '5 ft 6.5 in'], ['5 ft 7 in', '5 ft 7 in'],
    ['3 %', '3 %'], ['30°', '30°'], ['250 sq cm', '250 cm²'], ['1/64 in', '0.015625 in'], ['1/2', '0.5'], ['0', '0'], ['-0 cm', '0 cm'], ['1.10 m', '1.1 m'], ['100 mm', '100 mm'], ['0.00001 mm', '0.00001 mm'], ['123456789012345 mm', '123456789012345 mm'],
    ['3.14159265358979323846', '3.141592653589793'],
  ])('%s is %s', (text, exactly) => {
    expect(exact(text)).toBe(exactly);
  });

  it('writes no exponent, however small or large', () => {
    expect(exactText(quantity(1e-20, 'cm'))).toBe('0.00000000000000000001 cm');
    expect(exactText(quantity(1e22, ''))).toBe('10000000000000000000000');
    expect(exactText({ ...quantity(1, 'yd'), value: 1e300 })).toMatch(/^\d+ yd$/);
  });

  it('gives the bare figure in any unit of the dimension', () => {
    expect(exactAmount(quantity(1, 'in'), 'cm')).toBe('2.54');
    expect(exactAmount(quantity(1, 'in'))).toBe('1');
    expect(exactAmount(quantity(3, '%'), '')).toBe('0.03');
  });
});
