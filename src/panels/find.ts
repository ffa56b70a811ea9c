import { LitElement, css, html, nothing, type TemplateResult } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { controls } from '../look/index.ts';
import { partsFound, type FindPlace } from '../workbook/index.ts';
import { NO_WISH, type FindWish } from './find-wish.ts';

export interface FoundRow {
  /** "B4 of Fit". */
  readonly place: string;
  readonly kind: FindPlace;
  /** All of the text in which it was found. */
  readonly text: string;
}

const PLACES: readonly { readonly place: FindPlace; readonly label: string; readonly said: string }[] = [
  { place: 'value', label: 'What was typed', said: '' },
  { place: 'formula', label: 'Formulas', said: 'formula' },
  { place: 'note', label: 'Notes', said: 'note' },
  { place: 'result', label: 'Results', said: 'result' },
];

/**
 * Find and replace. All that was found is listed; the list leads there. Asks
 * by `tt-find` (FindWish), `tt-find-go` {at}, `tt-find-step` {by: 1 | -1},
 * `tt-replace` {at: a place in the list, or null for all; by}, `tt-close`.
 */
@customElement('tt-find')
export class FindPanel extends LitElement {
  static override styles = [controls, css`
    :host { display: block; padding: 14px 16px 24px; }
    header, .line { display: flex; flex-wrap: wrap; gap: var(--gap-2); align-items: center; }
    header h2 { flex: 1; }
    form { display: grid; gap: var(--gap-3); margin-top: var(--gap-3); }
    .field { display: grid; gap: var(--gap-1); }
    fieldset { border: 1px solid var(--line); border-radius: var(--round); padding: var(--gap-1) var(--gap-3) var(--gap-2); margin: 0; display: flex; flex-wrap: wrap; gap: var(--gap-1) var(--gap-3); }
    legend { font-size: var(--size-small); color: var(--soft); padding: 0 var(--gap-1); }
    .line .count { flex: 1; }
    ul { list-style: none; margin: var(--gap-3) 0 0; padding: 0; }
    li + li { border-top: 1px solid var(--line); }
    li button { display: block; width: 100%; border: 0; border-radius: 0; background: none; text-align: left; padding: 5px 6px; overflow-wrap: anywhere; }
    li button[aria-current='true'] { background: var(--chalk-wash); box-shadow: inset 3px 0 var(--chalk); }
    li small { display: block; color: var(--soft); font-size: var(--size-small); }
    mark { background: var(--tape); color: var(--tape-ink); border-radius: 2px; padding: 0 1px; }
  `];

  @property({ attribute: false }) wish: FindWish = NO_WISH;
  /** The first of what was found. */
  @property({ attribute: false }) found: readonly FoundRow[] = [];
  /** How many there are in all. */
  @property({ type: Number }) count = 0;
  /** Very much is being looked through: what was found is still that of before. */
  @property({ type: Boolean }) looking = false;
  /** The one gone to; -1 for none. */
  @property({ type: Number }) at = -1;
  @property() sheetName = '';
  /** Why the last wish could not be granted. */
  @property() sentence = '';
  /** Nothing can be changed. */
  @property({ type: Boolean }) readonly = false;

  @state() private by = '';
  @query('#sought') private sought!: HTMLInputElement;
  @query('#by') private replacement!: HTMLInputElement;

  /** Goes to the field for what is sought, or for what is to stand there instead. */
  override focus(options?: FocusOptions & { readonly replace?: boolean }): void {
    const field = options?.replace && this.wish.text ? this.replacement : this.sought;
    field?.focus();
    field?.select();
  }

