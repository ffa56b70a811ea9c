/**
 * What is stored, and one connection to it that is opened again when it was
 * lost. A later version of the stores is one more step in `upgrade`; a new
 * kind of edit needs a new version too, so that an older page does not read a
 * journal that it cannot understand.
 */
import { openDB, type DBSchema, type IDBPDatabase, type IDBPTransaction, type StoreNames } from 'idb';
import { KeepingTrouble, troubleFrom } from './trouble.ts';

export const VERSION = 3;

/** A whole workbook as it was after the edit `seq`. */
export interface Snapshot {
  readonly id: string;
  readonly savedAt: string;
  readonly seq: number;
  /** The workbook's file format, as text. */
  readonly json: string;
}

/** One edit. Those with a `seq` after the snapshot's are still to be made to it. */
export interface JournalEntry {
  readonly book: string;
  readonly seq: number;
  readonly at: string;
  /** An `Edit`, unless the storage is damaged. */
  readonly edit: unknown;
}

/** What a list of workbooks shows, and the last edit stored: whoever writes the next must know of it. */
export interface ShelfCard {
  readonly id: string;
  readonly title: string;
  readonly person: string;
  readonly changedAt: string;
  readonly seq: number;
  /** Which keeper wrote last; each has a mark of its own. */
  readonly writer: string;
  /** The texts of its first rows, to know it by. */
  readonly picture?: readonly (readonly string[])[];
  readonly openedAt?: string;
  /** When a copy was last saved as a file. */
  readonly savedAt?: string;
  readonly putAway?: true;
  /** When it was thrown away; it is gone for good 30 days later. */
  readonly binnedAt?: string;
}

/** What could not be read or made again, put here before anything took its place. */
export interface SetAside {
  readonly book: string;
  readonly at: string;
  readonly problems: readonly string[];
  /** The damaged snapshot, when it was the snapshot that was damaged. */
  readonly json: string | null;
  readonly entries: readonly JournalEntry[];
}

/** One step of what was done, for looking and going back. Those of a workbook that lack one between them and its last edit are of no use. */
export interface StoredStep {
  readonly book: string;
  /** The number of the edit with which it was made. */
  readonly seq: number;
  readonly at: string;
  readonly way: 'done' | 'undone' | 'redone';
  /** About how many cells it holds. */
  readonly weight: number;
  /** What was done, with its inverse; `null` for undoing and redoing, which speak of an earlier step. */
  readonly entry: unknown;
}

export interface StoredTemplate {
  readonly id: string;
  readonly savedAt: string;
  /** A `Template`, unless the storage is damaged. */
  readonly template: unknown;
}

/** What was worked out last of a workbook, for the next start. */
export interface StoredResults {
  readonly book: string;
  /** The edit after which it was. */
  readonly seq: number;
  readonly results: unknown;
}

export interface Stores extends DBSchema {
  books: { key: string; value: Snapshot };
  journal: { key: [string, number]; value: JournalEntry };
  shelf: { key: string; value: ShelfCard };
  aside: { key: number; value: SetAside; indexes: { book: string } };
  templates: { key: string; value: StoredTemplate };
  history: { key: [string, number]; value: StoredStep; indexes: { weight: [string, number, number] } };
  results: { key: string; value: StoredResults };
}

type Name = StoreNames<Stores>;
type Upgrade = IDBPTransaction<Stores, Name[], 'versionchange'>;
export type Reading = IDBPTransaction<Stores, Name[], 'readonly'>;
export type Writing = IDBPTransaction<Stores, Name[], 'readwrite'>;

