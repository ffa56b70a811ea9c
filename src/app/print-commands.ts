/** What can be asked of paper. Part of the command table. */
import type { Command } from './commands.ts';

export interface PrintScreens {
  openPrint(what: 'sheet' | 'ticket' | 'list'): void;
}

export const PRINT_COMMANDS: readonly Command[] = [
  { id: 'print', label: 'Print…', group: 'Workbook', keys: 'Alt+Shift+KeyT', run: (_, screens) => screens.openPrint('sheet') },
  { id: 'print-ticket', label: 'Print a cutting ticket…', group: 'Workbook', run: (_, screens) => screens.openPrint('ticket') },
  { id: 'print-list', label: 'Print the list to buy…', group: 'Workbook', run: (_, screens) => screens.openPrint('list') },
];
