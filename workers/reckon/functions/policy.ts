/**
 * What becomes of a figure with a unit in every function that there is. A
 * function that is not named here takes none: whatever the engine's library
 * brings, no bare number of millimetres can come out of it.
 */
import { AVERAGE, MAX, MIN, SUM, subtotal } from './aggregate.ts';
import { SEQUENCE, SORT, UNIQUE } from './blocks.ts';
import { dated, TIMEVALUE } from './calendar.ts';
import { AVERAGEIF, COUNTIF, COUNTIFS, MAXIFS, MINIFS, SUMIF, SUMIFS } from './conditional.ts';
import { keeps } from './keeps.ts';
import { HLOOKUP, MATCH, VLOOKUP, XLOOKUP } from './lookup.ts';
import { POWER, PRODUCT, SQRT, SUMPRODUCT, SWITCH, trigonometry } from './numeric.ts';
import { COLUMNS, pointing, ROWS } from './pointing.ts';
import { CEILING, FLOOR, INT, MOD, MROUND, QUOTIENT, ROUND, ROUNDDOWN, ROUNDUP } from './rounding.ts';
import { shows, TEXT, VALUE } from './texts.ts';
import type { Own } from './tools.ts';

/** Values go through untouched, or only their kind is looked at. */
export interface Passes {
  readonly does: 'passes';
  /** The places between the brackets where only a plain value makes sense: `even` and `rest` (all but the first) as well. */
  readonly plain: readonly number[] | 'even' | 'rest';
}

export type Policy =
  | Passes
  /** Takes no figure with a unit, and says so. */
  | { readonly does: 'refuses' }
  /** Ours takes its place. */
  | { readonly does: 'own'; readonly own: Own }
  /** Is no function of this workbook. */
  | { readonly does: 'absent' };

const refuses: Policy = { does: 'refuses' };
const absent: Policy = { does: 'absent' };
const own = (fn: Own): Policy => ({ does: 'own', own: fn });
const passes = (plain: Passes['plain'] = []): Policy => ({ does: 'passes', plain });

const same = own(keeps({ of: 'all', gives: 'same' }));
const firstOnly = own(keeps({ of: [0], gives: 'same' }));
const square = own(keeps({ of: 'all', gives: 'square' }));
const number = own(keeps({ of: 'all', gives: 'number' }));
const text = own(shows);
const angle = own(trigonometry);

const named = (policy: Policy, names: string): [string, Policy][] => names.split(' ').map((name) => [name, policy]);

const POLICIES: ReadonlyMap<string, Policy> = new Map<string, Policy>([
  ...named(passes(), 'COUNT COUNTA COUNTBLANK IFERROR IFNA ISBLANK ISERR ISERROR ISLOGICAL ISNA ISNONTEXT ISNUMBER ISREF ISTEXT'),
  ...named(passes(), 'FALSE HSTACK NA NOW RAND T TODAY TRANSPOSE TRUE VSTACK'),
  ...named(passes([0]), 'CHOOSE IF'),
  ['IFS', passes('even')],
  ...named(passes('rest'), 'ARRAY_CONSTRAIN FILTER INDEX'),
  ...named(text, 'CLEAN CONCATENATE EXACT FIND LEFT LEN LOWER MID PROPER REPLACE REPT RIGHT SEARCH SPLIT SUBSTITUTE TEXTJOIN TRIM UPPER'),
  ...named(same, 'ABS AVEDEV GEOMEAN HARMEAN MEDIAN STDEV STDEV.P STDEV.S STDEVP STDEVS'),
  ...named(firstOnly, 'LARGE PERCENTILE PERCENTILE.EXC PERCENTILE.INC QUARTILE QUARTILE.EXC QUARTILE.INC SMALL'),
  ...named(square, 'DEVSQ SUMSQ VAR VAR.P VAR.S VARP VARS'),
  ...named(number, 'COUNTUNIQUE DELTA SIGN'),
  ...named(own(pointing), 'COLUMN ISFORMULA ROW'),
  ...named(angle, 'COS COT CSC SEC SIN TAN'),
  ...named(own(MROUND), 'MROUND'),
  ...named(own(CEILING), 'CEILING CEILING.MATH CEILING.PRECISE ISO.CEILING'),
  ...named(own(FLOOR), 'FLOOR FLOOR.MATH FLOOR.PRECISE'),
  ...named(own(ROUNDDOWN), 'ROUNDDOWN TRUNC'),
  ...Object.entries({
    AVERAGE, AVERAGEIF, COLUMNS, COUNTIF, COUNTIFS, HLOOKUP, INT, MATCH, MAX, MAXIFS, MIN, MINIFS, MOD, POWER, PRODUCT, QUOTIENT, ROUND, ROUNDUP, ROWS,
    SEQUENCE, SORT, SQRT, SUM, SUMIF, SUMIFS, SUMPRODUCT, SWITCH, TEXT, UNIQUE, VALUE, VLOOKUP, XLOOKUP,
  }).map(([name, fn]): [string, Policy] => [name, own(fn)]),
  ['TIMEVALUE', own(TIMEVALUE)],
  ...named(own(dated), 'WORKDAY WORKDAY.INTL'),
  // The library's has 15 digits, and a double can hold 16.
  ['PI', own((call) => (call.args.length === 0 ? Math.PI : call.library()))],
  // The library's takes the unit off a single figure.
  ['ARRAYFORMULA', own((call) => (call.given.length === 1 ? call.given[0]!.value : call.library()))],
  ['SUBTOTAL', own(subtotal((name) => ownOf(name)))],
  // They would tell of the engine's inside, not of this workbook.
  ...named(absent, 'FORMULATEXT SHEET SHEETS VERSION'),
]);

export function policyOf(name: string): Policy {
  return POLICIES.get(name) ?? (name.startsWith('HF.') ? absent : refuses);
}

/** The names that the table has a line for. */
export const POLICY_NAMES: readonly string[] = [...POLICIES.keys()];

function ownOf(name: string): Own {
  const policy = policyOf(name);
  return policy.does === 'own' ? policy.own : (call) => call.library();
}
