/** What the engine is told of kept layouts and drawn shapes, for the functions that read them. */
import { isFormula, referencesIn, tokenize } from '../formula/index.ts';
import { readQuantity, type UnitCode } from '../quantities/index.ts';
import { nameCalled, sheetNamed } from './book.ts';
import type { KeptLayout, Lay, LayCloth, Shape } from './records/index.ts';
import { recordsOf } from './set-record.ts';
import type { Area, Book } from './types.ts';

export interface KeptLay {
  readonly name: string;
  /** The blocks of its lists of pieces; `null` where there is none to be found. */
  readonly pieces: Area | null;
  readonly second: Area | null;
  /** The cloth whose pieces are laid; empty for all of them. */
  readonly which: string;
  /** The second list is laid as well. */
  readonly both: boolean;
  /** The unit in which the cloth's width was typed. */
  readonly unit: UnitCode;
  readonly cloth: LayCloth;
  readonly layout: Pick<KeptLayout['layout'], 'length' | 'left'>;
  readonly print: string;
  readonly length: number;
  readonly density: number;
}

export interface KeptLays {
  readonly lays: readonly KeptLay[];
  readonly shapes: readonly Shape[];
}

const NONE: KeptLays = { lays: [], shapes: [] };

export function keptLays(book: Book): KeptLays {
  const lays = recordsOf(book, 'lay').flatMap(({ data }) => (data.kept && data.name !== '' ? [keptLay(data, data.kept, book)] : []));
  return lays.length === 0 ? NONE : { lays, shapes: recordsOf(book, 'shape').map(({ data }) => data) };
}

function keptLay(lay: Lay, { print, length, density, cloth, layout }: KeptLayout, book: Book): KeptLay {
  const width = readQuantity(lay.cloth.width);
  const both = lay.aim === 'room for' && lay.second !== '';
  return {
    name: lay.name, pieces: blockOf(lay.pieces, book), second: both ? blockOf(lay.second, book) : null, which: lay.cloth.which, both,
    unit: width.kind === 'quantity' && width.quantity.dimension === 'length' ? width.quantity.unit : 'cm',
    cloth, layout: { length: layout.length, ...(layout.left && { left: layout.left }) }, print, length, density,
  };
}

/** The block that a formula is nothing but. */
function blockOf(formula: string, book: Book): Area | null {
  if (!isFormula(formula)) return null;
  const [reference] = referencesIn(formula);
  const sheet = reference?.sheet === undefined ? undefined : sheetNamed(book, reference.sheet);
  if (reference && sheet) return { sheet: sheet.id, ...reference.area };
  const name = tokenize(formula, book.names.map((named) => named.name)).find(({ kind }) => kind === 'name');
  return name ? nameCalled(book, name.text)?.area ?? null : null;
}

/** Whether the engine has to be told anew. */
export function laysChanged(before: Book, after: Book): boolean {
  // Most workbooks keep no layout, and most edits change neither records nor what they point at.
  if (before.records === after.records && before.names === after.names && before.sheets === after.sheets) return false;
  const [was, is] = [keptLays(before), keptLays(after)];
  if (was === NONE && is === NONE) return false;
  return was.shapes.length !== is.shapes.length || was.shapes.some((shape, i) => shape !== is.shapes[i]) || JSON.stringify(was.lays) !== JSON.stringify(is.lays);
}
