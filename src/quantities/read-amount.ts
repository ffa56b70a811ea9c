/**
 * Reading one amount: `12`, `5.5`, `5,5`, `.5`, `3/8`, `2 1/4`, `2-1/4`, `2¼`.
 * Everything here looks at each character at most a fixed number of times.
 */
import { isDigit, isHyphen, isSlash, skipSpaces } from './cursor.ts';
import type { Cursor } from './cursor.ts';
import { decimal } from './decimal.ts';
import type { Ratio } from './decimal.ts';
import * as refusals from './refusals.ts';
import type { UnitCode } from './units.ts';

/** What stands against an amount, once its unit is known: a refusal, or that it is no figure at all. */
export type Objection = { readonly sentence: string; readonly meant: 'figure' | 'text' } | 'text';

export interface Amount {
  readonly ratio: Ratio;
  readonly written: string;
  /** Digits and nothing else. */
  readonly whole: boolean;
  /** What is wrong with it in this unit; `null` for a number without one. */
  objection(unit: UnitCode | null): Objection | null;
}

export interface ReadAs {
  /** The mark that is known to part decimals here, as in a file: then `1,234` (or `1.234`) is not in doubt. */
  readonly decimalMark?: '.' | ',';
}

/** Fractions that have a character; those that no tape shows are known in order to be refused. */
const CHARACTERS: Readonly<Record<string, readonly [number, number]>> = {
  '½': [1, 2], '¼': [1, 4], '¾': [3, 4], '⅛': [1, 8], '⅜': [3, 8], '⅝': [5, 8], '⅞': [7, 8], '⅓': [1, 3], '⅔': [2, 3],
  '⅕': [1, 5], '⅖': [2, 5], '⅗': [3, 5], '⅘': [4, 5], '⅙': [1, 6], '⅚': [5, 6], '⅐': [1, 7], '⅑': [1, 9], '⅒': [1, 10],
};

const TAPE = new Set([2, 4, 8, 16, 32, 64]);

export function startsAmount(text: string, at: number): boolean {
  const c = text[at];
  return isDigit(c) || ((c === '.' || c === ',') && isDigit(text[at + 1])) || (c !== undefined && c in CHARACTERS);
}

/** Reads the amount that starts at the cursor, or leaves the cursor and gives `null`. */
export function readAmount(c: Cursor, as: ReadAs): Amount | null {
  if (!startsAmount(c.text, c.at)) return null;
  const from = c.at;
  const written = (): string => c.text.slice(from, c.at);
  const alone = readCharacter(c);
  if (alone !== null) return fraction('', alone, true, written());
  const run = readRun(c);
  if (run.marks === 0) {
    if (isSlash(c.text[c.at]) && isDigit(c.text[c.at + 1])) {
      c.at += 1;
      return fraction('', [Number(run.text), Number(readDigits(c))], false, written());
    }
    const part = readPartAfter(c);
    if (part !== null) return fraction(run.text, part.parts, part.character, written());
    return { ratio: decimal(run.text), written: written(), whole: true, objection: () => null };
  }
  const part = readPartAfter(c);
  if (part !== null) return refused(written(), refusals.decimalAndFraction(written()));
  return withMarks(run.text, as);
}

/** A run of digits with marks between (or one before) them. */
function readRun(c: Cursor): { text: string; marks: number } {
  const from = c.at;
  let marks = 0;
  for (;;) {
    const here = c.text[c.at];
    if (isDigit(here)) c.at += 1;
    else if ((here === '.' || here === ',') && isDigit(c.text[c.at + 1])) {
      marks += 1;
      c.at += 1;
    } else return { text: c.text.slice(from, c.at), marks };
  }
}

function readDigits(c: Cursor): string {
  const from = c.at;
  while (isDigit(c.text[c.at])) c.at += 1;
  return c.text.slice(from, c.at);
}

function readCharacter(c: Cursor): readonly [number, number] | null {
  const found = CHARACTERS[c.text[c.at] ?? ''];
  if (found === undefined) return null;
  c.at += 1;
  return found;
}

/**
 * The fraction after a whole number: ` 1/4`, `-1/4`, `¼`, ` ¼`. After a hyphen
 * only a fraction of a tape below 1 belongs to the number before; otherwise the
 * hyphen parts the ends of a span (`2-1/4"` is 2 1/4 in, `86-90 cm` 86 to 90 cm).
 */
