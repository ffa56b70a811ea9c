/** Drawn shapes. Part of the command table. */
import type { Command } from './commands.ts';

export const SHAPE_COMMANDS: readonly Command[] = [
  { id: 'shapes', label: 'Drawn shapes: draw, bring in or trace a piece', group: 'Workbook', keys: 'Alt+Shift+KeyY', run: (_, screens) => screens.openPanel('shapes') },
];
