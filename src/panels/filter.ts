import { LitElement, css, html, nothing, type TemplateResult } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { controls } from '../look/index.ts';
import { needsText, type Condition, type FilterTest } from '../workbook/index.ts';
import { NO_BLOCK, columnName, type Block } from './block-columns.ts';

export interface FilterWish {
  /** The first row is headings, and always shows. */
  readonly headings: boolean;
  readonly conditions: readonly Condition[];
}

const TESTS: readonly { readonly test: FilterTest; readonly label: string }[] = [
  { test: 'is', label: 'is' },
  { test: 'isNot', label: 'is not' },
  { test: 'has', label: 'has in it' },
  { test: 'hasNot', label: 'does not have in it' },
  { test: 'more', label: 'is more than' },
  { test: 'atLeast', label: 'is at least' },
  { test: 'less', label: 'is less than' },
  { test: 'atMost', label: 'is at most' },
  { test: 'empty', label: 'is empty' },
  { test: 'filled', label: 'is filled' },
];

const MOST = 8;

/**
 * Which rows of a block are to show. Asks by `tt-filter` (FilterWish); cancel
 * it to keep the dialog open; and by `tt-filter-off` to show all again.
 */
@customElement('tt-filter')
export class FilterPanel extends LitElement {
  static override styles = [controls, css`
    @media (min-width: 641px) { dialog { width: min(640px, calc(100vw - 24px)); } }
    .body { display: grid; gap: var(--gap-3); }
    ol { list-style: none; margin: 0; padding: 0; display: grid; gap: var(--gap-2); }
    li { display: flex; flex-wrap: wrap; gap: var(--gap-2); align-items: center; }
    li select, li input { flex: 1; min-width: 9em; }
    p { margin: 0; }
  `];

  @property({ attribute: false }) block: Block = NO_BLOCK;
  /** Why the last wish could not be granted. */
  @property() sentence = '';
  @state() private headings = false;
  @state() private conditions: readonly Condition[] = [];
  /** A filter is on already. */
  @state() private on = false;
  @query('dialog') private dialog!: HTMLDialogElement;

  /** @param conditions those that are on now; none when there is no filter */
  open(block: Block, conditions: readonly Condition[], first: Condition, on: boolean): void {
    this.block = block;
    this.headings = block.headings;
    this.conditions = conditions.length ? conditions : [first];
    this.on = on;
    this.sentence = '';
    this.dialog.showModal();
    void this.updateComplete.then(() => this.renderRoot.querySelector('select')?.focus());
  }

  override render(): TemplateResult {
    const { block, conditions } = this;
    return html`<dialog aria-labelledby="title">
      <header><h2 id="title">Show only rows of ${block.place} that match</h2><button @click=${() => this.dialog.close()}>Close</button></header>
      <form @submit=${this.#submit}>
        <div class="body">
          ${this.on ? nothing : html`<label><input type="checkbox" .checked=${live(this.headings)} @change=${(event: Event) => { this.headings = (event.target as HTMLInputElement).checked; }}> The first row is headings and always shows</label>`}
          <ol>${conditions.map((condition, at) => this.#condition(condition, at))}</ol>
          <div><button type="button" ?disabled=${conditions.length >= MOST} @click=${this.#add}>And also</button></div>
          <p class="soft">Figures are compared with figures: write the unit, such as 80 cm or 2 1/4 in. Rows are matched now; after a change choose “Match the rows again”.</p>
          ${this.sentence ? html`<p class="fault" role="alert">${this.sentence}</p>` : nothing}
        </div>
        <footer>${this.on ? html`<button type="button" @click=${this.#off}>Show all rows again</button>` : nothing}<button class="main">Show only these</button></footer>
      </form>
    </dialog>`;
  }

  #condition({ col, test, text }: Condition, at: number) {
    return html`<li>
      <select aria-label="Column, condition ${at + 1}" @change=${(event: Event) => this.#change(at, { col: Number((event.target as HTMLSelectElement).value) })}>
        ${this.block.columns.map((each) => html`<option value=${each.col} .selected=${live(each.col === col)}>${columnName(each, this.headings)}</option>`)}</select>
      <select aria-label="How, condition ${at + 1}" @change=${(event: Event) => this.#change(at, { test: (event.target as HTMLSelectElement).value as FilterTest })}>
        ${TESTS.map((each) => html`<option value=${each.test} .selected=${live(each.test === test)}>${each.label}</option>`)}</select>
      ${needsText(test) ? html`<input aria-label="What, condition ${at + 1}" maxlength="200" .value=${live(text)} @input=${(event: Event) => this.#change(at, { text: (event.target as HTMLInputElement).value })}>` : nothing}
      ${this.conditions.length > 1 ? html`<button type="button" aria-label="Without condition ${at + 1}" title="Without this" @click=${() => { this.conditions = this.conditions.filter((_, each) => each !== at); }}>✕</button>` : nothing}
    </li>`;
  }

  #change(at: number, change: Partial<Condition>) {
    this.conditions = this.conditions.map((condition, each) => (each === at ? { ...condition, ...change } : condition));
  }

  #add() {
    const [first] = this.block.columns;
    if (first) this.conditions = [...this.conditions, { col: first.col, test: 'is', text: '' }];
  }

  #submit(event: Event) {
    event.preventDefault();
    const conditions = this.conditions.map((condition) => (needsText(condition.test) ? condition : { ...condition, text: '' }));
    this.#send('tt-filter', { headings: this.headings, conditions } satisfies FilterWish);
  }

  #off() {
    this.#send('tt-filter-off');
  }

  #send(type: string, detail?: unknown) {
    if (this.dispatchEvent(new CustomEvent(type, { detail, bubbles: true, composed: true, cancelable: true }))) this.dialog.close();
  }
}

declare global {
  interface HTMLElementTagNameMap { 'tt-filter': FilterPanel }
}
