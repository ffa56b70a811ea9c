/** Functions that take units in their own ways, by example. Formula rules are OpenFormula's (OASIS OpenDocument 1.3 part 4) where it has them. */
import { describe, expect, test } from 'vitest';
import { Desk, steady } from './desk.ts';

const desk = new Desk({
  A1: '10 cm', A2: '4 in', A3: '30 cm', A4: '', A5: 'note', A6: '20 cm',
  B1: '1', B2: '2', B3: '3', B4: '', B5: 'x', B6: '6',
  C1: '10 %', C2: '20 %',
  D1: '10 cm', D2: '5', D3: '86–90 cm', D4: '1/0', D5: '2 cm2',
  E1: 'S', E2: 'M', E3: 'L', E4: 'waist', E5: '90 cm', E6: '36 in',
  F1: '70 cm', F2: '80 cm', F3: '90 cm', F4: '914.4 mm', F5: '914.4',
});

const gives = (formula: string, shown: string): void => expect(steady(desk.work(formula)), formula).toBe(steady(shown));
const says = (formula: string, sentence: string | RegExp): void => expect(desk.work(formula), formula).toMatch(typeof sentence === 'string' ? `! ${sentence}` : sentence);

describe('sums', () => {
  test.each([
    ['=SUM(A1:A6)', '70.16 cm'], ['=SUM(A2:A1)', '20.16 cm'], ['=SUM(A2,A1)', '7.937007874015748 in'], ['=SUM(A1:A3,5 cm)', '55.16 cm'], ['=SUM(B1:B6)', '12'], ['=SUM(C1:C2)', '30 %'],
    ['=SUM(A4:A5)', '0'], ['=SUM(A1:A2,A4)', '20.16 cm'], ['=SUM(A1:A2)+SUM(A1:A3)', '70.32 cm'], ['=SUM(C1:C2,1)', '1.3'],
    ['=AVERAGE(A1:A6)', '17.54 cm'], ['=AVERAGE(C1:C2)', '15 %'], ['=MIN(A1:A6)', '10 cm'], ['=MAX(A1:A6)', '30 cm'], ['=MAX(A1:A2)', '4 in'], ['=MIN(A4:A5)', '0'],
    ['=PRODUCT(A1,A3)', '300 cm²'], ['=PRODUCT(A1,B3)', '30 cm'], ['=SUMSQ(A1,A3)', '1000 cm²'], ['=SUMPRODUCT(A1:A3,B1:B3)', '120.32 cm'], ['=SUMPRODUCT(A1:A3,A1:A3)', '1103.2256 cm²'],
    ['=SUBTOTAL(9,A1:A6)', '70.16 cm'], ['=SUBTOTAL(104,A1:A6)', '30 cm'], ['=SUBTOTAL(1,A1:A3)', '16.72 cm'], ['=SUBTOTAL(2,A1:A6)', '4'],
    ['=COUNT(A1:A6)', '4'], ['=COUNTA(A1:A6)', '5'], ['=COUNTBLANK(A1:A6)', '1'],
    ['=MEDIAN(A1:A6)', '15.08 cm'], ['=LARGE(A1:A6,2)', '20 cm'], ['=SMALL(A1:A6,1)', '10 cm'], ['=STDEV(A1,A3)', '14.142135623730951 cm'], ['=VAR(A1,A3)', '200 cm²'],
    ['=QUARTILE(A1:A6,2)', '15.08 cm'], ['=PERCENTILE(F1:F3,0.5)', '80 cm'], ['=GEOMEAN(A1,A1)', '10 cm'], ['=SIGN(A1)', '1'], ['=ABS(-A1)', '10 cm'], ['=ABS(-A2)', '4 in'],
  ])('%s is %s', gives);

  test.each([
    ['=SUM(D1:D2)', 'D2 is 5 without a unit among lengths such as 10 cm in D1: give it its unit.'],
    ['=SUM(A1,5)', 'One of the figures is 5 without a unit among lengths such as 10 cm in A1: give it its unit.'],
    ['=SUM(D1,D5)', 'Lengths and areas do not go together: 10 cm in D1 and 2 cm² in D5.'],
    ['=SUM(D1,D3)', 'D3: 86.0–90.0 cm is two figures: write the one to reckon with.'],
    ['=AVERAGE(D1:D2)', 'D2 is 5 without a unit among lengths such as 10 cm in D1: give it its unit.'],
    ['=MAX(D1:D2)', 'D2 is 5 without a unit among lengths such as 10 cm in D1: give it its unit.'],
    ['=MEDIAN(D1:D2)', 'D2 is 5 without a unit among lengths such as 10 cm in D1: give it its unit.'],
    ['=AVERAGE(A4:A5)', 'AVERAGE found no figure in A4:A5: fill one in.'],
    ['=SUM(D1,D4)', /^! D4: /], ['=SUM(D1:D4)', /^! D4: /], ['=SUM(A1,"x")', '“x” is text, not a number.'],
    ['=SUMPRODUCT(A1:A3,B1:B2)', 'SUMPRODUCT needs blocks of cells of one size.'], ['=SUMPRODUCT(D4:D4,A1:A1)', /^! D4: /],
    ['=SUBTOTAL(99,A1)', /SUBTOTAL needs a number from 1 to 11/], ['=SUMSQ(D5)', 'SUMSQ of areas is nothing that a cell can hold.'],
    ['=MEDIAN(A1,A4)', 'A4 has no value yet.'], ['=MEDIAN(A1,TRUE)', 'MEDIAN needs figures of one kind, and got TRUE.'], ['=LARGE(A1:A6,A1)', 'LARGE does not take a length: A1 is 10 cm; divide it by 1 cm for a plain number.'],
    ['=SUM()', /value in its brackets/],
  ])('%s is refused', says);

  test('a running total follows a change anywhere, and units too', () => {
    const n = 200;
    const cells = Object.fromEntries(Array.from({ length: n }, (_, i) => [[`A${i + 1}`, '1 cm'], [`B${i + 1}`, `=SUM(A$1:A${i + 1})`]]).flat() as [string, string][]);
    const total = new Desk(cells);
    expect(total.show(`B${n}`)).toBe('200 cm');
    total.type({ A100: '11 cm' });
    expect([total.show('B99'), total.show('B100'), total.show(`B${n}`)]).toEqual(['99 cm', '110 cm', '210 cm']);
    total.type({ A1: '1 in' });
    expect(total.show(`B${n}`)).toMatch(/ in$/);
    total.type({ A50: '3' });
    expect(total.show('B49')).toMatch(/ in$/);
    expect(total.show(`B${n}`)).toBe('! A50 is 3 without a unit among lengths such as 1 in in A1: give it its unit.');
    total.edit({ do: 'insertRows', sheet: 1, at: 0, count: 1 });
    expect(total.show(`B${n + 1}`)).toBe('! A51 is 3 without a unit among lengths such as 1 in in A2: give it its unit.');
  });

  test('20,000 running totals do not run out of stack', () => {
    const n = 20_000;
    const big = new Desk({});
    big.edit({ do: 'setCells', sheet: 1, cells: Array.from({ length: n }, (_, row) => ({ row, col: 0, cell: { raw: '1 cm' } })) });
    big.edit({ do: 'setCells', sheet: 1, cells: Array.from({ length: n }, (_, row) => ({ row, col: 1, cell: { raw: `=SUM(A$1:A${row + 1})` } })) });
    expect(big.show(`B${n}`)).toBe(`${n} cm`);
  }, 30_000);
});

