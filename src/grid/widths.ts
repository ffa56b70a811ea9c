/** Widths of columns, in CSS pixels. */
const NARROWEST = 24;
const WIDEST = 1200;
/** A cell's own padding, its line, and a little room. */
const PADDING = 26;

export const widthWithin = (width: number): number => Math.round(Math.max(NARROWEST, Math.min(WIDEST, width)));

/** As wide as the widest of a column's heading and its cells that are drawn. */
export function fittingWidth(root: ParentNode, col: number): number {
  const range = document.createRange();
  let widest = NARROWEST;
  for (const cell of root.querySelectorAll(`[aria-colindex="${col + 2}"]`)) {
    range.selectNodeContents(cell.querySelector('span') ?? cell);
    widest = Math.max(widest, range.getBoundingClientRect().width);
  }
  return widthWithin(widest + PADDING);
}
