/**
 * Results of 256 rows of one column, as typed arrays: ten bytes a cell, and
 * nothing to make or to collect when one changes. A column is a list of such
 * blocks with holes where it is empty.
 */
import { UNIT_CODES } from '../quantities/index.ts';
import { KIND, type Kind, type Result } from './protocol.ts';

export const BLOCK_ROWS = 256;
const SHIFT = 8;
const MASK = BLOCK_ROWS - 1;

export type Column = (Block | undefined)[];

const EMPTY: Result = Object.freeze({ kind: 'empty' });

export class Block {
  readonly number: Float64Array;
  readonly kind: Uint8Array;
  readonly unit: Uint8Array;
  /** High ends of spans, once there is one. */
  high: Float64Array | null = null;
  /** Texts and sentences by place, once there is one. */
  text: (string | undefined)[] | null = null;

  constructor() {
    const memory = new ArrayBuffer(BLOCK_ROWS * 10);
    this.number = new Float64Array(memory, 0, BLOCK_ROWS);
    this.kind = new Uint8Array(memory, BLOCK_ROWS * 8, BLOCK_ROWS);
    this.unit = new Uint8Array(memory, BLOCK_ROWS * 9, BLOCK_ROWS);
  }

  /** `place` counts from the block's first row. */
  at(place: number): Result {
    const unit = UNIT_CODES[this.unit[place]!] ?? '';
    switch (this.kind[place] as Kind) {
      case KIND.quantity: return { kind: 'quantity', value: this.number[place]!, unit };
      case KIND.span: return { kind: 'span', low: this.number[place]!, high: this.high?.[place] ?? NaN, unit };
      case KIND.text: return { kind: 'text', text: this.text?.[place] ?? '' };
      case KIND.truth: return { kind: 'truth', truth: this.number[place] === 1 };
      case KIND.error: return { kind: 'error', sentence: this.text?.[place] ?? '' };
      default: return EMPTY;
    }
  }

  /** One result of another block. */
  put(place: number, from: Block, source: number): void {
    this.number[place] = from.number[source]!;
    this.kind[place] = from.kind[source]!;
    this.unit[place] = from.unit[source]!;
    if (from.high) (this.high ??= new Float64Array(BLOCK_ROWS))[place] = from.high[source]!;
    if (from.text) (this.text ??= [])[place] = from.text[source];
  }

  /** Copies `count` results from `from` (starting at `source`) to here (starting at `target`). */
  take(from: Block, source: number, target: number, count: number): void {
    this.number.set(from.number.subarray(source, source + count), target);
    this.kind.set(from.kind.subarray(source, source + count), target);
    this.unit.set(from.unit.subarray(source, source + count), target);
    if (from.high) (this.high ??= new Float64Array(BLOCK_ROWS)).set(from.high.subarray(source, source + count), target);
    if (from.text) {
      const text = (this.text ??= []);
      for (let i = 0; i < count; i++) text[target + i] = from.text[source + i];
    }
  }
}

export const resultIn = (column: Column | undefined, row: number): Result =>
  column?.[row >>> SHIFT]?.at(row & MASK) ?? EMPTY;

export const blockNumber = (row: number): number => row >>> SHIFT;
export const placeIn = (row: number): number => row & MASK;

/** The column after `count` empty rows came in above row `at`. The old one must not be used any more. */
export function withRowsInserted(column: Column, at: number, count: number): Column {
  const moved = column.slice(0, blockNumber(at));
  const start = moved.length * BLOCK_ROWS;
  copyRows(column, start, moved, start, at - start);
  copyRows(column, at, moved, at + count, column.length * BLOCK_ROWS - at);
  return moved;
}

/** The column after `count` rows from row `at` on went out. The old one must not be used any more. */
export function withRowsRemoved(column: Column, at: number, count: number): Column {
  const moved = column.slice(0, blockNumber(at));
  const start = moved.length * BLOCK_ROWS;
  copyRows(column, start, moved, start, at - start);
  copyRows(column, at + count, moved, at, column.length * BLOCK_ROWS - at - count);
  return moved;
}

/** The column after the rows from `top` on changed places: `order[i]` is the one, from there, that comes to stand at place `i`. */
export function withRowsOrdered(column: Column, top: number, order: readonly number[]): Column {
  const moved = column.slice();
  const [first, last] = [blockNumber(top), blockNumber(top + order.length - 1)];
  for (let at = first; at <= last; at++) moved[at] = undefined;
  copyRows(column, first * BLOCK_ROWS, moved, first * BLOCK_ROWS, top - first * BLOCK_ROWS);
  const end = top + order.length;
  copyRows(column, end, moved, end, (last + 1) * BLOCK_ROWS - end);
  for (let at = 0; at < order.length; at++) {
    const [from, to] = [top + order[at]!, top + at];
    const block = column[blockNumber(from)];
    const place = placeIn(from);
    if (!block || block.kind[place] === KIND.empty) continue;
    (moved[blockNumber(to)] ??= new Block()).put(placeIn(to), block, place);
  }
  return moved;
}

function copyRows(from: Column, source: number, to: Column, target: number, count: number): void {
  for (let done = 0; done < count;) {
    const read = source + done;
    const write = target + done;
    const piece = Math.min(count - done, BLOCK_ROWS - placeIn(read), BLOCK_ROWS - placeIn(write));
    const block = from[blockNumber(read)];
    if (block) (to[blockNumber(write)] ??= new Block()).take(block, placeIn(read), placeIn(write), piece);
    done += piece;
  }
}
