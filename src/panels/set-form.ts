import { LitElement, html, nothing, type TemplateResult } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { controls } from '../look/index.ts';
import { MEASURES, MEASURE_GROUPS, spellingFault, type MeasureGroup } from '../people/index.ts';
import type { MeasureSet } from '../workbook/index.ts';
import './measure-fields.ts';
import { takenFrom, type MeasureFields, type Typed } from './measure-fields.ts';
import { peopleStyles } from './people-styles.ts';

/**
 * One set of measures, new or corrected. Asks by `tt-keep-set` (a `MeasureSet`;
 * id empty for a new one), `tt-remove-set` {id} and `tt-leave-set`.
 */
@customElement('tt-set-form')
export class SetForm extends LitElement {
  static override styles = [controls, peopleStyles];

  /** The set to correct; `null` for a new one. */
  @property({ attribute: false }) set: MeasureSet | null = null;
  /** What a new one begins with: the figures of the sheet, if she asked for them. */
  @property({ attribute: false }) begin: Typed = {};
  /** The newest figures, beside which a new one is typed. */
  @property({ attribute: false }) last: Typed = {};
  @property() today = '';
  @property() unit: 'cm' | 'in' = 'cm';

  @state() private typed: Typed = {};
  @state() private day = '';
  @state() private by = '';
  @state() private remark = '';
  @state() private bare: 'cm' | 'in' = 'cm';
  @state() private own: readonly string[] = [];
  @state() private ownName = '';
  @state() private sentence = '';
  @query('tt-measure-fields') private first!: MeasureFields;

  override connectedCallback(): void {
    super.connectedCallback();
    const { set } = this;
    this.typed = set ? Object.fromEntries(set.measures.map(({ of, raw }) => [of, raw])) : this.begin;
    this.day = set?.day ?? this.today;
    this.by = set?.by ?? '';
    this.remark = set?.remark ?? '';
    this.bare = this.unit;
    const known = new Set(MEASURES.map(({ key }) => key));
    this.own = Object.keys({ ...this.last, ...this.typed }).filter((of) => !known.has(of));
  }

  protected override firstUpdated(): void {
    void this.first.updateComplete.then(() => this.renderRoot.querySelector<HTMLElement>('#day')?.focus());
  }

  override render(): TemplateResult {
    const groups = Object.entries(MEASURE_GROUPS) as [MeasureGroup, string][];
    const fields = (of: readonly string[]) => html`<tt-measure-fields .of=${of} .typed=${this.typed} .last=${this.set ? {} : this.last} .unit=${this.bare}
      @tt-measure=${(event: CustomEvent<{ of: string; raw: string }>) => { event.stopPropagation(); this.typed = { ...this.typed, [event.detail.of]: event.detail.raw }; }}></tt-measure-fields>`;
    const field = (label: string, id: 'day' | 'by' | 'remark', type = 'text') => html`<label class="ask" for=${id}>${label} <input id=${id} type=${type} maxlength=${id === 'remark' ? 1000 : 200} autocomplete="off" .value=${this[id]} @input=${(event: Event) => { this[id] = (event.target as HTMLInputElement).value; }}></label>`;
    return html`<form aria-label=${this.set ? 'Correct this set of measures' : 'A new set of measures'} @submit=${this.#keep}>
      <h3>${this.set ? 'Correct this set' : 'A new set of measures'}</h3>
      <div class="tools">${field('Taken on', 'day', 'date')}${field('By whom', 'by')}</div>
      <div class="choice" role="radiogroup" aria-label="Bare figures are">${(['cm', 'in'] as const).map((unit) => html`<label><input type="radio" name="bare" .checked=${this.bare === unit} @change=${() => { this.bare = unit; }}> ${unit === 'cm' ? 'bare figures are centimetres' : 'bare figures are inches'}</label>`)}</div>
      ${groups.map(([group, title]) => {
        const of = MEASURES.filter((one) => one.group === group).map(({ key }) => key);
        return html`<details ?open=${group === 'main' || of.some((key) => (this.set ? this.typed : { ...this.last, ...this.typed })[key])}><summary>${title}</summary>${fields(of)}</details>`;
      })}
      <details ?open=${this.own.length > 0}><summary>Measures of your own</summary>${this.own.length ? fields(this.own) : nothing}
        <div class="tools"><label class="ask" for="own">Called <input id="own" maxlength="60" autocomplete="off" .value=${this.ownName} @input=${(event: Event) => { this.ownName = (event.target as HTMLInputElement).value; }} @keydown=${(event: KeyboardEvent) => { if (event.key === 'Enter') { event.preventDefault(); this.#addOwn(); } }}></label>
          <button type="button" @click=${this.#addOwn}>Add it</button></div></details>
      ${field('Remark', 'remark')}
      ${this.sentence ? html`<p class="fault" role="alert">✕ ${this.sentence}</p>` : nothing}
      <div class="tools"><button class="main">${this.set ? 'Keep the corrections' : 'Keep this set'}</button><button type="button" @click=${() => this.#send('tt-leave-set', {})}>Leave it</button>
        ${this.set ? html`<button type="button" @click=${() => this.#send('tt-remove-set', { id: this.set!.id })}>Remove this set</button>` : nothing}</div>
    </form>`;
  }

  #addOwn() {
    const fault = spellingFault(this.ownName, [...MEASURES.map(({ key }) => key), ...this.own]);
    this.sentence = fault ?? '';
    if (fault) return;
    this.own = [...this.own, this.ownName.trim()];
    this.ownName = '';
  }

  #keep(event: Event) {
    event.preventDefault();
    this.sentence = '';
    for (const fields of this.renderRoot.querySelectorAll('tt-measure-fields')) {
      const wrong = fields.of.some((of) => (this.typed[of] ?? '').trim() !== '' && takenFrom([of], this.typed, this.bare).length === 0);
      if (!wrong) continue;
      const folded = fields.closest('details');
      if (folded) folded.open = true;
      fields.goToFault();
      return;
    }
    const measures = takenFrom([...MEASURES.map(({ key }) => key), ...this.own], this.typed, this.bare);
    if (measures.length === 0) this.sentence = 'Type at least one measure: there is nothing to keep yet.';
    else if (!/^\d{4}-\d{2}-\d{2}$/.test(this.day)) this.sentence = 'Give the day on which the measures were taken.';
    else this.#send('tt-keep-set', { id: this.set?.id ?? '', day: this.day, by: this.by.trim(), remark: this.remark.trim(), measures } satisfies MeasureSet);
  }

  #send(type: string, detail: unknown) {
    this.dispatchEvent(new CustomEvent(type, { detail, bubbles: true, composed: true }));
  }
}

declare global {
  interface HTMLElementTagNameMap { 'tt-set-form': SetForm }
}
