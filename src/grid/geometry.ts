/**
 * Where cells are on the plane that scrolls, and what lies at a point of it.
 * The plane begins with the column headings (HEAD_HEIGHT) and the row headings
 * (`rowHead`); both stay in view, and so may the first column (`sticky`).
 */
import { HEAD_HEIGHT, ROW_HEIGHT, columnAt, columnEdges, reveal, rowHeadWidth } from './window.ts';
import type { Target } from './pointer.ts';
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

/** At and below this width the first column stays in view. */
const NARROW = 640;
/** There it gets no more than this share of the view, and stays only if so many pixels are left beside it. */
const MOST_STICKY = 0.38;
const ROOM_BESIDE = 110;

export class Geometry {
  readonly edges: Float64Array;
  readonly rowHead: number;
  /** Width of the first column when it stays in view, else 0. */
  readonly sticky: number;
  readonly rowCount: number;

  constructor(view: SheetView, viewWidth: number, width: (col: number) => number = (col) => view.width(col)) {
    this.rowHead = rowHeadWidth(view.rowCount);
    this.rowCount = view.rowCount;
    const label = Math.min(width(0), Math.round(viewWidth * MOST_STICKY));
    this.sticky = viewWidth > 0 && viewWidth <= NARROW && viewWidth - this.rowHead - label >= ROOM_BESIDE ? label : 0;
    this.edges = columnEdges(view.colCount, (col) => (col === 0 && this.sticky ? this.sticky : width(col)));
  }

  get width(): number {
    return this.rowHead + this.edges[this.edges.length - 1]!;
  }

  get height(): number {
    return HEAD_HEIGHT + this.rowCount * ROW_HEIGHT;
  }

  /** A block of cells on the plane. */
  box({ top, left, bottom, right }: CellArea): Box {
    return {
      left: this.rowHead + this.edges[left]!,
      top: HEAD_HEIGHT + top * ROW_HEIGHT,
      width: this.edges[right + 1]! - this.edges[left]!,
      height: (bottom - top + 1) * ROW_HEIGHT,
    };
  }

  /** `x` and `y` from the corner of the view. */
  cellAt(port: Port, x: number, y: number): CellPlace {
    const across = Math.max(0, Math.min(port.width - 1, x) - this.rowHead);
    const down = Math.max(0, Math.min(port.height - 1, y) - HEAD_HEIGHT);
    const col = across < this.sticky ? 0 : columnAt(this.edges, across + port.left);
    const row = Math.floor((down + port.top) / ROW_HEIGHT);
    return { row: Math.max(0, Math.min(this.rowCount - 1, row)), col };
  }

  targetAt(port: Port, x: number, y: number): Target {
    const place = this.cellAt(port, x, y);
    const inRowHead = x < this.rowHead;
    if (y < HEAD_HEIGHT) return inRowHead ? { part: 'corner' } : { part: 'column', col: place.col };
    return inRowHead ? { part: 'row', row: place.row } : { part: 'cell', place };
  }

  /** The scroll position that shows a cell free of the headings. */
  reveal(port: Port, { row, col }: CellPlace): { top: number; left: number } {
    const top = reveal(port.top, port.height - HEAD_HEIGHT, row * ROW_HEIGHT, (row + 1) * ROW_HEIGHT);
    if (col === 0 && this.sticky) return { top, left: port.left };
    const room = port.width - this.rowHead - this.sticky;
    const left = reveal(port.left + this.sticky, room, this.edges[col]!, this.edges[col + 1]!) - this.sticky;
    return { top, left: Math.max(0, left) };
  }
}
