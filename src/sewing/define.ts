/**
 * Each function of the trade is defined once, here-shaped: its arguments, its
 * rule in words, its source, and its working. The last step of the working is
 * the result, so that what is shown and what is computed cannot disagree.
 *
 * Inside `work` a length is a plain number of millimetres, an area of square
 * millimetres, an angle of degrees, a percent its share (3 % is 0.03).
 */
import type { Dimension, Fault, Quantity, Span, UnitCode } from '../quantities/index.ts';
import type { CellBlock } from './cell-block.ts';
import type { KeptLayout } from './kept-layout.ts';
import type { SizeChart } from './size-chart.ts';

/**
 * What an argument must be. `count` is a whole number of at least 1; `size` is a
 * size's label or a number between sizes; `unit` is the name of a unit of length;
 * `span` is two figures in one cell, or one that stands for both; `block` is a
 * block of cells as it stands; `layout` is the name of a kept layout.
 */
export type ArgKind = 'length' | 'area' | 'angle' | 'number' | 'count' | 'percent' | 'choice' | 'text' | 'size' | 'chart' | 'unit' | 'span' | 'block' | 'layout';

export interface Arg {
  readonly name: string;
  readonly kind: ArgKind;
  /** What to put in, in a few words, for signature help. */
  readonly about: string;
  /** For `choice`: the words allowed. */
  readonly choices?: readonly string[];
  /**
   * Used when the argument is left out; an argument without one is needed.
   * Lengths in mm. `NOT_LESS` and `NOT_MORE` stand for a bound that was not asked
   * for, an empty text for a block that was not given.
   */
  readonly usual?: number | string;
  /** Bounds of a figure, in the base unit. One outside them is refused before `work` is called. */
  readonly above?: number;
  readonly atLeast?: number;
  readonly below?: number;
  readonly atMost?: number;
}

/** A figure in a step's sum, with its dimension so that it can be shown in any unit. */
export interface Figure {
  readonly value: number;
  readonly dimension: Dimension;
  /** Shows as a percent. */
  readonly percent?: true;
}

/** Two figures of one dimension, from `low` up to `high`. */
export interface FigureSpan {
  readonly low: Figure;
  readonly high: Figure;
}

export interface Step {
  /** What is done, in words: "hip minus waist". */
  readonly words: string;
  /** The sum with the figures put in, in order: [hip, ' − ', waist]. */
  readonly sum: readonly (Figure | string)[];
  readonly value: Figure | FigureSpan | string;
}

/**
 * What to do with the figure of a caution: put it in for this argument and the
 * caution is gone. A figure that is rounded for it goes up for `atLeast`, down
 * for `atMost`, and stays as it is for `just`.
 */
export interface Cure {
  readonly put: string;
  readonly way: 'atLeast' | 'atMost' | 'just';
}

export interface Caution {
  /** What may go wrong and why, in one sentence without figures that need a unit shown; figures go in `mend`. */
  readonly sentence: string;
  readonly mend?: Figure;
  /** Only beside `mend`; without it the figure is none of the arguments. */
  readonly cure?: Cure;
}

/** Takes the steps down. Each call gives its value back, so that a working reads like the sum it is. */
export interface Pad {
  length(words: string, sum: Step['sum'], mm: number): number;
  area(words: string, sum: Step['sum'], mm2: number): number;
  angle(words: string, sum: Step['sum'], degrees: number): number;
  number(words: string, sum: Step['sum'], value: number): number;
  percent(words: string, sum: Step['sum'], share: number): number;
  text(words: string, sum: Step['sum'], value: string): string;
  /** A figure whose dimension depends on what was given; its value comes back. */
  figure(words: string, sum: Step['sum'], figure: Figure): number;
  span(words: string, sum: Step['sum'], span: FigureSpan): FigureSpan;
  /** A pin on the cell that has this result. Does not change the result. */
  caution(sentence: string): void;
  /** The same with the figure that mends it; `put` and `way` as in `Cure`, left out where the figure is none of the arguments. */
  caution(sentence: string, mend: Figure, put?: string, way?: Cure['way']): void;
  /** Ends the working: there is no result, and this sentence says why and what to do. */
  refuse(sentence: string): never;
  /** A length as text in the unit of this working, for the sentence of a refusal. */
  say(mm: number): string;
  /** Lengths of this working show in this unit, instead of that of the first length given. */
  showIn(unit: UnitCode): void;
  /** The unit in which the argument at this place was given; undefined where its usual value stands. */
  unitGiven(place: number): UnitCode | undefined;
}

