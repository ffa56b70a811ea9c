/** Functions of text. They see a figure with a unit as the text that it shows as. */
import { amountIn, readQuantity, showText, unitNamed, UNITS } from '../../../src/quantities/index.ts';
import { CellError, EmptyValue, PercentNumber, SimpleRangeValue } from '../internals.ts';
import type { TimeNumber } from '../internals.ts';
import { spanSentence } from '../arithmetic.ts';
import { Bracket, Dimensioned, isDate, isNumeric, Measure, refuse, valueOf } from '../values.ts';
import { timeIn } from './calendar.ts';
import { tooMany } from './rounding.ts';
import { kindOf } from './tools.ts';
import type { Call, Given, Own } from './tools.ts';

export const shows: Own = (call) => call.library(call.given.map(({ value }) => shown(call, value)));

function shown(call: Call, value: unknown): unknown {
  if (value instanceof SimpleRangeValue) {
    if (!value.data.some((cells) => cells.some(needsShowing))) return value;
    return SimpleRangeValue.onlyValues(value.data.map((cells) => cells.map((cell) => shown(call, cell))));
  }
  return needsShowing(value) ? call.tools.arithmetic.text(value) : value;
}

/** Found nowhere, as an empty text is to be: the library finds one at the same place for ever. */
const NOWHERE = '\u{10FFFF}\u0000';

/** The library takes `$` in the new words for one of its own signs. */
export const SUBSTITUTE: Own = (call) => {
  const all = call.given.length < 4 || call.given[3]!.ast.type === 'EMPTY';
  const [text, wanted, by, ...rest] = call.given.map(({ value }) => shown(call, value));
  if (call.given.length < 3) return call.library();
  if (call.given[1]!.ast.type === 'EMPTY') return text;
  const found = each(wanted, (value) => (value === '' || value === EmptyValue ? NOWHERE : value));
  const plain = each(by, (value) => (all && typeof value === 'string' ? value.replaceAll('$', '$$$$') : value));
  return call.library([text, found, plain, ...rest]);
};

function each(value: unknown, change: (value: unknown) => unknown): unknown {
  return value instanceof SimpleRangeValue ? SimpleRangeValue.onlyValues(value.data.map((cells) => cells.map(change))) : change(value);
}

const needsShowing = (value: unknown): boolean => value instanceof Dimensioned || value instanceof PercentNumber || isDate(value);

/** TEXT of a figure in the way asked: a pattern of digits, a fraction such as `# ?/8`, a unit, or a pattern with a unit after it. */
export const TEXT: Own = (call) => {
  if (call.given.length !== 2) return tooMany(call, 'a figure and a way to write it');
  const [figure, way] = call.given;
  const fault = call.unitFault(way!);
  if (fault) return fault;
  return call.tools.interpreter.binaryRangeWrapper((value, format) => written(call, value, format), figure!.value, way!.value, call.state);
};

