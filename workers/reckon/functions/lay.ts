/**
 * Kept layouts in formulas. What each was made from is looked at by one hidden
 * name, on which every formula depends that reads a layout: when a piece
 * changes, its layouts are compared anew, and none that is older than its
 * pieces looks fresh, in a trial of other figures either.
 */
import { clothLength, clothWidth } from '../../../src/lay/cloth.ts';
import { layPrint } from '../../../src/lay/shapes/print.ts';
import { readSeams } from '../../../src/lay/shapes/read.ts';
import type { PieceCell, SeamPiece } from '../../../src/lay/shapes/types.ts';
import { KeptLayout } from '../../../src/sewing/index.ts';
import { foldName } from '../../../src/formula/index.ts';
import type { Area, KeptLay, KeptLays } from '../../../src/workbook/index.ts';
import { EngineFormula, pointingAt } from '../content.ts';
import { CellError, EmptyValue, NamedExpressionDependency, SimpleRangeValue } from '../internals.ts';
import type { ParseResult } from '../internals.ts';
import { Bracket, isNumeric, quantityOf, refuse } from '../values.ts';
import type { Refusal } from '../values.ts';
import type { Call, Given, Own } from './tools.ts';

/** Names that people give begin otherwise in the engine. */
export const LAYS_NAME = 'TT_LAYS';
export const COMPARE = 'TT.LAYS';

const READS_A_LAYOUT = /\bLAY\.[A-Z]+\(/;

const dependency = new NamedExpressionDependency(LAYS_NAME);

/** A formula that reads a layout depends on what layouts are made from. @param text in the engine's dialect */
export function withLayouts(text: string, result: ParseResult): ParseResult {
  return READS_A_LAYOUT.test(text) ? { ...result, dependencies: [...result.dependencies, dependency] } : result;
}

const NOTHING: KeptLays = { lays: [], shapes: [] };

export class Lays {
  #kept = NOTHING;
  /** Told layouts are others than the ones before them, though their pieces may be the same. */
  #told = 0;
  /** Of the pieces as they are now, layout by layout; `null` where they cannot be read. */
  prints: readonly (string | null)[] = [];

  /** What the hidden name has to stand for from now on. */
  take(kept: KeptLays): EngineFormula {
    this.#kept = kept;
    this.#told += 1;
    const blocks = kept.lays.flatMap(({ pieces, second }) => [pieces, second]).map(argument);
    return new EngineFormula(`=${COMPARE}(${[this.#told, ...blocks].join(',')})`);
  }

  /** The value of the hidden name: another when any layout has become older, or fresh again. */
  readonly compare: Own = (call) => {
    const [, ...blocks] = call.given;
    this.prints = this.#kept.lays.map((lay, i) => this.#printOf(lay, blocks[2 * i], blocks[2 * i + 1]));
    return [this.#told, ...this.prints.map((print) => print ?? 'lost')].join(' ');
  };

  #printOf({ which, both }: KeptLay, first: Given | undefined, second: Given | undefined): string | null {
    const pieces = this.#piecesIn(first), more = both ? this.#piecesIn(second) : [];
    return pieces && more && layPrint({ which, second: both }, pieces, more);
  }

  #piecesIn(given: Given | undefined): readonly SeamPiece[] | null {
    if (!(given?.value instanceof SimpleRangeValue)) return null;
    return readSeams(given.value.data.map((cells) => cells.map(cellOf)), this.#kept.shapes).pieces;
  }

  /** The kept layout of a name, in whatever letters. */
  named(name: string, call: Call): KeptLayout | Refusal {
    const { lays } = this.#kept;
    // The latest that was kept under a name is the one that counts.
    const at = lays.findLastIndex((lay) => foldName(lay.name) === foldName(name));
    const lay = lays[at];
    if (lay === undefined) return refuse(`${call.name} found no kept layout called “${name}”: ${lays.length === 0 ? 'keep one on the lay first' : `there is ${lays.slice(-4).map((each) => `“${each.name}”`).join(', ')}`}.`);
    const print = this.prints[at] ?? null;
    const { length, density, cloth, unit } = lay;
    return new KeptLayout({ name: lay.name, state: print === null ? 'lost' : print === lay.print ? 'fresh' : 'older', length, density, width: cloth.width, left: leftOf(lay), unit });
  }
}

const argument = (area: Area | null): string => (area === null ? '""' : pointingAt(area).text.slice(1));

/** As the cloth lies: the rectangle that was found, else what the whole width leaves behind the pieces. */
function leftOf({ layout, cloth }: KeptLay): { readonly length: number; readonly width: number } | null {
  if (layout.left) return { length: layout.left.length, width: layout.left.width };
  const atHand = clothLength(cloth);
  if (atHand === null || cloth.remnant || cloth.flaws.length > 0 || atHand <= layout.length) return null;
  return { length: atHand - layout.length, width: clothWidth(cloth) };
}

function cellOf(value: unknown): PieceCell {
  if (value === EmptyValue) return { kind: 'empty' };
  if (typeof value === 'string') return { kind: 'text', text: value };
  if (typeof value === 'boolean') return { kind: 'truth', truth: value };
  if (value instanceof CellError) return { kind: 'error', sentence: '' };
  if (value instanceof Bracket) return { kind: 'span', low: value.span.low.value, high: value.span.high.value, unit: value.span.low.unit };
  if (!isNumeric(value)) return { kind: 'empty' };
  const quantity = quantityOf(value);
  return quantity ? { kind: 'quantity', value: quantity.value, unit: quantity.unit } : { kind: 'empty' };
}
