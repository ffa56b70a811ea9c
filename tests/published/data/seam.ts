import { GEOMETRY, PRACTICE } from './check.ts';
import type { Check } from './check.ts';

export const SEAM: readonly Check[] = [
  { about: 'let out 1/4 in on each edge of 2 side seams', cells: ['1/4 in', '2'], formula: '=SEAM.GAIN(A#, B#)', expected: 1, unit: 'in', tolerance: 0, source: GEOMETRY },
  { about: 'gain 2 over 4 seams: each edge', cells: ['2 cm', '4'], formula: '=SEAM.SHIFT(A#, B#)', expected: 0.25, unit: 'cm', tolerance: 0, source: GEOMETRY },
  { about: 'seam allowance 1.5, keep 0.6, 2 seams: greatest let-out', cells: ['1.5 cm', '2', '0.6 cm'], formula: '=SEAM.ROOM(A#, B#, C#)', expected: 3.6, unit: 'cm', tolerance: 1e-9, source: GEOMETRY },
  { about: 'pattern cut on the fold, two sizes with hips 97 and 102: gap between nested side-seam lines', cells: ['1', '2', '2'], formula: '=BLEND.GAP(nested, "hip", A#, B#, C#)', expected: 1.25, unit: 'cm', tolerance: 0, source: GEOMETRY },
  { about: 'a seam taken in by 3/8 in: off the girth', cells: ['3/8 in', '1'], formula: '=SEAM.GAIN(A#, B#)', expected: 0.75, unit: 'in', tolerance: 0, source: PRACTICE },
  { about: 'a seam of 1/2 in allowance taken in by 3/8 in: what stands', cells: ['1/2 in', '3/8 in'], formula: '=SEAM.LEFT(A#, -B#)', expected: 0.875, unit: 'in', tolerance: 0, source: PRACTICE },
  { about: 'the same by its own function', cells: ['1/2 in', '3/8 in'], formula: '=SEAM.TAKEN(A#, B#)', expected: 0.875, unit: 'in', tolerance: 0, shown: { text: '7/8 in', inchStep: 8 }, source: PRACTICE },
];

export const NESTED = [['size', 'hip'], ['1', '97 cm'], ['2', '102 cm']] as const;
