/**
 * Rows of a block in another order, by one or several keys.
 *
 * Sorting never changes a result: what points at the rows follows them (see
 * order-rows.ts). A formula that speaks of its neighbours (the row above, or the
 * same rows away in several rows) is refused: after sorting it has others.
 */
import { areaName, cellName, isFormula, replaceCorners, sheetOfReference, shiftCopy } from '../formula/index.ts';
import { areaHeight } from './area.ts';
import { cellAt, usedArea } from './book.ts';
import { LIMITS, plural } from './limits.ts';
import { NewOrder, OwnRows, boxOf } from './new-order.ts';
import { mustHaveSheet } from './outcome.ts';
import { EditRefused } from './refused.ts';
import { chartSizes } from './sizes.ts';
import type { Area, Book, Edit, Sheet } from './types.ts';
import { orderOf } from './values.ts';
import type { ValueAt } from './values.ts';

export interface SortKey {
  readonly col: number;
  readonly descending?: boolean;
}

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

/** Half-way down a sheet, so that no reference leaves it. */
const MIDDLE = LIMITS.rows >> 1;

/** Which formulas of a column say the same for their own rows as another of them: those speak of "two rows up", not of that cell. */
function filledDown(sheet: Sheet, col: number, { top, bottom }: Area): ReadonlySet<string> {
  const [seen, twice] = [new Set<string>(), new Set<string>()];
  for (let row = top; row <= bottom; row++) {
    const formula = cellAt(sheet, row, col)?.raw ?? '';
    if (!isFormula(formula)) continue;
    const form = shiftCopy(formula, MIDDLE - row, 0);
    (seen.has(form) ? twice : seen).add(form);
  }
  return twice;
}

function withDollar(box: Omit<Area, 'sheet'>): string {
  return areaName(box).replace(/([A-Z]+)(\d+)/g, '$1$$$2');
}

/** Refuses what speaks of its neighbours, and would have others after sorting. */
function checkNeighbours(book: Book, sheet: Sheet, order: NewOrder): void {
  const { area } = order;
  const own = new OwnRows(order);
  const filled = new Map<number, ReadonlySet<string>>();
  for (let row = area.top; row <= area.bottom; row++) {
    const cells = sheet.rows[row];
    for (let col = area.left; col <= Math.min(area.right, (cells?.length ?? 0) - 1); col++) {
      const raw = cells?.[col]?.raw ?? '';
      if (!isFormula(raw) || own.of(raw, row, col)) continue;
      replaceCorners(raw, (reference) => {
        if (sheetOfReference(reference, sheet, book.sheets) !== area.sheet) return null;
        const box = boxOf(reference);
        if (order.spares(box)) return null;
        const away = [reference.from, reference.to ?? reference.from].flatMap((end) => (end.row === null || end.rowFixed || end.row === row ? [] : [end.row - row]));
        if (away.length === 0) return null;
        let same = filled.get(col);
        if (!same) filled.set(col, same = filledDown(sheet, col, area));
        if (away.some((rows) => Math.abs(rows) === 1) || same.has(shiftCopy(raw, MIDDLE - row, 0))) {
          throw new EditRefused(`${cellName(row, col)} of ${sheet.name} uses ${areaName(box)} in another of these rows, and would have other neighbours after sorting: write ${withDollar(box)} if just that is meant, or sort without it.`);
        }
        return null;
      });
    }
  }
}

/**
 * The edit that sorts the rows of a block: one step. Headings are no part of
 * the block; of whole columns only the filled part is sorted.
 *
 * @param valueAt what each cell of the block's sheet gives
 * @throws EditRefused when the rows are in that order already, or a formula speaks of its neighbours; `apply` refuses what would be torn apart
 */
export function sortEdit(book: Book, wanted: Area, keys: readonly SortKey[], valueAt: ValueAt): Edit {
  const sheet = mustHaveSheet(book, wanted.sheet);
  const area = filledPart(sheet, wanted);
  const order = newOrder(area, keys, valueAt, chartSizes(book));
  if (order.every((row, at) => row === area.top + at)) {
    throw new EditRefused(`The ${plural(order.length, 'row')} of ${areaName(area)} are in that order already.`);
  }
  const edit = { do: 'orderRows', area, order: order.map((row) => row - area.top) } as const;
  checkNeighbours(book, sheet, new NewOrder(edit, sheet));
  return edit;
}
