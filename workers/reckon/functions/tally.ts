/**
 * Number, sum, least and greatest of the figures in a block. Kept with the
 * block until one of its cells changes; a block that is another with a row
 * more starts from the other's, so that running totals are worked out once.
 */
import type { Dimension, UnitCode } from '../../../src/quantities/index.ts';
import { CellError, PercentNumber, RichNumber } from '../internals.ts';
import type { CellRange, RangeVertex } from '../internals.ts';
import { Bracket, Measure } from '../values.ts';
import type { Tools } from './tools.ts';

/** A figure and its place from the top left of its block. */
export interface Spot {
  readonly value: unknown;
  readonly row: number;
  readonly col: number;
}

export class Tally {
  count = 0;
  sum = 0;
  least = Infinity;
  greatest = -Infinity;
  leastUnit: UnitCode = '';
  greatestUnit: UnitCode = '';
  /** The first error; nothing is counted after it. */
  error: Spot | undefined;
  /** The first figure of each kind: plain number, percent, length, area, angle, span. */
  firsts: (Spot | undefined)[] = [];

  constructor(readonly noise: number) {}

  copy(): Tally {
    const copy = Object.assign(new Tally(this.noise), this);
    copy.firsts = this.firsts.slice();
    return copy;
  }

  add(value: unknown, row: number, col: number): void {
    if (this.error !== undefined) return;
    if (typeof value === 'number') {
      this.#count(value, '');
      if (this.firsts[0] === undefined) this.firsts[0] = { value, row, col };
    } else if (value instanceof CellError) {
      this.error = { value, row, col };
    } else if (value instanceof RichNumber) {
      const unit = value instanceof Measure ? value.unit : value instanceof PercentNumber ? '%' : '';
      this.#count(value.val, unit);
      const place = placeOf(value);
      if (this.firsts[place] === undefined) this.firsts[place] = { value, row, col };
    }
  }

  #count(value: number, unit: UnitCode): void {
    this.count += 1;
    const sum = this.sum + value;
    this.sum = Math.abs(sum) < this.noise * Math.abs(this.sum) ? 0 : sum;
    if (value < this.least) {
      this.least = value;
      this.leastUnit = unit;
    }
    if (value > this.greatest) {
      this.greatest = value;
      this.greatestUnit = unit;
    }
  }

  join(other: Tally): void {
    if (this.error !== undefined) return;
    this.error = other.error;
    this.count += other.count;
    const sum = this.sum + other.sum;
    this.sum = Math.abs(sum) < this.noise * Math.abs(this.sum) ? 0 : sum;
    if (other.least < this.least) {
      this.least = other.least;
      this.leastUnit = other.leastUnit;
    }
    if (other.greatest > this.greatest) {
      this.greatest = other.greatest;
      this.greatestUnit = other.greatestUnit;
    }
  }
}

const DIMENSION_PLACES: Readonly<Record<Exclude<Dimension, 'number'>, number>> = { length: 2, area: 3, angle: 4 };

function placeOf(value: unknown): number {
  if (value instanceof Measure) return DIMENSION_PLACES[value.dimension];
  if (value instanceof Bracket) return 5;
  return value instanceof PercentNumber ? 1 : 0;
}

const KEPT = 'TT.TALLY';

/** The tally of a block of cells. Must not be changed. */
export function tallyOf(range: CellRange, tools: Tools): Tally {
  const graph = tools.interpreter.dependencyGraph;
  // From the block itself down to one that is known, or that is no other with a row more.
  const chain: { readonly range: CellRange; readonly vertex: RangeVertex | undefined; readonly rest: CellRange }[] = [];
  let tally: Tally | undefined;
  for (let block: CellRange | undefined = range; block !== undefined && tally === undefined;) {
    const vertex = graph.getRange(block.start, block.end);
    tally = vertex?.getFunctionValue(KEPT) as Tally | undefined;
    if (tally !== undefined) break;
    const { smallerRangeVertex, restRange } = graph.rangeMapping.findSmallerRange(block);
    const smaller = vertex !== undefined && smallerRangeVertex !== undefined && graph.existsEdge(smallerRangeVertex, vertex) ? smallerRangeVertex : undefined;
    chain.push({ range: block, vertex, rest: smaller ? restRange : block });
    block = smaller?.range;
  }
  tally ??= new Tally(tools.helper.actualEps);
  for (const { range: block, vertex, rest } of chain.reverse()) {
    const next: Tally = tally.copy();
    const firstRow = rest.start.row - block.start.row;
    tools.eachCell(rest, (value, row, col) => next.add(value, firstRow + row, col));
    vertex?.setFunctionValue(KEPT, next);
    tally = next;
  }
  return tally;
}
