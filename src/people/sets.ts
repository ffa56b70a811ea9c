/** What a person's sets say together: the newest figure of each measure, and how a measure has gone over time. */
import { readQuantity, type Quantity } from '../quantities/index.ts';
import type { MeasureSet, Person } from '../workbook/index.ts';
import { MEASURES } from './measures.ts';

export const NOBODY: Person = { name: '', child: false, notes: '', sets: [], worked: [], put: [] };

/** The length that a measure's text means; `null` for any other text. */
export function lengthOf(raw: string): Quantity | null {
  const reading = readQuantity(raw);
  return reading.kind === 'quantity' && reading.quantity.dimension === 'length' ? reading.quantity : null;
}

export interface NewestMeasure {
  readonly of: string;
  readonly raw: string;
  readonly set: MeasureSet;
}

/** Each measure as it was last taken, which may be in an older set than another; known ones first, in their order. */
export function newestOf({ sets }: Pick<Person, 'sets'>): readonly NewestMeasure[] {
  const newest = new Map<string, NewestMeasure>();
  for (const set of sets) for (const { of, raw } of set.measures) if (raw.trim() !== '') newest.set(of, { of, raw, set });
  return measuredOf({ sets }).flatMap((of) => newest.get(of) ?? []);
}

/** Every measure that was ever taken: known ones in their order, then her own as they came. */
export function measuredOf({ sets }: Pick<Person, 'sets'>): readonly string[] {
  const taken = new Set(sets.flatMap(({ measures }) => measures.filter(({ raw }) => raw.trim() !== '').map(({ of }) => of)));
  const known = MEASURES.map(({ key }) => key);
  return [...known.filter((key) => taken.has(key)), ...[...taken].filter((of) => !known.includes(of))];
}

/** A measure on a day. */
export interface Moment {
  readonly day: string;
  readonly raw: string;
  readonly quantity: Quantity;
}

/** One measure over time, the oldest first; texts that are no lengths are left out. */
export function courseOf({ sets }: Pick<Person, 'sets'>, of: string): readonly Moment[] {
  return sets.flatMap(({ day, measures }) => measures.flatMap((one): Moment[] => {
    const quantity = one.of === of ? lengthOf(one.raw) : null;
    return quantity ? [{ day, raw: one.raw, quantity }] : [];
  }));
}

/** Why a measure of her own cannot be called this, or `null`. */
export function spellingFault(name: string, taken: readonly string[]): string | null {
  const wish = name.trim();
  if (wish === '') return 'Type what the measure is called, such as “round the fist”.';
  if (wish.length > 60) return `That name has ${wish.length} characters; at most 60 fit.`;
  return taken.some((each) => each.toLowerCase() === wish.toLowerCase()) ? `“${wish}” is in the list already.` : null;
}
