/**
 * The grid of cells and the entry line over it: they draw a `SheetView` and ask
 * by events; they know nothing of the workbook or of the engine. Pure parts
 * (window, select, keys, clipboard, completion, pointing, geometry) have their
 * tests in tests/unit/grid, the elements in tests/browser/grid.
 */
export { Grid } from './grid.ts';
export { EntryLine } from './entry-line.ts';
export { joinEntryLine } from './join.ts';
export { Kept } from './kept.ts';
export { keys } from './keys.ts';
export { areaOf } from './select.ts';
export { startSlices } from './slices.ts';
export { fromClipboard, toHtml, toTsv, type Table } from './clipboard.ts';
export { MOST_THREADS } from './threads.ts';
export type { ClipDetail, ColumnWidth, CommitDetail, EditDetail, EditEndDetail, FillDetail, GridEvent, GridEvents, MenuDetail, PasteDetail, Then } from './events.ts';
export type { CellArea, CellPlace, CellView, Draft, Selection, SheetView, ThreadEnd, Threads } from './view.ts';
