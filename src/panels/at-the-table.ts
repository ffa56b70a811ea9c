import { LitElement, css, html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, query } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import { controls } from '../look/index.ts';
import { pictureStyles } from '../pictures/index.ts';
import type { ShowAs } from '../quantities/index.ts';
import type { Result, WorkingCall } from '../reckoning/index.ts';
import type { Awake, TableStep } from './at-the-table-parts.ts';
import { pictureOf } from './picture-of.ts';

/** A finger that goes so far across, and at least twice as far as up or down, turns to another step. */
const SWIPE = 60;

const AWAKE: Readonly<Record<Awake, string>> = {
  on: 'The screen stays on while this is open.',
  cannot: 'This browser cannot keep the screen on: let it stay on longer in the device’s own settings.',
  refused: 'The device does not keep the screen on just now, perhaps to spare its battery.',
};

/**
 * One step after another, to be read at arm’s length, over the whole window.
 * Asks by `tt-step` {at}, `tt-tick` {id, on} and `tt-close`.
 */
@customElement('tt-at-the-table')
export class AtTheTablePanel extends LitElement {
  static override styles = [controls, pictureStyles, css`
    :host { display: block; }
    dialog { width: 100vw; max-width: 100vw; height: 100dvh; max-height: 100dvh; margin: 0; border: 0; border-radius: 0; overflow: hidden; }
    dialog[open] { display: grid; grid-template: auto minmax(0, 1fr) auto / minmax(0, 1fr); }
    dialog > header { flex-wrap: wrap; gap: var(--gap-1) var(--gap-3); padding: var(--gap-2) var(--gap-4); }
    dialog > header h2 { flex: 1 1 8em; font-size: 1rem; min-width: 0; overflow: hidden; text-overflow: ellipsis; white-space: nowrap; }
    .where { display: grid; grid-template-columns: minmax(0, 1fr) auto; align-items: center; gap: var(--gap-2); flex: 1 1 100%; min-width: 0; }
    .where select { min-width: 0; width: 100%; min-height: 44px; font-size: 1rem; }
    .where span { white-space: nowrap; font-size: 1rem; }
    header button { min-height: 44px; padding-inline: 18px; }
    progress { flex: 1 1 100%; width: 100%; height: 8px; accent-color: var(--leaf); }
    .step { overflow-y: auto; padding: var(--gap-4) clamp(16px, 4vw, 48px) var(--gap-5); touch-action: pan-y; }
    .step:focus-visible { outline-offset: -3px; }
    .inside { max-width: 1080px; margin: 0 auto; }
    h3 { font-size: clamp(1.6rem, 5.2vw, 2.7rem); line-height: 1.15; overflow-wrap: anywhere; }
    .part { margin: 0 0 2px; font-size: clamp(1rem, 2.6vw, 1.25rem); color: var(--soft); }
    .figures { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(15rem, 100%), 1fr)); gap: var(--gap-4) var(--gap-5); margin: var(--gap-5) 0; padding: 0; list-style: none; }
    .head { flex: 1 1 100%; font-size: clamp(1.1rem, 3vw, 1.4rem); color: var(--soft); }
    .figures li { display: flex; flex-wrap: wrap; align-items: baseline; align-content: start; gap: 0 0.9rem; }
    .big { font-weight: 700; font-size: clamp(2.6rem, 7vw, 3.6rem); line-height: 1.1; overflow-wrap: anywhere; }
    .big.figure, .big.typed, .also { white-space: nowrap; }
    .big.typed { text-decoration: underline dashed 2px; text-underline-offset: 0.14em; text-decoration-color: var(--thread); }
    .big.text, .big.error { font-size: clamp(1.6rem, 5vw, 2.4rem); line-height: 1.2; }
    .also { font-weight: 600; font-size: clamp(1.7rem, 5vw, 2.3rem); line-height: 1.2; }
    .one .big { font-size: clamp(3.2rem, 14vw, 6.6rem); }
    .one .also { font-size: clamp(2rem, 8vw, 3.8rem); }
    .remark, .words li, .cautions li { font-size: clamp(1.15rem, 3vw, 1.5rem); line-height: 1.4; overflow-wrap: anywhere; }
    .cautions, .words { margin: var(--gap-4) 0; padding: var(--gap-3) var(--gap-4); list-style: none; display: grid; gap: var(--gap-3); }
    .cautions { background: var(--pin-wash); border: 2px solid var(--pin); border-radius: var(--round); }
    .cautions li::before { content: '⚠ '; color: var(--pin); }
    .words { padding-inline: 0; }
    .changed { font-size: clamp(1.15rem, 3vw, 1.5rem); background: var(--thread-wash); border: 2px dashed var(--thread); border-radius: var(--round); padding: var(--gap-3) var(--gap-4); }
    .said { font-size: 1rem; color: var(--soft); margin: var(--gap-5) 0 0; }
    figure { margin: var(--gap-4) 0; }
    figure .tt-picture { display: block; width: 100%; max-width: none; height: auto; max-height: 80vh; }
    .turn { display: grid; grid-template-columns: 1fr 1.2fr 1fr; gap: var(--gap-2); padding: var(--gap-3) clamp(12px, 3vw, 32px); border-top: 1px solid var(--rule); background: var(--tissue); }
    .turn button { min-height: 68px; font-size: clamp(1.1rem, 3.4vw, 1.5rem); font-weight: 600; padding-inline: 6px; }
    .turn button[aria-pressed='true'] { background: var(--leaf); border-color: var(--leaf); color: var(--paper); }
    .aloud { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
    @media (max-height: 480px) {
      progress, .said { display: none; }
      .turn button { min-height: 48px; }
      .step { padding-block: var(--gap-2); }
      .figures { margin: var(--gap-2) 0; }
    }
    @media (max-height: 400px) { dialog > header, .turn { position: static; } }
  `];

