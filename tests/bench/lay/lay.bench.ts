/** The bench of the cutting layouts in Node; `run.mjs` says how to call it. */
import { readFileSync } from 'node:fs';
import { readPublished, type Cloth } from '../../../src/lay/index.ts';
import { bottomLeftOnly, boxes } from './floors.ts';
import { garment } from './garments.ts';
import { areaLaid, measure, measureRun, type Case, type Measured } from './measure.ts';

export const GARMENTS = ['shirts', 'swim', 'marques', 'albano', 'mao'];

export interface Wanted {
  readonly sets: readonly string[];
  readonly seeds: readonly number[];
  readonly marks: readonly number[];
  /** Where the published data lie. */
  readonly folder: string;
}

/** The cases of the published table, in its order. */
export function cases({ folder, sets }: Wanted): Case[] {
  const [head, ...rows] = readFileSync(`${folder}/best-known.csv`, 'utf8').trim().split('\n').map((line) => line.split(','));
  const column = (name: string): number => head!.indexOf(name);
  return rows
    .filter(([name]) => sets.length === 0 || sets.includes(name!))
    .map((row) => ({ name: row[0]!, best: Number(row[column('best_length')]), instance: JSON.parse(readFileSync(`${folder}/${row[column('file')]!}`, 'utf8')) }));
}

const seconds = (): number => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1e6;
};

const mean = (list: readonly number[]): number => list.reduce((a, b) => a + b, 0) / list.length;

/** A table of one run in one place; gives the mean ratio over the garment sets, of the marks of 10 s and more if there are any. */
export function report(where: string, results: readonly Measured[]): string {
  const marks = results[0]!.at.map(({ mark }) => mark);
  console.log(`\n${where}: density in % (part of the best published)`);
  for (const name of new Set(results.map((each) => each.name))) {
    const runs = results.filter((each) => each.name === name);
    const cells = marks.map((mark, i) => `${mark} s: ${mean(runs.map(({ at }) => at[i]!.density)).toFixed(2)} (${mean(runs.map(({ at }) => at[i]!.ratio)).toFixed(4)}, least ${Math.min(...runs.map(({ at }) => at[i]!.ratio)).toFixed(4)})`);
    const faults = runs.flatMap((run) => run.faults);
    console.log(`${name.padEnd(9)}${cells.join('  ')}  first ${Math.max(...runs.map(({ first }) => first)).toFixed(2)} s  check: ${faults.length === 0 ? 'passed' : faults.join(' ')}`);
  }
  const one = new Map(results.map((each) => [each.name, each]));
  if (one.has('shapes0') && one.has('shapes1')) {
    const last = marks.length - 1;
    const of = (name: string): number => mean(results.filter((each) => each.name === name).map(({ at }) => at[last]!.density));
    console.log(`One-way costs: SHAPES0 takes ${(100 * (of('shapes1') / of('shapes0') - 1)).toFixed(1)} % more cloth than SHAPES1.`);
  }
  const garments = results.filter(({ name }) => GARMENTS.includes(name));
  if (garments.length === 0) return 'none of the garment sets was run';
  const told = marks.some((mark) => mark >= 10) ? marks.filter((mark) => mark >= 10) : marks;
  return told.map((mark) => `${mark} s ${mean(garments.map(({ at }) => at.find((each) => each.mark === mark)!.ratio)).toFixed(4)}`).join(', ');
}

export function floors(wanted: Wanted): void {
  console.log('What one would use instead, density in %');
  for (const { name, instance } of cases(wanted)) {
    const published = readPublished(instance);
    const density = (length: number): string => ((100 * areaLaid(published)) / (length * published.cloth.width)).toFixed(1);
    console.log(`${name.padEnd(9)}boxes ${density(boxes(published.pieces, published.cloth))}  bottom-left ${density(bottomLeftOnly(published.pieces, published.cloth))}`);
  }
}

export function inNode(wanted: Wanted): Measured[] {
  return cases(wanted).flatMap((each) => wanted.seeds.map((seed) => {
    const result = measure(each, seed, wanted.marks, seconds);
    console.log(`${each.name} seed ${seed}: ${result.at.map(({ mark, ratio }) => `${mark} s ${ratio.toFixed(4)}`).join(', ')}`);
    return result;
  }));
}

/** Invented garments: how soon the first layout comes, and how near the answer after a twelfth of the time is to the last. */
export function garments(count: number, last: number): void {
  const cloth: Cloth = { width: 1400, length: null, flaws: [], oneWay: false, alike: false, fold: 'open', gap: 0 };
  const runs = Array.from({ length: count }, (_, i) => measureRun(`garment ${i + 1}`, { pieces: garment(i), cloth }, 1, 21, [last / 12, last], seconds));
  const near = runs.map(({ at }) => at[1]!.density / at[0]!.density - 1);
  const failed = runs.filter(({ faults }) => faults.length > 0).length;
  console.log(`\n${count} invented garments of 5 to 40 pieces: first layout after ${Math.max(...runs.map(({ first }) => first)).toFixed(2)} s at most; after ${(last / 12).toFixed(1)} s within ${(100 * Math.max(...near)).toFixed(2)} % of the answer after ${last} s (mean ${(100 * mean(near)).toFixed(2)} %, ${near.filter((part) => part <= 0.01).length} of ${count} within 1 %); check failed: ${failed}`);
}
