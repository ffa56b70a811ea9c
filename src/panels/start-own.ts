import { LitElement, css, html, nothing, type TemplateResult } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { controls } from '../look/index.ts';
import { MEASURES } from '../people/index.ts';
import type { ChartReading } from '../tables/index.ts';
import type { Worked } from '../workbook/index.ts';
import './measure-fields.ts';
import { takenFrom, type MeasureFields, type Typed } from './measure-fields.ts';
import './start-chart.ts';
import type { StartChart } from './start-chart.ts';

/** Somebody who is known on this device. */
export interface StartPerson {
  readonly key: string;
  readonly name: string;
  /** "Linden tea dress, measured 3 November 2026". */
  readonly where: string;
  readonly child: boolean;
  readonly notes: string;
  /** The newest figure of each measure. */
  readonly newest: Typed;
  /** What worked last time. */
  readonly worked: Worked | null;
}

export interface StartGarment {
  readonly id: string;
  readonly name: string;
  readonly about: string;
  readonly asks: readonly string[];
  readonly chart: boolean;
}

export interface Started {
  /** `null`: somebody new. */
  readonly key: string | null;
  readonly name: string;
  readonly child: boolean;
  readonly years: string;
  readonly garment: string;
  readonly more: readonly string[];
  readonly title: string;
  readonly show: 'cm' | 'in' | 'both';
  readonly measures: readonly { readonly of: string; readonly raw: string }[];
  readonly day: string;
  readonly by: string;
  readonly chart: ChartReading | null;
  readonly takes: { readonly ease: boolean; readonly length: boolean; readonly alterations: boolean; readonly notes: boolean };
}

type Take = keyof Started['takes'];
const ALL_TAKEN: Started['takes'] = { ease: true, length: true, alterations: true, notes: true };
/** Asked for beside those that a garment needs, before all others. */
const OFTEN = ['bust', 'waist', 'hip', 'upper chest', 'waist to hip', 'back waist length', 'height'];

/** Who, which garment, which unit; ends on a filled workbook. Asks by `tt-start` (`Started`) and `tt-close`. */
@customElement('tt-start-own')
export class StartOwnPanel extends LitElement {
  static override styles = [controls, css`
    :host { display: block; padding: 14px 16px 0; }
    .wrap { max-width: 1000px; margin: 0 auto; }
    header { display: flex; gap: var(--gap-2); align-items: center; }
    header h2 { flex: 1; }
    section { border-top: 1px solid var(--line); padding: var(--gap-4) 0; }
    section > h3 { margin-bottom: var(--gap-2); }
    .line { display: flex; flex-wrap: wrap; gap: var(--gap-3); align-items: end; }
    .ask { display: grid; gap: var(--gap-1); flex: 1 1 13em; max-width: 28em; }
    .ask > :is(input, select) { width: 100%; }
    .ask .short { max-width: 8em; }
    fieldset { border: 0; margin: 0; padding: 0; min-width: 0; }
    legend { padding: 0; margin-bottom: var(--gap-1); }
    .garments { display: grid; gap: var(--gap-2); grid-template-columns: repeat(auto-fill, minmax(min(100%, 240px), 1fr)); }
    .garments { margin-bottom: var(--gap-3); }
    .garments label { align-items: start; background: var(--sheet); border: 1px solid var(--line); border-radius: var(--round); padding: var(--gap-2) var(--gap-3); cursor: pointer; }
    .garments label:has(:checked) { border-color: var(--chalk); box-shadow: inset 3px 0 var(--chalk); }
    .garments input, .checks input { flex: none; margin: 2px 0 0; }
    .garments strong { display: block; }
    .checks { display: grid; gap: var(--gap-2); }
    .checks label { align-items: start; }
    .choice { display: flex; flex-wrap: wrap; gap: var(--gap-2) var(--gap-4); }
    details { margin-top: var(--gap-3); }
    summary { min-height: 24px; cursor: pointer; }
    details > * { box-sizing: border-box; }
    summary + * { margin-top: var(--gap-3); }
    footer { position: sticky; bottom: 0; background: var(--paper); border-top: 1px solid var(--line); padding: var(--gap-3) 0; display: flex; flex-wrap: wrap; gap: var(--gap-2); justify-content: flex-end; align-items: center; }
    footer p { flex: 1 1 14em; margin: 0; }
    .wrong { color: var(--pin); font-size: var(--size-small); }
    .old { white-space: pre-line; }
  `];

