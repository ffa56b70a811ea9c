import { describe, expect, it } from 'vitest';
import { inBase, isFault } from '../../../src/quantities/index.ts';
import { readChart } from '../../../src/sewing/index.ts';
import { looksLikeSize, measureLabel, sizeNumber, stepsBelowZero } from '../../../src/sewing/chart-labels.ts';
import { LETTERS, MISSES, chart, grid } from './charts.ts';

const fault = (...rows: string[]): string => {
  const read = readChart(grid(...rows));
  if (!isFault(read)) throw new Error('was read');
  return read.sentence;
};

describe('labels', () => {
  it.each(['8', '10.5', '00', 'XS', 'xxl', '3XL', '2x', 'M', '10/12', '36-38', '160/84A', '9AR', '36R', 'Size 10', 'UK 12', 'small', 'extra large', 'XS/S', '6m', 'S – M'])('%s looks like a size', (text) => {
    expect(looksLikeSize(text)).toBe(true);
  });

  it.each(['bust', 'Bust (cm)', 'waist girth', 'hip_A_cm', 'small of the back', 'how obtained', 'size', 'UK'])('%s does not', (text) => {
    expect(looksLikeSize(text)).toBe(false);
  });

  it.each([
    ['Bust (cm)', 'bust', 'cm'], ['bust_girth', 'bust girth', null], ['HIP in inches', 'hip', 'in'], ['waist_from_cm', 'waist from', 'cm'],
    ['Waist to hip', 'waist to hip', null], ['under-bust [in]', 'under bust', 'in'], ['cm', 'cm', null], ['  Back   width: ', 'back width', null],
  ])('%s is the measure %s', (text, words, unit) => {
    expect(measureLabel(text)).toEqual({ words, unit });
  });

  it('reads numbers and zeros', () => {
    expect(['10', '8.5', '8,5', '00', '10/12', 'M'].map(sizeNumber)).toEqual([10, 8.5, 8.5, null, null, null]);
    expect(['0', '00', '000', '100'].map(stepsBelowZero)).toEqual([null, 1, 2, null]);
  });
});

describe('which side holds the sizes', () => {
  it('sees sizes across and sizes down', () => {
    expect(chart(...MISSES).sizes).toEqual(['00', '0', '2', '4', '6', '8', '10', '12']);
    expect(chart(...LETTERS).sizes).toEqual(['S', 'M', 'L']);
    expect(chart('size | bust | hip', '8 | 91 cm | 97 cm', '10 | 95 cm | 101 cm').measures).toEqual(['bust', 'hip']);
  });

  it('lets the measure asked for decide where the labels do not', () => {
    const either = chart(' | Anna | Berta', 'bust | 91 cm | 95 cm', 'hip | 97 cm | 101 cm');
    const bust = either.measure('bust');
    if (isFault(bust)) throw new Error(bust.sentence);
    expect(bust.sizes.labels.map((label) => label.text)).toEqual(['Anna', 'Berta']);
    expect(either.measure('berta')).toMatchObject({ name: 'berta' });
  });

  it('puts numbered sizes in order and leaves others as they stand', () => {
    expect(chart(' | 12 | 10 | 8', 'bust | 99 cm | 95 cm | 91 cm').sizes).toEqual(['8', '10', '12']);
    expect(chart(' | L | S | M', 'bust | 99 cm | 91 cm | 95 cm').sizes).toEqual(['L', 'S', 'M']);
  });

  it('does not count empty rows and columns around the chart', () => {
    const sheet = chart(' |  |  |  | ', ' | size | bust | hip', ' |  |  | ', ' | S | 86 cm | 94 cm', ' | M | 94 cm | 102 cm');
    expect([sheet.sizes, sheet.measures]).toEqual([['S', 'M'], ['bust', 'hip']]);
  });

  it('leaves out rows without a label, and columns that hold no lengths', () => {
    const sheet = chart('code | bust | how obtained | ', ' |  |  | ', '9AR | 83 cm | read | ', '11AR | 86 cm | read | ');
    expect(sheet.sizes).toEqual(['9AR', '11AR']);
    expect(sheet.measures).toEqual(['bust']);
  });
});

