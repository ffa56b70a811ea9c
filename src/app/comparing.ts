/**
 * The panel "Side by side": which inputs are compared with which values, kept
 * with the workbook, and what came of it. The worker tries them out; the sheet
 * is not touched.
 */
import { html } from 'lit';
import type { Comparison, ComparisonChange, ComparedResult, KeptWish } from '../panels/index.ts';
import type { Picture } from '../pictures/index.ts';
import type { Trial } from '../reckoning/index.ts';
import { LIMITS, MOST_CASES, cellAt, cellPointedAt, sheetById, type CellAddress, type CellChange, type ComparisonRecord, type Edit, type SheetId } from '../workbook/index.ts';
import { inputsThatDiffer, typedThere } from './compared-book.ts';
import { mayHavePicture, picturesOf } from './compared-pictures.ts';
import { KeptRecords } from './kept-records.ts';
import type { MorePanel, PanelHost } from './more-panels.ts';
import { comparisonTable } from './out-tables.ts';
import { cellNamed, placeName } from './places.ts';
import { cellKey, formulaOf } from './ticks.ts';

/** More than this many results are a list that nobody reads; the first ones are shown and the rest counted. */
const MOST = 200;

const FRESH: ComparisonRecord = { title: '', cases: ['As it is', 'Tried'], against: 0, inputs: [] };

export const panel = (host: PanelHost): MorePanel => new Comparing(host);

/** What came of trying the cases out. */
interface Tried {
  readonly outputs: readonly ComparedResult[] | null;
  readonly pictured: readonly CellAddress[];
  readonly pictures: readonly (Picture | null)[];
  readonly sentence?: string;
}

const NOTHING_YET: Tried = { outputs: null, pictured: [], pictures: [] };

class Comparing implements MorePanel {
  readonly #records: KeptRecords<'comparison'>;
  #tried: Tried = NOTHING_YET;
  /** What it was tried with: the record, and the state of the results. */
  #of: readonly unknown[] = [];
  #asked = 0;
  /** Other workbooks on the shelf. */
  #books: Comparison['books'] = [];
  #remark = '';

  constructor(private readonly host: PanelHost) {
    this.#records = new KeptRecords(() => host.desk, 'comparison', FRESH);
  }

  opened(): void {
    this.#of = [];
    this.#remark = '';
    const { desk, keep } = this.host;
    keep.keeping?.shelf.list().then((books) => {
      this.#books = books.filter(({ id, binnedAt }) => id !== desk.book.id && binnedAt === null).map(({ id, title, person }) => ({ id, title: person ? `${title} · ${person}` : title }));
      this.host.draw();
    }, () => undefined);
  }

  render() {
    const { desk } = this.host;
    const { sheetId: sheet, selection: { focus } } = desk;
    const here = { sheet, ...focus };
    const taken = this.#records.data.inputs.some(({ cell }) => sameCell(cellPointedAt(desk.book, cell), here));
    const candidate = !taken && cellAt(desk.sheet, focus.row, focus.col)?.raw ? placeName(desk.book, here) : '';
    void this.#refresh();
    return html`<tt-side-by-side .comparison=${this.#shown} .as=${desk.showAs} .candidate=${candidate} ?readonly=${desk.reading !== null}
      @tt-compare=${(event: CustomEvent<ComparisonChange>) => { this.#change(event.detail); this.host.draw(); }}
      @tt-kept=${(event: CustomEvent<KeptWish>) => { this.#records.grant(event.detail); this.host.draw(); }}
      @tt-export-comparison=${({ target }: Event) => target?.dispatchEvent(new CustomEvent('tt-export-grid', {
        detail: { grid: comparisonTable(this.#shown), title: `${desk.book.title} side by side` }, bubbles: true, composed: true,
      }))}></tt-side-by-side>`;
  }

  get #shown(): Comparison {
    const { book } = this.host.desk;
    const { cases, against, inputs, picture } = this.#records.data;
    const { outputs, pictured, pictures, sentence } = this.#tried;
    return {
      kept: this.#records.list, cases, against, outputs, pictures, books: this.#books, sentence: this.#remark || sentence,
      inputs: inputs.map(({ cell: formula, values }) => {
        const cell = cellPointedAt(book, formula);
        return cell ? { cell, ...cellNamed(cell, book), now: this.#rawAt(cell), values } : { cell, label: 'A cell that is gone', place: formula.slice(1), now: '', values };
      }),
      pictured: pictured.map((cell) => ({ cell: formulaOf(book, cell), name: placeName(book, cell) })),
      picture: picture ?? '',
    };
  }

