/**
 * One measure of a size chart: a figure or a range of figures for each size,
 * ready to be looked up. Places count from 0 in the order of the sizes.
 */
import type { Fault, UnitCode } from '../quantities/index.ts';
import type { ChartSizes } from './chart-sizes.ts';
import { sayFigure } from './pad.ts';

/** What the chart's cells say of one measure, by place; NaN where there is nothing. Lengths in mm. */
export interface ChartFigures {
  readonly name: string;
  /** The unit in which its figures stand. */
  readonly unit: UnitCode;
  /** The unit that its label names. */
  readonly labelUnit: UnitCode | null;
  readonly at: readonly number[];
  readonly low: readonly number[];
  readonly high: readonly number[];
  /** The first figure without a unit, if there is one. */
  readonly bare: { readonly place: number; readonly figure: number } | null;
  /** More than one row or column is called so. */
  readonly twice: boolean;
}

/** All sizes that have the same figure, or a run of figures that differ by less than can be told apart. */
interface Rung {
  readonly figure: number;
  /** The smallest and the largest size that have it. */
  readonly first: number;
  readonly last: number;
  /** The smallest size with this figure or more, and the largest with this figure or less. */
  readonly leastUp: number;
  readonly mostDown: number;
}

/** The size that has a range, with the edges towards its neighbours. */
export interface RangeOfSize {
  readonly place: number;
  readonly low: number;
  readonly high: number;
  /** What the chart has for the size itself: its figure, or the middle of its range. */
  readonly at: number;
  /** Where the size ends towards its neighbours: half-way where two ranges leave a gap or overlap. */
  readonly from: number;
  readonly to: number;
}

/** Differences below this share of a girth come from arithmetic, not from a tape. */
const SAME = 1e-9;
export const tolerance = (girth: number): number => SAME * Math.abs(girth);

export class ChartMeasure {
  readonly name: string;
  readonly unit: UnitCode;
  /** Whether sizes have ranges from one figure up to another. */
  readonly ranged: boolean;
  /** Why this measure cannot be used, or null. */
  readonly fault: Fault | null;
  private readonly figures: Float64Array;
  private rungList: readonly Rung[] | undefined;
  private rangeList: readonly RangeOfSize[] | undefined;
  private rangeByPlace: ReadonlyMap<number, RangeOfSize> | undefined;

  constructor(
    readonly sizes: ChartSizes,
    private readonly cells: ChartFigures,
  ) {
    this.name = cells.name;
    this.unit = cells.unit;
    this.ranged = cells.low.some((low) => Number.isFinite(low));
    this.figures = Float64Array.from(cells.at, (at, place) => (Number.isFinite(at) ? at : ((cells.low[place] as number) + (cells.high[place] as number)) / 2));
    this.fault = this.check();
  }

  private check(): Fault | null {
    const { name, sizes, cells } = this;
    if (cells.twice) return { sentence: `Two measures of the size chart are called ${name}: rename one of them.` };
    if (cells.bare !== null) {
      const { place, figure } = cells.bare;
      const write = cells.labelUnit === null ? `${figure} cm or ${figure} in` : `${figure} ${cells.labelUnit}`;
      return { sentence: `In the size chart, ${name} of size ${sizes.label(place).text} is ${figure} without a unit: write ${write}, and so for the others.` };
    }
    if (!this.ranged) return null;
    for (const place of sizes.labels.keys()) {
      const [low, high] = [cells.low[place] as number, cells.high[place] as number];
      const said = `In the size chart, ${name} of size ${sizes.label(place).text}`;
      if (low >= high) return { sentence: `${said} runs from ${this.say(low)} to ${this.say(high)}: the first figure must be the smaller.` };
      if (Number.isFinite(cells.at[place]) && !Number.isFinite(low + high)) return { sentence: `${said} is a single figure while other sizes have a range: give it a range too.` };
    }
    for (const range of this.ranges) {
      const said = `In the size chart, ${name} of size ${sizes.label(range.place).text}`;
      if (range.at < range.low || range.at > range.high) return { sentence: `${said} is ${this.say(range.at)}, which is outside its range from ${this.say(range.low)} to ${this.say(range.high)}.` };
      if (range.from >= range.at || range.to <= range.at) return { sentence: `${said} has a range that overlaps its neighbours by more than half: check it.` };
    }
    return null;
  }

