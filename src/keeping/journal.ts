/**
 * The transactions: each leaves the stores in a state from which the workbook
 * can be had whole. None of them trusts that it is alone: whoever writes says
 * which edit it believes to be the last, and is turned away when it is wrong.
 */
import type { Database, JournalEntry, SetAside, ShelfCard, Snapshot, Writing } from './database.ts';
import type { Stored } from './replay.ts';
import { KeepingTrouble } from './trouble.ts';

/** Every edit of a workbook. */
export const journalOf = (book: string, to = Infinity): IDBKeyRange => IDBKeyRange.bound([book, -Infinity], [book, to]);

/** When a workbook was last of interest. A card may be damaged. */
const usedAt = ({ changedAt, openedAt = '' }: ShelfCard): string => openedAt > changedAt ? openedAt : changedAt;

/** The workbook used last that was not thrown away. */
function lastUsed(cards: readonly ShelfCard[]): string | undefined {
  return cards.filter(({ binnedAt }) => binnedAt === undefined).reduce<ShelfCard | null>(
    (last, card) => last && usedAt(last) >= usedAt(card) ? last : card, null)?.id;
}

/** The workbook asked for, or the one used last; `null` when it is not stored. */
export function readStored(database: Database, id?: string): Promise<(Stored & { readonly id: string }) | null> {
  return database.read(['shelf', 'books', 'journal'], async (transaction) => {
    const wanted = id ?? lastUsed(await transaction.objectStore('shelf').getAll());
    if (wanted === undefined) return null;
    const [card, snapshot, entries] = await Promise.all([
      transaction.objectStore('shelf').get(wanted),
      transaction.objectStore('books').get(wanted),
      transaction.objectStore('journal').getAll(journalOf(wanted)),
    ]);
    return card || snapshot || entries.length > 0 ? { id: wanted, card, snapshot, entries } : null;
  });
}

/** With the keys to throw them away by. */
export function readAside(database: Database, id: string): Promise<readonly (SetAside & { readonly key: number })[]> {
  return database.read(['aside'], async (transaction) => {
    const index = transaction.objectStore('aside').index('book');
    const [keys, found] = await Promise.all([index.getAllKeys(id), index.getAll(id)]);
    return found.map((aside, at) => ({ ...aside, key: keys[at]! }));
  });
}

/** The stored workbook is gone: the browser's storage was cleared while the page was open. */
export class Cleared extends KeepingTrouble {
  constructor() {
    super('failed');
  }
}

/** @param known the last edit that the writer knows to be stored; `null` when the workbook is not stored yet. */
export function writeEntries(database: Database, known: number | null, entries: readonly JournalEntry[], card: ShelfCard): Promise<void> {
  return database.write(['shelf', 'journal'], async (transaction) => {
    const stored = await checked(transaction, known, card);
    const journal = transaction.objectStore('journal');
    for (const entry of entries) if (entry.seq > (stored?.seq ?? 0)) await journal.add(entry);
    // What is worked on is not thrown away.
    const marks = marksOf(stored);
    delete marks.binnedAt;
    await transaction.objectStore('shelf').put({ ...marks, ...card });
  });
}

/** Puts the snapshot and lets go of the edits that it holds, together with what had to be set aside. */
export function writeSnapshot(database: Database, known: number | null, snapshot: Snapshot, card: ShelfCard, aside: SetAside | null): Promise<void> {
  return database.write(['shelf', 'books', 'journal', 'aside'], async (transaction) => {
    const stored = await checked(transaction, known, card);
    await transaction.objectStore('books').put(snapshot);
    await transaction.objectStore('journal').delete(journalOf(snapshot.id, snapshot.seq));
    await transaction.objectStore('shelf').put({ ...marksOf(stored), ...card });
    if (aside) await transaction.objectStore('aside').add(aside);
  });
}

/** What stands on a card that a writer knows nothing of. */
function marksOf(card: ShelfCard | undefined): { openedAt?: string; savedAt?: string; putAway?: true; binnedAt?: string } {
  if (!card) return {};
  const { openedAt, savedAt, putAway, binnedAt } = card;
  return { ...(openedAt && { openedAt }), ...(savedAt && { savedAt }), ...(putAway && { putAway }), ...(binnedAt && { binnedAt }) };
}

/** The card of the last edit stored, if it is the one that the writer knows, or came from the writer itself. */
async function checked(transaction: Writing, known: number | null, { id, writer, seq }: ShelfCard): Promise<ShelfCard | undefined> {
  const card = await transaction.objectStore('shelf').get(id);
  // A connection lost at the very end leaves the writer not knowing what it wrote itself.
  if (card?.writer === writer && card.seq <= seq) return card;
  if (!card && known !== null) throw new Cleared();
  if ((card?.seq ?? null) !== known) throw new KeepingTrouble('elsewhere');
  return card;
}
