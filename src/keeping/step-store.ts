/**
 * What was done, kept beside the journal for looking and going back after the
 * page was closed. The workbook does not depend on it: it is written after an
 * edit is kept, and when it cannot be written or read, the past is forgotten
 * and nothing else.
 */
import * as v from 'valibot';
import type { Edit, Entry, Step } from '../workbook/index.ts';
import type { Database, StoredStep } from './database.ts';
import { areaSchema, readEdit } from './read-edit.ts';

/** A long week of work, and no more cells than a page holds with ease. */
const MOST_STEPS = 3_000;
const MOST_CELLS = 200_000;

const of = (book: string, from: number, to: number): IDBKeyRange => IDBKeyRange.bound([book, from], [book, to]);

function cellsIn(edit: Edit): number {
  if (edit.do === 'setCells') return edit.cells.length;
  if (edit.do === 'many') return edit.edits.reduce((sum, part) => sum + cellsIn(part), 0);
  // A number a row: a few of them weigh what a cell does.
  if (edit.do === 'orderRows') return Math.ceil(edit.order.length / 8);
  return edit.do === 'addSheet' ? edit.sheet.rows.reduce((sum, row) => sum + (row?.length ?? 0), 1) : 1;
}

export function storedStep(book: string, seq: number, { way, at, entry }: Step): StoredStep {
  if (way !== 'done') return { book, seq, at, way, weight: 1, entry: null };
  const { edit, inverse, label, area } = entry;
  return { book, seq, at, way, weight: 1 + cellsIn(edit) + cellsIn(inverse), entry: { edit, inverse, label, area } };
}

/** @throws {KeepingTrouble} */
export async function writeSteps(database: Database, steps: readonly StoredStep[]): Promise<void> {
  if (steps.length === 0) return;
  await database.write(['history'], async (transaction) => {
    for (const step of steps) await transaction.objectStore('history').put(step);
  });
}

/**
 * Drops the oldest steps of a workbook beyond what is kept.
 *
 * @throws {KeepingTrouble}
 */
export async function pruneSteps(database: Database, book: string, most = MOST_STEPS, cells = MOST_CELLS): Promise<void> {
  await database.write(['history'], async (transaction) => {
    const store = transaction.objectStore('history');
    const whole = IDBKeyRange.bound([book, -Infinity], [book, Infinity, Infinity]);
    let [count, weight] = [0, 0];
    for (let at = await store.index('weight').openKeyCursor(whole, 'prev'); at; at = await at.continue()) {
      const [, seq, own] = at.key;
      count += 1;
      weight += own;
      if (count <= most && weight <= cells) continue;
      await store.delete(of(book, -Infinity, seq));
      return;
    }
  });
}

const entryShape = v.object({ edit: v.unknown(), inverse: v.unknown(), label: v.string(), area: v.nullable(areaSchema) });

function readEntry(stored: unknown, at: string): Entry | null {
  const read = v.safeParse(entryShape, stored);
  if (!read.success) return null;
  const [edit, inverse] = [readEdit(read.output.edit), readEdit(read.output.inverse)];
  return edit && inverse ? { edit, inverse, label: read.output.label, at, area: read.output.area } : null;
}

/**
 * The steps that lead to the edit `seq` of a workbook without a gap, in order.
 *
 * @throws {KeepingTrouble}
 */
export async function readSteps(database: Database, book: string, seq: number): Promise<readonly Step[]> {
  const stored = await database.read(['history'], (transaction) => transaction.objectStore('history').getAll(of(book, -Infinity, seq)));
  let first = stored.length;
  while (first > 0 && stored[first - 1]!.seq === seq - (stored.length - first)) first--;
  return joined(stored.slice(first));
}

/** Undoing and redoing find the step of which they speak; where it is not there any more, what came before is of no use. */
function joined(stored: readonly StoredStep[]): readonly Step[] {
  let steps: Step[] = [];
  let [done, undone]: [Entry[], Entry[]] = [[], []];
  const forget = (): void => { [steps, done, undone] = [[], [], []]; };
  for (const { way, at, entry: given } of stored) {
    const entry = way === 'done' ? readEntry(given, at) : way === 'undone' ? done.pop() : undone.pop();
    if (!entry) {
      forget();
      continue;
    }
    if (way === 'done') undone = [];
    (way === 'undone' ? undone : done).push(entry);
    steps.push({ way, at, entry });
  }
  return steps;
}
