/**
 * `<tt-grid>`: one sheet's cells on the screen. Gets a `SheetView` and a
 * `Selection`, draws the part in view, and asks for everything else by events
 * (events.ts). It knows nothing of the workbook or of how results come about.
 *
 * How it is read aloud. The focus never leaves one text area, which lies over
 * the active cell, so that whatever is typed, an input method's first key too,
 * has somewhere to go. At rest the text area is a textbox that controls the
 * grid beside it (`aria-controls`) and names the active cell by
 * `aria-activedescendant`, the relation that WAI-ARIA 1.2 allows a textbox to
 * have with a composite it controls; screen readers then read the cell with
 * its row, column and headings. While the editor is open the relation is taken
 * away and the text area is read as the text field it is. The active cell's
 * row and column are always in the document. What a move extends to, and how
 * to leave, is said once through a polite status line.
 *
 * Drawing. Rows are keyed by their number; a row's template is made again only
 * when something its look depends on changed. Only rows near the view are in
 * the document, and only columns near it when there are more than 40.
 */
import { LitElement, render, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { isFormula } from '../formula/index.ts';
import type { FunctionCard } from '../reckoning/protocol.ts';
import { ActiveCell } from './active-cell.ts';
import { CellEditor, type CellEditorHost } from './cell-editor.ts';
import { Columns, type ColumnsHost } from './columns.ts';
import { editorStyles } from './editor-styles.ts';
import { send, type Then } from './events.ts';
import { Filling } from './filling.ts';
import type { Geometry } from './geometry.ts';
import { GridClipboard } from './grid-clipboard.ts';
import { GridKeys, type KeysHost } from './grid-keys.ts';
import { gridTemplate } from './grid-template.ts';
import type { GoneBy } from './keys.ts';
import { Layout } from './layout.ts';
import { GridMenu, type MenuHost } from './menu.ts';
import { outlines, partsOf, placeEditor } from './overlay.ts';
import { GridPointer, type PointerHost } from './pointer.ts';
import { pointedName } from './pointing.ts';
import { Scroller, type ScrollHost } from './scroller.ts';
import { at, goTo, sameSelection, within, type Ground } from './select.ts';
import { spokenElsewhere, spokenSelection } from './spoken.ts';
import { gridStyles } from './styles.ts';
import { threadsTemplate } from './threads.ts';
import { Voice } from './voice.ts';
import { WIDTH_STEP } from './widths.ts';
import { HEAD_HEIGHT, planRows } from './window.ts';
import { NO_VIEW, type CellPlace, type Draft, type Selection, type SheetView, type Threads } from './view.ts';

@customElement('tt-grid')
export class Grid extends LitElement implements CellEditorHost, ColumnsHost, KeysHost, MenuHost, PointerHost, ScrollHost {
  static override styles = [editorStyles, gridStyles];

  @property({ attribute: false }) view: SheetView = NO_VIEW;
  /** May be set from outside; the grid changes it too and says so by `tt-select`. */
  @property({ attribute: false }) selection: Selection = at(0, 0);
  /** What the editor starts with: the text as it was typed. */
  @property({ attribute: false }) rawAt: (row: number, col: number) => string = (row, col) => this.view.cell(row, col)?.text ?? '';
  /** What is being typed for a cell in the entry line. */
  @property({ attribute: false }) draft: Draft | null = null;
  /** Takes a reference while a formula is typed elsewhere; true when it did. */
  @property({ attribute: false }) pointElsewhere: ((reference: string) => boolean) | null = null;
  @property({ attribute: false }) cards: readonly FunctionCard[] = [];
  @property({ attribute: false }) names: readonly string[] = [];
  @property({ attribute: false }) sheets: readonly string[] = [];
  /** Threads to draw from one cell of this sheet to others. */
  @property({ attribute: false }) threads: Threads | null = null;
  /** Cells can be looked at and copied, not changed. */
  @property({ type: Boolean, reflect: true }) readonly = false;

  /** The last to touch the grid was a finger or a pen, which need larger handles. */
  @state() private touch = false;

  /** Asked for before it is there, too, so it is not kept. */
  @query('.scroller') readonly scroller!: HTMLElement;
  @query('.plane', true) private plane!: HTMLElement;
  @query('.body', true) private body!: HTMLElement;
  @query('.cell-editor', true) private editorBox!: HTMLElement;
  @query('.threads', true) private threadsLayer!: HTMLElement;
  @query('textarea', true) private field!: HTMLTextAreaElement;

  readonly #columns = new Columns(this);
  readonly #filling = new Filling(this);
  readonly #scroll = new Scroller(this);
  readonly #layout = new Layout(this, this.#scroll, () => this.#columns.dragged);
  readonly #editor = new CellEditor(this, () => this.field);
  readonly #menu = new GridMenu(this, this.#layout);
  readonly #pointer = new GridPointer(this, this.#layout, this.#menu);
  readonly #keys = new GridKeys(this, this.#editor);
  readonly #voice = new Voice(this);
  readonly #clipboard = new GridClipboard(this);
  readonly #active = new ActiveCell();
  #plan = { top: 0, gap: 0 };
  /** The selection as the grid itself left it: another one came from outside and has to be shown. */
  #own: Selection = this.selection;
  /** The active cell asked for does not show; another one is active in its place. */
  #moved: CellPlace | null = null;
  /** The block pointed at for a formula elsewhere. */
  #pointed: Selection | null = null;
  #threadsDrawn = false;

  /** True while a cell is edited in the grid: the application's own keys should wait. */
  get editing(): boolean {
    return this.#editor.open;
  }

  /** The function in whose brackets the caret is. */
  get called(): string | null {
    return this.#editor.open ? this.#editor.core.called : null;
  }

  get geometry(): Geometry {
    return this.#layout.geometry;
  }

  get ground(): Ground {
    return this.#layout.ground;
  }

  override focus(): void {
    if (!this.hasUpdated) {
      void this.updateComplete.then(() => this.focus());
      return;
    }
    this.takeFocus('mouse');
    // In a window so low that the page scrolls, the cells come into it.
    this.scrollIntoView({ block: 'nearest' });
  }

  /** Opens the editor on what is in the active cell. */
  edit(): void {
    if (this.field.inputMode === 'none') {
      // An on-screen keyboard comes only with a new focus.
      this.field.blur();
      this.field.inputMode = 'text';
    }
    this.takeFocus('keep');
    this.#editor.start('within');
  }

  /** Makes the selected columns wider (1) or narrower (-1) by a step, or as wide as what is in them. */
  setWidths(how: 1 | -1 | 'fit'): void {
    if (how === 'fit') this.#columns.fitSelected();
    else this.#columns.widen(how * WIDTH_STEP);
  }

  /** Puts the selected cells on the clipboard, as the browser's own command does; false when it cannot. */
  copy(cut = false): boolean {
    this.takeFocus('keep');
    return document.execCommand(cut ? 'cut' : 'copy');
  }

  /** Puts cells from the clipboard in, as the browser's own command does; false when there are none. */
  paste(text: string | null, html: string): boolean {
    return this.#clipboard.take(text, html);
  }

  go(then: Then, by: GoneBy = 'enter'): void {
    this.#keys.go(then, by);
  }

  /** Selects, and shows the active cell unless told not to. */
  select(selection: Selection, show = true): void {
    this.#keys.leaving = false;
    if (!sameSelection(selection, this.selection)) {
      this.#own = selection;
      this.selection = selection;
      this.#voice.saySoon(() => spokenSelection(selection, this.ground));
      send(this, 'tt-select', { selection });
    }
    if (show) this.reveal(selection.focus);
  }

  /** Selects what the user pointed at: a run of Tabs is over. */
  choose(selection: Selection, show: boolean): void {
    this.#keys.endRun();
    this.select(selection, show);
  }

  /** Scrolls as little as it takes to see a cell. */
  reveal(place: CellPlace): void {
    this.#scroll.reveal(place);
  }

  sizePlane(): void {
    this.plane.style.width = `${this.geometry.width}px`;
    this.plane.style.height = `${this.geometry.height}px`;
  }

  resized(wasSeen: boolean): void {
    // An on-screen keyboard may have come up over the cell that is edited; a tablet may have been turned.
    if (this.#editor.open) this.reveal(this.#editor.place);
    else if (wasSeen) this.reveal(this.selection.focus);
  }

  scrolled(): void {
    if (this.threads) this.#drawThreads();
  }

  askMore(rows: boolean, columns: boolean): void {
    this.#scroll.askMore(rows, columns);
  }

  say(sentence: string): void {
    this.#voice.say(sentence);
  }

  pointAt(place: CellPlace, extend: boolean): boolean {
    if (this.#editor.open) return this.#editor.point(place, extend);
    const pointed = goTo(this.#pointed ?? at(place.row, place.col), place, extend);
    const taken = this.pointElsewhere?.(pointedName(pointed)) ?? false;
    this.#pointed = taken ? pointed : null;
    this.requestUpdate();
    return taken;
  }

  settle(): boolean {
    return !this.#editor.open || this.#editor.commit('stay');
  }

  takeFocus(how: 'mouse' | 'touch' | 'keep'): void {
    if (how !== 'keep') {
      this.field.inputMode = how === 'touch' ? 'none' : 'text';
      this.touch = how === 'touch';
    }
    this.#keys.leaving = false;
    this.field.focus({ preventScroll: true });
  }

  dragWidth(col: number, change: number, state: 'on' | 'done' | 'dropped'): void {
    this.#columns.drag(col, change, state);
  }

  fitWidth(col: number): void {
    this.#columns.fit(col);
  }

  showFill(to: CellPlace): void {
    this.#filling.show(to);
  }

  endFill(done: boolean): void {
    this.#filling.end(done);
  }

  giveUpDrag(): boolean {
    return this.#pointer.cancel();
  }

  menuKey(event: KeyboardEvent): boolean {
    return this.#menu.key(event);
  }

  rowsInView(): readonly number[] {
    const { first, end } = this.#scroll.rows;
    const { shown } = this.geometry.rows;
    return Array.from({ length: end - first }, (_, at) => shown.at(first + at));
  }

  activeBox(): DOMRect {
    return this.editorBox.getBoundingClientRect();
  }

  #blurred = (event: FocusEvent): void => {
    const root = this.renderRoot as ShadowRoot;
    // The window lost the focus, not the field.
    if (root.activeElement === this.field) return;
    this.#keys.leaving = true;
    if (!this.#editor.open) return;
    // The entry line shows the same text and goes on with it.
    if ((event.relatedTarget as Element | null)?.localName === 'tt-entry-line') this.#editor.handOver();
    else this.#editor.commit('stay');
  };

  protected override willUpdate(changed: PropertyValues<this>): void {
    const before = changed.get('view');
    if (changed.has('view')) {
      if (this.#editor.open && this.#editor.place.sheet !== this.view.id) this.#editor.commit('stay');
      if (before && before.id !== this.view.id) this.#scroll.leave(before.id);
    }
    if (changed.has('view') || changed.has('selection')) this.#stayInside();
    if (changed.has('draft') && !this.draft) this.#pointed = null;
    this.#scroll.plan();
  }

  /** A selection from outside, or a new view, may have the active cell where none shows. */
  #stayInside(): void {
    const { rows, cols } = this.ground;
    const inside = within(this.selection, rows, cols);
    if (inside === this.selection) return;
    this.#moved = this.selection.focus;
    this.selection = inside;
  }

  protected override firstUpdated(): void {
    this.#scroll.begin();
  }

  protected override updated(changed: PropertyValues<this>): void {
    const { geometry } = this;
    this.sizePlane();
    const { style } = this.plane;
    for (const [name, size] of Object.entries(this.#layout.trackSizes)) {
      if (style.getPropertyValue(name) !== size) style.setProperty(name, size);
    }
    // Not by custom properties: a new value of one is a new style for every cell.
    this.body.style.top = `${HEAD_HEIGHT + this.#plan.top}px`;
    if (this.#plan.gap) this.body.querySelector<HTMLElement>('.gap-rows')!.style.height = `${this.#plan.gap}px`;
    this.#active.mark(this.plane, this.field, this.selection.focus, this.#editor.open);
    const { open, place } = this.#editor;
    placeEditor(this.editorBox, geometry, this.#scroll.port, open ? place : this.selection.focus, open);
    const before = changed.get('view');
    const swapped = before !== undefined && before.id !== this.view.id;
    if (swapped) this.#scroll.enter(this.view.id);
    const fresh = changed.has('selection') && !sameSelection(this.selection, this.#own);
    this.#own = this.selection;
    if (fresh || swapped) {
      this.#keys.endRun();
      this.reveal(this.selection.focus);
    }
    if (this.threads || this.#threadsDrawn) this.#drawThreads();
    this.#tellMoved();
  }

  /** Whoever asked for a cell that does not show is told which one is active instead. */
  #tellMoved(): void {
    const asked = this.#moved;
    if (!asked) return;
    this.#moved = null;
    const { rows, cols } = this.ground;
    if (!rows.has(asked.row) || !cols.has(asked.col)) this.say(spokenElsewhere(asked, this.selection.focus));
    send(this, 'tt-select', { selection: this.selection });
  }

  #drawThreads(): void {
    render(threadsTemplate(this.threads, this.view, this.geometry, this.#scroll.port), this.threadsLayer);
    this.#threadsDrawn = this.threads !== null;
  }

  protected override render(): TemplateResult {
    const { view, selection, draft, geometry } = this;
    const editor = this.#editor;
    const typed = editor.open ? editor.text : draft?.text ?? '';
    const plan = planRows(this.#scroll.rows, selection.focus.row, geometry.rows, geometry.rows.shown.rank(geometry.stay.rows));
    this.#plan = plan;
    const drawn = outlines(view, {
      selection, pointed: editor.pointed ?? this.#pointed, formula: isFormula(typed) ? typed : null, names: this.names, fill: this.#filling.outlined,
    });
    return gridTemplate({
      view, selection, draft, geometry, plan, editor, typed, readonly: this.readonly, touch: this.touch,
      across: this.#layout.across, outlines: drawn.flatMap((outline) => partsOf(outline, geometry.stay)), said: this.#voice.said,
      keys: this.#keys, pointer: this.#pointer, menu: this.#menu, scroll: this.#scroll, clipboard: this.#clipboard, blurred: this.#blurred,
    });
  }
}

// What is in view is known only once the plane has its size, so a second drawing in the same frame is meant.
Grid.disableWarning?.('change-in-update');

declare global {
  interface HTMLElementTagNameMap { 'tt-grid': Grid }
}
