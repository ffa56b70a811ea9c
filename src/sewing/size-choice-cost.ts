/**
 * What a choice of sizes costs: the one place where it is stated, in words and
 * in figures. Lengths are counted in whole millionths of a millimetre and
 * weights in tenths, so that every sum is exact and of two choices it is plain
 * which costs less, in whatever order they are added up.
 */
import { knownLevel } from './size-choice-levels.ts';
import type { Reach } from './size-choice-ladder.ts';

export const STYLES = ['fitted', 'semi-fitted', 'full skirt', 'knit'] as const;
export type Style = (typeof STYLES)[number];

export interface Preferences {
  readonly style: Style;
  /** What each size of change between neighbouring levels counts as, mm too large. */
  readonly change: number;
  /** So many sizes two neighbouring levels may be apart at most. */
  readonly apart: number;
}

export const USUAL_PREFERENCES: Preferences = { style: 'fitted', change: 10, apart: 2 };

/** Own arithmetic, for which there is no standard. */
export const COST_IN_WORDS =
  'At each level it is counted how far a size is from what the style wants: the chart’s measure for the body, or the range of ease where the chart has finished measures. ' +
  'Too small counts twice as much as too large; with a knit it counts the same. With a semi-fitted style the waist counts half, with a full skirt the hip does not count. ' +
  'Each size of change between two neighbouring levels counts as so much too large as is set for it (1 cm as a rule), and they are no further apart than is set (2 sizes as a rule). ' +
  'The sizes with the least sum are taken; of equals those with the fewest changes, then the larger ones from the top down.';

const TENTHS = 10;
const whole = (mm: number): number => Math.round(mm * 1e6);

/** How often a level counts, in tenths. */
export function weightOf(level: string, style: Style): number {
  const named = knownLevel(level);
  if (style === 'full skirt' && (named === 'hip' || named === 'high hip')) return 0;
  if (style === 'semi-fitted' && named === 'waist') return TENTHS / 2;
  return TENTHS;
}

const tooSmall = (style: Style): number => (style === 'knit' ? 1 : 2);

/** How far a figure is outside the reach that is wanted, mm: below it, and above it; one of them is 0. */
export function outside(figure: number, { low, high }: Reach): { readonly below: number; readonly above: number } {
  return { below: Math.max(0, low - figure), above: Math.max(0, figure - high) };
}

/** The same, when a size has a reach itself: which part of it is nearest counts. */
export function misfitCost(level: string, offered: Reach, wanted: Reach, style: Style): number {
  const below = Math.max(0, whole(wanted.low) - whole(offered.high));
  const above = Math.max(0, whole(offered.low) - whole(wanted.high));
  return weightOf(level, style) * (tooSmall(style) * below + above);
}

/** @param sizes how many sizes two neighbouring levels are apart */
export function changeCost(sizes: number, { change }: Preferences): number {
  return TENTHS * whole(change) * sizes;
}
