/**
 * The cutting table: where every piece lies, how deep pairs lie in each other,
 * and how heavily each pair's overlap counts. The search's innermost loop,
 * `weigh`, is here; everything it touches is a typed array.
 */
import { MARGIN } from './depth-maps.ts';
import type { Shapes } from './shapes.ts';

/** A place to go back to. */
export interface Kept {
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly shape: Int32Array;
  readonly length: number;
}

export class Table {
  readonly count: number;
  readonly item: Int32Array;
  readonly shape: Int32Array;
  readonly x: Float64Array;
  readonly y: Float64Array;
  /** Bounds with the gap, of each piece where it lies. */
  readonly #left: Float64Array;
  readonly #right: Float64Array;
  readonly #bottom: Float64Array;
  readonly #top: Float64Array;
  readonly depth: Float64Array;
  readonly weight: Float64Array;
  /** Places weighed since the start: the search's clock. */
  weighed = 0;
  length = Infinity;

  constructor(readonly shapes: Shapes, readonly width: number) {
    const item: number[] = [];
    shapes.items.forEach((each, i) => {
      for (let k = 0; k < each.count; k++) item.push(i);
    });
    const n = this.count = item.length;
    this.item = Int32Array.from(item);
    this.shape = Int32Array.from(item, (i) => shapes.ofItem[i]![0]!);
    this.x = new Float64Array(n);
    this.y = new Float64Array(n);
    this.#left = new Float64Array(n).fill(Infinity);
    this.#right = new Float64Array(n).fill(Infinity);
    this.#bottom = new Float64Array(n);
    this.#top = new Float64Array(n);
    this.depth = new Float64Array(n * n);
    this.weight = new Float64Array(n * n).fill(1);
  }

  /** Takes a piece off the table: it meets nothing. */
  lift(p: number): void {
    this.#left[p] = this.#right[p] = Infinity;
  }

  put(p: number, shape: number, x: number, y: number): void {
    this.shape[p] = shape;
    this.x[p] = x;
    this.y[p] = y;
    const { reach } = this.shapes;
    this.#left[p] = x + reach[4 * shape]!;
    this.#bottom[p] = y + reach[4 * shape + 1]!;
    this.#right[p] = x + reach[4 * shape + 2]!;
    this.#top[p] = y + reach[4 * shape + 3]!;
  }

