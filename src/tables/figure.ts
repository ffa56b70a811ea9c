/** One field of a file as a figure: its decimal mark, its unit, or that it has none. */
import { readQuantity, type Quantity, type Span, type UnitCode } from '../quantities/index.ts';
import type { DecimalMark } from './reading.ts';

export type ReadField =
  | { readonly kind: 'figure'; readonly raw: string; readonly value: Quantity | Span; readonly ownUnit: UnitCode | null }
  | { readonly kind: 'none' }
  | { readonly kind: 'unreadable'; readonly sentence: string; readonly looksLikeFigure: boolean };

const NO_FIGURE = /^(?:[-–—−]+|[.…]+|n\.?\s?\/?\s?a\.?)?$/i;
/** A decimal comma that cannot part thousands. */
const CLEAR_COMMA = /(\d),(\d{1,2})(?!\d)/g;
const ANY_COMMA = /(\d),(\d)/g;
const UNCLEAR_POINT = /(?<![\d.,])\d{1,3}\.\d{3}(?![\d.,])/;
const STARTS_LIKE_FIGURE = /^[-–−+±~<>≤≥(]?\s*[.,]?[\d¼-¾⅐-⅞]/;

export const isNoFigure = (text: string): boolean => NO_FIGURE.test(text);
export const startsLikeFigure = (text: string): boolean => STARTS_LIKE_FIGURE.test(text);
export const unitOf = (value: Quantity | Span): UnitCode => ('low' in value ? value.low.unit : value.unit);

const lowOf = (value: Quantity | Span): Quantity => ('low' in value ? value.low : value);

/** Longer texts are no figures; not looking into them keeps every pattern here quick. */
const LONGEST = 60;

/** The text with decimal points, as every reader of figures understands them. */
function withPoints(text: string, mark: DecimalMark): string {
  return text.replace(mark === ',' ? ANY_COMMA : CLEAR_COMMA, '$1.$2');
}

/**
 * Reads a field, a bare figure in `unit` (`''` for none). The unit written in
 * the field wins. A figure that would be a thousandfold with the file's other
 * decimal mark is refused.
 */
export function readField(text: string, unit: UnitCode, mark: DecimalMark): ReadField {
  if (text.length > LONGEST) return { kind: 'unreadable', looksLikeFigure: false, sentence: 'This is no figure.' };
  if (isNoFigure(text)) return { kind: 'none' };
  const looksLikeFigure = startsLikeFigure(text);
  if (mark === ',' && !text.includes(',') && UNCLEAR_POINT.test(text)) {
    return { kind: 'unreadable', looksLikeFigure, sentence: `“${text}” has a point where this file writes a comma, so it may be a thousandfold: write it with a comma.` };
  }
  const plain = withPoints(text, mark);
  const alone = readQuantity(plain);
  if ((alone.kind === 'quantity' && alone.quantity.unit !== '') || (alone.kind === 'span' && unitOf(alone.span) !== '')) {
    const value = alone.kind === 'quantity' ? alone.quantity : alone.span;
    return { kind: 'figure', raw: plain, value, ownUnit: unitOf(value) };
  }
  const raw = unit === '' ? plain : `${plain} ${unit}`;
  const whole = unit === '' ? alone : readQuantity(raw);
  if (whole.kind === 'quantity') return { kind: 'figure', raw, value: whole.quantity, ownUnit: null };
  if (whole.kind === 'span') return { kind: 'figure', raw, value: whole.span, ownUnit: null };
  const sentence = alone.kind === 'refused' ? alone.sentence
    : whole.kind === 'refused' ? whole.sentence
    : `“${text}” is no figure.`;
  return { kind: 'unreadable', looksLikeFigure, sentence };
}

/** A figure's size in its own terms, for comparing only: mm, or the bare number; a range's low end. */
export const magnitude = (value: Quantity | Span): number => lowOf(value).value;

/** `readField` for one file, in which the same texts come again and again. */
export type FieldReader = (text: string, unit: UnitCode) => ReadField;

export function fieldReader(mark: DecimalMark): FieldReader {
  const known = new Map<string, ReadField>();
  return (text, unit) => {
    const key = `${unit} ${text}`;
    let field = known.get(key);
    if (!field) known.set(key, field = readField(text, unit, mark));
    return field;
  };
}

export interface DecimalMarks {
  /** Fields with a comma that can only be decimal: one, two, or more than three figures after it. */
  readonly commas: number;
  /** Fields with a comma before three figures, which might part thousands. */
  readonly unclear: number;
  readonly points: number;
  /** All fields that begin like a figure. */
  readonly figures: number;
}

/** What marks the figures of a whole file have. */
export function decimalMarks(fields: Iterable<string>): DecimalMarks {
  const found = { commas: 0, unclear: 0, points: 0, figures: 0 };
  for (const field of fields) {
    if (field.length > LONGEST || !startsLikeFigure(field)) continue;
    found.figures++;
    if (/(?<![\d.,])\d+,(?:\d{1,2}|\d{4,})(?![\d.,])/.test(field)) found.commas++;
    else if (/(?<![\d.,])\d+,\d{3}(?![\d.,])/.test(field)) found.unclear++;
    else if (/(?<![\d.,])\d+\.\d+(?![\d.,])/.test(field)) found.points++;
  }
  return found;
}
