/** What headings say: a measure's name, its unit, an end of a range; and whether a heading names a size. */
import { UNITS, unitNamed, type UnitCode } from '../quantities/index.ts';
import type { ChartUnit } from './reading.ts';

export interface Label {
  /** Without the unit; empty when the text is only a unit. */
  readonly name: string;
  readonly unit: ChartUnit | null;
  /** A unit that is no length: kg, years. */
  readonly otherUnit: string | null;
  /** `bust_from` and `bust_to` are two ends of one measure. */
  readonly end: { readonly of: string; readonly which: 'low' | 'high' } | null;
}

const OTHER_UNITS = /^(?:kgs?|kilos?|g|grams?|lbs?|pounds?|st|stones?|oz|years?|yrs?|y|months?|mths?|mos?)\.?$/i;
const IN_BRACKETS = /\s*[([{]\s*(?:in\s+|all\s+in\s+)?([^)\]}]*?)\s*[)\]}]/gi;
/** A unit at the end, parted by a sign or by the word "in". */
const AFTER_SIGN = /^(.*?)(?:\s*[_,;:/|=]\s*|\s+[-–—]\s+|\s+in\s+)(?:in\s+)?([^\s_,;:/|=]+)$/i;
const AFTER_SPACE = /^(.*\S)\s+(\S+)$/;
const ONLY_LONG = /^(?:mm|cms?|millimet\w+|centimet\w+|ins?|inch(?:es)?)\.?$/i;
const END = /^(.+?)[\s,-]+(from|to|min|max|minimum|maximum)$/i;
/** Longer texts are no headings; not looking into them keeps every pattern here quick. */
const LONGEST = 120;

function chartUnit(text: string): ChartUnit | null {
  const unit = unitNamed(text);
  return unit === 'cm' || unit === 'in' || unit === 'mm' ? unit : null;
}

/** A unit that stands for the figures of its row or column, alone in a cell. */
export function unitAlone(text: string): ChartUnit | null {
  return chartUnit(text.replace(/^[([{]\s*(.*?)\s*[)\]}]$/, '$1').replace(/^in\s+(?=\S)/i, ''));
}

export const endAlone = (text: string): 'low' | 'high' | null =>
  /^(?:from|min\.?|minimum)$/i.test(text) ? 'low' : /^(?:to|max\.?|maximum)$/i.test(text) ? 'high' : null;

