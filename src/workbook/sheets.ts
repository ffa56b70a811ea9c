/** Sheets that come, go, change places and are called otherwise. */
import { rewriteReferences } from '../formula/index.ts';
import { filledCells, sheetById, withSheet } from './book.ts';
import { tidyRows } from './cells.ts';
import type { TypedCell } from './cells.ts';
import { concerned, readAnew, restoring, rewriteBook, typedEffects, wayBack } from './follow.ts';
import type { Rewrite } from './follow.ts';
import { LIMITS, checkLine, counted, isIndex } from './limits.ts';
import { sheetNameFault, tidyName } from './names.ts';
import { mustHaveSheet, sheetsEffect, unchanged } from './outcome.ts';
import type { Outcome } from './outcome.ts';
import { EditRefused } from './refused.ts';
import { tidyShowing } from './showing.ts';
import type { Book, Edit, Effect, Sheet } from './types.ts';

type EditOf<Do extends Edit['do']> = Extract<Edit, { do: Do }>;

function checkPlace(place: number, count: number): void {
  if (!isIndex(place, count)) throw new EditRefused('There is no such place in the list of sheets.');
}

function checkWidth(sheet: Sheet, col: number, width: number): void {
  if (!isIndex(col, LIMITS.columns)) throw new EditRefused(`${sheet.name} has ${counted(LIMITS.columns)} columns; that is past its edge.`);
  if (!(width >= LIMITS.narrowest && width <= LIMITS.widest)) {
    throw new EditRefused(`A column is from ${LIMITS.narrowest} to ${counted(LIMITS.widest)} pixels wide.`);
  }
}

/** A sheet in normal form; throws `EditRefused` for one that no workbook can hold. */
function tidySheet(sheet: Sheet): Sheet {
  const { id, about } = sheet;
  const name = tidyName(sheet.name);
  if (about) checkLine(about, `The line about ${name}`);
  const widths: Record<number, number> = {};
  for (const [col, width] of Object.entries(sheet.widths)) {
    checkWidth(sheet, Number(col), width);
    widths[Number(col)] = width;
  }
  return { id, name, rows: tidyRows(sheet), widths, ...(about && { about }), ...tidyShowing(sheet, name) };
}

/** What the engine must be told of a sheet that is new to it. */
function contents(sheet: Sheet): Effect[] {
  const cells: TypedCell[] = [];
  for (const { row, col, cell } of filledCells(sheet)) if (cell.raw !== '') cells.push({ row, col, raw: cell.raw });
  return cells.length === 0 ? [] : [{ do: 'cells', sheet: sheet.id, cells }];
}

/** Rewrites formulas for a change; `book` as it was before it. */
function following(book: Book, change: Parameters<typeof rewriteReferences>[3]): Rewrite {
  return (formula, sheet) => rewriteReferences(formula, sheet, book.sheets, change);
}

export function addSheet({ sheet: given, at }: EditOf<'addSheet'>, book: Book): Outcome {
  if (book.sheets.length >= LIMITS.sheets) throw new EditRefused(`A workbook has at most ${LIMITS.sheets} sheets: remove one first.`);
  if (!isIndex(given.id - 1, LIMITS.sheetId) || sheetById(book, given.id)) {
    throw new EditRefused(`The sheet ${given.name} cannot be added: its number is already used.`);
  }
  const fault = sheetNameFault(given.name, book);
  if (fault !== null) throw new EditRefused(fault);
  checkPlace(at, book.sheets.length + 1);
  const sheet = tidySheet(given);
  const after: Book = {
    ...book,
    sheets: [...book.sheets.slice(0, at), sheet, ...book.sheets.slice(at)],
    nextSheetId: Math.max(book.nextSheetId, sheet.id + 1),
  };
  // Formulas that speak of it already: now they mean it, and its removal would spoil them.
  const waiting = concerned(book, following(after, { do: 'removeSheet', sheet: sheet.id }));
  return {
    book: after,
    undo: [{
      do: 'removeSheet', sheet: sheet.id,
      ...(after.nextSheetId !== book.nextSheetId && { nextSheetId: book.nextSheetId }),
    }, ...restoring(waiting)],
    effects: [sheetsEffect(after), ...contents(sheet), ...readAnew(waiting)],
  };
}