/**
 * What a function gives. `size` is a number or a label; `figure` has the
 * dimension of its last step; `span` is one figure where both ends are the same.
 */
export type Gives = 'length' | 'area' | 'angle' | 'number' | 'percent' | 'size' | 'text' | 'figure' | 'span';

/** An argument's value as `work` gets it. */
export type Given = number | string | FigureSpan | SizeChart | CellBlock | KeptLayout;

export interface SewingFunction {
  readonly name: string;
  readonly topic: 'fit' | 'size' | 'blend' | 'seam' | 'dart' | 'pleat' | 'gather' | 'circle' | 'gore' | 'button' | 'cloth' | 'bias' | 'stretch' | 'sleeve' | 'hem' | 'band' | 'lengthen' | 'shoulder' | 'usual' | 'child' | 'measure';
  /** What it tells, in one plain sentence. */
  readonly about: string;
  /** Questions it answers, as people ask them: "how deep should pleats be". */
  readonly asks: readonly string[];
  readonly args: readonly Arg[];
  /** When true the last argument may be given any number of times, at least once. */
  readonly repeats?: boolean;
  readonly gives: Gives;
  /** The rule in words and signs: "(cloth − finished) ÷ (2 × folds)". */
  readonly rule: string;
  /** A published source, "exact geometry", or "common practice". */
  readonly source: string;
  /** A formula that works in an empty cell; where it needs a block, with `chart`, `measures` or a table of usual values by its name. */
  readonly example: string;
  /** `given` follows `args`; usual values are filled in. Must end with the value of its last step. */
  work(given: readonly Given[], pad: Pad): number | string | FigureSpan;
}

/** What a cell, or a block of them, can hand to a function. */
export type Value = Quantity | Span | SizeChart | CellBlock | KeptLayout | string | boolean | null;

export type Outcome =
  | {
      readonly value: Quantity | Span | string;
      readonly cautions: readonly Caution[];
      /** Empty unless they were asked for. */
      readonly steps: readonly Step[];
      /** The unit in which this working's lengths show by themselves. */
      readonly lengthUnit: UnitCode;
    }
  | Fault;

type GivenFor<A> = A extends { readonly kind: 'choice'; readonly choices: readonly (infer Word)[] }
  ? Word
  : A extends { readonly kind: 'text' | 'choice' }
    ? string
    : A extends { readonly kind: 'unit' }
      ? UnitCode
      : A extends { readonly kind: 'size' }
        ? number | string
        : A extends { readonly kind: 'chart' }
          ? SizeChart
          : A extends { readonly kind: 'block' }
            ? CellBlock | (A extends { readonly usual: '' } ? '' : never)
            : A extends { readonly kind: 'span' }
              ? FigureSpan
              : A extends { readonly kind: 'layout' }
                ? KeptLayout
                : number;

type GivenOf<A extends readonly Arg[], Repeats> = Repeats extends true
  ? A extends readonly [...infer First, infer Last]
    ? readonly [...{ [I in keyof First]: GivenFor<First[I]> }, ...GivenFor<Last>[]]
    : never
  : { readonly [I in keyof A]: GivenFor<A[I]> };

interface Definition<A extends readonly Arg[], Repeats extends boolean> extends Omit<SewingFunction, 'args' | 'repeats' | 'work'> {
  readonly args: A;
  readonly repeats?: Repeats;
  work(given: GivenOf<A, Repeats>, pad: Pad): number | string | FigureSpan;
}

/** Usual values of a bound that nobody asked for: every figure keeps to it. */
export const NOT_LESS = -Infinity;
export const NOT_MORE = Infinity;

/** Gives `work` the types that its `args` promise; does nothing when it runs. */
export function define<const A extends readonly Arg[], const Repeats extends boolean = false>(definition: Definition<A, Repeats>): SewingFunction {
  return definition as unknown as SewingFunction;
}

/** Figures for the sums of steps. */
export const mm = (value: number): Figure => ({ value, dimension: 'length' });
export const mm2 = (value: number): Figure => ({ value, dimension: 'area' });
export const degrees = (value: number): Figure => ({ value, dimension: 'angle' });
export const plain = (value: number): Figure => ({ value, dimension: 'number' });
export const share = (value: number): Figure => ({ value, dimension: 'number', percent: true });
