/** The sizes to cut at each level, why, what each leaves, and the blends between them. */
import { isFault } from '../quantities/index.ts';
import type { Fault } from '../quantities/index.ts';
import type { ChartMeasure } from './chart-measure.ts';
import { problemOf } from './size-choice-body.ts';
import type { BustDifference, Measured, Problem } from './size-choice-body.ts';
import type { Preferences } from './size-choice-cost.ts';
import type { Ladder, Reach, Rung } from './size-choice-ladder.ts';
import { usualDistance } from './size-choice-levels.ts';
import { cheapest, levelCost } from './size-choice-plan.ts';
import type { Level, Plan } from './size-choice-plan.ts';
import { bustInWords, pinsInWords, whyInWords } from './size-choice-words.ts';
import type { Reasons } from './size-choice-words.ts';
import type { SizeChart } from './size-chart.ts';

/** What a size leaves at a level: finished minus body where the chart has finished measures, else chart minus body. Lengths in mm. */
export interface SizeLeaves {
  readonly size: Rung;
  /** The chart's figure; its range where it has one. */
  readonly figure: number;
  readonly range?: Reach;
  readonly left: number;
}

export interface LevelAdvice {
  readonly name: string;
  readonly body: number;
  readonly size: Rung;
  readonly why: string;
  /** What to look at, without figures. */
  readonly pins: readonly string[];
  /** The chosen size, and those next to it; undefined where not even the continued chart has one. */
  readonly smaller?: SizeLeaves;
  readonly chosen: SizeLeaves;
  readonly larger?: SizeLeaves;
  /** What is left is ease, not a difference to a body measure. */
  readonly isEase: boolean;
  /** The range of ease that decided. */
  readonly wanted?: Reach;
  /** The chart's name for the measure whose lines lie on the piece. */
  readonly measure: string;
}

/** Between two neighbouring levels. Lengths in mm. */
export interface BlendAdvice {
  readonly upper: string;
  readonly lower: string;
  readonly from: Rung;
  readonly to: Rung;
  /** How many sizes it runs over; below 0 where it goes to a smaller one. */
  readonly sizes: number;
  /** By how much the girths of the two sizes differ at the upper and at the lower level. */
  readonly girthAbove: number;
  readonly girthBelow: number;
  /** The usual distance between the levels, if there is one. */
  readonly usualDistance?: number;
}

export interface Advice {
  /** From the top down. */
  readonly levels: readonly LevelAdvice[];
  /** One fewer than levels. */
  readonly blends: readonly BlendAdvice[];
  readonly bust?: BustDifference & { readonly sentence: string };
  /** The one size that would cost least for all levels. */
  readonly oneSize: Rung;
  /** The chosen sizes, the smallest first, each with its girth at every level, mm: where its line lies on the piece. */
  readonly lines: readonly { readonly size: Rung; readonly girths: readonly number[] }[];
  /** What sizes leave is ease at every level. */
  readonly isEase: boolean;
}

/** A length as text, in the units that she reads. */
export type Say = (mm: number) => string;

/** @param measured girths in mm, in any order where their names are levels of the trade, else from the top down */
export function adviseSizes(chart: SizeChart, measured: readonly Measured[], preferences: Preferences, say: Say): Advice | Fault {
  const problem = problemOf(chart, measured);
  if (isFault(problem)) return problem;
  const { ladder, levels, bust } = problem;
  const plan = cheapest(ladder, levels, preferences);
  const oneSize = cheapest(ladder, levels, { ...preferences, apart: 0 }).at[0] as number;
  return {
    levels: levels.map((_, i) => adviseLevel(problem, plan, i, preferences, say)),
    blends: levels.slice(1).map((lower, i) => blendAdvice(ladder, levels[i] as Level, lower, plan.at[i] as number, plan.at[i + 1] as number)),
    ...(bust && { bust: { ...bust, sentence: bustInWords(bust, say) } }),
    oneSize: ladder.rung(oneSize),
    lines: [...new Set(plan.at)].sort((a, b) => a - b).map((at) => ({ size: ladder.rung(at), girths: levels.map((level) => ladder.figure(shownBy(level), at)) })),
    isEase: levels.every(({ finished }) => finished !== undefined),
  };
}

export function adviseLevel({ ladder, levels }: Problem, plan: Plan, i: number, preferences: Preferences, say: Say): LevelAdvice {
  const [level, at] = [levels[i] as Level, plan.at[i] as number];
  const unlimited = cheapest(ladder, levels, { ...preferences, apart: Infinity });
  const reasons: Reasons = { ladder, level, at, alone: bestAlone(ladder, level, at, preferences), limited: unlimited.at[i] !== at, preferences, isFirst: i === 0, say };
  const [smaller, chosen, larger] = [leaves(ladder, level, at - 1), leaves(ladder, level, at) as SizeLeaves, leaves(ladder, level, at + 1)];
  return {
    name: level.name,
    body: level.body,
    size: ladder.rung(at),
    why: whyInWords(reasons),
    // A bust that is fuller than the pattern is drawn for gets its room when the front is widened.
    pins: pinsInWords(reasons, level.finished !== undefined && leftOf(level.basis, chosen.figure, chosen.range) < 0),
    ...(smaller && { smaller }),
    chosen,
    ...(larger && { larger }),
    isEase: level.finished !== undefined,
    ...(level.ease && { wanted: level.ease }),
    measure: shownBy(level).name,
  };
}

/** The size that the level would have by itself; the chosen one where none is better. */
function bestAlone(ladder: Ladder, level: Level, at: number, preferences: Preferences): number {
  const [alone = at] = cheapest(ladder, [level], preferences).at;
  return levelCost(ladder, level, alone, preferences) < levelCost(ladder, level, at, preferences) ? alone : at;
}

const shownBy = ({ finished, column }: Level): ChartMeasure => finished ?? column;

export function leaves(ladder: Ladder, level: Level, at: number): SizeLeaves | undefined {
  if (ladder.rungs[at] === undefined) return undefined;
  const column = shownBy(level);
  const figure = ladder.figure(column, at);
  const range = ladder.range(column, at);
  return { size: ladder.rung(at), figure, ...(range && { range }), left: leftOf(level.body, figure, range) };
}

/** 0 inside a range; below 0 where the size is the smaller. */
export function leftOf(body: number, figure: number, range: Reach | undefined): number {
  if (range === undefined) return figure - body;
  return body < range.low ? range.low - body : Math.min(0, range.high - body);
}

function blendAdvice(ladder: Ladder, upper: Level, lower: Level, from: number, to: number): BlendAdvice {
  const girth = (level: Level): number => Math.abs(ladder.figure(shownBy(level), to) - ladder.figure(shownBy(level), from));
  const distance = usualDistance(upper.name, lower.name);
  return {
    upper: upper.name, lower: lower.name, from: ladder.rung(from), to: ladder.rung(to), sizes: to - from,
    girthAbove: girth(upper), girthBelow: girth(lower), ...(distance !== undefined && { usualDistance: distance }),
  };
}
