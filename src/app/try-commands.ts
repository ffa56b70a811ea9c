/** What can be asked of other values than those in the sheet: compared, run through, worked back to. Part of the command table. */
import type { Command } from './commands.ts';

export const TRY_COMMANDS: readonly Command[] = [
  { id: 'work-back', label: 'Work back: what an input must be', group: 'Workbook', keys: 'Alt+KeyK', menu: ['cell'], run: (_, screens) => screens.openPanel('work-back') },
  { id: 'run-of-values', label: 'Run of values: one figure from here to there', group: 'Workbook', keys: 'Alt+KeyR', menu: ['cell'], run: (_, screens) => screens.openPanel('run-of-values') },
];
