import { LitElement, css, html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { controls } from '../look/index.ts';
import type { Lay } from '../workbook/index.ts';
import type { LayChange, LayCompared } from './lay-parts.ts';

/** Cloths and ways to lay them, side by side. Says `tt-lay-choose` (LayChange), `tt-lay-compare`, `tt-lay-stop-comparing`, `tt-lay-take` {at}. */
@customElement('tt-lay-compare')
export class LayCompare extends LitElement {
  static override styles = [controls, css`
    :host { display: grid; gap: var(--gap-3); }
    .offer { display: grid; grid-template-columns: repeat(2, minmax(0, 10em)) auto; gap: var(--gap-2); align-items: end; }
    .field { display: grid; gap: 2px; }
    .field input { width: 100%; min-width: 0; }
    .table { overflow-x: auto; }
    table { border-collapse: collapse; width: 100%; font-variant-numeric: tabular-nums; }
    th, td { padding: 6px 8px; text-align: start; border-bottom: 1px solid var(--line); vertical-align: top; }
    thead th { border-bottom: 2px solid var(--rule); white-space: nowrap; }
    .figure { text-align: end; white-space: nowrap; }
    tbody th { font-weight: inherit; }
    tr.least { font-weight: 600; }
    tr.chosen { background: var(--chalk-wash); }
    .buttons { display: flex; flex-wrap: wrap; gap: var(--gap-2); align-items: center; }
    p { margin: 0; }
  `];

  @property({ attribute: false }) offers: Lay['offers'] = [];
  @property({ attribute: false }) rows: readonly LayCompared[] = [];
  @property({ attribute: false }) faults: readonly { readonly field: string; readonly sentence: string }[] = [];
  @property({ type: Boolean }) comparing = false;
  @property({ type: Boolean }) cannot = false;
  @property({ type: Boolean }) readonly = false;

  override render(): TemplateResult {
    const { offers } = this;
    return html`
      <p class="soft">Lays the pieces flat and folded, both ways and one way, on this cloth and on each other one. Each is looked for briefly; go on with the one you choose.</p>
      ${offers.map((offer, i) => html`<div class="offer">
        ${this.#field(`offer-${i}-width`, `Other cloth ${i + 1}: width`, offer.width, (width) => offers.with(i, { ...offer, width }))}
        ${this.#field(`offer-${i}-price`, 'Price of a metre', offer.price, (price) => offers.with(i, { ...offer, price }), `Other cloth ${i + 1}: price of a metre`)}
        <button ?disabled=${this.readonly} aria-label="Take other cloth ${i + 1} away" @click=${() => this.#choose(offers.toSpliced(i, 1))}>✕</button></div>`)}
      <div class="buttons">
        <button ?disabled=${this.readonly || offers.length >= 8} @click=${() => this.#choose([...offers, { width: '', price: '' }])}>Add another width…</button>
        ${this.comparing ? html`<button @click=${() => this.#say('tt-lay-stop-comparing', {})}>Stop comparing</button>`
          : html`<button class="main" ?disabled=${this.cannot} @click=${() => this.#say('tt-lay-compare', {})}>Compare</button>`}
      </div>
      ${this.rows.length > 0 ? html`<div class="table" tabindex="0" role="group" aria-label="Compared"><table>
        <thead><tr><th scope="col">Cloth</th><th scope="col" class="figure">It takes</th><th scope="col" class="figure">Cut in the shop</th><th scope="col" class="figure">Cost</th><th scope="col" class="figure">More than the least</th><th scope="col"></th></tr></thead>
        <tbody>${this.rows.map((row, at) => html`<tr class="${row.least ? 'least' : ''} ${row.chosen ? 'chosen' : ''}">
          <th scope="row">${row.name}${row.least ? html` <span class="soft">the least</span>` : nothing}${row.chosen ? html` <span class="soft">chosen</span>` : nothing}</th>
          ${row.sentence ? html`<td colspan="5">${row.sentence}</td>` : html`<td class="figure">${row.length}</td><td class="figure">${row.toBuy}</td><td class="figure">${row.cost}</td><td class="figure">${row.more}</td>
            <td><button ?disabled=${this.readonly} aria-label="Choose: ${row.name}" @click=${() => this.#say('tt-lay-take', { at })}>Choose</button></td>`}
        </tr>`)}</tbody></table></div>` : nothing}`;
  }

  #field(field: string, label: string, value: string, change: (text: string) => Lay['offers'], spoken = label): TemplateResult {
    const fault = this.faults.find((each) => each.field === field);
    return html`<label class="field">${label}<input name=${field} aria-label=${spoken} maxlength="60" autocomplete="off" ?readonly=${this.readonly} aria-invalid=${Boolean(fault)} .value=${live(value)}
      @change=${(event: Event) => this.#choose(change((event.target as HTMLInputElement).value.trim()))}>${fault ? html`<span class="fault">${fault.sentence}</span>` : nothing}</label>`;
  }

  #choose(offers: Lay['offers']): void {
    const change: LayChange = { offers };
    this.#say('tt-lay-choose', change);
  }

  #say(type: string, detail: unknown): void {
    this.dispatchEvent(new CustomEvent(type, { detail, bubbles: true, composed: true }));
  }
}

declare global {
  interface HTMLElementTagNameMap { 'tt-lay-compare': LayCompare }
}
