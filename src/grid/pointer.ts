/**
 * Mouse, pen and finger on the grid.
 *
 * Mouse: press selects, drag extends (scrolling at the edges), Shift extends,
 * double click edits; headings select rows and columns; a heading's edge sets
 * the width. Pen and finger: a tap selects when it is lifted, a second tap
 * edits, held still it asks for the cell's commands; the browser makes a click
 * only of a touch that did not scroll. A click without a pointer (a screen
 * reader's) selects too. At the selected block there are handles to hold on to.
 */
import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { handleOf, type HandleKind } from './handles.ts';
import { inEditor } from './in-editor.ts';
import type { GridMenu } from './menu.ts';
import { areaOf, goTo, isSingle, wholeColumns, wholeRows, wholeSheet, type Ground } from './select.ts';
import type { CellPlace, Selection } from './view.ts';

/** What lies under the pointer. */
export type Target =
  | { readonly part: 'cell'; readonly place: CellPlace }
  | { readonly part: 'row'; readonly row: number }
  | { readonly part: 'column'; readonly col: number }
  | { readonly part: 'corner' };

export interface PointerHost extends ReactiveControllerHost, HTMLElement {
  readonly selection: Selection;
  readonly ground: Ground;
  readonly scroller: HTMLElement;
  /** True when a formula being typed took the cell as a reference. */
  pointAt(place: CellPlace, extend: boolean): boolean;
  /** Selects; `show` brings the active cell into view. */
  choose(selection: Selection, show: boolean): void;
  edit(): void;
  /** Keeps what is being typed before something else is selected; false when it could not be kept. */
  settle(): boolean;
  takeFocus(how: 'mouse' | 'touch'): void;
  dragWidth(col: number, change: number, state: 'on' | 'done' | 'dropped'): void;
  fitWidth(col: number): void;
  /** Shows how far a fill would reach. */
  showFill(to: CellPlace): void;
  /** Fills as far as was shown, or not. */
  endFill(done: boolean): void;
}

/** Where things are on the screen. */
export interface Places {
  /** What lies at a point of the window. */
  targetAt(x: number, y: number): Target;
  /** The cell nearest to a point of the window, among those in view. */
  cellAt(x: number, y: number): CellPlace;
  /** The part of the window in which cells can be seen, free of headings. */
  cellsBox(): { readonly left: number; readonly top: number; readonly right: number; readonly bottom: number };
}

type Drag =
  | { readonly of: 'cells' | 'pointing' | 'fill' }
  | { readonly of: 'rows' | 'columns'; readonly from: number }
  | { readonly of: 'width'; readonly col: number; readonly x: number };

const byFinger = (event: PointerEvent): boolean => event.pointerType === 'touch' || event.pointerType === 'pen';

export class GridPointer implements ReactiveController {
  #drag: Drag | null = null;
  #pointer = -1;
  #lastKind = 'mouse';
  /** The heading's edge that was pressed last: the double click itself may be on the captured scroller. */
  #lastEdge: number | null = null;
  #frame = 0;
  #at = { x: 0, y: 0 };

  constructor(private readonly host: PointerHost, private readonly places: Places, private readonly menu: GridMenu) {
    host.addController(this);
  }

  /** The editor keeps the focus and its selection while the grid is pressed. */
  mouseDown = (event: MouseEvent): void => {
    if (!inEditor(event) && !this.#onScrollbar(event)) event.preventDefault();
  };

  #onScrollbar(event: MouseEvent): boolean {
    const { scroller } = this.host;
    const { left, top } = scroller.getBoundingClientRect();
    return event.clientX - left >= scroller.clientWidth || event.clientY - top >= scroller.clientHeight;
  }

