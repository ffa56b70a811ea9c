/** What follows from the view and the scroll position, worked out once for each: geometry, ground, tracks. */
import { Geometry } from './geometry.ts';
import type { Target } from './pointer.ts';
import type { Scroller } from './scroller.ts';
import { groundOf, type Ground } from './select.ts';
import { HEAD_HEIGHT, ROW_HEIGHT, planColumns, type Track } from './window.ts';
import type { CellPlace, Selection, SheetView } from './view.ts';

interface LayoutHost {
  readonly view: SheetView;
  readonly selection: Selection;
  readonly scroller: HTMLElement;
  /** A width that is being dragged. */
  readonly dragged: { readonly col: number; readonly width: number } | null;
}

export class Layout {
  #geometry: { readonly of: readonly unknown[]; readonly is: Geometry } | null = null;
  #ground: { readonly view: SheetView; readonly is: Ground } | null = null;
  #tracks: { readonly of: string; readonly edges: Float64Array; readonly is: readonly Track[] } | null = null;

  constructor(private readonly host: LayoutHost, private readonly scroll: Scroller) {}

  get geometry(): Geometry {
    const { view, dragged } = this.host;
    const of = [view, this.scroll.port.width, dragged];
    if (!this.#geometry || of.some((each, index) => each !== this.#geometry!.of[index])) {
      this.#geometry = { of, is: new Geometry(view, this.scroll.port.width, (col) => (dragged?.col === col ? dragged.width : view.width(col))) };
    }
    return this.#geometry.is;
  }

  get ground(): Ground {
    const { view } = this.host;
    if (this.#ground?.view !== view) {
      this.#ground = { view, is: groundOf(view, () => Math.floor((this.scroll.port.height - HEAD_HEIGHT) / ROW_HEIGHT) - 1) };
    }
    return this.#ground.is;
  }

  /** The same array for as long as nothing about it changed, so that rows can tell. */
  get tracks(): readonly Track[] {
    const { edges, sticky } = this.geometry;
    const { first, end } = this.scroll.columns;
    const { col } = this.host.selection.focus;
    // Where every column is drawn the active one makes no difference.
    const all = first === 0 && end === edges.length - 1;
    const of = all ? 'all' : `${first} ${end} ${col} ${sticky}`;
    if (this.#tracks?.of !== of || this.#tracks.edges !== edges) {
      this.#tracks = { of, edges, is: planColumns({ first, end }, sticky ? [0, col] : [col], edges) };
    }
    return this.#tracks.is;
  }

  /** The tracks as CSS has them, the row headings first. */
  get trackSizes(): string {
    const { rowHead, edges } = this.geometry;
    return [rowHead, ...this.tracks.map((track) => ('gap' in track ? track.gap : edges[track.col + 1]! - edges[track.col]!))].map((size) => `${size}px`).join(' ');
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
    const { rowHead, sticky } = this.geometry;
    const { width, height } = this.scroll.port;
    return { left: left + rowHead + sticky, top: top + HEAD_HEIGHT, right: left + width, bottom: top + height };
  }
}
