import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isFault, quantity, readQuantity } from '../../../src/quantities/index.ts';
import { toEngine, tokenize } from '../../../src/formula/index.ts';
import type { Token } from '../../../src/formula/index.ts';

const context = { sheets: [{ id: 1, name: 'Skirt' }], ownSheet: 1, names: [] };

function only(formula: string): Token | undefined {
  const tokens = tokenize(formula);
  return tokens.length === 2 ? tokens[1] : undefined;
}

/** Base units of a figure, worked out from its parts. */
function baseOf(token: Token | undefined): number {
  return (token?.parts ?? []).reduce((sum, { amount, over = 1, unit }) => sum + quantity(amount, unit).value / over, 0);
}

describe('figures with a unit in formulas', () => {
  const asInCells = [
    '2 1/4 in', '2¼"', '2 1/4"', '2¼ in', '5.5cm', '5 cm', '12 mm', '1.5 m', '3/8 in', '⅜ in', '⅜"', '1 yd 4 in', '1 yd 4 1/2 in', `5'6"`, `5' 6"`, `5'6 1/2"`, '5 ft 6 1/2 in',
    '250 cm2', '250 cm²', '12 sq in', '30°', '30 deg', '.5 in', '2 63/64 in', '1/2 in', '2\u00a01/4\u00a0in', '5″', '5′', '3 yards', '1 inch', '2 metres', '3 in.', '1/3 yd', '2 2/3 yd',
  ];
  for (const text of asInCells) {
    it(`${text} is one token, worth what it is worth in a cell`, () => {
      const token = only(`=${text}`);
      expect(token?.kind).toBe('unit');
      const reading = readQuantity(text);
      expect(reading.kind).toBe('quantity');
      if (reading.kind !== 'quantity') return;
      expect(token?.parts?.[0]?.unit).toBe(reading.quantity.unit);
      expect(baseOf(token)).toBeCloseTo(reading.quantity.value, 9);
    });
  }

  it('is exact where the tape is', () => {
    expect(baseOf(only('=1 yd 4 in'))).toBe(1016);
    expect(baseOf(only('=2 1/4 in'))).toBe(57.15);
    expect(baseOf(only('=1/3 yd'))).toBeCloseTo(304.8, 12);
    expect(only('=2 3/64 in')?.parts).toEqual([{ amount: 2.046875, unit: 'in' }]);
  });

  it('reads thirds from their character in any unit, with a / only before yards', () => {
    expect(only('=⅔ in')?.parts).toEqual([{ amount: 2, over: 3, unit: 'in' }]);
    expect(only('=1 ⅓ yd')?.parts).toEqual([{ amount: 4, over: 3, unit: 'yd' }]);
    expect(tokenize('=1/3 in').map((t) => t.text)).toEqual(['=', '1', '/', '3 in']);
  });

  it('tells a fraction from a sum', () => {
    const texts = (formula: string): string[] => tokenize(formula).map((t) => t.text);
    expect(texts('=10-3/8"')).toEqual(['=', '10', '-', '3/8"']);
    expect(texts('=A1/8 in')).toEqual(['=', 'A1', '/', '8 in']);
    expect(texts('=3/5 in')).toEqual(['=', '3', '/', '5 in']);
    expect(texts('=5/4 in')).toEqual(['=', '5', '/', '4 in']);
    expect(texts('=3/4')).toEqual(['=', '3', '/', '4']);
    expect(texts('=12/2 1/4 in')).toEqual(['=', '12', '/', '2 1/4 in']);
    expect(texts('=A1^2/8 in')).toEqual(['=', 'A1', '^', '2', '/', '8 in']);
    expect(texts('=3*3/8"')).toEqual(['=', '3', '*', '3/8"']);
  });

  it('reads a fraction character without a unit as a number', () => {
    expect(only('=½')).toMatchObject({ kind: 'number', value: 0.5 });
    expect(only('=2½')).toMatchObject({ kind: 'number', value: 2.5 });
    expect(only('=5⁄16')).toMatchObject({ kind: 'number', value: 0.3125 });
  });

  const refused: readonly (readonly [string, string])[] = [
    ['=2 1/4', 'write 2.25'],
    ['=SUM(2 1/4*3)', 'has no unit'],
    ['=2 5/4 in', 'no fraction of a tape'],
    ['=2 1/0 in', 'no fraction of a tape'],
    ['=2 1/0', 'another fraction'],
    ['=2 1/3 in', 'no fraction of a tape'],
    ['=A1/2/4 in', 'put brackets'],
    ['=1e999', 'too big'],
    ['=5 furlongs', 'no unit'],
    ['=5 M', 'no unit'],
    ['=1 yd 4', 'operator'],
    ['=5 cm^2', 'write 5 cm2 for an area'],
    ['=5" ^2', 'write 5 in2 for an area'],
    ['=SUM(5,5 cm)', '5,5 cm can be read two ways: write 5.5 cm, or 5; 5 cm for two arguments.'],
    ['=1,234 cm', 'write 1.234 cm or 1234 cm'],
    ['=SUM(1,234.5 cm)', 'write 1234.5 cm, or 1; 234.5 cm'],
    ['=SUM(1,234;3)', '1,234 can be read two ways: write 1.234, or 1; 234'],
    ['=SUM(1,2,3;4)', '1,2 can be read two ways'],
    ['=1,2,3', '‘1,2’ can be read two ways'],
  ];
  for (const [formula, part] of refused) {
    it(`refuses ${formula}`, () => {
      const result = toEngine(formula, context);
      expect(isFault(result) ? result.sentence : result).toContain(part);
    });
  }

  it('takes a comma for a parting where it has one reading only', () => {
    for (const formula of ['=ROUND(5,5)', '=MAX(5,2 1/4 in)', '=MAX(5, 5 cm)', '=MAX(5;5 cm)', '=MAX(5 cm,5)', '=MAX(A1,5 cm)', '=MAX(2.5,5 cm)', '=MAX(5,½ in)']) {
      expect(isFault(toEngine(formula, context)), formula).toBe(false);
    }
  });

  it('never reads another figure than a cell would', () => {
    const space = fc.constantFrom('', ' ', '\u00a0');
    const whole = fc.nat({ max: 70 }).map(String);
    const fraction = fc.oneof(
      fc.tuple(fc.nat({ max: 9 }), fc.constantFrom('/', '⁄'), fc.constantFrom(0, 2, 3, 4, 5, 8, 16, 32, 64)).map((p) => p.join('')),
      fc.constantFrom('½', '¼', '¾', '⅓', '⅔', '⅛', '⅜', '⅝', '⅞'),
    );
    const amount = fc.oneof(
      whole, fraction, fc.tuple(whole, space, fraction).map((p) => p.join('')),
      fc.tuple(whole, fc.constantFrom('.5', '.25', '.')).map((p) => p.join('')), fc.constant('.5'),
    );
    const unit = fc.constantFrom('in', 'inches', '"', '″', '”', "''", 'cm', 'CM', 'mm', 'm', 'M', 'ft', "'", '’', '′', 'yd', 'yards', 'cm2', 'cm²', 'sq in', 'square yards', '°', 'deg', 'percent', 'in.', 'x', 'inn', '');
    const figure = fc.array(fc.tuple(amount, space, unit).map((p) => p.join('')), { minLength: 1, maxLength: 3 });
    let read = 0;
    fc.assert(fc.property(figure, fc.constantFrom('', ' '), (parts, between) => {
      const text = parts.join(between);
      const token = only(`=${text}`);
      const reading = readQuantity(text);
      if (token?.kind !== 'unit') return;
      read += 1;
      expect(reading.kind, text).toBe('quantity');
      if (reading.kind !== 'quantity') return;
      expect(token.parts?.[0]?.unit, text).toBe(reading.quantity.unit);
      expect(baseOf(token) / (reading.quantity.value || 1), text).toBeCloseTo(reading.quantity.value === 0 ? 0 : 1, 12);
    }), { numRuns: 5000 });
    expect(read).toBeGreaterThan(500);
  });

  it('reads, or refuses, every figure that a cell reads', () => {
    const amounts = ['5', '2 1/4', '3/8', '2¼', '⅜', '5.5', '.5', '5⁄16', '1 ⅔'];
    const units = ['in', '"', '″', "''", 'cm', 'mm', 'm', 'ft', "'", '′', 'yd', 'cm2', 'cm²', 'sq cm', 'sq. in', 'square feet', '°', 'deg', 'rad'];
    for (const amount of amounts) {
      for (const unit of units) {
        const text = /^\p{L}/u.test(unit) ? `${amount} ${unit}` : amount + unit;
        const reading = readQuantity(text);
        if (reading.kind !== 'quantity') continue;
        expect(only(`=${text}`)?.kind, text).toBe('unit');
      }
    }
  });
});
