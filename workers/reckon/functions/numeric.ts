/** Functions whose unit is not that of what they are given, or depends on it. */
import { UNITS } from '../../../src/quantities/index.ts';
import { CellError, ErrorType, SimpleRangeValue } from '../internals.ts';
import { isNumeric, Measure, Refusal } from '../values.ts';
import { located } from './aggregate.ts';
import { tooMany } from './rounding.ts';
import { kindOf } from './tools.ts';
import type { Given, Own } from './tools.ts';

/** The square root of an area is a length. */
export const SQRT: Own = (call) => {
  if (!call.tools.hasUnit(call.given)) return call.library();
  if (call.given.length !== 1) return tooMany(call, 'one value');
  return call.tools.interpreter.unaryRangeWrapper((value) => call.tools.arithmetic.toThePower(value, 0.5), call.given[0]!.value, call.state);
};

export const POWER: Own = (call) => {
  if (!call.tools.hasUnit(call.given)) return call.library();
  const [base, exponent] = call.given;
  if (call.given.length !== 2) return tooMany(call, 'two values');
  return call.tools.interpreter.binaryRangeWrapper(call.tools.arithmetic.toThePower, base!.value, exponent!.value, call.state);
};

/** Multiplies the figures among the values; texts and empty cells are passed over. */
export const PRODUCT: Own = (call) => {
  if (!call.tools.hasUnit(call.given)) return call.library();
  let product: unknown;
  for (const given of call.given) {
    const fault = eachFigure(given, (figure) => {
      product = product === undefined ? figure : call.tools.arithmetic.times(product, figure);
      return product;
    });
    if (fault) return fault;
  }
  return product ?? 0;
};

/** Visits the figures of a value or block until one of them makes an error. */
function eachFigure(given: Given, visit: (figure: unknown) => unknown): CellError | undefined {
  const block = given.value instanceof SimpleRangeValue ? given.value.data : [[given.value]];
  for (let row = 0; row < block.length; row++) {
    for (let col = 0; col < block[row]!.length; col++) {
      const value = block[row]![col];
      if (value instanceof CellError) return located({ value, row, col }, given);
      const result = isNumeric(value) ? visit(value) : undefined;
      if (result instanceof CellError) return result;
    }
  }
  return undefined;
}

/** Sums the products of figures that stand in the same place of blocks of one size. */
export const SUMPRODUCT: Own = (call) => {
  if (!call.tools.hasUnit(call.given)) return call.library();
  const blocks = call.given.map(({ value }) => (value instanceof SimpleRangeValue ? value.data : [[value]]));
  const [first] = blocks;
  if (!first || blocks.some((block) => block.length !== first.length || block[0]!.length !== first[0]!.length)) {
    return new Refusal(ErrorType.VALUE, 'SUMPRODUCT needs blocks of cells of one size.');
  }
  let total: unknown;
  for (let row = 0; row < first.length; row++) {
    for (let col = 0; col < first[row]!.length; col++) {
      const figures = blocks.map((block) => block[row]![col]);
      const at = figures.findIndex((value) => value instanceof CellError);
      if (at >= 0) return located({ value: figures[at], row, col }, call.given[at]!);
      // As without units: a text or an empty cell makes its product nothing.
      if (!figures.every(isNumeric)) continue;
      const product = figures.reduce((a: unknown, b) => call.tools.arithmetic.times(a, b), 1);
      total = total === undefined ? product : call.tools.arithmetic.plus(total, product);
      if (total instanceof CellError) return total;
    }
  }
  return total ?? 0;
};

/** The value after the first case that equals what is asked. */
export const SWITCH: Own = (call) => {
  if (!call.tools.hasUnit(call.given)) return call.library();
  const [asked, ...cases] = call.given.map(({ value }) => value);
  if (asked instanceof CellError) return asked;
  let i = 0;
  for (; i + 1 < cases.length; i += 2) {
    if (cases[i] instanceof CellError) continue;
    const equal = call.tools.arithmetic.equal(asked, cases[i]);
    if (equal instanceof CellError) return equal;
    if (equal === true) return cases[i + 1];
  }
  return i < cases.length ? cases[i] : new Refusal(ErrorType.NA, 'None of the cases fits.');
};

const RADIAN = UNITS.rad.size;

/** Sines and their kin take an angle in its own unit; a plain number is in radians (OpenFormula 6.16). */
export const trigonometry: Own = (call) => {
  if (!call.tools.hasUnit(call.given)) return call.library();
  for (const given of call.given) {
    const found = call.tools.firstWithUnit(given.value);
    if (found && (!(found.value instanceof Measure) || found.value.dimension !== 'angle')) return call.unitFault(given);
  }
  return call.library(call.given.map(({ value }) => inRadians(value)));
};

function inRadians(value: unknown): unknown {
  if (value instanceof SimpleRangeValue) return SimpleRangeValue.onlyValues(value.data.map((cells) => cells.map(inRadians)));
  if (!(value instanceof Measure)) return value;
  return value.dimension === 'angle' ? value.val / RADIAN : new Refusal(ErrorType.VALUE, `An angle is needed here, and ${kindOf(value)} stands among the values.`);
}

