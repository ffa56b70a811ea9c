import { ARITHMETIC, PRACTICE } from './check.ts';
import type { Check } from './check.ts';

const OPEN_FORMULA = 'OASIS OpenDocument 1.4 part 4 (OpenFormula), s.';

/** A figure in inches rounded to a part of an inch, and what a cell shows of the unrounded one. */
const near = (typed: string, part: 8 | 16, expected: number, text: string): readonly Check[] => [
  { about: `${typed} to the nearest 1/${part}`, cells: [typed, `1/${part} in`], formula: '=STEP.NEAR(A#, B#)', expected, unit: 'in', tolerance: 0, shown: { text, inchStep: part }, source: ARITHMETIC },
  { about: `${typed} shown to 1/${part}`, cells: [typed], formula: '=A# + 0 in', expected: Number(typed.split(' ')[0]), unit: 'in', tolerance: 0, shown: { text, inchStep: part }, source: ARITHMETIC },
];

export const FRACTIONS: readonly Check[] = [
  ...near('23.4 in', 8, 23.375, '23 3/8 in'),
  ...near('37.19 in', 16, 37.1875, '37 3/16 in'),
  ...near('9.8425 in', 8, 9.875, '9 7/8 in'),
  ...near('15.97 in', 8, 16, '16 in'),
  ...near('11.99 in', 16, 12, '12 in'),
  ...near('0.3 in', 16, 0.3125, '5/16 in'),
  { about: '25 cm to the nearest 1/16 in', cells: ['25 cm', '1/16 in'], formula: '=STEP.NEAR(A#, B#)', expected: 9.8125, unit: 'in', tolerance: 0, source: ARITHMETIC },
  { about: '50 cm in inches', cells: ['50 cm'], formula: '=SHOWN.IN(A#, "in")', expected: 500 / 25.4, unit: 'in', tolerance: 0, shown: { text: '19 11/16 in', inchStep: 16 }, source: PRACTICE },
  { about: '23 5/8 + 1 3/16 + 7/8', cells: ['23 5/8 in', '1 3/16 in', '7/8 in'], formula: '=A# + B# + C#', expected: 25.6875, unit: 'in', tolerance: 0, shown: { text: '25 11/16 in', inchStep: 16 }, source: ARITHMETIC },
  { about: '37 1/2 ÷ 4', cells: ['37 1/2 in', '4'], formula: '=A# / B#', expected: 9.375, unit: 'in', tolerance: 0, shown: { text: '9 3/8 in', inchStep: 8 }, source: ARITHMETIC },
  { about: 'tie: −2 1/16 to 1/8, MROUND rule: the greater', cells: ['-2 1/16 in', '1/8 in'], formula: '=STEP.NEAR(A#, B#)', expected: -2, unit: 'in', tolerance: 0, source: `${OPEN_FORMULA} 6.17.4` },
  { about: 'tie: the same by ROUND(−2.0625 × 8) ÷ 8, half away from zero', cells: ['-2.0625'], formula: '=ROUND(A# * 8, 0) / 8', expected: -2.125, unit: '', tolerance: 0, source: `${OPEN_FORMULA} 6.17.5` },
  { about: 'worst error of rounding to 1/16 in', cells: ['5 1/32 in', '1/16 in'], formula: '=ABS(STEP.NEAR(A#, B#) - A#)', expected: 0.79375, unit: 'mm', tolerance: 1e-9, source: ARITHMETIC },
];
