/** Where a selection goes: pure moves over the cells of a sheet that show. Nothing wraps. */
import { Shown } from './shown.ts';
import type { CellArea, CellPlace, Selection, SheetView } from './view.ts';

/** How far one move goes. */
export type Reach = 'one' | 'page' | 'block';
export type Way = 'up' | 'down' | 'left' | 'right';

/** What a move must know of the sheet. */
export interface Ground {
  readonly rowCount: number;
  readonly colCount: number;
  /** Counts of rows and columns that hold something. */
  readonly used: { readonly rows: number; readonly cols: number };
  filled(row: number, col: number): boolean;
  /** Rows that one page is. */
  readonly page: number;
  /** Those that show. */
  readonly rows: Shown;
  readonly cols: Shown;
}

/** The ground of a view; what takes looking is found when it is first asked for. */
export function groundOf(
  view: SheetView, page: () => number,
  rows = new Shown(view.hidden?.rows ?? [], view.rowCount), cols = new Shown(view.hidden?.cols ?? [], view.colCount),
): Ground {
  let used = view.used;
  const filled = (row: number, col: number): boolean => view.cell(row, col) !== null;
  return {
    rowCount: view.rowCount, colCount: view.colCount, filled, rows, cols,
    get used() { return (used ??= usedOf(view.rowCount, view.colCount, filled)); },
    get page() { return Math.max(1, page()); },
  };
}

export function areaOf({ anchor, focus }: Selection): CellArea {
  return {
    top: Math.min(anchor.row, focus.row), bottom: Math.max(anchor.row, focus.row),
    left: Math.min(anchor.col, focus.col), right: Math.max(anchor.col, focus.col),
  };
}

export const at = (row: number, col: number): Selection => ({ anchor: { row, col }, focus: { row, col } });
export const isSingle = ({ anchor, focus }: Selection): boolean => anchor.row === focus.row && anchor.col === focus.col;
export const inArea = (area: CellArea, row: number, col: number): boolean =>
  row >= area.top && row <= area.bottom && col >= area.left && col <= area.right;
export const sameSelection = (a: Selection, b: Selection): boolean =>
  a.anchor.row === b.anchor.row && a.anchor.col === b.anchor.col && a.focus.row === b.focus.row && a.focus.col === b.focus.col;

/** The selection, drawn in where it reaches beyond the sheet, its active cell one that shows; the same object when nothing is to change. */
export function within(selection: Selection, rows: Shown, cols: Shown): Selection {
  const inside = ({ row, col }: CellPlace): CellPlace => ({ row: Math.min(row, rows.total - 1), col: Math.min(col, cols.total - 1) });
  const seen = ({ row, col }: CellPlace): CellPlace => ({ row: rows.nearest(row), col: cols.nearest(col) });
  const focus = inside(selection.focus);
  const drawn = { anchor: isSingle(selection) ? seen(focus) : inside(selection.anchor), focus: seen(focus) };
  return sameSelection(drawn, selection) ? selection : drawn;
}

/** The focus moved to a place, alone or with the anchor left behind. */
export function goTo(selection: Selection, place: CellPlace, extend: boolean): Selection {
  return extend ? { anchor: selection.anchor, focus: place } : { anchor: place, focus: place };
}

const STEP: Record<Way, readonly [rows: -1 | 0 | 1, cols: -1 | 0 | 1]> = { up: [-1, 0], down: [1, 0], left: [0, -1], right: [0, 1] };

const same = (a: CellPlace, b: CellPlace): boolean => a.row === b.row && a.col === b.col;

/**
 * From a filled cell with a filled neighbour to the last one of that block;
 * otherwise to the next filled cell; when there is none, to the sheet's edge.
 */
