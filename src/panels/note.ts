import { LitElement, css, html, nothing, type TemplateResult } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { controls } from '../look/index.ts';

/** A note on one cell. Asks by `tt-note` {note}, empty to take it away; cancel it to keep the dialog open. */
@customElement('tt-note')
export class NotePanel extends LitElement {
  static override styles = [controls, css`
    @media (min-width: 641px) { dialog { width: min(480px, calc(100vw - 24px)); } }
    label { display: grid; gap: var(--gap-1); }
    textarea { width: 100%; min-height: 8em; resize: vertical; }
  `];

  /** Why the last wish could not be granted. */
  @property() sentence = '';
  @state() private place = '';
  @state() private note = '';
  @state() private had = false;
  @query('dialog') private dialog!: HTMLDialogElement;
  @query('textarea') private field!: HTMLTextAreaElement;

  /** @param place "B4 of Fit" */
  open(place: string, note: string): void {
    this.place = place;
    this.note = note;
    this.had = note !== '';
    this.sentence = '';
    this.dialog.showModal();
    this.field.focus();
  }

  override render(): TemplateResult {
    return html`<dialog aria-labelledby="title">
      <header><h2 id="title">Note on ${this.place}</h2><button @click=${() => this.dialog.close()}>Close</button></header>
      <form @submit=${this.#submit} @keydown=${this.#key}>
        <div class="body">
          <label>What to remember about this cell <textarea maxlength="32767" .value=${this.note} @input=${(event: Event) => { this.note = (event.target as HTMLTextAreaElement).value; }}></textarea></label>
          ${this.sentence ? html`<p class="fault" role="alert">${this.sentence}</p>` : nothing}
        </div>
        <footer>${this.had ? html`<button type="button" @click=${() => this.#keep('')}>Take the note away</button>` : nothing}<button class="main">Keep the note</button></footer>
      </form>
    </dialog>`;
  }

  /** Enter is a new line; with Ctrl it keeps the note. */
  #key(event: KeyboardEvent) {
    if (event.key === 'Enter' && (event.ctrlKey || event.metaKey) && !event.isComposing) this.#submit(event);
  }

  #submit(event: Event) {
    event.preventDefault();
    this.#keep(this.note.trim());
  }

  #keep(note: string) {
    if (this.dispatchEvent(new CustomEvent('tt-note', { detail: { note }, bubbles: true, composed: true, cancelable: true }))) this.dialog.close();
  }
}

declare global {
  interface HTMLElementTagNameMap { 'tt-note': NotePanel }
}
