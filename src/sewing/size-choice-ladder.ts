/**
 * The sizes that can be chosen: those of the chart that have a figure at every
 * level, and a few more at both ends, continued by the chart's own last step.
 */
import { sizeKey } from './chart-labels.ts';
import type { ChartMeasure } from './chart-measure.ts';

/** So many sizes beyond an end of the chart can be chosen, and one more can be looked at beside them. */
export const MOST_CONTINUED = 2;

export interface Rung {
  readonly text: string;
  /** What a formula gets: a number where the chart's sizes are numbers. */
  readonly value: number | string;
  /** The size of the chart that it is, or from which it is continued. */
  readonly place: number;
  /** How many steps above the chart's largest size; below 0 under its smallest; 0 in the chart. */
  readonly beyond: number;
}

export interface Reach {
  readonly low: number;
  readonly high: number;
}

/** The outermost size of the chart and the one before it: their difference is the step that goes on. */
interface End {
  readonly place: number;
  readonly inner: number;
}

export class Ladder {
  /** Smallest first. */
  readonly rungs: readonly Rung[];
  /** The first and the last rung that can be chosen. */
  readonly first: number;
  readonly last: number;
  readonly #byKey: ReadonlyMap<string, number>;

  /** @param columns of one reading of one chart */
  constructor(readonly columns: readonly [ChartMeasure, ...ChartMeasure[]]) {
    const { sizes } = columns[0];
    const places = sizes.labels.map((_, place) => place).filter((place) => columns.every((column) => column.has(place)));
    const below = this.#onward(places[0] === 0 && places[1] === 1 ? { place: 0, inner: 1 } : undefined, -1);
    const last = sizes.count - 1;
    const above = this.#onward(places.at(-1) === last && places.at(-2) === last - 1 ? { place: last, inner: last - 1 } : undefined, 1);
    this.rungs = [
      ...below.reverse(),
      ...places.map((place): Rung => ({ text: sizes.label(place).text, value: sizes.label(place).value, place, beyond: 0 })),
      ...above,
    ];
    this.first = Math.max(0, below.length - MOST_CONTINUED);
    this.last = this.rungs.length - 1 - Math.max(0, above.length - MOST_CONTINUED);
    this.#byKey = new Map(this.rungs.map(({ text }, at) => [sizeKey(text), at]));
  }

  /** Where the size called so stands, or undefined. */
  called(size: number | string): number | undefined {
    return this.#byKey.get(sizeKey(String(size)));
  }

  rung(at: number): Rung {
    return this.rungs[at] as Rung;
  }

  /** The chart's figure, the middle of a range, or what continues it; mm. */
  figure(column: ChartMeasure, at: number): number {
    const { place, beyond } = this.rung(at);
    return figureBeyond(column, place, beyond);
  }

  /** The range of a size, continued by its width; undefined where the chart has single figures. */
  range(column: ChartMeasure, at: number): Reach | undefined {
    const { place, beyond } = this.rung(at);
    const range = column.rangeAt(place);
    if (range === undefined) return undefined;
    const width = range.high - range.low;
    return { low: range.low + beyond * width, high: range.high + beyond * width };
  }

  /** Sizes beyond an end, outwards; none where the chart does not grow there, or would come to nothing. */
  #onward(end: End | undefined, way: -1 | 1): Rung[] {
    if (end === undefined || !this.columns.every((column) => way * (column.figure(end.place) - column.figure(end.inner)) >= 0)) return [];
    const steps = Array.from({ length: MOST_CONTINUED + 1 }, (_, i) => way * (i + 1));
    return steps
      .filter((beyond) => this.columns.every((column) => figureBeyond(column, end.place, beyond) > 0))
      .map((beyond): Rung => ({ ...this.#named(end, beyond), place: end.place, beyond }));
  }

  /** "22" after 18 and 20; "3XL + 1" after sizes that are not numbers, and "00 − 1" where numbers would fall below 0. */
  #named({ place, inner }: End, beyond: number): Pick<Rung, 'text' | 'value'> {
    const { sizes } = this.columns[0];
    const number = sizes.at(place) + Math.abs(beyond) * (sizes.at(place) - sizes.at(inner));
    if (sizes.numbered && number >= 0) return { text: String(number), value: number };
    const text = `${sizes.label(place).text} ${beyond < 0 ? '−' : '+'} ${Math.abs(beyond)}`;
    return { text, value: text };
  }
}

/** The figure of the size at `place`, which is the outermost where `beyond` is not 0, with so many of the chart's last steps. */
function figureBeyond(column: ChartMeasure, place: number, beyond: number): number {
  if (beyond === 0) return column.figure(place);
  const range = column.rangeAt(place);
  if (range !== undefined) return (range.low + range.high) / 2 + beyond * (range.high - range.low);
  return column.figure(place) + Math.abs(beyond) * (column.figure(place) - column.figure(beyond < 0 ? place + 1 : place - 1));
}
