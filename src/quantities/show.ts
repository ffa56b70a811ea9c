/**
 * Showing: text for the screen. Rounds what is shown and never the value.
 *
 * A tie goes away from zero (OpenFormula ROUND, section 6.17.5), so that −x
 * always shows as the mirror image of x; a tie within 1e-9 of a step counts.
 * Rounding carries over: 11.99 in shows as 1 ft where feet are shown.
 */
import { decimalFigure, tapeFigure } from './figures.ts';
import type { Figure } from './figures.ts';
import type { Quantity, Span } from './quantity.ts';
import { UNITS, withSign } from './units.ts';
import type { UnitCode } from './units.ts';

export interface ShowAs {
  /** Each in its own unit, all in one system, or in its own and beside it in the other. */
  readonly system: 'own' | 'cm' | 'in' | 'both';
  /** The part of an inch that inches, feet and yards are rounded to. */
  readonly inchStep: 8 | 16 | 32;
  /** Show in this unit whatever the system; ignored for quantities of another dimension. */
  readonly unit?: UnitCode;
  /** So many decimals, 0 to 10, instead of the unit's own way; inches, feet and yards then show as decimals. The other system's figure stays as it is. */
  readonly decimals?: number;
  readonly decimalMark?: '.' | ',';
  /** Only characters that every keyboard and file has: `-28 3/8 in`, `5 cm2`. */
  readonly plain?: boolean;
}

export interface Shown {
  readonly main: string;
  /** The same in the other system; only for lengths and areas, where both are asked for. */
  readonly also?: string;
  /** Nothing was rounded away in `main`. */
  readonly exact: boolean;
}

/**
 * A quantity as it shows in a cell: cm to 1 decimal, m to 2, mm to at most 1,
 * inches as fractions, `1 yd 4 in`, `5 ft 6 ½ in`, cm² whole, m² to 2 decimals,
 * in² to 1, degrees to 1, percents to at most 1 and numbers to at most 3.
 */
export function show(q: Quantity, as: ShowAs): Shown {
  const unit = shownUnit(q, as);
  const own = figure(q.value, unit, as, as.decimals);
  const main = written(own, unit, as);
  const other = as.system === 'both' ? OTHER[unit] : undefined;
  if (other === undefined) return { main, exact: own.exact };
  return { main, also: written(figure(q.value, other, as, undefined), other, as), exact: own.exact };
}

/** A span as it shows in a cell: `86.0–90.0 cm`, with the unit once where both ends have it. */
export function showSpan(span: Span, as: ShowAs): Shown {
  const unit = shownUnit(span.low, as);
  const low = figure(span.low.value, unit, as, as.decimals);
  const high = figure(span.high.value, unit, as, as.decimals);
  const main = joined(low, high, unit, as);
  const exact = low.exact && high.exact;
  const other = as.system === 'both' ? OTHER[unit] : undefined;
  if (other === undefined) return { main, exact };
  const also = joined(figure(span.low.value, other, as, undefined), figure(span.high.value, other, as, undefined), other, as);
  return { main, also, exact };
}

/**
 * As `show`, in one text that `readQuantity` reads back to what is shown.
 * Where both systems are asked for this is the quantity's own, since two
 * figures are not one. A decimal comma before just three figures, which could
 * be read as thousands, gets a fourth: 1.234 is `1,2340`.
 */
export function showText(q: Quantity, as: ShowAs): string {
  const { main } = show(q, as);
  return as.decimalMark === ',' ? main.replace(/^([−-]?[1-9]\d{0,2},\d{3})(?!\d)/, '$10') : main;
}

const METRIC: Partial<Record<UnitCode, UnitCode>> = { in: 'cm', ft: 'cm', yd: 'm', in2: 'cm2', ft2: 'cm2', yd2: 'm2' };
const INCH: Partial<Record<UnitCode, UnitCode>> = { mm: 'in', cm: 'in', m: 'yd', mm2: 'in2', cm2: 'in2', m2: 'yd2' };
/** The unit of the other system that is used for the same things: cloth is bought by the metre or the yard. */
const OTHER: Partial<Record<UnitCode, UnitCode>> = { ...METRIC, ...INCH };

function shownUnit(q: Quantity, as: ShowAs): UnitCode {
  if (as.unit !== undefined && UNITS[as.unit].dimension === q.dimension) return as.unit;
  if (as.system === 'cm') return METRIC[q.unit] ?? q.unit;
  if (as.system === 'in') return INCH[q.unit] ?? q.unit;
  return q.unit;
}

/** Decimals by unit; `atMost` leaves the zeros at the end off. Lengths in inches have none: they are fractions. */
const WAYS: Readonly<Record<UnitCode, { readonly places: number; readonly atMost?: true } | null>> = {
  '': { places: 3, atMost: true }, '%': { places: 1, atMost: true },
  mm: { places: 1, atMost: true }, cm: { places: 1 }, m: { places: 2 }, in: null, ft: null, yd: null,
  mm2: { places: 0 }, cm2: { places: 0 }, m2: { places: 2 }, in2: { places: 1 }, ft2: { places: 2 }, yd2: { places: 2 },
  deg: { places: 1 }, rad: { places: 3 },
};

function figure(value: number, unit: UnitCode, as: ShowAs, decimals: number | undefined): Figure {
  const { size } = UNITS[unit];
  const mark = as.decimalMark ?? '.';
  if (decimals !== undefined) return decimalFigure(value / size, Math.min(10, Math.max(0, Math.trunc(decimals))), mark, false);
  const way = WAYS[unit];
  if (way === null) return tapeFigure(value, unit as 'in' | 'ft' | 'yd', as.inchStep, as.plain === true);
  return decimalFigure(value / size, way.places, mark, way.atMost === true);
}

const signOf = (unit: UnitCode, as: ShowAs): string => (as.plain === true && unit !== '' ? unit : UNITS[unit].sign);

const minusOf = (f: Figure, as: ShowAs): string => (f.negative ? (as.plain === true ? '-' : '−') : '');

function written(f: Figure, unit: UnitCode, as: ShowAs): string {
  const figureText = minusOf(f, as) + f.text;
  return f.hasUnits ? figureText : withSign(figureText, signOf(unit, as));
}

function joined(low: Figure, high: Figure, unit: UnitCode, as: ShowAs): string {
  // A dash beside a minus is hard to read, and a hyphen before a fraction means something else.
  const dash = low.negative || high.negative || as.plain === true ? ' to ' : '–';
  if (low.hasUnits || high.hasUnits) return written(low, unit, as) + dash + written(high, unit, as);
  return minusOf(low, as) + low.text + dash + written(high, unit, as);
}
