/**
 * Panels and dialogs beside the grid. They hold no facts: state comes in as
 * properties, wishes go out as events, and the app grants them. Here is what the
 * first sight of the page needs; `later.ts` is the door of all others.
 */
export { shownResult, type ShownResult } from './shown.ts';
export { WorkingPanel } from './working.ts';
export type { Mend } from './working-fault.ts';
export type { LossesPanel } from './losses.ts';
export type { TwoReadingsPanel, Readings } from './two-readings.ts';
export type { SideBySidePanel, ComparedInput, ComparedResult, Comparison, ComparisonChange } from './side-by-side.ts';
export type { Elsewhere, PeoplePanel, PeopleView, StandingRow, TakePerson } from './people.ts';
export type { WorkedAsked, WorkedBegin, WorkedForm } from './worked-form.ts';
export type { Started, StartGarment, StartOwnPanel, StartPerson } from './start-own.ts';
export type { TemplatesPanel, TemplateCard } from './templates.ts';
export type { NamesPanel, NameRow } from './names.ts';
export type { RenamePanel, Titles } from './rename.ts';
export type { ImportChart, ImportEvent, TakenNames } from './import-chart.ts';
export type { ExportTable, SaveFileEvent } from './export-table.ts';
export type { FindPanel, FoundRow } from './find.ts';
export { NO_WISH, type FindWish } from './find-wish.ts';
export type { HistoryPanel, HistoryCell, HistoryRow } from './history.ts';
export type { PinsPanel, PinRow, PinSheet } from './pins.ts';
export { cautionInWords } from './pin-words.ts';
export type { NotePanel } from './note.ts';
export type { SortPanel, SortWish } from './sort.ts';
export type { FilterPanel, FilterWish } from './filter.ts';
export type { Block, BlockColumn } from './block-columns.ts';
export type { CellFormatPanel, LookChange } from './cell-format.ts';
export type { ReferencePanel, PutExampleEvent } from './reference.ts';
export type { Tried } from './reference-card.ts';
export type { ShelfPanel, BookWish, PartFile, ShelfRow } from './shelf.ts';
export type { SetAsidePanel, AsideRow } from './set-aside.ts';
export type {
  Footnote, FullSizeCurve, PaperHead, Printed, PrintedCell, PrintedRow, PrintedSheet, PrintedTable, Ticket, TicketFigure, TicketPart, TicketPicture, TicketRow,
} from './paper-parts.ts';
export type { Shopping, ShoppingItem, ShoppingList, ShoppingNeed, ShownFigure, Unlisted } from './to-buy-parts.ts';
export type { Candidate, PutWish, ToBuyPanel } from './to-buy.ts';
export type { AtTheTablePanel } from './at-the-table.ts';
export type { Awake, TableStep } from './at-the-table-parts.ts';
export type { PaperPanel } from './paper.ts';
export type { PrintPanel, PrintChoice, PrintOffer } from './print.ts';
export type { WorkBackPanel } from './work-back.ts';
export type { BackBound, BackCell, BackFound, BackInput, BackOffer, BackPin, BackWish, WorkBackShown } from './work-back-parts.ts';
export type { KeptList, KeptWish } from './kept-list.ts';
export type { LayPanel } from './lay.ts';
export type { LayChange, LayCompared, LayKept, LayList, LayPieceRow, LaySentence, LayShown, LayView } from './lay-parts.ts';
export type { LayPlan, LayPlanRow, LayToScale } from './lay-paper.ts';
export type { Run, RunCell, RunOfValuesPanel, RunPin, RunValue, RunWish } from './run-of-values.ts';
export type { BoardPart, BoardSpot, BoardView, ShapeRow, ShapesView, TraceView } from './shape-parts.ts';
export type { ShapesPanel } from './shape.ts';
