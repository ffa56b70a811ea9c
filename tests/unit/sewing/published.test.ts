/** The published checks run against the functions themselves, without the engine (tests/published has them through it). */
import { describe, expect, it } from 'vitest';
import { amountIn } from '../../../src/quantities/index.ts';
import { functionNamed, work } from '../../../src/sewing/index.ts';
import type { SewingFunction } from '../../../src/sewing/index.ts';
import { inBase, isFault } from '../../../src/quantities/index.ts';
import type { Check } from '../../published/data/check.ts';
import { CIRCLE_SKIRT, HEM, HEM_SWEEP } from '../../published/data/circle-skirt.ts';
import { BIAS, BUTTONS, CLOTH, GATHERS, GODETS, GORES, SHRINKAGE } from '../../published/data/cloth.ts';
import { CONVERT, CONVERT_REFUSED } from '../../published/data/convert.ts';
import { DARTS, EASE, EASE_FROM_MEMORY, EASE_USUAL, ELASTIC, SAFETY, SLEEVE, SLEEVE_FROM_MEMORY, STRETCH } from '../../published/data/fit.ts';
import { LETTER_SIZES, LETTERS } from '../../published/data/letter-sizes.ts';
import { PLEATS } from '../../published/data/pleats.ts';
import { NESTED, SEAM } from '../../published/data/seam.ts';
import { JIS_BUST, JIS_HIP_OF_9, JIS_STATURE, MISSES, SIZE_BLEND, SIZE_CHOICE } from '../../published/data/size-choice.ts';
import { USUAL_TABLES } from '../../published/data/usual-tables.ts';
import { WOMEN } from '../../published/data/survey-women.ts';
import { block, chart } from './charts.ts';
import { cellValue, evaluate } from './formula.ts';

const sheet = (rows: readonly (readonly string[])[]): ReturnType<typeof chart> => chart(...rows.map((row) => row.join('|')));
const tables = Object.fromEntries(Object.entries(USUAL_TABLES).map(([name, rows]) => [name, block(...rows.map((row) => row.join(' | ')))]));
const charts = { ...tables,  misses: sheet(MISSES), nested: sheet(NESTED), jisBust: sheet(JIS_BUST), jisHip: sheet(JIS_HIP_OF_9), jisStature: sheet(JIS_STATURE) };

function run({ formula, cells }: Pick<Check, 'formula' | 'cells'>): ReturnType<typeof evaluate> {
  const names = Object.fromEntries(cells.map((raw, i) => [String.fromCharCode(65 + i), cellValue(raw)]));
  return evaluate(formula.replaceAll('#', ''), { ...charts, ...names });
}

describe.each(Object.entries({ CIRCLE_SKIRT, HEM_SWEEP, HEM, PLEATS, SEAM, SIZE_CHOICE, SIZE_BLEND, EASE, EASE_USUAL, EASE_FROM_MEMORY, STRETCH, ELASTIC, DARTS, SLEEVE, SLEEVE_FROM_MEMORY, SAFETY, CLOTH, SHRINKAGE, GATHERS, GORES, GODETS, BIAS, BUTTONS, CONVERT }))('%s', (_, checks: readonly Check[]) => {
  it.each(checks.map((check) => [check.about, check] as const))('%s', (__, check) => {
    const value = run(check);
    if (typeof check.expected === 'string' || typeof value !== 'object' || !('low' in value || 'dimension' in value)) {
      expect(value).toBe(check.expected);
      return;
    }
    const got = ('low' in value ? [value.low, value.high] : [value]).map((each) => amountIn(each, check.unit));
    const expected = typeof check.expected === 'number' ? [check.expected] : check.expected;
    expect(got).toHaveLength(expected.length);
    for (const [e, end] of expected.entries()) expect(Math.abs((got[e] as number) - end)).toBeLessThanOrEqual(Math.max(check.tolerance, 1e-9));
  });
});

it.each(CONVERT_REFUSED.map((check) => [check.about, check] as const))('CONVERT refuses: %s', (_, check) => {
  expect(() => run(check)).toThrow(check.sentence);
});

it('finds the survey’s women in the letter sizes as a plain search does', () => {
  const letters = sheet(LETTER_SIZES);
  const fn = (name: string): SewingFunction => functionNamed(name) as SewingFunction;
  const placeOf = (measure: string, mm: number): number | null => {
    const girth = inBase(mm, 'mm');
    const at = work(fn('SIZE.AT'), [letters, measure, girth]);
    const between = work(fn('SIZE.BETWEEN'), [letters, measure, girth]);
    if (isFault(at) || isFault(between) || typeof between.value === 'string' || 'low' in between.value) return null;
    expect(LETTERS[Math.floor(between.value.value + 0.5) - 1]).toBe(at.value);
    return LETTERS.indexOf(at.value as (typeof LETTERS)[number]);
  };
  let [one, three, outside, spread] = [0, 0, 0, 0];
  for (const woman of WOMEN) {
    const places = [placeOf('bust', woman.bust), placeOf('waist', woman.waist), placeOf('hip', woman.hip)];
    const inside = places.filter((place) => place !== null);
    if (inside.length < 3) {
      outside += 1;
      continue;
    }
    const different = new Set(inside).size;
    if (different === 1) one += 1;
    if (different === 3) three += 1;
    if (Math.max(...inside) - Math.min(...inside) >= 2) spread += 1;
  }
  expect([WOMEN.length, one, three, outside, spread]).toEqual([1986, 272, 376, 2, 540]);
});
