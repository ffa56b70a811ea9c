/** A sheet for the grid's tests: a small model that answers the grid's wishes as the application does. */
import { fixture, html } from '@open-wc/testing';
import { executeServerCommand, sendKeys, sendMouse } from '@web/test-runner-commands';
import '../../../src/grid/index.ts';
import { isFormula } from '../../../src/formula/index.ts';
import { joinEntryLine, type CellView, type EntryLine, type Grid, type SheetView } from '../../../src/grid/index.ts';
import { tokens } from '../../../src/look/index.ts';
import type { FunctionCard } from '../../../src/reckoning/protocol.ts';

document.adoptedStyleSheets = [...document.adoptedStyleSheets, tokens.styleSheet!];
document.body.style.margin = '0';

const card = (name: string, about: string, ...args: [string, string][]): FunctionCard => ({
  name, trade: true, about, topic: 'pleat', asks: [], rule: '', source: '', example: '', needs: [], units: '', differs: '', repeats: 0,
  args: args.map(([each, what]) => ({ name: each, about: what, kind: 'length', optional: false })),
});

export const CARDS: readonly FunctionCard[] = [
  card('EASE', 'Garment less body', ['body', 'the body’s measure'], ['garment', 'the finished garment']),
  card('PLEAT.CLOTH', 'Cloth for pleats', ['finished', 'width when pleated'], ['depth', 'how deep']),
  card('PLEAT.DEPTH', 'How deep pleats are', ['cloth', 'flat width'], ['finished', 'width when pleated'], ['pleats', 'how many pleats']),
];

export interface ModelOptions {
  readonly rowCount?: number;
  readonly colCount?: number;
  readonly width?: (col: number) => number;
  /** What a cell shows, in place of the model's own. */
  readonly cell?: SheetView['cell'];
  /** What else the view says. */
  readonly more?: Partial<SheetView>;
  readonly wide?: number;
  readonly high?: number;
}

const FIGURE = /^-?\d/;

export class Model {
  readonly cells = new Map<string, string>();
  readonly heard: { readonly type: string; readonly detail: unknown }[] = [];
  grid!: Grid;
  line!: EntryLine;
  rowCount: number;
  colCount: number;
  widths = new Map<number, number>();

  constructor(readonly options: ModelOptions = {}) {
    this.rowCount = options.rowCount ?? 100;
    this.colCount = options.colCount ?? 26;
  }

  raw = (row: number, col: number): string => this.cells.get(`${row} ${col}`) ?? '';

  put(row: number, col: number, raw: string): void {
    if (raw === '') this.cells.delete(`${row} ${col}`);
    else this.cells.set(`${row} ${col}`, raw);
  }

  cell = (row: number, col: number): CellView | null => {
    const raw = this.raw(row, col);
    if (raw === '') return null;
    const formula = isFormula(raw);
    const kind = formula || FIGURE.test(raw) ? 'figure' : 'text';
    return { text: formula ? `(${raw.slice(1)})` : raw, kind, typed: !formula && kind === 'figure', input: false, formula };
  };

  view(): SheetView {
    const width = this.options.width ?? ((col: number) => (col === 0 ? 160 : 110));
    return {
      id: 1, name: 'Skirt', rowCount: this.rowCount, colCount: this.colCount,
      width: (col) => this.widths.get(col) ?? width(col), cell: this.options.cell ?? this.cell, ...this.options.more,
    };
  }

  show(): void {
    this.grid.view = this.view();
    const { row, col } = this.grid.selection.focus;
    Object.assign(this.line, { row, col, place: `${String.fromCharCode(65 + col)}${row + 1}`, raw: this.raw(row, col) });
  }

  listen(root: HTMLElement): void {
    const on = <K extends keyof HTMLElementEventMap>(type: K, act: (event: HTMLElementEventMap[K]) => void): void => {
      root.addEventListener(type, (event) => {
        this.heard.push({ type, detail: (event as CustomEvent).detail });
        act(event);
      });
    };
    on('tt-commit', ({ detail }) => {
      this.put(detail.row, detail.col, detail.raw);
      this.show();
    });
    on('tt-clear', ({ detail: { area } }) => {
      for (let row = area.top; row <= area.bottom; row++) for (let col = area.left; col <= area.right; col++) this.put(row, col, '');
      this.show();
    });
    on('tt-paste', ({ detail: { area, table } }) => {
      table.forEach((line, row) => line.forEach((text, col) => this.put(area.top + row, area.left + col, text)));
      this.show();
    });
    on('tt-width', ({ detail: { widths } }) => {
      for (const { col, width } of widths) this.widths.set(col, width ?? 110);
      this.show();
    });
    on('tt-more-rows', ({ detail }) => {
      this.rowCount = detail.rowCount;
      this.colCount = detail.colCount;
      this.show();
    });
    on('tt-select', () => this.show());
    for (const type of ['tt-copy', 'tt-cut', 'tt-edit-start', 'tt-edit-change', 'tt-edit-end', 'tt-go', 'tt-name', 'tt-fill', 'tt-menu'] as const) on(type, () => undefined);
  }

