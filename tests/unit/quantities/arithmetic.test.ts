import { describe, expect, it } from 'vitest';
import { add, amountIn, compare, divide, isFault, multiply, negate, power, quantity, subtract } from '../../../src/quantities/index.ts';
import type { Fault, Quantity, UnitCode } from '../../../src/quantities/index.ts';

const q = quantity;
const sentence = (x: Quantity | Fault | number): string => (typeof x === 'object' && isFault(x) ? x.sentence : `no fault: ${JSON.stringify(x)}`);

describe('add and subtract', () => {
  it('keep the left unit for show', () => {
    expect(add(q(2, 'in'), q(1, 'cm'))).toEqual({ value: 60.8, dimension: 'length', unit: 'in' });
    expect(subtract(q(10, 'cm'), q(1, 'in'))).toEqual({ value: 74.6, dimension: 'length', unit: 'cm' });
    expect(add(q(1, ''), q(3, '%'))).toEqual({ value: 1.03, dimension: 'number', unit: '' });
    expect(subtract(q(5, '%'), q(3, '%'))).toMatchObject({ unit: '%' });
    expect(add(q(1, 'm2'), q(1, 'cm2'))).toMatchObject({ value: 1_000_100, unit: 'm2' });
    expect(add(q(30, 'deg'), q(1, 'rad'))).toMatchObject({ unit: 'deg' });
  });

  it('offer the mend for a number that lacks its unit, the other unit first', () => {
    expect(sentence(add(q(5, 'in'), q(2, '')))).toBe('2 has no unit: write 2 in or 2 cm.');
    expect(sentence(add(q(2, ''), q(5, 'in')))).toBe('2 has no unit: write 2 in or 2 cm.');
    expect(sentence(subtract(q(5, 'cm'), q(2.5, '')))).toBe('2.5 has no unit: write 2.5 cm or 2.5 in.');
    expect(sentence(add(q(1, 'yd'), q(-2, '')))).toBe('−2 has no unit: write −2 yd or −2 cm.');
    expect(sentence(add(q(1, 'm2'), q(2, '')))).toBe('2 has no unit: write 2 m² or 2 in².');
    expect(sentence(add(q(1, 'in2'), q(2, '')))).toBe('2 has no unit: write 2 in² or 2 cm².');
    expect(sentence(add(q(45, 'deg'), q(2, '')))).toBe('2 has no unit: write 2°.');
  });

  it('say what does not go together', () => {
    expect(sentence(add(q(5, 'cm'), q(3, 'cm2')))).toBe('A length (5 cm) and an area (3 cm²) cannot be added together.');
    expect(sentence(subtract(q(3, 'cm2'), q(5, 'cm')))).toBe('An area (3 cm²) and a length (5 cm) cannot be taken from each other.');
    expect(sentence(add(q(30, 'deg'), q(5, 'cm')))).toBe('An angle (30°) and a length (5 cm) cannot be added together.');
    expect(sentence(add(q(5, 'cm'), q(3, '%')))).toBe('3 % is a share and 5 cm is a length: for 3 % of it, multiply.');
  });
});

