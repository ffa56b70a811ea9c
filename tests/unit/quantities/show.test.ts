import { describe, expect, it } from 'vitest';
import { quantity, readQuantity, show, showSpan, showText } from '../../../src/quantities/index.ts';
import type { ShowAs, Shown, UnitCode } from '../../../src/quantities/index.ts';

const OWN: ShowAs = { system: 'own', inchStep: 8 };

function main(amount: number, unit: UnitCode, as: Partial<ShowAs> = {}): string {
  return show(quantity(amount, unit), { ...OWN, ...as }).main;
}

describe('show: each unit in its own way', () => {
  it.each<[number, UnitCode, string]>([
    [86, 'cm', '86.0 cm'], [5.715, 'cm', '5.7 cm'], [-2.5, 'cm', '−2.5 cm'], [0, 'cm', '0.0 cm'],
    [12, 'mm', '12 mm'], [12.34, 'mm', '12.3 mm'], [12.04, 'mm', '12 mm'], [1.5, 'm', '1.50 m'], [1.525, 'm', '1.53 m'],
    [28.375, 'in', '28 ⅜ in'], [0.375, 'in', '⅜ in'], [-0.375, 'in', '−⅜ in'], [-2.25, 'in', '−2 ¼ in'], [3, 'in', '3 in'], [0, 'in', '0 in'],
    [40 / 36, 'yd', '1 yd 4 in'], [1, 'yd', '1 yd'], [1 / 3, 'yd', '12 in'], [0, 'yd', '0 yd'], [-40.5 / 36, 'yd', '−1 yd 4 ½ in'],
    [5.5, 'ft', '5 ft 6 in'], [66.5 / 12, 'ft', '5 ft 6 ½ in'], [0.03125, 'ft', '⅜ in'], [0, 'ft', '0 ft'],
    [250, 'cm2', '250 cm²'], [250.5, 'cm2', '251 cm²'], [1.5, 'm2', '1.50 m²'], [3.25, 'in2', '3.3 in²'], [3.25, 'ft2', '3.25 ft²'], [3.255, 'yd2', '3.26 yd²'], [12.5, 'mm2', '13 mm²'],
    [22.5, 'deg', '22.5°'], [30, 'deg', '30.0°'], [1.5, 'rad', '1.500 rad'],
    [3, '%', '3 %'], [3.25, '%', '3.3 %'], [-12.5, '%', '−12.5 %'],
    [8, '', '8'], [10.571428, '', '10.571'], [0.5, '', '0.5'], [1234567, '', '1234567'], [-1.5, '', '−1.5'], [1.1, '', '1.1'], [100, '', '100'],
  ])('%d %s is %s', (amount, unit, text) => {
    expect(main(amount, unit)).toBe(text);
  });
});

describe('show: fractions of an inch', () => {
  it('sets eighths with their characters and the rest with a fraction slash, in lowest terms', () => {
    const shown = (step: 8 | 16 | 32): readonly string[] => Array.from({ length: step }, (_, i) => main(i / step, 'in', { inchStep: step }));
    expect(shown(8)).toEqual(['0 in', '⅛ in', '¼ in', '⅜ in', '½ in', '⅝ in', '¾ in', '⅞ in']);
    expect(shown(16)).toEqual(['0 in', '1⁄16 in', '⅛ in', '3⁄16 in', '¼ in', '5⁄16 in', '⅜ in', '7⁄16 in', '½ in', '9⁄16 in', '⅝ in', '11⁄16 in', '¾ in', '13⁄16 in', '⅞ in', '15⁄16 in']);
    expect(shown(32).filter((_, i) => i % 2 === 1)).toEqual(Array.from({ length: 16 }, (_, i) => `${2 * i + 1}⁄32 in`));
    expect(main(28.3125, 'in', { inchStep: 16 })).toBe('28 5⁄16 in');
  });

  it('has a spelling for every keyboard', () => {
    expect(main(-28.375, 'in', { plain: true })).toBe('-28 3/8 in');
    expect(main(28.3125, 'in', { plain: true, inchStep: 16 })).toBe('28 5/16 in');
    expect(main(5, 'cm2', { plain: true })).toBe('5 cm2');
    expect(main(30, 'deg', { plain: true })).toBe('30.0 deg');
    expect(main(3, '%', { plain: true })).toBe('3 %');
    expect(main(-3, '', { plain: true })).toBe('-3');
  });
});

