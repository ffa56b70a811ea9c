import { LitElement, css, html, nothing, type TemplateResult } from 'lit';
import { customElement, query, state } from 'lit/decorators.js';
import { controls } from '../look/index.ts';
import { UNITS } from '../quantities/index.ts';
import { readRows, readTable, sizeFault, type ChartChoices, type ChartReading } from '../tables/index.ts';
import { chartDecisions } from './chart-decisions.ts';
import { chartPreview, chartRemarks, chartSummary } from './chart-preview.ts';

/**
 * A pattern's size chart inside a form: pasted or from a file, shown as it was
 * understood. Says `tt-chart` {reading} when it is one that can be used, and
 * {reading: null} when there is none or its unit is a guess she has not looked at.
 */
@customElement('tt-start-chart')
export class StartChart extends LitElement {
  static override styles = [controls, css`
    /* What is only for the ear lies inside it and does not lengthen the page. */
    :host { display: block; position: relative; }
    details > * { box-sizing: border-box; }
    textarea { width: 100%; font-family: var(--face-sum); font-size: var(--size-small); }
    label.rows { display: grid; gap: var(--gap-1); }
    .pick { display: flex; flex-wrap: wrap; align-items: center; gap: var(--gap-2); margin: var(--gap-2) 0; }
    input[type='file'] { position: absolute; width: 1px; height: 1px; opacity: 0; }
    .table { overflow: auto; max-height: 260px; border: 1px solid var(--line); border-radius: var(--round); background: var(--sheet); }
    table { border-collapse: collapse; color: var(--ink); }
    th, td { padding: 4px 8px; border-bottom: 1px solid var(--line); text-align: left; white-space: nowrap; font-variant-numeric: tabular-nums; }
    th { background: var(--tissue); font-weight: 600; }
    .figure { text-align: right; }
    td.long { max-width: 1px; }
    td.around { color: var(--soft); }
    td.unread { color: var(--pin); background: var(--pin-wash); outline: 1px dashed var(--pin); outline-offset: -2px; }
    table.unreadable td:last-child { white-space: normal; min-width: 200px; }
    .decisions { display: grid; gap: var(--gap-3); grid-template-columns: repeat(auto-fill, minmax(min(220px, 100%), 1fr)); margin-top: var(--gap-2); }
    .decision { display: grid; gap: 2px; align-content: start; min-width: 0; }
    .decision select { width: 100%; }
    .guess { color: var(--thread); }
    .spoken { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
    summary { min-height: 24px; cursor: pointer; }
    .note { margin: var(--gap-2) 0; }
    .note p { margin: 0 0 var(--gap-1); }
  `];

  @state() private pasted = '';
  @state() private fileName = '';
  @state() private choices: ChartChoices = {};
  @state() private reading: ChartReading | null = null;
  @state() private sentence = '';
  @state() private unitSeen = false;
  @query('input[type=file]') private file!: HTMLInputElement;
  #content: string | Uint8Array = '';

  override render(): TemplateResult {
    const { reading } = this;
    return html`
      <label class="rows" for="rows">Rows of the chart, as they are printed: one measure a row, sizes across (or the other way round)</label>
      <textarea id="rows" rows="4" spellcheck="false" placeholder="Measure (cm), 10, 12, 14" .value=${this.pasted} @input=${(event: Event) => this.#paste((event.target as HTMLTextAreaElement).value)}></textarea>
      <div class="pick"><input type="file" accept=".csv,.tsv,.txt,text/csv,text/plain,text/tab-separated-values" aria-label="File with a size chart" tabindex="-1" @change=${() => void this.#take()}>
        <button type="button" @click=${() => this.file.click()}>Or choose a file…</button>${this.fileName ? html`<span>${this.fileName}</span>` : nothing}</div>
      ${this.sentence ? html`<p class="fault" role="alert">✕ ${this.sentence}</p>` : nothing}
      <p role="status">${reading ? html`<strong>${chartSummary(reading)}</strong>` : nothing}</p>
      ${reading?.unit.by === 'guess' ? html`<div class="note"><p><strong>⚠ The unit is a guess:</strong> ${reading.unit.why}. A chart in the wrong unit spoils cloth, so look at its source.</p>
        <label><input type="checkbox" id="unit-seen" .checked=${this.unitSeen} @change=${(event: Event) => { this.unitSeen = (event.target as HTMLInputElement).checked; this.#tell(); }}>
          ${reading.unit.value === 'mixed' || reading.unit.value === 'none' ? 'I have looked: each unit is right' : `I have looked: bare figures are ${UNITS[reading.unit.value].words}`}</label></div>` : nothing}
      ${reading ? html`${chartRemarks(reading)}${chartPreview(reading)}` : nothing}
      ${this.#content.length > 0 ? html`<details ?open=${!reading}><summary>What was understood</summary>
        ${chartDecisions(reading, this.#rows(), this.choices, this.fileName !== '', (choices) => { this.choices = choices; this.unitSeen = false; this.#read(); })}</details>` : nothing}
    `;
  }

  /** There is a chart whose unit is a guess that she has not looked at; the caret goes to it. */
  goToDoubt(): boolean {
    if (this.reading?.unit.by !== 'guess' || this.unitSeen) return false;
    this.renderRoot.querySelector<HTMLElement>('#unit-seen')?.focus();
    return true;
  }

  #rows() {
    const table = readRows(this.#content, this.choices);
    return 'sentence' in table ? [] : table.rows;
  }

  #paste(text: string) {
    this.pasted = text;
    this.fileName = '';
    this.#use(text);
  }

  async #take(): Promise<void> {
    const file = this.file.files?.[0];
    this.file.value = '';
    if (!file) return;
    const tooBig = sizeFault(file.size);
    try {
      if (tooBig) this.sentence = tooBig.sentence;
      else {
        const content = new Uint8Array(await file.arrayBuffer());
        this.fileName = file.name;
        this.#use(content);
      }
    } catch {
      this.sentence = `“${file.name}” could not be opened: it may have been moved or is in use. Choose it again.`;
    }
  }

  #use(content: string | Uint8Array) {
    this.#content = content;
    this.choices = {};
    this.unitSeen = false;
    this.#read();
  }

  #read() {
    const reading = this.#content.length > 0 ? readTable(this.#content, this.choices) : null;
    this.reading = reading && !('sentence' in reading) ? reading : null;
    this.sentence = reading && 'sentence' in reading ? reading.sentence : '';
    this.#tell();
  }

  #tell() {
    const usable = this.reading && (this.reading.unit.by !== 'guess' || this.unitSeen) ? this.reading : null;
    this.dispatchEvent(new CustomEvent('tt-chart', { detail: { reading: usable }, bubbles: true, composed: true }));
  }
}

declare global {
  interface HTMLElementTagNameMap { 'tt-start-chart': StartChart }
}
