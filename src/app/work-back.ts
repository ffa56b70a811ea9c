/** The panel “Work back”: what she wants of a result, which inputs may move for it, and the answers the engine finds. */
import { html } from 'lit';
import { isFormula } from '../formula/index.ts';
import { inBase, readQuantity, type Quantity } from '../quantities/index.ts';
import { shownResult, type BackBound, type BackCell, type BackFound, type BackWish, type WorkBackShown } from '../panels/index.ts';
import type { BackAnswer, Result, TrialPin } from '../reckoning/index.ts';
import { cellAt, sheetById, type CellAddress, type Sheet } from '../workbook/index.ts';
import type { MorePanel, PanelHost } from './more-panels.ts';
import { cellNamed, placeName } from './places.ts';
import { showAsFor } from './sheet-view.ts';
import { cellKey } from './ticks.ts';
import { readLike, readLimits, usualLimits, type LimitTexts } from './work-back-limits.ts';
import { foundInWords } from './work-back-words.ts';
import { typeInto } from './wishes.ts';

export const panel = (host: PanelHost): MorePanel => new WorkBack(host);

interface Moving extends LimitTexts {
  readonly cell: CellAddress;
  readonly fault: string;
  readonly answer: BackAnswer | null;
  readonly found: BackFound | null;
}

class WorkBack implements MorePanel {
  #result: CellAddress | null = null;
  #wanted = '';
  #bound: BackBound = 'exactly';
  #moving: readonly Moving[] = [];
  #offered: readonly CellAddress[] = [];
  #sentence = '';
  #searching = false;
  /** Counts searches, so that one that was given up is not shown. */
  #search = 0;
  /** The sheets that the answers are about. */
  #about: readonly Sheet[] | null = null;

  constructor(private readonly host: PanelHost) {}

