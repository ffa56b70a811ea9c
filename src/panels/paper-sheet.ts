/** A sheet in type: its tables with their headings again on each page, and its notes and pins at its end. */
import { html, nothing, type TemplateResult } from 'lit';
import type { Footnote, PaperHead, PrintedCell, PrintedRow, PrintedSheet, PrintedTable } from './paper-parts.ts';
import { unbroken } from './unbroken.ts';

const KINDS: Readonly<Record<Footnote['kind'], string>> = { note: 'Note', pin: '⚠ Pin', acknowledged: 'Pin, acknowledged' };

export function sheetPages(sheet: PrintedSheet, head: (of: PaperHead, title: string) => TemplateResult): TemplateResult {
  const typed = sheet.tables.some(({ rows }) => rows.some(({ cells }) => cells.some(({ kind }) => kind === 'typed')));
  return html`
    ${head(sheet, `${sheet.title}: ${sheet.name}`)}
    ${sheet.missing.map((each) => html`<p class="missing">${each}</p>`)}
    ${sheet.tables.map(tableOf)}
    ${typed ? html`<p class="key">Underlined with dashes: typed, not worked out.</p>` : nothing}
    ${sheet.footnotes.length > 0 ? html`<ol class="footnotes">${sheet.footnotes.map(({ number, kind, place, text }) => html`<li><span class="which">${number}</span><b>${KINDS[kind]} on ${place}:</b> ${unbroken(text)}</li>`)}</ol>` : nothing}`;
}

function tableOf({ columns, spare, heading, rows }: PrintedTable): TemplateResult {
  return html`<table>
    <colgroup><col width="4%">${columns.map(({ share }) => html`<col width="${share * 0.96}%">`)}${spare > 0 ? html`<col>` : nothing}</colgroup>
    <thead><tr class="letters"><th class="number"></th>${columns.map(({ letter }) => html`<th scope="col">${letter}</th>`)}</tr>${heading.map((row) => rowOf(row, true, spare > 0))}</thead>
    <tbody>${rows.map((row) => rowOf(row, false, spare > 0))}</tbody>
  </table>`;
}

/** What no column takes belongs to the last cell when it is a text, and else is empty. */
function rowOf({ number, cells }: PrintedRow, heading: boolean, spare: boolean): TemplateResult {
  const last = cells.at(-1);
  const reaches = spare && last !== undefined && last.align === 'start' && last.kind !== 'figure' && last.kind !== 'typed' && !last.border;
  const span = (cell: PrintedCell): number => cell.span + (reaches && cell === last ? 1 : 0);
  const made = cells.map((cell) => (heading ? html`<th class=${classes(cell)} colspan=${span(cell)}>${inside(cell)}</th>` : html`<td class=${classes(cell)} colspan=${span(cell)}>${inside(cell)}</td>`));
  return html`<tr class=${heading ? 'heading' : ''}><th class="number" scope="row">${number}</th>${made}${spare && !reaches ? html`<td></td>` : nothing}</tr>`;
}

const classes = ({ align, kind, strong, italic, border }: PrintedCell): string =>
  [align, kind, strong && 'strong', italic && 'italic', border].filter(Boolean).join(' ');

// On one line, since the line breaks of a text are kept.
const inside = ({ text, also, marks }: PrintedCell) =>
  html`<span>${text}</span>${also ? html`<span class="also">${also}</span>` : nothing}${marks.length > 0 ? html`<sup> ${marks.join(' ')}</sup>` : nothing}`;
