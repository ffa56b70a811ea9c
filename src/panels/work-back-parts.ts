/** What the panel "Work back" is given and what it asks for. */
import type { ShownResult } from './shown.ts';
import type { Working } from '../reckoning/index.ts';
import type { ShowAs } from '../quantities/index.ts';
import type { CellAddress } from '../workbook/index.ts';

export type BackBound = 'exactly' | 'atMost' | 'atLeast';

/** A cell by its words and its place: "Waist ease", "Fit B6". */
export interface BackCell {
  readonly cell: CellAddress;
  readonly label: string;
  readonly place: string;
  /** As it shows. */
  readonly now: string;
}

export interface BackPin {
  readonly place: string;
  readonly sentence: string;
}

/** One value of an input that would do. */
export interface BackOffer {
  readonly which: 'cut' | 'exact' | 'best';
  readonly sentence: string;
  /** The input in the sheet's unit and in the other system. */
  readonly input: ShownResult;
  readonly result: ShownResult;
  /** What would be typed. */
  readonly raw: string;
  /** It may be put in: it is what was asked for. */
  readonly sound: boolean;
  /** Pins that there would be and are not there now. */
  readonly pins: readonly BackPin[];
  /** Pins that are there now and would be gone. */
  readonly gone: readonly BackPin[];
  readonly working: Working;
}

export interface BackFound {
  /** Why there is no exact answer, and where there is no result. */
  readonly sentences: readonly string[];
  readonly offers: readonly BackOffer[];
}

/** An input that may move, and how far. Texts as they are typed. */
export interface BackInput extends BackCell {
  readonly from: string;
  readonly to: string;
  readonly step: string;
  /** What is wrong with them. */
  readonly fault: string;
  readonly found: BackFound | null;
}

export interface WorkBackShown {
  readonly result: BackCell | null;
  readonly wanted: string;
  readonly bound: BackBound;
  /** What is wrong with the wish, or what to do next. */
  readonly sentence: string;
  readonly inputs: readonly BackInput[];
  /** Typed figures that the result comes from and that are not among the inputs. */
  readonly offered: readonly BackCell[];
  readonly searching: boolean;
  /** The sheet has changed since the answers were found. */
  readonly stale: boolean;
  readonly resultAs: ShowAs;
}

export type BackWish =
  | { readonly wish: 'result' | 'input' }
  | { readonly wish: 'wanted'; readonly raw: string }
  | { readonly wish: 'bound'; readonly bound: BackBound }
  | { readonly wish: 'offered'; readonly cell: CellAddress }
  | { readonly wish: 'leave out'; readonly at: number }
  | { readonly wish: 'limit'; readonly at: number; readonly of: 'from' | 'to' | 'step'; readonly raw: string }
  | { readonly wish: 'search' | 'cancel' }
  | { readonly wish: 'put'; readonly at: number; readonly which: BackOffer['which'] };
