import { LitElement, css, html, nothing, type TemplateResult } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { controls } from '../look/index.ts';

/** A template as the list shows it. */
export interface TemplateCard {
  readonly id: string;
  readonly name: string;
  readonly note: string;
  readonly own: boolean;
}

/**
 * Two dialogs about templates: start a sheet from one, and keep the open sheet
 * as one. Asks by `tt-start-template` {id}, `tt-remove-template` {id},
 * `tt-save-template` {id}, `tt-open-template` {file}, `tt-keep-template` {name, note}.
 */
@customElement('tt-templates')
export class TemplatesPanel extends LitElement {
  static override styles = [controls, css`
    ul { list-style: none; margin: 0; padding: 0; display: grid; gap: var(--gap-2); grid-template-columns: repeat(auto-fill, minmax(250px, 1fr)); }
    li { background: var(--sheet); border: 1px solid var(--line); border-radius: var(--round); padding: var(--gap-3); display: flex; flex-direction: column; gap: var(--gap-2); }
    li p { margin: 0; }
    li p.soft { flex: 1; }
    li h4 { margin: 0; font: 600 1rem var(--face-title); overflow-wrap: anywhere; }
    .tools { display: flex; flex-wrap: wrap; gap: var(--gap-1); }
    h3 { margin: var(--gap-4) 0 var(--gap-2); }
    h3:first-child { margin-top: 0; }
    .fields { display: grid; gap: var(--gap-3); }
    .fields label { display: grid; gap: var(--gap-1); align-items: start; }
    input[type='file'] { position: absolute; width: 1px; height: 1px; opacity: 0; }
  `];

  @property({ attribute: false }) templates: readonly TemplateCard[] = [];
  /** Why the last file could not be read. */
  @property() sentence = '';
  /** The open sheet's name, and how many of its cells are marked as inputs. */
  @property() sheetName = '';
  @property({ type: Number }) inputs = 0;

  @state() private keepName = '';
  @state() private keepNote = '';
  /** The template that she is asked about before it is removed for good. */
  @state() private removing = '';

  @query('#start') private startDialog!: HTMLDialogElement;
  @query('#keep') private keepDialog!: HTMLDialogElement;
  @query('input[type=file]') private file!: HTMLInputElement;

  openStart(): void {
    this.removing = '';
    this.startDialog.showModal();
  }

  openKeep(): void {
    this.keepName = this.sheetName;
    this.keepNote = '';
    this.keepDialog.showModal();
  }

  override render(): TemplateResult {
    const own = this.templates.filter((template) => template.own);
    return html`
      <dialog id="start" aria-labelledby="start-title">
        <header><h2 id="start-title">Start a sheet from a template</h2><button @click=${() => this.startDialog.close()}>Close</button></header>
        <div class="body">
          <h3>Made by you</h3>
          ${own.length ? this.#list(own) : html`<p class="soft">None yet. Open a sheet that worked and choose “Keep as a template”.</p>`}
          <h3>Shipped with the workbook</h3>
          ${this.#list(this.templates.filter((template) => !template.own))}
          ${this.sentence ? html`<p class="fault" role="alert">${this.sentence}</p>` : nothing}
        </div>
        <footer>
          <input type="file" accept=".json,application/json" aria-label="Template file" tabindex="-1" @change=${this.#fileChosen}>
          <button @click=${() => this.file.click()}>Open a template file…</button>
        </footer>
      </dialog>
      <dialog id="keep" aria-labelledby="keep-title">
        <header><h2 id="keep-title">Keep this sheet as a template</h2><button @click=${() => this.keepDialog.close()}>Close</button></header>
        <form method="dialog" @submit=${this.#keep}>
          <div class="body fields">
            <label>Name <input name="name" required maxlength="60" .value=${this.keepName} @input=${(event: Event) => { this.keepName = (event.target as HTMLInputElement).value; }}></label>
            <label>Note: what it is for, what worked <textarea name="note" rows="3" maxlength="500" .value=${this.keepNote} @input=${(event: Event) => { this.keepNote = (event.target as HTMLTextAreaElement).value; }}></textarea></label>
            <p class="soft">${this.inputs === 0
              ? 'No cell is marked as an input. Select the figures that change from garment to garment and choose “Mark as input” first, so that they stand out next time.'
              : `${this.inputs} ${this.inputs === 1 ? 'cell is' : 'cells are'} marked as inputs; figures and formulas are kept as they are.`}</p>
          </div>
          <footer><button class="main" ?disabled=${this.keepName.trim() === ''}>Keep it</button></footer>
        </form>
      </dialog>
    `;
  }

  #list(templates: readonly TemplateCard[]) {
    return html`<ul>${templates.map((template) => html`<li>
      <h4>${template.name}</h4>
      <p class="soft">${template.note}</p>
      <div class="tools">
        <button class="main" @click=${() => { this.startDialog.close(); this.#send('tt-start-template', { id: template.id }); }} aria-label="Start ${template.name}">Start</button>
        <button @click=${() => this.#send('tt-save-template', { id: template.id })} aria-label="Save as a file: ${template.name}">Save as a file</button>
        ${template.own ? this.#remover(template) : nothing}
      </div>
      ${this.removing === template.id ? html`<p class="note" role="alert">Removing cannot be undone. Save it as a file first, or press once more.</p>` : nothing}
    </li>`)}</ul>`;
  }

  /** Asks once more: no undo brings a template back. */
  #remover({ id, name }: TemplateCard) {
    const asked = this.removing === id;
    return html`<button aria-label=${asked ? `Remove for good: ${name}` : `Remove ${name}`} @click=${() => {
      this.removing = asked ? '' : id;
      if (asked) this.#send('tt-remove-template', { id });
    }}>${asked ? 'Remove for good' : 'Remove'}</button>`;
  }

  #fileChosen() {
    const [file] = this.file.files ?? [];
    this.file.value = '';
    if (file) this.#send('tt-open-template', { file });
  }

  #keep() {
    this.#send('tt-keep-template', { name: this.keepName.trim(), note: this.keepNote.trim() });
  }

  #send(type: string, detail: unknown) {
    this.dispatchEvent(new CustomEvent(type, { detail, bubbles: true, composed: true }));
  }
}

declare global {
  interface HTMLElementTagNameMap { 'tt-templates': TemplatesPanel }
}
