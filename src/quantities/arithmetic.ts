/**
 * Arithmetic with units. Every sum is either right in its dimension or a
 * `Fault` whose sentence says what does not fit and what to write instead.
 *
 * The left operand's unit is the one the result shows in. Nothing is rounded.
 */
import { inBase } from './quantity.ts';
import type { Fault, Quantity } from './quantity.ts';
import { say } from './say.ts';
import { UNITS, withSign } from './units.ts';
import type { Dimension, UnitCode } from './units.ts';

/** `a + b`, of one dimension; a number and a percent are both numbers. */
export function add(a: Quantity, b: Quantity): Quantity | Fault {
  if (a.dimension !== b.dimension) return unlike(a, b, 'added');
  return made(a.value + b.value, a.unit);
}

/** `a − b`, of one dimension. */
export function subtract(a: Quantity, b: Quantity): Quantity | Fault {
  if (a.dimension !== b.dimension) return unlike(a, b, 'subtracted');
  return made(a.value - b.value, a.unit);
}

/** `a × b`: a number or percent keeps the other's kind, and length × length is an area. */
export function multiply(a: Quantity, b: Quantity): Quantity | Fault {
  const product = a.value * b.value;
  // A share of a plain number is a plain number: 10 % × 200 is 20, not 2000 %.
  if (b.dimension === 'number') return made(product, a.dimension === 'number' && b.unit !== '%' ? '' : a.unit);
  if (a.dimension === 'number') return made(product, b.unit);
  if (a.dimension === 'length' && b.dimension === 'length') return made(product, areaUnit(a.unit));
  return { sentence: `${kind(a)} (${say(a)}) times ${kind(b, 'a')} (${say(b)}) is nothing that a cell can hold: only a length times a length makes an area.` };
}

/** `a ÷ b`: like ÷ like is a number, area ÷ length a length, and anything ÷ a number or percent stays what it is. */
export function divide(a: Quantity, b: Quantity): Quantity | Fault {
  if (b.value === 0) return { sentence: `${say(a)} cannot be divided by ${say(b)}: nothing can be shared into 0 parts.` };
  const quotient = a.value / b.value;
  if (b.dimension === 'number') return made(quotient, a.unit === '%' && b.unit === '%' ? '' : a.unit);
  if (a.dimension === b.dimension) return made(quotient, '');
  if (a.dimension === 'area' && b.dimension === 'length') return made(quotient, sideUnit(a.unit));
  if (a.dimension === 'number') {
    return { sentence: `${say(a)} is a number without a unit and cannot be divided by ${kind(b, 'a')} (${say(b)}): write it the other way round, or give ${say(a)} a unit.` };
  }
  return { sentence: `${kind(a)} (${say(a)}) cannot be divided by ${kind(b, 'a')} (${say(b)}).` };
}

/** `a ^ b` for a number `b`: any power of a number, the square of a length, and the square root (0.5) of an area. */
export function power(a: Quantity, b: Quantity): Quantity | Fault {
  if (b.dimension !== 'number') return { sentence: `A power must be a number without a unit: ${say(b)} is ${kind(b, 'a')}.` };
  if (a.dimension === 'number') {
    const value = a.value ** b.value;
    if (Number.isNaN(value) || (a.value === 0 && b.value < 0)) {
      return { sentence: `${say(a)} to the power ${say(b)} has no value.` };
    }
    return made(value, a.unit);
  }
  if (b.value === 1) return a;
  if (b.value === 0) return made(1, '');
  if (a.dimension === 'length' && b.value === 2) return made(a.value * a.value, areaUnit(a.unit));
  if (a.dimension === 'area' && b.value === 0.5) {
    return a.value < 0 ? { sentence: `${say(a)} is below 0 and has no square root.` } : made(Math.sqrt(a.value), sideUnit(a.unit));
  }
  return { sentence: `${kind(a)} (${say(a)}) to the power ${say(b)} is nothing that a cell can hold: a length can be squared, and an area has a square root (power 0.5).` };
}

/** `−a`. Zero stays zero. */
export function negate(a: Quantity): Quantity {
  return inBase(-a.value, a.unit);
}

/** Below what two values of a dimension are the same, in base units: far below a hair, far above the noise of doubles. */
const SAME: Readonly<Record<Dimension, number>> = { number: 0, length: 1e-9, area: 1e-9, angle: 1e-9 };

/**
 * −1, 0 or 1 as `a` is below, equal to or above `b`. Values that differ only
 * by the noise of doubles are equal (1e-12 of the greater, or a millionth of a
 * millionth of a metre), so that eight times 1/8 in is 1 in.
 */
export function compare(a: Quantity, b: Quantity): -1 | 0 | 1 | Fault {
  if (a.dimension !== b.dimension) return unlike(a, b, 'compared');
  if (a.value === b.value) return 0;
  const noise = Math.max(SAME[a.dimension], 1e-12 * Math.max(Math.abs(a.value), Math.abs(b.value)));
  if (Math.abs(a.value - b.value) <= noise) return 0;
  return a.value < b.value ? -1 : 1;
}

function made(value: number, unit: UnitCode): Quantity | Fault {
  if (!Number.isFinite(value)) return { sentence: 'The result is larger than a cell can hold.' };
  return inBase(value, unit);
}

/** `cm` and `cm2` go together, and so on. */
const areaUnit = (length: UnitCode): UnitCode => `${length}2` as UnitCode;
const sideUnit = (area: UnitCode): UnitCode => area.slice(0, -1) as UnitCode;

const KINDS: Readonly<Record<Dimension, string>> = { number: 'a number', length: 'a length', area: 'an area', angle: 'an angle' };

function kind(q: Quantity, article?: 'a'): string {
  const words = KINDS[q.dimension];
  return article ? words : words[0]!.toUpperCase() + words.slice(1);
}

const NOT_DONE = {
  added: 'cannot be added together',
  subtracted: 'cannot be taken from each other',
  compared: 'cannot be compared',
} as const;

/** Why two quantities of different dimensions do not go together, with the mend where one of them only lacks its unit. */
function unlike(a: Quantity, b: Quantity, done: keyof typeof NOT_DONE): Fault {
  const bare = a.dimension === 'number' ? a : b.dimension === 'number' ? b : null;
  if (bare === null) return { sentence: `${kind(a)} (${say(a)}) and ${kind(b, 'a')} (${say(b)}) ${NOT_DONE[done]}.` };
  const other = bare === a ? b : a;
  if (bare.unit === '%') {
    return { sentence: `${say(bare)} is a share and ${say(other)} is ${kind(other, 'a')}: for ${say(bare)} of it, multiply.` };
  }
  const figure = say(bare);
  const mends = MENDS[other.dimension](other.unit).map((unit) => withSign(figure, UNITS[unit].sign));
  return { sentence: `${figure} has no unit: write ${mends.join(' or ')}.` };
}

/** The units to offer for a number that lacks one: the other operand's first, then the other system's. */
const MENDS: Readonly<Record<Dimension, (unit: UnitCode) => readonly UnitCode[]>> = {
  number: () => [],
  length: (unit) => (UNITS[unit].system === 'inch' ? [unit, 'cm'] : [unit, 'in']),
  area: (unit) => (UNITS[unit].system === 'inch' ? [unit, 'cm2'] : [unit, 'in2']),
  angle: () => ['deg'],
};
