/**
 * Every fault at every call that keeping makes of the storage. While it lasts
 * no edit is lost and the page says what is the matter; when it ends, all of it
 * is kept without anybody doing anything. The table in DEVELOPERS.md is of this.
 */
import { forceCloseDatabase } from 'fake-indexeddb';
import { openDB } from 'idb';
import { nothing } from 'lit';
import { describe, expect, test, vi } from 'vitest';
import type { KeepState, Keeper, Why } from '../../../src/keeping/index.ts';
import type { Step } from '../../../src/workbook/index.ts';
import { apply, entryOf, type Edit } from '../../../src/workbook/index.ts';
import { banner } from '../../../src/app/banner.ts';
import type { Desk } from '../../../src/app/desk.ts';
import { keptInWords } from '../../../src/app/kept.ts';
import { bookOf } from '../workbook/help.ts';
import { Hand, stores, tab, tamper, typed } from './help.ts';

type Fault = 'full' | 'aborted' | 'connection lost' | 'slow';
type Method = 'get' | 'add' | 'put' | 'delete';

interface Call {
  readonly what: string;
  readonly method: Method;
  readonly store: string;
  /** Edits are kept already when it is made: its failing costs nothing that she typed. */
  readonly after?: true;
  readonly damaged?: true;
}

const CALLS: readonly Call[] = [
  { what: 'reading the card', method: 'get', store: 'shelf' },
  { what: 'adding an edit to the journal', method: 'add', store: 'journal' },
  { what: 'writing the card', method: 'put', store: 'shelf' },
  { what: 'writing a snapshot', method: 'put', store: 'books', after: true },
  { what: 'clearing the journal after a snapshot', method: 'delete', store: 'journal', after: true },
  { what: 'writing a step to look back on', method: 'put', store: 'history', after: true },
  { what: 'setting damage aside', method: 'add', store: 'aside', damaged: true },
  { what: 'writing the whole workbook after damage', method: 'put', store: 'books', damaged: true },
];
const FAULTS: readonly Fault[] = ['full', 'aborted', 'connection lost', 'slow'];
const SAID: Readonly<Record<Fault, readonly Why[]>> = { full: ['full'], aborted: ['failed'], 'connection lost': ['failed'], slow: ['slow'] };

/** Fails at this call, each time, until it is mended. */
function inject({ method, store }: Call, fault: Fault) {
  const original = IDBObjectStore.prototype[method] as (this: IDBObjectStore, ...given: unknown[]) => IDBRequest;
  const state = { times: 0, on: true };
  const held = (of: IDBObjectStore): void => {
    // A transaction stays open while it is asked for something.
    const request = IDBObjectStore.prototype.getAllKeys.call(of, undefined, 1);
    request.onsuccess = () => { if (state.on) held(of); };
  };
  vi.spyOn(IDBObjectStore.prototype, method).mockImplementation(function (this: IDBObjectStore, ...given: unknown[]) {
    if (!state.on || this.name !== store || this.transaction.mode === 'readonly') return original.apply(this, given);
    state.times++;
    if (fault === 'full') throw new DOMException('made to fail', 'QuotaExceededError');
    const request = original.apply(this, given);
    const { transaction } = this;
    if (fault === 'slow') held(this);
    else {
      transaction.abort();
      if (fault === 'connection lost') forceCloseDatabase(transaction.db as never);
    }
    return request;
  } as never);
  return { get times() { return state.times; }, mend: () => { state.on = false; } };
}

const pageOf = (keepState: KeepState): Desk => ({ reading: null, keepState, engine: null, setAside: 0 }) as unknown as Desk;

function watch(keeper: Keeper): KeepState[] {
  const states: KeepState[] = [];
  keeper.addEventListener('state', () => states.push(keeper.state));
  return states;
}

const EDITS: readonly Edit[] = [typed(3, 'one'), { do: 'insertRows', sheet: 1, at: 0, count: 2 }, typed(4, '2 1/4 in'), { do: 'removeRows', sheet: 1, at: 1, count: 1 }, typed(9, 'five')];

/** As the desk does it: with the step for looking back. */
function doSteps(hand: Hand): void {
  for (const edit of EDITS) {
    const before = hand.book;
    const applied = apply(edit, before);
    const at = new Date().toISOString();
    const step: Step = { way: 'done', at, entry: entryOf(edit, before, applied, at) };
    hand.book = applied.book;
    hand.promises.push(hand.keeper.keep(edit, hand.book, step));
  }
}

