/**
 * Dates and times where the library's own functions fall short: its TIMEVALUE
 * reads only the ways of writing a time that every text would then be taken for,
 * and its WORKDAY gives a bare number of days.
 */
import { CellError, DateNumber, SimpleRangeValue, TimeNumber } from '../internals.ts';
import { isNumeric, refuse } from '../values.ts';
import type { Call, Own } from './tools.ts';

const CLOCK = /^\s*(\d{1,2}):([0-5]\d)(?::([0-5]\d(?:\.\d+)?))?\s*$/;
const DAY = 86_400;

/** The time of day that a text such as 14:30 or 14:30:15 stands for (OpenFormula 6.10.18). */
export const TIMEVALUE: Own = (call) => {
  if (call.given.length !== 1) return call.library();
  const fault = call.unitFault(call.given[0]!);
  if (fault) return fault;
  return call.tools.interpreter.unaryRangeWrapper((value) => {
    if (value instanceof CellError) return value;
    const text = call.tools.arithmetic.text(value);
    return timeIn(text) ?? refuse(`“${text}” is not a time: write it as 14:30.`);
  }, call.given[0]!.value, call.state);
};

/** A time of day as a part of the day; `undefined` for a text that is none. */
export function timeIn(text: string): TimeNumber | undefined {
  const [, hours, minutes, seconds = '0'] = CLOCK.exec(text) ?? [];
  return hours === undefined || Number(hours) > 23 ? undefined : new TimeNumber((Number(hours) * 3600 + Number(minutes) * 60 + Number(seconds)) / DAY);
}

/** 31 December 9999 as a number of days. The library looks for a day further out for ever. */
const LAST_DAY = 2_958_465;

/** The library's result as a date. */
export const dated: Own = (call) => {
  for (const given of call.given) {
    const fault = call.unitFault(given);
    if (fault) return fault;
  }
  for (const { value } of call.given.slice(0, 2)) {
    const values: readonly unknown[] = value instanceof SimpleRangeValue ? value.data.flat() : [value];
    if (values.some((each) => Math.abs(daysIn(call, each)) > LAST_DAY)) return refuse(`${call.name} goes no further than the year 9999: give it an earlier date, or fewer days.`);
  }
  const result = call.library();
  return typeof result === 'number' ? new DateNumber(result) : result;
};

/** What the library will take a value for; 0 for what it takes for no figure. */
function daysIn(call: Call, value: unknown): number {
  const number = call.tools.helper.coerceScalarToNumberOrError(value);
  if (!isNumeric(number)) return 0;
  return typeof number === 'number' ? number : number.val;
}