  @property({ attribute: false }) people: readonly StartPerson[] = [];
  @property({ attribute: false }) garments: readonly StartGarment[] = [];
  @property({ attribute: false }) moreSheets: readonly { readonly id: string; readonly label: string }[] = [];
  @property() sentence = '';
  /** Today, ISO 8601. */
  @property() today = '';
  /** The other workbooks are still being looked through. */
  @property({ type: Boolean }) looking = false;

  @state() private key = '';
  @state() private name = '';
  @state() private child = false;
  @state() private years = '';
  @state() private garment = '';
  @state() private called = '';
  @state() private unit: 'cm' | 'in' = 'cm';
  @state() private both = true;
  @state() private typed: Typed = {};
  @state() private by = '';
  @state() private more: ReadonlySet<string> = new Set();
  @state() private takes = ALL_TAKEN;
  @state() private pressed = false;
  #chart: ChartReading | null = null;
  @query('tt-measure-fields') private needed!: MeasureFields;
  @query('tt-start-chart') private chart?: StartChart;

  override focus(): void {
    this.renderRoot.querySelector<HTMLElement>('#who')?.focus();
  }

  /** As it was before anything was typed. */
  clear(): void {
    Object.assign(this, { key: '', name: '', child: false, years: '', garment: '', called: '', typed: {}, by: '', more: new Set(), takes: ALL_TAKEN, pressed: false, sentence: '' });
    this.#chart = null;
  }

