import { LitElement, css, html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { controls } from '../look/index.ts';

export interface NameRow {
  readonly name: string;
  /** "Measures B3", or why there is none. */
  readonly place: string;
  readonly lost: boolean;
  readonly chart: boolean;
}

/**
 * The names of the workbook: go to one, rename it, remove it, or name what is
 * selected. Asks by `tt-go-name` {name}, `tt-rename-name` {from, to},
 * `tt-remove-name` {name}, `tt-add-name` {name, chart}; cancel that one to keep
 * what was typed.
 */
@customElement('tt-names')
export class NamesPanel extends LitElement {
  static override styles = [controls, css`
    table { border-collapse: collapse; width: 100%; }
    th, td { text-align: left; padding: 4px 8px; border-bottom: 1px solid var(--line); }
    td:last-child { text-align: right; white-space: nowrap; }
    td input { width: 100%; min-width: 8em; }
    form { display: flex; flex-wrap: wrap; gap: var(--gap-2); align-items: end; margin-bottom: var(--gap-4); }
    form > label { display: grid; gap: var(--gap-1); }
    [role='alert'] { scroll-margin: 90px; }
  `];

  @property({ attribute: false }) names: readonly NameRow[] = [];
  /** "Fit B2:B4": what would be named. */
  @property() selected = '';
  /** Why the last wish could not be granted. */
  @property() sentence = '';

  @state() private fresh = '';
  @state() private chart = false;
  @query('dialog') private dialog!: HTMLDialogElement;

  open(): void {
    this.fresh = '';
    this.chart = false;
    // A name that was refused last time does not stand there any more.
    this.renderRoot.querySelectorAll<HTMLInputElement>('td input').forEach((field, at) => { field.value = this.names[at]?.name ?? ''; });
    this.dialog.showModal();
  }

  protected override updated(changed: PropertyValues<this>): void {
    // The name that was refused may stand far down a long list.
    if (changed.has('sentence')) this.renderRoot.querySelector('[role=alert]')?.scrollIntoView({ block: 'nearest' });
  }

  override render(): TemplateResult {
    return html`<dialog aria-labelledby="title">
      <header><h2 id="title">Names</h2><button @click=${() => this.dialog.close()}>Close</button></header>
      <div class="body">
        <form @submit=${this.#add}>
          <label>Name for ${this.selected} <input required maxlength="60" .value=${this.fresh} @input=${(event: Event) => { this.fresh = (event.target as HTMLInputElement).value; }}></label>
          <label><input type="checkbox" .checked=${this.chart} @change=${(event: Event) => { this.chart = (event.target as HTMLInputElement).checked; }}> It is a size chart</label>
          <button class="main">Give the name</button>
        </form>
        ${this.sentence ? html`<p class="fault" role="alert">${this.sentence}</p>` : nothing}
        ${this.names.length ? html`<table>
          <thead><tr><th scope="col">Name</th><th scope="col">Stands for</th><td></td></tr></thead>
          <tbody>${this.names.map((row) => html`<tr>
            <td><input aria-label="Name of ${row.lost ? 'removed cells' : row.place}" .value=${row.name} @change=${(event: Event) => this.#rename(row.name, event.target as HTMLInputElement)}></td>
            <td>${row.lost ? html`<span class="fault">✕ ${row.place}</span>` : row.place}${row.chart ? html` <span class="soft">size chart</span>` : nothing}</td>
            <td><button ?disabled=${row.lost} aria-label="Go there: ${row.name}" @click=${() => { this.dialog.close(); this.#send('tt-go-name', { name: row.name }); }}>Go there</button>
              <button aria-label="Remove ${row.name}" @click=${() => this.#send('tt-remove-name', { name: row.name })}>Remove</button></td>
          </tr>`)}</tbody></table>`
        : html`<p class="soft">No cell has a name yet. A name such as waist can stand in any formula: =waist + 2 in.</p>`}
      </div>
    </dialog>`;
  }

  #add(event: Event) {
    event.preventDefault();
    if (this.#send('tt-add-name', { name: this.fresh.trim(), chart: this.chart })) this.fresh = '';
  }

  #rename(from: string, field: HTMLInputElement) {
    const to = field.value.trim();
    if (to === '') field.value = from;
    else if (to !== from) this.#send('tt-rename-name', { from, to });
  }

  #send(type: string, detail: unknown): boolean {
    return this.dispatchEvent(new CustomEvent(type, { detail, bubbles: true, composed: true, cancelable: true }));
  }
}

declare global {
  interface HTMLElementTagNameMap { 'tt-names': NamesPanel }
}