  /** A selected result is taken at once, unless one is being worked at. */
  opened(): void {
    if (!this.#result && this.#resultFault(this.#selected) === '') this.#takeResult(this.#selected);
  }

  closed(): void {
    this.#cancel();
  }

  render() {
    const { desk } = this.host;
    this.#dropLost();
    const here = this.#selected;
    const name = placeName(desk.book, here);
    const isResult = this.#result !== null && cellKey(here) === cellKey(this.#result);
    const moves = this.#moving.some(({ cell }) => cellKey(cell) === cellKey(here));
    const candidate = { result: !isResult && this.#resultFault(here) === '' ? name : '', input: !moves && this.#typed(here) ? name : '' };
    return html`<tt-work-back .shown=${this.#shown} .candidate=${candidate} ?readonly=${desk.reading !== null}
      @tt-back=${(event: CustomEvent<BackWish>) => this.#grant(event.detail)}></tt-work-back>`;
  }

  get #shown(): WorkBackShown {
    const used = new Set(this.#moving.map(({ cell }) => cellKey(cell)));
    return {
      result: this.#result && this.#named(this.#result),
      wanted: this.#wanted, bound: this.#bound, sentence: this.#sentence, searching: this.#searching,
      inputs: this.#moving.map(({ cell, from, to, step, fault, found }) => ({ ...this.#named(cell), from, to, step, fault, found })),
      offered: this.#offered.filter((cell) => !used.has(cellKey(cell))).map((cell) => this.#named(cell)),
      stale: this.#about !== null && this.#about !== this.host.desk.book.sheets,
      resultAs: this.#result ? this.#asOf(this.#result) : this.host.desk.showAs,
    };
  }

  #grant(wish: BackWish): void {
    this.#sentence = '';
    switch (wish.wish) {
      case 'result': this.#takeResult(this.#selected); break;
      case 'input': this.#letMove(this.#selected); break;
      case 'offered': this.#letMove(wish.cell); break;
      case 'wanted': this.#wanted = wish.raw; this.#forget(); break;
      case 'bound': this.#bound = wish.bound; this.#forget(); break;
      case 'leave out': this.#moving = this.#moving.filter((_, at) => at !== wish.at); break;
      case 'limit': this.#moving = this.#moving.map((each, at) => (at === wish.at ? { ...each, [wish.of]: wish.raw, fault: '', answer: null, found: null } : each)); break;
      case 'search': void this.#find(); break;
      case 'cancel': this.#cancel(); break;
      case 'put': this.#put(wish.at, wish.which); break;
    }
    this.host.draw();
  }

  #takeResult(cell: CellAddress): void {
    const fault = this.#resultFault(cell);
    if (fault !== '') {
      this.#sentence = fault;
      return;
    }
    this.#cancel();
    this.#result = cell;
    this.#moving = [];
    this.#offered = [];
    this.#about = null;
    const { desk } = this.host;
    desk.engine?.inputsOf(cell).then((cells) => {
      if (this.#result !== cell) return;
      // Those marked as inputs first: they are what she meant to be changed.
      const marked = (each: CellAddress): number => (this.#cellAt(each)?.input ? 0 : 1);
      this.#offered = [...cells].sort((a, b) => marked(a) - marked(b)).slice(0, MOST_OFFERED);
      this.host.draw();
    }, (error: unknown) => this.#say(error));
  }

  #letMove(cell: CellAddress): void {
    const now = this.#typed(cell);
    const name = placeName(this.host.desk.book, cell);
    if (isFormula(this.#cellAt(cell)?.raw ?? '')) this.#sentence = `${name} is worked out by a formula, and the answer would take its place. Let a typed figure that it comes from change instead.`;
    else if (!now) this.#sentence = `${name} holds no figure: select a cell with a typed figure.`;
    else if (this.#result && cellKey(cell) === cellKey(this.#result)) this.#sentence = `${name} is the result itself: select a typed figure that it comes from.`;
    else if (!this.#moving.some((each) => cellKey(each.cell) === cellKey(cell))) this.#moving = [...this.#moving, { cell, ...usualLimits(now), fault: '', answer: null, found: null }];
  }

  /** Looks for an answer in one input after the other. */
  async #find(): Promise<void> {
    const { desk } = this.host;
    const result = this.#result;
    if (!result || !desk.engine) return;
    const wanted = this.#readWanted(result);
    if ('sentence' in wanted) {
      this.#sentence = wanted.sentence;
      this.host.draw();
      return;
    }
    this.#cancel();
    const mine = ++this.#search;
    this.#searching = true;
    this.#about = desk.book.sheets;
    this.#forget();
    this.host.draw();
    try {
      for (let at = 0; at < this.#moving.length && mine === this.#search; at++) {
        const moving = this.#moving[at]!;
        const now = this.#typed(moving.cell);
        const limits = now ? readLimits(moving, now.unit) : { sentence: 'This cell holds no figure any more.' };
        if ('sentence' in limits || !now) {
          this.#change(at, { fault: 'sentence' in limits ? limits.sentence : '' });
          continue;
        }
        const answer = await desk.engine.workBack({
          result, input: moving.cell, wanted: { value: wanted.value, unit: wanted.unit }, bound: this.#bound, unit: now.unit,
          low: limits.low, high: limits.high, now: now.value, step: limits.step, ...(limits.whole && { whole: true }),
        });
        if (mine !== this.#search) return;
        if (!answer) {
          this.#sentence = 'It was stopped, because the sheet changed or you asked for it.';
          break;
        }
        const affected = new Set((await desk.engine.dependents([moving.cell])).map(cellKey));
        if (mine !== this.#search) return;
        const found = foundInWords(answer, {
          result: this.#named(result).label || placeName(desk.book, result), input: this.#named(moving.cell).label || placeName(desk.book, moving.cell),
          wanted, bound: this.#bound, unit: now.unit, limits, resultAs: this.#asOf(result), inputAs: this.#asOf(moving.cell),
          pinsNow: pinsNow(desk.book.sheets, desk.results).filter(({ cell }) => affected.has(cellKey(cell))),
          placeOf: ({ cell }) => placeName(desk.book, cell),
        });
        this.#change(at, { answer, found });
      }
    } catch (error) {
      if (mine === this.#search) this.#say(error);
    } finally {
      if (mine === this.#search) {
        this.#searching = false;
        this.host.draw();
      }
    }
  }

  #put(at: number, which: 'cut' | 'exact' | 'best'): void {
    const moving = this.#moving[at];
    const offer = moving?.found?.offers.find((each) => each.which === which);
    if (!moving || !offer || this.#shown.stale) return;
    const { desk } = this.host;
    if (!typeInto(desk, moving.cell, offer.raw)) return;
    desk.say(`Put ${offer.raw} into ${placeName(desk.book, moving.cell)}.`);
    this.#about = null;
    this.#forget();
  }

  #readWanted(result: CellAddress): Quantity | { readonly sentence: string } {
    const now = this.host.desk.results.at(result.sheet, result.row, result.col);
    if (this.#wanted.trim() === '') return { sentence: 'Say what the result is to be.' };
    if (now.kind !== 'quantity') {
      const reading = readQuantity(this.#wanted);
      return reading.kind === 'quantity' ? reading.quantity : readLike(this.#wanted, '');
    }
    const read = readLike(this.#wanted, now.unit);
    // A bare number beside percents is so many of them.
    if (!('sentence' in read) && now.unit === '%' && read.unit === '' && read.value > 1) return inBase(read.value / 100, '%');
    return read;
  }

  #cancel(): void {
    if (this.#searching) this.host.desk.engine?.cancelSearch();
    this.#search++;
    this.#searching = false;
  }

  #forget(): void {
    this.#moving = this.#moving.map((each) => ({ ...each, fault: '', answer: null, found: null }));
  }

  #change(at: number, change: Partial<Moving>): void {
    this.#moving = this.#moving.map((each, n) => (n === at ? { ...each, ...change } : each));
    this.host.draw();
  }

  #say(error: unknown): void {
    this.#sentence = error instanceof Error ? error.message : String(error);
    this.host.draw();
  }

  #resultFault(cell: CellAddress): string {
    const raw = this.#cellAt(cell)?.raw ?? '';
    const name = placeName(this.host.desk.book, cell);
    if (!isFormula(raw)) return `${name} is not worked out by a formula: select the cell of a result.`;
    const { kind } = this.host.desk.results.at(cell.sheet, cell.row, cell.col);
    return kind === 'text' || kind === 'truth' || kind === 'span' ? `${name} is no figure, and only figures can be worked back from.` : '';
  }

  /** Its sheet may have been removed. */
  #dropLost(): void {
    const there = ({ sheet }: CellAddress): boolean => sheetById(this.host.desk.book, sheet) !== undefined;
    if (this.#result && !there(this.#result)) this.#result = null;
    if (!this.#moving.every(({ cell }) => there(cell))) this.#moving = this.#moving.filter(({ cell }) => there(cell));
    if (!this.#offered.every(there)) this.#offered = this.#offered.filter(there);
  }

  get #selected(): CellAddress {
    const { sheetId, selection: { focus } } = this.host.desk;
    return { sheet: sheetId, row: focus.row, col: focus.col };
  }

  #cellAt({ sheet, row, col }: CellAddress) {
    const page = sheetById(this.host.desk.book, sheet);
    return page && cellAt(page, row, col);
  }

  #typed(cell: CellAddress): Quantity | null {
    const raw = this.#cellAt(cell)?.raw ?? '';
    if (isFormula(raw)) return null;
    const reading = readQuantity(raw);
    return reading.kind === 'quantity' ? reading.quantity : null;
  }

  #asOf(cell: CellAddress) {
    return showAsFor(this.#cellAt(cell), this.host.desk.showAs);
  }

  #named(cell: CellAddress): BackCell {
    const { book, results } = this.host.desk;
    const result: Result = results.at(cell.sheet, cell.row, cell.col);
    return { cell, ...cellNamed(cell, book), now: result.kind === 'error' ? 'without a result' : shownResult(result, this.#asOf(cell)).main };
  }
}

const MOST_OFFERED = 12;

/** Every pin there is. */
function pinsNow(sheets: readonly Sheet[], results: PanelHost['desk']['results']): TrialPin[] {
  return sheets.flatMap(({ id }) => results.pins.of(id).flatMap(({ row, col, cautions }) => cautions.map((caution) => ({ cell: { sheet: id, row, col }, caution }))));
}
