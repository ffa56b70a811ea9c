/** From what is stored to the workbook: the snapshot, and each edit since made to it again. */
import { apply, emptyBook, readBookText, EditRefused, type Book } from '../workbook/index.ts';
import type { JournalEntry, ShelfCard, Snapshot } from './database.ts';
import { readEdit } from './read-edit.ts';

export interface Stored {
  readonly card: ShelfCard | undefined;
  readonly snapshot: Snapshot | undefined;
  /** In order. */
  readonly entries: readonly JournalEntry[];
}

/** A workbook and what happened to it. */
export interface Replayed {
  readonly book: Book;
  /** The number of the last edit, made or not. */
  readonly seq: number;
  /** One sentence each; empty when all is well. */
  readonly problems: readonly string[];
  /** Edits that are not in `book`. */
  readonly left: readonly JournalEntry[];
}

/** Never throws. `damaged`: the snapshot, when not all of it is in `book`. */
export function replay(id: string, { card, snapshot, entries }: Stored): Replayed & { readonly damaged: string | null } {
  const base = baseOf(id, snapshot);
  const made = makeAgain(base.book, snapshot?.seq ?? 0, entries);
  const problems = [...base.problems, ...made.problems];
  const missing = card !== undefined && card.seq > made.seq;
  if (missing) problems.push(`What was typed last, up to ${time(card.changedAt)}, is missing from what was kept. Check the figures you typed last.`);
  return { ...made, seq: missing ? card.seq : made.seq, problems, damaged: base.damaged };
}

/**
 * Makes edits to the workbook that has those up to `seq`. What cannot be made
 * is left. An edit that cannot be read might have moved rows, and one that is
 * missing might too: what comes after such a one is left as well, because a
 * figure that is missing does less harm than one in the wrong place.
 */
export function makeAgain(start: Book, from: number, entries: readonly JournalEntry[]): Replayed {
  let book = start;
  let seq = from;
  const problems: string[] = [];
  const left: JournalEntry[] = [];
  const due = entries.filter((entry) => entry.seq > from);
  for (const [index, entry] of due.entries()) {
    const edit = readEdit(entry.edit);
    if (!edit || entry.seq !== seq + 1) {
      const rest = due.slice(index);
      left.push(...rest);
      seq = rest.at(-1)!.seq;
      problems.push(edit
        ? `A change before the one of ${time(entry.at)} is missing. ${restLeft(rest.length)}`
        : `The change of ${time(entry.at)} cannot be read. ${restLeft(rest.length)}`);
      break;
    }
    seq = entry.seq;
    try {
      book = apply(edit, book).book;
    } catch (error) {
      left.push(entry);
      problems.push(`The change of ${time(entry.at)} could not be made again and was set aside: ${error instanceof EditRefused ? error.sentence : String(error)}`);
    }
  }
  return { book, seq, problems, left };
}

const restLeft = (count: number): string => count === 1
  ? 'It was set aside. Check the figures you typed last.'
  : `It and the ${count - 1} after it were set aside. Check the figures you typed last.`;

function baseOf(id: string, snapshot: Snapshot | undefined): { book: Book; problems: readonly string[]; damaged: string | null } {
  if (!snapshot) {
    return { book: emptyBook(id), problems: ['The workbook as it was before its last changes is missing; what is here was put together from those changes.'], damaged: null };
  }
  const read = readBookText(snapshot.json);
  if (read.book && read.problems.length === 0) return { book: withId(read.book, id), problems: [], damaged: null };
  const problem = read.book
    ? `Part of the workbook as it was kept on ${time(snapshot.savedAt)} could not be read. The damaged copy was set aside.`
    : `The workbook as it was kept on ${time(snapshot.savedAt)} cannot be read; what is here was put together from the changes since. The damaged copy was set aside.`;
  return { book: withId(read.book ?? emptyBook(id), id), problems: [problem, ...read.problems], damaged: snapshot.json };
}

const withId = (book: Book, id: string): Book => book.id === id ? book : { ...book, id };

function time(iso: string): string {
  const at = new Date(iso);
  return Number.isNaN(at.getTime()) ? 'an unknown time' : at.toLocaleString('en-GB', { day: 'numeric', month: 'long', year: 'numeric', hour: '2-digit', minute: '2-digit' });
}
