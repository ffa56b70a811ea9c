import { LitElement, css, html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { controls } from '../look/index.ts';
import type { CellAddress } from '../workbook/index.ts';
import { KeepFocus } from './keep-focus.ts';
import type { ShownResult } from './shown.ts';
import type { BackBound, BackCell, BackInput, BackOffer, BackPin, BackWish, WorkBackShown } from './work-back-parts.ts';
import { callCautions, callSteps } from './working-call.ts';
import { Figures } from './working-figures.ts';
import { workingStyles } from './working-styles.ts';
import { workingTree } from './working-tree.ts';

const BOUNDS: readonly (readonly [BackBound, string])[] = [['exactly', 'exactly'], ['atMost', 'at most'], ['atLeast', 'at least']];

/** Characters of a figure that is too long to be read on a button. */
const LONG = 14;

const EMPTY: WorkBackShown = { result: null, wanted: '', bound: 'exactly', sentence: '', inputs: [], offered: [], searching: false, stale: false, resultAs: { system: 'own', inchStep: 8 } };

/**
 * Work back: a result, what is wanted of it, the inputs that may move, and what
 * each would have to be. Asks by `tt-back` (a `BackWish`), `tt-go`, `tt-close`.
 */
@customElement('tt-work-back')
export class WorkBackPanel extends LitElement {
  static override styles = [controls, workingStyles, css`
    :host { display: block; padding: 14px 16px 24px; }
    header { display: flex; gap: var(--gap-2); align-items: center; }
    header h2 { flex: 1; }
    h3 { margin: var(--gap-4) 0 var(--gap-1); }
    .cell { display: flex; gap: 2px var(--gap-2); align-items: baseline; }
    .cell button.bare:first-child { flex: 1; }
    .cell .now { font-variant-numeric: tabular-nums; color: var(--soft); text-align: right; }
    .cell button.bare { min-height: 26px; padding: 2px 4px; text-align: left; overflow-wrap: anywhere; font-weight: 600; }
    .cell button.bare small { font-weight: 400; color: var(--soft); }
    .wish { display: grid; grid-template-columns: auto minmax(0, 1fr); gap: var(--gap-2); margin: var(--gap-2) 0; }
    .wish label { display: grid; gap: 2px; min-width: 0; font-size: var(--size-small); color: var(--soft); }
    .wish :is(input, select) { color: var(--ink); font-size: var(--size); width: 100%; min-width: 0; }
    .limits { display: grid; grid-template-columns: repeat(3, minmax(0, 1fr)); gap: var(--gap-2); margin: var(--gap-1) 0; }
    .limits label { display: grid; gap: 2px; min-width: 0; font-size: var(--size-small); color: var(--soft); }
    .limits input { color: var(--ink); min-width: 0; width: 100%; }
    section { border: 1px solid var(--line); border-radius: var(--round); padding: var(--gap-2) var(--gap-3) var(--gap-3); margin: var(--gap-2) 0; background: var(--sheet); }
    .offer { border-top: 1px solid var(--line); margin-top: var(--gap-2); padding-top: var(--gap-2); }
    .offer .figure { display: block; font-size: 1.2rem; font-weight: 600; font-variant-numeric: tabular-nums; }
    .offer .figure small, .offer .gives small { font-weight: 400; font-size: var(--size-small); color: var(--soft); }
    .offer p { margin: var(--gap-1) 0; overflow-wrap: anywhere; }
    .do { display: flex; flex-wrap: wrap; gap: var(--gap-2); margin-top: var(--gap-2); }
    .do button { text-align: left; }
    ul.offered { list-style: none; margin: 0; padding: 0; display: flex; flex-wrap: wrap; gap: var(--gap-1); }
    ul.offered button { min-height: 28px; padding: 1px 10px; font-size: var(--size-small); text-align: left; }
    .pin strong { color: var(--pin); }
    .stale .offer { border-top-style: dashed; }
    .stale .offer .figure { font-weight: 400; }
    summary { min-height: 24px; cursor: pointer; }
    details { margin-top: var(--gap-2); }
  `];

  @property({ attribute: false }) shown: WorkBackShown = EMPTY;
  /** The selected cell in words, where it can be taken as the result, and where as an input. */
  @property({ attribute: false }) candidate: { readonly result: string; readonly input: string } = { result: '', input: '' };
  /** Nothing can be changed in the sheet. */
  @property({ type: Boolean }) readonly = false;

  constructor() {
    super();
    new KeepFocus(this, () => ['.search', '.take:not(:disabled)', 'header button'].map((selector) => this.renderRoot.querySelector<HTMLElement>(selector)).find((each) => each !== null));
  }

  override focus(options?: FocusOptions): void {
    const first = (selector: string): HTMLElement | null => this.renderRoot.querySelector(selector);
    (this.shown.result && first('[name=wanted]') || first('.take') || first('header button'))?.focus(options);
  }

  override render(): TemplateResult {
    const { result, sentence, inputs, offered, searching, stale } = this.shown;
    return html`
      <header><h2>Work back</h2><button @click=${() => this.#send('tt-close')}>Close</button></header>
      <p class="soft">Say what a result is to be, and which figures may change for it. The sheet stays as it is until you put an answer in.</p>
      <h3 id="result">The result</h3>
      ${result ? this.#cell(result) : nothing}
      ${this.#take('result', result ? 'For another result, select its cell in the sheet' : 'Select the cell of a result in the sheet', (name) => `Take ${name} as the result`)}
      ${result ? this.#wish() : nothing}
      ${result ? html`
        <h3>What may change for it</h3>
        <div class=${stale ? 'stale' : ''}>${inputs.map((input, at) => this.#input(input, at))}</div>
        ${offered.length ? html`<p class="soft" id="offered">${inputs.length ? 'It also comes from:' : 'It comes from these typed figures; choose one or several:'}</p>
          <ul class="offered" aria-labelledby="offered">${offered.map((cell) => html`<li><button @click=${() => this.#ask({ wish: 'offered', cell: cell.cell })}>${cell.label || cell.place}: ${cell.now}</button></li>`)}</ul>` : nothing}
        ${this.#take('input', 'To add another figure, select its cell in the sheet', (name) => `Let ${name} change`)}` : nothing}
      ${sentence ? html`<p class="note" role="status">${sentence}</p>` : nothing}
      ${stale ? html`<p class="note" role="status">The sheet has changed since this was worked out. Work it out again.</p>` : nothing}
      ${result && inputs.length ? html`<div class="do">${searching
        ? html`<button class="main search" @click=${() => this.#ask({ wish: 'cancel' })}>Stop</button><span class="soft" role="status">Trying values out…</span>`
        : html`<button class="main search" @click=${() => this.#ask({ wish: 'search' })}>Work it out</button>`}</div>` : nothing}
    `;
  }

  #wish(): TemplateResult {
    const { bound, wanted, resultAs } = this.shown;
    const example = resultAs.system === 'in' ? '31 1/2 in' : '80 cm';
    return html`<form class="wish" @submit=${(event: Event) => { event.preventDefault(); this.#ask({ wish: 'search' }); }}>
      <label>It is to be <select name="bound" .value=${bound} @change=${(event: Event) => this.#ask({ wish: 'bound', bound: (event.target as HTMLSelectElement).value as BackBound })}>
        ${BOUNDS.map(([value, words]) => html`<option value=${value} ?selected=${value === bound}>${words}</option>`)}</select></label>
      <label>this much <input name="wanted" autocomplete="off" placeholder=${`such as ${example}`} .value=${wanted} @change=${(event: Event) => this.#ask({ wish: 'wanted', raw: (event.target as HTMLInputElement).value })}></label>
    </form>`;
  }

  #input(input: BackInput, at: number): TemplateResult {
    const name = input.label || input.place;
    const limit = (of: 'from' | 'to' | 'step', words: string, hint = '') => html`<label>${words}<input autocomplete="off" aria-label=${`${name}, ${words}`} placeholder=${hint} .value=${input[of]}
      @change=${(event: Event) => this.#ask({ wish: 'limit', at, of, raw: (event.target as HTMLInputElement).value })}></label>`;
    return html`<section aria-label=${name}>
      <div class="cell">${this.#goTo(input)}<span class="now">now ${input.now}</span>
        <button class="bare" aria-label=${`Leave ${name} as it is`} title="Leave it as it is" @click=${() => this.#ask({ wish: 'leave out', at })}>✕</button></div>
      <div class="limits">${limit('from', 'from')}${limit('to', 'to')}${limit('step', 'in steps of', 'any')}</div>
      ${input.fault ? html`<p class="fault">${input.fault}</p>` : nothing}
      ${input.found ? html`<div role="group" aria-label=${`Answers for ${name}`}>
        ${input.found.sentences.map((sentence) => html`<p>${sentence}</p>`)}
        ${input.found.offers.map((offer) => this.#offer(offer, input, at))}</div>` : nothing}
    </section>`;
  }

  #offer({ which, sentence, input, result, raw, sound, pins, gone, working }: BackOffer, of: BackInput, at: number): TemplateResult {
    const figures = new Figures(this.shown.resultAs);
    const { call, tree, inner = [] } = working;
    return html`<div class="offer">
      <span class="figure">${two(input)}</span>
      <p>${sentence}</p>
      <p class="gives">Gives ${two(result)}.</p>
      ${pins.map((pin) => this.#pin(pin, 'There would be a pin on'))}
      ${gone.map((pin) => html`<p>The pin on ${pin.place} would be gone.</p>`)}
      ${pins.length === 0 && gone.length === 0 ? html`<p class="soft">No pin comes or goes with it.</p>` : nothing}
      ${sound ? html`<div class="do"><button ?disabled=${this.readonly || this.shown.stale} @click=${() => this.#ask({ wish: 'put', at, which })}>${raw.length > LONG ? `Put the exact figure into ${of.place}` : `Put ${raw} into ${of.place}`}</button></div>` : nothing}
      <details><summary>How the result comes about then</summary>
        ${call ? html`${callSteps(call, figures)}${callCautions(call, figures)}` : nothing}
        ${tree ? workingTree(tree, working.treeCut === true, figures, (area) => this.#send('tt-go', { area })) : nothing}
        ${inner.map((each) => html`<p><strong>${each.name}.</strong> ${each.about}</p>${callSteps(each, figures)}`)}
      </details>
    </div>`;
  }

  #pin({ place, sentence }: BackPin, words: string): TemplateResult {
    return html`<p class="pin"><strong>⚑ ${words} ${place}.</strong> ${sentence}</p>`;
  }

  #take(wish: 'result' | 'input', without: string, words: (name: string) => string): TemplateResult {
    const name = this.candidate[wish];
    return html`<div class="do"><button class="take" ?disabled=${name === ''} @click=${() => this.#ask({ wish })}>${name ? words(name) : without}</button></div>`;
  }

  #cell(cell: BackCell): TemplateResult {
    return html`<div class="cell">${this.#goTo(cell)}<span class="now">now ${cell.now}</span></div>`;
  }

  #goTo({ label, place, cell }: BackCell): TemplateResult {
    return html`<button class="bare" title="Go to it" @click=${() => this.#send('tt-go', { area: areaOf(cell) })}>${label || place}${label ? html` <small>${place}</small>` : nothing} ↗</button>`;
  }

  #ask(detail: BackWish): void {
    this.#send('tt-back', detail);
  }

  #send(type: string, detail?: unknown): void {
    this.dispatchEvent(new CustomEvent(type, { detail, bubbles: true, composed: true }));
  }
}

const areaOf = ({ sheet, row, col }: CellAddress) => ({ sheet, top: row, left: col, bottom: row, right: col });

const two = ({ main, also }: ShownResult) => html`${main}${also ? html` <small>(${also})</small>` : nothing}`;

declare global {
  interface HTMLElementTagNameMap { 'tt-work-back': WorkBackPanel }
}
