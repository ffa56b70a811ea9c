/**
 * How a run of typed texts goes on: figures and lengths with equal steps,
 * dates, texts that end in a number, letter sizes, the sizes of a chart.
 * Whatever goes on in no such way has no series, and is copied.
 */
import { amountIn, exactText, inBase, readQuantity } from '../quantities/index.ts';
import type { UnitCode } from '../quantities/index.ts';
import { letterRank, letterSize, plainText, sizeKey } from './sizes.ts';

/** The text at a place; the first one given is at 0. `null` where the series has ended. Places may be below 0. */
export type Series = (place: number) => string | null;

/** Largest difference of two steps that count as equal, in the unit typed: far below any tape, above the noise of a sum. */
const SAME = 1e-9;

/** Equal steps from one to the next; `null` when they differ or there is only one, unless `alone` says what that means. */
function stepOf(numbers: readonly number[], alone: number | null): number | null {
  if (numbers.length === 1) return alone;
  const step = numbers[1]! - numbers[0]!;
  return numbers.every((number, at) => at === 0 || Math.abs(number - numbers[at - 1]! - step) < SAME) ? step : null;
}

const FIGURE = /^(\s*)([+−-]?)(\d+(?:[.,]\d+)?(?:[ -]\d+\/\d+|\s*[¼½¾⅛⅜⅝⅞])?|\d+\/\d+|[¼½¾⅛⅜⅝⅞])([^\d/⁄¼½¾⅛⅜⅝⅞]*)$/;
const SIXTY_FOURTHS = 64;

interface Figure {
  readonly amount: number;
  /** In base units. */
  readonly value: number;
  readonly unit: UnitCode;
  /** What stands after the number, spaces and all. */
  readonly tail: string;
  readonly comma: boolean;
  readonly fraction: boolean;
  readonly places: number;
}

/** A figure as typed, if it is one number with at most one unit. */
function figureOf(text: string): Figure | null {
  const reading = readQuantity(text);
  if (reading.kind !== 'quantity' || /^\s*[+−-]?0\d/.test(text)) return null;
  const { quantity: q } = reading;
  const written = FIGURE.exec(text);
  const number = written?.[3] ?? '';
  return {
    amount: amountIn(q, q.unit), value: q.value, unit: q.unit, tail: written?.[4] ?? '',
    comma: number.includes(','), fraction: /[/¼½¾⅛⅜⅝⅞]/.test(number), places: /[.,](\d+)$/.exec(number)?.[1]?.length ?? (written ? 0 : 6),
  };
}

/** As a tape says it: 2 3/4; `null` when it is no whole number of 64ths. */
function inFraction(amount: number): string | null {
  const parts = Math.round(Math.abs(amount) * SIXTY_FOURTHS);
  if (Math.abs(parts / SIXTY_FOURTHS - Math.abs(amount)) > SAME) return null;
  const whole = Math.floor(parts / SIXTY_FOURTHS);
  let [top, bottom] = [parts % SIXTY_FOURTHS, SIXTY_FOURTHS];
  while (top > 0 && top % 2 === 0) [top, bottom] = [top / 2, bottom / 2];
  const text = top === 0 ? String(whole) : `${whole === 0 ? '' : `${whole} `}${top}/${bottom}`;
  return amount < 0 ? `-${text}` : text;
}

function figures(texts: readonly string[]): Series | null {
  const read = texts.map(figureOf);
  const first = read[0];
  if (!first || read.some((each) => each?.unit !== first.unit)) return null;
  const all = read as readonly Figure[];
  const step = stepOf(all.map(({ amount }) => amount), null);
  if (step === null || step === 0) return null;
  const valueStep = all[1]!.value - first.value;
  const places = Math.max(...all.map((each) => each.places));
  const fraction = all.some((each) => each.fraction);
  const comma = all.some((each) => each.comma);
  return (place) => {
    const amount = first.amount + step * place;
    const number = (fraction ? inFraction(amount) : null) ?? amount.toFixed(places);
    const text = `${comma ? number.replace('.', ',') : number}${first.tail}`;
    if (reads(text, amount, first.unit)) return text;
    // In base units, where a length of several parts ends: 1 yd 4 in.
    return exactText(inBase(Number((first.value + valueStep * place).toPrecision(12)), first.unit));
  };
}

/** True when the text, typed into a cell, is this figure. */
function reads(text: string, amount: number, unit: UnitCode): boolean {
  const reading = readQuantity(text);
  return reading.kind === 'quantity' && reading.quantity.unit === unit && Math.abs(amountIn(reading.quantity, unit) - amount) < SAME;
}

const DAY = 86_400_000;

interface CalendarDay {
  readonly days: number;
  readonly months: number;
  readonly day: number;
}

