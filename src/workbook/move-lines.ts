/** Whole rows or columns go to another place, with everything that points at them. */
import { isFormula, mayBeMoved, moveBack, placeAfterMove, rewriteReferences, runAfterMove } from '../formula/index.ts';
import type { LineMove } from '../formula/index.ts';
import { sameArea } from './area.ts';
import type { Axis } from './area.ts';
import { cellAt, withSheet } from './book.ts';
import { normalRow, normalRows } from './cells.ts';
import type { TypedCell } from './cells.ts';
import { notBroughtBack, restoring, rewriteBook } from './follow.ts';
import type { Rewrite } from './follow.ts';
import { LIMITS, counted, isIndex } from './limits.ts';
import { mustHaveSheet, unchanged } from './outcome.ts';
import type { Outcome } from './outcome.ts';
import { EditRefused } from './refused.ts';
import { lostByMove, moveShowing } from './showing.ts';
import { beyondTyped } from './structure.ts';
import type { Area, Book, Edit, Effect, NamedArea, Row, Sheet } from './types.ts';

type MoveLines = Extract<Edit, { do: 'moveRows' | 'moveColumns' }>;

function check({ at, count, to }: LineMove, axis: Axis, sheet: Sheet): void {
  const limit = axis === 'rows' ? LIMITS.rows : LIMITS.columns;
  if (!isIndex(at, limit) || !Number.isInteger(count) || count < 1 || at + count > limit || !isIndex(to, limit + 1)) {
    throw new EditRefused(`${sheet.name} has ${counted(limit)} ${axis}; that goes past its edge.`);
  }
}

/** The same list in the new order. */
function reordered<T>(list: readonly (T | undefined)[], move: LineMove): (T | undefined)[] {
  const [low, high] = [Math.min(move.at, move.to), Math.max(move.at + move.count, move.to)];
  const next = list.slice();
  if (low >= list.length) return next;
  while (next.length < high) next.push(undefined);
  for (let place = low; place < high; place++) next[placeAfterMove(place, move)] = list[place];
  return next;
}

/** The same list when nothing stands where places change. */
function movedRows({ rows }: Sheet, axis: Axis, move: LineMove): readonly (Row | undefined)[] {
  const low = Math.min(move.at, move.to);
  if (axis === 'rows') return low >= rows.length ? rows : normalRows(reordered(rows, move));
  if (!rows.some((row) => row && row.length > low)) return rows;
  return rows.map((row) => (row && row.length > low ? normalRow(reordered(row, move)) : row));
}

function movedWidths({ widths }: Sheet, axis: Axis, move: LineMove): Sheet['widths'] {
  const low = Math.min(move.at, move.to);
  if (axis === 'rows' || !Object.keys(widths).some((col) => Number(col) >= low)) return widths;
  return Object.fromEntries(Object.entries(widths).map(([col, width]) => [placeAfterMove(Number(col), move), width]));
}

function movedArea(area: Area, axis: Axis, move: LineMove): Area {
  const [start, end] = axis === 'rows' ? ['top', 'bottom'] as const : ['left', 'right'] as const;
  const { first, last } = runAfterMove({ first: area[start], last: area[end] }, move);
  return first === area[start] && last === area[end] ? area : { ...area, [start]: first, [end]: last };
}

/**
 * What the engine does by itself when the places are taken out and put in
 * again elsewhere; then the cells that stand there, and every formula and name
 * with which it does otherwise, or may do otherwise beyond the last typed cell.
 */
