/** Why a size was chosen at a level, as a person would say it. */
import type { BustDifference } from './size-choice-body.ts';
import { missing, weightOf } from './size-choice-cost.ts';
import type { Preferences } from './size-choice-cost.ts';
import { MOST_CONTINUED } from './size-choice-ladder.ts';
import type { Ladder } from './size-choice-ladder.ts';
import { offeredAt, wantedAt } from './size-choice-plan.ts';
import type { Level } from './size-choice-plan.ts';

type Say = (mm: number) => string;

export interface Reasons {
  readonly ladder: Ladder;
  readonly level: Level;
  readonly at: number;
  /** The size that the level would have by itself. */
  readonly alone: number;
  /** It would be another one if levels might be further apart. */
  readonly limited: boolean;
  readonly isFirst: boolean;
  readonly preferences: Preferences;
  readonly say: Say;
}

/** Differences below this come from arithmetic, not from a tape; mm. */
const NOTHING = 1e-6;

export function whyInWords(reasons: Reasons): string {
  return [fitInWords(reasons), nearerInWords(reasons), neighboursInWords(reasons), continuedInWords(reasons), endInWords(reasons)].filter((sentence) => sentence !== '').join(' ');
}

/** What to look at, in sentences without figures, for the pins of a cell. */
export function pinsInWords(reasons: Reasons, underBody: boolean): readonly string[] {
  const { at, ladder, alone, limited, preferences } = reasons;
  const end = beyondTheEnd(reasons);
  return [
    continuedInWords(reasons),
    end > 0 && at === ladder.last ? 'Even continued, the chart ends before the body does: a pattern with larger sizes will serve better.' : '',
    end > 0 && at !== ladder.last ? 'Even continued, the chart begins after the body: a pattern with smaller sizes will serve better.' : '',
    limited && alone !== at ? neighboursInWords(reasons) : '',
    underBody && preferences.style !== 'knit' ? 'Finished, it is smaller than the body here: right only for cloth that stretches.' : '',
  ].filter((sentence) => sentence !== '');
}

function fitInWords(reasons: Reasons): string {
  const { ladder, level, at, say, preferences, isFirst } = reasons;
  const size = ladder.rung(at).text;
  const where = level.name.charAt(0).toUpperCase() + level.name.slice(1);
  if (weightOf(level.name, preferences.style) === 0) {
    return isFirst
      ? `${where}: size ${size}. It does not decide with a full skirt.`
      : `${where}: size ${size}, the size of the level above it. It does not decide with a full skirt.`;
  }
  const figure = ladder.figure(level.column, at);
  if (level.ease) return easeInWords(where, reasons);
  const standIn = level.basis < level.body - NOTHING;
  const body = standIn ? `the ${say(level.basis)} that it is chosen by` : `the body’s ${say(level.body)}`;
  const range = ladder.range(level.column, at);
  const { small, large } = shownMissing(reasons);
  if (range) {
    const its = `range from ${say(range.low)} to ${say(range.high)}`;
    if (large > NOTHING) return `${where}: size ${size}. Its ${its} begins ${say(large)} above ${body}.`;
    if (small > NOTHING) return `${where}: size ${size}. Its ${its} ends ${say(small)} below ${body}.`;
    return `${where}: size ${size}. Its ${its} holds ${body}.`;
  }
  if (large > NOTHING) return `${where}: size ${size}. The chart’s ${say(figure)} for it is ${say(large)} more than ${body}.`;
  if (small > NOTHING) return `${where}: size ${size}. The chart’s ${say(figure)} for it is ${say(small)} less than ${body}.`;
  return `${where}: size ${size}. The chart’s ${say(figure)} for it is just ${body}.`;
}

/** What is missing, as far as it shows: a difference that would be told as 0 is none. */
function shownMissing({ ladder, level, at, say }: Reasons): { readonly small: number; readonly large: number } {
  const { small, large } = missing(offeredAt(ladder, level, at), wantedAt(level));
  const shown = (mm: number): number => (say(mm) === say(0) ? 0 : mm);
  return { small: shown(small), large: shown(large) };
}