describe('show: rounding', () => {
  it.each<[number, UnitCode, ShowAs['inchStep'], string]>([
    [15.97, 'in', 8, '16 in'], [11.99, 'in', 16, '12 in'], [11.99 / 12, 'ft', 8, '1 ft'], [71.99 / 12, 'ft', 8, '6 ft'], [35.99 / 36, 'yd', 8, '1 yd'], [35.99 / 36, 'yd', 32, '1 yd'], [71.99 / 36, 'yd', 16, '2 yd'], [35.9 / 36, 'yd', 8, '35 ⅞ in'],
    [9.96, 'cm', 8, '10.0 cm'], [0.996, 'm', 8, '1.00 m'], [99.96, '%', 8, '100 %'], [0.9996, '', 8, '1'], [999.9996, '', 8, '1000'],
    [19.685, 'in', 16, '19 11⁄16 in'],
  ])('carries: %d %s to 1/%d in is %s', (amount, unit, inchStep, text) => {
    expect(main(amount, unit, { inchStep })).toBe(text);
  });

  it('sends a tie away from zero, so that −x is the mirror image of x', () => {
    expect(main(39.5625, 'in')).toBe('39 ⅝ in');
    expect(main(-39.5625, 'in')).toBe('−39 ⅝ in');
    expect(main(2.0625, 'in')).toBe('2 ⅛ in');
    expect(main(-2.0625, 'in')).toBe('−2 ⅛ in');
    expect(main(0.25, 'cm')).toBe('0.3 cm');
    expect(main(-0.25, 'cm')).toBe('−0.3 cm');
    expect(main(1.005, 'm')).toBe('1.01 m');
    expect(main(8.345, '', { decimals: 2 })).toBe('8.35');
  });

  it('knows a tie in inches whatever its millimetres, for every sixteenth and more', () => {
    for (let sixteenth = 1; sixteenth < 4000; sixteenth += 2) {
      const text = `${Math.floor(sixteenth / 16)} ${sixteenth % 16}/16 in`;
      const reading = readQuantity(text);
      if (reading.kind !== 'quantity') throw new Error(text);
      const shown = show(reading.quantity, OWN);
      expect(shown.main).toBe(show(quantity((sixteenth + 1) / 16, 'in'), OWN).main);
      expect(shown.exact).toBe(false);
    }
  });

  it('never shows a negative zero', () => {
    for (const unit of ['cm', 'mm', 'm', 'in', 'ft', 'yd', 'cm2', '%', 'deg', ''] as const) {
      expect(main(-0.00001, unit)).not.toContain('−');
      expect(show({ value: -0, dimension: quantity(0, unit).dimension, unit }, OWN).main).not.toMatch(/[−-]/);
    }
  });

  it('says whether anything was rounded away', () => {
    const exact = (amount: number, unit: UnitCode, as: Partial<ShowAs> = {}): boolean => show(quantity(amount, unit), { ...OWN, ...as }).exact;
    expect(exact(28.375, 'in')).toBe(true);
    expect(exact(28.3125, 'in')).toBe(false);
    expect(exact(28.3125, 'in', { inchStep: 16 })).toBe(true);
    expect(exact(5.7, 'cm')).toBe(true);
    expect(exact(5.71, 'cm')).toBe(false);
    expect(exact(0.1 + 0.2, 'cm')).toBe(true);
    expect(exact(12.3, 'mm')).toBe(true);
    expect(exact(12.34, 'mm')).toBe(false);
    expect(exact(1 / 3, '')).toBe(false);
    expect(exact(2, 'in', { system: 'both' })).toBe(true);
  });
});

