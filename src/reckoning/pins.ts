/** The cautions of cells as the page knows them: few among many results, so they are kept apart by place. */
import type { CellAddress, Effect, SheetId } from '../workbook/types.ts';
import { GONE, isShift, rowsAfterOrder, sheetIsKept, sheetOf, type Ordering, type Places } from './follow.ts';
import type { CellCaution, SheetChanges } from './protocol.ts';

export interface PinnedCell extends CellAddress {
  readonly cautions: readonly CellCaution[];
}

const NONE: readonly CellCaution[] = Object.freeze([]);

export class Pins {
  readonly #sheets = new Map<SheetId, Map<number, Map<number, readonly CellCaution[]>>>();

  at(sheet: SheetId, row: number, col: number): readonly CellCaution[] {
    return this.#sheets.get(sheet)?.get(row)?.get(col) ?? NONE;
  }

  /** Every cell of a sheet that has any, in reading order. */
  of(sheet: SheetId): PinnedCell[] {
    return [...(this.#sheets.get(sheet) ?? [])]
      .flatMap(([row, cells]) => [...cells].map(([col, cautions]) => ({ sheet, row, col, cautions })))
      .sort((a, b) => a.row - b.row || a.col - b.col);
  }

  clear(): void {
    this.#sheets.clear();
  }

  /** What the worker sent of one sheet, at the places where those cells stand now. */
  take({ sheet, cautions = [] }: SheetChanges, { row, col }: Places): void {
    let rows = this.#sheets.get(sheet);
    if (rows !== undefined && rows.size > 0) {
      for (let i = 0; i < row.length; i++) {
        const cells = rows.get(row[i]!);
        if (cells?.delete(col[i]!) && cells.size === 0) rows.delete(row[i]!);
      }
    }
    if (cautions.length === 0) return;
    if (rows === undefined) this.#sheets.set(sheet, rows = new Map());
    for (const { at, cautions: found } of cautions) {
      if (row[at] === GONE) continue;
      let cells = rows.get(row[at]!);
      if (cells === undefined) rows.set(row[at]!, cells = new Map());
      cells.set(col[at]!, found);
    }
  }

  /** Goes with the cells that an edit moves or does away with. */
  follow(effect: Effect): void {
    if (effect.do === 'sheets') {
      for (const sheet of this.#sheets.keys()) if (!sheetIsKept(sheet, [effect])) this.#sheets.delete(sheet);
      return;
    }
    if (effect.do === 'name' || effect.do === 'layouts') return;
    const rows = this.#sheets.get(sheetOf(effect));
    if (rows === undefined || rows.size === 0) return;
    if (effect.do === 'orderRows') {
      this.#order(rows, effect);
      return;
    }
    if (!isShift(effect)) {
      for (const { row, col } of effect.cells) rows.get(row)?.delete(col);
      return;
    }
    const { at, count } = effect;
    const inserts = effect.do === 'insertRows' || effect.do === 'insertColumns';
    const moved = (place: number): number => (place < at ? place : inserts ? place + count : place < at + count ? -1 : place - count);
    const shifted = <T>(places: Map<number, T>): Map<number, T> => new Map([...places].map(([place, what]) => [moved(place), what] as const).filter(([place]) => place >= 0));
    if (effect.do === 'insertRows' || effect.do === 'removeRows') this.#sheets.set(effect.sheet, shifted(rows));
    else for (const [row, cells] of rows) rows.set(row, shifted(cells));
  }

  #order(rows: Map<number, Map<number, readonly CellCaution[]>>, effect: Ordering): void {
    const { area: { sheet, left, right } } = effect;
    const rowAfter = rowsAfterOrder(effect);
    const ordered: typeof rows = new Map();
    for (const [row, cells] of rows) {
      for (const [col, found] of cells) {
        const to = col < left || col > right ? row : rowAfter(row);
        let line = ordered.get(to);
        if (line === undefined) ordered.set(to, line = new Map());
        line.set(col, found);
      }
    }
    this.#sheets.set(sheet, ordered);
  }
}