  /**
   * The weighted sum of the depths in which piece `p`, as `shape` at (x, y),
   * lies in the others. Gives up, with Infinity, once it passes `limit`.
   */
  weigh(p: number, shape: number, x: number, y: number, limit: number): number {
    this.weighed++;
    const { shapes, count } = this;
    const left = this.#left, right = this.#right, bottom = this.#bottom, top = this.#top;
    const { reach, mapOf, into } = shapes;
    const { maps, edges, cells, lists } = shapes.maps;
    const myLeft = x + reach[4 * shape]!, myBottom = y + reach[4 * shape + 1]!;
    const myRight = x + reach[4 * shape + 2]!, myTop = y + reach[4 * shape + 3]!;
    const row = shape * shapes.count;
    const weights = p * count;
    let sum = 0;
    for (let q = 0; q < count; q++) {
      if (left[q]! >= myRight || right[q]! <= myLeft || bottom[q]! >= myTop || top[q]! <= myBottom || q === p) continue;
      const pair = row + this.shape[q]!;
      const map = mapOf[pair]!;
      if (map < 0) {
        // A map has to be made, which may move the arrays: begin again with it.
        shapes.map(shape, this.shape[q]!);
        this.weighed--;
        return this.weigh(p, shape, x, y, limit);
      }
      const dx = x - this.x[q]!, dy = y - this.y[q]!;
      const u = into[4 * pair]! * dx + into[4 * pair + 1]! * dy;
      const v = into[4 * pair + 2]! * dx + into[4 * pair + 3]! * dy;
      const m = map * 6;
      const cx = (u - maps[m]!) * maps[m + 2]!, cy = (v - maps[m + 1]!) * maps[m + 2]!;
      const columns = maps[m + 3]!;
      if (!(cx >= 0 && cy >= 0 && cx < columns && cy < maps[m + 4]!)) continue;
      const list = cells[maps[m + 5]! + (cy | 0) * columns + (cx | 0)]!;
      if (list < 0) continue;
      let least = Infinity;
      let inside = false;
      for (let i = list + 1, end = list + lists[list]!; i <= end; i++) {
        const e = lists[i]!;
        const px = u - edges[e]!, py = v - edges[e + 1]!;
        const ux = edges[e + 2]!, uy = edges[e + 3]!;
        const along = px * ux + py * uy;
        if (along <= 0) {
          const d = px * px + py * py;
          if (d < least) {
            least = d;
            inside = edges[e + 5] === 1;
          }
        } else if (along >= edges[e + 4]!) {
          const h = ux * py - uy * px;
          const over = along - edges[e + 4]!;
          const d = h * h + over * over;
          if (d < least) {
            least = d;
            inside = edges[e + 6] === 1;
          }
        } else {
          const h = ux * py - uy * px;
          const d = h * h;
          if (d < least) {
            least = d;
            inside = h > 0;
          }
        }
      }
      const deep = inside ? MARGIN + Math.sqrt(least) : MARGIN - Math.sqrt(least);
      if (deep <= MARGIN / 2) continue;
      sum += this.weight[weights + q]! * deep;
      if (sum >= limit) return Infinity;
    }
    return sum;
  }

  // What `gather` found: unit normals outwards, depths (a little below zero for those that only touch), weights.
  readonly normalX = new Float64Array(16);
  readonly normalY = new Float64Array(16);
  readonly deep = new Float64Array(16);
  readonly heavy = new Float64Array(16);

