/**
 * Pieces: from the rows of a sheet and from drawn shapes to outlines that can
 * be laid. `readPieces` is for whoever lays them; `print.ts` alone is for who
 * has to know only whether they changed, and comes without the clipping library.
 */
export { cuttingLine } from './allowance.ts';
export { COLUMNS } from './columns.ts';
export { TOLERANCE } from './curves.ts';
export { alongGrain, drawnOutline } from './drawn.ts';
export { mmPerPixel, planeThrough, type Known, type Plane } from './homography.ts';
export { readPieces, type SheetPieces } from './pieces.ts';
export { laidFrom, layPrint, type LaidFrom } from './print.ts';
export type { DrawnPoint, DrawnShape, PieceCell, PieceRows, PieceSentence, SeamPiece, SheetPiece } from './types.ts';
export { SHAPE_WORDS } from './words.ts';
