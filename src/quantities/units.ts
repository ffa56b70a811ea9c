/**
 * The units this workbook knows, and what each one is worth.
 *
 * A quantity is kept as one number in the base unit of its dimension:
 * millimetres for length, square millimetres for area, degrees for angle, and
 * the bare number itself for counts and percents (3 % is kept as 0.03).
 *
 * Sources: 1 in = 25.4 mm, 1 ft = 12 in, 1 yd = 36 in exactly (OASIS OpenDocument
 * 1.4 part 4, OpenFormula, section 6.16.18, table 24).
 */

export type Dimension = 'number' | 'length' | 'area' | 'angle';

/**
 * Every unit by its code, in a fixed order: the place in this list is the byte
 * that travels from the worker, so new units go to the end.
 */
export const UNIT_CODES = [
  '', '%',
  'mm', 'cm', 'm', 'in', 'ft', 'yd',
  'mm2', 'cm2', 'm2', 'in2', 'ft2', 'yd2',
  'deg', 'rad',
] as const;

export type UnitCode = (typeof UNIT_CODES)[number];

export interface Unit {
  readonly code: UnitCode;
  readonly dimension: Dimension;
  /** How many base units one of these is. */
  readonly size: number;
  /** As it is written after a number on the screen, for example `cm²`. */
  readonly sign: string;
  /** In words, for sentences: "centimetres". */
  readonly words: string;
  readonly system: 'metric' | 'inch' | 'neither';
}

const unit = (
  code: UnitCode, dimension: Dimension, size: number, sign: string, words: string, system: Unit['system'],
): Unit => Object.freeze({ code, dimension, size, sign, words, system });

export const UNITS: Readonly<Record<UnitCode, Unit>> = Object.freeze({
  '': unit('', 'number', 1, '', 'without a unit', 'neither'),
  '%': unit('%', 'number', 0.01, '%', 'percent', 'neither'),
  mm: unit('mm', 'length', 1, 'mm', 'millimetres', 'metric'),
  cm: unit('cm', 'length', 10, 'cm', 'centimetres', 'metric'),
  m: unit('m', 'length', 1000, 'm', 'metres', 'metric'),
  in: unit('in', 'length', 25.4, 'in', 'inches', 'inch'),
  ft: unit('ft', 'length', 304.8, 'ft', 'feet', 'inch'),
  yd: unit('yd', 'length', 914.4, 'yd', 'yards', 'inch'),
  mm2: unit('mm2', 'area', 1, 'mm²', 'square millimetres', 'metric'),
  cm2: unit('cm2', 'area', 100, 'cm²', 'square centimetres', 'metric'),
  m2: unit('m2', 'area', 1_000_000, 'm²', 'square metres', 'metric'),
  in2: unit('in2', 'area', 645.16, 'in²', 'square inches', 'inch'),
  ft2: unit('ft2', 'area', 92_903.04, 'ft²', 'square feet', 'inch'),
  yd2: unit('yd2', 'area', 836_127.36, 'yd²', 'square yards', 'inch'),
  deg: unit('deg', 'angle', 1, '°', 'degrees', 'neither'),
  rad: unit('rad', 'angle', 180 / Math.PI, 'rad', 'radians', 'neither'),
});

/** Every other way a length's unit is written, for reading; in small letters. */
const LENGTH_NAMES: Readonly<Record<string, UnitCode>> = {
  mm: 'mm', mms: 'mm', millimetre: 'mm', millimetres: 'mm', millimeter: 'mm', millimeters: 'mm',
  cm: 'cm', cms: 'cm', centimetre: 'cm', centimetres: 'cm', centimeter: 'cm', centimeters: 'cm',
  m: 'm', metre: 'm', metres: 'm', meter: 'm', meters: 'm',
  in: 'in', ins: 'in', inch: 'in', inches: 'in',
  ft: 'ft', foot: 'ft', feet: 'ft',
  yd: 'yd', yds: 'yd', yard: 'yd', yards: 'yd',
};

/** Marks written against the number. Slanted quotes are what keyboards put for straight ones. */
const MARKS: Readonly<Record<string, UnitCode>> = {
  '"': 'in', '″': 'in', '”': 'in', '“': 'in', "''": 'in', '′′': 'in', '’’': 'in',
  "'": 'ft', '′': 'ft', '’': 'ft', '‘': 'ft',
  '%': '%', '°': 'deg', 'º': 'deg',
};

const ANGLE_NAMES: Readonly<Record<string, UnitCode>> = {
  deg: 'deg', degs: 'deg', degree: 'deg', degrees: 'deg', rad: 'rad', rads: 'rad', radian: 'rad', radians: 'rad',
};

const NAMES = new Map<string, UnitCode>([
  ...Object.entries(MARKS),
  ...Object.entries(LENGTH_NAMES),
  ...Object.entries(ANGLE_NAMES),
  ['percent', '%'], ['per cent', '%'], ['pct', '%'],
]);
for (const [name, code] of Object.entries(LENGTH_NAMES)) {
  const area = `${code}2` as UnitCode;
  for (const way of [`${name}²`, `${name}2`, `${name}^2`, `sq ${name}`, `sq. ${name}`, `square ${name}`]) NAMES.set(way, area);
}

/**
 * The unit that a text names: `in`, `inch`, `inches`, `"`, `″`, `cm`, `cm²`,
 * `sq in`, `°`, `%` and so on, with or without a full stop (`in.`). Case does
 * not matter, but for one letter: `m` is metres and `M` is a size. An empty
 * text names nothing.
 */
export function unitNamed(text: string): UnitCode | undefined {
  const name = text.trim();
  const known = NAMES.get(name);
  if (known !== undefined) return known;
  if (name.length > 24) return undefined;
  const plain = (name.endsWith('.') ? name.slice(0, -1) : name).replace(/\s+/g, ' ');
  if (/(?:^|[ .])M(?:$|[²2^])/.test(plain)) return undefined;
  return NAMES.get(plain.toLowerCase());
}

/** A figure with the sign of its unit: `3 cm`, `3 %`, `30°`, `3`. */
export function withSign(figure: string, sign: string): string {
  return sign === '' || sign === '°' ? figure + sign : `${figure} ${sign}`;
}
