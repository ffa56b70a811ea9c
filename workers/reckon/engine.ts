/**
 * The engine as the page knows it. Keeps nothing of the workbook but what its
 * formulas need: it can be thrown away at any moment and opened anew.
 */
import { engineName } from '../../src/formula/index.ts';
import type { SheetName } from '../../src/formula/index.ts';
import type { BackAnswer, BackSearch, ChangeSet, Example, FunctionCard, Reckoner, SheetChanges, Trial, TrialMore, TrialResults, Working } from '../../src/reckoning/protocol.ts';
import { keptLays } from '../../src/workbook/index.ts';
import type { Book, CellAddress, Effect } from '../../src/workbook/types.ts';
import { cardsFor } from './cards.ts';
import { columnsOf, withCautions } from './columns.ts';
import { dependentsOf } from './dependents.ts';
import { Examples } from './examples.ts';
import { explain } from './explain.ts';
import { Host } from './host.ts';
import { ArrayFormulaVertex } from './internals.ts';
import type { Place } from './internals.ts';
import { Teller } from './telling.ts';
import { inputsOf } from './trial-inputs.ts';
import { searchBack } from './trial-search.ts';
import { tryOut } from './trials.ts';

export class Engine implements Reckoner {
  readonly #examples = new Examples();
  /** Knows the functions, and becomes the host of the first workbook. */
  #fresh: Host | undefined = new Host();
  #opened: Host | undefined;
  #sheets: readonly SheetName[] = [];
  /** By the name that the engine knows it under, which is one for all spellings. */
  #names = new Map<string, string>();
  /** Counts what makes a search that is under way be of no more use. */
  #turn = 0;

  open(revision: number, book: Book): ChangeSet {
    const start = performance.now();
    this.#turn++;
    const host = this.#opened = this.#fresh ?? new Host();
    this.#fresh = undefined;
    this.#names = new Map(book.names.map(({ name }) => [engineName(name), name]));
    this.#setSheets(book.sheets);
    host.build(book.sheets, book.names, keptLays(book));
    const teller = new Teller(host);
    const sheets = book.sheets.map(({ id }) => this.#columns(id, filled(host, id), teller));
    return { revision, whole: true, sheets: sheets.filter(({ kind }) => kind.length > 0), took: performance.now() - start };
  }

  apply(revision: number, effects: readonly Effect[]): ChangeSet {
    const start = performance.now();
    this.#turn++;
    const host = this.#host;
    for (const effect of effects) this.#take(effect);
    if (effects.some(({ do: act }) => act !== 'cells' && act !== 'name')) host.reviewErrors();
    if (effects.some(({ do: act }) => act !== 'cells')) host.reviewCautions();
    host.recompute();
    const teller = new Teller(host);
    const sheets = [...host.changed.take()].map(([id, places]) => this.#columns(id, { places, values: places.map((place) => host.valueAt(place)) }, teller));
    return { revision, whole: false, sheets: sheets.filter(({ kind }) => kind.length > 0), took: performance.now() - start };
  }

  working(cell: CellAddress): Working {
    if (!this.#has(cell.sheet)) return { result: { kind: 'empty' }, uses: [] };
    return explain(this.#host, cell, new Teller(this.#host), this.#spelled);
  }

  catalogue(): readonly FunctionCard[] {
    return cardsFor((this.#fresh ?? this.#host).inside._functionRegistry);
  }

  example(formula: string): Example {
    return this.#examples.work(formula);
  }

  dependents(of: readonly CellAddress[]): readonly CellAddress[] {
    const order = new Map(this.#sheets.map(({ id }, i) => [id, i]));
    const places = dependentsOf(this.#host, of.filter(({ sheet }) => this.#has(sheet)));
    return places.map(({ sheet, row, col }) => ({ sheet, row, col }))
      .sort((a, b) => (order.get(a.sheet) ?? 0) - (order.get(b.sheet) ?? 0) || a.row - b.row || a.col - b.col);
  }

  tryOut(trials: readonly Trial[], outputs: readonly CellAddress[], more: TrialMore = {}): TrialResults {
    return tryOut(this.#host, trials, outputs, more, this.#spelled);
  }

  inputsOf(result: CellAddress): readonly CellAddress[] {
    return this.#has(result.sheet) ? inputsOf(this.#host, result) : [];
  }

  workBack(search: BackSearch): Promise<BackAnswer | null> {
    const mine = ++this.#turn;
    return searchBack(this.#host, search, this.#spelled, () => mine !== this.#turn);
  }

  cancelSearch(): void {
    this.#turn++;
  }

  readonly #spelled = (name: string): string | undefined => this.#names.get(name);

  /** @throws Error before a workbook was opened */
  get #host(): Host {
    if (this.#opened === undefined) throw new Error('No workbook has been opened in the engine.');
    return this.#opened;
  }

  #take(effect: Effect): void {
    const host = this.#host;
    switch (effect.do) {
      case 'cells':
        for (const { row, col, raw } of effect.cells) host.setCell({ sheet: effect.sheet, row, col }, raw);
        return;
      case 'sheets': {
        const [before, after] = [this.#sheets, effect.sheets];
        this.#setSheets(after);
        for (const { id } of before) if (!after.some((sheet) => sheet.id === id)) host.removeSheet(id);
        for (const { id } of after) if (!before.some((sheet) => sheet.id === id)) host.addSheet(id);
        return;
      }
      case 'name': {
        const { name, target } = effect;
        if (target === null) this.#names.delete(engineName(name));
        else this.#names.set(engineName(name), name);
        this.#setMeanings();
        if (target === null) host.removeName(name);
        else host.setName(name, target.area);
        return;
      }
      case 'layouts':
        host.setLayouts(effect.kept);
        return;
      case 'orderRows':
        host.orderRows(effect.area, effect.order);
        return;
      default:
        host.restructure(effect);
    }
  }

  #columns(sheet: number, { places, values }: Filled, teller: Teller): SheetChanges {
    const host = this.#host;
    const columns = columnsOf(sheet, places, values, teller.tell);
    return host.tools.cautions.none ? columns : withCautions(columns, (place) => host.cautionsAt(place));
  }

  #has(sheet: number): boolean {
    return this.#sheets.some(({ id }) => id === sheet);
  }

  #setSheets(sheets: readonly SheetName[]): void {
    this.#sheets = sheets.map(({ id, name }) => ({ id, name }));
    this.#host.names.setSheets(this.#sheets);
    this.#setMeanings();
  }

  #setMeanings(): void {
    this.#host.formulas.setMeanings(this.#sheets, [...this.#names.values()]);
  }
}

/** Places of a sheet, and what each holds. */
interface Filled {
  readonly places: readonly Place[];
  readonly values: readonly unknown[];
}

/** Those that hold something. */
function filled(host: Host, sheet: number): Filled {
  const places: Place[] = [];
  const values: unknown[] = [];
  for (const [place, vertex] of host.graphs.addressMapping.sheetEntries(sheet)) {
    const value = vertex instanceof ArrayFormulaVertex ? vertex.getArrayCellValue(place) : vertex.getCellValue();
    if (typeof value === 'symbol') continue;
    places.push(place);
    values.push(value);
  }
  return { places, values };
}
