import { LitElement, css, html, nothing, type TemplateResult } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { controls } from '../look/index.ts';
import { UNITS } from '../quantities/index.ts';
import { readRows, readTable, sizeFault, type ChartChoices, type ChartReading } from '../tables/index.ts';
import { emptyBook, emptySheet, freeName, freeSheetName, nameFault, sheetNameFault, type Book } from '../workbook/index.ts';
import { chartDecisions } from './chart-decisions.ts';
import { chartPreview, chartRemarks, chartSummary } from './chart-preview.ts';

/** Names that the workbook has already. */
export interface TakenNames {
  readonly sheets: readonly string[];
  readonly names: readonly string[];
}

/** Sent when the chart is as she wants it. Cancel it to keep the dialog open with what is in it. */
export type ImportEvent = CustomEvent<{ readonly sheetName: string; readonly chartName: string; readonly reading: ChartReading }>;

interface Source {
  readonly content: Uint8Array | string;
  /** `null` for a pasted text. */
  readonly fileName: string | null;
}

/**
 * Reads a size chart from a file or a pasted text, shows what was understood,
 * lets her correct it. Asks by `tt-import` (`ImportEvent`). What is in it stays
 * until the chart is made.
 */
@customElement('tt-import-chart')
export class ImportChart extends LitElement {
  static override styles = [controls, css`
    .body { display: grid; gap: var(--gap-4); grid-template-columns: minmax(0, 1fr); }
    p { margin: 0; }
    ul { margin: var(--gap-2) 0 0; padding-left: 20px; }
    .source { border: 2px dashed var(--rule); border-radius: var(--round); padding: var(--gap-3); display: grid; gap: var(--gap-2); }
    .source.over { border-style: solid; border-color: var(--chalk); background: var(--chalk-wash); }
    .pick { display: flex; flex-wrap: wrap; gap: var(--gap-2); align-items: center; overflow-wrap: anywhere; }
    .source label, .names label { display: grid; gap: var(--gap-1); align-items: start; }
    textarea { width: 100%; font-family: var(--face-sum); font-size: var(--size-small); resize: vertical; }
    input[type='file'] { position: absolute; width: 1px; height: 1px; opacity: 0; }
    .decisions { display: grid; gap: var(--gap-3); grid-template-columns: repeat(auto-fill, minmax(min(220px, 100%), 1fr)); margin-top: var(--gap-2); }
    .decision { display: grid; gap: 2px; align-content: start; min-width: 0; }
    .decision select { width: 100%; }
    .guess { color: var(--thread); }
    .table { overflow: auto; max-height: 320px; border: 1px solid var(--line); border-radius: var(--round); background: var(--sheet); }
    table { border-collapse: collapse; color: var(--ink); }
    th, td { padding: 4px 8px; border-bottom: 1px solid var(--line); text-align: left; white-space: nowrap; font-variant-numeric: tabular-nums; }
    th { background: var(--tissue); font-weight: 600; }
    .figure { text-align: right; }
    td.long { max-width: 1px; }
    td.around { color: var(--soft); }
    td.unread { color: var(--pin); background: var(--pin-wash); outline: 1px dashed var(--pin); outline-offset: -2px; }
    .fault h3, .note h3 { margin-bottom: var(--gap-1); }
    .fault .table { margin-top: var(--gap-2); max-height: 200px; }
    table.unreadable td:last-child { white-space: normal; min-width: 200px; }
    .names { display: grid; gap: var(--gap-3); grid-template-columns: repeat(auto-fill, minmax(min(260px, 100%), 1fr)); }
    .names input { width: 100%; }
    .wrong { color: var(--pin); font-size: var(--size-small); }
    .spoken { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
    section > h3 { margin-bottom: var(--gap-1); }
    summary { min-height: 24px; cursor: pointer; }
  `];

  @property({ attribute: false }) taken: TakenNames = { sheets: [], names: [] };

  @state() private source: Source | null = null;
  /** What stands in the field for pasted rows; it stays there when a file is chosen. */
  @state() private pasted = '';
  @state() private choices: ChartChoices = {};
  @state() private reading: ChartReading | null = null;
  @state() private sentence = '';
  @state() private sheetName = '';
  @state() private chartName = '';
  @state() private unitSeen = false;
  /** Set once she pressed the button, so that what is missing is said only then. */
  @state() private pressed = false;
  @state() private over = false;
  #rows: ChartReading['rows'] = [];
  #turn = 0;

