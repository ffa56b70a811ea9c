/**
 * Side by side: which inputs are compared with which values, and what came of
 * it. The worker tries them out; the sheet is not touched.
 */
import type { Comparison, ComparisonChange, ComparedInput, ComparedResult } from '../panels/index.ts';
import type { Supervisor, Trial } from '../reckoning/index.ts';
import { cellAt, sheetById, type Book, type CellAddress } from '../workbook/index.ts';
import { placeName, rowLabel } from './places.ts';
import { cellName } from '../formula/index.ts';

/** More than this many results are a list that nobody reads; the first ones are shown and the rest counted. */
const MOST = 200;

export class Comparing extends EventTarget {
  comparison: Comparison = { cases: ['As it is', 'Tried'], inputs: [], outputs: null };
  #asked = 0;

  change(change: ComparisonChange, candidate: CellAddress | null, book: Book): void {
    const { cases, inputs } = this.comparison;
    switch (change.change) {
      case 'value':
        this.#set({ inputs: inputs.map((input, at) => (at === change.input ? { ...input, values: input.values.map((raw, n) => (n === change.case ? change.raw : raw)) } : input)), outputs: null });
        break;
      case 'case':
        this.#set({ cases: cases.map((label, at) => (at === change.case ? change.label : label)) });
        break;
      case 'remove-input':
        this.#set({ inputs: inputs.filter((_, at) => at !== change.input), outputs: null });
        break;
      case 'add-input':
        if (candidate) this.#add(candidate, book);
        break;
    }
  }

  /** Asks the worker again: after a change here, or after one in the workbook. */
  async refresh(book: Book, engine: Supervisor): Promise<void> {
    const { inputs, cases } = this.comparison;
    const kept = inputs.filter(({ cell }) => sheetById(book, cell.sheet));
    if (kept.length === 0) {
      this.#set({ inputs: kept, outputs: null, sentence: undefined });
      return;
    }
    const asked = ++this.#asked;
    try {
      const cells = kept.map(({ cell }) => cell);
      const dependents = await engine.dependents(cells);
      const outputs = dependents.slice(0, MOST);
      const trials = cases.map((label, at): Trial => ({ label, values: kept.map(({ cell, values }) => ({ cell, raw: values[at] ?? '' })) }));
      const tried = await engine.tryOut(trials, outputs);
      if (asked !== this.#asked) return;
      this.#set({
        inputs: kept,
        outputs: outputs.map((cell, at): ComparedResult => ({
          cell, ...labelled(cell, book),
          results: tried.results.map((row) => row[at]!),
          differences: tried.differences.map((row) => row[at]!),
        })),
        sentence: dependents.length === 0 ? 'No result depends on these inputs yet.'
          : dependents.length > MOST ? `${dependents.length} results depend on these inputs; the first ${MOST} are shown.` : undefined,
      });
    } catch (error) {
      if (asked === this.#asked) this.#set({ outputs: null, sentence: error instanceof Error ? error.message : String(error) });
    }
  }

  #add(cell: CellAddress, book: Book): void {
    const { inputs, cases } = this.comparison;
    if (inputs.some((input) => input.cell.sheet === cell.sheet && input.cell.row === cell.row && input.cell.col === cell.col)) return;
    const sheet = sheetById(book, cell.sheet);
    const raw = sheet ? cellAt(sheet, cell.row, cell.col)?.raw ?? '' : '';
    const input: ComparedInput = { cell, ...labelled(cell, book), values: cases.map(() => raw) };
    this.#set({ inputs: [...inputs, input], outputs: null, sentence: undefined });
  }

  #set(change: Partial<Comparison>): void {
    this.comparison = { ...this.comparison, ...change };
    this.dispatchEvent(new Event('change'));
  }
}

function labelled(cell: CellAddress, book: Book): { label: string; place: string } {
  const sheet = sheetById(book, cell.sheet);
  if (!sheet) return { label: '', place: placeName(book, cell) };
  return { label: rowLabel(sheet, cell.row, cell.col), place: `${sheet.name} ${cellName(cell.row, cell.col)}` };
}
