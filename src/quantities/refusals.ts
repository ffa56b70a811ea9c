/** The sentences with which a typed figure is refused: what is wrong, and what to write instead. */
import { UNITS, withSign } from './units.ts';
import type { UnitCode } from './units.ts';

/** As much of what was typed as a sentence can carry. */
const short = (text: string): string => (text.length > 40 ? `${text.slice(0, 39)}…` : text);

const quoted = (text: string): string => `“${short(text)}”`;

const withUnit = (figure: string, unit: UnitCode | null): string => withSign(short(figure), UNITS[unit ?? ''].sign);

export const sharedIntoNothing = (written: string): string =>
  `${quoted(written)} divides by 0: write a fraction such as 1/2 or 2 1/4.`;

export function improper(written: string, whole: number, top: number, bottom: number, unit: UnitCode | null): string {
  const all = whole + Math.floor(top / bottom);
  const rest = top % bottom;
  if (!Number.isSafeInteger(all)) return `The fraction of ${quoted(written)} is not below 1: write whole ones before it, such as 2 1/4.`;
  const mend = rest === 0 ? String(all) : all === 0 ? `${rest}/${bottom}` : `${all} ${rest}/${bottom}`;
  return `The fraction of ${quoted(written)} is not below 1: write ${withUnit(mend, unit)} if that is meant.`;
}

export function noThirds(written: string, whole: string, top: number, unit: UnitCode | null): string {
  const mend = withUnit(whole + (top === 1 ? '⅓' : '⅔'), unit);
  return `${quoted(written)}: a tape is not marked in thirds, so they are read only in yards. Write ${mend} if a third is meant.`;
}

export const bareThird = (written: string, top: number): string =>
  `${quoted(written)} is kept as text, since it may be a size: write ${top === 1 ? '⅓' : '⅔'} or =${short(written)} for the number.`;

export function notOnATape(written: string, value: number, unit: UnitCode | null): string {
  const mend = withUnit(String(Number(value.toFixed(4))), unit);
  return `${quoted(written)}: fractions are read in halves, 4ths, 8ths, 16ths, 32nds and 64ths. Write a decimal, such as ${mend}.`;
}

export const decimalAndFraction = (written: string): string =>
  `${quoted(written)} has decimals and a fraction: write one or the other, such as 2.25 or 2 1/4.`;

export function commaOrThousands(written: string, unit: UnitCode | null): string {
  const mark = written.includes(',') ? ',' : '.';
  const [whole = '', part = ''] = written.split(mark);
  const other = mark === ',' ? `${whole}.${part}` : `${whole},${part}0`;
  return `${quoted(written)} can be read in two ways: write ${withUnit(whole + part, unit)} or ${withUnit(other, unit)}.`;
}

export function marksBetweenThousands(written: string, groups: readonly string[], decimals: string | null, unit: UnitCode | null): string {
  const mend = groups.join('') + (decimals === null ? '' : `.${decimals}`);
  return `${quoted(written)} has marks between its thousands: write ${withUnit(mend, unit)}.`;
}

export const manyPoints = (written: string): string => `${quoted(written)} has more than one decimal mark: write one, such as 5.5.`;

export const tooLarge = (written: string): string =>
  `${quoted(written)} is larger than a cell can keep: write a number of at most 15 figures before the point.`;

export const tooLong = 'This number is longer than a cell can keep: write one of at most 15 figures before the point.';

export const twoNumbers = (written: string): string =>
  `${quoted(written)} has more than one number for one unit: write one, such as 2 1/4 in, and no space between thousands.`;

export const spacedThousands = (written: string): string =>
  `${quoted(written)} is kept as text, since it may be two numbers: write ${short(written.replace(/\s/g, ''))} for one.`;

export const lacksUnit = (written: string, last: string): string =>
  `In ${quoted(written)} the ${short(last)} has no unit: write it, as in 1 yd 4 in.`;

export const mixedUnits = (written: string): string =>
  `${quoted(written)} mixes units that do not go together: write one figure, such as 1 yd 4 in or 1 m 20 cm.`;

export const wrongOrder = (written: string): string =>
  `${quoted(written)}: write the larger unit first and each unit once, as in 1 yd 4 in.`;

export const manyInches = (written: string): string =>
  `${quoted(written)} has 12 inches or more after its feet: write inches below 12, or the unit after them.`;

export const feetOrArea = (written: string, amount: string, unit: 'ft' | 'yd'): string =>
  `${quoted(written)} can be read in two ways: write ${short(amount)} ${unit} 2 in or ${short(amount)} ${unit}².`;

export const downwards = (written: string): string =>
  `${quoted(written)} runs from the greater to the less: write the smaller figure first. (To take one from the other, start with =.)`;

export const unlikeEnds = (written: string): string =>
  `The two ends of ${quoted(written)} are not of one kind: give both the same sort of unit, as in 86–90 cm.`;

export const unknownUnit = (word: string): string =>
  word === 'M'
    ? '“M” is kept as text, since it may be a size: write m for metres.'
    : `${quoted(word)} is not a unit known here, so this is kept as text: a length has mm, cm, m, in, ft or yd after it.`;

export const wordAfter = (word: string, figure: string): string =>
  `${quoted(word)} stands after ${quoted(figure)}, so this is kept as text: write ${quoted(figure)} in a cell by itself to reckon with it.`;

export const powerOfTen = (written: string): string =>
  `${quoted(written)} is kept as text, since numbers are not read with an e: write it out in full, such as 1000.`;
