/**
 * SORT and UNIQUE, which compare the bare numbers of figures, so that only
 * figures of one kind may be compared; and SEQUENCE, which could ask for more
 * cells than there is memory for.
 */
import { CellError, ErrorType, SimpleRangeValue } from '../internals.ts';
import { MOST_FILLED } from '../reach.ts';
import { Bracket, isNumeric, Refusal } from '../values.ts';
import { Kinds } from './kinds.ts';
import type { Call, Given, Own } from './tools.ts';

/** A refusal when the figures in a column (or row) of a block are of several kinds. */
function mixture(call: Call, given: Given, which: (row: number, col: number) => boolean): Refusal | undefined {
  if (!(given.value instanceof SimpleRangeValue)) return undefined;
  const kinds = new Kinds();
  given.value.data.forEach((cells, row) => cells.forEach((value, col) => {
    if (which(row, col) && isNumeric(value) && !(value instanceof Bracket)) kinds.add(value, () => call.nameOf(given, row, col));
  }));
  const verdict = kinds.verdict();
  return verdict instanceof Refusal ? verdict : undefined;
}

/** The values after the first must be plain. */
function others(call: Call): Refusal | undefined {
  for (const given of call.given.slice(1)) {
    const fault = call.unitFault(given);
    if (fault) return fault;
  }
  return undefined;
}

const isTrue = (value: unknown): boolean => value === true || (typeof value === 'number' && value !== 0);

export const SORT: Own = (call) => {
  const [block, by, , across] = call.given;
  if (!block || block.value instanceof CellError || !call.tools.hasUnit(call.given)) return call.library();
  const key = typeof by?.value === 'number' ? Math.trunc(by.value) - 1 : 0;
  const fault = others(call) ?? mixture(call, block, (row, col) => (isTrue(across?.value) ? row : col) === key);
  return fault ?? call.library();
};

export const UNIQUE: Own = (call) => {
  const [block, across] = call.given;
  if (!block || !(block.value instanceof SimpleRangeValue) || !call.tools.hasUnit(call.given)) return call.library();
  const lines = isTrue(across?.value) ? block.value.height() : block.value.width();
  let fault = others(call);
  for (let line = 0; line < lines && !fault; line++) {
    fault = mixture(call, block, (row, col) => (isTrue(across?.value) ? row : col) === line);
  }
  return fault ?? call.library();
};

export const SEQUENCE: Own = (call) => {
  const [first, ...rest] = call.given;
  const fault = (first && call.unitFault(first)) ?? others(call);
  if (fault) return fault;
  const [rows, columns] = [first, rest[0]].map((given) => (typeof given?.value === 'number' ? given.value : 1));
  if (rows! * columns! > MOST_FILLED) return new Refusal(ErrorType.NUM, `SEQUENCE can give ${MOST_FILLED.toLocaleString('en')} numbers at most.`);
  return call.library();
};
