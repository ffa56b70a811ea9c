/**
 * The clipboard inside the workbook: cells with their looks, and formulas that
 * adjust to where they land. Only rows and columns that show are taken, and
 * they go into rows and columns that show; what is hidden in between stays as
 * it is.
 */
import { isFormula, shiftCopy } from '../formula/index.ts';
import { withoutAcknowledged } from './acknowledge.ts';
import { cellAt, usedArea } from './book.ts';
import { LIMITS, counted, plural } from './limits.ts';
import { mustHaveSheet } from './outcome.ts';
import { EditRefused } from './refused.ts';
import { aroundLines, seenCells, seenIn, shownBetween, shownFrom, unseenIn } from './seen.ts';
import type { Lines, Seen } from './seen.ts';
import { hiddenColumns, hiddenRows } from './showing.ts';
import type { Area, Book, CellAddress, CellChange, Edit, Runs, Sheet } from './types.ts';
import type { PlacedCell } from './book.ts';

/** Cells taken from a block. Plain data. */
export interface Clip {
  readonly origin: Area;
  /** The rows and columns that were taken, by their places then. */
  readonly lines: Seen;
  /** The filled ones, in reading order; their places count among the lines taken. */
  readonly cells: readonly PlacedCell[];
}

export function copyFrom(book: Book, area: Area): Clip {
  const sheet = mustHaveSheet(book, area.sheet);
  const lines = seenIn(sheet, area);
  const used = usedArea(sheet);
  const cells: PlacedCell[] = [];
  const columns = used ? shownBetween(hiddenColumns(sheet), area.left, Math.min(area.right, used.right)) : lines.columns;
  for (let at = 0; used && at < lines.rows.count; at++) {
    const row = lines.rows.at(at);
    if (row > used.bottom) break;
    let across = 0;
    for (const col of columns) {
      const cell = cellAt(sheet, row, col);
      if (cell) cells.push({ row: at, col: across, cell: withoutAcknowledged(cell) });
      across++;
    }
  }
  return { origin: area, lines, cells };
}

/** How often a clip of one length goes into a selection of another: once unless it fits a whole number of times. */
function times(selected: number, clip: number): number {
  return selected % clip === 0 ? Math.max(1, selected / clip) : 1;
}

/** The lines that a paste of so many fills, from the selection's first that shows. */
function filledLines(hidden: Runs, first: number, last: number, count: number, limit: number): Lines | null {
  return shownFrom(hidden, first, count * times(shownBetween(hidden, first, last).count, count), limit);
}

/**
 * The rows and columns that cells fill when they are pasted at a selection:
 * the selection, when they go into it a whole number of times, else as many as
 * they are, from its top left. Throws `EditRefused` past the edge.
 */
export function pastedLines(sheet: Sheet, at: Area, height: number, width: number): Seen {
  if (height === 0 || width === 0) throw new EditRefused('Nothing that shows was copied.');
  const rows = filledLines(hiddenRows(sheet), at.top, at.bottom, height, LIMITS.rows);
  const columns = filledLines(hiddenColumns(sheet), at.left, at.right, width, LIMITS.columns);
  if (!rows || !columns) {
    throw new EditRefused(`The ${plural(height, 'row')} and ${plural(width, 'column')} that were copied do not fit there: they would go past the edge of ${sheet.name}.`);
  }
  return { rows, columns };
}

/** Where a clip lands when it is pasted there. */
export function pastedArea({ lines }: Clip, book: Book, at: Area): Area {
  return aroundLines(at.sheet, pastedLines(mustHaveSheet(book, at.sheet), at, lines.rows.count, lines.columns.count));
}

/**
 * The edit that pastes a clip at a selection. Relative references move with the
 * cells; empty cells of the clip empty the cells they land on.
 * Throws `EditRefused` when it does not fit the sheet or is too much at once.
 */
export function pasteEdit(clip: Clip, book: Book, at: Area): Edit {
  const sheet = mustHaveSheet(book, at.sheet);
  const from = clip.lines;
  const [height, width] = [from.rows.count, from.columns.count];
  const { rows, columns } = pastedLines(sheet, at, height, width);
  const repeats = (rows.count / height) * (columns.count / width);
  if (repeats * clip.cells.length > LIMITS.paste) {
    throw new EditRefused(`That would fill ${counted(repeats * clip.cells.length)} cells of ${sheet.name}; one paste fills at most ${counted(LIMITS.paste)}. Choose a smaller block.`);
  }
  const cells = new Map<number, CellChange>();
  const set = (change: CellChange): void => void cells.set(change.row * LIMITS.columns + change.col, change);
  for (const { row, col } of seenCells(sheet, aroundLines(at.sheet, { rows, columns }))) set({ row, col, cell: null });
  for (let down = 0; clip.cells.length > 0 && down < rows.count; down += height) {
    for (let across = 0; across < columns.count; across += width) {
      for (const placed of clip.cells) {
        const { cell } = placed;
        const [row, col] = [rows.at(down + placed.row), columns.at(across + placed.col)];
        const raw = isFormula(cell.raw) ? shiftCopy(cell.raw, row - from.rows.at(placed.row), col - from.columns.at(placed.col)) : cell.raw;
        set({ row, col, cell: raw === cell.raw ? cell : { ...cell, raw } });
      }
    }
  }
  const label = `paste ${plural(rows.count * columns.count, 'cell')} in ${sheet.name}`;
  return { do: 'many', label, edits: [{ do: 'setCells', sheet: at.sheet, cells: [...cells.values()] }] };
}

/**
 * The edit that moves what was cut; what pointed at it follows. A cut moves a
 * block as one piece. Throws `EditRefused` when something hidden lies in it, or
 * where it would go: it would be moved, or written over, unseen.
 */
export function cutEdit({ origin }: Clip, book: Book, to: CellAddress): Edit {
  const there = { top: to.row, left: to.col, bottom: to.row + origin.bottom - origin.top, right: to.col + origin.right - origin.left };
  for (const [sheet, area, where] of [[origin.sheet, origin, 'among the cells that were cut'], [to.sheet, there, 'where the cut cells would go']] as const) {
    const { rows, columns } = unseenIn(mustHaveSheet(book, sheet), area);
    if (rows + columns === 0) continue;
    const what = [rows && plural(rows, 'hidden row'), columns && plural(columns, 'hidden column')].filter(Boolean).join(' and ');
    throw new EditRefused(`Cut cells move as one block, and there ${rows + columns === 1 ? 'is' : 'are'} ${what} ${where}. Show what is hidden first, or copy the cells and empty the old ones.`);
  }
  return { do: 'moveCells', from: origin, to };
}
