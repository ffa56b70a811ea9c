import { columnName, MAX_COLUMNS, MAX_ROWS, scanReference } from './address.ts';
import { insideWord, isDigit, isLatin, isSpace, quoted, skipSpaces, startsWord, widthAt, wordEnd } from './characters.ts';
import { scanFigure, startsFraction } from './literal.ts';
import { longestName, nameIndex } from './names.ts';
import type { NameIndex } from './names.ts';
import { closingQuote } from './sheet-name.ts';
import type { Token, TokenKind } from './types.ts';

/** What was typed is a formula when it begins with `=`. */
export function isFormula(raw: string): boolean {
  return raw.charCodeAt(0) === 61;
}

const NO_NAMES: readonly string[] = [];
/** Where a sheet ends, for sentences. */
export const LIMITS = `a sheet ends at column ${columnName(MAX_COLUMNS - 1)} and row ${MAX_ROWS.toLocaleString('en')}`;

/**
 * The formula in pieces. Never throws, whatever the text; every character
 * belongs to one token, so that the texts put together are the formula again.
 * With `names` a name of several words is one token; without, each word is one.
 * Takes time in proportion to the length.
 */
export function tokenize(formula: string, names: readonly string[] = NO_NAMES): Token[] {
  const index = nameIndex(names);
  const tokens: Token[] = [];
  /** The operator before, when nothing but space has come since. */
  let before = '';
  for (let at = 0; at < formula.length;) {
    const token = tokenAt(formula, at, before, index);
    tokens.push(token);
    at += token.text.length;
    if (token.kind !== 'space') before = token.kind === 'operator' ? token.text : '';
  }
  return tokens;
}

function plain(kind: TokenKind, text: string, start: number, end: number): Token {
  return { kind, text: text.slice(start, end), start };
}

function bad(text: string, start: number, end: number, sentence: string): Token {
  return { kind: 'bad', text: text.slice(start, end), start, sentence };
}

function tokenAt(text: string, at: number, before: string, names: NameIndex): Token {
  const code = text.charCodeAt(at);
  if (isDigit(code)) return rowsAt(text, at) ?? figureAt(text, at, before);
  if (isLatin(code) || code === 95) return wordAt(text, at, names);
  switch (code) {
    case 34: return stringAt(text, at, closingQuote(text, at));
    case 36: return referenceAt(text, at) ?? noCell(text, at);
    case 39: return quotedSheetAt(text, at);
    case 35: return errorAt(text, at, at);
    case 40: case 41: case 123: case 125: return plain('bracket', text, at, at + 1);
    case 44: case 59: case 124: return plain('separator', text, at, at + 1);
    case 46: if (isDigit(text.charCodeAt(at + 1))) return figureAt(text, at, before); break;
    case 60: return plain('operator', text, at, at + (text.charCodeAt(at + 1) === 61 || text.charCodeAt(at + 1) === 62 ? 2 : 1));
    case 62: return plain('operator', text, at, at + (text.charCodeAt(at + 1) === 61 ? 2 : 1));
  }
  if (isSpace(code)) return plain('space', text, at, skipSpaces(text, at));
  if (OPERATORS.has(text.charAt(at))) return plain('operator', text, at, at + 1);
  if (startsFraction(text.charAt(at))) return figureAt(text, at, before);
  if (startsWord(text, at)) return wordAt(text, at, names);
  if (code === 0x201c) return stringAt(text, at, text.indexOf('”', at));
  return strayAt(text, at);
}

const OPERATORS = new Set('+-*/^&=%:×÷−≤≥≠');

function referenceAt(text: string, at: number): Token | undefined {
  const scan = scanReference(text, at);
  return scan && { kind: 'reference', text: text.slice(at, scan.end), start: at, reference: scan.reference };
}

/** `3:5`. */
function rowsAt(text: string, at: number): Token | undefined {
  let p = at;
  while (isDigit(text.charCodeAt(p))) p += 1;
  return text.charCodeAt(skipSpaces(text, p)) === 58 ? referenceAt(text, at) : undefined;
}

