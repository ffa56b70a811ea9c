/** Why there is no result, where that began, and what would mend it. */
import { html, nothing, type TemplateResult } from 'lit';
import type { CellAddress } from '../workbook/index.ts';
import type { NamedCell, WorkingFault } from '../reckoning/index.ts';

/** Something that would mend a cell, as it is offered. Asked for by `tt-mend` {at}, its place in the list. */
export interface Mend {
  /** What is wrong: "2 has no unit." */
  readonly wrong: string;
  /** What is offered: "Read it as 2 in". */
  readonly label: string;
  /** The keys that do it, in words; empty where there are none. */
  readonly keys: string;
  readonly cell: CellAddress;
  /** What the cell is to hold. */
  readonly raw: string;
}

export interface Asks {
  readonly go: (cell: CellAddress) => void;
  readonly mend: (at: number) => void;
}

export function workingFault(sentence: string, fault: WorkingFault | undefined, mends: readonly Mend[], asks: Asks, causeKeys = ''): TemplateResult {
  const { cause, circle } = fault ?? {};
  return html`<p class="fault" role="note"><strong>No result.</strong> ${sentence}</p>
    ${cause ? html`<p class="mend"><span>It begins in ${cause.text}.</span>
      <button @click=${() => asks.go(cause.cell)}>Go to ${cause.text}${causeKeys ? html` <kbd>${causeKeys}</kbd>` : nothing}</button></p>` : nothing}
    ${circle ? loop(circle, asks) : nothing}
    ${mends.map((mend, at) => html`<p class="mend">${mend.wrong === mends[at - 1]?.wrong || sentence.includes(mend.wrong.slice(0, -1)) ? nothing : html`<span>${mend.wrong}</span>`}
      <button @click=${() => asks.mend(at)}>${mend.label}${mend.keys ? html` <kbd>${mend.keys}</kbd>` : nothing}</button></p>`)}`;
}

/** A1 → B2 → A1. */
function loop(cells: readonly NamedCell[], { go }: Asks): TemplateResult {
  const [first] = cells;
  return html`<p id="circle">The circle, each cell needing the next:</p>
    <div class="circle" role="group" aria-labelledby="circle">${[...cells, first!].map(({ cell, text }, at) => html`
      ${at > 0 ? html`<span aria-hidden="true">→</span>` : nothing}
      <button @click=${() => go(cell)}>${text}</button>`)}</div>`;
}