/** Where the next smaller size is nearer by the tape, why it was not taken all the same. */
function nearerInWords({ ladder, level, at, alone, preferences, say }: Reasons): string {
  if (alone !== at || at === ladder.first || weightOf(level.name, preferences.style) === 0) return '';
  const { large } = missing(offeredAt(ladder, level, at), wantedAt(level));
  const { small } = missing(offeredAt(ladder, level, at - 1), wantedAt(level));
  return small > NOTHING && small < large - NOTHING ? `Size ${ladder.rung(at - 1).text} is nearer, but ${say(small)} too small, which counts twice as much as too large.` : '';
}

function easeInWords(where: string, reasons: Reasons): string {
  const { ladder, level, at, say } = reasons;
  const { body, basis, column } = level;
  const [size, figure] = [ladder.rung(at).text, ladder.figure(column, at)];
  const left = figure - basis;
  const has = basis < body - NOTHING
    ? `${where}: size ${size}. Finished it measures ${say(figure)}, which over the ${say(basis)} that it is chosen by leaves ${say(left)} of ease`
    : `${where}: size ${size}. Finished it measures ${say(figure)}, which leaves ${say(left)} of ease`;
  const { small, large } = shownMissing(reasons);
  if (small > NOTHING) return `${has}, ${say(small)} less than the least that is wanted.`;
  if (large > NOTHING) return `${has}, ${say(large)} more than the most that is wanted.`;
  return `${has}, within what is wanted.`;
}

function neighboursInWords({ ladder, alone, at, limited, preferences: { apart } }: Reasons): string {
  if (alone === at) return '';
  const other = ladder.rung(alone).text;
  if (!limited) return `By itself size ${other} would suit better here, but not by so much that another change of size is worth it.`;
  if (apart === 0) return `By itself size ${other} would suit better here, but one size is wanted for all levels.`;
  return `By itself size ${other} would suit better here, but neighbouring levels are to be no more than ${apart === 1 ? 'one size' : `${apart} sizes`} apart.`;
}

function continuedInWords({ ladder, at, level }: Reasons): string {
  const { beyond, place, text } = ladder.rung(at);
  if (beyond === 0) return '';
  const end = level.column.sizes.label(place).text;
  return `Size ${text} is not in the chart: it is continued from size ${end} by the chart’s own last step.`;
}

function endInWords(reasons: Reasons): string {
  const { at, ladder, say } = reasons;
  const off = beyondTheEnd(reasons);
  if (off === 0) return '';
  return at === ladder.last
    ? `That is the largest size there is, with ${MOST_CONTINUED} continued ones at most, and it falls short by ${say(off)}: a pattern with larger sizes will serve better.`
    : `That is the smallest size there is, with ${MOST_CONTINUED} continued ones at most, and it is ${say(off)} too large: a pattern with smaller sizes will serve better.`;
}

/** By how much the last size misses the body, where that is more than half a step; 0 otherwise. */
export function beyondTheEnd({ ladder, at, level, preferences }: Pick<Reasons, 'ladder' | 'at' | 'level' | 'preferences'>): number {
  if (weightOf(level.name, preferences.style) === 0) return 0;
  const { small, large } = missing(offeredAt(ladder, level, at), wantedAt(level));
  const off = at === ladder.last ? small : at === ladder.first ? large : 0;
  const inner = at === ladder.last ? at - 1 : at + 1;
  const step = ladder.rungs[inner] === undefined ? 0 : Math.abs(ladder.figure(level.column, at) - ladder.figure(level.column, inner));
  return off > step / 2 ? off : 0;
}

export function bustInWords({ bust, highBust, difference, usual, ofSize, basis }: BustDifference, say: Say): string {
  const drawn = ofSize === undefined
    ? `patterns are usually drawn for ${say(usual)} (common practice)`
    : `the chart’s size ${ofSize} is drawn for ${say(usual)}`;
  if (basis < bust - NOTHING) {
    return `The bust is ${say(difference)} more than the high bust, and ${drawn}. So the size is chosen as for a bust of ${say(basis)}, which fits the shoulders and the chest, and the front is widened for the bust itself (common practice).`;
  }
  return difference < usual - SMALL_BUST
    ? `The bust is ${say(difference)} more than the high bust of ${say(highBust)}, and ${drawn}. The size is chosen by the full bust: check that it is not tight above the bust, and take a size larger with less room at the bust if it is (common practice).`
    : `The bust is ${say(difference)} more than the high bust, and ${drawn}: the size is chosen by the full bust.`;
}

/** So much less than usual, and a size by the full bust may be tight above it; common practice, mm. */
const SMALL_BUST = 25;
