/** Choosing a size. Part of the command table. */
import type { Command } from './commands.ts';

export const SIZE_CHOICE_COMMANDS: readonly Command[] = [
  { id: 'size-choice', label: 'Choose the size…', group: 'Workbook', keys: 'Alt+Shift+KeyZ', run: (_, screens) => screens.openPanel('size-choice') },
];
