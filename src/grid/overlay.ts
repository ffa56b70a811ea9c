/**
 * Outlines drawn over the cells: the selected block, the block pointed at, the
 * cells a formula uses, the cells a fill will reach.
 *
 * Rows and columns that stay in view make four panes: the cells that scroll,
 * the columns at the left, the rows at the top, and their corner. An outline
 * that reaches over several is drawn in parts, one in each, without a line
 * where they meet, so that no part has to be moved while the sheet scrolls.
 */
import { html, nothing, type TemplateResult } from 'lit';
import { referencesIn } from '../formula/index.ts';
import type { Geometry, Port, Stay } from './geometry.ts';
import { placed } from './placed.ts';
import { areaOf, isSingle } from './select.ts';
import type { CellArea, CellPlace, Selection, SheetView } from './view.ts';

export interface Outline {
  readonly kind: 'range' | 'pointed' | 'used' | 'fill';
  readonly area: CellArea;
  /** The place of a used block among the formula's references, from 1; or what a fill is going to do. */
  readonly label?: string;
}

export type Pane = 'cells' | 'left' | 'top' | 'corner';

export interface Part extends Outline {
  readonly pane: Pane;
  /** Classes for the sides at which it goes on in another pane. */
  readonly cut: string;
}

/** All that is outlined just now. */
export interface Outlined {
  readonly selection: Selection;
  readonly pointed: Selection | null;
  /** The formula being typed. */
  readonly formula: string | null;
  readonly names: readonly string[];
  readonly fill: { readonly area: CellArea; readonly words: string } | null;
}

export function outlines(view: SheetView, { selection, pointed, formula, names, fill }: Outlined): Outline[] {
  const all: Outline[] = isSingle(selection) ? [] : [{ kind: 'range', area: areaOf(selection) }];
  if (formula !== null) {
    referencesIn(formula, names).forEach((reference, index) => {
      if (reference.sheet !== undefined && reference.sheet.toLowerCase() !== view.name.toLowerCase()) return;
      const area = clipped(reference.area, view);
      if (area) all.push({ kind: 'used', area, label: String(index + 1) });
    });
  }
  if (pointed) all.push({ kind: 'pointed', area: areaOf(pointed) });
  if (fill) all.push({ kind: 'fill', area: fill.area, label: fill.words });
  return all;
}

/** The part of a block that is shown; `null` when none is. */
export function clipped(area: CellArea, view: Pick<SheetView, 'rowCount' | 'colCount'>): CellArea | null {
  if (area.top >= view.rowCount || area.left >= view.colCount) return null;
  return { ...area, bottom: Math.min(area.bottom, view.rowCount - 1), right: Math.min(area.right, view.colCount - 1) };
}

export const paneOf = ({ row, col }: CellPlace, { rows, cols }: Stay): Pane =>
  row < rows ? (col < cols ? 'corner' : 'top') : col < cols ? 'left' : 'cells';

/** An outline as it is drawn, in each pane that it reaches into. */
export function partsOf(outline: Outline, stay: Stay): Part[] {
  const { top, left, bottom, right } = outline.area;
  const split = (first: number, last: number, stays: number, cutEnd: string, cutStart: string): [number, number, string][] =>
    (first < stays && last >= stays ? [[first, stays - 1, cutEnd], [stays, last, cutStart]] : [[first, last, '']]);
  const parts: Part[] = [];
  for (const [t, b, cutDown] of split(top, bottom, stay.rows, 'cut-bottom', 'cut-top')) {
    for (const [l, r, cutAcross] of split(left, right, stay.cols, 'cut-right', 'cut-left')) {
      const { label, ...rest } = outline;
      parts.push({
        ...rest, ...(parts.length === 0 && label !== undefined && { label }),
        area: { top: t, left: l, bottom: b, right: r }, pane: paneOf({ row: t, col: l }, stay), cut: `${cutDown} ${cutAcross}`.trim(),
      });
    }
  }
  return parts;
}

export const partTemplates = (parts: readonly Part[], pane: Pane, geometry: Geometry): TemplateResult[] =>
  parts.filter((part) => part.pane === pane).map(({ kind, label, area, cut }) =>
    html`<div class="box ${kind} ${cut}" data-label=${label ?? nothing} aria-hidden="true" ${placed(geometry.box(area))}></div>`);

/**
 * Lays the editor over its cell; open, it grows with its text as far as the
 * view reaches. Over a cell that stays in view it stays too, by being sticky.
 */
export function placeEditor({ style }: HTMLElement, geometry: Geometry, port: Port, { row, col }: CellPlace, open: boolean): void {
  const box = geometry.box({ top: row, bottom: row, left: col, right: col });
  const [left, top] = [box.left - 1, box.top - 1];
  const [width, height] = [box.width + 1, box.height + 1];
  const inRows = row < geometry.stay.rows;
  const inCols = col < geometry.stay.cols;
  style.top = inRows ? `${top}px` : 'auto';
  style.left = inCols ? `${left}px` : 'auto';
  style.marginTop = inRows ? '0' : `${top}px`;
  style.marginLeft = inCols ? '0' : `${left}px`;
  style.zIndex = open && (inRows || inCols) ? '7' : '';
  style.width = open ? 'max-content' : `${width}px`;
  style.height = open ? 'auto' : `${height}px`;
  style.minWidth = open ? `${width}px` : '';
  style.minHeight = open ? `${height}px` : '';
  const seen = inCols ? left : left - port.left;
  style.maxWidth = open ? `${Math.max(width, port.width - seen - 4)}px` : '';
}