describe('multiply', () => {
  it.each<[Quantity, Quantity, Quantity]>([
    [q(2, 'cm'), q(3, 'cm'), q(6, 'cm2')], [q(2, 'm'), q(3, 'm'), q(6, 'm2')], [q(2, 'in'), q(3, 'in'), q(6, 'in2')], [q(2, 'mm'), q(3, 'mm'), q(6, 'mm2')], [q(2, 'ft'), q(3, 'ft'), q(6, 'ft2')], [q(2, 'yd'), q(3, 'yd'), q(6, 'yd2')],
    [q(2, 'cm'), q(3, 'mm'), q(0.6, 'cm2')], [q(2, 'cm'), q(3, ''), q(6, 'cm')], [q(3, ''), q(2, 'cm'), q(6, 'cm')], [q(50, 'cm'), q(10, '%'), q(5, 'cm')], [q(10, '%'), q(50, 'cm'), q(5, 'cm')],
    [q(2, 'cm2'), q(3, ''), q(6, 'cm2')], [q(3, ''), q(30, 'deg'), q(90, 'deg')], [q(2, ''), q(3, ''), q(6, '')], [q(10, '%'), q(200, ''), q(20, '')], [q(200, ''), q(10, '%'), q(20, '')], [q(50, '%'), q(50, '%'), q(25, '%')],
  ])('%o × %o', (a, b, product) => {
    const result = multiply(a, b) as Quantity;
    expect(result).toMatchObject({ dimension: product.dimension, unit: product.unit });
    expect(result.value / product.value).toBeCloseTo(1, 14);
  });

  it('refuses what is no length, area, angle or number', () => {
    expect(sentence(multiply(q(2, 'cm'), q(3, 'cm2')))).toBe('A length (2 cm) times an area (3 cm²) is nothing that a cell can hold: only a length times a length makes an area.');
    expect(isFault(multiply(q(2, 'deg'), q(3, 'cm')))).toBe(true);
    expect(isFault(multiply(q(2, 'deg'), q(3, 'deg')))).toBe(true);
    expect(isFault(multiply(q(2, 'cm2'), q(3, 'cm2')))).toBe(true);
  });
});

describe('divide', () => {
  it.each<[Quantity, Quantity, Quantity]>([
    [q(6, 'cm'), q(2, ''), q(3, 'cm')], [q(6, 'cm'), q(50, '%'), q(12, 'cm')], [q(6, 'in'), q(2, 'in'), q(3, '')], [q(1, 'in'), q(2.54, 'cm'), q(1, '')], [q(6, 'cm2'), q(2, 'cm'), q(3, 'cm')], [q(6, 'm2'), q(200, 'cm'), q(3, 'm')], [q(6, 'yd2'), q(2, 'yd'), q(3, 'yd')],
    [q(6, 'cm2'), q(3, 'cm2'), q(2, '')], [q(90, 'deg'), q(45, 'deg'), q(2, '')], [q(90, 'deg'), q(2, ''), q(45, 'deg')], [q(6, '%'), q(2, ''), q(3, '%')], [q(6, '%'), q(3, '%'), q(2, '')], [q(37.5, 'in'), q(4, ''), q(9.375, 'in')],
  ])('%o ÷ %o', (a, b, quotient) => {
    const result = divide(a, b) as Quantity;
    expect(result).toMatchObject({ dimension: quotient.dimension, unit: quotient.unit });
    expect(result.value / quotient.value).toBeCloseTo(1, 14);
  });

  it.each<[Quantity, Quantity, string]>([
    [q(6, 'cm'), q(0, ''), '6 cm cannot be divided by 0: nothing can be shared into 0 parts.'],
    [q(6, 'cm'), q(0, 'in'), '6 cm cannot be divided by 0 in: nothing can be shared into 0 parts.'],
    [q(6, ''), q(2, 'cm'), '6 is a number without a unit and cannot be divided by a length (2 cm): write it the other way round, or give 6 a unit.'],
    [q(6, 'cm'), q(2, 'cm2'), 'A length (6 cm) cannot be divided by an area (2 cm²).'],
    [q(6, 'deg'), q(2, 'cm'), 'An angle (6°) cannot be divided by a length (2 cm).'],
    [q(6, 'cm2'), q(2, 'deg'), 'An area (6 cm²) cannot be divided by an angle (2°).'],
  ])('%o ÷ %o is refused', (a, b, why) => {
    expect(sentence(divide(a, b))).toBe(why);
  });
});