/** `STEPS[v]` brings version v to v + 1. */
const STEPS: readonly ((database: IDBPDatabase<Stores>, transaction: Upgrade) => void)[] = [
  (database) => {
    database.createObjectStore('books', { keyPath: 'id' });
    database.createObjectStore('journal', { keyPath: ['book', 'seq'] });
    database.createObjectStore('shelf', { keyPath: 'id' });
    database.createObjectStore('aside', { autoIncrement: true }).createIndex('book', 'book');
    database.createObjectStore('templates', { keyPath: 'id' });
  },
  (database) => {
    // The weight in the key: what is to be dropped is found without reading any of it.
    database.createObjectStore('history', { keyPath: ['book', 'seq'] }).createIndex('weight', ['book', 'seq', 'weight']);
  },
  (database) => {
    // Besides, the journal has kinds of edits that earlier pages do not know: records, and rows put in order.
    database.createObjectStore('results', { keyPath: 'book' });
  },
];

/** Says `blocked` when an older version of the page holds up the opening, and `opened` when it let go. */
export class Database extends EventTarget {
  readonly #name: string;
  #open: Promise<IDBPDatabase<Stores>> | null = null;

  constructor({ name = 'tape-and-tally' } = {}) {
    super();
    this.#name = name;
  }

  /** @throws {KeepingTrouble} */
  read<T>(stores: Name[], work: (transaction: Reading) => Promise<T>): Promise<T> {
    return this.#twice(async (database) => {
      const transaction = database.transaction(stores, 'readonly');
      const [result] = await Promise.all([work(transaction), transaction.done]);
      return result;
    });
  }

  /**
   * Does `work` in one transaction and ends when all of it is on the disk. All
   * or nothing: when it throws, nothing was written, unless the connection was
   * lost at the very end; then nobody can tell.
   *
   * @throws {KeepingTrouble}
   */
  write<T>(stores: Name[], work: (transaction: Writing) => Promise<T>): Promise<T> {
    return this.#twice(async (database) => {
      const transaction = database.transaction(stores, 'readwrite', { durability: 'strict' });
      const done = transaction.done;
      try {
        const result = await work(transaction);
        await done;
        return result;
      } catch (error) {
        try {
          transaction.abort();
        } catch {
          // It has ended already.
        }
        const ended: unknown = await done.catch((why: unknown) => why);
        // A request that was given up says only that; the transaction says why.
        throw (error as { name?: unknown } | null)?.name === 'AbortError' ? ended ?? error : error;
      }
    });
  }

  /** Closes the connection when what is being written is on the disk. The next use opens another. */
  async close(): Promise<void> {
    const open = this.#open;
    this.#open = null;
    await open?.then((database) => database.close(), () => undefined);
  }

  /** A connection can die without a word, so that the first failure may be its fault alone. */
  async #twice<T>(work: (database: IDBPDatabase<Stores>) => Promise<T>): Promise<T> {
    try {
      return await work(await this.#connection());
    } catch (error) {
      if (error instanceof KeepingTrouble) throw error;
    }
    await this.close();
    try {
      return await work(await this.#connection());
    } catch (error) {
      throw troubleFrom(error);
    }
  }

  #connection(): Promise<IDBPDatabase<Stores>> {
    if (!this.#open) {
      const forget = () => { if (this.#open === open) this.#open = null; };
      const open = this.#connect(forget);
      this.#open = open;
      open.catch(forget);
    }
    return this.#open;
  }

  async #connect(forget: () => void): Promise<IDBPDatabase<Stores>> {
    if (typeof indexedDB === 'undefined') throw new KeepingTrouble('unavailable');
    let blocked = false;
    const database = await openDB<Stores>(this.#name, VERSION, {
      upgrade: (opened, from, to, transaction) => {
        for (const step of STEPS.slice(from, to ?? VERSION)) step(opened, transaction);
      },
      blocked: () => {
        blocked = true;
        this.dispatchEvent(new Event('blocked'));
      },
      blocking: (_current, _wanted, event) => {
        // A newer version of the page waits: holding on would stop it for ever.
        forget();
        (event.target as IDBDatabase).close();
      },
      terminated: forget,
    });
    if (blocked) this.dispatchEvent(new Event('opened'));
    return database;
  }
}
