/** What a cell understands, form by form. */
import { describe, expect, it } from 'vitest';
import { readQuantity } from '../../../src/quantities/index.ts';
import type { Reading, UnitCode } from '../../../src/quantities/index.ts';

const IN = 25.4;

function value(text: string): readonly [number, UnitCode] {
  const reading = readQuantity(text);
  if (reading.kind !== 'quantity') throw new Error(`${text}: ${JSON.stringify(reading)}`);
  return [reading.quantity.value, reading.quantity.unit];
}

describe('readQuantity: lengths in inches', () => {
  it.each([
    ['2 1/4 in', 57.15], ['2 1/4"', 57.15], ['2¼ in', 57.15], ['2 ¼ in', 57.15], ['2-1/4"', 57.15], ['2‑1/4 in', 57.15], ['2-¼ in', 57.15],
    ['⅜"', 9.525], ['3/8 in', 9.525], ['-3/8 in', -9.525], ['−3/8 in', -9.525], ['– 3/8 in', -9.525], ['+3/8 in', 9.525],
    ['.5 in', 12.7], ['0.5 in', 12.7], ['2.25in', 57.15], ['2,25 in', 57.15],
    ['2 1/4 inch', 57.15], ['2 1/4 inches', 57.15], ['2 1/4″', 57.15], ['2 1/4”', 57.15], ["2 1/4''", 57.15], ['2 1/4 in.', 57.15], ['2 1/4 In', 57.15], ['2 1/4 INCHES', 57.15],
    ['2\u00a01/4\u00a0in', 57.15], ['2\u20091/4\u202fin', 57.15], ['  2   1/4   in  ', 57.15], ['2 1⁄4 in', 57.15], ['2 1∕4 in', 57.15],
    ['10-3/8"', 263.525], ['5/8 in', 15.875], ['1/64 in', 0.396875], ['17/32 in', 13.49375], ['15/16 in', 23.8125], ['6/8 in', 19.05], ['0/8 in', 0],
    ['⅓ in', 25.4 / 3], ['2⅔ in', 203.2 / 3],
  ])('%s', (text, mm) => {
    expect(value(text)).toEqual([mm, 'in']);
  });
});

describe('readQuantity: metric lengths', () => {
  it.each<[string, number, UnitCode]>([
    ['5.5 cm', 55, 'cm'], ['5,5 cm', 55, 'cm'], ['5.5cm', 55, 'cm'], ['5 CM', 50, 'cm'], ['5 centimetres', 50, 'cm'], ['5 centimeter', 50, 'cm'],
    ['12 mm', 12, 'mm'], ['12 MM', 12, 'mm'], ['1.5 m', 1500, 'm'], ['1 metre', 1000, 'm'], ['2 meters', 2000, 'm'], ['1/2 m', 500, 'm'], ['1 m 20 cm', 1200, 'm'],
    ['1.005 m', 1005, 'm'], ['0,125 m', 125, 'm'], ['0.1 mm', 0.1, 'mm'], ['86.125 cm', 861.25, 'cm'], ['1234,5 mm', 1234.5, 'mm'], ['007 cm', 70, 'cm'],
  ])('%s', (text, mm, unit) => {
    expect(value(text)).toEqual([mm, unit]);
  });
});

