/**
 * The workbook: the only truth about what was typed, as plain data, and the
 * named edits that are the only way to change it. Pure functions throughout; no
 * results, no storage, no screen. May import quantities and formula.
 *
 * An edit's way: `apply` (apply.ts) hands it to the file of its kind
 * (`outcome`, `structure`, `move`, `sheets`, `names`), formulas follow through
 * `follow`, cells keep the normal form of `cells`. What is more than one edit
 * (`fill`, `sort`, `find`, `matching`, `clip`, `restore`) is worked out as plain
 * edits joined into one. `ledger` walks back through what was done.
 */
export type * from './types.ts';
export { apply } from './apply.ts';
export { EditRefused } from './refused.ts';
export { LIMITS } from './limits.ts';
export {
  cellAt, emptyBook, emptySheet, filledCells, nameCalled, sheetById, sheetNamed, usedArea, usedColumns,
} from './book.ts';
export type { PlacedCell } from './book.ts';
export { areaAt, areaHeight, areaWidth, sameArea } from './area.ts';
export { freeName, freeSheetName, nameFault, sheetNameFault } from './names.ts';
export { frozenOf, hiddenColumns, hiddenRows, rowShows } from './showing.ts';
export { Lines, aroundLines, seenCells, seenIn, shownBetween, unseenIn } from './seen.ts';
export type { Seen } from './seen.ts';
export { countOf, inRuns, joinRuns, normalRuns, runsOf, withoutRun } from './runs.ts';
export { focusOf, labelOf } from './label.ts';
export { keptLays } from './kept-lays.ts';
export type { KeptLay, KeptLays } from './kept-lays.ts';
export { areaPointedAt, cellPointedAt } from './pointing.ts';
export { recordCalled, recordsOf, tidyRecord } from './set-record.ts';
export * from './records/index.ts';
export { copyFrom, cutEdit, pasteEdit, pastedArea, pastedLines } from './clip.ts';
export type { Clip } from './clip.ts';
export { NO_HISTORY, entryOf, record, redo, undo } from './history.ts';
export type { Entry, History, HistoryStep } from './history.ts';
export { historyAfter, lookBack } from './ledger.ts';
export type { CellPast, LookBack, LookBackOptions, PastStep, Step } from './ledger.ts';
export { placeNow, restoreBookEdit, restoreCellEdit } from './restore.ts';
export { placeAfter, placeBefore } from './places.ts';
export { fillEdit } from './fill.ts';
export type { FillOptions } from './fill.ts';
export { firstRowIsHeadings, hasNeighbours, regionAround } from './region.ts';
export { sortEdit } from './sort.ts';
export type { SortKey } from './sort.ts';
export { orderOf } from './values.ts';
export type { PlainValue, ValueAt } from './values.ts';
export { chartSizes, letterRank, numberRank } from './sizes.ts';
export { findAll, partsFound, replaceEdit, replaced, rowFinder } from './find.ts';
export type { FindPlace, FindQuery, FoundText, ShownAt } from './find.ts';
export { comparesFigures, filterEdit, needsText } from './matching.ts';
export type { TextAt } from './matching.ts';
export { namesLost } from './losses.ts';
export type { LostName } from './losses.ts';
export { readBook, writeBook } from './file.ts';
export type { BookFile, NameFile, ReadBook, SheetFile } from './file.ts';
export { MOST_FILE_BYTES, bookText, readBookText } from './file-text.ts';
export { BOOK_FORMAT, FILE_VERSION, FILTER_TESTS, TEMPLATE_FORMAT, lookSchema } from './schema.ts';
export type { CellExtras, FileCell, FileWidth } from './schema.ts';
export { sheetFromTemplate, templateFrom } from './templates.ts';
export type { FromTemplate, Template, TemplateName } from './templates.ts';
export { readTemplate } from './template-file.ts';
export type { ReadTemplate } from './template-file.ts';
