/**
 * Units of length, area and mass as OpenFormula's CONVERT names them (OASIS
 * OpenDocument 1.4 part 4, section 6.16.18, tables 24 and 25). Each is a
 * fraction of metres, square metres or grams, so that 1 in is 2.54 cm to the
 * last digit.
 */
import type { Fault } from '../quantities/index.ts';

type Group = 'a length' | 'an area' | 'a mass';

interface Unit {
  readonly group: Group;
  readonly top: number;
  readonly bottom: number;
  /** Whether a decimal prefix may stand before it, and to which power it counts. */
  readonly prefix: 0 | 1 | 2;
}

const UNITS = new Map<string, Unit>();

function add(group: Group, names: string, top: number, bottom = 1, prefix: Unit['prefix'] = 0): void {
  for (const name of names.split(' ')) UNITS.set(name, { group, top, bottom, prefix });
}

/** A length and its square, which goes by "in2" and "in^2". */
function addLength(names: string, top: number, bottom = 1, prefix: 0 | 1 = 0, squarePrefix: 0 | 2 = prefix === 1 ? 2 : 0): void {
  add('a length', names, top, bottom, prefix);
  for (const name of names.split(' ')) add('an area', `${name}2 ${name}^2`, top * top, bottom * bottom, squarePrefix);
}

const LIGHT_YEAR = 299_792_458 * 3600 * 24 * 365.25;

addLength('m', 1, 1, 1);
addLength('in', 254, 10_000);
addLength('ft', 3048, 10_000);
addLength('yd', 9144, 10_000);
addLength('mi', 1_609_344, 1000);
addLength('Nmi', 1852);
addLength('Pica picapt', 254, 720_000);
addLength('pica', 254, 60_000);
addLength('ang', 1, 1e10, 1);
// The standard marks the light-year for prefixes, but not its square.
addLength('ly', LIGHT_YEAR, 1, 1, 0);
add('a length', 'ell', 45 * 254, 10_000);
add('a length', 'survey_mi', 6_336_000, 3937);
add('a length', 'parsec pc', 149_597_870_691 / Math.tan(Math.PI / 180 / 3600), 1, 1);
add('an area', 'ar', 100, 1, 1);
add('an area', 'ha', 10_000);
add('an area', 'Morgen', 2500);
add('an area', 'uk_acre', 40_468_564_224, 10_000_000);
add('an area', 'us_acre', 4046 * 15_499_969 + 13_525_426, 15_499_969);

const POUND = 45_359_237;
const HUNDREDTHS = 100_000;
add('a mass', 'g', 1, 1, 1);
add('a mass', 'lbm', POUND, HUNDREDTHS);
add('a mass', 'ozm', POUND, HUNDREDTHS * 16);
add('a mass', 'grain', POUND, HUNDREDTHS * 7000);
add('a mass', 'stone', POUND * 14, HUNDREDTHS);
add('a mass', 'cwt shweight', POUND * 100, HUNDREDTHS);
add('a mass', 'uk_cwt lcwt hweight', POUND * 112, HUNDREDTHS);
add('a mass', 'ton', POUND * 2000, HUNDREDTHS);
add('a mass', 'uk_ton LTON brton', POUND * 2240, HUNDREDTHS);
add('a mass', 'sg', POUND * 32_174, HUNDREDTHS * 1000);
// The atomic mass constant in grams (CODATA 2018, from memory).
add('a mass', 'u', 1.660_539_066_6e-24, 1, 1);

const PREFIXES: Readonly<Record<string, number>> = {
  Y: 24, Z: 21, E: 18, P: 15, T: 12, G: 9, M: 6, k: 3, h: 2, da: 1, e: 1,
  d: -1, c: -2, m: -3, u: -6, n: -9, p: -12, f: -15, a: -18, z: -21, y: -24,
};

/** A unit by its name, with or without a prefix; a name that stands in the table goes before one made with a prefix. */
function unitCalled(name: string): Unit | undefined {
  const whole = UNITS.get(name);
  if (whole !== undefined) return whole;
  for (const length of [2, 1]) {
    const power = PREFIXES[name.slice(0, length)];
    const unit = UNITS.get(name.slice(length));
    if (power === undefined || unit === undefined || unit.prefix === 0) continue;
    const factor = 10 ** Math.abs(power * unit.prefix);
    return power < 0 ? { ...unit, bottom: unit.bottom * factor } : { ...unit, top: unit.top * factor };
  }
  return undefined;
}

/** The number, converted; a Fault for an unknown unit and for units of different groups. */
export function convert(number: number, from: string, to: string): { readonly value: number } | Fault {
  const [one, other] = [unitCalled(from), unitCalled(to)];
  if (one === undefined || other === undefined) return unknown(one === undefined ? from : to);
  if (one.group !== other.group) {
    return { sentence: `CONVERT cannot turn “${from}” into “${to}”: the one is ${one.group}, the other ${other.group}.` };
  }
  return { value: (number * one.top * other.bottom) / (one.bottom * other.top) };
}

function unknown(name: string): Fault {
  const meant = [...UNITS.keys()].find((known) => known.toLowerCase() === name.toLowerCase());
  const mend = meant === undefined ? 'it knows units of length, area and mass, such as "cm", "yd^2" or "ozm"' : `write “${meant}”, since small and capital letters are told apart`;
  return { sentence: `CONVERT does not know the unit “${name}”: ${mend}.` };
}
