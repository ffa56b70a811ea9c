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
