/** Results as columns of plain arrays, the form in which they leave the worker. */
import { UNIT_CODES } from '../../src/quantities/index.ts';
import type { UnitCode } from '../../src/quantities/index.ts';
import { KIND } from '../../src/reckoning/protocol.ts';
import type { CellCaution, Result, SheetChanges } from '../../src/reckoning/protocol.ts';
import { dateText } from './dates.ts';
import { CellError, PercentNumber, RichNumber } from './internals.ts';
import type { Place } from './internals.ts';
import { Bracket, isDate, Measure } from './values.ts';

const PLACES = new Map<UnitCode, number>(UNIT_CODES.map((code, i) => [code, i]));
const PERCENT = PLACES.get('%')!;

/** Gives an error's sentence as the cell at a place shows it. */
export type Tell = (error: CellError, at: Place) => string;

/** @param values what each of the places holds */
export function columnsOf(sheet: number, places: readonly Place[], values: readonly unknown[], tell: Tell): SheetChanges {
  const n = places.length;
  const row = new Uint32Array(n);
  const col = new Uint16Array(n);
  const kind = new Uint8Array(n);
  const number = new Float64Array(n);
  const unit = new Uint8Array(n);
  const text: string[] = [];
  let high: Float64Array | null = null;
  for (let i = 0; i < n; i++) {
    const place = places[i]!;
    row[i] = place.row;
    col[i] = place.col;
    const value = values[i];
    if (typeof value === 'number') {
      kind[i] = KIND.quantity;
      number[i] = value;
    } else if (value instanceof Measure) {
      kind[i] = KIND.quantity;
      number[i] = value.val;
      unit[i] = PLACES.get(value.unit)!;
    } else if (typeof value === 'string') {
      kind[i] = KIND.text;
      text.push(value);
    } else if (typeof value === 'boolean') {
      kind[i] = KIND.truth;
      number[i] = Number(value);
    } else if (value instanceof CellError) {
      kind[i] = KIND.error;
      text.push(tell(value, place));
    } else if (value instanceof Bracket) {
      kind[i] = KIND.span;
      number[i] = value.span.low.value;
      unit[i] = PLACES.get(value.span.low.unit)!;
      high ??= new Float64Array(n);
      high[i] = value.span.high.value;
    } else if (isDate(value)) {
      kind[i] = KIND.text;
      text.push(dateText(value));
    } else if (value instanceof RichNumber) {
      kind[i] = KIND.quantity;
      number[i] = value.val;
      unit[i] = value instanceof PercentNumber ? PERCENT : 0;
    } else {
      kind[i] = KIND.empty;
    }
  }
  return { sheet, row, col, kind, number, unit, high, text };
}

/** The same with the cautions of those cells that have any. */
export function withCautions(columns: SheetChanges, cautionsAt: (place: Place) => readonly CellCaution[]): SheetChanges {
  const { sheet, row, col, kind } = columns;
  const cautions: NonNullable<SheetChanges['cautions']>[number][] = [];
  for (let at = 0; at < kind.length; at++) {
    const found = cautionsAt({ sheet, row: row[at]!, col: col[at]! });
    if (found.length > 0) cautions.push({ at, cautions: found });
  }
  return cautions.length > 0 ? { ...columns, cautions } : columns;
}

/** The buffers of the columns, to be handed over instead of copied. */
export function buffersOf(sheets: readonly SheetChanges[]): ArrayBuffer[] {
  return sheets.flatMap(({ row, col, kind, number, unit, high }) => [row, col, kind, number, unit, ...(high ? [high] : [])])
    .map(({ buffer }) => buffer as ArrayBuffer);
}

/** One result as an object. */
export function resultOf(value: unknown, at: Place, tell: Tell): Result {
  if (typeof value === 'number') return { kind: 'quantity', value, unit: '' };
  if (value instanceof Measure) return { kind: 'quantity', value: value.val, unit: value.unit };
  if (value instanceof Bracket) return { kind: 'span', low: value.span.low.value, high: value.span.high.value, unit: value.span.low.unit };
  if (typeof value === 'string') return { kind: 'text', text: value };
  if (typeof value === 'boolean') return { kind: 'truth', truth: value };
  if (value instanceof CellError) return { kind: 'error', sentence: tell(value, at) };
  if (isDate(value)) return { kind: 'text', text: dateText(value) };
  if (value instanceof RichNumber) return { kind: 'quantity', value: value.val, unit: value instanceof PercentNumber ? '%' : '' };
  return { kind: 'empty' };
}

