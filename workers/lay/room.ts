/** Where a shape may lie: on the cloth, in its part of it, and where the print lets it. */
import type { Shapes } from './shapes.ts';

/** Of a repeat, what rounding may take. */
const NEAR = 1e-9;

export class Room {
  // What `range` found: where the shape's origin may lie.
  lowX = 0;
  highX = 0;
  lowY = 0;
  highY = 0;

  constructor(readonly shapes: Shapes, readonly width: number) {}

  /** Looks where on a cloth of that length the shape's origin may lie; false when there is no such place. */
  range(shape: number, length: number): boolean {
    const { bare, lattice, items, shapes } = this.shapes;
    const { onFold, band } = items[shapes[shape]!.item]!;
    this.lowX = -bare[4 * shape]!;
    this.highX = length - bare[4 * shape + 2]!;
    this.lowY = (band ? band[0] : 0) - bare[4 * shape + 1]!;
    this.highY = onFold ? this.lowY : Math.max(this.lowY, (band ? band[1] : this.width) - bare[4 * shape + 3]!);
    const everyX = lattice[4 * shape + 1]!, everyY = lattice[4 * shape + 3]!;
    if (everyX > 0) {
      const first = lattice[4 * shape]!;
      this.lowX = first + Math.ceil((this.lowX - first) / everyX - NEAR) * everyX;
      this.highX = first + Math.floor((this.highX - first) / everyX + NEAR) * everyX;
    }
    if (everyY > 0) {
      const first = lattice[4 * shape + 2]!;
      this.lowY = first + Math.ceil((this.lowY - first) / everyY - NEAR) * everyY;
      this.highY = first + Math.floor((this.highY - first) / everyY + NEAR) * everyY;
    }
    return this.highX >= this.lowX && this.highY >= this.lowY;
  }

  /** The nearest place along within what `range` found. */
  nearX(shape: number, x: number): number {
    const every = this.shapes.lattice[4 * shape + 1]!;
    const at = every > 0 ? this.lowX + Math.round((x - this.lowX) / every) * every : x;
    return at < this.lowX ? this.lowX : at > this.highX ? this.highX : at;
  }

  /** The same across. */
  nearY(shape: number, y: number): number {
    const every = this.shapes.lattice[4 * shape + 3]!;
    const at = every > 0 ? this.lowY + Math.round((y - this.lowY) / every) * every : y;
    return at < this.lowY ? this.lowY : at > this.highY ? this.highY : at;
  }
}
