/** What to try in the demo garment: a few words each, and each goes when it was done. */
import { html, nothing, type TemplateResult } from 'lit';
import { areaPointedAt, cellAt, recordsOf, type Area, type Book } from '../workbook/index.ts';
import type { Desk } from './desk.ts';

interface ToTry {
  readonly say: string;
  readonly area: Area | null;
  readonly lays: boolean;
}

/** Those that were not done yet, of places that are still there. */
export function marksToTry(book: Book): readonly ToTry[] {
  return recordsOf(book, 'mark').flatMap(({ data }): ToTry[] => {
    if (data.was === null) return recordsOf(book, 'lay').some((lay) => lay.data.kept) ? [] : [{ say: data.say, area: areaPointedAt(book, data.at), lays: true }];
    const area = areaPointedAt(book, data.at);
    const sheet = area && book.sheets.find(({ id }) => id === area.sheet);
    return sheet && cellAt(sheet, area.top, area.left)?.raw === data.was ? [{ say: data.say, area, lays: false }] : [];
  });
}

/**
 * @param go to a cell
 * @param run a command by its id
 */
export function firstMarks(desk: Desk, go: (area: Area) => void, run: (id: string) => void): TemplateResult | typeof nothing {
  const marks = marksToTry(desk.book);
  if (marks.length === 0 || desk.reading !== null) return nothing;
  return html`<p class="marks"><b>To try:</b> ${marks.map(({ say, area, lays }) => html`
    <button @click=${() => { if (area) go(area); if (lays) run('lay'); }}>${say}</button>`)}</p>`;
}