const WITH_UNIT = /^(.*?)\s*([\p{L}"'′″°²]+\d?)$/u;

function written(call: Call, value: unknown, format: unknown): unknown {
  if (value instanceof CellError) return value;
  if (format instanceof CellError) return format;
  if (value instanceof Bracket) return refuse(spanSentence(value));
  if (isDate(value)) return call.library([value, format]);
  const [, before = '', word = ''] = typeof format === 'string' ? WITH_UNIT.exec(format.trim()) ?? [] : [];
  const pattern = PATTERN.test(before) || FRACTION.test(before) ? before : '';
  const unit = before === '' || pattern !== '' ? unitNamed(word) : undefined;
  if (!(value instanceof Measure)) {
    if (unit !== undefined && unit !== '%' && unit !== '') return refuse(`${call.tools.arithmetic.text(value)} is no ${UNITS[unit].dimension}, so TEXT cannot write it in ${UNITS[unit].sign}: give it a unit first.`);
    return typeof format === 'string' && isNumeric(value) ? inPattern(call, typeof value === 'number' ? value : value.val, format) : call.library([value, format]);
  }
  if (unit !== undefined && UNITS[unit].dimension !== value.dimension) return refuse(`${call.tools.arithmetic.text(value)} is ${kindOf(value)}, so TEXT cannot write it in ${UNITS[unit].sign || word}: name a unit of its kind.`);
  if (unit !== undefined && pattern === '') return showText(value, { system: 'own', inchStep: 32, unit });
  const text = inPattern(call, amountIn(value, unit ?? value.unit), unit === undefined ? format : pattern);
  return typeof text === 'string' ? `${text} ${UNITS[unit ?? value.unit].sign}` : text;
}

/** Digits before a point and after it, with a comma where thousands are to be told apart, and a percent. */
const PATTERN = /^([#0,]*[#0])(?:\.([#0]+))?(%?)$/;
/** `# ?/8`: a whole number and a fraction, of a given denominator or of one with so many digits. */
const FRACTION = /^(?:([#0]+)\s+)?[?#]+\/(\?{1,3}|[1-9]\d{0,3})$/;

function inPattern(call: Call, amount: number, format: unknown): unknown {
  const pattern = typeof format === 'string' ? format.trim() : '';
  const [digits, before = '', after = '', percent = ''] = PATTERN.exec(pattern) ?? [];
  if (digits !== undefined && Math.abs(amount) < 1e12) return inDigits(percent === '' ? amount : 100 * amount, before, after) + percent;
  const [whole, mixed, over] = FRACTION.exec(pattern) ?? [];
  if (whole !== undefined) return inParts(amount, mixed !== undefined, over!);
  if (/[?%,]/.test(pattern)) return refuse(`TEXT does not know the pattern “${pattern}”: write "0.00" for decimals, "# ?/8" for eighths, or a unit such as "cm".`);
  return call.library([amount, format]);
}

/** Rounded for show as ROUND does it, with at least as many digits as there are zeros. */
function inDigits(amount: number, before: string, after: string): string {
  const scale = 10 ** after.length;
  const rounded = Math.floor(Math.abs(amount) * scale + 0.5 + 1e-9 * Math.max(1, Math.abs(amount))) / scale;
  const [whole = '0', part = ''] = rounded.toFixed(after.length).split('.');
  const units = (whole === '0' ? '' : whole).padStart([...before].filter((sign) => sign === '0').length, '0');
  const grouped = before.includes(',') ? units.replace(/\B(?=(?:\d{3})+$)/g, ',') : units;
  const least = after.lastIndexOf('0') + 1;
  const decimals = part.slice(0, least) + part.slice(least).replace(/0+$/, '');
  return `${amount < 0 && rounded > 0 ? '-' : ''}${grouped}${decimals === '' ? '' : `.${decimals}`}`;
}

/** As a fraction over a given number, or over one with so many digits. */
function inParts(amount: number, mixed: boolean, over: string): string {
  const size = Math.abs(amount);
  const [top, bottom] = over.startsWith('?') ? closest(size, 10 ** over.length - 1) : reduced(Math.floor(size * Number(over) + 0.5 + 1e-9), Number(over));
  const sign = amount < 0 && top > 0 ? '-' : '';
  const units = mixed ? Math.floor(top / bottom) : 0;
  const rest = top - units * bottom;
  if (rest === 0) return `${sign}${mixed ? units : top / bottom}`;
  return `${sign}${units > 0 ? `${units} ` : ''}${rest}/${bottom}`;
}

function reduced(top: number, bottom: number): readonly [number, number] {
  let [a, b] = [top, bottom];
  while (b > 0) [a, b] = [b, a % b];
  return a === 0 ? [0, 1] : [top / a, bottom / a];
}

/** The fraction nearest to an amount whose denominator is not above `most`; the least of several that are as near. */
function closest(amount: number, most: number): readonly [number, number] {
  let best: readonly [number, number] = [Math.round(amount), 1];
  for (let bottom = 2; bottom <= most; bottom++) {
    const top = Math.round(amount * bottom);
    if (Math.abs(top / bottom - amount) < Math.abs(best[0] / best[1] - amount) - 1e-12) best = [top, bottom];
  }
  return best;
}

/** The figure that a text reads as, with its unit. Fractions, and times as parts of a day, are plain numbers (OpenFormula 6.13.34). */
export const VALUE: Own = (call) => {
  if (call.given.length !== 1) return tooMany(call, 'one value');
  return call.tools.interpreter.unaryRangeWrapper((value) => {
    if (value instanceof Dimensioned) return value;
    if (typeof value !== 'string') return call.library([value]);
    const reading = readQuantity(value);
    if (reading.kind === 'quantity') return valueOf(reading.quantity);
    if (reading.kind === 'span') return new Bracket(reading.span);
    const number = plainNumberIn(value);
    if (number !== undefined) return number;
    if (reading.kind === 'refused') return refuse(reading.sentence);
    const other = call.library([value]);
    return other instanceof CellError ? refuse(noFigure(value)) : other;
  }, call.given[0]!.value, call.state);
};

const VULGAR = /^([-+−]?)\s*(?:(\d{1,15})\s+)?(\d{1,15})\s*[/⁄]\s*(\d{1,15})$/;

/** A fraction, a time of day or a number with an exponent. */
function plainNumberIn(text: string): number | TimeNumber | undefined {
  const trimmed = text.trim();
  const [, sign = '', whole = '0', top = '', bottom = '0'] = VULGAR.exec(trimmed) ?? [];
  if (Number(bottom) > 0) return (sign === '-' || sign === '−' ? -1 : 1) * (Number(whole) + Number(top) / Number(bottom));
  const time = timeIn(trimmed);
  if (time !== undefined) return time;
  return /e/i.test(trimmed) && FLOAT.test(trimmed) && Number.isFinite(Number(trimmed)) ? Number(trimmed) : undefined;
}

function noFigure(text: string): string {
  const short = text.length > 40 ? `${text.slice(0, 39)}…` : text;
  return text.trim() === '' ? 'VALUE got an empty text, and no figure can be read out of it.' : `VALUE cannot read “${short}” as a figure: write it as 12.5, 2 1/4 in or 5.7 cm.`;
}

/** Digits with the marks named for them (OpenFormula 6.13.28): the point is a full stop if it is left out, and groups have no mark. */
export const NUMBERVALUE: Own = (call) => {
  const [text, point, groups] = call.given;
  if (text === undefined || call.given.length > 3) return tooMany(call, 'a text, the mark before decimals, and the mark between groups of digits');
  for (const given of call.given) {
    const fault = call.unitFault(given, 'NUMBERVALUE reads texts of digits, so it does not take');
    if (fault) return fault;
  }
  const mark = (given: Given | undefined, usual: string): string => (given === undefined || given.ast.type === 'EMPTY' ? usual : call.tools.arithmetic.text(given.value));
  for (const given of [point, groups]) {
    if (given?.value instanceof CellError) return given.value;
    if (given?.value instanceof SimpleRangeValue) return refuse('NUMBERVALUE takes one mark before decimals and one between groups, and got a block of cells.');
  }
  const decimal = mark(point, '.');
  const group = mark(groups, '');
  if (decimal.length !== 1) return refuse(`NUMBERVALUE needs one character as the mark before decimals, such as ",", and got “${decimal}”.`);
  if (group.includes(decimal)) return refuse(`NUMBERVALUE cannot tell decimals from groups when “${decimal}” stands for both: name two different marks.`);
  return call.tools.interpreter.unaryRangeWrapper((value) => (value instanceof CellError ? value : digits(call.tools.arithmetic.text(value), decimal, group)), text.value, call.state);
};

const FLOAT = /^[-+]?(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d+)?$/;

function digits(text: string, decimal: string, group: string): unknown {
  // A full stop that is named for nothing could be either.
  if (text.includes('.') && decimal !== '.' && !group.includes('.')) return refuse(`“${text}” has a full stop, and NUMBERVALUE was told that “${decimal}” stands before decimals: name the mark between groups too, as in NUMBERVALUE("1.234,5"; ","; ".").`);
  const at = text.indexOf(decimal);
  const whole = at < 0 ? text : text.slice(0, at);
  const bare = [...whole].filter((character) => !group.includes(character)).join('') + (at < 0 ? '' : `.${text.slice(at + 1)}`);
  const [, figure = '', percents = ''] = /^([^%]*)(%*)$/.exec(bare.replace(/\s+/g, '')) ?? [];
  if (FLOAT.test(figure)) return Number(figure) / 100 ** percents.length;
  return refuse(readQuantity(text).kind === 'quantity'
    ? `NUMBERVALUE gives plain numbers, and “${text}” is a figure of another kind or written in another way: use VALUE for it.`
    : `“${text}” is no number with “${decimal}” before its decimals: name the marks that it is written with, as in NUMBERVALUE("1.234,5"; ","; ".").`);
}
