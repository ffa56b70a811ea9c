/** Text that gives a value back to the last bit. */
import { decimal, doubleOf, inFigures, plus, ratioOf, seventeenDigits, toBase } from './decimal.ts';
import { amountIn } from './quantity.ts';
import type { Quantity } from './quantity.ts';
import { UNITS, withSign } from './units.ts';
import type { UnitCode } from './units.ts';

/**
 * A decimal without an exponent that reads back to exactly this quantity,
 * counted in `unit` (its own unless another is given): the shortest there is
 * where 15 figures will do, and at most 17 otherwise.
 * @throws RangeError when the unit is of another dimension.
 */
export function exactAmount(q: Quantity, unit: UnitCode = q.unit): string {
  const ratio = ratioOf(amountIn(q, unit));
  const same = doubleOf(toBase(ratio, unit)) === q.value;
  return inFigures(same ? ratio : seventeenDigits(q.value, unit));
}

/**
 * A short text in the quantity's own unit that reads back to the same value,
 * to the last bit: `exactAmount` with its unit (`2.25 in`, `5.5 cm`, `3 %`), or
 * `1 yd 4 in` where yards alone would not end. (Amounts of 10^15 and more are
 * written in full, but are more than a cell will read.)
 */
export function exactText(q: Quantity): string {
  const text = withSign(exactAmount(q), UNITS[q.unit].sign);
  const inParts = q.unit === 'yd' || q.unit === 'ft' ? withInches(q.value, q.unit) : null;
  return inParts !== null && inParts.length < text.length ? inParts : text;
}

/** A length as whole yards or feet and inches, if that is exactly it in at most 12 figures. */
function withInches(value: number, unit: 'yd' | 'ft'): string | null {
  const { size } = UNITS[unit];
  const length = Math.abs(value);
  const units = Math.floor(length / size);
  if (!Number.isSafeInteger(units)) return null;
  const inches = inFigures(ratioOf(Number(((length - units * size) / UNITS.in.size).toPrecision(12))));
  const read = doubleOf(plus(toBase(ratioOf(units), unit), toBase(decimal(inches), 'in')));
  return read === length ? `${value < 0 ? '-' : ''}${units} ${unit} ${inches} in` : null;
}
