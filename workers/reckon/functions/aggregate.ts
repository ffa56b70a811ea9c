/** SUM, AVERAGE, MIN and MAX. */
import { textSentence } from '../arithmetic.ts';
import { CellError, EmptyValue, ErrorType, SimpleRangeValue } from '../internals.ts';
import type { Place } from '../internals.ts';
import { isNumeric, Refusal, valueIn } from '../values.ts';
import { Kinds } from './kinds.ts';
import { Tally, tallyOf } from './tally.ts';
import type { Spot } from './tally.ts';
import type { Call, Given, Own } from './tools.ts';

interface Counted {
  readonly tally: Tally;
  readonly kind: Exclude<ReturnType<Kinds['verdict']>, Refusal>;
}

/** Counts every figure between the brackets; texts, truths and empty cells in blocks and cells are passed over. */
function count(call: Call, given: readonly Given[]): Counted | CellError {
  if (given.length === 0) return new Refusal(ErrorType.NA, `${call.name} needs a value in its brackets, such as a block of cells.`);
  const all = new Tally(call.tools.helper.actualEps);
  const kinds = new Kinds();
  for (const one of given) {
    const part = tallyOfGiven(call, one);
    if (part instanceof CellError) return part;
    if (part.error !== undefined) return located(part.error, one);
    all.join(part);
    for (const spot of part.firsts) {
      if (spot !== undefined) kinds.add(spot.value, () => call.nameOf(one, spot.row, spot.col));
    }
  }
  const kind = kinds.verdict();
  return kind instanceof Refusal ? kind : { tally: all, kind };
}

function tallyOfGiven(call: Call, { ast, value }: Given): Tally | CellError {
  if (value instanceof SimpleRangeValue && value.range !== undefined) return tallyOf(value.range, call.tools);
  const tally = new Tally(call.tools.helper.actualEps);
  if (value instanceof SimpleRangeValue) {
    value.data.forEach((cells, row) => cells.forEach((cell, col) => tally.add(cell, row, col)));
  } else if (value instanceof CellError) {
    return value;
  } else if (isNumeric(value)) {
    tally.add(value, 0, 0);
  } else if (value !== EmptyValue && ast.type !== 'CELL_REFERENCE' && ast.type !== 'NAMED_EXPRESSION') {
    const number = typeof value === 'string' ? call.tools.helper.coerceScalarToNumberOrError(value) : Number(value);
    if (!isNumeric(number)) return new Refusal(ErrorType.VALUE, textSentence(String(value)));
    tally.add(number, 0, 0);
  }
  return tally;
}

/** An error out of a block with the cell that it arose in. */
export function located({ value, row, col }: Spot, { value: block }: Given): CellError {
  const error = value as CellError;
  const start: Place | undefined = block instanceof SimpleRangeValue ? block.range?.start : undefined;
  if (start === undefined || !(error instanceof Refusal) || error.at !== undefined) return error;
  return error.arisenAt({ sheet: start.sheet, row: start.row + row, col: start.col + col });
}

type Take = (counted: Counted, call: Call) => unknown;

const sum: Take = ({ tally, kind }) => valueIn(tally.sum, kind.dimension, kind.unit);

const average: Take = ({ tally, kind }, call) => (tally.count === 0
  ? new Refusal(ErrorType.DIV_BY_ZERO, `${call.name} found no figure${call.given.length === 1 ? ` in ${call.areaOf(call.given[0]!) ?? 'its brackets'}` : ' among its values'}: fill one in.`)
  : valueIn(tally.sum / tally.count, kind.dimension, kind.unit));

/** Shows in the unit of the figure that was found, not of the first. */
const least: Take = ({ tally, kind }) => (tally.count === 0 ? 0 : valueIn(tally.least, kind.dimension, tally.leastUnit));
const greatest: Take = ({ tally, kind }) => (tally.count === 0 ? 0 : valueIn(tally.greatest, kind.dimension, tally.greatestUnit));

const of = (take: Take): Own => (call) => {
  const counted = count(call, call.given);
  return counted instanceof CellError ? counted : take(counted, call);
};

export const SUM = of(sum);
export const AVERAGE = of(average);
export const MIN = of(least);
export const MAX = of(greatest);
