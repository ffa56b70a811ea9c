/** Widths of columns, in CSS pixels. */
import { columnName } from '../formula/index.ts';
import type { Ground } from './select.ts';
import type { CellView, SheetView } from './view.ts';

const NARROWEST = 24;
const WIDEST = 1200;
/** A cell's own padding, its line, and a little room. */
const PADDING = 26;
/** What a mark at the beginning of a cell takes. */
const MARK = 24;
/** Wider and narrower go by this. */
export const WIDTH_STEP = 12;
/** So many rows of a column are looked at: about 30 ms of work. */
const MOST_ROWS = 10_000;

export const widthWithin = (width: number): number => Math.round(Math.max(NARROWEST, Math.min(WIDEST, width)));

/** Measures texts as the grid's own fonts show them. */
function ruler(element: Element): { cell(cell: CellView): number; heading(text: string): number } {
  const { fontFamily, fontSize } = getComputedStyle(element);
  const size = parseFloat(fontSize);
  const context = document.createElement('canvas').getContext('2d')!;
  const wide = (text: string, font: string): number => {
    if (context.font !== font) context.font = font;
    return context.measureText(text).width;
  };
  const usual = `${size}px ${fontFamily}`;
  const strong = `600 ${usual}`;
  const small = `${size * 0.9}px ${fontFamily}`;
  return {
    cell(cell) {
      const font = cell.kind === 'error' ? small : cell.strong || cell.heading ? strong : usual;
      const text = Math.max(0, ...cell.text.split('\n').map((line) => wide(line, font)));
      return text + (cell.also ? wide(`  ${cell.also}`, small) : 0) + (cell.kind === 'error' || cell.caution ? MARK : 0);
    },
    heading: (text) => wide(text, `600 ${size * 0.87}px ${fontFamily}`),
  };
}

/**
 * As wide as the widest of a column's heading and its cells that show; `null`,
 * the usual width, when it is empty. Of a very long column only every so many
 * rows are looked at.
 *
 * @param element whose fonts the cells have
 * @param first rows to look at in any case
 */
export function fittingWidth(element: Element, view: SheetView, ground: Ground, col: number, first: Iterable<number>): number | null {
  const measure = ruler(element);
  let widest = 0;
  const look = (row: number): void => {
    const cell = ground.rows.has(row) ? view.cell(row, col) : null;
    if (cell) widest = Math.max(widest, measure.cell(cell));
  };
  for (const row of first) look(row);
  const every = Math.max(1, Math.ceil(ground.used.rows / MOST_ROWS));
  for (let row = 0; row < ground.used.rows; row += every) look(row);
  if (widest === 0) return null;
  return widthWithin(Math.max(widest, measure.heading(view.columnTitle?.(col) ?? columnName(col))) + PADDING);
}
