import { LitElement, css, html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { controls } from '../look/index.ts';
import { UNITS, UNIT_CODES, type Dimension, type UnitCode } from '../quantities/index.ts';
import type { Look } from '../workbook/index.ts';

/** What is to be different; `undefined` takes it away. */
export type LookChange = { readonly [Key in keyof Look]?: Look[Key] | undefined };

const KINDS: readonly { readonly kind: Dimension; readonly label: string; readonly first: UnitCode }[] = [
  { kind: 'length', label: 'Length', first: 'cm' },
  { kind: 'area', label: 'Area', first: 'cm2' },
  { kind: 'angle', label: 'Angle', first: 'deg' },
  { kind: 'number', label: 'Number', first: '' },
];

const ALIGNS = [['', 'As it comes'], ['start', 'At the start'], ['centre', 'In the middle'], ['end', 'At the end']] as const;
const BORDERS = [['', 'None'], ['above', 'A line above'], ['below', 'A line below'], ['around', 'All around']] as const;

const unitName = (unit: UnitCode): string => (unit === '' ? 'plain' : unit === '%' ? 'percent' : UNITS[unit].words);

/**
 * How the selected cells show. Nothing here changes a value. Asks by `tt-look`
 * (LookChange), `tt-mark-input`, `tt-look-off`, `tt-close`.
 */
@customElement('tt-cell-format')
export class CellFormatPanel extends LitElement {
  static override styles = [controls, css`
    :host { display: block; padding: 14px 16px 24px; }
    header { display: flex; gap: var(--gap-2); align-items: center; }
    header h2 { flex: 1; }
    .sample { background: var(--tissue); border-radius: var(--round); padding: var(--gap-2) var(--gap-3); overflow-wrap: anywhere; margin: var(--gap-2) 0; }
    fieldset { border: 1px solid var(--line); border-radius: var(--round); padding: var(--gap-1) var(--gap-3) var(--gap-3); margin: var(--gap-3) 0 0; display: grid; gap: var(--gap-2); }
    legend { font-size: var(--size-small); color: var(--soft); padding: 0 var(--gap-1); }
    .field { display: grid; grid-template-columns: 7.5em minmax(0, 1fr); }
    .marks { display: flex; flex-wrap: wrap; gap: var(--gap-1) var(--gap-4); }
    .held { text-align: end; }
    fieldset p { margin: 0; }
    .off { margin-top: var(--gap-3); }
  `];

  /** "B4:B9 of Fit". */
  @property() place = '';
  /** What the active cell shows. */
  @property() sample = '';
  /** The active cell's. */
  @property({ attribute: false }) look: Look = {};
  @property({ type: Boolean }) input = false;
  /** Not all selected cells look alike. */
  @property({ type: Boolean }) mixed = false;
  /** Nothing can be changed. */
  @property({ type: Boolean }) readonly = false;

  /** What the keys have come to in a list that is still in hand: asked for once she goes on, so that choosing is one step and not one for each line passed. */
  @state() private held: { readonly label: string; readonly change: LookChange; readonly used?: true } | null = null;
  /** The list changes under the keys, not from its opened lines. */
  #byKeys = false;

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#hold(null);
  }

  override focus(options?: FocusOptions): void {
    this.renderRoot.querySelector<HTMLElement>('select')?.focus(options);
  }

  override render(): TemplateResult {
    const look: LookChange = { ...this.look, ...this.held?.change };
    const kind = look.unit === undefined ? null : UNITS[look.unit].dimension;
    const inches = look.unit === undefined || look.unit === 'in' || look.unit === 'ft' || look.unit === 'yd';
    return html`
      <header><h2>How cells show</h2><button @click=${() => this.#send('tt-close')}>Close</button></header>
      <p class="soft">${this.place}${this.mixed ? '. They do not all look alike; what is chosen here goes for all of them.' : ''}</p>
      <p class="sample"><span class="soft">Shows as</span> ${this.sample || html`<span class="soft">nothing yet</span>`}</p>
      <fieldset ?disabled=${this.readonly}><legend>Figures</legend>
        ${this.#choice('Kind', kind ?? '', [['', 'As it comes'], ...KINDS.map(({ kind: each, label }) => [each, label] as const)], (value) => this.#kind(value))}
        ${kind ? this.#choice('Unit', look.unit ?? '', UNIT_CODES.filter((unit) => UNITS[unit].dimension === kind).map((unit) => [unit, unitName(unit)] as const), (value) => ({ unit: value as UnitCode })) : nothing}
        ${inches && (kind === null || kind === 'length') ? this.#choice('Inches to', String(look.step ?? ''), [['', 'As usual'], ['8', '1/8'], ['16', '1/16'], ['32', '1/32']], (value) => ({ step: value ? Number(value) as 8 | 16 | 32 : undefined })) : nothing}
        ${this.#choice('Decimals', String(look.decimals ?? ''), [['', inches && kind === 'length' ? 'None: fractions' : 'As usual'], ...Array.from({ length: 7 }, (_, n) => [String(n), String(n)] as const)], (value) => ({ decimals: value === '' ? undefined : Number(value) }))}
        <p class="soft">Only how it shows: the value stays exact, and formulas use it as it is.</p>
      </fieldset>
      <fieldset ?disabled=${this.readonly}><legend>Emphasis</legend>
        <div class="marks">
          ${this.#mark('Strong', look.strong, () => this.#look({ strong: look.strong ? undefined : true }))}
          ${this.#mark('Italic', look.italic, () => this.#look({ italic: look.italic ? undefined : true }))}
          ${this.#mark('Heading', look.heading, () => this.#look({ heading: look.heading ? undefined : true }))}
          ${this.#mark('Input, to be filled in', this.input, () => this.#send('tt-mark-input'))}
        </div>
      </fieldset>
      <fieldset ?disabled=${this.readonly}><legend>Place and border</legend>
        ${this.#choice('Stands', look.align ?? '', ALIGNS, (value) => ({ align: value === '' ? undefined : value as Look['align'] }))}
        ${this.#choice('Border', look.border ?? '', BORDERS, (value) => ({ border: value === '' ? undefined : value as Look['border'] }))}
      </fieldset>
      <button class="off" ?disabled=${this.readonly} @click=${() => this.#send('tt-look-off')}>Show as if nothing was chosen</button>
    `;
  }

  #choice(label: string, chosen: string, options: readonly (readonly [string, string])[], choose: (value: string) => LookChange) {
    const change = (event: Event): void => {
      const wish = choose((event.target as HTMLSelectElement).value);
      if (this.#byKeys) this.#hold({ label, change: wish });
      else this.#look(wish);
    };
    return html`<label class="field">${label}
      <select @change=${change} @keydown=${this.#key} @pointerdown=${() => { this.#byKeys = false; }} @focusout=${this.#useHeld}>
        ${options.map(([value, words]) => html`<option value=${value} .selected=${live(value === chosen)}>${words}</option>`)}</select></label>
      ${this.held?.label === label && !this.held.used ? html`<span class="soft held">Enter or Tab uses it.</span>` : nothing}`;
  }

  #mark(label: string, on: boolean | undefined, toggle: () => void) {
    return html`<label><input type="checkbox" .checked=${live(on === true)} @change=${toggle}> ${label}</label>`;
  }

  readonly #key = (event: KeyboardEvent): void => {
    const { key } = event;
    const modified = event.ctrlKey || event.metaKey || event.altKey;
    const inHand = this.held !== null && !this.held.used;
    // A space opens the list, or is part of the words that are being typed.
    this.#byKeys = key === ' ' ? inHand : !modified && (key.length === 1 || /^(?:Arrow|Page|Home|End)/.test(key));
    if (!inHand || this.#byKeys || ['Shift', 'Control', 'Alt', 'Meta'].includes(key)) return;
    // Enter uses it; it does not open the list as well.
    if (key === 'Enter') event.preventDefault();
    const undo = key.toLowerCase() === 'z' && (event.ctrlKey || event.metaKey);
    if (undo) {
      event.preventDefault();
      event.stopPropagation();
    }
    if (undo || key === 'Escape') this.#hold(null);
    // Before any command that these keys may ask for.
    else this.#useHeld();
  };

  /** Before another cell is selected, it is used. */
  #hold(held: CellFormatPanel['held']) {
    this.held = held;
    if (held) window.addEventListener('pointerdown', this.#useHeld, { capture: true });
    else window.removeEventListener('pointerdown', this.#useHeld, { capture: true });
  }

  readonly #useHeld = (): void => {
    const { held } = this;
    if (!held || held.used) return;
    this.#hold(null);
    // Shown until the cell's own look comes, so that what depends on it does not vanish in between.
    const used = this.held = { ...held, used: true };
    this.#look(held.change);
    requestAnimationFrame(() => { if (this.held === used) this.held = null; });
  };

  #kind(kind: string): LookChange {
    return { unit: KINDS.find((each) => each.kind === kind)?.first };
  }

  #look(change: LookChange) {
    this.#send('tt-look', change);
  }

  #send(type: string, detail?: unknown) {
    this.dispatchEvent(new CustomEvent(type, { detail, bubbles: true, composed: true }));
  }
}

declare global {
  interface HTMLElementTagNameMap { 'tt-cell-format': CellFormatPanel }
}
