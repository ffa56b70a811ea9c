/** Formulas that follow what they point at. */
import { sheetById } from './book.ts';
import { normalRow, checkText } from './cells.ts';
import type { TypedCell } from './cells.ts';
import { LIMITS } from './limits.ts';
import type { Book, Cell, CellChange, Edit, Effect, Row, Sheet, SheetId } from './types.ts';

/** Gives a formula's text after a change, the same string when it does not matter to it. */
export type Rewrite = (formula: string, sheet: Sheet) => string;

/** The same for the cell where it stands now. `exact`: the opposite change brings it back to the letter, so that nothing need be kept of it. */
export type RewriteAt = (formula: string, sheet: Sheet, row: number, col: number) => { readonly text: string; readonly exact: boolean };

export interface RewrittenCell {
  readonly row: number;
  readonly col: number;
  readonly before: Cell;
  readonly raw: string;
}

export interface RewrittenSheet {
  readonly sheet: SheetId;
  readonly cells: readonly RewrittenCell[];
}

const EQUALS = 61; // a formula's first character

function rewriteSheet(sheet: Sheet, rewrite: RewriteAt): { sheet: Sheet; cells: readonly RewrittenCell[] } {
  const changed: RewrittenCell[] = [];
  let rows: (Row | undefined)[] | null = null;
  for (let row = 0; row < sheet.rows.length; row++) {
    const cells = sheet.rows[row];
    if (!cells) continue;
    let copy: (Cell | undefined)[] | null = null;
    for (let col = 0; col < cells.length; col++) {
      const before = cells[col];
      if (!before || before.raw.charCodeAt(0) !== EQUALS) continue;
      const { text: raw, exact } = rewrite(before.raw, sheet, row, col);
      if (raw === before.raw) continue;
      copy ??= cells.slice();
      copy[col] = { ...before, raw };
      if (!exact || raw.length > LIMITS.characters) changed.push({ row, col, before, raw });
    }
    if (copy) (rows ??= sheet.rows.slice())[row] = normalRow(copy);
  }
  return { sheet: rows ? { ...sheet, rows } : sheet, cells: changed };
}

interface RewrittenBook {
  readonly book: Book;
  readonly rewritten: readonly RewrittenSheet[];
}

function rewriteAll(book: Book, rewrite: Rewrite): RewrittenBook {
  return rewriteEvery(book, (formula, sheet) => ({ text: rewrite(formula, sheet), exact: false }));
}

function rewriteEvery(book: Book, rewrite: RewriteAt): RewrittenBook {
  const rewritten: RewrittenSheet[] = [];
  const sheets = book.sheets.map((old) => {
    const { sheet, cells } = rewriteSheet(old, rewrite);
    if (cells.length > 0) rewritten.push({ sheet: sheet.id, cells });
    return sheet;
  });
  return { book: sheets.every((sheet, at) => sheet === book.sheets[at]) ? book : { ...book, sheets }, rewritten };
}

/**
 * Rewrites every formula of the workbook that needs it; sheets without one stay
 * the same objects. Throws `EditRefused` when a formula becomes too long for its cell.
 */
export function rewriteBook(book: Book, rewrite: Rewrite): RewrittenBook {
  return checked(rewriteAll(book, rewrite));
}

/** The same; `rewritten` has only the formulas that are not exact. */
export function rewriteInexact(book: Book, rewrite: RewriteAt): RewrittenBook {
  return checked(rewriteEvery(book, rewrite));
}

function checked(result: RewrittenBook): RewrittenBook {
  const { book } = result;
  for (const { sheet: id, cells } of result.rewritten) {
    const sheet = sheetById(book, id);
    if (sheet) for (const { row, col, raw } of cells) checkText(sheet, row, col, raw, 'formula that would follow');
  }
  return result;
}

/** The formulas that `rewrite` would change. */
export function concerned(book: Book, rewrite: Rewrite): readonly RewrittenSheet[] {
  return rewriteAll(book, rewrite).rewritten;
}

/**
 * For an edit that renames something and leaves every cell in its place. `back`
 * is what its opposite will do to formulas.
 *
 * `undo`: what the opposite alone would not put back; among it are formulas
 * that had spoken of the new name before there was one. `effects`: the formulas
 * that now mean something else.
 */
export function wayBack(before: Book, after: Book, back: Rewrite): { undo: readonly Edit[]; effects: readonly Effect[] } {
  const { book: returned, rewritten } = rewriteAll(after, back);
  const undo: Edit[] = [];
  for (const sheet of before.sheets) {
    const rows = sheetById(returned, sheet.id)?.rows;
    const cells: CellChange[] = [];
    sheet.rows.forEach((old, row) => {
      if (old === rows?.[row]) return;
      old?.forEach((cell, col) => {
        if (cell && cell.raw !== rows?.[row]?.[col]?.raw) cells.push({ row, col, cell });
      });
    });
    if (cells.length > 0) undo.push({ do: 'setCells', sheet: sheet.id, cells });
  }
  return { undo, effects: readAnew(rewritten) };
}

/** Those of the rewritten formulas that the opposite edit would not spell as they were. */
export function notBroughtBack(rewritten: readonly RewrittenSheet[], back: Rewrite, book: Book): RewrittenSheet[] {
  return rewritten.flatMap(({ sheet: id, cells }) => {
    const sheet = sheetById(book, id);
    const lost = cells.filter(({ raw, before }) => sheet && back(raw, sheet) !== before.raw);
    return lost.length === 0 ? [] : [{ sheet: id, cells: lost }];
  });
}

/** Tells the engine to read formulas anew whose text is as it was. */
export function readAnew(rewritten: readonly RewrittenSheet[]): Effect[] {
  return rewritten.map(({ sheet, cells }) => ({
    do: 'cells', sheet, cells: cells.map(({ row, col, before }): TypedCell => ({ row, col, raw: before.raw })),
  }));
}

/** Tells the engine the new texts. */
export function typedEffects(rewritten: readonly RewrittenSheet[]): Effect[] {
  return rewritten.map(({ sheet, cells }) => ({
    do: 'cells', sheet, cells: cells.map(({ row, col, raw }): TypedCell => ({ row, col, raw })),
  }));
}

/** Sets the texts back to what they were. */
export function restoring(rewritten: readonly RewrittenSheet[]): Edit[] {
  return rewritten.map(({ sheet, cells }) => ({
    do: 'setCells', sheet, cells: cells.map(({ row, col, before }): CellChange => ({ row, col, cell: before })),
  }));
}
