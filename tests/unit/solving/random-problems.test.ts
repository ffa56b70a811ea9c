/**
 * 10,000 random problems that have an answer, and 10,000 that have none, both
 * by how they are made: functions of known shape moved so that they are what is
 * wanted at a drawn input, or cut so that they never are.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { run, solve, type Bound, type Problem } from '../../../src/solving/index.ts';

type F = (x: number) => number | null;

interface Range { readonly low: number; readonly high: number; readonly root: number; readonly now: number }

/** Doubles as they occur, and not those of 300 zeros that a draw over all doubles is full of. */
const figure = (min: number, max: number): fc.Arbitrary<number> => fc.integer({ min: 0, max: 2 ** 31 - 1 }).map((n) => min + ((max - min) * n) / (2 ** 31 - 1));

const range: fc.Arbitrary<Range> = fc.record({
  low: figure(-500, 500),
  width: figure(0.5, 2000),
  at: figure(0, 1),
  now: figure(-0.2, 1.2),
}).map(({ low, width, at, now }) => ({ low, high: low + width, root: low + width * at, now: low + width * now }));

const size = figure(0.1, 50);
const sign = fc.constantFrom(1, -1);

/** Shapes over 0 to 1 that rise throughout; none so level anywhere that an input could not be told to 1e-9. */
const RISING: readonly ((u: number, k: number) => number)[] = [
  (u) => u,
  (u, k) => u + k * u * u,
  (u, k) => Math.exp((k / 10) * u),
  (u, k) => Math.log(1 + k * u),
  (u, k) => Math.sqrt(u + 0.01 * k),
  (u, k) => 1 / (1.05 + k - u * (1 + k) * 0.9) + u,
  (u, k) => u + 0.1 * Math.atan(k * (u - 0.4)),
  (u, k) => Math.max(u, 0.5 + (k / 10) * (u - 0.5)) + 0.2 * u,
  (u) => u + 0.3 * Math.abs(u - 0.37),
  (u, k) => u + Math.floor(u * (2 + (k % 5))),
];

/** Shapes that rise and fall. */
const WAVY: readonly ((u: number, k: number) => number)[] = [
  (u, k) => Math.sin((3 + (k % 20)) * u),
  (u, k) => u + 0.5 * Math.cos((5 + (k % 25)) * u),
  (u, k) => (u - 0.3) * (u - 0.5) * (u - (k % 1)) * 20,
  (u) => Math.abs(u - 0.6),
  (u, k) => Math.exp(-((u - 0.5) ** 2) * k),
  (u, k) => u * Math.sin(8 * u) + k * 0.01 * u,
  (u, k) => Math.floor(u * (3 + (k % 30))),
  (u, k) => Math.round(12 * Math.sin(6 * u)) + Math.floor(k),
  (u) => (u < 0.4 ? u * u : 1 - u),
  (u, k) => Math.min(0.8, u * (1 + (k % 3))) - 0.5 * Math.max(0, u - 0.6),
];

const shape = fc.record({ rising: fc.boolean(), which: fc.nat({ max: 9 }), k: size, scale: size, turned: sign, wanted: fc.oneof(fc.constant(0), figure(-1000, 1000)) });
const bound: fc.Arbitrary<Bound> = fc.constantFrom('exactly', 'atMost', 'atLeast');

/** What rounding of the sums in `f` itself can come to. */
const near = (wanted: number, scale: number): number => 1e-9 * Math.max(Math.abs(wanted), scale * 1e-2);