function readPartAfter(c: Cursor): { parts: readonly [number, number]; character: boolean } | null {
  const from = c.at;
  const hyphen = isHyphen(c.text[c.at]);
  if (hyphen) c.at += 1;
  else skipSpaces(c);
  const character = readCharacter(c);
  if (character !== null) return { parts: character, character: true };
  const top = readDigits(c);
  if (top !== '' && isSlash(c.text[c.at]) && isDigit(c.text[c.at + 1])) {
    c.at += 1;
    const parts = [Number(top), Number(readDigits(c))] as const;
    if (!hyphen || (parts[0] < parts[1] && (TAPE.has(parts[1]) || parts[1] === 3))) return { parts, character: false };
  }
  c.at = from;
  return null;
}

function refused(written: string, sentence: string): Amount {
  const objection = { sentence, meant: 'figure' } as const;
  return { ratio: decimal('0'), written, whole: false, objection: () => objection };
}

function fraction(whole: string, [top, bottom]: readonly [number, number], character: boolean, written: string): Amount {
  const ratio = Number.isSafeInteger(top) && Number.isSafeInteger(bottom) && bottom > 0
    ? { mantissa: BigInt(whole) * BigInt(bottom) + BigInt(top), exponent: 0, divisor: BigInt(bottom) }
    : decimal('0');
  const figure = (sentence: string): Objection => ({ sentence, meant: 'figure' });
  return {
    ratio, written, whole: false,
    objection(unit) {
      if (bottom === 0) return figure(refusals.sharedIntoNothing(written));
      // A pair such as 10/12 or 14/16 is a size. A fraction of a tape is in lowest terms, and no pair of sizes is.
      if (unit === null && whole === '' && !character) {
        if (TAPE.has(bottom) && top < bottom && top % 2 === 1) return null;
        return bottom === 3 && (top === 1 || top === 2) ? { sentence: refusals.bareThird(written, top), meant: 'text' } : 'text';
      }
      if (top >= bottom) return figure(refusals.improper(written, Number(whole), top, bottom, unit));
      if (TAPE.has(bottom) || (bottom === 3 && (character || unit === 'yd'))) return null;
      return figure(bottom === 3 && top > 0 ? refusals.noThirds(written, whole, top, unit) : refusals.notOnATape(written, Number(whole) + top / bottom, unit));
    },
  };
}

/** A number with decimal marks, or with what may be marks between thousands. */
function withMarks(written: string, as: ReadAs): Amount {
  const groups = written.split(/[.,]/);
  const [first = '', second = ''] = groups;
  if (groups.length === 2) {
    const mark = written[first.length] as '.' | ',';
    const inThrees = second.length === 3 && first.length >= 1 && first.length <= 3 && first[0] !== '0';
    const doubtful = mark === ',' ? as.decimalMark !== ',' : as.decimalMark === ',';
    const ratio = decimal(`${first}.${second}`.replace(/^\./, '0.'));
    if (!inThrees || !doubtful) return { ratio, written, whole: false, objection: () => null };
    return {
      ratio, written, whole: false,
      objection: (unit) => ({ sentence: refusals.commaOrThousands(written, unit), meant: 'figure' }),
    };
  }
  return {
    ratio: decimal('0'), written, whole: false,
    objection(unit) {
      const thousands = thousandsIn(written, groups);
      if (thousands !== null) {
        return { sentence: refusals.marksBetweenThousands(written, thousands.groups, thousands.decimals, unit), meant: 'figure' };
      }
      // 3.5.2026 and 1.2.3 are a date and a section; with a unit after them they are slips.
      return unit === null ? 'text' : { sentence: refusals.manyPoints(written), meant: 'figure' };
    },
  };
}

/** `1,234,567`, `1.234,5`: groups of three, and at most one other mark before decimals at the end. */
function thousandsIn(written: string, groups: readonly string[]): { groups: readonly string[]; decimals: string | null } | null {
  const first = groups[0]!;
  if (first.length < 1 || first.length > 3) return null;
  const marks = written.replace(/\d/g, '');
  const between = marks[0]!;
  const last = marks.length - 1;
  if ([...marks.slice(0, last)].some((mark) => mark !== between)) return null;
  const hasDecimals = marks[last] !== between;
  const inThrees = hasDecimals ? groups.slice(1, -1) : groups.slice(1);
  if (inThrees.some((group) => group.length !== 3)) return null;
  return hasDecimals ? { groups: groups.slice(0, -1), decimals: groups.at(-1)! } : { groups, decimals: null };
}
