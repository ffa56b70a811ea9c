/**
 * What becomes of a figure with a unit in every function that there is. A
 * function that is not named here takes none: whatever the engine's library
 * brings, no bare number of millimetres can come out of it.
 */
import { ERROR_TYPE, ISREF, TYPE } from './about.ts';
import { AVERAGE, MAX, MIN, SUM } from './aggregate.ts';
import { SEQUENCE, SORT, UNIQUE } from './blocks.ts';
import { dated, TIMEVALUE } from './calendar.ts';
import { AVERAGEIF, AVERAGEIFS, COUNTIF, COUNTIFS, MAXIFS, MINIFS, SUMIF, SUMIFS } from './conditional.ts';
import { keeps } from './keeps.ts';
import { LET } from './let.ts';
import { HLOOKUP, LOOKUP, MATCH, VLOOKUP, XLOOKUP, XMATCH } from './lookup.ts';
import { POWER, PRODUCT, SQRT, SUMPRODUCT, SWITCH, trigonometry } from './numeric.ts';
import { INDEX, SORTBY } from './picking.ts';
import { COLUMNS, pointing, ROWS } from './pointing.ts';
import { CEILING, CEILING_KIN, FLOOR, FLOOR_KIN, INT, MOD, MROUND, QUOTIENT, ROUND, ROUNDDOWN, ROUNDUP } from './rounding.ts';
import { CORREL, COVARIANCE, FORECAST, INTERCEPT, MODE, PERCENTRANK, RANK, RSQ, SAMPLE_COVARIANCE, SLOPE, STEYX, TREND } from './statistics.ts';
import { NUMBERVALUE, shows, SUBSTITUTE, TEXT, VALUE } from './texts.ts';
import type { Own } from './tools.ts';
import { aggregate, subtotal } from './totals.ts';

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
  ...named(passes(), 'COUNT COUNTA COUNTBLANK IFERROR IFNA ISBLANK ISERR ISERROR ISLOGICAL ISNA ISNONTEXT ISNUMBER ISTEXT'),
  ...named(passes(), 'FALSE HSTACK NA NOW RAND T TODAY TRANSPOSE TRUE VSTACK'),
  ...named(passes([0]), 'CHOOSE IF'),
  ['IFS', passes('even')],
  ...named(passes('rest'), 'ARRAY_CONSTRAIN FILTER'),
  ...named(text, 'CLEAN CONCATENATE EXACT FIND LEFT LEN LOWER MID PROPER REPLACE REPT RIGHT SEARCH SPLIT TEXTJOIN TRIM UPPER'),
  ...named(same, 'ABS AVEDEV GEOMEAN HARMEAN MEDIAN STDEV STDEV.P STDEV.S STDEVP STDEVS'),
  ...named(firstOnly, 'LARGE PERCENTILE PERCENTILE.EXC PERCENTILE.INC QUARTILE QUARTILE.EXC QUARTILE.INC SMALL'),
  ...named(square, 'DEVSQ SUMSQ VAR VAR.P VAR.S VARP VARS'),
  ...named(number, 'ATAN2 COUNTUNIQUE DELTA SIGN SKEW SKEW.P SKEWP STANDARDIZE'),
  ...named(own(pointing), 'COLUMN ISFORMULA ROW'),
  ...named(angle, 'COS COT CSC SEC SIN TAN'),
  ...named(own(CEILING_KIN), 'CEILING.MATH CEILING.PRECISE ISO.CEILING'),
  ...named(own(FLOOR_KIN), 'FLOOR.MATH FLOOR.PRECISE'),
  ...named(own(ROUNDDOWN), 'ROUNDDOWN TRUNC'),
  ...Object.entries({
    AVERAGE, AVERAGEIF, CEILING, COLUMNS, COUNTIF, COUNTIFS, FLOOR, HLOOKUP, INDEX, INT, ISREF, MATCH, MAX, MAXIFS, MIN, MINIFS, MOD, MROUND, POWER, PRODUCT, QUOTIENT,
    ROUND, ROUNDUP, ROWS, RSQ, SEQUENCE, SLOPE, SORT, STEYX, SQRT, SUBSTITUTE, SUM, SUMIF, SUMIFS, SUMPRODUCT, SWITCH, TEXT, UNIQUE, VALUE, VLOOKUP, XLOOKUP,
  }).map(([name, fn]): [string, Policy] => [name, own(fn)]),
  ...named(own(CORREL), 'CORREL PEARSON'),
  ...named(own(COVARIANCE), 'COVAR COVARIANCE.P COVARIANCEP'),
  ...named(own(SAMPLE_COVARIANCE), 'COVARIANCE.S COVARIANCES'),
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

/** Functions that the engine's library does not have. */
const ADDED: ReadonlyMap<string, Policy> = new Map([
  ...Object.entries({ AVERAGEIFS, FORECAST, INTERCEPT, LET, LOOKUP, MODE, NUMBERVALUE, PERCENTRANK, RANK, SORTBY, TREND, TYPE, XMATCH }).map(([name, fn]): [string, Policy] => [name, own(fn)]),
  ['AGGREGATE', own(aggregate((name) => ownOf(name)))],
  ['ERROR.TYPE', own(ERROR_TYPE)],
]);

export const ADDED_NAMES: readonly string[] = [...ADDED.keys()];

export function policyOf(name: string): Policy {
  return POLICIES.get(name) ?? ADDED.get(name) ?? (name.startsWith('HF.') ? absent : refuses);
}

/** The names that the table has a line for. */
export const POLICY_NAMES: readonly string[] = [...POLICIES.keys(), ...ADDED_NAMES];

function ownOf(name: string): Own {
  const policy = policyOf(name);
  return policy.does === 'own' ? policy.own : (call) => call.library();
}
