import { LitElement, html, nothing, type TemplateResult } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { controls } from '../look/index.ts';
import type { ClashChoice } from '../people/index.ts';
import { pictureStyles } from '../pictures/index.ts';
import type { MeasureSet, Person } from '../workbook/index.ts';
import type { Typed } from './measure-fields.ts';
import { FEW, setsTable } from './people-sets.ts';
import { peopleStyles } from './people-styles.ts';
import './set-form.ts';

/** A cell that holds, or is called as, one of her measures. */
export interface StandingRow {
  readonly key: string;
  readonly name: string;
  readonly place: string;
  readonly now: string;
  readonly newest: string;
  readonly state: 'same' | 'older' | 'by hand' | 'named';
}

/** Somebody in another workbook of this device. */
export interface Elsewhere {
  readonly key: string;
  readonly name: string;
  /** "Linden tea dress: 2 sets, the newest of 3 November 2026". */
  readonly about: string;
  /** Who of this workbook it is, by the same id or the same name; empty for nobody. */
  readonly here: string;
  /** The same set told differently in both; what each says. */
  readonly clashes: readonly { readonly id: string; readonly what: string; readonly here: string; readonly there: string }[];
}

export interface PeopleView {
  readonly people: readonly { readonly id: string; readonly name: string }[];
  readonly id: string;
  readonly person: Person | null;
  /** The selected cell. */
  readonly place: string;
  readonly standing: readonly StandingRow[];
  /** `null` until she asks. */
  readonly elsewhere: readonly Elsewhere[] | null;
  /** Figures in cells called as measures are. */
  readonly inSheet: Typed;
  readonly newest: Typed;
  readonly unit: 'cm' | 'in';
  readonly today: string;
  readonly sentence: string;
  readonly readonly: boolean;
}

export interface TakePerson {
  readonly key: string;
  /** The record to join it to; empty for one of its own. */
  readonly into: string;
  readonly choices: Readonly<Record<string, ClashChoice>>;
}

const NO_VIEW: PeopleView = { people: [], id: '', person: null, place: '', standing: [], elsewhere: null, inSheet: {}, newest: {}, unit: 'cm', today: '', sentence: '', readonly: false };
const STATES: Readonly<Record<StandingRow['state'], string>> = {
  same: 'the newest figure', older: 'an older figure', 'by hand': 'typed over by hand since', named: 'typed by hand; the cell bears the measure’s name',
};

/**
 * People and their measures. Asks by `tt-person` {id}, `tt-add-person` {name},
 * `tt-change-person` {name, child, notes}, `tt-remove-person`, `tt-keep-set`,
 * `tt-remove-set`, `tt-put-measures` {names}, `tt-use-measures` {keys},
 * `tt-look-elsewhere`, `tt-take-person` (`TakePerson`), `tt-remove-worked` {id}, `tt-close`.
 */
@customElement('tt-people')
export class PeoplePanel extends LitElement {
  static override styles = [controls, pictureStyles, peopleStyles];

  @property({ attribute: false }) view: PeopleView = NO_VIEW;
  @property({ attribute: false }) day: (iso: string, short?: boolean) => string = (iso) => iso;

  @state() private form: { set: MeasureSet | null; begin: Typed } | null = null;
  @state() private opened: string | null = null;
  @state() private all = false;
  @state() private adding = '';
  @state() private names = true;
  @state() private ticked: ReadonlySet<string> | null = null;
  @state() private choices: Readonly<Record<string, ClashChoice>> = {};
  @state() private removing = false;
  @query('#name') private nameField!: HTMLElement | null;

  override focus(): void {
    this.renderRoot.querySelector<HTMLElement>('#who, #new')?.focus();
  }

  /** What was asked for in a form is done: it closes. */
  done(): void {
    this.form = null;
    this.ticked = null;
  }

  override render(): TemplateResult {
    const { view } = this;
    return html`
      <header><h2>People</h2><button @click=${() => this.#send('tt-close', {})}>Close</button></header>
      ${view.sentence ? html`<p class="fault" role="alert">✕ ${view.sentence}</p>` : nothing}
      ${this.#choice()}
      ${view.person ? this.#one(view.person) : html`<p class="soft">A person keeps her measures by day, notes that carry over, and what worked; a new set of measures keeps the old ones.</p>`}
      ${this.#elsewhere()}`;
  }

