/** The panel "Run of values": one input over a range, kept with the workbook, and what the engine makes of it. */
import { html } from 'lit';
import { isFormula } from '../formula/index.ts';
import type { KeptWish, Run, RunCell, RunPin, RunValue, RunWish } from '../panels/index.ts';
import { runPlot, type Picture } from '../pictures/index.ts';
import { inBase, readQuantity, show, type Quantity } from '../quantities/index.ts';
import type { Result, TrialResults } from '../reckoning/index.ts';
import { MOST_RUN_RESULTS, cellAt, cellPointedAt, sheetById, type CellAddress, type RunRecord } from '../workbook/index.ts';
import { KeptRecords } from './kept-records.ts';
import type { MorePanel, PanelHost } from './more-panels.ts';
import { cellNamed, placeName } from './places.ts';
import { pinsAlong, runTable, runValues } from './run-of-values-table.ts';
import { showAsFor } from './sheet-view.ts';
import { formulaOf } from './ticks.ts';
import { typedText, usualLimits } from './work-back-limits.ts';

/** A fresh one has no input, which a record must have. */
const FRESH: RunRecord = { title: '', input: '=', from: '', to: '', step: '', results: [] };
/** Results that are shown by themselves when an input is chosen. */
const SHOWN_FIRST = 3;
const MOST_OFFERED = 10;

export const panel = (host: PanelHost): MorePanel => new RunOfValues(host);

interface Done {
  readonly values: readonly RunValue[] | null;
  readonly inputs: readonly Quantity[];
  readonly pins: readonly RunPin[];
  readonly plots: readonly (Picture | null)[];
  readonly offered: readonly CellAddress[];
  readonly sentence: string;
}

const NOT_DONE: Done = { values: null, inputs: [], pins: [], plots: [], offered: [], sentence: '' };

class RunOfValues implements MorePanel {
  readonly #records: KeptRecords<'run'>;
  #done: Done = NOT_DONE;
  #of: readonly unknown[] = [];
  #asked = 0;
  #refused = '';

  constructor(private readonly host: PanelHost) {
    this.#records = new KeptRecords(() => host.desk, 'run', FRESH);
  }

  opened(): void {
    this.#of = [];
  }

  render() {
    const { desk } = this.host;
    void this.#refresh();
    const { row, col } = desk.selection.focus;
    const here = { sheet: desk.sheetId, row, col };
    const { input, results } = this.#records.data;
    const [name, formula] = [placeName(desk.book, here), formulaOf(desk.book, here)];
    const candidate = {
      input: this.#typed(here) && formula !== input ? name : '',
      result: isFormula(this.#cellAt(here)?.raw ?? '') && !results.includes(formula) ? name : '',
    };
    return html`<tt-run-of-values .run=${this.#shown} .candidate=${candidate} ?readonly=${desk.reading !== null}
      @tt-run-wish=${(event: CustomEvent<RunWish>) => { this.#grant(event.detail); this.host.draw(); }}
      @tt-kept=${(event: CustomEvent<KeptWish>) => { this.#refused = ''; this.#records.grant(event.detail); this.host.draw(); }}
      @tt-export-run=${({ target }: Event) => target?.dispatchEvent(new CustomEvent('tt-export-grid', {
        detail: { grid: runTable(this.#shown, this.#done.inputs), title: `${desk.book.title} run of values` }, bubbles: true, composed: true,
      }))}></tt-run-of-values>`;
  }

  get #shown(): Run {
    const { book } = this.host.desk;
    const data = this.#records.data;
    const { values, pins, plots, offered, sentence } = this.#done;
    return {
      kept: this.#records.list, input: data.input === FRESH.input ? null : this.#named(data.input), from: data.from, to: data.to, step: data.step,
      results: data.results.map((formula) => this.#named(formula)), values, pins, plots,
      offered: offered.map((cell) => formulaOf(book, cell)).filter((formula) => !data.results.includes(formula)).slice(0, MOST_OFFERED).map((formula) => this.#named(formula)),
      sentence: this.#refused || sentence,
    };
  }

  #grant(wish: RunWish): void {
    const { desk } = this.host;
    const data = this.#records.data;
    const here = { sheet: desk.sheetId, row: desk.selection.focus.row, col: desk.selection.focus.col };
    this.#refused = '';
    switch (wish.wish) {
      case 'input': void this.#takeInput(here); break;
      case 'limit': this.#records.keep({ ...data, [wish.of]: wish.raw.trim() }); break;
      case 'result': this.#addResult(here); break;
      case 'offered': this.#addResult(wish.cell); break;
      case 'leave out': this.#records.keep({ ...data, results: data.results.toSpliced(wish.at, 1) }); break;
    }
  }

  /** The input, with usual limits and the first results that depend on it: one edit. */
  async #takeInput(cell: CellAddress): Promise<void> {
    const { desk } = this.host;
    const now = this.#typed(cell);
    if (!now) {
      const name = placeName(desk.book, cell);
      this.#refused = isFormula(this.#cellAt(cell)?.raw ?? '') ? `${name} is worked out by a formula: select a typed figure.` : `${name} holds no figure: select a cell with a typed figure.`;
      this.host.draw();
      return;
    }
    try {
      const figures = (await desk.engine?.dependents([cell]) ?? []).filter((each) => desk.results.at(each.sheet, each.row, each.col).kind === 'quantity');
      const kept = this.#records.data.results.filter((formula) => figures.some((each) => formulaOf(desk.book, each) === formula));
      const results = kept.length > 0 ? kept : figures.slice(0, SHOWN_FIRST).map((each) => formulaOf(desk.book, each));
      this.#records.keep({ title: this.#records.data.title, input: formulaOf(desk.book, cell), ...usualLimits(now), results });
    } catch (error) {
      this.#refused = error instanceof Error ? error.message : String(error);
    }
    this.host.draw();
  }

