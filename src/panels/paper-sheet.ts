/** A sheet in type: its tables with their headings again on each page, and its notes and pins at its end. */
import { html, nothing, type TemplateResult } from 'lit';
import type { Footnote, PaperHead, PrintedCell, PrintedRow, PrintedSheet, PrintedTable } from './paper-parts.ts';

const KINDS: Readonly<Record<Footnote['kind'], string>> = { note: 'Note', pin: '⚠ Pin', acknowledged: 'Pin, acknowledged' };

export function sheetPages(sheet: PrintedSheet, head: (of: PaperHead, title: string) => TemplateResult): TemplateResult {
  const typed = sheet.tables.some(({ rows }) => rows.some(({ cells }) => cells.some(({ kind }) => kind === 'typed')));
  return html`
    ${head(sheet, `${sheet.title}: ${sheet.name}`)}
    ${sheet.missing.map((each) => html`<p class="missing">${each}</p>`)}
    ${sheet.tables.map(tableOf)}
    ${typed ? html`<p class="key">Underlined with dashes: typed, not worked out.</p>` : nothing}
    ${sheet.footnotes.length > 0 ? html`<ol class="footnotes">${sheet.footnotes.map(({ number, kind, place, text }) => html`<li><span class="which">${number}</span><b>${KINDS[kind]} on ${place}:</b> ${text}</li>`)}</ol>` : nothing}`;
}

function tableOf({ columns, heading, rows }: PrintedTable): TemplateResult {
  return html`<table>
    <colgroup><col width="4%">${columns.map(({ share }) => html`<col width="${share * 0.96}%">`)}</colgroup>
    <thead><tr class="letters"><th class="number"></th>${columns.map(({ letter }) => html`<th scope="col">${letter}</th>`)}</tr>${heading.map((row) => rowOf(row, true))}</thead>
    <tbody>${rows.map((row) => rowOf(row, false))}</tbody>
  </table>`;
}

function rowOf({ number, cells }: PrintedRow, heading: boolean): TemplateResult {
  return html`<tr class=${heading ? 'heading' : ''}><th class="number" scope="row">${number}</th>${cells.map((cell) => (heading ? html`<th class=${classes(cell)} colspan=${cell.span}>${inside(cell)}</th>` : html`<td class=${classes(cell)} colspan=${cell.span}>${inside(cell)}</td>`))}</tr>`;
}

const classes = ({ align, kind, strong, italic, border }: PrintedCell): string =>
  [align, kind, strong && 'strong', italic && 'italic', border].filter(Boolean).join(' ');

// On one line, since the line breaks of a text are kept.
const inside = ({ text, also, marks }: PrintedCell) =>
  html`<span>${text}</span>${also ? html`<span class="also">${also}</span>` : nothing}${marks.length > 0 ? html`<sup> ${marks.join(' ')}</sup>` : nothing}`;
