/**
 * A size chart, read once from its block of cells and then asked many times:
 * sizes along one side, measures along the other, body measures as lengths.
 * Every look-up goes through maps and sorted lists.
 */
import { isFault } from '../quantities/index.ts';
import type { Fault, UnitCode } from '../quantities/index.ts';
import { labelText, listed, looksLikeSize, measureLabel, rangeEnd, sizeLabel } from './chart-labels.ts';
import type { SizeLabel } from './chart-labels.ts';
import { ChartMeasure } from './chart-measure.ts';
import type { ChartFigures } from './chart-measure.ts';
import { ChartSizes } from './chart-sizes.ts';
import type { Value } from './define.ts';

type Grid = readonly (readonly Value[])[];

/** A chart read with its sizes along one given side. */
interface Reading {
  readonly sizes: ChartSizes;
  readonly measures: ReadonlyMap<string, ChartMeasure>;
}

export class SizeChart {
  private readonly found = new Map<string, ChartMeasure | Fault>();

  /** One reading, or two where either side could be the sizes: then the measure asked for decides. */
  constructor(private readonly readings: readonly Reading[]) {}

  /** The sizes' labels, smallest first where they are numbers, otherwise in the chart's order. */
  get sizes(): readonly string[] {
    return this.readings[0]?.sizes.labels.map((label) => label.text) ?? [];
  }

  get measures(): readonly string[] {
    return this.readings.flatMap((reading) => [...reading.measures.keys()]);
  }

  /**
   * The measure of this name, whatever its case, underscores and unit: the one
   * called exactly so, else the only one that begins with these words, else the
   * only one that has all of them.
   */
  measure(asked: string): ChartMeasure | Fault {
    let answer = this.found.get(asked);
    if (answer === undefined) {
      answer = this.find(asked);
      this.found.set(asked, answer);
    }
    return answer;
  }

  private find(asked: string): ChartMeasure | Fault {
    const { words } = measureLabel(asked);
    const exact = this.readings.flatMap(({ measures }) => measures.get(words) ?? []);
    const all = exact.length > 0 ? exact : this.readings.flatMap(({ measures }) => [...measures.values()]);
    const each = words.split(' ');
    const ways: ((name: string) => boolean)[] = [
      (name) => name === words,
      (name) => name.startsWith(`${words} `),
      (name) => each.every((word) => name.split(' ').includes(word)),
    ];
    for (const fits of ways) {
      const fitting = all.filter((measure) => fits(measure.name));
      const [only] = fitting;
      if (only !== undefined && fitting.length === 1) return only.fault ?? only;
      if (fitting.length > 1) return { sentence: `“${asked}” fits ${listed(fitting.map((measure) => measure.name))} in the size chart: say which.` };
    }
    return { sentence: `The size chart has no measure called “${asked}”; it has ${listed(this.measures)}.` };
  }
}

/**
 * Reads a size chart from a block of cells whose first row and first column are
 * labels; empty rows, and empty columns before it, do not count. Which side
 * holds the sizes is seen from the labels.
 */
export function readChart(grid: Grid): SizeChart | Fault {
  const filled = grid.filter((row) => row.some((cell) => labelText(cell) !== null));
  const margin = Math.min(...filled.map((row) => row.findIndex((cell) => labelText(cell) !== null)));
  const rows = filled.map((row) => row.slice(margin));
  const width = Math.max(0, ...rows.map((row) => row.length));
  if (rows.length < 2 || width < 2) {
    return { sentence: 'A size chart needs sizes along one side, measures along the other and lengths between them: give the whole block, its labels with it.' };
  }
  const across = (rows[0] ?? []).slice(1);
  const down = rows.slice(1).map((row) => row[0] ?? null);
  const body = rows.slice(1).map((row) => row.slice(1));
  const sizesAcross = (): Reading | Fault => read(across, down, (size, measure) => body[measure]?.[size] ?? null);
  const sizesDown = (): Reading | Fault => read(down, across, (size, measure) => body[size]?.[measure] ?? null);

  const lean = shareOfSizes(across) - shareOfSizes(down);
  const tries = lean > 0 ? [sizesAcross()] : lean < 0 ? [sizesDown()] : [sizesDown(), sizesAcross()];
  const readings = tries.filter((reading): reading is Reading => !isFault(reading));
  return readings.length > 0 ? new SizeChart(readings) : (tries.find((reading): reading is Fault => isFault(reading)) as Fault);
}

function shareOfSizes(labels: readonly Value[]): number {
  const texts = labels.map(labelText).filter((text) => text !== null);
  return texts.length === 0 ? 0 : texts.filter(looksLikeSize).length / texts.length;
}

type CellAt = (size: number, measure: number) => Value;

