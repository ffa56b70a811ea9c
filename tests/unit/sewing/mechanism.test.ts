/** What must hold for every function, whatever it computes. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isFault, UNITS } from '../../../src/quantities/index.ts';
import type { Quantity, Span } from '../../../src/quantities/index.ts';
import { FUNCTIONS, work } from '../../../src/sewing/index.ts';
import type { Figure, FigureSpan, Outcome, SewingFunction, Value } from '../../../src/sewing/index.ts';
import { EXAMPLE_NAMES } from './charts.ts';
import { evaluate } from './formula.ts';
import { valuesFor } from './random-values.ts';

const RUNS = 200;
function plainSentence(outcome: { readonly sentence: string }): void {
  expect(outcome.sentence).toMatch(/^[A-Z“−\p{N}].*\.$/u);
  expect(outcome.sentence).not.toMatch(/NaN|undefined|Infinity|\[object|fault in this program/);
}

const DIMENSION = { length: 'length', area: 'area', angle: 'angle', number: 'number', percent: 'number' } as const;

const isSpan = (value: Quantity | Span): value is Span => 'low' in value;
const both = (value: Quantity | Span): readonly Quantity[] => (isSpan(value) ? [value.low, value.high] : [value]);
const ofStep = (value: Figure | FigureSpan): readonly number[] => ('low' in value ? (value.low.value === value.high.value ? [value.low.value] : [value.low.value, value.high.value]) : [value.value]);

function soundResult(fn: SewingFunction, outcome: Exclude<Outcome, { sentence: string }>): void {
  const { value } = outcome;
  const last = outcome.steps.at(-1);
  if (typeof value === 'string') {
    expect(['size', 'text']).toContain(fn.gives);
    expect(last?.value).toBe(value);
  } else {
    for (const each of both(value)) {
      expect(Number.isFinite(each.value)).toBe(true);
      expect(Object.is(each.value, -0)).toBe(false);
      expect(each.dimension).toBe(UNITS[each.unit].dimension);
      if (fn.gives in DIMENSION) expect(each.dimension).toBe(DIMENSION[fn.gives as keyof typeof DIMENSION]);
      if (fn.gives !== 'figure') expect(each.unit === '%').toBe(fn.gives === 'percent');
    }
    if (isSpan(value)) expect(fn.gives).toBe('span');
    expect(typeof last?.value === 'object' ? ofStep(last.value) : []).toEqual(both(value).map((each) => each.value));
  }
  for (const step of outcome.steps) {
    expect(step.words).not.toBe('');
    for (const part of [...step.sum, step.value]) if (typeof part !== 'string') expect(ofStep(part).every(Number.isFinite)).toBe(true);
  }
  for (const caution of outcome.cautions) {
    expect(caution.sentence).toMatch(/^[A-Z].*\.$/);
    // A figure that is given must have words that say what it is.
    if (caution.mend !== undefined) expect(Number.isFinite(caution.mend.value)).toBe(true);
    expect(/\bthis\b/.test(caution.sentence.split(/[.:] /).at(-1) ?? '') || /At least so many/.test(caution.sentence)).toBe(caution.mend !== undefined);
  }
}

/** The same without some of the values that can be left out. */
function shortened(fn: SewingFunction, values: readonly Value[], drop: number): readonly Value[] {
  const needed = fn.args.filter((arg) => arg.usual === undefined).length;
  return fn.repeats ? values : values.slice(0, Math.max(needed, values.length - drop));
}

/** The functions that the tests below went through. */
const [finite, scaled] = [new Set<string>(), new Set<string>()];

