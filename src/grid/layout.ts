/** What follows from the view and the scroll position, worked out once for each: geometry, ground, tracks. */
import { Geometry } from './geometry.ts';
import { Kept } from './kept.ts';
import type { Target } from './pointer.ts';
import { RowAxis } from './row-axis.ts';
import type { Across } from './rows.ts';
import type { Scroller } from './scroller.ts';
import { groundOf, type Ground } from './select.ts';
import { HEAD_HEIGHT, planColumns, type Track } from './window.ts';
import type { CellPlace, Selection, SheetView } from './view.ts';

interface LayoutHost {
  readonly view: SheetView;
  readonly selection: Selection;
  readonly scroller: HTMLElement;
}

export class Layout {
  readonly #axis = new Kept<RowAxis>();
  readonly #geometry = new Kept<Geometry>();
  readonly #ground = new Kept<Ground>();
  readonly #across = new Kept<Across>();

  constructor(
    private readonly host: LayoutHost, private readonly scroll: Scroller,
    /** A width that is being dragged. */
    private readonly dragged: () => { readonly col: number; readonly width: number } | null,
  ) {}

  get geometry(): Geometry {
    const { view } = this.host;
    const dragged = this.dragged();
    const { width, height } = this.scroll.port;
    return this.#geometry.of([view, width, view.frozen ? height : 0, dragged], (before) => {
      const made = new Geometry(view, this.scroll.port, (col) => (dragged?.col === col ? dragged.width : view.width(col)), this.#rows());
      // A new view mostly has new texts in the same places.
      return before?.sameAs(made) ? before : made;
    });
  }

  /** A filter may leave very many stretches, and most edits change none of them. */
  #rows(): RowAxis {
    const { view } = this.host;
    return this.#axis.of([view.rowCount, view.hidden?.rows, view.tall], () => new RowAxis(view));
  }

  get ground(): Ground {
    const { view } = this.host;
    const { rows, cols } = this.geometry;
    return this.#ground.of([view, rows, cols], () => groundOf(view, () => this.#page(), rows.shown, cols));
  }

  /** Rows that one page is, so that one row of the last page stays in view. */
  #page(): number {
    const { port } = this.scroll;
    const { rows, stay } = this.geometry;
    const down = port.height - HEAD_HEIGHT - stay.height;
    const from = port.top + stay.height;
    return rows.shown.rank(rows.at(from + down)) - rows.shown.rank(rows.at(from)) - 1;
  }

  /** The same object for as long as nothing about it changed, so that rows can tell. */
  get across(): Across {
    const { edges, stay, cols } = this.geometry;
    const { first, end } = this.scroll.columns;
    const { col } = this.host.selection.focus;
    // Where every column is drawn the active one makes no difference.
    const all = first === 0 && end === edges.length - 1;
    return this.#across.of([edges, stay.cols, first, end, all ? -1 : col], () => ({
      kept: Array.from({ length: stay.cols }, (_, at): Track => ({ col: at })).filter((track) => 'col' in track && cols.has(track.col)),
      tracks: planColumns({ first, end }, col, edges, stay.cols),
    }));
  }

  /** The tracks as CSS has them: in all of a row, and among those that stay in view, the row headings first. */
  get trackSizes(): { readonly '--tracks': string; readonly '--kept': string } {
    const { rowHead, edges, stay } = this.geometry;
    const sized = (first: number, tracks: readonly Track[]): string =>
      [first, ...tracks.map((track) => ('gap' in track ? track.gap : edges[track.col + 1]! - edges[track.col]!))].map((size) => `${size}px`).join(' ');
    const { kept, tracks } = this.across;
    return { '--tracks': sized(rowHead + stay.width, tracks), '--kept': sized(rowHead, kept) };
  }

  targetAt(x: number, y: number): Target {
    const box = this.host.scroller.getBoundingClientRect();
    return this.geometry.targetAt(this.scroll.port, x - box.left, y - box.top);
  }

  cellAt(x: number, y: number): CellPlace {
    const box = this.host.scroller.getBoundingClientRect();
    return this.geometry.cellAt(this.scroll.port, x - box.left, y - box.top);
  }

  cellsBox(): { left: number; top: number; right: number; bottom: number } {
    const { left, top } = this.host.scroller.getBoundingClientRect();
    const { rowHead, stay } = this.geometry;
    const { width, height } = this.scroll.port;
    return { left: left + rowHead + stay.width, top: top + HEAD_HEIGHT + stay.height, right: left + width, bottom: top + height };
  }
}
