/**
 * Everything that was done to the workbook, in order: edits, and also each
 * undoing and redoing. From the workbook as it is now one can walk back through
 * it to the workbook as it was at any time.
 */
import { areaName, cellName } from '../formula/index.ts';
import { apply } from './apply.ts';
import { cellAt, sheetById } from './book.ts';
import { sameCell } from './cells.ts';
import { NO_HISTORY, record } from './history.ts';
import type { Entry, History } from './history.ts';
import { placeBefore } from './places.ts';
import type { Area, Book, Cell, CellAddress, Edit } from './types.ts';

export interface Step {
  readonly way: 'done' | 'undone' | 'redone';
  /** When, as an ISO 8601 time. */
  readonly at: string;
  readonly entry: Entry;
}

/** What was applied to the workbook. */
export const appliedBy = ({ way, entry }: Step): Edit => (way === 'undone' ? entry.inverse : entry.edit);
/** What takes it back. */
export const takesBack = ({ way, entry }: Step): Edit => (way === 'undone' ? entry.edit : entry.inverse);

/** What can be undone and redone after these steps. Steps before the first are not known and cannot be. */
export function historyAfter(steps: readonly Step[]): History {
  return steps.reduce<History>((history, { way, entry }) => {
    if (way === 'done') return record(history, entry);
    const [from, to] = way === 'undone' ? [history.done, history.undone] : [history.undone, history.done];
    const rest = from.slice(0, -1);
    return way === 'undone' ? { done: rest, undone: [...to, entry] } : { done: [...to, entry], undone: rest };
  }, NO_HISTORY);
}

/** True when the later of two steps takes the earlier one back. */
const cancels = (later: Step, earlier: Step): boolean =>
  later.entry === earlier.entry && (later.way === 'undone' ? earlier.way !== 'undone' : later.way === 'redone' && earlier.way === 'undone');

/** Without what was done and taken back again among them: it comes to nothing. */
export function netSteps(steps: readonly Step[]): readonly Step[] {
  const left: Step[] = [];
  for (const step of steps) {
    const last = left.at(-1);
    if (last && cancels(step, last)) left.pop();
    else left.push(step);
  }
  return left;
}

/** One cell before and after a step. */
export interface CellPast {
  /** Where it was then. */
  readonly cell: CellAddress;
  /** "B4 of Fit", as the sheet was called then. */
  readonly place: string;
  readonly before: Cell | null;
  readonly after: Cell | null;
}

export interface PastStep {
  /** Place in the list of steps. */
  readonly index: number;
  readonly step: Step;
  /** Where it happened, in words; empty for the title and the settings. */
  readonly place: string;
  /** The first few cells whose contents changed; the one asked for when one was. */
  readonly cells: readonly CellPast[];
  /** How many more there are. */
  readonly more: number;
}

export interface LookBack {
  /** The latest first. */
  readonly steps: readonly PastStep[];
  /** Steps further back were not looked at. */
  readonly earlier: boolean;
}

export interface LookBackOptions {
  /** Only what changed this cell, wherever it was then. */
  readonly cell?: CellAddress;
  /** So many at most. */
  readonly most?: number;
}

const SHOWN_CELLS = 3;
const SHOWN_STEPS = 100;

/** The workbook before a step, `null` when the steps do not belong to this workbook. */
export function bookBefore(step: Step, after: Book): Book | null {
  try {
    return apply(takesBack(step), after).book;
  } catch {
    return null;
  }
}

/** Walks back from the workbook as it is now. */
export function lookBack(book: Book, steps: readonly Step[], { cell, most = SHOWN_STEPS }: LookBackOptions = {}): LookBack {
  const found: PastStep[] = [];
  let after = book;
  let place: CellAddress | null = cell ?? null;
  for (let index = steps.length - 1; index >= 0; index--) {
    if (found.length === most) return { steps: found, earlier: true };
    const step = steps[index]!;
    const before = bookBefore(step, after);
    if (!before) break;
    if (cell) {
      const was = place && placeBefore(appliedBy(step), place);
      // It came with this step; if that only put back what had been taken away, it was there before both.
      const taken = was ? -1 : steps.findLastIndex((each, at) => at < index && cancels(step, each));
      if (taken >= 0) {
        index = taken;
        continue;
      }
      const past = place && cellPast(before, after, was, place);
      if (past) found.push({ index, step, place: past.place, cells: [past], more: 0 });
      if (!was) break;
      place = was;
    } else {
      const cells = changedCells(appliedBy(step));
      found.push({
        index, step, place: inWords(before, after, step.entry.area),
        cells: cells.slice(0, SHOWN_CELLS).flatMap((each) => cellPast(before, after, each, each) ?? []),
        more: Math.max(0, cells.length - SHOWN_CELLS),
      });
    }
    after = before;
  }
  return { steps: found, earlier: false };
}

function cellPast(before: Book, after: Book, was: CellAddress | null, is: CellAddress): CellPast | null {
  const [sheetBefore, sheetAfter] = [was && sheetById(before, was.sheet), sheetById(after, is.sheet)];
  const old = was && sheetBefore ? cellAt(sheetBefore, was.row, was.col) : undefined;
  const now = sheetAfter ? cellAt(sheetAfter, is.row, is.col) : undefined;
  if (sameCell(old, now)) return null;
  const name = (sheetAfter ?? sheetBefore)?.name ?? '';
  return { cell: is, place: `${cellName(is.row, is.col)} of ${name}`, before: old ?? null, after: now ?? null };
}

/** The cells that an edit sets, when setting cells is all that it does; otherwise places would not be where they were. */
function changedCells(edit: Edit): readonly CellAddress[] {
  if (edit.do === 'setCells') return edit.cells.map(({ row, col }) => ({ sheet: edit.sheet, row, col }));
  if (edit.do === 'acknowledge') return [{ sheet: edit.sheet, row: edit.row, col: edit.col }];
  if (edit.do !== 'many') return [];
  const parts = edit.edits.map(changedCells);
  return edit.edits.every((part) => part.do === 'setCells' || (part.do === 'many' && changedCells(part).length > 0)) ? parts.flat() : [];
}

function inWords(before: Book, after: Book, area: Area | null): string {
  const sheet = area && (sheetById(after, area.sheet) ?? sheetById(before, area.sheet));
  return area && sheet ? `${areaName(area)} of ${sheet.name}` : '';
}
