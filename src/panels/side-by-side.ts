import { LitElement, css, html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { controls } from '../look/index.ts';
import type { ShowAs } from '../quantities/index.ts';
import type { Result } from '../reckoning/index.ts';
import type { CellAddress } from '../workbook/index.ts';
import { shownResult } from './shown.ts';

/** An input whose values are compared: where it is, what it is called, and what is typed in each case. */
export interface ComparedInput {
  readonly cell: CellAddress;
  readonly label: string;
  readonly place: string;
  /** One raw text a case, as it would be typed in the cell. */
  readonly values: readonly string[];
}

export interface ComparedResult {
  readonly cell: CellAddress;
  readonly label: string;
  readonly place: string;
  /** One a case. */
  readonly results: readonly Result[];
  /** Each case less the first; `null` where there is no difference to take. */
  readonly differences: readonly (Result | null)[];
}

export interface Comparison {
  readonly cases: readonly string[];
  readonly inputs: readonly ComparedInput[];
  /** `null` while the worker is at it. */
  readonly outputs: readonly ComparedResult[] | null;
  /** Why there is nothing to show, or what could not be worked out. */
  readonly sentence?: string;
}

export type ComparisonChange =
  | { readonly change: 'value'; readonly input: number; readonly case: number; readonly raw: string }
  | { readonly change: 'case'; readonly case: number; readonly label: string }
  | { readonly change: 'add-input' }
  | { readonly change: 'remove-input'; readonly input: number };

/** What two ways of working out the same may differ by, in millimetres or whatever a result counts in. */
const NOTHING = 1e-9;

/**
 * Two sets of values for some inputs, and every result that depends on them
 * under each, with the difference. Nothing here touches the sheet. Asks by
 * `tt-compare` (a `ComparisonChange`), `tt-go`, `tt-export-comparison`, `tt-close`.
 */
@customElement('tt-side-by-side')
export class SideBySidePanel extends LitElement {
  static override styles = [controls, css`
    :host { display: block; padding: 14px 16px 24px; }
    header { display: flex; gap: var(--gap-2); align-items: center; }
    header h2 { flex: 1; }
    .wide { overflow-x: auto; margin: var(--gap-3) 0; }
    table { border-collapse: collapse; width: 100%; background: var(--sheet); font-variant-numeric: tabular-nums; }
    caption { text-align: left; font-weight: 600; padding: var(--gap-1) 0; }
    th, td { padding: 5px 8px; border: 1px solid var(--line); text-align: right; vertical-align: baseline; }
    th[scope='row'] { text-align: left; font-weight: 400; }
    thead th { background: var(--tape); color: var(--tape-ink); font-weight: 600; }
    thead th:first-child { text-align: left; }
    td { white-space: nowrap; }
    td.no { white-space: normal; }
    td small { display: block; color: var(--soft); }
    td input, thead input { width: 100%; min-width: 64px; text-align: right; }
    thead input { background: var(--sheet); color: var(--ink); font-weight: 600; }
    .place { font-size: 0.72rem; color: var(--soft); }
    .place button { min-height: 24px; padding: 0; font-size: inherit; text-align: left; }
    .moved { color: var(--thread); font-weight: 600; }
    .no { color: var(--pin); font-size: var(--size-small); text-align: left; }
    .tools { display: flex; flex-wrap: wrap; gap: var(--gap-2); }
  `];

  @property({ attribute: false }) comparison: Comparison = { cases: [], inputs: [], outputs: null };
  @property({ attribute: false }) as: ShowAs = { system: 'own', inchStep: 8 };
  /** The selected cell, offered as an input. */
  @property() candidate = '';

  override render(): TemplateResult {
    const { cases, inputs, outputs, sentence } = this.comparison;
    return html`
      <header><h2>Side by side</h2><button @click=${() => this.#send('tt-close')}>Close</button></header>
      <p class="soft">Type other values under each heading. The sheet itself stays as it is.</p>
      ${inputs.length ? html`<div class="wide"><table>
        <caption>Inputs</caption>
        <thead><tr><th scope="col">Input</th>${cases.map((label, index) => html`<th scope="col"><input aria-label="Heading ${index + 1}" .value=${label} @change=${(event: Event) => this.#change({ change: 'case', case: index, label: (event.target as HTMLInputElement).value })}></th>`)}<td></td></tr></thead>
        <tbody>${inputs.map((input, row) => html`<tr>
          <th scope="row">${input.label || input.place}<div class="place">${this.#place(input)}</div></th>
          ${input.values.map((raw, index) => html`<td><input aria-label="${input.label || input.place}, ${cases[index]}" .value=${raw}
            @change=${(event: Event) => this.#change({ change: 'value', input: row, case: index, raw: (event.target as HTMLInputElement).value })}></td>`)}
          <td><button class="bare" aria-label="Leave ${input.label || input.place} out" title="Leave it out" @click=${() => this.#change({ change: 'remove-input', input: row })}>✕</button></td>
        </tr>`)}</tbody></table></div>` : nothing}
      <div class="tools">
        <button ?disabled=${!this.candidate} @click=${() => this.#change({ change: 'add-input' })}>${this.candidate ? `Compare over ${this.candidate}` : 'Select an input in the sheet to add it'}</button>
        <button ?disabled=${!outputs?.length} @click=${() => this.#send('tt-export-comparison')}>Save as CSV…</button>
      </div>
      ${sentence ? html`<p class="note" role="status">${sentence}</p>` : nothing}
      ${inputs.length && !outputs && !sentence ? html`<p class="soft" role="status">Working it out…</p>` : nothing}
      ${outputs?.length ? html`<div class="wide"><table>
        <caption>Results that depend on them</caption>
        <thead><tr><th scope="col">Result</th>${cases.map((label) => html`<th scope="col">${label}</th>`)}${cases.slice(1).map(() => html`<th scope="col">Difference</th>`)}</tr></thead>
        <tbody>${outputs.map((output) => html`<tr>
          <th scope="row">${output.label || output.place}<div class="place">${this.#place(output)}</div></th>
          ${output.results.map((result) => this.#cell(result))}
          ${output.differences.slice(1).map((difference) => this.#difference(difference))}
        </tr>`)}</tbody></table></div>` : nothing}
    `;
  }

  #place(item: { readonly place: string; readonly cell: CellAddress }) {
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