  #addResult(cell: CellAddress): void {
    const { desk } = this.host;
    const data = this.#records.data;
    const formula = formulaOf(desk.book, cell);
    if (!isFormula(this.#cellAt(cell)?.raw ?? '')) this.#refused = `${placeName(desk.book, cell)} is not worked out by a formula: select the cell of a result.`;
    else if (data.results.length >= MOST_RUN_RESULTS) this.#refused = `A run shows at most ${MOST_RUN_RESULTS} results: leave one out first.`;
    else if (!data.results.includes(formula)) this.#records.keep({ ...data, results: [...data.results, formula] });
  }

  async #refresh(): Promise<void> {
    const { desk } = this.host;
    const data = this.#records.data;
    const of = [data, desk.results.revision, desk.book.settings, desk.engine];
    if (!desk.engine || of.every((each, at) => each === this.#of[at])) return;
    this.#of = of;
    const asked = ++this.#asked;
    const input = data.input === FRESH.input ? null : cellPointedAt(desk.book, data.input);
    const now = input && this.#typed(input);
    if (!input || !now) {
      this.#done = { ...NOT_DONE, sentence: data.input === FRESH.input ? '' : !input ? 'The cell that runs is no longer in this workbook. Select another.' : 'The cell that runs holds no typed figure any more. Type one in it, or select another.' };
      return;
    }
    const values = runValues(data, now.unit);
    if ('sentence' in values) {
      this.#done = { ...NOT_DONE, sentence: values.sentence };
      return;
    }
    const { engine, book } = desk;
    const results = data.results.map((formula) => cellPointedAt(book, formula));
    const there = results.filter((cell): cell is CellAddress => cell !== null);
    const inputs = values.map((value) => inBase(value, now.unit));
    try {
      // Figures of its own sheet first; others are a select away.
      const far = ({ sheet }: CellAddress): number => (sheet === input.sheet ? 0 : 1);
      const offered = (await engine.dependents([input])).filter((cell) => desk.results.at(cell.sheet, cell.row, cell.col).kind === 'quantity').sort((a, b) => far(a) - far(b));
      const tried = await engine.tryOut(inputs.map((figure) => ({ label: '', values: [{ cell: input, raw: typedText(figure) }] })), there, { pins: true });
      if (asked !== this.#asked) return;
      this.#done = this.#doneWith(tried, input, now, inputs, results, offered);
    } catch (error) {
      if (asked !== this.#asked) return;
      this.#done = { ...NOT_DONE, sentence: error instanceof Error ? error.message : String(error) };
    }
    this.host.draw();
  }

  #doneWith(tried: TrialResults, input: CellAddress, now: Quantity, inputs: readonly Quantity[], results: readonly (CellAddress | null)[], offered: readonly CellAddress[]): Done {
    const { book, showAs } = this.host.desk;
    const as = this.#asOf(input);
    const there = results.filter((cell) => cell !== null);
    const inputValues = inputs.map(({ value }) => value);
    const along = pinsAlong(inputValues, tried.pins ?? [], now.unit, as, showAs, ({ cell }) => placeName(book, cell));
    const gone: Result = { kind: 'error', sentence: 'This cell is gone.' };
    const rows = inputs.map((_, n) => results.map((cell) => (cell ? tried.results[n]![there.indexOf(cell)]! : gone)));
    const apart = now.unit === '' && inputValues.every(Number.isInteger);
    return {
      inputs, offered, pins: along.listed, sentence: results.length === 0 ? 'No result is shown yet: select one in the sheet, or choose one above.' : '',
      values: inputs.map((figure, n): RunValue => {
        const { main, also } = show(figure, as);
        return { shown: main, also, now: Math.abs(figure.value - now.value) <= 1e-9 * Math.abs(now.value), results: rows[n]!, pins: along.at[n]! };
      }),
      plots: results.map((cell, at) => this.#plot(cell, rows.map((row) => row[at]!), inputValues, { input, now, apart, pins: along.stretches })),
    };
  }

  #plot(cell: CellAddress | null, results: readonly Result[], inputs: readonly number[], { input, now, apart, pins }: {
    readonly input: CellAddress; readonly now: Quantity; readonly apart: boolean; readonly pins: Parameters<typeof runPlot>[0]['pins'];
  }): Picture | null {
    const first = results.find((result) => result.kind === 'quantity');
    if (!cell || first?.kind !== 'quantity') return null;
    const name = (of: CellAddress): string => {
      const { label, place } = cellNamed(of, this.host.desk.book);
      return label || place;
    };
    return runPlot({
      input: { name: name(input), unit: now.unit, as: this.#asOf(input) }, result: { name: name(cell), unit: first.unit, as: this.#asOf(cell) },
      points: results.map((result, n) => ({ x: inputs[n]!, y: result.kind === 'quantity' ? result.value : null })), apart, pins,
    });
  }

  #named(formula: string): RunCell {
    const { book, showAs } = this.host.desk;
    const cell = cellPointedAt(book, formula);
    return cell ? { cell, ...cellNamed(cell, book), as: this.#asOf(cell) } : { cell: null, label: '', place: 'a cell that is gone', as: showAs };
  }

  #cellAt({ sheet, row, col }: CellAddress) {
    const page = sheetById(this.host.desk.book, sheet);
    return page && cellAt(page, row, col);
  }

  #asOf(cell: CellAddress) {
    return showAsFor(this.#cellAt(cell), this.host.desk.showAs);
  }

  #typed(cell: CellAddress): Quantity | null {
    const reading = readQuantity(this.#cellAt(cell)?.raw ?? '');
    return reading.kind === 'quantity' ? reading.quantity : null;
  }
}