describe.each(FUNCTIONS.map((fn) => [fn.name, fn] as const))('%s', (_, fn) => {
  it('says what it is', () => {
    expect(fn.name).toMatch(/^[A-Z]+(?:\.[A-Z]+)*$/);
    expect(FUNCTIONS.filter((other) => other.name === fn.name)).toHaveLength(1);
    expect(fn.about).toMatch(/^[A-Z].*\.$/);
    expect(fn.asks.length).toBeGreaterThan(0);
    expect(fn.rule).not.toBe('');
    expect(fn.source).not.toBe('');
    expect(new Set(fn.args.map((arg) => arg.name)).size).toBe(fn.args.length);
    for (const [i, arg] of fn.args.entries()) {
      expect(arg.about).not.toBe('');
      if (arg.usual !== undefined) expect(fn.args.slice(i).every((later) => later.usual !== undefined)).toBe(true);
      expect(arg.kind === 'choice').toBe(arg.choices !== undefined);
      if (arg.kind === 'choice' && arg.usual !== undefined) expect(arg.choices).toContain(arg.usual);
    }
  });

  it('has an example that works', () => {
    expect(fn.example.startsWith(`=${fn.name}(`)).toBe(true);
    const value = evaluate(fn.example, EXAMPLE_NAMES);
    expect(typeof value === 'object' && 'dimension' in value ? Number.isFinite(value.value) : value).toBeTruthy();
  });

  it('gives a finite result of its kind, equal to its last step, or a sentence', () => {
    let results = 0;
    fc.assert(
      fc.property(valuesFor(fn), fc.nat(3), (pairs, drop) => {
        const values = shortened(fn, pairs.map((pair) => pair.value), drop);
        const shown = work(fn, values, true);
        const silent = work(fn, values);
        if (isFault(shown)) {
          plainSentence(shown);
          expect(silent).toEqual(shown);
          return;
        }
        results += 1;
        soundResult(fn, shown);
        expect(silent).toEqual({ ...shown, steps: [] });
      }),
      { numRuns: RUNS, seed: 1 },
    );
    expect(results).toBeGreaterThan(RUNS / 12);
    finite.add(fn.name);
  });

  it('scales with its lengths', () => {
    if (!fn.args.some((arg) => arg.kind === 'length' || arg.kind === 'area' || arg.kind === 'chart' || arg.kind === 'block' || arg.kind === 'layout')) return;
    fc.assert(
      fc.property(valuesFor(fn), fc.constantFrom(0.5, 2, 4), (pairs, k) => {
        const before = work(fn, pairs.map((pair) => pair.value));
        const after = work(fn, pairs.map((pair) => pair.scaled(k)));
        expect(isFault(after)).toBe(isFault(before));
        if (isFault(before) || isFault(after)) return;
        if (typeof before.value === 'string' || typeof after.value === 'string') {
          expect(after.value).toBe(before.value);
          return;
        }
        const [scaled, plain] = [both(after.value), both(before.value)];
        expect(scaled).toHaveLength(plain.length);
        for (const [i, one] of plain.entries()) {
          // A number of units and its price grow with the length that is counted.
          const power = one.dimension === 'length' || fn.name === 'AMOUNT' || fn.name === 'CLOTH.COST' ? 1 : one.dimension === 'area' ? 2 : 0;
          expect(Math.abs((scaled[i] as Quantity).value - one.value * k ** power)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(one.value)));
        }
        expect(after.cautions.map((caution) => caution.sentence)).toEqual(before.cautions.map((caution) => caution.sentence));
      }),
      { numRuns: RUNS, seed: 2 },
    );
    scaled.add(fn.name);
  });
});

describe('every function', () => {
  it('was run with random figures, and scaled where it has lengths', () => {
    const without = FUNCTIONS.filter(({ name }) => !scaled.has(name)).map(({ name }) => name);
    console.info(`${finite.size} of ${FUNCTIONS.length} functions run with random figures, ${scaled.size} scaled; without lengths: ${without.join(', ')}`);
    expect(finite.size).toBe(FUNCTIONS.length);
    expect(FUNCTIONS.filter(({ name, args }) => without.includes(name) && args.some(({ kind }) => kind === 'length' || kind === 'area'))).toEqual([]);
  });
});
