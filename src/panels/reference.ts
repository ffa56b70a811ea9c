import { LitElement, html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { controls } from '../look/index.ts';
import type { ShowAs } from '../quantities/index.ts';
import type { FunctionCard } from '../reckoning/index.ts';
import { facts, outcome, samples, source, type Tried } from './reference-card.ts';
import { ReferenceSearch } from './reference-search.ts';
import { referenceStyles } from './reference-styles.ts';

/** Sent with a formula to put into the selected cell; prevent it where it was refused, and say why by `sentence`. */
export type PutExampleEvent = CustomEvent<{ readonly formula: string; readonly needs: FunctionCard['needs'] }>;

/** Milliseconds after the last key before a formula is worked out. */
const PAUSE = 250;

const QUESTIONS: readonly string[] = ['how deep should pleats be', 'which size am I', 'round up to eighths', 'how much cloth to buy', 'average', 'is it empty'];

/**
 * Every function there is, found by what one wants, each with a formula that
 * works. Asks by `tt-try-example` {formula}, answered through `tried`, and by
 * `tt-put-example` {formula, needs}.
 */
@customElement('tt-reference')
export class ReferencePanel extends LitElement {
  static override styles = [controls, referenceStyles];

  @property({ attribute: false }) cards: readonly FunctionCard[] = [];
  @property({ attribute: false }) tried: Tried | null = null;
  @property({ attribute: false }) as: ShowAs = { system: 'own', inchStep: 8 };
  /** The selected cell, as "Fit B6"; empty where nothing can be put. */
  @property() place = '';
  /** The selected cell holds something already. */
  @property({ type: Boolean }) filled = false;
  /** Why the last formula could not be put. */
  @property() sentence = '';

  /** Closed, it draws nothing: the selected cell changes all the time. */
  @state() private shown = false;
  @state() private sought = '';
  @state() private chosen: FunctionCard | null = null;
  @state() private formula = '';
  /** On a narrow screen the card covers the list. */
  @state() private reading = false;

  @query('dialog') private dialog!: HTMLDialogElement;
  @query('input') private input!: HTMLInputElement;
  #search: ReferenceSearch | null = null;
  #timer: ReturnType<typeof setTimeout> | undefined;

  /** @param name a function to show at once */
  open(name?: string): void {
    const card = this.cards.find((each) => each.name === name);
    this.sought = '';
    this.shown = true;
    this.reading = card !== undefined;
    this.#choose(card ?? null);
    this.dialog.showModal();
    void this.updateComplete.then(() => {
      this.#reveal();
      if (card) this.#focusCard();
      else this.input.focus();
    });
  }

  close(): void {
    this.dialog.close();
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('cards')) this.#search = null;
  }

  override render(): TemplateResult {
    return html`<dialog aria-labelledby="title" @close=${this.#closed}>${this.shown ? this.#page() : nothing}</dialog>`;
  }

  #page() {
    const found = this.#found();
    return html`
      <header><h2 id="title">What functions are there</h2><button @click=${() => this.close()}>Close</button></header>
      <div class="sides ${this.reading ? 'reading' : ''}">
        <div class="side list">
          <div class="find"><input type="search" role="combobox" aria-label="What do you want to know?" placeholder="What do you want to know?" autocomplete="off" spellcheck="false"
            aria-expanded=${found.length > 0} aria-controls="found" aria-activedescendant=${this.chosen && found.includes(this.chosen) ? idOf(this.chosen) : nothing}
            .value=${this.sought} @input=${this.#sought} @keydown=${this.#key}></div>
          <div id="found" class="found" role="listbox" aria-label="Functions" ?hidden=${found.length === 0}>${this.#list(found)}</div>
          <p class="none soft" role="status">${this.#told(found)}</p>
        </div>
        <div class="side one">${this.chosen ? this.#card(this.chosen) : this.#welcome()}</div>
      </div>`;
  }

  #told(found: readonly FunctionCard[]): string {
    if (this.cards.length === 0) return 'The functions are known as soon as the sums are ready.';
    if (found.length === 0) return 'Nothing here has these words. Try one word, such as pleat, round or average.';
    return this.sought === '' ? `${found.length} functions` : found.length === 1 ? '1 function fits' : `${found.length} functions fit, the best first`;
  }

  #list(found: readonly FunctionCard[]) {
    if (this.sought !== '') return found.map((card) => this.#option(card));
    return topicsOf(found).map((topic) => html`<div role="group" aria-label=${topic}><h3 role="presentation">${topic}</h3>${found.filter((card) => card.topic === topic).map((card) => this.#option(card))}</div>`);
  }

  #option(card: FunctionCard) {
    return html`<button role="option" tabindex="-1" id=${idOf(card)} aria-selected=${card === this.chosen} @click=${() => this.#open(card)}>
      <b>${card.name}</b><span class="tells">${card.about}</span></button>`;
  }

  #card(card: FunctionCard) {
    const { formula, place } = this;
    const tried = this.tried?.formula === formula ? this.tried : null;
    return html`<div class="card" role="region" aria-labelledby="card-title">
      <button class="back" @click=${this.#back}>Back to the list</button>
      ${facts(card)}
      <div class="try">
        <label for="try">Try it</label>
        <textarea id="try" rows="1" spellcheck="false" autocapitalize="off" .value=${formula} @input=${this.#typed} @keydown=${this.#entered}></textarea>
        <div class="result" aria-live=${formula === card.example ? 'off' : 'polite'}>${outcome(tried, this.as)}</div>
        <div class="tools">
          <button class="main" ?disabled=${place === ''} @click=${this.#put}>Put it into ${place || 'the selected cell'}${this.filled ? ', in place of what is there' : ''}</button>
          ${formula === card.example ? nothing : html`<button @click=${() => this.#try(card.example)}>The example again</button>`}
        </div>
        ${this.sentence ? html`<p class="fault" role="alert">${this.sentence}</p>` : nothing}
        <p class="soft">Worked out on its own: it does not see your cells.</p>
      </div>
      ${samples(card)}
      ${source(card)}
    </div>`;
  }

  #welcome() {
    return html`<div class="card" role="region" aria-labelledby="card-title">
      <h3 id="card-title" class="plain">A function works something out</h3>
      <p>It has a name, and in brackets what goes in.</p>
      <p>Type what you want to know, in your own words, or choose from the list. Each function has an example that you can change and put into your sheet.</p>
      <h4>Such as</h4>
      <div class="tools">${QUESTIONS.map((question) => html`<button @click=${() => this.#ask(question)}>${question}</button>`)}</div>
      <h4>Topics</h4>
      <div class="tools topics">${topicsOf(this.cards).map((topic) => html`<button class="bare" @click=${() => this.#toTopic(topic)}>${topic}</button>`)}</div>
    </div>`;
  }

  #found(): readonly FunctionCard[] {
    this.#search ??= new ReferenceSearch(this.cards);
    return this.#search.find(this.sought);
  }

  #choose(card: FunctionCard | null): void {
    this.chosen = card;
    this.sentence = '';
    if (card) this.#try(card.example);
  }

  #open(card: FunctionCard): void {
    this.#choose(card);
    this.reading = true;
    void this.updateComplete.then(() => this.#focusCard());
  }

  #ask(question: string): void {
    this.sought = question;
    const [best] = this.#found();
    if (best) this.#open(best);
  }

  /** The list at its first function, whose card shows. */
  #toTopic(topic: string): void {
    this.sought = '';
    this.#choose(this.cards.find((card) => card.topic === topic) ?? null);
    void this.updateComplete.then(() => {
      this.#focusCard();
      this.renderRoot.querySelector('[aria-selected=true]')?.closest('[role=group]')?.scrollIntoView();
    });
  }

  #focusCard(): void {
    this.renderRoot.querySelector('.card')?.scrollTo(0, 0);
    this.renderRoot.querySelector<HTMLElement>('#card-title')?.focus();
  }

  #reveal(): void {
    this.renderRoot.querySelector('[aria-selected=true]')?.scrollIntoView({ block: 'nearest' });
  }

  #back(): void {
    this.reading = false;
    void this.updateComplete.then(() => {
      this.input.focus();
      this.#reveal();
    });
  }

  #sought(): void {
    this.sought = this.input.value;
    const found = this.#found();
    // What fits best shows at once, without a further key.
    this.#choose(this.sought === '' ? null : found[0] ?? null);
    this.renderRoot.querySelector('#found')?.scrollTo(0, 0);
  }

  #key(event: KeyboardEvent): void {
    if (event.isComposing) return;
    const found = this.#found();
    const at = this.chosen ? found.indexOf(this.chosen) : -1;
    const to = { ArrowDown: at + 1, ArrowUp: at < 0 ? found.length - 1 : at - 1, PageDown: Math.min(at + 8, found.length - 1), PageUp: Math.max(at - 8, 0) }[event.key];
    if (to !== undefined && found.length > 0) {
      event.preventDefault();
      this.#choose(found[(to + found.length) % found.length]!);
      void this.updateComplete.then(() => this.#reveal());
    } else if (event.key === 'Enter' && this.chosen) {
      event.preventDefault();
      this.#open(this.chosen);
    }
  }

  #typed(event: Event): void {
    this.formula = (event.target as HTMLTextAreaElement).value;
    this.sentence = '';
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => this.#send('tt-try-example', { formula: this.formula }), PAUSE);
  }

  /** A formula is one line: Enter works it out at once. */
  #entered(event: KeyboardEvent): void {
    if (event.key !== 'Enter' || event.isComposing) return;
    event.preventDefault();
    this.#try(this.formula);
  }

  #try(formula: string): void {
    clearTimeout(this.#timer);
    this.formula = formula;
    this.#send('tt-try-example', { formula });
  }

  #put(): void {
    if (this.#send('tt-put-example', { formula: this.formula, needs: this.chosen?.needs ?? [] })) this.close();
  }

  #closed(): void {
    clearTimeout(this.#timer);
    this.chosen = null;
    this.shown = false;
    this.#send('tt-close-reference', {});
  }

  #send(type: string, detail: unknown): boolean {
    return this.dispatchEvent(new CustomEvent(type, { detail, bubbles: true, composed: true, cancelable: true }));
  }
}

const topicsOf = (cards: readonly FunctionCard[]): readonly string[] => [...new Set(cards.map(({ topic }) => topic))];

const idOf = ({ name }: FunctionCard): string => `f-${name}`;

declare global {
  interface HTMLElementTagNameMap { 'tt-reference': ReferencePanel }
}