  private say(mm: number): string {
    return sayFigure(mm, this.unit);
  }

  has(place: number): boolean {
    return Number.isFinite(this.figures[place]);
  }

  /** The chart's figure for a size, or the middle of its range. */
  figure(place: number): number {
    return this.figures[place] as number;
  }

  /** The range of a size, if it has one. */
  rangeAt(place: number): RangeOfSize | undefined {
    if (!this.ranged) return undefined;
    this.rangeByPlace ??= new Map(this.ranges.map((range) => [range.place, range]));
    return this.rangeByPlace.get(place);
  }

  /** Sizes by rising figure; equal figures are one rung. */
  get rungs(): readonly Rung[] {
    this.rungList ??= this.climb();
    return this.rungList;
  }

  private climb(): Rung[] {
    const places = [...this.figures.keys()].filter((place) => this.has(place));
    places.sort((a, b) => this.figure(a) - this.figure(b) || a - b);
    const rungs: { figure: number; first: number; last: number; leastUp: number; mostDown: number }[] = [];
    for (const place of places) {
      const figure = this.figure(place);
      const top = rungs.at(-1);
      const mostDown = Math.max(place, top?.mostDown ?? place);
      if (top !== undefined && figure - top.figure <= tolerance(figure)) {
        Object.assign(top, { first: Math.min(top.first, place), last: Math.max(top.last, place), mostDown });
      } else rungs.push({ figure, first: place, last: place, leastUp: place, mostDown });
    }
    let leastUp = Infinity;
    for (const rung of rungs.toReversed()) {
      leastUp = Math.min(leastUp, rung.first);
      rung.leastUp = leastUp;
    }
    return rungs;
  }

  /** The place among the rungs of the first that is not below `girth`; their number when all are below. */
  rungNotBelow(girth: number): number {
    const { rungs } = this;
    const least = girth - tolerance(girth);
    let [low, high] = [0, rungs.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((rungs[middle] as Rung).figure < least) low = middle + 1;
      else high = middle;
    }
    return low;
  }

  /** Whether figures never fall from one size to the next. */
  get rises(): boolean {
    let before = 0;
    for (const [place, rung] of this.rungs.entries()) {
      if (place > 0 && rung.first < before) return false;
      before = rung.last;
    }
    return true;
  }

  /** Sizes with their ranges, by rising range. */
  get ranges(): readonly RangeOfSize[] {
    this.rangeList ??= this.rangesInOrder();
    return this.rangeList;
  }

  private rangesInOrder(): RangeOfSize[] {
    const { low, high } = this.cells;
    const places = [...this.figures.keys()].filter((place) => this.has(place));
    places.sort((a, b) => (low[a] as number) - (low[b] as number) || a - b);
    return places.map((place, i) => {
      const [before, after] = [places[i - 1], places[i + 1]];
      const [from, to] = [low[place] as number, high[place] as number];
      return {
        place,
        low: from,
        high: to,
        at: this.figure(place),
        from: before === undefined ? from : ((high[before] as number) + from) / 2,
        to: after === undefined ? to : (to + (low[after] as number)) / 2,
      };
    });
  }

  /** The range that a girth falls into, from its lower edge up to but not including its upper; undefined outside them all. */
  rangeOf(girth: number): RangeOfSize | undefined {
    const { ranges } = this;
    const least = girth + tolerance(girth);
    let [low, high] = [0, ranges.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((ranges[middle] as RangeOfSize).from <= least) low = middle + 1;
      else high = middle;
    }
    const range = ranges[low - 1];
    return range !== undefined && girth < range.to - tolerance(girth) ? range : undefined;
  }

  /** Whether ranges rise from one size to the next. */
  get rangesRise(): boolean {
    return this.ranges.every((range, i) => i === 0 || range.place > (this.ranges[i - 1] as RangeOfSize).place);
  }
}
