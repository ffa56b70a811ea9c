/** What must hold for every function, whatever it computes. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inBase, isFault, UNITS } from '../../../src/quantities/index.ts';
import type { Quantity, Span, UnitCode } from '../../../src/quantities/index.ts';
import { CellBlock, FUNCTIONS, readChart, SizeChart, work } from '../../../src/sewing/index.ts';
import type { Arg, Figure, FigureSpan, Outcome, SewingFunction, Value } from '../../../src/sewing/index.ts';
import { EXAMPLE_NAMES, LETTERS, MISSES, block, grid } from './charts.ts';
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
  // Nothing in cloth is shorter than a millionth of a millimetre but nothing at all.
  const any = fc.double({ min: low, max: high, noNaN: true }).map((n) => Math.round(n * 1e6) / 1e6);
  const [first, last] = [Math.ceil(low), Math.floor(high)];
  return first <= last ? fc.oneof(any, fc.integer({ min: first, max: last })) : any;
}

const GRIDS = [grid(...MISSES), grid(...LETTERS)];

function times(value: Value, k: number): Value {
  if (typeof value !== 'object' || value === null || value instanceof SizeChart) return value;
  if (value instanceof CellBlock) return new CellBlock(value.rows.map((row) => row.map((cell) => times(cell, k))));
  const length = (q: Quantity): Quantity => (q.dimension === 'length' ? inBase(q.value * k, q.unit) : q);
  return 'low' in value ? { low: length(value.low), high: length(value.high) } : length(value);
}

function scaledGrid(cells: readonly (readonly Value[])[], k: number): SizeChart {
  const read = readChart(cells.map((row) => row.map((cell) => times(cell, k))));
  if (isFault(read)) throw new Error(read.sentence);
  return read;
}

const scaling = (value: Value): Pair => ({ value, scaled: (k) => times(value, k) });

/** Small beside what they belong to; otherwise few sets of figures could be sewn. */
const SMALL = new Set(['allowance', 'seam', 'hem', 'under', 'least', 'overlap', 'beyond', 'play', 'strip', 'short', 'join', 'within', 'thickness']);

/** Words that the texts of a function mean something by. */
const WORDS: Readonly<Record<string, readonly string[]>> = {
  garment: ['dress', 'knit top'], level: ['bust', 'Hip'], fit: ['fitted', 'loose'], style: ['gathers', 'ruffle'], where: ['side seam', 'neck edge'],
  sold: ['cloth by the metre', 'cloth by the yard'], cloth: ['poplin', 'jersey'], from: ['in', 'cm', 'yd', 'Pica'], to: ['in', 'cm', 'yd', 'Pica'],
  measure: ['bust', 'waist girth straight', 'waist', 'hip'],
};

/** The block that an argument means: the table that the function's own example names, or measures, or their weights. */
function blockFor(fn: SewingFunction, arg: Arg): fc.Arbitrary<Pair> {
  if (arg.name === 'weights') return fc.tuple(fc.integer({ min: 0, max: 3 }), fc.integer({ min: 1, max: 3 })).map(([a, b]) => still(block(`${a} | ${b}`)));
  if (arg.name === 'measures') {
    return fc.tuple(fc.constantFrom('bust'), fc.double({ min: 650, max: 1050, noNaN: true }), fc.constantFrom('hip', 'waist', 'waist girth straight'), fc.double({ min: 650, max: 1050, noNaN: true }))
      .map(([one, a, other, b]) => scaling(new CellBlock([[one, inBase(a, 'cm')], [other, inBase(b, 'cm')]])));
  }
  const named = Object.keys(EXAMPLE_NAMES).find((name) => fn.example.includes(name));
  return fc.constant(scaling(EXAMPLE_NAMES[named ?? ''] ?? null));
}

function valueFor(fn: SewingFunction, arg: Arg): fc.Arbitrary<Pair> {
  switch (arg.kind) {
    case 'length': {
      const onChart = fn.args.some((other) => other.kind === 'chart');
      const low = onChart ? 650 : arg.above === undefined && arg.atLeast === undefined ? -1500 : 0;
      return fc.record({ mm: figures(arg, low, onChart ? 1050 : SMALL.has(arg.name) ? 40 : 1500), unit: fc.constantFrom(...LENGTH_UNITS) }).map(({ mm, unit }) => ({ value: inBase(mm, unit), scaled: (k) => inBase(mm * k, unit) }));
    }
    case 'area':
      return figures(arg, 0, 1e6).map((mm2) => ({ value: inBase(mm2, 'cm2'), scaled: (k) => inBase(mm2 * k * k, 'cm2') }));
    case 'angle':
      return figures(arg, 0, 89).map((n) => still(inBase(n, 'deg')));
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
      return fc.constantFrom(...(WORDS[arg.name] ?? [])).map(still);
    case 'size':
      return fc.oneof(fc.constantFrom<Value>('S', 'M', 'L', '00', '8', inBase(10, '')), fc.double({ min: -2, max: 12, noNaN: true }).map((n) => inBase(n, ''))).map(still);
    case 'chart':
      return fc.constantFrom(...GRIDS).map((cells) => ({ value: scaledGrid(cells, 1), scaled: (k: number) => scaledGrid(cells, k) }));
    case 'span':
      return fc.record({ low: fc.double({ min: -100, max: 500, noNaN: true }), more: fc.double({ min: 0, max: 90, noNaN: true }), unit: fc.constantFrom<UnitCode>('cm', 'in', '', '%', 'deg') })
        .map(({ low, more, unit }) => scaling({ low: inBase(low, unit), high: inBase(low + more, unit) }));
    case 'block':
      return blockFor(fn, arg);
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
  });

  it('scales with its lengths', () => {
    if (!fn.args.some((arg) => arg.kind === 'length' || arg.kind === 'area' || arg.kind === 'chart' || arg.kind === 'block')) return;
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
  });
});
