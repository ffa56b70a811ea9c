/** The list for the shop on paper, with boxes to tick. */
import { html, nothing, type TemplateResult } from 'lit';
import type { PaperHead } from './paper-parts.ts';
import type { Shopping, ShoppingItem, ShownFigure } from './to-buy-parts.ts';
import { unbroken } from './unbroken.ts';

export function shoppingPages(shopping: Shopping, head: (of: PaperHead, title: string) => TemplateResult): TemplateResult {
  const { items, unlisted, total, unpriced } = shopping.list;
  const [toBuy, enough] = [items.filter((item) => !item.enough), items.filter((item) => item.enough)];
  return html`<div class="shopping">
    ${head(shopping, `To buy: ${shopping.title}`)}
    ${items.length + unlisted.length === 0 ? html`<p>Nothing is on the list yet.</p>` : nothing}
    ${toBuy.length > 0 ? html`<table>
      <thead><tr class="heading"><th>Ask for</th><th class="end">To buy</th><th>For</th><th class="end">Cost</th></tr></thead>
      <tbody>${toBuy.map(rowOf)}<tr class="strong"><td>Together</td><td></td><td>${unpriced === 0 ? nothing : unpriced === 1 ? 'without one thing that has no price yet' : `without ${unpriced} things that have no price yet`}</td><td class="end above">${total}</td></tr></tbody>
    </table>` : nothing}
    ${unlisted.length > 0 ? html`<h2>Needed, but not worked out how much to buy</h2><ul>${unlisted.map(({ what, words, ...figure }) => html`<li>${what}${words ? ` for ${words}` : nothing}: ${shown(figure)}</li>`)}</ul>` : nothing}
    ${enough.length > 0 ? html`<h2>Enough at home</h2><ul>${enough.map(({ what, home }) => html`<li>${what}${home ? html`: ${shown(home)}` : nothing}</li>`)}</ul>` : nothing}
  </div>`;
}

function rowOf({ what, width, buy, by, fault, needs, cost, cautions, home, bought }: ShoppingItem): TemplateResult {
  return html`<tr>
    <td><span class="box">${bought.state === 'yes' ? '✓' : nothing}</span> <b>${what}</b>${width ? html`<br>${shown(width)} wide` : nothing}
      ${cautions.map((caution) => html`<br>⚠ ${unbroken(caution)}`)}</td>
    <td class="end ${fault ? 'error' : ''}"><span><b>${buy.main}</b></span>${buy.also ? html`<span class="also">${buy.also}</span>` : nothing}${by ? html`<br>× ${by}` : nothing}</td>
    <td>${needs.map(({ words, ...figure }) => html`<div>${words} ${shown(figure)}</div>`)}${home ? html`<div>at home ${shown(home)}</div>` : nothing}</td>
    <td class="end">${cost}</td></tr>`;
}

const shown = ({ main, also }: ShownFigure): TemplateResult => html`${main}${also ? html`<span class="also">${also}</span>` : nothing}`;
