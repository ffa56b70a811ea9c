import { LitElement, css, html, nothing, type TemplateResult } from 'lit';
import { customElement, query, state } from 'lit/decorators.js';
import { controls } from '../look/index.ts';
import type { LostName } from '../workbook/index.ts';

/**
 * Before something is removed that names stand for: which names, and how many
 * formulas would lose their result. Sends `tt-losses` {go}, once, however it is
 * closed.
 */
@customElement('tt-losses')
export class LossesPanel extends LitElement {
  static override styles = [controls, css`
    @media (min-width: 600px) { dialog { width: 520px; } }
    table { border-collapse: collapse; width: 100%; margin: var(--gap-3) 0; }
    th, td { text-align: left; padding: 4px 8px; border-bottom: 1px solid var(--line); overflow-wrap: anywhere; }
    td:last-child, th:last-child { text-align: right; font-variant-numeric: tabular-nums; }
    footer { display: flex; flex-wrap: wrap; gap: var(--gap-2); justify-content: end; }
  `];

  @state() private lost: readonly LostName[] = [];
  @state() private what = '';
  @query('dialog') private dialog!: HTMLDialogElement;
  #going = false;

  /** @param what is to be done, in words: "remove 3 rows" */
  open(what: string, lost: readonly LostName[]): void {
    this.what = what;
    this.lost = lost;
    this.#going = false;
    this.dialog.showModal();
    // Enter must not remove what she has not read about.
    void this.updateComplete.then(() => this.renderRoot.querySelector<HTMLElement>('.stay')?.focus());
  }

  override render(): TemplateResult {
    const uses = this.lost.reduce((sum, each) => sum + each.uses, 0);
    const one = this.lost.length === 1;
    return html`<dialog aria-labelledby="title" aria-describedby="says" @close=${this.#closed}>
      <header><h2 id="title">This would take the cells from ${one ? 'a name' : `${this.lost.length} names`}</h2></header>
      <div class="body">
        <p id="says">To ${this.what} takes away what ${one ? 'this name stands' : 'these names stand'} for.
          ${uses === 0 ? 'No formula uses it just now.' : html`<strong>${uses === 1 ? '1 formula' : `${uses.toLocaleString('en')} formulas`}</strong> would have no result any more.`} Undo brings everything back.</p>
        <table><thead><tr><th scope="col">Name</th><th scope="col">Formulas that use it</th></tr></thead>
          <tbody>${this.lost.map(({ name, kind, uses: count }) => html`<tr><td>${name}${kind === 'chart' ? html` <span class="soft">size chart</span>` : nothing}</td><td>${count.toLocaleString('en')}</td></tr>`)}</tbody></table>
      </div>
      <footer><button class="stay" @click=${() => this.dialog.close()}>Leave it as it is</button><button class="main" @click=${this.#go}>Remove all the same</button></footer>
    </dialog>`;
  }

  #go() {
    this.#going = true;
    this.dialog.close();
  }

  #closed() {
    this.dispatchEvent(new CustomEvent('tt-losses', { detail: { go: this.#going }, bubbles: true, composed: true }));
  }
}

declare global {
  interface HTMLElementTagNameMap { 'tt-losses': LossesPanel }
}
