/** The templates of the heading row and of one row of cells. No state: all that matters comes in. */
import { html, nothing, type TemplateResult } from 'lit';
import { columnName } from '../formula/index.ts';
import type { Geometry } from './geometry.ts';
import { cellClasses, cellContent, spillable } from './cell-look.ts';
import { spokenCell, spokenColumn, spokenRow } from './spoken.ts';
import type { Track } from './window.ts';
import type { CellArea, Draft, SheetView } from './view.ts';

/** The columns that stand in a row: those that stay in view, then those that scroll. */
export interface Across {
  readonly kept: readonly Track[];
  readonly tracks: readonly Track[];
}

/** All that a row's look depends on besides the row's number, and which cell is active. */
export interface RowLook {
  readonly view: SheetView;
  readonly geometry: Geometry;
  readonly across: Across;
  readonly selected: CellArea;
  readonly draft: Draft | null;
}

const gap = html`<span class="gap" role="none"></span>`;
const flag = (truth: boolean): 'true' | 'false' => (truth ? 'true' : 'false');

/** True when a block reaches over all rows, or all columns, that show. */
const fromEnd = (first: number, last: number, { rank, total }: { rank: number; total: number }): boolean => rank === 0 && last === total - 1 && first <= last;

export function headTemplate({ view, geometry, across, selected }: Omit<RowLook, 'draft'>): TemplateResult {
  const { rows, cols, stay } = geometry;
  const allRows = fromEnd(selected.top, selected.bottom, { rank: rows.shown.rank(selected.top), total: view.rowCount });
  const heading = (track: Track): TemplateResult => {
    if ('gap' in track) return gap;
    const { col } = track;
    const chosen = col >= selected.left && col <= selected.right;
    const only = view.filtered?.(col);
    const tucked = cols.hiddenBefore(col);
    const end = cols.hiddenToEnd(col);
    const words = spokenColumn(only, tucked, end);
    return html`
      <div role="columnheader" class="column ${chosen ? 'on' : ''} ${tucked ? 'tucked' : ''} ${end ? 'tucked-end' : ''}" title=${words || nothing}
        aria-colindex=${col + 2} aria-selected=${flag(allRows && chosen)}>
        <span>${view.columnTitle?.(col) ?? columnName(col)}${only ? html` <small class="only" aria-hidden="true">only ${only}</small>` : nothing}</span>${
          words ? html`<span class="hidden">, ${words}</span>` : nothing}<i class="edge" data-col=${col}></i>
      </div>`;
  };
  return html`<div role="row" class="row heads" aria-rowindex="1">
    <div class=${stay.cols > 0 ? 'kept more' : 'kept'} role="none"><div role="columnheader" class="corner" aria-colindex="1"><span class="hidden">Row</span></div>${across.kept.map(heading)}</div>
    ${across.tracks.map(heading)}
  </div>`;
}

export function rowTemplate(row: number, look: RowLook): TemplateResult {
  const { view, geometry: { rows, cols, stay }, across, selected } = look;
  const inRow = row >= selected.top && row <= selected.bottom;
  const allColumns = inRow && fromEnd(selected.left, selected.right, { rank: cols.rank(selected.left), total: view.colCount });
  const lines = rows.lines(row);
  const tucked = rows.shown.all ? null : rows.shown.hiddenBefore(row);
  const end = rows.shown.all ? null : rows.shown.hiddenToEnd(row);
  const number = inRow ? 'number on' : 'number';
  const words = tucked || end ? spokenRow(row, tucked, end) : nothing;
  const cells = new Cells(row, look, inRow, lines);
  return html`<div role="row" class=${lines > 1 ? `row lines-${lines}` : 'row'} aria-rowindex=${row + 2}>
    <div class=${stay.cols > 0 ? 'kept more' : 'kept'} role="none"><div role="rowheader" class=${tucked ? `${number} tucked` : end ? `${number} tucked-end` : number}
      aria-colindex="1" aria-selected=${flag(allColumns)} aria-label=${words} title=${words}>${row + 1}</div>${cells.of(across.kept)}</div>
    ${cells.of(across.tracks)}
  </div>`;
}

/** About the width of a character: only to tell how far a text reaches over its empty neighbours. */
const CHARACTER = 7.4;
const PADDING = 20;

/** The cells of one row, from left to right. */
class Cells {
  /** Pixels that the text of a cell further left still needs. */
  #over = 0;

  constructor(private readonly row: number, private readonly look: RowLook, private readonly inRow: boolean, private readonly lines: number) {}

  /** A text never reaches from columns that stay in view into those that scroll. */
  of(tracks: readonly Track[]): TemplateResult[] {
    this.#over = 0;
    return tracks.map((track) => {
      if (!('gap' in track)) return this.#cell(track.col);
      this.#over -= track.gap;
      return gap;
    });
  }

  #cell(col: number): TemplateResult {
    const { row, inRow, look: { view, geometry, selected, draft } } = this;
    const { edges } = geometry;
    const chosen = flag(inRow && col >= selected.left && col <= selected.right);
    const drafted = draft && draft.row === row && draft.col === col ? draft.text : null;
    const cell = view.cell(row, col);
    const width = edges[col + 1]! - edges[col]!;
    if (!cell && drafted === null) {
      const name = this.#over > width ? 'cell under' : 'cell';
      this.#over -= width;
      return html`<div role="gridcell" class=${name} aria-colindex=${col + 2} aria-selected=${chosen}></div>`;
    }
    const text = drafted ?? cell!.text;
    this.#over = text.length * CHARACTER + PADDING - width;
    const spills = this.#over > 0 && this.lines === 1 && col + 1 < view.colCount && spillable(cell, drafted) && view.cell(row, col + 1) === null;
    if (!spills) this.#over = 0;
    const found = view.matches?.(row, col) ?? false;
    const name = `${cellClasses(cell, drafted)}${spills ? ' spill' : ''}${found ? ' found' : ''}`;
    const label = cell && drafted === null ? spokenCell(cell, this.lines, found) : null;
    const inside = drafted ?? cellContent(cell!, this.lines);
    return label === null
      ? html`<div role="gridcell" class=${name} aria-colindex=${col + 2} aria-selected=${chosen}>${inside}</div>`
      : html`<div role="gridcell" class=${name} aria-colindex=${col + 2} aria-selected=${chosen} aria-label=${label} title=${cell?.caution ?? cell?.acknowledged ?? nothing}>${inside}</div>`;
  }
}
