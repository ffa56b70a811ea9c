/**
 * Figures in formulas: `5`, `5.5 cm`, `2 1/4 in`, `2¼"`, `1 yd 4 in`, `30°`.
 *
 * What belongs to a figure and what is a sum:
 * - `n/d` with a unit after it is a fraction when n < d and d is 2, 4, 8, 16, 32
 *   or 64 (3 too, before yards); any other `n/d` is a division. `1/4 in` is a
 *   quarter inch, `3/5 in` is 3 divided by 5 in.
 * - `10-3/8"` is a subtraction: a whole number and its fraction have a space
 *   between them, or the fraction is one character.
 * - A double quote right after a digit or a fraction is an inch mark, a single
 *   one a foot mark. A text cannot begin there, so that `=A1&"x"` and `=2"+3"`
 *   both are what they look like.
 * - After a `/` a fraction written with `/` could be read two ways and is refused;
 *   after a `^` it is no fraction.
 */
import { unitNamed } from '../quantities/index.ts';
import type { UnitCode } from '../quantities/index.ts';
import { digitsEnd, insideWord, isDigit, isSpace, quoted, skipSpaces } from './characters.ts';
import type { UnitPart } from './types.ts';

export type Figure =
  | { readonly kind: 'number'; readonly end: number; readonly value: number }
  | { readonly kind: 'unit'; readonly end: number; readonly parts: readonly UnitPart[] }
  | { readonly kind: 'bad'; readonly end: number; readonly sentence: string };

/** Numerator and denominator of the fractions that have a character of their own and that cloth is measured in. */
const CHARACTERS: Readonly<Record<string, readonly [number, number]>> = {
  '½': [1, 2], '⅓': [1, 3], '⅔': [2, 3], '¼': [1, 4], '¾': [3, 4], '⅛': [1, 8], '⅜': [3, 8], '⅝': [5, 8], '⅞': [7, 8],
};

const TAPE = new Set([2, 4, 8, 16, 32, 64]);

/** Units that may follow a bigger one in one length: `1 yd 4 in`, `5'6"`. */
const SMALLER: Readonly<Partial<Record<UnitCode, readonly UnitCode[]>>> = { yd: ['ft', 'in'], ft: ['in'] };

/** Amounts from here on have more figures than a double keeps; a cell does not take them either. */
const TOO_LARGE = 1e15;

const shortened = (figure: string): string => (figure.length > 24 ? `${figure.slice(0, 24)}…` : figure);

export function startsFraction(character: string): boolean {
  return character in CHARACTERS;
}

/**
 * Reads the figure that begins at `at` (a digit, a `.` with a digit after it, or
 * a fraction character). `before` is the operator in front of it, if any.
 */
export function scanFigure(text: string, at: number, before: string): Figure {
  const amount = scanAmount(text, at, before);
  if (amount.kind === 'bad') return amount;
  const unit = scanUnit(text, amount.end);
  if (unit === undefined) return bare(text, at, amount);
  if (amount.whole >= TOO_LARGE) {
    return { kind: 'bad', end: unit.end, sentence: `${quoted(shortened(text.slice(at, unit.end)))} is larger than any measure that can be counted exactly: check its figures.` };
  }
  if (amount.slash !== undefined && !fits(amount, unit.unit)) return misfit(text, at, amount, unit);
  if (amount.slash === '/' && !amount.mixed && (before === '/' || before === '÷')) {
    const piece = text.slice(at, unit.end);
    return { kind: 'bad', end: unit.end, sentence: `${quoted(piece)} after a division can be read two ways: put brackets around it, or around the division before it.` };
  }
  const parts = [partOf(amount, unit.unit)];
  let { end } = unit;
  for (let next = scanSmaller(text, end, unit.unit); next !== undefined; next = scanSmaller(text, end, next.part.unit)) {
    parts.push(next.part);
    end = next.end;
  }
  return { kind: 'unit', end, parts };
}

