/** Invented size charts for tests, as grids of cells. */
import { isFault } from '../../../src/quantities/index.ts';
import { readChart } from '../../../src/sewing/index.ts';
import type { Value , SizeChart } from '../../../src/sewing/index.ts';
import { cellValue } from './formula.ts';

/** Rows of typed cells, parted by bars. */
export function grid(...rows: readonly string[]): Value[][] {
  return rows.map((row) => row.split('|').map((cell) => cellValue(cell.trim())));
}

export function chart(...rows: readonly string[]): SizeChart {
  const read = readChart(grid(...rows));
  if (isFault(read)) throw new Error(read.sentence);
  return read;
}

export const MISSES = [
  "  | '00 | 0 | 2 | 4 | 6 | 8 | 10 | 12",
  'bust girth | 31 1/8 in | 31 3/4 in | 33 in | 34 1/8 in | 35 1/4 in | 36 1/4 in | 37 1/4 in | 38 3/4 in',
  'waist girth curvy | 23 7/8 in | 24 5/8 in | 25 3/8 in | 26 1/8 in | 27 in | 28 in | 29 in | 30 3/4 in',
  'waist girth straight | 25 3/8 in | 26 1/8 in | 26 7/8 in | 27 5/8 in | 28 1/2 in | 29 1/2 in | 30 1/2 in | 32 1/4 in',
] as const;

export const LETTERS = [
  'code | bust_from_cm | bust_to_cm | waist (cm) | hip',
  'S | 82 cm | 90 cm | 66–74 cm | 94 cm',
  'M | 90 cm | 98 cm | 74–82 cm | 102 cm',
  'L | 98 cm | 107 cm | 84–92 cm | 110.5 cm',
] as const;

export const ONE_WAIST = [
  '  | 8 | 10 | 12 | 14',
  'bust girth | 36 1/4 in | 37 1/4 in | 38 3/4 in | 40 3/8 in',
  'waist girth | 29 1/2 in | 30 1/2 in | 32 1/4 in | 34 in',
  'hip girth | 39 in | 40 in | 41 1/2 in | 43 in',
] as const;
