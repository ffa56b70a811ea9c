/** Runs a function of the trade on what cells hold. */
import { inBase } from '../quantities/index.ts';
import type { Quantity, Span, UnitCode } from '../quantities/index.ts';
import { takeArguments } from './arguments.ts';
import type { Figure, FigureSpan, Gives, Outcome, SewingFunction, Value } from './define.ts';
import { Notes, Refusal } from './pad.ts';

/**
 * The result of a function, its cautions and, when `show` is given, the steps
 * of its working; or a `Fault` whose sentence says what is missing or cannot be
 * and what to write instead. Never throws.
 */
export function work(fn: SewingFunction, values: readonly Value[], show?: true): Outcome {
  try {
    const { given, lengthUnit } = takeArguments(fn, values);
    const notes = new Notes(show === true, lengthUnit, values);
    const value = fn.work(given, notes);
    if (value !== notes.last) throw new Error(`${fn.name} does not end with its last step`);
    return { value: asValue(fn.gives, value, notes), cautions: notes.cautions, steps: notes.steps, lengthUnit: notes.lengthUnit };
  } catch (error) {
    if (error instanceof Refusal) return { sentence: error.message };
    // A mistake in a function's own definition: the cell says so, and everything else goes on.
    return { sentence: `${fn.name} could not be worked out with these values, through a fault in this program.` };
  }
}

function asValue(gives: Gives, value: number | string | FigureSpan, { lengthUnit, lastFigure }: Notes): Quantity | Span | string {
  if (typeof value === 'string') return value;
  if (typeof value === 'object') {
    const [low, high] = [figureIn(value.low, lengthUnit), figureIn(value.high, lengthUnit)];
    return low.value === high.value ? low : { low, high };
  }
  switch (gives) {
    case 'length':
    case 'area':
    case 'angle':
      return figureIn({ value, dimension: gives }, lengthUnit);
    case 'percent':
      return inBase(value, '%');
    case 'figure':
      return figureIn(lastFigure ?? { value, dimension: 'number' }, lengthUnit);
    default:
      return inBase(value, '');
  }
}

/** A figure of a working as a quantity; lengths, and with them areas, in the working's unit. */
export function figureIn({ value, dimension, percent }: Figure, lengthUnit: UnitCode): Quantity {
  switch (dimension) {
    case 'length':
      return inBase(value, lengthUnit);
    case 'area':
      return inBase(value, `${lengthUnit}2` as UnitCode);
    case 'angle':
      return inBase(value, 'deg');
    default:
      return inBase(value, percent ? '%' : '');
  }
}
