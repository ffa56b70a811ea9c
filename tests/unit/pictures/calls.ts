/** Calls of sewing functions with figures from far too small to far too large, and what they give. */
import fc from 'fast-check';
import type { PictureCall } from '../../../src/pictures/index.ts';
import { inBase, isFault } from '../../../src/quantities/index.ts';
import type { Quantity, ShowAs, UnitCode } from '../../../src/quantities/index.ts';
import { functionNamed, work } from '../../../src/sewing/index.ts';
import type { Arg, SewingFunction } from '../../../src/sewing/index.ts';

const SMALL = new Set(['allowance', 'seam', 'hem', 'under', 'least', 'beyond', 'strip', 'within', 'thickness', 'shift', 'in', 'step', 'depth', 'intake', 'amount']);

export const SHOWN: readonly ShowAs[] = [
  { system: 'own', inchStep: 8 }, { system: 'cm', inchStep: 8 }, { system: 'in', inchStep: 16 }, { system: 'both', inchStep: 32 },
  { system: 'both', inchStep: 8, decimalMark: ',' }, { system: 'own', inchStep: 8, unit: 'mm' },
];

function figure(arg: Arg, low: number, high: number): fc.Arbitrary<number> {
  const from = Math.max(low, arg.atLeast ?? low, arg.above ?? low);
  const to = Math.min(high, arg.atMost ?? high, arg.below ?? high);
  const within = (n: number): boolean => (arg.above === undefined || n > arg.above) && (arg.below === undefined || n < arg.below);
  // As many small figures as large ones.
  const logarithmic = fc.double({ min: Math.log(Math.max(from, 1e-2)), max: Math.log(Math.max(to, 2e-2)), noNaN: true }).map((n) => Math.min(to, Math.exp(n)));
  const signed = arg.above === undefined && arg.atLeast === undefined ? fc.tuple(logarithmic, fc.constantFrom(1, 1, -1, 0)).map(([n, sign]) => n * sign + 0) : logarithmic;
  return fc.oneof({ weight: 6, arbitrary: signed }, { weight: 1, arbitrary: fc.constantFrom(from, to) }).filter(within);
}

function valueFor(arg: Arg): fc.Arbitrary<Quantity | string> {
  switch (arg.kind) {
    case 'length': {
      const usual = SMALL.has(arg.name) ? 60 : 1500;
      const mm = fc.oneof({ weight: 5, arbitrary: figure(arg, 0, usual) }, { weight: 1, arbitrary: figure(arg, 0, usual * 20) });
      return fc.tuple(mm, fc.constantFrom<UnitCode>('mm', 'cm', 'm', 'in', 'ft', 'yd')).map(([n, unit]) => inBase(n, unit));
    }
    case 'angle':
      return figure(arg, 0, 89).map((n) => inBase(n, 'deg'));
    case 'count':
      return fc.oneof({ weight: 5, arbitrary: fc.integer({ min: 1, max: Math.min(20, arg.atMost ?? 20) }) }, { weight: 1, arbitrary: fc.integer({ min: 1, max: Math.min(200, arg.atMost ?? 200) }) }).map((n) => inBase(n, ''));
    case 'number':
      return figure(arg, 0.02, 4).map((n) => inBase(n, ''));
    case 'percent':
      return figure(arg, 0, 0.9).map((n) => inBase(n, '%'));
    case 'choice':
      return fc.constantFrom(...(arg.choices ?? []));
    case 'text':
      return fc.constantFrom('bust', 'upper hip');
    default:
      throw new Error(`${arg.name} is of a kind that these calls do not make.`);
  }
}

/** Functions that read a chart have a call of their own. */
const BY_HAND: Readonly<Record<string, fc.Arbitrary<PictureCall>>> = {
  'BLEND.GAP': fc.record({ gap: fc.double({ min: 0, max: 90, noNaN: true }), one: fc.constantFrom<Quantity | string>('S', 'Extra extra large, tall and wide', inBase(12, ''), inBase(12.5, '')), other: fc.constantFrom<Quantity | string>('M', inBase(14, '')) })
    .map(({ gap, one, other }) => ({
      name: 'BLEND.GAP', result: inBase(gap, 'cm'),
      given: [{ name: 'chart', value: '5 × 4 cells' }, { name: 'measure', value: 'hip' }, { name: 'size', value: one }, { name: 'other', value: other }],
    })),
};

/** Calls of a function that give a figure, some without the values that can be left out; `null` for figures that it refuses. */
export function callsOf(name: string): fc.Arbitrary<PictureCall | null> {
  const byHand = BY_HAND[name];
  if (byHand !== undefined) return byHand;
  const fn = functionNamed(name) as SewingFunction;
  const last = fn.args.at(-1)!;
  const needed = fn.args.filter((arg) => arg.usual === undefined).length;
  const more = fn.repeats === true ? fc.array(valueFor(last), { maxLength: 12 }) : fc.constant([]);
  return fc.tuple(fc.tuple(...fn.args.map(valueFor)), more, fc.integer({ min: needed, max: fn.args.length })).map(([first, rest, count]) => {
    const values = fn.repeats === true ? [...first, ...rest] : first.slice(0, count);
    const outcome = work(fn, values);
    if (isFault(outcome) || typeof outcome.value === 'string' || 'low' in outcome.value) return null;
    return { name, result: outcome.value, given: values.map((value, i) => ({ name: (fn.args[i] ?? last).name, value })) };
  });
}
