/** The one size that fits several measures best, all together. */
import type { CellBlock } from './cell-block.ts';
import { labelText, listed } from './chart-labels.ts';
import type { ChartMeasure } from './chart-measure.ts';
import { tolerance } from './chart-measure.ts';
import { mm, plain } from './define.ts';
import type { Pad, Value } from './define.ts';
import { orRefuse } from './pad.ts';
import type { SizeChart } from './size-chart.ts';

export interface Level {
  readonly column: ChartMeasure;
  readonly girth: number;
  readonly weight: number;
}

const lengthOf = (cell: Value): number | undefined =>
  (typeof cell === 'object' && cell !== null && 'dimension' in cell && cell.dimension === 'length' ? cell.value : undefined);
const numberOf = (cell: Value): number | undefined =>
  (typeof cell === 'object' && cell !== null && 'dimension' in cell && cell.dimension === 'number' ? cell.value : undefined);
const wordOf = (cell: Value): string | undefined => (typeof cell === 'string' ? (labelText(cell) ?? undefined) : undefined);

/** Each measure with its name and length, whether they stand in rows or in columns, the name first or the length. */
function pairsIn(block: CellBlock): readonly (readonly Value[])[] | undefined {
  const down = block.rows.filter((row) => row.some((cell) => labelText(cell) !== null));
  const across = Array.from({ length: block.width }, (_, i) => block.rows.map((row) => row[i] ?? null)).filter((column) => column.some((cell) => labelText(cell) !== null));
  return [down, across].find((lines) => lines.length > 0 && lines.every((line) => line.filter((cell) => wordOf(cell) !== undefined).length === 1 && line.filter((cell) => lengthOf(cell) !== undefined).length === 1));
}

function weightsIn(block: CellBlock | '', count: number, pad: Pad): readonly number[] {
  if (block === '') return Array.from({ length: count }, () => 1);
  const weights = block.rows.flat().filter((cell) => labelText(cell) !== null).map(numberOf);
  if (weights.length !== count) pad.refuse(`There are ${count} measures and ${weights.length} weights: give a plain number for each measure, in the same order.`);
  if (weights.some((weight) => weight === undefined || !Number.isFinite(weight) || weight < 0)) pad.refuse('A weight is a plain number of at least 0: the more it matters that a measure fits, the larger.');
  if (weights.every((weight) => weight === 0)) pad.refuse('At least one measure must have a weight above 0.');
  return weights as number[];
}

export function levelsOf(chart: SizeChart, measures: CellBlock, weights: CellBlock | '', pad: Pad): readonly Level[] {
  const pairs = pairsIn(measures);
  if (pairs === undefined) return pad.refuse('Give a block in which each measure has its name as in the chart and its length beside it, such as bust and 92 cm.');
  const weight = weightsIn(weights, pairs.length, pad);
  return pairs.map((pair, i) => {
    const [name = ''] = pair.map(wordOf).filter((word) => word !== undefined);
    const [girth = 0] = pair.map(lengthOf).filter((length) => length !== undefined);
    if (girth <= 0) pad.refuse(`The measure ${name} must be more than 0, and is ${pad.say(girth)}.`);
    return { column: orRefuse(chart.measure(name), pad), girth, weight: weight[i] as number };
  });
}

/** How far a girth lies from a size: 0 inside its range, above 0 when the body is larger. */
function off({ column, girth }: Level, place: number): number {
  const range = column.rangeAt(place);
  if (range === undefined) return girth - column.figure(place);
  return girth < range.low ? girth - range.low : Math.max(0, girth - range.high);
}

/** Places of the sizes that have a figure at every level. */
export function placesFor(levels: readonly Level[], pad: Pad): readonly number[] {
  const [first] = levels;
  if (first === undefined) return pad.refuse('Give at least one measure.');
  if (levels.some(({ column }) => column.sizes !== first.column.sizes)) pad.refuse('These measures stand with different sizes in the chart: give measures of one chart.');
  const places = first.column.sizes.labels.map((_, place) => place).filter((place) => levels.every(({ column }) => column.has(place)));
  if (places.length === 0) pad.refuse(`No size of the chart has a figure for each of ${listed(levels.map(({ column }) => column.name))}.`);
  return places;
}

export function misfit(levels: readonly Level[], place: number): number {
  return levels.reduce((sum, level) => sum + level.weight * Math.abs(off(level, place)), 0);
}

/** The place with the least misfit; of two that fit as well, the larger. */
export function bestPlace(levels: readonly Level[], pad: Pad): number {
  const near = tolerance(levels.reduce((sum, { girth, weight }) => sum + girth * weight, 0));
  let best: { readonly place: number; readonly misfit: number } | undefined;
  for (const place of placesFor(levels, pad)) {
    const here = misfit(levels, place);
    if (best === undefined || here <= best.misfit + near) best = { place, misfit: Math.min(here, best?.misfit ?? here) };
  }
  return (best as { readonly place: number }).place;
}

/** The misfit at each level as steps, and their weighted sum. */
export function showMisfit(levels: readonly Level[], place: number, pad: Pad): number {
  const size = levels[0]?.column.sizes.label(place).text ?? '';
  for (const level of levels) {
    const range = level.column.rangeAt(place);
    const sum = range === undefined ? [mm(level.girth), ' − ', mm(level.column.figure(place))] : [mm(level.girth), ' against ', mm(range.low), ' to ', mm(range.high)];
    pad.length(`${level.column.name}: the body against size ${size}; below 0 where the body is smaller`, sum, off(level, place));
  }
  const sum = levels.flatMap((level, i) => [...(i === 0 ? [] : [' + ']), plain(level.weight), ' × ', mm(Math.abs(off(level, place)))]);
  return pad.length('all of them, each as often as it weighs, whichever way it is off', sum, misfit(levels, place));
}
