import { LitElement, html, nothing, type TemplateResult } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { controls } from '../look/index.ts';
import type { Lay } from '../workbook/index.ts';
import './lay-cloth.ts';
import './lay-compare.ts';
import './lay-drawing.ts';
import type { LayChange, LayPieceRow, LaySentence, LayShown, LayView } from './lay-parts.ts';
import { layStyles } from './lay-styles.ts';
import { SettledList } from './settled-list.ts';

const AIMS: readonly (readonly [Lay['aim'], string, string])[] = [
  ['least length', 'The least length', 'As little of the cloth’s length as can be found.'],
  ['fits', 'It fits in the length at hand', 'It stops as soon as it does, or says why it cannot.'],
  ['largest left', 'The largest rectangle left over', 'Of the length at hand, in one piece.'],
  ['room for', 'Room for a second list', 'Both lists in the length at hand, the first one whatever comes.'],
];

/**
 * The lay: pieces, cloth and what is wanted; the layout that was found. Says
 * `tt-lay-choose` (LayChange), `tt-lay-find`, `tt-lay-stop`, `tt-lay-brief`
 * {brief}, `tt-lay-settle`, `tt-lay-keep` {name}, `tt-lay-show` {id},
 * `tt-lay-take-away` {id}, `tt-lay-print` {scale; 0: the plan}, `tt-lay-svg`,
 * `tt-lay-template`, `tt-go` {area}, `tt-close`, and what its parts say.
 */
@customElement('tt-lay')
export class LayPanel extends LitElement {
  static override shadowRootOptions = { ...LitElement.shadowRootOptions, delegatesFocus: false };
  static override styles = [controls, layStyles];

  @property({ attribute: false }) view: LayView | null = null;
  @state() private name = '';
  @query('h2') private heading!: HTMLElement;

  readonly #first = new SettledList((pieces) => this.#choose({ pieces }));
  readonly #second = new SettledList((second) => this.#choose({ second }));

  readonly #wanted = new SettledList((aim) => this.#choose({ aim: aim as Lay['aim'] }));

  override focus(): void {
    this.heading.focus();
  }

  override render(): TemplateResult | typeof nothing {
    const { view } = this;
    if (!view) return nothing;
    return html`
      <header><h2 tabindex="-1">The lay</h2><span class="soft">which length of cloth the pieces need, and how to lay them</span><button @click=${() => this.#say('tt-close', {})}>Back to the cells</button></header>
      ${view.lists.length === 0 && view.choice.pieces === '' ? this.#empty(view) : html`<div class="parts">
        <div class="choices">${this.#pieces(view)}${this.#cloth(view)}${this.#aim(view)}</div>
        <div class="result">${this.#search(view)}${this.#layout(view)}
          <details class="box" ?open=${view.comparing || view.compared.length > 0}><summary><h3>Compare</h3></summary>
            <tt-lay-compare .offers=${view.choice.offers} .rows=${view.compared} .faults=${view.fieldFaults} ?comparing=${view.comparing} ?cannot=${view.cannot !== ''} ?readonly=${view.readonly}></tt-lay-compare>
          </details>
          ${this.#kept(view)}
        </div>
      </div>`}`;
  }

  #empty({ readonly }: LayView): TemplateResult {
    return html`<div class="empty">
      <p>There are no pieces yet. A list of pieces is a sheet with a row of headings, of which <b>Piece</b> and <b>Shape</b> are two, and a row for each piece: a panel, a band, a gore, a sleeve, or a shape that was drawn.</p>
      <button class="main" ?disabled=${readonly} @click=${() => this.#say('tt-lay-template', {})}>Start a list of pieces</button>
    </div>`;
  }

  #pieces(view: LayView): TemplateResult {
    const { choice, pieces, rowFaults } = view;
    return html`<section class="box" aria-labelledby="pieces"><h3 id="pieces">Pieces</h3>
      ${this.#list('pieces', 'The list', choice.pieces, view)}
      ${rows(pieces, 'No piece of this list is for this cloth.')}
      ${this.#sentences(rowFaults)}
    </section>`;
  }

  #list(field: 'pieces' | 'second', label: string, formula: string, { lists, readonly }: LayView): TemplateResult {
    const known = lists.some((each) => each.formula === formula);
    const list = field === 'pieces' ? this.#first : this.#second;
    return html`<label class="field">${label}<select name=${field} ?disabled=${readonly} @change=${list.change} @keydown=${list.key} @pointerdown=${list.pointer} @focusout=${list.left}>
      ${formula === '' ? html`<option value="" selected>choose one</option>` : nothing}
      ${lists.map((each) => html`<option value=${each.formula} ?selected=${each.formula === formula}>Sheet ${each.name}</option>`)}
      ${formula !== '' && !known ? html`<option value=${formula} selected>${formula.slice(1)}</option>` : nothing}
    </select></label>`;
  }