function read(sizeCells: readonly Value[], measureCells: readonly Value[], cell: CellAt): Reading | Fault {
  const labels: SizeLabel[] = [];
  /** Where along its side each size stands. */
  const at: number[] = [];
  for (const [i, sizeCell] of sizeCells.entries()) {
    const label = sizeLabel(sizeCell);
    const figures = measureCells.some((_, m) => isLength(cell(i, m)));
    if (label === null && figures) return { sentence: `The ${ordinal(i + 1)} size of the size chart has figures but no label: give it one.` };
    if (label === null) continue;
    const twin = labels.find((other) => other.key === label.key);
    if (twin !== undefined) {
      const zero = label.text === '0' ? ', and type 00 as \'00 so that it stays as it is' : '';
      return { sentence: `Two sizes of the size chart are called ${twin.text}: give each its own label${zero}.` };
    }
    labels.push(label);
    at.push(i);
  }
  if (labels.length === 0) return { sentence: 'The size chart has no labels for its sizes.' };
  const sizes = new ChartSizes(labels);
  // From here on a size counts by its place in `sizes`, which puts numbers in order.
  const places = sizes.order.map((i) => at[i] as number);
  const columns = measureCells.flatMap((measureCell, m) => {
    const text = labelText(measureCell);
    return text === null ? [] : [figuresOf(text, places.map((i) => cell(i, m)))];
  });
  const measures = new Map(joined(columns).map((figures) => [figures.name, new ChartMeasure(sizes, figures)]));
  const faults = [...measures.values()].map((measure) => measure.fault);
  if (faults.includes(null)) return { sizes, measures };
  return faults[0] ?? { sentence: 'The size chart holds no lengths: its figures need a unit, such as 92 cm or 36 1/4 in.' };
}

function isLength(value: Value): boolean {
  if (typeof value !== 'object' || value === null) return false;
  if ('dimension' in value) return value.dimension === 'length';
  return 'low' in value && value.low.dimension === 'length';
}

function ordinal(n: number): string {
  const end = n % 100 >= 11 && n % 100 <= 13 ? 'th' : (['th', 'st', 'nd', 'rd'][n % 10] ?? 'th');
  return `${n}${end}`;
}

interface Column extends ChartFigures {
  readonly filled: number;
}

/** One row or column of the chart as figures in mm. */
function figuresOf(text: string, cells: readonly Value[]): Column {
  const label = measureLabel(text);
  const at: number[] = [];
  const low: number[] = [];
  const high: number[] = [];
  let unit: UnitCode | null = null;
  let bare: ChartFigures['bare'] = null;
  let filled = 0;
  for (const [place, cell] of cells.entries()) {
    let [point, from, to] = [NaN, NaN, NaN];
    if (typeof cell === 'object' && cell !== null && 'dimension' in cell) {
      if (cell.dimension === 'length') [point, unit] = [cell.value, unit ?? cell.unit];
      else if (cell.dimension === 'number' && cell.unit === '') bare ??= { place, figure: cell.value };
    } else if (typeof cell === 'object' && cell !== null && 'low' in cell && cell.low.dimension === 'length') {
      [from, to, unit] = [cell.low.value, cell.high.value, unit ?? cell.low.unit];
    }
    if (Number.isFinite(point) || Number.isFinite(from)) filled += 1;
    at.push(point);
    low.push(from);
    high.push(to);
  }
  return { name: label.words, unit: unit ?? label.unit ?? 'cm', labelUnit: label.unit, at, low, high, bare, filled, twice: false };
}

/** Puts "bust from" and "bust to" together, and "bust" with them; leaves out rows and columns that hold no figures. */
function joined(columns: readonly Column[]): ChartFigures[] {
  const ends = new Map<string, { low?: Column; high?: Column }>();
  for (const column of columns) {
    const range = rangeEnd(column.name);
    if (range !== null) ends.set(range.base, { ...ends.get(range.base), [range.end]: column });
  }
  const made = new Map<string, ChartFigures>();
  const isEnd = new Set<Column>();
  for (const [base, { low, high }] of ends) {
    if (low === undefined || high === undefined) continue;
    isEnd.add(low).add(high);
    const none = low.at.map(() => NaN);
    made.set(base, { ...low, name: base, at: none, low: low.at, high: high.at, bare: low.bare ?? high.bare });
  }
  for (const column of columns) {
    if (isEnd.has(column) || (column.filled === 0 && column.bare === null)) continue;
    const before = made.get(column.name);
    if (before === undefined) made.set(column.name, column);
    else if (before.at.every(Number.isNaN) && column.low.every(Number.isNaN)) made.set(column.name, { ...before, at: column.at, bare: before.bare ?? column.bare });
    else made.set(column.name, { ...before, twice: true });
  }
  return [...made.values()];
}
