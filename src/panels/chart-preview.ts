/** The first rows of a size chart as they will stand in the sheet, and what to know about them. */
import { html, nothing, type TemplateResult } from 'lit';
import { chartSheet, type ChartReading } from '../tables/index.ts';

const MOST = { rows: 30, columns: 15, listed: 100 } as const;

const counted = (n: number, one: string, many = `${one}s`): string => `${n.toLocaleString('en-GB')} ${n === 1 ? one : many}`;

/** "12 sizes, 00 to 20, and 9 measures: 108 figures read, none left over." */
export function chartSummary({ sizeLabels, measures, cells, unreadable }: ChartReading): string {
  const named = measures.filter(({ kind }) => kind !== 'heading');
  const figures = cells.flat().filter(({ kind }) => kind === 'figure').length;
  const range = sizeLabels.length > 1 ? `, ${sizeLabels[0]!.label} to ${sizeLabels.at(-1)!.label},` : '';
  return `${counted(sizeLabels.length, 'size')}${range} and ${counted(named.length, 'measure')}: ${counted(figures, 'figure')} read, ${unreadable.length === 0 ? 'none left over' : `${counted(unreadable.length, 'field')} not read`}.`;
}

/** A cell's text as the sheet shows it. */
const shownRaw = (raw: string): string => (raw.startsWith("'") ? raw.slice(1) : raw);

export function chartPreview(reading: ChartReading): TemplateResult {
  const { sheet, area, marks } = chartSheet(reading, '');
  const unread = new Set(marks.map(({ row, col }) => `${row} ${col}`));
  const width = sheet.rows.reduce((most, row) => Math.max(most, row?.length ?? 0), 0);
  const columns = Math.min(width, MOST.columns);
  const rows = sheet.rows.slice(0, MOST.rows);
  const cut = sheet.rows.length > MOST.rows || width > MOST.columns;
  const cell = (r: number, c: number): TemplateResult => {
    const found = rows[r]?.[c];
    const text = shownRaw(found?.raw ?? '');
    const inside = r >= area.top && r <= area.bottom && c >= area.left && c <= area.right;
    if (unread.has(`${r} ${c}`)) return html`<td class="unread"><span aria-hidden="true">✕ </span><span class="spoken">not read: </span>${text}</td>`;
    if (inside && r === area.top) return html`<th scope="col" class=${c === area.left ? '' : 'figure'}>${text}</th>`;
    if (inside && c === area.left) return html`<th scope="row">${text}</th>`;
    if (inside) return html`<td class="figure">${text}</td>`;
    // As in the sheet, a note runs on over empty cells and does not widen its column.
    const room = r < area.top || r > area.bottom ? !rows[r]?.slice(c + 1).some(Boolean) : false;
    return html`<td class=${room ? 'around long' : 'around'}>${text}</td>`;
  };
  return html`
    <div class="table" role="region" aria-label="The chart as it will stand in the sheet" tabindex="0">
      <table>${rows.map((_, r) => html`<tr>${Array.from({ length: columns }, (__, c) => cell(r, c))}</tr>`)}</table>
    </div>
    ${cut ? html`<p class="soft">Shown are the first ${counted(Math.min(sheet.rows.length, MOST.rows), 'row')} of ${sheet.rows.length.toLocaleString('en-GB')} and ${counted(columns, 'column')} of ${width}; all of it goes into the sheet.</p>` : nothing}
  `;
}

/** What could not be read, what looks wrong, what was done. */
export function chartRemarks({ unreadable, doubts, remarks }: ChartReading): TemplateResult {
  return html`
    ${unreadable.length ? html`<div class="fault">
      <h3>✕ ${counted(unreadable.length, 'field')} could not be read</h3>
      <p>Each stays as text in its cell and counts as no figure. Rows and columns are those of the file.</p>
      <div class="table" role="region" aria-label="Fields that could not be read" tabindex="0"><table class="unreadable">
        <thead><tr><th scope="col">Row</th><th scope="col">Column</th><th scope="col">Text</th><th scope="col">Why</th></tr></thead>
        <tbody>${unreadable.slice(0, MOST.listed).map(({ row, col, text, sentence }) => html`<tr><td>${row + 1}</td><td>${col + 1}</td><td>${text}</td><td>${sentence}</td></tr>`)}</tbody>
      </table></div>
      ${unreadable.length > MOST.listed ? html`<p>And ${(unreadable.length - MOST.listed).toLocaleString('en-GB')} more.</p>` : nothing}
    </div>` : nothing}
    ${doubts.length ? html`<div class="note"><h3>⚠ Look again</h3><ul>${doubts.slice(0, MOST.listed).map((doubt) => html`<li>${doubt}</li>`)}</ul></div>` : nothing}
    ${remarks.length ? html`<details><summary>What was done (${remarks.length})</summary><ul>${remarks.slice(0, MOST.listed).map((remark) => html`<li>${remark}</li>`)}</ul></details>` : nothing}
  `;
}
