/** Pieces that the kinds of records are made of. */
import * as v from 'valibot';
import { LIMITS } from '../limits.ts';

/** So many of a thing a record holds at most. */
export const MOST_PARTS = 10_000;

export const line = v.pipe(v.string(), v.maxLength(LIMITS.line));
export const text = v.pipe(v.string(), v.maxLength(LIMITS.characters));
/** A finite number: JSON has no other, but storage does. */
export const figure = v.pipe(v.number(), v.finite());
/** A day, as ISO 8601 writes it. */
export const day = v.pipe(v.string(), v.isoDate());
export const formula = v.pipe(text, v.startsWith('='));
export const formulas: v.GenericSchema<unknown, readonly string[]> = v.pipe(v.array(formula), v.maxLength(MOST_PARTS));

/** The same list when none of them changes. */
export function followAll(given: readonly string[], rewrite: (formula: string) => string): readonly string[] {
  const next = given.map(rewrite);
  return next.every((text, at) => text === given[at]) ? given : next;
}
