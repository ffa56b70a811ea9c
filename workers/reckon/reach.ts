/**
 * How many cells a formula may reach over and fill. The engine makes room in its
 * graph for every cell of a block, empty or not: a million take it seconds, and
 * a thousand million all the memory there is.
 */
import { cellName } from '../../src/formula/index.ts';
import { AbsoluteCellRange } from './internals.ts';
import type { Inside, ParseResult, Place } from './internals.ts';

export type Predictor = Inside['_crudOperations']['operations']['arraySizePredictor'];

/** Cells of one block in a formula. Whole columns and rows are not counted: only their filled cells are looked at. */
export const MOST_USED = 1_000_000;
/** Cells that the results of one formula may fill. */
export const MOST_FILLED = 100_000;
/** Up to here a formula is within bounds wherever it stands. */
export const SHARED_REACH = 10_000;

export interface Extent {
  /** Cells of its largest block, or of its results. */
  readonly most: number;
  /** The result fills one cell. */
  readonly single: boolean;
  readonly fault?: string;
}

export function extent({ ast, dependencies }: ParseResult, place: Place, predictor: Predictor): Extent {
  let most = 1;
  for (const dependency of dependencies as readonly { absolutize(place: Place): unknown }[]) {
    const block = dependency.absolutize(place);
    if (!(block instanceof AbsoluteCellRange)) continue;
    const cells = block.width() * block.height();
    if (!Number.isFinite(cells)) continue;
    if (cells > MOST_USED) {
      const { start, end } = block;
      return { most: cells, single: true, fault: `${cellName(start.row, start.col)}:${cellName(end.row, end.col)} has ${count(cells)} cells, and a block in a formula can have ${count(MOST_USED)}: use whole columns instead, as in A:C.` };
    }
    most = Math.max(most, cells);
  }
  const size = predictor.checkArraySize(ast, place);
  const filled = size.isRef ? 1 : size.width * size.height;
  const single = filled === 1;
  if (filled < 1) return { most, single, fault: 'The results would fill no cell at all.' };
  if (filled <= MOST_FILLED) return { most: Math.max(most, filled), single };
  const fault = Number.isFinite(filled)
    ? `The results would fill ${count(filled)} cells; one formula can fill ${count(MOST_FILLED)}.`
    : 'The results would fill whole columns or rows: name the block that is meant, as in A1:A100.';
  return { most: filled, single, fault };
}

const count = (n: number): string => n.toLocaleString('en');
