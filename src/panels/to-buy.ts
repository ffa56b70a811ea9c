import { LitElement, css, html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, query } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { repeat } from 'lit/directives/repeat.js';
import { controls } from '../look/index.ts';
import type { ShoppingItem, ShoppingList, ShoppingNeed, ShownFigure, Unlisted } from './to-buy-parts.ts';

/** The selected cell, if it gives something that can be bought. */
export interface Candidate {
  /** "Cloth length for the skirt, Skirt B26". */
  readonly place: string;
  readonly figure: ShownFigure;
  /** What is probably meant, to be typed over. */
  readonly what: string;
  readonly purpose: string;
  /** Lengths are asked for their cloth's width too. */
  readonly wide: boolean;
  /** It is on the list already. */
  readonly listed: boolean;
}

/** What she filled in; `what` is never empty. */
export interface PutWish {
  readonly what: string;
  readonly purpose: string;
  readonly width: string;
}

const EMPTY: ShoppingList = { items: [], unlisted: [], total: '', unpriced: 0 };

/**
 * The list for the shop, gathered over all sheets. Asks by `tt-put` (PutWish),
 * `tt-list-row` (Unlisted), `tt-bought` {id, bought}, `tt-go` {area},
 * `tt-copy-list`, `tt-save-list` {as}, `tt-print-list`, `tt-close`.
 */
@customElement('tt-to-buy')
export class ToBuyPanel extends LitElement {
  static override styles = [controls, css`
    :host { display: block; padding: 14px 16px 24px; }
    header { display: flex; gap: var(--gap-2); align-items: center; }
    header h2 { flex: 1; }
    h3 { font: 600 0.85rem var(--face); margin: var(--gap-4) 0 var(--gap-1); }
    form { display: grid; gap: var(--gap-2); margin: var(--gap-3) 0; padding: var(--gap-3); border: 1px solid var(--rule); border-radius: var(--round); }
    form label { display: grid; gap: 2px; align-content: start; }
    form input { width: 100%; min-width: 0; }
    form .pair { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(150px, 100%), 1fr)); gap: var(--gap-2); align-items: end; }
    ul { list-style: none; margin: 0; padding: 0; }
    .items > li { display: grid; grid-template-columns: auto minmax(0, 1fr); gap: 0 var(--gap-3); padding: var(--gap-3) 0; border-top: 1px solid var(--line); }
    .tick { align-self: start; min-width: 28px; min-height: 28px; justify-content: center; }
    .tick input { width: 22px; height: 22px; }
    .line { display: flex; flex-wrap: wrap; justify-content: space-between; gap: 0 var(--gap-3); align-items: baseline; }
    .what { font-weight: 600; overflow-wrap: anywhere; }
    .how { font-size: 1.15rem; font-weight: 600; }
    .also { font-weight: 400; font-size: var(--size-small); color: var(--soft); white-space: nowrap; }
    .bought .what, .bought .how { text-decoration: line-through; text-decoration-thickness: 1px; }
    .needs { font-size: var(--size-small); color: var(--soft); }
    ul.needs { display: flex; flex-wrap: wrap; gap: 0 var(--gap-2); margin-left: -6px; }
    .needs button, .go { min-height: 26px; padding: 1px 6px; font-size: var(--size-small); text-align: left; text-decoration: underline; text-decoration-color: var(--rule); text-underline-offset: 3px; }
    .go { margin-left: -6px; }
    .caution { margin: var(--gap-1) 0 0; }
    .caution::before { content: '⚠ '; color: var(--pin); }
    .fault { margin: var(--gap-1) 0; }
    .total { display: flex; justify-content: space-between; border-top: 2px solid var(--ink); margin: 0; padding-top: var(--gap-2); font-weight: 600; font-size: 1.1rem; }
    .do { display: flex; flex-wrap: wrap; gap: var(--gap-2); margin-top: var(--gap-3); }
    p { margin: var(--gap-1) 0; overflow-wrap: anywhere; }
  `];

