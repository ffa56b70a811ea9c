import { LitElement, html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { controls } from '../look/index.ts';
import type { Worked } from '../workbook/index.ts';
import { peopleStyles } from './people-styles.ts';

/** What a garment's workbook says of itself, to begin with. */
export interface WorkedBegin {
  readonly garment: string;
  readonly day: string;
  readonly sizes: Worked['sizes'];
  readonly ease: Worked['ease'];
  readonly length: string;
}

export interface WorkedAsked {
  /** The person's record; empty for somebody new. */
  readonly person: string;
  readonly name: string;
  readonly worked: Worked;
}

const LEVELS = ['bust', 'waist', 'hip'] as const;
const NOTHING: WorkedBegin = { garment: '', day: '', sizes: [], ease: [], length: '' };

/**
 * What worked on this garment, to be offered when the next one is started. A
 * field takes what the selected cell shows. Asks by `tt-keep-worked`
 * (`WorkedAsked`) and `tt-close`.
 */
@customElement('tt-worked-form')
export class WorkedForm extends LitElement {
  static override styles = [controls, peopleStyles];

  @property({ attribute: false }) people: readonly { readonly id: string; readonly name: string }[] = [];
  /** For whom the workbook is. */
  @property() whom = '';
  @property({ attribute: false }) begin: WorkedBegin = NOTHING;
  /** The selected cell, and what it shows. */
  @property() place = '';
  @property() shown = '';
  @property() sentence = '';

  @state() private person = '';
  @state() private name = '';
  @state() private fields: Readonly<Record<string, string>> = {};
  @state() private missing = '';

  /** Anew, from what the sheets say. */
  start(): void {
    const { begin } = this;
    this.person = (this.people.find(({ name }) => name === this.whom) ?? this.people[0])?.id ?? '';
    this.name = this.whom;
    this.missing = '';
    const at = (list: Worked['sizes'], level: string) => list.find((one) => one.level === level)?.raw ?? '';
    this.fields = {
      garment: begin.garment, day: begin.day, length: begin.length,
      ...Object.fromEntries(LEVELS.flatMap((level) => [[`size ${level}`, at(begin.sizes, level)], [`ease ${level}`, at(begin.ease, level)]])),
    };
  }

  override focus(): void {
    this.start();
    void this.updateComplete.then(() => this.renderRoot.querySelector<HTMLElement>('select, input')?.focus());
  }

  override render(): TemplateResult {
    const field = (key: string, label: string, take: boolean, type = 'text') => html`<div class="ask"><label for=${key.replace(' ', '-')}>${label}</label>
      <input id=${key.replace(' ', '-')} type=${type} maxlength="200" autocomplete="off" .value=${this.fields[key] ?? ''} @input=${(event: Event) => this.#set(key, (event.target as HTMLInputElement).value)}>
      ${take && this.shown !== '' ? html`<button type="button" class="small" aria-label=${`${label}: take ${this.shown} from ${this.place}`} @click=${() => this.#set(key, this.shown)}>Take ${this.shown}</button>` : nothing}</div>`;
    const area = (key: string, label: string) => html`<label class="ask" for=${key}>${label} <textarea id=${key} rows="3" maxlength="5000" .value=${this.fields[key] ?? ''} @input=${(event: Event) => this.#set(key, (event.target as HTMLTextAreaElement).value)}></textarea></label>`;
    return html`
      <header><h2>What worked</h2><button @click=${() => this.#send('tt-close', {})}>Close</button></header>
      <p class="soft">Kept with the person, and offered when the next garment is started for her. Select a cell to take what it shows into a field.</p>
      <form aria-label="What worked on this garment" @submit=${this.#keep}>
        ${this.people.length > 0 ? html`<label class="ask" for="whom">Person <select id="whom" @change=${(event: Event) => { this.person = (event.target as HTMLSelectElement).value; }}>
          ${this.people.map(({ id, name }) => html`<option value=${id} ?selected=${id === this.person}>${name}</option>`)}<option value="" ?selected=${this.person === ''}>Somebody new</option></select></label>` : nothing}
        ${this.person === '' ? html`<label class="ask" for="new-name">Name <input id="new-name" maxlength="200" autocomplete="off" .value=${this.name} @input=${(event: Event) => { this.name = (event.target as HTMLInputElement).value; }}></label>` : nothing}
        <div class="tools">${field('garment', 'Garment', false)}${field('day', 'Day', false, 'date')}</div>
        <fieldset><legend>Size that was cut</legend><div class="levels">${LEVELS.map((level) => field(`size ${level}`, `Size at the ${level}`, true))}</div></fieldset>
        <fieldset><legend>Ease she liked</legend><div class="levels">${LEVELS.map((level) => field(`ease ${level}`, `Ease at the ${level}`, true))}</div></fieldset>
        ${field('length', 'Finished length', true)}
        ${area('alterations', 'Alterations, one a line')}
        ${area('remark', 'Remark')}
        ${this.missing || this.sentence ? html`<p class="fault" role="alert">✕ ${this.missing || this.sentence}</p>` : nothing}
        <div class="tools"><button class="main">Keep what worked</button></div>
      </form>`;
  }

  #set(key: string, value: string) {
    this.fields = { ...this.fields, [key]: value };
  }

  #keep(event: Event) {
    event.preventDefault();
    const of = (key: string): string => (this.fields[key] ?? '').trim();
    const levels = (what: string) => LEVELS.flatMap((level) => (of(`${what} ${level}`) === '' ? [] : [{ level, raw: of(`${what} ${level}`) }]));
    this.missing = this.person === '' && this.name.trim() === '' ? 'Type the name of the person.' : of('garment') === '' ? 'Type which garment it was.' : of('day') === '' ? 'Give the day.' : '';
    if (this.missing !== '') return;
    this.#send('tt-keep-worked', {
      person: this.person, name: this.name.trim(),
      worked: { id: '', garment: of('garment'), day: of('day'), sizes: levels('size'), ease: levels('ease'), length: of('length'), alterations: of('alterations'), remark: of('remark') },
    } satisfies WorkedAsked);
  }

  #send(type: string, detail: unknown) {
    this.dispatchEvent(new CustomEvent(type, { detail, bubbles: true, composed: true }));
  }
}

declare global {
  interface HTMLElementTagNameMap { 'tt-worked-form': WorkedForm }
}
