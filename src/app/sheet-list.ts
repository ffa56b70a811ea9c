import { LitElement, css, html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { controls } from '../look/index.ts';
import type { Sheet, SheetId } from '../workbook/index.ts';

/** The sheets of the garment, and the ways to get another. Asks by `tt-open-sheet` {sheet} and `tt-run` {id}. */
@customElement('tt-sheet-list')
export class SheetList extends LitElement {
  static override styles = [controls, css`
    :host { display: flex; flex-direction: column; padding: var(--gap-3) 0; background: var(--tissue); overflow-y: auto; }
    h2 { font: 600 0.75rem var(--face); letter-spacing: 0.04em; color: var(--soft); margin: var(--gap-2) var(--gap-4); }
    ul { list-style: none; margin: 0 0 var(--gap-3); padding: 0; }
    li button {
      display: block; width: 100%; text-align: left; border: 0; border-left: 4px solid transparent; border-radius: 0;
      background: none; padding: var(--gap-2) var(--gap-4) var(--gap-2) var(--gap-3); overflow-wrap: anywhere;
    }
    li button:hover { background: var(--chalk-wash); }
    li button:focus-visible { outline-offset: -2px; }
    li button[aria-current] { background: var(--paper); border-left-color: var(--chalk); font-weight: 600; box-shadow: inset 0 1px var(--line), inset 0 -1px var(--line); }
    .count { display: inline-flex; align-items: center; gap: 4px; margin-left: 6px; font-weight: 400; font-size: 0.78rem; color: var(--pin); white-space: nowrap; }
    .count::before { content: ''; width: 9px; height: 9px; border-radius: 50%; background: var(--pin); }
    small { display: block; color: var(--soft); font-weight: 400; font-size: 0.78rem; }
    @media (forced-colors: active) { li button { border-left-color: Canvas; } .count::before { forced-color-adjust: none; background: LinkText; } li button[aria-current] { border-left-color: Highlight; } }
  `];

  @property({ attribute: false }) sheets: readonly Sheet[] = [];
  @property({ type: Number }) current: SheetId = 0;
  /** How many pins there are to look at on each sheet. */
  @property({ attribute: false }) pins: ReadonlyMap<SheetId, number> = new Map();

  /** Goes to the open sheet's line. */
  override focus(): void {
    this.renderRoot.querySelector<HTMLElement>('[aria-current]')?.focus();
  }

  override render(): TemplateResult {
    return html`
      <h2 id="sheets">This garment</h2>
      <ul aria-labelledby="sheets">${this.sheets.map((sheet) => html`<li>
        <button aria-current=${sheet.id === this.current ? 'page' : nothing} @click=${() => this.#send('tt-open-sheet', { sheet: sheet.id })}>
          ${sheet.name}${this.#pinsOf(sheet.id)}${sheet.about ? html`<small>${sheet.about}</small>` : nothing}
        </button></li>`)}</ul>
      <h2 id="more">Another sheet</h2>
      <ul aria-labelledby="more">
        ${this.#way('template-start', 'From a template', 'fit, skirts, buttons, cloth, your own')}
        ${this.#way('import-chart', 'Size chart from CSV', 'a file, or pasted text')}
        ${this.#way('sheet-blank', 'Blank sheet', '')}
      </ul>
      <h2 id="books">Another workbook</h2>
      <ul aria-labelledby="books">${this.#way('shelf', 'Workbooks on this device', 'open, copy, files, the bin')}</ul>
    `;
  }

  #pinsOf(sheet: SheetId) {
    const count = this.pins.get(sheet) ?? 0;
    return count ? html` <span class="count">${count} ${count === 1 ? 'pin' : 'pins'}</span>` : nothing;
  }

  #way(id: string, label: string, about: string) {
    return html`<li><button @click=${() => this.#send('tt-run', { id })}>${label}${about ? html`<small>${about}</small>` : nothing}</button></li>`;
  }

  #send(type: string, detail: unknown) {
    this.dispatchEvent(new CustomEvent(type, { detail, bubbles: true, composed: true }));
  }
}

declare global {
  interface HTMLElementTagNameMap { 'tt-sheet-list': SheetList }
}
