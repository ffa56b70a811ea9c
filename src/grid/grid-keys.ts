/** Keys on the grid: moves, selection, opening and leaving. The list of keys is in keys.ts. */
import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { CellEditor } from './cell-editor.ts';
import { send, type Then } from './events.ts';
import { intentOf, type GoneBy, type Intent } from './keys.ts';
import { areaOf, firstCell, goTo, lastUsed, rowEnd, step, wholeColumns, wholeRows, wholeSheet, type Ground } from './select.ts';
import type { CellPlace, Selection } from './view.ts';

export interface KeysHost extends ReactiveControllerHost, HTMLElement {
  readonly selection: Selection;
  readonly ground: Ground;
  readonly readonly: boolean;
  select(selection: Selection, show?: boolean): void;
  /** Asks for more rows or columns at the end of the sheet. */
  askMore(rows: boolean, columns: boolean): void;
  say(sentence: string): void;
  /** Leaves a drag of the pointer; false when there is none. */
  giveUpDrag(): boolean;
  /** True when the key asked for the menu. */
  menuKey(event: KeyboardEvent): boolean;
}

export class GridKeys implements ReactiveController {
  /** Tab goes on through the page: until the grid is used, and after Escape. */
  leaving = true;
  /** The column in which a run of Tabs began. */
  #runStart: number | null = null;

  constructor(private readonly host: KeysHost, private readonly editor: CellEditor) {
    host.addController(this);
  }

  down = (event: KeyboardEvent): void => {
    // The input method's own keys; 229 is how some browsers mark the one that ends a composition.
    if (event.isComposing || event.keyCode === 229) return;
    if (this.editor.open) {
      this.leaving = false;
      this.editor.key(event);
      return;
    }
    if (event.key === 'Escape' && this.host.giveUpDrag()) {
      event.preventDefault();
      return;
    }
    const intent = intentOf(event);
    if (!intent) {
      this.host.menuKey(event);
      return;
    }
    if (intent.do === 'leave') {
      this.leaving = true;
      this.host.say('Tab leaves the cells now.');
      return;
    }
    if (intent.do === 'tab') {
      this.#tab(event, intent.way);
      return;
    }
    event.preventDefault();
    this.leaving = false;
    this.#obey(intent);
  };

  #tab(event: KeyboardEvent, way: 'left' | 'right'): void {
    const { focus } = this.host.selection;
    const { cols } = this.host.ground;
    const atEdge = cols.step(focus.col, way === 'left' ? -1 : 1) === focus.col;
    if (this.leaving || atEdge) return;
    event.preventDefault();
    this.go(way, 'tab');
  }

  #obey(intent: Exclude<Intent, { do: 'tab' | 'leave' }>): void {
    const { host } = this;
    const { selection, ground } = host;
    const { focus } = selection;
    this.#runStart = null;
    switch (intent.do) {
      case 'step':
        if (intent.reach === 'one') this.#askMore(focus, intent.way);
        return host.select(goTo(selection, step(focus, intent.way, intent.reach, host.ground), intent.extend));
      case 'rowStart': return host.select(goTo(selection, { row: focus.row, col: firstCell(ground).col }, intent.extend));
      case 'rowEnd': return host.select(goTo(selection, rowEnd(focus.row, ground), intent.extend));
      case 'first': return host.select(goTo(selection, firstCell(ground), intent.extend));
      case 'last': return host.select(goTo(selection, lastUsed(ground), intent.extend));
      case 'row': return host.select(wholeRows(selection.anchor.row, focus.row, ground), false);
      case 'column': return host.select(wholeColumns(selection.anchor.col, focus.col, ground), false);
      case 'all': return host.select(wholeSheet(ground), false);
      case 'edit': return this.editor.start('within');
      case 'clear':
        if (!host.readonly) send(host, 'tt-clear', { area: areaOf(selection) });
        return undefined;
    }
  }

  /** Moves on by one cell, as after an entry. */
  go(then: Then, by: GoneBy): void {
    if (then === 'stay') return;
    const { focus } = this.host.selection;
    const back = this.#runStart;
    this.#askMore(focus, then);
    let to = step(focus, then, 'one', this.host.ground);
    if (by === 'tab') this.#runStart = then === 'right' ? back ?? focus.col : back === null ? null : Math.min(back, to.col);
    else if (by === 'enter' && back !== null) to = { row: to.row, col: back };
    else this.#runStart = null;
    this.host.select({ anchor: to, focus: to });
  }

  /** Another place was chosen, in the grid or elsewhere: a run of Tabs is over. */
  endRun(): void {
    this.#runStart = null;
  }

  #askMore(from: CellPlace, way: 'up' | 'down' | 'left' | 'right'): void {
    const { rows: down, cols: across } = this.host.ground;
    const rows = way === 'down' && down.step(from.row, 1) === from.row;
    const columns = way === 'right' && across.step(from.col, 1) === from.col;
    if (rows || columns) this.host.askMore(rows, columns);
  }

  hostDisconnected(): void {
    this.leaving = true;
  }
}
