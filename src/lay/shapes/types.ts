/** A sheet's rows and drawn shapes as plain data, and what is read from them. */
import type { UnitCode } from '../../quantities/index.ts';
import type { Cut, Match, Outline, Piece } from '../types.ts';

/** One result of a sheet, as `src/reckoning` has it. */
export type PieceCell =
  | { readonly kind: 'empty' }
  | { readonly kind: 'quantity'; readonly value: number; readonly unit: UnitCode }
  | { readonly kind: 'span'; readonly low: number; readonly high: number; readonly unit: UnitCode }
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'truth'; readonly truth: boolean }
  | { readonly kind: 'error'; readonly sentence: string };

export type PieceRows = readonly (readonly PieceCell[])[];

/** In mm as it is drawn: x to the right, y downwards, seen from the right side of the cloth. */
export interface DrawnPoint {
  readonly x: number;
  readonly y: number;
  /** The edge to the next point bends through this point, which lies on it half way: a quadratic curve. */
  readonly through?: { readonly x: number; readonly y: number };
}

/** What of a drawn shape is needed to cut it. */
export interface DrawnShape {
  readonly name: string;
  readonly points: readonly DrawnPoint[];
  /** The grain line, from the upper end of the cloth to the lower. */
  readonly grain: readonly [from: { readonly x: number; readonly y: number }, to: { readonly x: number; readonly y: number }];
  readonly marks: readonly { readonly mark: string; readonly x: number; readonly y: number }[];
  /** The drawn outline may lie this far from the true one, in mm. */
  readonly error: number;
}

/** A piece before its allowance is added. Its top is at along = 0, and across grows to the right of the grain line, seen from the right side. */
export interface SeamPiece {
  readonly name: string;
  /** In the rows given, from 0. */
  readonly row: number;
  /** In small letters; “main” where the row says nothing. */
  readonly cloth: string;
  readonly cut: Cut;
  readonly count: number;
  readonly turns: readonly number[];
  /** As drawn: the seam line, or the cutting line where the allowance is included. */
  readonly seam: Outline;
  /** To be added all round, but for the fold; 0 where it is included. */
  readonly allowance: number;
  /** Not there where the piece has none. */
  readonly matches?: readonly Match[];
}

export interface SheetPiece extends Piece, SeamPiece {}

export interface PieceSentence {
  /** In the rows given, from 0; `null` when it speaks of all of them. */
  readonly row: number | null;
  readonly sentence: string;
}
