/** What each kind of edit comes to, before `apply` wraps it up. */
import { sheetById, withSheet } from './book.ts';
import { withCells } from './cells.ts';
import { EditRefused } from './refused.ts';
import type { Book, CellChange, Edit, Effect, Sheet, SheetId } from './types.ts';

export interface Outcome {
  readonly book: Book;
  /** Edits that, one after another, undo it. */
  readonly undo: readonly Edit[];
  readonly effects: readonly Effect[];
}

export function unchanged(book: Book): Outcome {
  return { book, undo: [], effects: [] };
}

export function mustHaveSheet(book: Book, id: SheetId): Sheet {
  const sheet = sheetById(book, id);
  if (!sheet) throw new EditRefused('That sheet is no longer in this workbook.');
  return sheet;
}

export function setCells(book: Book, id: SheetId, cells: Iterable<CellChange>): Outcome {
  const old = mustHaveSheet(book, id);
  const { sheet, before, typed } = withCells(old, cells);
  if (sheet === old) return unchanged(book);
  return {
    book: withSheet(book, sheet),
    undo: [{ do: 'setCells', sheet: id, cells: before }],
    effects: typed.length === 0 ? [] : [{ do: 'cells', sheet: id, cells: typed }],
  };
}

/** Several edits as one; one alone as itself. */
export function joined(edits: readonly Edit[], label = ''): Edit {
  const [only] = edits;
  return edits.length === 1 && only ? only : { do: 'many', label, edits };
}

export function sheetsEffect(book: Book): Effect {
  return { do: 'sheets', sheets: book.sheets.map(({ id, name }) => ({ id, name })) };
}
