/**
 * INDEX, which gives a whole row or column for the number 0 (OpenFormula 6.14.6),
 * and SORTBY, which puts a block in the order of other cells.
 */
import { ArrayFormulaVertex, CellError, EmptyValue, ErrorType, SimpleRangeValue } from '../internals.ts';
import type { Ast } from '../internals.ts';
import { Bracket, isNumeric, Refusal, refuse } from '../values.ts';
import { located } from './aggregate.ts';
import { Kinds } from './kinds.ts';
import { tooMany } from './rounding.ts';
import type { Call, Given, Own } from './tools.ts';

const blockOf = (value: unknown): readonly (readonly unknown[])[] => (value instanceof SimpleRangeValue ? value.data : [[value]]);

/** A row or column of INDEX that is 0 or left out, and is written so: what a cell says can change, and the room for a result cannot. */
export const isAll = (part: Ast | undefined): boolean => part === undefined || part.type === 'EMPTY' || (part.type === 'NUMBER' && part.value === 0);

/** A row or column by its number; 0 for all of them. */
function numberOf(call: Call, given: Given | undefined): number | CellError {
  if (given === undefined || given.ast.type === 'EMPTY') return 0;
  const fault = call.unitFault(given);
  if (fault) return fault;
  if (given.value instanceof SimpleRangeValue) return refuse(`INDEX needs one number for its row and one for its column, and ${call.areaOf(given) ?? 'one of them'} is a block of cells.`);
  if (given.value === EmptyValue) return refuse(`${call.nameOf(given) ?? 'A cell that INDEX uses'} has no value yet.`);
  const number = call.tools.helper.coerceScalarToNumberOrError(given.value);
  if (!isNumeric(number)) return number instanceof Refusal ? number : refuse(`INDEX needs a number for its row and its column, and got “${call.tools.arithmetic.text(given.value)}”.`);
  return Math.trunc(typeof number === 'number' ? number : number.val);
}

/** One cell of a block, without looking at the others: a chart may be asked for thousands of them. */
function cellIn(call: Call, value: unknown, row: number, col: number): unknown {
  const range = value instanceof SimpleRangeValue ? value.range : undefined;
  if (range === undefined) return blockOf(value)[row]![col];
  const { sheet, row: top, col: left } = range.start;
  return call.tools.interpreter.dependencyGraph.addressMapping.getCellValue({ sheet, row: top + row, col: left + col });
}

export const INDEX: Own = (call) => {
  const [source, down, across] = call.given;
  if (!source || call.given.length < 2 || call.given.length > 3) return tooMany(call, 'a block, a row and a column');
  if (source.value instanceof CellError) return source.value;
  const [height, width] = source.value instanceof SimpleRangeValue ? [source.value.height(), source.value.width()] : [1, 1];
  const row = numberOf(call, down);
  const col = numberOf(call, across);
  for (const number of [row, col]) if (typeof number !== 'number') return number;
  const [r, c] = [row as number, col as number];
  if (r < 0 || c < 0 || r > height || c > width) {
    const [what, got, most] = r < 0 || r > height ? ['row', r, height] : ['column', c, width];
    return new Refusal(ErrorType.NUM, `INDEX was asked for ${what} ${got}, and ${call.areaOf(source) ?? 'the block'} has ${most}: choose a number from 1 to ${most}, or 0 for all.`);
  }
  if (r > 0 && c > 0) return cellIn(call, source.value, r - 1, c - 1);
  // The room for its results was made before a cell could say 0.
  if (call.state.formulaVertex instanceof ArrayFormulaVertex && ((r === 0 && !isAll(down?.ast)) || (c === 0 && !isAll(across?.ast)))) {
    return refuse('INDEX got its 0 from another cell, and cannot make room for a whole row or column then: write the 0 into the formula.');
  }
  const block = blockOf(source.value);
  const rows = r > 0 ? [block[r - 1]!] : block;
  return SimpleRangeValue.onlyValues(rows.map((cells) => (c > 0 ? [cells[c - 1]] : [...cells])));
};

/** Empty cells come last, whichever way. */
function order(call: Call, a: unknown, b: unknown, way: number): number {
  if (a === EmptyValue || b === EmptyValue) return Number(a === EmptyValue) - Number(b === EmptyValue);
  const bare = (value: unknown): unknown => (isNumeric(value) && typeof value !== 'number' ? value.val : value);
  return way * call.tools.helper.compare(bare(a), bare(b));
}

interface Key {
  readonly values: readonly unknown[];
  readonly way: number;
}

function keyOf(call: Call, by: Given, way: Given | undefined, lines: number): Key | CellError {
  const data = blockOf(by.value);
  const values = data.flat();
  if ((data.length > 1 && data[0]!.length > 1) || values.length !== lines) {
    return refuse(`SORTBY goes by one cell for each line of the block: ${call.areaOf(by) ?? 'what it is to go by'} has ${values.length}, and the block has ${lines}.`);
  }
  const kinds = new Kinds();
  for (const [row, cells] of data.entries()) {
    for (const [col, value] of cells.entries()) {
      if (value instanceof CellError) return located({ value, row, col }, by);
      if (isNumeric(value)) kinds.add(value, () => call.nameOf(by, row, col));
    }
  }
  const kind = kinds.verdict();
  if (kind instanceof Refusal && values.some((value) => isNumeric(value) && !(value instanceof Bracket))) return kind;
  const fault = way && call.unitFault(way);
  if (fault) return fault;
  const number = way === undefined || way.ast.type === 'EMPTY' ? 1 : call.tools.helper.coerceScalarToNumberOrError(way.value);
  return number === 1 || number === -1 ? { values, way: number } : refuse('SORTBY sorts upwards with 1 and downwards with -1: write one of them.');
}

export const SORTBY: Own = (call) => {
  const [source, ...rest] = call.given;
  if (!source || rest.length === 0) return tooMany(call, 'a block, what to go by, and 1 or -1');
  for (const { value } of call.given) if (value instanceof CellError) return value;
  const block = blockOf(source.value);
  const first = blockOf(rest[0]!.value);
  // As many cells in a row as the block has columns: its columns are sorted.
  const across = first.length === 1 && first[0]!.length === block[0]!.length && block.length > 1 ? true : block.length === 1 && block[0]!.length > 1;
  const lines = across ? block[0]!.map((_, col) => block.map((cells) => cells[col])) : block;
  const keys: Key[] = [];
  for (let i = 0; i < rest.length; i += 2) {
    const key = keyOf(call, rest[i]!, rest[i + 1], lines.length);
    if (key instanceof CellError) return key;
    keys.push(key);
  }
  const places = lines.map((_, i) => i).sort((a, b) => {
    for (const { values, way } of keys) {
      const difference = order(call, values[a], values[b], way);
      if (difference !== 0) return difference;
    }
    return a - b;
  });
  const sorted = places.map((place) => [...lines[place]!]);
  return SimpleRangeValue.onlyValues(across ? block.map((_, row) => sorted.map((line) => line[row])) : sorted);
};
