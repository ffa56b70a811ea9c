/** Sets the widths of columns: by dragging, by steps, and to what is in them. All that change at once are one wish. */
import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { columnName } from '../formula/index.ts';
import { send, type ColumnWidth } from './events.ts';
import { areaOf, type Ground } from './select.ts';
import { fittingWidth, widthWithin } from './widths.ts';
import type { Selection, SheetView } from './view.ts';

export interface ColumnsHost extends ReactiveControllerHost, HTMLElement {
  readonly view: SheetView;
  readonly selection: Selection;
  readonly ground: Ground;
  /** The rows in view. */
  rowsInView(): readonly number[];
  say(sentence: string): void;
}

export class Columns implements ReactiveController {
  /** A width that is being dragged. */
  dragged: ColumnWidth & { readonly width: number } | null = null;

  constructor(private readonly host: ColumnsHost) {
    host.addController(this);
  }

  drag(col: number, change: number, state: 'on' | 'done' | 'dropped'): void {
    const { view } = this.host;
    const width = widthWithin(view.width(col) + change);
    this.dragged = state === 'on' ? { col, width } : null;
    this.host.requestUpdate();
    if (state === 'done' && width !== view.width(col)) this.#set(this.#alike(col), () => width);
  }

  /** Makes a column as wide as what is in it. */
  fit(col: number): void {
    this.#fit(this.#alike(col));
  }

  fitSelected(): void {
    const cols = this.#selected();
    this.#fit(cols);
    const { view } = this.host;
    const [first] = cols;
    if (first !== undefined) this.host.say(cols.length === 1 ? `Column ${columnName(first)} is ${view.width(first)} pixels wide.` : `${cols.length} columns are as wide as what is in them.`);
  }

  /** Makes the selected columns wider by so many pixels. */
  widen(by: number): void {
    const cols = this.#selected();
    const { view } = this.host;
    this.#set(cols, (col) => widthWithin(view.width(col) + by));
    const [first] = cols;
    if (first !== undefined) this.host.say(`Column ${columnName(first)} is ${this.host.view.width(first)} pixels wide.`);
  }

  #fit(cols: readonly number[]): void {
    const { host } = this;
    const rows = host.rowsInView();
    this.#set(cols, (col) => fittingWidth(host, host.view, host.ground, col, rows));
  }

  #selected(): readonly number[] {
    const { left, right } = areaOf(this.host.selection);
    return Array.from({ length: right - left + 1 }, (_, at) => left + at).filter((col) => this.host.ground.cols.has(col));
  }

  /** The column, and with it the others when it is one of several whole columns that are selected. */
  #alike(col: number): readonly number[] {
    const { top, bottom } = areaOf(this.host.selection);
    const { rows, rowCount } = this.host.ground;
    const cols = this.#selected();
    return rows.rank(top) === 0 && bottom === rowCount - 1 && cols.includes(col) ? cols : [col];
  }

  #set(cols: readonly number[], width: (col: number) => number | null): void {
    const { view } = this.host;
    const widths = cols.map((col) => ({ col, width: width(col) })).filter((each) => each.width !== view.width(each.col));
    if (widths.length) send(this.host, 'tt-width', { widths });
  }

  hostDisconnected(): void {
    this.dragged = null;
  }
}
