/** What can be asked of rows, columns and the contents of cells: fill, sort, hide, find, look, look back. Part of the command table. */
import * as arrange from './arrange.ts';
import type { Command } from './commands.ts';
import type { Desk } from './desk.ts';

const hasHidden = (axis: 'rows' | 'columns') => (desk: Desk): boolean => (desk.sheet.hidden?.[axis].length ?? 0) > 0;
const isFiltered = (desk: Desk): boolean => desk.sheet.filter !== undefined;

/**
 * Keys: those that platforms have for it (Ctrl+F finds, F3 goes on; Ctrl+H and
 * Ctrl+D are the browser's own and left to it). The rest are Alt+Shift with the
 * command's letter, and with up and down for rows that go up and down.
 */
export const FIND_COMMANDS: readonly Command[] = [
  { id: 'find', label: 'Find…', group: 'Workbook', keys: '$mod+KeyF', run: (_, screens) => screens.openFind(false) },
  { id: 'replace', label: 'Find and replace…', group: 'Workbook', keys: '$mod+Alt+KeyF', run: (_, screens) => screens.openFind(true) },
  { id: 'find-next', label: 'Go to the next one found', group: 'Workbook', keys: 'F3', run: (_, screens) => screens.findStep(1) },
  { id: 'find-before', label: 'Go to the one found before', group: 'Workbook', keys: 'Shift+F3', run: (_, screens) => screens.findStep(-1) },
  { id: 'history', label: 'History: every change', group: 'Workbook', keys: 'Alt+Shift+KeyH', run: (_, screens) => screens.openHistory(false) },
  { id: 'history-cell', label: 'History of this cell', group: 'Cells', menu: ['cell'], run: (_, screens) => screens.openHistory(true) },
];

export const PIN_COMMANDS: readonly Command[] = [
  { id: 'pins', label: 'Pins: what to look at', group: 'Workbook', keys: 'Alt+Shift+KeyP', menu: ['cell'], run: (_, screens) => screens.openPins() },
  { id: 'pin-next', label: 'Go to the next pin', group: 'Workbook', keys: 'Alt+KeyP', run: (_, screens) => screens.nextPin() },
  { id: 'pin-mend', label: 'Mend the pin on this cell', group: 'Cells', keys: 'Alt+KeyM', run: (_, screens) => screens.mendPin() },
  { id: 'pin-acknowledge', label: 'Acknowledge the pin on this cell…', group: 'Cells', keys: 'Alt+Shift+KeyA', run: (_, screens) => screens.acknowledgePin() },
];

export const ARRANGE_COMMANDS: readonly Command[] = [
  { id: 'fill-down', label: 'Fill down', group: 'Cells', keys: 'Alt+Shift+KeyD', menu: ['cell', 'column'], run: (desk) => arrange.fillDown(desk) },
  { id: 'fill-right', label: 'Fill to the right', group: 'Cells', keys: 'Alt+Shift+KeyR', menu: ['cell', 'row'], run: (desk) => arrange.fillRight(desk) },
  { id: 'copy-down', label: 'Fill down with copies', group: 'Cells', run: (desk) => arrange.fillDown(desk, true) },
  { id: 'copy-right', label: 'Fill to the right with copies', group: 'Cells', run: (desk) => arrange.fillRight(desk, true) },
  { id: 'rows-up', label: 'Move the rows up', group: 'Cells', keys: 'Alt+Shift+ArrowUp', menu: ['row'], run: (desk) => arrange.moveLines(desk, 'rows', -1) },
  { id: 'rows-down', label: 'Move the rows down', group: 'Cells', keys: 'Alt+Shift+ArrowDown', menu: ['row'], run: (desk) => arrange.moveLines(desk, 'rows', 1) },
  { id: 'columns-left', label: 'Move the columns left', group: 'Cells', menu: ['column'], run: (desk) => arrange.moveLines(desk, 'columns', -1) },
  { id: 'columns-right', label: 'Move the columns right', group: 'Cells', menu: ['column'], run: (desk) => arrange.moveLines(desk, 'columns', 1) },
  { id: 'rows-hide', label: 'Hide the rows', group: 'Cells', menu: ['row'], run: (desk) => arrange.hide(desk, 'rows') },
  { id: 'rows-show', label: 'Show hidden rows', group: 'Cells', menu: ['row', 'corner'], when: hasHidden('rows'), run: (desk) => arrange.unhide(desk, 'rows') },
  { id: 'columns-hide', label: 'Hide the columns', group: 'Cells', menu: ['column'], run: (desk) => arrange.hide(desk, 'columns') },
  { id: 'columns-show', label: 'Show hidden columns', group: 'Cells', menu: ['column', 'corner'], when: hasHidden('columns'), run: (desk) => arrange.unhide(desk, 'columns') },
  { id: 'sort', label: 'Sort rows…', group: 'Cells', keys: 'Alt+Shift+KeyS', menu: ['cell', 'column'], run: (_, screens) => screens.openSort() },
  { id: 'filter', label: 'Show only rows that match…', group: 'Cells', keys: 'Alt+Shift+KeyM', menu: ['column'], run: (_, screens) => screens.openFilter() },
  { id: 'filter-again', label: 'Match the rows again', group: 'Cells', when: isFiltered, run: arrange.filterAgain },
  { id: 'filter-off', label: 'Show also rows that do not match', group: 'Cells', menu: ['column', 'corner'], when: isFiltered, run: arrange.filterOff },
  { id: 'freeze', label: 'Keep the rows above and the columns to the left in view', group: 'Sheet', menu: ['cell'], run: arrange.freeze },
  { id: 'unfreeze', label: 'Let all rows and columns scroll', group: 'Sheet', when: (desk) => desk.sheet.frozen !== undefined, run: arrange.unfreeze },
  { id: 'note', label: 'Note on this cell…', group: 'Cells', keys: 'Alt+Shift+KeyN', menu: ['cell'], run: (_, screens) => screens.openNote() },
  { id: 'format', label: 'How cells show…', group: 'Cells', keys: 'Alt+Shift+KeyF', menu: ['cell', 'row', 'column'], run: (_, screens) => screens.openFormat() },
];
