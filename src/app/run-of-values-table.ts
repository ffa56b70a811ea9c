/** A run of values as the panel and a file have it. Pure. */
import { cautionInWords, type Run, type RunPin } from '../panels/index.ts';
import { inBase, nearest, show, type Quantity, type ShowAs, type UnitCode } from '../quantities/index.ts';
import type { TrialPin } from '../reckoning/index.ts';
import type { OutCell } from '../tables/index.ts';
import { outCell } from './out-tables.ts';
import { readLimits, type LimitTexts } from './work-back-limits.ts';

/** More are neither read nor told apart on a plot. */
export const MOST_VALUES = 200;

/** The values of a run in base units, or a sentence: what is wrong and what to do. The last is the end also where no step falls on it. */
export function runValues(texts: LimitTexts, unit: UnitCode): readonly number[] | { readonly sentence: string } {
  const limits = readLimits(texts, unit);
  if ('sentence' in limits) return limits;
  const { low, high, step } = limits;
  if (step === null) return { sentence: 'Steps: write how far apart the values are.' };
  const count = Math.floor((high - low) / step + 1e-9) + 1;
  if (count > MOST_VALUES) return { sentence: `That is ${count.toLocaleString('en')} values, and a run has at most ${MOST_VALUES}: write larger steps, or begin and end nearer together.` };
  // From where she begins, each so many steps on, to the last bit as they would be typed.
  const onSteps = Math.abs(low / step - Math.round(low / step)) <= 1e-9;
  const value = (n: number): number => (onSteps ? (nearest(inBase(low + n * step, unit), inBase(step, unit)) as Quantity).value : low + n * step);
  return Array.from({ length: count }, (_, n) => value(n));
}

export interface PinStretch {
  readonly number: number;
  readonly from: number;
  readonly to: number;
}

export interface RunPins {
  readonly listed: readonly RunPin[];
  /** Numbers of the pins of each value. */
  readonly at: readonly (readonly number[])[];
  readonly stretches: readonly PinStretch[];
}

/** Pins of the values as pins with stretches: the same caution of the same cell is one pin, however often it comes and goes. */
export function pinsAlong(values: readonly number[], pins: readonly (readonly TrialPin[])[], unit: UnitCode, as: ShowAs, sheetAs: ShowAs, placeOf: (pin: TrialPin) => string): RunPins {
  const key = ({ cell, caution }: TrialPin): string => `${cell.sheet} ${cell.row} ${cell.col} ${caution.by} ${caution.sentence}`;
  const met = new Map<string, { readonly first: TrialPin; readonly at: number[] }>();
  pins.forEach((all, n) => all.forEach((pin) => {
    const known = met.get(key(pin));
    if (!known) met.set(key(pin), { first: pin, at: [n] });
    else if (known.at.at(-1) !== n) known.at.push(n);
  }));
  const say = (n: number): string => show(inBase(values[n]!, unit), { ...as, system: as.system === 'both' ? 'own' : as.system }).main;
  const listed: RunPin[] = [];
  const stretches: PinStretch[] = [];
  const at: number[][] = values.map(() => []);
  const inOrder = [...met.values()].sort(({ first: { cell: one } }, { first: { cell: other } }) => one.sheet - other.sheet || one.row - other.row || one.col - other.col);
  for (const { first, at: indexes } of inOrder) {
    const number = listed.length + 1;
    const runs: [number, number][] = [];
    for (const n of indexes) {
      at[n]!.push(number);
      const last = runs.at(-1);
      if (last && last[1] === n - 1) last[1] = n;
      else runs.push([n, n]);
    }
    for (const [from, to] of runs) stretches.push({ number, from: values[from]!, to: values[to]! });
    listed.push({
      number, place: placeOf(first), where: runs.map(([from, to]) => (from === to ? `with ${say(from)}` : `from ${say(from)} to ${say(to)}`)).join(', '),
      sentence: cautionInWords(first.caution, sheetAs),
    });
  }
  return { listed, at, stretches };
}

export function runTable({ input, results, values, pins }: Run, inputs: readonly Quantity[]): OutCell[][] {
  const text = (words: string): OutCell => (words === '' ? { kind: 'empty' } : { kind: 'text', text: words });
  const sentence = (number: number): string => {
    const pin = pins.find((each) => each.number === number);
    return pin ? `${pin.place}: ${pin.sentence}` : '';
  };
  const withPins = pins.length > 0;
  return [
    [text(input ? input.label || input.place : ''), ...results.map(({ label, place }) => text(label || place)), ...(withPins ? [text('Pins')] : [])],
    ...(values ?? []).map((value, at) => [
      { kind: 'quantity', quantity: inputs[at]! } as const, ...value.results.map(outCell), ...(withPins ? [text(value.pins.map(sentence).join(' '))] : []),
    ]),
  ];
}
