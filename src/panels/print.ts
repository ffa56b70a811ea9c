import { LitElement, css, html, nothing, type TemplateResult } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { controls } from '../look/index.ts';
import type { ShowAs } from '../quantities/index.ts';
import type { Printed, TicketPart } from './paper-parts.ts';
import './paper.ts';

export interface PrintChoice {
  readonly what: 'sheet' | 'book' | 'ticket' | 'list' | 'curve';
  readonly paper: 'A4' | 'Letter';
  /** The long side of the paper lies across; only for sheets. */
  readonly across: boolean;
  /** Keys of ticket rows that are left out, and of those whose picture is wanted. */
  readonly out: readonly string[];
  readonly pictures: readonly string[];
  /** The radius of the curve as it was typed, and what it is of. */
  readonly radius: string;
  readonly label: string;
}

/** What there is to choose from. */
export interface PrintOffer {
  readonly sheet: string;
  readonly parts: readonly TicketPart[];
  /** Radii that the workbook has worked out. `raw`: as they would be typed. */
  readonly radii: readonly { readonly label: string; readonly raw: string }[];
}

/** Upright, A4 is 297 mm and Letter 279.4 mm high; margins take 24 mm of it. */
const HEIGHT = { A4: 273, Letter: 255.4 } as const;
const WIDTH = 186;
const NO_CHOICE: PrintChoice = { what: 'sheet', paper: 'A4', across: false, out: [], pictures: [], radius: '', label: '' };

/** What to print and how it will look. Says `tt-print-choice` (PrintChoice) at every change and `tt-print-now` when it is to be printed. */
@customElement('tt-print')
export class PrintPanel extends LitElement {
  static override styles = [controls, css`
    dialog { width: min(1180px, calc(100vw - 24px)); }
    .body { display: grid; grid-template-columns: minmax(300px, 5fr) minmax(0, 7fr); gap: var(--gap-4); }
    .choices { display: grid; gap: var(--gap-3); align-content: start; min-width: 0; }
    fieldset { border: 1px solid var(--line); border-radius: var(--round); padding: var(--gap-2) var(--gap-3); margin: 0; min-width: 0; display: grid; gap: 2px; }
    legend { font-weight: 600; padding: 0 var(--gap-1); }
    .rows { max-height: 42vh; overflow-y: auto; }
    .row { display: flex; flex-wrap: wrap; gap: 0 var(--gap-3); padding-left: var(--gap-4); justify-content: space-between; }
    .row label:first-child { flex: 1 1 12em; }
    .paper { overflow: auto; max-height: 70vh; border: 1px solid var(--line); background: var(--tissue); padding: var(--gap-3); }
    .sheet-of-paper { background: #fff; padding: 12mm; width: 210mm; zoom: 0.62; }
    .sheet-of-paper.wide { width: 279mm; zoom: 0.5; }
    select { min-width: 0; flex: 1; }
    p { margin: 0; }
    @media (max-width: 820px) { .body { grid-template-columns: minmax(0, 1fr); } .rows, .paper { max-height: none; } }
  `];

  @property({ attribute: false }) choice: PrintChoice = NO_CHOICE;
  @property({ attribute: false }) offer: PrintOffer = { sheet: '', parts: [], radii: [] };
  @property({ attribute: false }) pages: readonly Printed[] = [];
  @property({ attribute: false }) as: ShowAs = { system: 'own', inchStep: 8 };
  /** Why there is nothing to print; empty when there is. */
  @property() sentence = '';
  @state() private length = '';
  @query('dialog') private dialog!: HTMLDialogElement;

  open(): void {
    this.dialog.showModal();
    this.renderRoot.querySelector<HTMLElement>('input[name=what]:checked')?.focus();
  }

  close(): void {
    this.dialog.close();
  }