  @query('dialog') private dialog!: HTMLDialogElement;
  @query('#choose') private button!: HTMLButtonElement;
  @query('input[type=file]') private file!: HTMLInputElement;

  open(): void {
    this.dialog.showModal();
    this.button.focus();
  }

  override render(): TemplateResult {
    return html`<dialog aria-labelledby="title" @dragover=${this.#dragOver} @dragleave=${() => { this.over = false; }} @drop=${this.#drop}>
      <header><h2 id="title">Read a size chart</h2><button @click=${() => this.dialog.close()}>Close</button></header>
      <div class="body">
        <div class="source ${this.over ? 'over' : ''}">
          <div class="pick">
            <input type="file" accept=".csv,.tsv,.txt,text/csv,text/plain,text/tab-separated-values" aria-label="File with a size chart" tabindex="-1" @change=${this.#fileChosen}>
            <button id="choose" class=${this.source ? '' : 'main'} @click=${() => this.file.click()}>Choose a file…</button>
            <span>${this.source?.fileName ?? html`<span class="soft">or drop a CSV file here, or paste its rows below</span>`}</span>
          </div>
          <label>Pasted rows <textarea rows="3" spellcheck="false" .value=${this.pasted} @input=${(event: Event) => this.#paste((event.target as HTMLTextAreaElement).value)}></textarea></label>
        </div>
        ${this.sentence ? html`<p class="fault" role="alert">✕ ${this.sentence}</p>` : nothing}
        <p role="status" class=${this.reading ? '' : 'spoken'}>${this.reading ? html`<strong>${chartSummary(this.reading)}</strong>` : ''}</p>
        ${this.source && this.#rows.length ? html`<section aria-labelledby="understood">
          <h3 id="understood">What was understood</h3>
          ${chartDecisions(this.reading, this.#rows, this.choices, this.source.fileName !== null, (choices) => this.#choose(choices))}
        </section>` : nothing}
        ${this.reading ? this.#chart(this.reading) : nothing}
      </div>
      <footer>
        <button @click=${() => this.dialog.close()}>Cancel</button>
        <button class="main" ?disabled=${!this.reading} @click=${this.#make}>Make the chart</button>
      </footer>
    </dialog>`;
  }

  #chart(reading: ChartReading) {
    const { unit } = reading;
    return html`
      ${unit.by === 'guess' ? html`<div class="note">
        <p><strong>⚠ The unit is a guess.</strong> ${sentenceOf(unit.why)} A chart in the wrong unit spoils cloth, so look at its source.</p>
        <label><input type="checkbox" id="unit-seen" .checked=${this.unitSeen} aria-describedby="unit-missing" @change=${(event: Event) => { this.unitSeen = (event.target as HTMLInputElement).checked; }}>
          ${unit.value === 'mixed' || unit.value === 'none' ? 'I have looked: each unit is right' : `I have looked: bare figures are ${UNITS[unit.value].words}`}</label>
        <p id="unit-missing" class="wrong" role="alert">${this.pressed && !this.unitSeen ? '✕ Tick this, or choose the unit above.' : ''}</p>
      </div>` : nothing}
      ${chartRemarks(reading)}
      <section aria-labelledby="sheet-title"><h3 id="sheet-title">As it will stand in the sheet</h3>${chartPreview(reading)}</section>
      <div class="names">
        ${this.#name('sheet-name', 'Name of the sheet', this.sheetName, this.#sheetFault(), (name) => { this.sheetName = name; })}
        ${this.#name('chart-name', 'Name of the chart, for formulas', this.chartName, this.#chartFault(), (name) => { this.chartName = name; })}
      </div>`;
  }

  #name(id: string, label: string, value: string, fault: string | null, change: (name: string) => void) {
    return html`<label for=${id}>${label}
      <input id=${id} maxlength="60" autocomplete="off" .value=${value} aria-invalid=${fault ? 'true' : 'false'} aria-describedby=${`${id}-wrong`} @input=${(event: Event) => change((event.target as HTMLInputElement).value)}>
      <span id=${`${id}-wrong`} class="wrong" role="alert">${fault ? `✕ ${fault}` : ''}</span></label>`;
  }

  #sheetFault(): string | null {
    return sheetNameFault(this.sheetName, this.#names);
  }

