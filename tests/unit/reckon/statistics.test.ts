/**
 * Statistics of random figures, held against simple-statistics 7.12.1 (npm), a
 * general library that has nothing of this workbook in it; and what becomes of
 * their units.
 */
import fc from 'fast-check';
import {
  linearRegression, linearRegressionLine, mean, median, mode, rSquared, sampleCorrelation, sampleCovariance, sampleSkewness, sampleStandardDeviation, sampleVariance, variance,
} from 'simple-statistics';
import { describe, expect, test } from 'vitest';
import { Desk, steady } from './desk.ts';

const figure = fc.integer({ min: -4_000, max: 4_000 }).map((n) => n / 8);
/** Few values, so that some of them are the same. */
const size = fc.integer({ min: 30, max: 60 });

/** Figures of two columns of cells, with or without a unit. */
function columns(ys: readonly number[], xs: readonly number[], unit: string): Record<string, string> {
  return Object.fromEntries(ys.flatMap((y, i) => [[`A${i + 1}`, `${y}${unit}`], [`B${i + 1}`, `${xs[i]}${unit}`]]));
}

function valueOf(desk: Desk, formula: string): number {
  desk.type({ Z99: formula });
  const result = desk.result('Z99');
  if (result.kind !== 'quantity') throw new Error(`${formula} gave ${desk.show('Z99')}`);
  return result.value;
}

const near = (got: number, due: number, formula: string): void => expect(Math.abs(got - due), `${formula}: ${got}, and not ${due}`).toBeLessThanOrEqual(1e-8 * Math.max(1, Math.abs(due)));

describe('as simple-statistics has them', () => {
  test('lines and spread of pairs', () => {
    fc.assert(fc.property(fc.array(fc.tuple(figure, figure), { minLength: 4, maxLength: 12 }), figure, (pairs, at) => {
      const [ys, xs] = [pairs.map(([y]) => y), pairs.map(([, x]) => x)];
      fc.pre(new Set(ys).size > 1 && new Set(xs).size > 1);
      const points = pairs.map(([y, x]) => [x, y]);
      const { m, b } = linearRegression(points);
      const line = linearRegressionLine({ m, b });
      const n = ys.length;
      const [a, c] = [`A1:A${n}`, `B1:B${n}`];
      // In mm a length is 10 times its cm: a product of two is 100 times, and a slope the same.
      for (const [unit, scale] of [['', 1], [' cm', 10]] as const) {
        const desk = new Desk(columns(ys, xs, unit));
        const due: readonly (readonly [string, number])[] = [
          [`=SLOPE(${a};${c})`, m], [`=INTERCEPT(${a};${c})`, b * scale], [`=FORECAST(${at}${unit};${a};${c})`, line(at) * scale], [`=INDEX(TREND(${a};${c};{${at}${unit};0${unit}});1;2)`, b * scale],
          [`=CORREL(${a};${c})`, sampleCorrelation(ys, xs)], [`=RSQ(${a};${c})`, rSquared(points, line)], [`=COVARIANCE.S(${a};${c})`, sampleCovariance(ys, xs) * scale ** 2],
          [`=COVAR(${a};${c})`, sampleCovariance(ys, xs) * scale ** 2 * (n - 1) / n], [`=STDEV(${a})`, sampleStandardDeviation(ys) * scale], [`=VAR(${a})`, sampleVariance(ys) * scale ** 2],
          [`=VAR.P(${a})`, variance(ys) * scale ** 2], [`=SKEW(${a})`, sampleSkewness(ys)], [`=MEDIAN(${a})`, median(ys) * scale], [`=AVERAGE(${a})`, mean(ys) * scale],
        ];
        for (const [formula, value] of due) near(valueOf(desk, formula), value, formula);
      }
    }), { numRuns: 60 });
  }, 60_000);

  test('the most frequent, and averages under conditions', () => {
    fc.assert(fc.property(fc.array(size, { minLength: 6, maxLength: 20 }), fc.integer({ min: 30, max: 60 }), (sizes, above) => {
      const desk = new Desk(Object.fromEntries(sizes.flatMap((n, i) => [[`A${i + 1}`, `${n} cm`], [`B${i + 1}`, String(n)], [`C${i + 1}`, i % 2 === 0 ? 'skirt' : 'lining']])));
      const block = (col: string): string => `${col}1:${col}${sizes.length}`;
      if (new Set(sizes).size < sizes.length) {
        const counts = new Map<number, number>();
        for (const n of sizes) counts.set(n, (counts.get(n) ?? 0) + 1);
        const found = valueOf(desk, `=MODE(${block('A')})`) / 10;
        // Of several that are as frequent the library gives any, and OpenFormula the least.
        expect(counts.get(found)).toBe(counts.get(mode(sizes)));
        expect(found).toBe(Math.min(...[...counts].filter(([, count]) => count === counts.get(found)).map(([n]) => n)));
      }
      const fits = sizes.filter((n, i) => n > above && i % 2 === 0);
      for (const [col, scale, unit] of [['A', 10, ' cm'], ['B', 1, '']] as const) {
        const formula = `=AVERAGEIFS(${block(col)};${block(col)};">${above}${unit}";${block('C')};"skirt")`;
        if (fits.length === 0) expect(desk.work(formula)).toMatch(/^! Nothing fits the condition/);
        else near(valueOf(desk, formula), mean(fits) * scale, formula);
      }
    }), { numRuns: 100 });
  }, 60_000);
});

