import { describe, expect, it } from 'vitest';
import { isFault, readQuantity } from '../../../src/quantities/index.ts';
import { functionNamed, work } from '../../../src/sewing/index.ts';
import type { SewingFunction, Value } from '../../../src/sewing/index.ts';
import { LETTERS, block, chart } from './charts.ts';
import { cellValue } from './formula.ts';

function named(name: string): SewingFunction {
  const fn = functionNamed(name);
  if (fn === undefined) throw new Error(name);
  return fn;
}

function sentence(name: string, ...values: Value[]): string {
  const outcome = work(named(name), values);
  if (!isFault(outcome)) throw new Error(`${name} gave a result`);
  return outcome.sentence;
}

const cm = (n: number): Value => cellValue(`${n} cm`);

describe('what an argument must be', () => {
  it.each<[string, readonly Value[], string]>([
    ['EASE', [cm(98), cellValue('91')], 'EASE needs a length for body, and 91 has no unit: write 91 cm or 91 in.'],
    ['EASE', [cellValue('38 1/2 in'), cellValue('36.5')], 'EASE needs a length for body, and 36.5 has no unit: write 36.5 in or 36.5 cm.'],
    ['EASE', [cm(98), null], 'EASE has no value for body yet.'],
    ['EASE', [cm(98)], 'EASE needs body too: EASE(finished, body, least, level).'],
    ['EASE', [cm(98), cm(91), cm(2), 'bust', cm(2)], 'EASE takes 4 values and got 5: EASE(finished, body, least, level).'],
    ['EASE', [cm(98), cellValue('86–90 cm')], 'EASE needs a length for body, and 86.0–90.0 cm is a span: give one figure of it, with SPAN.LOW or SPAN.HIGH.'],
    ['EASE', [cm(98), 'abc'], 'EASE needs a length for body, and “abc” is a text.'],
    ['EASE', [cm(98), true], 'EASE needs a length for body, and TRUE is none.'],
    ['EASE', [cm(98), cellValue('30°')], 'EASE needs a length for body, and 30° is an angle.'],
    ['EASE', [cm(98), cellValue('3 %')], 'EASE needs a length for body, and 3 % is a percent.'],
    ['EASE', [cm(98), chart(...LETTERS)], 'EASE needs a length for body, and it got a block of cells: give one cell.'],
    ['EASE', [cm(98), { value: NaN, dimension: 'length', unit: 'cm' }], 'EASE needs a length for body, and it got no finite number.'],
    ['EASE', [cm(98), { value: Infinity, dimension: 'length', unit: 'cm' }], 'EASE needs a length for body, and it got no finite number.'],
    ['EASE', [cm(98), cm(0)], 'EASE needs body to be more than 0, and got 0 cm.'],
    ['EASE', [cm(98), cm(-91)], 'EASE needs body to be more than 0, and got −91 cm.'],
    ['PLEAT.SPACING', [cm(98), cm(8)], 'PLEAT.SPACING needs a whole number of at least 1 for pleats, and 8 cm is a length.'],
    ['PLEAT.SPACING', [cm(98), cellValue('0')], 'PLEAT.SPACING needs a whole number of at least 1 for pleats, and it got 0.'],
    ['PLEAT.SPACING', [cm(98), cellValue('2.5')], 'PLEAT.SPACING needs a whole number of at least 1 for pleats, and it got 2.5.'],
    ['PLEAT.UNDERLAY', [cm(4), 'bocks'], 'PLEAT.UNDERLAY needs "knife", "box" or "inverted" for kind, and got “bocks”.'],
    ['CIRCLE.RADIUS', [cm(72), cellValue('2.5')], 'CIRCLE.RADIUS needs part to be at most 2, and got 2.5.'],
    ['CIRCLE.RADIUS', [cm(72), cellValue('0')], 'CIRCLE.RADIUS needs part to be more than 0, and got 0.'],
    ['CLOTH.BUY', [cm(250), cellValue('3')], 'CLOTH.BUY needs a percent for shrinkage, and 3 has no percent sign: write 3 %.'],
    ['CLOTH.BUY', [cm(250), cellValue('0.03')], 'CLOTH.BUY needs a percent for shrinkage, and 0.03 has no percent sign: write 3 % or 0.03 %.'],
    ['CLOTH.BUY', [cm(250), cellValue('100 %')], 'CLOTH.BUY needs shrinkage to be less than 100 %, and got 100 %.'],
    ['LENGTH', [cellValue('91'), 'furlong'], 'LENGTH needs the name of a unit for unit, and “furlong” is no unit of length: write "mm", "cm", "m", "in", "ft" or "yd".'],
    ['LENGTH', [cellValue('91'), 'cm²'], 'LENGTH needs the name of a unit for unit, and “cm²” is no unit of length: write "mm", "cm", "m", "in", "ft" or "yd".'],
    ['LENGTH', [cm(91), 'cm'], 'LENGTH needs a plain number for number, and 91 cm is a length.'],
    ['SIZE.AT', [cm(91), 'bust', cm(91)], 'SIZE.AT needs a size chart for chart, and 91 cm is none: give the block of cells that holds the chart, its labels with it.'],
    ['SIZE.AT', [chart(...LETTERS), cm(91), cm(91)], 'SIZE.AT needs a text for measure, and 91 cm is a length: put it in quotation marks if it is meant as a text.'],
    ['EASE', [cm(98), block('a | b')], 'EASE needs a length for body, and it got a block of cells: give one cell.'],
    ['SHOP.STEP', [cm(98), 'cloth'], 'SHOP.STEP needs a block of cells for table, and 98 cm is none: give the whole block, its labels with it.'],
    ['SPAN.LOW', ['abc'], 'SPAN.LOW needs two figures in one cell for span, and “abc” is a text.'],
    ['SPAN.LOW', [true], 'SPAN.LOW needs two figures in one cell for span, and TRUE is none.'],
    ['SPAN.LOW', [block('a | b')], 'SPAN.LOW needs two figures in one cell for span, and it got a block of cells: give one cell.'],
    ['SPAN.HIGH', [{ value: Infinity, dimension: 'length', unit: 'cm' }], 'SPAN.HIGH needs two figures in one cell for span, and it got no finite number.'],
    ['SIZE.MEASURE', [chart(...LETTERS), 'bust', ' '], 'SIZE.MEASURE needs a size for size, and it got an empty text.'],
  ])('%s %#', (name, values, expected) => {
    expect(sentence(name, ...values)).toBe(expected);
  });

  it('takes a count that arithmetic missed by its last digit', () => {
    const outcome = work(named('PLEAT.SPACING'), [cm(90), { value: 9.000000000000002, dimension: 'number', unit: '' }]);
    expect(outcome).toMatchObject({ value: { value: 100, unit: 'cm' } });
  });

  it('fills in usual values for what is left out or empty', () => {
    for (const rest of [[], [null], [null, null]]) {
      expect(work(named('BAND.LENGTH'), [cm(250), ...rest])).toMatchObject({ value: { value: 2500 }, cautions: [] });
    }
  });

  it('takes the words of a choice in any case', () => {
    expect(work(named('PLEAT.UNDERLAY'), [cm(4), ' Box '])).toMatchObject({ value: { value: 160 } });
  });

  it('shows in the unit of the first length that is given', () => {
    expect(work(named('EASE'), [cellValue('39 in'), cm(92)])).toMatchObject({ value: { unit: 'in' }, lengthUnit: 'in' });
    expect(work(named('STEP.NEAR'), [cm(25), cellValue('1/16 in')])).toMatchObject({ value: { unit: 'in', value: 249.2375 } });
    expect(work(named('SHOWN.IN'), [cm(25), 'inches'])).toMatchObject({ value: { unit: 'in', value: 250 } });
    expect(work(named('SIZE.MEASURE'), [chart(...LETTERS), 'hip', 'M'])).toMatchObject({ value: { unit: 'cm', value: 1020 } });
    expect(work(named('DART.ANGLE'), [cm(2), cm(9)])).toMatchObject({ value: { unit: 'deg' } });
    expect(work(named('SPAN.HIGH'), [cellValue('34–36 in')])).toMatchObject({ value: { unit: 'in', value: 914.4 }, lengthUnit: 'in' });
    expect(work(named('SPAN.LOW'), [cellValue('2 %')])).toMatchObject({ value: { unit: '%', value: 0.02 } });
  });

  it('turns a mistake in a definition into a sentence', () => {
    const broken: SewingFunction = { ...named('EASE'), work: () => 1 };
    expect(work(broken, [cm(98), cm(91)])).toEqual({ sentence: 'EASE could not be worked out with these values, through a fault in this program.' });
    const throwing: SewingFunction = { ...named('EASE'), work: () => { throw new TypeError('x'); } };
    expect(work(throwing, [cm(98), cm(91)])).toHaveProperty('sentence');
  });

  it('refuses figures that overflow', () => {
    const huge: Value = { value: 1e308, dimension: 'length', unit: 'mm' };
    expect(sentence('SEAM.GAIN', huge, cellValue('30'))).toMatch(/too large or too small to work out/);
  });

  it('is found by its name in any case', () => {
    expect(functionNamed('ease.percent')?.name).toBe('EASE.PERCENT');
    expect(functionNamed('EASE.NOTHING')).toBeUndefined();
    expect(readQuantity('1 in').kind).toBe('quantity');
  });
});
