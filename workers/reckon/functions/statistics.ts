/**
 * Statistics that know units: the place of a figure among others, the one that
 * occurs most, and the straight line through pairs of figures. The two figures of
 * a pair may be of different kinds, each of one kind in its own block (OpenFormula 6.18).
 */
import { compare, isFault } from '../../../src/quantities/index.ts';
import { CellError, ErrorType, SimpleRangeValue } from '../internals.ts';
import { isNumeric, Measure, quantityOf, Refusal, refuse, valueIn } from '../values.ts';
import { located } from './aggregate.ts';
import { Kinds, PLURALS } from './kinds.ts';
import type { Kind } from './kinds.ts';
import { tooMany } from './rounding.ts';
import type { Call, Given, Own } from './tools.ts';

interface Figures {
  readonly values: readonly number[];
  readonly kind: Kind;
}

const blockOf = (value: unknown): readonly (readonly unknown[])[] => (value instanceof SimpleRangeValue ? value.data : [[value]]);
const bare = (value: unknown): number => (typeof value === 'number' ? value : (value as { val: number }).val);

/** The figures of one or several values and blocks, which must be of one kind; anything else in a block is passed over. */
function figuresIn(call: Call, given: readonly Given[], kinds = new Kinds()): Figures | CellError {
  const values: number[] = [];
  for (const one of given) {
    for (const [row, cells] of blockOf(one.value).entries()) {
      for (const [col, value] of cells.entries()) {
        if (value instanceof CellError) return located({ value, row, col }, one);
        if (!isNumeric(value)) continue;
        kinds.add(value, () => call.nameOf(one, row, col));
        values.push(bare(value));
      }
    }
  }
  const kind = kinds.verdict();
  return kind instanceof Refusal ? kind : { values, kind };
}

/** A value between the brackets that must be one plain number; `usual` where it is left out. */
function plainNumber(call: Call, given: Given | undefined, usual: number): number | CellError {
  if (given === undefined || given.ast.type === 'EMPTY') return usual;
  const fault = call.unitFault(given);
  if (fault) return fault;
  const number = given.value instanceof SimpleRangeValue ? refuse(`${call.name} needs one number here, and got a block of cells.`) : call.tools.helper.coerceScalarToNumberOrError(given.value);
  return isNumeric(number) ? bare(number) : number as CellError;
}

/** Two doubles that are one figure but for the noise in their last bits. */
function alike(a: number, b: number): boolean {
  const order = compare({ value: a, dimension: 'number', unit: '' }, { value: b, dimension: 'number', unit: '' });
  return !isFault(order) && order === 0;
}

/** Below this part of its largest summand a sum is the noise of doubles, and none. */
const NOISE = 1e-12;

function quiet(values: readonly number[]): number {
  const sum = values.reduce((all, value) => all + value, 0);
  return Math.abs(sum) < NOISE * Math.max(...values.map(Math.abs)) ? 0 : sum;
}

/** The one figure that is asked about, and the figures that it is looked for among, of its kind. */
function oneAmong(call: Call, asked: Given, among: Given): { readonly figure: number; readonly values: readonly number[] } | CellError {
  if (asked.value instanceof CellError) return asked.value;
  if (quantityOf(asked.value) === undefined) return refuse(`${call.name} needs one figure to look for, and got ${asked.value instanceof SimpleRangeValue ? 'a block of cells' : `“${call.tools.arithmetic.text(asked.value)}”`}.`);
  const kinds = new Kinds();
  kinds.add(asked.value, () => call.nameOf(asked));
  const figures = figuresIn(call, [among], kinds);
  return figures instanceof CellError ? figures : { figure: bare(asked.value), values: figures.values };
}

/** The place of a figure in order of size; equal figures share the first of their places (6.18.65). */
export const RANK: Own = (call) => {
  const [asked, among, way] = call.given;
  if (!asked || !among || call.given.length > 3) return tooMany(call, 'a figure, the figures it is one of, and 0 or 1');
  const upward = plainNumber(call, way, 0);
  if (upward instanceof CellError) return upward;
  const found = oneAmong(call, asked, among);
  if (found instanceof CellError) return found;
  const { figure, values } = found;
  if (!values.some((value) => alike(value, figure))) return notAmong(call, asked, among);
  return 1 + values.filter((value) => !alike(value, figure) && (upward === 0 ? value > figure : value < figure)).length;
};

