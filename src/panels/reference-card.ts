/** One function, as the reference tells of it. */
import { html, nothing, type TemplateResult } from 'lit';
import type { ShowAs } from '../quantities/index.ts';
import type { Example, FunctionCard, Result } from '../reckoning/index.ts';
import { argumentInWords, signatureOf } from './reference-words.ts';
import { shownResult } from './shown.ts';

/** What came of a formula, or why nothing did. */
export type Tried = { readonly formula: string } & ({ readonly example: Example } | { readonly sentence: string });

/** What is told of a function, up to its example. */
export function facts(card: FunctionCard): TemplateResult {
  const { name, about, rule, args, units, differs } = card;
  return html`
    <h3 id="card-title" tabindex="-1">${name}<span class="rest">${signatureOf(card).slice(name.length)}</span></h3>
    <p class="about">${about}</p>
    ${rule ? html`<p class="rule">${rule}</p>` : nothing}
    ${args.length ? html`<h4>What goes in</h4><dl>${args.map((arg, i) => html`
      <dt>${arg.name}</dt><dd>${arg.about} <span class="soft">${argumentInWords(card, i)}</span></dd>`)}</dl>` : nothing}
    <h4>Units</h4><p>${units}</p>
    ${differs ? html`<h4>Not as in the standard</h4><p class="note">${differs}</p>` : nothing}
  `;
}

export function source({ source: text }: FunctionCard): TemplateResult {
  return html`<p class="soft">Source: ${text}.</p>`;
}

/** The blocks of cells that an example names. */
export function samples({ needs }: FunctionCard): TemplateResult | typeof nothing {
  if (needs.length === 0) return nothing;
  return html`<h4>Cells that the example names</h4>${needs.map(({ name, rows }) => {
    const width = Math.max(...rows.map((row) => row.length));
    return html`<div class="cells" tabindex="0" role="region" aria-label="The cells of ${name}"><table><caption class="soft">${name}, with invented figures</caption>${rows.map((row) => html`<tr>${Array.from({ length: width }, (_, col) => html`<td>${(row[col] ?? '').replace(/^'/, '')}</td>`)}</tr>`)}</table></div>`;
  })}`;
}

/** What an example gives: a figure, words, or the first rows of a block. */
export function outcome(tried: Tried | null, as: ShowAs): TemplateResult {
  if (tried === null) return html`<p class="soft" aria-busy="true">Working it out…</p>`;
  if ('sentence' in tried) return html`<p class="fault">${tried.sentence}</p>`;
  const { results, height, width } = tried.example;
  if (height > 1 || width > 1) return block(tried.example, as);
  const result = results[0]?.[0] ?? { kind: 'empty' };
  if (result.kind === 'error') return html`<p class="fault">${result.sentence}</p>`;
  const { main, also } = figure(result, as);
  return html`<p class="answer">${main === '' ? 'nothing' : main}${also ? html`<small>${also}</small>` : nothing}</p>`;
}

/** In the unit it has, and beside it in the other system. */
function figure(result: Result, as: ShowAs): { readonly main: string; readonly also?: string | undefined } {
  const { main } = shownResult(result, { ...as, system: as.system === 'both' ? 'own' : as.system });
  const both = shownResult(result, { ...as, system: 'both' });
  return { main, also: [both.main, both.also].find((text) => text !== undefined && text !== main) };
}

function block({ results, height, width }: Example, as: ShowAs): TemplateResult {
  const more = height > results.length || width > (results[0]?.length ?? 0);
  return html`<div class="cells"><table>${results.map((row) => html`<tr>${row.map((result) => html`<td>${figure(result, as).main}</td>`)}</tr>`)}</table></div>
    ${more ? html`<span class="soft">The beginning of ${height} ${height === 1 ? 'row' : 'rows'} and ${width} ${width === 1 ? 'column' : 'columns'}.</span>` : nothing}`;
}
