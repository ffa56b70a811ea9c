/**
 * Works formulas out. Takes the place of the interpreter's own evaluation step
 * so that signs know units, functions come from our table, and every error
 * knows its sentence and the cell it arose in.
 */
import { quantity, UNIT_CODES } from '../../src/quantities/index.ts';
import type { Arithmetic } from './arithmetic.ts';
import { AbsoluteCellRange, CellError, ErrorType, InterpreterState, isColOrRowInvalid, RichNumber, SimpleRangeValue } from './internals.ts';
import type { Ast, CallFunction, Interpreter, Operator, Place, Registry, State } from './internals.ts';
import { MOST_USED } from './reach.ts';
import { noFunction, noName, sentenceOf } from './sentences.ts';
import type { PlaceNames } from './sentences.ts';
import { Refusal, valueIn } from './values.ts';
import type { Side } from './values.ts';

/** A part of a formula that has been worked out already; only we make these. */
const WORKED_OUT = 'TT_VALUE';

interface WorkedOut extends Ast {
  readonly result: unknown;
}

/**
 * A stand-in for a part of a formula whose value is known. One for a cell still
 * says that it is, since some functions pass over a text in a cell and not one
 * in their brackets.
 */
export function workedOut(result: unknown, part: Ast): Ast {
  return (part.type === 'CELL_REFERENCE' ? { ...part, result } : { type: WORKED_OUT, result }) as WorkedOut;
}

/** A block that was worked out, with a refusal for each figure of it that is none. */
function finite(block: SimpleRangeValue, home: Place): SimpleRangeValue {
  const isSound = (value: unknown): boolean => Number.isFinite(value instanceof RichNumber ? value.val : typeof value === 'number' ? value : 0);
  if (block.data.every((row) => row.every(isSound))) return block;
  return SimpleRangeValue.onlyValues(block.data.map((row) => row.map((value) => (isSound(value) ? value : new Refusal(ErrorType.NUM, NO_RESULT, home)))));
}

const NO_RESULT = 'The result is larger than a cell can hold, or is no number.';

const TOO_MANY = `These blocks of cells make more than ${MOST_USED.toLocaleString('en')} sums: use smaller ones.`;

/** Of the block that two values make when each cell of one meets each of the other. */
function cellsOf(left: unknown, right: unknown): number {
  const [a, b] = [left, right].map((value) => (value instanceof SimpleRangeValue ? value : undefined));
  return Math.max(a?.width() ?? 1, b?.width() ?? 1) * Math.max(a?.height() ?? 1, b?.height() ?? 1);
}

export class Evaluation {
  readonly #interpreter: Interpreter;
  /** Those that take blocks where others take one value. */
  readonly #arrayFunctions: ReadonlySet<string>;
  readonly #functions: ReadonlyMap<string, CallFunction>;
  readonly #names: PlaceNames;
  readonly #rest: (ast: Ast, state: State) => unknown;
  readonly #signs: ReadonlyMap<string, Operator>;
  readonly #before: ReadonlyMap<string, (value: unknown) => unknown>;
  readonly #literals = new WeakMap<Ast, unknown>();

