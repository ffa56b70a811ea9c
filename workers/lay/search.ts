/**
 * The search for the least length. Two phases take turns: exploring shortens
 * the cloth in large steps and, when the pieces will not come apart, starts
 * again from one of the nearly good layouts, with some of the length given back
 * or two large pieces exchanged;
 * compressing shortens the best layout in ever smaller steps.
 */
import type { Given } from './grid.ts';
import { Mover, type Effort } from './move.ts';
import { Random } from './random.ts';
import { separate, type Outcome, type Patience } from './separate.ts';
import type { Shapes } from './shapes.ts';
import { bottomLeft } from './start.ts';
import { Table, type Kept } from './table.ts';

export interface Settings {
  readonly effort: Effort;
  readonly explore: Patience;
  readonly compress: Patience;
  /** Of the length, what exploring takes away: at first, and at least. */
  readonly exploreFrom: number;
  readonly exploreTo: number;
  /** The same for compressing. */
  readonly compressFrom: number;
  readonly compressTo: number;
  /** Of the step that failed, what the length stays shortened by when a layout is given room; 1: it is not. */
  readonly stretch: number;
  /** Of the time, how much goes to exploring. */
  readonly share: number;
  /** How often a new beginning throws a part of the cloth into disorder, instead of exchanging two pieces. */
  readonly ruin: number;
}

export const SETTINGS: Settings = {
  effort: { anywhere: 24, near: 12, refined: 1, stepFrom: 0.12, stepTo: 0.02 },
  explore: { sweeps: 60, strikes: 2, growLeast: 1.1, growMost: 1.5, fade: 0.99, area: 0.25 },
  compress: { sweeps: 100, strikes: 2, growLeast: 1.1, growMost: 1.5, fade: 0.99, area: 0.25 },
  exploreFrom: 0.02,
  exploreTo: 0.01,
  stretch: 0.2,
  compressFrom: 0.001,
  compressTo: 0.00002,
  share: 0.7,
  ruin: 0.5,
};

/** Of the cloth's length, the part that is ruined at once. */
const RUINED = 0.2;

export class Search {
  readonly table: Table;
  readonly random: Random;
  readonly #mover: Mover;
  readonly #floor: number;
  /** The best layout without overlap. */
  best: Kept;

  constructor(readonly shapes: Shapes, width: number, seed: number, readonly settings: Settings = SETTINGS) {
    this.table = new Table(shapes, width);
    this.random = new Random(seed);
    this.#mover = new Mover(this.table, this.random, settings.effort);
    this.best = this.table.keep();
    this.#step = settings.exploreFrom;
    this.#floor = this.#floorOf();
  }

