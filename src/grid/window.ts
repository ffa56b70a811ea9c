/**
 * Which rows and columns have to be in the document for what can be seen:
 * plain arithmetic on numbers, in CSS pixels.
 */

export const ROW_HEIGHT = 30;
export const HEAD_HEIGHT = 28;
/** Sheets with more columns than this get only those in view. */
export const ALL_COLUMNS = 40;

/** `first` up to, not including, `end`. */
export interface Run {
  readonly first: number;
  readonly end: number;
}

const clamp = (n: number, low: number, high: number): number => Math.max(low, Math.min(high, n));

/** Windows start and end at multiples of this, so that small scrolls need no work. */
const CHUNK = 4;
/** Rows beyond the edge the user moves towards, and beyond the other one. */
const AHEAD = 12;
const BEHIND = 4;

/**
 * The rows to have for a scroll position. `towards` is the last movement's
 * direction: 1 down, -1 up, 0 none.
 */
export function rowWindow(scrollTop: number, height: number, rowCount: number, towards: -1 | 0 | 1): Run {
  const above = towards > 0 ? BEHIND : AHEAD;
  const below = towards < 0 ? BEHIND : AHEAD;
  const first = Math.floor((Math.floor(scrollTop / ROW_HEIGHT) - above) / CHUNK) * CHUNK;
  const end = Math.ceil((Math.ceil((scrollTop + height) / ROW_HEIGHT) + below) / CHUNK) * CHUNK;
  return { first: clamp(first, 0, rowCount), end: clamp(end, 0, rowCount) };
}

/** True when every row of the bare view is inside the run: nothing blank can be seen. */
export function covers(run: Run, scrollTop: number, height: number, rowCount: number): boolean {
  const first = clamp(Math.floor(scrollTop / ROW_HEIGHT), 0, rowCount);
  const end = clamp(Math.ceil((scrollTop + height) / ROW_HEIGHT), 0, rowCount);
  return run.first <= first && run.end >= end;
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

/** The rows of a window and the one that must never leave the document. */
export function planRows(run: Run, keep: number, rowCount: number): RowPlan {
  const rows = Array.from({ length: Math.max(0, run.end - run.first) }, (_, i) => run.first + i);
  if (keep < 0 || keep >= rowCount || (keep >= run.first && keep < run.end)) return { rows, top: run.first * ROW_HEIGHT, gap: 0 };
  if (keep < run.first) return { rows: [keep, GAP, ...rows], top: keep * ROW_HEIGHT, gap: (run.first - keep - 1) * ROW_HEIGHT };
  return { rows: [...rows, GAP, keep], top: run.first * ROW_HEIGHT, gap: (keep - run.end) * ROW_HEIGHT };
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
  if (colCount <= ALL_COLUMNS) return { first: 0, end: colCount };
  const first = Math.floor((columnAt(edges, scrollLeft) - 2) / CHUNK) * CHUNK;
  const end = Math.ceil((columnAt(edges, scrollLeft + width) + 3) / CHUNK) * CHUNK;
  return { first: clamp(first, 0, colCount), end: clamp(end, 0, colCount) };
}

/** What stands in a row from left to right: a column, or room of so many pixels for the ones left out. */
export type Track = { readonly col: number } | { readonly gap: number };

/** The columns of a window and those that must be there besides: the active one, the label column that stays in view. */
export function planColumns(run: Run, keep: readonly number[], edges: Float64Array): readonly Track[] {
  const colCount = edges.length - 1;
  const outside = keep.filter((col) => col >= 0 && col < colCount && (col < run.first || col >= run.end));
  const cols = [...new Set(outside)].sort((a, b) => a - b);
  const inside = Array.from({ length: Math.max(0, run.end - run.first) }, (_, i) => run.first + i);
  const all = [...cols.filter((col) => col < run.first), ...inside, ...cols.filter((col) => col >= run.end)];
  const tracks: Track[] = [];
  let next = 0;
  for (const col of all) {
    if (col > next) tracks.push({ gap: edges[col]! - edges[next]! });
    tracks.push({ col });
    next = col + 1;
  }
  if (next < colCount) tracks.push({ gap: edges[colCount]! - edges[next]! });
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
