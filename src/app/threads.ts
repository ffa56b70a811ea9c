/**
 * Threads from a cell to what it uses, or to what uses it: looked up in the
 * engine, said in words, drawn by the grid, and followed from end to end.
 */
import { cellName } from '../formula/index.ts';
import { MOST_THREADS, type Threads } from '../grid/index.ts';
import { shownResult } from '../panels/index.ts';
import { cellAt, sheetById, type Area, type CellAddress } from '../workbook/index.ts';
import type { Desk } from './desk.ts';
import { rowLabel } from './places.ts';
import { reads } from './uses.ts';

export type Way = Threads['way'];

interface Shown {
  readonly of: CellAddress;
  readonly way: Way;
  readonly ends: readonly Area[];
  /** What was typed in the cell: when it is another, the threads are of no cell any more. */
  readonly raw: string;
}

export class ThreadsOfCell {
  #shown: Shown | null = null;
  /** The end that was gone to last. */
  #at = -1;
  #asked = 0;
  #drawn: { readonly from: Shown; readonly sheet: number; readonly is: Threads | null } | null = null;

  constructor(private readonly desk: () => Desk, private readonly changed: () => void) {}

  /** For the sheet that is open; the same object for as long as nothing about it changed. */
  get drawn(): Threads | null {
    const shown = this.#shown;
    if (!shown) return null;
    const sheet = this.desk().sheetId;
    if (this.#drawn?.from !== shown || this.#drawn.sheet !== sheet) this.#drawn = { from: shown, sheet, is: this.#draw(shown) };
    return this.#drawn.is;
  }

  #draw({ of, way, ends }: Shown): Threads | null {
    const { sheetId } = this.desk();
    if (of.sheet !== sheetId) return null;
    return { of: { row: of.row, col: of.col }, way, ends: ends.map((area) => ({ area: area.sheet === sheetId ? area : null, words: this.#place(area) })) };
  }

  /** Shows what the active cell uses, or what uses it; once more puts the threads away. */
  async toggle(way: Way): Promise<void> {
    const desk = this.desk();
    const of = { sheet: desk.sheetId, ...desk.selection.focus };
    const now = this.#shown;
    if (now && now.way === way && now.of.sheet === of.sheet && now.of.row === of.row && now.of.col === of.col) {
      this.putAway();
      desk.say('The threads are put away.');
      return;
    }
    const found = await this.#find(of, way);
    if (found) desk.say(found.sentence);
  }

  putAway(): boolean {
    const any = this.#shown !== null;
    this.#shown = null;
    this.#asked++;
    if (any) this.changed();
    return any;
  }

  /** Goes to the next end, or to the first; shows what the cell uses when no threads are there. */
  async along(): Promise<void> {
    const desk = this.desk();
    if (!this.#shown && !(await this.#find({ sheet: desk.sheetId, ...desk.selection.focus }, 'uses'))) return;
    const { ends } = this.#shown ?? { ends: [] };
    if (ends.length === 0) {
      desk.say('There is no thread to follow here.');
      return;
    }
    this.#at = (this.#at + 1) % ends.length;
    const end = ends[this.#at]!;
    desk.selectArea(end);
    desk.say(`Thread ${this.#at + 1} of ${ends.length}: ${this.#words(end)}.`);
  }

  /** Goes back to the cell that the threads are of. */
  back(): void {
    const desk = this.desk();
    if (!this.#shown) {
      desk.say('No threads are shown.');
      return;
    }
    const { sheet, row, col } = this.#shown.of;
    desk.selectArea({ sheet, top: row, left: col, bottom: row, right: col });
  }

  /** After an edit: the threads are looked up again, unless their cell is another now. */
  refresh(): void {
    const shown = this.#shown;
    if (!shown) return;
    if (this.#raw(shown.of) !== shown.raw) this.putAway();
    else void this.#find(shown.of, shown.way);
  }

  async #find(of: CellAddress, way: Way): Promise<{ readonly sentence: string } | null> {
    const desk = this.desk();
    const asked = ++this.#asked;
    const { engine } = desk;
    if (!engine) {
      desk.say('The sums are not ready yet. Try again in a moment.');
      return null;
    }
    try {
      const found = way === 'uses' ? await this.#uses(of) : await this.#usedBy(of);
      if (asked !== this.#asked) return null;
      this.#at = -1;
      this.#shown = { of, way, ends: found.ends, raw: this.#raw(of) };
      this.changed();
      return found;
    } catch {
      desk.say('That could not be looked up just now. Try again in a moment.');
      return null;
    }
  }

  async #uses(of: CellAddress): Promise<{ ends: readonly Area[]; sentence: string }> {
    const name = cellName(of.row, of.col);
    const raw = this.#raw(of);
    if (!raw.startsWith('=')) return { ends: [], sentence: raw === '' ? `${name} is empty; it uses no other cell.` : `${name} was typed; it uses no other cell.` };
    const { uses } = await this.desk().engine!.working(of);
    const ends = uses.map(({ area }) => area).filter((area, at, all) => all.findIndex((each) => sameArea(each, area)) === at);
    return { ends, sentence: ends.length ? `${name} uses ${this.#listed(ends)}.` : `${name} uses no other cell.` };
  }

  async #usedBy(of: CellAddress): Promise<{ ends: readonly Area[]; sentence: string }> {
    const desk = this.desk();
    const name = cellName(of.row, of.col);
    const all = await desk.engine!.dependents([of]);
    const direct = all.filter((cell) => reads(desk.book, cell, of));
    const ends = direct.map(({ sheet, row, col }) => ({ sheet, top: row, left: col, bottom: row, right: col }));
    if (all.length === 0) return { ends, sentence: `Nothing uses ${name} yet.` };
    const further = all.length - direct.length;
    return { ends, sentence: `${name} is used by ${this.#listed(ends)}${further ? `; ${further} more ${further === 1 ? 'cell depends' : 'cells depend'} on it through ${direct.length === 1 ? 'that one' : 'those'}` : ''}.` };
  }

  #listed(ends: readonly Area[]): string {
    const listed = ends.slice(0, MOST_THREADS).map((area, at) => `${at + 1} ${this.#words(area)}`).join('; ');
    return ends.length > MOST_THREADS ? `${ends.length} places, the first ${MOST_THREADS}: ${listed}` : `${ends.length === 1 ? '1 place' : `${ends.length} places`}: ${listed}`;
  }

  #raw({ sheet, row, col }: CellAddress): string {
    const page = sheetById(this.desk().book, sheet);
    return (page && cellAt(page, row, col)?.raw) ?? '';
  }

  /** "Fit B6", or "B2 to B9" in the open sheet. */
  #place({ sheet, top, left, bottom, right }: Area): string {
    const desk = this.desk();
    const cells = top === bottom && left === right ? cellName(top, left) : `${cellName(top, left)} to ${cellName(bottom, right)}`;
    return sheet === desk.sheetId ? cells : `${sheetById(desk.book, sheet)?.name ?? ''} ${cells}`.trim();
  }

  /** "Waist ease, Fit B6, 2.5 cm": words and figure first help to recognise it. */
  #words(area: Area): string {
    const desk = this.desk();
    const { sheet, top, left, bottom, right } = area;
    const page = sheetById(desk.book, sheet);
    if (top !== bottom || left !== right) return this.#place(area);
    const { main } = shownResult(desk.results.at(sheet, top, left), desk.showAs);
    return [page ? rowLabel(page, top, left) : '', this.#place(area), main].filter(Boolean).join(', ');
  }
}

const sameArea = (a: Area, b: Area): boolean => a.sheet === b.sheet && a.top === b.top && a.left === b.left && a.bottom === b.bottom && a.right === b.right;
