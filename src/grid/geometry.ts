/**
 * Where cells are on the plane that scrolls, and what lies at a point of it.
 * The plane begins with the column headings (HEAD_HEIGHT) and the row headings
 * (`rowHead`); both stay in view, and so do the sheet's first rows and columns
 * where it asks for it (`stay`), and the first column on a narrow view.
 */
import type { Target } from './pointer.ts';
import { ROW_HEIGHT, RowAxis } from './row-axis.ts';
import { Shown } from './shown.ts';
import { HEAD_HEIGHT, columnAt, columnEdges, reveal, rowHeadWidth } from './window.ts';
import type { CellArea, CellPlace, SheetView } from './view.ts';

/** The scrolled view, in CSS pixels. */
export interface Port {
  readonly top: number;
  readonly left: number;
  readonly width: number;
  readonly height: number;
}

export interface Box {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** The rows and columns that stay in view, hidden ones among them counted, and the room they take. */
export interface Stay {
  readonly rows: number;
  readonly cols: number;
  readonly width: number;
  readonly height: number;
}

/** At and below this width the first column stays in view. */
const NARROW = 640;
/** There it gets no more than this share of the view, */
const MOST_STICKY = 0.38;
/** and columns stay only as far as so many pixels are left beside them, */
const ROOM_BESIDE = 110;
/** rows as far as so many are left below. */
const ROOM_BELOW = 3 * ROW_HEIGHT;

export class Geometry {
  /** Where columns begin; hidden ones have no width. */
  readonly edges: Float64Array;
  readonly rowHead: number;
  readonly rows: RowAxis;
  readonly cols: Shown;
  readonly stay: Stay;

  constructor(
    view: SheetView, port: Pick<Port, 'width' | 'height'>,
    width: (col: number) => number = (col) => view.width(col), rows = new RowAxis(view),
  ) {
    this.rowHead = rowHeadWidth(view.rowCount);
    this.rows = rows;
    this.cols = new Shown(view.hidden?.cols ?? [], view.colCount);
    const first = this.cols.at(0);
    const label = Math.min(width(first), Math.round(port.width * MOST_STICKY));
    const across = port.width - this.rowHead - ROOM_BESIDE;
    const narrow = port.width > 0 && port.width <= NARROW && label <= across;
    this.edges = columnEdges(view.colCount, (col) => (!this.cols.has(col) ? 0 : narrow && col === first ? label : width(col)));
    this.stay = stayOf(view, narrow ? first + 1 : 0, this.edges, this.rows, across, port.height - HEAD_HEIGHT - ROOM_BELOW);
  }

  sameAs(other: Geometry): boolean {
    return this.rows === other.rows && this.rowHead === other.rowHead && this.stay.rows === other.stay.rows && this.stay.cols === other.stay.cols
      && this.edges.length === other.edges.length && this.edges.every((edge, col) => edge === other.edges[col]);
  }

  get width(): number {
    return this.rowHead + this.edges[this.edges.length - 1]!;
  }

  get height(): number {
    return HEAD_HEIGHT + this.rows.height;
  }

  /** A block of cells on the plane. */
  box({ top, left, bottom, right }: CellArea): Box {
    const from = this.rows.top(top);
    return {
      left: this.rowHead + this.edges[left]!,
      top: HEAD_HEIGHT + from,
      width: this.edges[right + 1]! - this.edges[left]!,
      height: this.rows.top(bottom + 1) - from,
    };
  }

  /** `x` and `y` from the corner of the view. */
  cellAt(port: Port, x: number, y: number): CellPlace {
    const across = Math.max(0, Math.min(port.width - 1, x) - this.rowHead);
    const down = Math.max(0, Math.min(port.height - 1, y) - HEAD_HEIGHT);
    const col = columnAt(this.edges, across < this.stay.width ? across : across + port.left);
    const row = this.rows.at(down < this.stay.height ? down : down + port.top);
    return { row, col: this.cols.nearest(col) };
  }

  targetAt(port: Port, x: number, y: number): Target {
    const place = this.cellAt(port, x, y);
    const inRowHead = x < this.rowHead;
    if (y < HEAD_HEIGHT) return inRowHead ? { part: 'corner' } : { part: 'column', col: place.col };
    return inRowHead ? { part: 'row', row: place.row } : { part: 'cell', place };
  }

  /** The scroll position that shows a cell free of the headings and of what stays in view. */
  reveal(port: Port, { row, col }: CellPlace): { top: number; left: number } {
    const { stay, rows, edges } = this;
    const down = port.height - HEAD_HEIGHT - stay.height;
    const across = port.width - this.rowHead - stay.width;
    const top = row < stay.rows ? port.top : reveal(port.top + stay.height, down, rows.top(row), rows.top(row + 1)) - stay.height;
    const left = col < stay.cols ? port.left : reveal(port.left + stay.width, across, edges[col]!, edges[col + 1]!) - stay.width;
    return { top: Math.max(0, top), left: Math.max(0, left) };
  }
}

/** As many of the rows and columns that are to stay as leave room for the rest. */
function stayOf({ frozen, rowCount, colCount }: SheetView, least: number, edges: Float64Array, axis: RowAxis, across: number, down: number): Stay {
  let cols = Math.min(Math.max(least, frozen?.cols ?? 0), colCount - 1);
  while (cols > least && edges[cols]! > across) cols--;
  let rows = Math.min(frozen?.rows ?? 0, rowCount - 1);
  while (rows > 0 && axis.top(rows) > down) rows--;
  return { rows, cols, width: edges[cols]!, height: axis.top(rows) };
}