describe('rounding', () => {
  test.each([
    ['=ROUND(10.25 cm,1)', '10.3 cm'], ['=ROUND(1.005 m,2)', '1.01 m'], ['=ROUND(-10.25 cm,1)', '-10.3 cm'], ['=ROUNDUP(10.21 cm,1)', '10.3 cm'], ['=ROUNDDOWN(10.29 cm,1)', '10.2 cm'], ['=TRUNC(10.9 cm)', '10 cm'],
    ['=INT(10.9 cm)', '10 cm'], ['=INT(-2.5)', '-3'], ['=INT(2.5)', '2'], ['=ROUND(2 3/8 in,0)', '2 in'], ['=ROUND(2.345,2)', '2.35'],
    ['=MROUND(39 9/16 in,1/8 in)', '39.625 in'], ['=MROUND(28.4 cm,5 mm)', '28.5 cm'], ['=CEILING(28.1 cm,5 mm)', '28.5 cm'], ['=FLOOR(28.4 cm,5 mm)', '28 cm'], ['=CEILING(25 cm,1/16 in)', '9.875 in'],
    ['=CEILING.MATH(28.1 cm,5 mm)', '28.5 cm'], ['=MOD(50 cm,20 cm)', '10 cm'], ['=MOD(1 in,0.1 in)', '0 in'], ['=QUOTIENT(50 cm,20 cm)', '2'], ['=QUOTIENT(3 in,0.1 in)', '30'],
    ['=SQRT(100 cm2)', '10 cm'], ['=POWER(10 cm,2)', '100 cm²'], ['=SQRT(9)', '3'], ['=SIN(30°)', '0.5'], ['=COS(60°)', '0.5'],
    ['=ROUND(86.4 cm,0)&""', '86.0 cm'],
  ])('%s is %s', gives);

  test.each([
    ['=ROUND(10 cm,1 mm)', /counts decimals, so it does not take a length: 1 mm/], ['=CEILING(10 cm,5)', /steps of 5/], ['=CEILING.MATH(10 cm)', /needs a step with a unit/],
    ['=MOD(10 cm,3)', /two figures of one kind/], ['=MOD(10 cm,0 cm)', /divided by 0/], ['=SQRT(10 cm)', /square root|power/], ['=SIN(10 cm)', 'SIN does not take a length: 10 cm; divide it by 1 cm for a plain number.'],
    ['=ROUND(D3,1)', '86.0–90.0 cm is two figures: write the one to reckon with.'], ['=EVEN(A1)', 'EVEN does not take a length: A1 is 10 cm; divide it by 1 cm for a plain number.'], ['=DEC2BIN(A1:A3)', 'DEC2BIN does not take a length: A1 is 10 cm; divide it by 1 cm for a plain number.'],
    ['=LN(D3)', 'LN does not take two figures: D3 is 86.0–90.0 cm; write the one to reckon with.'],
  ])('%s is refused', says);
});

