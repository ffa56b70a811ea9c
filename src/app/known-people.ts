/** Everybody known on this device: the people of the open workbook and of those on the shelf, read without opening them. */
import { KeepingTrouble, type Shelf } from '../keeping/index.ts';
import { peopleIn, type FoundPerson } from '../people/index.ts';
import type { Book } from '../workbook/index.ts';

export interface KnownPerson extends FoundPerson {
  /** Which workbook, and which person in it. */
  readonly key: string;
  readonly book: string;
  readonly title: string;
}

/**
 * The newest workbook first. A workbook that cannot be read is passed over here: it says so where it is opened.
 *
 * @throws {KeepingTrouble} when the shelf itself cannot be read
 */
export async function knownPeople(open: Book, shelf: Shelf | null, today: string): Promise<readonly KnownPerson[]> {
  const found = personsOf(open, today);
  for (const { id, binnedAt, changedAt } of (await shelf?.list()) ?? []) {
    if (id === open.id || binnedAt !== null) continue;
    try {
      const read = await shelf!.read(id);
      if (read) found.push(...personsOf(read.book, changedAt.slice(0, 10) || today));
    } catch (error) {
      if (!(error instanceof KeepingTrouble)) throw error;
    }
  }
  return found;
}

const personsOf = (book: Book, lastDay: string): KnownPerson[] => peopleIn(book, lastDay).map((one) => ({ ...one, key: `${book.id} ${one.id}`, book: book.id, title: book.title }));

/** Each person once, with all that any workbook knows of her; the same id is the same person. */
export function gathered(known: readonly KnownPerson[], join: (here: KnownPerson, there: KnownPerson) => KnownPerson): readonly KnownPerson[] {
  const all = new Map<string, KnownPerson>();
  for (const one of known) {
    const here = all.get(one.id);
    all.set(one.id, here ? join(here, one) : one);
  }
  return [...all.values()];
}