  down = (event: PointerEvent): void => {
    this.#lastKind = event.pointerType;
    if (inEditor(event) || this.#onScrollbar(event)) return;
    const edge = edgeOf(event);
    const handle = handleOf(event);
    const finger = byFinger(event);
    this.#lastEdge = edge;
    this.menu.down(event, finger && edge === null && !handle);
    if (event.button !== 0) return;
    if (edge !== null) this.#begin(event, { of: 'width', col: edge, x: event.clientX });
    else if (handle) this.#hold(event, handle);
    else if (!finger) this.#press(event, this.places.targetAt(event.clientX, event.clientY));
  };

  /** Leaves a drag where it is; what it would have filled stays as it was. */
  cancel(): boolean {
    if (!this.#drag) return false;
    if (this.#drag.of === 'fill') this.host.endFill(false);
    else if (this.#drag.of === 'width') this.host.dragWidth(this.#drag.col, 0, 'dropped');
    this.#end();
    return true;
  }

  #hold(event: PointerEvent, handle: HandleKind): void {
    if (!this.host.settle()) return;
    this.host.takeFocus(byFinger(event) ? 'touch' : 'mouse');
    const { top, left, bottom, right } = areaOf(this.host.selection);
    // The corner across stays.
    if (handle === 'start') this.host.choose({ anchor: { row: bottom, col: right }, focus: { row: top, col: left } }, false);
    if (handle === 'end') this.host.choose({ anchor: { row: top, col: left }, focus: { row: bottom, col: right } }, false);
    this.#begin(event, { of: handle === 'fill' ? 'fill' : 'cells' });
  }

  #press(event: PointerEvent, target: Target): void {
    if (target.part === 'cell' && this.host.pointAt(target.place, event.shiftKey)) {
      this.#begin(event, { of: 'pointing' });
      return;
    }
    if (!this.host.settle()) return;
    this.host.takeFocus('mouse');
    if (target.part === 'cell') {
      this.#cell(target.place, event.shiftKey);
      this.#begin(event, { of: 'cells' });
    } else {
      this.#head(target, event);
    }
  }

  #head(target: Exclude<Target, { part: 'cell' }>, event: PointerEvent): void {
    const { anchor } = this.host.selection;
    if (target.part === 'row') {
      const from = event.shiftKey ? anchor.row : target.row;
      this.#rows(from, target.row);
      this.#begin(event, { of: 'rows', from });
    } else if (target.part === 'column') {
      const from = event.shiftKey ? anchor.col : target.col;
      this.#columns(from, target.col);
      this.#begin(event, { of: 'columns', from });
    } else if (target.part === 'corner') {
      this.#all();
    }
  }

  #cell(place: CellPlace, extend: boolean): void {
    this.host.choose(goTo(this.host.selection, place, extend), true);
  }