describe('show: systems and units', () => {
  const shown = (amount: number, unit: UnitCode, as: Partial<ShowAs>): Shown => show(quantity(amount, unit), { ...OWN, ...as });

  it.each<[number, UnitCode, string, string, string, string]>([
    [5.5, 'cm', '5.5 cm', '2 ⅛ in', '5.5 cm', '2 ⅛ in'],
    [12, 'mm', '12 mm', '½ in', '12 mm', '½ in'],
    [1.5, 'm', '1.50 m', '1 yd 23 in', '1.50 m', '1 yd 23 in'],
    [2.25, 'in', '5.7 cm', '2 ¼ in', '2 ¼ in', '5.7 cm'],
    [5.5, 'ft', '167.6 cm', '5 ft 6 in', '5 ft 6 in', '167.6 cm'],
    [2, 'yd', '1.83 m', '2 yd', '2 yd', '1.83 m'],
    [100, 'cm2', '100 cm²', '15.5 in²', '100 cm²', '15.5 in²'],
    [1, 'm2', '1.00 m²', '1.20 yd²', '1.00 m²', '1.20 yd²'],
    [10, 'in2', '65 cm²', '10.0 in²', '10.0 in²', '65 cm²'],
    [1, 'ft2', '929 cm²', '1.00 ft²', '1.00 ft²', '929 cm²'],
    [1, 'yd2', '0.84 m²', '1.00 yd²', '1.00 yd²', '0.84 m²'],
    [1000, 'mm2', '1000 mm²', '1.6 in²', '1000 mm²', '1.6 in²'],
  ])('%d %s', (amount, unit, cm, inches, own, other) => {
    expect(shown(amount, unit, { system: 'cm' }).main).toBe(cm);
    expect(shown(amount, unit, { system: 'in' }).main).toBe(inches);
    expect(shown(amount, unit, { system: 'both' })).toMatchObject({ main: own, also: other });
    expect(shown(amount, unit, { system: 'own' })).toMatchObject({ main: own });
    expect(shown(amount, unit, { system: 'own' }).also).toBeUndefined();
  });

  it('shows numbers, percents and angles alike in every system', () => {
    for (const system of ['own', 'cm', 'in', 'both'] as const) {
      expect(shown(8, '', { system })).toEqual({ main: '8', exact: true });
      expect(shown(3, '%', { system })).toEqual({ main: '3 %', exact: true });
      expect(shown(45, 'deg', { system })).toEqual({ main: '45.0°', exact: true });
    }
  });

  it('shows in the unit asked for, whatever the system, if it is of the same dimension', () => {
    expect(shown(2.5, 'cm', { unit: 'mm', system: 'in' }).main).toBe('25 mm');
    expect(shown(1.5, 'm', { unit: 'cm', system: 'both' })).toMatchObject({ main: '150.0 cm', also: '59 in' });
    expect(shown(0.5, '', { unit: '%' }).main).toBe('50 %');
    expect(shown(3, '%', { unit: '' }).main).toBe('0.03');
    expect(shown(2.5, 'cm', { unit: 'cm2' }).main).toBe('2.5 cm');
    expect(shown(8, '', { unit: 'cm' }).main).toBe('8');
  });

  it('shows the decimals asked for, inches too, but leaves the other system as it is', () => {
    expect(shown(2.25, 'in', { decimals: 3 }).main).toBe('2.250 in');
    expect(shown(1.5, 'yd', { decimals: 1 }).main).toBe('1.5 yd');
    expect(shown(5.715, 'cm', { decimals: 2, system: 'both' })).toEqual({ main: '5.72 cm', also: '2 ¼ in', exact: false });
    expect(shown(5.715, 'cm', { decimals: 0 }).main).toBe('6 cm');
    expect(shown(12, 'mm', { decimals: 1 }).main).toBe('12.0 mm');
    expect(shown(2, '', { decimals: 2 }).main).toBe('2.00');
    expect(shown(2, '', { decimals: 99 }).main).toBe('2.0000000000');
    expect(shown(2, '', { decimals: -1 }).main).toBe('2');
  });

  it('uses the decimal comma asked for', () => {
    expect(shown(5.5, 'cm', { decimalMark: ',' }).main).toBe('5,5 cm');
    expect(shown(1.234, '', { decimalMark: ',' }).main).toBe('1,234');
    expect(shown(0.5, '', { decimalMark: ',' }).main).toBe('0,5');
  });
});

