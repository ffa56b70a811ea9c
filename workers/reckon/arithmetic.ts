/**
 * The signs of formulas (+ − × ÷ ^ & and the comparisons) for figures with a
 * unit. Plain numbers, dates and texts go the engine's own way, first and
 * fast; what has a unit goes through `src/quantities`, which alone knows what
 * a length times a length is.
 */
import { add, compare, divide, isFault, multiply, negate, power, readQuantity, subtract } from '../../src/quantities/index.ts';
import type { Fault, Quantity } from '../../src/quantities/index.ts';
import { dateText } from './dates.ts';
import { CellError, EmptyValue, ErrorType, PercentNumber, RichNumber, SimpleRangeValue } from './internals.ts';
import type { Helper, Operator } from './internals.ts';
import { Bracket, Dimensioned, isDate, isNumeric, quantityOf, refuse, Refusal, sameValue, sayOf, textOf, valueOf } from './values.ts';
import type { Side } from './values.ts';

type Sum = (a: Quantity, b: Quantity) => Quantity | Fault;

const UNNAMED = 'A cell that is used here has no value yet.';

/** A figure that is neither a plain number nor a date: to be reckoned with in `src/quantities`. */
const hasUnit = (value: unknown): boolean => value instanceof Dimensioned || value instanceof PercentNumber;

export function spanSentence(value: Bracket): string {
  return `${sayOf(value)} is two figures: write the one to reckon with.`;
}

export function textSentence(text: string): string {
  if (text.trim() === '') return 'An empty text is not a number.';
  const short = text.length > 40 ? `${text.slice(0, 39)}…` : text;
  return readQuantity(text).kind === 'quantity'
    ? `“${short}” is text here, not a figure: take off the quotation marks, or put the figure in a cell of its own.`
    : `“${short}” is text, not a number.`;
}

export class Arithmetic {
  readonly #helper: Helper;
  /** Differences below this part of the operands are the noise of doubles and count as none. */
  readonly #noise: number;

  constructor(helper: Helper) {
    this.#helper = helper;
    this.#noise = helper.actualEps;
  }

  readonly plus: Operator = (left, right) => {
    if (typeof left === 'number' && typeof right === 'number') {
      const sum = left + right;
      return Math.abs(sum) < this.#noise * Math.abs(left) ? 0 : sum;
    }
    return this.#quiet(left, this.#reckon(left, right, add, this.#helper.addWithEpsilon));
  };

  readonly minus: Operator = (left, right) => {
    if (typeof left === 'number' && typeof right === 'number') {
      const difference = left - right;
      return Math.abs(difference) < this.#noise * Math.abs(left) ? 0 : difference;
    }
    return this.#quiet(left, this.#reckon(left, right, subtract, this.#helper.subtract));
  };

  readonly times: Operator = (left, right) => {
    if (typeof left === 'number' && typeof right === 'number') return left * right;
    return this.#reckon(left, right, multiply, this.#helper.multiply);
  };

  readonly over: Operator = (left, right) => {
    if (typeof left === 'number' && typeof right === 'number' && right !== 0) return left / right;
    return this.#reckon(left, right, divide, this.#helper.divide);
  };

  readonly toThePower: Operator = (left, right) => {
    if (typeof left === 'number' && typeof right === 'number') return left ** right;
    return this.#reckon(left, right, power, this.#helper.pow);
  };

  readonly negative = (value: unknown): unknown => {
    if (typeof value === 'number') return -value;
    if (value instanceof CellError) return value;
    if (value instanceof Bracket) return refuse(spanSentence(value));
    const quantity = hasUnit(value) ? quantityOf(value) : undefined;
    if (quantity) return valueOf(negate(quantity));
    const number = this.#number(value, false, 'left');
    return number instanceof CellError ? number : this.#helper.unaryMinus(number);
  };

  readonly percent = (value: unknown): unknown => {
    if (value instanceof CellError) return value;
    if (value instanceof Bracket) return refuse(spanSentence(value));
    if (value instanceof Dimensioned) return refuse(`${sayOf(value)} has a unit already and cannot be a percent.`);
    const number = this.#number(value, false, 'left');
    if (number instanceof CellError) return number;
    return new PercentNumber((typeof number === 'number' ? number : number.val) / 100);
  };

  readonly joined: Operator = (left, right) => {
    if (left instanceof CellError) return left;
    if (right instanceof CellError) return right;
    return this.text(left) + this.text(right);
  };

  /** A value as text, as it would show. */
  text(value: unknown): string {
    if (typeof value === 'string') return value;
    if (typeof value === 'number') return plainText(value);
    if (value === EmptyValue) return '';
    if (value instanceof Dimensioned) return textOf(value);
    if (value instanceof PercentNumber) return `${plainText(100 * value.val)} %`;
    if (isDate(value)) return dateText(value);
    if (value instanceof RichNumber) return plainText(value.val);
    return value ? 'TRUE' : 'FALSE';
  }

  readonly equal: Operator = (left, right) => {
    if (typeof left === 'number' && typeof right === 'number') return this.#helper.compare(left, right) === 0;
    return this.#alike(left, right, true);
  };