  #rows(from: number, to: number): void {
    this.host.choose(wholeRows(from, to, this.host.ground), false);
  }

  #columns(from: number, to: number): void {
    this.host.choose(wholeColumns(from, to, this.host.ground), false);
  }

  #all(): void {
    this.host.choose(wholeSheet(this.host.ground), false);
  }

  #begin(event: PointerEvent, drag: Drag): void {
    this.#drag = drag;
    this.#pointer = event.pointerId;
    this.#at = { x: event.clientX, y: event.clientY };
    // A pointer that is already gone (or was made by a script) cannot be captured; the drag then ends with it.
    if (event.isTrusted) this.host.scroller.setPointerCapture(event.pointerId);
  }

  move = (event: PointerEvent): void => {
    this.menu.moved(event);
    if (!this.#drag || event.pointerId !== this.#pointer) return;
    this.#at = { x: event.clientX, y: event.clientY };
    this.#follow();
    if (this.#drag.of !== 'width' && !this.#frame) this.#frame = requestAnimationFrame(this.#creep);
  };

  up = (event: PointerEvent): void => {
    this.menu.lifted();
    const drag = this.#drag;
    if (!drag || event.pointerId !== this.#pointer) return;
    const done = event.type === 'pointerup';
    if (drag.of === 'width') this.host.dragWidth(drag.col, event.clientX - drag.x, done ? 'done' : 'dropped');
    if (drag.of === 'fill') this.host.endFill(done);
    this.#end();
  };

  click = (event: MouseEvent): void => {
    if (inEditor(event) || this.menu.held) return;
    const script = event.detail === 0;
    const finger = this.#lastKind === 'touch' || this.#lastKind === 'pen';
    if ((!script && !finger) || this.#lastEdge !== null || handleOf(event)) return;
    this.#tap((script ? targetOf(event) : null) ?? this.places.targetAt(event.clientX, event.clientY));
  };

  #tap(target: Target): void {
    if (target.part === 'cell' && this.host.pointAt(target.place, false)) return;
    if (!this.host.settle()) return;
    this.host.takeFocus('touch');
    if (target.part === 'row') this.#rows(target.row, target.row);
    else if (target.part === 'column') this.#columns(target.col, target.col);
    else if (target.part === 'corner') this.#all();
    else this.#tapCell(target.place);
  }

  #tapCell(place: CellPlace): void {
    const { selection } = this.host;
    const { focus } = selection;
    if (isSingle(selection) && focus.row === place.row && focus.col === place.col) this.host.edit();
    else this.#cell(place, false);
  }

  doubleClick = (event: MouseEvent): void => {
    if (inEditor(event) || this.#lastKind !== 'mouse' || handleOf(event)) return;
    if (this.#lastEdge !== null) this.host.fitWidth(this.#lastEdge);
    else if (this.places.targetAt(event.clientX, event.clientY).part === 'cell') this.host.edit();
  };

  #follow(): void {
    const drag = this.#drag!;
    const { x, y } = this.#at;
    if (drag.of === 'width') {
      this.host.dragWidth(drag.col, x - drag.x, 'on');
      return;
    }
    const place = this.places.cellAt(x, y);
    if (drag.of === 'rows') this.#rows(drag.from, place.row);
    else if (drag.of === 'columns') this.#columns(drag.from, place.col);
    else if (drag.of === 'pointing') this.host.pointAt(place, true);
    else if (drag.of === 'fill') this.host.showFill(place);
    else this.#cell(place, true);
  }

  /** While the pointer is held outside, the grid scrolls towards it. */
  #creep = (): void => {
    this.#frame = 0;
    if (!this.#drag || this.#drag.of === 'width') return;
    const box = this.places.cellsBox();
    const beyond = (at: number, low: number, high: number): number => (at < low ? at - low : at > high ? at - high : 0);
    const dx = this.#drag.of === 'rows' ? 0 : beyond(this.#at.x, box.left, box.right);
    const dy = this.#drag.of === 'columns' ? 0 : beyond(this.#at.y, box.top, box.bottom);
    if (dx === 0 && dy === 0) return;
    this.host.scroller.scrollBy(dx / 2, dy / 2);
    this.#follow();
    this.#frame = requestAnimationFrame(this.#creep);
  };

  #end(): void {
    this.#drag = null;
    this.#pointer = -1;
    cancelAnimationFrame(this.#frame);
    this.#frame = 0;
  }

  hostDisconnected(): void {
    this.menu.lifted();
    this.#end();
  }
}

/** The column whose right edge was pressed. */
function edgeOf(event: Event): number | null {
  const edge = (event.composedPath()[0] as Element).closest?.<HTMLElement>('.edge');
  return edge ? Number(edge.dataset['col']) : null;
}

/** A click without coordinates is on the element it names. */
function targetOf(event: Event): Target | null {
  const cell = (event.composedPath()[0] as Element).closest<HTMLElement>('[aria-colindex]');
  const row = cell?.closest<HTMLElement>('[aria-rowindex]');
  if (!cell || !row) return null;
  const at = { row: Number(row.ariaRowIndex) - 2, col: Number(cell.ariaColIndex) - 2 };
  if (at.row < 0) return at.col < 0 ? { part: 'corner' } : { part: 'column', col: at.col };
  return at.col < 0 ? { part: 'row', row: at.row } : { part: 'cell', place: at };
}
