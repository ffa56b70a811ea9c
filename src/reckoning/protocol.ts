/**
 * What the page and the engine's worker say to each other, over comlink.
 * The worker is the only truth about results; it can be killed at any moment
 * and rebuilt from the workbook by `open`.
 */
import type { UnitCode } from '../quantities/index.ts';
import type { Area, Book, CellAddress, Effect, NamedArea, SheetId } from '../workbook/types.ts';

/** The kind of a result, as the byte that travels. */
export const KIND = { empty: 0, quantity: 1, text: 2, truth: 3, error: 4, span: 5 } as const;
export type Kind = (typeof KIND)[keyof typeof KIND];

/**
 * Changed results of one sheet, a column for each fact; entry `i` of every
 * column speaks of one cell. The arrays' buffers are transferred, not copied.
 */
export interface SheetChanges {
  readonly sheet: SheetId;
  readonly row: Uint32Array;
  readonly col: Uint16Array;
  /** A `KIND`. */
  readonly kind: Uint8Array;
  /** quantity: the value in base units; span: its low end; truth: 0 or 1. */
  readonly number: Float64Array;
  /** Place in `UNIT_CODES`. */
  readonly unit: Uint8Array;
  /** High ends of spans; `null` when there is no span among them. */
  readonly high: Float64Array | null;
  /** Texts and error sentences, in the order in which they occur; a cell without one has no entry. */
  readonly text: readonly string[];
  /**
   * The cautions of those cells that have any: `at` is a place in the columns.
   * A cell of the columns that is not named here has none; without this, none has.
   */
  readonly cautions?: readonly { readonly at: number; readonly cautions: readonly CellCaution[] }[];
}

/** What a function of the trade warns of in one cell: a pin. */
export interface CellCaution {
  /** The function that warns. */
  readonly by: string;
  readonly sentence: string;
  /** Another when any figure of the call or the sentence is another. */
  readonly print: string;
  /** The figure that the sentence speaks of. */
  readonly mend?: Result;
  /** Put the figure in for this argument and the caution is gone. `cell`: the cell that alone stands for the argument, if one does. `way`: which way the figure may be rounded. */
  readonly cure?: { readonly put: string; readonly way: 'atLeast' | 'atMost' | 'just'; readonly cell: CellAddress | null };
}

/**
 * All results that an edit changed, and the revision of the workbook that it
 * answers. Results that only moved, because rows or columns came or went above
 * or before them, are not among them: the page moves its own (`Results.shift`),
 * and places are those after the move.
 */
export interface ChangeSet {
  readonly revision: number;
  /** True after `open`: forget every earlier result. */
  readonly whole: boolean;
  readonly sheets: readonly SheetChanges[];
  /** Milliseconds of the worker's own time. */
  readonly took: number;
}

/** One result as an object: for a few cells, never for thousands. */
export type Result =
  | { readonly kind: 'empty' }
  | { readonly kind: 'quantity'; readonly value: number; readonly unit: UnitCode }
  | { readonly kind: 'span'; readonly low: number; readonly high: number; readonly unit: UnitCode }
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'truth'; readonly truth: boolean }
  | { readonly kind: 'error'; readonly sentence: string };

/** One line of a working. `sum` alternates words and results: "74.5 cm − 70 cm" is [74.5 cm, ' − ', 70 cm]. */
export interface WorkingStep {
  readonly words: string;
  readonly sum: readonly (string | Result)[];
  readonly value: Result;
}

export interface WorkingCaution {
  readonly sentence: string;
  /** The figure that would satisfy it, if there is one. */
  readonly mend?: Result;
}

/** One call of a function of the trade: what went in, and the steps to its result. */
export interface WorkingCall {
  readonly name: string;
  readonly about: string;
  readonly rule: string;
  readonly source: string;
  readonly given: readonly { readonly name: string; readonly about: string; readonly value: Result; readonly from: Area | null }[];
  readonly steps: readonly WorkingStep[];
  readonly cautions: readonly WorkingCaution[];
}

