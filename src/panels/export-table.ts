import { LitElement, css, html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { controls } from '../look/index.ts';
import type { ShowAs } from '../quantities/index.ts';
import { writeCsv, type CsvOptions, type CsvText, type OutCell } from '../tables/index.ts';

const PREVIEW_LINES = 10;
const PREVIEW_WIDTH = 400;

export type SaveFileEvent = CustomEvent<{ readonly name: string; readonly blob: Blob }>;

type Choices = Omit<CsvOptions, 'show'>;

/**
 * A table as a CSV file: how its figures, units and separators are written,
 * with the first lines as they will stand in the file. Asks by `tt-save-file`
 * (`SaveFileEvent`). The choices stay from one time to the next.
 */
@customElement('tt-export-table')
export class ExportTable extends LitElement {
  static override styles = [controls, css`
    dialog { width: min(720px, calc(100vw - 32px)); }
    .body { display: grid; gap: var(--gap-4); grid-template-columns: minmax(0, 1fr); }
    .choices { display: grid; gap: var(--gap-4); grid-template-columns: repeat(auto-fill, minmax(min(280px, 100%), 1fr)); }
    fieldset { border: 0; margin: 0; padding: 0; display: grid; gap: var(--gap-1); align-content: start; min-width: 0; }
    legend { padding: 0; font-weight: 600; }
    fieldset > label { align-items: start; }
    input { flex: none; }
    pre { margin: 0; padding: var(--gap-3); background: var(--sheet); border: 1px solid var(--line); border-radius: var(--round); overflow: auto; font: 0.8rem/1.5 var(--face-sum); tab-size: 4; }
    p { margin: 0; }
    h3 { margin-bottom: var(--gap-1); }
    .soft { display: block; }
    @media (max-width: 640px) { dialog { width: 100vw; } }
  `];

  @property({ attribute: false }) grid: readonly (readonly OutCell[])[] = [];
  /** What the table is called; also the file's name. Not an attribute, so that no tip hangs on the element. */
  @property({ attribute: false }) override title = '';
  /** What is hidden and stays out of the file, as “12 hidden rows”. */
  @property({ attribute: false }) leftOut = '';
  @property({ attribute: false }) as: ShowAs = { system: 'own', inchStep: 8 };

  @state() private choices: Choices = { numbers: 'shown', unit: 'cells', separator: ',', decimalMark: '.', mark: true };
  @state() private opened = false;
  @state() private said = '';
  #csv: CsvText = { text: '', guarded: 0, unitsAt: 'cells', mixed: 0 };

  @query('dialog') private dialog!: HTMLDialogElement;

  open(): void {
    this.opened = true;
    this.said = '';
    this.dialog.showModal();
  }

  protected override willUpdate(changed: PropertyValues): void {
    // Nothing is written while the dialog is closed: a sheet can be large.
    if (this.opened && ['grid', 'as', 'choices', 'opened'].some((name) => changed.has(name))) this.#csv = writeCsv(this.grid, { ...this.choices, show: this.as });
  }

  override render(): TemplateResult {
    const { choices } = this;
    return html`<dialog aria-labelledby="heading" @close=${() => { this.opened = false; }}>
      <header><h2 id="heading">Save as CSV${this.title ? html`: ${this.title}` : nothing}</h2><button @click=${() => this.dialog.close()}>Close</button></header>
      <div class="body">
        <div class="choices">
          ${this.#radios('Figures', 'numbers', [
            ['shown', 'As they are shown', 'inches as fractions, rounded as on the screen'],
            ['exact', 'Exact', 'reads back to the same value; inches as decimals'],
          ])}
          ${this.#radios('Units', 'unit', [
            ['cells', 'In every cell', '36 1/4 in'],
            ['heading', 'In the headings', 'where a column or row has only one unit; its cells are bare'],
          ])}
          ${this.#radios('Fields parted by', 'separator', [[',', 'Comma', ''], [';', 'Semicolon', 'where the comma is a decimal mark']])}
          <fieldset>
            <legend>For other programs</legend>
            <label><input type="checkbox" name="decimalMark" .checked=${choices.decimalMark === ','} ?disabled=${choices.separator === ','}
              @change=${(event: Event) => this.#choose({ decimalMark: (event.target as HTMLInputElement).checked ? ',' : '.' })}> <span>Decimal comma<span class="soft">84,5 cm; with the semicolon only</span></span></label>
            <label><input type="checkbox" name="mark" .checked=${choices.mark} @change=${(event: Event) => this.#choose({ mark: (event.target as HTMLInputElement).checked })}>
              <span>Begin with a UTF-8 mark<span class="soft">some programs need it to show accents</span></span></label>
          </fieldset>
        </div>
        <section aria-labelledby="preview"><h3 id="preview">The first lines of the file</h3><pre tabindex="0" aria-labelledby="preview">${this.#preview()}</pre></section>
        ${this.#notes()}
        <p role="status" class="soft">${this.said}</p>
      </div>
      <footer>
        <button @click=${this.#copy}>Copy</button>
        <button class="main" @click=${this.#save}>Save the file</button>
      </footer>
    </dialog>`;
  }

  #radios<K extends 'numbers' | 'unit' | 'separator'>(legend: string, key: K, options: readonly (readonly [Choices[K], string, string])[]) {
    return html`<fieldset><legend>${legend}</legend>${options.map(([value, words, about]) => html`<label>
      <input type="radio" name=${key} value=${value} .checked=${this.choices[key] === value} @change=${() => this.#choose({ [key]: value })}>
      <span>${words}${about ? html`<span class="soft">${about}</span>` : nothing}</span></label>`)}</fieldset>`;
  }

  #notes() {
    const { guarded, unitsAt, mixed } = this.#csv;
    const wanted = this.choices.unit === 'heading';
    return html`
      ${this.leftOut ? html`<p class="note">Only what shows is saved: ${this.leftOut} left out. Show them first to have them in the file.</p>` : nothing}
      ${guarded ? html`<p class="note"><strong>⚠ ${guarded === 1 ? 'One text begins' : `${guarded} texts begin`} like a formula</strong> (with =, +, - or @). ${guarded === 1 ? 'It gets' : 'They get'} an apostrophe in front, so that no program works ${guarded === 1 ? 'it' : 'them'} out. Figures such as -3/8 in are left alone.</p>` : nothing}
      ${wanted && unitsAt === 'cells' ? html`<p class="note">No column and no row has only one unit, so units stay in the cells.</p>` : nothing}
      ${wanted && unitsAt !== 'cells' && mixed > 0 ? html`<p class="note">${mixed} ${unitsAt === 'columns' ? (mixed === 1 ? 'column has' : 'columns have') : (mixed === 1 ? 'row has' : 'rows have')} figures in different units, which stay in the cells.</p>` : nothing}`;
  }

  #choose(change: Partial<Choices>) {
    const choices = { ...this.choices, ...change };
    this.choices = choices.separator === ',' ? { ...choices, decimalMark: '.' } : choices;
    this.said = '';
  }

  #preview(): string {
    const lines = this.#csv.text.replace(/^\uFEFF/, '').split('\r\n');
    const shown = lines.slice(0, PREVIEW_LINES).map((line) => (line.length > PREVIEW_WIDTH ? `${line.slice(0, PREVIEW_WIDTH)}…` : line)).join('\n');
    const more = lines.length - 1 - PREVIEW_LINES;
    return more > 0 ? `${shown}\n… ${more.toLocaleString('en-GB')} more ${more === 1 ? 'line' : 'lines'}` : shown;
  }

  #save() {
    const name = `${this.title.replace(/[\\/:*?"<>|\p{Cc}]+/gu, ' ').replace(/\s+/g, ' ').trim().slice(0, 80) || 'table'}.csv`;
    const blob = new Blob([this.#csv.text], { type: 'text/csv;charset=utf-8' });
    const event: SaveFileEvent = new CustomEvent('tt-save-file', { detail: { name, blob }, bubbles: true, composed: true });
    this.dispatchEvent(event);
    this.dialog.close();
  }

  async #copy() {
    try {
      await navigator.clipboard.writeText(this.#csv.text.replace(/^\uFEFF/, ''));
      this.said = 'Copied.';
    } catch {
      this.said = 'The browser does not allow copying here. Save the file instead.';
    }
  }
}

declare global {
  interface HTMLElementTagNameMap { 'tt-export-table': ExportTable }
}
