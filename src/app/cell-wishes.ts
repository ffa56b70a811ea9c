/** Grants what the grid asks for besides typing: fills, menus, threads; and asks the grid for what commands want of it. */
import { cellName, columnName } from '../formula/index.ts';
import type { FillDetail, Grid, MenuDetail, Threads } from '../grid/index.ts';
import { sheetById } from '../workbook/index.ts';
import { fill } from './arrange.ts';
import type { CellMenu } from './cell-menu.ts';
import type { Desk } from './desk.ts';
import type { CellScreens } from './grid-commands.ts';
import { rowLabel } from './places.ts';
import { ThreadsOfCell } from './threads.ts';

interface Host {
  readonly renderRoot: HTMLElement | DocumentFragment;
  requestUpdate(): void;
}

export class CellWishes {
  readonly #threads: ThreadsOfCell;
  #book: unknown = null;

  constructor(private readonly host: Host, private readonly desk: () => Desk) {
    this.#threads = new ThreadsOfCell(desk, () => host.requestUpdate());
  }

  get threads(): Threads | null {
    return this.#threads.drawn;
  }

  get screens(): CellScreens {
    return {
      copyCells: (cut) => {
        if (!this.#grid.copy(cut)) this.desk().say(`The browser does not let the page copy. Press Ctrl + ${cut ? 'X' : 'C'} instead.`);
      },
      pasteCells: () => void this.#paste(),
      setColumnWidths: (how) => this.#grid.setWidths(how),
      showThreads: (way) => void this.#threads.toggle(way),
      alongThreads: () => void this.#threads.along(),
      backAlongThreads: () => this.#threads.back(),
    };
  }

  listen(root: EventTarget): void {
    const on = <T>(type: string, handle: (detail: T, event: Event) => void) => root.addEventListener(type, (event) => handle((event as CustomEvent<T>).detail, event));
    on<FillDetail>('tt-fill', (detail, event) => {
      if (!this.#fill(detail)) event.preventDefault();
    });
    on<MenuDetail>('tt-menu', ({ part, x, y }) => void this.#menu.open(this.desk(), part, this.#heading(part), x, y));
    on('tt-menu-left', () => this.#grid.focus());
    root.addEventListener('keydown', (event) => {
      if ((event as KeyboardEvent).key === 'Escape' && !this.#grid.editing) this.#threads.putAway();
    });
  }

  /** Call when the desk changed: threads follow the workbook. */
  followBook(): void {
    const { book } = this.desk();
    if (this.#book !== null && this.#book !== book) this.#threads.refresh();
    this.#book = book;
  }

  get #grid(): Grid {
    return this.host.renderRoot.querySelector('tt-grid')!;
  }

  get #menu(): CellMenu {
    return this.host.renderRoot.querySelector('tt-cell-menu')!;
  }

  #fill({ from, to }: FillDetail): boolean {
    const desk = this.desk();
    const { sheetId: sheet } = desk;
    return fill(desk, { sheet, ...from }, { sheet, ...to });
  }

  /** What the menu is of: "B6 · Ease at waist", "Rows 3 to 5". */
  #heading(part: MenuDetail['part']): string {
    const desk = this.desk();
    const { top, left, bottom, right } = desk.area;
    const { row, col } = desk.selection.focus;
    if (part === 'row') return top === bottom ? `Row ${top + 1}` : `Rows ${top + 1} to ${bottom + 1}`;
    if (part === 'column') return left === right ? `Column ${columnName(left)}` : `Columns ${columnName(left)} to ${columnName(right)}`;
    if (part === 'corner') return sheetById(desk.book, desk.sheetId)?.name ?? '';
    if (top !== bottom || left !== right) return `${cellName(top, left)} to ${cellName(bottom, right)}`;
    return [cellName(row, col), rowLabel(desk.sheet, row, col)].filter(Boolean).join(' · ');
  }

  async #paste(): Promise<void> {
    const desk = this.desk();
    const grid = this.#grid;
    grid.focus();
    try {
      const items = await navigator.clipboard.read();
      const read = async (kind: string): Promise<string | null> => {
        const item = items.find(({ types }) => types.includes(kind));
        return item ? (await item.getType(kind)).text() : null;
      };
      if (!grid.paste(await read('text/plain'), await read('text/html') ?? '')) desk.say('There is no text to paste.');
    } catch {
      desk.say('The browser does not let the page read the clipboard. Press Ctrl + V instead.');
    }
  }
}