function dayOf(text: string): CalendarDay | null {
  const match = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text.trim());
  if (!match) return null;
  const [year, month, day] = [Number(match[1]), Number(match[2]), Number(match[3])];
  const time = Date.UTC(year, month - 1, day);
  return new Date(time).toISOString().startsWith(text.trim()) ? { days: time / DAY, months: year * 12 + month - 1, day } : null;
}

const isoDay = (time: number): string => new Date(time).toISOString().slice(0, 10);

/** By days, or by months and years where each is the same day of its month; 31 January goes to the last of February. */
function dates(texts: readonly string[]): Series | null {
  const read = texts.map(dayOf);
  if (read.some((each) => each === null)) return null;
  const all = read as readonly CalendarDay[];
  const first = all[0]!;
  const months = all.every(({ day }) => day === first.day) ? stepOf(all.map((each) => each.months), null) : null;
  if (months) {
    return (place) => {
      const month = first.months + months * place;
      const last = new Date(Date.UTC(Math.floor(month / 12), (month % 12) + 1, 0)).getUTCDate();
      return isoDay(Date.UTC(Math.floor(month / 12), month % 12, Math.min(first.day, last)));
    };
  }
  const step = stepOf(all.map(({ days }) => days), 1);
  return step ? (place) => isoDay((first.days + step * place) * DAY) : null;
}

/** "Button 1", "Button 2"; "007", "008". */
function numberedTexts(texts: readonly string[]): Series | null {
  const read = texts.map((text) => /^(|.*\D)(\d{1,9})(\s*)$/s.exec(text));
  const first = read[0];
  if (!first || read.some((each) => each?.[1] !== first[1] || each?.[3] !== first[3])) return null;
  const step = stepOf(read.map((each) => Number(each![2])), 1);
  if (!step) return null;
  const width = /^0\d/.test(first[2]!) ? first[2]!.length : 0;
  // A bare figure is a figure, and 10/12 is one size.
  if (width === 0 && !/[\p{L}#№]/u.test(first[1]!)) return null;
  return (place) => {
    const number = Number(first[2]) + step * place;
    return number < 0 ? null : `${first[1]}${String(number).padStart(width, '0')}${first[3]}`;
  };
}

/** XS, S, M; a step of two gives XS, M, XL. */
function letters(texts: readonly string[]): Series | null {
  const ranks = texts.map(letterRank);
  if (ranks.some((rank) => rank === null || !Number.isInteger(rank)) || texts.some((text) => !/^\s*(?:\d{0,2}x*)[sml]\s*$/i.test(text))) return null;
  const step = stepOf(ranks as number[], 1);
  // A further X than this is a slip of the hand, not a size.
  return step ? (place) => { const rank = ranks[0]! + step * place; return Math.abs(rank) > 10 ? null : letterSize(rank, texts.join('')); } : null;
}

/** The sizes of a chart, as far as it goes. Plain numbers are figures unless the chart shows how they go on. */
function chartLabels(texts: readonly string[], charts: readonly (readonly string[])[]): Series | null {
  const keys = texts.map(sizeKey);
  const alone = keys.length === 1 && readQuantity(plainText(texts[0]!)).kind !== 'text' ? null : 1;
  for (const labels of charts) {
    const all = labels.map(sizeKey);
    const step = keys.every((key) => all.includes(key)) ? stepOf(keys.map((key) => all.indexOf(key)), alone) : null;
    if (step) return (place) => labelText(labels[all.indexOf(keys[0]!) + step * place] ?? null);
  }
  return null;
}

/** A size that a cell would take for something else keeps its apostrophe: 00, 10/12. */
function labelText(label: string | null): string | null {
  if (label === null) return null;
  const plain = /^(?:0|[1-9]\d*)$/.test(label) || readQuantity(label).kind === 'text';
  return plain && !/^[='+\-@]/.test(label) ? label : `'${label}`;
}

/**
 * The series that some texts begin, none of them empty or a formula; `null` when there is none.
 *
 * @param charts the sizes of the workbook's charts, each list in its own order
 */
export function seriesOf(texts: readonly string[], charts: readonly (readonly string[])[]): Series | null {
  return chartOfUnequal(texts, charts) ?? figures(texts) ?? dates(texts) ?? chartLabels(texts, charts) ?? letters(texts) ?? numberedTexts(texts);
}

/** A chart goes before figures where it knows better: 18, 20 in a chart that goes on with 24. */
function chartOfUnequal(texts: readonly string[], charts: readonly (readonly string[])[]): Series | null {
  if (texts.length < 2 || texts.some((text) => !/^'?\d{1,3}$/.test(text))) return null;
  const unequal = charts.filter((labels) => stepOf(labels.map(Number), null) === null);
  return chartLabels(texts, unequal);
}
