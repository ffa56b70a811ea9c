/**
 * Quantities: numbers that know their unit. Reading what people type, exact
 * arithmetic with units, rounding to a step, and showing.
 *
 * This folder imports nothing from the rest of the project and nothing in it
 * keeps state. Values are kept in base units (mm, mm², degrees, the bare
 * number) and are rounded only by `nearest`, `up` and `down`, which say so;
 * showing makes text and leaves the value as it was.
 */
export { UNIT_CODES, UNITS, unitNamed } from './units.ts';
export type { Dimension, Unit, UnitCode } from './units.ts';
export { amountIn, inBase, isFault, quantity } from './quantity.ts';
export type { Fault, Quantity, Span } from './quantity.ts';
export { readQuantity } from './read.ts';
export type { ReadAs, Reading } from './read.ts';
export { add, compare, divide, multiply, negate, power, subtract } from './arithmetic.ts';
export { down, nearest, up } from './rounding.ts';
export { show, showSpan, showText } from './show.ts';
export type { ShowAs, Shown } from './show.ts';
export { exactAmount, exactText } from './exact.ts';
