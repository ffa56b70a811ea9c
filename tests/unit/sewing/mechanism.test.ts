/** What must hold for every function, whatever it computes. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inBase, isFault, UNITS } from '../../../src/quantities/index.ts';
import type { Quantity, UnitCode } from '../../../src/quantities/index.ts';
import { FUNCTIONS, readChart, SizeChart, work } from '../../../src/sewing/index.ts';
import type { Arg, Outcome, SewingFunction, Value } from '../../../src/sewing/index.ts';
import { LETTERS, MISSES, ONE_WAIST, chart, grid } from './charts.ts';
import { evaluate } from './formula.ts';

const RUNS = 200;
const LENGTH_UNITS: readonly UnitCode[] = ['mm', 'cm', 'm', 'in', 'ft', 'yd'];

/** Values and, beside them, the same with every length times `k`. */
interface Pair {
  readonly value: Value;
  scaled(k: number): Value;
}

const still = (value: Value): Pair => ({ value, scaled: () => value });

function figures(arg: Arg, from: number, to: number): fc.Arbitrary<number> {
  const low = arg.above !== undefined ? Math.max(from, arg.above + 1e-3) : Math.max(from, arg.atLeast ?? from);
  const high = Math.min(to, arg.atMost ?? to, arg.below === undefined ? to : arg.below - 1e-3);
  return fc.oneof(fc.double({ min: low, max: high, noNaN: true }), fc.integer({ min: Math.ceil(low), max: Math.max(Math.ceil(low), Math.floor(high)) }).filter((n) => n <= high));
}

const GRIDS = [grid(...MISSES), grid(...LETTERS)];

function scaledGrid(cells: readonly (readonly Value[])[], k: number): SizeChart {
  const times = (q: Quantity): Quantity => (q.dimension === 'length' ? inBase(q.value * k, q.unit) : q);
  const read = readChart(cells.map((row) => row.map((cell) => {
    if (typeof cell !== 'object' || cell === null || cell instanceof SizeChart) return cell;
    return 'low' in cell ? { low: times(cell.low), high: times(cell.high) } : times(cell);
  })));
  if (isFault(read)) throw new Error(read.sentence);
  return read;
}

function valueFor(fn: SewingFunction, arg: Arg): fc.Arbitrary<Pair> {
  switch (arg.kind) {
    case 'length': {
      const onChart = fn.args.some((other) => other.kind === 'chart');
      const low = onChart ? 650 : arg.above === undefined && arg.atLeast === undefined ? -1500 : 0;
      return fc.record({ mm: figures(arg, low, onChart ? 1050 : 1500), unit: fc.constantFrom(...LENGTH_UNITS) }).map(({ mm, unit }) => ({ value: inBase(mm, unit), scaled: (k) => inBase(mm * k, unit) }));
    }
    case 'area':
      return figures(arg, 0, 1e6).map((mm2) => ({ value: inBase(mm2, 'cm2'), scaled: (k) => inBase(mm2 * k * k, 'cm2') }));
    case 'angle':
      return figures(arg, 0, 90).map((n) => still(inBase(n, 'deg')));
    case 'number':
      return figures(arg, arg.atLeast ?? 0.05, arg.atMost ?? 8).map((n) => still(inBase(n, '')));
    case 'count':
      return fc.integer({ min: 1, max: Math.min(24, arg.atMost ?? 24) }).map((n) => still(inBase(n, '')));
    case 'percent':
      return figures(arg, 0, 0.6).map((n) => still(inBase(n, '%')));
    case 'choice':
      return fc.constantFrom(...(arg.choices ?? [])).map(still);
    case 'unit':
      return fc.constantFrom('mm', 'cm', 'm', 'in', 'ft', 'yd').map(still);
    case 'text':
      return fn.name === 'CONVERT' ? fc.constantFrom('in', 'cm', 'yd', 'Pica').map(still) : fc.constantFrom('bust', 'waist girth straight', 'waist', 'hip').map(still);
    case 'size':
      return fc.oneof(fc.constantFrom<Value>('S', 'M', 'L', '00', '8', inBase(10, '')), fc.double({ min: -2, max: 12, noNaN: true }).map((n) => inBase(n, ''))).map(still);
    case 'chart':
      return fc.constantFrom(...GRIDS).map((cells) => ({ value: scaledGrid(cells, 1), scaled: (k: number) => scaledGrid(cells, k) }));
  }
}

/** Every argument is given, so that no usual length stays behind when the others are scaled. */
function valuesFor(fn: SewingFunction): fc.Arbitrary<Pair[]> {
  const each = fn.args.map((arg) => valueFor(fn, arg));
  const last = fn.args.at(-1);
  const more = fn.repeats && last !== undefined ? fc.array(valueFor(fn, last), { maxLength: 4 }) : fc.constant([]);
  return fc.tuple(fc.tuple(...each), more).map(([given, rest]) => [...given, ...rest]);
}

function plainSentence(outcome: { readonly sentence: string }): void {
  expect(outcome.sentence).toMatch(/^[A-Z“−\p{N}].*\.$/u);
  expect(outcome.sentence).not.toMatch(/NaN|undefined|Infinity|\[object|fault in this program/);
}

const DIMENSION = { length: 'length', area: 'area', angle: 'angle', number: 'number', percent: 'number' } as const;

function soundResult(fn: SewingFunction, outcome: Exclude<Outcome, { sentence: string }>): void {
  const { value } = outcome;
  if (typeof value === 'string') expect(fn.gives).toBe('size');
  else {
    expect(Number.isFinite(value.value)).toBe(true);
    expect(Object.is(value.value, -0)).toBe(false);
    expect(value.dimension).toBe(UNITS[value.unit].dimension);
    if (fn.gives !== 'size') expect(value.dimension).toBe(DIMENSION[fn.gives]);
    expect(value.unit === '%').toBe(fn.gives === 'percent');
  }
  const last = outcome.steps.at(-1);
  const shown = typeof value === 'string' ? value : value.value;
  expect(typeof last?.value === 'string' ? last.value : last?.value.value).toBe(shown);
  for (const step of outcome.steps) {
    expect(step.words).not.toBe('');
    for (const part of [...step.sum, step.value]) if (typeof part !== 'string') expect(Number.isFinite(part.value)).toBe(true);
  }
  for (const caution of outcome.cautions) {
    expect(caution.sentence).toMatch(/^[A-Z].*\.$/);
    if (caution.mend !== undefined) expect(Number.isFinite(caution.mend.value)).toBe(true);
  }
}

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
    const value = evaluate(fn.example, { chart: chart(...ONE_WAIST) });
    expect(typeof value === 'object' && 'dimension' in value ? Number.isFinite(value.value) : value).toBeTruthy();
  });

  it('gives a finite result of its kind, equal to its last step, or a sentence', () => {
    let results = 0;
    fc.assert(
      fc.property(valuesFor(fn), (pairs) => {
        const values = pairs.map((pair) => pair.value);
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
  });

  it('scales with its lengths', () => {
    if (!fn.args.some((arg) => arg.kind === 'length' || arg.kind === 'area' || arg.kind === 'chart')) return;
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
        const power = fn.gives === 'length' || fn.name === 'AMOUNT' ? 1 : fn.gives === 'area' ? 2 : 0;
        expect(Math.abs(after.value.value - before.value.value * k ** power)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(before.value.value)));
        expect(after.cautions.map((caution) => caution.sentence)).toEqual(before.cautions.map((caution) => caution.sentence));
      }),
      { numRuns: RUNS, seed: 2 },
    );
  });
});
