/**
 * Every result the worker has sent, by cell. Taking a ChangeSet in makes no
 * object a cell; `at` makes one when a cell is drawn or written out.
 */
import type { Effect, SheetId } from '../workbook/types.ts';
import { Block, blockNumber, placeIn, resultIn, withRowsInserted, withRowsOrdered, withRowsRemoved, type Column } from './block.ts';
import { GONE, movesResults, placesAfter, sheetIsKept, sheetOf } from './follow.ts';
import { sheetResults } from './last-results.ts';
import { Pins } from './pins.ts';
import { RowStamps } from './row-stamps.ts';
import { KIND, type ChangeSet, type Result, type SheetChanges } from './protocol.ts';

export class Results {
  #sheets = new Map<SheetId, (Column | undefined)[]>();
  #revision = -1;
  #areLast = false;
  /** Moves made here that the worker has not answered for yet, oldest first. */
  #ahead: { readonly revision: number; readonly effects: readonly Effect[] }[] = [];
  readonly #stamps = new RowStamps();
  /** What the functions of the trade warn of, cell by cell. */
  readonly pins = new Pins();

  /** The workbook revision that the last ChangeSet taken in answers; -1 before the first. */
  get revision(): number {
    return this.#revision;
  }

  /** What is here was worked out before the page was opened. */
  get areLast(): boolean {
    return this.#areLast;
  }

  /** Another number whenever a result of the row may be another, so that what was made of them can be kept until then. */
  stampOf(sheet: SheetId, row: number): number {
    return this.#stamps.of(sheet, row);
  }

  at(sheet: SheetId, row: number, col: number): Result {
    return resultIn(this.#sheets.get(sheet)?.[col], row);
  }

  /**
   * Takes a ChangeSet in. False when it was left out, because one as new or
   * newer has been taken in already (a late or doubled answer).
   */
  apply(changes: ChangeSet): boolean {
    if (changes.revision <= this.#revision) return false;
    this.#revision = changes.revision;
    this.#areLast = false;
    this.#ahead = this.#ahead.filter(({ revision }) => revision > changes.revision);
    this.#stamps.next();
    if (changes.whole) {
      this.#sheets.clear();
      this.pins.clear();
      this.#stamps.touchAll();
    }
    const ahead = this.#ahead.flatMap(({ effects }) => effects);
    for (const sheet of changes.sheets) {
      if (sheetIsKept(sheet.sheet, ahead)) this.#take(sheet, ahead);
    }
    return true;
  }

  /** What was worked out the last time, to be seen until the worker has answered; then all of it is forgotten. */
  showLast(sheets: readonly SheetChanges[]): void {
    if (this.#revision !== -1) return;
    this.#areLast = true;
    this.#stamps.next();
    const ahead = this.#ahead.flatMap(({ effects }) => effects);
    for (const sheet of sheets) if (sheetIsKept(sheet.sheet, ahead)) this.#take(sheet, ahead);
  }

  /** All results, to be shown the next time; `null` when there are more than `most`, or none yet. */
  toKeep(most: number): readonly SheetChanges[] | null {
    if (this.#revision === -1) return null;
    const sheets: SheetChanges[] = [];
    let count = 0;
    for (const [id, columns] of this.#sheets) {
      const blocks = columns.reduce((sum, column) => sum + (column?.reduce((all, block) => all + (block ? 1 : 0), 0) ?? 0), 0);
      // Looked at before anything is written out: there may be millions.
      if (blocks > most) return null;
      const sheet = sheetResults(id, columns, this.pins.of(id));
      count += sheet.row.length;
      if (count > most) return null;
      sheets.push(sheet);
    }
    return sheets;
  }

  /**
   * Moves the results as an edit moves the cells, so that they stand right
   * before the worker has answered; it sends only what changed besides.
   *
   * @param revision the workbook revision that these effects lead to, as `Supervisor.apply` gave it.
   */
  shift(revision: number, effects: readonly Effect[]): void {
    const moving = effects.filter(movesResults);
    if (moving.length === 0 || revision <= this.#revision) return;
    this.#ahead.push({ revision, effects: moving });
    this.#stamps.next();
    this.#stamps.touchAll();
    for (const effect of moving) {
      this.#move(effect);
      this.pins.follow(effect);
    }
  }

  #take(changes: SheetChanges, ahead: readonly Effect[]): void {
    const { kind, number, unit, high, text } = changes;
    const places = placesAfter(changes, ahead);
    const { row, col } = places;
    this.pins.take(changes, places);
    const touch = this.#stamps.toucher(changes.sheet);
    let columns = this.#sheets.get(changes.sheet);
    if (!columns) this.#sheets.set(changes.sheet, columns = []);
    let block: Block | undefined;
    let blockAt = -1;
    let blockCol = -1;
    let nextText = 0;
    for (let i = 0; i < kind.length; i++) {
      const what = kind[i]!;
      const words = what === KIND.text || what === KIND.error ? text[nextText++] : undefined;
      const r = row[i]!;
      if (r === GONE) continue;
      touch(r);
      const c = col[i]!;
      const at = blockNumber(r);
      if (at !== blockAt || c !== blockCol) {
        block = (columns[c] ??= [])[at];
        blockAt = at;
        blockCol = c;
      }
      if (!block) {
        if (what === KIND.empty) continue;
        block = columns[c]![at] = new Block();
      }
      const place = placeIn(r);
      block.kind[place] = what;
      block.number[place] = number[i]!;
      block.unit[place] = unit[i]!;
      if (what === KIND.span) (block.high ??= new Float64Array(block.kind.length))[place] = high?.[i] ?? NaN;
      if (words !== undefined) (block.text ??= [])[place] = words;
      else if (block.text) block.text[place] = undefined;
    }
  }

  #move(effect: Effect): void {
    if (effect.do === 'sheets') {
      for (const sheet of this.#sheets.keys()) if (!sheetIsKept(sheet, [effect])) this.#sheets.delete(sheet);
      return;
    }
    if (effect.do === 'name' || effect.do === 'layouts') return;
    const columns = this.#sheets.get(sheetOf(effect));
    if (!columns) return;
    switch (effect.do) {
      case 'cells':
        for (const { row, col } of effect.cells) {
          const block = columns[col]?.[blockNumber(row)];
          if (block) block.kind[placeIn(row)] = KIND.empty;
        }
        break;
      case 'insertRows':
        columns.forEach((column, c) => { if (column) columns[c] = withRowsInserted(column, effect.at, effect.count); });
        break;
      case 'removeRows':
        columns.forEach((column, c) => { if (column) columns[c] = withRowsRemoved(column, effect.at, effect.count); });
        break;
      case 'orderRows':
        for (let c = effect.area.left; c <= Math.min(effect.area.right, columns.length - 1); c++) {
          const column = columns[c];
          if (column) columns[c] = withRowsOrdered(column, effect.area.top, effect.order);
        }
        break;
      case 'insertColumns':
        if (effect.at < columns.length) columns.splice(effect.at, 0, ...new Array<undefined>(effect.count).fill(undefined));
        break;
      case 'removeColumns':
        columns.splice(effect.at, effect.count);
        break;
    }
  }
}