function notAmong(call: Call, asked: Given, among: Given): Refusal {
  return new Refusal(ErrorType.NA, `${call.name} did not find ${call.tools.arithmetic.text(asked.value)} among ${call.areaOf(among) ?? 'the figures'}: look for a figure that is there.`);
}

/** The share of figures below one, of all the others; in proportion between two of them; cut off after so many decimals (6.18.58). */
export const PERCENTRANK: Own = (call) => {
  const [among, asked, places] = call.given;
  if (!asked || !among || call.given.length > 3) return tooMany(call, 'figures, one figure, and a number of decimals');
  const decimals = plainNumber(call, places, 3);
  if (decimals instanceof CellError) return decimals;
  if (decimals < 1) return refuse(`${call.name} needs 1 decimal at least: write 3 for a result such as 0.333.`);
  const found = oneAmong(call, asked, among);
  if (found instanceof CellError) return found;
  const { figure } = found;
  const values = [...found.values].sort((a, b) => a - b);
  const at = values.findIndex((value) => alike(value, figure));
  const above = values.findIndex((value) => value > figure);
  if (at < 0 && above <= 0) return notAmong(call, asked, among);
  if (values.length === 1) return 1;
  const rank = at >= 0 ? at : above - 1 + (figure - values[above - 1]!) / (values[above]! - values[above - 1]!);
  const scale = 10 ** Math.trunc(decimals);
  return Math.floor(rank / (values.length - 1) * scale + 1e-9) / scale;
};

/** The figure that occurs most often, the least of several (6.18.50). It shows in the unit in which it first stands. */
export const MODE: Own = (call) => {
  if (call.given.length === 0) return tooMany(call, 'figures');
  const figures = figuresIn(call, call.given);
  if (figures instanceof CellError) return figures;
  const sorted = [...figures.values].sort((a, b) => a - b);
  let most = 1;
  let mode: number | undefined;
  for (let from = 0, to; from < sorted.length; from = to) {
    to = from + 1;
    while (to < sorted.length && alike(sorted[to]!, sorted[from]!)) to += 1;
    if (to - from > most) [most, mode] = [to - from, sorted[from]];
  }
  if (mode === undefined) return new Refusal(ErrorType.NA, `${call.name} found no figure twice, so none is the most frequent.`);
  const first = call.given.flatMap(({ value }) => blockOf(value).flat()).find((value) => isNumeric(value) && alike(bare(value), mode));
  return valueIn(mode, figures.kind.dimension, first instanceof Measure ? first.unit : figures.kind.unit);
};

interface Pairs {
  readonly ys: readonly number[];
  readonly xs: readonly number[];
  readonly y: Kind;
  readonly x: Kind;
  /** Sums of squares and products of how far the figures lie from their averages. */
  readonly sxx: number;
  readonly syy: number;
  readonly sxy: number;
  readonly meanY: number;
  readonly meanX: number;
}

