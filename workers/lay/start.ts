/**
 * The first layout: piece after piece goes as far to the start of the cloth as
 * it can, and there as low as it can (bottom-left fill). The places to try are
 * the corners of the no-fit polygons and the points where their edges meet the
 * cloth's edges; nothing is random but the order.
 */
import { EDGE } from './depth-maps.ts';
import { PAIR } from './shapes.ts';
import type { Table } from './table.ts';

/** Lays the pieces in the order given between and behind those that are not in it, and sets the table's length. Pauses (yields) often, because the first maps are made here. */
export function* bottomLeft(table: Table, order: Int32Array): Generator<false, void> {
  const { shapes } = table;
  const laid: number[] = [];
  for (const p of order) table.lift(p);
  const laying = new Set(order);
  let end = 0;
  /** Where the last flaw ends. */
  let beyond = 0;
  for (let p = 0; p < table.count; p++) {
    if (laying.has(p)) continue;
    table.put(p, table.shape[p]!, table.x[p]!, table.y[p]!);
    laid.push(p);
    const last = table.x[p]! + shapes.reach[4 * table.shape[p]! + 2]!;
    if (table.isFixed(p)) beyond = Math.max(beyond, last);
    else end = Math.max(end, last);
  }
  for (const p of order) {
    let best = Infinity, bestX = 0, bestY = 0, bestShape = -1, bestLeft = 0;
    const tryAt = (shape: number, x: number, y: number): void => {
      const { bare, lattice } = shapes;
      if (x < table.room.lowX - 1e-6 || y < table.room.lowY - 1e-6 || y > table.room.highY + 1e-6) return;
      // Meeting the print, the piece lies at the next place of the repeat, further along and across.
      const everyX = lattice[4 * shape + 1]!, everyY = lattice[4 * shape + 3]!;
      const atX = everyX > 0 ? table.room.lowX + Math.max(0, Math.ceil((x - table.room.lowX) / everyX)) * everyX : Math.max(x, table.room.lowX);
      const atY = everyY > 0 ? Math.min(table.room.highY, table.room.lowY + Math.max(0, Math.ceil((y - table.room.lowY) / everyY)) * everyY) : Math.min(Math.max(y, table.room.lowY), table.room.highY);
      const left = atX + bare[4 * shape]!, right = atX + bare[4 * shape + 2]!, bottom = atY + bare[4 * shape + 1]!;
      // The cloth's end counts first, then the piece's own place along it.
      const score = Math.max(right, end) * 4 + right + bottom * 1e-3 + left * 1e-3;
      if (score >= best) return;
      if (table.weigh(p, shape, atX, atY, 1e-9) !== 0) return;
      best = score;
      bestX = atX;
      bestY = atY;
      bestShape = shape;
      bestLeft = left;
    };
    for (const shape of shapes.ofItem[table.item[p]!]!) {
      if (!table.room.range(shape, Infinity)) continue;
      const { lowX: atLeft, lowY: low, highY: high } = table.room;
      tryAt(shape, atLeft, low);
      tryAt(shape, atLeft, high);
      for (const q of laid) {
        corners(table, shape, q, low, high, atLeft, (x, y) => tryAt(shape, x, y));
        yield false;
      }
    }
    if (bestShape < 0) {
      // Flaws, or the print, can leave no corner free; behind everything is always room.
      const shape = shapes.ofItem[table.item[p]!]!.find((each) => table.room.range(each, Infinity)) ?? shapes.ofItem[table.item[p]!]![0]!;
      const every = shapes.lattice[4 * shape + 1]!;
      const behind = Math.max(end, beyond) - shapes.reach[4 * shape]! + 4;
      bestShape = shape;
      bestX = every > 0 ? table.room.lowX + Math.max(0, Math.ceil((behind - table.room.lowX) / every)) * every : Math.max(behind, table.room.lowX);
      bestY = table.room.lowY;
      bestLeft = Math.max(end, beyond);
    }
    table.put(p, bestShape, bestX, bestY);
    end = Math.max(end, bestX + shapes.bare[4 * bestShape + 2]!, bestLeft);
    laid.push(p);
  }
  table.length = table.used();
}

/** Corners of the no-fit polygon around `q`, nudged outwards, and its meetings with three edges of the cloth. */
function corners(table: Table, shape: number, q: number, low: number, high: number, atLeft: number, take: (x: number, y: number) => void): void {
  const { shapes } = table;
  const map = shapes.map(shape, table.shape[q]!);
  const [a, b, c, d] = shapes.pairs.subarray(PAIR * (shape * shapes.count + table.shape[q]!)) as unknown as [number, number, number, number];
  const { edges } = shapes.maps;
  const [first, last] = shapes.maps.edgesOf(map);
  for (let e = first; e < last; e++) {
    const at = e * EDGE;
    const ux = edges[at + 2]!, uy = edges[at + 3]!, length = edges[at + 4]!;
    // A little outwards, where pieces may touch.
    const u = edges[at]! + uy * 3.5, v = edges[at + 1]! - ux * 3.5;
    const x = a * u + c * v + table.x[q]!, y = b * u + d * v + table.y[q]!;
    const wx = a * ux + c * uy, wy = b * ux + d * uy;
    if (low < high) {
      take(x, y);
      take(x + wx * length, y + wy * length);
    }
    for (const wall of low === high ? [low] : [low, high]) {
      const t = (wall - y) / wy;
      if (t >= 0 && t <= length) take(x + wx * t, wall);
    }
    const t = (atLeft - x) / wx;
    if (t >= 0 && t <= length && low < high) take(atLeft, y + wy * t);
  }
}