describe('readQuantity: yards and feet', () => {
  it.each<[string, number, UnitCode]>([
    ['1 yd 4 in', 40 * IN, 'yd'], ['1yd 4in', 40 * IN, 'yd'], ['2 yards', 72 * IN, 'yd'], ['2 3/8 yd', 2171.7, 'yd'], ['1/3 yd', 304.8, 'yd'], ['2 2/3 yd', 2438.4, 'yd'], ['1 yd 1 ft 2 in', 50 * IN, 'yd'], ['0 yd 12 in', 304.8, 'yd'], ['1/2 yd 4 in', 22 * IN, 'yd'], ['1 1/2 yd 4 1/4 in', 58.25 * IN, 'yd'],
    ["5'6\"", 66 * IN, 'ft'], ['5′6″', 66 * IN, 'ft'], ['5’6”', 66 * IN, 'ft'], ["5' 6 1/2\"", 66.5 * IN, 'ft'], ["5'6", 66 * IN, 'ft'], ["5'6½", 66.5 * IN, 'ft'], ["5'-6\"", 66 * IN, 'ft'], ['5 ft-6 in', 66 * IN, 'ft'],
    ['5 ft 6 1/2 in', 66.5 * IN, 'ft'], ['5 feet 6 inches', 66 * IN, 'ft'], ['-5 ft 6 in', -66 * IN, 'ft'], ['1 foot', 12 * IN, 'ft'], ['5ft2in', 62 * IN, 'ft'], ['5 ft 14 in', 74 * IN, 'ft'],
  ])('%s', (text, mm, unit) => {
    const [got, as] = value(text);
    expect(as).toBe(unit);
    expect(got).toBeCloseTo(mm, 10);
  });

  it('adds the parts exactly: 5 ft 6 1/2 in is the same value as 66 1/2 in', () => {
    expect(value('5 ft 6 1/2 in')[0]).toBe(value('66 1/2 in')[0]);
    expect(value('1 yd 4.1 in')[0]).toBe(value('40.1 in')[0]);
  });
});

describe('readQuantity: areas, angles, percents and numbers', () => {
  it.each<[string, number, UnitCode]>([
    ['250 cm²', 25_000, 'cm2'], ['250 cm2', 25_000, 'cm2'], ['250 cm^2', 25_000, 'cm2'], ['250 sq cm', 25_000, 'cm2'], ['1.5 m²', 1_500_000, 'm2'], ['1 sq. in.', 645.16, 'in2'], ['1 square inch', 645.16, 'in2'], ['2 sq yd', 1_672_254.72, 'yd2'], ['5 ft2', 464_515.2, 'ft2'], ['5ft²', 464_515.2, 'ft2'], ['5ft^2', 464_515.2, 'ft2'], ['5 sq.cm', 500, 'cm2'], ['3in2', 1935.48, 'in2'],
    ['30°', 30, 'deg'], ['30 deg', 30, 'deg'], ['22.5 degrees', 22.5, 'deg'], ['-7 1/2°', -7.5, 'deg'], ['2 rad', 114.59155902616464, 'rad'],
    ['3 %', 0.03, '%'], ['3%', 0.03, '%'], ['-3.5 %', -0.035, '%'], ['12 percent', 0.12, '%'], ['12 per cent', 0.12, '%'],
    ['1/2', 0.5, ''], ['2 1/4', 2.25, ''], ['2-1/4', 2.25, ''], ['½', 0.5, ''], ['⅔', 2 / 3, ''], ['1234', 1234, ''], ['-5', -5, ''], ['5,5', 5.5, ''], ['1,2345', 1.2345, ''], ['0,123', 0.123, ''], [',5', 0.5, ''], ['3.14159', 3.14159, ''], ['1.234', 1.234, ''], ['05', 5, ''],
  ])('%s', (text, base, unit) => {
    expect(value(text)).toEqual([base, unit]);
  });

  it('never makes a negative zero', () => {
    for (const text of ['-0', '-0 cm', '−0/8 in', '-0.0 %', '-0 yd 0 in']) expect(Object.is(value(text)[0], 0)).toBe(true);
  });
});

