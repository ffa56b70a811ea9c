/**
 * Rows of a block in another order, with everything that points at them: a
 * formula, wherever it stands, keeps pointing at the very cells it pointed at,
 * and a block that holds all of the rows holds them still. What would be torn
 * apart by that is refused.
 */
import { areaName, cellName, isFormula, replaceCorners, sheetOfReference } from '../formula/index.ts';
import type { Corner, SheetName } from '../formula/index.ts';
import { areaHeight, isArea } from './area.ts';
import { sheetById, withSheet } from './book.ts';
import { checkText, normalRow, normalRows } from './cells.ts';
import type { TypedCell } from './cells.ts';
import { restoring } from './follow.ts';
import type { RewrittenCell, RewrittenSheet } from './follow.ts';
import { NewOrder, OwnRows, boxOf } from './new-order.ts';
import type { Box, OrderRows } from './new-order.ts';
import { mustHaveSheet, unchanged } from './outcome.ts';
import type { Outcome } from './outcome.ts';
import { EditRefused } from './refused.ts';
import type { Book, Cell, Effect, NamedArea, Row, Sheet } from './types.ts';

interface Followed {
  readonly raw: string;
  /** The engine has it so by itself when it moves the cells: nothing in it is another way off than before. */
  readonly along: boolean;
  /** The opposite order is sure to bring the text back to the letter. */
  readonly exact: boolean;
}

/** A formula afterwards. `torn` is told of a block whose rows no longer lie side by side, which stays as it is. */
function followed(raw: string, sheet: SheetName, row: number, col: number, sheets: readonly SheetName[], order: NewOrder, torn: (box: Box) => void): Followed {
  const { area } = order;
  const moves = sheet.id === area.sheet && order.holds(row, col);
  const shift = moves ? order.rowAfter(row) - row : 0;
  let along = true;
  const text = replaceCorners(raw, (reference) => {
    const { from, to } = reference;
    const ends = to ? [from, to] : [from];
    const away = (rows: number): boolean => ends.some((end) => end.row !== null && (end.rowFixed ? 0 : shift) !== rows);
    const own = sheetOfReference(reference, sheet, sheets) === area.sheet;
    const box = own ? boxOf(reference) : null;
    if (!box || order.spares(box)) {
      if (away(0)) along = false;
      return null;
    }
    const after = order.rowsAfter(box);
    if (!after) torn(box);
    const [first, last] = after ?? [box.top, box.bottom];
    // A block of one row goes along as a whole where all of it moves.
    if (away(first - box.top) || (to && (box.top !== box.bottom || box.left < area.left || box.right > area.right))) along = false;
    const place = (corner: Corner): Corner => (corner.row === null ? corner : { ...corner, row: corner.row === box.top ? first : last });
    return first === box.top ? null : { from: place(from), ...(to && { to: place(to) }) };
  });
  return { raw: text, along, exact: text === raw };
}

/** What a formula comes to; throws where it would be torn. */
class Following {
  readonly #own: OwnRows;

  constructor(private readonly book: Book, private readonly order: NewOrder) {
    this.#own = new OwnRows(order);
  }

  of(raw: string, sheet: Sheet, row: number, col: number): Followed {
    const { order } = this;
    const moves = sheet.id === order.area.sheet && order.holds(row, col);
    if (!moves && sheet.id !== order.area.sheet && !raw.includes('!')) return { raw, along: true, exact: true };
    const own = moves ? this.#own.of(raw, row, col) : null;
    if (own) return { raw: order.rowAfter(row) === row ? raw : own.at(order.rowAfter(row)), along: true, exact: true };
    return followed(raw, sheet, row, col, this.book.sheets, order, (box) => {
      throw new EditRefused(`${cellName(row, col)} of ${sheet.name} uses ${areaName(box)}, which sorting would take apart: let it use all of the rows, or single cells, or sort other rows.`);
    });
  }
}

function nameAfter(named: NamedArea, order: NewOrder): NamedArea {
  const { name, area: at } = named;
  if (at?.sheet !== order.area.sheet || order.spares(at)) return named;
  const after = order.rowsAfter(at);
  if (!after) throw new EditRefused(`The name ${name} stands for ${areaName(at)}, which sorting would take apart: let it stand for all of the rows, or sort other rows.`);
  const [top, bottom] = after;
  return top === at.top ? named : { ...named, area: { ...at, top, bottom } };
}

function check({ area, order }: OrderRows): void {
  const seen = new Uint8Array(Math.max(0, areaHeight(area)));
  const whole = isArea(area) && order.length === seen.length && order.every((from) => {
    if (!Number.isInteger(from) || from < 0 || from >= seen.length || seen[from] === 1) return false;
    seen[from] = 1;
    return true;
  });
  if (!whole) throw new EditRefused('That is no order of these rows: each of them must come once.');
}

function inverseOf({ area, order }: OrderRows): OrderRows {
  const back = new Array<number>(order.length);
  order.forEach((from, at) => { back[from] = at; });
  return { do: 'orderRows', area, order: back };
}

/** What the formulas of a sheet come to, before its rows change places. */
interface SheetFollowed {
  readonly rows: Sheet['rows'];
  /** Formulas that the opposite order would not spell as they were. */
  readonly lost: readonly RewrittenCell[];
  /** What the engine must be told: it would not have them so by itself. */
  readonly told: readonly TypedCell[];
}

