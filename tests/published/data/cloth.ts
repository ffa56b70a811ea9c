import { ARITHMETIC, GEOMETRY, PRACTICE } from './check.ts';
import type { Check } from './check.ts';

const WIDTHS = 'fabric width conversion chart, widely reprinted, read at greenspun.com and checked against a second copy';
const ISO = 'ISO 5077:2007, Textiles, Determination of dimensional change in washing and drying';
const GORED = 'The Perfect Dressmaking System (1914, public domain), p. 13 of scan';

export const CLOTH: readonly Check[] = [
  { about: '1 3/4 yd of 35-36 in cloth, of 44-45 in, to the chart’s 1/8 yd (by area 1.4)', cells: ['1 3/4 yd', '36 in', '45 in', '1/8 yd'], formula: '=STEP.NEAR(CLOTH.OTHER(A#, B#, C#), D#)', expected: 1.375, unit: 'yd', tolerance: 0, source: WIDTHS },
  { about: '2 7/8 yd of 35-36 in cloth, of 44-45 in, to the chart’s 1/8 yd (by area 2.3)', cells: ['2 7/8 yd', '36 in', '45 in', '1/8 yd'], formula: '=STEP.NEAR(CLOTH.OTHER(A#, B#, C#), D#)', expected: 2.25, unit: 'yd', tolerance: 0, source: WIDTHS },
  { about: '2 7/8 yd of 35-36 in cloth, of 58-60 in, to the chart’s 1/8 yd (by area 1.725)', cells: ['2 7/8 yd', '36 in', '60 in', '1/8 yd'], formula: '=STEP.NEAR(CLOTH.OTHER(A#, B#, C#), D#)', expected: 1.75, unit: 'yd', tolerance: 0, source: WIDTHS },
  { about: '2.31 yd, rounded up to 1/8 yd', cells: ['2.31 yd', '0 %', '1/8 yd'], formula: '=CLOTH.BUY(A#, B#, C#)', expected: 2.375, unit: 'yd', tolerance: 0, source: ARITHMETIC },
  { about: '2.11 m, rounded up to 10 cm', cells: ['2.11 m', '0 %', '10 cm'], formula: '=CLOTH.BUY(A#, B#, C#)', expected: 2.2, unit: 'm', tolerance: 0, source: ARITHMETIC },
  { about: 'lengths of 65 with a repeat of 24 to match', cells: ['65 cm', '24 cm'], formula: '=CLOTH.REPEAT(A#, B#)', expected: 72, unit: 'cm', tolerance: 0, source: ARITHMETIC },
  { about: '220 cm of lockstitch seam, 2.5 of thread for each', cells: ['220 cm', '2.5', '0 %'], formula: '=THREAD.LENGTH(A#, B#, C#)', expected: 550, unit: 'cm', tolerance: 0, source: 'question page on thread, melgeecrafts.com/needlework' },
  { about: '1 m of two-thread chain stitch: 1.3 + 4.1 of thread for each', cells: ['100 cm', '19.5', '62', '15', '0 %'], formula: '=THREAD.LENGTH(A#, (B# + C#) / D#, E#)', expected: 540, unit: 'cm', tolerance: 3.4, source: 'article on measuring thread, apparelscience.com', obtained: 'read; it rounds 62 ÷ 15 to 4.1 before it adds' },
  { about: 'the same with 15 % of waste', cells: ['100 cm', '5.4', '15 %'], formula: '=THREAD.LENGTH(A#, B#, C#)', expected: 621, unit: 'cm', tolerance: 0, source: 'the same' },
];

