/** From what was set aside to a workbook: as much as can be had of it, beside the one that is there. */
import { apply, EditRefused, readBookText, type Book } from '../workbook/index.ts';
import type { SetAside } from './database.ts';
import { readEdit } from './read-edit.ts';

export interface PutBack {
  /** `null` when nothing of it can be used. */
  readonly book: Book | null;
  /** Edits that could be made again. */
  readonly made: number;
  readonly problems: readonly string[];
}

/**
 * The damaged workbook as far as it can be read, or else the one that is open,
 * and on top of it every edit that can be made to it. Such an edit may land in
 * another place than it was made for; that is why this gives a workbook of its
 * own and changes none.
 */
export function putBack({ json, entries }: Pick<SetAside, 'json' | 'entries'>, open: Book): PutBack {
  const read = json === null ? { book: open, problems: [] } : readBookText(json);
  let { book } = read;
  if (!book && entries.length === 0) return { book: null, made: 0, problems: read.problems };
  book ??= open;
  const problems = [...read.problems];
  let made = 0;
  for (const { seq, edit: stored } of entries) {
    const edit = readEdit(stored);
    try {
      if (!edit) throw new EditRefused('it cannot be read.');
      book = apply(edit, book).book;
      made++;
    } catch (error) {
      problems.push(`Change ${seq} could not be made again: ${error instanceof EditRefused ? error.sentence : String(error)}`);
    }
  }
  return { book, made, problems };
}
