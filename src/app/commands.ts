/**
 * Everything a person can ask for, in one table: the buttons, the keys, and the
 * list of commands are all made from it.
 */
import type { ShowSystem } from '../workbook/index.ts';
import type { Desk } from './desk.ts';
import { ARRANGE_COMMANDS, FIND_COMMANDS, PIN_COMMANDS } from './arrange-commands.ts';
import { CLIPBOARD_COMMANDS, GRID_COMMANDS, type CellScreens } from './grid-commands.ts';
import type { MendScreens } from './explaining.ts';
import { LAY_COMMANDS } from './lay-commands.ts';
import { MEND_COMMANDS } from './mend-commands.ts';
import { KEEP_COMMANDS, type KeepScreens } from './keep-commands.ts';
import { PEOPLE_COMMANDS } from './people-commands.ts';
import { PRINT_COMMANDS, type PrintScreens } from './print-commands.ts';
import type { PanelScreens } from './side-panels.ts';
import { SHAPE_COMMANDS } from './shape-commands.ts';
import { SHOP_COMMANDS } from './to-buy-commands.ts';
import { SIZE_CHOICE_COMMANDS } from './size-choice-commands.ts';
import type { Theme } from './theme.ts';
import { TRY_COMMANDS } from './try-commands.ts';
import * as ask from './wishes.ts';

/** What the shell can open; commands ask for these and know nothing of how they look. */
export interface Screens extends CellScreens, KeepScreens, MendScreens, PanelScreens, PrintScreens {
  openTemplates(): void;
  openKeepTemplate(): void;
  openImport(): void;
  openExport(what: 'sheet' | 'selection'): void;
  openNames(): void;
  openCommands(): void;
  openRename(): void;
  openReference(): void;
  compare(): void;
  setTheme(theme: Theme): void;
}

/** What the menu beside the cells may be of. */
export type MenuPart = 'cell' | 'row' | 'column' | 'corner';

export interface Command {
  readonly id: string;
  readonly label: string;
  readonly group: 'Workbook' | 'Sheet' | 'Cells' | 'Show' | 'Help';
  /** In the notation of tinykeys; `$mod` is Ctrl, or Command on a Mac. */
  readonly keys?: string;
  /** The grid or the browser listens to these keys itself: they are only told. */
  readonly native?: true;
  /** Stands in the menu beside the cells. */
  readonly menu?: readonly MenuPart[];
  /** When it makes sense; always when missing. */
  when?(desk: Desk): boolean;
  run(desk: Desk, screens: Screens): void;
}

const show = (system: ShowSystem, label: string): Command => ({
  id: `show-${system}`, label, group: 'Show',
  run: (desk) => desk.do({ do: 'setSettings', settings: { ...desk.book.settings, show: system } }),
});

const steps = ([8, 16, 32] as const).map((inchStep): Command => ({
  id: `inches-${inchStep}`, label: `Show inches to 1/${inchStep}`, group: 'Show',
  run: (desk) => desk.do({ do: 'setSettings', settings: { ...desk.book.settings, inchStep } }),
}));

const marks = (['.', ','] as const).map((mark): Command => ({
  id: `decimal-${mark === '.' ? 'point' : 'comma'}`, label: mark === '.' ? 'Write decimals with a point: 2.5' : 'Write decimals with a comma: 2,5', group: 'Show',
  run: (desk) => {
    const { show: system, inchStep } = desk.book.settings;
    desk.do({ do: 'setSettings', settings: { show: system, inchStep, ...(mark === ',' && { decimalMark: mark }) } });
  },
}));

