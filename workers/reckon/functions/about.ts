/** TYPE, ERROR.TYPE and ISREF: what a value is, not what it says. */
import { CellError, ErrorType, SimpleRangeValue } from '../internals.ts';
import type { Ast } from '../internals.ts';
import { refuse } from '../values.ts';
import { referenceIn } from './pointing.ts';
import { tooMany } from './rounding.ts';
import type { Call, Own } from './tools.ts';

/** OpenFormula 6.13.33, table 19. */
export const TYPE: Own = (call) => {
  const [given] = call.given;
  if (!given || call.given.length > 1) return tooMany(call, 'one value');
  const { value } = given;
  if (value instanceof SimpleRangeValue) return 64;
  if (value instanceof CellError) return 16;
  if (typeof value === 'boolean') return 4;
  return typeof value === 'string' ? 2 : 1;
};

/** OpenFormula fixes 7 for a value that is not there (6.13.11); the others are common practice. */
const ERROR_TYPES: Readonly<Record<string, number>> = {
  [ErrorType.DIV_BY_ZERO]: 2, [ErrorType.VALUE]: 3, [ErrorType.REF]: 4, [ErrorType.NAME]: 5, [ErrorType.NUM]: 6, [ErrorType.NA]: 7, [ErrorType.CYCLE]: 8, [ErrorType.SPILL]: 9,
};
const ANOTHER = 10;

export const ERROR_TYPE: Own = (call) => {
  const [given] = call.given;
  if (!given || call.given.length > 1) return tooMany(call, 'one value');
  const { value } = given;
  if (value instanceof CellError) return ERROR_TYPES[value.type] ?? ANOTHER;
  return refuse(`ERROR.TYPE gives the kind of an error, and ${call.nameOf(given) ?? 'what it got'} is none: point it at a cell with an error.`);
};

const PLACES: ReadonlySet<string> = new Set(['CELL_RANGE', 'COLUMN_RANGE', 'ROW_RANGE']);

/** True for what points at cells that there are, whatever they hold; INDEX of a block points at cells of it. */
export const ISREF: Own = (call) => {
  const [part] = call.args;
  if (part === undefined || call.args.length > 1) return tooMany(call, 'one value');
  return pointsAtCells(call, part);
};

function pointsAtCells(call: Call, part: Ast): boolean {
  const reference = referenceIn(call, part);
  if (reference.type === 'FUNCTION_CALL') return reference.procedureName === 'INDEX' && reference.args?.[0] !== undefined && pointsAtCells(call, reference.args[0]);
  const start = reference.type === 'CELL_REFERENCE' ? reference.reference : PLACES.has(reference.type) ? reference.start : undefined;
  if (start === undefined) return false;
  // On a sheet that was removed there are none.
  return start.sheet === undefined || call.tools.interpreter.dependencyGraph.sheetMapping.hasSheetWithId(start.sheet, { includePlaceholders: false });
}
