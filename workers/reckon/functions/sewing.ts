/**
 * The trade's functions in formulas: hands what the cells hold to the
 * definitions in `src/sewing`, and their outcome back. A size chart is read
 * once from its block and kept with it until one of its cells changes.
 */
import { isFault } from '../../../src/quantities/index.ts';
import type { Fault, Quantity } from '../../../src/quantities/index.ts';
import { CellBlock, readChart, work } from '../../../src/sewing/index.ts';
import type { SewingFunction, SizeChart, Value } from '../../../src/sewing/index.ts';
import { dateText } from '../dates.ts';
import { CellError, EmptyValue, SimpleRangeValue } from '../internals.ts';
import { nameFromEngine } from '../../../src/formula/index.ts';
import { Bracket, isDate, isNumeric, quantityOf, refuse, valueOf } from '../values.ts';
import { located } from './aggregate.ts';
import type { Call, Given, Own, Tools } from './tools.ts';

export const sewing = (fn: SewingFunction): Own => (call) => {
  const values = valuesFor(fn, call);
  if (values instanceof CellError) return values;
  const outcome = work(fn, values);
  if (isFault(outcome)) return refuse(outcome.sentence);
  if (typeof outcome.value === 'string') return outcome.value;
  return 'low' in outcome.value ? new Bracket(outcome.value) : valueOf(outcome.value);
};

/** What stands between the brackets, as the function takes it. */
export function valuesFor(fn: SewingFunction, call: Call): readonly Value[] | CellError {
  const values: Value[] = [];
  for (let i = 0; i < call.given.length; i++) {
    const arg = fn.args[Math.min(i, fn.args.length - 1)];
    const given = call.given[i]!;
    const last = i >= fn.args.length - 1;
    if (given.value instanceof SimpleRangeValue && arg?.kind !== 'chart' && arg?.kind !== 'block') {
      if (!(fn.repeats && last)) return refuse(`${fn.name} takes one cell for ${arg?.name ?? 'this'}, and got a block of cells.`);
      const several = eachOf(given);
      if (several instanceof CellError) return several;
      values.push(...several);
      continue;
    }
    const value = given.value instanceof SimpleRangeValue ? blockOf(given.value, arg?.kind === 'chart', call.tools) : one(given, call);
    if (value instanceof CellError) return value;
    if (isFault(value)) return refuse(value.sentence);
    values.push(value);
  }
  return values;
}

/** The filled cells of a block, each a value of its own. */
function eachOf(given: Given): readonly Value[] | CellError {
  const values: Value[] = [];
  for (const [row, cells] of (given.value as SimpleRangeValue).data.entries()) {
    for (const [col, value] of cells.entries()) {
      if (value instanceof CellError) return located({ value, row, col }, given);
      if (value !== EmptyValue) values.push(plainValue(value));
    }
  }
  return values;
}

function one(given: Given, call: Call): Value | CellError {
  const { ast, value } = given;
  if (value instanceof CellError) return value;
  // A place left empty stands for the usual value; a cell that is pointed at and holds nothing is one not yet filled in.
  if (value === EmptyValue && ast.type !== 'EMPTY') {
    const name = call.nameOf(given) ?? (ast.type === 'NAMED_EXPRESSION' ? `‘${nameFromEngine(ast.expressionName!)}’` : 'A cell that is used here');
    return refuse(`${name} has no value yet.`);
  }
  return plainValue(value);
}

/** An error in a chart is a figure that it lacks, as a text in it is. */
function plainValue(value: unknown): Value {
  if (typeof value === 'string' || typeof value === 'boolean') return value;
  if (value instanceof Bracket) return value.span;
  if (isDate(value)) return dateText(value);
  if (!isNumeric(value)) return null;
  const { value: base, dimension, unit } = quantityOf(value) as Quantity;
  return { value: base, dimension, unit };
}

const CHART = 'TT.CHART';
const BLOCK = 'TT.BLOCK';

/** A block as the functions take it, read once. */
function blockOf(block: SimpleRangeValue, asChart: boolean, tools: Tools): SizeChart | CellBlock | Fault {
  const kept = asChart ? CHART : BLOCK;
  const vertex = block.range && tools.interpreter.dependencyGraph.getRange(block.range.start, block.range.end);
  const known = vertex?.getFunctionValue(kept) as SizeChart | CellBlock | Fault | undefined;
  if (known !== undefined) return known;
  const grid = block.data.map((cells) => cells.map(plainValue));
  const read = asChart ? readChart(grid) : new CellBlock(grid);
  vertex?.setFunctionValue(kept, read);
  return read;
}
