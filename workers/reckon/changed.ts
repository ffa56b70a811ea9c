/** The cells whose results changed since they were last told. */
import type { Area } from '../../src/workbook/types.ts';
import type { CellRange, Place } from './internals.ts';

/** More than the columns of a sheet, so that row and column make one number. */
const COLUMNS = 1024;

export interface Shift {
  readonly axis: 'row' | 'col';
  readonly kind: 'insert' | 'remove';
  readonly at: number;
  readonly count: number;
}

export class Changed {
  readonly #sheets = new Map<number, Set<number>>();

  add({ sheet, row, col }: Place): void {
    if (sheet < 0) return; // The engine keeps names there.
    let cells = this.#sheets.get(sheet);
    if (cells === undefined) this.#sheets.set(sheet, cells = new Set());
    cells.add(row * COLUMNS + col);
  }

  addBlock({ start, end }: CellRange): void {
    for (let row = start.row; row <= end.row; row++) {
      for (let col = start.col; col <= end.col; col++) this.add({ sheet: start.sheet, row, col });
    }
  }

  /** Moves what was noted with its rows and columns. */
  shift(sheet: number, { axis, kind, at, count }: Shift): void {
    const cells = this.#sheets.get(sheet);
    if (cells === undefined) return;
    const moved = new Set<number>();
    for (const cell of cells) {
      const place = { row: Math.floor(cell / COLUMNS), col: cell % COLUMNS };
      if (place[axis] >= at) {
        if (kind === 'insert') place[axis] += count;
        else if (place[axis] < at + count) continue;
        else place[axis] -= count;
      }
      moved.add(place.row * COLUMNS + place.col);
    }
    this.#sheets.set(sheet, moved);
  }

  /** Moves what was noted with the rows of a block that change places. */
  order({ sheet, left, right }: Area, rowAfter: (row: number) => number): void {
    const cells = this.#sheets.get(sheet);
    if (cells === undefined) return;
    this.#sheets.set(sheet, new Set(Array.from(cells, (cell) => {
      const [row, col] = [Math.floor(cell / COLUMNS), cell % COLUMNS];
      return (col < left || col > right ? row : rowAfter(row)) * COLUMNS + col;
    })));
  }

  dropSheet(sheet: number): void {
    this.#sheets.delete(sheet);
  }

  /** Forgets all but some. */
  keep(wanted: (place: Place) => boolean): void {
    for (const [sheet, cells] of this.#sheets) {
      for (const cell of cells) if (!wanted({ sheet, row: Math.floor(cell / COLUMNS), col: cell % COLUMNS })) cells.delete(cell);
    }
  }

  /** The places by sheet, and forgets them. */
  take(): Map<number, Place[]> {
    const taken = new Map<number, Place[]>();
    for (const [sheet, cells] of this.#sheets) {
      taken.set(sheet, Array.from(cells, (cell) => ({ sheet, row: Math.floor(cell / COLUMNS), col: cell % COLUMNS })));
    }
    this.#sheets.clear();
    return taken;
  }
}
