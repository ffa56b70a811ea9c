/**
 * Functions of the engine that know nothing of units but are right in any of
 * them, such as MEDIAN: they get the bare numbers of figures that are all of
 * one kind, and their result gets the unit back.
 */
import type { UnitCode } from '../../../src/quantities/index.ts';
import { textSentence } from '../arithmetic.ts';
import { EmptyValue, ErrorType, PercentNumber, SimpleRangeValue } from '../internals.ts';
import { Dimensioned, isNumeric, Refusal, valueIn } from '../values.ts';
import { Kinds } from './kinds.ts';
import type { Kind } from './kinds.ts';
import type { Call, Given, Own } from './tools.ts';

export interface Keeping {
  /** Which of the values must be of one kind; the others must be plain. */
  readonly of: 'all' | readonly number[];
  /** The result's kind: the same, its square, or a plain number. */
  readonly gives: 'same' | 'square' | 'number';
}

export const keeps = ({ of, gives }: Keeping): Own => (call) => {
  const isOf = (i: number): boolean => of === 'all' || of.includes(i);
  const plain = call.given.filter((_, i) => !isOf(i));
  for (const given of plain) {
    const fault = call.unitFault(given);
    if (fault) return fault;
  }
  const kind = kindOf(call, call.given.filter((_, i) => isOf(i)));
  if (kind instanceof Refusal) return kind;
  if (kind.dimension === 'number' && kind.unit === '') return call.library();
  for (const [i, given] of call.given.entries()) {
    const fault = isOf(i) ? noFigure(call, given) : undefined;
    if (fault) return fault;
  }
  const result = call.library(call.given.map(({ value }, i) => (isOf(i) ? bare(value) : value)));
  return withUnit(call, result, kind, gives);
};

/** Beside figures with a unit nothing may pass for a number: not TRUE for 1, nor an empty cell for 0. */
function noFigure(call: Call, given: Given): Refusal | undefined {
  const { ast, value } = given;
  if (value === EmptyValue) return new Refusal(ErrorType.VALUE, ast.type === 'EMPTY' ? `${call.name} has an empty place between its brackets.` : `${call.nameOf(given) ?? 'A cell that is used here'} has no value yet.`);
  if (typeof value === 'string') return new Refusal(ErrorType.VALUE, textSentence(value));
  if (typeof value === 'boolean') return new Refusal(ErrorType.VALUE, `${call.name} needs figures of one kind, and got ${value ? 'TRUE' : 'FALSE'}.`);
  return undefined;
}

function kindOf(call: Call, given: readonly Given[]): Kind | Refusal {
  const kinds = new Kinds();
  for (const one of given) {
    if (one.value instanceof SimpleRangeValue) {
      one.value.data.forEach((cells, row) => cells.forEach((value, col) => {
        if (isNumeric(value)) kinds.add(value, () => call.nameOf(one, row, col));
      }));
    } else if (isNumeric(one.value)) {
      kinds.add(one.value, () => call.nameOf(one));
    }
  }
  return kinds.verdict();
}

/** A value or block without its units. */
function bare(value: unknown): unknown {
  if (value instanceof SimpleRangeValue) return SimpleRangeValue.onlyValues(value.data.map((cells) => cells.map(bare)));
  return value instanceof Dimensioned || value instanceof PercentNumber ? value.val : value;
}

function withUnit(call: Call, result: unknown, { dimension, unit }: Kind, gives: Keeping['gives']): unknown {
  if (result instanceof SimpleRangeValue) {
    return SimpleRangeValue.onlyValues(result.data.map((cells) => cells.map((cell) => withUnit(call, cell, { dimension, unit }, gives))));
  }
  if (typeof result !== 'number' || gives === 'number') return result;
  if (gives === 'same') return valueIn(result, dimension, unit);
  if (dimension === 'number') return result;
  if (dimension === 'length') return valueIn(result, 'area', `${unit}2` as UnitCode);
  return new Refusal(ErrorType.VALUE, `${call.name} of ${dimension === 'area' ? 'areas' : 'angles'} is nothing that a cell can hold.`);
}
