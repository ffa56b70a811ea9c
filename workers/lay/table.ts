/**
 * The cutting table: where every piece lies, how deep pairs lie in each other,
 * and how heavily each pair's overlap counts. The search's innermost loop,
 * `weigh`, is here; everything it touches is a typed array.
 */
import { MARGIN } from './depth-maps.ts';
import { Room } from './room.ts';
import { PAIR, type Shapes } from './shapes.ts';
import { WayOut } from './way-out.ts';

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
  /**
   * The pieces that lie on the table, ordered by their left bound, so that a
   * place is compared only with those that can reach it: who, and its bounds
   * with the gap. `#lying` is how many they are.
   */
  readonly #who: Int32Array;
  readonly #left: Float64Array;
  readonly #right: Float64Array;
  readonly #bottom: Float64Array;
  readonly #top: Float64Array;
  #lying = 0;
  /** The longest piece: none that begins further left than this can reach. */
  readonly #longest: number;
  // What `weigh` looks at: offsets in the maps, lists of edges, weights, and what each is sure to weigh.
  readonly #nearU: Float64Array;
  readonly #nearV: Float64Array;
  readonly #nearList: Int32Array;
  readonly #nearWeight: Float64Array;
  readonly #nearFloor: Float64Array;
  /** Of each piece, with how many it was last measured to lie in each other. */
  readonly touching: Int32Array;
  readonly depth: Float64Array;
  readonly room: Room;
  readonly #out: WayOut;
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
    this.#who = new Int32Array(n);
    this.#left = new Float64Array(n);
    this.#right = new Float64Array(n);
    this.#bottom = new Float64Array(n);
    this.#top = new Float64Array(n);
    let longest = 0;
    for (let s = 0; s < shapes.count; s++) longest = Math.max(longest, shapes.reach[4 * s + 2]! - shapes.reach[4 * s]!);
    this.#longest = longest;
    this.room = new Room(shapes, width);
    this.#out = new WayOut(shapes);
    this.#nearU = new Float64Array(n);
    this.#nearV = new Float64Array(n);
    this.#nearList = new Int32Array(n);
    this.#nearWeight = new Float64Array(n);
    this.#nearFloor = new Float64Array(n);
    this.touching = new Int32Array(n);
    this.depth = new Float64Array(n * n);
    this.weight = new Float64Array(n * n).fill(1);
  }

  isFixed(p: number): boolean {
    return this.shapes.items[this.item[p]!]!.fixed === true;
  }

  /** Takes a piece off the table: it meets nothing. */
  lift(p: number): void {
    const at = this.#who.subarray(0, this.#lying).indexOf(p);
    if (at < 0) return;
    this.#lying--;
    this.#shift(at, 1);
  }

  put(p: number, shape: number, x: number, y: number): void {
    this.lift(p);
    this.shape[p] = shape;
    this.x[p] = x;
    this.y[p] = y;
    const { reach } = this.shapes;
    const left = x + reach[4 * shape]!;
    const at = this.#firstFrom(left);
    this.#shift(at, -1);
    this.#lying++;
    this.#who[at] = p;
    this.#left[at] = left;
    this.#bottom[at] = y + reach[4 * shape + 1]!;
    this.#right[at] = x + reach[4 * shape + 2]!;
    this.#top[at] = y + reach[4 * shape + 3]!;
  }

  /** Closes a gap at `at` (1) or opens one (−1). */
  #shift(at: number, by: 1 | -1): void {
    const to = by === 1 ? at : at + 1, from = by === 1 ? at + 1 : at;
    const end = this.#lying + (by === 1 ? 1 : 0);
    for (const list of [this.#who, this.#left, this.#right, this.#bottom, this.#top]) list.copyWithin(to, from, end);
  }

  /** The first whose left bound is at least `bound`. */
  #firstFrom(bound: number): number {
    const left = this.#left;
    let low = 0, high = this.#lying;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (left[middle]! < bound) low = middle + 1;
      else high = middle;
    }
    return low;
  }

  /**
   * The weighted sum of the depths in which piece `p`, as `shape` at (x, y),
   * lies in the others. Gives up, with Infinity, once it passes `limit`.
   */
  weigh(p: number, shape: number, x: number, y: number, limit: number): number {
    this.weighed++;
    const { shapes } = this;
    const who = this.#who, left = this.#left, right = this.#right, bottom = this.#bottom, top = this.#top;
    const { reach, pairs } = shapes;
    const { edges, cells, lists } = shapes.maps;
    const nearU = this.#nearU, nearV = this.#nearV, nearList = this.#nearList, nearWeight = this.#nearWeight, nearFloor = this.#nearFloor;
    const myLeft = x + reach[4 * shape]!, myBottom = y + reach[4 * shape + 1]!;
    const myRight = x + reach[4 * shape + 2]!, myTop = y + reach[4 * shape + 3]!;
    const row = shape * shapes.count;
    const weights = p * this.count;
    const lying = this.#lying;
    // First what each is sure to weigh: that alone turns most places down.
    let sum = 0;
    let near = 0;
    for (let k = this.#firstFrom(myLeft - this.#longest); k < lying && left[k]! < myRight; k++) {
      if (right[k]! <= myLeft || bottom[k]! >= myTop || top[k]! <= myBottom) continue;
      const q = who[k]!;
      if (q === p) continue;
      const pair = (row + this.shape[q]!) * PAIR;
      if (pairs[pair + 9]! < 0) {
        // A map has to be made, which may move the arrays: begin again with it.
        shapes.map(shape, this.shape[q]!);
        this.weighed--;
        return this.weigh(p, shape, x, y, limit);
      }
      const dx = x - this.x[q]!, dy = y - this.y[q]!;
      const u = pairs[pair]! * dx + pairs[pair + 1]! * dy;
      const v = pairs[pair + 2]! * dx + pairs[pair + 3]! * dy;
      const cx = (u - pairs[pair + 4]!) * pairs[pair + 6]!, cy = (v - pairs[pair + 5]!) * pairs[pair + 6]!;
      const columns = pairs[pair + 7]!;
      if (!(cx >= 0 && cy >= 0 && cx < columns && cy < pairs[pair + 8]!)) continue;
      const cell = 2 * (pairs[pair + 9]! + (cy | 0) * columns + (cx | 0));
      const list = cells[cell]!;
      if (list < 0) continue;
      const weight = this.weight[weights + q]!;
      const floor = weight * cells[cell + 1]!;
      sum += floor;
      if (sum >= limit) return Infinity;
      nearU[near] = u;
      nearV[near] = v;
      nearList[near] = list;
      nearWeight[near] = weight;
      nearFloor[near++] = floor;
    }
    for (let k = 0; k < near; k++) {
      const u = nearU[k]!, v = nearV[k]!, list = nearList[k]!;
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
      sum += nearWeight[k]! * deep - nearFloor[k]!;
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
    const { reach, pairs } = shapes;
    const myLeft = x + reach[4 * shape]! - slack, myBottom = y + reach[4 * shape + 1]! - slack;
    const myRight = x + reach[4 * shape + 2]! + slack, myTop = y + reach[4 * shape + 3]! + slack;
    for (let k = this.#firstFrom(myLeft - this.#longest); k < this.#lying && this.#left[k]! < myRight && found < 16; k++) {
      const q = this.#who[k]!;
      if (this.#right[k]! <= myLeft || this.#bottom[k]! >= myTop || this.#top[k]! <= myBottom || q === p) continue;
      const pair = this.#pair(shape, this.shape[q]!);
      if (!this.#out.find(pair, x - this.x[q]!, y - this.y[q]!) || this.#out.deep < -slack) continue;
      const a = pairs[pair]!, b = pairs[pair + 1]!, c = pairs[pair + 2]!, d = pairs[pair + 3]!;
      this.normalX[found] = a * this.#out.x + c * this.#out.y;
      this.normalY[found] = b * this.#out.x + d * this.#out.y;
      this.deep[found] = this.#out.deep;
      this.heavy[found] = this.weight[p * count + q]!;
      found++;
    }
    return found;
  }

  /** Where the pair's numbers begin; its map is made if need be. */
  #pair(moving: number, lying: number): number {
    const pair = (moving * this.shapes.count + lying) * PAIR;
    if (this.shapes.pairs[pair + 9]! < 0) this.shapes.map(moving, lying);
    return pair;
  }

  /** How deep `p` and `q` lie in each other where they lie. */
  depthOf(p: number, q: number): number {
    return this.#out.find(this.#pair(this.shape[p]!, this.shape[q]!), this.x[p]! - this.x[q]!, this.y[p]! - this.y[q]!) && this.#out.deep > MARGIN / 2 ? this.#out.deep : 0;
  }

  /** Works out the depths of `p` with all others; gives their sum. */
  measure(p: number): number {
    const { count, depth, touching } = this;
    for (let q = 0; touching[p]! > 0 && q < count; q++) {
      if (depth[p * count + q] === 0) continue;
      depth[p * count + q] = depth[q * count + p] = 0;
      touching[p]!--;
      touching[q]!--;
    }
    const { reach } = this.shapes;
    const shape = this.shape[p]!;
    const myLeft = this.x[p]! + reach[4 * shape]!, myRight = this.x[p]! + reach[4 * shape + 2]!;
    const myBottom = this.y[p]! + reach[4 * shape + 1]!, myTop = this.y[p]! + reach[4 * shape + 3]!;
    let sum = 0;
    for (let k = this.#firstFrom(myLeft - this.#longest); k < this.#lying && this.#left[k]! < myRight; k++) {
      const q = this.#who[k]!;
      if (this.#right[k]! <= myLeft || this.#bottom[k]! >= myTop || this.#top[k]! <= myBottom || q === p) continue;
      const deep = this.depthOf(p, q);
      if (deep === 0) continue;
      depth[p * count + q] = depth[q * count + p] = deep;
      touching[p]!++;
      touching[q]!++;
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

  keep(): Kept {
    return { x: this.x.slice(), y: this.y.slice(), shape: this.shape.slice(), length: this.length };
  }

  /** The same into arrays that are there. */
  keepIn({ x, y, shape }: Kept): void {
    x.set(this.x);
    y.set(this.y);
    shape.set(this.shape);
  }

  restore(kept: Kept): void {
    this.length = kept.length;
    for (let p = 0; p < this.count; p++) this.put(p, kept.shape[p]!, kept.x[p]!, kept.y[p]!);
  }

  /** The cloth's length that the pieces take up. */
  used(): number {
    let most = 0;
    for (let p = 0; p < this.count; p++) if (!this.isFixed(p)) most = Math.max(most, this.x[p]! + this.shapes.bare[4 * this.shape[p]! + 2]!);
    return most;
  }
}

