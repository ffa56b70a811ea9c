/**
 * The trade's functions in formulas: hands what the cells hold to the
 * definitions in `src/sewing`, and their outcome back. A size chart is read
 * once from its block and kept with it until one of its cells changes.
 */
import { isFault } from '../../../src/quantities/index.ts';
import type { Fault, Quantity } from '../../../src/quantities/index.ts';
import { CellBlock, readChart, SizeChart, work } from '../../../src/sewing/index.ts';
import type { SewingFunction, Value } from '../../../src/sewing/index.ts';
import { isFixed } from '../build.ts';
import { dateText } from '../dates.ts';
import { CellError, EmptyValue, SimpleRangeValue } from '../internals.ts';
import type { Ast, RangeVertex } from '../internals.ts';
import { nameFromEngine } from '../../../src/formula/index.ts';
import { Bracket, isDate, isNumeric, quantityOf, refuse, valueOf } from '../values.ts';
import { located } from './aggregate.ts';
import type { Call, Given, Own } from './tools.ts';

export const sewing = (fn: SewingFunction): Own => (call) => {
  const values = valuesFor(fn, call);
  if (values instanceof CellError) return values;
  const outcome = work(fn, values);
  if (isFault(outcome)) return refuse(outcome.sentence);
  if (outcome.cautions.length > 0) call.tools.cautions.take(fn, call.ast, values, outcome);
  if (typeof outcome.value === 'string') return outcome.value;
  return 'low' in outcome.value ? new Bracket(outcome.value) : valueOf(outcome.value);
};

/** What stands between the brackets, as the function takes it. */
export function valuesFor(fn: SewingFunction, call: Call): readonly Value[] | CellError {
  const values: Value[] = [];
  const { args } = call;
  for (let i = 0; i < args.length; i++) {
    const arg = fn.args[Math.min(i, fn.args.length - 1)];
    const known = arg?.kind === 'chart' || arg?.kind === 'block' ? readBefore(args[i]!, arg.kind, call) : undefined;
    if (known !== undefined) {
      if (!(known instanceof SizeChart) && !(known instanceof CellBlock)) return refuse(known.sentence);
      values.push(known);
      continue;
    }
    const given = call.at(i);
    if (arg?.kind === 'layout' && typeof given.value === 'string') {
      const layout = call.tools.lays.named(given.value, call);
      if (layout instanceof CellError) return layout;
      values.push(layout);
      continue;
    }
    const last = i >= fn.args.length - 1;
    if (given.value instanceof SimpleRangeValue && arg?.kind !== 'chart' && arg?.kind !== 'block') {
      if (!(fn.repeats && last)) return refuse(`${fn.name} takes one cell for ${arg?.name ?? 'this'}, and got a block of cells.`);
      const several = eachOf(given);
      if (several instanceof CellError) return several;
      values.push(...several);
      continue;
    }
    const value = given.value instanceof SimpleRangeValue ? blockOf(given, given.value, arg?.kind === 'chart' ? 'chart' : 'block', call) : one(given, call);
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

type Read = SizeChart | CellBlock | Fault;

/** What a block is kept as, with the engine's vertex for it, until one of its cells changes. */
const KEPT = { chart: 'TT.CHART', block: 'TT.BLOCK' } as const;

/** The vertices of blocks that are the same wherever their formula stands on its sheet, by the part of the formula that names them. */
const fixed = new WeakMap<Ast, RangeVertex>();

/** What was read of a block by another formula that names it in the same way: there is no need to gather its cells. */
function readBefore(ast: Ast, kind: keyof typeof KEPT, call: Call): Read | undefined {
  const vertex = fixed.get(ast);
  if (vertex?.idInGraph === undefined) return undefined;
  const { start, end } = vertex.range;
  if (start.sheet !== call.state.formulaAddress.sheet) return undefined;
  // Rows that came or went may have moved the one and not yet the other.
  if (start.row !== ast.start!.row || start.col !== ast.start!.col || end.row !== ast.end!.row || end.col !== ast.end!.col) return undefined;
  return vertex.getFunctionValue(KEPT[kind]) as Read | undefined;
}

/** A block as the functions take it, read once. */
function blockOf({ ast }: Given, block: SimpleRangeValue, kind: keyof typeof KEPT, { state, tools }: Call): Read {
  const vertex = block.range && tools.interpreter.dependencyGraph.getRange(block.range.start, block.range.end);
  if (vertex && ast.type === 'CELL_RANGE' && ast.start!.sheet === undefined && isFixed(ast.start) && isFixed(ast.end) && vertex.range.sheet === state.formulaAddress.sheet) fixed.set(ast, vertex);
  const known = vertex?.getFunctionValue(KEPT[kind]) as Read | undefined;
  if (known !== undefined) return known;
  const grid = block.data.map((cells) => cells.map(plainValue));
  const read = kind === 'chart' ? readChart(grid) : new CellBlock(grid);
  vertex?.setFunctionValue(KEPT[kind], read);
  return read;
}
