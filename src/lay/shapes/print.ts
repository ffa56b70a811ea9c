/** By which it is known whether a kept layout is older than its pieces. */
import { piecesPrint } from '../print.ts';
import type { SeamPiece } from './types.ts';

/** What of a lay says which pieces are laid. */
export interface LaidFrom {
  /** The cloth whose pieces are laid; empty for all of them. */
  readonly which: string;
  /** Whether the second list is laid as well. */
  readonly second: boolean;
}

/** The pieces that are laid of those that there are: of the first list those of the cloth, of the second list all. */
export function laidFrom<Piece extends Pick<SeamPiece, 'cloth' | 'count'>>({ which, second }: LaidFrom, first: readonly Piece[], more: readonly Piece[]): { readonly first: readonly Piece[]; readonly second: readonly Piece[] } {
  const cloth = which.trim().toLowerCase();
  return {
    first: first.filter((piece) => piece.count > 0 && (cloth === '' || piece.cloth === cloth)),
    second: second ? more.filter(({ count }) => count > 0) : [],
  };
}

/**
 * The same for pieces of the same names, seam lines, allowances, counts,
 * turns and marks. Taken from the seam lines, so that whoever asks need not cut them.
 */
export function layPrint(from: LaidFrom, first: readonly SeamPiece[], more: readonly SeamPiece[]): string {
  const laid = laidFrom(from, first, more);
  return piecesPrint([...laid.first.map((piece) => uncut(piece, 1)), ...laid.second.map((piece) => uncut(piece, 2))]);
}

const uncut = ({ name, seam, allowance, cut, count, turns, matches = [] }: SeamPiece, list: 1 | 2) =>
  ({ name: `${list} ${Math.round(allowance * 100)} ${name}`, outline: seam, cut, count, turns, matches });
