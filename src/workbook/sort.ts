/**
 * Rows of a block in another order, by one or several keys.
 *
 * Sorting never changes a result. The cells of a row move together, and a
 * formula, wherever it stands, keeps pointing at the very cells it pointed at;
 * a block that holds all of the rows holds them still. What would have to be
 * torn apart for that is refused with a sentence, and so is a formula that
 * speaks of its neighbours (the row above, or the same rows away in several
 * rows): after sorting it has others.
 */
import { areaName, cellName, isFormula, replaceCorners, sheetOfReference, shiftCopy } from '../formula/index.ts';
import type { Corner, Reference } from '../formula/index.ts';
import { areaHeight } from './area.ts';
import { cellAt, formulaCells, usedArea } from './book.ts';
import { LIMITS, plural } from './limits.ts';
import { mustHaveSheet } from './outcome.ts';
import { EditRefused } from './refused.ts';
import { inRuns, runsOf } from './runs.ts';
import { chartSizes } from './sizes.ts';
import type { Area, Book, Cell, CellChange, Edit, NamedArea, Runs, Sheet } from './types.ts';
import { orderOf } from './values.ts';
import type { ValueAt } from './values.ts';

export interface SortKey {
  readonly col: number;
  readonly descending?: boolean;
}

type Box = Omit<Area, 'sheet'>;

/** The part of a block in which anything stands, so that whole columns can be sorted. */
function filledPart(sheet: Sheet, area: Area): Area {
  const used = usedArea(sheet);
  const part = used && { ...area, bottom: Math.min(area.bottom, used.bottom), right: Math.min(area.right, used.right) };
  if (!part || part.bottom <= part.top || part.right < part.left) {
    throw new EditRefused(`There are no two filled rows to sort in ${areaName(area)} of ${sheet.name}: select the rows and columns that belong together.`);
  }
  return part;
}

/** For each place of the block, from its top, the row that comes to stand there. Empty cells go last either way; equal ones keep their order. */
function newOrder(area: Area, keys: readonly SortKey[], valueAt: ValueAt, charts: readonly (readonly string[])[]): readonly number[] {
  const rows = Array.from({ length: areaHeight(area) }, (_, at) => area.top + at);
  const columns = keys.map(({ col, descending = false }) => {
    const values = rows.map((row) => valueAt(row, col));
    const order = orderOf(values, charts);
    return (a: number, b: number): number => {
      const [first, second] = [values[a - area.top]!, values[b - area.top]!];
      if (first.kind === 'empty' || second.kind === 'empty') return Number(first.kind === 'empty') - Number(second.kind === 'empty');
      return descending ? order(second, first) : order(first, second);
    };
  });
  return rows.sort((a, b) => {
    for (const compare of columns) {
      const which = compare(a, b);
      if (which !== 0) return which;
    }
    return a - b;
  });
}

/** Where the rows of a block go, and what that does to whatever points at them. */
class Sorting {
  readonly #area: Area;
  /** By row, from the block's top: where it goes. */
  readonly #to: readonly number[];
  readonly #usedRight: number;

  constructor(sheet: Sheet, area: Area, order: readonly number[]) {
    const to: number[] = [];
    order.forEach((row, at) => { to[row - area.top] = area.top + at; });
    this.#area = area;
    this.#to = to;
    this.#usedRight = usedArea(sheet)?.right ?? area.right;
  }

  holds(row: number, col: number): boolean {
    return this.#hasRow(row) && col >= this.#area.left && col <= this.#area.right;
  }

  rowAfter(row: number): number {
    return this.#hasRow(row) ? this.#to[row - this.#area.top]! : row;
  }

