/**
 * Reading what people type into a cell: a quantity, a span, text, or a figure
 * that is wrong, with a sentence. The reference for what is accepted is
 * `tests/unit/quantities/read.test.ts`.
 *
 * A span is two figures with a dash, a hyphen or `to` between; a figure of a
 * span without a unit takes the other's. A hyphen between a whole number and
 * a fraction below 1 joins them (`2-1/4"` is 2 1/4 in), and so does one
 * between feet and inches (`5'-6"`).
 */
import { isDash, isHyphen, isSpace, skipSpaces } from './cursor.ts';
import type { Cursor } from './cursor.ts';
import { doubleOf, plus, toBase, ZERO } from './decimal.ts';
import type { Ratio } from './decimal.ts';
import { inBase } from './quantity.ts';
import type { Quantity, Span } from './quantity.ts';
import { startsAmount } from './read-amount.ts';
import type { Objection, ReadAs } from './read-amount.ts';
import { readMeasure } from './read-measure.ts';
import type { Measure, Part } from './read-measure.ts';
import * as refusals from './refusals.ts';
import { UNITS } from './units.ts';
import type { UnitCode } from './units.ts';

export type { ReadAs } from './read-amount.ts';

/**
 * `refused` with `meant: 'figure'` is a figure that is wrong (`2 1/0 in`);
 * with `meant: 'text'` it is kept as text and the sentence is a remark
 * (`8 buttons`). `text` is nothing like a figure (`XS`, `10/12`).
 */
export type Reading =
  | { readonly kind: 'quantity'; readonly quantity: Quantity }
  | { readonly kind: 'span'; readonly span: Span }
  | { readonly kind: 'text' }
  | { readonly kind: 'refused'; readonly sentence: string; readonly meant: 'figure' | 'text' };

const TEXT: Reading = { kind: 'text' };

/** Longer than any figure, so that a pasted page is text at once. */
const LONGEST = 400;

/** Amounts from here on have more figures than a double keeps. */
const TOO_LARGE = 1e15;

/** Reads a cell's text. Never throws; the time it takes grows with the length of the text and no faster. */
export function readQuantity(text: string, as: ReadAs = {}): Reading {
  if (text.length > LONGEST) return /^\s*[-+−]?[\d.,]+\s*$/.test(text) ? refuse(refusals.tooLong) : TEXT;
  const c: Cursor = { text: text.trim(), at: 0 };
  if (!mayBeFigure(c.text)) return TEXT;
  const first = readMeasure(c, as);
  if (first === null) return TEXT;
  if (first.stop !== null) return first.stop === 'text' ? TEXT : { kind: 'refused', ...first.stop };
  if (c.at === c.text.length) return single(first, c.text);
  const dash = readDash(c);
  if (dash === null) return TEXT;
  const second = readMeasure(c, as);
  if (second === null) return TEXT;
  if (second.stop !== null) return second.stop === 'text' ? TEXT : { kind: 'refused', ...second.stop };
  return c.at === c.text.length ? span(first, second, dash, c.text) : TEXT;
}

/** A quick look that sends most text away: figures start with a digit, a fraction or a sign, on one line. */
function mayBeFigure(text: string): boolean {
  const first = text[0];
  if (first === undefined) return false;
  const signed = first === '+' || isHyphen(first) || isDash(first);
  return (signed || startsAmount(text, 0)) && !/[\n\r]/.test(text);
}

type Dash = 'hyphen' | 'dash';

/** What stands between the ends of a span; a tight hyphen is told apart, since it has other uses. */
function readDash(c: Cursor): Dash | null {
  const from = c.at;
  skipSpaces(c);
  const here = c.text[c.at];
  if (isHyphen(here)) {
    c.at += 1;
    const tight = c.at === from + 1 && !isSpace(c.text[c.at]);
    skipSpaces(c);
    return tight ? 'hyphen' : 'dash';
  }
  if (isDash(here)) c.at += 1;
  else if (/^to(?![a-z])/i.test(c.text.slice(c.at, c.at + 3))) c.at += 2;
  else return null;
  skipSpaces(c);
  return 'dash';
}

const refuse = (sentence: string): Reading => ({ kind: 'refused', sentence, meant: 'figure' });

const objected = (objection: Objection): Reading => (objection === 'text' ? TEXT : { kind: 'refused', ...objection });

