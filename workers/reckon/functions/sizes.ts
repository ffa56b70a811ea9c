/**
 * How many cells the results of our own functions fill, which the engine has to
 * know before anything is worked out, and which of them reckon with whole blocks
 * between their brackets, as in `TREND(A1:A3*2)`.
 */
import { ArraySize, InterpreterState } from '../internals.ts';
import type { Ast, Registry, State } from '../internals.ts';
import { formulaOf } from './let.ts';
import { isAll } from './picking.ts';
import type { Tools } from './tools.ts';

type Size = Pick<ArraySize, 'width' | 'height'>;
type SizeOf = (ast: Ast, sizeOf: (part: Ast) => Size) => Size | undefined;

const LEFT_EMPTY = 'EMPTY';

const SIZES: Readonly<Record<string, SizeOf>> = {
  INDEX: ({ args = [] }, sizeOf) => {
    const [source, row, column] = args;
    if (source === undefined || (!isAll(row) && !isAll(column))) return undefined;
    const { width, height } = sizeOf(source);
    return { width: isAll(column) ? width : 1, height: isAll(row) ? height : 1 };
  },
  SORTBY: ({ args = [] }, sizeOf) => args[0] && sizeOf(args[0]),
  TREND: ({ args = [] }, sizeOf) => {
    const places = [args[2], args[1], args[0]].find((part) => part !== undefined && part.type !== LEFT_EMPTY);
    return places && sizeOf(places);
  },
  LET: ({ args = [] }, sizeOf) => {
    const part = formulaOf(args);
    return part && sizeOf(part);
  },
};

const WITH_BLOCKS: ReadonlySet<string> = new Set((
  'AGGREGATE CORREL COVAR COVARIANCE.P COVARIANCE.S COVARIANCEP COVARIANCES FORECAST INTERCEPT LOOKUP MODE PEARSON PERCENTRANK RANK RSQ SLOPE SORTBY STEYX TREND XMATCH'
).split(' '));

/** Tells the engine. */
export function measure(registry: Registry, tools: Tools): void {
  const sizeIn = registry.getArraySizeFunction.bind(registry);
  const isArray = registry.isArrayFunction;
  registry.isArrayFunction = (name) => WITH_BLOCKS.has(name) || isArray(name);
  registry.getArraySizeFunction = (name) => {
    const own = Object.hasOwn(SIZES, name) ? SIZES[name] : undefined;
    if (own === undefined) return sizeIn(name);
    return (ast, state) => {
      const predictor = tools.interpreter.arraySizePredictor;
      const within: State = name === 'LET' ? state : new InterpreterState(state.formulaAddress, true);
      const { width, height } = own(ast, (part) => predictor.checkArraySizeForAst(part, within)) ?? { width: 1, height: 1 };
      return new ArraySize(width, height);
    };
  };
}
