/** Invented size charts for tests, as grids of cells. */
import { isFault } from '../../../src/quantities/index.ts';
import { CellBlock, KeptLayout, readChart } from '../../../src/sewing/index.ts';
import type { SizeChart, Value } from '../../../src/sewing/index.ts';
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

/** Tables of usual values, by the names that the examples of the functions have for them. */
const USUAL_ROWS = {
  'usual ease': ['garment | level | fit | from | to | source', 'dress | bust | fitted | 5 cm | 8 cm | invented', 'dress | bust | loose | 10 cm | 15 cm | invented', 'dress | hip | fitted | 1 1/2 in | | invented', 'knit top | bust | close | -5 cm | 0 cm | invented'],
  'usual fullness': ['style | from | to | source', 'gathers, medium cloth | 1.5 | 2 | invented', 'ruffle | 2 | 3 | invented'],
  'usual allowances': ['where | from | to | source', 'side seam | 1.5 cm | 2.5 cm | invented', 'neck edge | 6 mm | 1 cm | invented'],
  'usual steps': ['sold | step | source', 'cloth by the metre | 10 cm | invented', 'cloth by the yard | 1/8 yd | invented'],
  'usual needles': ['cloth | needle | stitch from | stitch to | source', "poplin | '80/12 | 2 | 2.5 | invented", "jersey | '75/11 ball point | 2.5 | 3 | invented"],
} as const;

export const block = (...rows: readonly string[]): CellBlock => new CellBlock(grid(...rows));

export const MEASURES = ['bust | 37 3/8 in', 'waist | 31 in', 'hip | 39 3/4 in'] as const;

/** Everything that an example of a function may call by a name. */
export const EXAMPLE_NAMES: Readonly<Record<string, Value>> = {
  chart: chart(...ONE_WAIST),
  measures: block(...MEASURES),
  needs: block('ask for | for | needed', 'main cloth | skirt | 1.6 m', 'main cloth | bodice | 90 cm', 'buttons | front | 11'),
  cupboard: block('at home | width | there is', 'main cloth | 150 cm | 40 cm', 'main cloth | 90 cm | 2 m', 'buttons | | 3'),
  dress: new KeptLayout({ name: 'dress', state: 'fresh', length: 2140, density: 0.86, width: 1400, left: { length: 360, width: 1400 }, unit: 'cm' }),
  ...Object.fromEntries(Object.entries(USUAL_ROWS).map(([name, rows]) => [name, block(...rows)])),
};
