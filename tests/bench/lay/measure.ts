/**
 * One published problem, one seed, one thread: the density when 1, 10 and 60
 * seconds have passed. Runs in Node and in a browser's worker; the clock is
 * given, because in Node other programs share the core and only the
 * processor's own time is fair.
 */
import { areaOf, layoutFaults, placesOf, readPublished, type Published } from '../../../src/lay/index.ts';
import { Job } from '../../../workers/lay/job.ts';

export interface Case {
  readonly name: string;
  readonly instance: Parameters<typeof readPublished>[0];
  /** The shortest length ever published. */
  readonly best: number;
}

export interface Measured {
  readonly name: string;
  readonly seed: number;
  /** Seconds until the first layout. */
  readonly first: number;
  /** Of each mark in seconds: density in percent, and part of the best published. */
  readonly at: readonly { readonly mark: number; readonly density: number; readonly ratio: number }[];
  /** What the independent check says of the last layout. */
  readonly faults: readonly string[];
}

export const areaLaid = ({ pieces }: Published): number => pieces.reduce((sum, { outline, count }) => sum + count * areaOf(outline), 0);

export function measure({ name, instance, best }: Case, seed: number, marks: readonly number[], seconds: () => number): Measured {
  return measureRun(name, readPublished(instance), best, seed, marks, seconds);
}

export function measureRun(name: string, published: Published, best: number, seed: number, marks: readonly number[], seconds: () => number): Measured {
  const { pieces, cloth } = published;
  const area = areaLaid(published);
  const begun = seconds();
  const job = new Job({ pieces, cloth, aim: { want: 'least length' }, seed, most: Infinity });
  const at: Measured['at'][number][] = [];
  let first = NaN;
  const reach = (length: number): void => {
    at.push({ mark: marks[at.length]!, density: (100 * area) / (length * cloth.width), ratio: best / length });
  };
  let count = 0;
  let length = Infinity;
  for (const better of job.run()) {
    if (!better && ++count % 64 > 0) continue;
    const passed = seconds() - begun;
    while (at.length < marks.length && passed >= marks[at.length]!) reach(length);
    if (at.length === marks.length) break;
    if (!better) continue;
    length = job.found!.layout.length;
    if (Number.isNaN(first)) first = passed;
  }
  // A layout proven shortest ends the search early and stays the answer.
  while (at.length < marks.length) reach(length);
  const faults = layoutFaults(job.found!.layout, placesOf(pieces, cloth), cloth);
  return { name, seed, first, at, faults };
}
