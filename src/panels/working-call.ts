/** One call of a function of the trade: its rule, its steps, what went in, and what to mind. */
import { html, nothing, type TemplateResult } from 'lit';
import type { WorkingCall } from '../reckoning/index.ts';
import type { Area } from '../workbook/index.ts';
import type { Figures } from './working-figures.ts';

export type Go = (area: Area) => void;

export function callSteps({ rule, steps }: WorkingCall, figures: Figures): TemplateResult {
  return html`<p class="rule">${rule}</p>
    ${steps.length ? html`<ol aria-label="Steps">${steps.map((step) => html`<li>
      <div>${step.words}</div>
      <div class="sum">${step.sum.map((part) => (typeof part === 'string' ? part : html`<b>${figures.main(part)}</b>`))} = <b>${figures.main(step.value)}</b>${figures.second(step.value)}</div>
    </li>`)}</ol>` : nothing}`;
}

/** @param by the function, where another could be meant */
export function callCautions({ name, cautions }: WorkingCall, figures: Figures, by = false): TemplateResult[] {
  return cautions.map((caution) => html`<p class="pin"><strong>Mind${by ? ` (${name})` : ''}.</strong> ${caution.sentence}${
    caution.mend ? html` <strong>${figures.main(caution.mend)}</strong>` : nothing}</p>`);
}

export function callGiven({ given }: WorkingCall, figures: Figures, go: Go): TemplateResult | typeof nothing {
  if (given.length === 0) return nothing;
  return html`<h3>Put in</h3><dl>${given.map((each) => html`
    <dt>${each.from ? html`<button class="bare" title="Go to it" @click=${() => go(each.from!)}>${each.name} ↗</button>` : html`<span class="plain">${each.name}</span>`}</dt>
    <dd>${figures.main(each.value)}</dd><dd class="about soft">${each.about}</dd>`)}</dl>`;
}

/** The calls within a formula: what they warn of at once, how they were worked out when it is asked for. */
export function innerCalls(calls: readonly WorkingCall[], figures: Figures, go: Go): TemplateResult[] {
  return calls.map((call) => {
    const last = call.steps.at(-1)?.value;
    return html`${callCautions(call, figures, true)}
      <details><summary>${call.name}${last ? html`: ${figures.main(last)}` : nothing}</summary>
        <p>${call.about}</p>
        ${callSteps(call, figures)}
        <p class="soft">Source: ${call.source}.</p>
        ${callGiven(call, figures, go)}
      </details>`;
  });
}