describe.each(CALLS)('$what', (call) => {
  test.each(FAULTS)('%s', async (fault) => {
    const first = new Hand(tab().keeper, bookOf([['Waist', '74 cm'], ['Hip', '98 cm']]));
    await first.keeper.begin(first.book);
    const snapshot = (await stores()).books[0]!;
    if (call.damaged) await tamper('books', { ...snapshot, json: snapshot.json.replace('[0,1,"74 cm"]', '[0,1,74]') });

    const { keeper } = tab({ slow: fault === 'slow' ? 15 : 2 ** 30, snapshotEdits: call.after ? 2 : Infinity });
    const loaded = (await keeper.load())!;
    expect(loaded.problems.length > 0).toBe(call.damaged === true);
    const states = watch(keeper);
    const broken = inject(call, fault);
    const hand = new Hand(keeper, loaded.book);
    doSteps(hand);
    await vi.waitFor(() => expect(broken.times).toBeGreaterThan(0), { interval: 2, timeout: 10_000 });

    if (call.after) {
      await Promise.all(hand.promises);
      // On a busy machine any write may look slow to a page that says so after 15 ms.
      expect(states.some((state) => state.state === 'not kept' && state.why !== 'slow')).toBe(false);
      if (fault === 'slow' && call.store !== 'history') {
        // Nothing can be written past it; that is said as soon as something waits.
        hand.promises.push(hand.do(typed(11, 'behind it')));
        await vi.waitFor(() => expect(keeper.state).toMatchObject({ state: 'not kept', why: 'slow', waiting: 1 }), { interval: 2, timeout: 10_000 });
      }
    } else {
      await vi.waitFor(() => expect(keeper.state.state).toBe('not kept'), { interval: 2, timeout: 10_000 });
      const { state } = keeper;
      if (state.state !== 'not kept') throw new Error(state.state);
      expect(SAID[fault]).toContain(state.why);
      expect(state.waiting, 'all of it is still in memory').toBe(EDITS.length);
      expect(keptInWords(pageOf(state))).toEqual({ words: `not kept: ${state.sentence}`, trouble: true });
      expect(banner(pageOf(state), () => undefined, null)).not.toBe(nothing);
    }

    broken.mend();
    await Promise.all(hand.promises);
    await keeper.settled();
    expect(keeper.state.state).toBe('kept');
    expect(banner(pageOf(keeper.state), () => undefined, null)).toBe(nothing);
    expect(await tab().keeper.load()).toEqual({ book: hand.book, problems: [] });
    if (call.damaged) expect((await stores()).aside).toEqual([expect.objectContaining({ json: expect.stringContaining('[0,1,74]') as string })]);
  });
});

describe('opening the storage', () => {
  test.each([
    ['the browser refuses it', 'SecurityError', 'unavailable'],
    ['it fails', 'UnknownError', 'failed'],
    ['the device is full', 'QuotaExceededError', 'full'],
  ])('%s', async (_, name, why) => {
    const { keeper } = tab();
    const spy = vi.spyOn(indexedDB, 'open').mockImplementation(() => { throw new DOMException('made to fail', name); });
    const hand = new Hand(keeper, bookOf([['Waist', '74 cm']]));
    void keeper.begin(hand.book);
    doSteps(hand);
    await vi.waitFor(() => expect(keeper.state).toMatchObject({ state: 'not kept', why, waiting: EDITS.length + 1 }), { interval: 2, timeout: 10_000 });
    spy.mockRestore();
    await Promise.all(hand.promises);
    expect((await tab().keeper.load())!.book).toEqual(hand.book);
  });

  test('an older version of the page holds it up, until it is closed', async () => {
    const older = await openDB('tape-and-tally', 1, {
      upgrade: (database) => {
        database.createObjectStore('books', { keyPath: 'id' });
        database.createObjectStore('journal', { keyPath: ['book', 'seq'] });
        database.createObjectStore('shelf', { keyPath: 'id' });
        database.createObjectStore('aside', { autoIncrement: true }).createIndex('book', 'book');
        database.createObjectStore('templates', { keyPath: 'id' });
      },
    });
    const { keeper } = tab();
    const hand = new Hand(keeper, bookOf([['Waist', '74 cm']]));
    void keeper.begin(hand.book);
    doSteps(hand);
    await vi.waitFor(() => expect(keeper.state).toMatchObject({ state: 'not kept', why: 'blocked', waiting: EDITS.length + 1 }), { interval: 2, timeout: 10_000 });
    older.close();
    await Promise.all(hand.promises);
    expect(keeper.state.state).toBe('kept');
    expect((await tab().keeper.load())!.book).toEqual(hand.book);
  });
});

describe('reading at the start', () => {
  test.each(['books', 'journal', 'shelf'])('%s cannot be read: nothing is changed, and the next try finds all of it', async (store) => {
    const hand = new Hand(tab().keeper, bookOf([['Waist', '74 cm']]));
    await hand.keeper.begin(hand.book);
    await hand.do(typed(4, 'more'));
    const before = await stores();
    const { keeper } = tab();
    const method = store === 'books' ? 'get' : 'getAll';
    const original = IDBObjectStore.prototype[method] as (this: IDBObjectStore, ...given: unknown[]) => IDBRequest;
    const spy = vi.spyOn(IDBObjectStore.prototype, method).mockImplementation(function (this: IDBObjectStore, ...given: unknown[]) {
      if (this.name === store) throw new DOMException('made to fail', 'UnknownError');
      return original.apply(this, given);
    } as never);
    await expect(keeper.load()).rejects.toMatchObject({ why: 'failed' });
    spy.mockRestore();
    expect(await stores()).toEqual(before);
    expect((await keeper.load())!.book).toEqual(hand.book);
  });
});
