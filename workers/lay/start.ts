/**
 * The first layout: piece after piece goes as far to the start of the cloth as
 * it can, and there as low as it can (bottom-left fill). The places to try are
 * the corners of the no-fit polygons and the points where their edges meet the
 * cloth's edges; nothing is random but the order.
 */
import { EDGE } from './depth-maps.ts';
import { PAIR } from './shapes.ts';
import type { Table } from './table.ts';

/** Lays the pieces in the order given on an empty table and sets its length. Pauses (yields) often, because the first maps are made here. */
export function* bottomLeft(table: Table, order: Int32Array): Generator<false, void> {
  const { shapes, width } = table;
  const laid: number[] = [];
  for (let p = 0; p < table.count; p++) {
    table.lift(p);
    if (!table.isFixed(p)) continue;
    table.put(p, table.shape[p]!, 0, 0);
    laid.push(p);
  }
  let end = 0;
  for (const p of order) {
    if (table.isFixed(p)) continue;
    let best = Infinity, bestX = 0, bestY = 0, bestShape = -1, bestLeft = 0;
    const tryAt = (shape: number, x: number, y: number): void => {
      const { bare } = shapes;
      const left = x + bare[4 * shape]!;
      const right = x + bare[4 * shape + 2]!;
      const bottom = y + bare[4 * shape + 1]!;
      if (left < -1e-6 || bottom < -1e-6 || y + bare[4 * shape + 3]! > width + 1e-6) return;
      // The cloth's end counts first, then the piece's own place along it.
      const score = Math.max(right, end) * 4 + right + bottom * 1e-3 + left * 1e-3;
      if (score >= best) return;
      if (table.weigh(p, shape, Math.max(x, -bare[4 * shape]!), Math.max(y, -bare[4 * shape + 1]!), 1e-9) !== 0) return;
      best = score;
      bestX = Math.max(x, -bare[4 * shape]!);
      bestY = Math.min(Math.max(y, -bare[4 * shape + 1]!), width - bare[4 * shape + 3]!);
      bestShape = shape;
      bestLeft = left;
    };
    for (const shape of shapes.ofItem[table.item[p]!]!) {
      const { bare } = shapes;
      const atLeft = -bare[4 * shape]!;
      const low = -bare[4 * shape + 1]!;
      const high = shapes.items[table.item[p]!]!.onFold ? low : width - bare[4 * shape + 3]!;
      tryAt(shape, atLeft, low);
      tryAt(shape, atLeft, high);
      for (const q of laid) {
        corners(table, shape, q, low, high, atLeft, (x, y) => tryAt(shape, x, y));
        yield false;
      }
    }
    if (bestShape < 0) {
      // Flaws can leave no corner free; behind everything is always room.
      const shape = shapes.ofItem[table.item[p]!]![0]!;
      bestShape = shape;
      bestX = end - shapes.reach[4 * shape]! + 4;
      bestY = -shapes.bare[4 * shape + 1]!;
      bestLeft = end;
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
