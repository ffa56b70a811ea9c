/**
 * What is told of every standard function that a formula may call, by topic:
 * data only, in our own words. Which of them there are is for the engine to say.
 */
import { ANGLES, NUMBERS, ROUNDING } from './arithmetic.ts';
import { DATES } from './dates.ts';
import { BASES, COMPLEX, SPECIAL } from './engineering.ts';
import { otherNames } from './entry.ts';
import type { StandardFunction } from './entry.ts';
import { CELLS, LOGIC } from './logic.ts';
import { BLOCKS, LOOKUP } from './lookup.ts';
import { MONEY } from './money.ts';
import { DISTRIBUTIONS, STATISTICS } from './statistics.ts';
import { AVERAGES, SUMS } from './sums.ts';
import { TABLES } from './tables.ts';
import { TEXTS } from './text.ts';

export { PLAIN } from './entry.ts';
export type { StandardArg, StandardFunction } from './entry.ts';
export { OPEN_FORMULA_NAMES, sectionOf } from './sections.ts';
export { AN_ERROR, DIFFERENCES } from './differences.ts';
export type { Difference } from './differences.ts';

const withNames = (functions: readonly StandardFunction[], pairs: string): readonly StandardFunction[] => [...functions, ...otherNames(functions, pairs)];

export const STANDARD_FUNCTIONS: readonly StandardFunction[] = [
  ...SUMS,
  ...withNames(AVERAGES, `
    PERCENTILE.INC = PERCENTILE
    QUARTILE.INC = QUARTILE`),
  ...withNames(ROUNDING, 'ISO.CEILING = CEILING.PRECISE'),
  ...NUMBERS, ...ANGLES, ...LOGIC, ...CELLS, ...LOOKUP, ...BLOCKS, ...TEXTS, ...DATES,
  ...withNames(STATISTICS, `
    STDEV.S STDEVS = STDEV
    STDEVP = STDEV.P
    VAR.S VARS = VAR
    VARP = VAR.P
    SKEWP = SKEW.P
    PEARSON = CORREL
    COVAR COVARIANCEP = COVARIANCE.P
    COVARIANCES = COVARIANCE.S`),
  ...TABLES, ...MONEY,
  ...withNames(DISTRIBUTIONS, `
    NORMDIST = NORM.DIST
    NORMINV = NORM.INV
    NORMSDIST = NORM.S.DIST
    NORMSINV = NORM.S.INV
    LOGNORMDIST = LOGNORM.DIST
    LOGINV LOGNORMINV = LOGNORM.INV
    BINOMDIST = BINOM.DIST
    CRITBINOM = BINOM.INV
    NEGBINOMDIST = NEGBINOM.DIST
    HYPGEOMDIST = HYPGEOM.DIST
    POISSON POISSONDIST = POISSON.DIST
    EXPONDIST = EXPON.DIST
    GAMMADIST = GAMMA.DIST
    GAMMAINV = GAMMA.INV
    BETADIST = BETA.DIST
    BETAINV = BETA.INV
    WEIBULL WEIBULLDIST = WEIBULL.DIST
    CHIDIST CHIDISTRT = CHISQ.DIST.RT
    CHIINV CHIINVRT = CHISQ.INV.RT
    CHITEST = CHISQ.TEST
    FDIST FDISTRT = F.DIST.RT
    FINV FINVRT = F.INV.RT
    FTEST = F.TEST
    TDIST2T = T.DIST.2T
    TDISTRT = T.DIST.RT
    TINV TINV2T = T.INV.2T
    TTEST = T.TEST
    ZTEST = Z.TEST
    CONFIDENCE = CONFIDENCE.NORM`),
  ...withNames(SPECIAL, 'GAMMALN.PRECISE = GAMMALN'),
  ...BASES, ...COMPLEX,
];
