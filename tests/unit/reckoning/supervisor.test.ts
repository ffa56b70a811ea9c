import { afterEach, describe, expect, test, vi } from 'vitest';
import { Supervisor, WorkerLost, type ChangeSet, type Limits, type Reckoner, type SupervisorState } from '../../../src/reckoning/index.ts';
import type { Book, Effect } from '../../../src/workbook/types.ts';
import { CARDS, FakeWorker, RecordingReckoner } from './fake-worker.ts';

const book = (title: string): Book => ({
  id: 'b', title, person: '', settings: { show: 'own', inchStep: 16 },
  sheets: [{ id: 1, name: 'Fit', rows: [], widths: {} }], names: [], nextSheetId: 2,
});
const typed = (raw: string): Effect => ({ do: 'cells', sheet: 1, cells: [{ row: 0, col: 0, raw }] });
const cell = (row: number) => ({ sheet: 1, row, col: 0 });

interface Setup {
  /** The way of each worker, in the order in which they are started. The last one is used for all later ones. */
  readonly ways?: (FakeWorker['wayOf'])[];
  readonly reckoner?: () => Reckoner;
  readonly start?: () => Worker;
  /** For tests in which silence is the fault. In the others a slow machine must not look like one. */
  readonly impatient?: boolean;
}

const limitsOf = (milliseconds: number): Limits => ({
  start: milliseconds, open: milliseconds, apply: milliseconds, question: milliseconds, tryOut: milliseconds, sound: 20_000,
});

const running: Supervisor[] = [];
afterEach(() => { for (const each of running.splice(0)) each.stop(); });

function setUp({ ways = [() => 'pass'], reckoner: make, start, impatient = false }: Setup = {}) {
  const reckoners: RecordingReckoner[] = [];
  const workers: FakeWorker[] = [];
  const states: SupervisorState[] = [];
  const changes: ChangeSet[] = [];
  const desk = { book: book('one') };
  const supervisor = new Supervisor({
    book: () => desk.book,
    limits: limitsOf(impatient ? 400 : 20_000),
    start: start ?? (() => {
      const reckoner = (make?.() ?? new RecordingReckoner()) as RecordingReckoner;
      reckoners.push(reckoner);
      const worker = new FakeWorker(reckoner, ways[Math.min(workers.length, ways.length - 1)]);
      workers.push(worker);
      return worker as unknown as Worker;
    }),
  });
  running.push(supervisor);
  supervisor.addEventListener('state', ({ state }) => states.push(state));
  supervisor.addEventListener('changes', (event) => changes.push(event.changes));
  const until = (state: SupervisorState) => new Promise<void>((resolve) => {
    if (supervisor.state === state) resolve();
    else {
      const heard = new AbortController();
      supervisor.addEventListener('state', (event) => {
        if (event.state !== state) return;
        heard.abort();
        resolve();
      }, { signal: heard.signal });
    }
  });
  return { supervisor, reckoners, workers, states, changes, desk, until };
}

const revisions = (changes: readonly ChangeSet[]) => changes.map(({ revision }) => revision);
const ascending = (numbers: readonly number[]) => numbers.every((n, i) => i === 0 || n > numbers[i - 1]!);

