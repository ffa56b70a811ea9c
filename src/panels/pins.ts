import { LitElement, css, html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, query } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import { controls } from '../look/index.ts';
import type { Area } from '../workbook/index.ts';

export interface PinRow {
  /** The same as long as cell and figures are the same. */
  readonly id: string;
  readonly area: Area;
  /** "B9". */
  readonly place: string;
  /** The words beside the cell: "Ease at the bust". */
  readonly label: string;
  /** What may go wrong, with its figure. */
  readonly sentence: string;
  /** What would be typed where to mend it: "96 cm" in "B4", "Finished bust"; `null` where she has to see for herself. */
  readonly mend: { readonly to: string; readonly place: string; readonly label: string } | null;
  /** Her note where it was acknowledged (it may be empty); `null` where it was not. */
  readonly note: string | null;
}

export interface PinSheet {
  readonly name: string;
  readonly rows: readonly PinRow[];
}

/**
 * All the pins of the workbook, sheet by sheet; those that were acknowledged
 * apart. Asks by `tt-go` {area}, `tt-mend-pin` {id}, `tt-ask-pin` {id or null},
 * `tt-acknowledge` {id, note}, `tt-pin-again` {id}, `tt-close`.
 */
@customElement('tt-pins')
export class PinsPanel extends LitElement {
  static override styles = [controls, css`
    :host { display: block; padding: 14px 16px 24px; }
    header { display: flex; gap: var(--gap-2); align-items: center; }
    header h2 { flex: 1; }
    h3 { font: 600 0.8rem var(--face); color: var(--soft); margin: var(--gap-4) 0 var(--gap-1); }
    ul { list-style: none; margin: 0; padding: 0; }
    li { padding: var(--gap-2) 0 var(--gap-3); border-top: 1px solid var(--line); }
    li[data-at] { box-shadow: inset 3px 0 var(--chalk); padding-left: var(--gap-2); }
    .where { display: block; width: 100%; text-align: left; padding: 2px 4px; min-height: 26px; font-weight: 600; overflow-wrap: anywhere; }
    .where small { font-weight: 400; color: var(--soft); font-size: var(--size-small); }
    .head { display: inline-block; width: 10px; height: 10px; margin-right: 6px; border: 2px solid var(--pin); border-radius: 50%; background: var(--pin); vertical-align: -1px; }
    .seen .head { background: none; }
    p { margin: var(--gap-1) 4px var(--gap-2); overflow-wrap: anywhere; }
    .kept { border-left: 3px solid var(--thread); padding-left: var(--gap-3); white-space: pre-wrap; }
    .do { display: flex; flex-wrap: wrap; gap: var(--gap-1) var(--gap-2); margin: 0 4px; }
    .do button { min-height: 28px; padding: 1px 10px; font-size: var(--size-small); text-align: left; }
    form { display: grid; gap: var(--gap-2); margin: var(--gap-2) 4px 0; }
    form label { display: grid; gap: var(--gap-1); }
    textarea { resize: vertical; min-height: 56px; }
    @media (forced-colors: active) { .head { forced-color-adjust: none; border-color: LinkText; background: LinkText; } .seen .head { background: Canvas; } }
  `];

  @property({ attribute: false }) sheets: readonly PinSheet[] = [];
  /** Pins that are not in the lists because there are so many. */
  @property({ type: Number }) more = 0;
  /** The pin that a note is being written for. */
  @property() asking = '';
  /** The selected cell, as the id's beginning. */
  @property() at = '';
  /** Nothing can be changed. */
  @property({ type: Boolean }) readonly = false;

  @query('textarea') private note!: HTMLTextAreaElement | null;

  #wasHere = false;

  override focus(options?: FocusOptions): void {
    const first = (selector: string): HTMLElement | null => this.renderRoot.querySelector(selector);
    (this.note ?? first('li[data-at] button') ?? first('li button') ?? first('header button'))?.focus(options);
  }

