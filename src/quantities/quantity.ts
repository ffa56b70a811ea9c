/** What a quantity is, and how one is made. */
import { doubleOf, ratioOf, toBase } from './decimal.ts';
import { UNITS } from './units.ts';
import type { Dimension, UnitCode } from './units.ts';

/** One number that knows what it is. Never changed once made. */
export interface Quantity {
  /** In the base unit of the dimension (mm, mm², degrees, or the bare number). */
  readonly value: number;
  readonly dimension: Dimension;
  /** The unit it was given in, which is also the one it shows in by itself. */
  readonly unit: UnitCode;
}

/** Two quantities kept as one, such as `86–90 cm`: from `low` up to `high`. */
export interface Span {
  readonly low: Quantity;
  readonly high: Quantity;
}

/** Why a sum cannot be done, in one sentence for the person who typed it. */
export interface Fault {
  readonly sentence: string;
}

/** True for a `Fault`, whatever else the value might have been (a `Reading` is none). */
export function isFault(x: unknown): x is Fault {
  return typeof x === 'object' && x !== null && 'sentence' in x && !('kind' in x);
}

/** A quantity from a value already in base units (mm, mm², degrees, the bare number; 3 % is 0.03). */
export function inBase(value: number, unit: UnitCode): Quantity {
  // Adding 0 turns negative zero into zero, so that "-0 cm" can never show.
  return { value: value + 0, dimension: UNITS[unit].dimension, unit };
}

/**
 * So many of a unit: `quantity(2.25, 'in')` is 57.15 mm. The amount counts as
 * the decimal that it prints as, so that the value is the one that reading the
 * text gives.
 */
export function quantity(amount: number, unit: UnitCode): Quantity {
  if (!Number.isFinite(amount)) return inBase(amount, unit);
  return inBase(doubleOf(toBase(ratioOf(amount), unit)), unit);
}

/**
 * How many of `unit` a quantity is, as a bare number. What was typed comes back
 * as it was typed: 2.2 in is 2.2 inches and not 2.1999999999999997.
 * @throws RangeError when the unit is of another dimension.
 */
export function amountIn(q: Quantity, unit: UnitCode): number {
  const { dimension, size, words } = UNITS[unit];
  if (dimension !== q.dimension) throw new RangeError(`${q.dimension} cannot be counted ${words || 'without a unit'}`);
  if (size === 1 || !Number.isFinite(q.value)) return q.value;
  const near = q.value / size;
  // A decimal of up to 15 digits survives a double, so if there is one that gives this value it is the one meant.
  const short = Number(near.toPrecision(15));
  return short !== near && quantity(short, unit).value === q.value ? short : near;
}