  #hasRow(row: number): boolean {
    return row >= this.#area.top && row <= this.#area.bottom;
  }

  /** True when the order of the block's rows is nothing to it. */
  spares({ top, left, bottom, right }: Box): boolean {
    const area = this.#area;
    if (bottom < area.top || top > area.bottom || right < area.left || left > area.right) return true;
    return top <= area.top && bottom >= area.bottom;
  }

  /** The rows of a block of cells afterwards; `null` when they no longer lie side by side. */
  rowsAfter({ top, left, bottom, right }: Box): readonly [top: number, bottom: number] | null {
    const area = this.#area;
    let [first, last, moves] = [Infinity, -Infinity, false];
    for (let row = Math.max(top, area.top); row <= Math.min(bottom, area.bottom); row++) {
      const to = this.rowAfter(row);
      moves ||= to !== row;
      first = Math.min(first, to);
      last = Math.max(last, to);
    }
    if (!moves) return [top, bottom];
    const allColumnsMove = left >= area.left && Math.min(right, Math.max(this.#usedRight, left)) <= area.right;
    if (top < area.top) first = Math.min(first, top);
    if (bottom > area.bottom) last = Math.max(last, bottom);
    return allColumnsMove && last - first === bottom - top ? [first, last] : null;
  }
}

const ALL: Box = { top: 0, left: 0, bottom: LIMITS.rows - 1, right: LIMITS.columns - 1 };

function boxOf({ from, to = from }: Reference): Box {
  const [rows, cols] = [[from.row ?? ALL.top, to.row ?? ALL.bottom], [from.col ?? ALL.left, to.col ?? ALL.right]] as const;
  return { top: Math.min(...rows), bottom: Math.max(...rows), left: Math.min(...cols), right: Math.max(...cols) };
}

/** A formula's text afterwards. Throws `EditRefused` when it cannot go on meaning the same. */
function rewritten(raw: string, sheet: Sheet, row: number, col: number, book: Book, area: Area, sorting: Sorting): string {
  if (sheet.id !== area.sheet && !raw.includes('!')) return raw;
  const moves = sheet.id === area.sheet && sorting.holds(row, col);
  const here = `${cellName(row, col)} of ${sheet.name}`;
  return replaceCorners(raw, (reference) => {
    if (sheetOfReference(reference, sheet, book.sheets) !== area.sheet) return null;
    const box = boxOf(reference);
    if (sorting.spares(box)) return null;
    const ends = [reference.from, reference.to ?? reference.from];
    const away = moves ? ends.flatMap((end) => (end.row === null || end.rowFixed || end.row === row ? [] : [end.row - row])) : [];
    if (away.some((rows) => Math.abs(rows) === 1) || (away.length > 0 && isFilledDown(raw, sheet, row, col, area))) {
      throw new EditRefused(`${here} uses ${areaName(box)} in another of these rows, and would have other neighbours after sorting: write ${withDollar(box)} if just that is meant, or sort without it.`);
    }
    const after = sorting.rowsAfter(box);
    if (!after) {
      throw new EditRefused(`${here} uses ${areaName(box)}, which sorting would take apart: let it use all of the rows, or single cells, or sort other rows.`);
    }
    const place = (corner: Corner): Corner => (corner.row === null ? corner : { ...corner, row: corner.row === box.top ? after[0] : after[1] });
    return after[0] === box.top ? null : { from: place(reference.from), ...(reference.to && { to: place(reference.to) }) };
  });
}

/** True when another row of the block has this very formula for its own place: it speaks of "two rows up", not of that cell. */
function isFilledDown(raw: string, sheet: Sheet, row: number, col: number, { top, bottom }: Area): boolean {
  for (let other = top; other <= bottom; other++) {
    const formula = other === row ? '' : cellAt(sheet, other, col)?.raw ?? '';
    if (isFormula(formula) && shiftCopy(formula, row - other, 0) === raw) return true;
  }
  return false;
}

function withDollar(box: Box): string {
  return areaName(box).replace(/([A-Z]+)(\d+)/g, '$1$$$2');
}

function nameAfter({ name, area: at, kind }: NamedArea, area: Area, sorting: Sorting): Edit[] {
  if (at?.sheet !== area.sheet || sorting.spares(at)) return [];
  const after = sorting.rowsAfter(at);
  if (!after) throw new EditRefused(`The name ${name} stands for ${areaName(at)}, which sorting would take apart: let it stand for all of the rows, or sort other rows.`);
  const [top, bottom] = after;
  return top === at.top ? [] : [{ do: 'setName', name, target: { area: { ...at, top, bottom }, kind } }];
}

/** What is hidden stays hidden, wherever its row goes. */
function runsAfter(runs: Runs, { top, bottom }: Area, sorting: Sorting): Runs {
  if (!runs.some(([first, last]) => first <= bottom && last >= top)) return runs;
  const places: number[] = [];
  for (let row = top; row <= bottom; row++) if (inRuns(runs, row)) places.push(sorting.rowAfter(row));
  const outside = runs.flatMap(([first, last]) => [[first, Math.min(last, top - 1)], [Math.max(first, bottom + 1), last]] as const)
    .filter(([first, last]) => first <= last);
  return [...outside, ...runsOf(places)].sort((a, b) => a[0] - b[0]);
}

/**
 * The edit that sorts the rows of a block: one step. Headings are no part of
 * the block; of whole columns only the filled part is sorted.
 *
 * @param valueAt what each cell of the block's sheet gives
 * @throws EditRefused when the rows are in that order already, or cannot be sorted without changing what a formula means
 */
export function sortEdit(book: Book, wanted: Area, keys: readonly SortKey[], valueAt: ValueAt): Edit {
  const sheet = mustHaveSheet(book, wanted.sheet);
  const area = filledPart(sheet, wanted);
  const order = newOrder(area, keys, valueAt, chartSizes(book));
  if (order.every((row, at) => row === area.top + at)) {
    throw new EditRefused(`The ${plural(order.length, 'row')} of ${areaName(area)} are in that order already.`);
  }
  const sorting = new Sorting(sheet, area, order);

  const rewrite = (cell: Cell, own: Sheet, row: number, col: number): Cell => {
    const raw = isFormula(cell.raw) ? rewritten(cell.raw, own, row, col, book, area, sorting) : cell.raw;
    return raw === cell.raw ? cell : { ...cell, raw };
  };
  const edits: Edit[] = [];
  for (const own of book.sheets) {
    const cells: CellChange[] = [];
    const isOwn = own.id === area.sheet;
    for (const { row, col, cell } of formulaCells(own)) {
      if (isOwn && sorting.holds(row, col)) continue;
      const next = rewrite(cell, own, row, col);
      if (next !== cell) cells.push({ row, col, cell: next });
    }
    if (isOwn) addMovedCells(cells, own, area, sorting, rewrite);
    if (cells.length > 0) edits.push({ do: 'setCells', sheet: own.id, cells });
  }
  for (const named of book.names) edits.push(...nameAfter(named, area, sorting));
  const { hidden, filter } = sheet;
  if (hidden) edits.push({ do: 'setHidden', sheet: sheet.id, axis: 'rows', runs: runsAfter(hidden.rows, area, sorting) });
  if (filter) edits.push({ do: 'setFilter', sheet: sheet.id, filter: { ...filter, hides: runsAfter(filter.hides, area, sorting) } });
  return { do: 'many', label: `sort ${plural(order.length, 'row')} in ${sheet.name}`, edits };
}

/** The cells of the block in their new order, where that changes anything. */
function addMovedCells(
  cells: CellChange[], sheet: Sheet, { top, left, bottom, right }: Area, sorting: Sorting, rewrite: (cell: Cell, own: Sheet, row: number, col: number) => Cell,
): void {
  for (let from = top; from <= bottom; from++) {
    const row = sorting.rowAfter(from);
    const [comes, goes] = [sheet.rows[from], sheet.rows[row]];
    for (let col = left; col <= right; col++) {
      const was = comes?.[col];
      const cell = was ? rewrite(was, sheet, from, col) : null;
      if (cell !== (goes?.[col] ?? null)) cells.push({ row, col, cell });
    }
  }
}