  @property({ attribute: false }) steps: readonly TableStep[] = [];
  @property({ type: Number }) at = 0;
  /** The workbook's. Not an attribute, so that no tip hangs on the element. */
  @property({ attribute: false }) override title = '';
  @property() person = '';
  @property() awake: Awake = 'cannot';
  /** Why the last tick could not be kept. */
  @property() sentence = '';
  /** The picture of the step in view. */
  @property({ attribute: false }) call: WorkingCall | null = null;
  @property({ attribute: false }) result: Result = { kind: 'empty' };
  @property({ attribute: false }) as: ShowAs = { system: 'both', inchStep: 8 };
  /** Nothing can be ticked. */
  @property({ type: Boolean }) readonly = false;

  @query('dialog') private dialog!: HTMLDialogElement;
  @query('.step') private page!: HTMLElement;

  #from: { readonly x: number; readonly y: number; readonly pointer: number } | null = null;

  override focus(options?: FocusOptions): void {
    this.page.focus(options);
  }

  override render(): TemplateResult {
    const { steps, at } = this;
    const step = steps[at];
    const ticked = steps.filter(({ tick }) => tick !== null);
    const done = ticked.filter(({ state }) => state.state === 'yes').length;
    return html`<dialog aria-label="At the table" @keydown=${this.#key} @cancel=${this.#cancel} @close=${this.#closed}>
      <header>
        <h2>${this.title}${this.person ? html` <span class="soft">for ${this.person}</span>` : nothing}</h2>
        <button @click=${() => this.dialog.close()}>Close</button>
        <div class="where">
          <select aria-label="Step" @change=${(event: Event) => this.#go(Number((event.target as HTMLSelectElement).value))}>${this.#parts()}</select>
          <span>${at + 1} of ${steps.length}</span>
        </div>
        <progress max=${ticked.length || 1} value=${done} aria-label="Ticked off: ${done} of ${ticked.length}"></progress>
      </header>
      <div class="step" tabindex="0" role="group" aria-label=${step ? `${step.part}: ${step.title}` : 'Nothing to do'} @pointerdown=${this.#down} @pointerup=${this.#up} @pointercancel=${() => { this.#from = null; }}>
        <div class="inside">${step ? this.#step(step) : html`<p class="remark">This workbook has nothing to cut by yet: no cell has both a result and words beside it.</p>`}
          <p class="said">${done} of ${ticked.length} ticked off. ${AWAKE[this.awake]}</p>
        </div>
      </div>
      <div class="turn">
        <button @click=${() => this.#go(at - 1)} ?disabled=${at === 0}>‹ Back</button>
        ${step?.tick ? html`<button aria-pressed=${step.state.state === 'yes'} ?disabled=${this.readonly} @click=${() => this.#tick(step)}>${step.state.state === 'yes' ? '✓ ' : '☐ '}${step.tick}</button>` : html`<span></span>`}
        <button class="main" @click=${() => this.#go(at + 1)} ?disabled=${at >= steps.length - 1}>Next ›</button>
      </div>
      <p class="aloud" role="status">${step ? this.#spoken(step) : nothing}</p>
    </dialog>`;
  }

  protected override firstUpdated(): void {
    this.dialog.showModal();
  }

  protected override updated(changed: PropertyValues): void {
    if (changed.has('at')) this.page.scrollTop = 0;
  }

  #parts(): TemplateResult[] {
    const parts = new Map<string, { readonly step: TableStep; readonly at: number }[]>();
    this.steps.forEach((step, at) => parts.set(step.part, [...(parts.get(step.part) ?? []), { step, at }]));
    return [...parts].map(([part, steps]) => html`<optgroup label=${part}>${repeat(steps, ({ step }) => step.id, ({ step, at }) =>
      html`<option value=${at} .selected=${at === this.at}>${step.state.state === 'yes' ? '✓ ' : step.state.state === 'changed' ? '⚠ ' : ''}${step.title}</option>`)}</optgroup>`);
  }

  #step({ part, from, title, figures, remark, cautions, words, state }: TableStep): TemplateResult {
    const picture = this.call && pictureOf(this.call, this.result, this.as);
    return html`
      <p class="part">${from && from !== part ? `${part}, ${from}` : part}</p>
      <h3>${title}</h3>
      ${this.sentence ? html`<p class="fault" role="alert">${this.sentence}</p>` : nothing}
      ${state.state === 'changed' ? html`<p class="changed">⚠ It was ticked off when it was ${state.was}. Its figures are others now: look again.</p>` : nothing}
      ${cautions.length > 0 ? html`<ul class="cautions" aria-label="Look at this first">${cautions.map((text) => html`<li>${text}</li>`)}</ul>` : nothing}
      ${figures.length > 0 ? html`<ul class="figures ${figures.length === 1 ? 'one' : ''}">${figures.map(({ head, main, also, kind }) => html`<li>
        ${head ? html`<span class="head">${head}</span>` : nothing}<span class="big ${kind}">${main}</span>${also ? html`<span class="also">${also}</span>` : nothing}</li>`)}</ul>` : nothing}
      ${remark ? html`<p class="remark">${remark}</p>` : nothing}
      ${words.length > 0 ? html`<ul class="words">${words.map((text) => html`<li>${text}</li>`)}</ul>` : nothing}
      ${picture ? html`<figure>${picture}</figure>` : nothing}`;
  }

  #spoken({ title, figures, cautions, state, tick }: TableStep): string {
    const parts = [`${this.at + 1} of ${this.steps.length}: ${title}`, ...figures.map(({ head, main, also }) => [head, main, also ? `(${also})` : ''].filter(Boolean).join(' '))];
    if (cautions.length > 0) parts.push(cautions.length === 1 ? 'one thing to look at first' : `${cautions.length} things to look at first`);
    if (tick && state.state === 'yes') parts.push('ticked off');
    return `${parts.join('; ')}.`;
  }

  #tick({ id, state }: TableStep): void {
    this.#send('tt-tick', { id, on: state.state !== 'yes' });
  }

  #go(at: number): void {
    if (at >= 0 && at < this.steps.length && at !== this.at) this.#send('tt-step', { at });
  }

  readonly #key = (event: KeyboardEvent): void => {
    if (event.altKey || event.ctrlKey || event.metaKey || event.shiftKey) return;
    const [target] = event.composedPath();
    if (target instanceof HTMLSelectElement) return;
    const to = ({ ArrowRight: this.at + 1, PageDown: this.at + 1, ArrowLeft: this.at - 1, PageUp: this.at - 1, Home: 0, End: this.steps.length - 1 } as Partial<Record<string, number>>)[event.key];
    const step = this.steps[this.at];
    if (to !== undefined) this.#go(to);
    // On a button these keys press it.
    else if ((event.key === ' ' || event.key === 'Enter') && target === this.page && step?.tick && !this.readonly) this.#tick(step);
    else return;
    event.preventDefault();
  };

  readonly #down = (event: PointerEvent): void => {
    this.#from = event.pointerType === 'mouse' || !event.isPrimary ? null : { x: event.clientX, y: event.clientY, pointer: event.pointerId };
  };

  readonly #up = (event: PointerEvent): void => {
    const from = this.#from;
    this.#from = null;
    if (!from || from.pointer !== event.pointerId) return;
    const [across, down] = [event.clientX - from.x, event.clientY - from.y];
    if (Math.abs(across) >= SWIPE && Math.abs(across) >= 2 * Math.abs(down)) this.#go(this.at + (across < 0 ? 1 : -1));
  };

  /** Escape closes once, whoever hears it first. */
  readonly #cancel = (event: Event): void => {
    event.preventDefault();
    this.dialog.close();
  };

  readonly #closed = (): void => {
    if (this.isConnected) this.#send('tt-close');
  };

  #send(type: string, detail?: unknown): void {
    this.dispatchEvent(new CustomEvent(type, { detail, bubbles: true, composed: true }));
  }
}

declare global {
  interface HTMLElementTagNameMap { 'tt-at-the-table': AtTheTablePanel }
}