/** A sum, a function or a cell of a formula, with what it came to. */
export interface WorkingPart {
  /** As it would be written, shortened where it is long. */
  readonly text: string;
  /** `null` for several cells, and for what was not worked out. */
  readonly value: Result | null;
  /** The cells that it stands for. */
  readonly area?: Area;
  /** In a branch that was not taken. */
  readonly unused?: true;
  /** What it was worked out from; figures that say themselves are not among them. */
  readonly parts: readonly WorkingPart[];
}

/**
 * A figure that only lacks its unit, and a unit with which there is a result.
 * Either figures in the formula itself, counted from 0 as `figuresIn` in
 * `src/formula` counts them, or a typed figure in another cell.
 */
export interface UnitMend {
  readonly cell: CellAddress;
  /** Empty for a typed figure in another cell. */
  readonly figures: readonly number[];
  /** The figures' values, to be sure that they are the ones meant. */
  readonly values: readonly number[];
  /** Two figures that are one to people: `3/8`. */
  readonly fraction?: string;
  readonly unit: UnitCode;
  /** No other figure says which unit is likelier. */
  readonly guessed: boolean;
}

/** A cell as a formula on the sheet of the explained cell would write it. */
export interface NamedCell {
  readonly cell: CellAddress;
  readonly text: string;
}

/** Where an error began. */
export interface WorkingFault {
  /** The cell that is to be mended first; not there when it is the explained cell itself. */
  readonly cause?: NamedCell;
  /** The cells of a circle, each needing the next, the last the first. */
  readonly circle?: readonly NamedCell[];
  readonly mends: readonly UnitMend[];
}

/** How a cell's result came about. */
export interface Working {
  readonly result: Result;
  /** Present when the cell's formula is one call of a function of the trade. */
  readonly call?: WorkingCall;
  /** Present for any other formula. */
  readonly tree?: WorkingPart;
  /** Parts of the tree were left out, since there are too many. */
  readonly treeCut?: true;
  /** Calls of functions of the trade within the formula, outermost first. */
  readonly inner?: readonly WorkingCall[];
  /** Present for an error. */
  readonly fault?: WorkingFault;
  /** The cells and blocks that the formula uses, as they stand in it. */
  readonly uses: readonly { readonly area: Area; readonly text: string; readonly value: Result | null }[];
}

/** What the entry line and the reference need to know of a function. */
export interface FunctionCard {
  readonly name: string;
  /** One of the trade's own; else a standard function. */
  readonly trade: boolean;
  /** In words, as a heading. */
  readonly topic: string;
  readonly about: string;
  /** Questions it answers, as people ask them. */
  readonly asks: readonly string[];
  /** Empty where `about` says it all. */
  readonly rule: string;
  readonly source: string;
  /** A formula that works in an empty cell, given the blocks of cells in `needs`. */
  readonly example: string;
  readonly needs: readonly Sample[];
  /** What becomes of units, in a sentence. */
  readonly units: string;
  /** How it differs from its source; empty where it does not. */
  readonly differs: string;
  /** `kind` in words, such as "a length"; empty where any value will do. */
  readonly args: readonly { readonly name: string; readonly about: string; readonly kind: string; readonly optional: boolean; readonly choices?: readonly string[] }[];
  /** So many of the last arguments may be given again and again; 0 for none. */
  readonly repeats: number;
}

/** A block of cells that examples use by a name. */
export interface Sample {
  readonly name: string;
  readonly kind: NamedArea['kind'];
  /** What is typed in the cells. */
  readonly rows: readonly (readonly string[])[];
}

/** What a formula gives in an empty cell: one result, or a block of which the first rows and columns are here. */
export interface Example {
  readonly results: readonly (readonly Result[])[];
  /** Size of the whole block. */
  readonly height: number;
  readonly width: number;
}

/** One set of values to try: raw texts, as they would be typed, by input cell. */
export interface Trial {
  readonly label: string;
  readonly values: readonly { readonly cell: CellAddress; readonly raw: string }[];
}

