/** People and their measures, and starting a garment for one of them. Part of the command table. */
import type { Command } from './commands.ts';

export const PEOPLE_COMMANDS: readonly Command[] = [
  { id: 'start-own', label: 'Start my own: who, which garment, which unit…', group: 'Workbook', keys: 'Alt+Shift+KeyW', run: (_, screens) => screens.openPanel('start-own') },
];
