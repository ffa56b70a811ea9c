/**
 * Levels of the body and what a size chart says of them: body measures, and
 * finished measures where it has those; whatever their spelling.
 */
import { isFault } from '../quantities/index.ts';
import type { Fault } from '../quantities/index.ts';
import { listed, measureLabel } from './chart-labels.ts';
import type { ChartMeasure } from './chart-measure.ts';
import type { SizeChart } from './size-chart.ts';

/** Names for one and the same level, the name of the trade first; from the top of the body down. */
const LEVELS = [
  { level: 'high bust', names: ['high bust', 'upper chest', 'upper bust', 'chest at axilla'], above: 250 },
  { level: 'bust', names: ['bust', 'full bust', 'chest'], above: 170 },
  { level: 'underbust', names: ['underbust', 'under bust'], above: 90 },
  { level: 'waist', names: ['waist'], above: 0 },
  { level: 'high hip', names: ['high hip', 'top hip'], above: -100 },
  { level: 'hip', names: ['hip', 'hips', 'seat'], above: -200 },
] as const;

export type KnownLevel = (typeof LEVELS)[number]['level'];
export const KNOWN_LEVELS: readonly KnownLevel[] = LEVELS.map(({ level }) => level);

/** Not girths, though they begin with the name of a level: "waist to hip", "bust point width". */
const NO_GIRTH = /\b(?:to|length|depth|height|width|point|rise|arc|front|back)\b/;

const known = (name: string): (typeof LEVELS)[number] | undefined => {
  const words = plainName(name);
  if (NO_GIRTH.test(words)) return undefined;
  return LEVELS.find(({ names }) => (names as readonly string[]).includes(words)) ?? LEVELS.find(({ names }) => names.some((each) => words.startsWith(`${each} `)));
};

/** "bust" for "Bust girth (cm)". */
function plainName(name: string): string {
  return measureLabel(name).words.replace(/ girth(?= |$)/, '');
}

/** Which of the levels of the trade this is, or undefined. */
export function knownLevel(name: string): KnownLevel | undefined {
  return known(name)?.level;
}

/** Whether two names mean one level. */
export function sameLevel(a: string, b: string): boolean {
  const level = known(a);
  return plainName(a) === plainName(b) || (level !== undefined && level === known(b) && (level.names as readonly string[]).includes(plainName(a)) && (level.names as readonly string[]).includes(plainName(b)));
}

/** The usual distance from a level down to another, mm; common practice, for an adult of middle height. Undefined where either is not known. */
export function usualDistance(upper: string, lower: string): number | undefined {
  const [from, to] = [known(upper)?.above, known(lower)?.above];
  return from === undefined || to === undefined || from <= to ? undefined : from - to;
}

/** From the top of the body down where all names are known; otherwise as they are. */
export function inBodyOrder<T extends { readonly name: string }>(levels: readonly T[]): readonly T[] {
  const at = ({ name }: T): number => LEVELS.findIndex((level) => level === known(name));
  return levels.some((level) => at(level) < 0) ? levels : [...levels].sort((a, b) => at(a) - at(b));
}

const FINISHED = /\b(?:finished|garment)\b/;

/** What the chart has for a level. */
export interface LevelColumns {
  readonly body?: ChartMeasure;
  readonly finished?: ChartMeasure;
}

/** A measure of the chart by its full name, and what it measures: "bust" for "finished bust girth". */
interface Named {
  readonly name: string;
  readonly key: string;
}

function namesIn(chart: SizeChart): { readonly body: readonly Named[]; readonly finished: readonly Named[] } {
  const names = [...new Set(chart.measures)].map((name): Named => ({ name, key: plainName(name.replace(FINISHED, ' ')) }));
  return { body: names.filter(({ name }) => !FINISHED.test(name)), finished: names.filter(({ name }) => FINISHED.test(name)) };
}

/** The chart's measures for a level, by its name, its other names, and the beginning of either. */
export function columnsFor(chart: SizeChart, level: string): LevelColumns | Fault {
  const names = namesIn(chart);
  const body = find(chart, level, names.body);
  if (isFault(body)) return body;
  const finished = find(chart, level, names.finished);
  if (isFault(finished)) return finished;
  if (body === undefined && finished === undefined) return { sentence: `The size chart has no measure called “${level}”; it has ${listed([...new Set(chart.measures)])}.` };
  return { ...(body && { body }), ...(finished && { finished }) };
}

/** The names of those measures; neither where the chart has none, or more than one. */
export function measuresAt(chart: SizeChart, level: string): { readonly body?: string; readonly finished?: string } {
  const columns = columnsFor(chart, level);
  if (isFault(columns)) return {};
  return { ...(columns.body && { body: columns.body.name }), ...(columns.finished && { finished: columns.finished.name }) };
}

function find(chart: SizeChart, level: string, candidates: readonly Named[]): ChartMeasure | Fault | undefined {
  const own = plainName(level);
  const spellings = [own, ...(LEVELS.find(({ names }) => (names as readonly string[]).includes(own))?.names ?? [])];
  for (const fits of [(key: string, wanted: string) => key === wanted, (key: string, wanted: string) => key.startsWith(`${wanted} `) && !NO_GIRTH.test(key)]) {
    for (const wanted of spellings) {
      const fitting = candidates.filter(({ key }) => fits(key, wanted));
      if (fitting.length > 1) return { sentence: `“${level}” fits ${listed(fitting.map(({ name }) => name))} in the size chart: say which.` };
      if (fitting[0] !== undefined) return chart.measure(fitting[0].name);
    }
  }
  return undefined;
}

/** The girths of the chart that are levels of the trade, from the top down, each by the trade's name where only one has it: "waist", or "waist curvy" and "waist straight". */
export function levelsOf(chart: SizeChart): readonly string[] {
  const { body, finished } = namesIn(chart);
  const keys = [...new Set([...body, ...finished].map(({ key }) => key))];
  return KNOWN_LEVELS.flatMap((level) => {
    const own = keys.filter((key) => knownLevel(key) === level);
    return own.length === 1 ? [level] : own;
  });
}
