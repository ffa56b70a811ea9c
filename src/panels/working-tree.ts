/** A formula as a list of its parts with their values, each indented under what it is a part of. */
import { html, nothing, type TemplateResult } from 'lit';
import type { WorkingPart } from '../reckoning/index.ts';
import type { Go } from './working-call.ts';
import type { Figures } from './working-figures.ts';

export function workingTree(root: WorkingPart, cut: boolean, figures: Figures, go: Go): TemplateResult {
  return html`<h3 id="parts">How it is put together</h3>
    <ul class="tree" aria-labelledby="parts">${branch(root, figures, go, true)}</ul>
    ${cut ? html`<p class="soft">There is more of it than is shown here: work parts of it out in cells of their own to see them.</p>` : nothing}`;
}

function branch(part: WorkingPart, figures: Figures, go: Go, root = false): TemplateResult {
  const { text, area, parts } = part;
  return html`<li>
    <div class="part">
      ${area ? html`<button class="bare" title="Go to it" @click=${() => go(area)}>${text} ↗</button>` : html`<span class="text">${text}</span>`}
      ${value(part, figures, root)}
    </div>
    ${parts.length ? html`<ul>${parts.map((each) => branch(each, figures, go))}</ul>` : nothing}
  </li>`;
}

/** What is wrong is said at the part where it begins, and of the whole it was said above. */
function value({ value: result, unused, area, parts }: WorkingPart, figures: Figures, root: boolean): TemplateResult {
  if (unused) return html`<span class="value soft">not used</span>`;
  if (result === null) return html`<span class="value soft">${area ? 'several cells' : 'a block of cells'}</span>`;
  if (result.kind === 'empty') return html`<span class="value soft">empty</span>`;
  if (result.kind === 'error') return html`<span class="value wrong">! ${root || parts.some((part) => part.value?.kind === 'error') ? 'no result' : result.sentence}</span>`;
  return html`<span class="value"><b>${figures.main(result)}</b>${figures.second(result)}</span>`;
}