  @property({ attribute: false }) list: ShoppingList = EMPTY;
  @property({ attribute: false }) candidate: Candidate | null = null;
  /** Things that lists ask for already. */
  @property({ attribute: false }) things: readonly string[] = [];
  /** What came of the last wish. */
  @property() sentence = '';
  /** Nothing can be changed. */
  @property({ type: Boolean }) readonly = false;

  @query('input[name=what]') private what!: HTMLInputElement | null;
  @query('form') private form!: HTMLFormElement | null;

  #place = '';

  override focus(options?: FocusOptions): void {
    if (this.what) {
      this.what.focus(options);
      this.what.select();
    } else {
      (this.renderRoot.querySelector<HTMLElement>('.tick input') ?? this.renderRoot.querySelector<HTMLElement>('header button'))?.focus(options);
    }
  }

  override render(): TemplateResult {
    const { items, unlisted, total, unpriced } = this.list;
    const toBuy = items.filter(({ enough }) => !enough);
    const enough = items.filter((item) => item.enough);
    const open = toBuy.filter(({ bought }) => bought.state !== 'yes').length;
    return html`
      <header><h2>To buy</h2><button @click=${() => this.#send('tt-close')}>Close</button></header>
      <p class="soft" role="status">${this.sentence || countWords(open, toBuy.length)}</p>
      ${this.#put()}
      <ul class="items" aria-label="To buy">${repeat(toBuy, ({ id }) => id, (item) => this.#item(item))}</ul>
      ${items.length > 0 ? html`<p class="total"><span>Together</span><span>${total}</span></p>
        ${unpriced > 0 ? html`<p class="soft">${unpriced === 1 ? 'Without one thing that has no price yet.' : `Without ${unpriced} things that have no price yet.`}</p>` : nothing}` : nothing}
      ${unlisted.length > 0 ? html`<h3>Needed, but not worked out how much to buy</h3><ul class="items">${unlisted.map((each) => this.#unlisted(each))}</ul>` : nothing}
      ${enough.length > 0 ? html`<h3>Enough at home</h3><ul class="items">${repeat(enough, ({ id }) => id, (item) => this.#enough(item))}</ul>` : nothing}
      ${items.length + unlisted.length > 0 ? html`<div class="do">
        <button @click=${() => this.#send('tt-copy-list')}>Copy</button>
        <button @click=${() => this.#send('tt-save-list', { as: 'text' })}>Save as text</button>
        <button @click=${() => this.#send('tt-save-list', { as: 'csv' })}>Save as CSV</button>
        <button @click=${() => this.#send('tt-print-list')}>Print…</button></div>` : nothing}
    `;
  }

  protected override updated(changed: PropertyValues): void {
    // Another cell begins with what is probably meant for it.
    if (changed.has('candidate') && this.candidate?.place !== this.#place) {
      this.#place = this.candidate?.place ?? '';
      this.form?.reset();
    }
  }

  #put() {
    const { candidate } = this;
    if (!candidate) return html`<p class="soft">Select a cell with a length or a number on any sheet to put it on the list.</p>`;
    const submit = (event: Event): void => {
      event.preventDefault();
      const fields = new FormData(event.target as HTMLFormElement);
      const text = (name: string): string => ((fields.get(name) as string | null) ?? '').trim();
      if (text('what') === '') this.what?.focus();
      else this.#send('tt-put', { what: text('what'), purpose: text('purpose'), width: text('width') } satisfies PutWish);
    };
    return html`<form @submit=${submit} aria-label="Put ${candidate.place} on the list">
      <p><strong>${candidate.place}</strong>: ${shown(candidate.figure)}</p>
      ${candidate.listed ? html`<p class="soft">It is on the list already.</p>` : html`
        <label>Ask for <input name="what" list="things" autocomplete="off" .defaultValue=${candidate.what} required maxlength="200"></label>
        <datalist id="things">${this.things.map((thing) => html`<option value=${thing}></option>`)}</datalist>
        <div class="pair">
          <label>It is for <input name="purpose" autocomplete="off" .defaultValue=${candidate.purpose} maxlength="200"></label>
          ${candidate.wide ? html`<label>Width of cloth, if it is new <input name="width" autocomplete="off" placeholder="140 cm" maxlength="40"></label>` : nothing}
        </div>
        <div><button class="main" ?disabled=${this.readonly}>Put it on the list</button></div>`}
    </form>`;
  }

  #item(item: ShoppingItem): TemplateResult {
    const { id, what, width, buy, by, fault, needed, home, cost, cautions, bought } = item;
    return html`<li class=${bought.state === 'yes' ? 'bought' : ''}>
      <label class="tick"><input type="checkbox" aria-label="Bought: ${what}" .checked=${live(bought.state === 'yes')} ?disabled=${fault || this.readonly}
        @change=${(event: Event) => this.#send('tt-bought', { id, bought: (event.target as HTMLInputElement).checked })}></label>
      <div>
        <div class="line"><span class="what">${what}${width ? html`, ${shown(width)} wide` : nothing}</span>${cost === '' ? html`<span class="soft">${fault ? nothing : 'no price yet'}</span>` : html`<span>${cost}</span>`}</div>
        ${fault ? html`<p class="fault">${buy.main}</p>` : html`<div class="how">${shown(buy)}${by ? html` × ${by}` : nothing}</div>`}
        ${bought.state === 'changed' ? html`<p class="caution">${bought.was} was bought, and the figure is another now.</p>` : nothing}
        ${cautions.map((caution) => html`<p class="caution">${caution}</p>`)}
        ${fault || (item.needs.length === 1 && !home) ? nothing : html`<div class="needs">needed ${shown(needed)}${home ? html`, at home ${shown(home)}` : nothing}</div>`}
        ${this.#needs(item)}
      </div></li>`;
  }

  #needs({ needs, cells, what }: ShoppingItem): TemplateResult {
    return html`<ul class="needs">
      ${needs.map((need) => html`<li><button class="bare" aria-label=${`Go to a need of ${what}: ${need.words} ${inWords(need)}`} @click=${() => this.#go(need.area)}>${need.words} ${shown(need)}</button></li>`)}
      ${cells.map(({ area, place }) => html`<li><button class="bare" aria-label=${`Go to how much ${what} to buy: ${place}`} @click=${() => this.#go(area)}>${place}</button></li>`)}
    </ul>`;
  }

  #unlisted(each: Unlisted): TemplateResult {
    const { what, words, area } = each;
    return html`<li><span class="tick">⚠</span><div>
      <div class="line"><span class="what">${what}</span></div>
      <button class="bare go" @click=${() => this.#go(area)}>${words} ${shown(each)}</button>
      <div><button ?disabled=${this.readonly} @click=${() => this.#send('tt-list-row', each)}>Work out how much ${what} to buy</button></div></div></li>`;
  }

  #enough(item: ShoppingItem): TemplateResult {
    const { what, width, needed, home, cautions } = item;
    return html`<li><span class="tick">✓</span><div>
      <div class="line"><span class="what">${what}${width ? html`, ${shown(width)} wide` : nothing}</span></div>
      <div class="needs">needed ${shown(needed)}${home ? html`, at home ${shown(home)}` : nothing}</div>
      ${cautions.map((caution) => html`<p class="caution">${caution}</p>`)}
      ${this.#needs(item)}</div></li>`;
  }

  #go(area: ShoppingNeed['area']): void {
    this.#send('tt-go', { area });
  }

  #send(type: string, detail?: unknown): void {
    this.dispatchEvent(new CustomEvent(type, { detail, bubbles: true, composed: true }));
  }
}

function countWords(open: number, all: number): string {
  if (all === 0) return 'Nothing is to be bought yet.';
  if (open === 0) return 'All of it is bought.';
  return open === 1 ? `One thing is to be bought, of ${all}.` : `${open} things are to be bought, of ${all}.`;
}

const inWords = ({ main, also }: ShownFigure): string => (also ? `${main} (${also})` : main);

const shown = ({ main, also }: ShownFigure): TemplateResult => html`${main}${also ? html` <span class="also">(${also})</span>` : nothing}`;

declare global {
  interface HTMLElementTagNameMap { 'tt-to-buy': ToBuyPanel }
}