  /** The pieces that `p` lies in or touches there, at most 16, with the way out of each; how many. */
  gather(p: number, shape: number, x: number, y: number, slack: number): number {
    this.weighed++;
    let found = 0;
    const { shapes, count } = this;
    const { reach, mapOf, into } = shapes;
    const myLeft = x + reach[4 * shape]! - slack, myBottom = y + reach[4 * shape + 1]! - slack;
    const myRight = x + reach[4 * shape + 2]! + slack, myTop = y + reach[4 * shape + 3]! + slack;
    for (let q = 0; q < count && found < 16; q++) {
      if (this.#left[q]! >= myRight || this.#right[q]! <= myLeft || this.#bottom[q]! >= myTop || this.#top[q]! <= myBottom || q === p) continue;
      const pair = shape * shapes.count + this.shape[q]!;
      if (mapOf[pair]! < 0) shapes.map(shape, this.shape[q]!);
      const dx = x - this.x[q]!, dy = y - this.y[q]!;
      const a = into[4 * pair]!, b = into[4 * pair + 1]!, c = into[4 * pair + 2]!, d = into[4 * pair + 3]!;
      if (!this.#wayOut(mapOf[pair]! * 6, a * dx + b * dy, c * dx + d * dy) || this.#outDeep < -slack) continue;
      this.normalX[found] = a * this.#outX + c * this.#outY;
      this.normalY[found] = b * this.#outX + d * this.#outY;
      this.deep[found] = this.#outDeep;
      this.heavy[found] = this.weight[p * count + q]!;
      found++;
    }
    return found;
  }

  #outX = 0;
  #outY = 0;
  #outDeep = 0;

  #wayOut(m: number, u: number, v: number): boolean {
    const { maps, edges, cells, lists } = this.shapes.maps;
    const cx = (u - maps[m]!) * maps[m + 2]!, cy = (v - maps[m + 1]!) * maps[m + 2]!;
    const columns = maps[m + 3]!;
    if (!(cx >= 0 && cy >= 0 && cx < columns && cy < maps[m + 4]!)) return false;
    const list = cells[maps[m + 5]! + (cy | 0) * columns + (cx | 0)]!;
    if (list < 0) return false;
    let least = Infinity;
    let outX = 0, outY = 0, deep = 0;
    for (let i = list + 1, end = list + lists[list]!; i <= end; i++) {
      const e = lists[i]!;
      const px = u - edges[e]!, py = v - edges[e + 1]!;
      const ux = edges[e + 2]!, uy = edges[e + 3]!;
      const along = Math.max(0, Math.min(edges[e + 4]!, px * ux + py * uy));
      const rx = px - along * ux, ry = py - along * uy;
      const squared = rx * rx + ry * ry;
      if (squared >= least) continue;
      least = squared;
      const atEnd = along === 0 || along === edges[e + 4]!;
      const inside = atEnd ? edges[e + (along === 0 ? 5 : 6)] === 1 : ux * ry - uy * rx > 0;
      const distance = Math.sqrt(squared);
      deep = inside ? distance : -distance;
      // On an edge its own normal; at a corner the line from it.
      if (!atEnd || distance < 1e-9) {
        outX = uy;
        outY = -ux;
      } else {
        outX = (inside ? -rx : rx) / distance;
        outY = (inside ? -ry : ry) / distance;
      }
    }
    this.#outX = outX;
    this.#outY = outY;
    this.#outDeep = deep + MARGIN;
    return true;
  }

  /** How deep `p` and `q` lie in each other where they lie. */
  depthOf(p: number, q: number): number {
    if (this.#left[q]! >= this.#right[p]! || this.#right[q]! <= this.#left[p]! || this.#bottom[q]! >= this.#top[p]! || this.#top[q]! <= this.#bottom[p]!) return 0;
    const { shapes } = this;
    const pair = this.shape[p]! * shapes.count + this.shape[q]!;
    if (shapes.mapOf[pair]! < 0) shapes.map(this.shape[p]!, this.shape[q]!);
    const dx = this.x[p]! - this.x[q]!, dy = this.y[p]! - this.y[q]!;
    const { into } = shapes;
    const u = into[4 * pair]! * dx + into[4 * pair + 1]! * dy, v = into[4 * pair + 2]! * dx + into[4 * pair + 3]! * dy;
    return this.#wayOut(shapes.mapOf[pair]! * 6, u, v) && this.#outDeep > MARGIN / 2 ? this.#outDeep : 0;
  }

  /** Works out the depths of `p` with all others; gives their sum. */
  measure(p: number): number {
    const { count, depth } = this;
    let sum = 0;
    for (let q = 0; q < count; q++) {
      const deep = q === p ? 0 : this.depthOf(p, q);
      depth[p * count + q] = depth[q * count + p] = deep;
      sum += deep;
    }
    return sum;
  }

  /** Works out all depths; gives their sum. */
  measureAll(): number {
    let sum = 0;
    for (let p = 0; p < this.count; p++) sum += this.measure(p);
    return sum / 2;
  }

  overlapOf(p: number): number {
    let sum = 0;
    for (let q = 0, at = p * this.count; q < this.count; q++, at++) sum += this.depth[at]! * this.weight[at]!;
    return sum;
  }

  keep(): Kept {
    return { x: this.x.slice(), y: this.y.slice(), shape: this.shape.slice(), length: this.length };
  }

  restore(kept: Kept): void {
    this.length = kept.length;
    for (let p = 0; p < this.count; p++) this.put(p, kept.shape[p]!, kept.x[p]!, kept.y[p]!);
  }

  /** The cloth's length that the pieces take up. */
  used(): number {
    let most = 0;
    for (let p = 0; p < this.count; p++) most = Math.max(most, this.x[p]! + this.shapes.bare[4 * this.shape[p]! + 2]!);
    return most;
  }
}