export const SHRINKAGE: readonly Check[] = [
  { about: '50 cm mark becomes 48.5', cells: ['50 cm', '48.5 cm'], formula: '=SHRINK.PERCENT(A#, B#)', expected: -3, unit: '%', tolerance: 1e-9, source: ISO },
  { about: 'need 2.5 m after 3 % shrinkage: buy', cells: ['2.5 m', '3 %'], formula: '=CLOTH.BUY(A#, B#)', expected: 2.577319588, unit: 'm', tolerance: 1e-6, source: ISO },
  { about: 'need 2.5 m after 3 % shrinkage, rounded up to 10 cm', cells: ['2.5 m', '3 %', '10 cm'], formula: '=CLOTH.BUY(A#, B#, C#)', expected: 2.6, unit: 'm', tolerance: 0, source: ARITHMETIC },
  { about: 'the same by the list to buy, with nothing at home', cells: ['2.5 m', '0 m', '3 %'], formula: '=BUY.LENGTH(A#, B#, C#)', expected: 2.577319588, unit: 'm', tolerance: 1e-6, source: ISO },
];

export const GATHERS: readonly Check[] = [
  { about: 'finished 70, ratio 1.5:1', cells: ['70 cm', '1.5'], formula: '=GATHER.CLOTH(A#, B#)', expected: 105, unit: 'cm', tolerance: 0, source: GEOMETRY },
  { about: 'finished 70, ratio 2:1', cells: ['70 cm', '2'], formula: '=GATHER.CLOTH(A#, B#)', expected: 140, unit: 'cm', tolerance: 0, source: GEOMETRY },
  { about: 'finished 70, ratio 3:1', cells: ['70 cm', '3'], formula: '=GATHER.CLOTH(A#, B#)', expected: 210, unit: 'cm', tolerance: 0, source: GEOMETRY },
  { about: 'finished 72, ratio 2:1, cloth 110 wide, seams of 1.5: widths', cells: ['72 cm', '2', '110 cm', '1.5 cm'], formula: '=CLOTH.WIDTHS(GATHER.CLOTH(A#, B#), C#, D#)', expected: 2, unit: '', tolerance: 0, source: GEOMETRY },
];

export const GORES: readonly Check[] = [
  { about: 'waist 25, 5 gores', cells: ['25 in', '5'], formula: '=GORE.WIDTH(A#, B#)', expected: 5, unit: 'in', tolerance: 0, source: GORED },
  { about: 'hip 40, 5 gores', cells: ['40 in', '5'], formula: '=GORE.WIDTH(A#, B#)', expected: 8, unit: 'in', tolerance: 0, source: GORED },
  { about: 'sweep 2 1/4 yd, front gore 10, four others', cells: ['2 1/4 yd', '10 in', '4'], formula: '=GORE.WIDTH(A# - B#, C#)', expected: 17.75, unit: 'in', tolerance: 0, source: GORED, obtained: 'the book prints 17 1/2; its own numbers give 17 3/4' },
];

export const GODETS: readonly Check[] = [
  { about: 'godet 30 long, quarter circle: hem arc', cells: ['30 cm', '1/4'], formula: '=GODET.ARC(A#, B#)', expected: 47.1238898, unit: 'cm', tolerance: 0.01, source: GEOMETRY },
  { about: 'godet 30 long, hem arc 20: angle', cells: ['20 cm', '30 cm'], formula: '=GODET.ANGLE(A#, B#)', expected: 38.19718634, unit: 'deg', tolerance: 1e-4, source: GEOMETRY },
];

export const BIAS: readonly Check[] = [
  { about: '12 in square, 2 in strip', cells: ['12 in', '2 in'], formula: '=BIAS.LENGTH(A#, B#)', expected: 72, unit: 'in', tolerance: 0, source: 'bias tape question and answer, sewaquilt.com/bias-tape.html' },
  { about: '20 in square, 2 in strip', cells: ['20 in', '2 in'], formula: '=BIAS.LENGTH(A#, B#)', expected: 200, unit: 'in', tolerance: 0, source: 'soft furnishing forum, continuous binding, mydecozo.co.uk' },
  { about: '36 in square, 2 in strip', cells: ['36 in', '2 in'], formula: '=BIAS.LENGTH(A#, B#)', expected: 648, unit: 'in', tolerance: 0, source: 'bias formula article, sew-whats-new.com (36 × 36 = 1296 printed)' },
  { about: '100 in of 3 1/2 in strip: side, rounded up to the inch', cells: ['100 in', '3 1/2 in', '1 in'], formula: '=STEP.UP(BIAS.SQUARE(A#, B#), C#)', expected: 19, unit: 'in', tolerance: 0, source: 'quilters’ question page, quiltersquestiontime.com' },
  { about: '10 1/2 in square, 1 in strip, two seams of 1/4 in (1/2 in lost), continuous method: a worked drawing yields 96 1/2', cells: ['10 1/2 in', '1 in', '1/4 in'], formula: '=BIAS.CONTINUOUS(A#, B#, C#)', expected: 96.5, unit: 'in', tolerance: 0.5, source: 'article on why the area rule overstates, kestrelmichaud.com/blog/2020', obtained: 'read; the method’s geometry is worked out here and gives 96.52' },
  { about: 'the same: what the area rule promises for the 1/2 in lost', cells: ['10 1/2 in', '1 in', '1/2 in'], formula: '=BIAS.LENGTH(A# - C#, B#)', expected: 100, unit: 'in', tolerance: 0, source: 'the same' },
  { about: 'longest strip from a square of side 36: its diagonal', cells: ['36 in'], formula: '=BIAS.STEP(A#)', expected: 50.91168825, unit: 'in', tolerance: 1e-6, source: GEOMETRY },
];

