/**
 * Lists of what is needed and of what is in the cupboard, as blocks of cells: a
 * heading row, then a row for each thing, whose first cell says what to ask for.
 */
import type { Quantity } from '../quantities/index.ts';
import type { CellBlock } from './cell-block.ts';
import { labelText, listed } from './chart-labels.ts';
import type { Pad, Value } from './define.ts';

export interface ListRow {
  /** As the list spells it. */
  readonly what: string;
  /** What else the row says of itself, such as what it is for. */
  readonly words: string;
  readonly figure: Quantity | undefined;
  readonly width: Quantity | undefined;
}

const fold = (text: string): string => text.trim().replace(/\s+/g, ' ').toLowerCase();

const quantityOf = (cell: Value | undefined): Quantity | undefined => (typeof cell === 'object' && cell !== null && 'dimension' in cell ? cell : undefined);

/** A row is headed by its own first words; a list that has only its headings is empty. */
export function rowsOf(list: CellBlock, figures: string, pad: Pad): readonly ListRow[] {
  const headings = (list.rows[0] ?? []).map((cell) => fold(labelText(cell) ?? ''));
  const [at, width] = [headings.indexOf(figures), headings.indexOf('width')];
  if (at < 1) return pad.refuse(`The list has no column headed “${figures}”; its first row has ${listed(headings.filter((text) => text !== '')) || 'no words'}. Give the list with its headings.`);
  return list.rows.slice(1).flatMap((cells): ListRow[] => {
    const what = labelText(cells[0]);
    if (what === null) return [];
    const words = cells.flatMap((cell, col) => (col > 0 && typeof cell === 'string' && cell.trim() !== '' ? [cell.trim()] : [])).join(', ');
    return [{ what, words, figure: quantityOf(cells[at]), width: width < 0 ? undefined : quantityOf(cells[width]) }];
  });
}

/** The rows that ask for it, however its letters are written. */
export const rowsFor = (rows: readonly ListRow[], what: string): readonly ListRow[] => rows.filter((row) => fold(row.what) === fold(what));

/** What there is in the list, each once, for a sentence. */
export const things = (rows: readonly ListRow[]): string => listed(rows.filter((row, at) => rowsFor(rows, row.what)[0] === rows[at]).map(({ what }) => what)) || 'nothing yet';

export const rowInWords = ({ what, words }: ListRow): string => (words === '' ? what : `${what}, ${words}`);
