/**
 * What would mend a formula in which a figure lacks its unit: every bare figure
 * beside one with a unit, and every one where a function needs a unit, is tried
 * with the units that make sense. Only what then gives a result is offered.
 */
import { quantity } from '../../src/quantities/index.ts';
import type { Dimension, UnitCode } from '../../src/quantities/index.ts';
import type { UnitMend } from '../../src/reckoning/protocol.ts';
import { functionNamed } from '../../src/sewing/index.ts';
import { workedOut } from './evaluate.ts';
import { CellError, SimpleRangeValue, ValueCellVertex } from './internals.ts';
import type { Ast, Place, State } from './internals.ts';
import type { Host } from './host.ts';
import { branchesNotTaken, partsOf, SIGNS, stateInside, withoutBrackets } from './parts.ts';
import { Measure, valueIn } from './values.ts';

/** The units to offer beside one of this: its own first, then the other system's. */
function unitsBeside(dimension: Measured, unit?: UnitCode): readonly UnitCode[] {
  if (dimension === 'angle') return ['deg'];
  const [metric, inch]: readonly [UnitCode, UnitCode] = dimension === 'length' ? ['cm', 'in'] : ['cm2', 'in2'];
  if (unit === undefined) return [metric, inch];
  return ['in', 'ft', 'yd', 'in2', 'ft2', 'yd2'].includes(unit) ? [unit, metric] : [unit, inch];
}

/** Parts of one formula that may be given a unit together, with where they are written. */
interface Bare {
  readonly parts: readonly Ast[];
  /** The figures after which the unit is written; none where a cell holds the figure. */
  readonly figures: readonly Ast[];
  /** `3/8`, which is two figures to the engine. */
  readonly fraction?: string;
  readonly cell?: Place;
}

type Measured = Exclude<Dimension, 'number'>;

export function unitMends(host: Host, formula: Ast, state: State): readonly UnitMend[] {
  const found = faulty(host, formula, state);
  if (found === undefined) return [];
  const { ast, inside } = found;
  const given = ast.args ?? [ast.left!, ast.right!];
  const values = given.map((part) => host.inside._evaluator.interpreter.evaluateAst(part, inside));
  const measures = values.map((value) => (value instanceof SimpleRangeValue ? host.tools.firstWithUnit(value)?.value : value)).filter((value) => value instanceof Measure);
  const leaves = figureLeaves(formula);
  const offer = ({ parts, figures, fraction, cell }: Bare, dimension: Measured): UnitMend[] => {
    const beside = measures.find((each) => each.dimension === dimension);
    return unitsBeside(dimension, beside?.unit).filter((unit) => works(host, formula, state, parts, unit)).map((unit) => ({
      cell: cell ?? state.formulaAddress, unit, guessed: beside === undefined,
      figures: figures.map((part) => leaves.indexOf(part)),
      values: cell ? [host.valueAt(cell) as number] : figures.map(({ value }) => value as number),
      ...(fraction && { fraction }),
    }));
  };
  const candidates = given.flatMap((part, i) => {
    const due = dueAt(ast, i) ?? (dueAt(ast, i) === undefined ? measures[0]?.dimension : undefined);
    const bare = due !== undefined && typeof values[i] === 'number' ? bareIn(host, part, state.formulaAddress) : undefined;
    return bare && due ? [{ bare, due }] : [];
  });
  const single = candidates.flatMap(({ bare, due }) => offer(bare, due));
  if (single.length > 0) return single.slice(0, MOST);
  const inFormula = candidates.filter(({ bare, due }) => bare.cell === undefined && due === candidates[0]!.due);
  const together = inFormula.length > 1 ? offer(joined(inFormula.map(({ bare }) => bare)), inFormula[0]!.due) : [];
  return together.length > 0 ? together : inBlock(host, values, measures[0]);
}

/** Mends offered of one formula. */
const MOST = 4;

/** What a function of the trade needs at a place: a dimension, or `null` where no unit may stand; `undefined` in any other function or sum. */
function dueAt(ast: Ast, place: number): Measured | null | undefined {
  const fn = ast.type === 'FUNCTION_CALL' ? functionNamed(ast.procedureName!) : undefined;
  if (fn === undefined) return undefined;
  const kind = fn.args[Math.min(place, fn.args.length - 1)]?.kind;
  return kind === 'length' || kind === 'area' || kind === 'angle' ? kind : null;
}