describe('which measure is meant', () => {
  const misses = chart(...MISSES);
  it.each([['bust girth', 'bust girth'], ['BUST', 'bust girth'], ['bust_girth_in', 'bust girth'], ['straight waist', 'waist girth straight'], ['waist girth curvy', 'waist girth curvy']])('%s', (asked, name) => {
    expect(misses.measure(asked)).toMatchObject({ name });
  });

  it('asks back', () => {
    expect(misses.measure('waist')).toEqual({ sentence: '“waist” fits waist girth curvy and waist girth straight in the size chart: say which.' });
    expect(misses.measure('hip')).toEqual({ sentence: 'The size chart has no measure called “hip”; it has bust girth, waist girth curvy and waist girth straight.' });
    expect(misses.measure('bus')).toHaveProperty('sentence');
  });

  it('goes by the exact name first', () => {
    expect(chart(' | 8 | 10', 'bust | 90 cm | 94 cm', 'bust line | 91 cm | 95 cm').measure('bust')).toMatchObject({ name: 'bust' });
  });

  it('joins the ends of a range', () => {
    expect(chart(...LETTERS).measures).toEqual(['bust', 'waist', 'hip']);
    expect(chart(...LETTERS).measure('bust')).toMatchObject({ ranged: true, unit: 'cm' });
    const both = chart('size | bust_cm | bust_from_cm | bust_to_cm', '104 | 104 cm | 102 cm | 107 cm', '110 | 110 cm | 107 cm | 113 cm').measure('bust');
    if (isFault(both)) throw new Error(both.sentence);
    expect([both.ranged, both.figure(0), both.rangeAt(0)?.low]).toEqual([true, 1040, 1020]);
  });
});

describe('charts that cannot be used', () => {
  it.each([
    ['one cell', ['bust'], /needs sizes along one side/],
    ['nothing', [], /needs sizes along one side/],
    ['no lengths', [' | S | M', 'bust | a | b'], 'The size chart holds no lengths: its figures need a unit, such as 92 cm or 36 1/4 in.'],
    ['bare numbers', [' | 8 | 10', 'bust | 36.25 | 37.25'], 'In the size chart, bust of size 8 is 36.25 without a unit: write 36.25 cm or 36.25 in, and so for the others.'],
    ['bare numbers under a unit', [' | 8 | 10', 'bust (in) | 36.25 | 37.25'], 'In the size chart, bust of size 8 is 36.25 without a unit: write 36.25 in, and so for the others.'],
    ['two of one size', [' | 8 | 8', 'bust | 91 cm | 95 cm'], 'Two sizes of the size chart are called 8: give each its own label.'],
    ['two zeros', [' | 0 | 00', 'bust | 91 cm | 95 cm'], "Two sizes of the size chart are called 0: give each its own label, and type 00 as '00 so that it stays as it is."],
    ['a size without a label', [' | 8 | ', 'bust | 91 cm | 95 cm'], 'The 2nd size of the size chart has figures but no label: give it one.'],
  ])('%s', (_, rows, expected) => {
    if (typeof expected === 'string') expect(fault(...rows)).toBe(expected);
    else expect(fault(...rows)).toMatch(expected);
  });

  it.each([
    ['two measures of one name', [' | 8 | 10', 'bust | 91 cm | 95 cm', 'Bust (cm) | 92 cm | 96 cm', 'hip | 1 m | 1.1 m'], 'Two measures of the size chart are called bust: rename one of them.'],
    ['one bare number', [' | 8 | 10', 'bust | 91 cm | 95', 'hip | 97 cm | 101 cm'], /bust of size 10 is 95 without a unit: write 95 cm or 95 in/],
    ['a range that runs down', ['size | bust from | bust to | hip', 'S | 90 cm | 82 cm | 1 m', 'M | 90 cm | 98 cm | 1.1 m'], 'In the size chart, bust of size S runs from 90 cm to 82 cm: the first figure must be the smaller.'],
    ['a figure among ranges', ['size | bust | hip', 'S | 82–90 cm | 1 m', 'M | 94 cm | 1.1 m'], 'In the size chart, bust of size M is a single figure while other sizes have a range: give it a range too.'],
    ['a figure outside its range', ['size | bust | bust from | bust to | hip', 'S | 91 cm | 82 cm | 90 cm | 1 m', 'M | 94 cm | 90 cm | 98 cm | 1.1 m'], /bust of size S is 91 cm, which is outside its range from 82 cm to 90 cm/],
    ['ranges inside one another', ['size | bust | hip', 'S | 80–120 cm | 1 m', 'M | 85–90 cm | 1.1 m', 'L | 90–98 cm | 1.2 m'], /overlaps its neighbours by more than half/],
  ])('%s', (_, rows, expected) => {
    const bust = chart(...rows).measure('bust');
    if (!isFault(bust)) throw new Error('was found');
    if (typeof expected === 'string') expect(bust.sentence).toBe(expected);
    else expect(bust.sentence).toMatch(expected);
  });

  it('still gives the other measures', () => {
    expect(chart(' | 8 | 10', 'bust | 91 cm | 95', 'hip | 97 cm | 101 cm').measure('hip')).toMatchObject({ name: 'hip' });
  });

  it('takes a grid whose rows differ in length', () => {
    const read = readChart([[null, 'S', 'M'], ['bust', inBase(910, 'cm')]]);
    expect(isFault(read)).toBe(false);
  });
});
