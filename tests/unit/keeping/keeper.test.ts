import fc from 'fast-check';
import { forceCloseDatabase } from 'fake-indexeddb';
import { deleteDB, openDB } from 'idb';
import { describe, expect, test, vi } from 'vitest';
import { KeepingTrouble, Shelf, type Database, type KeepState, type Keeper } from '../../../src/keeping/index.ts';
import { EditRefused, apply, emptyBook, type Book } from '../../../src/workbook/index.ts';
import { bookOf, editFrom, seed } from '../workbook/help.ts';
import { Hand, failing, stores, tab, typed } from './help.ts';

/** What another tab, or this one after a reload, finds. */
async function reloaded(id?: string): Promise<{ book: Book; problems: readonly string[] } | null> {
  return tab().keeper.load(id);
}

const statesOf = (keeper: Keeper): KeepState[] => {
  const states: KeepState[] = [];
  keeper.addEventListener('state', () => states.push(keeper.state));
  return states;
};

const until = (keeper: Keeper, state: KeepState['state']): Promise<void> => vi.waitFor(() => expect(keeper.state.state).toBe(state), { interval: 2, timeout: 10_000 });

describe('keeping and loading', () => {
  test('nothing is stored at first', async () => {
    expect(await reloaded()).toBeNull();
    expect(await reloaded('a')).toBeNull();
    expect(tab().keeper.state).toEqual({ state: 'kept', at: null });
  });

  test('any sequence of edits is there after a reload, wherever the snapshots fell', async () => {
    await fc.assert(fc.asyncProperty(
      fc.array(seed, { maxLength: 15 }), fc.integer({ min: 1, max: 6 }), fc.boolean(), fc.nat(14),
      async (seeds, snapshotEdits, begins, reloadAt) => {
        globalThis.indexedDB = new (await import('fake-indexeddb')).IDBFactory();
        let hand = new Hand(tab({ snapshotEdits }).keeper, bookOf([['Waist', '74 cm'], ['=B1']], [['2 1/4 in']]));
        if (begins) await hand.keeper.begin(hand.book);
        for (const [index, each] of seeds.entries()) {
          try {
            void hand.do(editFrom(each, hand.book));
          } catch (error) {
            if (!(error instanceof EditRefused)) throw error;
          }
          if (index !== reloadAt) continue;
          await hand.keeper.settled();
          const { keeper } = tab({ snapshotEdits });
          const loaded = await keeper.load();
          if (loaded) hand = new Hand(keeper, loaded.book);
        }
        await Promise.all(hand.promises);
        await hand.keeper.settled();
        const again = await reloaded();
        if (hand.promises.length === 0 && !again) return;
        expect(again!.problems).toEqual([]);
        expect(again!.book).toStrictEqual(hand.book);
      },
    ), { numRuns: 150 });
  });

  test('`kept` is said, and the promise ends, only after the transaction has completed', async () => {
    const order: string[] = [];
    const { keeper } = tab();
    await keeper.load();
    const original = IDBDatabase.prototype.transaction;
    vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementation(function (this: IDBDatabase, ...given: Parameters<typeof original>) {
      const transaction = original.apply(this, given);
      order.push(`${given[1]} ${given[2]?.durability}`);
      transaction.addEventListener('complete', () => order.push('complete'));
      return transaction;
    });
    keeper.addEventListener('state', () => order.push(keeper.state.state));
    await new Hand(keeper).do(typed(0, '74 cm')).then(() => order.push('promise'));
    expect(order).toEqual(['keeping', 'readwrite strict', 'complete', 'kept', 'promise']);
    expect(keeper.state).toEqual({ state: 'kept', at: expect.stringMatching(/^\d{4}-\d\d-\d\dT.*Z$/) });
  });

  test('edits made while one is written go in one transaction, in order', async () => {
    const { keeper } = tab();
    const hand = new Hand(keeper);
    await keeper.begin(hand.book);
    const transactions = vi.spyOn(IDBDatabase.prototype, 'transaction');
    for (let row = 0; row < 50; row++) void hand.do(typed(row, String(row)));
    expect(keeper.state).toEqual({ state: 'keeping', waiting: 50 });
    await Promise.all(hand.promises);
    // The first may have gone off alone.
    expect(transactions.mock.calls.length).toBeLessThanOrEqual(2);
    expect((await stores()).journal.map(({ seq }) => seq)).toEqual(Array.from({ length: 50 }, (_, i) => i + 2));
  });

  test('a workbook that is only begun is stored', async () => {
    const book = bookOf([['Waist', '74 cm']]);
    await tab().keeper.begin(book);
    expect((await reloaded())!.book).toEqual(book);
  });

  test('the workbook changed last comes back, and any other by its id', async () => {
    vi.useFakeTimers({ toFake: ['Date'] });
    try {
      const { keeper, database } = tab();
      for (const [minute, id] of ['a', 'b', 'a'].entries()) {
        vi.setSystemTime(new Date(2026, 0, 1, 14, minute));
        const loaded = await keeper.load(id);
        await new Hand(keeper, loaded?.book ?? emptyBook(id)).do({ do: 'setTitle', title: `Skirt ${id} ${minute}`, person: 'Ines' });
      }
      expect((await reloaded())!.book.title).toBe('Skirt a 2');
      expect((await reloaded('b'))!.book.title).toBe('Skirt b 1');
      const shelf = await new Shelf(database).list();
      expect(shelf.map(({ id, title, person, changedAt }) => [id, title, person, new Date(changedAt).getMinutes()])).toEqual([['a', 'Skirt a 2', 'Ines', 2], ['b', 'Skirt b 1', 'Ines', 1]]);
    } finally {
      vi.useRealTimers();
    }
  });

  test('loading while edits are on their way gives them all, and loses none', async () => {
    const { keeper } = tab({ snapshotEdits: 2 });
    const hand = new Hand(keeper);
    await keeper.begin(hand.book);
    for (let round = 0; round < 10; round++) {
      for (let row = 0; row <= round % 4; row++) void hand.do(row === 1 ? { do: 'insertRows', sheet: 1, at: 0, count: 1 } : typed(row, `${round} ${row}`));
      expect(await keeper.load()).toEqual({ book: hand.book, problems: [] });
    }
    await Promise.all(hand.promises);
    expect(await reloaded()).toEqual({ book: hand.book, problems: [] });
  });

  test('edits of one workbook still waiting when another is opened are kept too', async () => {
    const { keeper } = tab();
    const first = new Hand(keeper, emptyBook('a'));
    const second = new Hand(keeper, emptyBook('b'));
    void first.do(typed(0, 'a0'));
    void first.do(typed(1, 'a1'));
    void second.do(typed(0, 'b0'));
    await Promise.all([...first.promises, ...second.promises]);
    expect((await reloaded('a'))!.book).toEqual(first.book);
    expect((await reloaded('b'))!.book).toEqual(second.book);
  });
});

