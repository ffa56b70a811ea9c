/** Where a usual rule is only an approximation, the working has the exact figure and the difference beside it. */
import { describe, expect, it } from 'vitest';
import type { Figure } from '../../../src/sewing/index.ts';
import { outcomeOf } from './formula.ts';

/** Each step's words and its figure in the base unit. */
const steps = (formula: string): readonly (readonly [string, number])[] => outcomeOf(formula).steps.map(({ words, value }) => [words, Math.round((value as Figure).value * 1e6) / 1e6]);
const near = (value: number): number => Math.round(value * 1e6) / 1e6;
const IN = 25.4;

describe('approximations', () => {
  it('BIAS.LENGTH', () => {
    const exact = 7 * 9.75 * Math.SQRT2 * IN;
    expect(steps('=BIAS.LENGTH(10 1/2 in, 1 in, 1/4 in)')).toEqual([
      ['what the continuous method gives exactly, whole rounds only', near(exact)],
      ['area of the square', near(10.5 ** 2 * IN ** 2)],
      ['the area promises more than that by', near(110.25 * IN - exact)],
      ['the area as a strip of this width', near(110.25 * IN)],
    ]);
  });

  it('BIAS.SQUARE', () => {
    // 20 rounds of 1 in need 20 √2 + 1/4 in; 400 in in 20 rounds need 10 √2 + 3/4 in: fewer rounds balance better.
    const [exact, , short, side] = steps('=BIAS.SQUARE(400 in, 1 in, 1/4 in)');
    expect(side?.[1]).toBe(near(20 * IN));
    expect(short).toEqual(['the area rule falls short of that by', near((exact?.[1] ?? 0) - 20 * IN)]);
    expect(exact?.[1]).toBe(near((400 / (14 * Math.SQRT2) + 0.75) * IN));
  });

  it('BIAS.CONTINUOUS and BIAS.STRIPS', () => {
    expect(steps('=BIAS.CONTINUOUS(10 1/2 in, 1 in, 1/4 in)')).toEqual([
      ['between the bias edges once the two halves are joined', near((10.25 / Math.SQRT2) * IN)],
      ['whole strips between them', 7],
      ['length of each round, after the join that makes the tube', near(9.75 * Math.SQRT2 * IN)],
      ['less than the area rule promises by', near((110.25 - 7 * 9.75 * Math.SQRT2) * IN)],
      ['all the rounds', near(7 * 9.75 * Math.SQRT2 * IN)],
    ]);
    const cut = 2 * (7 * Math.SQRT2 * 10.5 - 49);
    expect(steps('=BIAS.STRIPS(10 1/2 in, 1 in, 1/4 in)')).toEqual([
      ['whole strips in each half of the square', 7],
      ['all of them, along their middles', near(cut * IN)],
      ['lost in the joins', near(13 * 2 * Math.SQRT2 * 0.25 * IN)],
      ['less than the area rule promises by', near((110.25 - cut + 6.5 * Math.SQRT2) * IN)],
      ['what is left', near((cut - 6.5 * Math.SQRT2) * IN)],
    ]);
  });

  it('HEM.FULLNESS and HEM.EASED', () => {
    expect(steps('=HEM.FULLNESS(5 cm, 1)').map(([, value]) => value)).toEqual([near(200 * Math.PI), near(100 * Math.PI)]);
    expect(steps('=HEM.EASED(5 cm, 1)').map(([, value]) => value)).toEqual([near(100 * Math.PI), near(200 * Math.PI)]);
  });

  it('CLOTH.OTHER, where the pieces’ width is known', () => {
    expect(steps('=CLOTH.OTHER(2 m, 140 cm, 110 cm, 60 cm)')).toEqual([
      ['if every piece were so wide, whole pieces side by side would need', 4000],
      ['which is more than the area says by', near(4000 - 2000 * 140 / 110)],
      ['the same area at the other width', near(2000 * 140 / 110)],
    ]);
    expect(steps('=CLOTH.OTHER(2 m, 140 cm, 110 cm)')).toHaveLength(1);
  });
});
