/** A storage of its own for each test, and ways to make it fail. */
import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { openDB } from 'idb';
import { beforeEach, afterEach, vi } from 'vitest';
import { Database, Keeper } from '../../../src/keeping/index.ts';
import type { KeeperOptions } from '../../../src/keeping/keeper.ts';
import type { JournalEntry, SetAside, ShelfCard, Snapshot } from '../../../src/keeping/database.ts';
import { apply, emptyBook, type Book, type Edit } from '../../../src/workbook/index.ts';

const open: Keeper[] = [];

beforeEach(() => { globalThis.indexedDB = new IDBFactory(); });
afterEach(async () => {
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
  await Promise.all(open.splice(0).map((keeper) => keeper.close()));
});

/** No snapshot comes by itself, and nothing waits long. */
export const CALM: KeeperOptions = { snapshotEdits: Infinity, snapshotQuiet: 2 ** 30, retry: [1, 20], whenIdle: (work) => { setTimeout(work); } };

/** A tab: a connection and a keeper of its own. */
export function tab(options: KeeperOptions = {}): { keeper: Keeper; database: Database } {
  const database = new Database();
  const keeper = new Keeper(database, { ...CALM, ...options });
  open.push(keeper);
  return { keeper, database };
}

export const typed = (row: number, raw: string, sheet = 1): Edit => ({ do: 'setCells', sheet, cells: [{ row, col: 0, cell: { raw } }] });

/** Someone at work: makes edits and hands each over. */
export class Hand {
  book: Book;
  readonly promises: Promise<void>[] = [];
  constructor(readonly keeper: Keeper, book: Book = emptyBook('a')) {
    this.book = book;
  }
  do(edit: Edit): Promise<void> {
    this.book = apply(edit, this.book).book;
    const kept = this.keeper.keep(edit, this.book);
    this.promises.push(kept);
    return kept;
  }
}

/** Looks into the stores past everything else. */
export async function stores() {
  const database = await openDB('tape-and-tally');
  try {
    return {
      books: await database.getAll('books') as Snapshot[],
      journal: await database.getAll('journal') as JournalEntry[],
      shelf: await database.getAll('shelf') as ShelfCard[],
      aside: await database.getAll('aside') as SetAside[],
    };
  } finally {
    database.close();
  }
}

/** Changes a store past everything else. */
export async function tamper(store: string, ...values: unknown[]): Promise<void> {
  const database = await openDB('tape-and-tally');
  for (const value of values) await database.put(store, value);
  database.close();
}

/** Every write of this kind fails in the way of the browser until it is mended. */
export function failing(method: 'add' | 'put' | 'delete', name: string, store?: string): { readonly times: number; mend(): void } {
  const original = IDBObjectStore.prototype[method] as (...given: unknown[]) => IDBRequest;
  let times = 0;
  const spy = vi.spyOn(IDBObjectStore.prototype, method).mockImplementation(function (this: IDBObjectStore, ...given: unknown[]) {
    if (store !== undefined && this.name !== store) return original.apply(this, given);
    times++;
    throw new DOMException('made to fail', name);
  } as never);
  return { get times() { return times; }, mend: () => spy.mockRestore() };
}
