/**
 * Rounding. ROUND and its kin count decimals of the figure in its own unit;
 * CEILING, FLOOR and MROUND go by a step that has a unit, as a tape does, and
 * by OpenFormula (6.17) with plain numbers too, where the engine departs from it.
 */
import { amountIn, down, isFault, nearest, negate, quantity, up } from '../../../src/quantities/index.ts';
import type { Fault, Quantity } from '../../../src/quantities/index.ts';
import { spanSentence, textSentence } from '../arithmetic.ts';
import { CellError, EmptyValue, ErrorType } from '../internals.ts';
import { Bracket, Dimensioned, isNumeric, Measure, quantityOf, Refusal, refuse, valueOf } from '../values.ts';
import type { Call, Own } from './tools.ts';

/** A tie or a whole that is missed by this part of a step is one all the same: 0.3 cm is 3 mm, whatever its last bit. */
const NOISE = 1e-9;

const away = (x: number): number => Math.sign(x) * Math.floor(Math.abs(x) + 0.5 + NOISE);
const outward = (x: number): number => Math.sign(x) * Math.ceil(Math.abs(x) - NOISE);
const inward = (x: number): number => Math.sign(x) * Math.floor(Math.abs(x) + NOISE);
const downward = (x: number): number => Math.floor(x + NOISE);

/** One function of two values, cell by cell where blocks are given and blocks are wanted. */
function eachPair(call: Call, first: unknown, second: unknown, round: (value: unknown, by: unknown) => unknown): unknown {
  return call.tools.interpreter.binaryRangeWrapper(round, first, second, call.state);
}

function toDecimals(whole: (x: number) => number): Own {
  return (call) => {
    const [value, places] = call.given;
    if (call.given.length < 1 || call.given.length > 2) return tooMany(call, '1 or 2 values');
    const fault = places && call.unitFault(places, `${call.name} counts decimals, so it does not take`);
    if (fault) return fault;
    if (!call.tools.hasUnit(call.given)) return call.library();
    return eachPair(call, value!.value, places?.value ?? 0, (one, by) => {
      if (!(one instanceof Dimensioned)) return one instanceof CellError ? one : refuse('Figures with and without a unit stand among these.');
      if (one instanceof Bracket) return refuse(spanSentence(one));
      const number = by === EmptyValue ? 0 : call.tools.helper.coerceScalarToNumberOrError(by);
      if (typeof number !== 'number') return number;
      return rounded(one as Measure, Math.trunc(number), whole);
    });
  };
}

function rounded(value: Measure, places: number, whole: (x: number) => number): unknown {
  const scale = 10 ** places;
  const amount = whole(amountIn(value, value.unit) * scale) / scale;
  return Number.isFinite(amount) ? valueOf(quantity(amount, value.unit)) : value;
}

export const ROUND = toDecimals(away);
export const ROUNDUP = toDecimals(outward);
export const ROUNDDOWN = toDecimals(inward);

/** The whole number below, for plain numbers too: INT(−2.5) is −3 (OpenFormula 6.17.2). */
export const INT: Own = (call) => {
  const [value] = call.given;
  if (call.given.length !== 1) return tooMany(call, 'one value');
  return call.tools.interpreter.unaryRangeWrapper((one) => {
    if (one instanceof CellError) return one;
    if (one instanceof Bracket) return refuse(spanSentence(one));
    if (one instanceof Measure) return rounded(one, 0, downward);
    const number = call.tools.helper.coerceScalarToNumberOrError(one);
    if (number instanceof CellError) return number;
    return Math.floor(typeof number === 'number' ? number : (number as { val: number }).val);
  }, value!.value, call.state);
};

type Steps = (q: Quantity, step: Quantity) => Quantity | Fault;

/** Plain numbers go the engine's way. */
function toSteps(round: Steps): Own {
  return (call) => {
    if (!call.tools.hasUnit(call.given)) return call.library();
    const [value, step] = call.given;
    if (step === undefined) return refuse(needsStep(call));
    if (call.given.length > 2) return tooMany(call, 'a figure and a step');
    return eachPair(call, value!.value, step.value, (one, by) => stepped(call, one, by, round));
  };
}

const needsStep = (call: Call): string => `${call.name} needs a step with a unit, such as 5 mm or 1/8 in.`;

function stepped(call: Call, one: unknown, by: unknown, round: Steps): unknown {
  const figure = figureOf(call, one, by);
  if (figure instanceof CellError) return figure;
  const step = figureOf(call, by, one);
  return step instanceof CellError ? step : valueOf(round(figure, step));
}

