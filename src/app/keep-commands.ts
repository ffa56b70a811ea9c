/** What can be asked of workbooks as a whole: the shelf, files, what was set aside. Part of the command table. */
import type { Command } from './commands.ts';
import { canFollowFiles } from './file-on-disk.ts';

export interface KeepScreens {
  openShelf(): void;
  saveCopy(): void;
  followFile(): void;
  openFile(): void;
  newBook(): void;
  openSetAside(): void;
}

export const KEEP_COMMANDS: readonly Command[] = [
  { id: 'shelf', label: 'Workbooks on this device…', group: 'Workbook', keys: 'Alt+KeyW', run: (_, screens) => screens.openShelf() },
  { id: 'book-new', label: 'New workbook', group: 'Workbook', run: (_, screens) => screens.newBook() },
  { id: 'book-save', label: 'Save a copy as a file…', group: 'Workbook', keys: '$mod+KeyS', run: (_, screens) => screens.saveCopy() },
  { id: 'book-follow', label: 'Keep a file up to date with this workbook…', group: 'Workbook', when: canFollowFiles, run: (_, screens) => screens.followFile() },
  { id: 'book-open', label: 'Open a workbook file…', group: 'Workbook', keys: '$mod+KeyO', run: (_, screens) => screens.openFile() },
  { id: 'set-aside', label: 'What was set aside because it could not be read…', group: 'Workbook', when: (desk) => desk.setAside > 0, run: (_, screens) => screens.openSetAside() },
];
