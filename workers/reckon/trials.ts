/** Works results out for other inputs, and puts everything back. */
import { isFault, subtract, UNITS } from '../../src/quantities/index.ts';
import type { Quantity } from '../../src/quantities/index.ts';
import type { Result, Trial, TrialMore, TrialPin, TrialResults, Working } from '../../src/reckoning/protocol.ts';
import type { CellAddress } from '../../src/workbook/types.ts';
import { resultOf } from './columns.ts';
import { explain } from './explain.ts';
import { isFormulaVertex } from './host.ts';
import type { Host } from './host.ts';
import type { Place } from './internals.ts';
import { Teller } from './telling.ts';
import { TrialValues, mustStand } from './trial-values.ts';

/**
 * @param spelled a name as she writes it
 * @throws Error when an input is on no sheet
 */
export function tryOut(host: Host, trials: readonly Trial[], outputs: readonly CellAddress[], more: TrialMore, spelled: (name: string) => string | undefined): TrialResults {
  const inputs = trials.flatMap(({ values }) => values.map(({ cell }) => cell));
  mustStand(host, [...inputs, ...outputs, ...more.workings ?? []]);
  const values = new TrialValues(host, inputs);
  const results: Result[][] = [];
  const workings: Working[][] = [];
  const pins: TrialPin[][] = [];
  try {
    for (const trial of trials) {
      values.put(trial.values);
      const teller = new Teller(host);
      results.push(outputs.map((place) => resultOf(host.valueAt(place), place, teller.tell)));
      if (more.workings) workings.push(more.workings.map((place) => explain(host, place, teller, spelled)));
      if (more.pins) pins.push(pinsOn(host, values.dependents));
    }
  } finally {
    values.back();
  }
  const base = results[more.against ?? 0];
  return {
    results,
    differences: results.map((row) => row.map((result, i) => difference(result, base![i]!))),
    ...(more.workings && { workings }),
    ...(more.pins && { pins }),
  };
}

/** The cautions on some cells as they are now. */
export function pinsOn(host: Host, places: readonly Place[]): TrialPin[] {
  if (host.tools.cautions.none) return [];
  return places.filter((place) => isFormulaVertex(host.graphs.addressMapping.getCell(place)))
    .flatMap((place) => host.cautionsAt(place).map((caution) => ({ cell: { sheet: place.sheet, row: place.row, col: place.col }, caution })));
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