describe('snapshots', () => {
  test('take the journal\'s place after so many edits', async () => {
    const hand = new Hand(tab({ snapshotEdits: 5 }).keeper);
    await hand.keeper.begin(hand.book);
    for (let row = 0; row < 5; row++) await hand.do(typed(row, String(row)));
    await vi.waitFor(async () => expect((await stores()).journal).toEqual([]), { timeout: 10_000 });
    const { books, shelf } = await stores();
    expect(books).toHaveLength(1);
    expect(books[0]!.seq).toBe(6);
    expect(shelf[0]!.seq).toBe(6);
    await hand.do(typed(9, 'after'));
    expect((await stores()).journal).toHaveLength(1);
    expect((await reloaded())!.book).toEqual(hand.book);
  });

  test('and when it has been quiet for a while', async () => {
    const hand = new Hand(tab({ snapshotQuiet: 30 }).keeper);
    await hand.keeper.begin(hand.book);
    await hand.do(typed(0, '1'));
    await vi.waitFor(async () => expect((await stores()).journal).toEqual([]), { timeout: 10_000 });
    expect((await reloaded())!.book).toEqual(hand.book);
  });

  test.each([['put', 'books'], ['delete', 'journal'], ['put', 'shelf']] as const)('killed in the middle of one (at %s of %s): nothing that was called kept is lost', async (method, store) => {
    const hand = new Hand(tab({ snapshotEdits: 3 }).keeper);
    await hand.keeper.begin(hand.book);
    await hand.do(typed(0, '1'));
    await hand.do(typed(1, '2'));
    // The third edit is kept; the snapshot that follows it never comes to its end.
    const third = hand.do(typed(2, '3'));
    await third;
    const died = failing(method, 'AbortError', store);
    await vi.waitFor(() => expect(died.times).toBe(2), { timeout: 10_000 });
    await hand.keeper.settled();
    died.mend();
    const { books, journal } = await stores();
    expect(books[0]!.seq).toBe(1);
    expect(journal.map(({ seq }) => seq)).toEqual([2, 3, 4]);
    expect(hand.keeper.state.state).toBe('kept');
    const again = await reloaded();
    expect(again!.problems).toEqual([]);
    expect(again!.book).toEqual(hand.book);
  });
});