  of<K extends keyof HTMLElementEventMap>(type: K): HTMLElementEventMap[K] extends CustomEvent<infer D> ? D[] : never {
    return this.heard.filter((each) => each.type === type).map((each) => each.detail) as never;
  }
}

/** A model with its grid and entry line in the page, the active cell A1 with the focus. */
export async function sheet(cells: Record<string, string> = {}, options: ModelOptions = {}): Promise<Model> {
  const model = new Model(options);
  for (const [name, raw] of Object.entries(cells)) {
    const [, letter, number] = /^([A-Z])(\d+)$/.exec(name)!;
    model.put(Number(number) - 1, letter!.charCodeAt(0) - 65, raw);
  }
  const root = await fixture<HTMLElement>(html`<main><h1 tabindex="-1">Test</h1><button id="before">before</button>
    <tt-entry-line></tt-entry-line><tt-grid></tt-grid><button id="after">after</button></main>`);
  model.listen(root);
  model.grid = root.querySelector('tt-grid')!;
  model.line = root.querySelector('tt-entry-line')!;
  for (const element of [model.grid, model.line]) {
    element.cards = CARDS;
    element.names = ['waist', 'full bust'];
    element.sheets = ['Skirt', 'Size chart'];
  }
  model.grid.style.width = `${options.wide ?? 780}px`;
  model.grid.style.height = `${options.high ?? 420}px`;
  model.grid.rawAt = model.raw;
  joinEntryLine(model.line, model.grid);
  model.show();
  await model.grid.updateComplete;
  model.grid.focus();
  await settled(model);
  return model;
}

/** Everything drawn and placed. */
export async function settled({ grid, line }: Model): Promise<void> {
  await new Promise(requestAnimationFrame);
  await grid.updateComplete;
  await line.updateComplete;
  await new Promise(requestAnimationFrame);
}

export async function press(model: Model, ...keys: string[]): Promise<void> {
  for (const key of keys) {
    const parts = key.split('+');
    const last = parts.pop()!;
    for (const part of parts) await sendKeys({ down: part });
    await sendKeys({ press: last });
    for (const part of parts.reverse()) await sendKeys({ up: part });
  }
  await settled(model);
}

export async function type(model: Model, text: string): Promise<void> {
  await sendKeys({ type: text });
  await settled(model);
}

export const field = ({ grid }: Model): HTMLTextAreaElement => grid.renderRoot.querySelector('textarea')!;
export const lineField = ({ line }: Model): HTMLTextAreaElement => line.renderRoot.querySelector('textarea')!;

/** The cell that the field with the focus stands for. */
export const named = (model: Model): HTMLElement | null => model.grid.renderRoot.querySelector(`#${field(model).getAttribute('aria-activedescendant')}`);

/** `C9` of where the active cell is. */
export function active({ grid }: Model): string {
  const { row, col } = grid.selection.focus;
  return `${String.fromCharCode(65 + col)}${row + 1}`;
}

/** The cell's element, when it is in the document. */
export function cellOf({ grid }: Model, name: string): HTMLElement | null {
  const [, letter, number] = /^([A-Z])(\d+)$/.exec(name)!;
  const row = grid.renderRoot.querySelector(`[aria-rowindex="${Number(number) + 1}"]`);
  return row?.querySelector(`[aria-colindex="${letter!.charCodeAt(0) - 63}"]`) ?? null;
}

export function middle(element: Element): [number, number] {
  const box = element.getBoundingClientRect();
  return [Math.round(box.left + box.width / 2), Math.round(box.top + box.height / 2)];
}

export async function click(model: Model, name: string): Promise<void> {
  await sendMouse({ type: 'click', position: middle(cellOf(model, name)!) });
  await settled(model);
}

export async function drag(model: Model, from: [number, number], to: [number, number]): Promise<void> {
  await sendMouse({ type: 'move', position: from });
  await sendMouse({ type: 'down' });
  await sendMouse({ type: 'move', position: [Math.round((from[0] + to[0]) / 2), Math.round((from[1] + to[1]) / 2)] });
  await sendMouse({ type: 'move', position: to });
  await sendMouse({ type: 'up' });
  await settled(model);
}

/** One call of the browser's protocol; false when this test run offers none. */
export async function devtools(method: string, params: object): Promise<boolean> {
  try {
    await executeServerCommand('devtools', { method, params });
    return true;
  } catch (error) {
    if (/devtools/.test(String(error)) && /command/i.test(String(error))) return false;
    throw error;
  }
}
