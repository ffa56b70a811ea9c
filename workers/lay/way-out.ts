/** The shortest way out of a piece: which direction and how far. */
import { MARGIN } from './depth-maps.ts';
import type { Shapes } from './shapes.ts';

export class WayOut {
  /** In the map's own directions, of length 1. */
  x = 0;
  y = 0;
  /** How deep with the margin; a little below zero for those that only touch. */
  deep = 0;

  constructor(readonly shapes: Shapes) {}

  /** Of the pair whose numbers begin at `pair`, one lying at (dx, dy) from the other; false when they lie clearly apart. */
  find(pair: number, dx: number, dy: number): boolean {
    const { pairs } = this.shapes;
    const { edges, cells, lists } = this.shapes.maps;
    const u = pairs[pair]! * dx + pairs[pair + 1]! * dy, v = pairs[pair + 2]! * dx + pairs[pair + 3]! * dy;
    const cx = (u - pairs[pair + 4]!) * pairs[pair + 6]!, cy = (v - pairs[pair + 5]!) * pairs[pair + 6]!;
    const columns = pairs[pair + 7]!;
    if (!(cx >= 0 && cy >= 0 && cx < columns && cy < pairs[pair + 8]!)) return false;
    const list = cells[2 * (pairs[pair + 9]! + (cy | 0) * columns + (cx | 0))]!;
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
    this.x = outX;
    this.y = outY;
    this.deep = deep + MARGIN;
    return true;
  }
}
