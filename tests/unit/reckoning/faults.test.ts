/**
 * Every fault at every message to and from the worker. No edit is lost, because
 * the worker holds none: the next one gets the workbook as it is. The page says
 * what is the matter while it lasts. The table in DEVELOPERS.md is of this.
 */
import { nothing } from 'lit';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { banner, engineInWords } from '../../../src/app/banner.ts';
import type { Desk } from '../../../src/app/desk.ts';
import { Supervisor, type ChangeSet, type Reckoner, type SupervisorState } from '../../../src/reckoning/index.ts';
import { apply, emptyBook, type Book } from '../../../src/workbook/index.ts';
import { FakeWorker, RecordingReckoner } from './fake-worker.ts';

const METHODS = ['catalogue', 'open', 'apply', 'working', 'dependents', 'tryOut', 'example', 'inputsOf'] as const;
type Method = typeof METHODS[number];
const FAULTS = ['lost', 'late', 'doubled', 'thrown inside', 'the worker falls over', 'not readable'] as const;
type Fault = typeof FAULTS[number];

const WAYS: Readonly<Record<Exclude<Fault, 'thrown inside'>, ReturnType<FakeWorker['wayOf']>>> = {
  lost: 'lose', late: 'hold', doubled: 'double', 'the worker falls over': 'error', 'not readable': 'messageerror',
};
const QUESTIONS: readonly Method[] = ['working', 'dependents', 'tryOut', 'example', 'inputsOf'];

const running: Supervisor[] = [];
afterEach(() => { for (const each of running.splice(0)) each.stop(); });

/** A page whose first worker has the fault at one call; the others are sound. */
function page(method: Method, fault: Fault) {
  let book: Book = emptyBook('a');
  const workers: FakeWorker[] = [];
  const reckoners: RecordingReckoner[] = [];
  const states: SupervisorState[] = [];
  const changes: ChangeSet[] = [];
  const silent = fault === 'lost' || fault === 'late';
  const limit = silent ? 250 : 20_000;
  const supervisor = new Supervisor({
    book: () => book,
    limits: { start: limit, open: limit, apply: limit, question: limit, tryOut: limit, sound: 20_000 },
    start: () => {
      const first = workers.length === 0;
      const reckoner = new RecordingReckoner();
      if (first && fault === 'thrown inside') Object.assign(reckoner, { [method]: () => { throw new Error('made to fail'); } } satisfies Partial<Record<keyof Reckoner, unknown>>);
      const worker = new FakeWorker(reckoner, (_, called) => first && fault !== 'thrown inside' && called === method ? WAYS[fault] : 'pass');
      reckoners.push(reckoner);
      workers.push(worker);
      return worker as unknown as Worker;
    },
  });
  running.push(supervisor);
  supervisor.addEventListener('state', ({ state }) => states.push(state));
  supervisor.addEventListener('changes', (event) => changes.push(event.changes));
  return {
    supervisor, workers, reckoners, states, changes,
    type: (raw: string) => {
      const applied = apply({ do: 'setCells', sheet: 1, cells: [{ row: 0, col: 0, cell: { raw } }] }, book);
      book = applied.book;
      return supervisor.apply(applied.effects);
    },
    ask: (): Promise<unknown> => {
      const cell = { sheet: 1, row: 0, col: 0 };
      switch (method) {
        case 'dependents': return supervisor.dependents([cell]);
        case 'tryOut': return supervisor.tryOut([{ label: 'a', values: [] }], []);
        case 'inputsOf': return supervisor.inputsOf(cell);
        case 'example': return supervisor.example('=1');
        default: return supervisor.working(cell);
      }
    },
    ready: () => vi.waitFor(() => expect(supervisor.state).toBe('ready'), { interval: 2, timeout: 15_000 }),
    lastBook: () => reckoners.at(-1)!.books.at(-1)!,
    get book() { return book; },
  };
}

const pageOf = (state: SupervisorState): Desk => ({ reading: null, setAside: 0, took: 3, keepState: { state: 'kept', at: null }, engine: { state } }) as unknown as Desk;

describe.each(METHODS)('the answer to %s', (method) => {
  test.each(FAULTS)('%s', async (fault) => {
    const at = page(method, fault);
    const { supervisor, states, changes } = at;
    supervisor.open();
    at.type('one');
    let answer: Promise<PromiseSettledResult<unknown>[]> | null = null;
    if (QUESTIONS.includes(method)) answer = Promise.allSettled([at.ask()]);
    at.type('two');
    await at.ready();
    const revision = at.type('three');
    await vi.waitFor(() => expect(changes.at(-1)!.revision).toBeGreaterThanOrEqual(revision), { interval: 2, timeout: 15_000 });
    await at.ready();

    // All that was typed is worked out, by whichever worker is there now, and in order.
    const told = at.reckoners.at(-1)!;
    const last = told.effects.at(-1)?.at(-1);
    const raw = last?.do === 'cells' ? last.cells[0]!.raw : at.lastBook().sheets[0]!.rows[0]![0]!.raw;
    expect(raw).toBe('three');
    expect(changes.every((change, i) => i === 0 || change.revision > changes[i - 1]!.revision), 'no answer counts twice, none out of turn').toBe(true);

    const harmless = fault === 'doubled' || (fault === 'thrown inside' && QUESTIONS.includes(method));
    expect(at.workers.length > 1, 'another worker was needed').toBe(!harmless);
    if (!harmless) {
      expect(states).toContain('restarting');
      expect(at.workers[0]!.terminated).toBe(true);
    }
    if (answer) {
      const [end] = await answer;
      // Asked again of the next worker; what fails by itself is answered with why.
      expect(end!.status).toBe(fault === 'thrown inside' ? 'rejected' : 'fulfilled');
    }
    // What comes after all does not disturb.
    const count = changes.length;
    at.workers[0]!.release();
    await new Promise((resolve) => { setTimeout(resolve, 10); });
    expect(changes.length).toBe(count);
    expect(supervisor.state).toBe('ready');
  });
});

test('the page says how it stands, at every state', () => {
  expect(engineInWords(pageOf('restarting'))).toBe('Starting the sums again…');
  expect(engineInWords(pageOf('working'))).toBe('Working it out…');
  for (const state of ['starting', 'ready', 'working'] as const) expect(banner(pageOf(state), () => undefined, null)).toBe(nothing);
  const said = (state: SupervisorState): string => (banner(pageOf(state), () => undefined, null) as { strings: readonly string[] }).strings.join('');
  expect(said('restarting')).toMatch(/being started again\. What you type is kept/);
  expect(said('stopped')).toMatch(/cannot be worked out just now\. Nothing typed is lost\.[\s\S]*Try again/);
});