/** Figures that stand in the same place of two blocks. A pair that lacks one is passed over. `more`: further figures of the kind of x. */
function pairsOf(call: Call, first: Given, second: Given, least: number, more?: Given): Pairs | CellError {
  for (const one of [first, second]) if (one.value instanceof CellError) return one.value;
  const [a, b] = [blockOf(first.value), blockOf(second.value)];
  const count = a.length * a[0]!.length;
  if (count !== b.length * b[0]!.length) {
    return new Refusal(ErrorType.NA, `${call.name} needs two blocks with as many cells: ${call.areaOf(first) ?? 'the one'} has ${count}, ${call.areaOf(second) ?? 'the other'} ${b.length * b[0]!.length}.`);
  }
  const [kindsY, kindsX] = [new Kinds(), new Kinds()];
  const [ys, xs]: [number[], number[]] = [[], []];
  for (let i = 0; i < count; i++) {
    const [rowA, colA, rowB, colB] = [Math.floor(i / a[0]!.length), i % a[0]!.length, Math.floor(i / b[0]!.length), i % b[0]!.length];
    const [one, two] = [a[rowA]![colA], b[rowB]![colB]];
    if (one instanceof CellError) return located({ value: one, row: rowA, col: colA }, first);
    if (two instanceof CellError) return located({ value: two, row: rowB, col: colB }, second);
    if (!isNumeric(one) || !isNumeric(two)) continue;
    kindsY.add(one, () => call.nameOf(first, rowA, colA));
    kindsX.add(two, () => call.nameOf(second, rowB, colB));
    ys.push(bare(one));
    xs.push(bare(two));
  }
  if (more && isNumeric(more.value)) kindsX.add(more.value, () => call.nameOf(more));
  const [y, x] = [kindsY.verdict(), kindsX.verdict()];
  if (y instanceof Refusal) return y;
  if (x instanceof Refusal) return x;
  if (ys.length < least) return new Refusal(ErrorType.DIV_BY_ZERO, `${call.name} needs ${least} pairs of figures at least, and found ${ys.length}: fill in both blocks.`);
  const n = Math.max(ys.length, 1);
  const [meanY, meanX] = [ys, xs].map((list) => list.reduce((sum, value) => sum + value, 0) / n) as [number, number];
  // All the same is no spread, whatever the noise of their average.
  const flat = (list: readonly number[]): boolean => list.every((value) => alike(value, list[0]!));
  const products = (left: readonly number[], meanLeft: number, right: readonly number[], meanRight: number): number =>
    (flat(left) || flat(right) ? 0 : quiet(left.map((value, i) => (value - meanLeft) * (right[i]! - meanRight))));
  return { ys, xs, y, x, meanY, meanX, sxx: products(xs, meanX, xs, meanX), syy: products(ys, meanY, ys, meanY), sxy: products(xs, meanX, ys, meanY) };
}

/** A function of pairs. `least`: how many are needed. */
const ofPairs = (least: number, take: (pairs: Pairs, call: Call) => unknown): Own => (call) => {
  const [first, second] = call.given;
  if (!first || !second || call.given.length > 2) return tooMany(call, 'two blocks of figures');
  const pairs = pairsOf(call, first, second, least);
  return pairs instanceof CellError ? pairs : take(pairs, call);
};

const upright = (call: Call): Refusal => new Refusal(ErrorType.DIV_BY_ZERO, `${call.name} needs figures that differ: all those in the second block are the same.`);

function correlation({ sxx, syy, sxy }: Pairs, call: Call): number | Refusal {
  if (sxx === 0 || syy === 0) return new Refusal(ErrorType.DIV_BY_ZERO, `${call.name} needs figures that differ: all those in one block are the same.`);
  return Math.max(-1, Math.min(1, sxy / Math.sqrt(sxx) / Math.sqrt(syy)));
}

export const CORREL = ofPairs(2, correlation);

export const RSQ = ofPairs(2, (pairs, call) => {
  const r = correlation(pairs, call);
  return typeof r === 'number' ? r * r : r;
});

/** So many of the product of one y and one x. */
function product(call: Call, value: number, { y, x }: Pairs): unknown {
  return call.tools.arithmetic.times(unitOf(y, value), unitOf(x, 1));
}

/** A percent in a product or a quotient is a plain number. */
const unitOf = ({ dimension, unit }: Kind, value: number): unknown => valueIn(value, dimension, unit === '%' ? '' : unit);

export const COVARIANCE = ofPairs(1, (pairs, call) => product(call, pairs.sxy / pairs.ys.length, pairs));
export const SAMPLE_COVARIANCE = ofPairs(2, (pairs, call) => product(call, pairs.sxy / (pairs.ys.length - 1), pairs));

