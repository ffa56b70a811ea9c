/** Which way results go when one figure grows, as the trade has it. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inBase, isFault } from '../../../src/quantities/index.ts';
import type { Quantity } from '../../../src/quantities/index.ts';
import { functionNamed, work } from '../../../src/sewing/index.ts';
import type { SewingFunction, Value } from '../../../src/sewing/index.ts';

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
    ['BUST.SPREAD', 'fuller bust, more spread', 0, 'up', [length(800, 1200), length(800, 1200)]],
    ['BUST.BASIS', 'fuller bust, no smaller size', 0, 'up', [length(800, 1200), length(750, 1000), length(0, 90)]],
    ['BUST.BASIS', 'larger high bust, no smaller size', 1, 'up', [length(800, 1200), length(750, 1000), length(0, 90)]],
    ['OPENING.ROOM', 'stretchier, more room', 2, 'up', [length(500, 1000), length(700, 1200), percent(0, 1)]],
    ['OPENING.LENGTH', 'wider closed, shorter opening', 0, 'down', [length(500, 1000), length(700, 1200), percent(0, 0.2)]],
    ['SEAM.SHARE', 'larger share, larger shift', 1, 'up', [length(1, 100), percent(0, 1)]],
    ['SEAM.NEEDED', 'more seams, less allowance each', 1, 'down', [length(1, 100), count(1, 9)]],
    ['SEAM.TAKEN', 'taken in further, more stands', 1, 'up', [length(5, 25), length(0, 30)]],
    ['PLEAT.AT', 'a later pleat, further on', 3, 'up', [length(20, 90), length(5, 20), kind, count(1, 30)]],
    ['PLEAT.ACROSS', 'deeper pleats, fewer across', 2, 'down', [length(900, 1500), length(20, 60), length(5, 60), kind]],
    ['TIER.TOTAL', 'more tiers, more cloth', 2, 'up', [length(500, 1500), number(1, 2.5), count(1, 8)]],
    ['CIRCLE.LONGEST', 'wider cloth, no shorter', 2, 'up', [length(50, 150), number(0.1, 1), length(500, 2000)]],
    ['CIRCLE.LONGEST', 'fuller, no longer', 1, 'down', [length(50, 150), number(0.1, 1), length(500, 2000)]],
    ['GORE.CLOTH', 'wider cloth, no more length', 4, 'down', [count(1, 12), length(400, 900), length(80, 200), length(200, 450), length(500, 1500), fc.constantFrom<Value>('any', 'one')]],
    ['HEM.CURVE', 'deeper hem, more to ease', 0, 'up', [length(0, 60), length(400, 900)]],
    ['HEM.CURVE', 'wider round, less to ease', 1, 'down', [length(0, 60), length(400, 900)]],
    ['INTERFACING.PIECES', 'longer band, no fewer pieces', 0, 'up', [length(300, 3000), length(400, 1500), length(0, 30)]],
    ['LENGTHEN.CLOTH', 'more rows, more cloth', 1, 'up', [length(1, 200), count(1, 8), length(1, 300)]],
    ['SHOULDER.SLOPE', 'more drop, steeper', 1, 'up', [length(100, 160), length(0, 100)]],
    ['CAP.RISE', 'wider sleeve, flatter cap', 1, 'down', [length(200, 260), length(250, 399)]],
    ['CLOTH.PANELS', 'wider cloth, no more length', 3, 'down', [count(1, 12), length(400, 900), length(200, 500), length(500, 1500)]],
    ['CLOTH.SHRUNK', 'more shrinkage, less left', 1, 'down', [length(500, 5000), percent(0, 0.5)]],
    ['BIAS.CONTINUOUS', 'larger square, more strip', 0, 'up', [length(200, 1500), length(10, 60), length(0, 10)]],
    ['BIAS.SIDE', 'longer strip, larger square', 0, 'up', [length(500, 9000), length(10, 60), length(0, 10)]],
    ['KNIT.BAND', 'larger share, longer band', 1, 'up', [length(400, 700), percent(0.5, 1)]],
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