  #chartFault(): string | null {
    return nameFault(this.chartName, this.#names);
  }

  /** A workbook of nothing but the names, to ask its rules. */
  get #names(): Book {
    const { sheets, names } = this.taken;
    return { ...emptyBook('names'), sheets: sheets.map((name, i) => emptySheet(i + 1, name)), names: names.map((name) => ({ name, area: null, kind: 'cells' })) };
  }

  #dragOver(event: DragEvent) {
    event.preventDefault();
    this.over = true;
  }

  #drop(event: DragEvent) {
    event.preventDefault();
    this.over = false;
    const file = event.dataTransfer?.files[0];
    const text = event.dataTransfer?.getData('text/plain') ?? '';
    if (file) void this.#take(file);
    else if (text) this.#paste(text);
  }

  #fileChosen() {
    const file = this.file.files?.[0];
    this.file.value = '';
    if (file) void this.#take(file);
  }

  #paste(text: string) {
    this.#turn++;
    this.pasted = text;
    this.#use({ content: text, fileName: null });
  }

  /** A file that takes long does not overrun one that was chosen after it. */
  async #take(file: File): Promise<void> {
    const turn = ++this.#turn;
    const tooBig = sizeFault(file.size);
    if (tooBig) {
      this.#clear();
      this.sentence = tooBig.sentence;
      return;
    }
    try {
      const content = new Uint8Array(await file.arrayBuffer());
      if (turn === this.#turn) this.#use({ content, fileName: file.name });
    } catch {
      if (turn !== this.#turn) return;
      this.#clear();
      this.sentence = `“${file.name}” could not be opened: it may have been moved or is in use. Choose it again.`;
    }
  }

  #use(source: Source) {
    this.#clear();
    if (source.fileName === null && source.content.length === 0) return;
    this.source = source;
    this.sheetName = freeSheetName(wishFrom(source.fileName), this.#names);
    this.chartName = freeName('chart', this.#names);
    this.#read();
  }

  #clear() {
    this.source = null;
    this.choices = {};
    this.reading = null;
    this.sentence = '';
    this.unitSeen = false;
    this.pressed = false;
    this.#rows = [];
  }

  #choose(choices: ChartChoices) {
    this.choices = choices;
    this.unitSeen = false;
    this.#read();
  }

  /** Why the sheet could not be made. */
  refuse(sentence: string): void {
    this.sentence = sentence;
    void this.updateComplete.then(() => this.renderRoot.querySelector('[role=alert]')?.scrollIntoView({ block: 'nearest' }));
  }

  #read() {
    const { source, choices } = this;
    if (!source) return;
    const reading = readTable(source.content, choices);
    if (!('sentence' in reading)) {
      this.reading = reading;
      this.#rows = reading.rows;
      this.sentence = '';
      return;
    }
    // The choices stay on the screen, since one of them may be what is wrong.
    const table = readRows(source.content, choices);
    this.reading = null;
    this.#rows = 'sentence' in table ? [] : table.rows;
    this.sentence = reading.sentence;
  }

  #make() {
    const { reading } = this;
    if (!reading) return;
    this.pressed = true;
    const missing = reading.unit.by === 'guess' && !this.unitSeen ? 'unit-seen' : this.#sheetFault() ? 'sheet-name' : this.#chartFault() ? 'chart-name' : null;
    if (missing) {
      this.renderRoot.querySelector<HTMLElement>(`#${missing}`)?.focus();
      return;
    }
    const detail = { sheetName: this.sheetName.trim(), chartName: this.chartName.trim(), reading };
    const event: ImportEvent = new CustomEvent('tt-import', { detail, bubbles: true, composed: true, cancelable: true });
    if (!this.dispatchEvent(event)) return;
    this.dialog.close();
    this.pasted = '';
    this.#clear();
  }
}

const sentenceOf = (why: string): string => `${why.charAt(0).toUpperCase()}${why.slice(1)}.`;

/** A sheet's name from a file's: "misses_2011-in.csv" is "misses 2011 in". */
function wishFrom(fileName: string | null): string {
  const words = (fileName ?? '').replace(/\.[^.]*$/, '').replace(/[_\s-]+/g, ' ').replace(/[\p{Cc}\p{Cs}]/gu, '').trim();
  return words.slice(0, 50).trim() || 'Size chart';
}

declare global {
  interface HTMLElementTagNameMap { 'tt-import-chart': ImportChart }
}