/** An amount before its unit is known: `whole + top/bottom`. */
interface Amount {
  readonly kind: 'amount';
  readonly whole: number;
  readonly top: number;
  readonly bottom: number;
  /** The sign between top and bottom; not there for a decimal or a fraction character. */
  readonly slash?: '/' | '⁄';
  /** A whole number stands before the fraction. */
  readonly mixed: boolean;
  readonly end: number;
  /** Where the figure ends if its fraction turns out to be a division. */
  readonly wholeEnd: number;
}

function scanAmount(text: string, at: number, before: string): Amount | (Figure & { kind: 'bad' }) {
  const alone = CHARACTERS[text.charAt(at)];
  if (alone !== undefined) {
    return { kind: 'amount', whole: 0, top: alone[0], bottom: alone[1], mixed: false, end: at + 1, wholeEnd: at + 1 };
  }
  const end = numberEnd(text, at);
  const whole = Number(text.slice(at, end));
  if (!Number.isFinite(whole)) {
    return { kind: 'bad', end, sentence: `${quoted(text.slice(at, end))} is too big a number to work with.` };
  }
  const decimal: Amount = { kind: 'amount', whole, top: 0, bottom: 1, mixed: false, end, wholeEnd: end };
  if (digitsEnd(text, at) !== end) return decimal;
  const simple = before === '^' ? undefined : scanBottom(text, end);
  if (simple !== undefined) {
    return { ...decimal, whole: 0, top: whole, bottom: simple.bottom, slash: simple.slash, end: simple.end };
  }
  const next = skipSpaces(text, end);
  const character = CHARACTERS[text.charAt(next)];
  if (character !== undefined) return { ...decimal, top: character[0], bottom: character[1], mixed: true, end: next + 1, wholeEnd: next + 1 };
  const topEnd = digitsEnd(text, next);
  const fraction = next > end && topEnd > next ? scanBottom(text, topEnd) : undefined;
  if (fraction === undefined) return decimal;
  return { ...decimal, top: Number(text.slice(next, topEnd)), bottom: fraction.bottom, slash: fraction.slash, mixed: true, end: fraction.end };
}

/** The `/8` of `3/8`, when whole digits stand there and nothing that makes them a longer number. */
function scanBottom(text: string, at: number): { readonly slash: '/' | '⁄'; readonly bottom: number; readonly end: number } | undefined {
  const slash = text.charAt(at);
  if (slash !== '/' && slash !== '⁄') return undefined;
  const end = digitsEnd(text, at + 1);
  return end === at + 1 || numberEnd(text, at + 1) !== end ? undefined : { slash, bottom: Number(text.slice(at + 1, end)), end };
}

/** Where `5`, `5.5`, `.5` or `1e3` ends. */
function numberEnd(text: string, at: number): number {
  let p = digitsEnd(text, at);
  if (text.charCodeAt(p) === 46 && isDigit(text.charCodeAt(p + 1))) p = digitsEnd(text, p + 1);
  if ((text.charCodeAt(p) | 32) !== 101) return p;
  const sign = text.charAt(p + 1);
  const from = sign === '+' || sign === '-' ? p + 2 : p + 1;
  const end = digitsEnd(text, from);
  return end === from || insideWord(text, end) ? p : end;
}

/** True when a fraction is one that a tape has, in that unit. */
function fits({ top, bottom }: Amount, unit?: UnitCode): boolean {
  return top < bottom && (TAPE.has(bottom) || (bottom === 3 && unit === 'yd'));
}