describe('units of results', () => {
  const desk = new Desk({
    A1: '10 cm', A2: '20 cm', A3: '30 cm', A4: '20 cm', B1: '1', B2: '2', B3: '4', B4: '3', C1: 'S', C2: 'M', C3: 'L', C4: 'M', D1: '=DATE(2026;1;1)', D2: '=DATE(2026;1;11)', D3: '=DATE(2026;1;21)', E1: '8 in', E2: '203.2 mm', E3: '1 m2', F1: '=1/0',
  });
  test.each([
    ['=RANK(20 cm;A1:A4)', '2'], ['=RANK(200 mm;A1:A4;1)', '2'], ['=MODE(A1:A4)', '20 cm'], ['=MODE(E1:E2)', '8 in'], ['=PERCENTRANK(A1:A4;25 cm)', '0.833'], ['=FORECAST(3;A1:A3;{1;2;3})', '30 cm'], ['=FORECAST(40 cm;B1:B3;A1:A3)', '5.33333333333'],
    ['=FORECAST(DATE(2026;1;31);A1:A3;D1:D3)', '40 cm'], ['=SLOPE(A1:A3;A1:A3)', '1'], ['=SLOPE(A1:A3;{1;2;3})', '10 cm'], ['=SLOPE(B1:B3;A1:A3/1 cm)', '0.15'], ['=COVAR(A1:A3;A1:A3)', '66.6666666667 cm²'], ['=COVAR(A1:A3;{1;2;3})', '6.66666666667 cm'],
    ['=STEYX(A1:A4;B1:B4)', '3.16227766017 cm'], ['=STANDARDIZE(A1;A2;5 cm)', '-2'], ['=SKEW(A1:A4)', '0'], ['=ATAN2(10 cm;10 cm)', '0.785398163397'], ['=SUM(TREND(A1:A3;{1;2;3};{4;5}))', '90 cm'], ['=TREND({2 cm;4 cm};{1;2};3;FALSE)', '6 cm'], ['=SUM(TREND({1;2;3}))', '6'],
    ['=AVERAGEIFS(A1:A4;C1:C4;"M")', '20 cm'], ['=LOOKUP(25 cm;A1:A3;C1:C3)', 'M'], ['=LOOKUP("M";{"A";"M";"Z"};A1:A3)', '20 cm'], ['=XMATCH("M";C1:C4)', '2'], ['=XMATCH("M";C1:C4;0;-1)', '4'], ['=XMATCH(25 cm;A1:A3;-1)', '2'], ['=XMATCH(250 mm;A1:A3;1)', '3'],
    ['=INDEX(SORTBY(C1:C3;A1:A3;-1);1;1)', 'L'], ['=INDEX(SORTBY(A1:A4;C1:C4;1;A1:A4;-1);1;1)', '30 cm'], ['=SUM(SORTBY(A1:A4;B1:B4))', '80 cm'], ['=SUM(INDEX(A1:B3;0;1))', '60 cm'], ['=SUM(INDEX(A1:B3;;2))', '7'],
    ['=AGGREGATE(9;6;A1:A3;F1)', '60 cm'], ['=AGGREGATE(14;6;A1:A4;1)', '30 cm'], ['=AGGREGATE(12;4;A1:A4)', '20 cm'], ['=AGGREGATE(13;4;A1:A4)', '20 cm'], ['=TYPE(A1)', '1'], ['=ISREF(A1)', 'TRUE'], ['=ISREF(10 cm)', 'FALSE'], ['=ISREF(INDEX(A1:A3;2))', 'TRUE'],
    ['=VLOOKUP("waist";{"bust";90 cm|"waist";70 cm};2;FALSE)', '70 cm'], ['=CEILING(-28.1 cm;5 mm)', '-28 cm'], ['=CEILING(-28.1 cm;5 mm;1)', '-28.5 cm'], ['=FLOOR(-28.1 cm;5 mm;1)', '-28 cm'],
  ])('%s is %s', (formula, shown) => expect(steady(desk.work(formula)), formula).toBe(steady(shown)));

  test.each([
    ['=RANK(20;A1:A4)', /20 without a unit among lengths/], ['=RANK(20 in;A1:A4)', 'RANK did not find 20 in among A1:A4: look for a figure that is there.'], ['=MODE(A1;E3)', /Lengths and areas do not go together/], ['=MODE(A1:A3)', /no figure twice/],
    ['=FORECAST(25;B1:B3;A1:A3)', /25 without a unit/], ['=SLOPE(B1:B3;A1:A3)', 'SLOPE of plain numbers over lengths is nothing that a cell can hold: divide the second block by one of its unit, as in B1:B9/1 cm.'], ['=CORREL(A1:A3;B1:B4)', 'CORREL needs two blocks with as many cells: A1:A3 has 3, B1:B4 4.'],
    ['=SLOPE(A1:A3;{0.1;0.1;0.1})', /all those in the second block are the same/], ['=CORREL(A1:A2;{1;"x"})', /needs 2 pairs of figures at least, and found 1/], ['=TREND(A1:A3;{1;2;3};{1 cm;2 cm})', /without a unit among lengths/], ['=AVERAGEIFS(A1:A4;C1:C4;"Q")', /Nothing fits the condition/],
    ['=LOOKUP(5 cm;A1:A3)', 'LOOKUP did not find 5.0 cm among A1:A3: look for a value that is there, or say with IFNA what to give instead.'], ['=LOOKUP(25;A1:A3)', /without a unit among lengths/], ['=XMATCH("Q";C1:C3)', /did not find “Q” among C1:C3/], ['=SORTBY(A1:A3;B1:B4)', /B1:B4 has 4, and the block has 3/],
    ['=SORTBY(A1:A3;{1 cm;2;3})', /without a unit among lengths/], ['=SORTBY(A1:A3;B1:B3;5)', /upwards with 1 and downwards with -1/], ['=INDEX(A1:B3;9;1)', 'INDEX was asked for row 9, and A1:B3 has 3: choose a number from 1 to 3, or 0 for all.'], ['=INDEX(A1:A3;Z9)', 'Z9 has no value yet.'],
    ['=AGGREGATE(9;4;A1:A3;F1)', /^! F1: /], ['=AGGREGATE(9;5;A1:A4)', /Hidden rows are counted/], ['=AGGREGATE(99;6;A1)', /a number from 1 to 19/], ['=ERROR.TYPE(A1)', /A1 is none/], ['=CEILING(28.1 cm)', /needs a step with a unit/], ['=CEILING(4.5;-2)', /take the minus off the step/],
  ])('%s is refused', (formula, sentence) => expect(desk.work(formula), formula).toMatch(typeof sentence === 'string' ? `! ${sentence}` : sentence));

  test('a grand total leaves out the totals in it, also when they change', () => {
    const totals = new Desk({ A1: '1 cm', A2: '2 cm', A3: '=SUBTOTAL(9;A1:A2)', A4: '4 cm', A5: '=SUBTOTAL(9;A4:A4)*1', A6: '=SUBTOTAL(9;A1:A5)' });
    expect(totals.show('A6')).toBe('7 cm');
    totals.type({ A3: '10 cm' });
    expect(totals.show('A6')).toBe('17 cm');
    totals.type({ A3: '=A1*AGGREGATE(2;6;A1:A2)' });
    expect(totals.show('A6')).toBe('7 cm');
  });
});

