/**
 * What a choice of sizes costs: the one place where it is stated, in words and
 * in figures. Lengths are counted in whole millionths of a millimetre and
 * weights in twentieths, so that every sum is exact and of two choices it is
 * plain which costs less, in whatever order they are added up.
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
  'Too small counts twice as much as too large; with a knit it counts the same. How far the ease is from the middle of its range counts a tenth besides. With a semi-fitted style the waist counts half, with a full skirt the hip does not count. ' +
  'Each size of change between two neighbouring levels counts as so much too large as is set for it (1 cm as a rule), and they are no further apart than is set (2 sizes as a rule). ' +
  'The sizes with the least sum are taken; of equals those with the fewest changes, then the larger ones from the top down.';

/** Of a millimetre’s millionth. */
const PARTS = 20;
const whole = (mm: number): number => Math.round(mm * 1e6);

/** How often a level counts, in twentieths. */
export function weightOf(level: string, style: Style): number {
  const named = knownLevel(level);
  if (style === 'full skirt' && (named === 'hip' || named === 'high hip')) return 0;
  if (style === 'semi-fitted' && named === 'waist') return PARTS / 2;
  return PARTS;
}

/** How often a millimetre too small counts at a level, and one too large, in twentieths. */
function countsFor(level: string, style: Style): { readonly small: number; readonly large: number } {
  const large = weightOf(level, style);
  return { small: style === 'knit' ? large : 2 * large, large };
}

/** How far what a size has is from what is wanted; one of them is 0, both where they overlap. Lengths in mm. */
export function missing(offered: Reach, wanted: Reach): { readonly small: number; readonly large: number } {
  return { small: Math.max(0, wanted.low - offered.high), large: Math.max(0, offered.low - wanted.high) };
}

const hasMiddle = ({ low, high }: Reach): boolean => high > low && Number.isFinite(high);

/** Twice the distance from the middle of what a size has to the middle of what is wanted: whole where its parts are. */
const fromMiddle = (offered: Reach, wanted: Reach, count: (mm: number) => number): number =>
  Math.abs(count(offered.low) + count(offered.high) - count(wanted.low) - count(wanted.high));

export function misfitCost(level: string, offered: Reach, wanted: Reach, style: Style): number {
  const counts = countsFor(level, style);
  const small = Math.max(0, whole(wanted.low) - whole(offered.high));
  const large = Math.max(0, whole(offered.low) - whole(wanted.high));
  return counts.small * small + counts.large * large + (hasMiddle(wanted) ? (weightOf(level, style) / PARTS) * fromMiddle(offered, wanted, whole) : 0);
}

/** @param sizes how many sizes two neighbouring levels are apart */
export function changeCost(sizes: number, { change }: Preferences): number {
  return PARTS * whole(change) * sizes;
}

/** The parts of a misfit as a working shows them: so many times so many millimetres. */
export function countedMisfit(level: string, offered: Reach, wanted: Reach, style: Style): readonly { readonly times: number; readonly mm: number }[] {
  const { small, large } = missing(offered, wanted);
  const counts = countsFor(level, style);
  const misfit = { times: (small > 0 ? counts.small : counts.large) / PARTS, mm: Math.max(small, large) };
  return hasMiddle(wanted) ? [misfit, { times: counts.large / PARTS / 10, mm: fromMiddle(offered, wanted, (mm) => mm) / 2 }] : [misfit];
}

/** A cost as a length, mm too large. */
export const costInMillimetres = (cost: number): number => cost / PARTS / 1e6;