export const SLOPE = ofPairs(2, (pairs, call) => {
  if (pairs.sxx === 0) return upright(call);
  const slope = call.tools.arithmetic.over(unitOf(pairs.y, pairs.sxy / pairs.sxx), unitOf(pairs.x, 1));
  return slope instanceof CellError ? refuse(`${call.name} of ${PLURALS[pairs.y.dimension]} over ${PLURALS[pairs.x.dimension]} is nothing that a cell can hold: divide the second block by one of its unit, as in B1:B9/1 cm.`) : slope;
});

const heightAt = ({ meanY, meanX, sxy, sxx }: Pairs, x: number): number => quiet([meanY, (sxy / sxx) * (x - meanX)]);

export const INTERCEPT = ofPairs(2, (pairs, call) => (pairs.sxx === 0 ? upright(call) : valueIn(heightAt(pairs, 0), pairs.y.dimension, pairs.y.unit)));

export const STEYX = ofPairs(3, (pairs, call) => {
  const { sxx, ys, xs, y } = pairs;
  if (sxx === 0) return upright(call);
  // From each distance, not as syy − sxy² ÷ sxx: of points on a line that leaves noise, and its root is larger still.
  const squares = ys.reduce((sum, height, i) => sum + quiet([height, -heightAt(pairs, xs[i]!)]) ** 2, 0);
  return valueIn(Math.sqrt(squares / (ys.length - 2)), y.dimension, y.unit);
});

/** The height of the straight line that fits best, at one place. */
export const FORECAST: Own = (call) => {
  const [at, ys, xs] = call.given;
  if (!at || !ys || !xs || call.given.length > 3) return tooMany(call, 'a place, the figures that depend, and what they depend on');
  if (at.value instanceof CellError) return at.value;
  if (!isNumeric(at.value)) return refuse(`${call.name} needs one figure as the place to read the line at.`);
  const pairs = pairsOf(call, ys, xs, 2, at);
  if (pairs instanceof CellError) return pairs;
  return pairs.sxx === 0 ? upright(call) : valueIn(heightAt(pairs, bare(at.value)), pairs.y.dimension, pairs.y.unit);
};

/** Heights of the line at several places; with `constant` FALSE the line goes through zero. */
export const TREND: Own = (call) => {
  const [ys, known, places, constant] = call.given;
  if (!ys || call.given.length > 4) return tooMany(call, 'the figures that depend, what they depend on, new places, and TRUE or FALSE');
  if (ys.value instanceof CellError) return ys.value;
  const block = blockOf(ys.value);
  const counted = SimpleRangeValue.onlyValues(block.map((cells, row) => cells.map((_, col) => row * cells.length + col + 1)));
  const given = (one: Given | undefined, instead: unknown): Given => (one === undefined || one.ast.type === 'EMPTY' ? { ast: ys.ast, value: instead } : one);
  const xs = given(known, counted);
  const pairs = pairsOf(call, ys, xs, 1);
  if (pairs instanceof CellError) return pairs;
  const at = given(places, xs.value);
  if (at.value instanceof CellError) return at.value;
  const kinds = new Kinds();
  for (const value of [...blockOf(xs.value).flat(), ...blockOf(at.value).flat()]) if (isNumeric(value)) kinds.add(value, () => undefined);
  const mixed = kinds.verdict();
  if (mixed instanceof Refusal) return mixed;
  const through = constant === undefined || constant.ast.type === 'EMPTY' ? 1 : plainNumber(call, constant, 1);
  if (through instanceof CellError) return through;
  const squares = pairs.xs.reduce((sum, x) => sum + x * x, 0);
  if (through === 0 ? squares === 0 : pairs.sxx === 0) return upright(call);
  const slope = pairs.xs.reduce((sum, x, i) => sum + x * pairs.ys[i]!, 0) / squares;
  const height = (x: number): unknown => valueIn(through === 0 ? slope * x : heightAt(pairs, x), pairs.y.dimension, pairs.y.unit);
  const cell = (value: unknown): unknown => (value instanceof CellError ? value : isNumeric(value) ? height(bare(value)) : refuse(`${call.name} needs a figure at each of the new places.`));
  return at.value instanceof SimpleRangeValue ? SimpleRangeValue.onlyValues(blockOf(at.value).map((cells) => cells.map(cell))) : cell(at.value);
};