describe('conditions', () => {
  test.each([
    ['=COUNTIF(A1:A6,"> 15 cm")', '2'], ['=COUNTIF(A1:A6,">=4 in")', '3'], ['=COUNTIF(A1:A6,10 cm)', '1'], ['=COUNTIF(A1:A6,"10 cm")', '1'], ['=COUNTIF(A1:A6,"<>10 cm")', '3'], ['=COUNTIF(A1:A6,"note")', '1'],
    ['=SUMIF(A1:A6,"> 15 cm")', '50 cm'], ['=SUMIF(A1:A3,"> 5 cm",B1:B3)', '6'], ['=SUMIF(B1:B3,">1",A1:A3)', '15.811023622047244 in'], ['=SUMIF(E1:E3,"M",A1:A3)', '4 in'],
    ['=SUMIFS(A1:A3,B1:B3,">1",E1:E3,"L")', '30 cm'], ['=COUNTIFS(A1:A3,"> 5 cm",B1:B3,"<3")', '2'], ['=AVERAGEIF(A1:A6,"> 15 cm")', '25 cm'], ['=MAXIFS(A1:A3,B1:B3,"<3")', '4 in'], ['=MINIFS(A1:A3,B1:B3,">=2")', '4 in'],
    ['=COUNTIF(B1:B6,">1")', '3'], ['=SUMIF(B1:B6,">1")', '11'], ['=COUNTIF(A1:A6,"*o*")', '1'],
  ])('%s is %s', gives);

  test.each([
    ['=COUNTIF(A1:A6,">15")', 'A1: 15 has no unit: write 15 cm or 15 in.'], ['=COUNTIF(D1:D2,"> 5 cm")', 'D2: 5 has no unit: write 5 cm or 5 in.'], ['=COUNTIF(A1:A6,D3)', /two figures/],
    ['=SUMIF(A1:A3,"> 5 cm",B1:B2)', /one size/], ['=SUMIF(B1:B2,">0",D1:D2)', /D2 is 5 without a unit/], ['=COUNTIF(A1:A6,"> 1/0 cm")', /^! /], ['=COUNTIFS(A1:A6)', /too few or too many/],
    ['=AVERAGEIF(A1:A6,"> 99 cm")', 'Nothing fits the condition, so there is no average: change the condition.'],
  ])('%s is refused', says);
});

