/** The templates of the heading row and of one row of cells. No state: all that matters comes in. */
import { html, nothing, type TemplateResult } from 'lit';
import { columnName } from '../formula/index.ts';
import { spokenCell } from './spoken.ts';
import type { Track } from './window.ts';
import type { CellArea, CellView, Draft, SheetView } from './view.ts';

/** All that a row's look depends on besides the row's number, and which cell is active. */
export interface RowLook {
  readonly view: SheetView;
  readonly tracks: readonly Track[];
  readonly selected: CellArea;
  readonly draft: Draft | null;
}

const gap = html`<span class="gap" role="none"></span>`;
const flag = (truth: boolean): 'true' | 'false' => (truth ? 'true' : 'false');

export function headTemplate(view: SheetView, tracks: readonly Track[], selected: CellArea): TemplateResult {
  const allRows = selected.top === 0 && selected.bottom === view.rowCount - 1;
  return html`<div role="row" class="row" aria-rowindex="1">
    <div role="columnheader" class="corner" aria-colindex="1"><span class="hidden">Row</span></div>
    ${tracks.map((track) => ('gap' in track ? gap : html`
      <div role="columnheader" class="column ${track.col >= selected.left && track.col <= selected.right ? 'on' : ''}"
        aria-colindex=${track.col + 2} aria-selected=${flag(allRows && track.col >= selected.left && track.col <= selected.right)}>
        <span>${view.columnTitle?.(track.col) ?? columnName(track.col)}</span><i class="edge" data-col=${track.col}></i>
      </div>`))}
  </div>`;
}

export function rowTemplate(row: number, look: RowLook): TemplateResult {
  const { view, selected } = look;
  const inRow = row >= selected.top && row <= selected.bottom;
  const allColumns = inRow && selected.left === 0 && selected.right === view.colCount - 1;
  return html`<div role="row" class="row" aria-rowindex=${row + 2}>
    <div role="rowheader" class=${inRow ? 'number on' : 'number'} aria-colindex="1" aria-selected=${flag(allColumns)}>${row + 1}</div>
    ${cellTemplates(row, look, inRow)}
  </div>`;
}

/** About the width of a character: only to tell how far a text reaches over its empty neighbours. */
const CHARACTER = 7.4;
const PADDING = 20;

function cellTemplates(row: number, { view, tracks, selected, draft }: RowLook, inRow: boolean): TemplateResult[] {
  const cells: TemplateResult[] = [];
  // Pixels that the text of a cell further left still needs.
  let over = 0;
  for (const track of tracks) {
    if ('gap' in track) {
      cells.push(gap);
      over -= track.gap;
      continue;
    }
    const { col } = track;
    const chosen = flag(inRow && col >= selected.left && col <= selected.right);
    const drafted = draft && draft.row === row && draft.col === col ? draft.text : null;
    const cell = view.cell(row, col);
    const width = view.width(col);
    if (!cell && drafted === null) {
      const name = over > width ? 'cell under' : 'cell';
      over -= width;
      cells.push(html`<div role="gridcell" class=${name} aria-colindex=${col + 2} aria-selected=${chosen}></div>`);
      continue;
    }
    const text = drafted ?? cell!.text;
    over = text.length * CHARACTER + PADDING - width;
    const spills = over > 0 && col + 1 < view.colCount && spillable(cell, drafted) && view.cell(row, col + 1) === null;
    if (!spills) over = 0;
    const name = spills ? `${classes(cell, drafted)} spill` : classes(cell, drafted);
    const label = cell && drafted === null ? spokenCell(cell) : null;
    const inside = drafted ?? content(cell!);
    cells.push(label === null
      ? html`<div role="gridcell" class=${name} aria-colindex=${col + 2} aria-selected=${chosen}>${inside}</div>`
      : html`<div role="gridcell" class=${name} aria-colindex=${col + 2} aria-selected=${chosen} aria-label=${label}>${inside}</div>`);
  }
  return cells;
}

const spillable = (cell: CellView | null, drafted: string | null): boolean =>
  drafted !== null || (cell !== null && cell.kind === 'text' && (cell.align ?? 'start') === 'start' && !cell.caution);

function classes(cell: CellView | null, drafted: string | null): string {
  if (drafted !== null || !cell) return 'cell full draft';
  const align = cell.align ?? (cell.kind === 'figure' ? 'end' : cell.kind === 'truth' ? 'centre' : 'start');
  let name = `cell full ${cell.kind} ${align}`;
  if (cell.typed) name += ' typed';
  if (cell.input) name += ' input';
  if (cell.strong) name += ' strong';
  if (cell.heading) name += ' heading';
  if (cell.caution) name += ' pinned';
  if (cell.note) name += ' noted';
  return name;
}

function content(cell: CellView): unknown {
  if (cell.caution || cell.note || cell.kind === 'error') {
    return html`${cell.kind === 'error' ? html`<i class="wrong">!</i>` : nothing}${cell.caution ? html`<i class="pin"></i>` : nothing}${
      cell.note ? html`<i class="note"></i>` : nothing}${words(cell)}`;
  }
  return words(cell);
}

const words = (cell: CellView): unknown => (cell.also ? html`${cell.text} <small>${cell.also}</small>` : cell.text);
