/** When each row's results were touched last, by a count of changes: one number a row, written once for each changed result. */
import type { SheetId } from '../workbook/types.ts';

export class RowStamps {
  #now = 0;
  /** All rows are at least as new as this. */
  #all = 0;
  readonly #sheets = new Map<SheetId, Uint32Array<ArrayBuffer>>();

  /** A change begins. */
  next(): void {
    this.#now += 1;
  }

  touchAll(): void {
    this.#all = this.#now;
    this.#sheets.clear();
  }

  of(sheet: SheetId, row: number): number {
    return Math.max(this.#all, this.#sheets.get(sheet)?.[row] ?? 0);
  }

  /** What touches rows of one sheet during the change that has begun. */
  toucher(sheet: SheetId): (row: number) => void {
    let rows = this.#sheets.get(sheet) ?? new Uint32Array(256);
    this.#sheets.set(sheet, rows);
    const now = this.#now;
    return (row) => {
      if (row >= rows.length) {
        const longer = new Uint32Array(2 ** Math.ceil(Math.log2(row + 1)));
        longer.set(rows);
        this.#sheets.set(sheet, rows = longer);
      }
      rows[row] = now;
    };
  }
}
