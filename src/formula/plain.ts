/**
 * The references of a plainly spelt formula, found in one pass over its
 * characters: no second reading of what nearly every formula is when a hundred
 * thousand of them must follow their cells. Plain is what cannot be read in two
 * ways; everything else (other sheets, whole rows and columns, small letters,
 * figures that run into words) is left to the tokenizer, with which this agrees.
 */
import { MAX_COLUMNS, MAX_ROWS, columnName } from './address.ts';
import type { Corner, Reference } from './types.ts';

export interface PlainReference {
  readonly start: number;
  readonly end: number;
  readonly reference: Reference;
}

const isDigit = (code: number): boolean => code >= 48 && code <= 57;
const isCapital = (code: number): boolean => code >= 65 && code <= 90;
/** A to Z in either case, digits, `_`, `$` and the dot: all that a word of a plain formula may hold. */
const inWord = (code: number): boolean => (code >= 97 && code <= 122) || isCapital(code) || isDigit(code) || code === 95 || code === 36 || code === 46;

const [SPACE, QUOTE, DOLLAR, OPEN, COLON] = [32, 34, 36, 40, 58];
/** Signs that stand alone, and mean nothing to what is beside them. */
const SIGNS = new Set('+-*/^&=<>(),;{}|%'.split('').map((sign) => sign.charCodeAt(0)));

/** Where the word that begins at a place ends. */
function wordEnd(text: string, at: number): number {
  let p = at;
  while (p < text.length && inWord(text.charCodeAt(p))) p += 1;
  return p;
}

/** True when the word has neither a digit nor `$`, and so is no cell. */
function isPlainWord(text: string, start: number, end: number): boolean {
  for (let p = start; p < end; p += 1) {
    const code = text.charCodeAt(p);
    if (isDigit(code) || code === DOLLAR) return false;
  }
  return true;
}

/** A word that is exactly a cell in capitals, on the sheet; `undefined` otherwise. */
function cornerIn(text: string, start: number, end: number): Corner | undefined {
  let p = start;
  const colFixed = text.charCodeAt(p) === DOLLAR;
  if (colFixed) p += 1;
  let col = 0;
  for (; isCapital(text.charCodeAt(p)); p += 1) col = col * 26 + text.charCodeAt(p) - 64;
  const rowFixed = text.charCodeAt(p) === DOLLAR;
  if (rowFixed) p += 1;
  if (text.charCodeAt(p) === 48) return undefined;
  const digits = p;
  let row = 0;
  for (; p < end && isDigit(text.charCodeAt(p)); p += 1) row = row * 10 + text.charCodeAt(p) - 48;
  if (p !== end || p === digits || col === 0 || col > MAX_COLUMNS || row > MAX_ROWS) return undefined;
  return { row: row - 1, col: col - 1, rowFixed, colFixed };
}

/** `undefined` for a formula that is not plain. */
export function plainReferences(formula: string): readonly PlainReference[] | undefined {
  const found: PlainReference[] = [];
  /** The last character that is no space: a unit may follow a figure. */
  let before = 0;
  for (let p = 1; p < formula.length;) {
    const code = formula.charCodeAt(p);
    if (code === SPACE) {
      p += 1;
      continue;
    }
    const start = p;
    if (isDigit(code)) {
      while (isDigit(formula.charCodeAt(p)) || formula.charCodeAt(p) === 46) p += 1;
      if (inWord(formula.charCodeAt(p))) return undefined;
    } else if (inWord(code) && code !== 46) {
      p = wordEnd(formula, p);
      if (!isPlainWord(formula, start, p)) {
        const reference = isDigit(before) ? undefined : referenceIn(formula, start, p);
        if (reference === undefined) return undefined;
        p = reference.end;
        if (formula.charCodeAt(p) === OPEN) return undefined;
        found.push(reference);
      }
    } else if (code === QUOTE) {
      const close = formula.indexOf('"', p + 1);
      if (close < 0 || formula.charCodeAt(close + 1) === QUOTE || isDigit(before)) return undefined;
      p = close + 1;
    } else if (SIGNS.has(code)) p += 1;
    else return undefined;
    before = formula.charCodeAt(p - 1);
  }
  return found;
}

/** The cell that a word is, with the colon and the cell right behind it, if there are any. */
function referenceIn(formula: string, start: number, end: number): PlainReference | undefined {
  const from = cornerIn(formula, start, end);
  if (from === undefined) return undefined;
  if (formula.charCodeAt(end) !== COLON) return { start, end, reference: { from } };
  const last = wordEnd(formula, end + 1);
  const to = cornerIn(formula, end + 1, last);
  return to && { start, end: last, reference: { from, to } };
}

const NAMES: readonly string[] = Array.from({ length: MAX_COLUMNS }, (_, col) => columnName(col));

function spelt({ row, col, rowFixed, colFixed }: Corner): string {
  const name = NAMES[col!]!;
  return `${colFixed ? `$${name}` : name}${rowFixed ? '$' : ''}${row! + 1}`;
}

/** How a plain reference is written. Both ends name a row and a column of the sheet. */
export function plainlySpelt(from: Corner, to?: Corner): string {
  return to === undefined ? spelt(from) : `${spelt(from)}:${spelt(to)}`;
}

/** True for a reference's text as `plainlySpelt` would write it: capitals, digits and dollars, no zero in front. */
export function isPlainlySpelt(text: string): boolean {
  let before = COLON;
  for (let p = 0; p < text.length; p += 1) {
    const code = text.charCodeAt(p);
    // Whole rows and columns have no letters before their digits, or no digits.
    if (isDigit(code) ? before === COLON || (code === 48 && !isDigit(before)) : code === COLON ? !isDigit(before) : !isCapital(code) && code !== DOLLAR) return false;
    // `$3` is a row; `$B` is on its way to be a cell.
    if (code !== DOLLAR || before !== COLON) before = code;
  }
  return isDigit(before);
}
