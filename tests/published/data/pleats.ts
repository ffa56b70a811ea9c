import { GEOMETRY, PRACTICE } from './check.ts';
import type { Check } from './check.ts';

const EXERCISE = 'CITS Dress Making, Trade Practical, exercise 48, pp. 203-204; National Instructional Media Institute, Government of India';
const COURSE = 'A Complete Course in Dressmaking, vol. 5 Skirts (Conover), pp. 63-69; public domain, read at Wikisource';

export const PLEATS: readonly Check[] = [
  { about: 'knife; section 92, pleat width 5 wanted: number', cells: ['92 cm', '5 cm'], formula: '=PLEAT.COUNT(A#, B#)', expected: 18, unit: '', tolerance: 0, source: EXERCISE },
  { about: '92 over 18 pleats: corrected pleat width (printed 5.1)', cells: ['92 cm', '18'], formula: '=PLEAT.SPACING(A#, B#)', expected: 5.111111111, unit: 'cm', tolerance: 1e-8, source: EXERCISE },
  { about: 'depth 4, 18 pleats, section 92: cloth', cells: ['92 cm', '18', '4 cm', 'knife'], formula: '=PLEAT.CLOTH(A#, B#, C#, D#)', expected: 236, unit: 'cm', tolerance: 0, source: EXERCISE, obtained: 'the exercise carries 2.34 m on, against its own result of 2.36 m; the result is what its rule gives' },
  { about: 'pleat length 15, 3 strips: cloth to buy', cells: ['15 cm', '3'], formula: '=CLOTH.BUY(A# * B#)', expected: 45, unit: 'cm', tolerance: 0, source: EXERCISE },
  { about: 'knife, normal; section 50, pleat width 2.5: number', cells: ['50 cm', '2.5 cm'], formula: '=PLEAT.COUNT(A#, B#)', expected: 20, unit: '', tolerance: 0, source: EXERCISE },
  { about: 'knife, normal; section 50, pleat width 2.5, seam allowances 2 in all: cloth = 3 × 50 + 2', cells: ['50 cm', '20', '2.5 cm', '1 cm', 'knife'], formula: '=PLEAT.CLOTH(A#, B#, C#, E#, D#)', expected: 152, unit: 'cm', tolerance: 0, source: EXERCISE },
  { about: 'one inverted pleat, depth 6.5, finished 66: cloth', cells: ['66 cm', '1', '6.5 cm', 'inverted'], formula: '=PLEAT.CLOTH(A#, B#, C#, D#)', expected: 92, unit: 'cm', tolerance: 0, source: EXERCISE, obtained: 'the question is printed there; the value follows from its general rule' },
  { about: 'half width 44, waist 28: to pleat at the waist', cells: ['44 in', '28 in', '1'], formula: '=2 * PLEAT.DEPTH(A#, B# / 2, C#)', expected: 30, unit: 'in', tolerance: 0, source: COURSE },
  { about: 'half width 44, hip 40: to pleat at the hip', cells: ['44 in', '40 in', '1'], formula: '=2 * PLEAT.DEPTH(A#, B# / 2, C#)', expected: 24, unit: 'in', tolerance: 0, source: COURSE },
  { about: '8 pleats, the first takes up 2 1/8, all at the waist 30: each of the rest (printed a little more than 3 7/8)', cells: ['30 in', '2 1/8 in', '8'], formula: '=PLEAT.REST(A#, B#, C#)', expected: 3.982142857, unit: 'in', tolerance: 1e-8, source: COURSE },
  { about: '8 pleats, the first takes up 2 1/8, all at the hip 24: each of the rest', cells: ['24 in', '2 1/8 in', '8'], formula: '=PLEAT.REST(A#, B#, C#)', expected: 3.125, unit: 'in', tolerance: 0, source: COURSE },
  { about: 'full knife pleats round hip 100, 20 pleats, visible 5, underlay 10: cloth', cells: ['100 cm', '20', 'knife'], formula: '=PLEAT.CLOTH(A#, B#, PLEAT.SPACING(A#, B#), C#)', expected: 300, unit: 'cm', tolerance: 0, source: GEOMETRY },
  { about: 'the same: underlay', cells: ['300 cm', '100 cm', '20', 'knife'], formula: '=PLEAT.UNDERLAY(PLEAT.DEPTH(A#, B#, C#, D#), D#)', expected: 10, unit: 'cm', tolerance: 0, source: GEOMETRY },
  { about: 'the same at waist 76: visible = 5 − 1.2', cells: ['100 cm', '76 cm', '20', 'knife'], formula: '=PLEAT.SPACING(A#, C#) - 2 * PLEAT.DEEPEN(A#, B#, C#, D#)', expected: 3.8, unit: 'cm', tolerance: 0, source: GEOMETRY },
  { about: 'edge-to-edge box pleats over 60: cloth', cells: ['60 cm', '6', 'box'], formula: '=PLEAT.CLOTH(A#, B#, PLEAT.SPACING(A#, B#) / 2, C#)', expected: 180, unit: 'cm', tolerance: 0, source: GEOMETRY },
  { about: 'double box pleats over 60, a second pair of folds under each: cloth', cells: ['60 cm', '6', 'box'], formula: '=PLEAT.CLOTH(A#, 2 * B#, PLEAT.SPACING(A#, B#) / 2, C#)', expected: 300, unit: 'cm', tolerance: 0, source: 'ratio 5:1 stated in an article on box folds, x-playn.com/whats-a-box-fold; otherwise exact geometry' },
  { about: 'two box pleats on each side of a back: four in all', cells: ['2', '2'], formula: '=A# * B#', expected: 4, unit: '', tolerance: 0, source: PRACTICE },
  { about: 'cloth for such a back 40 wide with pleats 3 deep, as much as for its two halves', cells: ['40 cm', '2', '3 cm', 'box'], formula: '=PLEAT.CLOTH(A#, 2 * B#, C#, D#) - 2 * PLEAT.CLOTH(A# / 2, B#, C#, D#)', expected: 0, unit: 'cm', tolerance: 0, source: PRACTICE },
];
