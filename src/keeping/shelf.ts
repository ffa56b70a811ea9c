/**
 * The workbooks on this device: what they are, and what can be done to one
 * without opening it. Nothing here is done to a workbook that a tab has open
 * for writing; who calls has claimed it before (`lock.ts`).
 */
import * as v from 'valibot';
import { apply, bookText, emptyBook, type Book } from '../workbook/index.ts';
import type { Database, ShelfCard, Writing } from './database.ts';
import { journalOf, readStored } from './journal.ts';
import { replay } from './replay.ts';
import { pictureOf } from './shelf-picture.ts';
import { KeepingTrouble } from './trouble.ts';

export interface ShelfBook {
  readonly id: string;
  readonly title: string;
  readonly person: string;
  readonly changedAt: string;
  readonly savedAt: string | null;
  readonly putAway: boolean;
  readonly binnedAt: string | null;
  readonly picture: readonly (readonly string[])[];
}

export const BIN_DAYS = 30;
const DAY = 86_400_000;

const text = v.optional(v.fallback(v.string(), ''), '');
const time = v.optional(v.fallback(v.nullable(v.string()), null), null);
const cardShape = v.object({
  id: v.string(), title: text, person: text, changedAt: text, savedAt: time, binnedAt: time,
  putAway: v.optional(v.fallback(v.boolean(), false), false),
  picture: v.optional(v.fallback(v.array(v.array(v.string())), []), []),
});

/** Not randomUUID: that is missing where the page is served without TLS on a home network. */
export const newBookId = (): string => crypto.getRandomValues(new Uint32Array(4)).join('-');

/** Every method rejects with `KeepingTrouble` when the storage fails; then nothing was changed. */
export class Shelf {
  readonly #database: Database;

  constructor(database: Database) {
    this.#database = database;
  }

  /** The one changed last first. A damaged card is shown as far as it can be read. */
  async list(): Promise<readonly ShelfBook[]> {
    const stored: unknown[] = await this.#database.read(['shelf'], (transaction) => transaction.objectStore('shelf').getAll());
    const books = stored.flatMap((card): ShelfBook[] => {
      const read = v.safeParse(cardShape, card);
      return read.success ? [read.output] : [];
    });
    return books.sort((a, b) => b.changedAt.localeCompare(a.changedAt));
  }