/** A figure without a unit. */
function bare(text: string, at: number, amount: Amount): Figure {
  const { whole, top, bottom, slash, mixed, end, wholeEnd } = amount;
  if (slash === '/' && mixed) {
    const piece = text.slice(at, end);
    const value = whole + top / bottom;
    const instead = Number.isFinite(value) ? `write ${String(value)}, or give a unit, as in ${piece} in` : 'give it another fraction';
    return { kind: 'bad', end, sentence: `${quoted(piece)} has no unit: ${instead}.` };
  }
  if (slash === '/') return { kind: 'number', end: wholeEnd, value: top };
  if (slash === '⁄' && !fits(amount)) return { kind: 'bad', end, sentence: noFraction(text.slice(at, end)) };
  return { kind: 'number', end, value: whole + top / bottom };
}

function noFraction(piece: string): string {
  return `${quoted(piece)} is no fraction of a tape: the top must be smaller than the bottom, and the bottom 2, 4, 8, 16, 32 or 64.`;
}

/** A fraction that a tape does not have: after a whole number it is a slip, alone it is a division. */
function misfit(text: string, at: number, amount: Amount, unit: UnitScan): Figure {
  if (amount.slash === '/' && !amount.mixed) return { kind: 'number', end: amount.wholeEnd, value: amount.top };
  return { kind: 'bad', end: unit.end, sentence: noFraction(text.slice(at, unit.end)) };
}

/** Thirds have no exact decimal, so their three travels apart. */
function partOf({ whole, top, bottom }: Amount, unit: UnitCode): UnitPart {
  return bottom === 3 ? { amount: whole * 3 + top, over: 3, unit } : { amount: whole + top / bottom, unit };
}

/** The `4 1/2 in` after `1 yd`. */
function scanSmaller(text: string, at: number, above: UnitCode): { readonly part: UnitPart; readonly end: number } | undefined {
  const allowed = SMALLER[above];
  const from = skipSpaces(text, at);
  if (allowed === undefined || !(isDigit(text.charCodeAt(from)) || startsFraction(text.charAt(from)))) return undefined;
  const amount = scanAmount(text, from, '');
  if (amount.kind === 'bad') return undefined;
  const unit = scanUnit(text, amount.end);
  if (unit === undefined || !allowed.includes(unit.unit) || (amount.slash !== undefined && !fits(amount))) return undefined;
  return { part: partOf(amount, unit.unit), end: unit.end };
}

interface UnitScan {
  readonly unit: UnitCode;
  readonly end: number;
}

/** Marks that must touch the figure, longest first; elsewhere they begin a text or a sheet's name. */
const TOUCHING = ["''", '’’', '"', '”', "'", '’'] as const;
const MARKS = ['″', '′′', '′', '°', 'º'] as const;
const WORDS = /(?:(?:sq\.?|square)\s+)?\p{L}+[2²]?/iuy;

function scanUnit(text: string, at: number): UnitScan | undefined {
  const code = text.charCodeAt(at);
  if (code === 34 || code === 39 || code > 127) {
    for (const mark of TOUCHING) if (text.startsWith(mark, at) && !opensSheet(text, at)) return named(mark, at + mark.length);
  }
  const from = isSpace(code) ? skipSpaces(text, at) : at;
  for (const mark of MARKS) if (text.startsWith(mark, from)) return named(mark, from + mark.length);
  WORDS.lastIndex = from;
  const word = WORDS.exec(text)?.[0];
  if (word === undefined) return undefined;
  const end = from + word.length;
  const stop = text.charCodeAt(end);
  if (stop === 46 && !insideWord(text, end + 1)) {
    const dotted = named(text.slice(from, end + 1), end + 1);
    if (dotted !== undefined) return dotted;
  }
  return stop === 40 || stop === 33 || insideWord(text, end) ? undefined : named(word, end);
}

/** A single quote after a digit that begins the quoted name of a sheet: a slip, but not a foot mark. */
function opensSheet(text: string, at: number): boolean {
  return text.charCodeAt(at) === 39 && /^'[^'"+\-*/^&=<>,;)]*'!/.test(text.slice(at, at + 80));
}

function named(word: string, end: number): UnitScan | undefined {
  const unit = unitNamed(word);
  return unit === undefined ? undefined : { unit, end };
}
