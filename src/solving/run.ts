import type { Trying } from './types.ts';

/** Runs a search to its end. */
export function run<T>(search: Trying<T>, f: (x: number) => number | null): T {
  let step = search.next();
  while (!step.done) step = search.next(f(step.value));
  return step.value;
}