describe('when all goes well', () => {
  test('the worker is greeted, then opens the workbook, then is ready', async () => {
    const { supervisor, reckoners, states, changes, until } = setUp();
    expect(supervisor.state).toBe('starting');
    supervisor.open();
    await until('ready');
    expect(reckoners[0]!.told).toEqual(['catalogue', 'open one']);
    expect(states).toEqual(['ready']);
    expect(changes).toHaveLength(1);
    expect(changes[0]!.whole).toBe(true);
    expect(await supervisor.catalogue()).toEqual(CARDS);
    expect(reckoners[0]!.told).toHaveLength(2);
  });

  test('the catalogue can be asked for before the worker is there', async () => {
    const { supervisor } = setUp();
    supervisor.open();
    expect(await supervisor.catalogue()).toEqual(CARDS);
  });

  test('an example is worked out for any workbook, and another that is opened meanwhile does not undo it', async () => {
    const { supervisor, reckoners, until } = setUp();
    supervisor.open();
    await until('ready');
    const asked = supervisor.example('=1 cm');
    supervisor.open();
    expect(await asked).toEqual({ results: [[{ kind: 'text', text: '=1 cm' }]], height: 1, width: 1 });
    expect(reckoners[0]!.told.filter((call) => call.startsWith('example'))).toEqual(['example =1 cm']);
  });

  test('an edit is one apply, and its changes answer its revision', async () => {
    const { supervisor, reckoners, changes, until } = setUp();
    supervisor.open();
    await until('ready');
    const revision = supervisor.apply([typed('1')]);
    await until('working');
    await until('ready');
    expect(reckoners[0]!.effects).toEqual([[typed('1')]]);
    expect(changes.at(-1)!.revision).toBe(revision);
  });

  test('edits that arrive while it is busy go as one, in order', async () => {
    const { supervisor, reckoners, workers, changes, until } = setUp({ ways: [(_, method) => method === 'apply' ? 'hold' : 'pass'] });
    supervisor.open();
    await until('ready');
    supervisor.apply([typed('1')]);
    await vi.waitFor(() => expect(workers[0]!.holds).toBe(1));
    supervisor.apply([typed('2'), typed('3')]);
    const last = supervisor.apply([typed('4')]);
    workers[0]!.release();
    await vi.waitFor(() => expect(workers[0]!.holds).toBe(1));
    workers[0]!.release();
    await until('ready');
    expect(reckoners[0]!.effects).toEqual([[typed('1')], [typed('2'), typed('3'), typed('4')]]);
    expect(changes.at(-1)!.revision).toBe(last);
  });

  test('a listener of `ready` may edit at once', async () => {
    const { supervisor, reckoners, until } = setUp();
    supervisor.addEventListener('state', ({ state }) => { if (state === 'ready' && reckoners[0]!.effects.length === 0) supervisor.apply([typed('1')]); });
    supervisor.open();
    await until('working');
    await until('ready');
    expect(reckoners[0]!.effects).toEqual([[typed('1')]]);
  });

  test('a question is answered from the workbook as it was when asked, or newer', async () => {
    const { supervisor, reckoners, until } = setUp();
    supervisor.open();
    await until('ready');
    const before = supervisor.working(cell(1));
    supervisor.apply([typed('1')]);
    const after = supervisor.working(cell(2));
    expect((await before).result).toEqual({ kind: 'quantity', value: 1, unit: 'cm' });
    await after;
    expect(reckoners[0]!.told.slice(2)).toEqual(['apply 1', 'working 1', 'working 2']);
  });

  test('neither edits nor questions starve the others', async () => {
    const { supervisor, reckoners, until } = setUp();
    supervisor.open();
    await until('ready');
    // Each answered edit brings the next one, as someone typing fast would.
    let more = 6;
    supervisor.addEventListener('changes', () => { if (more-- > 0) supervisor.apply([typed('again')]); });
    supervisor.apply([typed('1')]);
    await Promise.all([1, 2, 3].map((row) => supervisor.working(cell(row))));
    await until('ready');
    expect(reckoners[0]!.told.slice(2, 8)).toEqual(['apply 1', 'working 1', 'apply 1', 'working 2', 'apply 1', 'working 3']);
    expect(reckoners[0]!.told.filter((told) => told.startsWith('apply'))).toHaveLength(7);
  });

  test('every question comes through', async () => {
    const { supervisor } = setUp();
    supervisor.open();
    expect(await supervisor.dependents([cell(1)])).toEqual([]);
    expect(await supervisor.tryOut([{ label: 'a', values: [] }, { label: 'b', values: [] }], [])).toMatchObject({ results: [[], []] });
  });
});

