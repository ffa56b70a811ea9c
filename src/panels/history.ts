import { LitElement, css, html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import { controls } from '../look/index.ts';
import type { Area } from '../workbook/index.ts';

export interface HistoryCell {
  /** "B4 of Fit", as it was then. */
  readonly place: string;
  /** What was in it before and after, as typed; a mark or a note in words; empty for nothing. */
  readonly before: string;
  readonly after: string;
}

export interface HistoryRow {
  readonly index: number;
  /** ISO 8601. */
  readonly at: string;
  readonly way: 'done' | 'undone' | 'redone';
  /** "type in B4 of Fit". */
  readonly label: string;
  readonly cells: readonly HistoryCell[];
  /** How many more cells changed. */
  readonly more: number;
  /** Where it is now; `null` when it is no more. */
  readonly area: Area | null;
  /** One cell changed, it is still there, and it is not as it was. */
  readonly canPutBack: boolean;
}

const WAYS: Readonly<Record<HistoryRow['way'], string>> = { done: '', undone: 'Undone: ', redone: 'Done again: ' };

/**
 * Everything that was done, the latest first, with what was there before and
 * after. Asks by `tt-history` {onlyCell}, `tt-history-more`,
 * `tt-restore-cell` {index}, `tt-restore-book` {index}, `tt-go` {area}, `tt-close`.
 */
@customElement('tt-history')
export class HistoryPanel extends LitElement {
  static override styles = [controls, css`
    :host { display: block; padding: 14px 16px 24px; }
    header { display: flex; gap: var(--gap-2); align-items: center; }
    header h2 { flex: 1; }
    header + label { margin: var(--gap-2) 0; }
    ol { list-style: none; margin: 0; padding: 0; }
    ol > li { padding: var(--gap-2) 0 var(--gap-3); border-top: 1px solid var(--line); }
    h3 { font: 600 0.8rem var(--face); color: var(--soft); margin: var(--gap-3) 0 var(--gap-1); }
    .what { display: flex; gap: var(--gap-2); align-items: baseline; }
    .what span { flex: 1; overflow-wrap: anywhere; }
    .what .way { flex: none; font-weight: 600; }
    time { color: var(--soft); font-size: var(--size-small); white-space: nowrap; }
    dl { margin: var(--gap-1) 0; padding: var(--gap-1) var(--gap-2); background: var(--tissue); border-radius: var(--round); font-size: var(--size-small); }
    dt { color: var(--soft); }
    dd { margin: 0; position: relative; overflow-wrap: anywhere; white-space: pre-wrap; }
    del { color: var(--soft); }
    ins { text-decoration: none; font-weight: 600; }
    .do { display: flex; flex-wrap: wrap; gap: var(--gap-1) var(--gap-2); }
    .do button { min-height: 26px; padding: 1px 8px; font-size: var(--size-small); }
    .unseen { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
    .far { margin-top: var(--gap-3); }
  `];

  @property({ attribute: false }) rows: readonly HistoryRow[] = [];
  /** There are earlier ones. */
  @property({ type: Boolean }) earlier = false;
  /** "B4 of Fit": the selected cell. */
  @property() cell = '';
  @property({ type: Boolean }) onlyCell = false;
  /** Nothing can be changed. */
  @property({ type: Boolean }) readonly = false;

  #wasHere = false;

  override focus(options?: FocusOptions): void {
    this.renderRoot.querySelector<HTMLElement>('header button')?.focus(options);
  }

  override render(): TemplateResult {
    let day = '';
    return html`
      <header><h2>History</h2><button @click=${() => this.#send('tt-close')}>Close</button></header>
      <label><input type="checkbox" .checked=${this.onlyCell} @change=${(event: Event) => this.#send('tt-history', { onlyCell: (event.target as HTMLInputElement).checked })}> Only what changed ${this.cell}</label>
      ${this.rows.length === 0 ? html`<p class="soft">${this.onlyCell ? `Nothing has changed ${this.cell} as far back as is known.` : 'Nothing has been changed yet. Every change will stand here with its time.'}</p>` : nothing}
      <ol aria-label="Changes, the latest first">${repeat(this.rows, ({ index }) => index, (row) => {
        const heading = dayOf(row.at);
        const first = heading !== day;
        day = heading;
        return html`<li>${first ? html`<h3>${heading}</h3>` : nothing}${this.#row(row)}</li>`;
      })}</ol>
      ${this.earlier ? html`<button class="far" @click=${() => this.#send('tt-history-more')}>Show earlier changes</button>` : nothing}
    `;
  }

  protected override willUpdate(): void {
    this.#wasHere = (this.renderRoot as ShadowRoot | undefined)?.activeElement !== null && this.hasUpdated;
  }

  protected override updated(): void {
    // The button that was pressed may be gone: what it offered is done.
    if (this.#wasHere && (this.renderRoot as ShadowRoot).activeElement === null) this.focus();
  }

  #row({ index, at, way, label, cells, more, area, canPutBack }: HistoryRow) {
    const what = `${WAYS[way]}${label}`;
    const time = timeOf(at);
    return html`
      <div class="what"><span>${way === 'done' ? nothing : html`<b>${WAYS[way]}</b>`}${label}</span><time datetime=${at}>${time}</time></div>
      ${cells.length ? html`<dl>${cells.map(({ place, before, after }) => html`
        <dt>${place}</dt>
        <dd><span class="unseen">before: </span><del>${before || 'nothing'}</del> → <span class="unseen">after: </span><ins>${after || 'nothing'}</ins></dd>`)}${more ? html`<dt>and ${more.toLocaleString('en')} more ${more === 1 ? 'cell' : 'cells'}</dt>` : nothing}</dl>` : nothing}
      <div class="do">
        ${area ? html`<button aria-label="Go there: ${what}, ${time}" @click=${() => this.#send('tt-go', { area })}>Go there</button>` : nothing}
        ${canPutBack ? html`<button ?disabled=${this.readonly} aria-label="Put back ${quoted(cells[0]!.before)}, ${cells[0]!.place}, ${time}" @click=${() => this.#send('tt-restore-cell', { index })}>Put back ${quoted(cells[0]!.before)}</button>` : nothing}
        <button ?disabled=${this.readonly} aria-label="Workbook as before this: ${what}, ${time}" @click=${() => this.#send('tt-restore-book', { index })}>Workbook as before this</button>
      </div>`;
  }

  #send(type: string, detail?: unknown) {
    this.dispatchEvent(new CustomEvent(type, { detail, bubbles: true, composed: true }));
  }
}

const quoted = (text: string): string => (text === '' ? 'nothing' : `“${text.length > 24 ? `${text.slice(0, 23)}…` : text}”`);
const timeOf = (at: string): string => new Date(at).toLocaleTimeString([], { hour: '2-digit', minute: '2-digit', second: '2-digit' });

function dayOf(at: string): string {
  const day = new Date(at);
  return day.toDateString() === new Date().toDateString() ? 'Today' : day.toLocaleDateString([], { weekday: 'long', day: 'numeric', month: 'long', year: 'numeric' });
}

declare global {
  interface HTMLElementTagNameMap { 'tt-history': HistoryPanel }
}
