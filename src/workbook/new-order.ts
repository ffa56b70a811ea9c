/** Where the rows of a block go when they change places, and what that does to whatever points at them. */
import { plainReferences } from '../formula/index.ts';
import type { Reference } from '../formula/index.ts';
import { usedArea } from './book.ts';
import { LIMITS } from './limits.ts';
import { inRuns, normalRuns, sameRuns } from './runs.ts';
import type { Area, Edit, Runs, Sheet } from './types.ts';

export type OrderRows = Extract<Edit, { do: 'orderRows' }>;
export type Box = Omit<Area, 'sheet'>;

/** One new order. */
export class NewOrder {
  readonly area: Area;
  /** By row, from the block's top: where it goes. */
  readonly #to: Int32Array;
  readonly #usedRight: number;

  constructor({ area, order }: OrderRows, sheet: Sheet) {
    this.area = area;
    this.#to = new Int32Array(order.length);
    for (let at = 0; at < order.length; at++) this.#to[order[at]!] = area.top + at;
    this.#usedRight = usedArea(sheet)?.right ?? area.right;
  }

  holds(row: number, col: number): boolean {
    return this.#hasRow(row) && col >= this.area.left && col <= this.area.right;
  }

  rowAfter(row: number): number {
    return this.#hasRow(row) ? this.#to[row - this.area.top]! : row;
  }

  #hasRow(row: number): boolean {
    return row >= this.area.top && row <= this.area.bottom;
  }

  /** True when the order of the block's rows is nothing to it. */
  spares({ top, left, bottom, right }: Box): boolean {
    const { area } = this;
    if (bottom < area.top || top > area.bottom || right < area.left || left > area.right) return true;
    return top <= area.top && bottom >= area.bottom;
  }

  /** The rows of a block of cells afterwards; `null` when they no longer lie side by side. */
  rowsAfter({ top, left, bottom, right }: Box): readonly [top: number, bottom: number] | null {
    const { area } = this;
    let [first, last, moves] = [Infinity, -Infinity, false];
    for (let row = Math.max(top, area.top); row <= Math.min(bottom, area.bottom); row++) {
      const to = this.rowAfter(row);
      moves ||= to !== row;
      first = Math.min(first, to);
      last = Math.max(last, to);
    }
    if (!moves) return [top, bottom];
    const allColumnsMove = left >= area.left && Math.min(right, Math.max(this.#usedRight, left)) <= area.right;
    if (top < area.top) first = Math.min(first, top);
    if (bottom > area.bottom) last = Math.max(last, bottom);
    return allColumnsMove && last - first === bottom - top ? [first, last] : null;
  }

  /** What is hidden stays hidden, wherever its row goes. */
  runsAfter(runs: Runs): Runs {
    const { top, bottom } = this.area;
    if (!runs.some(([first, last]) => first <= bottom && last >= top)) return runs;
    const places: [number, number][] = [];
    for (let row = top; row <= bottom; row++) if (inRuns(runs, row)) places.push([this.rowAfter(row), this.rowAfter(row)]);
    const outside = runs.flatMap(([first, last]) => [[first, Math.min(last, top - 1)], [Math.max(first, bottom + 1), last]] as const);
    const after = normalRuns([...outside.filter(([first, last]) => first <= last), ...places]);
    return sameRuns(after, runs) ? runs : after;
  }
}

const ALL: Box = { top: 0, left: 0, bottom: LIMITS.rows - 1, right: LIMITS.columns - 1 };

/** The cells that a reference stands for. */
export function boxOf({ from, to = from }: Reference): Box {
  const [rows, cols] = [[from.row ?? ALL.top, to.row ?? ALL.bottom], [from.col ?? ALL.left, to.col ?? ALL.right]] as const;
  return { top: Math.min(...rows), bottom: Math.max(...rows), left: Math.min(...cols), right: Math.max(...cols) };
}

/**
 * Formulas that speak only of their own row, and otherwise of fixed places that
 * the order is nothing to: what stands in a column is mostly one of them over
 * and over, and is known again by comparing, not by reading.
 */
export class OwnRow {
  readonly #pieces: readonly string[];

  private constructor(pieces: readonly string[]) {
    this.#pieces = pieces;
  }

  static of(raw: string, row: number, order: NewOrder): OwnRow | null {
    const references = plainReferences(raw);
    if (!references) return null;
    const { area } = order;
    const pieces: string[] = [];
    let kept = 0;
    for (const { start, end, reference } of references) {
      const ends = reference.to ? [reference.from, reference.to] : [reference.from];
      if (ends.every(({ rowFixed }) => rowFixed)) {
        if (!order.spares(boxOf(reference))) return null;
        continue;
      }
      if (ends.some((end) => end.rowFixed || end.row !== row || end.col! < area.left || end.col! > area.right)) return null;
      for (const match of raw.slice(start, end).matchAll(/\d+/g)) {
        pieces.push(raw.slice(kept, start + match.index));
        kept = start + match.index + match[0].length;
      }
    }
    pieces.push(raw.slice(kept));
    return new OwnRow(pieces);
  }

  at(row: number): string {
    return this.#pieces.join(String(row + 1));
  }
}

/** The same, column by column. */
export class OwnRows {
  readonly #latest: (OwnRow | undefined)[] = [];

  constructor(private readonly order: NewOrder) {}

  /** `null` for a formula that speaks of more. */
  of(raw: string, row: number, col: number): OwnRow | null {
    const known = this.#latest[col];
    if (known?.at(row) === raw) return known;
    const made = OwnRow.of(raw, row, this.order);
    if (made) this.#latest[col] = made;
    return made;
  }
}
