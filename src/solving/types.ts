export type Bound = 'exactly' | 'atMost' | 'atLeast';

export interface Problem {
  readonly wanted: number;
  readonly bound: Bound;
  /** The input may lie from `low` to `high`, both included. */
  readonly low: number;
  readonly high: number;
  /** Where it is now: of several answers the one nearest to this is given. */
  readonly now: number;
  /** What can be cut are whole multiples of it, from 0; `null` where any value can. */
  readonly step: number | null;
  /** Nothing between two steps means anything, as with a count. Needs a step. */
  readonly whole?: boolean;
  /** The value of so many steps, where `steps * step` is not it to the last bit. */
  readonly ofSteps?: (steps: number) => number;
}

/** An input and the result that it gives. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/**
 * Why there is no exact answer. `jumps`: the result passes what is wanted
 * without being it; `beyond`: it stays on one side; `flat`: it is the same
 * everywhere; `nothing`: there is no result anywhere in the range.
 */
export type Why = 'reached' | 'jumps' | 'beyond' | 'flat' | 'nothing';

export interface Solution {
  readonly why: Why;
  /** The result is what is wanted, within 1e-9 of it. */
  readonly exact: Point | null;
  /** The nearest that can be cut: on a step, and on the right side of a bound. */
  readonly cut: Point | null;
  /** The nearest to what is wanted of all that was tried, on either side. */
  readonly best: Point | null;
  /** For `jumps`: the last before and the first after. */
  readonly jump?: readonly [Point, Point];
  /** Stretches of the range without a result, as far as they were met. */
  readonly gaps: readonly (readonly [from: number, to: number])[];
  /** How often the result was worked out. */
  readonly tried: number;
}

/** Gives inputs to try, is handed the result of each (`null` where there is none). */
export type Trying<T> = Generator<number, T, number | null>;