/** The innermost part that has no result though all its own parts have one. */
function faulty(host: Host, ast: Ast, state: State): { readonly ast: Ast; readonly inside: State } | undefined {
  const { interpreter } = host.inside._evaluator;
  if (!(interpreter.evaluateAst(ast, state) instanceof CellError)) return undefined;
  const inside = stateInside(host, ast, state);
  const notTaken = branchesNotTaken(host, ast, state);
  for (const part of partsOf(ast)) {
    if (!notTaken.has(part) && interpreter.evaluateAst(part, inside) instanceof CellError) return faulty(host, part, inside);
  }
  return ast.type === 'FUNCTION_CALL' || SIGNS[ast.type] !== undefined ? { ast, inside } : undefined;
}

/** The figures whose unit would be that of a part; `undefined` when that cannot be said. */
function bareIn(host: Host, given: Ast, home: Place): Bare | undefined {
  const ast = withoutBrackets(given);
  switch (ast.type) {
    case 'NUMBER': return { parts: [ast], figures: [ast] };
    case 'DIV_OP': return isTapeFraction(ast) ? { parts: [ast], figures: [ast.right!], fraction: `${ast.left!.value as number}/${ast.right!.value as number}` } : undefined;
    case 'MINUS_UNARY_OP': case 'PLUS_UNARY_OP': return bareIn(host, ast.value as Ast, home);
    case 'PLUS_OP': case 'MINUS_OP': {
      const [left, right] = [bareIn(host, ast.left!, home), bareIn(host, ast.right!, home)];
      return left && right && !left.cell && !right.cell ? joined([left, right]) : undefined;
    }
    case 'CELL_REFERENCE': {
      const cell = ast.reference!.toSimpleCellAddress(home);
      return isTypedFigure(host, cell) ? { parts: [ast], figures: [], cell } : undefined;
    }
    default: return undefined;
  }
}

function joined(several: readonly Bare[]): Bare {
  return { parts: several.flatMap(({ parts }) => parts), figures: several.flatMap(({ figures }) => figures) };
}

function isTapeFraction({ left, right }: Ast): boolean {
  const [top, bottom] = [left!, right!].map(({ type, value }) => (type === 'NUMBER' ? Number(value) : NaN));
  return Number.isInteger(top) && top! < bottom! && [2, 4, 8, 16, 32, 64].includes(bottom!);
}

function isTypedFigure(host: Host, place: Place): boolean {
  const vertex = host.graphs.addressMapping.getCell(place);
  return vertex instanceof ValueCellVertex && typeof vertex.getCellValue() === 'number';
}

/** The only bare figure in a block of others with a unit. */
function inBlock(host: Host, values: readonly unknown[], beside: Measure | undefined): readonly UnitMend[] {
  if (beside === undefined) return [];
  const found: Place[] = [];
  for (const value of values) {
    if (!(value instanceof SimpleRangeValue) || value.range === undefined) continue;
    const { sheet, row: top, col: left } = value.range.start;
    host.tools.eachCell(value.range, (each, row, col) => {
      if (typeof each === 'number' && found.length < 2) found.push({ sheet, row: top + row, col: left + col });
    });
  }
  const [cell, second] = found;
  if (cell === undefined || second !== undefined || !isTypedFigure(host, cell)) return [];
  return unitsBeside(beside.dimension, beside.unit).map((unit) => ({ cell, unit, figures: [], values: [host.valueAt(cell) as number], guessed: false }));
}

/** True when the formula has a result once these parts have a unit. Changes nothing. */
function works(host: Host, formula: Ast, state: State, parts: readonly Ast[], unit: UnitCode): boolean {
  const { interpreter } = host.inside._evaluator;
  const withUnit = (ast: Ast): Ast => {
    if (parts.includes(ast)) {
      const { value, dimension } = quantity(interpreter.evaluateAst(ast, state) as number, unit);
      return workedOut(valueIn(value, dimension, unit), ast);
    }
    if (partsOf(ast).length === 0) return ast;
    const change = <T>(part: T): T => (Array.isArray(part) ? part.map(change) as T : typeof part === 'object' && part !== null && 'type' in part ? withUnit(part as unknown as Ast) as T : part);
    return { ...ast, left: change(ast.left), right: change(ast.right), expression: change(ast.expression), value: change(ast.value), args: change(ast.args) } as Ast;
  };
  return !(interpreter.evaluateAst(withUnit(formula), state) instanceof CellError);
}

/** Every plain figure that the engine was given, in the order in which they stand; one for each that `figuresIn` of `src/formula` counts. */
function figureLeaves(ast: Ast): readonly Ast[] {
  if (ast.type === 'NUMBER') return [ast];
  return partsOf(ast).flatMap(figureLeaves);
}
