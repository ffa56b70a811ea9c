import { ARITHMETIC, GEOMETRY } from './check.ts';
import type { Check } from './check.ts';

const RADIUS = '=CIRCLE.RADIUS(A#, B#)';
const CUT = '=CIRCLE.RADIUS(A#, B#, C#)';
const OUTER = '=CIRCLE.OUTER(CIRCLE.RADIUS(A#, B#), C#, D#, B#)';
const SWEEP = '=CIRCLE.SWEEP(CIRCLE.RADIUS(A#, B#), C#, B#)';

const row = (about: string, cells: readonly string[], formula: string, expected: number, tolerance: number): Check => ({ about, cells, formula, expected, unit: 'cm', tolerance, source: GEOMETRY });

export const CIRCLE_SKIRT: readonly Check[] = [
  row('full circle, waist 72', ['72 cm', '1'], RADIUS, 11.4591559, 0.005),
  row('full circle, waist 72, seam allowance 1.5', ['72 cm', '1', '1.5 cm'], CUT, 9.959155903, 0.005),
  row('full circle, waist 72, finished length 60, hem 2: outer cutting radius', ['72 cm', '1', '60 cm', '2 cm'], OUTER, 73.4591559, 0.005),
  row('three-quarter circle, waist 72, seam allowance 1.5', ['72 cm', '3/4', '1.5 cm'], CUT, 13.77887454, 0.005),
  row('three-quarter circle, waist 72, finished length 60, hem 2: outer cutting radius', ['72 cm', '3/4', '60 cm', '2 cm'], OUTER, 77.27887454, 0.005),
  row('half circle, waist 72', ['72 cm', '1/2'], RADIUS, 22.91831181, 0.005),
  row('half circle, waist 72, finished length 60, hem 2: outer cutting radius', ['72 cm', '1/2', '60 cm', '2 cm'], OUTER, 84.91831181, 0.005),
  row('quarter circle, waist 72', ['72 cm', '1/4'], RADIUS, 45.83662361, 0.005),
  row('quarter circle, waist 72, seam allowance 1.5', ['72 cm', '1/4', '1.5 cm'], CUT, 44.33662361, 0.005),
  row('full circle, seam allowance wrongly added instead of taken off: error round the cut edge', ['72 cm', '1', '1.5 cm', '0 cm'], '=CIRCLE.SWEEP(CIRCLE.RADIUS(A#, B#) + C#, D#, B#) - CIRCLE.SWEEP(CIRCLE.RADIUS(A#, B#, C#), D#, B#)', 18.84955592, 0.01),
  row('full circle in one piece on cloth 150 wide, waist 72, hem 2: greatest finished length', ['72 cm', '1', '150 cm', '2 cm'], '=CIRCLE.LONGEST(CIRCLE.RADIUS(A#, B#), B#, C#, D#)', 61.5408441, 0.005),
  row('half circle, waist 72, two side seams of 1.5: stitching radius that leaves 72 after them', ['72 cm', '1/2', '1.5 cm', '2'], '=CIRCLE.RADIUS(A# + SEAM.GAIN(C#, D#), B#)', 24.82817112, 0.005),
];

export const HEM_SWEEP: readonly Check[] = [
  row('full circle, waist 72, finished length 60', ['72 cm', '1', '60 cm'], SWEEP, 448.9911184, 0.01),
  row('three-quarter circle, waist 72, finished length 60', ['72 cm', '3/4', '60 cm'], SWEEP, 354.7433388, 0.01),
  row('half circle, waist 72, finished length 60', ['72 cm', '1/2', '60 cm'], SWEEP, 260.4955592, 0.01),
];

export const HEM: readonly Check[] = [
  row('full circle, turn up 5: fullness to ease', ['5 cm', '1'], '=HEM.FULLNESS(A#, B#)', 31.41592654, 0.01),
  row('half circle, turn up 2: fullness to ease', ['2 cm', '1/2'], '=HEM.FULLNESS(A#, B#)', 6.283185307, 0.01),
  { about: 'finished length 58.5, waist seam 1.5, hem 4 turned with 1 under: cut length', cells: ['58.5 cm', '1.5 cm', '4 cm', '1 cm'], formula: '=HEM.CUT(A#, B#, C#, D#)', expected: 65, unit: 'cm', tolerance: 0, source: ARITHMETIC },
];
