import { LitElement, css, html, type TemplateResult } from 'lit';
import { customElement, query, state } from 'lit/decorators.js';
import { controls } from '../look/index.ts';

export interface Readings {
  /** "1,2". */
  readonly piece: string;
  /** "Fit B6". */
  readonly place: string;
  /** The formula in either meaning, as it would be shown. */
  readonly oneNumber: string;
  readonly twoArguments: string;
}

/**
 * A typed formula in which a comma may be a decimal comma or part two arguments:
 * she chooses. Sends `tt-reading` {choice}, once; `null` when it was closed
 * without a choice.
 */
@customElement('tt-two-readings')
export class TwoReadingsPanel extends LitElement {
  static override styles = [controls, css`
    @media (min-width: 600px) { dialog { width: 520px; } }
    .question:focus { outline: none; }
    .choices { display: grid; gap: var(--gap-2); margin: var(--gap-3) 0; }
    .choices button { text-align: left; padding: var(--gap-2) var(--gap-3); overflow-wrap: anywhere; }
    .choices span { display: block; color: var(--soft); font-size: var(--size-small); }
  `];

  @state() private readings: Readings = { piece: '', place: '', oneNumber: '', twoArguments: '' };
  @query('dialog') private dialog!: HTMLDialogElement;
  #choice: 'oneNumber' | 'twoArguments' | null = null;

  open(readings: Readings): void {
    this.readings = readings;
    this.#choice = null;
    this.dialog.showModal();
    // Not on a choice: keys that were meant for the next cell must not make it.
    void this.updateComplete.then(() => this.renderRoot.querySelector<HTMLElement>('.question')?.focus());
  }

  override render(): TemplateResult {
    const { piece, place, oneNumber, twoArguments } = this.readings;
    return html`<dialog aria-labelledby="title" @close=${this.#closed}>
      <header><h2 id="title">“${piece}” can be read in two ways</h2></header>
      <div class="body">
        <p class="question" tabindex="-1">Which of these is meant in ${place}?</p>
        <div class="choices">
          <button @click=${() => this.#choose('oneNumber')}>${oneNumber}<span>${piece} is one number</span></button>
          <button @click=${() => this.#choose('twoArguments')}>${twoArguments}<span>the comma parts two values; a ; always does</span></button>
        </div>
      </div>
      <footer><button @click=${() => this.dialog.close()}>Keep it as text</button></footer>
    </dialog>`;
  }

  #choose(choice: 'oneNumber' | 'twoArguments') {
    this.#choice = choice;
    this.dialog.close();
  }

  #closed() {
    this.dispatchEvent(new CustomEvent('tt-reading', { detail: { choice: this.#choice }, bubbles: true, composed: true }));
  }
}

declare global {
  interface HTMLElementTagNameMap { 'tt-two-readings': TwoReadingsPanel }
}
