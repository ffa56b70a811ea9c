/** Functions of text. They see a figure with a unit as the text that it shows as. */
import { amountIn, readQuantity, showText, unitNamed, UNITS } from '../../../src/quantities/index.ts';
import { CellError, PercentNumber, SimpleRangeValue } from '../internals.ts';
import { Bracket, Dimensioned, isDate, Measure, refuse, valueOf } from '../values.ts';
import { spanSentence, textSentence } from '../arithmetic.ts';
import { tooMany } from './rounding.ts';
import type { Call, Own } from './tools.ts';

export const shows: Own = (call) => call.library(call.given.map(({ value }) => shown(call, value)));

function shown(call: Call, value: unknown): unknown {
  if (value instanceof SimpleRangeValue) {
    if (!value.data.some((cells) => cells.some(needsShowing))) return value;
    return SimpleRangeValue.onlyValues(value.data.map((cells) => cells.map((cell) => shown(call, cell))));
  }
  return needsShowing(value) ? call.tools.arithmetic.text(value) : value;
}

const needsShowing = (value: unknown): boolean => value instanceof Dimensioned || value instanceof PercentNumber || isDate(value);

/** TEXT of a figure with a unit: its amount in the way asked, with the unit after it; or in a unit that is named instead of a way. */
export const TEXT: Own = (call) => {
  if (!call.tools.hasUnit(call.given)) return call.library();
  if (call.given.length !== 2) return tooMany(call, 'a figure and a way to write it');
  const [figure, way] = call.given;
  const fault = call.unitFault(way!);
  if (fault) return fault;
  return call.tools.interpreter.binaryRangeWrapper((value, format) => {
    if (value instanceof CellError) return value;
    if (value instanceof Bracket) return refuse(spanSentence(value));
    if (!(value instanceof Measure)) return refuse('TEXT got figures with and without a unit.');
    const asked = typeof format === 'string' ? unitNamed(format) : undefined;
    if (asked !== undefined && UNITS[asked].dimension === value.dimension) return showText(value, { system: 'own', inchStep: 32, unit: asked });
    const amount = call.library([amountIn(value, value.unit), format]);
    return typeof amount === 'string' ? `${amount} ${UNITS[value.unit].sign}` : amount;
  }, figure!.value, way!.value, call.state);
};

/** The figure that a text reads as, with its unit. */
export const VALUE: Own = (call) => {
  if (call.given.length !== 1) return tooMany(call, 'one value');
  return call.tools.interpreter.unaryRangeWrapper((value) => {
    if (value instanceof Dimensioned) return value;
    const reading = typeof value === 'string' ? readQuantity(value) : undefined;
    if (reading?.kind === 'quantity' && reading.quantity.unit !== '') return valueOf(reading.quantity);
    if (reading?.kind === 'span') return new Bracket(reading.span);
    if (reading?.kind === 'refused') return refuse(reading.sentence);
    const number = call.library([value]);
    return number instanceof CellError && typeof value === 'string' ? refuse(textSentence(value)) : number;
  }, call.given[0]!.value, call.state);
};