  /** No layout is shorter: the pieces' area over the width, or the longest piece laid its shortest way as near the start as the print lets it. */
  #floorOf(): number {
    const { table, shapes } = this;
    let area = 0, longest = 0;
    shapes.items.forEach(({ count, fixed }, i) => {
      if (fixed) return;
      area += count * shapes.area[shapes.ofItem[i]![0]!]!;
      const ends = shapes.ofItem[i]!.map((s) => {
        table.room.range(s, Infinity);
        return table.room.lowX + shapes.bare[4 * s + 2]!;
      });
      longest = Math.max(longest, Math.min(...ends));
    });
    return Math.max(longest, area / table.width);
  }

  get #proven(): boolean {
    return this.best.length <= this.#floor * (1 + 1e-7);
  }

  /**
   * Each `true` is a better layout in `best`; each `false` a pause. Ends only when no layout can be shorter.
   * @param apart whether the given pieces lie apart on the cloth; else they are taken apart first
   */
  *run(given: Given | null = null, apart = true): Generator<boolean, void> {
    if (given && apart && given.missing.length === 0) {
      this.best = given.kept;
    } else {
      if (!given) yield* this.start();
      else if (given.missing.length > 0) yield* this.#add(given);
      else if (!(yield* this.#settle(given.kept))) yield* this.start();
      yield true;
    }
    for (let span = 600_000; !this.#proven; span *= 1.4) {
      yield* this.#explore(this.table.weighed + span * this.settings.share);
      yield* this.#compress(this.table.weighed + span * (1 - this.settings.share));
    }
  }

  /** Lays what is missing between and behind what lies. */
  *#add({ kept, missing }: Given): Generator<boolean, void> {
    const { table, shapes } = this;
    table.restore(kept);
    const area = (p: number): number => shapes.area[table.shape[p]!]!;
    yield* bottomLeft(table, Int32Array.from(missing).sort((a, b) => area(b) - area(a) || a - b));
    this.best = table.keep();
  }

  /** Takes pieces that were laid by hand apart, near where they lie, on a little more cloth each time; false when they stay in each other. */
  *#settle(from: Kept): Generator<boolean, boolean> {
    const { table } = this;
    for (let more = 0; more <= 10; more++) {
      table.restore(from);
      table.length = Math.max(this.#floor, table.used()) * (1 + more * 0.02);
      for (let p = 0; p < table.count; p++) if (!table.isFixed(p)) this.#mover.inside(p);
      const outcome = yield* this.#apart(this.settings.compress);
      if (outcome.overlap > 0) continue;
      table.length = table.used();
      this.best = table.keep();
      return true;
    }
    return false;
  }

  /** Bottom-left fill, the largest first and in a few other orders. */
  *start(): Generator<boolean, void> {
    const { table, shapes } = this;
    const n = table.count;
    const area = (p: number): number => shapes.area[table.shape[p]!]!;
    const span = (p: number): number => Math.max(shapes.bare[4 * table.shape[p]! + 2]! - shapes.bare[4 * table.shape[p]!]!, shapes.bare[4 * table.shape[p]! + 3]! - shapes.bare[4 * table.shape[p]! + 1]!);
    const base = Array.from({ length: n }, (_, p) => p).filter((p) => !table.isFixed(p));
    const orders = [
      base.slice().sort((a, b) => area(b) - area(a) || a - b),
      base.slice().sort((a, b) => span(b) - span(a) || a - b),
    ];
    let best: Kept | null = null;
    for (const order of orders) {
      yield* bottomLeft(table, Int32Array.from(order));
      if (!best || table.length < best.length) best = table.keep();
    }
    this.best = best!;
    table.restore(this.best);
  }

  /** Takes the table, which has no overlap, as the best; false when it is no shorter. */
  #take(): boolean {
    const { table } = this;
    table.length = table.used();
    if (table.length >= this.best.length) return false;
    this.best = table.keep();
    return true;
  }

  /** Shortens the best layout by part `step`, moving what lies behind `cutAt` back. */
  #shorten(step: number, cutAt: number): void {
    const { table } = this;
    table.restore(this.best);
    const to = Math.max(this.#floor, this.best.length * (1 - step));
    const gone = this.best.length - to;
    table.length = to;
    for (let p = 0; p < table.count; p++) {
      if (table.isFixed(p)) continue;
      if (table.x[p]! > cutAt) table.put(p, table.shape[p]!, table.x[p]! - gone, table.y[p]!);
      this.#mover.inside(p);
    }
  }

  #step = 0;

  *#explore(until: number): Generator<boolean, void> {
    const { table, settings } = this;
    let pool: Outcome[] = [];
    this.#shorten(this.#step, Infinity);
    while (table.weighed < until && !this.#proven) {
      const outcome = yield* this.#apart(settings.explore);
      if (outcome.overlap === 0) {
        if (this.#take()) yield true;
        pool = [];
        this.#shorten(this.#step, Infinity);
        continue;
      }
      if (this.#step > settings.exploreTo) {
        // Too much at once: from the best again, with less.
        this.#step = Math.max(settings.exploreTo, this.#step / 2);
        this.#shorten(this.#step, Infinity);
        continue;
      }
      if (settings.stretch < 1) {
        if ((yield* this.#stretch(outcome)) && this.#take()) {
          yield true;
          pool = [];
          this.#shorten(this.#step, Infinity);
          continue;
        }
      }
      pool.push(outcome);
      pool.sort((a, b) => a.overlap - b.overlap);
      if (pool.length > 12) pool.pop();
      // The nearly good are more likely to be taken.
      const at = Math.min(pool.length - 1, Math.floor(Math.abs(this.random.next() + this.random.next() + this.random.next() - 1.5) * 0.6 * pool.length));
      table.restore(pool[at]!.kept);
      if (this.random.next() < settings.ruin) this.#ruin();
      else this.#exchange();
    }
  }

  /**
   * Gives a nearly good layout some of the length back, where its deepest
   * overlap is: then it often comes apart, and is still shorter than the best.
   */
  *#stretch({ kept }: Outcome): Generator<boolean, boolean> {
    const { table } = this;
    table.restore(kept);
    table.measureAll();
    let deepest = 0, at = 0;
    for (let k = 0; k < table.depth.length; k++) {
      if (table.depth[k]! <= deepest) continue;
      deepest = table.depth[k]!;
      const p = Math.floor(k / table.count), q = k % table.count;
      at = Math.min(Math.max(table.x[p]!, table.x[q]!), table.length);
    }
    const length = this.best.length * (1 - this.#step * this.settings.stretch);
    const more = length - table.length;
    table.length = length;
    for (let p = 0; p < table.count; p++) if (!table.isFixed(p) && table.x[p]! >= at) table.put(p, table.shape[p]!, table.x[p]! + more, table.y[p]!);
    const outcome = yield* this.#apart(this.settings.compress);
    return outcome.overlap === 0;
  }

  /** Exchanges two large pieces that differ, each keeping the other's middle. */
  #exchange(): void {
    const { table, shapes, random } = this;
    const movable: number[] = [];
    let total = 0;
    for (let p = 0; p < table.count; p++) {
      if (table.isFixed(p)) continue;
      movable.push(p);
      total += shapes.area[table.shape[p]!]!;
    }
    movable.sort((a, b) => shapes.area[table.shape[b]!]! - shapes.area[table.shape[a]!]! || a - b);
    let large = 0;
    for (let sum = 0; large < movable.length && sum < total * 0.75; large++) sum += shapes.area[table.shape[movable[large]!]!]!;
    if (large < 2) return;
    for (let tries = 0; tries < 20; tries++) {
      const p = movable[random.below(large)]!, q = movable[random.below(large)]!;
      if (p === q || (table.item[p] === table.item[q] && table.shape[p] === table.shape[q])) continue;
      const [x, y] = [table.x[p]!, table.y[p]!];
      table.put(p, table.shape[p]!, table.x[q]!, table.y[q]!);
      table.put(q, table.shape[q]!, x, y);
      this.#mover.inside(p);
      this.#mover.inside(q);
      return;
    }
  }

  /** Throws the pieces of a part of the cloth into disorder: each goes where another lay, in a way of its own. */
  #ruin(): void {
    const { table, shapes, random } = this;
    const from = random.next() * (1 - RUINED) * table.length, to = from + RUINED * table.length;
    const there: number[] = [];
    for (let p = 0; p < table.count; p++) if (!table.isFixed(p) && table.x[p]! >= from && table.x[p]! < to) there.push(p);
    const order = Int32Array.from(there);
    random.shuffle(order);
    const places = there.map((p) => [table.x[p]!, table.y[p]!] as const);
    order.forEach((p, i) => {
      const ways = shapes.ofItem[table.item[p]!]!;
      table.put(p, ways[random.below(ways.length)]!, places[i]![0], places[i]![1]);
      this.#mover.inside(p);
    });
  }

  *#apart(patience: Patience): Generator<boolean, Outcome> {
    const steps = separate(this.table, this.#mover, patience);
    // Even with nothing to move the count goes on, or a search of one piece would never end.
    this.table.weighed++;
    yield false;
    for (let step = steps.next(); ; step = steps.next()) {
      if (step.done) return step.value;
      yield false;
    }
  }

  *#compress(until: number): Generator<boolean, void> {
    const { table, settings } = this;
    let step = settings.compressFrom;
    while (table.weighed < until && !this.#proven && step > settings.compressTo) {
      this.#shorten(step, this.random.next() * this.best.length);
      const outcome = yield* this.#apart(settings.compress);
      if (outcome.overlap === 0) {
        if (this.#take()) yield true;
      } else {
        step *= 0.7;
      }
    }
  }
}