function followSheet(sheet: Sheet, book: Book, order: NewOrder, back: NewOrder): SheetFollowed {
  let rows: (Row | undefined)[] | null = null;
  const lost: RewrittenCell[] = [];
  const told: TypedCell[] = [];
  const [following, own] = [new Following(book, order), sheet.id === order.area.sheet];
  for (let row = 0; row < sheet.rows.length; row++) {
    const cells = sheet.rows[row];
    if (!cells) continue;
    let copy: (Cell | undefined)[] | null = null;
    for (let col = 0; col < cells.length; col++) {
      const before = cells[col];
      if (!before || !isFormula(before.raw)) continue;
      const { raw, along, exact } = following.of(before.raw, sheet, row, col);
      if (!along) told.push({ row, col, raw });
      if (raw === before.raw) continue;
      checkText(sheet, row, col, raw, 'formula that would follow');
      copy ??= cells.slice();
      copy[col] = { ...before, raw };
      if (exact) continue;
      const home = own && order.holds(row, col) ? order.rowAfter(row) : row;
      if (followed(raw, sheet, home, col, book.sheets, back, () => undefined).raw !== before.raw) lost.push({ row, col, before, raw });
    }
    if (copy) (rows ??= sheet.rows.slice())[row] = copy;
  }
  return { rows: rows ?? sheet.rows, lost, told };
}

/** The rows of the block in their new order; a row is the same array where all of its cells move. */
function inOrder(rows: readonly (Row | undefined)[], { area: { top, left, right }, order }: OrderRows): readonly (Row | undefined)[] {
  const list = rows.slice();
  while (list.length < top + order.length) list.push(undefined);
  for (let at = 0; at < order.length; at++) {
    const [is, comes] = [rows[top + at], rows[top + order[at]!]];
    if (order[at] === at) continue;
    if (left === 0 && (is?.length ?? 0) <= right + 1 && (comes?.length ?? 0) <= right + 1) {
      list[top + at] = comes;
      continue;
    }
    const cells = is?.slice() ?? [];
    const end = Math.min(right, Math.max(cells.length, comes?.length ?? 0) - 1);
    while (cells.length <= end) cells.push(undefined);
    for (let col = left; col <= end; col++) cells[col] = comes?.[col];
    list[top + at] = normalRow(cells);
  }
  return normalRows(list);
}

/** Throws `EditRefused` when something would be torn apart. */
export function orderRows(edit: OrderRows, book: Book): Outcome {
  const old = mustHaveSheet(book, edit.area.sheet);
  check(edit);
  if (edit.order.every((from, at) => from === at)) return unchanged(book);
  const inverse = inverseOf(edit);
  const [order, back] = [new NewOrder(edit, old), new NewOrder(inverse, old)];

  const names = book.names.map((named) => nameAfter(named, order));
  const moved = names.filter((named, at) => named !== book.names[at]);
  const clears: Effect[] = [];
  const tells: Effect[] = [];
  const lost: RewrittenSheet[] = [];
  const sheets = book.sheets.map((sheet) => {
    const own = sheet === old;
    const { rows, lost: cells, told } = followSheet(sheet, book, order, back);
    if (cells.length > 0) lost.push({ sheet: sheet.id, cells });
    if (told.length > 0) {
      // The engine lets go of what they use while everything is where it was.
      clears.push({ do: 'cells', sheet: sheet.id, cells: told.map(({ row, col }) => ({ row, col, raw: '' })) });
      tells.push({ do: 'cells', sheet: sheet.id, cells: own ? told.map((cell) => (order.holds(cell.row, cell.col) ? { ...cell, row: order.rowAfter(cell.row) } : cell)) : told });
    }
    return own || rows !== sheet.rows ? { ...sheet, rows: own ? inOrder(rows, edit) : rows } : sheet;
  });
  const { hidden, filter } = old;
  const now = sheetById({ ...book, sheets }, old.id)!;
  const shown: Sheet = {
    ...now,
    ...(hidden && { hidden: { ...hidden, rows: order.runsAfter(hidden.rows) } }),
    ...(filter && { filter: { ...filter, hides: order.runsAfter(filter.hides) } }),
  };
  return {
    book: withSheet({ ...book, sheets, names: moved.length > 0 ? names : book.names }, shown),
    undo: [inverse, ...restoring(lost)],
    effects: [
      ...clears,
      ...moved.map(({ name }): Effect => ({ do: 'name', name, target: { area: null } })),
      { do: 'orderRows', area: edit.area, order: edit.order },
      ...moved.map(({ name, area }): Effect => ({ do: 'name', name, target: { area } })),
      ...tells,
    ],
  };
}

/** What the order does to a formula that stands on no sheet; one that would be torn stays as it is. */
export function followOrder(edit: OrderRows, book: Book, nowhere: SheetName): (formula: string) => string {
  const sheet = sheetById(book, edit.area.sheet);
  if (!sheet) return (formula) => formula;
  const order = new NewOrder(edit, sheet);
  return (formula) => followed(formula, nowhere, 0, 0, book.sheets, order, () => undefined).raw;
}