  #change(change: ComparisonChange): void {
    const data = this.#records.data;
    const { cases, inputs, against } = data;
    const { desk } = this.host;
    this.#remark = '';
    switch (change.change) {
      case 'value': {
        const raw = change.raw.trim() === '' ? null : change.raw;
        this.#records.keep({ ...data, inputs: inputs.map((input, at) => (at === change.input ? { ...input, values: input.values.with(change.case, raw) } : input)) });
        break;
      }
      case 'case': this.#records.keep({ ...data, cases: cases.with(change.case, change.label) }); break;
      case 'add-case':
        if (cases.length >= MOST_CASES) desk.say(`There can be ${MOST_CASES} cases side by side: leave one out first.`);
        else this.#records.keep({ ...data, cases: [...cases, `Case ${cases.length + 1}`], inputs: inputs.map((input) => ({ ...input, values: [...input.values, input.values.at(-1) ?? null] })) });
        break;
      case 'remove-case':
        this.#records.keep({
          ...data, cases: cases.toSpliced(change.case, 1), against: against === change.case ? 0 : against > change.case ? against - 1 : against,
          inputs: inputs.map((input) => ({ ...input, values: input.values.toSpliced(change.case, 1) })),
        });
        break;
      case 'remove-input': this.#records.keep({ ...data, inputs: inputs.toSpliced(change.input, 1) }); break;
      case 'add-input': this.#add({ sheet: desk.sheetId, ...desk.selection.focus }); break;
      case 'against': this.#records.keep({ ...data, against: change.case }); break;
      case 'picture': {
        const without = { title: data.title, cases, against, inputs };
        this.#records.keep(change.cell === '' ? without : { ...without, picture: change.cell });
        break;
      }
      case 'from-book': void this.#fromBook(change.id); break;
      case 'put': this.#put(change.case); break;
    }
  }

  #add(cell: CellAddress): void {
    const data = this.#records.data;
    const { book } = this.host.desk;
    if (data.inputs.some((input) => sameCell(cellPointedAt(book, input.cell), cell))) return;
    this.#records.keep({ ...data, inputs: [...data.inputs, { cell: formulaOf(book, cell), values: data.cases.map(() => null) }] });
  }

  /** What another workbook has for the same inputs, as one more case; with none compared yet, for all in which they differ. */
  async #fromBook(id: string): Promise<void> {
    const { desk, keep } = this.host;
    try {
      const read = await keep.keeping?.shelf.read(id);
      if (!read) throw new Error('That workbook is not on this device any more.');
      const { book: other } = read;
      const { book } = desk;
      const data = this.#records.data;
      const inputs = data.inputs.length > 0 ? data.inputs
        : inputsThatDiffer(book, other).map((cell) => ({ cell: formulaOf(book, cell), values: data.cases.map(() => null) }));
      const values = inputs.map((input) => {
        const cell = cellPointedAt(book, input.cell);
        return cell && typedThere(book, other, cell);
      });
      const found = values.filter((raw) => raw !== null).length;
      if (found === 0) this.#remark = `“${other.title}” has no input with the same name, or the same words on a sheet of the same name, that differs.`;
      else if (data.cases.length >= MOST_CASES) this.#remark = `There can be ${MOST_CASES} cases side by side: leave one out first.`;
      else {
        // A second case in which nothing is tried yet makes room.
        const spare = data.inputs.length === 0 && data.cases.length === 2 ? 1 : 0;
        const kept = data.cases.slice(0, data.cases.length - spare);
        this.#records.keep({
          ...data, cases: [...kept, other.title.slice(0, LIMITS.line)], against: Math.min(data.against, kept.length - 1),
          inputs: inputs.map((input, at) => ({ ...input, values: [...input.values.slice(0, kept.length), values[at] ?? null] })),
        });
        if (found < inputs.length) this.#remark = `“${other.title}” has ${found} of these ${inputs.length} inputs; for the others the sheet’s own values are taken.`;
      }
    } catch (error) {
      this.#remark = error instanceof Error ? error.message : String(error);
    }
    this.host.draw();
  }

  /** The values of a case into the sheet, as one edit. */
  #put(index: number): void {
    const { desk } = this.host;
    const { cases, inputs } = this.#records.data;
    const changes = new Map<SheetId, CellChange[]>();
    for (const { cell: formula, values } of inputs) {
      const cell = cellPointedAt(desk.book, formula);
      const raw = values[index];
      const page = cell && sheetById(desk.book, cell.sheet);
      if (!cell || !page || raw === null || raw === undefined) continue;
      const { row, col } = cell;
      changes.set(cell.sheet, [...changes.get(cell.sheet) ?? [], { row, col, cell: { ...cellAt(page, row, col), raw } }]);
    }
    const name = cases[index] || `case ${index + 1}`;
    const edits = [...changes].map(([sheet, cells]): Edit => ({ do: 'setCells', sheet, cells }));
    if (edits.length && desk.do({ do: 'many', label: `put “${name}” into the sheet`.slice(0, LIMITS.line), edits })) desk.say(`The values of “${name}” are in the sheet.`);
  }

  /** Asks the worker again: after a change here, or after one in the workbook. */
  async #refresh(): Promise<void> {
    const { desk } = this.host;
    const data = this.#records.data;
    const of = [data, desk.results.revision, desk.book.settings, desk.engine];
    if (!desk.engine || of.every((each, at) => each === this.#of[at])) return;
    const sameInputs = (this.#of[0] as ComparisonRecord | undefined)?.inputs === data.inputs;
    this.#of = of;
    const asked = ++this.#asked;
    const { engine, book } = desk;
    const inputs = data.inputs.flatMap(({ cell: formula, values }) => {
      const cell = cellPointedAt(book, formula);
      return cell ? [{ cell, values }] : [];
    });
    if (inputs.length === 0) {
      this.#tried = { ...NOTHING_YET, ...(data.inputs.length > 0 && { sentence: 'The cells that were compared are no longer in this workbook. Leave them out, and add others.' }) };
      return;
    }
    // Old results stay while the same is asked of a sheet that changed.
    if (!sameInputs) this.#tried = NOTHING_YET;
    try {
      const dependents = await engine.dependents(inputs.map(({ cell }) => cell));
      if (asked !== this.#asked) return;
      const outputs = dependents.slice(0, MOST);
      const pictured = outputs.filter((cell) => mayHavePicture(this.#rawAt(cell)));
      const shown = data.picture === undefined ? undefined : pictured.find((cell) => sameCell(cellPointedAt(book, data.picture!), cell));
      const trials = data.cases.map((label, at): Trial => ({ label, values: inputs.flatMap(({ cell, values }) => (values[at] === null ? [] : [{ cell, raw: values[at]! }])) }));
      const tried = await engine.tryOut(trials, outputs, { against: data.against, ...(shown && { workings: [shown] }) });
      if (asked !== this.#asked) return;
      this.#tried = {
        outputs: outputs.map((cell, at): ComparedResult => ({
          cell, ...cellNamed(cell, book),
          results: tried.results.map((row) => row[at]!),
          differences: tried.differences.map((row) => row[at]!),
        })),
        pictured,
        pictures: shown ? picturesOf((tried.workings ?? []).map(([working]) => working), desk.showAs) : [],
        ...(dependents.length === 0 && { sentence: 'No result depends on these inputs yet.' }),
        ...(dependents.length > MOST && { sentence: `${dependents.length} results depend on these inputs; the first ${MOST} are shown.` }),
      };
    } catch (error) {
      if (asked !== this.#asked) return;
      this.#tried = { ...NOTHING_YET, sentence: error instanceof Error ? error.message : String(error) };
    }
    this.host.draw();
  }

  #rawAt({ sheet, row, col }: CellAddress): string {
    const page = sheetById(this.host.desk.book, sheet);
    return (page && cellAt(page, row, col)?.raw) ?? '';
  }
}

const sameCell = (one: CellAddress | null, other: CellAddress): boolean => one !== null && cellKey(one) === cellKey(other);
