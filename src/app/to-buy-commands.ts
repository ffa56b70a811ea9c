/** What can be asked of the list to buy and of the cutting table. Part of the command table. */
import type { Command } from './commands.ts';

export const SHOP_COMMANDS: readonly Command[] = [
  { id: 'to-buy', label: 'To buy: the list for the shop', group: 'Workbook', keys: 'Alt+Shift+KeyB', run: (_, screens) => screens.openPanel('to-buy') },
  { id: 'at-the-table', label: 'At the table: one step after another', group: 'Workbook', keys: 'Alt+Shift+KeyK', run: (_, screens) => screens.openPanel('at-the-table') },
  { id: 'to-buy-put', label: 'Put this on the list to buy…', group: 'Cells', menu: ['cell'], run: (_, screens) => screens.openPanel('to-buy') },
];