/** Formulas that pointed at the sheet show an error, names of its cells stand for nothing. */
export function removeSheet({ sheet: id, nextSheetId }: EditOf<'removeSheet'>, book: Book): Outcome {
  const gone = mustHaveSheet(book, id);
  if (book.sheets.length === 1) throw new EditRefused('A workbook needs a sheet: add another before you remove this one.');
  const lost = book.names.filter(({ area }) => area?.sheet === id);
  const rest: Book = {
    ...book,
    sheets: book.sheets.filter((sheet) => sheet !== gone),
    names: lost.length === 0 ? book.names : book.names.map((named) => (lost.includes(named) ? { ...named, area: null } : named)),
    nextSheetId: nextSheetId ?? book.nextSheetId,
  };
  const followed = rewriteBook(rest, following(book, { do: 'removeSheet', sheet: id }));
  return {
    book: followed.book,
    undo: [
      { do: 'addSheet', sheet: gone, at: book.sheets.indexOf(gone) },
      ...restoring(followed.rewritten),
      ...lost.map(({ name, area, kind }): Edit => ({ do: 'setName', name, target: { area, kind } })),
    ],
    effects: [
      sheetsEffect(rest),
      ...typedEffects(followed.rewritten),
      ...lost.map(({ name }): Effect => ({ do: 'name', name, target: { area: null } })),
    ],
  };
}

/** Formulas that point at the sheet follow. */
export function renameSheet({ sheet: id, name: given }: EditOf<'renameSheet'>, book: Book): Outcome {
  const old = mustHaveSheet(book, id);
  const name = tidyName(given);
  if (old.name === name) return unchanged(book);
  const fault = sheetNameFault(name, book, id);
  if (fault !== null) throw new EditRefused(fault);
  const followed = rewriteBook(book, following(book, { do: 'renameSheet', sheet: id, name }));
  const after = withSheet(followed.book, { ...mustHaveSheet(followed.book, id), name });
  const back = wayBack(book, after, following(after, { do: 'renameSheet', sheet: id, name: old.name }));
  return {
    book: after,
    undo: [{ do: 'renameSheet', sheet: id, name: old.name }, ...back.undo],
    effects: [sheetsEffect(after), ...back.effects],
  };
}

export function moveSheet({ sheet: id, to }: EditOf<'moveSheet'>, book: Book): Outcome {
  const sheet = mustHaveSheet(book, id);
  checkPlace(to, book.sheets.length);
  const from = book.sheets.indexOf(sheet);
  if (from === to) return unchanged(book);
  const after = { ...book, sheets: book.sheets.toSpliced(from, 1).toSpliced(to, 0, sheet) };
  return { book: after, undo: [{ do: 'moveSheet', sheet: id, to: from }], effects: [sheetsEffect(after)] };
}

export function setAbout({ sheet: id, about }: EditOf<'setAbout'>, book: Book): Outcome {
  const sheet = mustHaveSheet(book, id);
  if ((sheet.about ?? '') === about) return unchanged(book);
  checkLine(about, `The line about ${sheet.name}`);
  const { about: old = '', ...rest } = sheet;
  return {
    book: withSheet(book, about ? { ...rest, about } : rest),
    undo: [{ do: 'setAbout', sheet: id, about: old }],
    effects: [],
  };
}

export function setWidth({ sheet: id, col, width }: EditOf<'setWidth'>, book: Book): Outcome {
  const sheet = mustHaveSheet(book, id);
  const old = sheet.widths[col] ?? null;
  if (old === width) return unchanged(book);
  if (width !== null) checkWidth(sheet, col, width);
  const widths = { ...sheet.widths };
  if (width === null) delete widths[col];
  else widths[col] = width;
  return {
    book: withSheet(book, { ...sheet, widths }),
    undo: [{ do: 'setWidth', sheet: id, col, width: old }],
    effects: [],
  };
}