function single(m: Measure, written: string): Reading {
  const q = total(m, null, written);
  return 'kind' in q ? q : { kind: 'quantity', quantity: q };
}

function span(first: Measure, second: Measure, dash: Dash, written: string): Reading {
  if (dash === 'hyphen' && isFeetAndInches(first, second)) {
    return single({ ...first, parts: [...first.parts, ...second.parts] }, written);
  }
  const low = total(first, unitOf(second), written);
  if ('kind' in low) return low;
  const high = total(second, unitOf(first), written);
  if ('kind' in high) return high;
  if (low.dimension !== high.dimension) return refuse(refusals.unlikeEnds(written));
  if (low.value <= high.value) return { kind: 'span', span: { low, high } };
  // 555-123 and 2026-11 are codes and dates, no spans.
  const bare = unitOf(first) === null && unitOf(second) === null;
  return bare && dash === 'hyphen' ? TEXT : refuse(refusals.downwards(written));
}

/** `5'-6"`: whole feet, and inches without a sign that do not make another foot. */
function isFeetAndInches(first: Measure, second: Measure): boolean {
  const [feet, inches] = [first.parts.at(-1)!, second.parts[0]!];
  return feet.unit === 'ft' && feet.amount.whole && inches.unit === 'in' && second.sign === ''
    && second.parts.length === 1 && doubleOf(inches.amount.ratio) < 12;
}

/** The unit that an end of a span lends to the other: its last part's. */
const unitOf = (m: Measure): UnitCode | null => m.parts.at(-1)!.unit;

/** The sum of a measure's parts; `lent` is the unit for a number that has none. */
function total(m: Measure, lent: UnitCode | null, written: string): Quantity | Reading {
  const parts = withUnits(m.parts, lent);
  const units = parts.map((part) => part.unit);
  if (parts.length > 1 && units.every((unit) => unit === null)) return severalNumbers(parts, written);
  for (const { amount, unit } of parts) {
    const objection = amount.objection(unit);
    if (objection !== null) return objected(objection);
    if (doubleOf(amount.ratio) >= TOO_LARGE) return refuse(refusals.tooLarge(written));
  }
  const misfit = misfitOf(parts, written);
  if (misfit !== null) return refuse(misfit);
  const sum = parts.reduce<Ratio>((all, { amount, unit }) => plus(all, toBase(amount.ratio, unit ?? '')), ZERO);
  const value = doubleOf(sum);
  return inBase(m.sign === '-' ? -value : value, units[0] ?? '');
}

/** `12 14 16` is a list, but `1 250` may be meant as one number, and a remark says so. */
function severalNumbers(parts: readonly Part[], written: string): Reading {
  const inThrees = parts.every(({ amount }, i) => amount.whole && (i === 0 ? /^[1-9]\d{0,2}$/ : /^\d{3}$/).test(amount.written));
  return inThrees ? { kind: 'refused', sentence: refusals.spacedThousands(written), meant: 'text' } : TEXT;
}

/** Gives a number without a unit the one that it must have: `5'6` is 5 ft 6 in. */
function withUnits(parts: readonly Part[], lent: UnitCode | null): readonly Part[] {
  const last = parts.at(-1)!;
  if (last.unit !== null) return parts;
  const unit = parts.length === 1 ? lent : parts.at(-2)!.unit === 'ft' && isBelowTwelve(last) ? 'in' : null;
  return unit === null ? parts : [...parts.slice(0, -1), { ...last, unit }];
}

const isBelowTwelve = (part: Part): boolean => doubleOf(part.amount.ratio) < 12;

/** Why several parts do not make one length. */
function misfitOf(parts: readonly Part[], written: string): string | null {
  for (let i = 1; i < parts.length; i += 1) {
    const before = parts[i - 1]!;
    const part = parts[i]!;
    if (before.unit === null) return refusals.twoNumbers(written);
    if (part.unit === null) {
      return before.unit === 'ft' ? refusals.manyInches(written) : refusals.lacksUnit(written, part.amount.written);
    }
    const [a, b] = [UNITS[before.unit], UNITS[part.unit]];
    if (a.dimension !== 'length' || b.dimension !== 'length' || a.system !== b.system) return refusals.mixedUnits(written);
    if (a.size <= b.size) return refusals.wrongOrder(written);
  }
  return null;
}