export const BUTTONS: readonly Check[] = [
  { about: 'button 1 in across, 1/4 in thick: buttonhole', cells: ['1 in', '1/4 in'], formula: '=BUTTONHOLE(A#, B#)', expected: 1.25, unit: 'in', tolerance: 0, source: 'buttonhole article, 1999, sewing.about.com/library/weekly/aa060399.htm' },
  { about: 'the same, horizontal: starts 1/8 in beyond the centre line, the rest on the other side', cells: ['1 in', '1/4 in', '1/8 in'], formula: '=BUTTONHOLE(A#, B#) - C#', expected: 1.125, unit: 'in', tolerance: 0, source: 'the same' },
  { about: '7 buttons, first to last 10 in: gap', cells: ['0 in', '10 in', '7'], formula: '=BUTTON.GAP(A#, B#, C#)', expected: 1.666666667, unit: 'in', tolerance: 1e-6, source: GEOMETRY },
  { about: 'top at 2, one at bust 20, last at 62: largest even gap that meets all three', cells: ['2 cm', '20 cm', '62 cm', '6 cm', '0 cm'], formula: '=BUTTON.EVEN(D#, E#, A#, B#, C#)', expected: 6, unit: 'cm', tolerance: 0, source: GEOMETRY },
  { about: 'the same: that no larger gap meets all three', cells: ['2 cm', '20 cm', '62 cm', '9 cm', '0 cm'], formula: '=BUTTON.EVEN(D#, E#, A#, B#, C#)', expected: 6, unit: 'cm', tolerance: 0, source: GEOMETRY },
  { about: 'the same: number', cells: ['2 cm', '62 cm', '6 cm'], formula: '=BUTTON.COUNT(A#, B#, C#)', expected: 11, unit: '', tolerance: 0, source: GEOMETRY },
  { about: 'ball button 12 mm: buttonhole', cells: ['12 mm'], formula: '=BUTTONHOLE.BALL(A#)', expected: 18.84955592, unit: 'mm', tolerance: 0.01, source: 'article on buttons, jenaelawson.com/sewing/buttons-and-buttonholes; exact geometry' },
  { about: '13 buttons from 0 to 66: gap', cells: ['0 cm', '66 cm', '13'], formula: '=BUTTON.GAP(A#, B#, C#)', expected: 5.5, unit: 'cm', tolerance: 0, shown: { text: '2 1/8 in', inchStep: 8, system: 'in' }, source: PRACTICE },
  { about: '13 buttons 5.5 apart: from the first to the last', cells: ['13', '5.5 cm'], formula: '=(A# - 1) * B#', expected: 66, unit: 'cm', tolerance: 0, source: PRACTICE },
  { about: 'people call that gap 2 1/4 in, which is to the quarter', cells: ['0 cm', '66 cm', '13', '1/4 in'], formula: '=STEP.NEAR(BUTTON.GAP(A#, B#, C#), D#)', expected: 2.25, unit: 'in', tolerance: 0, source: PRACTICE },
];