  #choice() {
    const { people, id, readonly, inSheet } = this.view;
    return html`<div class="tools">
      ${people.length > 0 ? html`<label class="ask" for="who">Person <select id="who" @change=${(event: Event) => { this.done(); this.opened = null; this.removing = false; this.#send('tt-person', { id: (event.target as HTMLSelectElement).value }); }}>
        ${people.map((one) => html`<option value=${one.id} ?selected=${one.id === id}>${one.name}</option>`)}</select></label>` : nothing}
      ${readonly ? nothing : html`<form class="ask" @submit=${(event: Event) => { event.preventDefault(); this.#send('tt-add-person', { name: this.adding.trim() }); this.adding = ''; }}>
        <label class="ask" for="new">${people.length ? 'Somebody else' : 'Name of the person'} <input id="new" maxlength="200" autocomplete="off" .value=${this.adding} @input=${(event: Event) => { this.adding = (event.target as HTMLInputElement).value; }}></label>
        <button ?disabled=${this.adding.trim() === ''}>Add this person</button></form>`}
    </div>${people.length === 0 && Object.keys(inSheet).length > 0 ? html`<p class="soft">The sheets hold measures in cells with names (${Object.keys(inSheet).length}): once the person is added, they can be taken as her first set.</p>` : nothing}`;
  }

  #one(person: Person) {
    const { readonly } = this.view;
    const change = (more: Partial<Person>) => this.#send('tt-change-person', { name: person.name, child: person.child, notes: person.notes, ...more });
    return html`
      <section aria-label="About ${person.name}">
        <div class="tools"><label class="ask" for="name">Name <input id="name" maxlength="200" autocomplete="off" .value=${person.name} ?disabled=${readonly} @change=${(event: Event) => {
          const name = (event.target as HTMLInputElement).value.trim();
          if (name !== '') change({ name });
          else if (this.nameField) (this.nameField as HTMLInputElement).value = person.name;
        }}></label>
          <label><input type="checkbox" id="child" .checked=${person.child} ?disabled=${readonly} @change=${(event: Event) => change({ child: (event.target as HTMLInputElement).checked })}> A child</label></div>
        ${person.child ? html`<p class="note">A child’s garment has cords, fire and small parts to look at: start the sheet “Child’s garment: what to check” from a template. Nothing here says that a garment complies; local rules and licensed practice decide. Children grow: measure again before you cut.</p>` : nothing}
        <label class="ask" for="notes">Notes that carry over to every garment <textarea id="notes" rows="3" maxlength="5000" placeholder="always a narrow shoulder, 1 cm; likes below the knee" .value=${person.notes} ?disabled=${readonly} @change=${(event: Event) => change({ notes: (event.target as HTMLTextAreaElement).value })}></textarea></label>
      </section>
      ${this.#measures(person)}${this.#inTheSheet(person)}${this.#worked(person)}
      ${readonly ? nothing : html`<section aria-label="Take ${person.name} out"><div class="tools">
        ${this.removing ? html`<p class="note" role="alert">Her measures, notes and what worked leave this workbook; the cells of the sheets stay, and other workbooks keep theirs. Undo brings her back.</p>
          <button @click=${() => { this.removing = false; this.#send('tt-remove-person', {}); }}>Take her out</button><button @click=${() => { this.removing = false; }}>Leave it</button>`
        : html`<button @click=${() => { this.removing = true; }}>Take ${person.name} out of this workbook…</button>`}</div></section>`}`;
  }

  #measures(person: Person) {
    const { view, form } = this;
    const short = (iso: string) => this.day(iso, true);
    return html`<section aria-labelledby="h-measures"><h3 id="h-measures">Measures</h3>
      ${form ? html`<tt-set-form .set=${form.set} .begin=${form.begin} .last=${view.newest} .today=${view.today} .unit=${view.unit} @tt-leave-set=${() => { this.form = null; }}></tt-set-form>` : html`
        ${person.sets.length === 0 ? html`<p class="soft">No measures yet.</p>` : setsTable(person, this.all, this.opened, short, { open: (of) => { this.opened = of; }, correct: (set) => { this.form = { set, begin: {} }; } }, view.readonly)}
        <div class="tools">
          ${view.readonly ? nothing : html`<button class="main" @click=${() => { this.form = { set: null, begin: {} }; }}>New set of measures…</button>
            ${Object.keys(view.inSheet).length ? html`<button @click=${() => { this.form = { set: null, begin: view.inSheet }; }}>New set from the sheet’s figures…</button>` : nothing}`}
          ${person.sets.length > FEW ? html`<button aria-pressed=${this.all} @click=${() => { this.all = !this.all; }}>All ${person.sets.length} sets</button>` : nothing}</div>`}
    </section>`;
  }

  #inTheSheet(person: Person) {
    const { standing, place, readonly } = this.view;
    if (person.sets.length === 0) return nothing;
    const open = standing.filter(({ state }) => state !== 'same');
    const ticked = this.ticked ?? new Set(open.filter(({ state }) => state === 'older').map(({ key }) => key));
    return html`<section aria-labelledby="h-sheet"><h3 id="h-sheet">In the sheets</h3>
      ${standing.length > 0 && open.length === 0 ? html`<p>✓ ${standing.length} cells hold her newest figures.</p>` : nothing}
      ${open.length > 0 ? html`<div class="scroll" role="region" aria-label="Cells that do not hold the newest figure" tabindex="0"><table><caption>Not the newest figure</caption>
        <thead><tr><th scope="col">Use</th><th scope="col" class="words">Cell</th><th scope="col">Now</th><th scope="col">Newest</th></tr></thead>
        <tbody>${open.map((row) => html`<tr><td><input type="checkbox" aria-label="Use the newest ${row.name} in ${row.place}" .checked=${ticked.has(row.key)} ?disabled=${readonly} @change=${() => {
          const next = new Set(ticked);
          if (!next.delete(row.key)) next.add(row.key);
          this.ticked = next;
        }}></td><th scope="row">${row.name}<small>${row.place}, ${STATES[row.state]}</small></th><td>${row.now || '–'}</td><td>${row.newest}</td></tr>`)}</tbody></table></div>
        ${readonly ? nothing : html`<div class="tools"><button class="main" ?disabled=${ticked.size === 0} @click=${() => this.#send('tt-use-measures', { keys: [...ticked] })}>Use the new measures</button></div>`}` : nothing}
      ${readonly ? nothing : html`<details ?open=${standing.length === 0}><summary>Put the measures into a sheet</summary>
        <p class="soft">Labels go below the selected cell, the figures beside them as cells to fill in. Select the place in the sheet first.</p>
        <div class="tools"><label><input type="checkbox" id="names" .checked=${this.names} @change=${(event: Event) => { this.names = (event.target as HTMLInputElement).checked; }}> with names for formulas, such as =waist</label></div>
        <div class="tools"><button class=${standing.length === 0 ? 'main' : ''} @click=${() => this.#send('tt-put-measures', { names: this.names })}>Put the measures at ${place}</button></div></details>`}
    </section>`;
  }

  #worked(person: Person) {
    if (person.worked.length === 0) return nothing;
    const levels = (list: readonly { readonly level: string; readonly raw: string }[]) => list.map(({ level, raw }) => `${level} ${raw}`).join(', ');
    return html`<section aria-labelledby="h-worked"><h3 id="h-worked">What worked</h3><ul class="list">${[...person.worked].reverse().map((one) => html`<li>
      <strong>${one.garment}</strong>, ${this.day(one.day)}
      ${one.sizes.length ? html`<p>Size: ${levels(one.sizes)}</p>` : nothing}${one.ease.length ? html`<p>Ease she liked: ${levels(one.ease)}</p>` : nothing}
      ${one.length ? html`<p>Length: ${one.length}</p>` : nothing}${one.alterations ? html`<p>${one.alterations}</p>` : nothing}${one.remark ? html`<p class="soft">${one.remark}</p>` : nothing}
      ${this.view.readonly ? nothing : html`<div class="tools"><button class="small" aria-label="Remove what worked on ${one.garment}" @click=${() => this.#send('tt-remove-worked', { id: one.id })}>Remove</button></div>`}</li>`)}</ul></section>`;
  }

  #elsewhere() {
    const { elsewhere, readonly } = this.view;
    if (readonly) return nothing;
    return html`<section aria-labelledby="h-else"><h3 id="h-else">From other workbooks</h3>
      ${elsewhere === null ? html`<div class="tools"><button @click=${() => this.#send('tt-look-elsewhere', {})}>Look for people in the other workbooks of this device…</button></div>`
      : elsewhere.length === 0 ? html`<p role="status" class="soft">No other workbook on this device holds a person or named measures.</p>`
      : html`<ul class="list">${elsewhere.map((one) => this.#other(one))}</ul>`}</section>`;
  }

  #other(one: Elsewhere) {
    const here = this.view.people.find(({ id }) => id === one.here);
    const choice = (id: string, value: ClashChoice, words: string) => html`<label><input type="radio" name=${`clash ${one.key} ${id}`} .checked=${(this.choices[id] ?? 'both') === value} @change=${() => { this.choices = { ...this.choices, [id]: value }; }}> ${words}</label>`;
    return html`<li><strong>${one.name}</strong><p class="soft">${one.about}</p>
      ${here ? one.clashes.map((clash) => html`<fieldset><legend>${clash.what} differs</legend><p class="soft">here: ${clash.here}; there: ${clash.there}</p>
        <div class="choice">${choice(clash.id, 'both', 'keep both')}${choice(clash.id, 'here', 'keep the one here')}${choice(clash.id, 'there', 'take the one there')}</div></fieldset>`) : nothing}
      <div class="tools">${here ? html`<button class="main" @click=${() => this.#take(one, here.id)}>Join to ${here.name} here</button>` : nothing}
        <button @click=${() => this.#take(one, '')}>${here ? 'Take as somebody else' : `Take ${one.name} into this workbook`}</button></div></li>`;
  }

  #take(one: Elsewhere, into: string) {
    this.#send('tt-take-person', { key: one.key, into, choices: this.choices } satisfies TakePerson);
    this.choices = {};
  }

  #send(type: string, detail: unknown) {
    this.dispatchEvent(new CustomEvent(type, { detail, bubbles: true, composed: true }));
  }
}

declare global {
  interface HTMLElementTagNameMap { 'tt-people': PeoplePanel }
}
