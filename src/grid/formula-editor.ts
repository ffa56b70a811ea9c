/**
 * The one editor of what a cell holds, used over the cell and in the entry
 * line: a text area with a coloured copy of its text underneath, a list of
 * words to complete, and the signature of the function being typed.
 *
 * The text area owns the text and the caret; this controller reads them after
 * every change and never binds a value, so that an input method's composition
 * is never disturbed. It is a textbox with a suggestion list by WAI-ARIA:
 * `aria-activedescendant` on the text area names the chosen option.
 */
import { html, nothing, type LitElement, type ReactiveController, type TemplateResult } from 'lit';
import { isFormula, tokenize } from '../formula/index.ts';
import { complete, signatureAt, take, type Completion, type Signature, type Words } from './completion.ts';
import { slotAt, type Slot } from './pointing.ts';
import { placeHelper } from './place-helper.ts';

export type EditorHost = LitElement & Words;

export class FormulaEditor implements ReactiveController {
  /** True from `start` to `stop`. */
  active = false;
  #completion: Completion | null = null;
  /** Index of the chosen option; -1: none, so that Enter keeps what is typed. */
  #chosen = -1;
  #signature: Signature | null = null;
  /** The reference that was pointed at last, while the caret stays behind it. */
  #pointed: Slot | null = null;
  #wasActive = false;
  #helper: HTMLElement | null = null;

  constructor(
    private readonly host: EditorHost,
    private readonly field: () => HTMLTextAreaElement | null,
    /** Called after a change that came from here and not from a key. */
    private readonly changed: () => void,
  ) {
    host.addController(this);
  }

  get text(): string {
    return this.field()?.value ?? '';
  }

  get listOpen(): boolean {
    return this.#completion !== null;
  }

  /** The function in whose brackets the caret is. */
  get called(): string | null {
    return this.#signature?.card.name ?? null;
  }

  get isFormula(): boolean {
    return isFormula(this.text);
  }

  /** Opens on a text, with the caret at its end. */
  start(text: string): void {
    const field = this.field();
    if (!field) return;
    this.active = true;
    if (field.value !== text) field.value = text;
    field.setSelectionRange(text.length, text.length);
    this.#settle();
  }

  stop(): void {
    this.active = false;
    this.#completion = null;
    this.#signature = null;
    this.#pointed = null;
    this.host.requestUpdate();
  }

  /** After the user typed. */
  typed(): void {
    this.active = true;
    this.#pointed = null;
    this.#settle();
    const field = this.field();
    if (!field || field.selectionStart !== field.selectionEnd) return;
    this.#completion = complete(field.value, field.selectionStart, this.host);
    this.#chosen = this.#completion && !this.#completion.whole ? 0 : -1;
  }

