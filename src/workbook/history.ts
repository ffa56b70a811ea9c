/** What was done and can be undone, as a plain list: one action of the user, one entry. */
import { focusOf, labelOf } from './label.ts';
import type { Applied, Area, Book, Edit } from './types.ts';

export interface Entry {
  readonly edit: Edit;
  readonly inverse: Edit;
  /** After "Undo: " and "Redo: ". */
  readonly label: string;
  /** When, as an ISO 8601 time. */
  readonly at: string;
  /** Where it was done, so that undo and redo can show it; `null` for the title and the settings. Its sheet may be gone by then. */
  readonly area: Area | null;
}

export interface History {
  /** The latest last. */
  readonly done: readonly Entry[];
  /** The next to be redone last. */
  readonly undone: readonly Entry[];
}

/** A step back or forward: apply `edit`, keep `history`. */
export interface HistoryStep {
  readonly history: History;
  readonly entry: Entry;
  readonly edit: Edit;
}

export const NO_HISTORY: History = { done: [], undone: [] };

/** `before` is the workbook as it was before the edit; `at` an ISO 8601 time. */
export function entryOf(edit: Edit, before: Book, applied: Applied, at: string): Entry {
  return { edit, inverse: applied.inverse, label: labelOf(edit, before), at, area: focusOf(edit, before) };
}

/** A new action; what had been undone can no longer be redone. */
export function record(history: History, entry: Entry): History {
  return { done: [...history.done, entry], undone: [] };
}

export function undo({ done, undone }: History): HistoryStep | null {
  const entry = done.at(-1);
  return entry ? { history: { done: done.slice(0, -1), undone: [...undone, entry] }, entry, edit: entry.inverse } : null;
}

export function redo({ done, undone }: History): HistoryStep | null {
  const entry = undone.at(-1);
  return entry ? { history: { done: [...done, entry], undone: undone.slice(0, -1) }, entry, edit: entry.edit } : null;
}
