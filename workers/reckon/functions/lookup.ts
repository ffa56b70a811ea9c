/**
 * MATCH, VLOOKUP, HLOOKUP, XLOOKUP, LOOKUP and XMATCH: what is looked for must
 * be of the kind of what it is looked for among. The engine compares bare numbers
 * to the last bit; so a figure that is in the list but for the noise of doubles is
 * put in the place of the one that is looked for. Of equal values in order the
 * last is due (OpenFormula 6.14); in a block that was worked out the engine finds
 * the first.
 */
import { compare, isFault } from '../../../src/quantities/index.ts';
import { spanSentence } from '../arithmetic.ts';
import { CellError, SimpleRangeValue } from '../internals.ts';
import { Bracket, Dimensioned, isNumeric, Measure, quantityOf, refuse } from '../values.ts';
import type { Refusal } from '../values.ts';
import { notFound } from './faults.ts';
import { Kinds } from './kinds.ts';
import { tooMany } from './rounding.ts';
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

const lookup = (call: Call, line: Line): unknown => (call.tools.hasUnit(call.given) ? lookUp(call, line, [], new Map()) : call.library());

const isWorkedOut = (value: unknown): value is SimpleRangeValue => value instanceof SimpleRangeValue && value.range === undefined;

/** The place of the last of the values that equal the one at a place; places count from 1. */
function lastOfRun(call: Call, values: readonly unknown[], place: number): number {
  let last = place;
  while (last < values.length && call.tools.arithmetic.equal(values[place - 1], values[last]) === true) last += 1;
  return last;
}

export const MATCH: Own = (call) => {
  const place = lookup(call, 'all');
  const [, list, way] = call.given;
  const exact = way !== undefined && (way.value === 0 || way.value === false);
  return typeof place !== 'number' || exact || !isWorkedOut(list?.value) ? place : lastOfRun(call, list.value.data.flat(), place);
};

/** The engine looks into tables of cells only; into one that was worked out we look ourselves. `rows`: its lines, the first of each of which is searched. */
const table = (line: 'column' | 'row', rows: (block: SimpleRangeValue) => readonly (readonly unknown[])[]): Own => (call) => {
  const [asked, list, number, sorted] = call.given;
  if (!asked || !number || call.given.length > 4 || !isWorkedOut(list?.value) || asked.value instanceof CellError) return lookup(call, line);
  const lines = rows(list.value);
  const other = line === 'column' ? 'column' : 'row';
  const fault = call.unitFault(number) ?? (sorted && call.unitFault(sorted));
  if (fault) return fault;
  const at = call.tools.helper.coerceScalarToNumberOrError(number.value);
  if (typeof at !== 'number' || at < 1 || at > lines[0]!.length) return refuse(`${call.name} needs the number of a ${other} as its third value, from 1 to ${lines[0]!.length}.`);
  const exact = sorted !== undefined && (sorted.value === 0 || sorted.value === false);
  const place = placeIn(call, asked, { ast: list.ast, value: SimpleRangeValue.onlyValues(lines.map(([first]) => [first])) }, exact ? 0 : 1);
  return typeof place === 'number' ? lines[place - 1]![Math.trunc(at) - 1] : place;
};

const turned = (rows: readonly (readonly unknown[])[]): unknown[][] => (rows[0] ?? []).map((_, col) => rows.map((cells) => cells[col]));

export const VLOOKUP = table('column', ({ data }) => data);
export const HLOOKUP = table('row', ({ data }) => turned(data));

/** Where a value stands in a row or column, as the engine's MATCH finds it; an error when it does not. `way` as in MATCH. */
function placeIn(call: Call, asked: Given, list: Given, way: 1 | 0 | -1): unknown {
  const key = keyIn(call, asked, list, lineOf(list, 'all'));
  if (key instanceof CellError) return key;
  const place = call.engine('MATCH', [key, list.value, way]);
  return typeof place === 'number' && way !== 0 && isWorkedOut(list.value) ? lastOfRun(call, list.value.data.flat(), place) : place;
}

/** Looks in the first column of a block that is at least as high as wide, else in its first row (6.14.8). */
export const LOOKUP: Own = (call) => {
  const [asked, among, results] = call.given;
  if (!asked || !among || call.given.length > 3) return tooMany(call, 'a value, where to look, and what to give');
  for (const { value } of call.given) if (value instanceof CellError) return value;
  const data = among.value instanceof SimpleRangeValue ? among.value.data : [[among.value]];
  const down = data.length >= data[0]!.length;
  const straight = down ? data[0]!.length === 1 : data.length === 1;
  const line = straight && among.value instanceof SimpleRangeValue ? among.value : SimpleRangeValue.onlyValues(down ? data.map(([first]) => [first]) : [[...data[0]!]]);
  const place = placeIn(call, asked, { ast: among.ast, value: line }, 1);
  if (typeof place !== 'number') return place;
  const found = down ? data[place - 1]![0] : data[0]![place - 1];
  // Words come after every number, and would find the last of them.
  if (typeof asked.value === 'string' && typeof found !== 'string') return notFound(call, asked, among);
  if (results === undefined) return down ? data[place - 1]!.at(-1) : data.at(-1)![place - 1];
  const give = results.value instanceof SimpleRangeValue ? results.value.data : [[results.value]];
  if (give.length > 1 && give[0]!.length > 1) return refuse('LOOKUP gives from one row or one column: name a single one as its third value.');
  const cells = give.flat();
  return place <= cells.length ? cells[place - 1] : refuse(`LOOKUP found what it looks for at place ${place}, and ${call.areaOf(results) ?? 'its third value'} has ${cells.length} cells: name as many cells as are looked through.`);
};

/** XLOOKUP that gives places. */
export const XMATCH: Own = (call) => {
  const [asked, among, ...ways] = call.given;
  if (!asked || !among || call.given.length > 4) return tooMany(call, 'a value, where to look, and two numbers that say how');
  for (const { value } of call.given) if (value instanceof CellError) return value;
  for (const way of ways) {
    const fault = call.unitFault(way);
    if (fault) return fault;
  }
  const data = among.value instanceof SimpleRangeValue ? among.value.data : [[among.value]];
  if (data.length > 1 && data[0]!.length > 1) return refuse('XMATCH looks in one row or one column: name a single one as its second value.');
  const key = keyIn(call, asked, among, lineOf(among, 'all'));
  if (key instanceof CellError) return key;
  const places = SimpleRangeValue.onlyValues(data.map((cells, row) => cells.map((_, col) => row + col + 1)));
  const block = among.value instanceof SimpleRangeValue ? among.value : SimpleRangeValue.onlyValues([[among.value]]);
  const [match, way] = [0, 1].map((i) => (ways[i] === undefined || ways[i].ast.type === 'EMPTY' ? i : ways[i].value));
  const place = call.engine('XLOOKUP', [key, block, places, MISSING, match, way]);
  return place === MISSING ? notFound(call, asked, among) : place;
};

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
