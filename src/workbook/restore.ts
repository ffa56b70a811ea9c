/** What was there before some step of the ledger, put back: a change like any other, to be undone like any other. */
import { cellName, isFormula, rewriteReferences } from '../formula/index.ts';
import { apply } from './apply.ts';
import { cellAt, sheetById } from './book.ts';
import { appliedBy, bookBefore, netSteps, takesBack } from './ledger.ts';
import type { Step } from './ledger.ts';
import { placeAfter, placeBefore } from './places.ts';
import { EditRefused } from './refused.ts';
import { changeOfReferences } from './set-record.ts';
import type { Area, Book, CellAddress, Edit } from './types.ts';

const STRANGE = 'That time cannot be gone back to: what was done since does not fit this workbook.';

/**
 * The whole workbook as it was before a step.
 *
 * @param when the time of that step, in words for the label
 */
export function restoreBookEdit(steps: readonly Step[], index: number, when: string): Edit {
  return {
    do: 'many', label: `restore the workbook as it was before ${when}`,
    edits: netSteps(steps.slice(index)).toReversed().map(takesBack),
  };
}

/** Where a cell is now that stood there after a step; `null` when it is gone. */
export function placeNow(steps: readonly Step[], index: number, cell: CellAddress): CellAddress | null {
  return netSteps(steps.slice(index + 1)).reduce<CellAddress | null>((place, step) => place && placeAfter(appliedBy(step), place), cell);
}

/**
 * One cell with all that was in it before a step, in the place where that cell
 * is now. A formula points at the cells that it pointed at then, wherever they
 * are now.
 *
 * @param cell where it is now
 * @throws EditRefused when there was no such cell yet, or it is as it was
 */
export function restoreCellEdit(book: Book, steps: readonly Step[], index: number, cell: CellAddress, when: string): Edit {
  const since = netSteps(steps.slice(index));
  let [then, place]: [Book, CellAddress] = [book, cell];
  for (const step of since.toReversed()) {
    const was = placeBefore(appliedBy(step), place);
    const before = bookBefore(step, then);
    if (!before) throw new EditRefused(STRANGE);
    if (!was) throw new EditRefused(`${cellName(cell.row, cell.col)} was not there yet before ${when}: it came with a later change.`);
    [then, place] = [before, was];
  }
  const sheet = sheetById(then, place.sheet);
  const old = sheet && cellAt(sheet, place.row, place.col);
  const raw = old && isFormula(old.raw) ? broughtForward(old.raw, place, then, since) : old?.raw;
  const now = sheetById(book, cell.sheet);
  if (!now) throw new EditRefused(STRANGE);
  const label = `restore ${cellName(cell.row, cell.col)} of ${now.name} as it was before ${when}`;
  const next = old ? { ...old, raw: raw ?? '' } : null;
  return { do: 'many', label, edits: [{ do: 'setCells', sheet: cell.sheet, cells: [{ row: cell.row, col: cell.col, cell: next }] }] };
}

/** A formula of an earlier time as it would read now, had it stood in its cell all the while. */
function broughtForward(formula: string, start: CellAddress, then: Book, steps: readonly Step[]): string {
  let [raw, book, place]: [string, Book, CellAddress | null] = [formula, then, start];
  for (const step of steps) {
    const next = follow(raw, place, book, appliedBy(step));
    const sheet = next.place && sheetById(next.book, next.place.sheet);
    const now = sheet && cellAt(sheet, next.place!.row, next.place!.col);
    // Undoing gives references back that no edit could: those of the block's edge that had been removed.
    const givenBack = step.way === 'undone' && now && isFormula(now.raw) && follow(now.raw, next.place, next.book, step.entry.edit).raw === raw;
    [raw, book, place] = [givenBack ? now.raw : next.raw, next.book, next.place];
  }
  return raw;
}

/** A formula, its cell and the workbook after an edit. */
function follow(formula: string, start: CellAddress | null, before: Book, edit: Edit): { readonly raw: string; readonly book: Book; readonly place: CellAddress | null } {
  let [raw, book, place] = [formula, before, start];
  for (const each of single(edit)) {
    const own = place && sheetById(book, place.sheet);
    const change = own && changeOfReferences(each, book, each.do === 'moveCells' && isAt(each.from, place!));
    if (own && change) raw = rewriteReferences(raw, own, book.sheets, change);
    book = apply(each, book).book;
    place = place && placeAfter(each, place);
  }
  return { raw, book, place };
}

function single(edit: Edit): readonly Edit[] {
  return edit.do === 'many' ? edit.edits.flatMap(single) : [edit];
}

const isAt = ({ sheet, top, left, bottom, right }: Area, place: CellAddress): boolean => (
  place.sheet === sheet && place.row >= top && place.row <= bottom && place.col >= left && place.col <= right);
