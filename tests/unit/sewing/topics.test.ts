/** Figures, pins and refusals, topic by topic. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inBase, isFault } from '../../../src/quantities/index.ts';
import type { Quantity } from '../../../src/quantities/index.ts';
import { functionNamed, work } from '../../../src/sewing/index.ts';
import type { Outcome, SewingFunction, Value } from '../../../src/sewing/index.ts';
import { evaluate, Told } from './formula.ts';

function outcome(formula: string): Outcome {
  const [, name = '', inside = ''] = /^=([A-Z.]+)\((.*)\)$/.exec(formula) ?? [];
  const values = inside === '' ? [] : inside.split(/, (?![^(]*\))/).map((part) => evaluate(`=${part}`));
  return work(functionNamed(name) as SewingFunction, values);
}
const pins = (formula: string): string[] => {
  const got = outcome(formula);
  if (isFault(got)) throw new Error(got.sentence);
  return got.cautions.map((caution) => caution.sentence + (caution.mend === undefined ? '' : ` [${caution.mend.value}]`));
};
const told = (formula: string): string => {
  try {
    evaluate(formula);
  } catch (error) {
    if (error instanceof Told) return error.message;
    throw error;
  }
  throw new Error(`${formula} has a result`);
};
const base = (formula: string): number => (evaluate(formula) as Quantity).value;

describe('figures', () => {
  it.each<[string, number]>([
    ['=EASE(39 in, 36 1/4 in)', 2.75 * 25.4], ['=EASE(88 cm, 92 cm)', -40], ['=EASE.PERCENT(88 cm, 92 cm)', -4 / 92],
    ['=BLEND.WIDTH(22 cm, 26 cm, 40 cm, 0 cm)', 220], ['=BLEND.WIDTH(22 cm, 26.3 cm, 40 cm, 40 cm)', 263], ['=BLEND.WIDTH(22 cm, 26 cm, 40 cm, 20 cm, "smooth")', 240],
    ['=BLEND.WIDTH(22 cm, 26 cm, 40 cm, 10 cm, "smooth")', 220 + 40 * (3 / 16 - 2 / 64)], ['=BLEND.WIDTH(22 cm, 26.3 cm, 40 cm, 40 cm, "smooth")', 263],
    ['=SEAM.SHIFT(-2 cm, 2)', -5], ['=SEAM.GAIN(3/8 in, 1)', 0.75 * 25.4], ['=SEAM.LEFT(1/2 in, -3/8 in)', 0.875 * 25.4], ['=SEAM.LEFT(1.5 cm, 1.5 cm)', 0], ['=SEAM.ROOM(5 mm, 2)', 0],
    ['=PLEAT.DEPTH(300 cm, 100 cm, 20, "box")', 25], ['=PLEAT.DEPTH(60 cm, 60 cm, 4)', 0], ['=PLEAT.DEEPEN(100 cm, 76 cm, 20, "inverted")', 3], ['=PLEAT.DEEPEN(70 cm, 76 cm, 3)', -10],
    ['=PLEAT.COUNT(10 cm, 4 cm)', 3], ['=PLEAT.COUNT(1 cm, 4 cm)', 1], ['=PLEAT.UNDERLAY(5 cm, "box")', 200], ['=PLEAT.CLOTH(50 cm, 20, 2.5 cm, "knife", 1 cm)', 1520],
    ['=CIRCLE.RADIUS(72 cm, 2)', 720 / 4 / Math.PI], ['=CIRCLE.PART(72 cm, CIRCLE.RADIUS(72 cm, 3/4))', 0.75],
    ['=BUTTON.AT(2 cm, 62.3 cm, 11, 1)', 20], ['=BUTTON.AT(2 cm, 62.3 cm, 11, 11)', 623], ['=BUTTON.GAP(0 cm, 66 cm, 13)', 55], ['=BUTTON.COUNT(0 cm, 25 cm, 10 cm)', 4],
    ['=BUTTON.EVEN(5 cm, 0 mm, 2 cm, 20 cm, 62 cm)', 60], ['=BUTTON.EVEN(4 cm, 0 mm, 2 cm, 20 cm, 62 cm)', 30], ['=BUTTON.EVEN(7 cm, 2 cm, 62 cm, 2 cm, 20 cm)', 600 / 9],
    ['=CLOTH.BUY(2.2 m, 0 %, 10 cm)', 2200], ['=CLOTH.BUY(2.3 m, 0 %, 0.1 m)', 2300], ['=CLOTH.BUY(2.31 yd, 0 %, 1/8 yd)', 2.375 * 914.4], ['=CLOTH.BUY(97 cm, 3 %, 10 cm)', 1000],
    ['=CLOTH.WIDTHS(107 cm, 110 cm, 1.5 cm)', 1], ['=CLOTH.WIDTHS(107.1 cm, 110 cm, 1.5 cm)', 2], ['=CLOTH.WIDTHS(0.3 m, 0.1 m)', 3], ['=CLOTH.REPEAT(72 cm, 24 cm)', 720], ['=CLOTH.REPEAT(72.01 cm, 24 cm)', 960],
    ['=STEP.NEAR(-2 1/16 in, 1/8 in)', -50.8], ['=STEP.NEAR(2.5 mm, 5 mm)', 5], ['=STEP.UP(0.3 m, 0.1 m)', 300], ['=STEP.DOWN(0.3 m, 0.1 m)', 300], ['=STEP.DOWN(-1 mm, 5 mm)', -5],
    ['=AMOUNT(2.2 in, "in")', 2.2], ['=LENGTH(2.2, "in")', 2.2 * 25.4], ['=AMOUNT(1 yd, "in")', 36], ['=DART.INTAKE(72 cm, 72 cm)', 0], ['=TIER.CLOTH(100 cm, 1.5, 1)', 1500],
  ])('%s', (formula, expected) => {
    expect(base(formula)).toBeCloseTo(expected, 9);
  });
});

describe('pins', () => {
  it.each<[string, string[]]>([
    ['=EASE(98 cm, 92 cm)', []],
    ['=EASE(88 cm, 92 cm)', ['The garment is smaller than the body here: right only for cloth that stretches. [920]']],
    ['=EASE.PERCENT(88 cm, 92 cm)', ['The garment is smaller than the body here: right only for cloth that stretches. [920]']],
    ['=SEAM.LEFT(1.5 cm, 0.9 cm)', []],
    ['=SEAM.LEFT(1.5 cm, 1 cm)', ['Too little seam allowance is left to hold the seam. [6]']],
    ['=SEAM.LEFT(1.5 cm, 1 cm, 5 mm)', []],
    ['=SEAM.LEFT(1/2 in, -3/8 in)', []],
    ['=SEAM.ROOM(5 mm, 2)', ['The seam allowance is less than what must be left, so nothing can be let out. [6]']],
    ['=PLEAT.CLOTH(100 cm, 20, 5 cm, "knife")', []],
    ['=PLEAT.CLOTH(100 cm, 20, 5.1 cm, "knife")', ['These pleats overlap on the wrong side: a fold is deeper than the pleats are apart. [50]']],
    ['=PLEAT.CLOTH(100 cm, 20, 2.5 cm, "box")', []],
    ['=PLEAT.CLOTH(100 cm, 20, 2.6 cm, "inverted")', ['These pleats overlap on the wrong side: a fold is deeper than half of the space that a pleat has. [25]']],
    ['=PLEAT.DEPTH(300 cm, 100 cm, 20)', []],
    ['=PLEAT.DEPTH(301 cm, 100 cm, 20)', ['These pleats overlap on the wrong side: a fold is deeper than the pleats are apart. [50]']],
    ['=PLEAT.DEEPEN(70 cm, 76 cm, 3)', ['The waist is wider than the hip, so the folds get shallower towards the waist.']],
    ['=PLEAT.COUNT(50 cm, 2.5 cm)', []],
    ['=PLEAT.COUNT(90 cm, 4 cm)', [`The wanted spacing does not go evenly into the width: this many pleats have a slightly different one. [${900 / 23}]`]],
    ['=CIRCLE.RADIUS(72 cm, 1)', []],
    ['=CIRCLE.RADIUS(72 cm, 3/2)', ['More than a whole circle cannot be cut in one: it needs joins.']],
    ['=CIRCLE.PART(72 cm, 5 cm)', ['More than a whole circle cannot be cut in one: it needs joins.']],
    ['=BUTTON.COUNT(2 cm, 62 cm, 6 cm)', []],
    ['=BUTTON.COUNT(0 cm, 26 cm, 10 cm)', [`The wanted gap does not go evenly into the distance: this many buttons have a slightly different one. [${260 / 3}]`]],
    ['=BUTTON.EVEN(11 cm, 0 mm, 2 cm, 20 cm, 62 cm)', ['The even gap is far from the one wanted: allow a wider miss, or move a place. [110]']],
    ['=CLOTH.BUY(2.5 m, 0 %)', []],
    ['=CAP.EASE(41 cm, 42 cm)', ['The cap is shorter than the armhole: the armhole would have to be eased into the sleeve. [420]']],
    ['=CAP.SHARE(45 cm, 42 cm)', []],
  ])('%s', (formula, expected) => {
    expect(pins(formula)).toEqual(expected);
  });
});

describe('refusals', () => {
  it.each<[string, string | RegExp]>([
    ['=BLEND.WIDTH(22 cm, 26 cm, 40 cm, 41 cm)', 'The point at 41 cm lies beyond the end of the blend at 40 cm: give a point on it.'],
    ['=BLEND.WIDTH(22 cm, 26 cm, 0 cm, 0 cm)', 'BLEND.WIDTH needs distance to be more than 0, and got 0 cm.'],
    ['=SEAM.LEFT(1.5 cm, 2 cm)', 'The seam cannot be let out by 2 cm: its allowance is only 1.5 cm, so there would be no cloth to sew.'],
    ['=PLEAT.DEPTH(60 cm, 70 cm, 5)', 'A finished width of 70 cm needs more than the cloth’s 60 cm: nothing is left to fold.'],
    ['=PLEAT.DEPTH(60 cm, 50 cm, 0)', /whole number of at least 1 for pleats/],
    ['=CIRCLE.RADIUS(10 cm, 1, 2 cm)', /The seam allowance of 2 cm reaches the centre of the circle, whose waist seam has a radius of 1.6 cm/],
    ['=CIRCLE.RADIUS(-72 cm, 1)', 'CIRCLE.RADIUS needs waist to be more than 0, and got −72 cm.'],
    ['=CIRCLE.CLOTH(20 cm, 62 cm, 1, 20 cm)', /too narrow for this skirt even in 16 pieces/],
    ['=BUTTON.GAP(62 cm, 2 cm, 11)', 'The last button, at 2 cm, must come after the first, at 62 cm.'],
    ['=BUTTON.GAP(2 cm, 62 cm, 1)', 'One button has no gap: give at least 2.'],
    ['=BUTTON.AT(2 cm, 62 cm, 11, 12)', 'There is no button 12 among 11: n goes from 1 to 11.'],
    ['=BUTTON.EVEN(6 cm, 0 mm, 2 cm)', 'Give at least two different places that must have a button.'],
    ['=BUTTON.EVEN(6 cm, 0 mm)', 'BUTTON.EVEN needs place too: BUTTON.EVEN(about, within, place, …).'],
    ['=BUTTON.EVEN(20 cm, 0 mm, 0 cm, 20.1 cm, 40 cm)', /No even gap of about 20 cm or half of it/],
    ['=BUTTON.EVEN(0.01 mm, 0 mm, 0 cm, 20 cm)', /more than a thousand/],
    ['=CLOTH.BUY(2.5 m, -3 %)', /needs the shrinkage without a minus sign/],
    ['=CLOTH.WIDTHS(144 cm, 3 cm, 1.5 cm)', 'Two seam allowances of 1.5 cm leave nothing of cloth 3 cm wide.'],
    ['=GATHER.CLOTH(70 cm, 0.5)', 'GATHER.CLOTH needs ratio to be at least 1, and got 0.5.'],
    ['=GATHER.RATIO(60 cm, 70 cm)', /nothing is left to gather/],
    ['=DART.INTAKE(70 cm, 72 cm)', /a dart cannot add cloth/],
    ['=DART.MOVED(20 cm, 8 cm, 16 cm)', /its legs would not meet/],
    ['=GODET.ANGLE(200 cm, 30 cm)', /more than a whole circle/],
    ['=BIAS.LENGTH(2 in, 3 in)', /does not come out of a square/],
    ['=STRETCH.PERCENT(15 cm, 10 cm)', /shorter than at rest/],
    ['=STEP.NEAR(5 cm, 0 cm)', 'STEP.NEAR needs step to be more than 0, and got 0 cm.'],
  ])('%s', (formula, expected) => {
    if (typeof expected === 'string') expect(told(formula)).toBe(expected);
    else expect(told(formula)).toMatch(expected);
  });
});

/** Which way a result goes when one argument grows and the others stay. */
const length = (min: number, max: number): fc.Arbitrary<Value> => fc.double({ min, max, noNaN: true }).map((mm) => inBase(mm, 'cm'));
const count = (min: number, max: number): fc.Arbitrary<Value> => fc.integer({ min, max }).map((n) => inBase(n, ''));
const number = (min: number, max: number): fc.Arbitrary<Value> => fc.double({ min, max, noNaN: true }).map((n) => inBase(n, ''));
const percent = (min: number, max: number): fc.Arbitrary<Value> => fc.double({ min, max, noNaN: true }).map((n) => inBase(n, '%'));
const kind = fc.constantFrom<Value>('knife', 'box', 'inverted');

