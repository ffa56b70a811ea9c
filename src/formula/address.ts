import { insideWord, isDigit, isLatin, skipSpaces } from './characters.ts';
import { scanSheet } from './sheet-name.ts';
import type { Box, Corner, Reference } from './types.ts';

/** Rows a sheet can have. The engine must be given the same limit (`maxRows`). */
export const MAX_ROWS = 1_000_000;
/** Columns a sheet can have: A to ALL. The engine must be given the same limit (`maxColumns`). */
export const MAX_COLUMNS = 1_000;

/** 0 is `A`, 26 is `AA`. */
export function columnName(col: number): string {
  let name = '';
  for (let n = col; n >= 0; n = Math.floor(n / 26) - 1) name = String.fromCharCode(65 + (n % 26)) + name;
  return name;
}

/** `A` is 0, in either case; `undefined` when the text is no column of a sheet. */
export function columnNumber(text: string): number | undefined {
  if (!/^[A-Za-z]{1,3}$/.test(text)) return undefined;
  let n = 0;
  for (const letter of text.toUpperCase()) n = n * 26 + letter.charCodeAt(0) - 64;
  return n <= MAX_COLUMNS ? n - 1 : undefined;
}

/** Row 0, column 0 is `A1`. */
export function cellName(row: number, col: number): string {
  return `${columnName(col)}${row + 1}`;
}

/** `A1`, `A1:B2`, or `B:C` and `3:5` when it reaches over all rows or all columns. */
export function areaName({ top, left, bottom, right }: Box): string {
  if (top === 0 && bottom >= MAX_ROWS - 1) return `${columnName(left)}:${columnName(right)}`;
  if (left === 0 && right >= MAX_COLUMNS - 1) return `${top + 1}:${bottom + 1}`;
  const first = cellName(top, left);
  return top === bottom && left === right ? first : `${first}:${cellName(bottom, right)}`;
}

/** Reads `A1`, `$A$1:B2`, `B:B`, `3:3`, each with a sheet before it or not; `undefined` when it is none of these. */
export function readArea(text: string): (Box & { readonly sheet?: string }) | undefined {
  const trimmed = text.trim();
  const scan = scanReference(trimmed, 0);
  if (scan === undefined || scan.end !== trimmed.length) return undefined;
  const box = boxOf(scan.reference);
  return scan.reference.sheet === undefined ? box : { ...box, sheet: scan.reference.sheet };
}

/** True for a text that a formula reads as a cell: `A1`, `cm2`, `$B$3`. */
export function looksLikeCell(text: string): boolean {
  const corner = scanCorner(text, 0);
  return corner !== undefined && corner.end === text.length && corner.row !== null && corner.col !== null && onSheet(corner);
}

/** The cells a reference covers, its ends put in order. */
export function boxOf({ from, to = from }: Reference): Box {
  const rows = from.row === null || to.row === null ? [0, MAX_ROWS - 1] as const : [from.row, to.row] as const;
  const cols = from.col === null || to.col === null ? [0, MAX_COLUMNS - 1] as const : [from.col, to.col] as const;
  return {
    top: Math.min(...rows), left: Math.min(...cols), bottom: Math.max(...rows), right: Math.max(...cols),
  };
}

interface CornerScan extends Corner {
  readonly end: number;
}

/** Reads `A1`, `$A$1`, `B`, `$3` at a place; says nothing about the sheet's limits or about what follows. */
function scanCorner(text: string, at: number): CornerScan | undefined {
  let p = at;
  const dollar = text.charCodeAt(p) === 36;
  if (dollar) p += 1;
  let col = 0;
  const letters = p;
  for (let code = text.charCodeAt(p); isLatin(code); code = text.charCodeAt(p)) {
    if (p - letters === 3) return undefined;
    col = col * 26 + (code & 31);
    p += 1;
  }
  const hasColumn = p > letters;
  const second = hasColumn && text.charCodeAt(p) === 36;
  if (second) p += 1;
  let row = 0;
  const digits = p;
  for (let code = text.charCodeAt(p); isDigit(code); code = text.charCodeAt(p)) {
    row = row * 10 + code - 48;
    p += 1;
  }
  if (p === digits) {
    if (!hasColumn || second) return undefined;
    return { row: null, col: col - 1, rowFixed: false, colFixed: dollar, end: p };
  }
  if (!hasColumn) return { row: row - 1, col: null, rowFixed: dollar, colFixed: false, end: p };
  return { row: row - 1, col: col - 1, rowFixed: second, colFixed: dollar, end: p };
}

