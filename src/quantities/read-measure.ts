/** Reading one measure: an amount with its unit, or several that make one length (`1 yd 4 in`). */
import { isDash, isDigit, isHyphen, isLetter, skipSpaces } from './cursor.ts';
import type { Cursor } from './cursor.ts';
import { readAmount, startsAmount } from './read-amount.ts';
import type { Amount, Objection, ReadAs } from './read-amount.ts';
import * as refusals from './refusals.ts';
import { UNITS, unitNamed, withSign } from './units.ts';
import type { UnitCode } from './units.ts';

export interface Part {
  readonly amount: Amount;
  readonly unit: UnitCode | null;
}

export interface Measure {
  readonly sign: '' | '-';
  /** At least one. */
  readonly parts: readonly Part[];
  /** Something in it that ends all reading: a word that is no unit. */
  readonly stop: Objection | null;
}

/** Reads signs, amounts and units up to what is neither; `null` if there is no amount. */
export function readMeasure(c: Cursor, as: ReadAs): Measure | null {
  const sign = readSign(c);
  const parts: Part[] = [];
  for (;;) {
    const amount = readAmount(c, as);
    if (amount === null) break;
    const found = readUnit(c, amount);
    if (typeof found === 'object' && found !== null) return { sign, parts, stop: found.stop };
    parts.push({ amount, unit: found });
    const end = c.at;
    skipSpaces(c);
    if (!startsAmount(c.text, c.at)) {
      c.at = end;
      break;
    }
  }
  return parts.length === 0 ? null : { sign, parts, stop: wordAfter(c, parts) };
}

function readSign(c: Cursor): '' | '-' {
  const here = c.text[c.at];
  if (here === undefined) return '';
  const minus = isHyphen(here) || isDash(here);
  if (minus || here === '+') {
    c.at += 1;
    skipSpaces(c);
  }
  return minus ? '-' : '';
}

function readWord(c: Cursor): string {
  const from = c.at;
  while (isLetter(c.text[c.at])) c.at += 1;
  return c.text.slice(from, c.at);
}

/** The unit after an amount, `null` for none (the cursor is then left right after the amount). */
function readUnit(c: Cursor, amount: Amount): UnitCode | null | { readonly stop: Objection } {
  const end = c.at;
  skipSpaces(c);
  const mark = readMark(c);
  if (mark !== undefined) return mark;
  const start = c.at;
  const attached = start === end;
  const word = readWord(c);
  if (word === '' || /^to$/i.test(word)) {
    c.at = end;
    return null;
  }
  const name = readSecondWord(c, word);
  const area = readSquare(c, name);
  if (area !== undefined) {
    if (attached && (area === 'ft2' || area === 'yd2') && c.text[c.at - 1] === '2' && c.text[c.at - 2] !== '^') {
      return { stop: { sentence: refusals.feetOrArea(c.text, amount.written, area === 'ft2' ? 'ft' : 'yd'), meant: 'figure' } };
    }
    return area;
  }
  const unit = unitNamed(name);
  if (unit !== undefined) {
    if (c.text[c.at] === '.' && !isDigit(c.text[c.at + 1])) c.at += 1;
    return unit;
  }
  if (amount.objection(null) === 'text') return { stop: 'text' };
  return { stop: noUnit(c, word, amount, attached ? start : null) };
}

/** Marks that are written against a number; two feet marks make an inch mark. */
const MARK = /^(?:''|′′|’’|["″”“'′’‘%°º])/;

function readMark(c: Cursor): UnitCode | undefined {
  const mark = MARK.exec(c.text.slice(c.at, c.at + 2))?.[0];
  if (mark === undefined) return undefined;
  c.at += mark.length;
  return unitNamed(mark);
}

/** `sq cm`, `sq. in`, `square yards`, `per cent`. */
function readSecondWord(c: Cursor, word: string): string {
  if (!/^(?:sq|square|per)$/i.test(word)) return word;
  const at = c.at;
  if (c.text[c.at] === '.') c.at += 1;
  skipSpaces(c);
  const both = `${word} ${readWord(c)}`;
  if (unitNamed(both) !== undefined) return both;
  c.at = at;
  return word;
}

/** `cm²`, `cm2`, `cm^2`; a 2 that goes on (`1m20`, `5ft2in`) is the next amount. */
function readSquare(c: Cursor, name: string): UnitCode | undefined {
  const at = c.at;
  if (c.text[c.at] === '^') c.at += 1;
  const two = c.text[c.at];
  const goesOn = /[\p{L}\d.,/⁄'"′″’”]/u.test(c.text[c.at + 1] ?? '');
  const unit = two === '²' || (two === '2' && !goesOn) ? unitNamed(`${name}2`) : undefined;
  if (unit === undefined) c.at = at;
  else c.at += 1;
  return unit;
}

/** What a word after a number that is no unit makes of the whole; `attached` is where it starts if no space is before it. */
function noUnit(c: Cursor, word: string, amount: Amount, attached: number | null): Objection {
  if (attached !== null) {
    if (/^e$/i.test(word) && /^[-+−]?\d/.test(c.text.slice(attached + 1, attached + 3))) {
      return { sentence: refusals.powerOfTen(c.text), meant: 'text' };
    }
    // 2XL, 34DD and 12W are sizes, 3rd is a place.
    if (amount.whole && (/^\p{Lu}{1,3}$/u.test(word) || /^(?:st|nd|rd|th)$/.test(word))) return 'text';
  }
  return { sentence: refusals.unknownUnit(word), meant: 'text' };
}

/** A word after a whole figure, as in `140 cm wide`. After a percent it is a text as any (`100% cotton`). */
function wordAfter(c: Cursor, parts: readonly Part[]): Objection | null {
  const at = c.at;
  skipSpaces(c);
  const word = readWord(c);
  c.at = at;
  const last = parts.at(-1)!;
  if (word === '' || /^to$/i.test(word) || last.unit === null) return null;
  if (last.unit === '%') return 'text';
  const figure = parts.map(({ amount, unit }) => withSign(amount.written, UNITS[unit ?? ''].sign)).join(' ');
  return { sentence: refusals.wordAfter(word, figure), meant: 'text' };
}