describe('when it cannot be kept', () => {
  test('a full device: it says so, keeps all in memory, and recovers by itself in order', async () => {
    const { keeper } = tab({ retry: [20, 20] });
    const hand = new Hand(keeper);
    await keeper.begin(hand.book);
    const states = statesOf(keeper);
    const full = failing('add', 'QuotaExceededError');
    void hand.do(typed(0, '1'));
    await until(keeper, 'not kept');
    void hand.do({ do: 'insertRows', sheet: 1, at: 0, count: 2 });
    void hand.do(typed(0, '2'));
    expect(keeper.state).toEqual({ state: 'not kept', why: 'full', sentence: expect.stringMatching(/no room.*Free some space/), waiting: 3 });
    expect((await stores()).journal).toEqual([]);
    full.mend();
    await Promise.all(hand.promises);
    expect(keeper.state.state).toBe('kept');
    expect(states.filter(({ state }) => state === 'kept')).toHaveLength(1);
    expect((await reloaded())!.book).toEqual(hand.book);
  });

  test('it can be told to try at once', async () => {
    const { keeper } = tab({ retry: [2 ** 30, 2 ** 30] });
    const hand = new Hand(keeper);
    const full = failing('put', 'QuotaExceededError');
    void hand.do(typed(0, '1'));
    await until(keeper, 'not kept');
    full.mend();
    keeper.retry();
    await Promise.all(hand.promises);
    expect((await reloaded())!.book).toEqual(hand.book);
  });

  test('a snapshot that does not fit leaves the journal as it is, and nothing is said to be lost', async () => {
    const { keeper } = tab({ snapshotEdits: 2 });
    const hand = new Hand(keeper);
    await keeper.begin(hand.book);
    const states = statesOf(keeper);
    const full = failing('put', 'QuotaExceededError', 'books');
    for (let row = 0; row < 4; row++) await hand.do(typed(row, String(row)));
    await vi.waitFor(() => expect(full.times).toBeGreaterThan(1), { timeout: 10_000 });
    await keeper.settled();
    expect(states.some(({ state }) => state === 'not kept')).toBe(false);
    expect((await stores()).journal).toHaveLength(4);
    full.mend();
    await hand.do(typed(9, 'more'));
    await vi.waitFor(async () => expect((await stores()).journal).toEqual([]), { timeout: 10_000 });
  });

  test.each([
    ['dies', (connection: IDBDatabase) => forceCloseDatabase(connection as never)],
    ['was closed without a word', (connection: IDBDatabase) => connection.close()],
  ])('the connection %s: it opens another and goes on', async (_, lose) => {
    const connections: IDBDatabase[] = [];
    const original = IDBDatabase.prototype.transaction;
    vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementation(function (this: IDBDatabase, ...given: Parameters<typeof original>) {
      connections.push(this);
      return original.apply(this, given);
    });
    const { keeper } = tab();
    const hand = new Hand(keeper);
    await keeper.begin(hand.book);
    lose(connections.at(-1)!);
    await hand.do(typed(0, '1'));
    const inHand = hand.do(typed(1, '2'));
    lose(connections.at(-1)!);
    await inHand;
    expect(new Set(connections).size).toBeGreaterThanOrEqual(3);
    expect((await reloaded())!.book).toEqual(hand.book);
  });

  test('the connection dies in the middle of a transaction', async () => {
    const { keeper } = tab();
    const hand = new Hand(keeper);
    await keeper.begin(hand.book);
    const original = IDBDatabase.prototype.transaction;
    let transactions = 0;
    vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementation(function (this: IDBDatabase, ...given: Parameters<typeof original>) {
      const transaction = original.apply(this, given);
      if (++transactions <= 3) {
        queueMicrotask(() => {
          // A browser gives up what is in hand when a connection dies; the stand-in does not by itself.
          transaction.abort();
          forceCloseDatabase(this as never);
        });
      }
      return transaction;
    });
    const states = statesOf(keeper);
    for (let row = 0; row < 5; row++) void hand.do(typed(row, String(row)));
    await Promise.all(hand.promises);
    expect(transactions).toBeGreaterThan(3);
    expect(states.some(({ state }) => state === 'not kept')).toBe(true);
    expect(keeper.state.state).toBe('kept');
    expect((await stores()).journal.map(({ seq }) => seq)).toEqual([2, 3, 4, 5, 6]);
    expect((await reloaded())!.book).toEqual(hand.book);
  });

  test('a write that reached the disk although the browser could not say so is not made twice', async () => {
    const { keeper, database } = tab({ retry: [1, 1] });
    const hand = new Hand(keeper);
    await keeper.begin(hand.book);
    const original = database.write.bind(database);
    vi.spyOn(database, 'write').mockImplementationOnce(async (...given: Parameters<Database['write']>) => {
      await original(...given);
      throw new KeepingTrouble('failed');
    });
    void hand.do({ do: 'insertRows', sheet: 1, at: 0, count: 1 });
    void hand.do(typed(0, 'below'));
    await Promise.all(hand.promises);
    expect((await stores()).journal.map(({ seq }) => seq)).toEqual([2, 3]);
    expect((await reloaded())!.book).toEqual(hand.book);
  });

  test('a storage that takes its time', async () => {
    const { keeper, database } = tab({ slow: 10 });
    const hand = new Hand(keeper);
    await keeper.begin(hand.book);
    const original = database.write.bind(database);
    let go = (): void => undefined;
    const slow = new Promise<void>((resolve) => { go = resolve; });
    vi.spyOn(database, 'write').mockImplementationOnce(async (...given: Parameters<Database['write']>) => {
      await slow;
      return original(...given);
    });
    void hand.do(typed(0, '1'));
    await until(keeper, 'not kept');
    expect(keeper.state).toMatchObject({ why: 'slow', waiting: 1 });
    go();
    await Promise.all(hand.promises);
    expect(keeper.state.state).toBe('kept');
  });

  test('a window in which nothing can be kept', async () => {
    vi.stubGlobal('indexedDB', undefined);
    const { keeper } = tab();
    await expect(keeper.load()).rejects.toMatchObject({ why: 'unavailable' });
    void new Hand(keeper).do(typed(0, '1'));
    await until(keeper, 'not kept');
    expect(keeper.state).toMatchObject({ why: 'unavailable', sentence: expect.stringMatching(/private window.*save what you need as a file/) });
  });

  test('the storage is emptied while the page is open: the whole workbook is written anew', async () => {
    const { keeper } = tab();
    const hand = new Hand(keeper, bookOf([['Waist', '74 cm']]));
    await keeper.begin(hand.book);
    await hand.do(typed(3, '1'));
    await deleteDB('tape-and-tally');
    await hand.do(typed(4, '2'));
    expect((await reloaded())!.book).toEqual(hand.book);
    await hand.do(typed(5, '3'));
    expect((await reloaded())!.book).toEqual(hand.book);
  });

  test('emptied just before a snapshot: the whole workbook is written anew', async () => {
    let due = (): void => undefined;
    const { keeper } = tab({ snapshotEdits: 1, whenIdle: (work) => { due = work; } });
    const hand = new Hand(keeper);
    await keeper.begin(hand.book);
    await hand.do(typed(3, '1'));
    await deleteDB('tape-and-tally');
    due();
    await vi.waitFor(async () => expect(await indexedDB.databases()).toHaveLength(1), { timeout: 10_000 });
    expect((await reloaded())!.book).toEqual(hand.book);
  });

  test('a newer version of the page takes the storage over', async () => {
    const { keeper } = tab();
    const hand = new Hand(keeper);
    await keeper.begin(hand.book);
    const blocked = vi.fn();
    const newer = await openDB('tape-and-tally', 99, { blocked });
    expect(blocked).not.toHaveBeenCalled();
    void hand.do(typed(0, '1'));
    await until(keeper, 'not kept');
    expect(keeper.state).toMatchObject({ why: 'newer', waiting: 1 });
    newer.close();
  });

  test('an older version of the page holds the storage up', () => {
    const { keeper, database } = tab();
    database.dispatchEvent(new Event('blocked'));
    expect(keeper.state).toMatchObject({ state: 'not kept', why: 'blocked' });
    database.dispatchEvent(new Event('opened'));
    expect(keeper.state.state).toBe('kept');
  });

  test('loading fails for a moment: nothing is changed, and it works the next time', async () => {
    const hand = new Hand(tab().keeper);
    await hand.do(typed(0, '1'));
    const { keeper } = tab();
    const spy = vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementation(() => { throw new DOMException('', 'UnknownError'); });
    await expect(keeper.load()).rejects.toBeInstanceOf(KeepingTrouble);
    spy.mockRestore();
    expect((await keeper.load())!.book).toEqual(hand.book);
  });
});

