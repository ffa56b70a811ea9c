/**
 * Functions that the engine's library (HyperFormula 3.5.0) works out by counting
 * one by one up to a figure: one far out would keep the page waiting for ever.
 */
import { SimpleRangeValue } from '../internals.ts';
import { isNumeric, refuse } from '../values.ts';
import type { Refusal } from '../values.ts';
import type { Call } from './tools.ts';

/** Steps that one call may take: less than a second on a slow machine. */
export const MOST_STEPS = 1_000_000;

/** The places between the brackets whose figures are counted up to. */
const COUNTED: ReadonlyMap<string, readonly number[] | 'all'> = new Map([
  ...named('MULTINOMIAL', 'all'),
  ...named('POISSON POISSON.DIST POISSONDIST CRITBINOM BINOM.INV', [0]),
  ...named('BESSELI BESSELJ BESSELK BESSELY', [1]),
  ...named('CHISQ.DIST CHISQ.DIST.RT CHISQ.INV CHISQ.INV.RT CHIDIST CHIDISTRT CHIINV CHIINVRT CHISQDIST CHISQINV GAMMA.DIST GAMMADIST GAMMA.INV GAMMAINV', [1]),
  ...named('BINOM.DIST BINOMDIST NEGBINOM.DIST NEGBINOMDIST', [0, 1]),
  ...named('HYPGEOM.DIST HYPGEOMDIST', [0, 1, 2, 3]),
  ...named('CUMIPMT CUMPRINC', [3, 4]),
  ...named('DB', [3]),
]);

function named(names: string, places: readonly number[] | 'all'): [string, readonly number[] | 'all'][] {
  return names.split(' ').map((name) => [name, places]);
}

/** A refusal where a figure is too far to count up to; a block is counted up to cell by cell. */
export function tooFar(call: Call): Refusal | undefined {
  const places = COUNTED.get(call.name);
  if (places === undefined) return undefined;
  const cells = Math.max(...call.given.map(({ value }) => (value instanceof SimpleRangeValue ? value.width() * value.height() : 1)));
  const most = Math.floor(MOST_STEPS / Math.max(1, cells));
  for (const [place, { value }] of call.given.entries()) {
    if (places !== 'all' && !places.includes(place)) continue;
    const far = (value instanceof SimpleRangeValue ? value.data.flat() : [value]).find((each) => Math.abs(figureOf(call, each)) > most);
    if (far === undefined) continue;
    return refuse(`${call.name} counts one by one up to this figure, and ${call.tools.arithmetic.text(far)} is too far: ${most.toLocaleString('en')} is the most${cells > 1 ? ' for so many cells' : ''}.`);
  }
  return undefined;
}

/** What the library will take a value for; 0 for what it takes for no figure. */
function figureOf(call: Call, value: unknown): number {
  const number = call.tools.helper.coerceScalarToNumberOrError(value);
  if (!isNumeric(number)) return 0;
  return typeof number === 'number' ? number : number.val;
}
