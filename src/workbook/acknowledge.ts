/**
 * Pins that she has seen and lets stand, with her note. They are kept with the
 * cell, so that they go where it goes; which figures they were about is told
 * by a print, so that a pin comes back when the figures are others.
 */
import { cellName } from '../formula/index.ts';
import { cellAt, withSheet } from './book.ts';
import { checkText, withCells } from './cells.ts';
import { mustHaveSheet, unchanged } from './outcome.ts';
import type { Outcome } from './outcome.ts';
import { EditRefused } from './refused.ts';
import type { Book, Cell, Edit } from './types.ts';

export function acknowledge({ sheet: id, row, col, pins }: Extract<Edit, { do: 'acknowledge' }>, book: Book): Outcome {
  const sheet = mustHaveSheet(book, id);
  const cell = cellAt(sheet, row, col);
  if (!cell) throw new EditRefused(`${cellName(row, col)} of ${sheet.name} is empty now, so it has no pin.`);
  for (const { note } of pins) checkText(sheet, row, col, note, 'note');
  const { sheet: after } = withCells(sheet, [{ row, col, cell: { ...cell, acknowledged: pins } }]);
  if (after === sheet) return unchanged(book);
  return {
    book: withSheet(book, after),
    undo: [{ do: 'acknowledge', sheet: id, row, col, pins: cell.acknowledged ?? [] }],
    effects: [],
  };
}

/** A copy of it is another cell, whose pins have not been seen. */
export function withoutAcknowledged(cell: Cell): Cell {
  if (!cell.acknowledged) return cell;
  const { raw, look, input, note } = cell;
  return { raw, ...(look && { look }), ...(input && { input }), ...(note && { note }) };
}
