import { ARITHMETIC, GEOMETRY } from './check.ts';
import type { Check } from './check.ts';

export const EASE: readonly Check[] = [
  { about: 'body bust 36 1/4, garment 39', cells: ['39 in', '36 1/4 in'], formula: '=EASE(A#, B#)', expected: 2.75, unit: 'in', tolerance: 0, source: ARITHMETIC },
];

const TEXTBOOK = 'costume textbook, ch. 16 Ease in Clothing, Central Washington University, read at cwu.edu';
const ARTICLE = 'encyclopaedia article Ease (sewing), read';
const USUAL = '=EASE.USUAL(usual ease, A#, B#, C#)';

/** Through the table of usual values that ships. */
export const EASE_USUAL: readonly Check[] = [
  { about: 'bodice at bust: wearing ease', cells: ['bodice', 'bust', 'fitted'], formula: USUAL, expected: [1.5, 2], unit: 'in', tolerance: 0, source: TEXTBOOK },
  { about: 'dress at waist: wearing ease', cells: ['dress', 'waist', 'fitted'], formula: USUAL, expected: [0.75, 1], unit: 'in', tolerance: 0, source: TEXTBOOK },
  { about: 'skirt at waist: wearing ease', cells: ['skirt', 'waist', 'fitted'], formula: USUAL, expected: [0.5, 0.75], unit: 'in', tolerance: 0, source: TEXTBOOK },
  { about: 'trousers at waist: wearing ease', cells: ['trousers', 'waist', 'fitted'], formula: USUAL, expected: [0.5, 0.75], unit: 'in', tolerance: 0, source: TEXTBOOK },
  { about: 'fitted shirt at chest: wearing ease', cells: ['shirt', 'chest', 'fitted'], formula: USUAL, expected: [1.5, 2.5], unit: 'in', tolerance: 0, source: TEXTBOOK },
  { about: 'trousers at thigh: least wearing ease', cells: ['trousers', 'thigh', 'fitted'], formula: USUAL, expected: 1, unit: 'in', tolerance: 0, source: TEXTBOOK },
  { about: 'bust: wearing ease', cells: ['dress', 'bust', 'average'], formula: USUAL, expected: 2.5, unit: 'in', tolerance: 0, source: ARTICLE },
  { about: 'waist: wearing ease', cells: ['dress', 'waist', 'average'], formula: USUAL, expected: 1, unit: 'in', tolerance: 0, source: ARTICLE },
  { about: 'hip: wearing ease', cells: ['dress', 'hip', 'average'], formula: USUAL, expected: 3, unit: 'in', tolerance: 0, source: ARTICLE },
];

export const EASE_FROM_MEMORY: readonly Check[] = [
  { about: 'close-fitting bodice block, whole bust: half bust + 5', cells: ['bodice block', 'bust', 'close'], formula: USUAL, expected: 10, unit: 'cm', tolerance: 0, source: 'a metric pattern cutting textbook, from memory' },
  { about: 'tailored skirt block, whole hip: half hip + 1.5', cells: ['skirt block', 'hip', 'tailored'], formula: USUAL, expected: 3, unit: 'cm', tolerance: 0, source: 'a metric pattern cutting textbook, from memory' },
];

export const STRETCH: readonly Check[] = [
  { about: '10 stretches to 15', cells: ['10 cm', '15 cm'], formula: '=STRETCH.PERCENT(A#, B#)', expected: 50, unit: '%', tolerance: 0, source: 'common definition' },
  { about: 'garment 90 on hip 100: stretch in wear', cells: ['90 cm', '100 cm'], formula: '=STRETCH.WORN(A#, B#)', expected: 11.11111111, unit: '%', tolerance: 1e-6, source: GEOMETRY },
];

export const ELASTIC: readonly Check[] = [
  { about: 'waist 72, elastic 67, must pass hip 100: stretch needed', cells: ['67 cm', '100 cm'], formula: '=ELASTIC.STRETCH(A#, B#)', expected: 49.25373134, unit: '%', tolerance: 1e-4, source: GEOMETRY },
];

export const DARTS: readonly Check[] = [
  { about: 'hip 100 + 4, waist 70 + 2: whole intake', cells: ['100 cm', '4 cm', '70 cm', '2 cm'], formula: '=DART.INTAKE(A# + B#, C# + D#)', expected: 32, unit: 'cm', tolerance: 0, source: GEOMETRY },
  { about: 'intake 2, length 9: angle', cells: ['2 cm', '9 cm'], formula: '=DART.ANGLE(A#, B#)', expected: 12.68038349, unit: 'deg', tolerance: 1e-4, source: GEOMETRY },
  { about: 'intake 2, length 9: leg', cells: ['2 cm', '9 cm'], formula: '=DART.LEG(A#, B#)', expected: 9.055385138, unit: 'cm', tolerance: 1e-6, source: GEOMETRY },
  { about: 'shoulder dart 1.5 with legs of 8 moved to legs of 16', cells: ['1.5 cm', '8 cm', '16 cm'], formula: '=DART.MOVED(A#, B#, C#)', expected: 3, unit: 'cm', tolerance: 0, source: GEOMETRY },
];

export const SLEEVE: readonly Check[] = [
  { about: 'cap 45, armhole 42: ease', cells: ['45 cm', '42 cm'], formula: '=CAP.EASE(A#, B#)', expected: 3, unit: 'cm', tolerance: 0, source: GEOMETRY },
  { about: 'cap 45, armhole 42: share', cells: ['45 cm', '42 cm'], formula: '=CAP.SHARE(A#, B#)', expected: 7.142857143, unit: '%', tolerance: 1e-6, source: GEOMETRY },
];

export const SLEEVE_FROM_MEMORY: readonly Check[] = [
  { about: 'set-in sleeve cap ease, usual', cells: ['sleeve cap', 'armhole', 'set-in'], formula: USUAL, expected: [1, 1.5], unit: 'in', tolerance: 0, source: 'patternmaking textbooks, from memory' },
];

export const SAFETY: readonly Check[] = [
  { about: 'waist or bottom drawstring, children 2T-16, garment at fullest width: greatest free length 3 in', cells: ['70 cm'], formula: '=(CORD.LONGEST(A#) - A#) / 2', expected: 76.2, unit: 'mm', tolerance: 0, source: '16 CFR 1120; ASTM F1816, read at cpsc.gov; conversion exact' },
  { about: 'the same of a cord 6 in longer than its channel', cells: ['26 in', '20 in'], formula: '=CORD.FREE(A#, B#)', expected: 3, unit: 'in', tolerance: 0, source: 'the same' },
];
