/**
 * ROW, COLUMN, ROWS, COLUMNS and ISFORMULA look at where a reference points, and
 * a name may stand for the reference.
 */
import { MAX_COLUMNS, MAX_ROWS } from '../../../src/formula/index.ts';
import { AbsoluteCellRange, CellError, ScalarFormulaVertex, SimpleRangeValue } from '../internals.ts';
import type { Ast, CellRange } from '../internals.ts';
import { tooMany } from './rounding.ts';
import type { Call, Own } from './tools.ts';

export const pointing: Own = (call) => {
  const args = call.args.map((part) => referenceIn(call, part));
  return call.told(call.tools.library(call.name)!({ ...call.ast, args }, call.state));
};

/** The library counts wrongly where one end of a block is fixed and the other is not. */
function counting(countIn: (block: CellRange) => number, most: number, other: (value: SimpleRangeValue) => number): Own {
  return (call) => {
    const [part] = call.args;
    if (part === undefined || call.args.length > 1) return tooMany(call, 'one block of cells');
    const reference = referenceIn(call, part);
    switch (reference.type) {
      case 'CELL_REFERENCE':
        return 1;
      case 'CELL_RANGE': case 'COLUMN_RANGE': case 'ROW_RANGE': {
        const count = countIn(AbsoluteCellRange.fromAst(reference, call.state.formulaAddress));
        return Number.isFinite(count) ? count : most;
      }
      default: {
        const { value } = call.given[0]!;
        if (value instanceof CellError) return value;
        return value instanceof SimpleRangeValue ? other(value) : 1;
      }
    }
  };
}

export const ROWS = counting(({ start, end }) => Math.abs(end.row - start.row) + 1, MAX_ROWS, (value) => value.height());
export const COLUMNS = counting(({ start, end }) => Math.abs(end.col - start.col) + 1, MAX_COLUMNS, (value) => value.width());

/** A part of a formula without brackets; the reference that a name stands for. */
export function referenceIn(call: Call, part: Ast): Ast {
  if (part.type === 'PARENTHESES') return referenceIn(call, part.expression!);
  if (part.type !== 'NAMED_EXPRESSION') return part;
  const { state, tools: { interpreter } } = call;
  const place = interpreter.namedExpressions.nearestNamedExpression(part.expressionName!, state.formulaAddress.sheet)?.address;
  const vertex = place && interpreter.dependencyGraph.addressMapping.getCell(place);
  return vertex instanceof ScalarFormulaVertex ? vertex.getFormula(interpreter.dependencyGraph.lazilyTransformingAstService) : part;
}
