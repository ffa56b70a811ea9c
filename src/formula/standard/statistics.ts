import { COUNTED, SAME, SQUARED, topic } from './entry.ts';

const FIGURES = 'figures: figures, cells or blocks of cells | …';
const VALUES = 'values: values, cells or blocks of cells | …';
const PAIR = 'first: a block of figures | second: a block of the same size';
const PAIRS = 'Each block holds figures of one kind, such as lengths; the result is a plain number.';
const TIMES = 'Each block holds figures of one kind; two blocks of lengths give an area.';
const DEPENDS = 'The result keeps the unit of the figures that depend; the others may be of another kind.';
const LINE = 'ys: what depends, a block of figures | xs: what it depends on, a block of the same size';

export const STATISTICS = topic('Spread and trend', [
  ['STDEV', FIGURES, 'The standard deviation, where the figures are a sample of more.', 'STDEV(91 cm, 92 cm, 90 cm)', 'standard deviation; how much do they vary; spread of measures', SAME],
  ['STDEV.P', FIGURES, 'The standard deviation, where the figures are all that there are.', 'STDEV.P(91 cm, 92 cm, 90 cm)', '', SAME],
  ['STDEVA', VALUES, 'The standard deviation of a sample, where words count as 0 and TRUE as 1.', 'STDEVA({2;4;TRUE})'],
  ['STDEVPA', VALUES, 'The standard deviation of everything, where words count as 0 and TRUE as 1.', 'STDEVPA({2;4;TRUE})'],
  ['VAR', FIGURES, 'The variance, where the figures are a sample of more: the square of the standard deviation.', 'VAR(2, 4, 6)', '', SQUARED],
  ['VAR.P', FIGURES, 'The variance, where the figures are all that there are.', 'VAR.P(2, 4, 6)', '', SQUARED],
  ['VARA', VALUES, 'The variance of a sample, where words count as 0 and TRUE as 1.', 'VARA({2;4;TRUE})'],
  ['VARPA', VALUES, 'The variance of everything, where words count as 0 and TRUE as 1.', 'VARPA({2;4;TRUE})'],
  ['AVEDEV', FIGURES, 'How far figures lie from their average, on average.', 'AVEDEV(91 cm, 92 cm, 90 cm)', 'average difference', SAME],
  ['DEVSQ', FIGURES, 'The sum of the squares of how far figures lie from their average.', 'DEVSQ(2, 4, 6)', '', SQUARED],
  ['SKEW', FIGURES, 'How lopsided a sample is: above 0 with a long tail of greater figures.', 'SKEW(1, 2, 6)', '', COUNTED],
  ['SKEW.P', FIGURES, 'How lopsided all the figures are.', 'SKEW.P(1, 2, 6)', '', COUNTED],
  ['STANDARDIZE', 'number: a figure | mean: the average | deviation: the standard deviation', 'How many standard deviations a number lies from the average.', 'STANDARDIZE(95, 90, 4)', '', COUNTED],
  ['CORREL', PAIR, 'How closely two rows of numbers go together, from -1 to 1.', 'CORREL({1;2;3}, {2;4;7})', 'do they go together', PAIRS],
  ['RSQ', LINE, 'The square of the correlation.', 'RSQ({2;4;7}, {1;2;3})', '', PAIRS],
  ['COVARIANCE.P', PAIR, 'How two rows of numbers vary together, where they are all that there are.', 'COVARIANCE.P({1;2;3}, {2;4;7})', '', TIMES],
  ['COVARIANCE.S', PAIR, 'How two rows of numbers vary together, where they are a sample of more.', 'COVARIANCE.S({1;2;3}, {2;4;7})', '', TIMES],
  ['SLOPE', LINE, 'How much the straight line that fits best goes up for each step across.', 'SLOPE({2;4;7}, {1;2;3})', 'slope of a line', 'The kind of what depends, divided by that of what it depends on: lengths over plain numbers give a length, lengths over lengths a plain number.'],
  ['INTERCEPT', LINE, 'Where the straight line that fits best begins: its height at zero.', 'INTERCEPT({2;4;7}, {1;2;3})', 'where a line begins', DEPENDS],
  ['STEYX', LINE, 'How far points lie from the straight line that fits best.', 'STEYX({2;4;7;8}, {1;2;3;4})', '', DEPENDS],
  ['FORECAST', `x: where to read the line | ${LINE}`, 'The height of the straight line that fits best, at one place.', 'FORECAST(4, {2;4;7}, {1;2;3})', 'predict; go on with a row of figures', DEPENDS],
  ['TREND', 'ys: what depends, a block of figures | xs?: what it depends on; 1, 2, 3 … if left out | new xs?: where to read the line | constant?: FALSE puts the line through zero', 'Heights of the straight line that fits best, at several places.', 'TREND({2;4;7}, {1;2;3}, {4;5})', 'predict several; straight line through figures', DEPENDS],
  ['FISHER', 'r: between -1 and 1', 'The Fisher transformation of a correlation.', 'FISHER(0.5)'],
  ['FISHERINV', 'z: a plain number', 'The correlation of which this is the Fisher transformation.', 'FISHERINV(0.5)'],
]);

