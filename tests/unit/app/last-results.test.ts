import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { ResultStore } from '../../../src/keeping/index.ts';
import { KIND, type ChangeSet, type Supervisor } from '../../../src/reckoning/index.ts';
import { Desk } from '../../../src/app/desk.ts';
import { keepLastResults, showLastResults } from '../../../src/app/last-results.ts';
import { bookOf } from '../workbook/help.ts';
import { tab, tamper, typed } from '../keeping/help.ts';

beforeEach(() => { vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] }); });
afterEach(() => { vi.useRealTimers(); });

const changes = (revision: number, value: number): ChangeSet => ({
  revision, whole: true, took: 1,
  sheets: [{ sheet: 1, row: Uint32Array.of(2), col: Uint16Array.of(1), kind: Uint8Array.of(KIND.quantity), number: Float64Array.of(value), unit: Uint8Array.of(0), high: null, text: [] }],
});

/** An engine that answers when the test says so. */
class Engine extends EventTarget {
  state = 'ready';
  revision = 1;
  apply = () => ++this.revision;
  answer(value: number) {
    this.dispatchEvent(Object.assign(new Event('changes'), { changes: changes(this.revision, value) }));
  }
}

async function start(book = bookOf([['Waist', '74 cm'], [], ['Double', '=B1*2']])) {
  const { keeper, database } = tab();
  const store = new ResultStore(database);
  const loaded = await keeper.load();
  const desk = new Desk(loaded?.book ?? book);
  const engine = new Engine();
  desk.attach(engine as unknown as Supervisor, keeper);
  if (loaded) await showLastResults(desk, keeper, store);
  else await keeper.begin(book);
  keepLastResults(desk, keeper, store);
  return { keeper, store, desk, engine };
}

const shown = (desk: Desk) => desk.results.at(1, 2, 1);
/** Long enough for what waits for quiet; then for the storage. */
async function quiet() {
  await vi.advanceTimersByTimeAsync(5_000);
  vi.useRealTimers();
  await new Promise((done) => { setTimeout(done, 20); });
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
}

test('the next start shows what was worked out, before the engine has answered', async () => {
  const first = await start();
  first.engine.answer(1480);
  await quiet();
  const next = await start();
  expect(shown(next.desk)).toMatchObject({ kind: 'quantity', value: 1480 });
  expect(next.desk.waiting).toBe(true);
  expect(next.desk.results.areLast).toBe(true);
  next.engine.answer(1500);
  expect(shown(next.desk)).toMatchObject({ value: 1500 });
  expect(next.desk.results.areLast).toBe(false);
});

test('nothing is shown of another state of the workbook', async () => {
  const first = await start();
  first.engine.answer(1480);
  await quiet();
  first.desk.do(typed(0, 'Hip'));
  await first.keeper.settled();
  const next = await start();
  expect(next.desk.book.sheets[0]!.rows[0]![0]!.raw).toBe('Hip');
  expect(shown(next.desk)).toEqual({ kind: 'empty' });
});

test('results that the engine still owes are not kept as if they were right', async () => {
  const first = await start();
  first.engine.answer(1480);
  first.desk.do(typed(0, 'Hip'));
  await first.keeper.settled();
  await quiet();
  expect(shown((await start()).desk)).toEqual({ kind: 'empty' });
});

test('damaged ones are done without', async () => {
  const first = await start();
  await first.keeper.settled();
  await tamper('results', { book: 'test', seq: first.keeper.at!.seq, results: [{ sheet: 1, row: 'x' }] });
  expect(shown((await start()).desk)).toEqual({ kind: 'empty' });
});
