/** What an edit would take away from under formulas, known before it is done. */
import { foldName, isFormula, sameName, tokenize } from '../formula/index.ts';
import { apply } from './apply.ts';
import { EditRefused } from './refused.ts';
import type { Book, Edit, NamedArea } from './types.ts';

/** A name that would stand for no cells any more. */
export interface LostName {
  readonly name: string;
  readonly kind: NamedArea['kind'];
  /** Formulas that use it and would have no result. */
  readonly uses: number;
}

/** The names that an edit would take the cells from, or take away, in their own order; those that nothing uses too, but for a name that is itself removed. */
export function namesLost(edit: Edit, book: Book): readonly LostName[] {
  if (book.names.length === 0) return [];
  const lost = namesLostBy(edit, book);
  if (lost.length === 0) return [];
  const after = afterwards(edit, book);
  const counts = usesOf(lost, after, book);
  const found = lost.map(({ name, kind }, at): LostName => ({ name, kind, uses: counts[at]! }));
  return edit.do === 'setName' ? found.filter(({ uses }) => uses > 0) : found;
}

function namesLostBy(edit: Edit, book: Book): readonly NamedArea[] {
  const standing = book.names.filter((each) => each.area !== null);
  switch (edit.do) {
    case 'removeRows': return standing.filter(({ area }) => area!.sheet === edit.sheet && area!.top >= edit.at && area!.bottom < edit.at + edit.count);
    case 'removeColumns': return standing.filter(({ area }) => area!.sheet === edit.sheet && area!.left >= edit.at && area!.right < edit.at + edit.count);
    case 'removeSheet': return standing.filter(({ area }) => area!.sheet === edit.sheet);
    case 'setName': return edit.target === null ? book.names.filter(({ name }) => sameName(name, edit.name)) : [];
    case 'many': {
      if (!removes(edit)) return [];
      const after = afterwards(edit, book);
      return standing.filter(({ name }) => (after.names.find((each) => sameName(each.name, name))?.area ?? null) === null);
    }
    default: return [];
  }
}

function removes(edit: Edit): boolean {
  return edit.do === 'many' ? edit.edits.some(removes) : edit.do === 'removeRows' || edit.do === 'removeColumns' || edit.do === 'removeSheet';
}

function afterwards(edit: Edit, book: Book): Book {
  try {
    return apply(edit, book).book;
  } catch (error) {
    // It will say so itself when it is done.
    if (error instanceof EditRefused) return book;
    throw error;
  }
}

/** Formulas of a workbook that use each of some names. `book` knows the names that `after` may have lost. */
function usesOf(names: readonly NamedArea[], { sheets }: Book, book: Book): readonly number[] {
  const all = book.names.map(({ name }) => name);
  const sought = new Map(names.map(({ name }, at) => [foldName(name), at]));
  const words = names.map(({ name }) => foldName(name).split(' ')[0]!);
  const counts = names.map(() => 0);
  for (const sheet of sheets) {
    for (const row of sheet.rows) {
      for (const cell of row ?? []) {
        if (cell === undefined || !isFormula(cell.raw)) continue;
        const folded = foldName(cell.raw);
        if (!words.some((word) => folded.includes(word))) continue;
        const used = new Set(tokenize(cell.raw, all).filter(({ kind }) => kind === 'name').map(({ text }) => sought.get(foldName(text))));
        for (const at of used) if (at !== undefined) counts[at]! += 1;
      }
    }
  }
  return counts;
}
