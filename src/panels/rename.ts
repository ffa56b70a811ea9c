import { LitElement, css, html, nothing, type TemplateResult } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { controls } from '../look/index.ts';

export interface Titles {
  readonly title: string;
  readonly person: string;
  readonly sheet: string;
  readonly about: string;
}

/** What the workbook and its open sheet are called. Asks by `tt-rename` (Titles). */
@customElement('tt-rename')
export class RenamePanel extends LitElement {
  static override styles = [controls, css`
    dialog { width: min(480px, calc(100vw - 24px)); }
    .body { display: grid; gap: var(--gap-3); }
    label { display: grid; gap: var(--gap-1); }
  `];

  /** Why the last wish could not be granted. */
  @property() sentence = '';
  @state() private titles: Titles = { title: '', person: '', sheet: '', about: '' };
  @query('dialog') private dialog!: HTMLDialogElement;

  open(titles: Titles): void {
    this.titles = titles;
    this.dialog.showModal();
  }

  close(): void {
    this.dialog.close();
  }

  override render(): TemplateResult {
    return html`<dialog aria-labelledby="title">
      <header><h2 id="title">Names of the garment and the sheet</h2><button @click=${() => this.dialog.close()}>Close</button></header>
      <form @submit=${this.#submit}>
        <div class="body">
          ${this.#field('title', 'Garment', 80, true)}
          ${this.#field('person', 'For whom', 80)}
          ${this.#field('sheet', 'This sheet', 60, true)}
          ${this.#field('about', 'A line about this sheet', 120)}
          ${this.sentence ? html`<p class="fault" role="alert">${this.sentence}</p>` : nothing}
        </div>
        <footer><button class="main">Keep these names</button></footer>
      </form>
    </dialog>`;
  }

  #field(field: keyof Titles, label: string, most: number, needed = false) {
    return html`<label>${label} <input maxlength=${most} ?required=${needed} .value=${this.titles[field]}
      @input=${(event: Event) => { this.titles = { ...this.titles, [field]: (event.target as HTMLInputElement).value }; }}></label>`;
  }

  #submit(event: Event) {
    event.preventDefault();
    this.dispatchEvent(new CustomEvent('tt-rename', { detail: this.titles, bubbles: true, composed: true }));
  }
}

declare global {
  interface HTMLElementTagNameMap { 'tt-rename': RenamePanel }
}