describe('when the worker fails', () => {
  test.each(['lose', 'die', 'error', 'messageerror'] as const)('the answer to an edit: %s', async (way) => {
    const { supervisor, reckoners, workers, states, changes, desk, until } = setUp({ ways: [(_, method) => method === 'apply' ? way : 'pass', () => 'pass'], impatient: way === 'lose' || way === 'die' });
    supervisor.open();
    await until('ready');
    desk.book = book('two');
    const revision = supervisor.apply([typed('1')]);
    await until('restarting');
    await until('ready');
    expect(workers).toHaveLength(2);
    expect(workers[0]!.terminated).toBe(true);
    expect(states).toEqual(['ready', 'working', 'restarting', 'ready']);
    expect(reckoners[1]!.told).toEqual(['catalogue', 'open two']);
    expect(changes.at(-1)!.whole).toBe(true);
    expect(changes.at(-1)!.revision).toBeGreaterThanOrEqual(revision);
    expect(ascending(revisions(changes))).toBe(true);
  });

  test.each(['lose', 'error'] as const)('the answer to a question: %s; it is asked again of the next worker', async (way) => {
    const { supervisor, workers } = setUp({ ways: [(_, method) => method === 'working' ? way : 'pass', () => 'pass'], impatient: way === 'lose' });
    supervisor.open();
    const answer = await supervisor.working(cell(7));
    expect(answer.result).toEqual({ kind: 'quantity', value: 7, unit: 'cm' });
    expect(workers).toHaveLength(2);
  });

  test('it dies while idle', async () => {
    const { supervisor, workers, reckoners, until } = setUp();
    supervisor.open();
    await until('ready');
    workers[0]!.fail();
    expect(supervisor.state).toBe('restarting');
    await until('ready');
    expect(reckoners[1]!.told).toEqual(['catalogue', 'open one']);
    expect(await supervisor.working(cell(1))).toBeDefined();
  });

  test('edits made while it restarts are in the workbook it opens, and are not told twice', async () => {
    const { supervisor, workers, reckoners, desk, until } = setUp();
    supervisor.open();
    await until('ready');
    workers[0]!.fail();
    desk.book = book('two');
    supervisor.apply([typed('1')]);
    await until('ready');
    expect(reckoners[1]!.told).toEqual(['catalogue', 'open two']);
  });

  test('a late answer of an ended worker is dropped', async () => {
    const { supervisor, workers, changes, until } = setUp({ ways: [(_, method) => method === 'apply' ? 'hold' : 'pass', () => 'pass'], impatient: true });
    supervisor.open();
    await until('ready');
    supervisor.apply([typed('1')]);
    await until('restarting');
    await until('ready');
    const count = changes.length;
    workers[0]!.release();
    await new Promise((resolve) => setTimeout(resolve, 20));
    expect(changes).toHaveLength(count);
    expect(supervisor.state).toBe('ready');
  });

  test('a doubled answer counts once', async () => {
    const { supervisor, changes, until } = setUp({ ways: [() => 'double'] });
    supervisor.open();
    await until('ready');
    supervisor.apply([typed('1')]);
    await until('working');
    await until('ready');
    expect(changes).toHaveLength(2);
    expect(ascending(revisions(changes))).toBe(true);
  });

  test('it opens at the third start', async () => {
    const { supervisor, workers, states, until } = setUp({ ways: [() => 'lose', (_, method) => method === 'open' ? 'die' : 'pass', () => 'pass'], impatient: true });
    supervisor.open();
    await until('ready');
    expect(workers).toHaveLength(3);
    expect(states).toEqual(['restarting', 'ready']);
  });

  test('a good worker, then two restarts in vain: it stops, and what was asked is rejected with a sentence', async () => {
    const { supervisor, workers, states, until } = setUp({ ways: [(_, method) => method === 'working' ? 'die' : 'pass', () => 'error', (_, method) => method === 'open' ? 'lose' : 'pass'], impatient: true });
    supervisor.open();
    await until('ready');
    const asked = [supervisor.working(cell(1)), supervisor.working(cell(2))];
    const ends = await Promise.allSettled(asked);
    for (const end of ends) {
      expect(end.status).toBe('rejected');
      expect((end as PromiseRejectedResult).reason).toBeInstanceOf(WorkerLost);
      expect((end as PromiseRejectedResult).reason.sentence).toMatch(/Try again/);
    }
    expect(workers).toHaveLength(3);
    expect(workers.every(({ terminated }) => terminated)).toBe(true);
    expect(states).toEqual(['ready', 'working', 'restarting', 'stopped']);
    await expect(supervisor.working(cell(3))).rejects.toBeInstanceOf(WorkerLost);
  });

  test('after it stopped, edits go on and `open` starts it again with them', async () => {
    let broken = true;
    const { supervisor, reckoners, desk, until } = setUp({ ways: [() => broken ? 'die' : 'pass'], impatient: true });
    supervisor.open();
    await until('stopped');
    desk.book = book('two');
    const revision = supervisor.apply([typed('1')]);
    broken = false;
    expect(supervisor.open()).toBeGreaterThan(revision);
    await until('ready');
    expect(reckoners.at(-1)!.told).toEqual(['catalogue', 'open two']);
  });

  test('a worker that cannot even be made', async () => {
    let made = 0;
    const { supervisor, until } = setUp({ start: () => { made++; throw new TypeError('blocked by policy'); } });
    supervisor.open();
    await until('stopped');
    expect(made).toBe(3);
    await expect(supervisor.catalogue()).rejects.toBeInstanceOf(WorkerLost);
  });

  test('a worker that falls over by itself each time does not restart for ever', async () => {
    const { supervisor, workers, until } = setUp();
    supervisor.open();
    await until('ready');
    for (let i = 0; i < 2; i++) {
      workers.at(-1)!.fail();
      await until('ready');
    }
    workers.at(-1)!.fail();
    expect(supervisor.state).toBe('stopped');
    expect(workers).toHaveLength(3);
  });

  test('a question that kills each worker is given up after two, and the rest goes on', async () => {
    const { supervisor, workers, until } = setUp({ ways: [(_, method) => method === 'tryOut' ? 'die' : 'pass'], impatient: true });
    supervisor.open();
    await until('ready');
    const deadly = supervisor.tryOut([], []);
    const harmless = supervisor.working(cell(4));
    await expect(deadly).rejects.toBeInstanceOf(WorkerLost);
    expect((await harmless).result).toEqual({ kind: 'quantity', value: 4, unit: 'cm' });
    expect(workers).toHaveLength(3);
    expect(supervisor.state).not.toBe('stopped');
  });

  test('edits that kill the worker each time never stop the results', async () => {
    const { supervisor, workers, changes, until } = setUp({ ways: [(_, method) => method === 'apply' ? 'error' : 'pass'] });
    supervisor.open();
    await until('ready');
    for (let i = 0; i < 5; i++) {
      const revision = supervisor.apply([typed(String(i))]);
      await until('restarting');
      await until('ready');
      expect(changes.at(-1)!.revision).toBeGreaterThanOrEqual(revision);
    }
    expect(workers).toHaveLength(6);
  });

  test('an error thrown inside a question reaches who asked; the worker lives', async () => {
    class Refusing extends RecordingReckoner {
      override dependents(): never {
        throw new RangeError('no such sheet');
      }
    }
    const { supervisor, workers, until } = setUp({ reckoner: () => new Refusing() });
    supervisor.open();
    await until('ready');
    await expect(supervisor.dependents([])).rejects.toThrow('no such sheet');
    await supervisor.working(cell(1));
    expect(workers).toHaveLength(1);
  });

  test('an error thrown inside a try-out has the workbook opened anew', async () => {
    class Refusing extends RecordingReckoner {
      override tryOut(): never {
        throw new RangeError('half way');
      }
    }
    const { supervisor, reckoners, changes, until } = setUp({ reckoner: () => new Refusing() });
    supervisor.open();
    await until('ready');
    await expect(supervisor.tryOut([], [])).rejects.toThrow('half way');
    await until('ready');
    expect(reckoners).toHaveLength(1);
    expect(reckoners[0]!.told.filter((told) => told === 'open one')).toHaveLength(2);
    expect(ascending(revisions(changes))).toBe(true);
  });

  test('an error thrown inside an edit has another worker started', async () => {
    class Refusing extends RecordingReckoner {
      override apply(): never {
        throw new RangeError('half way');
      }
    }
    const { supervisor, workers, until } = setUp({ reckoner: () => new Refusing() });
    supervisor.open();
    await until('ready');
    supervisor.apply([typed('1')]);
    await until('restarting');
    await until('ready');
    expect(workers).toHaveLength(2);
  });
});

