/**
 * How deep two pieces lie in each other, in constant time. A no-fit polygon
 * gets a grid; each cell names the few edges that can be the nearest for a
 * point in it, so the distance found is exact and needs no interpolation.
 * All maps share three growing arrays, to keep the search's inner loop free of
 * objects.
 */
import type { Ring } from './flat.ts';

/** Numbers of an edge: start, direction, length, and whether a point nearest to its start or end is inside. */
export const EDGE = 8;

/** Pieces stay this many grid units apart: more than rounding can take away. */
export const MARGIN = 3;

export class DepthMaps {
  edges = new Float64Array(1 << 13);
  #edgeCount = 0;
  /**
   * A cell has two numbers, side by side for the processor's cache: −1 when no point of it is inside or near,
   * else where its list begins; and a depth that no point of it is less deep than, 0 when some point is outside.
   */
  cells = new Int32Array(1 << 16);
  #cellCount = 0;
  /** Lists: how many, then the edges' places in `edges`. */
  lists = new Int32Array(1 << 16);
  #listCount = 0;
  /** A map: left, bottom, cells per unit, columns, rows, first cell. */
  maps = new Float64Array(6 * 64);
  readonly #ranges: [number, number][] = [];
  count = 0;
  readonly #side: number;

  /** @param side how many cells a map has along its longer side */
  constructor(side: number) {
    this.#side = side;
  }

  /** Bytes in use. */
  get size(): number {
    return this.edges.byteLength + this.cells.byteLength + this.lists.byteLength;
  }

