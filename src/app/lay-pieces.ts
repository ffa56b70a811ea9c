/** The pieces of a lay, from the rows of sheets and the shapes of the workbook. */
import { columnName, sheetInFormula } from '../formula/index.ts';
import { laidFrom, layPrint, readPieces, type PieceCell, type SheetPiece } from '../lay/shapes/index.ts';
import { readQuantity } from '../quantities/index.ts';
import type { Results } from '../reckoning/index.ts';
import { LIMITS, cellAt, recordsOf, sheetById, usedArea, type Area, type Book, type Lay, type Sheet } from '../workbook/index.ts';
import { areasIn } from './uses.ts';

/** Headings stand at the top of a sheet, under at most its title and some remarks. */
const HEADINGS_WITHIN = 30;
/** A list may grow downwards without being chosen anew. */
const ROOM_BELOW = 500;
const ROOM_BESIDE = 26;

/** 0.1 µm: so that a layout is kept with short figures, and made of the same ones. */
const GRAIN = 1e4;

const wordOf = (sheet: Sheet, row: number, col: number): string => (cellAt(sheet, row, col)?.raw ?? '').replace(/\([^)]*\)/g, '').trim().toLowerCase();

/** True for a sheet that has a row with the headings Piece and Shape. */
function hasPieces(sheet: Sheet): boolean {
  return sheet.rows.slice(0, HEADINGS_WITHIN).some((cells, row) => {
    const words = new Set((cells ?? []).map((_, col) => wordOf(sheet, row, col)));
    return words.has('piece') && words.has('shape');
  });
}

/** A list to choose: a sheet, and the block of it as a formula. */
export interface PieceList {
  readonly name: string;
  readonly formula: string;
}

export const listsIn = (book: Book): readonly PieceList[] => book.sheets.filter(hasPieces).map((sheet) => {
  const used = usedArea(sheet);
  const right = Math.max(ROOM_BESIDE, (used?.right ?? 0) + 1), bottom = Math.min(LIMITS.rows, Math.max(ROOM_BELOW, (used?.bottom ?? 0) + 1));
  return { name: sheet.name, formula: `=${sheetInFormula(sheet.name)}!A1:${columnName(right - 1)}${bottom}` };
});

/** What is wrong with a row of a list. */
export interface RowSentence {
  readonly place: Area | null;
  readonly sentence: string;
}

interface ReadList {
  readonly area: Area | null;
  readonly pieces: readonly SheetPiece[];
  readonly sentences: readonly RowSentence[];
}

const NOTHING: ReadList = { area: null, pieces: [], sentences: [] };

function readList(formula: string, book: Book, results: Results): ReadList {
  if (formula === '') return NOTHING;
  const [area] = areasIn(formula, book, -1);
  const sheet = area && sheetById(book, area.sheet);
  if (!area || !sheet) return { ...NOTHING, sentences: [{ place: null, sentence: 'The list of pieces was removed: choose another one.' }] };
  const bottom = Math.min(area.bottom, sheet.rows.length - 1);
  const widest = sheet.rows.reduce((most, cells) => Math.max(most, cells?.length ?? 0), 0);
  const right = Math.min(area.right, widest - 1);
  const rows = Array.from({ length: Math.max(0, bottom - area.top + 1) }, (_, i) =>
    Array.from({ length: Math.max(0, right - area.left + 1) }, (__, j) => given(sheet, results, area.top + i, area.left + j)));
  const shapes = recordsOf(book, 'shape').map(({ data }) => data);
  const { pieces, sentences } = readPieces(rows, shapes);
  const fine = pieces.map((piece) => ({ ...piece, outline: piece.outline.map(([along, across]) => [tidy(along), tidy(across)] as const) }));
  return {
    area,
    pieces: fine,
    sentences: sentences.map(({ row, sentence }) => ({
      sentence, place: row === null ? null : { sheet: area.sheet, top: area.top + row, bottom: area.top + row, left: area.left, right: area.left },
    })),
  };
}

const tidy = (length: number): number => Math.round(length * GRAIN) / GRAIN + 0;

/** A cell's result; before the engine has answered, what it says by itself. */
function given(sheet: Sheet, results: Results, row: number, col: number): PieceCell {
  const result = results.at(sheet.id, row, col);
  const raw = cellAt(sheet, row, col)?.raw ?? '';
  if (result.kind !== 'empty' || raw === '' || raw.startsWith('=')) return result;
  const reading = readQuantity(raw);
  return reading.kind === 'quantity' ? { kind: 'quantity', value: reading.quantity.value, unit: reading.quantity.unit } : { kind: 'text', text: raw.replace(/^'/, '') };
}

/** All that is to be laid, and what is wrong with it. */
export interface LayPieces {
  /** Of the first list, for the cloth that is chosen. */
  readonly first: readonly SheetPiece[];
  /** Of the second list; empty unless it is wanted. */
  readonly second: readonly SheetPiece[];
  /** The cloths that pieces of the first list name. */
  readonly cloths: readonly string[];
  readonly sentences: readonly RowSentence[];
  /** Of all that is to be laid. */
  readonly print: string;
}

export const wantsSecond = ({ aim, second }: Pick<Lay, 'aim' | 'second'>): boolean => aim === 'room for' && second !== '';

export function piecesOf(lay: Lay, book: Book, results: Results): LayPieces {
  const first = readList(lay.pieces, book, results);
  const both = wantsSecond(lay);
  const second = both ? readList(lay.second, book, results) : NOTHING;
  const from = { which: lay.cloth.which, second: both };
  const laid = laidFrom(from, first.pieces, second.pieces);
  return {
    ...laid,
    cloths: [...new Set(first.pieces.map(({ cloth }) => cloth))],
    sentences: [...first.sentences, ...second.sentences],
    print: layPrint(from, first.pieces, second.pieces),
  };
}

/** Read once for each state of the workbook: a piece that is dragged is drawn often. */
export class PiecesRead {
  #book: Book | null = null;
  #revision = -1;
  readonly #read = new Map<string, LayPieces>();

  of(lay: Lay, book: Book, results: Results): LayPieces {
    if (this.#book !== book || this.#revision !== results.revision) this.#read.clear();
    this.#book = book;
    this.#revision = results.revision;
    const key = JSON.stringify([lay.pieces, lay.second, lay.aim, lay.cloth.which]);
    const pieces = this.#read.get(key) ?? piecesOf(lay, book, results);
    this.#read.set(key, pieces);
    return pieces;
  }
}
