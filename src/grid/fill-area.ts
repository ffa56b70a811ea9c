/** Where a fill reaches that is being dragged out of the selected block. Pure. */
import type { CellArea, CellPlace } from './view.ts';

export interface FillReach {
  /** The whole block after the fill, the selected cells among it. */
  readonly to: CellArea;
  readonly way: 'down' | 'up' | 'right' | 'left';
  /** Rows or columns that are filled. */
  readonly count: number;
}

/** One way at a time: the one in which the place is further off; `null` within the block itself. */
export function fillReach(from: CellArea, { row, col }: CellPlace): FillReach | null {
  const down = row > from.bottom ? row - from.bottom : Math.min(0, row - from.top);
  const across = col > from.right ? col - from.right : Math.min(0, col - from.left);
  if (down === 0 && across === 0) return null;
  if (Math.abs(down) >= Math.abs(across)) {
    return down > 0 ? { to: { ...from, bottom: row }, way: 'down', count: down } : { to: { ...from, top: row }, way: 'up', count: -down };
  }
  return across > 0 ? { to: { ...from, right: col }, way: 'right', count: across } : { to: { ...from, left: col }, way: 'left', count: -across };
}

/** "Fill 4 rows down". */
export function fillWords({ way, count }: FillReach, hidden: number): string {
  const lines = count - hidden;
  const one = way === 'down' || way === 'up' ? 'row' : 'column';
  const where = way === 'down' || way === 'up' ? way : `to the ${way}`;
  return `Fill ${lines} ${lines === 1 ? one : `${one}s`} ${where}`;
}