/** `Bust (cm)`, `Hip in inches`, `measurement_in`, `bust_from_cm`, `bust, cm`, `Bust"`. */
export function readLabel(text: string): Label {
  if (text.length > LONGEST) return { name: text, unit: null, otherUnit: null, end: null };
  let rest = text.replace(/\s+/g, ' ').trim();
  let unit: ChartUnit | null = unitAlone(rest);
  let otherUnit: string | null = null;
  if (unit) return { name: '', unit, otherUnit, end: null };

  rest = rest.replace(IN_BRACKETS, (group: string, inside: string) => {
    const found = chartUnit(inside);
    if (found) unit = found;
    else if (OTHER_UNITS.test(inside)) otherUnit = inside;
    else if (endAlone(inside)) return ` ${inside}`;
    else return group;
    return '';
  }).trim();

  if (!unit && !otherUnit) {
    const signed = AFTER_SIGN.exec(rest);
    const spaced = AFTER_SPACE.exec(rest);
    const inchMark = /^(.*\S)\s*["″]$/.exec(rest);
    if (signed && chartUnit(signed[2]!)) [rest, unit] = [signed[1]!, chartUnit(signed[2]!)];
    else if (signed && OTHER_UNITS.test(signed[2]!) && signed[2]!.length > 1) [rest, otherUnit] = [signed[1]!, signed[2]!];
    else if (spaced && ONLY_LONG.test(spaced[2]!)) [rest, unit] = [spaced[1]!, chartUnit(spaced[2]!)];
    else if (inchMark) [rest, unit] = [inchMark[1]!, 'in'];
  }
  const name = rest.replace(/[\s_,;:–—-]+$/, '').trim();
  const end = END.exec(name.replace(/_/g, ' '));
  return {
    name, unit, otherUnit,
    end: end ? { of: name.slice(0, end[1]!.length), which: /^(?:from|min|minimum)$/i.test(end[2]!) ? 'low' : 'high' } : null,
  };
}

const AGES = /^\d+(?:\s*[-–/]\s*\d+)?\s*(?:m|mo|mos|mth|mths|month|months|y|yr|yrs|year|years)$/i;
const SIZE_WORDS = /^(?:(?:eu|uk|us|fr|it|de|jp|au|size|gr\.?|no\.?)\s*)?[\p{L}\d./+\-–()\s]{1,14}$/iu;
const LETTER_CODE = /^(?:\d{0,2}x{1,4}[sml]|\d{0,2}x{1,4}|xx*[sl]|[sml]|one size|petite|tall|regular)(?:\s?[/–-]\s?(?:\d{0,2}x{0,4}[sml]))?$/i;

/** 12, 00, 10/12, XS, 3XL, 160/84A, 9AR, EU 38, "Size 10", "6–9 months", "S (8)". */
export function looksLikeSize(text: string): boolean {
  if (text.length > LONGEST) return false;
  const plain = text.trim().replace(/\s+/g, ' ');
  if (plain === '' || plain.length > 24) return false;
  if (LETTER_CODE.test(plain) || AGES.test(plain)) return true;
  if (!/\d/.test(plain)) return /^[A-Z]{1,2}$/.test(plain) || /^(?:extra |x-)?(?:small|medium|large)$/i.test(plain);
  const words = plain.replace(/\b(?:size|sizes|eu|uk|us)\b/gi, '');
  return SIZE_WORDS.test(plain) && !/\p{L}{4,}/u.test(words);
}

/** A heading that stands for all its sizes or measures: "Size", "measurement", "Body measurements", "code". */
export const isCornerWord = (text: string): boolean =>
  /^(?:(?:\p{L}+\s+)?(?:sizes?|codes?|measures?|measurements?|labels?))?$/iu.test(readLabel(text).name.replace(/_/g, ' ').trim());

export const namesSizes = (text: string): boolean =>
  /\b(?:sizes?|codes?)\b/i.test(text.replace(/_/g, ' ')) || /^(?:us|uk|eu|fr|it|de|jp|au)$/i.test(text.trim());
export const namesMeasures = (text: string): boolean => /\b(?:measures?|measurements?|body)\b/i.test(text.replace(/_/g, ' '));
/** Figures under these headings are no lengths, even without a unit. */
export const namesNoLength = (text: string): boolean => /\b(?:age|ages|weight|mass|cup)\b/i.test(text.replace(/_/g, ' '));
export const isUnitHeading = (text: string): boolean => /^units?$/i.test(text.trim());

const NOTE_UNITS: readonly { readonly unit: ChartUnit; readonly said: RegExp }[] = [
  { unit: 'cm', said: /(?<!\p{L})(?:cms?|centimet(?:re|er)s?)(?!\p{L})/iu },
  { unit: 'in', said: /(?<!\p{L})inch(?:es)?(?!\p{L})|[([]\s*in\.?\s*[)\]]|\bunits?\s*[:=]?\s*in\b|\b(?:all|measures?|measurements?|figures?)\s+in\s+(?:in|["″])/iu },
  { unit: 'mm', said: /(?<!\p{L})(?:mm|millimet(?:re|er)s?)(?!\p{L})/iu },
];

/** The one unit that lines around the table speak of, and the line; `null` when none, `'both'` when several. */
export function unitInNotes(lines: readonly string[]): { readonly unit: ChartUnit; readonly line: string } | 'both' | null {
  const found = lines.flatMap((line) => NOTE_UNITS.filter(({ said }) => said.test(line)).map(({ unit }) => ({ unit, line })));
  if (found.length === 0) return null;
  return new Set(found.map(({ unit }) => unit)).size > 1 ? 'both' : found[0]!;
}

export const unitWords = (unit: UnitCode): string => UNITS[unit].words;