describe('power', () => {
  it('squares lengths, takes roots of areas, and any power of a number', () => {
    expect(power(q(3, 'cm'), q(2, ''))).toEqual(q(9, 'cm2'));
    expect(power(q(9, 'cm2'), q(0.5, ''))).toEqual(q(3, 'cm'));
    expect(power(q(3, 'in'), q(1, ''))).toEqual(q(3, 'in'));
    expect(power(q(3, 'in'), q(0, ''))).toEqual(q(1, ''));
    expect(power(q(2, ''), q(10, ''))).toEqual(q(1024, ''));
    expect(power(q(10, '%'), q(2, ''))).toMatchObject({ unit: '%' });
  });

  it.each<[Quantity, Quantity, string]>([
    [q(3, 'cm'), q(3, ''), 'A length (3 cm) to the power 3 is nothing that a cell can hold: a length can be squared, and an area has a square root (power 0.5).'],
    [q(3, 'cm2'), q(2, ''), 'An area (3 cm²) to the power 2 is nothing that a cell can hold: a length can be squared, and an area has a square root (power 0.5).'],
    [q(-9, 'cm2'), q(0.5, ''), '−9 cm² is below 0 and has no square root.'],
    [q(-8, ''), q(0.5, ''), '−8 to the power 0.5 has no value.'],
    [q(0, ''), q(-1, ''), '0 to the power −1 has no value.'],
    [q(2, ''), q(3, 'cm'), 'A power must be a number without a unit: 3 cm is a length.'],
    [q(10, ''), q(400, ''), 'The result is larger than a cell can hold.'],
  ])('%o ^ %o is refused', (a, b, why) => {
    expect(sentence(power(a, b))).toBe(why);
  });
});

describe('negate', () => {
  it('keeps unit and never makes a negative zero', () => {
    expect(negate(q(3, 'in'))).toEqual(q(-3, 'in'));
    expect(Object.is((negate(q(0, 'cm'))).value, 0)).toBe(true);
    expect(Object.is((multiply(q(0, 'cm'), q(-1, '')) as Quantity).value, 0)).toBe(true);
  });
});

describe('compare', () => {
  it('orders across units', () => {
    expect(compare(q(1, 'in'), q(2.54, 'cm'))).toBe(0);
    expect(compare(q(1, 'in'), q(2.5, 'cm'))).toBe(1);
    expect(compare(q(1, 'cm'), q(1, 'in'))).toBe(-1);
    expect(compare(q(3, '%'), q(0.03, ''))).toBe(0);
    expect(compare(q(-1, 'cm'), q(0, 'cm'))).toBe(-1);
  });

  it('overlooks the noise of doubles and nothing more', () => {
    let sum = q(0, 'in');
    for (let i = 0; i < 10; i += 1) sum = add(sum, q(0.1, 'in')) as Quantity;
    expect(sum.value).not.toBe(25.4);
    expect(compare(sum, q(1, 'in'))).toBe(0);
    expect(compare(subtract(sum, q(1, 'in')) as Quantity, q(0, 'in'))).toBe(0);
    expect(compare(q(1, ''), q(1 + 1e-11, ''))).toBe(-1);
    expect(compare(q(1e-20, ''), q(0, ''))).toBe(1);
    expect(compare(q(1e-6, 'mm'), q(0, 'mm'))).toBe(1);
  });

  it('refuses unlike things with the mend', () => {
    expect(sentence(compare(q(5, 'cm'), q(3, '')))).toBe('3 has no unit: write 3 cm or 3 in.');
    expect(sentence(compare(q(5, 'cm'), q(3, 'deg')))).toBe('A length (5 cm) and an angle (3°) cannot be compared.');
  });
});

describe('results too large', () => {
  it('are faults, not Infinity', () => {
    const large = { ...q(1, 'mm'), value: 1e200 };
    expect(isFault(multiply(large, large))).toBe(true);
    expect(isFault(divide(large, { ...q(1, ''), value: 1e-200 }))).toBe(true);
    expect(isFault(add({ ...large, value: 1.7e308 }, { ...large, value: 1.7e308 }))).toBe(true);
    expect(isFault(subtract({ ...large, value: -1.7e308 }, { ...large, value: 1.7e308 }))).toBe(true);
  });
});

describe('amounts in sentences', () => {
  it('are rounded only where their exact text is long', () => {
    expect(sentence(divide(q(1 / 3, 'cm'), q(0, '')))).toBe('0.3 cm cannot be divided by 0: nothing can be shared into 0 parts.');
    expect(sentence(divide(q(2.125, 'in'), q(0, '')))).toBe('2.125 in cannot be divided by 0: nothing can be shared into 0 parts.');
    expect(amountIn(q(2.125, 'in'), 'in' satisfies UnitCode)).toBe(2.125);
  });
});
