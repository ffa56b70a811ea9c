/** The clipboard inside the workbook: cells with their looks, and formulas that adjust to where they land. */
import { isFormula, shiftCopy } from '../formula/index.ts';
import { areaHeight, areaWidth, isArea } from './area.ts';
import { filledCells } from './book.ts';
import { LIMITS, counted, plural } from './limits.ts';
import { mustHaveSheet } from './outcome.ts';
import { EditRefused } from './refused.ts';
import type { Area, Book, CellAddress, CellChange, Edit } from './types.ts';
import type { PlacedCell } from './book.ts';

/** Cells taken from a block. Plain data; the cells' places count from the block's top left. */
export interface Clip {
  readonly origin: Area;
  /** The filled ones, in reading order. */
  readonly cells: readonly PlacedCell[];
}

export function copyFrom(book: Book, area: Area): Clip {
  const cells = [...filledCells(mustHaveSheet(book, area.sheet), area)];
  return { origin: area, cells: cells.map(({ row, col, cell }) => ({ row: row - area.top, col: col - area.left, cell })) };
}

/** How often a clip of one length goes into a selection of another: once unless it fits a whole number of times. */
function times(selected: number, clip: number): number {
  return selected % clip === 0 ? selected / clip : 1;
}

/** What a paste there fills: the selection when the clip goes into it a whole number of times, else the clip's own size from its top left. */
export function pastedArea({ origin }: Clip, at: Area): Area {
  const height = areaHeight(origin);
  const width = areaWidth(origin);
  return {
    sheet: at.sheet, top: at.top, left: at.left,
    bottom: at.top + height * times(areaHeight(at), height) - 1,
    right: at.left + width * times(areaWidth(at), width) - 1,
  };
}

/**
 * The edit that pastes a clip at a selection. Relative references move with the
 * cells; empty cells of the clip empty the cells they land on.
 * Throws `EditRefused` when it does not fit the sheet or is too much at once.
 */
export function pasteEdit(clip: Clip, book: Book, at: Area): Edit {
  const sheet = mustHaveSheet(book, at.sheet);
  const { origin } = clip;
  const target = pastedArea(clip, at);
  const height = areaHeight(origin);
  const width = areaWidth(origin);
  if (!isArea(target)) {
    throw new EditRefused(`The ${plural(height, 'row')} and ${plural(width, 'column')} that were copied do not fit there: they would go past the edge of ${sheet.name}.`);
  }
  const repeats = (areaHeight(target) / height) * (areaWidth(target) / width);
  if (repeats * clip.cells.length > LIMITS.paste) {
    throw new EditRefused(`That would fill ${counted(repeats * clip.cells.length)} cells of ${sheet.name}; one paste fills at most ${counted(LIMITS.paste)}. Choose a smaller block.`);
  }
  const cells = new Map<number, CellChange>();
  const set = (change: CellChange): void => void cells.set(change.row * LIMITS.columns + change.col, change);
  for (const { row, col } of filledCells(sheet, target)) set({ row, col, cell: null });
  for (let top = target.top; clip.cells.length > 0 && top <= target.bottom; top += height) {
    for (let left = target.left; left <= target.right; left += width) {
      for (const { row, col, cell } of clip.cells) {
        const raw = isFormula(cell.raw) ? shiftCopy(cell.raw, top - origin.top, left - origin.left) : cell.raw;
        set({ row: top + row, col: left + col, cell: raw === cell.raw ? cell : { ...cell, raw } });
      }
    }
  }
  const label = `paste ${plural(areaHeight(target) * areaWidth(target), 'cell')} in ${sheet.name}`;
  return { do: 'many', label, edits: [{ do: 'setCells', sheet: at.sheet, cells: [...cells.values()] }] };
}

/** The edit that moves what was cut; what pointed at it follows. */
export function cutEdit(clip: Clip, to: CellAddress): Edit {
  return { do: 'moveCells', from: clip.origin, to };
}