describe('LET', () => {
  const desk = new Desk({ A1: '10 cm', A2: '20 cm', B1: '=LET(q;A1:A2;q*2)', C1: '=LET(k;INDEX(A1:A2;0);k)' });
  test.each([
    ['=LET(x;92 cm;x+x)', '184 cm'], ['=LET(x;A1;y;x*2;x+y)', '30 cm'], ['=LET(x;A1:A2;ROWS(x)&" "&SUM(x))', '2 30.0 cm'], ['=LET(x;1;LET(x;2;x)+x)', '3'], ['=LET(X;2;x^2)', '4'], ['=LET(x;RAND();x-x)', '0'], ['=LET(a;1;b;a+1;c;b+1;a&b&c)', '123'], ['=LET(x;2;-x%*SUM({1;2};(x)))', '-0.1'],
    ['=LET(x;A1;ISREF(x))', 'TRUE'], ['=LET(x;1;IF(TRUE;x;1/0))', '1'],
  ])('%s is %s', (formula, shown) => expect(desk.work(formula)).toBe(shown));
  test.each([
    ['=LET(A1;2;3)', /needs a word of your own in place 1/], ['=LET(x;2)', /^! LET takes/], ['=LET(x;2;y)', /name ‘y’/], ['=LET(x;1/0;x)', /^! /], ['=LET(x;x;1)+x', /name ‘x’/],
  ])('%s is refused', (formula, sentence) => expect(desk.work(formula)).toMatch(sentence));
  test('fills the cells that its result needs, and goes before a name', () => {
    expect([desk.show('B1'), desk.show('B2'), desk.show('C2')]).toEqual(['! The result needs more cells than are free here: empty the cells below and to the right.', '', '20 cm'].map((text, i) => (i < 2 ? expect.any(String) as string : text)));
    const named = new Desk({ A1: '70 cm', B1: '=LET(waist;1 cm;waist*2)', C1: '=waist' });
    named.name('waist', 'A1');
    expect([named.show('B1'), named.show('C1')]).toEqual(['2 cm', '70 cm']);
    named.type({ A1: '80 cm' });
    expect([named.show('B1'), named.show('C1')]).toEqual(['2 cm', '80 cm']);
  });
});
