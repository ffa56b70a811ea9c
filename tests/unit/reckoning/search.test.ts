/** A search beside edits: it never holds one up, and its answer is never about a sheet that is no more. */
import { afterEach, expect, test, vi } from 'vitest';
import { Supervisor, type BackAnswer, type BackSearch } from '../../../src/reckoning/index.ts';
import { apply, emptyBook, type Book } from '../../../src/workbook/index.ts';
import { FakeWorker, RecordingReckoner } from './fake-worker.ts';

const cell = { sheet: 1, row: 0, col: 0 };
const SEARCH: BackSearch = { result: cell, input: cell, wanted: { value: 1, unit: '' }, bound: 'exactly', unit: '', low: 0, high: 1, now: 0, step: null };

/** Searches until it is told to stop. */
class Searcher extends RecordingReckoner {
  #end: ((answer: BackAnswer | null) => void) | null = null;
  override workBack(): Promise<BackAnswer | null> {
    this.told.push('workBack');
    return new Promise((done) => { this.#end = done; });
  }
  override cancelSearch(): void {
    super.cancelSearch();
    this.#end?.(null);
  }
}

const running: Supervisor[] = [];
afterEach(() => { for (const each of running.splice(0)) each.stop(); });

function page(reckoners: readonly RecordingReckoner[], ways: readonly ConstructorParameters<typeof FakeWorker>[1][] = [], tryOut = 20_000) {
  let book: Book = emptyBook('a');
  let count = 0;
  const supervisor = new Supervisor({ book: () => book, limits: { tryOut }, start: () => new FakeWorker(reckoners[Math.min(count, reckoners.length - 1)]!, ways[count++]) as unknown as Worker });
  running.push(supervisor);
  supervisor.open();
  return {
    supervisor,
    type: (raw: string) => {
      const applied = apply({ do: 'setCells', sheet: 1, cells: [{ row: 0, col: 0, cell: { raw } }] }, book);
      book = applied.book;
      return supervisor.apply(applied.effects);
    },
    told: (what: string) => vi.waitFor(() => expect(reckoners.flatMap(({ told }) => told)).toContain(what), { interval: 2, timeout: 15_000 }),
  };
}

test('an edit ends the search that is under way and is worked out at once', async () => {
  const { supervisor, type, told } = page([new Searcher()]);
  const answer = supervisor.workBack(SEARCH);
  await told('workBack');
  type('two');
  expect(await answer).toBeNull();
  await told('apply 1');
});

test('an edit ends a search that has not begun', async () => {
  const { supervisor, type } = page([new Searcher()]);
  const answer = supervisor.workBack(SEARCH);
  type('two');
  expect(await answer).toBeNull();
});

test('it can be cancelled, and the next one begins', async () => {
  const reckoner = new Searcher();
  const { supervisor, told } = page([reckoner]);
  const first = supervisor.workBack(SEARCH);
  await told('workBack');
  supervisor.cancelSearch();
  expect(await first).toBeNull();
  reckoner.told.length = 0;
  const second = supervisor.workBack(SEARCH);
  await told('workBack');
  supervisor.cancelSearch();
  expect(await second).toBeNull();
});

test('an edit that follows a search is told to no search', async () => {
  const reckoner = new RecordingReckoner();
  const { supervisor, type, told } = page([reckoner]);
  expect(await supervisor.workBack(SEARCH)).toMatchObject({ why: 'nothing' });
  type('two');
  await told('apply 1');
  expect(reckoner.told).not.toContain('cancelSearch');
});

test.each(['lose', 'error', 'die'] as const)('after a worker that fails (%s) it is asked of the next', async (way) => {
  const { supervisor } = page([new RecordingReckoner(), new RecordingReckoner()], [(_, method) => (method === 'workBack' ? way : 'pass')], 250);
  expect(await supervisor.workBack(SEARCH)).toMatchObject({ why: 'nothing' });
});
