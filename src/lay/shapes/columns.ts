/** The headings of a sheet of pieces. They may stand in any order, and columns with other headings are passed over. */
import type { PieceCell, PieceRows } from './types.ts';

export const COLUMNS = {
  piece: 'Piece', shape: 'Shape', count: 'How many', cut: 'Cut', cloth: 'Cloth', grain: 'Grain', turns: 'Turns', allowance: 'Allowance',
  length: 'Length', width: 'Width', lower: 'Lower width', radius: 'Radius', part: 'Part', cap: 'Cap height', down: 'Down', left: 'Left', right: 'Right',
} as const;

export type Column = keyof typeof COLUMNS;

const EMPTY: PieceCell = { kind: 'empty' };

export const textOf = (cell: PieceCell): string => (cell.kind === 'text' ? cell.text.trim() : '');

/** Without what a heading says in brackets, such as a unit. */
const plainly = (cell: PieceCell): string => textOf(cell).replace(/\([^)]*\)/g, '').replace(/\s+/g, ' ').trim().toLowerCase();

export interface Headings {
  /** The row in which they stand. */
  readonly row: number;
  has(column: Column): boolean;
  at(cells: readonly PieceCell[] | undefined, column: Column): PieceCell;
}

/** The first row that heads a column for pieces and one for shapes. */
export function headingsOf(rows: PieceRows): Headings | null {
  for (const [row, cells] of rows.entries()) {
    const words = cells.map(plainly);
    const places = new Map<Column, number>();
    for (const [column, heading] of Object.entries(COLUMNS) as [Column, string][]) {
      const place = words.indexOf(heading.toLowerCase());
      if (place >= 0) places.set(column, place);
    }
    if (!places.has('piece') || !places.has('shape')) continue;
    return {
      row,
      has: (column) => places.has(column),
      at: (given, column) => given?.[places.get(column) ?? -1] ?? EMPTY,
    };
  }
  return null;
}
