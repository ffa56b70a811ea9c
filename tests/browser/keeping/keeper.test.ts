import { expect, waitUntil } from '@open-wc/testing';
import { deleteDB, openDB } from 'idb';
import { Database, Keeper, KeepingTrouble } from '../../../src/keeping/index.ts';
import { apply, emptyBook, type Book, type Edit } from '../../../src/workbook/index.ts';

const NAME = 'tape-and-tally under test';
const typed = (row: number, raw: string): Edit => ({ do: 'setCells', sheet: 1, cells: [{ row, col: 0, cell: { raw } }] });

const open: Keeper[] = [];
const tab = (options = {}) => {
  const keeper = new Keeper(new Database({ name: NAME }), { snapshotQuiet: 2 ** 30, retry: [5, 20], ...options });
  open.push(keeper);
  return keeper;
};

/** Makes edits and hands each over. */
class Hand {
  constructor(readonly keeper: Keeper, public book: Book = emptyBook('a')) {}
  do(edit: Edit): Promise<void> {
    this.book = apply(edit, this.book).book;
    return this.keeper.keep(edit, this.book);
  }
}

describe('in the browser\'s own storage', () => {
  beforeEach(() => deleteDB(NAME));
  afterEach(async () => {
    await Promise.all(open.splice(0).map((keeper) => keeper.close()));
    await deleteDB(NAME);
  });

  it('what was called kept is there in another connection at once', async () => {
    const hand = new Hand(tab());
    for (let row = 0; row < 20; row++) {
      await hand.do(row % 5 === 4 ? { do: 'insertRows', sheet: 1, at: 0, count: 1 } : typed(row, `${row} cm`));
      expect(hand.keeper.state.state).to.equal('kept');
      const found = await tab().load();
      expect(found).to.deep.equal({ book: hand.book, problems: [] });
    }
  });

  it('a snapshot takes the journal\'s place', async () => {
    const hand = new Hand(tab({ snapshotEdits: 10 }));
    for (let row = 0; row < 25; row++) await hand.do(typed(row, String(row)));
    await hand.keeper.settled();
    const raw = await openDB(NAME);
    await waitUntil(async () => await raw.count('journal') < 10);
    raw.close();
    expect((await tab().load())!.book).to.deep.equal(hand.book);
  });

  it('the storage is cleared under its hands: the workbook is written whole', async () => {
    const hand = new Hand(tab());
    await hand.do(typed(0, 'before'));
    await deleteDB(NAME);
    await hand.do(typed(1, 'after'));
    expect((await tab().load())!.book).to.deep.equal(hand.book);
  });

  it('a newer version of the page is let through, and this one says that it can keep no more', async () => {
    const hand = new Hand(tab());
    await hand.do(typed(0, 'before'));
    const newer = await openDB(NAME, 99);
    void hand.do(typed(1, 'after'));
    await waitUntil(() => hand.keeper.state.state === 'not kept');
    expect(hand.keeper.state).to.include({ why: 'newer', waiting: 1 });
    newer.close();
  });

  it('a transaction that the browser gives up writes nothing, and its reason comes through', async () => {
    const database = new Database({ name: NAME });
    const error = await database.write(['templates'], async (transaction) => {
      await transaction.objectStore('templates').put({ id: 'x', savedAt: '', template: null });
      transaction.abort();
    }).catch((thrown: unknown) => thrown);
    expect(error).to.be.instanceOf(KeepingTrouble);
    expect(await database.read(['templates'], (transaction) => transaction.objectStore('templates').getAll())).to.deep.equal([]);
    await database.close();
  });

  it('a large workbook with a long journal loads, and an edit of it is kept without the whole being written', async () => {
    let book = emptyBook('large');
    const cells = Array.from({ length: 50_000 }, (_, i) => ({ row: Math.floor(i / 20), col: i % 20, cell: { raw: i % 3 ? `${i} mm` : `=A${i % 97 + 1} * 2` } }));
    book = apply({ do: 'setCells', sheet: 1, cells }, book).book;
    const hand = new Hand(tab({ snapshotEdits: Infinity }), book);
    await hand.keeper.begin(book);
    for (let i = 0; i < 10_000; i++) void hand.do(typed(i % 2_000, `${i} cm`));
    await hand.keeper.settled();
    let start = performance.now();
    const found = await tab().load();
    const loading = performance.now() - start;
    expect(found!.problems).to.deep.equal([]);
    expect(JSON.stringify(found!.book)).to.equal(JSON.stringify(hand.book));
    start = performance.now();
    await hand.do(typed(0, 'one more'));
    console.log(`50,000 cells and 10,000 edits load in ${loading.toFixed(0)} ms; one edit is kept in ${(performance.now() - start).toFixed(1)} ms`);
    const raw = await openDB(NAME);
    expect(await raw.count('journal')).to.equal(10_001);
    raw.close();
  });
});
