/** Rows and columns that come and go, with everything that points at them. */
import { Repeats, rewriteReferences } from '../formula/index.ts';
import { isWhole, opposite, sameArea, shiftArea } from './area.ts';
import type { Axis, Shift } from './area.ts';
import { filledCells, usedColumns, withSheet } from './book.ts';
import { normalRow, normalRows } from './cells.ts';
import { notBroughtBack, restoring, rewriteInexact, typedEffects } from './follow.ts';
import type { RewrittenSheet } from './follow.ts';
import { LIMITS, counted, isIndex, plural } from './limits.ts';
import { mustHaveSheet, unchanged } from './outcome.ts';
import type { Outcome } from './outcome.ts';
import { EditRefused } from './refused.ts';
import { lostByShift, shiftShowing } from './showing.ts';
import type { Book, CellChange, Edit, Effect, NamedArea, Row, Sheet, SheetId } from './types.ts';

type StructureEdit = Extract<Edit, { readonly do: 'insertRows' | 'removeRows' | 'insertColumns' | 'removeColumns' }>;

const SHIFTS: Record<StructureEdit['do'], Pick<Shift, 'axis' | 'kind'>> = {
  insertRows: { axis: 'rows', kind: 'insert' },
  removeRows: { axis: 'rows', kind: 'remove' },
  insertColumns: { axis: 'columns', kind: 'insert' },
  removeColumns: { axis: 'columns', kind: 'remove' },
};

function editOf(shift: Shift, sheet: SheetId): StructureEdit {
  const act = shift.axis === 'rows'
    ? (shift.kind === 'insert' ? 'insertRows' : 'removeRows')
    : (shift.kind === 'insert' ? 'insertColumns' : 'removeColumns');
  return { do: act, sheet, at: shift.at, count: shift.count };
}

const limitOf = (axis: Axis): number => (axis === 'rows' ? LIMITS.rows : LIMITS.columns);

function check(sheet: Sheet, shift: Shift): void {
  const { axis, at, count } = shift;
  const limit = limitOf(axis);
  if (!isIndex(at, limit) || !Number.isInteger(count) || count < 1 || at + count > limit) {
    throw new EditRefused(`${sheet.name} has ${counted(limit)} ${axis}; that goes past its edge.`);
  }
  if (shift.kind === 'remove') return;
  const used = axis === 'rows' ? sheet.rows.length : usedColumns(sheet);
  if (at < used && used + count > limit) {
    throw new EditRefused(
      `There is no room in ${sheet.name} for ${plural(count, axis === 'rows' ? 'more row' : 'more column')}: filled cells would go past its edge. Remove some ${axis} first.`,
    );
  }
}

/** A list with places put in or taken out; the same list when that is beyond its end. */
function shiftList<T>(list: readonly (T | undefined)[], { kind, at, count }: Shift): readonly (T | undefined)[] {
  if (at >= list.length) return list;
  return kind === 'insert'
    ? list.slice(0, at).concat(new Array<undefined>(count).fill(undefined), list.slice(at))
    : list.slice(0, at).concat(list.slice(at + count));
}

function shiftRows(sheet: Sheet, shift: Shift): readonly (Row | undefined)[] {
  if (shift.axis === 'rows') {
    const rows = shiftList(sheet.rows, shift);
    return rows === sheet.rows ? rows : normalRows([...rows]);
  }
  let rows: (Row | undefined)[] | null = null;
  sheet.rows.forEach((row, index) => {
    if (row && row.length > shift.at) (rows ??= sheet.rows.slice())[index] = normalRow([...shiftList(row, shift)]);
  });
  return rows ? normalRows(rows) : sheet.rows;
}

function shiftWidths(widths: Sheet['widths'], shift: Shift): Sheet['widths'] {
  if (shift.axis === 'rows' || !Object.keys(widths).some((col) => Number(col) >= shift.at)) return widths;
  const { kind, at, count } = shift;
  const moved: Record<number, number> = {};
  for (const [key, width] of Object.entries(widths)) {
    const col = Number(key);
    if (col < at) moved[col] = width;
    else if (kind === 'insert') {
      if (col + count < LIMITS.columns) moved[col + count] = width;
    } else if (col >= at + count) moved[col - count] = width;
  }
  return moved;
}

/** The widths that the opposite shift does not bring back. */
function lostWidths(sheet: Sheet, shift: Shift): Edit[] {
  const back = shiftWidths(shiftWidths(sheet.widths, shift), opposite(shift));
  return Object.entries(sheet.widths)
    .filter(([col]) => back[Number(col)] === undefined)
    .map(([col, width]) => ({ do: 'setWidth', sheet: sheet.id, col: Number(col), width }));
}

