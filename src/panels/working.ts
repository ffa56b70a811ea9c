import { LitElement, html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { controls } from '../look/index.ts';
import { exactText, inBase, type ShowAs } from '../quantities/index.ts';
import type { Result, Working } from '../reckoning/index.ts';
import type { Area } from '../workbook/index.ts';
import { shownResult } from './shown.ts';
import { callCautions, callGiven, callSteps, innerCalls } from './working-call.ts';
import { workingFault, type Mend } from './working-fault.ts';
import { Figures } from './working-figures.ts';
import { workingStyles } from './working-styles.ts';
import { workingTree } from './working-tree.ts';

/** Sent when she wants to see where a figure came from. */
export type GoEvent = CustomEvent<{ readonly area: Area }>;

/**
 * How the selected cell's figure came about: the rule in words, the figures put
 * in, each step in the units of the sheet, and the cells they came from; or why
 * there is none, where that began and what would mend it. Given everything; asks
 * only to go somewhere (`tt-go`) and to mend (`tt-mend` {at}).
 */
@customElement('tt-working')
export class WorkingPanel extends LitElement {
  static override styles = [controls, workingStyles];

  /** "Waist ease". */
  @property() heading = '';
  /** "Fit B6". */
  @property() place = '';
  /** What was typed. */
  @property() raw = '';
  @property({ attribute: false }) result: Result = { kind: 'empty' };
  @property({ attribute: false }) working: Working | null = null;
  /** What would mend the cell, the likeliest first. */
  @property({ attribute: false }) mends: readonly Mend[] = [];
  /** The keys that go where an error began, in words. */
  @property() causeKeys = '';
  /** A remark about the cell, such as why a figure is kept as text. */
  @property() remark = '';
  /** The note on the cell. */
  @property() note = '';
  @property({ attribute: false }) as: ShowAs = { system: 'own', inchStep: 8 };

  protected override willUpdate(): void {
    // Not before a working is looked at: the drawings are half of the page's script.
    if (this.working?.call) import('./picture.ts').catch(() => undefined);
  }

  override render(): TemplateResult {
    const figures = new Figures(this.as);
    return html`
      <h2>${this.heading || this.place}</h2>
      ${this.heading ? html`<div class="soft">${this.place}</div>` : nothing}
      ${this.#answer(figures)}
      ${this.raw.startsWith('=') ? this.#formula(figures) : this.#typed()}
      ${this.remark ? html`<p class="note">${this.remark}</p>` : nothing}
      ${this.note ? html`<p class="kept"><strong>Note.</strong> ${this.note}</p>` : nothing}
    `;
  }

  #answer(figures: Figures) {
    const { result } = this;
    if (result.kind === 'empty') return this.raw === '' ? html`<p class="soft">Nothing is typed here yet. Type a figure with its unit (2 1/4 in, 5,5 cm), words, or a formula that starts with =.</p>` : nothing;
    if (result.kind === 'error') {
      const go = ({ sheet, row, col }: { sheet: number; row: number; col: number }) => this.#go({ sheet, top: row, bottom: row, left: col, right: col });
      return workingFault(result.sentence, this.working?.fault, this.mends, { go, mend: (at) => this.#send('tt-mend', { at }) }, this.causeKeys);
    }
    const main = figures.main(result);
    const second = figures.other(result, main);
    return html`<p class="answer ${result.kind === 'text' ? 'words' : ''}">${main}${second ? html`<small>${second}</small>` : nothing}</p>`;
  }

  #typed() {
    const { result, raw } = this;
    if (result.kind !== 'quantity') return nothing;
    const exact = exactText(inBase(result.value, result.unit));
    const rounded = !shownResult(result, this.as).exact;
    return html`<p class="soft">Typed: ${raw}. ${rounded ? html`Kept as ${exact}; only what is shown is rounded.` : 'Kept exactly.'}</p>`;
  }

  #formula(figures: Figures) {
    const { working, result } = this;
    if (!working) return result.kind === 'error' ? nothing : html`<p class="soft" aria-busy="true">Looking up the working…</p>`;
    const { call, tree, inner = [] } = working;
    const go = (area: Area) => this.#go(area);
    return html`
      ${call ? html`
        <p>${call.about}</p>
        <tt-picture .call=${call} .result=${working.result} .as=${this.as}></tt-picture>
        ${callSteps(call, figures)}
        ${callCautions(call, figures)}
        <p class="soft">${figures.rounding(result)} Source: ${call.source}.</p>
        ${callGiven(call, figures, go)}
      ` : html`<p class="soft">${figures.rounding(result)}</p>`}
      ${tree ? workingTree(tree, working.treeCut === true, figures, go) : nothing}
      ${inner.length ? innerCalls(inner, figures, go) : nothing}
      ${!call && !tree && !working.fault?.circle && working.uses.length ? html`<h3>Uses</h3><dl>${working.uses.map((use) => html`
        <dt><button class="bare" title="Go to it" @click=${() => go(use.area)}>${use.text} ↗</button></dt>
        <dd>${use.value ? figures.main(use.value) : html`<span class="soft">several cells</span>`}</dd>`)}</dl>` : nothing}
    `;
  }

  #go(area: Area) {
    this.#send('tt-go', { area });
  }

  #send(type: string, detail: unknown) {
    this.dispatchEvent(new CustomEvent(type, { detail, bubbles: true, composed: true }));
  }
}

declare global {
  interface HTMLElementTagNameMap { 'tt-working': WorkingPanel }
}