function figureAt(text: string, at: number, before: string): Token {
  const figure = scanFigure(text, at, before);
  if (figure.kind === 'number' && insideWord(text, figure.end)) {
    // Never two tokens: with a column put in before it, the A1 of 5A1 could become the E1 of a number 5E1.
    const end = wordEnd(text, figure.end);
    return bad(text, at, end, `${quoted(text.slice(at, end))} is no figure: after a number comes a unit (in, cm, mm, m, ft, yd) or an operator (+ - * /).`);
  }
  const piece = text.slice(at, figure.end);
  switch (figure.kind) {
    case 'number': return { kind: 'number', text: piece, start: at, value: figure.value };
    case 'unit': return { kind: 'unit', text: piece, start: at, parts: figure.parts };
    case 'bad': return { kind: 'bad', text: piece, start: at, sentence: figure.sentence };
  }
}

function wordAt(text: string, at: number, names: NameIndex): Token {
  const reference = referenceAt(text, at);
  if (reference !== undefined) return reference;
  const end = wordEnd(text, at);
  const next = text.charCodeAt(end);
  if (next === 33) return text.charCodeAt(end + 1) === 35 ? errorAt(text, at, end + 1) : noCell(text, at);
  if (next === 40 || text.charCodeAt(skipSpaces(text, end)) === 40) return plain('function', text, at, end);
  const word = text.slice(at, end);
  if (word.length < 6 && /^(?:true|false)$/i.test(word)) return { kind: 'truth', text: word, start: at };
  return plain('name', text, at, longestName(text, at, end, names));
}

function stringAt(text: string, at: number, close: number): Token {
  if (close > 0) return plain('string', text, at, close + 1);
  return bad(text, at, text.length, `The text ${quoted(text.slice(at))} has no closing quote at its end.`);
}

function quotedSheetAt(text: string, at: number): Token {
  const reference = referenceAt(text, at);
  if (reference !== undefined) return reference;
  const close = closingQuote(text, at);
  if (close < 0) {
    return bad(text, at, text.length, `The sheet’s name ${quoted(text.slice(at))} has no closing quote; a text stands in double quotes.`);
  }
  if (text.charCodeAt(close + 1) !== 33) {
    return bad(text, at, close + 1, `After the sheet’s name ${quoted(text.slice(at, close + 1))} a ! and a cell must follow; a text stands in double quotes.`);
  }
  return text.charCodeAt(close + 2) === 35 ? errorAt(text, at, close + 2) : noCell(text, at, close + 2);
}

/** `#REF!`, `#N/A`, also with a sheet before it. */
function errorAt(text: string, start: number, at: number): Token {
  ERROR_WORD.lastIndex = at;
  const word = ERROR_WORD.exec(text)?.[0];
  return word === undefined ? strayAt(text, start) : plain('error', text, start, at + word.length);
}

const ERROR_WORD = /#[A-Za-z0-9/]+[?!]?/y;

/** A `$` or a sheet's name that no cell follows. */
function noCell(text: string, start: number, after = start): Token {
  let end = after;
  while (end < text.length && (insideWord(text, end) || text.charCodeAt(end) === 36 || text.charCodeAt(end) === 33)) end += widthAt(text, end);
  return bad(text, start, end, `${quoted(text.slice(start, end))} is no cell: ${LIMITS}.`);
}

const ADVICE: Readonly<Record<string, string>> = {
  '–': 'A dash – cannot stand in a formula: write - for minus; a range such as 86–90 cm stands in a cell of its own.',
  '—': 'A dash — cannot stand in a formula: write - for minus.',
  '⁄': 'The fraction sign ⁄ stands only between two whole numbers: write / to divide.',
  '″': 'The inch sign stands only after a number.',
  '′': 'The foot sign stands only after a number.',
  '”': 'A text begins with “ or with a straight quote.',
};

function strayAt(text: string, at: number): Token {
  const end = at + widthAt(text, at);
  const sign = text.slice(at, end);
  return bad(text, at, end, ADVICE[sign] ?? `${quoted(sign)} has no meaning in a formula.`);
}
