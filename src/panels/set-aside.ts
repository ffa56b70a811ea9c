import { LitElement, css, html, nothing, type TemplateResult } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { controls } from '../look/index.ts';

/** Something that could not be read, and was set aside instead of being lost. */
export interface AsideRow {
  /** `null` while it still lies where it always lay. */
  readonly key: number | null;
  readonly when: string;
  readonly problems: readonly string[];
  /** A copy of the whole workbook is in it. */
  readonly whole: boolean;
  /** So many changes are in it. */
  readonly changes: number;
}

/** What was set aside of this workbook. Asks by `tt-aside` {at, wish}, `at` being the row's place in the list. */
@customElement('tt-set-aside')
export class SetAsidePanel extends LitElement {
  static override styles = [controls, css`
    ol { list-style: none; margin: 0; padding: 0; display: grid; gap: var(--gap-3); }
    ol > li { background: var(--sheet); border: 1px solid var(--line); border-radius: var(--round); padding: var(--gap-3); }
    ul { margin: var(--gap-2) 0; padding-left: 1.4em; max-height: 30vh; overflow-y: auto; }
    p { margin: 0 0 var(--gap-3); max-width: 70ch; }
    .tools { display: flex; flex-wrap: wrap; gap: var(--gap-1); }
    h3 { font-size: 0.95rem; }
  `];

  @property({ attribute: false }) rows: readonly AsideRow[] = [];
  @property() sentence = '';
  @state() private removing = -1;
  @query('dialog') private dialog!: HTMLDialogElement;

  open(): void {
    this.removing = -1;
    if (!this.dialog.open) this.dialog.showModal();
  }

  close(): void {
    this.dialog.close();
  }

  override render(): TemplateResult {
    return html`<dialog aria-labelledby="title">
      <header><h2 id="title">Set aside</h2><button @click=${this.close}>Close</button></header>
      <div class="body">
        <p>What could not be read of this workbook is not lost: it lies here as it was found. What could be read is open.</p>
        ${this.sentence ? html`<p class="fault" role="alert">${this.sentence}</p>` : nothing}
        ${this.rows.length === 0 ? html`<p class="soft">Nothing is set aside.</p>` : html`<ol>${this.rows.map((row, at) => this.#row(row, at))}</ol>`}
      </div>
    </dialog>`;
  }

  #row({ key, when, problems, whole, changes }: AsideRow, at: number) {
    const holds = [whole && 'a damaged copy of the workbook', changes > 0 && `${changes} ${changes === 1 ? 'change' : 'changes'}`].filter(Boolean).join(' and ');
    const asked = this.removing === at;
    return html`<li>
      <h3>${when}${holds ? html`: ${holds}` : nothing}</h3>
      <ul>${problems.map((problem) => html`<li>${problem}</li>`)}</ul>
      <div class="tools">
        <button class="main" @click=${() => this.#send(at, 'put-back')}>Put it back as a workbook of its own</button>
        <button @click=${() => this.#send(at, 'save')}>Save it as a file</button>
        ${key === null ? nothing : html`<button @click=${() => {
          this.removing = asked ? -1 : at;
          if (asked) this.#send(at, 'forget');
        }}>${asked ? 'Throw it away for good' : 'Throw it away'}</button>`}
      </div>
      ${asked ? html`<p class="note" role="alert">This cannot be undone. Save it as a file first, or press once more.</p>` : nothing}
    </li>`;
  }

  #send(at: number, wish: 'put-back' | 'save' | 'forget') {
    this.dispatchEvent(new CustomEvent('tt-aside', { detail: { at, wish }, bubbles: true, composed: true }));
  }
}

declare global {
  interface HTMLElementTagNameMap { 'tt-set-aside': SetAsidePanel }
}