describe('problems that have an answer', () => {
  test('it is found to 1e-9', () => {
    fc.assert(fc.property(range, shape, bound, fc.boolean(), (at, { rising, which, k, scale, turned, wanted }, bounded, holed) => {
      const unit = (x: number) => (x - at.low) / (at.high - at.low);
      const h = (x: number) => turned * scale * (rising ? RISING : WAVY)[which]!(unit(x), k);
      const there = h(at.root);
      // Half of them have no result beyond a place on the far side of the answer.
      const end = unit(at.root) < 0.9 ? at.root + 0.05 * (at.high - at.low) : Infinity;
      const f: F = (x) => (holed && x > end ? null : h(x) - there + wanted);
      const problem: Problem = { wanted, bound: bounded, low: at.low, high: at.high, now: at.now, step: null };
      const { exact, why, cut, tried } = run(solve(problem), f);
      expect(why).toBe('reached');
      expect(exact).not.toBeNull();
      const { x, y } = exact!;
      expect(f(x), 'what it says is what it is').toBe(y);
      expect(x).toBeGreaterThanOrEqual(at.low);
      expect(x).toBeLessThanOrEqual(at.high);
      expect(Math.abs(y - wanted)).toBeLessThanOrEqual(near(wanted, scale));
      // Where there is only one, it is that one.
      if (rising && which !== 9) expect(Math.abs(x - at.root)).toBeLessThanOrEqual(1e-9 * Math.max(Math.abs(at.root), (at.high - at.low) * 0.1, 1e-3 * Math.abs(at.low)));
      expect(cut).toEqual(exact);
      expect(tried).toBeLessThan(4000);
    }), { numRuns: 10_000 });
  }, 120_000);

  test('the one nearest to where the input is now is found where there are several', () => {
    fc.assert(fc.property(fc.integer({ min: 1, max: 12 }), figure(0, 1), (waves, at) => {
      // sin(2πwu) is 0 at every u that is a whole number of halves of a wave.
      const { exact } = run(solve({ wanted: 1, bound: 'exactly', low: 0, high: 1, now: at, step: null }), (u) => 1 + Math.sin(2 * Math.PI * waves * u));
      const nearest = Math.round(at * 2 * waves) / (2 * waves);
      expect(Math.abs(exact!.x - at)).toBeLessThanOrEqual(Math.abs(nearest - at) + 1e-9);
    }), { numRuns: 2_000 });
  });

  test('of a stretch on which it stays, the end nearest to now; now itself when it lies in it', () => {
    const f = (x: number): number => Math.ceil(x / 10) * 10;
    const at = (now: number) => run(solve({ wanted: 40, bound: 'exactly', low: 0, high: 100, now, step: null }), f).exact!;
    expect(at(35)).toEqual({ x: 35, y: 40 });
    expect(at(80).x).toBe(40);
    expect(at(3).x).toBeCloseTo(30, 9);
    expect(at(3).y).toBe(40);
  });
});

describe('problems that have none', () => {
  /** Ways to take the answer out of a rising function, and what there is to say of each. */
  const WAYS: readonly (readonly [name: string, make: (h: F, root: number, wanted: number, width: number, much: number) => F, why: readonly string[]])[] = [
    ['a jump over it', (h, root, wanted, _, much) => (x) => h(x)! - h(root)! + wanted + (x < root ? -much : much), ['jumps', 'beyond']],
    ['a pole', (_, root, wanted, width, much) => (x) => (x === root ? null : wanted + (much * width) / (x - root)), ['jumps', 'beyond']],
    ['a pole that returns on the same side', (_, root, wanted, width, much) => (x) => (x === root ? null : wanted + (much * width * width) / ((x - root) * (x - root))), ['beyond']],
    ['a gap in which it lies', (h, root, wanted, width) => (x) => (Math.abs(x - root) < 0.02 * width ? null : h(x)! - h(root)! + wanted), ['jumps', 'beyond', 'nothing']],
    ['it lies above everything', (h, root, wanted, width, much) => (x) => Math.min(h(x)! - h(root + width)! + wanted, wanted) - much, ['beyond', 'flat']],
    ['flat', (_, __, wanted, ___, much) => () => wanted + much, ['flat']],
    ['nearly touched', (_, root, wanted, width, much) => (x) => wanted + ((x - root) / width) ** 2 * 10 + 1e-4 * much, ['beyond']],
    ['no result anywhere', () => () => null, ['nothing']],
    ['not a number anywhere', () => () => NaN, ['nothing']],
    ['without end', () => (x) => (x % 2 === 0 ? Infinity : -Infinity), ['nothing']],
  ];

  test('none is claimed', () => {
    fc.assert(fc.property(range, shape, bound, fc.nat({ max: WAYS.length - 1 }), figure(0.01, 10), (at, { which, k, scale, turned, wanted }, bounded, way, much) => {
      const [name, make, whys] = WAYS[way]!;
      const h = (x: number) => scale * RISING[which]!((x - at.low) / (at.high - at.low), k);
      const f: F = make(h, at.root, wanted, at.high - at.low, much * (way === 5 ? turned : 1));
      const { exact, why, best, cut, jump } = run(solve({ wanted, bound: bounded, low: at.low, high: at.high, now: at.now, step: null }), f);
      expect(exact, name).toBeNull();
      expect(whys, name).toContain(why);
      if (best) expect(f(best.x)).toBe(best.y);
      if (cut && bounded === 'atMost') expect(cut.y).toBeLessThanOrEqual(wanted);
      if (cut && bounded === 'atLeast') expect(cut.y).toBeGreaterThanOrEqual(wanted);
      if (jump) expect((jump[0].y - wanted) * (jump[1].y - wanted)).toBeLessThan(0);
      if (why === 'jumps' && way === 0) expect(Math.abs(jump![0].x - at.root) + Math.abs(jump![1].x - at.root)).toBeLessThan(1e-9 * Math.max(1, Math.abs(at.root), at.high - at.low));
    }), { numRuns: 10_000 });
  }, 120_000);
});

