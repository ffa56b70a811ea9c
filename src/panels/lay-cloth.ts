import { LitElement, css, html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { controls } from '../look/index.ts';
import type { ClothTyped } from '../workbook/index.ts';
import type { LayChange } from './lay-parts.ts';
import { SettledList } from './settled-list.ts';

const FOLDS: readonly (readonly [ClothTyped['fold'], string])[] = [
  ['open', 'Flat, in one layer'], ['lengthwise', 'Folded lengthwise, selvedge to selvedge'], ['partly', 'Folded lengthwise in part'], ['crosswise', 'Folded crosswise, end to end'],
];

/** The cloth as she types it. Says `tt-lay-choose` (LayChange) when a field is left or confirmed. */
@customElement('tt-lay-cloth')
export class LayClothForm extends LitElement {
  static override styles = [controls, css`
    :host { display: grid; gap: var(--gap-3); }
    .pair { display: grid; grid-template-columns: repeat(2, minmax(0, 1fr)); gap: var(--gap-2); }
    .field { display: grid; gap: 2px; min-width: 0; align-content: start; justify-items: stretch; }
    .field input, .field select { width: 100%; min-width: 0; }
    fieldset { border: 1px solid var(--line); border-radius: var(--round); padding: var(--gap-2); margin: 0; min-width: 0; display: grid; gap: var(--gap-2); }
    legend { padding: 0 var(--gap-1); }
    .row { display: grid; grid-template-columns: repeat(2, minmax(0, 1fr)) auto; gap: var(--gap-1); align-items: end; }
    .row.four { grid-template-columns: repeat(2, minmax(0, 1fr)); }
    summary { cursor: pointer; min-height: 24px; }
    /* What holds the content of details is none of ours and passes nothing of this on. */
    details > * { box-sizing: border-box; }
    details > div { display: grid; gap: var(--gap-3); padding-top: var(--gap-2); }
    p { margin: 0; }
    [aria-invalid='true'] { border-color: var(--pin); border-width: 2px; }
  `];

  @property({ attribute: false }) cloth!: ClothTyped;
  @property({ attribute: false }) cloths: readonly string[] = [];
  @property({ attribute: false }) faults: readonly { readonly field: string; readonly sentence: string }[] = [];
  @property({ type: Boolean }) readonly = false;

  readonly #which = new SettledList((which) => this.#choose({ which }));
  readonly #fold = new SettledList((fold) => this.#choose({ fold: fold as ClothTyped['fold'] }));

  override render(): TemplateResult {
    const { cloth, cloths } = this;
    const which = cloth.which !== '' && !cloths.includes(cloth.which) ? [...cloths, cloth.which] : cloths;
    const odd = cloth.remnant.length > 0;
    return html`
      ${which.length > 1 || cloth.which !== '' ? html`<label class="field">Pieces of which cloth
        <select name="which" ?disabled=${this.readonly} @change=${this.#which.change} @keydown=${this.#which.key} @pointerdown=${this.#which.pointer} @focusout=${this.#which.left}>
          <option value="" ?selected=${cloth.which === ''}>All of them</option>${which.map((name) => html`<option value=${name} ?selected=${name === cloth.which}>${name}</option>`)}
        </select></label>` : nothing}
      ${odd ? nothing : html`<div class="pair">${this.#text('width', 'Usable width', '140 cm')}${this.#text('length', 'Length at hand', 'to be bought')}</div>`}
      <label class="field">How it lies
        <select name="fold" ?disabled=${this.readonly} @change=${this.#fold.change} @keydown=${this.#fold.key} @pointerdown=${this.#fold.pointer} @focusout=${this.#fold.left}>
          ${FOLDS.map(([fold, label]) => html`<option value=${fold} ?selected=${fold === cloth.fold}>${label}</option>`)}
        </select></label>
      ${cloth.fold === 'partly' ? this.#text('foldAt', 'Depth of the folded part', 'the best that is found') : nothing}
      ${this.#tick('oneWay', 'It has one way: nap, or a print with an up and a down')}
      ${this.#tick('alike', 'Both sides are alike, so pieces may lie face down')}
      <details ?open=${this.#wantsMore}><summary>Gap, shrinkage, print, remnant, flaws</summary><div>
        ${this.#text('gap', 'Gap between pieces', 'none')}
        <div class="pair">${this.#text('shrinkAlong', 'Shrinkage along', '0 %')}${this.#text('shrinkAcross', 'Shrinkage across', '0 %')}</div>
        <div class="pair">${this.#text('repeatAlong', 'Print repeats along', 'no print')}${this.#text('repeatAcross', 'Print repeats across', 'no print')}</div>
        <fieldset><legend>Odd-shaped remnant</legend>
          <p class="soft">Its corners in order around it, each measured from the cut end and from the lower selvedge.</p>
          ${cloth.remnant.map((corner, i) => html`<div class="row">
            ${this.#part(`remnant-${i}-along`, `Corner ${i + 1}: from the cut end`, corner.along, (along) => ({ remnant: cloth.remnant.with(i, { ...corner, along }) }))}
            ${this.#part(`remnant-${i}-across`, 'from the selvedge', corner.across, (across) => ({ remnant: cloth.remnant.with(i, { ...corner, across }) }), `Corner ${i + 1}: from the selvedge`)}
            <button ?disabled=${this.readonly} aria-label="Take corner ${i + 1} away" @click=${() => this.#choose({ remnant: cloth.remnant.toSpliced(i, 1) })}>✕</button></div>`)}
          ${this.#faultsOf('remnant')}
          <div><button ?disabled=${this.readonly} @click=${() => this.#choose({ remnant: odd ? [...cloth.remnant, { along: '', across: '' }] : corners(cloth) })}>${odd ? 'One more corner' : 'It is a remnant…'}</button></div>
        </fieldset>
        <fieldset><legend>Flaws</legend>
          ${cloth.flaws.map((flaw, i) => html`<div class="row four">
            ${(['along', 'across', 'length', 'width'] as const).map((part) => this.#part(`flaw-${i}-${part}`, FLAW[part], flaw[part], (text) => ({ flaws: cloth.flaws.with(i, { ...flaw, [part]: text }) }), `Flaw ${i + 1}: ${FLAW[part]}`))}
            </div><div><button ?disabled=${this.readonly} @click=${() => this.#choose({ flaws: cloth.flaws.toSpliced(i, 1) })}>Take flaw ${i + 1} away</button></div>`)}
          <div><button ?disabled=${this.readonly} @click=${() => this.#choose({ flaws: [...cloth.flaws, { along: '', across: '', length: '', width: '' }] })}>Add a flaw…</button></div>
        </fieldset>
      </div></details>`;
  }

  get #wantsMore(): boolean {
    const { gap, shrinkAlong, shrinkAcross, repeatAlong, repeatAcross, remnant, flaws } = this.cloth;
    return [gap, shrinkAlong, shrinkAcross, repeatAlong, repeatAcross].some((text) => text !== '') || remnant.length > 0 || flaws.length > 0;
  }

  #tick(name: 'oneWay' | 'alike', label: string): TemplateResult {
    return html`<label><input type="checkbox" name=${name} ?disabled=${this.readonly} .checked=${live(this.cloth[name])} @change=${(event: Event) => this.#choose({ [name]: (event.target as HTMLInputElement).checked })}> ${label}</label>`;
  }

  #text(name: 'width' | 'length' | 'gap' | 'shrinkAlong' | 'shrinkAcross' | 'repeatAlong' | 'repeatAcross' | 'foldAt', label: string, none: string): TemplateResult {
    return this.#part(name, label, this.cloth[name], (text) => ({ [name]: text }), label, none);
  }

  #part(field: string, label: string, value: string, change: (text: string) => Partial<ClothTyped>, spoken = label, none = ''): TemplateResult {
    const wrong = this.faults.some((fault) => fault.field === field);
    return html`<label class="field">${label}
      <input name=${field} aria-label=${spoken} placeholder=${none} maxlength="60" autocomplete="off" ?readonly=${this.readonly} aria-invalid=${wrong} aria-describedby=${wrong ? `${field}-fault` : nothing}
        .value=${live(value)} @change=${(event: Event) => this.#choose(change((event.target as HTMLInputElement).value.trim()))}>
      ${this.#faultsOf(field)}</label>`;
  }

  #faultsOf(field: string): TemplateResult | typeof nothing {
    const sentences = this.faults.filter((fault) => fault.field === field).map(({ sentence }) => sentence);
    return sentences.length > 0 ? html`<span class="fault" id="${field}-fault">${sentences.join(' ')}</span>` : nothing;
  }

  #choose(cloth: Partial<ClothTyped>): void {
    const change: LayChange = { cloth };
    this.dispatchEvent(new CustomEvent('tt-lay-choose', { detail: change, bubbles: true, composed: true }));
  }
}

const FLAW = { along: 'from the cut end', across: 'from the selvedge', length: 'its length', width: 'its width' } as const;

/** To begin with, the cloth as it was told so far. */
const corners = ({ width, length }: ClothTyped): ClothTyped['remnant'] =>
  [['0', '0'], [length, '0'], [length, width], ['0', width]].map(([along = '', across = '']) => ({ along, across }));

declare global {
  interface HTMLElementTagNameMap { 'tt-lay-cloth': LayClothForm }
}