  override render(): TemplateResult {
    const { choice, offer } = this;
    const sheets = choice.what === 'sheet' || choice.what === 'book';
    return html`<dialog aria-labelledby="title">
      <header><h2 id="title">Print</h2><button @click=${this.close}>Close</button></header>
      <div class="body">
        <div class="choices">
          <fieldset><legend>What</legend>
            ${this.#radio('what', 'sheet', `This sheet: ${offer.sheet}`)}
            ${this.#radio('what', 'book', 'Every sheet')}
            ${this.#radio('what', 'ticket', 'A cutting ticket')}
            ${this.#radio('what', 'list', 'The list to buy')}
            ${this.#radio('what', 'curve', 'A quarter circle at full size')}
          </fieldset>
          <fieldset><legend>Paper</legend>
            ${this.#radio('paper', 'A4', 'A4')}
            ${this.#radio('paper', 'Letter', 'Letter')}
            ${sheets ? html`<label><input type="checkbox" name="across" .checked=${live(choice.across)} @change=${(event: Event) => this.#choose({ across: checked(event) })}> Long side across</label>` : nothing}
          </fieldset>
          ${choice.what === 'ticket' ? this.#ticket() : choice.what === 'curve' ? this.#curve() : nothing}
        </div>
        <section aria-labelledby="look"><h3 id="look">How it will look</h3>
          <p role="status" class="soft">${this.sentence || this.length}</p>
          ${this.sentence ? nothing : html`<div class="paper" tabindex="0" role="group" aria-label="Pages"><div class="sheet-of-paper ${sheets && choice.across ? 'wide' : ''}"><tt-paper .pages=${this.pages} .as=${this.as}></tt-paper></div></div>`}
        </section>
      </div>
      <footer><button class="main" ?disabled=${this.sentence !== ''} @click=${() => this.dispatchEvent(new CustomEvent('tt-print-now', { bubbles: true, composed: true }))}>Print</button></footer>
    </dialog>`;
  }

  protected override updated(): void {
    void this.#measure();
  }

  /** How long a ticket is, since one page is what she can pin to the cloth. */
  async #measure(): Promise<void> {
    const paper = this.renderRoot.querySelector('tt-paper');
    await paper?.updateComplete;
    if (!paper || this.choice.what !== 'ticket') {
      this.length = '';
      return;
    }
    const { width, height } = paper.getBoundingClientRect();
    const pages = width > 0 ? Math.ceil((height / width) * WIDTH / HEIGHT[this.choice.paper]) : 1;
    this.length = pages <= 1 ? 'It fits one page.' : `It takes about ${pages} pages. Take rows off it to have one.`;
  }

  #radio<K extends 'what' | 'paper'>(key: K, value: PrintChoice[K], words: string) {
    return html`<label><input type="radio" name=${key} value=${value} .checked=${live(this.choice[key] === value)} @change=${() => this.#choose({ [key]: value })}> ${words}</label>`;
  }

  #ticket() {
    const { out } = this.choice;
    return html`<fieldset class="rows"><legend>On the ticket</legend>${this.offer.parts.length === 0 ? html`<p>No cell of this workbook has both a result and words beside it yet.</p>` : nothing}${this.offer.parts.map(({ name, rows }) => {
      const keys = rows.map(({ key }) => key);
      const off = keys.filter((key) => out.includes(key)).length;
      return html`<label><input type="checkbox" data-part=${name} .checked=${live(off === 0)} .indeterminate=${live(off > 0 && off < keys.length)}
          @change=${(event: Event) => this.#choose({ out: checked(event) ? out.filter((key) => !keys.includes(key)) : [...new Set([...out, ...keys])] })}> <strong>${name}</strong></label>
        ${rows.map((row) => html`<div class="row">
          <label><input type="checkbox" data-key=${row.key} .checked=${live(!out.includes(row.key))} @change=${() => this.#choose({ out: toggled(out, row.key) })}> ${row.label}${row.from ? html` <span class="soft">${row.from}</span>` : nothing}</label>
          ${row.pictured && !out.includes(row.key) ? html`<label><input type="checkbox" data-picture=${row.key} aria-label="Picture of ${row.label}" .checked=${live(this.choice.pictures.includes(row.key))} @change=${() => this.#choose({ pictures: toggled(this.choice.pictures, row.key) })}> picture</label>` : nothing}
        </div>`)}`;
    })}</fieldset>`;
  }

  #curve() {
    const { radii } = this.offer;
    const { radius, label } = this.choice;
    return html`<fieldset><legend>The curve</legend>
      ${radii.length > 0 ? html`<label>From the workbook <select name="radii" @change=${(event: Event) => {
        const chosen = radii[Number((event.target as HTMLSelectElement).value)];
        if (chosen) this.#choose({ radius: chosen.raw, label: chosen.label });
      }}><option value="" .selected=${live(!radii.some((each) => each.raw === radius && each.label === label))}>a radius typed below</option>
        ${radii.map((each, at) => html`<option value=${at} .selected=${live(each.raw === radius && each.label === label)}>${each.label}: ${each.raw}</option>`)}</select></label>` : nothing}
      <label>Radius <input name="radius" .value=${live(radius)} autocomplete="off" @change=${(event: Event) => this.#choose({ radius: (event.target as HTMLInputElement).value, label: 'Curve' })}></label>
      <p class="soft">A length with its unit, such as 12.4 cm or 4 7/8 in. As many pages as it needs, with marks where they join.</p></fieldset>`;
  }

  #choose(change: Partial<PrintChoice>) {
    this.dispatchEvent(new CustomEvent('tt-print-choice', { detail: { ...this.choice, ...change } satisfies PrintChoice, bubbles: true, composed: true }));
  }
}

const checked = (event: Event): boolean => (event.target as HTMLInputElement).checked;
const toggled = (list: readonly string[], key: string): string[] => (list.includes(key) ? list.filter((each) => each !== key) : [...list, key]);

declare global {
  interface HTMLElementTagNameMap { 'tt-print': PrintPanel }
}
