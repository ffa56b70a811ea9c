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
import { LitElement, html, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { guard } from 'lit/directives/guard.js';
import { repeat } from 'lit/directives/repeat.js';
import { cellName, isFormula } from '../formula/index.ts';
import type { FunctionCard } from '../reckoning/protocol.ts';
import { ActiveCell } from './active-cell.ts';
import { CellEditor, type CellEditorHost } from './cell-editor.ts';
import { editorStyles } from './editor-styles.ts';
import { send, type Then } from './events.ts';
import type { Geometry } from './geometry.ts';
import { GridClipboard } from './grid-clipboard.ts';
import { GridKeys, type KeysHost } from './grid-keys.ts';
import type { GoneBy } from './keys.ts';
import { Layout } from './layout.ts';
import { outlines, outlineTemplates, placeEditor, placeOutlines, type Outline } from './overlay.ts';
import { GridPointer, type PointerHost } from './pointer.ts';
import { pointedName } from './pointing.ts';
import { headTemplate, rowTemplate } from './rows.ts';
import { Scroller, type ScrollHost } from './scroller.ts';
import { areaOf, at, goTo, sameSelection, within, type Ground } from './select.ts';
import { howTo, spokenSelection } from './spoken.ts';
import { gridStyles } from './styles.ts';
import { Voice } from './voice.ts';
import { fittingWidth, widthWithin } from './widths.ts';
import { GAP, HEAD_HEIGHT, planRows } from './window.ts';
import { NO_VIEW, type CellPlace, type Draft, type Selection, type SheetView } from './view.ts';

@customElement('tt-grid')
export class Grid extends LitElement implements CellEditorHost, KeysHost, PointerHost, ScrollHost {
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
  /** Cells can be looked at and copied, not changed. */
  @property({ type: Boolean, reflect: true }) readonly = false;

  /** A width that is being dragged. */
  @state() dragged: { readonly col: number; readonly width: number } | null = null;

  @query('.scroller') readonly scroller!: HTMLElement;
  @query('.plane') private plane!: HTMLElement;
  @query('.body') private body!: HTMLElement;
  @query('.cell-editor') private editorBox!: HTMLElement;
  @query('textarea') private field!: HTMLTextAreaElement;

  readonly #scroll = new Scroller(this);
  readonly #layout = new Layout(this, this.#scroll);
  readonly #editor = new CellEditor(this, () => this.field);
  readonly #keys = new GridKeys(this, this.#editor);
  readonly #pointer = new GridPointer(this, this.#layout);
  readonly #voice = new Voice(this);
  readonly #clipboard = new GridClipboard(this);
  #outlines: readonly Outline[] = [];
  readonly #active = new ActiveCell();
  #plan = planRows({ first: 0, end: 0 }, -1, 0);
  /** The selection as the grid itself left it: another one came from outside and has to be shown. */
  #own: Selection = this.selection;
  /** The block pointed at for a formula elsewhere. */
  #pointed: Selection | null = null;

  /** True while a cell is edited in the grid: the application's own keys should wait. */
  get editing(): boolean {
    return this.#editor.open;
  }

  get geometry(): Geometry {
    return this.#layout.geometry;
  }

  get ground(): Ground {
    return this.#layout.ground;
  }

  override focus(): void {
    if (this.hasUpdated) this.takeFocus('mouse');
    else void this.updateComplete.then(() => this.takeFocus('mouse'));
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

  go(then: Then, by: GoneBy = 'enter'): void {
    this.#keys.go(then, by);
  }

  /** Selects, and shows the active cell unless told not to. */
  select(selection: Selection, show = true): void {
    this.#keys.leaving = false;
    if (!sameSelection(selection, this.selection)) {
      this.#own = selection;
      this.selection = selection;
      this.#voice.saySoon(() => spokenSelection(selection, this.view.rowCount, this.view.colCount));
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
    if (how !== 'keep') this.field.inputMode = how === 'touch' ? 'none' : 'text';
    this.#keys.leaving = false;
    this.field.focus({ preventScroll: true });
  }

  dragWidth(col: number, change: number, done: boolean): void {
    const width = widthWithin(this.view.width(col) + change);
    this.dragged = done ? null : { col, width };
    if (done && width !== this.view.width(col)) send(this, 'tt-width', { col, width });
  }

  /** Makes a column as wide as what is in it, among the rows in view. */
  fitWidth(col: number): void {
    send(this, 'tt-width', { col, width: fittingWidth(this.renderRoot, col) });
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
      this.selection = within(this.selection, this.view.rowCount, this.view.colCount);
      if (before && before.id !== this.view.id) this.#scroll.leave(before.id);
    }
    if (changed.has('draft') && !this.draft) this.#pointed = null;
    this.#scroll.plan();
  }

  protected override firstUpdated(): void {
    this.#scroll.begin();
  }

  protected override updated(changed: PropertyValues<this>): void {
    const { geometry } = this;
    this.sizePlane();
    const { style } = this.plane;
    const { trackSizes } = this.#layout;
    if (style.getPropertyValue('--tracks') !== trackSizes) style.setProperty('--tracks', trackSizes);
    style.setProperty('--row-head', `${geometry.rowHead}px`);
    // Not by custom properties: a new value of one is a new style for every cell.
    this.body.style.top = `${HEAD_HEIGHT + this.#plan.top}px`;
    const gap = this.body.querySelector<HTMLElement>('.gap-rows');
    if (gap) gap.style.height = `${this.#plan.gap}px`;
    this.#active.mark(this.body, this.field, this.selection.focus, this.#editor.open);
    const { open, place } = this.#editor;
    placeEditor(this.editorBox, geometry, this.#scroll.port, open ? place : this.selection.focus, open);
    placeOutlines(this.renderRoot.querySelectorAll<HTMLElement>('.box'), this.#outlines, geometry);
    const before = changed.get('view');
    const swapped = before !== undefined && before.id !== this.view.id;
    if (swapped) this.#scroll.enter(this.view.id);
    const fresh = changed.has('selection') && !sameSelection(this.selection, this.#own);
    this.#own = this.selection;
    if (fresh || swapped) this.reveal(this.selection.focus);
  }

  protected override render(): TemplateResult {
    const { view, selection, draft } = this;
    const { tracks } = this.#layout;
    const selected = areaOf(selection);
    const { focus } = selection;
    const plan = planRows(this.#scroll.rows, focus.row, view.rowCount);
    const { open, place, pointed, state: editState } = this.#editor;
    const typed = open ? this.#editor.text : draft?.text ?? '';
    this.#outlines = outlines(view, selection, pointed ?? this.#pointed, isFormula(typed) ? typed : null, this.names);
    this.#plan = plan;
    const row = (index: number): unknown => {
      if (index === GAP) return html`<div class="gap-rows" role="none"></div>`;
      const chosen = index >= selected.top && index <= selected.bottom ? `${selected.left} ${selected.right}` : '';
      const drafted = draft?.row === index ? draft : null;
      return guard([view, tracks, chosen, drafted], () => rowTemplate(index, { view, tracks, selected, draft: drafted }));
    };
    return html`
      <div class="scroller ${this.geometry.sticky ? 'narrow' : ''}" @scroll=${this.#scroll.scrolled} @keydown=${this.#keys.down}
        @pointerdown=${this.#pointer.down} @pointermove=${this.#pointer.move} @pointerup=${this.#pointer.up} @pointercancel=${this.#pointer.up}
        @mousedown=${this.#pointer.mouseDown} @click=${this.#pointer.click} @dblclick=${this.#pointer.doubleClick}>
        <div class="plane">
          <div role="grid" id="cells" aria-label=${view.name || 'Cells'} aria-rowcount=${view.rowCount + 1} aria-colcount=${view.colCount + 1}
            aria-multiselectable="true" aria-readonly=${this.readonly ? 'true' : 'false'}>
            <div role="rowgroup" class="head">
              ${guard([view, tracks, selected.left, selected.right, selected.top, selected.bottom], () => headTemplate(view, tracks, selected))}
            </div>
            <div role="rowgroup" class="body">${repeat(plan.rows, (index) => index, row)}</div>
          </div>
          ${outlineTemplates(this.#outlines)}
          <div class="cell-editor ${open ? 'open' : ''} ${open && isFormula(typed) ? 'formula' : ''}">
            ${this.#editor.core.underlay('')}
            <textarea class="editor-field" rows="1" spellcheck="false" autocomplete="off" autocapitalize="off" enterkeyhint="next"
              aria-label=${open ? `Editing ${cellName(place.row, place.col)}` : view.name || 'Cells'} aria-describedby="how"
              data-state=${editState} ?readonly=${this.readonly}
              @beforeinput=${this.#editor.beforeInput} @input=${this.#editor.input}
              @compositionstart=${this.#editor.compositionStart} @compositionend=${this.#editor.compositionEnd}
              @keyup=${this.#editor.caretMoved} @pointerup=${this.#editor.caretMoved}
              @copy=${this.#clipboard.copy} @cut=${this.#clipboard.cut} @paste=${this.#clipboard.paste} @blur=${this.#blurred}></textarea>
          </div>
        </div>
      </div>
      ${this.#editor.core.helper()}
      <p class="hidden" id="how">${howTo(this.readonly)}</p>
      <p class="hidden" role="status">${this.#voice.said}</p>`;
  }
}

// What is in view is known only once the plane has its size, so a second drawing in the same frame is meant.
Grid.disableWarning?.('change-in-update');

declare global {
  interface HTMLElementTagNameMap { 'tt-grid': Grid }
}