export const COMMANDS: readonly Command[] = [
  { id: 'undo', label: 'Undo', group: 'Workbook', keys: '$mod+KeyZ', when: (desk) => desk.history.done.length > 0, run: (desk) => desk.undo() },
  { id: 'redo', label: 'Do again', group: 'Workbook', keys: '$mod+Shift+KeyZ', when: (desk) => desk.history.undone.length > 0, run: (desk) => desk.redo() },
  ...KEEP_COMMANDS,
  ...PEOPLE_COMMANDS,
  ...PRINT_COMMANDS,
  ...LAY_COMMANDS,
  ...SHAPE_COMMANDS,
  ...SHOP_COMMANDS,
  ...SIZE_CHOICE_COMMANDS,
  { id: 'rename', label: 'Rename the workbook…', group: 'Workbook', run: (_, screens) => screens.openRename() },
  { id: 'side-by-side', label: 'Side by side', group: 'Workbook', keys: 'Alt+KeyB', run: (_, screens) => screens.compare() },
  ...TRY_COMMANDS,
  { id: 'import-chart', label: 'Size chart from a CSV file…', group: 'Workbook', run: (_, screens) => screens.openImport() },
  { id: 'names', label: 'Names…', group: 'Workbook', keys: 'Alt+KeyN', run: (_, screens) => screens.openNames() },

  ...FIND_COMMANDS,
  ...PIN_COMMANDS,

  { id: 'template-start', label: 'Start a sheet from a template…', group: 'Sheet', keys: 'Alt+KeyT', run: (_, screens) => screens.openTemplates() },
  { id: 'template-keep', label: 'Keep this sheet as a template…', group: 'Sheet', run: (_, screens) => screens.openKeepTemplate() },
  { id: 'sheet-blank', label: 'Add a blank sheet', group: 'Sheet', run: ask.addBlankSheet },
  { id: 'sheet-rename', label: 'Rename this sheet…', group: 'Sheet', run: (_, screens) => screens.openRename() },
  { id: 'sheet-earlier', label: 'Move this sheet up the list', group: 'Sheet', when: (desk) => desk.book.sheets[0] !== desk.sheet, run: (desk) => ask.moveSheet(desk, -1) },
  { id: 'sheet-later', label: 'Move this sheet down the list', group: 'Sheet', when: (desk) => desk.book.sheets.at(-1) !== desk.sheet, run: (desk) => ask.moveSheet(desk, 1) },
  { id: 'sheet-remove', label: 'Remove this sheet', group: 'Sheet', when: (desk) => desk.book.sheets.length > 1, run: (desk) => desk.do({ do: 'removeSheet', sheet: desk.sheetId }) },
  { id: 'sheet-next', label: 'Go to the next sheet', group: 'Sheet', keys: 'Alt+PageDown', run: (desk) => ask.turnSheet(desk, 1) },
  { id: 'sheet-last', label: 'Go to the sheet before', group: 'Sheet', keys: 'Alt+PageUp', run: (desk) => ask.turnSheet(desk, -1) },
  { id: 'export-sheet', label: 'Save this sheet as CSV…', group: 'Sheet', run: (_, screens) => screens.openExport('sheet') },
  { id: 'export-selection', label: 'Save the selected cells as CSV…', group: 'Sheet', run: (_, screens) => screens.openExport('selection') },

  ...CLIPBOARD_COMMANDS,
  { id: 'rows-insert', label: 'Insert rows above', group: 'Cells', keys: 'Alt+Insert', menu: ['cell', 'row'], run: (desk) => ask.structure(desk, 'insertRows') },
  { id: 'rows-remove', label: 'Remove the selected rows', group: 'Cells', keys: 'Alt+Delete', menu: ['row'], run: (desk) => ask.structure(desk, 'removeRows') },
  { id: 'columns-insert', label: 'Insert columns to the left', group: 'Cells', keys: 'Alt+Shift+Insert', menu: ['cell', 'column'], run: (desk) => ask.structure(desk, 'insertColumns') },
  { id: 'columns-remove', label: 'Remove the selected columns', group: 'Cells', keys: 'Alt+Shift+Delete', menu: ['column'], run: (desk) => ask.structure(desk, 'removeColumns') },
  ...ARRANGE_COMMANDS,
  ...MEND_COMMANDS,
  ...GRID_COMMANDS,
  { id: 'mark-input', label: 'Mark as input, or take the mark off', group: 'Cells', keys: 'Alt+KeyI', menu: ['cell'], run: ask.toggleInput },
  { id: 'mark-heading', label: 'Mark as heading, or take the mark off', group: 'Cells', menu: ['row'], run: (desk) => ask.toggleLook(desk, 'heading') },
  { id: 'mark-strong', label: 'Show strong, or not', group: 'Cells', keys: 'Alt+KeyS', run: (desk) => ask.toggleLook(desk, 'strong') },
  ...(['mm', 'cm', 'm', 'in', 'yd'] as const).map((unit): Command => ({ id: `unit-${unit}`, label: `Show these cells in ${unit === 'in' ? 'inches' : unit === 'yd' ? 'yards and inches' : unit}`, group: 'Cells', run: (desk) => ask.showUnit(desk, unit) })),
  { id: 'unit-none', label: 'Show these cells as the workbook does', group: 'Cells', run: (desk) => ask.showUnit(desk, null) },

  show('own', 'Show each length in the unit it was typed in'),
  show('cm', 'Show lengths in centimetres'),
  show('in', 'Show lengths in inches'),
  show('both', 'Show lengths in both systems'),
  ...steps,
  ...marks,
  { id: 'theme-auto', label: 'Light or dark as the device is', group: 'Show', run: (_, screens) => screens.setTheme('auto') },
  { id: 'theme-light', label: 'Light: pattern tissue', group: 'Show', run: (_, screens) => screens.setTheme('light') },
  { id: 'theme-dark', label: 'Dark: chalk on cloth', group: 'Show', run: (_, screens) => screens.setTheme('dark') },

  { id: 'reference', label: 'What functions are there…', group: 'Help', keys: 'F1', run: (_, screens) => screens.openReference() },
  { id: 'commands', label: 'All commands', group: 'Help', keys: '$mod+Period', menu: ['cell', 'row', 'column', 'corner'], run: (_, screens) => screens.openCommands() },
];

export function command(id: string): Command {
  const found = COMMANDS.find((each) => each.id === id);
  if (!found) throw new Error(`There is no command “${id}”.`);
  return found;
}

/** "Ctrl + Z", as it is written for a person. */
export function keysInWords(keys: string, mac: boolean): string {
  return keys.split('+')
    .map((key) => ({ $mod: mac ? '⌘' : 'Ctrl', Period: '.', PageDown: 'Page Down', PageUp: 'Page Up', ArrowLeft: '←', ArrowRight: '→', ArrowUp: '↑', ArrowDown: '↓' })[key] ?? key.replace(/^Key/, ''))
    .join(' + ');
}