describe('looking up', () => {
  test.each([
    ['=MATCH(80 cm,F1:F3,0)', '2'], ['=MATCH(800 mm,F1:F3,0)', '2'], ['=MATCH(36 in,F1:F4,0)', '4'], ['=MATCH(85 cm,F1:F3,1)', '2'], ['=VLOOKUP("M",E1:F3,2,FALSE)', '80 cm'], ['=VLOOKUP(80 cm,F1:G3,1,FALSE)', '80 cm'],
    ['=INDEX(F1:F3,2)', '80 cm'], ['=XLOOKUP("L",E1:E3,F1:F3)', '90 cm'], ['=XLOOKUP("Q",E1:E3,F1:F3,1 in)', '1 in'], ['=HLOOKUP(10 cm,A1:A3,2,FALSE)', '4 in'], ['=MATCH(2,B1:B3,0)', '2'], ['=CHOOSE(2,A1,A2)', '4 in'],
    ['=IF(A1>A2,A1,A2)', '4 in'], ['=IFS(A1>1 m,1,TRUE,A1)', '10 cm'], ['=IFERROR(1/0,A1)', '10 cm'], ['=IFNA(NA(),A2)', '4 in'], ['=SWITCH(A1,100 mm,"ten",20 cm,"twenty")', 'ten'], ['=SWITCH("M","S",A1,"M",A2)', '4 in'],
    ['=ISNUMBER(A1)', 'TRUE'], ['=ISTEXT(A1)', 'FALSE'], ['=ISBLANK(A4)', 'TRUE'], ['=ROWS(A1:A6)', '6'], ['=COLUMNS(A:C)', '3'], ['=ROW(A$3)', '3'], ['=ISFORMULA(A1)', 'FALSE'],
  ])('%s is %s', gives);

  test.each([
    ['=MATCH(80,F1:F3,0)', /80 without a unit among lengths/], ['=MATCH(914.4,F1:F4,0)', /914.4 without a unit among lengths/], ['=MATCH(2 cm,B1:B3,0)', /without a unit among lengths/], ['=MATCH(80 cm,F3:F5,0)', /F5 is 914.4 without a unit/],
    ['=VLOOKUP(80,F1:G3,1,FALSE)', /80 without a unit/], ['=CHOOSE(2 cm,1,2)', 'CHOOSE does not take a length: 2 cm; divide it by 1 cm for a plain number.'], ['=INDEX(F1:F3,2 cm)', 'INDEX does not take a length: 2 cm; divide it by 1 cm for a plain number.'], ['=IF(A1,1,2)', 'IF does not take a length: A1 is 10 cm; divide it by 1 cm for a plain number.'],
    ['=SWITCH(A1,100,"ten")', /100 has no unit/], ['=MATCH(1 m,F1:F3,0)', 'MATCH did not find 1.00 m among F1:F3: look for a value that is there, or say with IFNA what to give instead.'], ['=SORT(D1:D2)', /5 without a unit/], ['=AND(A1)', 'AND does not take a length: A1 is 10 cm; divide it by 1 cm for a plain number.'],
  ])('%s is refused', says);

  test('sorting and picking go by length, not by number', () => {
    const sorted = new Desk({ A1: '1 m', A2: '50 cm', A3: '30 in', A4: '500 mm', C1: '=SORT(A1:A3)', E1: '=UNIQUE(A1:A4)', G1: '=FILTER(A1:A3,ARRAYFORMULA(A1:A3>60 cm))' });
    expect(['C1', 'C2', 'C3', 'E3', 'E4', 'G1', 'G2'].map((cell) => sorted.show(cell))).toEqual(['50 cm', '30 in', '1 m', '30 in', '', '1 m', '30 in']);
  });
});