  /** Puts a workbook on the shelf, as one more: never in the place of another. */
  async add(given: Book): Promise<string> {
    const book: Book = { ...given, id: newBookId() };
    const at = new Date().toISOString();
    const { id, title, person } = book;
    await this.#database.write(['shelf', 'books'], async (transaction) => {
      await transaction.objectStore('books').add({ id, savedAt: at, seq: 1, json: bookText(book) });
      await transaction.objectStore('shelf').add({ id, title, person, changedAt: at, seq: 1, writer: '', picture: pictureOf(book) });
    });
    return id;
  }

  /** The workbook as it is kept, with what could not be read; `null` when it is not here. */
  async read(id: string): Promise<{ readonly book: Book; readonly problems: readonly string[] } | null> {
    const stored = await readStored(this.#database, id);
    return stored && replay(id, stored);
  }

  /** Ends with the copy's id, and with what could not be taken along. */
  async copy(id: string): Promise<{ readonly id: string; readonly problems: readonly string[] }> {
    const found = await this.read(id);
    if (!found) throw new KeepingTrouble('gone');
    const { book, problems } = found;
    const titles = new Set((await this.list()).map(({ title }) => title));
    return { id: await this.add({ ...book, title: copyTitle(book.title, titles) }), problems };
  }

  /**
   * As an edit like any other, at the end of its journal.
   *
   * @throws {EditRefused} when a text is too long
   */
  async rename(id: string, title: string, person: string): Promise<void> {
    const edit = { do: 'setTitle', title, person } as const;
    apply(edit, emptyBook(id));
    const at = new Date().toISOString();
    await this.#database.write(['shelf', 'journal'], async (transaction) => {
      const card = await mustHave(transaction, id);
      const seq = card.seq + 1;
      await transaction.objectStore('journal').add({ book: id, seq, at, edit });
      await transaction.objectStore('shelf').put({ ...card, title, person, changedAt: at, seq, writer: '' });
    });
  }

  putAway(id: string): Promise<void> {
    return this.#mark(id, (card) => ({ ...card, putAway: true }));
  }

  takeOut(id: string): Promise<void> {
    return this.#mark(id, (card) => without(card, 'putAway'));
  }

  throwAway(id: string): Promise<void> {
    return this.#mark(id, (card) => ({ ...card, binnedAt: new Date().toISOString() }));
  }

  takeBack(id: string): Promise<void> {
    return this.#mark(id, (card) => without(card, 'binnedAt'));
  }

  /** A workbook that is not stored yet has no card to say it on. */
  opened(id: string): Promise<void> {
    return this.#mark(id, (card) => ({ ...card, openedAt: new Date().toISOString() }), true);
  }

  savedAsFile(id: string): Promise<void> {
    return this.#mark(id, (card) => ({ ...card, savedAt: new Date().toISOString() }), true);
  }

  /** For good. Only what lies in the bin. */
  remove(id: string): Promise<void> {
    return this.#removeBinned((card) => card.id === id);
  }

  /** Removes what has lain in the bin for 30 days. A clock that was set back keeps it longer, never shorter. */
  emptyBin(now = new Date()): Promise<void> {
    return this.#removeBinned(({ binnedAt }) => now.getTime() - Date.parse(binnedAt!) >= BIN_DAYS * DAY);
  }

  #mark(id: string, change: (card: ShelfCard) => ShelfCard, ifThere = false): Promise<void> {
    return this.#database.write(['shelf'], async (transaction) => {
      if (ifThere && !await transaction.objectStore('shelf').get(id)) return;
      await transaction.objectStore('shelf').put(change(await mustHave(transaction, id)));
    });
  }

  #removeBinned(which: (card: ShelfCard) => boolean): Promise<void> {
    return this.#database.write(['shelf', 'books', 'journal', 'history', 'results', 'aside'], async (transaction) => {
      const cards = await transaction.objectStore('shelf').getAll();
      for (const card of cards) {
        if (card.binnedAt === undefined || !which(card)) continue;
        await transaction.objectStore('books').delete(card.id);
        await transaction.objectStore('journal').delete(journalOf(card.id));
        await transaction.objectStore('history').delete(journalOf(card.id));
        await transaction.objectStore('results').delete(card.id);
        const aside = transaction.objectStore('aside');
        for (const key of await aside.index('book').getAllKeys(card.id)) await aside.delete(key);
        await transaction.objectStore('shelf').delete(card.id);
      }
    });
  }
}

async function mustHave(transaction: Pick<Writing, 'objectStore'>, id: string): Promise<ShelfCard> {
  const card = await transaction.objectStore('shelf').get(id);
  if (!card) throw new KeepingTrouble('gone');
  return card;
}

/** "Skirt (copy)", "Skirt (copy 2)": none that is there already. */
function copyTitle(title: string, taken: ReadonlySet<string>): string {
  const first = title.replace(/ \(copy( \d+)?\)$/, '').slice(0, 180).trim();
  for (let number = 1; ; number++) {
    const wish = `${first} (copy${number === 1 ? '' : ` ${number}`})`.trim();
    if (!taken.has(wish)) return wish;
  }
}

function without(card: ShelfCard, mark: 'putAway' | 'binnedAt'): ShelfCard {
  const rest = { ...card };
  delete rest[mark];
  return rest;
}

/** How many whole days a workbook still lies in the bin. */
export function daysLeft(binnedAt: string, now = new Date()): number {
  const left = BIN_DAYS - Math.floor((now.getTime() - Date.parse(binnedAt)) / DAY);
  return Math.max(0, Math.min(BIN_DAYS, left));
}
