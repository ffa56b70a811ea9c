/**
 * The workbook as plain data: what was typed, how it is to look, and nothing
 * that can be worked out from it. Results live in `src/reckoning`.
 *
 * Rows and columns count from 0 here; people and formulas count from 1 and A.
 */
import type { UnitCode } from '../quantities/index.ts';
import type { KeptLays } from './kept-lays.ts';
import type { BookRecord } from './records/index.ts';

/** Given once, never used again within a workbook, so that a renamed sheet is still the same sheet. */
export type SheetId = number;

export interface CellAddress {
  readonly sheet: SheetId;
  readonly row: number;
  readonly col: number;
}

/** A rectangle of cells; both ends belong to it. */
export interface Area {
  readonly sheet: SheetId;
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}

/** How a cell shows. Nothing here changes its value. */
export interface Look {
  /** Show in this unit, whatever the workbook's setting. */
  readonly unit?: UnitCode;
  /** Show inches to this part of an inch. */
  readonly step?: 8 | 16 | 32;
  /** Show this many decimals. */
  readonly decimals?: number;
  readonly strong?: true;
  readonly italic?: true;
  /** A line along the cell's upper or lower edge, or all around it. */
  readonly border?: 'above' | 'below' | 'around';
  /** A heading row's cell. */
  readonly heading?: true;
  readonly align?: 'start' | 'centre' | 'end';
}

export interface Cell {
  /** Exactly what was typed; a formula starts with `=`. Never empty without a look, a note or an input mark. */
  readonly raw: string;
  readonly look?: Look;
  /** Marked as a figure for the user to fill in. */
  readonly input?: true;
  readonly note?: string;
  /** Pins on it that were seen and may stand; only on a formula. */
  readonly acknowledged?: readonly Acknowledged[];
}

/** One pin that was seen, by the print of its figures (`CellCaution` of the protocol). */
export interface Acknowledged {
  readonly print: string;
  /** Why it may stand; may be empty. */
  readonly note: string;
}

/** `undefined` is an empty cell; a row ends with a cell. The normal form is told in `cells.ts`. */
export type Row = readonly (Cell | undefined)[];

/** Rows or columns by the first and last of each stretch: ascending, none touching the next. */
export type Runs = readonly (readonly [first: number, last: number])[];

/** Rows and columns that were hidden by hand. */
export interface Hidden {
  readonly rows: Runs;
  readonly columns: Runs;
}

/** So many rows from the top and columns from the left stay in view while the rest scrolls. */
export interface Frozen {
  readonly rows: number;
  readonly columns: number;
}

/** `is` and `isNot` compare the whole cell, `has` and `hasNot` look inside its text; `more` to `atMost` compare figures. */
export type FilterTest = 'is' | 'isNot' | 'has' | 'hasNot' | 'more' | 'atLeast' | 'less' | 'atMost' | 'empty' | 'filled';

export interface Condition {
  readonly col: number;
  readonly test: FilterTest;
  /** As it was typed, a unit and all; empty for `empty` and `filled`. */
  readonly text: string;
}

/**
 * Show only rows that match. The workbook holds no results, so it holds what
 * came of matching them: `hides` is as of when the filter was last applied. A
 * row does not vanish while it is typed in.
 */
export interface Filter {
  /** The rows that are matched; headings are not among them. */
  readonly area: Omit<Area, 'sheet'>;
  /** A row matches when it meets all of them. */
  readonly conditions: readonly Condition[];
  /** The rows that did not match. */
  readonly hides: Runs;
}

export interface Sheet {
  readonly id: SheetId;
  readonly name: string;
  /** `undefined` is an empty row; the list ends with a row. */
  readonly rows: readonly (Row | undefined)[];
  /** Width in CSS pixels by column; a column not named has the usual width. */
  readonly widths: Readonly<Record<number, number>>;
  /** One line under the name in the list of sheets. */
  readonly about?: string;
  /** Not there when nothing is. */
  readonly hidden?: Hidden;
  /** Not there when all of the sheet scrolls. */
  readonly frozen?: Frozen;
  readonly filter?: Filter;
}

/** A name for a cell or for a block of cells (a size chart is a named block). */
export interface NamedArea {
  readonly name: string;
  /** `null` when the cells it pointed at were removed. */
  readonly area: Area | null;
  readonly kind: 'cells' | 'chart';
}

/** How lengths show: each in the unit it was typed in, in one system, or in both. */
export type ShowSystem = 'own' | 'cm' | 'in' | 'both';

export interface Settings {
  readonly show: ShowSystem;
  readonly inchStep: 8 | 16 | 32;
  /** Decimals are shown and typed with a comma; with a point where it is not there. Formulas are kept with points all the same. */
  readonly decimalMark?: ',';
}

export interface Book {
  readonly id: string;
  readonly title: string;
  /** For whom. */
  readonly person: string;
  readonly settings: Settings;
  readonly sheets: readonly Sheet[];
  /** In the order of their folded names. */
  readonly names: readonly NamedArea[];
  readonly nextSheetId: SheetId;
  /** Besides the cells, in the order in which they came; not there when there are none. */
  readonly records?: readonly BookRecord[];
}