describe('show: figures beyond all cloth', () => {
  it.each<[number, UnitCode, string]>([
    [2 ** 53, '', '9007199254740992'], [1e20, 'cm', '100000000000000000000.0 cm'], [1e22, '', '10000000000000000000000'], [-1e18, 'in', '−1000000000000000000 in'], [1e16, 'yd', '10000000000000000 yd'], [900_000_000_000.5, '', '900000000000.5'],
  ])('%d %s', (amount, unit, text) => {
    expect(main(amount, unit)).toBe(text);
  });

  it('writes many decimals of a large number as they are', () => {
    expect(main(12345678.5, '', { decimals: 10 })).toBe('12345678.5000000000');
    expect(show(quantity(12345678.5, ''), { ...OWN, decimals: 10 }).exact).toBe(true);
  });

  it('has a dash for what is no number, and never NaN or Infinity', () => {
    for (const value of [NaN, Infinity, -Infinity]) {
      for (const unit of ['cm', 'in', 'yd', ''] as const) expect(show({ ...quantity(1, unit), value }, OWN)).toMatchObject({ main: '—', exact: false });
    }
    expect(show({ ...quantity(1, 'in'), value: 1.7e308 }, { ...OWN, inchStep: 32, system: 'both' }).main).toMatch(/^\d+ in$/);
  });
});

describe('showSpan', () => {
  const spanShown = (text: string, as: Partial<ShowAs> = {}): Shown => {
    const reading = readQuantity(text);
    if (reading.kind !== 'span') throw new Error(text);
    return showSpan(reading.span, { ...OWN, ...as });
  };

  it.each<[string, string, string | undefined]>([
    ['86–90 cm', '86.0–90.0 cm', '33 ⅞–35 ⅜ in'], ['34 1/2 to 36 in', '34 ½–36 in', '87.6–91.4 cm'], ['⅜-½ in', '⅜–½ in', '1.0–1.3 cm'],
    ['1 yd – 1 yd 4 in', '1 yd–1 yd 4 in', '0.91–1.02 m'], ['-2 to 3 cm', '−2.0 to 3.0 cm', '−¾ to 1 ⅛ in'], ['86–90', '86–90', undefined], ['2–3 %', '2–3 %', undefined], ['90 cm – 36 in', '90.0–91.4 cm', '35 ⅜–36 in'],
  ])('%s', (text, own, other) => {
    expect(spanShown(text).main).toBe(own);
    expect(spanShown(text, { system: 'both' }).also).toBe(other);
  });

  it('has a plain spelling that no hyphen can spoil, and says what was rounded', () => {
    expect(spanShown('34 1/2–36 in', { plain: true }).main).toBe('34 1/2 to 36 in');
    expect(spanShown('86–90 cm').exact).toBe(true);
    expect(spanShown('86.01–90 cm').exact).toBe(false);
    expect(spanShown('86–90.01 cm').exact).toBe(false);
  });

  it('reads back to the same span', () => {
    for (const text of ['86–90 cm', '34 1/2–36 in', '1 yd–1 yd 4 in', '-2 to 3 cm', '86–90', '2–3 %', '5 ft–5 ft 6 in']) {
      for (const plain of [true, false]) expect(spanShown(spanShown(text, { plain }).main)).toEqual(spanShown(text));
    }
  });
});

describe('showText', () => {
  it('is the quantity as shown, in one system', () => {
    expect(showText(quantity(5.5, 'cm'), { ...OWN, system: 'both' })).toBe('5.5 cm');
    expect(showText(quantity(5.5, 'cm'), { ...OWN, system: 'in' })).toBe('2 ⅛ in');
  });

  it('writes a fourth figure after a decimal comma where three could be thousands', () => {
    const comma: ShowAs = { ...OWN, decimalMark: ',' };
    expect(showText(quantity(1.234, ''), comma)).toBe('1,2340');
    expect(showText(quantity(-123.456, ''), { ...comma, plain: true })).toBe('-123,4560');
    expect(showText(quantity(0.234, ''), comma)).toBe('0,234');
    expect(showText(quantity(1234.567, ''), comma)).toBe('1234,567');
    expect(showText(quantity(86.125, 'cm'), { ...comma, decimals: 3 })).toBe('86,1250 cm');
    expect(showText(quantity(86.125, 'cm'), { ...comma, decimals: 4 })).toBe('86,1250 cm');
    expect(showText(quantity(5.5, 'cm'), comma)).toBe('5,5 cm');
  });
});
