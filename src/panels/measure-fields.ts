import { LitElement, css, html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { controls } from '../look/index.ts';
import { measureCalled, nameOfMeasure, readMeasure, withUnit } from '../people/index.ts';
import { drawn, pictureStyles, tapeOnBody } from '../pictures/index.ts';
import { inBase, show, type ShowAs } from '../quantities/index.ts';
import { unbroken } from './unbroken.ts';

/** What she typed, or what was last taken, by measure. */
export type Typed = Readonly<Record<string, string>>;

/**
 * Fields for measures, each with how it is taken, a drawing on demand, the
 * figure in both systems as it is typed, and a sentence where it is in doubt.
 * Says `tt-measure` {of, raw} as she types; what is typed lives with whoever asked.
 */
@customElement('tt-measure-fields')
export class MeasureFields extends LitElement {
  static override styles = [controls, pictureStyles, css`
    :host { display: block; }
    .fields { display: grid; gap: var(--gap-3) var(--gap-4); grid-template-columns: repeat(auto-fill, minmax(min(100%, 260px), 1fr)); }
    .field { display: grid; grid-template-columns: minmax(0, 1fr) 7.5em; gap: 2px var(--gap-2); align-content: start; }
    label { font-weight: 600; align-items: center; overflow-wrap: anywhere; }
    .need { font-weight: 400; color: var(--soft); font-size: var(--size-small); }
    input { width: 100%; text-align: right; font-variant-numeric: tabular-nums; }
    input[aria-invalid='true'] { border-color: var(--pin); }
    .taken, .says, .how { grid-column: 1 / -1; margin: 0; }
    .says { min-height: 1.3em; font-size: var(--size-small); font-variant-numeric: tabular-nums; text-align: right; }
    .says .doubt { color: var(--thread); text-align: left; display: block; }
    .says .wrong { color: var(--pin); text-align: left; display: block; }
    .how { display: flex; gap: var(--gap-2); align-items: start; flex-wrap: wrap; }
    .how button { min-height: 28px; padding: 2px 8px; font-size: var(--size-small); }
    .how .tt-picture { width: 150px; }
    .taken { color: var(--soft); font-size: var(--size-small); }
  `];

  /** Which measures, in this order. */
  @property({ attribute: false }) of: readonly string[] = [];
  @property({ attribute: false }) needed: readonly string[] = [];
  @property({ attribute: false }) typed: Typed = {};
  /** What was last taken. */
  @property({ attribute: false }) last: Typed = {};
  /** What a bare number is. */
  @property() unit: 'cm' | 'in' = 'cm';
  /** Say also which of those needed are missing. */
  @property({ type: Boolean }) pressed = false;

  @state() private shown: ReadonlySet<string> = new Set();

  override render(): TemplateResult {
    return html`<div class="fields">${this.of.map((of, index) => this.#field(of, `m${index}`))}</div>`;
  }

  /** Puts the caret into the first field that is missing or wrong; false when there is none. */
  goToFault(): boolean {
    const at = this.of.findIndex((of) => this.#wrong(of) !== null);
    this.renderRoot.querySelector<HTMLInputElement>(`#m${at}`)?.focus();
    return at >= 0;
  }

  #field(of: string, id: string) {
    const known = measureCalled(of);
    const raw = this.typed[of] ?? '';
    const reading = readMeasure(of, raw, this.unit, lengthIn(this.last[of], this.unit));
    const wrong = this.#wrong(of);
    const needed = this.needed.includes(of);
    const open = this.shown.has(of);
    const picture = open ? tapeOnBody(of) : null;
    const also = reading.kind === 'length' ? show(inBase(reading.quantity.value, reading.quantity.unit), BOTH) : null;
    return html`<div class="field">
      <label for=${id}><span>${nameOfMeasure(of)}${needed ? html` <span class="need">needed</span>` : nothing}</span></label>
      <input id=${id} maxlength="60" autocomplete="off" .value=${raw} placeholder=${this.last[of] ?? ''} ?required=${needed}
        aria-invalid=${wrong ? 'true' : 'false'} aria-describedby=${`${id}-says ${id}-taken`}
        @input=${(event: Event) => this.#send(of, (event.target as HTMLInputElement).value)}>
      <p class="says" id=${`${id}-says`} role="status">${wrong ? html`<span class="wrong">✕ ${wrong}</span>` : nothing}${also ? html`${also.main}${also.also ? ` = ${also.also}` : ''}` : nothing}
        ${reading.kind === 'length' && reading.doubt ? html`<span class="doubt">⚠ ${reading.doubt}</span>` : nothing}</p>
      <p class="taken" id=${`${id}-taken`}>${known?.taken ?? 'A measure of her own.'}${this.last[of] ? ` Last time ${unbroken(this.last[of])}.` : ''}</p>
      ${known ? html`<div class="how"><button type="button" aria-expanded=${open} aria-label="Where the tape goes: ${known.name}" @click=${() => this.#toggle(of)}>${open ? 'Hide the drawing' : 'Where the tape goes'}</button>
        ${picture ? drawn(picture) : nothing}</div>` : nothing}
    </div>`;
  }

  #wrong(of: string): string | null {
    const raw = this.typed[of] ?? '';
    const reading = readMeasure(of, raw, this.unit);
    if (reading.kind === 'wrong') return reading.sentence;
    return this.pressed && reading.kind === 'nothing' && this.needed.includes(of) ? `${nameOfMeasure(of)} is needed: type a figure such as ${this.unit === 'cm' ? '94 cm' : '37 1/4 in'}.` : null;
  }

  #toggle(of: string) {
    const shown = new Set(this.shown);
    if (!shown.delete(of)) shown.add(of);
    this.shown = shown;
  }

  #send(of: string, raw: string) {
    this.dispatchEvent(new CustomEvent('tt-measure', { detail: { of, raw }, bubbles: true, composed: true }));
  }
}

const BOTH: ShowAs = { system: 'both', inchStep: 8 };

const lengthIn = (raw: string | undefined, unit: 'cm' | 'in'): number | undefined => {
  const reading = raw === undefined ? null : readMeasure('', raw, unit);
  return reading?.kind === 'length' ? reading.quantity.value : undefined;
};

/** The figures that are lengths, each with its unit, in the order given. */
export function takenFrom(of: readonly string[], typed: Typed, unit: 'cm' | 'in'): { of: string; raw: string }[] {
  return of.flatMap((one) => {
    const raw = typed[one] ?? '';
    return readMeasure(one, raw, unit).kind === 'length' ? [{ of: one, raw: withUnit(raw, unit) }] : [];
  });
}

declare global {
  interface HTMLElementTagNameMap { 'tt-measure-fields': MeasureFields }
}
