/** The lay. Part of the command table. */
import type { Command } from './commands.ts';

export const LAY_COMMANDS: readonly Command[] = [
  { id: 'lay', label: 'The lay: how to lay the pieces, and how much cloth', group: 'Workbook', keys: 'Alt+Shift+KeyL', run: (_, screens) => screens.openPanel('lay') },
];
