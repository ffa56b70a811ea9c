/** Asks for the commands of a cell, by `tt-menu`: right mouse button, menu key, or a finger held on it. */
import { send } from './events.ts';
import { LongPress } from './long-press.ts';
import { areaOf, at, inArea, wholeColumns, wholeRows, wholeSheet, type Ground } from './select.ts';
import { inEditor } from './in-editor.ts';
import type { Places, Target } from './pointer.ts';
import type { Selection } from './view.ts';

export interface MenuHost extends HTMLElement {
  readonly selection: Selection;
  readonly ground: Ground;
  /** Keeps what is being typed; false when it could not be kept. */
  settle(): boolean;
  choose(selection: Selection, show: boolean): void;
  takeFocus(how: 'mouse' | 'touch' | 'keep'): void;
  /** Where the active cell is in the window. */
  activeBox(): DOMRect;
}

/** A browser may send its own event after the key or the finger that was answered already. */
const SAME = 800;

export class GridMenu {
  readonly #press: LongPress;
  #asked = -SAME;
  #rightDown = -SAME;

  constructor(private readonly host: MenuHost, private readonly places: Places) {
    this.#press = new LongPress((x, y) => this.#ask(x, y, 'touch'));
  }

  /** True once after a finger was held long enough, so that lifting it is no tap. */
  get held(): boolean {
    const { fired } = this.#press;
    this.#press.fired = false;
    return fired;
  }

  /** `finger`: one that may be held on a cell or a heading. */
  down(event: PointerEvent, finger: boolean): void {
    this.#press.cancel();
    this.#press.fired = false;
    if (event.button === 2) this.#rightDown = performance.now();
    if (finger) this.#press.down(event);
  }

  moved(event: PointerEvent): void {
    this.#press.move(event);
  }

  lifted(): void {
    this.#press.cancel();
  }

  contextMenu = (event: MouseEvent): void => {
    // A text being edited has its own.
    if (inEditor(event)) return;
    event.preventDefault();
    const now = performance.now();
    if (this.#rightDown > this.#asked && now - this.#rightDown < SAME) this.#ask(event.clientX, event.clientY, 'mouse');
    else if (now - this.#asked >= SAME) this.#askAtActive();
  };

  /** True when the key was the menu's. */
  key(event: KeyboardEvent): boolean {
    if (event.key !== 'ContextMenu' && !(event.key === 'F10' && event.shiftKey)) return false;
    event.preventDefault();
    this.#askAtActive();
    return true;
  }

  #askAtActive(): void {
    this.#asked = performance.now();
    const { left, bottom } = this.host.activeBox();
    send(this.host, 'tt-menu', { x: left, y: bottom, part: 'cell' });
  }

  #ask(x: number, y: number, how: 'mouse' | 'touch'): void {
    const { host } = this;
    if (!host.settle()) return;
    this.#press.cancel();
    this.#asked = performance.now();
    const target = this.places.targetAt(x, y);
    const wanted = this.#select(target);
    if (wanted) host.choose(wanted, false);
    host.takeFocus(how);
    send(host, 'tt-menu', { x, y, part: target.part });
  }

  /** What was pointed at becomes selected, unless it is already. */
  #select(target: Target): Selection | null {
    const { selection, ground } = this.host;
    const area = areaOf(selection);
    const inside = (wanted: Selection): boolean => {
      const { top, left, bottom, right } = areaOf(wanted);
      return inArea(area, top, left) && inArea(area, bottom, right);
    };
    const wanted = target.part === 'cell' ? at(target.place.row, target.place.col)
      : target.part === 'row' ? wholeRows(target.row, target.row, ground)
        : target.part === 'column' ? wholeColumns(target.col, target.col, ground) : wholeSheet(ground);
    return inside(wanted) ? null : wanted;
  }
}
