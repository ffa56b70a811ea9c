import { LitElement, css, html, nothing, type TemplateResult } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { controls } from '../look/index.ts';
import type { SortKey } from '../workbook/index.ts';
import { NO_BLOCK, columnName, type Block } from './block-columns.ts';

export interface SortWish {
  /** The first row is headings, and stays. */
  readonly headings: boolean;
  readonly keys: readonly SortKey[];
}

/** More keys than this never decide anything. */
const MOST_KEYS = 5;

/** In which order the rows of a block are to be. Asks by `tt-sort` (SortWish); cancel it to keep the dialog open. */
@customElement('tt-sort')
export class SortPanel extends LitElement {
  static override styles = [controls, css`
    @media (min-width: 641px) { dialog { width: min(560px, calc(100vw - 24px)); } }
    .body { display: grid; gap: var(--gap-3); }
    ol { list-style: none; margin: 0; padding: 0; display: grid; gap: var(--gap-2); }
    li { display: flex; flex-wrap: wrap; gap: var(--gap-2); align-items: center; }
    li select:first-of-type { flex: 1; min-width: 10em; }
    li > span { min-width: 4.5em; }
    p { margin: 0; }
  `];

  @property({ attribute: false }) block: Block = NO_BLOCK;
  /** Why the last wish could not be granted. */
  @property() sentence = '';
  @state() private headings = false;
  @state() private keys: readonly SortKey[] = [];
  @query('dialog') private dialog!: HTMLDialogElement;

  /** @param first the column to sort by at first */
  open(block: Block, first: number): void {
    this.block = block;
    this.headings = block.headings;
    this.keys = [{ col: first, descending: false }];
    this.sentence = '';
    this.dialog.showModal();
    void this.updateComplete.then(() => this.renderRoot.querySelector('select')?.focus());
  }

  override render(): TemplateResult {
    const { block, keys } = this;
    return html`<dialog aria-labelledby="title">
      <header><h2 id="title">Sort the rows of ${block.place}</h2><button @click=${() => this.dialog.close()}>Close</button></header>
      <form @submit=${this.#submit}>
        <div class="body">
          <label><input type="checkbox" .checked=${live(this.headings)} @change=${(event: Event) => { this.headings = (event.target as HTMLInputElement).checked; }}> The first row is headings and stays where it is</label>
          <ol>${keys.map((key, at) => this.#key(key, at))}</ol>
          <div><button type="button" ?disabled=${keys.length >= Math.min(MOST_KEYS, block.columns.length)} @click=${this.#add}>And then by another column</button></div>
          <p class="soft">Lengths go by length whatever their unit, sizes by size (XS before S, 00 before 0, the order of a size chart), texts by the alphabet. Empty cells go last. A formula keeps its result.</p>
          ${block.neighbours ? html`<p class="note">Filled cells right beside ${block.place} are not among these columns and stay where they are. Select them too if they belong to the rows.</p>` : nothing}
          ${this.sentence ? html`<p class="fault" role="alert">${this.sentence}</p>` : nothing}
        </div>
        <footer><button class="main">Sort ${this.#rows()}</button></footer>
      </form>
    </dialog>`;
  }

  #rows(): string {
    const rows = this.block.rows - (this.headings ? 1 : 0);
    return `${rows.toLocaleString('en')} ${rows === 1 ? 'row' : 'rows'}`;
  }

  #key({ col, descending = false }: SortKey, at: number) {
    const what = at === 0 ? 'By' : 'Then by';
    return html`<li><span aria-hidden="true">${what}</span>
      <select aria-label="${what} column" @change=${(event: Event) => this.#change(at, { col: Number((event.target as HTMLSelectElement).value) })}>
        ${this.block.columns.map((each) => html`<option value=${each.col} .selected=${live(each.col === col)}>${columnName(each, this.headings)}</option>`)}</select>
      <select aria-label="${what}: which first" @change=${(event: Event) => this.#change(at, { descending: (event.target as HTMLSelectElement).value === 'down' })}>
        <option value="up" .selected=${live(!descending)}>smallest first</option><option value="down" .selected=${live(descending)}>largest first</option></select>
      ${this.keys.length > 1 ? html`<button type="button" aria-label="Not by this: key ${at + 1}" title="Not by this" @click=${() => { this.keys = this.keys.filter((_, each) => each !== at); }}>✕</button>` : nothing}
    </li>`;
  }

  #change(at: number, change: Partial<SortKey>) {
    this.keys = this.keys.map((key, each) => (each === at ? { ...key, ...change } : key));
  }

  #add() {
    const next = this.block.columns.find(({ col }) => !this.keys.some((key) => key.col === col));
    if (next) this.keys = [...this.keys, { col: next.col, descending: false }];
  }

  #submit(event: Event) {
    event.preventDefault();
    const detail: SortWish = { headings: this.headings, keys: this.keys };
    if (this.dispatchEvent(new CustomEvent('tt-sort', { detail, bubbles: true, composed: true, cancelable: true }))) this.dialog.close();
  }
}

declare global {
  interface HTMLElementTagNameMap { 'tt-sort': SortPanel }
}
