/** Reading one measure as it was typed: the length, or one sentence on what is wrong with it; nothing typed is changed. */
import { amountIn, inBase, quantity, readQuantity, show, type Quantity } from '../quantities/index.ts';
import { measureCalled, nameOfMeasure, type BodyMeasure } from './measures.ts';

export type MeasureReading =
  | { readonly kind: 'nothing' }
  /** `doubt`: it is a length, though not one that a body is likely to have. */
  | { readonly kind: 'length'; readonly quantity: Quantity; readonly doubt?: string }
  | { readonly kind: 'wrong'; readonly sentence: string };

type Unit = 'cm' | 'in';
const say = (q: Quantity): string => show(q, { system: 'own', inchStep: 8 }).main;

/** What she typed with the unit that a bare number has here: "94" is "94 cm". Other text comes back as it is. */
export function withUnit(raw: string, unit: Unit): string {
  const typed = raw.trim();
  const reading = readQuantity(typed);
  return reading.kind === 'quantity' && reading.quantity.unit === '' ? `${typed} ${unit}` : typed;
}

/** @param last the same measure when it was last taken, in mm: of two guesses at a slip the one nearer to it is offered */
export function readMeasure(of: string, raw: string, unit: Unit, last?: number): MeasureReading {
  const typed = raw.trim();
  if (typed === '') return { kind: 'nothing' };
  const name = nameOfMeasure(of);
  if (typed.startsWith('=')) return { kind: 'wrong', sentence: `${name}: a measure is a figure such as 94 cm, not a formula. Put the measures into the sheet and work on with them there.` };
  const reading = readQuantity(withUnit(typed, unit));
  if (reading.kind === 'refused') return { kind: 'wrong', sentence: `${name}: ${reading.sentence}` };
  if (reading.kind === 'span') return { kind: 'wrong', sentence: `${name}: “${typed}” is a span. Type one figure, such as ${unit === 'cm' ? '94 cm' : '37 in'}.` };
  if (reading.kind === 'text' || reading.quantity.dimension !== 'length') return { kind: 'wrong', sentence: `${name}: “${typed}” is not a length. Type a figure such as ${unit === 'cm' ? '94 cm' : '37 1/4 in'}.` };
  if (reading.quantity.value <= 0) return { kind: 'wrong', sentence: `${name}: a measure is more than 0, and “${typed}” is not.` };
  const known = measureCalled(of);
  const doubt = known && doubtOf(known, reading.quantity, last);
  return { kind: 'length', quantity: reading.quantity, ...(doubt !== undefined && { doubt }) };
}

function doubtOf(known: BodyMeasure, q: Quantity, last: number | undefined): string | undefined {
  const { name, from, to } = known;
  if (q.value >= from && q.value <= to) return undefined;
  const meant = guess(known, q, last);
  const usual = `bodies have ${say(inUnitOf(q, from))} to ${say(inUnitOf(q, to))} there`;
  return `${name}: ${say(q)} is very ${q.value < from ? 'small' : 'large'}; ${usual}. ${meant ? `Is it ${meant}? ` : ''}It is kept as you typed it.`;
}

/** A bound in the unit of what was typed, in whole steps of it. */
const inUnitOf = (q: Quantity, mm: number): Quantity => quantity(Math.round(amountIn(inBase(mm, q.unit), q.unit)), q.unit);

/** A point in the wrong place, or the other unit. */
function guess({ from, to }: BodyMeasure, q: Quantity, last: number | undefined): string | null {
  const amount = amountIn(q, q.unit);
  const other = q.unit === 'in' ? 'cm' : 'in';
  const meant = [quantity(amount * 10, q.unit), quantity(amount / 10, q.unit), ...(q.unit === 'cm' || q.unit === 'in' ? [quantity(amount, other)] : [])]
    .filter(({ value }) => value >= from && value <= to);
  const aim = last ?? Math.sqrt(from * to);
  const away = (one: Quantity) => Math.abs(Math.log(one.value / aim));
  const [best] = meant.sort((a, b) => away(a) - away(b));
  return best ? say(best) : null;
}
