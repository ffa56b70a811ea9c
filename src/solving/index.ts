/**
 * Working back: which input makes a result what is wanted. Pure: a search is a
 * generator that gives values to try and is told what came of each, so that
 * whoever runs it may pause and stop between two tries. Knows nothing of cells,
 * units or screens, and imports nothing.
 *
 * `search.ts` goes over the range and chooses; `bracket.ts` closes in on a
 * crossing, `lowest.ts` on a turning point, `edges.ts` on where something ends.
 */
export type { Bound, Point, Problem, Solution, Trying, Why } from './types.ts';
export { solve } from './search.ts';
export { run } from './run.ts';
