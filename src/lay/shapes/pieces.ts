/** Pieces with their allowance, as they are laid. */
import { cuttingLine } from './allowance.ts';
import { readSeams } from './read.ts';
import type { DrawnShape, PieceRows, PieceSentence, SheetPiece } from './types.ts';

export interface SheetPieces {
  readonly pieces: readonly SheetPiece[];
  readonly sentences: readonly PieceSentence[];
}

/** @param rows the results of a block of cells, its headings with it */
export function readPieces(rows: PieceRows, shapes: readonly DrawnShape[]): SheetPieces {
  const read = readSeams(rows, shapes);
  const pieces: SheetPiece[] = [];
  const sentences = [...read.sentences];
  for (const piece of read.pieces) {
    const outline = cuttingLine(piece);
    if (outline) pieces.push({ ...piece, outline });
    else sentences.push({ row: piece.row, sentence: `The allowance of “${piece.name}” closes up an opening of it: take a smaller one, or cut the piece in two.` });
  }
  return { pieces, sentences: sentences.sort((a, b) => (a.row ?? -1) - (b.row ?? -1)) };
}
