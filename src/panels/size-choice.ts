import { LitElement, html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { controls } from '../look/index.ts';
import { drawn, pictureStyles } from '../pictures/index.ts';
import { sizeChoiceStyles } from './size-choice-styles.ts';
import type { SizeAnswer, SizeBesideRow, SizeBlendRow, SizeChoiceChange, SizeChoiceView, SizeLevelRow } from './size-choice-view.ts';

const APART = [['0', 'one size everywhere'], ['1', '1 size'], ['2', '2 sizes'], ['3', '3 sizes'], ['4', '4 sizes']] as const;
const SEAMS = ['1', '2', '3', '4', '6'] as const;

const NOTHING: SizeChoiceView = {
  charts: [], chart: '', styles: [], style: '', garments: [], garment: '', people: [], levels: [], change: '', changeFault: '', apart: '2', seams: '2',
  cost: '', answer: null, sentence: '', target: '', isThere: false, targetFault: '', candidate: '', block: '', readonly: false,
};

/**
 * From a chart, measures and a style to the size to cut at each level. Asks by
 * `tt-size-choice` (a `SizeChoiceChange`) and `tt-close`.
 */
@customElement('tt-size-choice')
export class SizeChoicePanel extends LitElement {
  static override styles = [controls, pictureStyles, sizeChoiceStyles];

  @property({ attribute: false }) view: SizeChoiceView = NOTHING;

  /** To the first measure that is missing; to the chart where none is. */
  override focus(options?: FocusOptions): void {
    const fields = [...this.renderRoot.querySelectorAll<HTMLInputElement>('.measure .line:first-child input')];
    const first = fields.find(({ value, id }) => value === '' && id !== 'measure-high-bust') ?? this.renderRoot.querySelector<HTMLElement>('#chart');
    if (first) first.focus(options);
    else this.renderRoot.querySelector('button')?.focus(options);
  }

  override render(): TemplateResult {
    const { view } = this;
    const { answer } = view;
    return html`
      <header><h2>Choose the size</h2><button @click=${() => this.dispatchEvent(new CustomEvent('tt-close', { bubbles: true, composed: true }))}>Close</button></header>
      ${view.charts.length ? this.#wishes() : nothing}
      ${view.levels.length ? html`
        <h3>Measures</h3>
        <p class="soft">Type each in cm or inches, or select its cell in the sheet and take it from there: then the sizes follow it.</p>
        ${view.people.length ? html`<p><label for="person">Measures of</label> <select id="person" @change=${(event: Event) => this.#picked(event, 'person')}>
          <option value="">choose a person…</option>${view.people.map(({ id, name }) => html`<option value=${id}>${name}</option>`)}</select></p>` : nothing}
        ${view.block ? html`<p><button @click=${() => this.#ask({ change: 'take-block' })}>Take the measures in ${view.block}</button></p>` : nothing}
        ${view.levels.map((row) => this.#measure(row))}` : nothing}
      ${view.sentence ? html`<p class="note">${view.sentence}</p>` : nothing}
      <p class="answer" role="status">${answer?.sentence ?? ''}</p>
      ${answer ? this.#answer(answer) : nothing}
      ${view.charts.length ? this.#weighing() : nothing}
      ${answer ? this.#put() : nothing}
    `;
  }

  #wishes() {
    const { charts, chart, styles, style, garments, garment } = this.view;
    return html`<div class="wishes">
      <label for="chart">Size chart</label>
      <select id="chart" .value=${chart} @change=${(event: Event) => this.#picked(event, 'chart')}>${charts.map((name) => html`<option value=${name} ?selected=${name === chart}>${name}</option>`)}</select>
      <label for="style">Style</label>
      <select id="style" .value=${style} @change=${(event: Event) => this.#picked(event, 'style')}>${styles.map((one) => html`<option value=${one.style} ?selected=${one.style === style}>${one.words}</option>`)}</select>
      ${garments.length ? html`<label for="garment">Garment</label>
        <select id="garment" .value=${garment} @change=${(event: Event) => this.#picked(event, 'garment')}>${garments.map((name) => html`<option value=${name} ?selected=${name === garment}>${name}</option>`)}</select>` : nothing}
    </div>`;
  }

  #measure({ level, label, raw, reads, fault, hint, ease }: SizeLevelRow) {
    const { candidate } = this.view;
    const id = `measure-${level.replaceAll(' ', '-')}`;
    return html`<div class="measure">
      <div class="line">
        <label for=${id}>${label}</label>
        <input id=${id} autocomplete="off" .value=${raw} aria-invalid=${fault ? 'true' : 'false'} aria-describedby="${id}-says"
          @change=${(event: Event) => this.#ask({ change: 'measure', level, value: (event.target as HTMLInputElement).value })}>
        <button ?disabled=${!candidate} title=${candidate ? `Take it from ${candidate}` : 'Select a cell with a length in the sheet first'}
          aria-label=${candidate ? `Take ${candidate} as the ${label.toLowerCase()}` : `Take cell as the ${label.toLowerCase()}`}
          @click=${() => this.#ask({ change: 'take', level })}>${candidate ? `Take ${candidate}` : 'Take cell'}</button>
      </div>
      <div id="${id}-says">
        ${fault ? html`<p class="wrong">${fault}</p>` : nothing}
        ${reads && reads !== raw.trim() ? html`<small>${reads}</small>` : nothing}
        ${hint && !raw ? html`<small>${hint}</small>` : nothing}
      </div>
      ${ease ? html`<div class="line two">
        <span class="soft">Ease wanted</span>
        <input aria-label="Least ease wanted at the ${label.toLowerCase()}" autocomplete="off" .value=${ease.low} @change=${(event: Event) => this.#ask({ change: 'ease', level, end: 'low', value: (event.target as HTMLInputElement).value })}>
        <span class="soft">to</span>
        <input aria-label="Most ease wanted at the ${label.toLowerCase()}" autocomplete="off" .value=${ease.high} @change=${(event: Event) => this.#ask({ change: 'ease', level, end: 'high', value: (event.target as HTMLInputElement).value })}>
      </div>
      ${ease.fault ? html`<p class="wrong">${ease.fault}</p>` : nothing}
      <small>${ease.usual || 'The table of usual ease has none for this garment here: type it, or the chart’s body measure decides.'}</small>` : nothing}
    </div>`;
  }

  #answer(answer: SizeAnswer) {
    return html`
      <dl class="chosen">${answer.levels.map(({ label, size, continued, why, pins }) => html`
        <dt><span class="aloud">${label}: size </span>${size}${continued ? html`<small>continued</small>` : nothing}</dt>
        <dd>${why}${pins.filter((pin) => !why.includes(pin)).map((pin) => html`<p class="pin">▲ ${pin}</p>`)}</dd>`)}</dl>
      ${answer.bust ? html`<h3>High bust and full bust</h3><p>${answer.bust}</p>` : nothing}
      <figure>${drawn(answer.outline)}</figure>
      <h3>The sizes beside it</h3>
      <div class="wide"><table>
        <caption>What each size leaves: ease where the chart has finished measures, else by how much the chart’s body is larger.</caption>
        <thead><tr><th scope="col">Level</th><th scope="col">One smaller</th><th scope="col">To cut</th><th scope="col">One larger</th></tr></thead>
        <tbody>${answer.beside.map((row) => this.#beside(row))}</tbody>
      </table></div>
      ${answer.blends.length ? html`<h3>The blend</h3>${answer.blends.map((row) => this.#blend(row))}` : nothing}
      ${answer.edge ? html`<figure>${drawn(answer.edge)}</figure>` : nothing}
    `;
  }

  #beside({ label, what, sizes }: SizeBesideRow) {
    return html`<tr><th scope="row">${label}<small>${what}</small></th>${sizes.map((one, i) => (one
      ? html`<td class=${i === 1 ? 'mine' : ''}>${one.under ? html`<span class="under">▲ ${one.left}</span>` : one.left}<small>${one.continued ? `size ${one.size}, continued` : `size ${one.size}`}</small></td>`
      : html`<td>–</td>`))}</tr>`;
  }

  #blend({ level, label, sentence, raw, usual, fault }: SizeBlendRow) {
    const id = `down-${level.replaceAll(' ', '-')}`;
    return html`<div class="blend">
      <div class="line"><label for=${id}>${label}</label>
        <input id=${id} autocomplete="off" .value=${raw} placeholder=${usual} aria-invalid=${fault ? 'true' : 'false'} aria-describedby="${id}-says"
          @change=${(event: Event) => this.#ask({ change: 'down', level, value: (event.target as HTMLInputElement).value })}></div>
      <div id="${id}-says">${fault ? html`<p class="wrong">${fault}</p>` : nothing}<small>Distance down the body or the piece; ${usual} is usual (common practice).</small></div>
      <p>${sentence}</p>
    </div>`;
  }

  #weighing() {
    const { cost, change, changeFault, apart, seams } = this.view;
    return html`<details>
      <summary>How it is weighed</summary>
      <p>${cost}</p>
      <div class="wishes">
        <label for="change">Each change of size counts as</label>
        <input id="change" autocomplete="off" .value=${change} placeholder="1 cm" aria-invalid=${changeFault ? 'true' : 'false'} @change=${(event: Event) => this.#picked(event, 'changeCost')}>
        <label for="apart">Neighbouring levels apart at most</label>
        <select id="apart" .value=${apart} @change=${(event: Event) => this.#picked(event, 'apart')}>${APART.map(([value, words]) => html`<option value=${value} ?selected=${value === apart}>${words}</option>`)}</select>
        <label for="seams">Seams that share a girth</label>
        <select id="seams" .value=${seams} @change=${(event: Event) => this.#picked(event, 'seams')}>${SEAMS.map((value) => html`<option value=${value} ?selected=${value === seams}>${value}</option>`)}</select>
      </div>
      ${changeFault ? html`<p class="wrong">${changeFault}</p>` : nothing}
    </details>`;
  }

  #put() {
    const { target, isThere, targetFault, readonly } = this.view;
    return html`<div class="put">
      <p class="soft">${isThere
        ? `It is in ${target} now. Select another cell to put it there as well.`
        : `Select the cell where it is to begin. It goes into ${target} as formulas that follow the chart and the measures.`}</p>
      <button class="main" ?disabled=${readonly || isThere || targetFault !== ''} @click=${() => this.#ask({ change: 'put' })}>Put it in the sheet</button>
      ${targetFault ? html`<p class="wrong">${targetFault}</p>` : nothing}
    </div>`;
  }

  #picked(event: Event, change: 'chart' | 'style' | 'garment' | 'changeCost' | 'apart' | 'seams' | 'person') {
    this.#ask({ change, value: (event.target as HTMLInputElement).value });
  }

  #ask(detail: SizeChoiceChange) {
    this.dispatchEvent(new CustomEvent('tt-size-choice', { detail, bubbles: true, composed: true }));
  }
}

declare global {
  interface HTMLElementTagNameMap { 'tt-size-choice': SizeChoicePanel }
}
