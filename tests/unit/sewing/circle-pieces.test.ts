import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sectorBox } from '../../../src/sewing/circle-pieces.ts';
import { evaluate } from './formula.ts';

/** The box round many points of a sector and its seam allowances. */
function sampledBox(inner: number, outer: number, angle: number, allowance: number, turn: number): { along: number; across: number } {
  const xs: number[] = [];
  const ys: number[] = [];
  const mark = (x: number, y: number): void => void (xs.push(x), ys.push(y));
  for (let i = 0; i <= 2000; i += 1) {
    const at = turn + (angle * i) / 2000;
    for (const radius of [inner, outer]) mark(radius * Math.cos(at), radius * Math.sin(at));
  }
  for (let i = 0; i <= 50; i += 1) {
    const radius = inner + ((outer - inner) * i) / 50;
    for (const [edge, side] of [[turn, -allowance], [turn + angle, allowance]] as const) {
      mark(radius * Math.cos(edge) - side * Math.sin(edge), radius * Math.sin(edge) + side * Math.cos(edge));
    }
  }
  return { along: Math.max(...xs) - Math.min(...xs), across: Math.max(...ys) - Math.min(...ys) };
}

describe('the box round a piece of a circle skirt', () => {
  it('agrees with one round many of its points', () => {
    fc.assert(
      fc.property(
        fc.record({ inner: fc.double({ min: 20, max: 300, noNaN: true }), length: fc.double({ min: 50, max: 900, noNaN: true }), angle: fc.double({ min: 0.1, max: 2 * Math.PI, noNaN: true }), allowance: fc.double({ min: 0, max: 20, noNaN: true }), turn: fc.double({ min: -3.2, max: 3.2, noNaN: true }) }),
        ({ inner, length, angle, allowance, turn }) => {
          const outer = inner + length;
          const [box, sampled] = [sectorBox(inner, outer, angle, allowance, turn), sampledBox(inner, outer, angle, allowance, turn)];
          for (const side of ['along', 'across'] as const) {
            expect(box[side]).toBeGreaterThanOrEqual(sampled[side] - 1e-6);
            expect(box[side]).toBeLessThanOrEqual(sampled[side] + outer * 1e-5);
          }
        },
      ),
      { seed: 7, numRuns: 300 },
    );
  });

  it.each([
    // A whole circle of radius 75 on cloth as wide as its diameter.
    ['=CIRCLE.PIECES(15 cm, 60 cm, 1, 150 cm)', 1], ['=CIRCLE.CLOTH(15 cm, 60 cm, 1, 150 cm)', 1500],
    // A little too wide: two halves, each with its straight edge along the cloth.
    ['=CIRCLE.PIECES(15 cm, 61 cm, 1, 150 cm)', 2], ['=CIRCLE.CLOTH(15 cm, 61 cm, 1, 150 cm)', 3040],
    // Half-circles side by side where two go across.
    ['=CIRCLE.CLOTH(15 cm, 61 cm, 1, 151.9 cm)', 3040], ['=CIRCLE.CLOTH(10 cm, 60 cm, 1, 139 cm)', 2800], ['=CIRCLE.CLOTH(10 cm, 60 cm, 1/2, 140 cm)', 700],
    // Seam allowances along the straight edges count; a whole circle in one piece has none.
    ['=CIRCLE.CLOTH(10 cm, 60 cm, 1/2, 140 cm, 1.5 cm)', 715], ['=CIRCLE.CLOTH(15 cm, 60 cm, 1, 150 cm, 1.5 cm)', 1500],
    ['=CIRCLE.CLOTH(10 cm, 60 cm, 1/4, 75 cm)', 700], ['=CIRCLE.PIECES(10 cm, 60 cm, 1/4, 60 cm)', 2],
  ])('%s', (formula, expected) => {
    const value = evaluate(formula);
    expect(typeof value === 'object' && 'dimension' in value ? value.value : NaN).toBeCloseTo(expected, 6);
  });
});
