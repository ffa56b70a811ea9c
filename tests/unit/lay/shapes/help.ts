/** Rows of a sheet of pieces as they would be typed. */
import { readQuantity } from '../../../../src/quantities/index.ts';
import { COLUMNS, readPieces, type DrawnShape, type PieceCell, type SheetPiece } from '../../../../src/lay/shapes/index.ts';

export const cellOf = (typed: string): PieceCell => {
  if (typed === '') return { kind: 'empty' };
  if (typed.startsWith('#')) return { kind: 'error', sentence: typed.slice(1) };
  const read = readQuantity(typed);
  return read.kind === 'quantity' ? { kind: 'quantity', value: read.quantity.value, unit: read.quantity.unit } : { kind: 'text', text: typed };
};

/** @param typed what is typed under each heading */
export function rowsOf(...typed: Readonly<Partial<Record<keyof typeof COLUMNS, string>>>[]): PieceCell[][] {
  const columns = Object.keys(COLUMNS) as (keyof typeof COLUMNS)[];
  return [columns.map((column) => cellOf(COLUMNS[column])), ...typed.map((row) => columns.map((column) => cellOf(row[column] ?? '')))];
}

export const read = (...typed: Parameters<typeof rowsOf>) => readPieces(rowsOf(...typed), []);

/** The one piece of these rows. */
export function only(...typed: Parameters<typeof rowsOf>): SheetPiece {
  const { pieces, sentences } = read(...typed);
  if (pieces.length !== 1) throw new Error(sentences.map(({ sentence }) => sentence).join(' '));
  return pieces[0]!;
}

export const sentenceOf = (...typed: Parameters<typeof rowsOf>): string => read(...typed).sentences.map(({ sentence }) => sentence).join(' ');

export const shape = (more: Partial<DrawnShape> = {}): DrawnShape => ({
  name: 'Collar', points: [{ x: 0, y: 0 }, { x: 220, y: 0 }, { x: 220, y: 70 }, { x: 0, y: 60 }], grain: [{ x: 20, y: 30 }, { x: 200, y: 30 }], marks: [], error: 0.5, ...more,
});
