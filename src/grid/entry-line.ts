/**
 * `<tt-entry-line>`: where the active cell is, what is in it, and the same
 * editor as over the cell, with more room. Enter and Tab keep the text and go
 * on in the grid, Escape leaves it as it was, going elsewhere keeps it. The
 * arrow keys move the caret; cells can be pointed at with the mouse.
 */
import { LitElement, css, html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { isFormula } from '../formula/index.ts';
import { controls } from '../look/index.ts';
import type { FunctionCard } from '../reckoning/protocol.ts';
import type { SheetId } from '../workbook/types.ts';
import type { CellAddress } from '../workbook/types.ts';
import { editorStyles } from './editor-styles.ts';
import { send, type Then } from './events.ts';
import { FormulaEditor, type EditorHost } from './formula-editor.ts';

const styles = css`
  :host { display: block; border-bottom: 1px solid var(--line); background: var(--paper); position: relative; }
  .line { display: flex; flex-wrap: wrap; align-items: flex-start; gap: var(--gap-2); padding: var(--gap-2) var(--gap-3) var(--gap-1); }
  .hidden { position: absolute; width: 1px; height: 1px; margin: -1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
  .where { display: flex; gap: var(--gap-1); align-items: center; min-height: 36px; }
  .where input { width: 6.5em; font-weight: 600; }
  .where button { max-width: 12em; overflow: hidden; text-overflow: ellipsis; white-space: nowrap; color: var(--soft); }
  .field { position: relative; flex: 1 1 260px; min-width: 0; min-height: 36px; max-height: 9.5em; overflow: auto; border: 1px solid var(--rule); border-radius: 6px; background: var(--sheet); }
  .field:focus-within { outline: 2px solid var(--chalk); outline-offset: 1px; }
  .field .underlay, .field .editor-field { padding: 7px 10px; min-height: 34px; }
  /* The text area is as tall as the coloured copy, so the frame scrolls and not the text area. */
  .field .editor-field { border: 0; outline: none; }
  .under { margin: 0; padding: 0 var(--gap-3) var(--gap-1); min-height: 1.5em; font-size: var(--size-small); line-height: 1.5em; color: var(--soft); overflow-wrap: anywhere; }
  .under.wrong { color: var(--pin); }
  .under.wrong::before { content: '!'; display: inline-block; width: 1.3em; margin-right: 6px; text-align: center; font-weight: 700; border: 1px solid; border-radius: 3px; }
  .naming { position: fixed; inset: auto; margin: 0; padding: var(--gap-3); border: 1px solid var(--rule); border-radius: var(--round); background: var(--paper); color: var(--ink); box-shadow: var(--shadow); }
  .naming form { display: flex; flex-wrap: wrap; gap: var(--gap-2); align-items: end; }
  .naming label { display: grid; gap: 2px; }
`;

@customElement('tt-entry-line')
export class EntryLine extends LitElement implements EditorHost {
  static override styles = [controls, editorStyles, styles];

  @property({ attribute: false }) sheet: SheetId = 0;
  @property({ attribute: false }) row = 0;
  @property({ attribute: false }) col = 0;
  /** Where the active cell is, as people write it: `C9`. */
  @property() place = 'A1';
  /** The name given to it, if any. */
  @property() name = '';
  /** The words beside it in its row: "Pleat depth". */
  @property() label = '';
  /** What was typed in it. */
  @property() raw = '';
  /** One sentence on what is wrong with it or what was made of it. */
  @property() fault = '';
  /** True when the sentence is only a remark. */
  @property({ type: Boolean }) remark = false;
  /** What is being typed over the cell itself. */
  @property({ attribute: false }) draft: string | null = null;
  @property({ attribute: false }) cards: readonly FunctionCard[] = [];
  @property({ attribute: false }) names: readonly string[] = [];
  @property({ attribute: false }) sheets: readonly string[] = [];
  @property({ type: Boolean, reflect: true }) readonly = false;

  @state() private naming = false;
  @query('textarea') private field!: HTMLTextAreaElement;
  @query('#where') private where!: HTMLInputElement;
  @query('.naming') private panel!: HTMLElement;
  @query('.where button') private namingButton!: HTMLButtonElement;

  readonly #core = new FormulaEditor(this, () => this.field, () => this.#tell());
  /** The cell whose text is being edited. */
  #cell: CellAddress = { sheet: 0, row: 0, col: 0 };
  #before = '';

  /** True while a text is being edited here. */
  get editing(): boolean {
    return this.#core.active;
  }

  /** The function in whose brackets the caret is. */
  get called(): string | null {
    return this.#core.called;
  }

  /** Puts the caret at the end of the text. */
  override focus(): void {
    this.field.focus();
  }

  /** Puts a reference at the caret of a formula; false when none can stand there. */
  point(reference: string): boolean {
    return this.#core.point(reference);
  }

  protected override render(): TemplateResult {
    const text = this.#core.active ? this.#core.text : this.draft ?? this.raw;
    return html`
      <div class="line">
        <div class="where">
          <label class="hidden" for="where">Go to a cell or a name</label>
          <input id="where" list="places" autocomplete="off" spellcheck="false" @keydown=${this.#whereKey} @blur=${this.#showWhere} @focus=${() => this.where.select()}>
          <datalist id="places">${this.names.map((name) => html`<option value=${name}></option>`)}</datalist>
          <button class="bare" aria-expanded=${this.naming ? 'true' : 'false'} title="Give ${this.place} a name" ?disabled=${this.readonly}
            @click=${this.#openNaming}>${this.name || this.label || 'Name…'}</button>
        </div>
        <div class="field ${isFormula(text) ? 'formula' : ''}">
          ${this.#core.underlay(text)}
          <textarea class="editor-field" rows="1" spellcheck="false" autocomplete="off" autocapitalize="off" enterkeyhint="done"
            aria-label="What is in ${this.place}" aria-describedby="under" ?readonly=${this.readonly}
            @focus=${this.#begin} @keydown=${this.#key} @input=${this.#typed} @beforeinput=${this.#beforeInput}
            @keyup=${this.#moved} @pointerup=${this.#moved} @blur=${this.#left}></textarea>
        </div>
      </div>
      <p id="under" class="under ${this.fault && !this.remark ? 'wrong' : ''}">${this.fault}</p>
      ${this.#core.helper()}
      <div class="naming" popover="auto" @toggle=${this.#toggled}>
        <form @submit=${this.#giveName}>
          <label>Name for ${this.place}<input name="name" autocomplete="off" spellcheck="false" maxlength="60"></label>
          <button class="main">Keep the name</button>
          ${this.name ? html`<button type="button" @click=${this.#takeName}>Take it away</button>` : nothing}
        </form>
      </div>`;
  }

  protected override updated(changed: PropertyValues<this>): void {
    if (!this.#core.active) {
      const text = this.draft ?? this.raw;
      if (this.field.value !== text) this.field.value = text;
    }
    if (changed.has('place')) this.#showWhere();
  }

  #showWhere = (): void => {
    this.where.value = this.place;
  };

  #whereKey = (event: KeyboardEvent): void => {
    if (event.isComposing) return;
    if (event.key === 'Escape') this.#showWhere();
    if (event.key !== 'Enter') return;
    event.preventDefault();
    const text = this.where.value.trim();
    if (text !== '') send(this, 'tt-go', { text });
    this.#showWhere();
  };

  #begin = (): void => {
    if (this.readonly || this.#core.active) return;
    this.#cell = { sheet: this.sheet, row: this.row, col: this.col };
    this.#before = this.raw;
    const text = this.draft ?? this.raw;
    this.draft = null;
    this.#core.start(text);
    send(this, 'tt-edit-start', { ...this.#cell, text });
  };

  #tell(): void {
    send(this, 'tt-edit-change', { ...this.#cell, text: this.#core.text });
  }

  #typed = (): void => {
    if (!this.#core.active) this.#begin();
    this.#core.typed();
    this.#tell();
  };

  #moved = (): void => this.#core.moved();

  #beforeInput = (event: InputEvent): void => {
    // An on-screen keyboard's Enter may come without a key.
    if (event.inputType !== 'insertLineBreak') return;
    event.preventDefault();
    this.#commit('down');
  };

  #key = (event: KeyboardEvent): void => {
    if (event.isComposing || event.keyCode === 229) return;
    if (this.readonly || this.#core.key(event)) return;
    const ctrl = event.ctrlKey || event.metaKey;
    if (event.key === 'Enter' && event.altKey) {
      event.preventDefault();
      this.#core.breakLine();
    } else if (event.key === 'Enter') {
      event.preventDefault();
      this.#commit(ctrl ? 'stay' : event.shiftKey ? 'up' : 'down');
    } else if (event.key === 'Tab' && !ctrl && !event.altKey && this.#core.text !== this.#before) {
      // Untouched, Tab goes on through the page.
      event.preventDefault();
      this.#commit(event.shiftKey ? 'left' : 'right');
    } else if (event.key === 'Escape') {
      event.preventDefault();
      this.#end(false, 'stay');
    }
  };

  #commit(then: Then | null): void {
    const raw = this.#core.text;
    const changed = raw !== this.#before;
    if (changed && !send(this, 'tt-commit', { ...this.#cell, raw, then: then ?? 'stay' })) return;
    this.#end(changed, then);
  }

  #end(kept: boolean, then: Then | null): void {
    if (!this.#core.active) return;
    this.#core.stop();
    send(this, 'tt-edit-end', { ...this.#cell, kept, then });
  }

  #left = (): void => {
    const root = this.renderRoot as ShadowRoot;
    // The window lost the focus, not the field.
    if (root.activeElement === this.field || !this.#core.active) return;
    this.#commit(null);
  };

  #openNaming = (event: Event): void => {
    const at = (event.currentTarget as HTMLElement).getBoundingClientRect();
    this.panel.style.left = `${Math.max(8, at.left)}px`;
    this.panel.style.top = `${at.bottom + 4}px`;
    this.panel.togglePopover();
  };

  #toggled = (event: ToggleEvent): void => {
    this.naming = event.newState === 'open';
    if (!this.naming) {
      // The browser gives the focus back only outside of shadow roots.
      const at = (this.renderRoot as ShadowRoot).activeElement;
      const nowhere = at ? this.panel.contains(at) : (this.getRootNode() as Document | ShadowRoot).activeElement === null;
      if (nowhere) this.namingButton.focus();
      return;
    }
    const input = this.panel.querySelector('input')!;
    input.value = this.name;
    input.select();
  };

  #giveName = (event: SubmitEvent): void => {
    event.preventDefault();
    const text = this.panel.querySelector('input')!.value.trim();
    this.panel.hidePopover();
    if (text !== this.name) send(this, 'tt-name', { text });
  };

  #takeName = (): void => {
    this.panel.hidePopover();
    send(this, 'tt-name', { text: '' });
  };
}

declare global {
  interface HTMLElementTagNameMap { 'tt-entry-line': EntryLine }
}
