/** Dimensions along the drawing, in as few lanes as let no text meet another. */
import { textWidth } from './text.ts';

/** A dimension from left to right, in picture units. */
export interface Dim {
  readonly from: number;
  readonly to: number;
  readonly text: string;
  readonly look?: 'new' | 'pin';
  /** How far into the drawing its end lines reach from the drawing's edge. */
  readonly reach?: number;
}

export interface Laid extends Dim {
  /** Where its text begins. */
  readonly textFrom: number;
}

/** Dimensions shorter than this have their arrows outside. */
export const SHORT = 18;
/** How far arrows outside stick out. */
export const OUTSIDE = 10;
const BETWEEN = 8;

/**
 * The dimensions in lanes, the first lane nearest to the drawing. Each goes to
 * the first lane where it meets no other; no text begins before `left` or ends
 * after `right`.
 */
export function lanes(dims: readonly Dim[], left: number, right: number): Laid[][] {
  const rows: { laid: Laid[]; taken: (readonly [number, number])[] }[] = [];
  for (const dim of dims) {
    const width = textWidth(dim.text);
    const textFrom = Math.max(left, Math.min((dim.from + dim.to - width) / 2, right - width));
    const over = Math.abs(dim.to - dim.from) < SHORT ? OUTSIDE : 0;
    const low = Math.min(textFrom, dim.from - over, dim.to - over) - BETWEEN / 2;
    const high = Math.max(textFrom + width, dim.to + over, dim.from + over) + BETWEEN / 2;
    let row = rows.find(({ taken }) => taken.every(([from, to]) => high <= from || low >= to));
    if (row === undefined) {
      row = { laid: [], taken: [] };
      rows.push(row);
    }
    row.laid.push({ ...dim, textFrom });
    row.taken.push([low, high]);
  }
  return rows.map(({ laid }) => laid);
}
