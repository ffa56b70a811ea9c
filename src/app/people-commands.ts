/** People and their measures, and starting a garment for one of them. Part of the command table. */
import type { Command } from './commands.ts';

export const PEOPLE_COMMANDS: readonly Command[] = [
  { id: 'start-own', label: 'Start my own: who, which garment, which unit…', group: 'Workbook', keys: 'Alt+KeyO', run: (_, screens) => screens.openPanel('start-own') },
  { id: 'people', label: 'People and their measures', group: 'Workbook', keys: 'Alt+Shift+KeyQ', run: (_, screens) => screens.openPanel('people') },
  { id: 'worked', label: 'Keep what worked on this garment…', group: 'Workbook', run: (_, screens) => screens.openPanel('worked') },
];
