/**
 * SUBTOTAL and AGGREGATE: one of several functions, chosen by a number. Cells that
 * are such totals themselves are left out, so that a grand total counts nothing
 * twice (OpenFormula 6.16.60); AGGREGATE is told what to leave out.
 */
import { ArrayFormulaVertex, CellError, coerceRangeToScalar, EmptyValue, ErrorType, ScalarFormulaVertex, SimpleRangeValue } from '../internals.ts';
import type { Ast, Place } from '../internals.ts';
import { workedOut } from '../evaluate.ts';
import { Refusal } from '../values.ts';
import { Call } from './tools.ts';
import type { Given, Own } from './tools.ts';

/** By the number given first (OpenFormula 6.16.60, table 28; from 12 on common practice). */
const CHOICES = [
  'AVERAGE', 'COUNT', 'COUNTA', 'MAX', 'MIN', 'PRODUCT', 'STDEV.S', 'STDEV.P', 'SUM', 'VAR.S', 'VAR.P',
  'MEDIAN', 'MODE', 'LARGE', 'SMALL', 'PERCENTILE', 'QUARTILE', 'PERCENTILE.EXC', 'QUARTILE.EXC',
] as const;
const SUBTOTALS = 11;
/** From this one on they take a last value of their own. */
const WITH_PLACE = 14;

type Find = (name: string) => Own | undefined;

interface LeftOut {
  readonly totals: boolean;
  readonly errors: boolean;
}

/** A plain whole number between the brackets; `undefined` for anything else. */
function numberIn(call: Call, given: Given | undefined): number | CellError | undefined {
  const value = given?.value instanceof SimpleRangeValue ? coerceRangeToScalar(given.value, call.state) : given?.value;
  return value instanceof CellError || typeof value === 'number' ? value : undefined;
}

export const subtotal = (find: Find): Own => (call) => {
  const which = numberIn(call, call.given[0]);
  if (which instanceof CellError) return which;
  const number = which !== undefined && which > 100 ? which - 100 : which ?? 0;
  const name = number <= SUBTOTALS ? CHOICES[number - 1] : undefined;
  if (name === undefined || call.given.length < 2) return new Refusal(ErrorType.VALUE, 'SUBTOTAL needs a number from 1 to 11 first, such as 9 for the sum, and then the cells.');
  return total(call, find, name, 1, { totals: true, errors: false });
};

const LEAVES_OUT: Readonly<Record<number, LeftOut>> = {
  0: { totals: true, errors: false }, 2: { totals: true, errors: true }, 4: { totals: false, errors: false }, 6: { totals: false, errors: true },
};

export const aggregate = (find: Find): Own => (call) => {
  const which = numberIn(call, call.given[0]);
  if (which instanceof CellError) return which;
  const out = numberIn(call, call.given[1]);
  if (out instanceof CellError) return out;
  const name = CHOICES[(which ?? 0) - 1];
  if (name === undefined || call.given.length < 3) return new Refusal(ErrorType.VALUE, `AGGREGATE needs a number from 1 to ${CHOICES.length} first, such as 9 for the sum, then what to leave out, and then the cells.`);
  const leftOut = LEAVES_OUT[out ?? -1];
  if (leftOut === undefined) return new Refusal(ErrorType.VALUE, 'AGGREGATE can leave out other totals (0), totals and errors (2), nothing (4) or errors (6): write one of these numbers second. Hidden rows are counted.');
  return total(call, find, name, 2, leftOut, which! >= WITH_PLACE ? 1 : 0);
};

/** Calls the chosen function with what is not left out. `first`: the place of the first of the cells; `others`: values after them that are not looked through. */
function total(call: Call, find: Find, name: string, first: number, out: LeftOut, others = 0): unknown {
  const last = call.given.length - others;
  const args = call.given.slice(first).map((given, i) => (i + first < last ? without(call, given, out) : given.ast));
  return find(name)?.(new Call(name, { ...call.ast, procedureName: name, args }, call.state, call.tools));
}

/** The part of the formula again, or its values without those to be left out. */
function without(call: Call, given: Given, out: LeftOut): Ast {
  const { ast, value } = given;
  if (!(value instanceof SimpleRangeValue)) {
    const alone = ast.type === 'CELL_REFERENCE' && out.totals && isTotal(call, ast.reference!.toSimpleCellAddress(call.state.formulaAddress));
    return alone || (out.errors && value instanceof CellError) ? workedOut(EmptyValue, { ...ast, type: 'CELL_REFERENCE' }) : ast;
  }
  const totals = out.totals ? totalsIn(call, value) : undefined;
  const drops = (cell: unknown, row: number, col: number): boolean => (out.errors && cell instanceof CellError) || totals?.has(`${row} ${col}`) === true;
  if ((totals === undefined || totals.size === 0) && !(out.errors && value.data.some((cells) => cells.some((cell) => cell instanceof CellError)))) return ast;
  return workedOut(SimpleRangeValue.onlyValues(value.data.map((cells, row) => cells.map((cell, col) => (drops(cell, row, col) ? EmptyValue : cell)))), ast);
}

/** Kept with a block of cells until one of them changes. */
const TOTALS = 'TT.TOTALS';

/** Places in a block whose formulas are totals themselves, from its top left. */
function totalsIn(call: Call, { range }: SimpleRangeValue): ReadonlySet<string> {
  if (range === undefined) return new Set();
  const vertex = call.tools.interpreter.dependencyGraph.getRange(range.start, range.end);
  const known = vertex?.getFunctionValue(TOTALS) as ReadonlySet<string> | undefined;
  if (known !== undefined) return known;
  const found = new Set<string>();
  call.tools.eachPlace(range, (place) => {
    if (isTotal(call, place)) found.add(`${place.row - range.start.row} ${place.col - range.start.col}`);
  });
  vertex?.setFunctionValue(TOTALS, found);
  return found;
}

function isTotal(call: Call, place: Place): boolean {
  const graph = call.tools.interpreter.dependencyGraph;
  const vertex = graph.addressMapping.getCell(place);
  if (!(vertex instanceof ScalarFormulaVertex) && !(vertex instanceof ArrayFormulaVertex)) return false;
  return callsTotal(vertex.getFormula(graph.lazilyTransformingAstService));
}

const calling = new WeakMap<Ast, boolean>();

function callsTotal(part: Ast): boolean {
  const known = calling.get(part);
  if (known !== undefined) return known;
  const parts = [part.left, part.right, part.expression, typeof part.value === 'object' ? part.value : undefined, ...(part.args ?? []).flat()];
  const calls = part.procedureName === 'SUBTOTAL' || part.procedureName === 'AGGREGATE' || parts.some((each) => each !== undefined && callsTotal(each));
  calling.set(part, calls);
  return calls;
}
