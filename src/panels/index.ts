/**
 * Panels and dialogs beside the grid. They hold no facts: state comes in as
 * properties, wishes go out as events, and the app grants them.
 */
export { shownResult, type ShownResult } from './shown.ts';
export { WorkingPanel } from './working.ts';
export { type Mend } from './working-fault.ts';
export { LossesPanel } from './losses.ts';
export { TwoReadingsPanel, type Readings } from './two-readings.ts';
export { SideBySidePanel, type ComparedInput, type ComparedResult, type Comparison, type ComparisonChange } from './side-by-side.ts';
export { TemplatesPanel, type TemplateCard } from './templates.ts';
export { NamesPanel, type NameRow } from './names.ts';
export { RenamePanel, type Titles } from './rename.ts';
export { ImportChart, type ImportEvent, type TakenNames } from './import-chart.ts';
export { ExportTable, type SaveFileEvent } from './export-table.ts';
export { FindPanel, NO_WISH, type FindWish, type FoundRow } from './find.ts';
export { HistoryPanel, type HistoryCell, type HistoryRow } from './history.ts';
export { PinsPanel, type PinRow, type PinSheet } from './pins.ts';
export { cautionInWords } from './pin-words.ts';
export { NotePanel } from './note.ts';
export { SortPanel, type SortWish } from './sort.ts';
export { FilterPanel, type FilterWish } from './filter.ts';
export type { Block, BlockColumn } from './block-columns.ts';
export { CellFormatPanel, type LookChange } from './cell-format.ts';
export { ReferencePanel, type PutExampleEvent } from './reference.ts';
export { type Tried } from './reference-card.ts';
export { ShelfPanel, type BookWish, type PartFile, type ShelfRow } from './shelf.ts';
export { SetAsidePanel, type AsideRow } from './set-aside.ts';
