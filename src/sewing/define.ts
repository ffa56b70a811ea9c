/**
 * Each function of the trade is defined once, here-shaped: its arguments, its
 * rule in words, its source, and its working. The last step of the working is
 * the result, so that what is shown and what is computed cannot disagree.
 *
 * Inside `work` a length is a plain number of millimetres, an area of square
 * millimetres, an angle of degrees, a percent its share (3 % is 0.03).
 */
import type { Dimension, Fault, Quantity, Span } from '../quantities/index.ts';
import type { SizeChart } from './size-chart.ts';

/** What an argument must be. `count` is a whole number of at least 1; `size` is a size's label or a number between sizes. */
export type ArgKind = 'length' | 'area' | 'angle' | 'number' | 'count' | 'percent' | 'choice' | 'text' | 'size' | 'chart';

export interface Arg {
  readonly name: string;
  readonly kind: ArgKind;
  /** What to put in, in a few words, for signature help. */
  readonly about: string;
  /** For `choice`: the words allowed. */
  readonly choices?: readonly string[];
  /** Used when the argument is left out; an argument without one is needed. Lengths in mm. */
  readonly usual?: number | string;
}

/** A figure in a step's sum, with its dimension so that it can be shown in any unit. */
export interface Figure {
  readonly value: number;
  readonly dimension: Dimension;
  /** Shows as a percent. */
  readonly percent?: true;
}

export interface Step {
  /** What is done, in words: "hip minus waist". */
  readonly words: string;
  /** The sum with the figures put in, in order: [hip, ' − ', waist]. */
  readonly sum: readonly (Figure | string)[];
  readonly value: Figure | string;
}

export interface Caution {
  /** What may go wrong and why, in one sentence without figures that need a unit shown; figures go in `mend`. */
  readonly sentence: string;
  readonly mend?: Figure;
}

/** Takes the steps down. Each call gives its value back, so that a working reads like the sum it is. */
export interface Pad {
  length(words: string, sum: Step['sum'], mm: number): number;
  area(words: string, sum: Step['sum'], mm2: number): number;
  angle(words: string, sum: Step['sum'], degrees: number): number;
  number(words: string, sum: Step['sum'], value: number): number;
  percent(words: string, sum: Step['sum'], share: number): number;
  text(words: string, sum: Step['sum'], value: string): string;
  /** A pin on the cell that has this result. Does not change the result. */
  caution(sentence: string, mend?: Figure): void;
  /** Ends the working: there is no result, and this sentence says why and what to do. */
  refuse(sentence: string): never;
}

export type Gives = 'length' | 'area' | 'angle' | 'number' | 'percent' | 'size';

/** An argument's value as `work` gets it. */
export type Given = number | string | SizeChart;

export interface SewingFunction {
  readonly name: string;
  readonly topic: 'fit' | 'size' | 'blend' | 'seam' | 'dart' | 'pleat' | 'gather' | 'circle' | 'gore' | 'button' | 'cloth' | 'bias' | 'stretch' | 'sleeve' | 'measure';
  /** What it tells, in one plain sentence. */
  readonly about: string;
  /** Questions it answers, as people ask them: "how deep should pleats be". */
  readonly asks: readonly string[];
  readonly args: readonly Arg[];
  /** When true the last argument may be given any number of times. */
  readonly repeats?: boolean;
  readonly gives: Gives;
  /** The rule in words and signs: "(cloth − finished) ÷ (2 × folds)". */
  readonly rule: string;
  /** A published source, "exact geometry", or "common practice". */
  readonly source: string;
  /** A formula that works in an empty cell, with charts left out. */
  readonly example: string;
  /** `given` follows `args`; usual values are filled in. Must end with the value of its last step. */
  work(given: readonly Given[], pad: Pad): number | string;
}

/** What a cell can hand to a function. */
export type Value = Quantity | Span | SizeChart | string | boolean | null;

export type Outcome =
  | { readonly value: Quantity | string; readonly cautions: readonly Caution[]; readonly steps: readonly Step[] }
  | Fault;
