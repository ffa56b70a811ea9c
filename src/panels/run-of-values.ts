import { LitElement, css, html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { controls } from '../look/index.ts';
import { drawn, pictureStyles, type Picture } from '../pictures/index.ts';
import type { Result } from '../reckoning/index.ts';
import type { ShowAs } from '../quantities/index.ts';
import type { CellAddress } from '../workbook/index.ts';
import { KeepFocus } from './keep-focus.ts';
import { keptList, keptStyles, type KeptList, type KeptWish } from './kept-list.ts';
import { shownResult } from './shown.ts';

export interface RunCell {
  /** `null` when it is gone. */
  readonly cell: CellAddress | null;
  readonly label: string;
  readonly place: string;
  readonly as: ShowAs;
}

export interface RunValue {
  readonly shown: string;
  readonly also?: string | undefined;
  /** The value that the sheet has. */
  readonly now: boolean;
  /** One a result. */
  readonly results: readonly Result[];
  /** Numbers of the pins that there are. */
  readonly pins: readonly number[];
}

/** A pin that there is on a stretch of the values. */
export interface RunPin {
  readonly number: number;
  readonly place: string;
  /** "from 12 to 15", "with 9", several of them. */
  readonly where: string;
  readonly sentence: string;
}

export interface Run {
  readonly kept: KeptList;
  readonly input: RunCell | null;
  readonly from: string;
  readonly to: string;
  readonly step: string;
  readonly results: readonly RunCell[];
  /** Results that depend on the input and are not among those shown. */
  readonly offered: readonly RunCell[];
  /** `null` while the worker is at it. */
  readonly values: readonly RunValue[] | null;
  readonly pins: readonly RunPin[];
  /** One a result; `null` where there is nothing to draw. */
  readonly plots: readonly (Picture | null)[];
  readonly sentence: string;
}

export type RunWish =
  | { readonly wish: 'input' | 'result' }
  | { readonly wish: 'limit'; readonly of: 'from' | 'to' | 'step'; readonly raw: string }
  | { readonly wish: 'offered'; readonly cell: CellAddress }
  | { readonly wish: 'leave out'; readonly at: number };

export const NO_RUN: Run = { kept: { id: '', all: [] }, input: null, from: '', to: '', step: '', results: [], offered: [], values: null, pins: [], plots: [], sentence: '' };

/**
 * One input over a range of values: the results as columns and as plots, with
 * the pins that come and go. The sheet stays as it is. Asks by `tt-run-wish` (a
 * `RunWish`), `tt-kept`, `tt-go`, `tt-export-run`, `tt-close`.
 */
@customElement('tt-run-of-values')
export class RunOfValuesPanel extends LitElement {
  static override styles = [controls, pictureStyles, keptStyles, css`
    :host { display: block; padding: 14px 16px 24px; }
    header { display: flex; gap: var(--gap-2); align-items: center; }
    header h2 { flex: 1; }
    h3 { margin: var(--gap-4) 0 var(--gap-1); }
    .limits { display: grid; grid-template-columns: repeat(3, minmax(0, 1fr)); gap: var(--gap-2); margin: var(--gap-1) 0 var(--gap-2); }
    .limits label { display: grid; gap: 2px; font-size: var(--size-small); color: var(--soft); }
    .limits input { color: var(--ink); min-width: 0; width: 100%; }
    .tools { display: flex; flex-wrap: wrap; gap: var(--gap-2); align-items: center; margin: var(--gap-2) 0; }
    .tools .small { min-height: 28px; padding: 1px 10px; font-size: var(--size-small); text-align: left; }
    .wide { overflow-x: auto; margin: var(--gap-2) 0; }
    table { border-collapse: separate; border-spacing: 0; min-width: 60%; background: var(--sheet); font-variant-numeric: tabular-nums; border: 1px solid var(--line); border-width: 1px 0 0 1px; }
    caption { text-align: left; font-weight: 600; padding: var(--gap-1) 0; }
    th, td { padding: 4px 8px; border: 1px solid var(--line); border-width: 0 1px 1px 0; text-align: right; vertical-align: baseline; }
    thead th { background: var(--tape); color: var(--tape-ink); font-weight: 600; }
    th[scope='row'] { font-weight: 600; white-space: nowrap; position: sticky; left: 0; background: var(--sheet); }
    td { white-space: nowrap; }
    td.no { white-space: normal; min-width: 150px; color: var(--pin); font-size: var(--size-small); text-align: left; }
    small { color: var(--soft); font-weight: 400; }
    td small, th small { display: block; }
    tr.now th { box-shadow: inset 4px 0 var(--chalk); }
    td.pins { color: var(--pin); font-weight: 600; text-align: left; }
    .cell { display: flex; flex-wrap: wrap; gap: 2px var(--gap-2); align-items: baseline; }
    .cell button.bare { min-height: 26px; padding: 2px 4px; text-align: left; overflow-wrap: anywhere; font-weight: 600; }
    thead button.bare { min-height: 24px; padding: 0 4px; font-size: 0.72rem; color: var(--tape-ink); }
    thead button.bare:hover { background: var(--sheet); color: var(--ink); }
    ol { margin: var(--gap-1) 0; padding-left: 1.6em; }
    li strong { color: var(--pin); }
    figure { margin: var(--gap-2) 0 var(--gap-3); }
    figcaption { font-weight: 600; }
    figure .tt-picture { max-width: 36rem; }
  `];

  @property({ attribute: false }) run: Run = NO_RUN;
  /** The selected cell in words, where it can be what runs, and where it can be a result that is shown. */
  @property({ attribute: false }) candidate: { readonly input: string; readonly result: string } = { input: '', result: '' };
  @property({ type: Boolean }) readonly = false;

  constructor() {
    super();
    new KeepFocus(this, () => ['[name=from]', 'header button'].map((selector) => this.renderRoot.querySelector<HTMLElement>(selector)).find((each) => each !== null));
  }

  override focus(options?: FocusOptions): void {
    this.renderRoot.querySelector<HTMLElement>(this.run.input ? '[name=from]' : '.take:not(:disabled), header button')?.focus(options);
  }

  override render(): TemplateResult {
    const { kept, input, values, sentence, offered, results } = this.run;
    const { candidate } = this;
    return html`
      <header><h2>Run of values</h2><button @click=${() => this.#send('tt-close')}>Close</button></header>
      <p class="soft">One figure over a range, such as pleats from 4 to 20, and what comes of each. The sheet stays as it is.</p>
      ${keptList(kept, 'run', (wish) => this.#send('tt-kept', wish satisfies KeptWish), this.readonly)}
      ${input ? html`<h3>What runs</h3><div class="cell">${this.#goTo(input)}</div>${this.#limits(input)}` : nothing}
      <div class="tools">
        <button class="take" ?disabled=${!candidate.input || this.readonly} @click=${() => this.#ask({ wish: 'input' })}>${candidate.input ? `Run over ${candidate.input}` : 'Select the figure that is to run in the sheet'}</button>
        ${input ? html`<button ?disabled=${!candidate.result || this.readonly} @click=${() => this.#ask({ wish: 'result' })}>${candidate.result ? `Show ${candidate.result}` : 'Select a result in the sheet to show it'}</button>` : nothing}
        <button ?disabled=${!values?.length} @click=${() => this.#send('tt-export-run')}>Save as CSV…</button>
      </div>
      ${offered.length ? html`<div class="tools" role="group" aria-label="Results that depend on it">${offered.map((cell) => html`<button class="small" ?disabled=${this.readonly} @click=${() => cell.cell && this.#ask({ wish: 'offered', cell: cell.cell })}>+ ${offeredName(cell, offered)}</button>`)}</div>` : nothing}
      ${sentence ? html`<p class="note" role="status">${sentence}</p>` : nothing}
      ${input && results.length && !values && !sentence ? html`<p class="soft" role="status">Working it out…</p>` : nothing}
      ${values?.length && results.length ? html`${this.#pins()}${this.#plots()}${this.#table(values)}` : nothing}
    `;
  }

  #limits(input: RunCell): TemplateResult {
    const name = input.label || input.place;
    const limit = (of: 'from' | 'to' | 'step', words: string) => html`<label>${words}<input name=${of} autocomplete="off" aria-label=${`${name}, ${words}`} ?disabled=${this.readonly} .value=${this.run[of]}
      @change=${(event: Event) => this.#ask({ wish: 'limit', of, raw: (event.target as HTMLInputElement).value })}></label>`;
    return html`<div class="limits">${limit('from', 'from')}${limit('to', 'to')}${limit('step', 'in steps of')}</div>`;
  }

  #pins(): TemplateResult {
    const { pins } = this.run;
    if (pins.length === 0) return html`<p class="soft">There is no pin along the way.</p>`;
    return html`<h3 id="pins">Pins along the way</h3><ol aria-labelledby="pins">${pins.map(({ number, place, where, sentence }) => html`<li value=${number}><strong>⚑ ${place}, ${where}.</strong> ${sentence}</li>`)}</ol>`;
  }

  #plots(): TemplateResult[] {
    return this.run.results.map((result, at) => {
      const plot = this.run.plots[at];
      return html`<figure><figcaption>${result.label || result.place}</figcaption>${plot ? drawn(plot) : html`<p class="soft">There is nothing to draw: it is no figure with any of the values.</p>`}</figure>`;
    });
  }

  #table(values: readonly RunValue[]): TemplateResult {
    const { input, results, pins } = this.run;
    return html`<div class="wide"><table>
      <caption>What comes of each</caption>
      <thead><tr><th scope="col">${input ? input.label || input.place : nothing}</th>${results.map((result, at) => html`<th scope="col">${result.label || result.place}
        <button class="bare" aria-label=${`Leave ${result.label || result.place} out`} title="Leave it out" ?disabled=${this.readonly} @click=${() => this.#ask({ wish: 'leave out', at })}>✕</button></th>`)}${pins.length ? html`<th scope="col">Pins</th>` : nothing}</tr></thead>
      <tbody>${values.map((value) => html`<tr class=${value.now ? 'now' : ''}>
        <th scope="row">${value.shown}${value.also ? html`<small>${value.also}</small>` : nothing}${value.now ? html`<small>as it is</small>` : nothing}</th>
        ${value.results.map((result, at) => this.#cell(result, results[at]!.as))}
        ${pins.length ? html`<td class="pins">${value.pins.length ? `⚑ ${value.pins.join(', ')}` : nothing}</td>` : nothing}
      </tr>`)}</tbody></table></div>`;
  }

  #cell(result: Result, as: ShowAs): TemplateResult {
    if (result.kind === 'error') return html`<td class="no">✕ ${result.sentence}</td>`;
    const { main, also } = shownResult(result, as);
    return html`<td>${main}${also ? html`<small>${also}</small>` : nothing}</td>`;
  }

  #goTo({ label, place, cell }: RunCell): TemplateResult {
    if (!cell) return html`${place}`;
    const { sheet, row, col } = cell;
    return html`<button class="bare" title="Go to it" @click=${() => this.#send('tt-go', { area: { sheet, top: row, left: col, bottom: row, right: col } })}>${label || place}${label ? html` <small>${place}</small>` : nothing} ↗</button>`;
  }

  #ask(detail: RunWish): void {
    this.#send('tt-run-wish', detail);
  }

  #send(type: string, detail?: unknown): void {
    this.dispatchEvent(new CustomEvent(type, { detail, bubbles: true, composed: true }));
  }
}

/** Several rows may have the same words. */
const offeredName = ({ label, place }: RunCell, all: readonly RunCell[]): string =>
  label === '' ? place : all.some((other) => other.label === label && other.place !== place) ? `${label} · ${place}` : label;

declare global {
  interface HTMLElementTagNameMap { 'tt-run-of-values': RunOfValuesPanel }
}
