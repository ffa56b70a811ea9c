/**
 * A better place for one piece, the others lying still. Places all over the
 * cloth and near the piece are weighed; the best few are refined, first by
 * steps along axes that shrink, then exactly: where two edges of no-fit
 * polygons, or one and the cloth's edge, meet.
 */
import type { Random } from './random.ts';
import type { Table } from './table.ts';

export interface Effort {
  /** Places tried all over the cloth for each move. */
  readonly anywhere: number;
  /** Places tried near where the piece lies. */
  readonly near: number;
  /** How many of the best are refined. */
  readonly refined: number;
  /** Of the piece's smaller side: the first step of refining, and the one it stops at. */
  readonly stepFrom: number;
  readonly stepTo: number;
}

const KEPT = 8;

export class Mover {
  readonly #x = new Float64Array(KEPT);
  readonly #y = new Float64Array(KEPT);
  readonly #shape = new Int32Array(KEPT);
  readonly #weight = new Float64Array(KEPT);
  #kept = 0;

  constructor(readonly table: Table, readonly random: Random, readonly effort: Effort) {}

  /** Moves `p` where it weighs less, if such a place is found. */
  move(p: number): boolean {
    const { table, random, effort } = this;
    const { shapes } = table;
    const from = table.shape[p]!;
    const now = table.weigh(p, from, table.x[p]!, table.y[p]!, Infinity);
    if (now === 0) return false;
    this.#kept = 0;
    this.#limit = effort.refined;
    this.#note(from, table.x[p]!, table.y[p]!, now);
    const ways = shapes.ofItem[table.item[p]!]!;
    const size = Math.min(shapes.bare[4 * from + 2]! - shapes.bare[4 * from]!, shapes.bare[4 * from + 3]! - shapes.bare[4 * from + 1]!);
    for (let i = 0; i < effort.near; i++) {
      const shape = random.next() < 0.7 ? from : ways[random.below(ways.length)]!;
      const spread = size * (0.05 + 0.45 * random.next());
      this.#sample(p, shape, table.x[p]! + (2 * random.next() - 1) * spread, table.y[p]! + (2 * random.next() - 1) * spread);
    }
    for (let i = 0; i < effort.anywhere; i++) {
      const shape = ways[random.below(ways.length)]!;
      if (!table.room.range(shape, table.length)) continue;
      this.#sample(p, shape, table.room.lowX + random.next() * (table.room.highX - table.room.lowX), table.room.lowY + random.next() * (table.room.highY - table.room.lowY));
    }
    let best = now, bestX = table.x[p]!, bestY = table.y[p]!, bestShape = from;
    for (let i = 0; i < this.#kept && best > 0; i++) {
      this.#refine(p, this.#shape[i]!, this.#x[i]!, this.#y[i]!, this.#weight[i]!, size);
      if (this.#atWeight < best) {
        best = this.#atWeight;
        bestX = this.#atX;
        bestY = this.#atY;
        bestShape = this.#shape[i]!;
      }
    }
    if (best >= now) return false;
    table.put(p, bestShape, bestX, bestY);
    return true;
  }

  #limit = 3;
  /** Brings a piece that sticks out back onto the cloth. */
  inside(p: number): void {
    const { table } = this;
    let shape = table.shape[p]!;
    // Too long this way for what is left of the cloth: one of its other ways is not.
    if (!table.room.range(shape, table.length)) shape = table.shapes.ofItem[table.item[p]!]!.find((way) => table.room.range(way, table.length)) ?? shape;
    table.put(p, shape, table.room.nearX(shape, table.x[p]!), table.room.nearY(shape, table.y[p]!));
  }

