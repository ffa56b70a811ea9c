/**
 * SUMIF, COUNTIF, AVERAGEIF, SUMIFS, COUNTIFS, AVERAGEIFS, MINIFS and MAXIFS where
 * units come in: conditions such as "> 90 cm" are read as a cell would read them.
 * Without units they go the engine's way, where it has one.
 */
import { readQuantity } from '../../../src/quantities/index.ts';
import { spanSentence } from '../arithmetic.ts';
import { CellError, EmptyValue, ErrorType, SimpleRangeValue } from '../internals.ts';
import type { Operator } from '../internals.ts';
import { Bracket, Dimensioned, isNumeric, Measure, Refusal, refuse, valueIn, valueOf } from '../values.ts';
import { wrongCount } from './faults.ts';
import { Kinds } from './kinds.ts';
import { Tally } from './tally.ts';
import type { Call, Given, Own } from './tools.ts';

/** True, false, or why a value cannot be tried. */
type Test = (value: unknown) => unknown;

type Take = (tally: Tally, kind: Exclude<ReturnType<Kinds['verdict']>, Refusal>) => unknown;

const TAKES: Readonly<Record<string, Take>> = {
  SUM: (tally, kind) => valueIn(tally.sum, kind.dimension, kind.unit),
  AVERAGE: (tally, kind) => (tally.count === 0
    ? new Refusal(ErrorType.DIV_BY_ZERO, 'Nothing fits the condition, so there is no average: change the condition.')
    : valueIn(tally.sum / tally.count, kind.dimension, kind.unit)),
  MIN: (tally, kind) => (tally.count === 0 ? 0 : valueIn(tally.least, kind.dimension, tally.leastUnit)),
  MAX: (tally, kind) => (tally.count === 0 ? 0 : valueIn(tally.greatest, kind.dimension, tally.greatestUnit)),
};

interface Condition {
  readonly given: Given;
  readonly test: Test;
}

/** `values`: the place of the block that is summed; `undefined` counts. */
function conditional(find: string, valuesAt: (count: number) => number | undefined, pairsFrom: number): Own {
  return (call) => {
    if (!call.tools.hasUnit(call.given) && call.tools.library(call.name) !== undefined) return call.library();
    const given = call.given;
    const at = valuesAt(given.length);
    const pairs = pairsFrom === 0 && at === 2 ? given.slice(0, 2) : given.slice(pairsFrom);
    if (pairs.length < 2 || pairs.length % 2 !== 0) return new Refusal(ErrorType.NA, wrongCount(call));
    const conditions: Condition[] = [];
    for (let i = 0; i < pairs.length; i += 2) {
      const test = testOf(call, pairs[i + 1]!);
      if (test instanceof CellError) return test;
      conditions.push({ given: pairs[i]!, test });
    }
    const values = given[at ?? 0]!;
    const fits = fitting(call, conditions, blockOf(values.value));
    if (fits instanceof CellError) return fits;
    return find === 'COUNT' ? fits.length : reckon(call, values, fits, TAKES[find]!);
  };
}

export const SUMIF = conditional('SUM', (n) => (n > 2 ? 2 : 0), 0);
export const AVERAGEIF = conditional('AVERAGE', (n) => (n > 2 ? 2 : 0), 0);
export const COUNTIF = conditional('COUNT', () => undefined, 0);
export const COUNTIFS = conditional('COUNT', () => undefined, 0);
export const SUMIFS = conditional('SUM', () => 0, 1);
export const AVERAGEIFS = conditional('AVERAGE', () => 0, 1);
export const MINIFS = conditional('MIN', () => 0, 1);
export const MAXIFS = conditional('MAX', () => 0, 1);

const blockOf = (value: unknown): readonly (readonly unknown[])[] => (value instanceof SimpleRangeValue ? value.data : [[value]]);

type Spot = readonly [row: number, col: number];

/** The places where every condition holds. */
function fitting(call: Call, conditions: readonly Condition[], values: readonly (readonly unknown[])[]): readonly Spot[] | CellError {
  const blocks = conditions.map(({ given }) => blockOf(given.value));
  if (blocks.some((block) => block.length !== values.length || block[0]?.length !== values[0]?.length)) {
    return new Refusal(ErrorType.VALUE, `${call.name} needs blocks of cells of one size.`);
  }
  const fits: Spot[] = [];
  for (let row = 0; row < values.length; row++) {
    for (let col = 0; col < values[row]!.length; col++) {
      let all = true;
      for (let i = 0; i < conditions.length && all; i++) {
        const held = conditions[i]!.test(blocks[i]![row]![col]);
        if (held instanceof CellError) {
          const name = call.nameOf(conditions[i]!.given, row, col);
          return name === undefined ? held : refuse(`${name}: ${(held as Refusal).sentence}`);
        }
        all = held === true;
      }
      if (all) fits.push([row, col]);
    }
  }
  return fits;
}

function reckon(call: Call, values: Given, fits: readonly Spot[], take: Take): unknown {
  const block = blockOf(values.value);
  const tally = new Tally(call.tools.helper.actualEps);
  const kinds = new Kinds();
  for (const [row, col] of fits) {
    const value = block[row]![col];
    if (value instanceof CellError) return value;
    if (!isNumeric(value)) continue;
    tally.add(value, row, col);
    kinds.add(value, () => call.nameOf(values, row, col));
  }
  const kind = kinds.verdict();
  return kind instanceof Refusal ? kind : take(tally, kind);
}

const SIGNED = /^\s*(<>|<=|>=|≤|≥|≠|<|>|=)?\s*([\s\S]*)$/;

/** What a condition asks of a cell. */
function testOf(call: Call, { value: condition }: Given): Test | CellError {
  const { arithmetic } = call.tools;
  if (condition instanceof CellError) return condition;
  if (condition instanceof Bracket) return refuse(spanSentence(condition));
  if (condition instanceof Measure) return compared(arithmetic.equal, condition);
  if (typeof condition === 'string') {
    const [, sign = '=', text = ''] = SIGNED.exec(condition) ?? [];
    const reading = readQuantity(text);
    if (reading.kind === 'refused' && reading.meant === 'figure') return refuse(reading.sentence);
    if (reading.kind === 'quantity') return compared(signs(call)[sign]!, valueOf(reading.quantity));
  }
  if (isNumeric(condition)) return compared(arithmetic.equal, condition);
  const made = call.tools.interpreter.criterionBuilder.fromCellValue(condition, call.tools.helper);
  if (made === undefined) return refuse('This condition cannot be read: write it as "> 90 cm".');
  return (value) => made.lambda(value instanceof Dimensioned ? arithmetic.text(value) : isNumeric(value) && typeof value !== 'number' ? value.val : value);
}

function signs(call: Call): Readonly<Record<string, Operator>> {
  const { above, atLeast, atMost, below, equal, unequal } = call.tools.arithmetic;
  return { '=': equal, '<>': unequal, '≠': unequal, '<': below, '>': above, '<=': atMost, '≤': atMost, '>=': atLeast, '≥': atLeast };
}

/** Compares figures only; texts, truths and empty cells are no figure and do not fit. */
function compared(sign: Operator, bound: unknown): Test {
  return (value) => {
    if (value instanceof CellError || value === EmptyValue || !isNumeric(value)) return false;
    return sign(value, bound);
  };
}