function effectsOf(edit: MoveLines, axis: Axis, before: Book, after: Book): Effect[] {
  const { sheet: id, at, count, to } = edit;
  const [was, is] = [mustHaveSheet(before, id), mustHaveSheet(after, id)];
  const first = placeAfterMove(at, edit);
  const remove = { do: axis === 'rows' ? 'removeRows' : 'removeColumns', sheet: id, at, count } as const;
  const insert = { do: axis === 'rows' ? 'insertRows' : 'insertColumns', sheet: id, at: first, count } as const;
  const mayStay = { remove: beyondTyped(was, { axis, at }), insert: beyondTyped(is, { axis, at: first + count }) };
  /** True when the engine is sure to come to this text by itself. */
  const follows = (formula: string, wanted: string, sheet: Sheet): boolean => {
    if (!mayStay.remove && !mayStay.insert && !mayBeMoved(formula, axis === 'rows' ? 'row' : 'col', edit)) return true;
    const removed = rewriteReferences(formula, sheet, before.sheets, remove);
    const left = mayStay.remove ? [formula, removed] : [removed];
    return left.every((text) => rewriteReferences(text, sheet, before.sheets, insert) === wanted && (!mayStay.insert || text === wanted));
  };

  const told: Effect[] = [];
  for (const sheet of before.sheets) {
    const later = sheet.id === id ? is : mustHaveSheet(after, sheet.id);
    const cells: TypedCell[] = [];
    const own = sheet.id === id;
    // Without a list of places: there may be millions.
    for (let row = 0; row < sheet.rows.length; row++) {
      const texts = sheet.rows[row];
      if (!texts) continue;
      for (let col = 0; col < texts.length; col++) {
        const was = texts[col]?.raw ?? '';
        const line = axis === 'rows' ? row : col;
        const moved = own && line >= at && line < at + count;
        if (was === '' || !(moved || isFormula(was))) continue;
        const place = own ? placed(row, col, axis, edit) : { row, col };
        const raw = cellAt(later, place.row, place.col)?.raw ?? '';
        if (moved || !follows(was, raw, sheet)) cells.push({ ...place, raw });
      }
    }
    if (cells.length > 0) told.push({ do: 'cells', sheet: sheet.id, cells });
  }
  for (const [index, { name, area }] of after.names.entries()) {
    const last = before.names[index]?.area?.[axis === 'rows' ? 'bottom' : 'right'] ?? -1;
    if (area?.sheet === id && last >= Math.min(at, to)) told.push({ do: 'name', name, target: { area } });
  }
  return [remove, insert, ...told];
}

const placed = (row: number, col: number, axis: Axis, move: LineMove): { readonly row: number; readonly col: number } => (
  axis === 'rows' ? { row: placeAfterMove(row, move), col } : { row, col: placeAfterMove(col, move) });

export function moveLines(edit: MoveLines, book: Book): Outcome {
  const { sheet: id, at, count, to } = edit;
  const axis: Axis = edit.do === 'moveRows' ? 'rows' : 'columns';
  const old = mustHaveSheet(book, id);
  check(edit, axis, old);
  if (to >= at && to <= at + count) return unchanged(book);

  const back: MoveLines = { do: edit.do, sheet: id, ...moveBack({ at, count, to }) };
  const rewriteBy = (change: MoveLines): Rewrite => (formula, own) => rewriteReferences(formula, own, book.sheets, change);
  const names = book.names.map((named): NamedArea => {
    const area = named.area?.sheet === id ? movedArea(named.area, axis, edit) : named.area;
    return area === named.area ? named : { ...named, area };
  });
  const shown = moveShowing(old, axis, edit);
  const rows = movedRows(old, axis, edit);
  const widths = movedWidths(old, axis, edit);
  const { book: after, rewritten } = rewriteBook(withSheet({ ...book, names }, { ...shown, rows, widths }), rewriteBy(edit));
  const namesStay = names.every((named, index) => named === book.names[index]);
  if (namesStay && shown === old && rows === old.rows && widths === old.widths && rewritten.length === 0) return unchanged(book);

  const lost = notBroughtBack(rewritten, rewriteBy(back), book);
  return {
    book: after,
    undo: [
      back,
      ...restoring(lost.map((part) => (part.sheet !== id ? part : {
        sheet: id,
        cells: part.cells.map((cell) => ({ ...cell, ...placed(cell.row, cell.col, axis, back) })),
      }))),
      ...lostByMove(old, axis, edit, back),
      ...names.flatMap((named, index): Edit[] => {
        const was = book.names[index]!;
        return named.area && !sameArea(movedArea(named.area, axis, back), was.area)
          ? [{ do: 'setName', name: was.name, target: { area: was.area, kind: was.kind } }] : [];
      }),
    ],
    effects: effectsOf(edit, axis, book, after),
  };
}
