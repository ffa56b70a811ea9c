import { describe, expect, it } from 'vitest';
import { isFault } from '../../../src/quantities/index.ts';
import { convert } from '../../../src/sewing/convert.ts';

const to = (number: number, from: string, into: string): number | string => {
  const got = convert(number, from, into);
  return isFault(got) ? got.sentence : got.value;
};

describe('CONVERT by the OpenFormula standard, tables 24 and 25', () => {
  it.each<[number, string, string, number]>([
    [1, 'in', 'cm', 2.54], [1, 'yd', 'm', 0.9144], [1, 'yd^2', 'm^2', 0.83612736], [1, 'ell', 'in', 45], [72, 'Pica', 'in', 1], [72, 'picapt', 'in', 1], [6, 'pica', 'in', 1],
    [1, 'ft', 'in', 12], [1, 'mi', 'm', 1609.344], [3937, 'survey_mi', 'm', 6_336_000], [1, 'Nmi', 'km', 1.852], [1, 'm', 'dm', 10], [1, 'dam', 'm', 10], [1, 'em', 'm', 10], [1, 'um', 'mm', 0.001],
    [1, 'm2', 'cm^2', 10_000], [1, 'km2', 'ha', 100], [1, 'ha', 'ar', 100], [1, 'har', 'ar', 100], [1, 'Morgen', 'm2', 2500], [1, 'uk_acre', 'm2', 4046.8564224], [1, 'us_acre', 'm2', 4046 + 13_525_426 / 15_499_969],
    [1, 'in2', 'mm2', 645.16], [1, 'ft^2', 'in^2', 144], [1, 'lbm', 'g', 453.59237], [16, 'ozm', 'lbm', 1], [7000, 'grain', 'lbm', 1], [1, 'stone', 'lbm', 14], [1, 'cwt', 'lbm', 100], [1, 'uk_cwt', 'lbm', 112], [1, 'ton', 'lbm', 2000], [1, 'LTON', 'lbm', 2240], [1, 'sg', 'lbm', 32.174], [1, 'kg', 'g', 1000],
    [1, 'ang', 'm', 1e-10], [1, 'ly', 'm', 9_460_730_472_580_800], [1, 'pc', 'parsec', 1], [0, 'in', 'cm', 0], [-2, 'in', 'cm', -5.08],
  ])('%d %s in %s', (number, from, into, expected) => {
    expect(to(number, from, into)).toBe(expected);
  });

  it('a parsec is about 3.0857e16 m', () => {
    expect(to(1, 'pc', 'm')).toBeCloseTo(3.0857e16, -13);
  });

  it('takes a whole name before one made with a prefix', () => {
    // "Pica" is a point, not a peta-ica; "ha" a hectare, not a hecto-a; "cwt" not a centi-wt.
    expect(to(1, 'ha', 'm2')).toBe(10_000);
    expect(to(1, 'Pm', 'm')).toBe(1e15);
  });

  it.each([
    ['IN', 'cm', 'CONVERT does not know the unit “IN”: write “in”, since small and capital letters are told apart.'],
    ['in', 'g', 'CONVERT cannot turn “in” into “g”: the one is a length, the other a mass.'],
    ['m2', 'm', 'CONVERT cannot turn “m2” into “m”: the one is an area, the other a length.'],
    ['cm', 'furlong', 'CONVERT does not know the unit “furlong”: it knows units of length, area and mass, such as "cm", "yd^2" or "ozm".'],
    ['kin', 'cm', /does not know the unit “kin”/],
    ['__proto__', 'cm', /does not know/],
    ['', 'cm', /does not know/],
  ])('%s in %s is refused', (from, into, sentence) => {
    if (typeof sentence === 'string') expect(to(1, from, into)).toBe(sentence);
    else expect(to(1, from, into)).toMatch(sentence);
  });
});
