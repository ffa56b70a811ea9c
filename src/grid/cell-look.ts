/** How one cell looks: its classes and what is in it. */
import { html, nothing } from 'lit';
import type { CellView } from './view.ts';

const isPinned = ({ caution, acknowledged }: CellView): boolean => caution !== undefined || acknowledged !== undefined;

export const spillable = (cell: CellView | null, drafted: string | null): boolean =>
  drafted !== null || (cell !== null && cell.kind === 'text' && (cell.align ?? 'start') === 'start' && !isPinned(cell) && !cell.text.includes('\n'));

export function cellClasses(cell: CellView | null, drafted: string | null): string {
  if (drafted !== null || !cell) return 'cell full draft';
  const align = cell.align ?? (cell.kind === 'figure' ? 'end' : cell.kind === 'truth' ? 'centre' : 'start');
  let name = `cell full ${cell.kind} ${align}`;
  if (cell.typed) name += ' typed';
  if (cell.input) name += ' input';
  if (cell.strong) name += ' strong';
  if (cell.italic) name += ' italic';
  if (cell.heading) name += ' heading';
  if (cell.border) name += ` line-${cell.border}`;
  if (isPinned(cell)) name += ' pinned';
  if (cell.note) name += ' noted';
  if (cell.text.includes('\n')) name += ' lined';
  return name;
}

/** Where a text has more lines than its row shows: those that show, and how many do not. */
export function cutLines(text: string, lines: number): { readonly shown: string; readonly more: number } {
  const all = text.split('\n');
  return all.length <= lines ? { shown: text, more: 0 } : { shown: all.slice(0, lines).join('\n'), more: all.length - lines };
}

export function cellContent(cell: CellView, lines: number): unknown {
  if (isPinned(cell) || cell.note || cell.kind === 'error') {
    return html`${cell.kind === 'error' ? html`<i class="wrong">!</i>` : nothing}${isPinned(cell) ? html`<i class=${cell.caution ? 'pin' : 'pin settled'}></i>` : nothing}${
      cell.note ? html`<i class="note"></i>` : nothing}${words(cell, lines)}`;
  }
  return words(cell, lines);
}

function words(cell: CellView, lines: number): unknown {
  if (cell.text.includes('\n')) {
    const { shown, more } = cutLines(cell.text, lines);
    return more ? html`${shown} <i class="rest">+ ${more} ${more === 1 ? 'line' : 'lines'}</i>` : shown;
  }
  return cell.also ? html`${cell.text} <small>${cell.also}</small>` : cell.text;
}
