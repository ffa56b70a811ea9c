/**
 * What the grid and the entry line ask for. All bubble and cross shadow roots.
 * Nothing here changes the workbook: whoever listens does, and hands a new view.
 */
import type { CellAddress } from '../workbook/types.ts';
import type { CellArea, Selection } from './view.ts';

/** Where the selection goes after something was entered. */
export type Then = 'down' | 'up' | 'right' | 'left' | 'stay';

/** `raw` exactly as typed, for the cell it was begun in. Cancelling the event (`preventDefault`) keeps the editor open. */
export interface CommitDetail extends CellAddress {
  readonly raw: string;
  readonly then: Then;
}

export interface ClipDetail {
  readonly area: CellArea;
  /**
   * What goes out as `text/plain`: to tell one's own cells from others' when
   * they come back. Of many cells it is promised: it comes when they are on the
   * clipboard, and not at all, with an error, when they could not be put there.
   */
  readonly text: string | Promise<string>;
  /** The event's own; more may be put on it. `null` when the browser gave none. */
  readonly data: DataTransfer | null;
}

export interface PasteDetail {
  readonly area: CellArea;
  /** What came as `text/plain`. */
  readonly text: string;
  /** What came as rows of cells, at least one by one: by its HTML where that says more than the text. */
  readonly table: readonly (readonly string[])[];
}

export interface EditDetail extends CellAddress {
  readonly text: string;
}

/** The editor closed. */
export interface EditEndDetail extends CellAddress {
  /** Its text was committed or handed over to another editor. */
  readonly kept: boolean;
  /** Where the user goes on in the cells; `null` when the focus went elsewhere. */
  readonly then: Then | null;
}

export interface ColumnWidth {
  readonly col: number;
  /** `null`: back to the usual width. */
  readonly width: number | null;
}

export interface FillDetail {
  /** The cells that go on. */
  readonly from: CellArea;
  /** All cells after the fill, the first among them. */
  readonly to: CellArea;
}

export interface MenuDetail {
  /** In the window. */
  readonly x: number;
  readonly y: number;
  /** What it was asked at. It is selected already. */
  readonly part: 'cell' | 'row' | 'column' | 'corner';
}

export interface GridEvents {
  'tt-select': { readonly selection: Selection };
  'tt-commit': CommitDetail;
  'tt-clear': { readonly area: CellArea };
  'tt-copy': ClipDetail;
  /** As copy; the cells are to move when they are pasted. */
  'tt-cut': ClipDetail;
  'tt-paste': PasteDetail;
  /** One action, whatever number of columns. */
  'tt-width': { readonly widths: readonly ColumnWidth[] };
  'tt-fill': FillDetail;
  'tt-menu': MenuDetail;
  'tt-edit-start': EditDetail;
  'tt-edit-change': EditDetail;
  'tt-edit-end': EditEndDetail;
  /** The user reached the end of what is shown and wants to go on: wanted counts. */
  'tt-more-rows': { readonly rowCount: number; readonly colCount: number };
  /** From the entry line: go to what was typed, an address or a name. */
  'tt-go': { readonly text: string };
  /** From the entry line: give the active cell or the selected block this name; an empty text takes the name away. */
  'tt-name': { readonly text: string };
}

export type GridEvent<K extends keyof GridEvents> = CustomEvent<GridEvents[K]>;

/** Sends one; false when a listener cancelled it. */
export function send<K extends keyof GridEvents>(from: HTMLElement, type: K, detail: GridEvents[K]): boolean {
  return from.dispatchEvent(new CustomEvent(type, { detail, bubbles: true, composed: true, cancelable: true }));
}

declare global {
  interface HTMLElementEventMap {
    'tt-select': GridEvent<'tt-select'>;
    'tt-commit': GridEvent<'tt-commit'>;
    'tt-clear': GridEvent<'tt-clear'>;
    'tt-copy': GridEvent<'tt-copy'>;
    'tt-cut': GridEvent<'tt-cut'>;
    'tt-paste': GridEvent<'tt-paste'>;
    'tt-width': GridEvent<'tt-width'>;
    'tt-fill': GridEvent<'tt-fill'>;
    'tt-menu': GridEvent<'tt-menu'>;
    'tt-edit-start': GridEvent<'tt-edit-start'>;
    'tt-edit-change': GridEvent<'tt-edit-change'>;
    'tt-edit-end': GridEvent<'tt-edit-end'>;
    'tt-more-rows': GridEvent<'tt-more-rows'>;
    'tt-go': GridEvent<'tt-go'>;
    'tt-name': GridEvent<'tt-name'>;
  }
}
