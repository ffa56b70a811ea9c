/** The dialogs about cells: a note, sorting, and which rows are to show. What they are shown, and how their wishes are granted. */
import { html, type TemplateResult } from 'lit';
import { areaName, cellName, columnName } from '../formula/index.ts';
import type { Block, FilterWish, SortWish } from '../panels/index.ts';
import type { LaterTag } from '../panels/later.ts';
import {
  cellAt, filterEdit, firstRowIsHeadings, hasNeighbours, regionAround, sortEdit, usedArea, type Area, type Condition,
} from '../workbook/index.ts';
import { filterOff } from './arrange.ts';
import { attempt } from './attempt.ts';
import { textAt, valueAt } from './cell-values.ts';
import type { Desk } from './desk.ts';
import { summon } from './summon.ts';

export interface CellDialogScreens {
  openNote(): void;
  openSort(): void;
  openFilter(): void;
}

interface Host {
  readonly renderRoot: HTMLElement | DocumentFragment;
  requestUpdate(): void;
}

/** A list of columns longer than this is no help; further ones are not offered. */
const MOST_COLUMNS = 100;

export class CellDialogs {
  #sentence = '';
  /** The block that the open dialog is about, headings and all. */
  #area: Area | null = null;

  constructor(private readonly host: Host, private readonly desk: () => Desk) {}

  get screens(): CellDialogScreens {
    return {
      openNote: () => this.#openNote(),
      openSort: () => this.#openSort(),
      openFilter: () => this.#openFilter(),
    };
  }

  render(): TemplateResult {
    return html`<tt-note .sentence=${this.#sentence}></tt-note><tt-sort .sentence=${this.#sentence}></tt-sort><tt-filter .sentence=${this.#sentence}></tt-filter>`;
  }

  listen(root: EventTarget): void {
    /** A wish that is not granted keeps its dialog open, with the sentence in it. */
    const on = <T>(type: string, grant: (detail: T) => boolean) => root.addEventListener(type, (event) => {
      this.#sentence = '';
      if (!grant((event as CustomEvent<T>).detail)) {
        this.#sentence = this.desk().said;
        event.preventDefault();
      }
      this.host.requestUpdate();
    });
    on<{ note: string }>('tt-note', ({ note }) => this.#note(note));
    on<SortWish>('tt-sort', (wish) => this.#sort(wish));
    on<FilterWish>('tt-filter', (wish) => this.#filter(wish));
    on('tt-filter-off', () => {
      filterOff(this.desk());
      return true;
    });
  }

  #openNote(): void {
    const { sheet, selection: { focus: { row, col } } } = this.desk();
    this.#start(null);
    this.#open('tt-note', (panel) => panel.open(`${cellName(row, col)} of ${sheet.name}`, cellAt(sheet, row, col)?.note ?? ''));
  }

  #openSort(): void {
    const area = this.#block();
    if (!area) return;
    this.#start(area);
    const { focus } = this.desk().selection;
    this.#open('tt-sort', (panel) => panel.open(this.#described(area), Math.min(Math.max(focus.col, area.left), area.right)));
  }

  #openFilter(): void {
    const desk = this.desk();
    const { filter } = desk.sheet;
    const area = filter ? { sheet: desk.sheetId, ...filter.area } : this.#block();
    if (!area) return;
    this.#start(area);
    const { row, col } = desk.selection.focus;
    const first: Condition = {
      col: Math.min(Math.max(col, area.left), area.right), test: 'is',
      text: row >= area.top && row <= area.bottom ? textAt(desk, desk.sheetId)(row, col) : '',
    };
    const block = this.#described(area);
    this.#open('tt-filter', (panel) => panel.open(filter ? { ...block, headings: false } : block, filter?.conditions ?? [], first, filter !== undefined));
  }

  #start(area: Area | null): void {
    this.#sentence = '';
    this.#area = area;
    this.host.requestUpdate();
  }

  /** The selection; of a single cell the filled cells around it. */
  #block(): Area | null {
    const desk = this.desk();
    const { sheet, area } = desk;
    const alone = area.top === area.bottom && area.left === area.right;
    const used = usedArea(sheet);
    const block = alone ? regionAround(sheet, area.top, area.left) : used && { ...area, bottom: Math.min(area.bottom, used.bottom), right: Math.min(area.right, used.right) };
    if (block && block.bottom > block.top && block.right >= block.left) return block;
    desk.say('Select the rows first, or go to a cell among them: there are no two filled rows here.');
    return null;
  }

  #described(area: Area): Block {
    const desk = this.desk();
    const { sheet } = desk;
    const value = valueAt(desk, sheet.id);
    const shown = textAt(desk, sheet.id);
    const columns = Array.from({ length: Math.min(area.right - area.left + 1, MOST_COLUMNS) }, (_, at) => area.left + at);
    return {
      place: `${areaName(area)} of ${sheet.name}`,
      rows: area.bottom - area.top + 1,
      columns: columns.map((col) => ({ col, letter: columnName(col), heading: shown(area.top, col) })),
      headings: firstRowIsHeadings(sheet, area, (row, col) => value(row, col).kind === 'number'),
      neighbours: hasNeighbours(sheet, area),
    };
  }

  #note(note: string): boolean {
    const desk = this.desk();
    const { row, col } = desk.selection.focus;
    const { note: old = '', ...cell } = cellAt(desk.sheet, row, col) ?? { raw: '' };
    if (note === old) return true;
    return desk.do({ do: 'setCells', sheet: desk.sheetId, cells: [{ row, col, cell: { ...cell, ...(note && { note }) } }] });
  }

  #sort({ headings, keys }: SortWish): boolean {
    const desk = this.desk();
    const area = this.#rows(headings);
    return area !== null && attempt(desk, () => sortEdit(desk.book, area, keys, valueAt(desk, area.sheet)));
  }

  #filter({ headings, conditions }: FilterWish): boolean {
    const desk = this.desk();
    const area = this.#rows(headings);
    if (!area) return false;
    const before = desk.said;
    const done = attempt(desk, () => filterEdit(desk.book, area, conditions, valueAt(desk, area.sheet), textAt(desk, area.sheet)));
    // The same rows as before are no refusal.
    return done || desk.said === before;
  }

  /** The rows of the dialog's block without its headings. */
  #rows(headings: boolean): Area | null {
    const area = this.#area;
    return area && (headings ? { ...area, top: area.top + 1 } : area);
  }

  #open<Tag extends LaterTag>(tag: Tag, open: (panel: HTMLElementTagNameMap[Tag]) => void): void {
    summon(this.host, tag, open, (sentence) => this.desk().say(sentence));
  }
}
