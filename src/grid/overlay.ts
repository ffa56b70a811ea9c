/** Outlines drawn over the cells: the selected block, the block pointed at, the cells a formula uses. */
import { html, type TemplateResult } from 'lit';
import { referencesIn } from '../formula/index.ts';
import type { Geometry, Port } from './geometry.ts';
import { areaOf, isSingle } from './select.ts';
import type { CellArea, CellPlace, Selection, SheetView } from './view.ts';

export interface Outline {
  readonly kind: 'range' | 'pointed' | 'used';
  readonly area: CellArea;
  /** The place of a used block among the formula's references, from 1. */
  readonly number?: number;
}

export function outlines(view: SheetView, selection: Selection, pointed: Selection | null, formula: string | null, names: readonly string[]): Outline[] {
  const all: Outline[] = isSingle(selection) ? [] : [{ kind: 'range', area: areaOf(selection) }];
  if (formula !== null) {
    referencesIn(formula, names).forEach((reference, index) => {
      if (reference.sheet !== undefined && reference.sheet.toLowerCase() !== view.name.toLowerCase()) return;
      const area = clipped(reference.area, view);
      if (area) all.push({ kind: 'used', area, number: index + 1 });
    });
  }
  if (pointed) all.push({ kind: 'pointed', area: areaOf(pointed) });
  return all;
}

/** The part of a block that is shown; `null` when none is. */
function clipped(area: CellArea, view: SheetView): CellArea | null {
  if (area.top >= view.rowCount || area.left >= view.colCount) return null;
  return { ...area, bottom: Math.min(area.bottom, view.rowCount - 1), right: Math.min(area.right, view.colCount - 1) };
}

export const outlineTemplates = (all: readonly Outline[]): TemplateResult[] =>
  all.map(({ kind, number }) => html`<div class="box ${kind}" data-number=${number ?? ''} aria-hidden="true"></div>`);

/** Puts the drawn outlines in their places. */
export function placeOutlines(boxes: ArrayLike<HTMLElement>, all: readonly Outline[], geometry: Geometry): void {
  all.forEach(({ area }, index) => {
    const element = boxes[index];
    if (element) placeBox(element, geometry.box(area));
  });
}

/** The box's last pixel lies on the line between cells, so that neighbouring outlines share it. */
function placeBox(element: HTMLElement, box: { readonly left: number; readonly top: number; readonly width: number; readonly height: number }): void {
  element.style.left = `${box.left - 1}px`;
  element.style.top = `${box.top - 1}px`;
  element.style.width = `${box.width + 1}px`;
  element.style.height = `${box.height + 1}px`;
}

/** Lays the editor over its cell; open, it grows with its text as far as the view reaches. */
export function placeEditor(element: HTMLElement, geometry: Geometry, port: Port, { row, col }: CellPlace, open: boolean): void {
  const box = geometry.box({ top: row, bottom: row, left: col, right: col });
  const left = col === 0 && geometry.sticky ? box.left + port.left : box.left;
  placeBox(element, { ...box, left });
  const { style } = element;
  style.minWidth = open ? style.width : '';
  style.minHeight = open ? style.height : '';
  style.maxWidth = open ? `${Math.max(box.width + 1, port.left + port.width - left - 4)}px` : '';
  if (!open) return;
  style.width = 'max-content';
  style.height = 'auto';
}
