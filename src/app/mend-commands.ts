/** The commands that mend a cell without a result, or go where its error began. */
import type { Command } from './commands.ts';
import type { MendScreens } from './explaining.ts';
import type { Desk } from './desk.ts';

export const MEND_COMMANDS: readonly Command[] = [
  { id: 'mend', label: 'Mend this cell as its working offers', group: 'Cells', keys: 'Alt+Shift+KeyE', when: hasError, menu: ['cell'], run: (_: Desk, screens: MendScreens) => screens.mend(0) },
  { id: 'mend-other', label: 'Mend this cell in the other way offered', group: 'Cells', keys: 'Alt+Shift+KeyO', when: hasError, run: (_: Desk, screens: MendScreens) => screens.mend(1) },
  { id: 'cause', label: 'Go to the cell where this error begins', group: 'Cells', keys: 'Alt+Shift+KeyC', when: hasError, menu: ['cell'], run: (_: Desk, screens: MendScreens) => screens.goToCause() },
];

function hasError(desk: Desk): boolean {
  const { row, col } = desk.selection.focus;
  return desk.results.at(desk.sheetId, row, col).kind === 'error';
}
