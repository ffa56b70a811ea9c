/**
 * Marks the active cell's element: it gets an id, on which its look hangs, and
 * at rest the field with the focus stands for it (see the top of grid.ts).
 * Each cell has an id of its own, so that a move is a change that screen
 * readers hear of. Done here and not in the rows' template, so that a move
 * draws no row anew.
 */
import type { CellPlace } from './view.ts';

export class ActiveCell {
  #element: Element | null = null;

  mark(within: Element, field: Element, { row, col }: CellPlace, editing: boolean): void {
    const id = `cell-${row}-${col}`;
    if (!this.#element?.isConnected || this.#element.id !== id || !isAt(this.#element, row, col)) {
      this.#element?.removeAttribute('id');
      this.#element = within.querySelector(`[aria-rowindex="${row + 2}"]`)?.querySelector(`[aria-colindex="${col + 2}"]`) ?? null;
      if (this.#element) this.#element.id = id;
    }
    if (editing) return;
    for (const [name, value] of [['aria-controls', 'cells'], ['aria-activedescendant', id]] as const) {
      if (field.getAttribute(name) !== value) field.setAttribute(name, value);
    }
  }
}

/** Elements are used again for other cells when the columns in view change. */
function isAt(element: Element, row: number, col: number): boolean {
  return element.getAttribute('aria-colindex') === String(col + 2) && element.closest('[aria-rowindex]')?.getAttribute('aria-rowindex') === String(row + 2);
}
