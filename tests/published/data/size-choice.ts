import { GEOMETRY } from './check.ts';
import type { Check } from './check.ts';

const ASTM = 'ASTM D5585-11e1, Standard Tables of Body Measurements for Adult Female Misses Figure Type, Size Range 00-20, ASTM International, 2011, Table 1';
const JIS = 'JIS L 4005, Sizing systems for women’s garments, read at fashionquest.nutte.jp/index.php/2016/08/14/understandyoursize';

/**
 * Three rows of that table, inch-pound units, read from the publisher's public
 * catalogue page astm.org/Standards/D5585.htm. There is no hip row on it.
 */
export const MISSES = [
  ['measurement', "'00", '0', '2', '4', '6', '8', '10', '12', '14', '16', '18', '20'],
  ['bust_girth', '31 1/8 in', '31 3/4 in', '33 in', '34 1/8 in', '35 1/4 in', '36 1/4 in', '37 1/4 in', '38 3/4 in', '40 3/8 in', '42 1/8 in', '44 in', '46 in'],
  ['waist_girth_curvy', '23 7/8 in', '24 5/8 in', '25 3/8 in', '26 1/8 in', '27 in', '28 in', '29 in', '30 3/4 in', '32 1/2 in', '34 1/2 in', '36 3/4 in', '39 in'],
  ['waist_girth_straight', '25 3/8 in', '26 1/8 in', '26 7/8 in', '27 5/8 in', '28 1/2 in', '29 1/2 in', '30 1/2 in', '32 1/4 in', '34 in', '36 in', '38 1/4 in', '40 1/2 in'],
] as const;

/** Bust steps 3 cm up to 92 and 4 cm after; hip steps 2 cm, Y 4 cm less than A, AB 4 more, B 8 more. */
export const JIS_BUST = [
  ['code', '3', '5', '7', '9', '11', '13', '15', '17', '19', '21'],
  ['bust', '74 cm', '77 cm', '80 cm', '83 cm', '86 cm', '89 cm', '92 cm', '96 cm', '100 cm', '104 cm'],
] as const;
export const JIS_HIP_OF_9 = [['type', 'Y', 'A', 'AB', 'B'], ['hip', '87 cm', '91 cm', '95 cm', '99 cm']] as const;
export const JIS_STATURE = [['code', 'PP', 'P', 'R', 'T'], ['stature', '142 cm', '150 cm', '158 cm', '166 cm']] as const;

const CODE = '=SIZE.AT(jisBust, "bust", A#) & SIZE.AT(jisHip, "hip", B#) & SIZE.AT(jisStature, "stature", C#)';

export const SIZE_CHOICE: readonly Check[] = [
  { about: 'bust 37 in: nearest size (36 1/4 is 8, 37 1/4 is 10)', cells: ['37 in'], formula: '=SIZE.AT(misses, "bust", A#)', expected: 10, unit: '', tolerance: 0, source: ASTM },
  { about: 'bust 37 in: largest size not above', cells: ['37 in', 'not over'], formula: '=SIZE.AT(misses, "bust girth", A#, B#)', expected: 8, unit: '', tolerance: 0, source: ASTM },
  { about: 'straight waist 31 in: position between 10 (30 1/2) and 12 (32 1/4)', cells: ['31 in'], formula: '=SIZE.BETWEEN(misses, "straight waist", A#)', expected: 10.57142857, unit: '', tolerance: 1e-6, source: ASTM },
  { about: 'bust 39 9/16 in, half-way between 12 and 14, to the nearest 1/8: a tie, the greater taken', cells: ['38 3/4 in', '40 3/8 in', '1/8 in'], formula: '=STEP.NEAR((A# + B#) / 2, C#)', expected: 39.625, unit: 'in', tolerance: 0, source: `${ASTM}; OASIS OpenFormula 1.4, section 6.17.4` },
  { about: 'bust 83, hip 87, stature 158: 9, hip 4 below type A, regular', cells: ['83 cm', '87 cm', '158 cm'], formula: CODE, expected: '9YR', unit: '', tolerance: 0, source: JIS },
  { about: 'bust 83, hip 87, stature 166: 9, hip 4 below type A, tall', cells: ['83 cm', '87 cm', '166 cm'], formula: CODE, expected: '9YT', unit: '', tolerance: 0, source: JIS },
];

export const SIZE_BLEND: readonly Check[] = [
  { about: 'bust line 20 above the waist in size 10, hip line 20 below it in size 14, half-widths 22 and 26: straight blend at the waist', cells: ['22 cm', '26 cm', '40 cm', '20 cm'], formula: '=BLEND.WIDTH(A#, B#, C#, D#)', expected: 24, unit: 'cm', tolerance: 0, source: GEOMETRY },
  { about: 'blend from 22 at 0 to 26 at 40, point at 15', cells: ['22 cm', '26 cm', '40 cm', '15 cm'], formula: '=BLEND.WIDTH(A#, B#, C#, D#)', expected: 23.5, unit: 'cm', tolerance: 0, source: GEOMETRY },
];
