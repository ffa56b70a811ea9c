/** How far an input may move and in what steps: what is offered, and what is read from what she types. Pure. */
import { UNITS, exactText, inBase, quantity, readQuantity, show, type Quantity, type UnitCode } from '../quantities/index.ts';

/** As they are typed; no step means that any value can be cut. */
export interface LimitTexts {
  readonly from: string;
  readonly to: string;
  readonly step: string;
}

export interface Limits {
  readonly low: number;
  readonly high: number;
  readonly step: number | null;
  readonly whole: boolean;
}

/** Steps in which each unit is cut and marked: for large figures, and for those below `few` of the unit. */
const STEPS: Partial<Record<UnitCode, readonly [large: number, small: number, few: number]>> = {
  mm: [5, 1, 100], cm: [0.5, 0.1, 10], m: [0.05, 0.01, 1], in: [1 / 8, 1 / 16, 4], ft: [1 / 8, 1 / 16, 1 / 3], yd: [1 / 8, 1 / 16, 1 / 9], '%': [1, 1, 1], deg: [1, 1, 1],
};
const IN_INCHES: readonly UnitCode[] = ['ft', 'yd'];

/** From half to double of what it is now, in steps of what a tape shows; a count from 1 in whole numbers. */
export function usualLimits(now: Quantity): LimitTexts {
  const { unit, value } = now;
  const { size, dimension } = UNITS[unit];
  const amount = Math.abs(value) / size;
  const stepUnit = IN_INCHES.includes(unit) ? 'in' : unit;
  if (dimension === 'number' && unit === '') {
    if (Number.isInteger(value)) return { from: String(Math.min(1, value)), to: String(Math.max(10, 2 * value)), step: '1' };
    return { from: exactText(inBase(roundedTo(value / 2, 0.1), '')), to: exactText(inBase(roundedTo(value * 2, 0.1), '')), step: '0.1' };
  }
  const steps = STEPS[unit];
  const step = steps ? quantity(amount >= steps[2] ? steps[0] : steps[1], stepUnit) : null;
  const end = (part: number): string => {
    const wanted = amount === 0 ? (part < 1 ? 0 : 10 * size) : value * part;
    return typedText(inBase(step ? roundedTo(wanted, step.value) : wanted, unit));
  };
  const ends = value < 0 ? [end(2), end(0.5)] : [end(0.5), end(2)];
  return { from: ends[0]!, to: ends[1]!, step: step ? typedText(step) : '' };
}

const roundedTo = (value: number, step: number): number => Number((Math.round(value / step) * step).toPrecision(12));

/** As it is typed: inches as fractions where that is exactly it. */
export function typedText(figure: Quantity): string {
  if (UNITS[figure.unit].system === 'inch' && figure.dimension === 'length') {
    const text = show(figure, { system: 'own', inchStep: 32, plain: true }).main;
    const read = readQuantity(text);
    if (read.kind === 'quantity' && Math.abs(read.quantity.value - figure.value) <= 1e-12 * Math.abs(figure.value)) return text;
  }
  return exactText(figure);
}

/** A figure of the kind of `like`, or a sentence: what is wrong and what to do. A bare number takes its unit. */
export function readLike(raw: string, like: UnitCode): Quantity | { readonly sentence: string } {
  const reading = readQuantity(raw);
  if (reading.kind === 'refused') return { sentence: reading.sentence };
  if (reading.kind !== 'quantity') return { sentence: `“${raw}” is no figure: write ${EXAMPLES[UNITS[like].dimension]}.` };
  const { dimension } = UNITS[like];
  if (reading.quantity.dimension === dimension) return reading.quantity;
  return { sentence: `“${raw}” is of another kind: write ${EXAMPLES[dimension]}.` };
}

const EXAMPLES = { number: 'a number, such as 8', length: 'a length with its unit, such as 80 cm or 31 1/2 in', area: 'an area, such as 2 m²', angle: 'an angle, such as 30°' } as const;

export function readLimits({ from, to, step }: LimitTexts, like: UnitCode): Limits | { readonly sentence: string } {
  const [low, high] = [readLike(from, like), readLike(to, like)];
  if ('sentence' in low) return { sentence: `From: ${low.sentence}` };
  if ('sentence' in high) return { sentence: `To: ${high.sentence}` };
  if (low.value > high.value) return { sentence: 'It cannot go from more to less: write the smaller figure first.' };
  if (step.trim() === '') return { low: low.value, high: high.value, step: null, whole: false };
  const read = readLike(step, like);
  if ('sentence' in read) return { sentence: `Steps: ${read.sentence}` };
  if (read.value <= 0) return { sentence: 'Steps: write a step above 0, or leave it empty where any value can be cut.' };
  return { low: low.value, high: high.value, step: read.value, whole: like === '' && Number.isInteger(read.value) };
}
