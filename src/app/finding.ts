/** Find and replace: what is sought, what was found, and which of it was gone to. */
import { cellName } from '../formula/index.ts';
import { startSlices } from '../grid/index.ts';
import { NO_WISH, type FindWish, type FoundRow } from '../panels/index.ts';
import { replaceEdit, rowFinder, sheetById, type FindQuery, type FoundText, type ShownAt, type Sheet } from '../workbook/index.ts';
import { attempt } from './attempt.ts';
import { textAt } from './cell-values.ts';
import type { Desk } from './desk.ts';

/** As many as anyone reads; the rest is counted, and gone through by Next. */
const LISTED = 200;
/** Milliseconds after the last key before a large workbook is looked through. */
const PAUSE = 120;

export class Finding {
  wish: FindWish = NO_WISH;
  at = -1;
  sentence = '';
  #found: readonly FoundText[] = [];
  /** What the list was made from. */
  #of: readonly unknown[] = [];
  #later: ReturnType<typeof setTimeout> | undefined;
  /** A look through so many rows that it is done in slices; true when it came to its end. */
  #looking: Promise<boolean> | null = null;
  /** The latest look counts. */
  #turn = 0;

  constructor(private readonly desk: () => Desk, private readonly changed: () => void) {}

  get count(): number {
    return this.#found.length;
  }

  /** What there is so far is not all. */
  get looking(): boolean {
    return this.#looking !== null;
  }

  get rows(): readonly FoundRow[] {
    const { book } = this.desk();
    return this.#found.slice(0, LISTED).map(({ sheet, row, col, place, text }) => ({
      place: `${cellName(row, col)} of ${sheetById(book, sheet)?.name ?? ''}`, kind: place, text,
    }));
  }

  seek(wish: FindWish): void {
    this.wish = wish;
    this.sentence = '';
    this.at = -1;
    this.refresh();
  }

  /** Looks again when the workbook, or what it gives, is another. Call when the panel is drawn. */
  refresh(): void {
    const desk = this.desk();
    const { wish } = this;
    const of = [wish, desk.book, wish.places.result ? desk.results.revision : 0, wish.places.result ? desk.showAs.system : 0, wish.onlySheet ? desk.sheetId : 0];
    if (of.every((each, at) => each === this.#of[at])) return;
    const first = this.#of.length === 0;
    this.#of = of;
    clearTimeout(this.#later);
    if (first) this.#look();
    else this.#later = setTimeout(() => this.#look(), PAUSE);
  }

  go(at: number): void {
    const found = this.#found[at];
    if (!found) return;
    this.at = at;
    const cell = { row: found.row, col: found.col };
    this.desk().select({ anchor: cell, focus: cell }, found.sheet);
  }

  /** The next one, or the one before, after the selected cell; round and round. */
  step(by: 1 | -1): void {
    this.#whenLooked(() => {
      const { count } = this;
      if (count === 0) {
        this.desk().say(this.wish.text === '' ? 'Type what is to be found first.' : `“${this.wish.text}” was not found.`);
        return;
      }
      const at = this.at >= 0 ? this.at + by : this.#besideSelection(by);
      this.go((at + count) % count);
    });
  }

  replace(at: number | null, by: string): void {
    this.#whenLooked(() => {
      const desk = this.desk();
      const some = at === null ? this.#found : this.#found.slice(at, at + 1);
      const done = attempt(desk, () => replaceEdit(desk.book, some, this.#query, by));
      this.sentence = done ? '' : desk.said;
      this.changed();
      if (!done) return;
      const place = this.at;
      this.#whenLooked(() => {
        if (at !== null && this.count > 0) this.go(Math.min(place, this.count - 1));
        else this.at = -1;
        this.changed();
      });
    });
  }

  get #query(): FindQuery {
    const { onlySheet, ...query } = this.wish;
    return { ...query, sheet: onlySheet ? this.desk().sheetId : null };
  }

  /** Once what is found is what is there now: at once, unless very much has to be looked through. */
  #whenLooked(then: () => void): void {
    this.refresh();
    if (this.#later !== undefined) {
      clearTimeout(this.#later);
      this.#look();
    }
    if (this.#looking) void this.#looking.then((whole) => { if (whole) then(); });
    else then();
  }

  #look(): void {
    this.#later = undefined;
    const desk = this.desk();
    const was = this.#found[this.at];
    const turn = ++this.#turn;
    const query = this.#query;
    const find = rowFinder(query, this.wish.places.result ? shownIn(desk) : undefined);
    const sheets: readonly Sheet[] = query.text === '' ? [] : desk.book.sheets.filter(({ id }) => query.sheet === null || id === query.sheet);
    const found: FoundText[] = [];
    const finish = (): void => {
      this.#looking = null;
      this.#found = found;
      this.at = was ? found.findIndex(({ sheet, row, col, place }) => sheet === was.sheet && row === was.row && col === was.col && place === was.place) : -1;
      this.changed();
    };
    const total = sheets.reduce((sum, sheet) => sum + sheet.rows.length, 0);
    let [at, row] = [0, 0];
    const looking = startSlices(total, () => {
      if (turn !== this.#turn) return false;
      while (row >= sheets[at]!.rows.length) [at, row] = [at + 1, 0];
      for (const each of find(sheets[at]!, row)) found.push(each);
      row += 1;
      return true;
    });
    if (!looking) {
      finish();
      return;
    }
    this.#looking = looking.then((whole) => {
      if (whole) finish();
      return whole;
    });
    this.changed();
  }

  /** Where the search goes on from the selected cell. */
  #besideSelection(by: 1 | -1): number {
    const { book, sheetId, selection: { focus } } = this.desk();
    const order = new Map(book.sheets.map(({ id }, at) => [id, at]));
    const rank = (sheet: number, row: number, col: number): number[] => [order.get(sheet) ?? 0, row, col];
    const here = rank(sheetId, focus.row, focus.col);
    const isPast = ({ sheet, row, col }: FoundText): boolean => {
      const there = rank(sheet, row, col);
      const differs = there.findIndex((each, at) => each !== here[at]);
      return differs < 0 ? by > 0 : there[differs]! > here[differs]!;
    };
    const next = this.#found.findIndex(isPast);
    if (by > 0) return next < 0 ? 0 : next;
    return (next < 0 ? this.count : next) - 1;
  }
}

function shownIn(desk: Desk): ShownAt {
  const views = new Map(desk.book.sheets.map(({ id }) => [id, textAt(desk, id)]));
  return (sheet, row, col) => views.get(sheet)?.(row, col) ?? '';
}