  override render(): TemplateResult {
    return html`<div class="wrap">
      <header><h2>Start my own</h2><button @click=${() => this.#send('tt-close', {})}>Close</button></header>
      <p class="soft">A new workbook, filled and worked out. What is open now stays as it is.</p>
      ${this.#who()}${this.#what()}${this.#unit()}${this.#measures()}${this.#chartPart()}${this.#before()}
      <footer>
        <p role="status">${this.sentence ? html`<span class="wrong">✕ ${this.sentence}</span>` : this.#missing() && this.pressed ? html`<span class="wrong">✕ ${this.#missing()}</span>` : ''}</p>
        <button @click=${() => this.#send('tt-close', {})}>Cancel</button>
        <button class="main" @click=${this.#start}>Start</button>
      </footer></div>`;
  }

  get #known(): StartPerson | undefined {
    return this.people.find(({ key }) => key === this.key);
  }

  get #chosen(): StartGarment | undefined {
    return this.garments.find(({ id }) => id === this.garment);
  }

  #who() {
    const known = this.#known;
    return html`<section aria-labelledby="h-who"><h3 id="h-who">1. Who is it for?</h3>
      <div class="line">
        <label class="ask" for="who">Person
          <select id="who" @change=${(event: Event) => this.#choose((event.target as HTMLSelectElement).value)}>
            <option value="" ?selected=${this.key === ''}>Somebody new</option>
            ${this.people.map(({ key, name, where }) => html`<option value=${key} ?selected=${key === this.key}>${name} · ${where}</option>`)}
          </select></label>
        ${known ? nothing : html`<label class="ask" for="name">Name <input id="name" maxlength="200" autocomplete="off" .value=${this.name} aria-invalid=${this.pressed && this.name.trim() === '' ? 'true' : 'false'} @input=${(event: Event) => { this.name = (event.target as HTMLInputElement).value; }}></label>`}
        <label><input type="checkbox" id="child" .checked=${this.child} @change=${(event: Event) => { this.child = (event.target as HTMLInputElement).checked; }}> A child</label>
        ${this.child ? html`<label class="ask" for="years">Age in years <input id="years" class="short" inputmode="numeric" maxlength="10" autocomplete="off" .value=${this.years} @input=${(event: Event) => { this.years = (event.target as HTMLInputElement).value; }}></label>` : nothing}
      </div>
      ${this.looking ? html`<p class="soft" role="status">Looking through the other workbooks for people…</p>` : nothing}
      ${this.child ? html`<p class="note">Children’s clothes have rules for cords, fire and small parts. The workbook gets a sheet of what to look at; it is no statement that a garment complies: local rules and licensed practice decide.</p>` : nothing}
    </section>`;
  }

  #what() {
    return html`<section><fieldset><legend><h3>2. Which garment?</h3></legend>
      <div class="garments">${this.garments.map(({ id, name, about }) => html`<label><input type="radio" name="garment" value=${id} .checked=${id === this.garment} @change=${() => this.#make(id)}><span><strong>${name}</strong><span class="soft">${about}</span></span></label>`)}</div></fieldset>
      <div class="line"><label class="ask" for="title">Call the workbook <input id="title" maxlength="200" autocomplete="off" placeholder=${this.#chosen?.name ?? 'Linen dress'} .value=${this.called} @input=${(event: Event) => { this.called = (event.target as HTMLInputElement).value; }}></label></div>
      <details><summary>Sheets to have besides</summary><div class="choice">${this.moreSheets.map(({ id, label }) => html`<label><input type="checkbox" .checked=${this.more.has(id)} @change=${() => this.#toggle(id)}> ${label}</label>`)}</div></details>
    </section>`;
  }

  #unit() {
    const unit = (value: 'cm' | 'in', words: string) => html`<label><input type="radio" name="unit" value=${value} .checked=${this.unit === value} @change=${() => { this.unit = value; }}> ${words}</label>`;
    return html`<section><fieldset><legend><h3>3. Which unit do you measure in?</h3></legend><div class="choice">${unit('cm', 'centimetres')}${unit('in', 'inches')}
      <label><input type="checkbox" .checked=${this.both} @change=${(event: Event) => { this.both = (event.target as HTMLInputElement).checked; }}> show the other beside it</label></div></fieldset>
      <p class="soft">A bare figure is read in that unit; with its own unit any figure can be typed, such as ${this.unit === 'cm' ? '36 1/2 in' : '92 cm'}.</p></section>`;
  }

  #measures() {
    const asks = this.#chosen?.asks ?? ['bust', 'waist', 'hip'];
    const rest = [...OFTEN, ...MEASURES.map(({ key }) => key)].filter((key, at, all) => all.indexOf(key) === at && !asks.includes(key));
    const last = this.#known?.newest ?? {};
    const own = Object.keys(last).filter((of) => !asks.includes(of) && !rest.includes(of));
    const fields = (of: readonly string[], needed: readonly string[]) => html`<tt-measure-fields .of=${of} .needed=${needed} .typed=${this.typed} .last=${last} .unit=${this.unit} ?pressed=${this.pressed}
      @tt-measure=${({ detail }: CustomEvent<{ of: string; raw: string }>) => { this.typed = { ...this.typed, [detail.of]: detail.raw }; }}></tt-measure-fields>`;
    return html`<section aria-labelledby="h-measures"><h3 id="h-measures">4. Measures</h3>
      ${this.#known ? html`<p class="soft">Hers as last taken. What you change becomes a new set of today; the old sets stay.</p>` : nothing}
      ${fields(asks, asks)}
      <details><summary>More measures, as far as you have them</summary>${fields([...rest, ...own], [])}</details>
      <div class="line"><label class="ask" for="by">Measured by <input id="by" maxlength="200" autocomplete="off" .value=${this.by} @input=${(event: Event) => { this.by = (event.target as HTMLInputElement).value; }}></label></div>
    </section>`;
  }

  #chartPart() {
    if (!this.#chosen?.chart) return nothing;
    return html`<section aria-labelledby="h-chart"><h3 id="h-chart">5. The pattern’s size chart</h3>
      <p class="soft">Without it the sheet Fit waits: bring the chart in later by the command “Size chart from a CSV file…”, under the name chart.</p>
      <tt-start-chart @tt-chart=${({ detail }: CustomEvent<{ reading: ChartReading | null }>) => { this.#chart = detail.reading; }}></tt-start-chart></section>`;
  }

  /** What worked last time, for her to take or leave. */
  #before() {
    const known = this.#known;
    const worked = known?.worked;
    if (!known || (!worked && known.notes === '')) return nothing;
    const offer = (take: Take, words: TemplateResult) => html`<label><input type="checkbox" .checked=${this.takes[take]} @change=${() => { this.takes = { ...this.takes, [take]: !this.takes[take] }; }}><span class="old">${words}</span></label>`;
    const levels = (list: Worked['ease']) => list.map(({ level, raw }) => `${level} ${raw}`).join(', ');
    return html`<section aria-labelledby="h-before"><h3 id="h-before">What worked last time</h3>
      ${worked ? html`<p class="soft">${worked.sizes.length ? `${worked.garment}, ${worked.day}: size ${levels(worked.sizes)}.` : `${worked.garment}, ${worked.day}.`} ${worked.remark}</p>` : nothing}
      <div class="checks">
        ${worked && worked.ease.length > 0 ? offer('ease', html`Ease she liked: ${levels(worked.ease)}`) : nothing}
        ${worked && worked.length !== '' ? offer('length', html`Length: ${worked.length}`) : nothing}
        ${worked && worked.alterations !== '' ? offer('alterations', html`Alterations, on a sheet to remember: ${worked.alterations}`) : nothing}
        ${known.notes !== '' ? offer('notes', html`Notes that carry over, on a sheet to remember: ${known.notes}`) : nothing}
      </div></section>`;
  }

  #choose(key: string) {
    this.key = key;
    const known = this.#known;
    this.child = known?.child ?? false;
    this.typed = known?.newest ?? {};
    this.takes = ALL_TAKEN;
  }

  #make(id: string) {
    this.garment = id;
  }

  #toggle(id: string) {
    const more = new Set(this.more);
    if (!more.delete(id)) more.add(id);
    this.more = more;
  }

  /** The first thing that is still to be told; empty when nothing is. */
  #missing(): string {
    if (!this.#known && this.name.trim() === '') return 'Type the name of the person.';
    const garment = this.#chosen;
    if (!garment) return 'Choose a garment.';
    const has = new Set(takenFrom(garment.asks, this.typed, this.unit).map(({ of }) => of));
    const missing = garment.asks.filter((of) => !has.has(of));
    return missing.length > 0 ? `For this garment these are needed: ${missing.join(', ')}.` : '';
  }

  #start() {
    this.pressed = true;
    if (this.#missing() !== '') {
      if (!this.#known && this.name.trim() === '') this.renderRoot.querySelector<HTMLElement>('#name')?.focus();
      else if (!this.#chosen) this.renderRoot.querySelector<HTMLElement>('[name=garment]')?.focus();
      else void this.updateComplete.then(() => this.needed.updateComplete).then(() => this.needed.goToFault());
      return;
    }
    for (const fields of this.renderRoot.querySelectorAll('tt-measure-fields')) {
      const folded = fields.closest('details');
      if (folded && takenFrom(fields.of, this.typed, this.unit).length < fields.of.filter((of) => (this.typed[of] ?? '').trim() !== '').length) folded.open = true;
      if (fields.goToFault()) return;
    }
    if (this.#chosen?.chart && this.chart?.goToDoubt()) {
      this.sentence = 'Look at the unit of the size chart, and tick that you have.';
      return;
    }
    const order = [...MEASURES.map(({ key }) => key), ...Object.keys(this.typed)].filter((of, at, all) => all.indexOf(of) === at);
    const started: Started = {
      key: this.#known?.key ?? null, name: this.name.trim(), child: this.child, years: this.child ? this.years.trim() : '', garment: this.garment, more: [...this.more],
      title: this.called.trim() || this.#chosen!.name, show: this.both ? 'both' : this.unit, measures: takenFrom(order, this.typed, this.unit), day: this.today, by: this.by.trim(),
      chart: this.#chosen?.chart ? this.#chart : null, takes: this.takes,
    };
    this.#send('tt-start', started);
  }

  #send(type: string, detail: unknown) {
    this.dispatchEvent(new CustomEvent(type, { detail, bubbles: true, composed: true }));
  }
}

declare global {
  interface HTMLElementTagNameMap { 'tt-start-own': StartOwnPanel }
}
