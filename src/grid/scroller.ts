/** What part of the sheet is in view, and which rows and columns must therefore be in the document. */
import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { send } from './events.ts';
import type { Geometry, Port } from './geometry.ts';
import { HEAD_HEIGHT, columnWindow, rowWindow, type Run } from './window.ts';
import type { CellPlace, Selection, SheetView } from './view.ts';

export interface ScrollHost extends ReactiveControllerHost, HTMLElement {
  readonly view: SheetView;
  readonly selection: Selection;
  readonly geometry: Geometry;
  readonly scroller: HTMLElement | null;
  /** Makes the plane as large as the sheet now is, so that any part of it can be scrolled to. */
  sizePlane(): void;
  /** After the view got another size; `wasSeen`: the active cell was in view before. */
  resized(wasSeen: boolean): void;
  /** After every scroll, for what is drawn over the view. */
  scrolled(): void;
}

/** How many more rows or columns the end of the sheet asks for. */
const MORE_ROWS = 100;
const MORE_COLUMNS = 26;

export class Scroller implements ReactiveController {
  port: Port = { top: 0, left: 0, width: 0, height: 0 };
  rows: Run = { first: 0, end: 0 };
  columns: Run = { first: 0, end: 0 };
  #towards: -1 | 0 | 1 = 0;
  /** Where each sheet was left, so that coming back finds the same part in view. */
  #left = new Map<number, { top: number; left: number }>();
  #asked = '';
  #observer: ResizeObserver | null = null;

  constructor(private readonly host: ScrollHost) {
    host.addController(this);
  }

  /** Reads where the view is; call when it may have changed. */
  read = (): void => {
    const element = this.host.scroller;
    if (!element) return;
    const { scrollTop: top, scrollLeft: left } = element;
    this.#towards = top > this.port.top ? 1 : top < this.port.top ? -1 : this.#towards;
    this.port = { ...this.port, top, left };
    if (this.plan()) this.host.requestUpdate();
    this.host.scrolled();
  };

  /** Works out the windows; true when one of them changed. */
  plan(): boolean {
    const { port } = this;
    const { rows: axis, stay, edges } = this.host.geometry;
    const down = Math.max(0, port.height - HEAD_HEIGHT - stay.height);
    const rows = rowWindow(axis, port.top + stay.height, down, this.#towards, axis.shown.rank(stay.rows));
    const columns = columnWindow(edges, port.left, port.width);
    const same = sameRun(rows, this.rows) && sameRun(columns, this.columns);
    this.rows = rows;
    this.columns = columns;
    return !same;
  }

  /** The user's own scrolling: at the sheet's end it asks for more of it. */
  scrolled = (): void => {
    this.read();
    const { port, host } = this;
    const end = port.top > 0 && port.top + port.height >= host.geometry.height - 1;
    const side = port.left > 0 && port.left + port.width >= host.geometry.width - 1;
    if (end || side) this.askMore(end, side);
  };

  /** Asks once for each size; the owner may answer at once with a larger view. */
  askMore(rows: boolean, columns: boolean): void {
    const { id, rowCount, colCount } = this.host.view;
    const wanted = { rowCount: rowCount + (rows ? MORE_ROWS : 0), colCount: colCount + (columns ? MORE_COLUMNS : 0) };
    const key = `${id} ${wanted.rowCount} ${wanted.colCount}`;
    if (key === this.#asked) return;
    this.#asked = key;
    send(this.host, 'tt-more-rows', wanted);
  }

  reveal(place: CellPlace): void {
    const { top, left } = this.host.geometry.reveal(this.port, place);
    this.#scrollTo(top, left);
  }

  #shows(place: CellPlace): boolean {
    const { top, left } = this.host.geometry.reveal(this.port, place);
    return top === this.port.top && left === this.port.left;
  }

  /** Remembers where a sheet is left. */
  leave(sheet: number): void {
    this.#left.set(sheet, { top: this.port.top, left: this.port.left });
  }

  /** Goes back to where a sheet was left; to its beginning the first time. */
  enter(sheet: number): void {
    const { top, left } = this.#left.get(sheet) ?? { top: 0, left: 0 };
    this.#towards = 0;
    this.#scrollTo(top, left);
  }

  #scrollTo(top: number, left: number): void {
    const element = this.host.scroller;
    if (!element || (top === this.port.top && left === this.port.left)) return;
    this.host.sizePlane();
    element.scrollTo({ top, left, behavior: 'instant' });
    this.read();
  }

  hostConnected(): void {
    this.#observer = new ResizeObserver(() => this.measure());
    if (this.host.scroller) this.#observer.observe(this.host.scroller);
  }

  hostDisconnected(): void {
    this.#observer?.disconnect();
    this.#observer = null;
  }

  /** Once the scrolling element is there. */
  begin(): void {
    this.#observer?.observe(this.host.scroller!);
    this.measure();
  }

  measure(): void {
    const element = this.host.scroller;
    if (!element) return;
    const { clientWidth: width, clientHeight: height } = element;
    if (width === this.port.width && height === this.port.height) return;
    const wasSeen = this.port.width > 0 && this.#shows(this.host.selection.focus);
    this.port = { ...this.port, width, height };
    this.plan();
    this.host.requestUpdate();
    this.host.resized(wasSeen);
  }
}

const sameRun = (a: Run, b: Run): boolean => a.first === b.first && a.end === b.end;
