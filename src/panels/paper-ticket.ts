/** A cutting ticket, set in two columns of rows to tick. */
import { html, nothing, type TemplateResult } from 'lit';
import type { ShowAs } from '../quantities/index.ts';
import type { PaperHead, Ticket, TicketFigure, TicketPart, TicketPicture } from './paper-parts.ts';
import { MEASURE, checkSquare } from './paper-scale.ts';
import { pictureOf } from './picture-of.ts';
import { unbroken } from './unbroken.ts';

export function ticketPage(ticket: Ticket, as: ShowAs, head: (of: PaperHead, title: string) => TemplateResult): TemplateResult {
  const { parts, cautions, pictures, left } = ticket;
  return html`<div class="ticket">
    ${head(ticket, `Cutting ticket: ${ticket.title}`)}
    ${cautions.length > 0 ? html`<div class="cautions"><h2>⚠ Look at ${cautions.length === 1 ? 'this' : 'these'} before you cut</h2>
      <ul>${cautions.map(({ place, text }) => html`<li><b>${place}:</b> ${unbroken(text)}</li>`)}</ul></div>` : nothing}
    ${parts.length === 0 ? html`<p>Nothing is chosen for this ticket.</p>` : nothing}
    <div class="parts">${parts.map(partOf)}</div>
    ${parts.some(({ rows }) => rows.some(({ figures }) => figures.some(({ kind }) => kind === 'typed'))) ? html`<p class="key">Underlined with dashes: typed, not worked out.</p>` : nothing}
    ${left.length > 0 ? html`<p class="key">Not on this ticket: ${left.map(({ name, rows }) => `${name} (${rows} ${rows === 1 ? 'row' : 'rows'})`).join(', ')}. The workbook has them.</p>` : nothing}
    ${pictures.length > 0 ? html`
      <div class="pictures">${pictures.map((each) => pictureBox(each, as))}
        <figure class="scale"><figcaption>To check the scale</figcaption>${checkSquare()}</figure></div>
      <p class="measure">${MEASURE} The pictures are in proportion, not full size: cut by the figures.</p>` : nothing}
    <p class="done"><span>Cut on</span><span>by</span><span>Remarks</span></p>
  </div>`;
}

function partOf({ name, rows }: TicketPart): TemplateResult {
  return html`<section class="part"><h2>${name}</h2><ul>${rows.map(({ label, from, figures }) => html`<li class=${figures.length > 2 ? 'many' : ''}>
    <span class="box"></span><span>${label}${from ? html` <span class="from">${from}</span>` : nothing}</span>
    <span class="figures">${figures.map(figureOf)}</span></li>`)}</ul></section>`;
}

function figureOf({ head, main, also, kind }: TicketFigure): TemplateResult {
  return html`<span class="figure ${kind}">${head ? html`<span class="of">${head} </span>` : nothing}<span><b>${main}</b></span>${also ? html`<span class="also">${also}</span>` : nothing}</span>`;
}

function pictureBox({ label, call, result }: TicketPicture, as: ShowAs) {
  const picture = pictureOf(call, result, as);
  return picture ? html`<figure><figcaption>${label}</figcaption>${picture}</figure>` : nothing;
}
