/**
 * Rounding to a step: the only functions that change a value by rounding it.
 * Ties and marks are what `steps.ts` says they are.
 */
import { doubleOf, ratioOf, toBase } from './decimal.ts';
import { amountIn, inBase } from './quantity.ts';
import type { Fault, Quantity } from './quantity.ts';
import { say } from './say.ts';
import { noiseAt, tieToGreater } from './steps.ts';
import { UNITS } from './units.ts';

/**
 * The multiple of `step` nearest to `q`; a tie goes to the greater one, as
 * OpenFormula's MROUND has it: 39 9/16 in to eighths is 39 5/8 in, and
 * −2 1/16 in is −2 in. (Showing a length sends ties away from zero instead.)
 * Shows in the unit of `q`, unless the step is of the other system: 25 cm to
 * 1/16 in is 9 13/16 in.
 */
export function nearest(q: Quantity, step: Quantity): Quantity | Fault {
  return round(q, step, tieToGreater);
}

/** The least multiple of `step` that is not below `q`. Units as in `nearest`. */
export function up(q: Quantity, step: Quantity): Quantity | Fault {
  return round(q, step, (steps) => Math.ceil(steps - noiseAt(steps)));
}

/** The greatest multiple of `step` that is not above `q`. Units as in `nearest`. */
export function down(q: Quantity, step: Quantity): Quantity | Fault {
  return round(q, step, (steps) => Math.floor(steps + noiseAt(steps)));
}

function round(q: Quantity, step: Quantity, toWhole: (steps: number) => number): Quantity | Fault {
  if (q.dimension !== step.dimension) {
    return { sentence: `${say(q)} cannot be rounded to steps of ${say(step)}: the step must be ${DUE[q.dimension]}.` };
  }
  if (!(step.value > 0)) return { sentence: `A step of ${say(step)} cannot be rounded to: write a step above 0.` };
  const steps = q.value / step.value;
  if (!Number.isFinite(steps)) return { sentence: `${say(q)} is too many steps of ${say(step)} to count: write a larger step.` };
  const here = UNITS[q.unit].system;
  const there = UNITS[step.unit].system;
  const unit = here === there ? q.unit : step.unit;
  // Beyond this every double is a whole number of steps already.
  if (Math.abs(steps) >= Number.MAX_SAFE_INTEGER) return inBase(q.value, unit);
  // So many times the step as it was typed, so that three steps of 0.1 cm are 0.3 cm to the last bit.
  const one = toBase(ratioOf(amountIn(step, step.unit)), step.unit);
  return inBase(doubleOf({ ...one, mantissa: one.mantissa * BigInt(toWhole(steps)) }), unit);
}

const DUE = {
  number: 'a number without a unit',
  length: 'a length, such as 1/8 in or 5 mm',
  area: 'an area, such as 1 cm²',
  angle: 'an angle, such as 1°',
} as const;
