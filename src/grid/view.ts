/**
 * What the grid is told: one sheet as it is to be drawn. The grid knows nothing
 * of formulas' results or of the workbook; it shows this and asks by events.
 *
 * Rows and columns count from 0. A view is never changed once given: when
 * anything differs, the grid gets a new object.
 */
import type { Runs, SheetId } from '../workbook/types.ts';

export interface CellPlace {
  readonly row: number;
  readonly col: number;
}

/** A rectangle of cells of the sheet in view; both ends belong to it. */
export interface CellArea {
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}

/**
 * The selected rectangle by two of its corners. `focus` is the active cell:
 * the one that typing goes to, that a screen reader reads and that moves when
 * a selection is extended with Shift. `anchor` is the corner that stays.
 */
export interface Selection {
  readonly anchor: CellPlace;
  readonly focus: CellPlace;
}

export interface CellView {
  /** What is shown; for an error its sentence. */
  readonly text: string;
  /** The same in the other system, shown small. */
  readonly also?: string;
  readonly kind: 'text' | 'figure' | 'truth' | 'error' | 'waiting';
  /** A figure that was typed, not worked out: shown on a basting line. */
  readonly typed?: boolean;
  /** Marked as one to fill in. */
  readonly input: boolean;
  readonly formula: boolean;
  readonly strong?: boolean;
  readonly italic?: boolean;
  readonly heading?: boolean;
  /** A line along the cell's upper or lower edge, or all around it. */
  readonly border?: 'above' | 'below' | 'around';
  readonly align?: 'start' | 'centre' | 'end';
  /** The sentence of a pin on this cell. */
  readonly caution?: string;
  /** The sentences of pins that were acknowledged, with her notes. */
  readonly acknowledged?: string;
  readonly note?: string;
}

export interface SheetView {
  readonly id: SheetId;
  readonly name: string;
  /** Rows to show, used or not: at least 100; more when the user nears the end (`tt-more-rows`). */
  readonly rowCount: number;
  /** Columns to show, used or not: at least 26. */
  readonly colCount: number;
  /** How many rows and columns hold something, counted from the top left; without it the grid looks for itself. */
  readonly used?: { readonly rows: number; readonly cols: number };
  /** `null`: an empty cell. */
  cell(row: number, col: number): CellView | null;
  /**
   * What a row's cells depend on: while all of it is the same in two views of
   * one sheet, the row is not drawn anew. Without it every new view draws all.
   */
  rowState?(row: number): readonly unknown[];
  /** In CSS pixels. */
  width(col: number): number;
  /** The heading over a column, its letter included; the letter alone when this is missing. */
  columnTitle?(col: number): string;
  /** Rows and columns that do not show, whyever: they take no room and no key comes to them. Ascending, none touching the next. */
  readonly hidden?: { readonly rows: Runs; readonly cols: Runs };
  /** So many rows from the top and columns from the left stay in view while the rest scrolls: as many of them as leave room for it. */
  readonly frozen?: { readonly rows: number; readonly cols: number };
  /** Rows that are taller because a text in them has line breaks, and how many lines it has: ascending, only rows of two lines and more. */
  readonly tall?: readonly (readonly [row: number, lines: number])[];
  /** What a row must meet in this column to show, in words ("more than 5 cm"); nothing for a column without a condition. */
  filtered?(col: number): string | undefined;
  /** True for the cells that were found. */
  matches?(row: number, col: number): boolean;
}

/** A text that is being typed for a cell somewhere else (in the entry line), shown in that cell meanwhile. */
export interface Draft extends CellPlace {
  readonly text: string;
}

/** Cells that the one asked about uses, or that use it: one thread to each, numbered from 1 as they are read out. */
export interface Threads {
  readonly of: CellPlace;
  /** Which way figures flow: from the ends to the cell, or from the cell to the ends. */
  readonly way: 'uses' | 'used by';
  readonly ends: readonly ThreadEnd[];
}

export interface ThreadEnd {
  /** `null`: in another sheet. */
  readonly area: CellArea | null;
  /** Where that is: "B40", "Measures C4". */
  readonly words: string;
}

export const NO_VIEW: SheetView = {
  id: 0, name: '', rowCount: 100, colCount: 26, used: { rows: 0, cols: 0 },
  cell: () => null,
  width: () => 118,
};