describe('what can be cut', () => {
  /** All steps one by one. */
  function brute(problem: Problem, f: F): number | null {
    const { low, high, step, wanted, bound: bounded } = problem;
    let least: number | null = null;
    for (let n = Math.ceil(low / step! - 1e-9); n <= Math.floor(high / step! + 1e-9); n++) {
      const y = f(n * step!);
      if (y === null || (bounded === 'atMost' && y > wanted) || (bounded === 'atLeast' && y < wanted)) continue;
      if (least === null || Math.abs(y - wanted) < least) least = Math.abs(y - wanted);
    }
    return least;
  }

  test('is the best of all steps', () => {
    fc.assert(fc.property(range, shape, bound, figure(0.002, 0.3), fc.boolean(), (at, { rising, which, k, scale, turned, wanted }, bounded, part, whole) => {
      const width = at.high - at.low;
      const h = (x: number) => turned * scale * (rising ? RISING : WAVY)[which]!((x - at.low) / width, k);
      const f: F = (x) => h(x) - h(at.root) + wanted;
      const problem: Problem = { wanted, bound: bounded, low: at.low, high: at.high, now: at.now, step: part * width, ...(whole && { whole }) };
      const { cut } = run(solve(problem), f);
      const least = brute(problem, f);
      const noise = 1e-11 * Math.max(1, Math.abs(wanted), scale);
      if (least === null) expect(cut === null || Math.abs(cut.y - wanted) <= noise).toBe(true);
      else expect(Math.abs(cut!.y - wanted)).toBeLessThanOrEqual(least + noise);
    }), { numRuns: 2_000 });
  }, 60_000);

  test('also where there are more steps than are all tried', () => {
    fc.assert(fc.property(range, shape, bound, fc.integer({ min: 1500, max: 20_000 }), (at, { which, k, scale, turned, wanted }, bounded, count) => {
      const width = at.high - at.low;
      const h = (x: number) => turned * scale * RISING[which]!((x - at.low) / width, k);
      const f: F = (x) => h(x) - h(at.root) + wanted;
      const problem: Problem = { wanted, bound: bounded, low: at.low, high: at.high, now: at.now, step: width / count, whole: true };
      const { cut, tried } = run(solve(problem), f);
      const least = brute(problem, f);
      const noise = 1e-11 * Math.max(1, Math.abs(wanted), scale);
      if (least !== null) expect(Math.abs(cut!.y - wanted)).toBeLessThanOrEqual(least + noise);
      expect(tried).toBeLessThan(1500);
    }), { numRuns: 300 });
  }, 60_000);
});
