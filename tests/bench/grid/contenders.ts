/** The same cells in our grid, in a bare template, and in a general data grid library: each can draw, scroll, and change a cell. */
import { LitElement, css, html } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import { SlickGrid } from 'slickgrid';
import '../../../src/grid/index.ts';
import type { Grid } from '../../../src/grid/index.ts';
import { RowAxis } from '../../../src/grid/row-axis.ts';
import { rowWindow, type Run } from '../../../src/grid/window.ts';
import { COLUMNS, ROWS, WIDTH, plainText, type Cells } from './cells.ts';

export interface Contender {
  readonly name: string;
  /** What scrolls. */
  scroller(): HTMLElement;
  /** Draws for the first time; settled when it is laid out. */
  draw(into: HTMLElement): Promise<void>;
  /** Draws what a new scroll position shows, at once. */
  scrolled(): Promise<void>;
  /** Gives a cell another figure, and draws it. */
  change(row: number, col: number, tenths: number): Promise<void>;
  /** Reads a layout of what was drawn, so that it is made. */
  layout(): void;
}

export class Ours implements Contender {
  readonly name = 'ours';
  grid!: Grid;

  constructor(readonly cells: Cells) {}

  scroller = (): HTMLElement => this.grid.scroller;

  async draw(into: HTMLElement): Promise<void> {
    this.grid = document.createElement('tt-grid');
    this.grid.view = this.cells.view();
    into.append(this.grid);
    // The first update finds its size, the second draws what is in view.
    await this.grid.updateComplete;
    await this.grid.updateComplete;
  }

  async scrolled(): Promise<void> {
    this.grid.scroller.dispatchEvent(new Event('scroll'));
    await this.grid.updateComplete;
    await this.grid.updateComplete;
  }

  async change(row: number, col: number, tenths: number): Promise<void> {
    this.cells.change(row, col, tenths);
    this.grid.view = this.cells.view();
    await this.grid.updateComplete;
  }

  layout(): void {
    this.grid.renderRoot.querySelector('.body')!.getBoundingClientRect();
  }
}

const axis = new RowAxis({ rowCount: ROWS });

/** The least there can be: the same cells' texts by a keyed template, nothing else. */
class BareRows extends LitElement {
  static override styles = css`
    :host { display: block; overflow: auto; height: 100%; font: 14px/1.3 'DejaVu Sans', sans-serif; }
    .plane { position: relative; height: ${ROWS * 30 + 28}px; width: ${46 + COLUMNS * WIDTH}px; }
    .body { position: absolute; }
    .row { display: grid; grid-template-columns: 46px repeat(${COLUMNS}, ${WIDTH}px); height: 30px; }
    .cell { border: solid #ccc; border-width: 0 1px 1px 0; padding: 0 10px; line-height: 29px; white-space: nowrap; overflow: hidden; text-overflow: ellipsis; text-align: end; }
  `;

  run: Run = { first: 0, end: 0 };
  changed: { readonly row: number; readonly col: number; readonly text: string } | null = null;
  #top = 0;

  scrolled(): void {
    const towards = this.scrollTop > this.#top ? 1 : this.scrollTop < this.#top ? -1 : 0;
    this.#top = this.scrollTop;
    const run = rowWindow(axis, this.scrollTop, this.clientHeight - 28, towards);
    if (run.first === this.run.first && run.end === this.run.end) return;
    this.run = run;
    this.requestUpdate();
  }

  text(row: number, col: number): string {
    return this.changed?.row === row && this.changed.col === col ? this.changed.text : plainText(row, col);
  }

  protected override render() {
    const rows = Array.from({ length: this.run.end - this.run.first }, (_, i) => this.run.first + i);
    return html`<div class="plane"><div class="body">${repeat(rows, (row) => row, (row) => html`<div class="row"><div class="cell">${row + 1}</div>${
      Array.from({ length: COLUMNS }, (_, col) => html`<div class="cell">${this.text(row, col)}</div>`)}</div>`)}</div></div>`;
  }

  protected override updated(): void {
    this.renderRoot.querySelector<HTMLElement>('.body')!.style.top = `${this.run.first * 30}px`;
  }
}
customElements.define('bare-rows', BareRows);

export class Bare implements Contender {
  readonly name = 'bare rows';
  element!: BareRows;

  scroller = (): HTMLElement => this.element;

  async draw(into: HTMLElement): Promise<void> {
    this.element = document.createElement('bare-rows') as BareRows;
    into.append(this.element);
    await this.element.updateComplete;
    await this.scrolled();
  }

  async scrolled(): Promise<void> {
    this.element.scrolled();
    await this.element.updateComplete;
  }

  async change(row: number, col: number, tenths: number): Promise<void> {
    this.element.changed = { row, col, text: `${(tenths / 10).toFixed(1)} cm` };
    this.element.requestUpdate();
    await this.element.updateComplete;
  }

  layout(): void {
    this.element.renderRoot.querySelector('.body')!.getBoundingClientRect();
  }
}

type Item = { readonly row: number };

export class Library implements Contender {
  readonly name = 'data grid library';
  #grid!: SlickGrid<Item>;
  #box!: HTMLElement;
  #changed = new Map<string, string>();

  scroller = (): HTMLElement => this.#grid.getViewportNode()!;

  async draw(into: HTMLElement): Promise<void> {
    this.#box = into;
    const formatter = (row: number, col: number): string => (col === 0 ? String(row + 1) : this.#changed.get(`${row} ${col - 1}`) ?? plainText(row, col - 1));
    const columns = Array.from({ length: COLUMNS + 1 }, (_, col) => ({ id: col, name: String(col), field: 'row', width: col === 0 ? 46 : WIDTH, formatter }));
    const data = { getLength: () => ROWS, getItem: (row: number): Item => ({ row }), getItemMetadata: () => null };
    this.#grid = new SlickGrid<Item>(into, data as never, columns as never, { rowHeight: 30, enableCellNavigation: true, enableColumnReorder: false } as never);
  }

  async scrolled(): Promise<void> {
    // What it would put off by a timer is done now: the least that its step can take.
    this.scroller().dispatchEvent(new Event('scroll'));
    this.#grid.render();
  }

  async change(row: number, col: number, tenths: number): Promise<void> {
    this.#changed.set(`${row} ${col}`, `${(tenths / 10).toFixed(1)} cm`);
    this.#grid.updateCell(row, col + 1);
  }

  layout(): void {
    this.#box.querySelector('.slick-row')?.getBoundingClientRect();
  }
}
