import { LitElement, css, html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { controls } from '../look/index.ts';
import { drawn, pictureStyles, type Picture } from '../pictures/index.ts';
import type { ShowAs } from '../quantities/index.ts';
import type { Result } from '../reckoning/index.ts';
import type { CellAddress } from '../workbook/index.ts';
import { KeepFocus } from './keep-focus.ts';
import { keptList, keptStyles, type KeptList, type KeptWish } from './kept-list.ts';
import { SettledList } from './settled-list.ts';
import { shownResult } from './shown.ts';

/** An input whose values are compared: where it is, what it is called, and what is typed in each case. */
export interface ComparedInput {
  /** `null` when its cell is gone. */
  readonly cell: CellAddress | null;
  readonly label: string;
  readonly place: string;
  /** What the sheet has, as it is typed. */
  readonly now: string;
  /** One raw text a case, as it would be typed in the cell; `null` is what the sheet has. */
  readonly values: readonly (string | null)[];
}

export interface ComparedResult {
  readonly cell: CellAddress;
  readonly label: string;
  readonly place: string;
  /** One a case. */
  readonly results: readonly Result[];
  /** Each case less the one it is compared with; `null` where there is no difference to take. */
  readonly differences: readonly (Result | null)[];
}

export interface Comparison {
  readonly kept: KeptList;
  readonly cases: readonly string[];
  /** The case that the others are compared with. */
  readonly against: number;
  readonly inputs: readonly ComparedInput[];
  /** `null` while the worker is at it. */
  readonly outputs: readonly ComparedResult[] | null;
  /** Results that have a picture, and the one whose picture is shown for every case, to one scale. */
  readonly pictured: readonly { readonly cell: string; readonly name: string }[];
  readonly picture: string;
  /** One a case; `null` where there is none. */
  readonly pictures: readonly (Picture | null)[];
  /** Other workbooks, from which a case can be taken. */
  readonly books: readonly { readonly id: string; readonly title: string }[];
  /** Why there is nothing to show, or what could not be worked out. */
  readonly sentence?: string | undefined;
}

export type ComparisonChange =
  | { readonly change: 'value'; readonly input: number; readonly case: number; readonly raw: string }
  | { readonly change: 'case'; readonly case: number; readonly label: string }
  | { readonly change: 'add-case' | 'add-input' }
  | { readonly change: 'remove-case'; readonly case: number }
  | { readonly change: 'remove-input'; readonly input: number }
  | { readonly change: 'against'; readonly case: number }
  | { readonly change: 'picture'; readonly cell: string }
  | { readonly change: 'from-book'; readonly id: string }
  | { readonly change: 'put'; readonly case: number };

/** What two ways of working out the same may differ by, in millimetres or whatever a result counts in. */
const NOTHING = 1e-9;

export const NO_COMPARISON: Comparison = { kept: { id: '', all: [] }, cases: [], against: 0, inputs: [], outputs: null, pictured: [], picture: '', pictures: [], books: [] };

/**
 * Sets of values for some inputs, and every result that depends on them under
 * each, with the differences from any one. Nothing here touches the sheet until
 * a case is put into it. Asks by `tt-compare` (a `ComparisonChange`),
 * `tt-kept` (a `KeptWish`), `tt-go`, `tt-export-comparison`, `tt-close`.
 */
@customElement('tt-side-by-side')
export class SideBySidePanel extends LitElement {
  static override styles = [controls, pictureStyles, keptStyles, css`
    :host { display: block; padding: 14px 16px 24px; }
    header { display: flex; gap: var(--gap-2); align-items: center; }
    header h2 { flex: 1; }
    .wide { overflow-x: auto; margin: var(--gap-3) 0; }
    table { border-collapse: separate; border-spacing: 0; width: 100%; background: var(--sheet); font-variant-numeric: tabular-nums; border: 1px solid var(--line); border-width: 1px 0 0 1px; }
    caption { text-align: left; font-weight: 600; padding: var(--gap-1) 0; }
    th, td { padding: 5px 8px; border: 1px solid var(--line); border-width: 0 1px 1px 0; text-align: right; vertical-align: baseline; }
    th[scope='row'] { text-align: left; font-weight: 400; min-width: 118px; }
    .many :is(th[scope='row'], thead th:first-child) { position: sticky; left: 0; z-index: 1; background: var(--sheet); }
    thead th, .many thead th:first-child { background: var(--tape); color: var(--tape-ink); font-weight: 600; }
    thead th:first-child { text-align: left; }
    td { white-space: nowrap; }
    td.no { white-space: normal; min-width: 130px; }
    td small { display: block; color: var(--soft); }
    td input, thead input { width: 100%; min-width: 76px; text-align: right; }
    thead input { background: var(--sheet); color: var(--ink); font-weight: 600; }
    thead .out { display: block; width: 100%; min-height: 24px; padding: 0 4px; font-size: 0.72rem; font-weight: 400; color: var(--tape-ink); background: none; border-color: transparent; }
    thead .out:hover { background: var(--sheet); color: var(--ink); }
    input.sheets { color: var(--soft); font-style: italic; }
    .place { font-size: 0.72rem; color: var(--soft); }
    .place button { min-height: 24px; padding: 0; font-size: inherit; text-align: left; }
    .moved { color: var(--thread); font-weight: 600; }
    .no { color: var(--pin); font-size: var(--size-small); text-align: left; }
    .tools { display: flex; flex-wrap: wrap; gap: var(--gap-2); align-items: center; }
    .tools label { flex-wrap: wrap; }
    .tools.book { margin-top: var(--gap-2); }
    .tools select { max-width: 100%; }
    .pictures { display: grid; grid-template-columns: repeat(auto-fill, minmax(210px, 1fr)); gap: var(--gap-3); margin: var(--gap-2) 0; }
    figure { margin: 0; }
    figcaption { font-weight: 600; }
  `];

  @property({ attribute: false }) comparison: Comparison = NO_COMPARISON;
  @property({ attribute: false }) as: ShowAs = { system: 'own', inchStep: 8 };
  /** The selected cell, offered as an input. */
  @property() candidate = '';
  @property({ type: Boolean }) readonly = false;

  constructor() {
    super();
    new KeepFocus(this, () => ['tbody tr:last-child td:nth-of-type(2) input', '.tools button:not(:disabled)', 'header button'].map((selector) => this.renderRoot.querySelector<HTMLElement>(selector)).find((each) => each !== null));
  }

  readonly #against = new SettledList((value) => this.#change({ change: 'against', case: Number(value) }));
  readonly #picture = new SettledList((cell) => this.#change({ change: 'picture', cell }));

  /** The keys stay in the cells, where inputs are selected; Tab leads here. */
  override focus(): void {
    // Nothing to do.
  }

  override render(): TemplateResult {
    const { cases, inputs, outputs, sentence, kept, against } = this.comparison;
    const many = cases.length > 2 ? 'wide many' : 'wide';
    return html`
      <header><h2>Side by side</h2><button @click=${() => this.#send('tt-close')}>Close</button></header>
      <p class="soft">Type other values under each heading. The sheet itself stays as it is; an emptied field takes the sheet’s own value.</p>
      ${keptList(kept, 'comparison', (wish) => this.#send('tt-kept', wish satisfies KeptWish), this.readonly)}
      ${inputs.length ? html`<div class=${many}><table>
        <caption>Inputs</caption>
        <thead><tr><th scope="col">Input</th>${cases.map((label, index) => this.#heading(label, index))}<td></td></tr></thead>
        <tbody>${inputs.map((input, row) => this.#input(input, row))}</tbody></table></div>` : nothing}
      <div class="tools">
        <button ?disabled=${!this.candidate || this.readonly} @click=${() => this.#change({ change: 'add-input' })}>${this.candidate ? `Compare over ${this.candidate}` : 'Select an input in the sheet to add it'}</button>
        ${inputs.length ? html`<button ?disabled=${this.readonly} @click=${() => this.#change({ change: 'add-case' })}>Add a case</button>` : nothing}
        <button ?disabled=${!outputs?.length} @click=${() => this.#send('tt-export-comparison')}>Save as CSV…</button>
        ${inputs.length && cases.length > 1 ? html`<label>Differences from <select name="against" ?disabled=${this.readonly} @change=${this.#against.change} @keydown=${this.#against.key} @pointerdown=${this.#against.pointer} @focusout=${this.#against.left}>
          ${cases.map((label, index) => html`<option value=${index} .selected=${live(index === against)}>${label}</option>`)}</select></label>` : nothing}
      </div>
      ${this.#fromBook()}
      ${sentence ? html`<p class="note" role="status">${sentence}</p>` : nothing}
      ${inputs.length && !outputs && !sentence ? html`<p class="soft" role="status">Working it out…</p>` : nothing}
      ${outputs?.length ? this.#outputs(outputs, many) : nothing}
      ${outputs?.length ? this.#pictures() : nothing}
    `;
  }

  #fromBook(): TemplateResult | typeof nothing {
    const { books } = this.comparison;
    if (books.length === 0) return nothing;
    const add = (): void => {
      const { value } = this.renderRoot.querySelector<HTMLSelectElement>('[name=book]')!;
      this.#change({ change: 'from-book', id: value });
    };
    return html`<div class="tools book"><label>Another workbook <select name="book">${books.map(({ id, title }) => html`<option value=${id}>${title}</option>`)}</select></label>
      <button ?disabled=${this.readonly} @click=${add}>Add its values as a case</button></div>`;
  }

  #heading(label: string, index: number): TemplateResult {
    const words = label || `case ${index + 1}`;
    return html`<th scope="col"><input aria-label="Heading ${index + 1}" ?disabled=${this.readonly} .value=${label} @change=${(event: Event) => this.#change({ change: 'case', case: index, label: (event.target as HTMLInputElement).value })}>
      ${this.comparison.cases.length > 2 ? html`<button class="out" aria-label="leave out ${words}" ?disabled=${this.readonly} @click=${() => this.#change({ change: 'remove-case', case: index })}>leave out</button>` : nothing}</th>`;
  }

  #input(input: ComparedInput, row: number): TemplateResult {
    const name = input.label || input.place;
    return html`<tr>
      <th scope="row">${name}<div class="place">${this.#place(input)}</div></th>
      ${input.values.map((raw, index) => html`<td><input aria-label="${name}, ${this.comparison.cases[index]}" class=${raw === null ? 'sheets' : ''} ?disabled=${this.readonly} .value=${raw ?? input.now}
        @change=${(event: Event) => this.#change({ change: 'value', input: row, case: index, raw: (event.target as HTMLInputElement).value })}></td>`)}
      <td><button class="bare" aria-label="Leave ${name} out" title="Leave it out" ?disabled=${this.readonly} @click=${() => this.#change({ change: 'remove-input', input: row })}>✕</button></td>
    </tr>`;
  }

  #outputs(outputs: readonly ComparedResult[], many: string): TemplateResult {
    const { cases, against } = this.comparison;
    const others = cases.map((_, index) => index).filter((index) => index !== against);
    return html`<div class=${many}><table>
      <caption>Results that depend on them</caption>
      <thead><tr><th scope="col">Result</th>${cases.map((label) => html`<th scope="col">${label}</th>`)}${others.map((index) => html`<th scope="col">${cases.length === 2 ? 'Difference' : `${cases[index]} less ${cases[against]}`}</th>`)}</tr></thead>
      <tbody>${outputs.map((output) => html`<tr>
        <th scope="row">${output.label || output.place}<div class="place">${this.#place(output)}</div></th>
        ${output.results.map((result) => this.#cell(result))}
        ${others.map((index) => this.#difference(output.differences[index] ?? null))}
      </tr>`)}</tbody></table></div>
      <div class="tools"><span class="soft">Put the values of a case into the sheet, as one change:</span>
        ${cases.map((label, index) => (this.comparison.inputs.some(({ values }) => values[index] !== null) ? html`<button ?disabled=${this.readonly} @click=${() => this.#change({ change: 'put', case: index })}>Put ${label || `case ${index + 1}`} in</button>` : nothing))}</div>`;
  }

  #pictures(): TemplateResult | typeof nothing {
    const { pictured, picture, pictures, cases } = this.comparison;
    if (pictured.length === 0) return nothing;
    return html`<div class="tools"><label>Picture of <select name="picture" ?disabled=${this.readonly} @change=${this.#picture.change} @keydown=${this.#picture.key} @pointerdown=${this.#picture.pointer} @focusout=${this.#picture.left}>
        <option value="" .selected=${live(picture === '')}>nothing</option>
        ${pictured.map(({ cell, name }) => html`<option value=${cell} .selected=${live(cell === picture)}>${name}</option>`)}</select></label></div>
      ${pictures.length ? html`<p class="soft">All pictures are drawn to one scale.</p><div class="pictures">${cases.map((label, index) => html`<figure><figcaption>${label}</figcaption>${pictures[index] ? drawn(pictures[index]) : html`<p class="soft">No picture of this case.</p>`}</figure>`)}</div>` : nothing}`;
  }

  #place(item: { readonly place: string; readonly cell: CellAddress | null }) {
    if (!item.cell) return html`${item.place}`;
    const { sheet, row, col } = item.cell;
    const area = { sheet, top: row, left: col, bottom: row, right: col };
    return html`<button class="bare" title="Go to it" @click=${() => this.#send('tt-go', { area })}>${item.place} ↗</button>`;
  }

  #cell(result: Result) {
    if (result.kind === 'error') return html`<td class="no">✕ ${result.sentence}</td>`;
    const { main, also } = shownResult(result, this.as);
    return html`<td>${main}${also ? html`<small>${also}</small>` : nothing}</td>`;
  }

  #difference(difference: Result | null) {
    if (!difference) return html`<td>–</td>`;
    if (difference.kind === 'quantity' && Math.abs(difference.value) > NOTHING) {
      const { main, also } = shownResult(difference, this.as);
      if (!/[1-9¼-¾⅐-⅞]/.test(main)) return html`<td>less than is shown</td>`;
      const sign = difference.value > 0 ? '+' : '';
      return html`<td class="moved">${sign}${main}${also ? html`<small>${sign}${also}</small>` : nothing}</td>`;
    }
    return html`<td>${difference.kind === 'text' ? difference.text : 'same'}</td>`;
  }

  #change(detail: ComparisonChange) {
    this.#send('tt-compare', detail);
  }

  #send(type: string, detail?: unknown) {
    this.dispatchEvent(new CustomEvent(type, { detail, bubbles: true, composed: true }));
  }
}

declare global {
  interface HTMLElementTagNameMap { 'tt-side-by-side': SideBySidePanel }
}
