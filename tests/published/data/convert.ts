import type { Check } from './check.ts';

const STANDARD = 'OASIS OpenDocument 1.4 Part 4 (OpenFormula), OASIS Standard 2025-10-06, section 6.16.18 and table 24';

export const CONVERT: readonly Check[] = [
  { about: 'length', cells: ['1'], formula: '=CONVERT(A#, "in", "cm")', expected: 2.54, unit: '', tolerance: 0, source: STANDARD },
  { about: 'length', cells: ['1'], formula: '=CONVERT(A#, "yd", "m")', expected: 0.9144, unit: '', tolerance: 0, source: STANDARD },
  { about: 'area', cells: ['1'], formula: '=CONVERT(A#, "yd^2", "m^2")', expected: 0.83612736, unit: '', tolerance: 0, source: STANDARD },
  { about: '1 ell is 45 in', cells: ['1'], formula: '=CONVERT(A#, "ell", "m")', expected: 1.143, unit: '', tolerance: 0, source: STANDARD },
  { about: '1 Pica point is 1/72 in', cells: ['1'], formula: '=CONVERT(A#, "Pica", "mm")', expected: 0.3527777778, unit: '', tolerance: 1e-9, source: STANDARD },
  { about: '2.6 oz per square yard in g per square metre', cells: ['2.6', '1'], formula: '=CONVERT(A#, "ozm", "g") / CONVERT(B#, "yd^2", "m^2")', expected: 88.15494343, unit: '', tolerance: 1e-6, source: 'definitions of ounce and yard' },
];

/** Errors that the standard asks for. */
export const CONVERT_REFUSED = [
  { about: 'different unit groups', cells: ['1'], formula: '=CONVERT(A#, "in", "g")', sentence: /one is a length, the other a mass/, source: STANDARD },
  { about: 'units are case-sensitive', cells: ['1'], formula: '=CONVERT(A#, "IN", "cm")', sentence: /small and capital letters are told apart/, source: STANDARD },
] as const;
