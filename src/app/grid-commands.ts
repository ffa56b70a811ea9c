/** What can be asked of the cells as they are on the screen: the clipboard, widths, threads. Part of the command table. */
import type { Command } from './commands.ts';
import { clearArea, setWidths } from './wishes.ts';

/** What the screen can do with cells; commands ask for it. */
export interface CellScreens {
  copyCells(cut: boolean): void;
  pasteCells(): void;
  /** Wider, narrower, or as wide as what is in them. */
  setColumnWidths(how: 1 | -1 | 'fit'): void;
  showThreads(way: 'uses' | 'used by'): void;
  alongThreads(): void;
  backAlongThreads(): void;
}

export const CLIPBOARD_COMMANDS: readonly Command[] = [
  { id: 'cells-cut', label: 'Cut', group: 'Cells', keys: '$mod+KeyX', native: true, menu: ['cell', 'row', 'column'], run: (_, screens) => screens.copyCells(true) },
  { id: 'cells-copy', label: 'Copy', group: 'Cells', keys: '$mod+KeyC', native: true, menu: ['cell', 'row', 'column', 'corner'], run: (_, screens) => screens.copyCells(false) },
  { id: 'cells-paste', label: 'Paste', group: 'Cells', keys: '$mod+KeyV', native: true, menu: ['cell', 'row', 'column', 'corner'], run: (_, screens) => screens.pasteCells() },
  { id: 'cells-clear', label: 'Empty the cells', group: 'Cells', keys: 'Delete', native: true, menu: ['cell', 'row', 'column'], run: (desk) => clearArea(desk, desk.area) },
];

export const GRID_COMMANDS: readonly Command[] = [
  { id: 'width-fit', label: 'Fit the columns to what is in them', group: 'Cells', keys: 'Alt+Shift+KeyW', menu: ['column'], run: (_, screens) => screens.setColumnWidths('fit') },
  { id: 'width-more', label: 'Make the columns wider', group: 'Cells', keys: 'Alt+Shift+ArrowRight', menu: ['column'], run: (_, screens) => screens.setColumnWidths(1) },
  { id: 'width-less', label: 'Make the columns narrower', group: 'Cells', keys: 'Alt+Shift+ArrowLeft', menu: ['column'], run: (_, screens) => screens.setColumnWidths(-1) },
  {
    id: 'width-usual', label: 'Give the columns their usual width', group: 'Cells', menu: ['column'],
    run: (desk) => {
      const { left, right } = desk.area;
      const set = Object.keys(desk.sheet.widths).map(Number).filter((col) => col >= left && col <= right);
      setWidths(desk, set.map((col) => ({ col, width: null })));
    },
  },
  { id: 'uses', label: 'Show what this cell uses', group: 'Cells', keys: 'Alt+KeyU', menu: ['cell'], run: (_, screens) => screens.showThreads('uses') },
  { id: 'used-by', label: 'Show what uses this cell', group: 'Cells', keys: 'Alt+Shift+KeyU', menu: ['cell'], run: (_, screens) => screens.showThreads('used by') },
  { id: 'thread-next', label: 'Follow the threads, one end after another', group: 'Cells', keys: 'Alt+KeyJ', run: (_, screens) => screens.alongThreads() },
  { id: 'thread-back', label: 'Go back to the cell the threads are of', group: 'Cells', keys: 'Alt+Shift+KeyJ', run: (_, screens) => screens.backAlongThreads() },
];