/** A figure of a pair; beside one with a unit nothing may pass for a number. */
function figureOf(call: Call, value: unknown, beside: unknown): Quantity | CellError {
  if (value instanceof CellError) return value;
  if (value instanceof Bracket) return refuse(spanSentence(value));
  const figure = quantityOf(value);
  if (figure) return figure;
  if (beside instanceof Dimensioned) return refuse(`${call.name} needs a figure and a step, such as 28.4 cm and 5 mm.`);
  const number = call.tools.helper.coerceScalarToNumberOrError(value);
  if (!isNumeric(number)) return refuse(textSentence(String(value)));
  return { value: typeof number === 'number' ? number : number.val, dimension: 'number', unit: '' };
}

const size = (q: Quantity): Quantity => (q.value < 0 ? negate(q) : q);

/** CEILING and FLOOR as OpenFormula has them: `mode` other than 0 rounds what is below zero as its opposite. */
function ceilingOrFloor(round: Steps): Own {
  return (call) => {
    const [value, step, mode] = call.given;
    if (value === undefined || call.given.length > 3) return tooMany(call, 'a figure, a step and a mode');
    const fault = mode && call.unitFault(mode, `${call.name} goes by its third value only for figures below zero, and it does not take`);
    if (fault) return fault;
    const way = mode === undefined ? 0 : call.tools.helper.coerceScalarToNumberOrError(mode.value);
    if (way instanceof CellError) return way;
    const left = step === undefined || step.ast.type === 'EMPTY';
    if (left && call.tools.hasUnit([value])) return refuse(needsStep(call));
    return eachPair(call, value.value, left ? 1 : step.value, (one, by) => stepped(call, one, by, (q, due) => {
      if (q.dimension === 'number' && due.dimension === 'number') {
        if (q.value === 0 || due.value === 0) return { ...q, value: 0 };
        if (q.value > 0 && due.value < 0) return { sentence: `${call.name} got a step below zero for a figure above it: take the minus off the step.` };
      }
      if (q.value >= 0 || way === 0) return round(q, size(due));
      const opposite = round(negate(q), size(due));
      return isFault(opposite) ? opposite : negate(opposite);
    }));
  };
}

/** Works with steps of either sign, and of 0 for plain numbers. */
export const MROUND: Own = (call) => {
  const [value, step] = call.given;
  if (call.given.length !== 2) return tooMany(call, 'a figure and a step');
  return eachPair(call, value!.value, step!.value, (one, by) => stepped(call, one, by, (q, due) => (
    due.value === 0 && due.dimension === 'number' && q.dimension === 'number' ? { ...q, value: 0 } : nearest(q, size(due))
  )));
};

export const CEILING = ceilingOrFloor(up);
export const FLOOR = ceilingOrFloor(down);
export const CEILING_KIN = toSteps(up);
export const FLOOR_KIN = toSteps(down);

/** What is left of a figure after as many whole times another as go into it. */
export const MOD: Own = (call) => parts(call, (value, by, times) => {
  const rest = value.value - times * by.value;
  return valueOf({ ...value, value: Math.abs(rest) < NOISE * Math.abs(by.value) ? 0 : rest });
});

/** How many whole times one figure goes into another. */
export const QUOTIENT: Own = (call) => parts(call, (value, by) => inward(value.value / by.value));

function parts(call: Call, give: (value: Quantity, by: Quantity, times: number) => unknown): unknown {
  if (!call.tools.hasUnit(call.given)) return call.library();
  const [value, by] = call.given;
  if (call.given.length !== 2) return tooMany(call, 'two values');
  return eachPair(call, value!.value, by!.value, (one, two) => {
    const ratio = call.tools.arithmetic.over(one, two);
    if (ratio instanceof CellError) return ratio;
    const [first, second] = [quantityOf(one), quantityOf(two)];
    if (!first || !second) return refuse(`${call.name} needs two figures of one kind.`);
    if (first.dimension !== second.dimension) {
      return new Refusal(ErrorType.VALUE, `${call.name} needs two figures of one kind, and got ${call.tools.arithmetic.text(one)} and ${call.tools.arithmetic.text(two)}.`);
    }
    return give(first, second, downward(first.value / second.value));
  });
}

export function tooMany(call: Call, due: string, got = call.given.length): Refusal {
  return new Refusal(ErrorType.NA, `${call.name} takes ${due} in its brackets; it got ${got}.`);
}