  override render(): TemplateResult {
    const { wish, found, count, at } = this;
    const current = found[at];
    return html`
      <header><h2>Find and replace</h2><button @click=${() => this.#send('tt-close')}>Close</button></header>
      <form role="search" @submit=${(event: Event) => event.preventDefault()} @keydown=${this.#key}>
        <label class="field">Find <input id="sought" type="search" autocomplete="off" .value=${wish.text} @input=${this.#text}></label>
        <fieldset><legend>Look in</legend>${PLACES.map(({ place, label }) => html`
          <label><input type="checkbox" .checked=${wish.places[place]} @change=${(event: Event) => this.#wish({ places: { ...wish.places, [place]: (event.target as HTMLInputElement).checked } })}> ${label}</label>`)}</fieldset>
        <fieldset><legend>Only</legend>
          ${this.#box('whole', 'Whole cells')} ${this.#box('matchCase', 'Capitals as typed')} ${this.#box('onlySheet', `In ${this.sheetName}`)}
        </fieldset>
        <div class="line">
          <span class="count" role="status">${this.#counted()}</span>
          <button type="button" ?disabled=${count === 0} @click=${() => this.#send('tt-find-step', { by: -1 })}>Previous</button>
          <button type="button" ?disabled=${count === 0} @click=${() => this.#send('tt-find-step', { by: 1 })}>Next</button>
        </div>
        <label class="field">Replace with <input id="by" autocomplete="off" ?disabled=${this.readonly} .value=${this.by} @input=${(event: Event) => { this.by = (event.target as HTMLInputElement).value; }}></label>
        <div class="line">
          <button type="button" ?disabled=${this.readonly || !current || current.kind === 'result'} @click=${() => this.#send('tt-replace', { at, by: this.by })}>Replace this one</button>
          <button type="button" ?disabled=${this.readonly || count === 0} @click=${() => this.#send('tt-replace', { at: null, by: this.by })}>Replace all ${count || nothing}</button>
        </div>
        ${this.sentence ? html`<p class="fault" role="alert">${this.sentence}</p>` : nothing}
      </form>
      ${found.length ? html`<ul aria-label="Found">${found.map((row, index) => html`<li>
        <button aria-current=${index === at} @click=${() => this.#send('tt-find-go', { at: index })}>
          <small>${row.place}${PLACES.map(({ place, said }) => (place === row.kind && said ? ` · ${said}` : nothing))}</small>
          ${partsFound(row.text, { ...wish, sheet: null }).map((part) => (part.found ? html`<mark>${part.text}</mark>` : part.text))}
        </button></li>`)}</ul>` : nothing}
      ${count > found.length ? html`<p class="soft">And ${(count - found.length).toLocaleString('en')} more. Next goes through all of them.</p>` : nothing}
    `;
  }

  protected override updated(): void {
    // A button that can do no more lets go of the focus.
    const at = (this.renderRoot as ShadowRoot).activeElement;
    if (at instanceof HTMLButtonElement && at.disabled) this.replacement.focus();
  }

  #counted(): string {
    const { wish, count, at } = this;
    if (wish.text === '') return '';
    if (this.looking) return 'Looking…';
    if (count === 0) return `“${wish.text}” was not found.`;
    return at >= 0 ? `${at + 1} of ${count.toLocaleString('en')}` : `${count.toLocaleString('en')} found`;
  }

  #box(key: 'whole' | 'matchCase' | 'onlySheet', label: string) {
    return html`<label><input type="checkbox" .checked=${this.wish[key]} @change=${(event: Event) => this.#wish({ [key]: (event.target as HTMLInputElement).checked })}> ${label}</label>`;
  }

  #text(event: Event) {
    this.#wish({ text: (event.target as HTMLInputElement).value });
  }

  #wish(change: Partial<FindWish>) {
    this.#send('tt-find', { ...this.wish, ...change });
  }

  #key(event: KeyboardEvent) {
    if (event.key !== 'Enter' || event.isComposing || event.target !== this.sought) return;
    event.preventDefault();
    this.#send('tt-find-step', { by: event.shiftKey ? -1 : 1 });
  }

  #send(type: string, detail?: unknown) {
    this.dispatchEvent(new CustomEvent(type, { detail, bubbles: true, composed: true }));
  }
}

declare global {
  interface HTMLElementTagNameMap { 'tt-find': FindPanel }
}
