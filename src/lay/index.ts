/**
 * The lay: pieces, cloth and layouts as plain data, what can be laid at all,
 * what has to be laid on this cloth, and the proof that a layout can be cut.
 * The search itself is in `workers/lay`.
 */
export { layoutFaults, MOST_OVERLAP } from './check.ts';
export { bandOf, clothLength, clothOf, clothWidth, foldDepth, lengthUsed, stretchOf } from './cloth.ts';
export { compared, comparisons } from './compare.ts';
export type { Compared, Comparing, Comparison, Offer, Shop } from './compare.ts';
export { layCautions, layFaults, MOST_OUTLINES, MOST_PLACES, MOST_POINTS } from './faults.ts';
export { tiesOf } from './matching.ts';
export type { Tie, Ties } from './matching.ts';
export { areaOf, boundsOf, laidOutline } from './outline.ts';
export { foldChoices, placesOf, waysOf } from './places.ts';
export { piecesPrint } from './print.ts';
export { proofAgainst } from './proof.ts';
export { readPublished } from './published.ts';
export type { Published } from './published.ts';
export { LayRunner, LayWorkerDied, workersFor } from './runner.ts';
export type { LayPort, RunnerOptions } from './runner.ts';
export type { LayAnswer, LayNews, LayRequest, LayResult, LayWorker } from './protocol.ts';
export type { Aim, Cloth, Cut, Fold, Laid, Layout, Match, Outline, Piece, Place, Point, Rectangle, Repeat, Shrinkage, Way } from './types.ts';