  override render(): TemplateResult {
    const open = this.#those((row) => row.note === null);
    const seen = this.#those((row) => row.note !== null);
    const count = open.reduce((sum, { rows }) => sum + rows.length, 0);
    return html`
      <header><h2>Pins</h2><button @click=${() => this.#send('tt-close')}>Close</button></header>
      <p class="soft" role="status">${count === 0 ? 'No pins. One is put on a cell when its figures may go wrong in the cloth.' : `${count} ${count === 1 ? 'pin' : 'pins'} to look at.`}</p>
      ${open.map((sheet) => this.#list(sheet, false))}
      ${seen.length ? html`<h2>Acknowledged</h2><p class="soft">Each comes back when its figures change.</p>${seen.map((sheet) => this.#list(sheet, true))}` : nothing}
      ${this.more ? html`<p class="soft">And ${this.more.toLocaleString('en')} more, in the cells.</p>` : nothing}
    `;
  }

  protected override willUpdate(): void {
    this.#wasHere = (this.renderRoot as ShadowRoot | undefined)?.activeElement !== null && this.hasUpdated;
  }

  protected override updated(changed: PropertyValues): void {
    if (changed.has('asking') && this.note) this.note.focus();
    // What was pressed may be gone: the pin is mended or acknowledged.
    else if (this.#wasHere && (this.renderRoot as ShadowRoot).activeElement === null) this.focus();
  }

  #those(wanted: (row: PinRow) => boolean): readonly PinSheet[] {
    return this.sheets.map(({ name, rows }) => ({ name, rows: rows.filter(wanted) })).filter(({ rows }) => rows.length > 0);
  }

  #list({ name, rows }: PinSheet, seen: boolean): TemplateResult {
    return html`<h3>${name}</h3><ul class=${seen ? 'seen' : ''} aria-label=${`${seen ? 'Acknowledged pins' : 'Pins'} on ${name}`}>${repeat(rows, ({ id }) => id, (row) => this.#row(row))}</ul>`;
  }

  #row({ id, area, place, label, sentence, mend, note }: PinRow): TemplateResult {
    const of = `${label ? `${label}, ` : ''}${place}`;
    return html`<li ?data-at=${id.startsWith(`${this.at} `)}>
      <button class="bare where" aria-label=${`Go to ${of}`} @click=${() => this.#send('tt-go', { area })}><i class="head"></i>${label || place}${label ? html` <small>${place}</small>` : nothing}</button>
      <p>${sentence}</p>
      ${note ? html`<p class="kept">${note}</p>` : nothing}
      ${this.asking === id ? this.#form(id, of) : html`<div class="do">
        ${mend && note === null ? html`<button ?disabled=${this.readonly} @click=${() => this.#send('tt-mend-pin', { id })}>Mend: put ${mend.to} in ${mend.place}${mend.label ? ` (${mend.label})` : ''}</button>` : nothing}
        ${note === null
          ? html`<button ?disabled=${this.readonly} aria-label=${`Acknowledge the pin on ${of}`} @click=${() => this.#send('tt-ask-pin', { id })}>Acknowledge…</button>`
          : html`<button ?disabled=${this.readonly} aria-label=${`Pin again: ${of}`} @click=${() => this.#send('tt-pin-again', { id })}>Pin again</button>`}
      </div>`}
    </li>`;
  }

  #form(id: string, of: string): TemplateResult {
    const submit = (event: Event): void => {
      event.preventDefault();
      this.#send('tt-acknowledge', { id, note: this.note?.value.trim() ?? '' });
    };
    const key = (event: KeyboardEvent): void => {
      if (event.isComposing) return;
      if (event.key === 'Escape') {
        event.preventDefault();
        event.stopPropagation();
        this.#send('tt-ask-pin', { id: null });
      } else if (event.key === 'Enter' && !event.shiftKey) {
        submit(event);
      }
    };
    return html`<form aria-label=${`Acknowledge the pin on ${of}`} @submit=${submit} @keydown=${key}>
      <label>Why it may stand, for later: <textarea rows="2"></textarea></label>
      <div class="do"><button class="main">Acknowledge</button><button type="button" @click=${() => this.#send('tt-ask-pin', { id: null })}>Cancel</button></div>
    </form>`;
  }

  #send(type: string, detail?: unknown): void {
    this.dispatchEvent(new CustomEvent(type, { detail, bubbles: true, composed: true }));
  }
}

declare global {
  interface HTMLElementTagNameMap { 'tt-pins': PinsPanel }
}
