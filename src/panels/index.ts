/**
 * Panels and dialogs beside the grid. They hold no facts: state comes in as
 * properties, wishes go out as events, and the app grants them.
 */
export { shownResult, type ShownResult } from './shown.ts';
export { WorkingPanel } from './working.ts';
export { SideBySidePanel, type ComparedInput, type ComparedResult, type Comparison, type ComparisonChange } from './side-by-side.ts';
export { TemplatesPanel, type TemplateCard } from './templates.ts';
export { NamesPanel, type NameRow } from './names.ts';
export { RenamePanel, type Titles } from './rename.ts';
export { ImportChart, type ImportEvent, type TakenNames } from './import-chart.ts';
export { ExportTable, type SaveFileEvent } from './export-table.ts';
