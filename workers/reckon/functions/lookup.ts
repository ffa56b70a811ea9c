/**
 * MATCH, VLOOKUP, HLOOKUP and XLOOKUP: what is looked for must be of the kind
 * of what it is looked for among. The engine compares bare numbers to the last
 * bit; so a figure that is in the list but for the noise of doubles is put in
 * the place of the one that is looked for.
 */
import { compare, isFault } from '../../../src/quantities/index.ts';
import { spanSentence } from '../arithmetic.ts';
import { CellError, SimpleRangeValue } from '../internals.ts';
import { Bracket, Dimensioned, isNumeric, Measure, quantityOf, refuse } from '../values.ts';
import type { Refusal } from '../values.ts';
import { Kinds } from './kinds.ts';
import type { Call, Given, Own } from './tools.ts';

/** Which cells of the block are looked through. */
type Line = 'column' | 'row' | 'all';

/** `replaced`: values to hand to the engine in place of the given ones, by their place between the brackets. */
function lookUp(call: Call, line: Line, any: readonly number[], replaced: ReadonlyMap<number, unknown>): unknown {
  const [asked, list] = call.given;
  if (!asked || !list || asked.value instanceof CellError || list.value instanceof CellError) return call.library();
  for (let i = 2; i < call.given.length; i++) {
    const fault = any.includes(i) ? undefined : call.unitFault(call.given[i]!);
    if (fault) return fault;
  }
  const key = keyIn(call, asked, list, lineOf(list, line));
  if (key instanceof CellError) return key;
  return call.library(call.given.map(({ value }, i) => (i === 0 ? key : replaced.has(i) ? replaced.get(i) : value)));
}

const lookup = (line: Line): Own => (call) => (call.tools.hasUnit(call.given) ? lookUp(call, line, [], new Map()) : call.library());

export const MATCH = lookup('all');
export const VLOOKUP = lookup('column');
export const HLOOKUP = lookup('row');

/** Stands for the value to give when nothing is found: the engine would take its unit off. */
const MISSING = '\u0000missing';

export const XLOOKUP: Own = (call) => {
  if (!call.tools.hasUnit(call.given)) return call.library();
  const instead = call.given[3];
  if (!(instead?.value instanceof Dimensioned)) return lookUp(call, 'all', [2], new Map());
  const found = lookUp(call, 'all', [2, 3], new Map([[3, MISSING]]));
  return found === MISSING ? instead.value : found;
};

interface Spot {
  readonly value: unknown;
  readonly row: number;
  readonly col: number;
}

function lineOf({ value }: Given, line: Line): readonly Spot[] {
  const block = value instanceof SimpleRangeValue ? value.data : [[value]];
  return block.flatMap((cells, row) => cells.map((cell, col): Spot => ({ value: cell, row, col })))
    .filter(({ row, col }) => line === 'all' || (line === 'column' ? col === 0 : row === 0));
}

/** What the engine is to look for: a bare number where units come in. */
function keyIn(call: Call, asked: Given, list: Given, among: readonly Spot[]): unknown {
  if (asked.value instanceof Bracket) return refuse(spanSentence(asked.value));
  const withUnit = among.find(({ value }) => value instanceof Dimensioned);
  if (!isNumeric(asked.value)) return asked.value;
  if (!withUnit) return asked.value instanceof Measure && among.some(({ value }) => isNumeric(value)) ? mixed(call, asked, list, among) : asked.value;
  const fault = mixed(call, asked, list, among);
  if (fault) return fault;
  const figure = quantityOf(asked.value)!;
  const same = among.find(({ value }) => {
    const other = quantityOf(value);
    const order = other && compare(figure, other);
    return order === 0 && !isFault(order);
  });
  return (same?.value as Measure | undefined)?.val ?? figure.value;
}

function mixed(call: Call, asked: Given, list: Given, among: readonly Spot[]): Refusal | undefined {
  const kinds = new Kinds();
  kinds.add(asked.value, () => call.nameOf(asked) ?? 'What is looked for');
  for (const { value, row, col } of among) {
    if (isNumeric(value) && !(value instanceof Bracket)) kinds.add(value, () => call.nameOf(list, row, col));
  }
  const verdict = kinds.verdict();
  return verdict instanceof CellError ? verdict : undefined;
}