describe('two tabs without locks', () => {
  test('the second writer is turned away, and its edits go on top of the first one\'s when it loads again', async () => {
    const one = new Hand(tab().keeper);
    await one.keeper.begin(one.book);
    const two = new Hand(tab().keeper, (await tab().keeper.load())!.book);
    await two.keeper.load();
    await one.do(typed(0, 'from one'));
    void two.do(typed(1, 'from two'));
    void two.do(typed(2, 'from two as well'));
    await until(two.keeper, 'not kept');
    expect(two.keeper.state).toMatchObject({ why: 'elsewhere', waiting: 2 });
    const merged = await two.keeper.load('a');
    expect(merged!.problems).toEqual([]);
    await Promise.all(two.promises);
    expect(two.keeper.state.state).toBe('kept');
    const again = await reloaded();
    expect(again!.book).toEqual(merged!.book);
    expect(again!.book.sheets[0]!.rows.map((row) => row?.[0]?.raw)).toEqual(['from one', 'from two', 'from two as well']);
  });

  test('also after a snapshot of the first has cleared the journal', async () => {
    const one = new Hand(tab({ snapshotEdits: 1 }).keeper);
    await one.keeper.begin(one.book);
    const { keeper } = tab();
    const two = new Hand(keeper, (await keeper.load())!.book);
    await one.do(typed(0, 'from one'));
    await vi.waitFor(async () => expect((await stores()).journal).toEqual([]), { timeout: 10_000 });
    void two.do(typed(1, 'from two'));
    await until(keeper, 'not kept');
    const merged = await keeper.load();
    await keeper.settled();
    expect((await reloaded())!.book).toEqual(merged!.book);
    expect(merged!.book.sheets[0]!.rows).toHaveLength(2);
  });

  test('an edit that no longer can be made is listed and set aside', async () => {
    const { keeper } = tab();
    const one = new Hand(tab().keeper, bookOf([['Waist']]));
    await one.keeper.begin(one.book);
    const two = new Hand(keeper, (await keeper.load())!.book);
    await one.do({ do: 'removeSheet', sheet: 2 });
    void two.do(typed(0, 'into the void', 2));
    await until(keeper, 'not kept');
    const merged = await keeper.load();
    expect(merged!.problems).toHaveLength(1);
    await keeper.settled();
    expect((await keeper.aside()).flatMap(({ entries }) => entries.map(({ edit }) => edit))).toEqual([typed(0, 'into the void', 2)]);
    expect((await reloaded())!.problems).toEqual([]);
  });

  test('a workbook begun under a number that is taken does not overwrite, and is not lost', async () => {
    const one = new Hand(tab().keeper, bookOf([['Waist', '74 cm']]));
    await one.keeper.begin(one.book);
    const { keeper } = tab();
    const other = apply(typed(5, 'other'), emptyBook(one.book.id)).book;
    void keeper.begin(other);
    await until(keeper, 'not kept');
    expect((await reloaded())!.book).toEqual(one.book);
    const merged = await keeper.load(one.book.id);
    expect(merged!.problems).toHaveLength(1);
    await new Hand(keeper, merged!.book).do(typed(6, 'x'));
    expect((await keeper.aside())[0]!.json).toContain('other');
  });
});
