/** A block of cells as it stands, for functions that read more than one figure from it. */
import type { Value } from './define.ts';

export class CellBlock {
  constructor(readonly rows: readonly (readonly Value[])[]) {}

  get width(): number {
    return Math.max(0, ...this.rows.map((row) => row.length));
  }
}
