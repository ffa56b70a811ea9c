/** The parts of a formula's tree: which there are, in which state each is worked out, and how they are written. */
import { exactText, show, UNIT_CODES, quantity } from '../../src/quantities/index.ts';
import { CellError, EmptyValue, InterpreterState, RichNumber, SimpleRangeValue } from './internals.ts';
import type { Ast, State } from './internals.ts';
import type { Host } from './host.ts';

/** The engine's signs as people write them. */
export const SIGNS: Readonly<Record<string, string>> = {
  PLUS_OP: '+', MINUS_OP: '−', TIMES_OP: '×', DIV_OP: '÷', POWER_OP: '^', CONCATENATE_OP: '&', EQUALS_OP: '=', NOT_EQUAL_OP: '≠',
  LESS_THAN_OP: '<', GREATER_THAN_OP: '>', LESS_THAN_OR_EQUAL_OP: '≤', GREATER_THAN_OR_EQUAL_OP: '≥',
};

/** A figure with its unit, such as `2 1/4 in` or, as a sum, `1 yd 4 in`. */
export const isMeasured = (ast: Ast): boolean => ast.type === 'FUNCTION_CALL' && ast.procedureName === 'TT.QUANTITY';

export const isBlock = ({ type }: Ast): boolean => type === 'CELL_RANGE' || type === 'COLUMN_RANGE' || type === 'ROW_RANGE';

/** The parts that a part is worked out from, in the order in which they stand. */
export function partsOf(ast: Ast): readonly Ast[] {
  if (isMeasured(ast)) return [];
  return [ast.left, ast.right, ast.expression, ast.value, ...(ast.args ?? []).flat()].filter((part): part is Ast => typeof part === 'object');
}

export function withoutBrackets(ast: Ast): Ast {
  let inner = ast;
  while (inner.type === 'PARENTHESES') inner = inner.expression!;
  return inner;
}

/** How the parts inside a part are worked out: some functions take blocks cell by cell. */
export function stateInside(host: Host, ast: Ast, state: State): State {
  const blocks = ast.type === 'FUNCTION_CALL' && host.inside._functionRegistry.isArrayFunction(ast.procedureName!);
  return state.arraysFlag || !blocks ? state : new InterpreterState(state.formulaAddress, true, state.formulaVertex);
}

/** The branches that a function did not take, by their place between its brackets. */
export function branchesNotTaken(host: Host, ast: Ast, state: State): ReadonlySet<Ast> {
  const args = ast.args ?? [];
  const inside = stateInside(host, ast, state);
  const value = (at: number): unknown => host.inside._evaluator.interpreter.evaluateAst(args[at]!, inside);
  const but = (taken: readonly number[], from: number): ReadonlySet<Ast> => new Set(args.filter((_, at) => at >= from && !taken.includes(at)));
  if (ast.type !== 'FUNCTION_CALL' || args.length === 0) return NONE;
  switch (ast.procedureName) {
    case 'IF': {
      const holds = truthOf(value(0));
      return holds === undefined ? NONE : but([holds ? 1 : 2], 1);
    }
    case 'IFERROR': return value(0) instanceof CellError ? NONE : but([], 1);
    case 'IFNA': return (value(0) as CellError).type === 'NA' ? NONE : but([], 1);
    case 'CHOOSE': {
      const chosen = value(0);
      return typeof chosen === 'number' ? but([Math.trunc(chosen)], 1) : NONE;
    }
    case 'IFS': {
      for (let at = 0; at + 1 < args.length; at += 2) {
        const holds = truthOf(value(at));
        if (holds === undefined) return NONE;
        if (holds) return new Set(args.filter((_, i) => i > at + 1 || (i < at && i % 2 === 1)));
      }
      return NONE;
    }
    default: return NONE;
  }
}

const NONE: ReadonlySet<Ast> = new Set();

function truthOf(value: unknown): boolean | undefined {
  if (value instanceof CellError || value instanceof SimpleRangeValue || typeof value === 'string') return undefined;
  if (value === EmptyValue) return false;
  return value instanceof RichNumber ? value.val !== 0 : Boolean(value);
}

/** A figure with its unit as it is written on a tape, exactly. */
export function measuredText(ast: Ast): string {
  const [amount, place] = (ast.args ?? []).map(({ value }) => Number(value));
  const unit = UNIT_CODES[place ?? 0] ?? '';
  const figure = quantity(amount ?? 0, unit);
  const shown = show(figure, { system: 'own', inchStep: 32, unit });
  return unit === 'in' && shown.exact ? shown.main : exactText(figure);
}
