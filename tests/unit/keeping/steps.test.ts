import { openDB } from 'idb';
import { describe, expect, test } from 'vitest';
import {
  NO_HISTORY, apply, emptyBook, entryOf, historyAfter, lookBack, record, redo, restoreBookEdit, undo, type Book, type Edit, type Entry, type History, type Step,
} from '../../../src/workbook/index.ts';
import { pruneSteps } from '../../../src/keeping/step-store.ts';
import type { Keeper } from '../../../src/keeping/index.ts';
import { failing, tab, tamper, typed } from './help.ts';

/** Someone at work whose every step is kept, as the desk does it. */
class Worker {
  history: History = NO_HISTORY;
  steps: readonly Step[] = [];
  constructor(readonly keeper: Keeper, public book: Book = emptyBook('a')) {}
  async do(edit: Edit): Promise<void> {
    const applied = apply(edit, this.book);
    const entry = entryOf(edit, this.book, applied, new Date().toISOString());
    this.history = record(this.history, entry);
    await this.#take('done', entry, edit, applied.book);
  }
  async travel(way: 'undone' | 'redone'): Promise<void> {
    const step = (way === 'undone' ? undo : redo)(this.history)!;
    this.history = step.history;
    await this.#take(way, step.entry, step.edit, apply(step.edit, this.book).book);
  }
  async #take(way: Step['way'], entry: Entry, edit: Edit, book: Book): Promise<void> {
    const step: Step = { way, at: way === 'done' ? entry.at : new Date().toISOString(), entry };
    this.steps = [...this.steps, step];
    this.book = book;
    await this.keeper.keep(edit, book, step);
  }
}

async function again(): Promise<{ book: Book; steps: readonly Step[]; keeper: Keeper }> {
  const { keeper } = tab();
  const loaded = await keeper.load('a');
  return { book: loaded!.book, steps: await keeper.steps(), keeper };
}

async function stored(): Promise<{ seq: number; entry: unknown }[]> {
  const database = await openDB('tape-and-tally');
  const all = await database.getAll('history') as { seq: number; entry: unknown }[];
  database.close();
  return all;
}

async function worked(): Promise<Worker> {
  const { keeper } = tab();
  const hand = new Worker(keeper);
  await keeper.begin(hand.book);
  await hand.do(typed(0, '74 cm'));
  await hand.do({ do: 'insertRows', sheet: 1, at: 0, count: 2 });
  await hand.do(typed(5, '98 cm'));
  await hand.travel('undone');
  await hand.travel('undone');
  await hand.travel('redone');
  await keeper.settled();
  return hand;
}

test('what was done is there after the page was closed: to look at, to undo, to redo, to go back to', async () => {
  const hand = await worked();
  await hand.keeper.close();
  const { book, steps } = await again();
  expect(steps).toEqual(hand.steps);
  expect(historyAfter(steps)).toEqual(hand.history);
  expect(lookBack(book, steps)).toEqual(lookBack(hand.book, hand.steps));
  expect(apply(restoreBookEdit(steps, 0, 'then'), book).book).toEqual(emptyBook('a'));
});

test('a snapshot leaves it alone', async () => {
  const { keeper } = tab({ snapshotEdits: 3 });
  const hand = new Worker(keeper);
  await keeper.begin(hand.book);
  for (let row = 0; row < 7; row++) await hand.do(typed(row, `${row}`));
  await keeper.settled();
  await keeper.close();
  expect((await again()).steps).toEqual(hand.steps);
});

test('it goes on growing from one time to the next', async () => {
  const hand = await worked();
  await hand.keeper.close();
  const { book, steps, keeper } = await again();
  const next = new Worker(keeper, book);
  next.history = historyAfter(steps);
  await next.do(typed(9, 'later'));
  await keeper.settled();
  await keeper.close();
  expect((await again()).steps).toEqual([...hand.steps, ...next.steps]);
});

describe('it begins later', () => {
  test('after a gap', async () => {
    const hand = await worked();
    await hand.keeper.keep(typed(1, 'said by nobody'), apply(typed(1, 'said by nobody'), hand.book).book);
    await hand.keeper.settled();
    expect((await again()).steps).toEqual([]);
  });

  test('after what cannot be read', async () => {
    await worked();
    const [, second] = await stored();
    await tamper('history', { ...second, entry: { edit: { do: 'magic' } } });
    // The second step cannot be read; the third was done and undone after it, and then its undoing and redoing lead back to the second.
    expect((await again()).steps).toEqual([]);
  });

  test('where the oldest were dropped: by number, and by weight', async () => {
    const { keeper, database } = tab();
    const hand = new Worker(keeper);
    await keeper.begin(hand.book);
    for (let row = 0; row < 9; row++) await hand.do(typed(row, `${row}`));
    await keeper.settled();
    await pruneSteps(database, 'a', 5);
    expect((await again()).steps).toEqual(hand.steps.slice(-5));
    // Each step of one cell weighs three: itself, the cell, and the cell before.
    await pruneSteps(database, 'a', 5, 9);
    expect((await again()).steps).toEqual(hand.steps.slice(-3));
    await pruneSteps(database, 'b', 0);
    expect(await stored()).toHaveLength(3);
  });
});

test('when it cannot be written, the edits are kept all the same', async () => {
  const { keeper } = tab();
  const hand = new Worker(keeper);
  await keeper.begin(hand.book);
  const trouble = failing('put', 'QuotaExceededError', 'history');
  await hand.do(typed(0, '74 cm'));
  await keeper.settled();
  expect(keeper.state.state).toBe('kept');
  expect(trouble.times).toBeGreaterThan(0);
  trouble.mend();
  await hand.do(typed(1, '98 cm'));
  await keeper.settled();
  await keeper.close();
  const { book, steps } = await again();
  expect(book).toEqual(hand.book);
  expect(steps).toEqual(hand.steps.slice(1));
});

test('a workbook of which something was damaged has no past', async () => {
  const hand = await worked();
  await hand.keeper.close();
  await tamper('journal', { book: 'a', seq: 4, at: '2026-03-01T10:00:00Z', edit: { do: 'magic' } });
  const { steps } = await again();
  expect(steps).toEqual([]);
});

test('storage of the version before has no past and is kept on with', async () => {
  const old = await openDB('tape-and-tally', 1, {
    upgrade(database) {
      database.createObjectStore('books', { keyPath: 'id' });
      database.createObjectStore('journal', { keyPath: ['book', 'seq'] });
      database.createObjectStore('shelf', { keyPath: 'id' });
      database.createObjectStore('aside', { autoIncrement: true }).createIndex('book', 'book');
      database.createObjectStore('templates', { keyPath: 'id' });
    },
  });
  await old.put('journal', { book: 'a', seq: 1, at: '2026-03-01T10:00:00Z', edit: typed(0, '74 cm') });
  await old.put('shelf', { id: 'a', title: '', person: '', changedAt: '2026-03-01T10:00:00Z', seq: 1, writer: 'old' });
  old.close();
  const { keeper } = tab();
  const loaded = await keeper.load('a');
  expect(loaded!.book.sheets[0]!.rows).toEqual([[{ raw: '74 cm' }]]);
  expect(await keeper.steps()).toEqual([]);
});