  readonly unequal: Operator = (left, right) => this.#alike(left, right, false);
  readonly below: Operator = (left, right) => this.#ordered(left, right, (order) => order < 0);
  readonly above: Operator = (left, right) => this.#ordered(left, right, (order) => order > 0);
  readonly atMost: Operator = (left, right) => this.#ordered(left, right, (order) => order <= 0);
  readonly atLeast: Operator = (left, right) => this.#ordered(left, right, (order) => order >= 0);

  #reckon(left: unknown, right: unknown, sum: Sum, plain: Operator): unknown {
    if (left instanceof CellError) return left;
    if (right instanceof CellError) return right;
    const a = this.#number(left, right instanceof Dimensioned, 'left');
    if (a instanceof CellError) return a;
    const b = this.#number(right, left instanceof Dimensioned, 'right');
    if (b instanceof CellError) return b;
    if (!hasUnit(a) && !hasUnit(b)) return plain(a, b);
    for (const one of [a, b]) if (one instanceof Bracket) return refuse(spanSentence(one));
    const first = quantityOf(a);
    const second = quantityOf(b);
    if (first && second) return blaming(sum(first, second), first, second, sum === divide && second.value === 0);
    if (!(a instanceof Dimensioned) && !(b instanceof Dimensioned)) return plain(a, b);
    return refuse('A date and a figure with a unit do not go together.');
  }

  /** The operand as a number of some class; `beside`: the other one has a unit, so that nothing may pass for 0. */
  #number(value: unknown, beside: boolean, side: Side): number | RichNumber | CellError {
    if (isNumeric(value)) return value;
    if (value === EmptyValue) return beside ? new Refusal(ErrorType.VALUE, UNNAMED, undefined, { side, empty: true }) : 0;
    if (typeof value === 'string') {
      const number = beside && value.trim() === '' ? undefined : this.#helper.coerceScalarToNumberOrError(value);
      return isNumeric(number) ? number : new Refusal(ErrorType.VALUE, textSentence(value), undefined, { side, empty: false });
    }
    return Number(value);
  }

  /** A sum that comes to nothing but noise is nothing. */
  #quiet(left: unknown, result: unknown): unknown {
    if (!(result instanceof Dimensioned) || !(left instanceof Dimensioned)) return result;
    return result.val !== 0 && Math.abs(result.val) < this.#noise * Math.abs(left.val) ? result.fromNumber(0) : result;
  }

  #alike(left: unknown, right: unknown, wanted: boolean): unknown {
    if (left instanceof CellError) return left;
    if (right instanceof CellError) return right;
    if (!(left instanceof Dimensioned) && !(right instanceof Dimensioned)) return (this.#helper.compare(left, right) === 0) === wanted;
    if (left instanceof Bracket && right instanceof Bracket) return sameValue(left, right) === wanted;
    const other = left instanceof Dimensioned ? right : left;
    if (other === EmptyValue || typeof other === 'boolean' || isDate(other)) return !wanted;
    if (typeof other === 'string') return readQuantity(other).kind === 'quantity' ? refuse(textSentence(other)) : !wanted;
    const order = this.#order(left, right);
    return typeof order === 'number' ? (order === 0) === wanted : order;
  }

  #ordered(left: unknown, right: unknown, holds: (order: number) => boolean): unknown {
    if (left instanceof CellError) return left;
    if (right instanceof CellError) return right;
    if (!(left instanceof Dimensioned) && !(right instanceof Dimensioned)) return holds(this.#helper.compare(left, right));
    const order = this.#order(left, right);
    return typeof order === 'number' ? holds(order) : order;
  }

  #order(left: unknown, right: unknown): number | Refusal {
    if (left instanceof SimpleRangeValue || right instanceof SimpleRangeValue) return refuse('A block of cells and one figure cannot be compared: name one cell.');
    const a = this.#number(left, true, 'left');
    if (a instanceof CellError) return a as Refusal;
    const b = this.#number(right, true, 'right');
    if (b instanceof CellError) return b as Refusal;
    for (const one of [a, b]) if (one instanceof Bracket) return refuse(spanSentence(one));
    const first = quantityOf(a);
    const second = quantityOf(b);
    if (!first || !second) return refuse('A date and a figure with a unit cannot be compared.');
    const order = compare(first, second);
    return isFault(order) ? blaming(order, first, second, false) as Refusal : order;
  }
}

/** A result, or its fault with the operand that only lacks a unit. */
function blaming(outcome: Quantity | Fault, left: Quantity, right: Quantity, byZero: boolean): ReturnType<typeof valueOf> {
  if (!isFault(outcome)) return valueOf(outcome);
  if (byZero) return new Refusal(ErrorType.DIV_BY_ZERO, outcome.sentence);
  const side = left.dimension === right.dimension ? undefined : left.dimension === 'number' ? 'left' : right.dimension === 'number' ? 'right' : undefined;
  return new Refusal(ErrorType.VALUE, outcome.sentence, undefined, side && { side, empty: false });
}

/** Without the noise in the last digits of a double: 0.1 + 0.2 is "0.3". */
function plainText(value: number): string {
  return String(Number(value.toPrecision(15)));
}
