/**
 * The working of the selected cell: fetched when the cell or the results are
 * others, with what would mend the cell when it has no result. What is said of
 * an error goes once to those who listen instead of look.
 */
import { cellName } from '../formula/index.ts';
import type { Mend } from '../panels/index.ts';
import type { FunctionCard, Result, Working } from '../reckoning/index.ts';
import { cellAt, sheetById, type CellAddress } from '../workbook/index.ts';
import { command, keysInWords } from './commands.ts';
import type { Desk } from './desk.ts';
import { mendsFor } from './mending.ts';
import { sheetInFormula } from '../formula/index.ts';
import { typeInto } from './wishes.ts';

/** Commands that take the first and the second mend. */
const MENDS = ['mend', 'mend-other'] as const;

export interface MendScreens {
  mend(at: number): void;
  goToCause(): void;
}

interface Host {
  requestUpdate(): void;
}

export class Explaining {
  working: Working | null = null;
  /** The functions there are, for words that are none. */
  cards: readonly FunctionCard[] = [];
  /** The last thing said of an error. */
  aloud = '';
  #of = '';
  #mends: readonly Mend[] = [];
  #mendsOf: readonly unknown[] = [];
  /** A cell that was just typed in, until its result is known. */
  #entered: CellAddress | null = null;

  constructor(private readonly host: Host, private readonly desk: () => Desk) {}

  get screens(): MendScreens {
    return {
      mend: (at) => this.mend(at),
      goToCause: () => {
        const cell = this.working?.fault?.cause?.cell ?? this.working?.fault?.circle?.find((each) => !this.#isSelected(each.cell))?.cell;
        if (cell) this.desk().selectArea({ sheet: cell.sheet, top: cell.row, bottom: cell.row, left: cell.col, right: cell.col });
        else this.desk().say('This cell’s error begins in no other cell.');
      },
    };
  }

  get causeKeys(): string {
    return keysOf('cause');
  }

  /** What would mend the selected cell. */
  get mends(): readonly Mend[] {
    const { desk, cell, raw } = this.#here;
    const seen = [desk.book, cell.sheet, cell.row, cell.col, raw, this.working, this.cards, this.#result.kind];
    if (seen.some((each, at) => each !== this.#mendsOf[at])) {
      this.#mendsOf = seen;
      const found = this.#result.kind === 'error' ? mendsFor(desk.book, cell, raw, this.working, this.cards.map(({ name }) => name)) : [];
      this.#mends = found.map((mend, at) => ({ ...mend, keys: MENDS[at] ? keysOf(MENDS[at]) : '' }));
    }
    return this.#mends;
  }

  /** A sentence on an error, with the keys that mend it, for the line above the cells. */
  faultLine(sentence: string): string {
    const [mend] = this.mends;
    const cause = this.working?.fault?.cause;
    if (mend) return `${sentence} ${mend.label}: ${mend.keys}.`;
    return cause ? `${sentence} Go to ${cause.text}: ${this.causeKeys}.` : sentence;
  }

  /** A cell was typed in: what is wrong with it is said, wherever the selection went. */
  entered(cell: CellAddress): void {
    this.#entered = cell;
  }

  mend(at: number): void {
    const mend = this.mends[at];
    const desk = this.desk();
    if (!mend) desk.say(at === 0 ? 'There is nothing here that one key could mend.' : 'There is no other way to mend this that one key could do.');
    else if (typeInto(desk, mend.cell, mend.raw)) desk.say(`Done: ${mend.label}.`);
  }

  /** Call when anything changed. */
  async follow(): Promise<void> {
    const { desk, cell, raw } = this.#here;
    this.#sayEntered();
    const place = `${cell.sheet} ${cell.row} ${cell.col} ${raw}`;
    const key = `${place} ${desk.results.revision}`;
    if (key === this.#of) return;
    // Another cell's working must not stand under this one's heading, however long the answer takes.
    if (!this.#of.startsWith(`${place} `)) this.working = null;
    this.#of = key;
    if (!raw.startsWith('=') || !desk.engine) return;
    const working = await desk.engine.working(cell).catch(() => null);
    if (key !== this.#of) return;
    this.working = working;
    if (working?.fault) this.#say([...this.mends.slice(0, 2).map(({ label, keys }) => `${label}: ${keys}.`), ...(working.fault.cause ? [`Go to ${working.fault.cause.text}: ${this.causeKeys}.`] : [])].join(' '));
    this.host.requestUpdate();
  }

  #sayEntered(): void {
    const cell = this.#entered;
    const desk = this.desk();
    if (!cell || desk.waiting) return;
    this.#entered = null;
    const result = desk.results.at(cell.sheet, cell.row, cell.col);
    if (result.kind !== 'error' || this.#isSelected(cell)) return;
    const sheet = cell.sheet === desk.sheetId ? '' : `${sheetInFormula(sheetById(desk.book, cell.sheet)?.name ?? '')}!`;
    this.#say(`${sheet}${cellName(cell.row, cell.col)} has no result. ${result.sentence}`);
  }

  #say(sentence: string): void {
    if (sentence === '') return;
    this.aloud = sentence;
    this.host.requestUpdate();
  }

  #isSelected({ sheet, row, col }: CellAddress): boolean {
    const { sheetId, selection: { focus } } = this.desk();
    return sheet === sheetId && row === focus.row && col === focus.col;
  }

  get #here(): { desk: Desk; cell: CellAddress; raw: string } {
    const desk = this.desk();
    const { row, col } = desk.selection.focus;
    return { desk, cell: { sheet: desk.sheetId, row, col }, raw: cellAt(desk.sheet, row, col)?.raw ?? '' };
  }

  get #result(): Result {
    const { desk, cell } = this.#here;
    return desk.results.at(cell.sheet, cell.row, cell.col);
  }
}

function keysOf(id: string): string {
  return keysInWords(command(id).keys ?? '', /Mac|iPhone|iPad/.test(navigator.userAgent));
}