/** True when both the row and the column are ones that a sheet has. */
export function onSheet({ row, col }: Corner): boolean {
  return (row === null || (row >= 0 && row < MAX_ROWS)) && (col === null || (col >= 0 && col < MAX_COLUMNS));
}

/** A reference ends before a character that would make it part of a word, a call or a sheet's name. */
function endsHere(text: string, at: number): boolean {
  const code = text.charCodeAt(at);
  return at >= text.length || !(code === 40 || code === 33 || code === 36 || insideWord(text, at));
}

const corner = ({ row, col, rowFixed, colFixed }: CornerScan): Corner => ({ row, col, rowFixed, colFixed });

/** Reads the longest reference that begins at a place, within the sheet's limits. */
export function scanReference(text: string, at: number): { readonly reference: Reference; readonly end: number } | undefined {
  const first = text.charCodeAt(at);
  const sheet = first === 36 || isDigit(first) ? undefined : scanSheet(text, at);
  const from = scanCorner(text, sheet?.end ?? at);
  if (from === undefined || !onSheet(from)) return undefined;
  const named = sheet === undefined ? undefined : { sheet: sheet.name };

  const colon = skipSpaces(text, from.end);
  if (text.charCodeAt(colon) === 58) {
    const next = skipSpaces(text, colon + 1);
    const again = scanSheet(text, next);
    const to = scanCorner(text, again?.end ?? next);
    const alike = to !== undefined && (to.row === null) === (from.row === null) && (to.col === null) === (from.col === null);
    if (alike && onSheet(to) && endsHere(text, to.end)) {
      const reference: Reference = { ...named, from: corner(from), to: corner(to), ...(again && { toSheet: again.name }) };
      return { reference, end: to.end };
    }
  }
  if (from.row === null || from.col === null || !endsHere(text, from.end)) return undefined;
  return { reference: { ...named, from: corner(from) }, end: from.end };
}

const SHEET = "(?:'(?:[^']|'')*'|[^'!:]*)!";
const CORNER = '(\\$?)([A-Za-z]*)(\\$?)(\\d*)';
const PARTS = new RegExp(`^(${SHEET})?${CORNER}(?:(\\s*:\\s*)(${SHEET})?${CORNER})?$`);

/**
 * A reference's text with other cells in it, and everything else as it was
 * spelt: dollars, small letters, spaces around the colon. `sheet` is the new
 * text before the `!`, `''` for none; left out, the sheet stays as written.
 */
export function respell(text: string, from: Corner, to: Corner | undefined, sheet?: string): string {
  const parts = PARTS.exec(text);
  if (parts === null) return text;
  const [, prefix = '', d1 = '', letters = '', d2 = '', digits = '', colon, again = '', e1 = '', toLetters = '', e2 = '', toDigits = ''] = parts;
  const name = sheet === undefined ? prefix : sheet && `${sheet}!`;
  const start = name + d1 + column(from, letters) + d2 + row(from, digits);
  if (to === undefined || colon === undefined) return start;
  const second = again && (sheet === undefined ? again : name);
  return start + colon + second + e1 + column(to, toLetters) + e2 + row(to, toDigits);
}

function column({ col }: Corner, before: string): string {
  if (col === null || columnNumber(before) === col) return before;
  const name = columnName(col);
  return before === before.toLowerCase() ? name.toLowerCase() : name;
}

function row({ row: index }: Corner, before: string): string {
  return index === null || Number(before) === index + 1 ? before : String(index + 1);
}