/** The cells that are taken out. */
function removedCells(sheet: Sheet, { axis, at, count }: Shift): CellChange[] {
  const last = at + count - 1;
  return [...filledCells(sheet, axis === 'rows'
    ? { top: at, bottom: last, left: 0, right: Infinity }
    : { top: 0, bottom: Infinity, left: at, right: last })];
}

/** Where a place is before a shift. */
function placeBefore(place: number, { kind, at, count }: Shift): number {
  if (place < at) return place;
  return kind === 'insert' ? place - count : place + count;
}

/**
 * True when nothing typed stands at or past the place. The engine takes such an
 * edit for one beyond its sheet and leaves references as they are.
 */
export function beyondTyped(sheet: Sheet, { axis, at }: Pick<Shift, 'axis' | 'at'>): boolean {
  return !sheet.rows.some((row, index) => row !== undefined && (axis === 'rows'
    ? index >= at && row.some((cell) => cell !== undefined && cell.raw !== '')
    : row.length > at && row.some((cell, col) => col >= at && cell !== undefined && cell.raw !== '')));
}

interface ShiftedNames {
  readonly names: readonly NamedArea[];
  readonly undo: readonly Edit[];
  readonly effects: readonly Effect[];
}

/** The engine moves its own names; unless `tellAll`, it is told only of those that end otherwise than a shift alone would end them. */
function shiftNames(names: readonly NamedArea[], sheet: SheetId, shift: Shift, tellAll: boolean): ShiftedNames {
  const undo: Edit[] = [];
  const effects: Effect[] = [];
  let changed = false;
  const shifted = names.map((named) => {
    if (named.area?.sheet !== sheet) return named;
    const area = shiftArea(named.area, shift);
    if (isWhole(named.area, shift.axis)) effects.push({ do: 'name', name: named.name, target: { area } });
    if (sameArea(area, named.area)) return named;
    changed = true;
    const exact = area !== null && sameArea(shiftArea(area, opposite(shift)), named.area);
    if (!exact) undo.push({ do: 'setName', name: named.name, target: { area: named.area, kind: named.kind } });
    if (tellAll || area === null || (!exact && shift.kind === 'insert')) effects.push({ do: 'name', name: named.name, target: { area } });
    return { ...named, area };
  });
  return { names: changed ? shifted : names, undo, effects };
}

/** Puts in or takes out rows or columns. Formulas and names follow; the removed cells are in the inverse. */
export function changeStructure(edit: StructureEdit, book: Book): Outcome {
  const { sheet: id, at, count } = edit;
  const shift: Shift = { ...SHIFTS[edit.do], at, count };
  const old = mustHaveSheet(book, id);
  check(old, shift);

  const removed = shift.kind === 'remove' ? removedCells(old, shift) : [];
  const rows = shiftRows(old, shift);
  const widths = shiftWidths(old.widths, shift);
  const tellAll = beyondTyped(old, shift);
  const { names, undo: undoNames, effects: nameEffects } = shiftNames(book.names, id, shift, tellAll);
  const shown = shiftShowing(old, shift);
  const shifted = withSheet({ ...book, names }, { ...shown, rows, widths });

  const away = editOf(shift, id);
  const home = editOf(opposite(shift), id);
  const repeats = new Repeats(away, book.sheets);
  // Where the engine has to be told of all of them, all are listed.
  const followed = rewriteInexact(shifted, (formula, own, row, col) => {
    const { text, exact } = repeats.rewrite(formula, own, row, col);
    return { text, exact: exact && !tellAll };
  });
  const sameSheet = rows === old.rows && widths === old.widths && shown === old;
  if (sameSheet && names === book.names && followed.book === shifted) return unchanged(book);
  const lost = notBroughtBack(followed.rewritten, (formula, own) => rewriteReferences(formula, own, book.sheets, home), book);

  const restored = lost.map((part): RewrittenSheet => part.sheet !== id ? part : {
    sheet: id,
    cells: part.cells.map((cell) => shift.axis === 'rows'
      ? { ...cell, row: placeBefore(cell.row, shift) }
      : { ...cell, col: placeBefore(cell.col, shift) }),
  });
  return {
    book: followed.book,
    undo: [
      home,
      ...(removed.length > 0 ? [{ do: 'setCells', sheet: id, cells: removed } as const] : []),
      ...restoring(restored),
      ...lostWidths(old, shift),
      ...lostByShift(old, shift),
      ...undoNames,
    ],
    effects: [
      away,
      // What an insertion pushes over the edge, the engine would keep beyond it.
      ...typedEffects(tellAll ? followed.rewritten : shift.kind === 'insert' ? lost : []),
      ...nameEffects,
    ],
  };
}