  /** Adds the map of a no-fit polygon; gives its number. */
  add(rings: readonly Ring[]): number {
    const first = this.#edgeCount;
    for (const ring of rings) this.#addRing(ring);
    let left = Infinity, right = -Infinity, bottom = Infinity, top = -Infinity;
    for (const ring of rings) {
      for (let i = 0; i < ring.length; i += 2) {
        left = Math.min(left, ring[i]!);
        right = Math.max(right, ring[i]!);
        bottom = Math.min(bottom, ring[i + 1]!);
        top = Math.max(top, ring[i + 1]!);
      }
    }
    const cell = (Math.max(right - left, top - bottom) + 4 * MARGIN) / this.#side;
    left -= 2 * MARGIN;
    bottom -= 2 * MARGIN;
    const columns = Math.ceil((right + 2 * MARGIN - left) / cell);
    const rows = Math.ceil((top + 2 * MARGIN - bottom) / cell);
    if ((this.count + 1) * 6 > this.maps.length) this.maps = grown(this.maps, this.maps.length * 2);
    this.maps.set([left, bottom, 1 / cell, columns, rows, this.#cellCount], this.count * 6);
    this.#ranges.push([first, this.#edgeCount]);
    this.#fill(left, bottom, cell, columns, rows, first);
    return this.count++;
  }

  /** The first of a map's edges, and the first that is not. */
  edgesOf(map: number): readonly [number, number] {
    return this.#ranges[map]!;
  }

  #addRing(ring: Ring): void {
    const n = ring.length / 2;
    while ((this.#edgeCount + n) * EDGE > this.edges.length) this.edges = grown(this.edges, this.edges.length * 2);
    const hollow = (i: number): boolean => {
      const a = ((i + n - 1) % n) * 2, b = (i % n) * 2, c = ((i + 1) % n) * 2;
      return (ring[b]! - ring[a]!) * (ring[c + 1]! - ring[b + 1]!) - (ring[b + 1]! - ring[a + 1]!) * (ring[c]! - ring[b]!) < 0;
    };
    for (let i = 0; i < n; i++) {
      const x = ring[2 * i]!, y = ring[2 * i + 1]!;
      const dx = ring[(2 * i + 2) % (2 * n)]! - x, dy = ring[(2 * i + 3) % (2 * n)]! - y;
      const length = Math.hypot(dx, dy);
      this.edges.set([x, y, dx / length, dy / length, length, hollow(i) ? 1 : 0, hollow(i + 1) ? 1 : 0, 0], this.#edgeCount * EDGE);
      this.#edgeCount++;
    }
  }

  #fill(left: number, bottom: number, cell: number, columns: number, rows: number, first: number): void {
    while (2 * (this.#cellCount + columns * rows) > this.cells.length) this.cells = grown(this.cells, this.cells.length * 2);
    const base = this.#cellCount;
    this.#made.clear();
    this.#first = first;
    this.#cellCount += columns * rows;
    const all = Int32Array.from({ length: this.#edgeCount - first }, (_, i) => (first + i) * EDGE);
    const block = 8;
    const near = new Int32Array(all.length);
    const distances = new Float64Array(all.length);
    const within = new Int32Array(all.length);
    for (let by = 0; by < rows; by += block) {
      for (let bx = 0; bx < columns; bx += block) {
        // A block of cells first thins out the edges, then each cell does.
        const half = (block * cell) / 2;
        const count = this.#nearest(all, all.length, left + bx * cell + half, bottom + by * cell + half, half * Math.SQRT2, near, distances);
        for (let cy = by; cy < Math.min(by + block, rows); cy++) {
          for (let cx = bx; cx < Math.min(bx + block, columns); cx++) {
            const x = left + (cx + 0.5) * cell, y = bottom + (cy + 0.5) * cell;
            const n = this.#nearest(near, count, x, y, (cell / 2) * Math.SQRT2, within, distances);
            const clear = !this.#insideAtCentre && this.#least > (cell / 2) * Math.SQRT2 + 2 * MARGIN;
            const at = 2 * (base + cy * columns + cx);
            this.cells[at] = clear ? -1 : this.#list(within, n);
            this.cells[at + 1] = this.#insideAtCentre ? Math.max(0, Math.floor(this.#least - (cell / 2) * Math.SQRT2)) : 0;
          }
        }
      }
    }
  }

  #made = new Map<string, number>();
  #first = 0;
  #least = 0;
  #insideAtCentre = false;

  /** The edges that can be nearest to a point within `radius` of the centre. */
  #nearest(from: Int32Array, count: number, x: number, y: number, radius: number, into: Int32Array, distances: Float64Array): number {
    const { edges } = this;
    let least = Infinity;
    for (let i = 0; i < count; i++) {
      const e = from[i]!;
      const px = x - edges[e]!, py = y - edges[e + 1]!;
      const along = px * edges[e + 2]! + py * edges[e + 3]!;
      let squared: number;
      let inside: boolean;
      if (along <= 0) {
        squared = px * px + py * py;
        inside = edges[e + 5] === 1;
      } else if (along >= edges[e + 4]!) {
        squared = px * px + py * py - 2 * along * edges[e + 4]! + edges[e + 4]! * edges[e + 4]!;
        inside = edges[e + 6] === 1;
      } else {
        const h = edges[e + 2]! * py - edges[e + 3]! * px;
        squared = h * h;
        inside = h > 0;
      }
      const distance = Math.sqrt(Math.max(0, squared));
      distances[i] = distance;
      if (distance < least) {
        least = distance;
        this.#insideAtCentre = inside;
      }
    }
    this.#least = least;
    let kept = 0;
    for (let i = 0; i < count; i++) if (distances[i]! <= least + 2 * radius) into[kept++] = from[i]!;
    return kept;
  }

  /** Where the list lies. Cells side by side mostly name the same edges and share one, which keeps the maps in the processor's cache. */
  #list(edges: Int32Array, count: number): number {
    let key = '';
    for (let i = 0; i < count; i++) key += String.fromCharCode(edges[i]! / EDGE - this.#first);
    const made = this.#made.get(key);
    if (made !== undefined) return made;
    this.#made.set(key, this.#listCount);
    while (this.#listCount + count + 1 > this.lists.length) this.lists = grown(this.lists, this.lists.length * 2);
    const at = this.#listCount;
    this.lists[at] = count;
    for (let i = 0; i < count; i++) this.lists[at + 1 + i] = edges[i]!;
    this.#listCount += count + 1;
    return at;
  }
}

function grown<T extends Float64Array | Int32Array>(from: T, length: number): T {
  const more = new (from.constructor as new (length: number) => T)(length);
  more.set(from);
  return more;
}