  constructor(interpreter: Interpreter, registry: Registry, arithmetic: Arithmetic, functions: ReadonlyMap<string, CallFunction>, names: PlaceNames) {
    this.#interpreter = interpreter;
    this.#arrayFunctions = new Set([...functions.keys()].filter((name) => registry.isArrayFunction(name)));
    this.#functions = functions;
    this.#names = names;
    this.#rest = interpreter.evaluateAstWithoutPostprocessing.bind(interpreter);
    this.#signs = new Map<string, Operator>([
      ['PLUS_OP', arithmetic.plus], ['MINUS_OP', arithmetic.minus], ['TIMES_OP', arithmetic.times],
      ['DIV_OP', arithmetic.over], ['POWER_OP', arithmetic.toThePower], ['CONCATENATE_OP', arithmetic.joined],
      ['EQUALS_OP', arithmetic.equal], ['NOT_EQUAL_OP', arithmetic.unequal],
      ['LESS_THAN_OP', arithmetic.below], ['GREATER_THAN_OP', arithmetic.above],
      ['LESS_THAN_OR_EQUAL_OP', arithmetic.atMost], ['GREATER_THAN_OR_EQUAL_OP', arithmetic.atLeast],
    ]);
    this.#before = new Map([['MINUS_UNARY_OP', arithmetic.negative], ['PERCENT_OP', arithmetic.percent], ['PLUS_UNARY_OP', (value: unknown) => value]]);
    interpreter.evaluateAst = (ast, state) => this.evaluate(ast, state);
  }

  evaluate(ast: Ast, state: State): unknown {
    const given = this.#value(ast, state);
    const value = given instanceof SimpleRangeValue && given.range === undefined ? finite(given, state.formulaAddress) : given;
    if (typeof value === 'number') {
      // Adding 0 turns negative zero into zero.
      return Number.isFinite(value) ? value + 0 : new Refusal(ErrorType.NUM, NO_RESULT, state.formulaAddress);
    }
    if (value instanceof RichNumber) {
      if (!Number.isFinite(value.val)) return new Refusal(ErrorType.NUM, NO_RESULT, state.formulaAddress);
      return Object.is(value.val, -0) ? value.fromNumber(0) : value;
    }
    if (value instanceof SimpleRangeValue && value.height() === 1 && value.width() === 1) return this.#located(value.data[0]?.[0], value.range?.start ?? state.formulaAddress);
    return this.#located(value, state.formulaAddress);
  }

  #value(ast: Ast, state: State): unknown {
    if (ast.type === 'CELL_REFERENCE') return this.#cell(ast, state);
    if (ast.type === 'FUNCTION_CALL') return this.#call(ast, state);
    const sign = this.#signs.get(ast.type);
    if (sign !== undefined) return this.#sum(sign, ast, state);
    switch (ast.type) {
      case 'NUMBER':
      case 'STRING':
        return ast.value;
      case WORKED_OUT:
        return (ast as WorkedOut).result;
      case 'PARENTHESES':
        return this.evaluate(ast.expression!, state);
      case 'MINUS_UNARY_OP':
      case 'PERCENT_OP':
      case 'PLUS_UNARY_OP':
        return this.#one(ast, state);
      case 'NAMED_EXPRESSION':
        return this.#name(ast, state);
      case 'CELL_RANGE':
      case 'COLUMN_RANGE':
      case 'ROW_RANGE':
        return this.#block(ast, state);
      default:
        return this.#rest(ast, state);
    }
  }

  #sum(sign: Operator, ast: Ast, state: State): unknown {
    const left = this.evaluate(ast.left!, state);
    const right = this.evaluate(ast.right!, state);
    if (left instanceof SimpleRangeValue || right instanceof SimpleRangeValue) {
      if (cellsOf(left, right) > MOST_USED) return new Refusal(ErrorType.NUM, TOO_MANY);
      return this.#interpreter.binaryRangeWrapper(sign, left, right, state);
    }
    const result = sign(left, right);
    return result instanceof Refusal && result.blame !== undefined ? this.#named(result, result.blame, ast, state) : result;
  }

  #one(ast: Ast, state: State): unknown {
    const sign = this.#before.get(ast.type)!;
    const value = this.evaluate(ast.value as Ast, state);
    return value instanceof SimpleRangeValue ? this.#interpreter.unaryRangeWrapper(sign, value, state) : sign(value);
  }

  #cell(ast: Ast, state: State): unknown {
    if ('result' in ast) return ast.result;
    const place = ast.reference!.toSimpleCellAddress(state.formulaAddress);
    if (isColOrRowInvalid(place) || (ast.reference!.sheet !== undefined && place.sheet >= 0 && !this.#sheetStands(place.sheet))) {
      return new CellError(ErrorType.REF);
    }
    return this.#located(this.#interpreter.dependencyGraph.addressMapping.getCellValue(place), place);
  }

  #block(ast: Ast, state: State): unknown {
    const sheet = ast.start!.sheet;
    if (sheet !== ast.end!.sheet || (sheet !== undefined && sheet >= 0 && !this.#sheetStands(sheet))) return new CellError(ErrorType.REF);
    return SimpleRangeValue.onlyRange(AbsoluteCellRange.fromAst(ast, state.formulaAddress), this.#interpreter.dependencyGraph);
  }

  #sheetStands(sheet: number): boolean {
    return this.#interpreter.dependencyGraph.sheetMapping.hasSheetWithId(sheet, { includePlaceholders: false });
  }

  #name(ast: Ast, state: State): unknown {
    const name = this.#interpreter.namedExpressions.nearestNamedExpression(ast.expressionName!, state.formulaAddress.sheet);
    if (name === undefined) return new Refusal(ErrorType.NAME, noName(ast.expressionName!));
    return this.#interpreter.dependencyGraph.addressMapping.getCellValue(name.address);
  }

  #call(ast: Ast, state: State): unknown {
    const name = ast.procedureName!;
    if (name === 'TT.QUANTITY') return this.#literal(ast);
    const call = this.#functions.get(name);
    if (call === undefined) return new Refusal(ErrorType.NAME, noFunction(name));
    if (state.arraysFlag || !this.#arrayFunctions.has(name)) return call(ast, state);
    return call(ast, new InterpreterState(state.formulaAddress, true, state.formulaVertex));
  }

  /** A figure with its unit, as the formula's translation has it: amount, place of the unit in `UNIT_CODES`. */
  #literal(ast: Ast): unknown {
    let value = this.#literals.get(ast);
    if (value === undefined) {
      const [amount, place] = (ast.args ?? []).map((arg) => arg.value);
      const unit = UNIT_CODES[place as number];
      if (typeof amount !== 'number' || unit === undefined) return new Refusal(ErrorType.NAME, noFunction('TT.QUANTITY'));
      const { value: base, dimension } = quantity(amount, unit);
      value = valueIn(base, dimension, unit);
      this.#literals.set(ast, value);
    }
    return value;
  }

  /** An error with the cell that it arose in, if it did not know it; anything else as it is. */
  #located(value: unknown, place: Place): unknown {
    if (!(value instanceof CellError) || (value instanceof Refusal && value.at !== undefined)) return value;
    return new Refusal(value.type, sentenceOf(value), place, undefined, value.root);
  }

  /** The error of a sum with the name of the cell that is to blame for it. */
  #named(error: Refusal, blame: { readonly side: Side; readonly empty: boolean }, ast: Ast, state: State): Refusal {
    const operand = blame.side === 'left' ? ast.left! : ast.right!;
    if (operand.type !== 'CELL_REFERENCE') return new Refusal(error.type, error.sentence);
    const name = this.#names.cell(operand.reference!.toSimpleCellAddress(state.formulaAddress), state.formulaAddress.sheet);
    return new Refusal(error.type, blame.empty ? `${name} has no value yet.` : `${name}: ${error.sentence}`);
  }
}
