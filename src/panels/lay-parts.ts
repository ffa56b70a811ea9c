/** What the lay shows, as plain data; `src/app` makes it. */
import type { DrawnLay } from '../pictures/index.ts';
import type { ShowAs } from '../quantities/index.ts';
import type { Area, ClothTyped, Lay } from '../workbook/index.ts';

export interface LayList {
  readonly name: string;
  readonly formula: string;
}

/** A sentence with a button that goes to the cell it speaks of. */
export interface LaySentence {
  readonly sentence: string;
  readonly place: Area | null;
}

export interface LayPieceRow {
  readonly name: string;
  readonly count: string;
}

export interface LayShown {
  /** Another one for every layout, so that a new drawing can be told from a moved one. */
  readonly drawing: DrawnLay;
  /** How each piece lies, in words, by its id. */
  readonly spoken: readonly string[];
  /** Whether each may be turned. */
  readonly turns: readonly boolean[];
  /** “Cut 153.2 cm (60 3/8 in) of cloth 140.0 cm wide.” */
  readonly headline: string;
  /** More sentences on it. */
  readonly remarks: readonly string[];
  /** It was changed by hand. */
  readonly byHand: boolean;
  /** What is wrong with it; only one made by hand can have anything. */
  readonly wrongs: readonly string[];
  readonly canUndo: boolean;
  /** It lies as its pieces and choices are now, and nothing is wrong with it. */
  readonly canKeep: boolean;
}

export interface LayCompared {
  readonly name: string;
  readonly length: string;
  /** In whole steps of the shop. */
  readonly toBuy: string;
  readonly cost: string;
  /** More than the least of all. */
  readonly more: string;
  /** Why there is none, or that it is being looked for. */
  readonly sentence: string;
  readonly least: boolean;
  readonly chosen: boolean;
}

export interface LayKept {
  readonly id: string;
  readonly name: string;
  readonly said: string;
  /** Why it is no longer good; empty when it is. */
  readonly stale: string;
  readonly shown: boolean;
}

export interface LayView {
  readonly choice: Lay;
  readonly as: ShowAs;
  readonly lists: readonly LayList[];
  readonly cloths: readonly string[];
  readonly pieces: readonly LayPieceRow[];
  readonly second: readonly LayPieceRow[];
  /** What is wrong with rows of the lists. */
  readonly rowFaults: readonly LaySentence[];
  /** What is wrong with what she typed here, by field. */
  readonly fieldFaults: readonly { readonly field: string; readonly sentence: string }[];
  /** Why a search cannot be started; empty when it can. */
  readonly cannot: string;
  readonly looking: boolean;
  readonly brief: boolean;
  /** How the search stands. */
  readonly standing: string;
  readonly faults: readonly string[];
  readonly shown: LayShown | null;
  readonly comparing: boolean;
  readonly compared: readonly LayCompared[];
  readonly kept: readonly LayKept[];
  readonly suggestedName: string;
  /** Pages that it takes at a scale of one to so many. */
  readonly pages: readonly { readonly scale: number; readonly label: string }[];
  readonly readonly: boolean;
}

export type LayChange = Partial<Omit<Lay, 'cloth' | 'kept'>> & { readonly cloth?: Partial<ClothTyped> };
