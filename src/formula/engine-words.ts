/** Single words of a formula in the engine's dialect. */
import { UNIT_CODES } from '../quantities/index.ts';
import { columnName, looksLikeCell } from './address.ts';
import { quoted } from './characters.ts';
import { engineName, foldName, nameIndex } from './names.ts';
import { foldSheet, sheetIdOf } from './sheet-name.ts';
import { engineSheet } from './sheets.ts';
import { LIMITS } from './tokens.ts';
import type { Corner, EngineContext, Token, UnitPart } from './types.ts';

/** A word in the engine's dialect, or why there is none. */
export type Word = { readonly text: string } | { readonly sentence: string };

/**
 * The engine's internal function for a figure with a unit: the amount in that
 * unit, and the unit's place in `UNIT_CODES`. HyperFormula reads a full stop in
 * a function's name (its lexer's `ProcedureName`).
 */
export const QUANTITY_CALL = 'TT.QUANTITY';

/** Signs that the engine spells otherwise. */
const SIGNS: Readonly<Record<string, string>> = { '×': '*', '÷': '/', '−': '-', '≤': '<=', '≥': '>=', '≠': '<>' };

export function engineSign(sign: string): string {
  return SIGNS[sign] ?? sign;
}

/**
 * A text. The engine has no doubled quote inside a text and takes a backslash
 * for an escape, so both become calls of CHAR.
 */
export function engineString(token: Token): string {
  const straight = token.text.charCodeAt(0) === 34;
  const inside = token.text.slice(1, -1);
  const text = straight ? inside.replaceAll('""', '"') : inside;
  const pieces = text.split(/(["\\])/).filter((piece) => piece !== '');
  if (pieces.length === 0) return '""';
  const calls = pieces.map((piece) => (piece === '"' ? 'CHAR(34)' : piece === '\\' ? 'CHAR(92)' : `"${piece}"`)).join('&');
  return pieces.length === 1 ? calls : `(${calls})`;
}

/** A figure with a unit. `1 yd 4 in` is a sum, so that nothing is rounded on the way; the first unit is the one it shows in. */
export function engineUnit(parts: readonly UnitPart[]): string {
  const calls = parts.map(({ amount, over, unit }) => {
    const call = `${QUANTITY_CALL}(${amount},${UNIT_CODES.indexOf(unit)})`;
    return over === undefined ? call : `${call}/${over}`;
  });
  const sum = calls.join('+');
  return calls.length > 1 || sum.includes('/') ? `(${sum})` : sum;
}

export function engineReference({ text, reference }: Token, { sheets }: EngineContext): Word {
  if (reference === undefined) return { sentence: `${quoted(text)} is no cell.` };
  const { sheet, from, to, toSheet } = reference;
  let prefix = '';
  if (sheet !== undefined) {
    const id = sheetIdOf(sheet, sheets);
    if (id === undefined) return { sentence: `There is no sheet called ${quoted(sheet)}: write another sheet’s name, or add a sheet of that name.` };
    prefix = `${engineSheet(id)}!`;
  }
  if (toSheet !== undefined && (sheet === undefined || foldSheet(toSheet) !== foldSheet(sheet))) {
    return { sentence: `${quoted(text)} goes from one sheet to another: both ends must be on one sheet, with its name before the first.` };
  }
  return { text: prefix + cornerText(from) + (to === undefined ? '' : `:${cornerText(to)}`) };
}

function cornerText({ row, col, rowFixed, colFixed }: Corner): string {
  return (col === null ? '' : (colFixed ? '$' : '') + columnName(col)) + (row === null ? '' : `${rowFixed ? '$' : ''}${row + 1}`);
}

/** A name, known or not: the engine says which are not. */
export function engineNameOf({ text }: Token, { names }: EngineContext): Word {
  if (!nameIndex(names).names.has(foldName(text)) && /^[A-Za-z]{1,3}\d+$/.test(text) && !looksLikeCell(text)) {
    return { sentence: `${quoted(text)} is neither a name nor a cell: ${LIMITS}.` };
  }
  return { text: engineName(text) };
}

/** Letters that the engine takes in a function's name. */
const CALLABLE = /^[A-Za-z\u00c0-\u02af][A-Za-z\u00c0-\u02af0-9_.]*$/;

/** A function's name with its opening bracket. */
export function engineCall({ text }: Token): Word {
  if (/^OFFSET/i.test(text)) {
    return { sentence: `${text.toUpperCase()} cannot be used here, because it would not follow rows and columns that are inserted: point at the cells themselves, or use INDEX.` };
  }
  if (!CALLABLE.test(text) || /^TT\./i.test(text)) return { sentence: `There is no function called ${quoted(text)}.` };
  return { text: `${text.toUpperCase()}(` };
}

/** The error words that a formula may hold (HyperFormula's, for English). */
const ERRORS = new Set(['#CYCLE!', '#DIV/0!', '#ERROR!', '#N/A', '#NAME?', '#NUM!', '#REF!', '#SPILL!', '#VALUE!']);

export function engineError({ text }: Token): Word {
  const word = text.slice(text.lastIndexOf('#')).toUpperCase();
  return ERRORS.has(word) ? { text: word } : { sentence: `${quoted(text)} is no error that a formula can hold.` };
}