/** `results[t][o]`: trial `t`, output `o`. */
export interface TrialResults {
  readonly results: readonly (readonly Result[])[];
  /**
   * `differences[t][o]`: that result less the first trial's. Quantities of one
   * dimension give a quantity (0 when equal); equal texts give `empty`, other
   * texts give the text of the trial; `null` where there is none to take.
   */
  readonly differences: readonly (readonly (Result | null)[])[];
  /** `workings[t][w]`: how each of the cells asked for came about in that trial. */
  readonly workings?: readonly (readonly Working[])[];
  /** `pins[t]`: every caution on what depends on the inputs. */
  readonly pins?: readonly (readonly TrialPin[])[];
}

/** What is to be told of each trial besides its results. */
export interface TrialMore {
  /** The trial whose results are taken off the others'; the first where it is not given. */
  readonly against?: number;
  readonly workings?: readonly CellAddress[];
  readonly pins?: true;
}

export interface TrialPin {
  readonly cell: CellAddress;
  readonly caution: CellCaution;
}

/** What is wanted of a result, and which input may move for it. All figures in base units. */
export interface BackSearch {
  readonly result: CellAddress;
  readonly wanted: { readonly value: number; readonly unit: UnitCode };
  readonly bound: 'exactly' | 'atMost' | 'atLeast';
  readonly input: CellAddress;
  /** The unit of the input, which says what its figures are. */
  readonly unit: UnitCode;
  readonly low: number;
  readonly high: number;
  readonly now: number;
  /** What can be cut are whole multiples of it; `null` where any value can. */
  readonly step: number | null;
  /** A count: nothing between two steps means anything. */
  readonly whole?: true;
}

/** An answer, and what would come of it. */
export interface BackPoint {
  readonly input: number;
  readonly result: Result;
  /** Every caution there would be on what depends on the input. */
  readonly pins: readonly TrialPin[];
  /** Of the result. */
  readonly working: Working;
}

export interface BackAnswer {
  /** Why there is no exact answer: the result `jumps` over what is wanted, stays `beyond` it, is `flat`, or there is `nothing`. */
  readonly why: 'reached' | 'jumps' | 'beyond' | 'flat' | 'nothing';
  readonly exact: BackPoint | null;
  /** The nearest that can be cut, on the right side of a bound. */
  readonly cut: BackPoint | null;
  /** The nearest to what is wanted that was met, on either side. */
  readonly best: BackPoint | null;
  /** The last before a jump and the first after it. */
  readonly jump?: readonly [BackPlain, BackPlain];
  /** Stretches of the input without a result. */
  readonly gaps: readonly (readonly [from: number, to: number])[];
  /** What the sheet says where there is no result. */
  readonly without?: string;
  /** The result depends on the input. */
  readonly depends: boolean;
  /** How often the sheet was worked out. */
  readonly tried: number;
}

export interface BackPlain {
  readonly input: number;
  readonly result: number;
}

export interface Reckoner {
  /** Builds everything anew. */
  open(revision: number, book: Book): ChangeSet;
  /** Takes the effects of one or more edits, in order. */
  apply(revision: number, effects: readonly Effect[]): ChangeSet;
  working(cell: CellAddress): Working;
  catalogue(): readonly FunctionCard[];
  /** Works a formula out in an empty cell of a workbook that holds nothing but the samples. Touches nothing; needs no workbook opened. */
  example(formula: string): Example;
  /** Every formula cell whose result depends on any of these cells, through any number of steps, in reading order. */
  dependents(of: readonly CellAddress[]): readonly CellAddress[];
  /** Works every trial out, leaves the engine as it was. */
  tryOut(trials: readonly Trial[], outputs: readonly CellAddress[], more?: TrialMore): TrialResults;
  /** The cells with typed figures that a result comes from, the nearest first; not those of large blocks. */
  inputsOf(result: CellAddress): readonly CellAddress[];
  /** Looks for the input that makes a result what is wanted; the engine stays as it was. `null` when it was cancelled, or an edit came. */
  workBack(search: BackSearch): BackAnswer | null | Promise<BackAnswer | null>;
  /** Gives up the search that is under way. */
  cancelSearch(): void;
}