export interface CellChange {
  readonly row: number;
  readonly col: number;
  /** `null` empties the cell. */
  readonly cell: Cell | null;
}

type SetRecord = BookRecord extends infer One ? One extends BookRecord
  ? { readonly do: 'setRecord'; readonly kind: One['kind']; readonly id: string; readonly data: One['data'] | null; readonly at?: number } : never : never;

/**
 * The only way to change a workbook. Plain data, so that it can be kept in the
 * journal and played again. One thing a user does is one edit (`many` joins
 * several, with a label for "Undo: …").
 */
export type Edit =
  | { readonly do: 'setCells'; readonly sheet: SheetId; readonly cells: readonly CellChange[] }
  | { readonly do: 'insertRows' | 'removeRows' | 'insertColumns' | 'removeColumns'; readonly sheet: SheetId; readonly at: number; readonly count: number }
  /** They go before the one that stood at `to`, or to the end when it is one past the last; what points at them follows. */
  | { readonly do: 'moveRows' | 'moveColumns'; readonly sheet: SheetId; readonly at: number; readonly count: number; readonly to: number }
  /** The rows of a block in another order: `order[i]` is the row, from the block's top, that comes to stand at place `i`. What points at them follows. */
  | { readonly do: 'orderRows'; readonly area: Area; readonly order: readonly number[] }
  /** `pins`: all that are acknowledged on the cell from now on. */
  | { readonly do: 'acknowledge'; readonly sheet: SheetId; readonly row: number; readonly col: number; readonly pins: readonly Acknowledged[] }
  /** Cut and paste: what pointed at the moved cells follows them. */
  | { readonly do: 'moveCells'; readonly from: Area; readonly to: CellAddress }
  | { readonly do: 'addSheet'; readonly sheet: Sheet; readonly at: number }
  /** `nextSheetId` stands only in the inverse of `addSheet`, which also puts the counter back. */
  | { readonly do: 'removeSheet'; readonly sheet: SheetId; readonly nextSheetId?: SheetId }
  | { readonly do: 'renameSheet'; readonly sheet: SheetId; readonly name: string }
  | { readonly do: 'moveSheet'; readonly sheet: SheetId; readonly to: number }
  | { readonly do: 'setAbout'; readonly sheet: SheetId; readonly about: string }
  | { readonly do: 'setName'; readonly name: string; readonly target: Omit<NamedArea, 'name'> | null }
  /** Formulas that use the name follow it. */
  | { readonly do: 'renameName'; readonly name: string; readonly to: string }
  | { readonly do: 'setWidth'; readonly sheet: SheetId; readonly col: number; readonly width: number | null }
  /** `runs`: all that are hidden by hand from now on. */
  | { readonly do: 'setHidden'; readonly sheet: SheetId; readonly axis: 'rows' | 'columns'; readonly runs: Runs }
  | { readonly do: 'setFrozen'; readonly sheet: SheetId; readonly rows: number; readonly columns: number }
  | { readonly do: 'setFilter'; readonly sheet: SheetId; readonly filter: Filter | null }
  | { readonly do: 'setSettings'; readonly settings: Settings }
  | { readonly do: 'setTitle'; readonly title: string; readonly person: string }
  /** One more record, another in its place, or (`data: null`) none any more. `at`: its place when it is new. */
  | SetRecord
  | { readonly do: 'many'; readonly label: string; readonly edits: readonly Edit[] };

/**
 * What an edit means to the engine: the least it must be told. Made by `apply`
 * beside the new workbook, so that the engine keeps no second copy of it.
 */
export type Effect =
  /**
   * Read these cells. Their text is new, or a word in it now means something
   * else: a sheet or a name of which it speaks has come or gone.
   */
  | { readonly do: 'cells'; readonly sheet: SheetId; readonly cells: readonly { readonly row: number; readonly col: number; readonly raw: string }[] }
  /**
   * The engine shifts its cells, formulas and names by itself. Only what it
   * would not shift as the workbook does comes after this as `cells` and
   * `name`: at or past the last typed row or column it leaves references alone.
   */
  | { readonly do: 'insertRows' | 'removeRows' | 'insertColumns' | 'removeColumns'; readonly sheet: SheetId; readonly at: number; readonly count: number }
  /**
   * Cells change places with their rows, and formulas with them; what points
   * at the cells still does. Formulas of which that is not all come before this
   * as empty `cells`, and after it as they are now.
   */
  | { readonly do: 'orderRows'; readonly area: Area; readonly order: readonly number[] }
  /** The sheets as they are now; the engine adds, removes and renames to match. New sheets come with their cells in a `cells` effect after this one. */
  | { readonly do: 'sheets'; readonly sheets: readonly { readonly id: SheetId; readonly name: string }[] }
  /** `null`: the name is gone. `area: null`: it is there but what it pointed at was removed. */
  | { readonly do: 'name'; readonly name: string; readonly target: { readonly area: Area | null } | null }
  /** Every layout that is kept, and every drawn shape, from now on. */
  | { readonly do: 'layouts'; readonly kept: KeptLays };

export interface Applied {
  readonly book: Book;
  /** Undoes the edit exactly: `apply(inverse, book).book` equals the workbook before. */
  readonly inverse: Edit;
  readonly effects: readonly Effect[];
}
