/** The one size for several measures. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inBase, isFault } from '../../../src/quantities/index.ts';
import type { Quantity } from '../../../src/quantities/index.ts';
import { CellBlock, functionNamed, work } from '../../../src/sewing/index.ts';
import type { SewingFunction, Value } from '../../../src/sewing/index.ts';
import { block, chart, LETTERS, ONE_WAIST } from './charts.ts';

const figures = chart(...ONE_WAIST);
const fit = (...values: Value[]): unknown => {
  const outcome = work(functionNamed('SIZE.FIT') as SewingFunction, values);
  return isFault(outcome) ? outcome.sentence : typeof outcome.value === 'string' ? outcome.value : (outcome.value as Quantity).value;
};
const misfit = (...values: Value[]): unknown => {
  const outcome = work(functionNamed('SIZE.MISFIT') as SewingFunction, values);
  return isFault(outcome) ? outcome.sentence : (outcome.value as Quantity).value;
};

describe('SIZE.FIT', () => {
  // Sizes 8, 10, 12, 14; bust 36 1/4, 37 1/4, 38 3/4, 40 3/8; waist 29 1/2, 30 1/2, 32 1/4, 34; hip 39, 40, 41 1/2, 43.
  it('takes the size that is least off altogether', () => {
    // Bust says 8, waist and hip 12. At 10: 1 + 1 3/4 + 1 1/2 in off; at 12: 2 1/2; at 8: 2 3/4 + 2 1/2.
    const measures = block('bust | 36 1/4 in', 'waist | 32 1/4 in', 'hip | 41 1/2 in');
    expect(fit(figures, measures)).toBe(12);
    expect(misfit(figures, measures, inBase(12, ''))).toBeCloseTo(2.5 * 25.4, 9);
    expect(misfit(figures, measures, '10')).toBeCloseTo(4.25 * 25.4, 9);
  });

  it('lets weights decide, in the order of the measures', () => {
    const measures = block('bust | 36 1/4 in', 'waist | 32 1/4 in', 'hip | 41 1/2 in');
    expect(fit(figures, measures, block('5 | 1 | 1'))).toBe(8);
    expect(fit(figures, measures, block('5', '1', '1'))).toBe(8);
    expect(fit(figures, measures, block('1 | 0 | 0'))).toBe(8);
    expect(misfit(figures, measures, '8', block('5 | 2 | 1'))).toBeCloseTo((2 * 2.75 + 2.5) * 25.4, 9);
  });

  it('takes the larger of two that fit as well', () => {
    expect(fit(figures, block('hip | 39 1/2 in'))).toBe(10);
  });

  it('reads measures in rows or columns, the name first or the length', () => {
    for (const measures of [block('bust | 40 in', 'hip | 43 in'), block('40 in | bust', '43 in | hip'), block('bust | hip', '40 in | 43 in'), block('40 in | 43 in', 'bust | hip'), block('', 'bust | 40 in', '', 'hip | 43 in')]) {
      expect(fit(figures, measures)).toBe(14);
    }
  });

  it('counts nothing inside a range', () => {
    const letters = chart(...LETTERS);
    expect(fit(letters, block('bust | 91 cm', 'waist | 80 cm'))).toBe('M');
    expect(misfit(letters, block('bust | 91 cm', 'waist | 80 cm'), 'M')).toBe(0);
    expect(misfit(letters, block('bust | 99 cm', 'waist | 72 cm'), 'M')).toBeCloseTo(30, 9);
  });

  it.each<[string, Value, Value | undefined, string]>([
    ['a name the chart does not have', block('bust | 90 cm', 'knee | 40 cm'), undefined, 'The size chart has no measure called “knee”; it has bust girth, waist girth and hip girth.'],
    ['no names', block('90 cm | 80 cm'), undefined, 'Give a block in which each measure has its name as in the chart and its length beside it, such as bust and 92 cm.'],
    ['a bare figure', block('bust | 90'), undefined, 'Give a block in which each measure has its name as in the chart and its length beside it, such as bust and 92 cm.'],
    ['a length of nothing', block('bust | 0 cm'), undefined, 'The measure bust must be more than 0, and is 0 cm.'],
    ['too few weights', block('bust | 90 cm', 'hip | 98 cm'), block('1'), 'There are 2 measures and 1 weights: give a plain number for each measure, in the same order.'],
    ['a weight below 0', block('bust | 90 cm', 'hip | 98 cm'), block('1 | -1'), 'A weight is a plain number of at least 0: the more it matters that a measure fits, the larger.'],
    ['no weight at all', block('bust | 90 cm', 'hip | 98 cm'), block('0 | 0'), 'At least one measure must have a weight above 0.'],
  ])('says what is wrong with %s', (_, measures, weights, expected) => {
    expect(fit(figures, measures, ...(weights === undefined ? [] : [weights]))).toBe(expected);
  });

  it('has no size that fits better, whatever the measures', () => {
    const length = fc.double({ min: 700, max: 1200, noNaN: true });
    fc.assert(fc.property(length, length, length, fc.tuple(fc.nat(4), fc.nat(4), fc.integer({ min: 1, max: 4 })), (bust, waist, hip, weights) => {
      const measures = new CellBlock([['bust', inBase(bust, 'cm')], ['waist', inBase(waist, 'cm')], ['hip', inBase(hip, 'cm')]]);
      const weighted = new CellBlock([weights.map((weight) => inBase(weight, ''))]);
      const best = fit(figures, measures, weighted) as number;
      const of = (size: number): number => misfit(figures, measures, inBase(size, ''), weighted) as number;
      for (const size of [8, 10, 12, 14]) expect(of(best)).toBeLessThanOrEqual(of(size) + 1e-9);
    }), { numRuns: 300, seed: 31 });
  });
});
