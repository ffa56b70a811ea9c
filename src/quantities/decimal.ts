/**
 * Exact decimals and fractions. What people type is a decimal or a fraction of
 * a tape, and every unit is a finite decimal of its base unit, so a typed
 * quantity is worked out in whole numbers and becomes a double once, at the
 * end: `1.005 m` and `1005 mm` are the same value to the last bit.
 */
import { UNITS } from './units.ts';
import type { UnitCode } from './units.ts';

/** `mantissa × 10^exponent ÷ divisor`; the divisor is above 0. */
export interface Ratio {
  readonly mantissa: bigint;
  readonly exponent: number;
  readonly divisor: bigint;
}

export const ZERO: Ratio = { mantissa: 0n, exponent: 0, divisor: 1n };

/** The decimal that a finite number prints as: its shortest text that reads back to it. */
export function ratioOf(x: number): Ratio {
  const text = String(x);
  const e = text.indexOf('e');
  const { mantissa, exponent } = decimal(e < 0 ? text : text.slice(0, e));
  return { mantissa, exponent: exponent + (e < 0 ? 0 : Number(text.slice(e + 1))), divisor: 1n };
}

/** A decimal from its digits, with at most one point and a minus before. */
export function decimal(digits: string): Ratio {
  const point = digits.indexOf('.');
  if (point < 0) return { mantissa: BigInt(digits), exponent: 0, divisor: 1n };
  const after = digits.slice(point + 1);
  return { mantissa: BigInt(digits.slice(0, point) + after), exponent: -after.length, divisor: 1n };
}

const SIZES = new Map<UnitCode, Ratio>(Object.values(UNITS).map((u) => [u.code, ratioOf(u.size)]));

const sizeOf = (unit: UnitCode): Ratio => SIZES.get(unit) ?? { mantissa: 1n, exponent: 0, divisor: 1n };

/** So many of a unit, as so many base units. */
export function toBase(r: Ratio, unit: UnitCode): Ratio {
  const size = sizeOf(unit);
  return { mantissa: r.mantissa * size.mantissa, exponent: r.exponent + size.exponent, divisor: r.divisor };
}

export function plus(a: Ratio, b: Ratio): Ratio {
  const exponent = Math.min(a.exponent, b.exponent);
  const left = a.mantissa * 10n ** BigInt(a.exponent - exponent) * b.divisor;
  const right = b.mantissa * 10n ** BigInt(b.exponent - exponent) * a.divisor;
  return { mantissa: left + right, exponent, divisor: a.divisor * b.divisor };
}

/** The double nearest to a ratio: the only place where one is rounded. */
export function doubleOf({ mantissa, exponent, divisor }: Ratio): number {
  if (divisor === 1n) return Number(`${mantissa}e${exponent}`);
  // Far more digits than a double can tell apart; the sticky 1 keeps a cut-off remainder from looking like a tie.
  const scaled = mantissa * 10n ** 40n;
  return Number(`${scaled / divisor}${scaled % divisor === 0n ? '0' : '1'}e${exponent - 41}`);
}

/**
 * The nearest decimal of 17 digits to a finite base value, counted in a unit.
 * Seventeen digits always tell two neighbouring doubles apart, so this reads
 * back to the same value.
 */
export function seventeenDigits(value: number, unit: UnitCode): Ratio {
  if (value === 0) return ZERO;
  const size = sizeOf(unit);
  // A double is a finite binary fraction; 60 digits are within 1e-60 of it.
  const [digits = '0', power = '0'] = value.toExponential(60).split('e');
  const { mantissa, exponent } = decimal(digits);
  const quotient = (mantissa * 10n ** 20n) / size.mantissa;
  const surplus = String(quotient).replace('-', '').length - 17;
  const unitOfLast = 10n ** BigInt(surplus);
  const half = quotient < 0n ? -unitOfLast / 2n : unitOfLast / 2n;
  return {
    mantissa: (quotient + half) / unitOfLast,
    exponent: exponent + Number(power) - 20 - size.exponent + surplus,
    divisor: 1n,
  };
}

/** A whole or decimal ratio (divisor 1) in figures, without an exponent or needless zeros. */
export function inFigures({ mantissa, exponent }: Ratio): string {
  const minus = mantissa < 0n ? '-' : '';
  const digits = String(mantissa < 0n ? -mantissa : mantissa);
  if (exponent >= 0) return mantissa === 0n ? '0' : minus + digits + '0'.repeat(exponent);
  const padded = digits.padStart(1 - exponent, '0');
  const whole = padded.slice(0, exponent);
  let end = padded.length;
  while (padded[end - 1] === '0' && end > whole.length) end -= 1;
  const after = padded.slice(whole.length, end);
  return minus + (after === '' ? whole : `${whole}.${after}`);
}