describe('readQuantity: spans', () => {
  const ends = (text: string): readonly unknown[] => {
    const reading = readQuantity(text);
    if (reading.kind !== 'span') throw new Error(`${text}: ${JSON.stringify(reading)}`);
    const { low, high } = reading.span;
    return [low.value, low.unit, high.value, high.unit];
  };
  it.each<[string, number, UnitCode, number, UnitCode]>([
    ['86–90 cm', 860, 'cm', 900, 'cm'], ['86-90 cm', 860, 'cm', 900, 'cm'], ['86 - 90 cm', 860, 'cm', 900, 'cm'], ['86—90cm', 860, 'cm', 900, 'cm'], ['86 to 90 cm', 860, 'cm', 900, 'cm'], ['86 cm – 90 cm', 860, 'cm', 900, 'cm'], ['86 cm to 90', 860, 'cm', 900, 'cm'],
    ['34 1/2–36 in', 876.3, 'in', 914.4, 'in'], ['34 1/2 to 36 in', 876.3, 'in', 914.4, 'in'], ['34-1/2-36"', 876.3, 'in', 914.4, 'in'], ['34½-36½"', 876.3, 'in', 927.1, 'in'], ['1/4-1/2 in', 6.35, 'in', 12.7, 'in'], ['1-1 1/2 in', 25.4, 'in', 38.1, 'in'],
    ["5' - 5'6\"", 1524, 'ft', 1676.4, 'ft'], ['1 yd to 1 yd 4 in', 914.4, 'yd', 1016, 'yd'], ['⅓–⅔ yd', 304.8, 'yd', 609.6, 'yd'], ['1/3 – 2/3 yd', 304.8, 'yd', 609.6, 'yd'],
    ['-2 to 2 cm', -20, 'cm', 20, 'cm'], ['−3 – −2 cm', -30, 'cm', -20, 'cm'], ['2–3 %', 0.02, '%', 0.03, '%'], ['86–90', 86, '', 90, ''], ['10-12', 10, '', 12, ''], ['90 cm – 36 in', 900, 'cm', 914.4, 'in'], ['86–86 cm', 860, 'cm', 860, 'cm'],
  ])('%s', (text, low, lowUnit, high, highUnit) => {
    expect(ends(text)).toEqual([low, lowUnit, high, highUnit]);
  });
});

describe('readQuantity: text', () => {
  it.each([
    '', ' ', 'Pleated skirt', 'XS', 'M', 'in', 'cm', '"', '-', '–', '—', '-x', '.', ',', '10/12', '14/16', '6/8', '2/4', '12/10', '10/12–14/16', '2026-11-03', '2026-11', '3/11/2026', '3.11.2026', '12:30', '1.2.3', '3-4-5', '555-123',
    '12 14 16', '1 1', '2XL', '34DD', '12W', '5M', '3rd', '2nd', '4XL-5XL', '10-12XL', '4/3', '0/3', '2 × 5', '12 (US 8)', '5 +', '(5)', '#12', '5-', '5 –', '5 to', '100% cotton', '10/12 petite', '5, 6', '2 + 3', "'5 cm", '½ ½', 'size 12',
    '5 cm\n6 cm', '86–90–94 cm', '5.5.', '⁄', '1/', '/2', 'NaN', 'Infinity', '-Infinity',
  ])('%j', (text) => {
    expect(readQuantity(text)).toEqual<Reading>({ kind: 'text' });
  });
});

describe('readQuantity with a known decimal mark', () => {
  it('takes the doubt from a mark before three figures', () => {
    expect(readQuantity('1,234', { decimalMark: ',' })).toMatchObject({ kind: 'quantity', quantity: { value: 1.234 } });
    expect(readQuantity('1,234 m', { decimalMark: ',' })).toMatchObject({ quantity: { value: 1234 } });
    expect(readQuantity('5.5 cm', { decimalMark: ',' })).toMatchObject({ quantity: { value: 55 } });
    expect(readQuantity('1.234', { decimalMark: ',' })).toEqual({
      kind: 'refused', meant: 'figure', sentence: '“1.234” can be read in two ways: write 1234 or 1,2340.',
    });
    expect(readQuantity('1.234', { decimalMark: '.' })).toMatchObject({ quantity: { value: 1.234 } });
    expect(readQuantity('1,234', { decimalMark: '.' }).kind).toBe('refused');
  });
});
