/**
 * Which rows and columns have to be in the document for what can be seen:
 * plain arithmetic on numbers, in CSS pixels. Runs of rows are runs of ranks
 * (see shown.ts): with nothing hidden a rank is the row itself.
 */
import type { RowAxis } from './row-axis.ts';

export const HEAD_HEIGHT = 28;
/** Sheets with more columns than this get only those in view. */
export const ALL_COLUMNS = 40;

/** `first` up to, not including, `end`. */
export interface Run {
  readonly first: number;
  readonly end: number;
}

/** Before the view has a size: nothing can be seen, and drawing it would only have to be done twice. */
const NOTHING: Run = { first: 0, end: 0 };

const clamp = (n: number, low: number, high: number): number => Math.max(low, Math.min(high, n));

/** Windows start and end at multiples of this, so that small scrolls need no work. */
const CHUNK = 4;
/** Rows beyond the edge the user moves towards, and beyond the other one. */
const AHEAD = 12;
const BEHIND = 4;

/** Ranks of the rows that a bare view of the plane shows. */
function inView(axis: RowAxis, top: number, height: number): Run {
  const first = axis.shown.rank(axis.at(top));
  // A view that ends on the line between two rows does not show the second.
  const end = axis.shown.rank(axis.at(Math.max(top, top + height - 0.01))) + 1;
  return { first, end };
}

/**
 * The rows to have for a scroll position. `towards` is the last movement's
 * direction: 1 down, -1 up, 0 none. `from` is the rank of the first row that scrolls.
 */
export function rowWindow(axis: RowAxis, scrollTop: number, height: number, towards: -1 | 0 | 1, from = 0): Run {
  if (height <= 0) return NOTHING;
  const above = towards > 0 ? BEHIND : AHEAD;
  const below = towards < 0 ? BEHIND : AHEAD;
  const seen = inView(axis, scrollTop, height);
  const first = Math.floor((seen.first - above) / CHUNK) * CHUNK;
  const end = Math.ceil((seen.end + below) / CHUNK) * CHUNK;
  return { first: clamp(first, from, axis.shown.count), end: clamp(end, from, axis.shown.count) };
}

/** True when every row of the bare view is inside the run: nothing blank can be seen. */
export function covers(run: Run, axis: RowAxis, scrollTop: number, height: number): boolean {
  const seen = inView(axis, scrollTop, height);
  return run.first <= seen.first && run.end >= seen.end;
}

/** Stands among the rows for room that is left where there are none. */
export const GAP = -1;

export interface RowPlan {
  /** In order, with `GAP` where rows are left out; the kept row is among them even when it is far away. */
  readonly rows: readonly number[];
  /** Top of the first of them. */
  readonly top: number;
  /** Height of the gap. */
  readonly gap: number;
}

/** The rows of a window and the one that must never leave the document; a row that stays in view by itself needs no keeping. */
export function planRows(run: Run, keep: number, axis: RowAxis, from = 0): RowPlan {
  const { shown } = axis;
  const rows = Array.from({ length: Math.max(0, run.end - run.first) }, (_, i) => shown.at(run.first + i));
  const first = rows[0] ?? shown.at(run.first);
  const top = axis.top(first);
  const rank = shown.rank(keep);
  if (keep >= axis.rowCount || !shown.has(keep) || rank < from || (rank >= run.first && rank < run.end)) return { rows, top, gap: 0 };
  if (rank < run.first) return { rows: [keep, GAP, ...rows], top: axis.top(keep), gap: top - axis.top(keep) - axis.heightOf(keep) };
  const end = rows.length ? axis.top(rows.at(-1)!) + axis.heightOf(rows.at(-1)!) : top;
  return { rows: [...rows, GAP, keep], top, gap: axis.top(keep) - end };
}

/** Where each column starts; one more entry than columns, the last is the width of all. */
export function columnEdges(colCount: number, width: (col: number) => number): Float64Array {
  const edges = new Float64Array(colCount + 1);
  for (let col = 0; col < colCount; col++) edges[col + 1] = edges[col]! + width(col);
  return edges;
}

/** The column at a distance from the first one's edge; the nearest when it lies outside. */
export function columnAt(edges: Float64Array, x: number): number {
  let low = 0;
  let high = edges.length - 2;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (edges[middle]! <= x) low = middle;
    else high = middle - 1;
  }
  return Math.max(0, low);
}

export function columnWindow(edges: Float64Array, scrollLeft: number, width: number): Run {
  const colCount = edges.length - 1;
  if (width <= 0) return NOTHING;
  if (colCount <= ALL_COLUMNS) return { first: 0, end: colCount };
  const first = Math.floor((columnAt(edges, scrollLeft) - 2) / CHUNK) * CHUNK;
  const end = Math.ceil((columnAt(edges, scrollLeft + width) + 3) / CHUNK) * CHUNK;
  return { first: clamp(first, 0, colCount), end: clamp(end, 0, colCount) };
}

/** What stands in a row from left to right: a column, or room of so many pixels for the ones left out. */
export type Track = { readonly col: number } | { readonly gap: number };

/**
 * The columns of a window and the active one, which must be there besides, of
 * those from `from` on. A hidden column has no width and is left out.
 */
export function planColumns(run: Run, keep: number, edges: Float64Array, from = 0): readonly Track[] {
  const colCount = edges.length - 1;
  const shows = (col: number): boolean => edges[col + 1]! > edges[col]!;
  const inside = Array.from({ length: Math.max(0, run.end - run.first) }, (_, i) => run.first + i);
  const outside = keep < from || keep >= colCount || (keep >= run.first && keep < run.end) ? [] : [keep];
  const cols = [...inside, ...outside].filter((col) => col >= from && shows(col)).sort((a, b) => a - b);
  const tracks: Track[] = [];
  let next = from;
  const room = (end: number): void => {
    if (edges[end]! > edges[next]!) tracks.push({ gap: edges[end]! - edges[next]! });
  };
  for (const col of cols) {
    room(col);
    tracks.push({ col });
    next = col + 1;
  }
  room(colCount);
  return tracks;
}

/** Wide enough for the last row's number. */
export function rowHeadWidth(rowCount: number): number {
  return 22 + 8 * Math.max(2, String(rowCount).length);
}

/**
 * The scroll position that shows `from`..`to` in `room` pixels of view, moved
 * as little as can be; what is larger than the view shows its beginning.
 */
export function reveal(scroll: number, room: number, from: number, to: number): number {
  if (from < scroll || to - from >= room) return from;
  return Math.max(scroll, to - room);
}
