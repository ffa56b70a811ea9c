import type { Check } from './check.ts';

const TABLE_24 = 'OASIS OpenDocument 1.4 part 4 (OpenFormula), s. 6.16.18, table 24';
const INCH = 'definition of the inch (1 in = 25.4 mm)';
const INFANT = 'cpsc.gov, FAQ on tight-fitting infant garments, quoting 16 CFR 1615.1(c)';

const row = (about: string, typed: string, expected: number, unit: Check['unit'], source: string, tolerance = 0): Check => ({ about, cells: [typed], formula: '=A#', expected, unit, tolerance, source });

export const UNITS: readonly Check[] = [
  row('1 in', '1 in', 25.4, 'mm', TABLE_24),
  row('1 ft', '1 ft', 0.3048, 'm', TABLE_24),
  row('1 yd', '1 yd', 0.9144, 'm', TABLE_24),
  { about: '1 ell', cells: ['1'], formula: '=CONVERT(A#, "ell", "m")', expected: 1.143, unit: '', tolerance: 0, source: TABLE_24 },
  { about: '1 point', cells: ['1'], formula: '=CONVERT(A#, "Pica", "mm")', expected: 0.3527777778, unit: '', tolerance: 1e-9, source: TABLE_24 },
  row('5/8 in', '5/8 in', 15.875, 'mm', INCH),
  row('1/4 in', '1/4 in', 6.35, 'mm', INCH),
  row('3/8 in', '3/8 in', 9.525, 'mm', INCH),
  row('1 m', '1 m', 39.37007874, 'in', INCH, 1e-9),
  row('45 in wide cloth', '45 in', 114.3, 'cm', INCH),
  row('150 cm wide cloth', '150 cm', 59.05511811, 'in', INCH, 1e-9),
  { about: '2.6 oz per sq yd in g/m²', cells: ['2.6'], formula: '=A# * CONVERT(1, "ozm", "g") / CONVERT(1, "yd^2", "m^2")', expected: 88.15494343, unit: '', tolerance: 1e-6, source: 'definitions of the ounce and the yard' },
  { ...row('25.75 in, beside which the regulation prints 64.8 cm', '25 3/4 in', 65.405, 'cm', INFANT), obtained: 'the printed pair disagrees by 6 mm; the conversion is exact' },
  row('15.75 in, beside which it prints 40 cm', '15.75 in', 40.005, 'cm', INFANT),
];

export const UNITS_FROM_MEMORY: readonly Check[] = [
  { about: '24 ligne button', cells: ['24'], formula: '=BUTTON.LIGNE(A#)', expected: 15.24, unit: 'mm', tolerance: 0.01, source: 'button trade usage, from memory' },
];
