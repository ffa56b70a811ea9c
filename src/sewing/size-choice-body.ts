/** From a person's measures and a chart to the levels that a size is chosen for; high bust against full bust. */
import { isFault } from '../quantities/index.ts';
import type { Fault } from '../quantities/index.ts';
import { columnsFor, inBodyOrder, knownLevel } from './size-choice-levels.ts';
import { Ladder } from './size-choice-ladder.ts';
import type { Reach } from './size-choice-ladder.ts';
import { ladderFor } from './size-choice-plan.ts';
import type { Level } from './size-choice-plan.ts';
import type { SizeChart } from './size-chart.ts';

/** A measure of a person, and the range of ease wanted there, if it is known. Lengths in mm. */
export interface Measured {
  readonly name: string;
  readonly girth: number;
  readonly ease?: Reach;
}

/** Full bust minus high bust for which patterns are usually drawn, where the chart does not tell; common practice. */
export const USUAL_BUST_DIFFERENCE = 50;

/** What the bust is more than the high bust, against what patterns are drawn for. */
export interface BustDifference {
  readonly bust: number;
  readonly highBust: number;
  readonly difference: number;
  readonly usual: number;
  /** The size from which the chart's own difference was taken; without it the usual one stands. */
  readonly ofSize?: string;
  /** What the size is chosen by. */
  readonly basis: number;
}

export interface Problem {
  readonly ladder: Ladder;
  /** From the top down. */
  readonly levels: readonly Level[];
  readonly bust?: BustDifference;
}

/** Where the bust is more than the high bust by more than usual, what stands in for it: the high bust and the usual difference. */
export function bustDifference(bust: number, highBust: number, usual: number, ofSize?: string): BustDifference {
  const difference = bust - highBust;
  return { bust, highBust, difference, usual, basis: Math.min(bust, highBust + usual), ...(ofSize !== undefined && { ofSize }) };
}

export function problemOf(chart: SizeChart, measured: readonly Measured[]): Problem | Fault {
  const bust = busts(chart, measured);
  const levels: Level[] = [];
  for (const { name, girth, ease } of inBodyOrder(measured)) {
    if (!(girth > 0)) return { sentence: `The measure ${name} must be more than 0.` };
    if (bust && knownLevel(name) === 'high bust') continue;
    const columns = columnsFor(chart, name);
    if (isFault(columns)) return columns;
    const byEase = columns.finished !== undefined && ease !== undefined;
    const column = byEase ? columns.finished : columns.body;
    if (column === undefined) return { sentence: `The size chart has only finished measures for ${name}: give the ease wanted there too, its least and its most.` };
    if (column.fault) return column.fault;
    if (levels.some((level) => level.column === column)) return { sentence: `Two of the measures are ${column.name} in the size chart: give each level once.` };
    levels.push({
      name, body: girth, basis: bust && knownLevel(name) === 'bust' ? bust.basis : girth, column,
      ...(byEase && { ease }), ...(columns.finished && { finished: columns.finished }),
    });
  }
  const ladder = ladderFor(levels);
  return isFault(ladder) ? ladder : { ladder, levels, ...(bust && { bust }) };
}

function busts(chart: SizeChart, measured: readonly Measured[]): BustDifference | undefined {
  const [bust, highBust] = (['bust', 'high bust'] as const).map((level) => measured.find(({ name }) => knownLevel(name) === level)?.girth);
  if (bust === undefined || highBust === undefined) return undefined;
  const own = chartDifference(chart, highBust);
  return bustDifference(bust, highBust, own?.usual ?? USUAL_BUST_DIFFERENCE, own?.ofSize);
}

/** Bust minus high bust of the chart's size whose high bust is nearest, the larger of two; undefined where the chart has no high bust. */
function chartDifference(chart: SizeChart, highBust: number): { readonly usual: number; readonly ofSize: string } | undefined {
  const [bust, high] = [columnsFor(chart, 'bust'), columnsFor(chart, 'high bust')];
  if (isFault(bust) || isFault(high) || !bust.body || !high.body || bust.body.sizes !== high.body.sizes) return undefined;
  const [full, upper] = [bust.body, high.body];
  const ladder = new Ladder([full, upper]);
  let nearest: number | undefined;
  const away = (at: number): number => Math.abs(ladder.figure(upper, at) - highBust);
  for (const [at, { beyond }] of ladder.rungs.entries()) if (beyond === 0 && (nearest === undefined || away(at) <= away(nearest))) nearest = at;
  return nearest === undefined ? undefined : { usual: ladder.figure(full, nearest) - ladder.figure(upper, nearest), ofSize: ladder.rung(nearest).text };
}