const CUMULATIVE = 'cumulative: TRUE for the chance up to x, FALSE for the density at x';
const SHARE = 'share: between 0 and 1';
const FREEDOM = 'freedom: degrees of freedom, at least 1';
const TWO_FREEDOMS = 'freedom 1: degrees of freedom above | freedom 2: degrees of freedom below';

export const DISTRIBUTIONS = topic('Distributions and tests', [
  ['NORM.DIST', `x: a plain number | mean: the average | deviation: the standard deviation | ${CUMULATIVE}`, 'The normal distribution.', 'NORM.DIST(95, 90, 4, TRUE)', 'bell curve'],
  ['NORM.INV', `${SHARE} | mean: the average | deviation: the standard deviation`, 'The number up to which a share of a normal distribution lies.', 'NORM.INV(0.9, 90, 4)'],
  ['NORM.S.DIST', `z: a plain number | ${CUMULATIVE}`, 'The normal distribution with average 0 and deviation 1.', 'NORM.S.DIST(1, TRUE)'],
  ['NORM.S.INV', SHARE, 'The number up to which a share of the standard normal distribution lies.', 'NORM.S.INV(0.9)'],
  ['PHI', 'z: a plain number', 'The density of the standard normal distribution.', 'PHI(1)'],
  ['GAUSS', 'z: a plain number', 'The share of the standard normal distribution between 0 and a number.', 'GAUSS(1)'],
  ['LOGNORM.DIST', `x: above zero | mean: of the logarithm | deviation: of the logarithm | ${CUMULATIVE}`, 'The distribution of numbers whose logarithm is normal.', 'LOGNORM.DIST(4, 1, 0.5, TRUE)'],
  ['LOGNORM.INV', `${SHARE} | mean: of the logarithm | deviation: of the logarithm`, 'The number up to which a share of a log-normal distribution lies.', 'LOGNORM.INV(0.9, 1, 0.5)'],
  ['BINOM.DIST', `hits: how many | tries: how many | chance: of a hit in one try | ${CUMULATIVE}`, 'The chance of so many hits in so many tries.', 'BINOM.DIST(3, 10, 0.5, FALSE)'],
  ['BINOM.INV', `tries: how many | chance: of a hit in one try | ${SHARE}`, 'The least number of hits that reaches a share.', 'BINOM.INV(10, 0.5, 0.9)'],
  ['NEGBINOM.DIST', `misses: how many | hits: how many | chance: of a hit | ${CUMULATIVE}`, 'The chance of so many misses before so many hits.', 'NEGBINOM.DIST(3, 2, 0.5, FALSE)'],
  ['HYPGEOM.DIST', `hits: among those drawn | drawn: how many | all hits: how many there are | all: how many there are | ${CUMULATIVE}`, 'The chance of so many hits when things are drawn and not put back.', 'HYPGEOM.DIST(1, 4, 8, 20, FALSE)'],
  ['POISSON.DIST', `events: how many | mean: how many on average | ${CUMULATIVE}`, 'The chance of so many events where there are so many on average.', 'POISSON.DIST(2, 3, FALSE)'],
  ['EXPON.DIST', `x: not below zero | rate: one over the average | ${CUMULATIVE}`, 'The exponential distribution.', 'EXPON.DIST(1, 0.5, TRUE)'],
  ['GAMMA.DIST', `x: not below zero | shape: above zero | scale: above zero | ${CUMULATIVE}`, 'The gamma distribution.', 'GAMMA.DIST(2, 3, 1, TRUE)'],
  ['GAMMA.INV', `${SHARE} | shape: above zero | scale: above zero`, 'The number up to which a share of a gamma distribution lies.', 'GAMMA.INV(0.5, 3, 1)'],
  ['BETA.DIST', `x: a plain number | alpha: above zero | beta: above zero | ${CUMULATIVE} | from?: least x, 0 if left out | to?: greatest x, 1 if left out`, 'The beta distribution.', 'BETA.DIST(0.4, 2, 3, TRUE)'],
  ['BETA.INV', `${SHARE} | alpha: above zero | beta: above zero | from?: least x, 0 if left out | to?: greatest x, 1 if left out`, 'The number up to which a share of a beta distribution lies.', 'BETA.INV(0.5, 2, 3)'],
  ['WEIBULL.DIST', `x: not below zero | shape: above zero | scale: above zero | ${CUMULATIVE}`, 'The Weibull distribution.', 'WEIBULL.DIST(2, 1.5, 3, TRUE)'],
  ['CHISQ.DIST', `x: a plain number | ${FREEDOM} | ${CUMULATIVE}`, 'The chi-squared distribution.', 'CHISQ.DIST(3, 2, TRUE)'],
  ['CHISQ.DIST.RT', `x: a plain number | ${FREEDOM}`, 'The share of the chi-squared distribution above a number.', 'CHISQ.DIST.RT(3, 2)'],
  ['CHISQ.INV', `${SHARE} | ${FREEDOM}`, 'The number up to which a share of the chi-squared distribution lies.', 'CHISQ.INV(0.9, 2)'],
  ['CHISQ.INV.RT', `${SHARE} | ${FREEDOM}`, 'The number above which a share of the chi-squared distribution lies.', 'CHISQ.INV.RT(0.1, 2)'],
  ['CHISQ.TEST', 'seen: a block of counts | expected: a block of the same size', 'The chance that counts differ so much from those expected.', 'CHISQ.TEST({18;22;20}, {20;20;20})'],
  ['F.DIST', `x: not below zero | ${TWO_FREEDOMS} | ${CUMULATIVE}`, 'The F distribution.', 'F.DIST(2, 3, 4, TRUE)'],
  ['F.DIST.RT', `x: not below zero | ${TWO_FREEDOMS}`, 'The share of the F distribution above a number.', 'F.DIST.RT(2, 3, 4)'],
  ['F.INV', `${SHARE} | ${TWO_FREEDOMS}`, 'The number up to which a share of the F distribution lies.', 'F.INV(0.9, 3, 4)'],
  ['F.INV.RT', `${SHARE} | ${TWO_FREEDOMS}`, 'The number above which a share of the F distribution lies.', 'F.INV.RT(0.1, 3, 4)'],
  ['F.TEST', 'first: a block of numbers | second: a block of numbers', 'The chance that two samples spread equally.', 'F.TEST({2;4;6;9}, {1;5;7;8})'],
  ['T.DIST', `x: a plain number | ${FREEDOM} | ${CUMULATIVE}`, 'Student’s t distribution.', 'T.DIST(1, 5, TRUE)'],
  ['T.DIST.2T', `x: not below zero | ${FREEDOM}`, 'The share of the t distribution beyond a number on both sides.', 'T.DIST.2T(1, 5)'],
  ['T.DIST.RT', `x: a plain number | ${FREEDOM}`, 'The share of the t distribution above a number.', 'T.DIST.RT(1, 5)'],
  ['T.INV', `${SHARE} | ${FREEDOM}`, 'The number up to which a share of the t distribution lies.', 'T.INV(0.9, 5)'],
  ['T.INV.2T', `${SHARE} | ${FREEDOM}`, 'The number beyond which a share of the t distribution lies on both sides together.', 'T.INV.2T(0.1, 5)'],
  ['TDIST', `x: not below zero | ${FREEDOM} | tails: 1 or 2`, 'The share of the t distribution beyond a number, on one side or both.', 'TDIST(1, 5, 2)'],
  ['T.TEST', 'first: a block of numbers | second: a block of numbers | tails: 1 or 2 | kind: 1 in pairs, 2 equal spread, 3 unequal spread', 'The chance that two samples have one average.', 'T.TEST({2;4;6;9}, {3;5;7;12}, 2, 1)'],
  ['Z.TEST', 'numbers: a block of numbers | mean: the average to test | deviation?: that of the sample if left out', 'The chance that a sample’s average lies so far above a given one.', 'Z.TEST({2;4;6;9}, 4)'],
  ['CONFIDENCE.NORM', 'risk: between 0 and 1 | deviation: the standard deviation | count: size of the sample', 'Half the width of the range in which an average lies, by the normal distribution.', 'CONFIDENCE.NORM(0.05, 4, 25)'],
  ['CONFIDENCE.T', 'risk: between 0 and 1 | deviation: the standard deviation | count: size of the sample', 'Half the width of the range in which an average lies, by the t distribution.', 'CONFIDENCE.T(0.05, 4, 25)'],
]);