  #sentences(sentences: readonly LaySentence[]): TemplateResult | typeof nothing {
    return sentences.length === 0 ? nothing : html`<ul class="faults">${sentences.map(({ sentence, place }) => html`<li class="fault">${sentence}
      ${place ? html`<button @click=${() => this.#say('tt-go', { area: place })}>Go to its row</button>` : nothing}</li>`)}</ul>`;
  }

  #cloth({ choice, cloths, fieldFaults, readonly }: LayView): TemplateResult {
    return html`<section class="box" aria-labelledby="cloth"><h3 id="cloth">Cloth</h3>
      <tt-lay-cloth .cloth=${choice.cloth} .cloths=${cloths} .faults=${fieldFaults} ?readonly=${readonly}></tt-lay-cloth>
      <div class="pair">${this.#text('price', 'Price of a metre', choice.price, 'not known')}${this.#text('shop', 'The shop cuts in steps of', choice.shop, 'any length')}</div>
    </section>`;
  }

  #aim(view: LayView): TemplateResult {
    const { choice, second, readonly } = view;
    return html`<section class="box" aria-labelledby="aim"><h3 id="aim">What is wanted</h3>
      <label class="field">Look for <select name="aim" ?disabled=${readonly} @change=${this.#wanted.change} @keydown=${this.#wanted.key} @pointerdown=${this.#wanted.pointer} @focusout=${this.#wanted.left}>
        ${AIMS.map(([aim, label]) => html`<option value=${aim} ?selected=${choice.aim === aim}>${label}</option>`)}</select></label>
      <p class="soft">${AIMS.find(([aim]) => aim === choice.aim)![2]}</p>
      ${choice.aim === 'largest left' ? this.#text('leftWidth', 'Of this width', choice.leftWidth, 'the whole width of the cloth') : nothing}
      ${choice.aim === 'room for' ? html`${this.#list('second', 'The second list', choice.second, view)}${choice.second === '' ? nothing : rows(second, 'The second list has no piece.')}` : nothing}
    </section>`;
  }

  #text(field: 'price' | 'shop' | 'leftWidth', label: string, value: string, none: string): TemplateResult {
    const fault = this.view!.fieldFaults.find((each) => each.field === field);
    return html`<label class="field">${label}<input name=${field} aria-label=${label} placeholder=${none} maxlength="60" autocomplete="off" ?readonly=${this.view!.readonly} aria-invalid=${Boolean(fault)} .value=${live(value)}
      @change=${(event: Event) => this.#choose({ [field]: (event.target as HTMLInputElement).value.trim() })}>${fault ? html`<span class="fault">${fault.sentence}</span>` : nothing}</label>`;
  }

  #search({ cannot, looking, brief, standing, faults, shown }: LayView): TemplateResult {
    return html`<div class="search">
      ${looking ? html`<button class="main" @click=${() => this.#say('tt-lay-stop', {})}>Stop looking</button>`
        : html`<button class="main" ?disabled=${cannot !== ''} @click=${() => this.#say('tt-lay-find', {})}>Find a layout</button>`}
      <label>Look <select name="brief" @change=${(event: Event) => this.#say('tt-lay-brief', { brief: (event.target as HTMLSelectElement).value === 'briefly' })}>
        <option value="long" ?selected=${!brief}>until more would not pay</option><option value="briefly" ?selected=${brief}>briefly</option></select></label>
      <span class="standing" role="status">${looking ? nothing : cannot || standing}</span>
      ${looking ? html`<span class="standing">${standing}</span>` : nothing}
    </div>
    ${faults.map((sentence) => html`<p class="fault" role="alert">${sentence}</p>`)}
    ${shown ? nothing : html`<p class="soft none">${looking ? 'The first layout comes in a moment.' : 'No layout yet. What is found is drawn here, to scale.'}</p>`}`;
  }

  #layout(view: LayView): TemplateResult | typeof nothing {
    const { shown, as, looking } = view;
    if (!shown) return nothing;
    return html`<section class="layout" aria-labelledby="headline">
      <p class="headline" id="headline">${shown.headline}</p>
      ${shown.remarks.map((remark) => html`<p class="remark">${remark}</p>`)}
      ${shown.wrongs.length > 0 ? html`<ul class="faults" role="alert">${shown.wrongs.map((wrong) => html`<li class="fault">${wrong}</li>`)}</ul>` : nothing}
      <tt-lay-drawing .lay=${shown.drawing} .as=${as} .spoken=${shown.spoken} .turns=${shown.turns} ?movable=${!looking} ?canUndo=${shown.canUndo}></tt-lay-drawing>
      ${looking ? nothing : this.#withIt(view, shown)}
    </section>`;
  }

  #withIt({ pages, readonly, suggestedName, cannot }: LayView, shown: LayShown): TemplateResult {
    const name = this.name || suggestedName;
    return html`<div class="buttons">
      ${shown.byHand ? html`<button ?disabled=${cannot !== ''} @click=${() => this.#say('tt-lay-settle', {})}>Settle from here</button>` : nothing}
      <form @submit=${(event: Event) => { event.preventDefault(); this.name = ''; this.#say('tt-lay-keep', { name }); }}>
        <label>Name <input name="name" maxlength="60" autocomplete="off" ?disabled=${readonly || !shown.canKeep} .value=${live(name)} @input=${(event: Event) => { this.name = (event.target as HTMLInputElement).value; }}></label>
        <button ?disabled=${readonly || !shown.canKeep || name.trim() === ''}>Keep this layout</button>
      </form>
      ${shown.wrongs.length > 0 ? nothing : html`
        <button @click=${() => this.#say('tt-lay-print', { scale: 0 })}>Print a plan to lay by…</button>
        <label>Print to scale <select name="scale">${pages.map(({ scale, label }) => html`<option value=${scale}>${label}</option>`)}</select></label>
        <button @click=${() => this.#say('tt-lay-print', { scale: Number(this.renderRoot.querySelector<HTMLSelectElement>('[name=scale]')!.value) })}>Print it…</button>
        <button @click=${() => this.#say('tt-lay-svg', {})}>Save as SVG</button>`}
    </div>`;
  }

  #kept({ kept, readonly }: LayView): TemplateResult | typeof nothing {
    if (kept.length === 0) return nothing;
    return html`<section class="box" aria-labelledby="kept"><h3 id="kept">Kept layouts</h3>
      <ul class="kept">${kept.map(({ id, name, said, stale, shown }) => html`<li class=${shown ? 'shown' : ''}>
        <div><b>${name}</b> <span class="soft">${said}</span>${stale ? html`<p class="note">${stale}</p>` : nothing}</div>
        <div class="buttons"><button aria-label="Show: ${name}" aria-pressed=${shown} @click=${() => this.#say('tt-lay-show', { id })}>Show</button>
          <button ?disabled=${readonly} aria-label="Take away: ${name}" @click=${() => this.#say('tt-lay-take-away', { id })}>Take away</button></div></li>`)}</ul>
    </section>`;
  }

  #choose(change: LayChange): void {
    this.#say('tt-lay-choose', change);
  }

  #say(type: string, detail: unknown): void {
    this.dispatchEvent(new CustomEvent(type, { detail, bubbles: true, composed: true }));
  }
}

const rows = (pieces: readonly LayPieceRow[], none: string): TemplateResult => (pieces.length === 0 ? html`<p class="soft">${none}</p>`
  : html`<ol class="rows" tabindex="0" aria-label="Pieces of the list">${pieces.map(({ name, count }) => html`<li>${name} <span class="soft">${count}</span></li>`)}</ol>`);

declare global {
  interface HTMLElementTagNameMap { 'tt-lay': LayPanel }
}
