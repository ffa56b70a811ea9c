/**
 * What the labels along the sides of a size chart say: which side names sizes
 * and which measures, what a size is called, what a measure is called whatever
 * its spelling.
 */
import { exactText, unitNamed, UNITS } from '../quantities/index.ts';
import type { UnitCode } from '../quantities/index.ts';
import type { Value } from './define.ts';

export interface SizeLabel {
  readonly text: string;
  /** What a formula gets back: a number where the cell holds a number. */
  readonly value: number | string;
  /** How it is found: without regard to case, spaces and a leading "size". */
  readonly key: string;
}

/** A label's cell as text; null where it is empty. */
export function labelText(cell: Value | undefined): string | null {
  if (cell === null || cell === undefined || typeof cell === 'boolean') return null;
  if (typeof cell === 'string') return cell.trim() === '' ? null : cell.trim();
  if ('dimension' in cell) return cell.dimension === 'number' && cell.unit === '' ? String(cell.value) : exactText(cell);
  return 'low' in cell ? `${exactText(cell.low)}–${exactText(cell.high)}` : null;
}

export function sizeLabel(cell: Value | undefined): SizeLabel | null {
  const text = labelText(cell);
  if (text === null) return null;
  const bare = typeof cell === 'object' && cell !== null && 'dimension' in cell && cell.dimension === 'number' && cell.unit === '';
  return { text, value: bare ? cell.value : text, key: sizeKey(text) };
}

export function sizeKey(text: string): string {
  return text.toLowerCase().replace(/^size(?=[\s\d])/, '').replace(/\s+/g, '');
}

/** "00", "000": sizes of their own below 0. The number of steps below it, or null. */
export function stepsBelowZero(text: string): number | null {
  return /^0{2,4}$/.test(text) ? text.length - 1 : null;
}

/** The number that a size label is, or null: "10", "8.5", not "10/12" or "00". */
export function sizeNumber(text: string): number | null {
  return stepsBelowZero(text) === null && /^\d{1,6}(?:[.,]\d{1,3})?$/.test(text) ? Number(text.replace(',', '.')) : null;
}

const LETTERS = /^(?:x{0,5}|\d{1,2}x?)[sml]$|^\d{1,2}x$/;
const CODE = /^\d{1,3}[a-z]{1,3}$/;
const WORD = /^(?:extra ?)?(?:small|medium|large)$|^(?:petite|tall|regular|one ?size)$/;

/** Whether a label looks like a size: a number, letters such as XXS or 3XL, a code such as 9AR, or two of them as in 10/12 or S–M. */
export function looksLikeSize(text: string): boolean {
  const plain = text.toLowerCase().trim().replace(/^(?:size|uk|us|eu)\.? ?(?=[\dxsml])/, '');
  const parts = plain.split(/\s*[/–-]\s*/);
  return parts.length <= 3 && parts.every((part) => /^\d{1,3}(?:[.,]\d)?$/.test(part) || LETTERS.test(part) || CODE.test(part) || WORD.test(part));
}

export interface MeasureLabel {
  /** The words that name it, in small letters with single spaces, without its unit: "bust girth". */
  readonly words: string;
  /** The unit that its label ends with. */
  readonly unit: UnitCode | null;
}

/** "Bust (cm)", "bust_cm", "BUST" are one measure: "bust". */
export function measureLabel(text: string): MeasureLabel {
  const words = text
    .toLowerCase()
    .replace(/[_().,:;[\]–-]+/g, ' ')
    .split(/\s+/)
    .filter((word) => word !== '');
  let unit: UnitCode | null = null;
  for (let last = words.at(-1); words.length > 1 && last !== undefined; last = words.at(-1)) {
    const named = unitNamed(last);
    if (named === undefined || UNITS[named].dimension !== 'length') break;
    unit ??= named;
    words.pop();
  }
  return { words: words.join(' '), unit };
}

const LOW_END = /^(.+) (?:from|min|minimum|low)$/;
const HIGH_END = /^(.+) (?:to|max|maximum|high)$/;

/** "bust from" is the lower end of a range of "bust". */
export function rangeEnd(words: string): { readonly base: string; readonly end: 'low' | 'high' } | null {
  const low = LOW_END.exec(words)?.[1];
  if (low !== undefined) return { base: low, end: 'low' };
  const high = HIGH_END.exec(words)?.[1];
  return high === undefined ? null : { base: high, end: 'high' };
}

/** "bust, waist or hip"; a long list is cut. */
export function listed(names: readonly string[]): string {
  if (names.length > 12) return `${names.slice(0, 10).join(', ')} … ${names.at(-1)}`;
  return names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
}
