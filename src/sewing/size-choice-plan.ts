/** The sizes, level by level, that cost least: exact, by going through the levels from the lowest up. */
import type { Fault } from '../quantities/index.ts';
import type { ChartMeasure } from './chart-measure.ts';
import { listed } from './chart-labels.ts';
import { changeCost, misfitCost } from './size-choice-cost.ts';
import type { Preferences } from './size-choice-cost.ts';
import { Ladder } from './size-choice-ladder.ts';
import type { Reach } from './size-choice-ladder.ts';

/** A level with what the chart offers there and what is wanted of it. Lengths in mm. */
export interface Level {
  readonly name: string;
  readonly body: number;
  /** What the size is chosen by: the body, or what stands in for it at the bust. */
  readonly basis: number;
  /** The range of ease that is wanted, where finished measures decide. */
  readonly ease?: Reach;
  /** What the size is weighed by: finished measures where `ease` is given. */
  readonly column: ChartMeasure;
  readonly finished?: ChartMeasure;
}

/** Places on the ladder, one for each level, and what they cost. */
export interface Plan {
  readonly at: readonly number[];
  readonly cost: number;
}

export function ladderFor(levels: readonly Level[]): Ladder | Fault {
  const columns = levels.flatMap(({ column, finished }) => (finished && finished !== column ? [column, finished] : [column]));
  const [first, ...others] = columns;
  if (first === undefined) return { sentence: 'Give at least one measure that the size chart has.' };
  if (others.some(({ sizes }) => sizes !== first.sizes)) return { sentence: 'These measures stand with different sizes in the chart: give measures of one chart.' };
  const ladder = new Ladder([first, ...others]);
  return ladder.rungs.length > 0 ? ladder : { sentence: `No size of the chart has a figure for each of ${listed(columns.map(({ name }) => name))}.` };
}

/** What the figures of a size must come to at a level. */
export function wantedAt({ basis, ease }: Level): Reach {
  return ease === undefined ? { low: basis, high: basis } : { low: basis + ease.low, high: basis + ease.high };
}

/** What a size has at a level. */
export function offeredAt(ladder: Ladder, { column }: Level, at: number): Reach {
  const figure = ladder.figure(column, at);
  return ladder.range(column, at) ?? { low: figure, high: figure };
}

export function levelCost(ladder: Ladder, level: Level, at: number, { style }: Preferences): number {
  return misfitCost(level.name, offeredAt(ladder, level, at), wantedAt(level), style);
}

interface Best {
  readonly cost: number;
  /** Sizes of change from here down. */
  readonly changes: number;
  /** Where the next level down stands. */
  readonly next: number;
}

/** Less is better; of equals, fewer changes. */
const better = (a: Best, b: Best): number => a.cost - b.cost || a.changes - b.changes;

/** @param levels from the top down, at least one */
export function cheapest(ladder: Ladder, levels: readonly Level[], preferences: Preferences): Plan {
  const choices = Array.from({ length: ladder.last - ladder.first + 1 }, (_, i) => ladder.first + i);
  const tables: ReadonlyMap<number, Best>[] = [];
  for (const level of [...levels].reverse()) {
    const below = tables[0];
    tables.unshift(new Map(choices.map((at) => {
      const own = levelCost(ladder, level, at, preferences);
      const best = below === undefined ? { cost: 0, changes: 0, next: at } : bestBelow(at, below, preferences);
      return [at, { ...best, cost: own + best.cost }];
    })));
  }
  let at = largestBest(tables[0] ?? new Map<number, Best>());
  const cost = tables[0]?.get(at)?.cost ?? 0;
  const path = tables.map((table) => {
    const here = at;
    at = table.get(here)?.next ?? here;
    return here;
  });
  return { at: path, cost };
}

function bestBelow(at: number, below: ReadonlyMap<number, Best>, preferences: Preferences): Best {
  const reached = [...below].filter(([next]) => Math.abs(next - at) <= preferences.apart).map(([next, { cost, changes }]): [number, Best] => {
    const sizes = Math.abs(next - at);
    return [next, { cost: cost + changeCost(sizes, preferences), changes: changes + sizes, next }];
  });
  const table = new Map(reached);
  return table.get(largestBest(table)) as Best;
}

/** The largest of those that are as good as the best. */
function largestBest(table: ReadonlyMap<number, Best>): number {
  let found: readonly [number, Best] | undefined;
  for (const entry of table) if (found === undefined || better(entry[1], found[1]) <= 0) found = entry;
  return found?.[0] ?? 0;
}