describe('texts', () => {
  test.each([
    ['=CONCATENATE("about ",A1)', 'about 10.0 cm'], ['=TEXTJOIN(", ",TRUE,A1:A3)', '10.0 cm, 4 in, 30.0 cm'], ['=LEFT(A1,2)', '10'], ['=LEN(A1)', '7'], ['=UPPER(A2)', '4 IN'], ['=TEXT(A1,"0.00")', '10.00 cm'], ['=TEXT(A1,"mm")', '100 mm'],
    ['=TEXT(0.5,"0.00")', '0.50'], ['=VALUE("2 1/4 in")', '2.25 in'], ['=VALUE("12")', '12'], ['=VALUE(A1)', '10 cm'], ['=T(A1)', ''], ['=EXACT(A1,A1)', 'TRUE'], ['=SUBSTITUTE(A1,"cm","c")', '10.0 c'], ['=CONCATENATE(C1)', '10 %'],
    ['=VALUE("1/2")', '0.5'], ['=VALUE("3/8 in")', '0.375 in'], ['=VALUE("5,7 cm")', '5.7 cm'], ['=VALUE("50%")', '50 %'], ['="Cut "&28 3/8 in', 'Cut 28 ⅜ in'], ['=TEXTJOIN(", ",TRUE,1/2,2 1/4 in)', '0.5, 2 ¼ in'],
    ['=TEXT(A1,"0.0 in")', '3.9 in'], ['=TEXT(A1,"# ?/8 in")', '3 7/8 in'], ['=TEXT(2.375,"# ?/8")', '2 3/8'], ['=TEXT(-0.375,"# ?/?")', '-3/8'], ['=TEXT(2.375,"?/8")', '19/8'], ['=TEXT(25%,"0%")', '25%'], ['=TEXT(1234.5,"#,##0.00")', '1,234.50'], ['=TEXT(1.005,"0.00")', '1.01'], ['=TEXT(-0.2,"0")', '0'],
    ['=TEXT(0.5,"#.##")', '.5'], ['=TEXT(7,"000")', '007'], ['=TEXT(DATE(2026,11,3),"m")', '11'], ['=NUMBERVALUE("28,5",",")', '28.5'], ['=NUMBERVALUE("1.234,5",",",".")', '1234.5'],
  ])('%s is %s', gives);

  test.each([
    ['=VALUE("x")', 'VALUE cannot read “x” as a figure: write it as 12.5, 2 1/4 in or 5.7 cm.'], ['=VALUE("2 5/4 in")', /^! ./], ['=N(A1)', 'N does not take a length: A1 is 10 cm; divide it by 1 cm for a plain number.'], ['=LEFT("abc",A1)', /^! /], ['=TEXT(D3,"0")', /two figures/],
    ['=TEXT(5,"cm")', '5 is no length, so TEXT cannot write it in cm: give it a unit first.'], ['=TEXT(A1,"cm2")', /is a length, so TEXT cannot write it in cm²/], ['=TEXT(A1,"??")', /does not know the pattern “\?\?”/], ['=VALUE("")', /VALUE got an empty text/], ['=VALUE("1,234")', /two ways/],
    ['=NUMBERVALUE("28 cm")', /use VALUE for it/], ['=NUMBERVALUE(A1)', /reads texts of digits, so it does not take a length/], ['=NUMBERVALUE("1.234",",")', /name the mark between groups too/], ['=NUMBERVALUE("1,234.5")', /name the marks that it is written with/],
  ])('%s is refused', says);
});
