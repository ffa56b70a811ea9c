/** Other values in cells for a while: tried, and then everything as it was. */
import type { Place } from './internals.ts';
import { ArrayFormulaVertex } from './internals.ts';
import type { TriedFigure } from './content.ts';
import { dependentsOf } from './dependents.ts';
import { isFormulaVertex } from './host.ts';
import type { Host } from './host.ts';
import { sameValue } from './values.ts';

/** What an input cell held before the first trial. */
interface Before {
  readonly place: Place;
  /** Where the engine has it: for a cell that another's block of results lies over, that other. */
  readonly home: Place;
  readonly content: unknown;
}

export interface TriedValue {
  readonly cell: Place;
  readonly raw: string | TriedFigure;
}

const keyOf = ({ sheet, row, col }: Place): string => `${sheet},${row},${col}`;

export class TrialValues {
  readonly #before = new Map<string, Before>();
  readonly #results: ReadonlyMap<string, unknown>;
  /** Every formula that depends on the inputs. */
  readonly dependents: readonly Place[];

  constructor(private readonly host: Host, inputs: readonly Place[]) {
    this.dependents = dependentsOf(host, inputs);
    this.#results = new Map([...inputs, ...this.dependents].map((place) => [keyOf(place), host.valueAt(place)]));
  }

  /** Puts these in, puts all others back, and works out what depends on them. */
  put(values: readonly TriedValue[]): void {
    this.#putBack(new Set(values.map(({ cell }) => keyOf(cell))));
    for (const { cell, raw } of values) {
      this.#remember(cell);
      this.host.setCell(cell, raw);
    }
    this.host.recompute();
  }

  /** Everything as it was. Must follow every `put`, whatever happened since. */
  back(): void {
    this.#putBack(new Set());
    this.host.recompute();
    // Only what is not as it was, as a chance number may not be, is told with the next change.
    this.host.changed.keep((place) => !this.#results.has(keyOf(place)) || !sameValue(this.#results.get(keyOf(place)), this.host.valueAt(place)));
  }

  #remember(place: Place): void {
    const { host } = this;
    if (this.#before.has(keyOf(place))) return;
    const vertex = host.graphs.addressMapping.getCell(place);
    // The engine looks the tree of the old formula up when it is put back.
    if (isFormulaVertex(vertex)) host.inside._parser.rememberNewAst(vertex.getFormula(host.inside._lazilyTransformingAstService));
    const home = vertex instanceof ArrayFormulaVertex ? vertex.getRange().start : place;
    const [, content] = host.operations.getOldContent(place);
    this.#before.set(keyOf(place), { place, home, content });
  }

  #putBack(but: ReadonlySet<string>): void {
    for (const [key, { place, home, content }] of [...this.#before].reverse()) {
      if (but.has(key)) continue;
      if (keyOf(home) !== key) this.host.setCell(place, '');
      this.host.operations.restoreCell(home, content);
      this.#before.delete(key);
    }
  }
}

/** @throws Error when a cell is on no sheet */
export function mustStand(host: Host, places: readonly Place[]): void {
  for (const { sheet } of places) {
    if (!host.graphs.sheetMapping.hasSheetWithId(sheet)) throw new Error('A cell to be tried is on a sheet that is no longer in this workbook.');
  }
}