describe('another workbook', () => {
  test('answers and questions about the one before are dropped', async () => {
    const { supervisor, workers, changes, desk, until } = setUp({ ways: [(_, method) => method === 'apply' ? 'hold' : 'pass'] });
    supervisor.open();
    await until('ready');
    supervisor.apply([typed('1')]);
    await until('working');
    const asked = supervisor.working(cell(1));
    desk.book = book('two');
    const opened = supervisor.open();
    await expect(asked).rejects.toBeInstanceOf(WorkerLost);
    await vi.waitFor(() => expect(workers[0]!.holds).toBe(1));
    workers[0]!.release();
    await until('ready');
    expect(workers).toHaveLength(1);
    expect(revisions(changes).filter((revision) => revision > changes[0]!.revision && revision < opened)).toEqual([]);
    expect(changes.at(-1)!.whole).toBe(true);
  });

  test('stop and open in one turn', async () => {
    const { supervisor, workers, reckoners, until } = setUp();
    supervisor.open();
    await until('ready');
    supervisor.apply([typed('1')]);
    await until('working');
    supervisor.stop();
    supervisor.open();
    await until('ready');
    expect(workers).toHaveLength(2);
    expect(workers[0]!.terminated).toBe(true);
    expect(reckoners[1]!.told).toEqual(['catalogue', 'open one']);
  });
});
