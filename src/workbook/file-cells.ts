/** Cells as they stand in files: one short list a cell, in reading order. */
import { cellName } from '../formula/index.ts';
import { filledCells } from './book.ts';
import { normalCell, normalRow, normalRows } from './cells.ts';
import { LIMITS } from './limits.ts';
import type { Problems } from './problems.ts';
import { bareCellSchema, filterSchema, frozenSchema, fullCellSchema, hiddenSchema, plainCellSchema, read, widthSchema } from './schema.ts';
import type { FileCell, FileWidth } from './schema.ts';
import { tidyShowing } from './showing.ts';
import type { Showing } from './showing.ts';
import type { Cell, Row, Sheet } from './types.ts';

export function fileCell(row: number, col: number, { raw, look, input, note, acknowledged }: Cell): FileCell {
  if (!look && !input && !note && !acknowledged) return [row, col, raw];
  return [row, col, raw, { ...(look && { look }), ...(input && { input }), ...(note && { note }), ...(acknowledged && { acknowledged: [...acknowledged] }) }];
}

export function cellsToFile(sheet: Sheet): FileCell[] {
  return Array.from(filledCells(sheet), ({ row, col, cell }) => fileCell(row, col, cell));
}

export function widthsToFile({ widths }: Sheet): FileWidth[] {
  return Object.entries(widths).map(([col, width]) => [Number(col), width]);
}

/** How many places the cells of one file may still take up. */
export interface Room {
  places: number;
}

export const fullRoom = (): Room => ({ places: LIMITS.places });

/** One cell of a file; what is wrong with it is taken down. */
function readCell(value: unknown, at: number, where: string, problems: Problems): FileCell | null {
  const cell = Array.isArray(value) && value.length > 3 ? read(fullCellSchema, value) : read(plainCellSchema, value);
  if (cell) return cell;
  const bare = read(bareCellSchema, value);
  if (!bare) {
    problems.add(`${where}: entry ${at + 1} of its cells could not be read and was left out.`);
    return null;
  }
  problems.add(`${where}, ${cellName(bare[0], bare[1])}: its look, note, input mark or acknowledged pins could not be read; its text was kept.`);
  return bare;
}

/** Rows in normal form from a file's cells. */
export function rowsFromFile(value: unknown, where: string, problems: Problems, room: Room): readonly (Row | undefined)[] {
  if (!Array.isArray(value)) {
    problems.add(`${where}: its cells could not be read.`);
    return [];
  }
  const rows: (Cell | undefined)[][] = [];
  value.forEach((entry: unknown, at) => {
    const read = readCell(entry, at, where, problems);
    if (!read) return;
    const [row, col, raw, extras] = read;
    const cell = normalCell({ raw, ...extras });
    if (!cell) return;
    const cells = rows[row] ?? [];
    const needed = Math.max(0, row + 1 - rows.length) + Math.max(0, col + 1 - cells.length);
    if (cells[col]) {
      problems.add(`${where}, ${cellName(row, col)}: the file has this cell twice; the first was kept.`);
    } else if (needed > room.places) {
      problems.add(`${where}, ${cellName(row, col)}: left out, because cells lie too far apart in this file to be held.`);
    } else {
      room.places -= needed;
      while (rows.length <= row) rows.push([]);
      while (cells.length < col) cells.push(undefined);
      cells[col] = cell;
      rows[row] = cells;
    }
  });
  return normalRows(rows.map(normalRow));
}

export function widthsFromFile(value: unknown, where: string, problems: Problems): Record<number, number> {
  const widths: Record<number, number> = {};
  if (value === undefined) return widths;
  if (!Array.isArray(value)) {
    problems.add(`${where}: its column widths could not be read.`);
    return widths;
  }
  value.forEach((entry: unknown, at) => {
    const width = read(widthSchema, entry);
    if (width) widths[width[0]] = width[1];
    else problems.add(`${where}: entry ${at + 1} of its column widths could not be read and was left out.`);
  });
  return widths;
}

/** What is hidden, kept in view or filtered; without what cannot be read, more shows, and nothing is lost. */
export function showingFromFile(from: Readonly<Record<string, unknown>>, where: string, problems: Problems): Showing {
  const part = <T>(key: 'hidden' | 'frozen' | 'filter', schema: Parameters<typeof read<T>>[0], what: string): T | undefined => {
    if (from[key] === undefined) return undefined;
    const value = read(schema, from[key]);
    if (value === undefined) problems.add(`${where}: ${what} could not be read; all of it shows.`);
    return value;
  };
  return tidyShowing({
    hidden: part('hidden', hiddenSchema, 'which rows and columns are hidden'),
    frozen: part('frozen', frozenSchema, 'which rows and columns stay in view'),
    filter: part('filter', filterSchema, 'which rows are to match'),
  });
}