  #sample(p: number, shape: number, x: number, y: number): void {
    const { table } = this;
    if (!table.room.range(shape, table.length)) return;
    const atX = table.room.nearX(shape, x), atY = table.room.nearY(shape, y);
    const limit = this.#kept < this.#limit ? Infinity : this.#weight[this.#kept - 1]!;
    const weight = table.weigh(p, shape, atX, atY, limit);
    if (weight < limit) this.#note(shape, atX, atY, weight);
  }

  #note(shape: number, x: number, y: number, weight: number): void {
    let at = this.#kept < this.#limit ? this.#kept++ : this.#kept - 1;
    for (; at > 0 && this.#weight[at - 1]! > weight; at--) {
      this.#x[at] = this.#x[at - 1]!;
      this.#y[at] = this.#y[at - 1]!;
      this.#shape[at] = this.#shape[at - 1]!;
      this.#weight[at] = this.#weight[at - 1]!;
    }
    this.#x[at] = x;
    this.#y[at] = y;
    this.#shape[at] = shape;
    this.#weight[at] = weight;
  }

  #atX = 0;
  #atY = 0;
  #atWeight = 0;

  #refine(p: number, shape: number, x: number, y: number, weight: number, size: number): void {
    this.#atX = x;
    this.#atY = y;
    this.#atWeight = weight;
    if (!this.table.room.range(shape, this.table.length)) return;
    if (weight > 0) this.#descend(p, shape, size);
    if (this.#atWeight > 0) this.#settle(p, shape, size);
  }

  #tryAt(p: number, shape: number, x: number, y: number): boolean {
    const { table } = this;
    const atX = table.room.nearX(shape, x), atY = table.room.nearY(shape, y);
    const weight = table.weigh(p, shape, atX, atY, this.#atWeight);
    if (weight >= this.#atWeight) return false;
    this.#atX = atX;
    this.#atY = atY;
    this.#atWeight = weight;
    return true;
  }

  #descend(p: number, shape: number, size: number): void {
    const { random } = this;
    let stepX = size * this.effort.stepFrom, stepY = stepX;
    const least = size * this.effort.stepTo;
    while ((stepX > least || stepY > least) && this.#atWeight > 0) {
      const way = random.below(4);
      const x = this.#atX, y = this.#atY;
      const dx = way === 1 ? 0 : stepX, dy = way === 0 ? 0 : way === 3 ? -stepY : stepY;
      const better = this.#tryAt(p, shape, x + dx, y + dy) || this.#tryAt(p, shape, x - dx, y - dy);
      const factor = better ? 1.1 : way < 2 ? 0.5 : 0.70710678;
      if (way !== 1) stepX *= factor;
      if (way !== 0) stepY *= factor;
    }
  }

  /** To the exact place: out of one piece, or to where the ways out of two meet. */
  #settle(p: number, shape: number, size: number): void {
    const { table } = this;
    const { normalX, normalY, deep } = table;
    for (let round = 0; round < 6 && this.#atWeight > 0; round++) {
      const x = this.#atX, y = this.#atY;
      const found = table.gather(p, shape, x, y, size * 0.002);
      let better = false;
      const far = size * 0.25;
      for (let i = 0; i < found && this.#atWeight > 0; i++) {
        const d = deep[i]!, ax = normalX[i]!, ay = normalY[i]!;
        if (d <= 1.5) continue;
        if (d < far) {
          better = this.#tryAt(p, shape, x + ax * d, y + ay * d) || better;
          if (Math.abs(ax) > 0.15 && Math.abs(ay) > 1e-9) better = this.#tryAt(p, shape, x + d / ax, y) || better;
          if (Math.abs(ay) > 0.15 && Math.abs(ax) > 1e-9) better = this.#tryAt(p, shape, x, y + d / ay) || better;
        }
        for (let j = 0; j < found; j++) {
          if (j === i || (j < i && deep[j]! > 1.5)) continue;
          const bx = normalX[j]!, by = normalY[j]!;
          const cross = ax * by - ay * bx;
          if (Math.abs(cross) < 0.02) continue;
          const sx = (d * by - deep[j]! * ay) / cross, sy = (ax * deep[j]! - bx * d) / cross;
          if (Math.abs(sx) < far && Math.abs(sy) < far) better = this.#tryAt(p, shape, x + sx, y + sy) || better;
        }
      }
      if (!better) return;
    }
  }
}
