/**
 * The only file that reaches inside HyperFormula. Its package closes its inner
 * files to imports by name, so they are taken by path, and everything else is
 * taken by path too: then the classes are the same ones however the worker is
 * bundled. What is used of each is declared in `hyperformula-inside.d.ts` and
 * guarded by `tests/unit/reckon/internals.test.ts`; the version is fixed.
 */
export { HyperFormula, DenseSparseChooseBasedOnThreshold } from '../../node_modules/hyperformula/es/index.mjs';
export { CellError, ErrorType, isColOrRowInvalid } from '../../node_modules/hyperformula/es/Cell.mjs';
export { ErrorMessage } from '../../node_modules/hyperformula/es/error-message.mjs';
export { CellContent } from '../../node_modules/hyperformula/es/CellContentParser.mjs';
export { ArraySize } from '../../node_modules/hyperformula/es/ArraySize.mjs';
export { AddColumnsCommand, AddRowsCommand, RemoveColumnsCommand, RemoveRowsCommand } from '../../node_modules/hyperformula/es/Operations.mjs';
export { SimpleRangeValue } from '../../node_modules/hyperformula/es/SimpleRangeValue.mjs';
export {
  DateNumber, DateTimeNumber, EmptyValue, PercentNumber, RichNumber, TimeNumber,
} from '../../node_modules/hyperformula/es/interpreter/InterpreterValue.mjs';
export { coerceRangeToScalar } from '../../node_modules/hyperformula/es/interpreter/ArithmeticHelper.mjs';
export { InterpreterState } from '../../node_modules/hyperformula/es/interpreter/InterpreterState.mjs';
export { NamedExpressionDependency } from '../../node_modules/hyperformula/es/parser/RelativeDependency.mjs';
export { AbsoluteCellRange } from '../../node_modules/hyperformula/es/AbsoluteCellRange.mjs';
export {
  ArrayFormulaVertex, EmptyCellVertex, ParsingErrorVertex, RangeVertex, ScalarFormulaVertex, ValueCellVertex,
} from '../../node_modules/hyperformula/es/DependencyGraph/index.mjs';
export type {
  Ast, CallFunction, CellAddress as Place, CellRange, Engine as Inside, FormulaVertex, Helper, Interpreter, Operator, Parameter, ParseResult,
  Reference, Registry, RelativeDependency, State, Vertex,
} from '*/hyperformula/es/shapes.mjs';
