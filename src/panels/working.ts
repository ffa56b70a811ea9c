import { LitElement, css, html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { controls } from '../look/index.ts';
import { UNITS, exactText, inBase, type ShowAs } from '../quantities/index.ts';
import type { Result, Working } from '../reckoning/index.ts';
import type { Area } from '../workbook/index.ts';
import { shownResult } from './shown.ts';

/** Sent when she wants to see where a figure came from. */
export type GoEvent = CustomEvent<{ readonly area: Area }>;

/**
 * How the selected cell's figure came about: the rule in words, the figures put
 * in, each step in the units of the sheet, and the cells they came from.
 * Given everything; asks only to go somewhere (`tt-go`).
 */
@customElement('tt-working')
export class WorkingPanel extends LitElement {
  static override styles = [controls, css`
    :host { display: block; padding: 14px 16px 24px; }
    h2 { overflow-wrap: anywhere; }
    .answer { font: 600 1.5rem/1.2 var(--face-title); margin: var(--gap-2) 0; overflow-wrap: anywhere; }
    .answer small { font: 400 1rem var(--face); color: var(--soft); margin-left: var(--gap-2); }
    .answer.words { font-size: 1rem; }
    ol { list-style: none; margin: var(--gap-2) 0; padding: var(--gap-2) var(--gap-3); background: var(--tissue); border-radius: var(--round); }
    ol li { padding: 3px 0; }
    ol li + li { border-top: 1px solid var(--line); }
    .sum { overflow-wrap: anywhere; font-variant-numeric: tabular-nums; }
    .sum b { font-weight: 600; white-space: nowrap; }
    .sum .second { color: var(--soft); white-space: nowrap; }
    dl { display: grid; grid-template-columns: 1fr auto; gap: 0 var(--gap-3); margin: var(--gap-2) 0; align-items: baseline; }
    dd.about { grid-column: 1 / -1; text-align: left; margin-bottom: var(--gap-2); padding-left: 7px; }
    dd { margin: 0; text-align: right; font-variant-numeric: tabular-nums; }
    dd small { color: var(--soft); }
    dt .plain { padding: 0 7px; font-size: var(--size-small); }
    dt button { min-height: 24px; padding: 0 6px; font-size: var(--size-small); text-align: left; }
    h3 { margin-top: var(--gap-4); }
    p { margin: var(--gap-2) 0; }
    .rule { font-style: italic; }
    .kept { border-left: 3px solid var(--thread); padding-left: var(--gap-3); white-space: pre-wrap; overflow-wrap: anywhere; }
    .pin { background: var(--pin-wash); border-radius: var(--round); padding: var(--gap-2) var(--gap-3); }
    .pin strong { color: var(--pin); }
  `];

  /** "Waist ease". */
  @property() heading = '';
  /** "Fit B6". */
  @property() place = '';
  /** What was typed. */
  @property() raw = '';
  @property({ attribute: false }) result: Result = { kind: 'empty' };
  @property({ attribute: false }) working: Working | null = null;
  /** A remark about the cell, such as why a figure is kept as text. */
  @property() remark = '';
  /** The note on the cell. */
  @property() note = '';
  @property({ attribute: false }) as: ShowAs = { system: 'own', inchStep: 8 };

  protected override willUpdate(): void {
    // Not before a working is looked at: the drawings are half of the page's script.
    if (this.working?.call) void import('./picture.ts');
  }

  override render(): TemplateResult {
    return html`
      <h2>${this.heading || this.place}</h2>
      ${this.heading ? html`<div class="soft">${this.place}</div>` : nothing}
      ${this.#answer()}
      ${this.raw.startsWith('=') ? this.#formula() : this.#typed()}
      ${this.remark ? html`<p class="note">${this.remark}</p>` : nothing}
      ${this.note ? html`<p class="kept"><strong>Note.</strong> ${this.note}</p>` : nothing}
    `;
  }

  #answer() {
    const { result } = this;
    if (result.kind === 'empty') return this.raw === '' ? html`<p class="soft">Nothing is typed here yet. Type a figure with its unit (2 1/4 in, 5,5 cm), words, or a formula that starts with =.</p>` : nothing;
    if (result.kind === 'error') return html`<p class="fault" role="note"><strong>No result.</strong> ${result.sentence}</p>`;
    const main = this.#figure(result);
    const second = this.#other(result, main);
    return html`<p class="answer ${result.kind === 'text' ? 'words' : ''}">${main}${second ? html`<small>${second}</small>` : nothing}</p>`;
  }

  #typed() {
    const { result, raw } = this;
    if (result.kind !== 'quantity') return nothing;
    const exact = exactText(inBase(result.value, result.unit));
    const rounded = !shownResult(result, this.as).exact;
    return html`<p class="soft">Typed: ${raw}. ${rounded ? html`Kept as ${exact}; only what is shown is rounded.` : 'Kept exactly.'}</p>`;
  }

  #formula() {
    const { working } = this;
    if (!working) return html`<p class="soft" aria-busy="true">Looking up the working…</p>`;
    const { call } = working;
    return html`
      ${call ? html`
        <p>${call.about}</p>
        <tt-picture .call=${call} .result=${working.result} .as=${this.as}></tt-picture>
        <p class="rule">${call.rule}</p>
        ${call.steps.length ? html`<ol aria-label="Steps">${call.steps.map((step) => html`<li>
          <div>${step.words}</div>
          <div class="sum">${step.sum.map((part) => (typeof part === 'string' ? part : html`<b>${this.#figure(part)}</b>`))} = <b>${this.#figure(step.value)}</b>${this.#second(step.value)}</div>
        </li>`)}</ol>` : nothing}
        ${call.cautions.map((caution) => html`<p class="pin"><strong>Mind.</strong> ${caution.sentence}${caution.mend ? html` <strong>${this.#figure(caution.mend)}</strong>` : nothing}</p>`)}
        <p class="soft">${this.#rounding()} Source: ${call.source}.</p>
        ${call.given.length ? html`<h3>Put in</h3><dl>${call.given.map((given) => html`
          <dt>${given.from ? html`<button class="bare" title="Go to it" @click=${() => this.#go(given.from!)}>${given.name} ↗</button>` : html`<span class="plain">${given.name}</span>`}</dt>
          <dd>${this.#figure(given.value)}</dd><dd class="about soft">${given.about}</dd>`)}</dl>` : nothing}
      ` : html`<p class="soft">${this.#rounding()}</p>`}
      ${!call && working.uses.length ? html`<h3>Uses</h3><dl>${working.uses.map((use) => html`
        <dt><button class="bare" title="Go to it" @click=${() => this.#go(use.area)}>${use.text} ↗</button></dt>
        <dd>${use.value ? this.#figure(use.value) : html`<span class="soft">several cells</span>`}</dd>`)}</dl>` : nothing}
    `;
  }

  #figure(result: Result): string {
    return shownResult(result, { ...this.as, system: this.as.system === 'both' ? 'own' : this.as.system }).main;
  }

  /** The same in the other system, where there is one. */
  #other(result: Result, main: string): string | undefined {
    const both = shownResult(result, { ...this.as, system: 'both' });
    return [both.main, both.also].find((text) => text !== undefined && text !== main);
  }

  #second(result: Result) {
    const other = this.#other(result, this.#figure(result));
    return other ? html` <span class="second">(${other})</span>` : nothing;
  }

  #rounding(): string {
    const { result } = this;
    if (result.kind !== 'quantity') return '';
    const inches = UNITS[result.unit].dimension === 'length' && (this.as.system === 'in' || this.as.system === 'both' || result.unit === 'in');
    if (shownResult(result, this.as).exact) return 'Shown exactly.';
    return inches ? `Inches are shown to the nearest 1/${this.as.inchStep}; nothing is rounded in the sum.` : 'Rounded only where it is shown, not in the sum.';
  }

  #go(area: Area) {
    this.dispatchEvent(new CustomEvent('tt-go', { detail: { area }, bubbles: true, composed: true }));
  }
}

declare global {
  interface HTMLElementTagNameMap { 'tt-working': WorkingPanel }
}