function blockEdge(from: CellPlace, way: Way, ground: Ground): CellPlace {
  const next = ({ row, col }: CellPlace): CellPlace => {
    const [dRow, dCol] = STEP[way];
    return { row: dRow ? ground.rows.step(row, dRow) : row, col: dCol ? ground.cols.step(col, dCol) : col };
  };
  const filled = ({ row, col }: CellPlace): boolean => ground.filled(row, col);
  let at = from;
  let after = next(at);
  if (filled(at) && filled(after)) {
    while (!same(at, after) && filled(after)) {
      at = after;
      after = next(at);
    }
    return at;
  }
  // Nothing lies beyond the used part: no need to walk there.
  const { row, col } = from;
  const beyond = (way === 'down' && row >= ground.used.rows - 1) || (way === 'right' && col >= ground.used.cols - 1);
  while (!beyond && !same(at, after)) {
    at = after;
    if (filled(at)) return at;
    after = next(at);
  }
  if (way === 'up' || way === 'down') return { row: ground.rows.at(way === 'up' ? 0 : Infinity), col };
  return { row, col: ground.cols.at(way === 'left' ? 0 : Infinity) };
}

/** The place a move from another leads to; the same place at the sheet's edge. */
export function step(from: CellPlace, way: Way, reach: Reach, ground: Ground): CellPlace {
  if (reach === 'block') return blockEdge(from, way, ground);
  const [dRow, dCol] = STEP[way];
  const far = reach === 'page' ? ground.page : 1;
  return { row: dRow ? ground.rows.step(from.row, dRow * far) : from.row, col: dCol ? ground.cols.step(from.col, dCol * far) : from.col };
}

/** The first cell that shows. */
export function firstCell({ rows, cols }: Ground): CellPlace {
  return { row: rows.at(0), col: cols.at(0) };
}

/** The last filled cell of a row; the first cell when the row is empty. */
export function rowEnd(row: number, ground: Ground): CellPlace {
  for (let col = ground.used.cols - 1; col > 0; col--) if (ground.cols.has(col) && ground.filled(row, col)) return { row, col };
  return { row, col: ground.cols.at(0) };
}

/** The bottom right corner of what is used and shows. */
export function lastUsed({ used, rows, cols }: Ground): CellPlace {
  // What is next to a hidden end may lie beyond what is used.
  const last = (shown: Shown, count: number): number => shown.at(shown.rank(count) - 1);
  return { row: last(rows, used.rows), col: last(cols, used.cols) };
}

/** Whole rows from one to another; the active cell is the first of the row reached. */
export function wholeRows(from: number, to: number, ground: Ground): Selection {
  return { anchor: { row: from, col: ground.colCount - 1 }, focus: { row: to, col: ground.cols.at(0) } };
}

export function wholeColumns(from: number, to: number, ground: Ground): Selection {
  return { anchor: { row: ground.rowCount - 1, col: from }, focus: { row: ground.rows.at(0), col: to } };
}

export function wholeSheet(ground: Ground): Selection {
  return { anchor: { row: ground.rowCount - 1, col: ground.colCount - 1 }, focus: firstCell(ground) };
}

/** Counts of used rows and columns, found by looking, for a view that does not say. */
function usedOf(rowCount: number, colCount: number, filled: (row: number, col: number) => boolean): { rows: number; cols: number } {
  let rows = 0;
  let cols = 0;
  for (let row = 0; row < rowCount; row++) {
    for (let col = colCount - 1; col >= 0; col--) {
      if (!filled(row, col)) continue;
      rows = row + 1;
      cols = Math.max(cols, col + 1);
      break;
    }
  }
  return { rows, cols };
}

/**
 * An area without its empty tail where it reaches the shown end of the sheet,
 * so that copying a whole column copies what is in it. Never smaller than one cell.
 */
export function trimmed(area: CellArea, ground: Ground): CellArea {
  const bottom = area.bottom === ground.rowCount - 1 ? Math.max(area.top, Math.min(area.bottom, ground.used.rows - 1)) : area.bottom;
  const right = area.right === ground.colCount - 1 ? Math.max(area.left, Math.min(area.right, ground.used.cols - 1)) : area.right;
  return { ...area, bottom, right };
}
