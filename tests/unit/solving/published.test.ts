/** The search beside published zeros, and beside the bisection of a general-purpose library (simple-statistics). */
import fc from 'fast-check';
import { bisect } from 'simple-statistics';
import { describe, expect, test } from 'vitest';
import { run, solve } from '../../../src/solving/index.ts';
import { ZERO_PROBLEMS } from '../../published/root-finding.ts';

describe('published test problems', () => {
  test.each(ZERO_PROBLEMS)('$name', ({ f, low, high, zero, about }) => {
    let calls = 0;
    const { exact, why } = run(solve({ wanted: 0, bound: 'exactly', low, high, now: low, step: null }), (x) => {
      calls++;
      return f(x);
    });
    expect(why).toBe('reached');
    expect(Math.abs(exact!.x - zero)).toBeLessThanOrEqual(about ?? Math.max(1e-9 * Math.abs(zero), 1e-13));
    expect(calls).toBeLessThan(600);
  });
});

test('agrees with bisection by a general-purpose library', () => {
  const shapes: readonly ((k: number) => (x: number) => number)[] = [
    (k) => (x) => x ** 3 + k * x - 40, (k) => (x) => Math.exp(x / 3) - k * 3, (k) => (x) => Math.log(x + 1) - 1 - k / 40, (k) => (x) => x - k * Math.cos(x / 4),
  ];
  fc.assert(fc.property(fc.nat({ max: 3 }), fc.double({ min: 0.5, max: 6, noNaN: true }), (which, k) => {
    const f = shapes[which]!(k);
    fc.pre(f(0) * f(10) < 0);
    const { exact } = run(solve({ wanted: 0, bound: 'exactly', low: 0, high: 10, now: 0, step: null }), f);
    const theirs = bisect(f, 0, 10, 1_000, 1e-12);
    expect(Math.abs(exact!.x - theirs)).toBeLessThanOrEqual(2e-12);
  }), { numRuns: 1_000 });
});
