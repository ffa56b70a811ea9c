/** Works results out for other inputs, and puts everything back. */
import { isFault, subtract, UNITS } from '../../src/quantities/index.ts';
import type { Quantity } from '../../src/quantities/index.ts';
import type { Result, Trial, TrialResults } from '../../src/reckoning/protocol.ts';
import type { CellAddress } from '../../src/workbook/types.ts';
import { resultOf } from './columns.ts';
import { dependentsOf } from './dependents.ts';
import { isFormulaVertex } from './host.ts';
import type { Host } from './host.ts';
import { ArrayFormulaVertex } from './internals.ts';
import type { Place } from './internals.ts';
import { Teller } from './telling.ts';
import { sameValue } from './values.ts';

/** What an input cell held before the first trial. */
interface Before {
  readonly place: Place;
  /** Where the engine has it: for a cell that another's block of results lies over, that other. */
  readonly home: Place;
  readonly content: unknown;
}

const keyOf = ({ sheet, row, col }: Place): string => `${sheet},${row},${col}`;

/** @throws Error when an input is on no sheet */
export function tryOut(host: Host, trials: readonly Trial[], outputs: readonly CellAddress[]): TrialResults {
  const inputs = trials.flatMap(({ values }) => values.map(({ cell }) => cell));
  for (const { sheet } of [...inputs, ...outputs]) {
    if (!host.graphs.sheetMapping.hasSheetWithId(sheet)) throw new Error('A cell to be compared is on a sheet that is no longer in this workbook.');
  }
  const results = new Map([...inputs, ...dependentsOf(host, inputs)].map((place) => [keyOf(place), host.valueAt(place)]));
  const before = new Map<string, Before>();
  const tried: Result[][] = [];
  try {
    for (const { values } of trials) {
      putBack(host, before, new Set(values.map(({ cell }) => keyOf(cell))));
      for (const { cell, raw } of values) {
        remember(host, before, cell);
        host.setCell(cell, raw);
      }
      host.recompute();
      const teller = new Teller(host);
      tried.push(outputs.map((place) => resultOf(host.valueAt(place), place, teller.tell)));
    }
  } finally {
    putBack(host, before, new Set());
    host.recompute();
    // Only what is not as it was, as a chance number may not be, is told with the next change.
    host.changed.keep((place) => !results.has(keyOf(place)) || !sameValue(results.get(keyOf(place)), host.valueAt(place)));
  }
  return { results: tried, differences: tried.map((row) => row.map((result, i) => difference(result, tried[0]![i]!))) };
}

function remember(host: Host, before: Map<string, Before>, place: Place): void {
  if (before.has(keyOf(place))) return;
  const vertex = host.graphs.addressMapping.getCell(place);
  // The engine looks the tree of the old formula up when it is put back.
  if (isFormulaVertex(vertex)) host.inside._parser.rememberNewAst(vertex.getFormula(host.inside._lazilyTransformingAstService));
  const home = vertex instanceof ArrayFormulaVertex ? vertex.getRange().start : place;
  const [, content] = host.operations.getOldContent(place);
  before.set(keyOf(place), { place, home, content });
}

/** Puts the inputs back that the next trial leaves alone. */
function putBack(host: Host, before: Map<string, Before>, but: ReadonlySet<string>): void {
  for (const [key, { place, home, content }] of [...before].reverse()) {
    if (but.has(key)) continue;
    if (keyOf(home) !== key) host.setCell(place, '');
    host.operations.restoreCell(home, content);
    before.delete(key);
  }
}

function difference(result: Result, first: Result): Result | null {
  if (result.kind === 'text' && first.kind === 'text') return result.text === first.text ? { kind: 'empty' } : result;
  if (result.kind !== 'quantity' || first.kind !== 'quantity') return null;
  const less = subtract(quantityIn(result), quantityIn(first));
  return isFault(less) ? null : { kind: 'quantity', value: less.value, unit: less.unit };
}

function quantityIn({ value, unit }: Extract<Result, { kind: 'quantity' }>): Quantity {
  return { value, unit, dimension: UNITS[unit].dimension };
}