  /** After the caret may have moved without typing: the list belongs to where it was. */
  moved(): void {
    const field = this.field();
    if (!this.active || !field) return;
    const caret = field.selectionStart;
    if (this.#completion && (caret < this.#completion.start || caret > this.#completion.end)) this.#completion = null;
    if (this.#pointed && caret !== this.#pointed.end) this.#pointed = null;
    this.#settle(false);
  }

  /** Keys of the open list; true when the key was one. */
  key(event: KeyboardEvent): boolean {
    const list = this.#completion;
    if (!list || event.ctrlKey || event.metaKey || event.altKey || event.shiftKey) return false;
    const count = list.choices.length;
    if (event.key === 'ArrowDown') this.#chosen = (this.#chosen + 1) % count;
    else if (event.key === 'ArrowUp') this.#chosen = (this.#chosen <= 0 ? count : this.#chosen) - 1;
    else if (event.key === 'Escape') this.#completion = null;
    else if ((event.key === 'Enter' || event.key === 'Tab') && this.#chosen >= 0) this.#take(this.#chosen);
    else return false;
    event.preventDefault();
    this.host.requestUpdate();
    return true;
  }

  /** Where a pointed reference would go, or `null` when none can stand at the caret. */
  slot(): Slot | null {
    const field = this.field();
    return this.active && field ? slotAt(field.value, field.selectionStart, field.selectionEnd, this.host.names, this.#pointed) : null;
  }

  /** Puts a pointed reference at the caret; false when none can stand there. */
  point(reference: string): boolean {
    const slot = this.slot();
    if (!slot) return false;
    const text = this.text;
    this.#write(text.slice(0, slot.start) + reference + text.slice(slot.end), slot.start + reference.length);
    this.#pointed = { start: slot.start, end: slot.start + reference.length };
    this.changed();
    return true;
  }

  /** A line break at the caret. */
  breakLine(): void {
    const { selectionStart, selectionEnd } = this.field()!;
    const text = this.text;
    this.#write(`${text.slice(0, selectionStart)}\n${text.slice(selectionEnd)}`, selectionStart + 1);
    this.changed();
  }

  #take(index: number): void {
    const list = this.#completion!;
    const { text, caret } = take(this.text, list, list.choices[index]!);
    this.#write(text, caret);
    this.changed();
  }

  #write(text: string, caret: number): void {
    const field = this.field()!;
    field.value = text;
    field.setSelectionRange(caret, caret);
    this.#settle();
  }

  #settle(closeList = true): void {
    const field = this.field();
    if (closeList) this.#completion = null;
    this.#signature = field && this.isFormula ? signatureAt(field.value, field.selectionStart, this.host.cards) : null;
    this.host.requestUpdate();
  }

  hostUpdated(): void {
    const field = this.field();
    if (!field) return;
    const option = this.#completion && this.#chosen >= 0 ? `tt-option-${this.#chosen}` : null;
    if (this.active) {
      field.setAttribute('aria-autocomplete', 'list');
      if (this.#completion) field.setAttribute('aria-controls', 'tt-options');
      else field.removeAttribute('aria-controls');
      if (option) field.setAttribute('aria-activedescendant', option);
      else field.removeAttribute('aria-activedescendant');
    } else if (this.#wasActive) {
      for (const name of ['aria-autocomplete', 'aria-controls', 'aria-activedescendant']) field.removeAttribute(name);
    }
    this.#wasActive = this.active;
    // Kept: the grid has many elements to look through.
    this.#helper ??= this.host.renderRoot.querySelector<HTMLElement>('.helper');
    placeHelper(this.#helper, field, this.active && (this.#completion !== null || this.#signature !== null));
    if (option) this.#helper?.querySelector(`#${option}`)?.scrollIntoView({ block: 'nearest' });
  }

  hostDisconnected(): void {
    this.stop();
  }

  /** The coloured copy of what is typed, or of the text that the field shows while nothing is. Its size is also the text area's. */
  underlay(shown: string): TemplateResult {
    const text = this.active ? this.text : shown;
    const tail = text === '' || text.endsWith('\n') ? '\u200b' : nothing;
    const tokens = isFormula(text) ? tokenize(text, this.host.names) : null;
    return html`<div class="underlay" aria-hidden="true">${tokens ? tokens.map((token) => html`<span class="t-${token.kind}">${token.text}</span>`) : text}${tail}</div>`;
  }

  /** The panel with the signature and the list; in the top layer, so that no edge cuts it off. */
  helper(): TemplateResult {
    const list = this.#completion;
    return html`
      <div class="helper" popover="manual" @mousedown=${this.#pressed}>
        ${this.#signature ? signatureLine(this.#signature) : nothing}
        <ul id="tt-options" role="listbox" aria-label="Words that fit" ?hidden=${!list}>
          ${list?.choices.map((choice, index) => html`
            <li id="tt-option-${index}" role="option" data-index=${index} aria-selected=${index === this.#chosen ? 'true' : 'false'}>
              <b>${choice.text}</b> <span>${choice.about}</span>
            </li>`)}
        </ul>
        <p class="hidden" role="status">${list ? `${list.choices.length} ${list.choices.length === 1 ? 'word fits' : 'words fit'}` : ''}</p>
      </div>`;
  }

  /** The focus stays in the field. */
  #pressed = (event: Event): void => {
    event.preventDefault();
    const option = (event.target as Element).closest<HTMLElement>('[role=option]');
    if (option && this.#completion) this.#take(Number(option.dataset['index']));
  };
}

function signatureLine({ card, arg }: Signature): TemplateResult {
  const now = card.args[arg];
  return html`<p class="signature">
    <code>${card.name}(${card.args.map((each, index) => html`${index ? ', ' : ''}${index === arg ? html`<strong>${shown(each)}</strong>` : shown(each)}`)}${card.repeats ? ', …' : ''})</code>
    ${now ? html`<span><strong>${now.name}</strong>: ${now.about}${now.choices?.length ? ` (${now.choices.join(', ')})` : ''}</span>` : html`<span>${card.about}</span>`}
    <span class="more">F1: more</span>
  </p>`;
}

const shown = (arg: Signature['card']['args'][number]): string => (arg.optional ? `[${arg.name}]` : arg.name);
