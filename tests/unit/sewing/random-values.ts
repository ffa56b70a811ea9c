/** Random values for the arguments of every function. */
import fc from 'fast-check';
import { inBase, isFault } from '../../../src/quantities/index.ts';
import type { Quantity, UnitCode } from '../../../src/quantities/index.ts';
import { CellBlock, KeptLayout, readChart, SizeChart } from '../../../src/sewing/index.ts';
import type { Arg, SewingFunction, Value } from '../../../src/sewing/index.ts';
import { EXAMPLE_NAMES, LETTERS, MISSES, block, grid } from './charts.ts';

const LENGTH_UNITS: readonly UnitCode[] = ['mm', 'cm', 'm', 'in', 'ft', 'yd'];

/** Values and, beside them, the same with every length times `k`. */
export interface Pair {
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
  if (value instanceof KeptLayout) {
    const { length, width, left, ...others } = value.figures;
    return new KeptLayout({ ...others, length: length * k, width: width * k, left: left && { length: left.length * k, width: left.width * k } });
  }
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
  measure: ['bust', 'waist girth straight', 'waist', 'hip'], what: ['main cloth', 'Main  Cloth', 'Buttons'],
};

/** The block that an argument means: the table that the function's own example names, or measures, or their weights. */
function blockFor(fn: SewingFunction, arg: Arg): fc.Arbitrary<Pair> {
  if (arg.name === 'weights') return fc.tuple(fc.integer({ min: 0, max: 3 }), fc.integer({ min: 1, max: 3 })).map(([a, b]) => still(block(`${a} | ${b}`)));
  if (arg.name === 'measures') {
    return fc.tuple(fc.constantFrom('bust'), fc.double({ min: 650, max: 1050, noNaN: true }), fc.constantFrom('hip', 'waist', 'waist girth straight'), fc.double({ min: 650, max: 1050, noNaN: true }))
      .map(([one, a, other, b]) => scaling(new CellBlock([[one, inBase(a, 'cm')], [other, inBase(b, 'cm')]])));
  }
  const named = Object.keys(EXAMPLE_NAMES).find((name) => EXAMPLE_NAMES[name] instanceof CellBlock && fn.example.includes(name));
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
    case 'layout':
      return fc.record({
        name: fc.constantFrom('dress', 'camisole'), state: fc.constantFrom('fresh', 'fresh', 'older', 'lost'), length: figures(arg, 100, 6000), density: figures(arg, 0.3, 1), width: figures(arg, 700, 1600),
        left: fc.option(fc.record({ length: figures(arg, 10, 900), width: figures(arg, 10, 1600) })), unit: fc.constantFrom(...LENGTH_UNITS),
      }).map((layout) => scaling(new KeptLayout(layout)));
  }
}

/** Every argument is given, so that no usual length stays behind when the others are scaled. */
export function valuesFor(fn: SewingFunction): fc.Arbitrary<Pair[]> {
  const each = fn.args.map((arg) => valueFor(fn, arg));
  const last = fn.args.at(-1);
  const more = fn.repeats && last !== undefined ? fc.array(valueFor(fn, last), { maxLength: 4 }) : fc.constant([]);
  return fc.tuple(fc.tuple(...each), more).map(([given, rest]) => [...given, ...rest]);
}