describe('what grows with what', () => {
  it.each<[string, string, number, 'up' | 'down', fc.Arbitrary<Value>[]]>([
    ['EASE', 'more garment, more ease', 0, 'up', [length(500, 1500), length(500, 1500)]],
    ['EASE', 'more body, less ease', 1, 'down', [length(500, 1500), length(500, 1500)]],
    ['BLEND.WIDTH', 'further along, wider', 3, 'up', [length(100, 200), length(200, 300), length(400, 500), length(0, 400), fc.constantFrom<Value>('straight', 'smooth')]],
    ['SEAM.SHIFT', 'more seams, less each', 1, 'down', [length(1, 100), count(1, 9)]],
    ['SEAM.LEFT', 'let out more, less is left', 1, 'down', [length(20, 30), length(-20, 20)]],
    ['PLEAT.DEPTH', 'more pleats from the same cloth, shallower', 2, 'down', [length(1000, 3000), length(500, 1000), count(1, 40), kind]],
    ['PLEAT.DEPTH', 'more cloth, deeper', 0, 'up', [length(1000, 3000), length(500, 1000), count(1, 40), kind]],
    ['PLEAT.DEEPEN', 'smaller waist, deeper', 1, 'down', [length(900, 1200), length(500, 1000), count(1, 40), kind]],
    ['PLEAT.SPACING', 'more pleats, closer', 1, 'down', [length(500, 1000), count(1, 40)]],
    ['PLEAT.COUNT', 'wider apart, fewer', 1, 'down', [length(500, 1000), length(20, 200)]],
    ['PLEAT.CLOTH', 'deeper, more cloth', 2, 'up', [length(500, 1000), count(1, 40), length(0, 60), kind]],
    ['CIRCLE.RADIUS', 'larger waist, larger radius', 0, 'up', [length(500, 1200), number(0.1, 2)]],
    ['CIRCLE.RADIUS', 'fuller, smaller radius', 1, 'down', [length(500, 1200), number(0.1, 2)]],
    ['CIRCLE.RADIUS', 'more allowance, smaller radius', 2, 'down', [length(700, 1200), number(0.1, 1), length(0, 20)]],
    ['CIRCLE.SWEEP', 'longer, wider hem', 1, 'up', [length(50, 300), length(100, 1000), number(0.1, 2)]],
    ['CIRCLE.PIECES', 'wider cloth, no more pieces', 3, 'down', [length(100, 300), length(300, 700), number(0.2, 1), length(500, 2000)]],
    ['BUTTON.GAP', 'more buttons, closer', 2, 'down', [length(0, 50), length(200, 900), count(2, 20)]],
    ['BUTTON.COUNT', 'wider gap, fewer', 2, 'down', [length(0, 50), length(200, 900), length(20, 150)]],
    ['BUTTON.AT', 'a later button, further on', 3, 'up', [length(0, 50), length(200, 900), fc.constant<Value>(inBase(12, '')), count(1, 12)]],
    ['CLOTH.BUY', 'more shrinkage, more to buy', 1, 'up', [length(500, 5000), percent(0, 0.5), length(1, 200)]],
    ['CLOTH.WIDTHS', 'wider cloth, no more widths', 1, 'down', [length(500, 5000), length(500, 1600), length(0, 30)]],
    ['GATHER.CLOTH', 'fuller, more cloth', 1, 'up', [length(100, 900), number(1, 5)]],
    ['DART.INTAKE', 'more darts, less each', 2, 'down', [length(900, 1100), length(600, 900), count(1, 12)]],
    ['DART.ANGLE', 'longer, sharper', 1, 'down', [length(1, 60), length(50, 300)]],
    ['STRETCH.GARMENT', 'more stretch, smaller garment', 1, 'down', [length(500, 1200), percent(0, 1)]],
    ['STEP.NEAR', 'longer, no less', 0, 'up', [length(0, 900), length(1, 20)]],
  ])('%s: %s', (name, _, place, way, each) => {
    const fn = functionNamed(name) as SewingFunction;
    const other = each[place] as fc.Arbitrary<Value>;
    fc.assert(
      fc.property(fc.tuple(...each), other, (values, changed) => {
        const amount = (value: Value | undefined): number => (value as Quantity).value;
        const result = (given: readonly Value[]): number => {
          const got = work(fn, given);
          if (isFault(got)) throw new Error(got.sentence);
          return (got.value as Quantity).value;
        };
        const [low, high] = amount(values[place]) < amount(changed) ? [values[place], changed] : [changed, values[place]];
        // CLOTH.BUY and STEP.NEAR step up; everything else may only miss by the last digits of its sum.
        const rise = result(values.with(place, high as Value)) - result(values.with(place, low as Value));
        expect(way === 'up' ? rise : -rise).toBeGreaterThanOrEqual(-1e-9);
      }),
      { numRuns: 200, seed: 6 },
    );
  });
});
