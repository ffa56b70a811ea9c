import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  EditRefused, NO_HISTORY, apply, cellAt, entryOf, historyAfter, lookBack, placeAfter, placeBefore, placeNow, record, redo, restoreBookEdit, restoreCellEdit, undo,
} from '../../../src/workbook/index.ts';
import type { Book, Edit, History, Step } from '../../../src/workbook/index.ts';
import { bookOf, editFrom, seed, textsOf } from './help.ts';

/** Someone at work, with everything that was done. */
class Hand {
  history: History = NO_HISTORY;
  readonly steps: Step[] = [];
  /** The workbook before each step, and now. */
  readonly books: Book[];
  constructor(public book: Book) {
    this.books = [book];
  }
  do(...edits: Edit[]): this {
    for (const edit of edits) {
      const applied = apply(edit, this.book);
      if (applied.book === this.book) continue;
      const entry = entryOf(edit, this.book, applied, `2026-03-01T10:0${this.steps.length % 10}:00Z`);
      this.history = record(this.history, entry);
      this.#take({ way: 'done', at: entry.at, entry }, applied.book);
    }
    return this;
  }
  travel(way: 'undone' | 'redone'): this {
    const step = (way === 'undone' ? undo : redo)(this.history);
    if (!step) return this;
    this.history = step.history;
    this.#take({ way, at: '2026-03-01T11:00:00Z', entry: step.entry }, apply(step.edit, this.book).book);
    return this;
  }
  #take(step: Step, book: Book): void {
    this.steps.push(step);
    this.book = book;
    this.books.push(book);
  }
}
const type = (row: number, col: number, raw: string, sheet = 1): Edit => ({ do: 'setCells', sheet, cells: [{ row, col, cell: raw === '' ? null : { raw } }] });
const FIT = () => new Hand(bookOf([['Waist', '74 cm'], ['Hip', '98 cm'], ['Ease', '=B2-B1']]));

describe('looking back', () => {
  test('every change with what was there before and after, the latest first', () => {
    const hand = FIT().do(type(0, 1, '75 cm'), { do: 'insertRows', sheet: 1, at: 0, count: 1 }, type(1, 1, ''));
    const { steps, earlier } = lookBack(hand.book, hand.steps);
    expect(earlier).toBe(false);
    expect(steps.map(({ index, step, place, cells, more }) => [index, step.entry.label, place, cells.map(({ place: at, before, after }) => [at, before?.raw, after?.raw]), more])).toEqual([
      [2, 'empty B2 of Fit', 'B2 of Fit', [['B2 of Fit', '75 cm', undefined]], 0],
      [1, 'insert 1 row in Fit', '1:1 of Fit', [], 0],
      [0, 'type in B1 of Fit', 'B1 of Fit', [['B1 of Fit', '74 cm', '75 cm']], 0],
    ]);
  });

  test('only what changed one cell, wherever it stood then', () => {
    const hand = FIT().do(type(0, 1, '75 cm'), type(1, 1, '99 cm'), { do: 'insertRows', sheet: 1, at: 0, count: 2 }, type(2, 1, '76 cm'), { do: 'moveRows', sheet: 1, at: 2, count: 1, to: 5 }, type(4, 1, '77 cm'));
    const { steps } = lookBack(hand.book, hand.steps, { cell: { sheet: 1, row: 4, col: 1 } });
    expect(steps.map(({ index, cells: [only] }) => [index, only?.place, only?.before?.raw, only?.after?.raw])).toEqual([
      [5, 'B5 of Fit', '76 cm', '77 cm'], [3, 'B3 of Fit', '75 cm', '76 cm'], [0, 'B1 of Fit', '74 cm', '75 cm'],
    ]);
  });

  test('through cut and paste, and through rows that went and came back', () => {
    const hand = FIT().do(type(0, 1, '75 cm'), { do: 'moveCells', from: { sheet: 1, top: 0, left: 1, bottom: 0, right: 1 }, to: { sheet: 2, row: 4, col: 2 } }, { do: 'removeRows', sheet: 2, at: 0, count: 9 });
    hand.travel('undone').do(type(4, 2, '76 cm', 2));
    const { steps } = lookBack(hand.book, hand.steps, { cell: { sheet: 2, row: 4, col: 2 } });
    expect(steps.map(({ index, cells: [only] }) => [index, only?.before?.raw, only?.after?.raw])).toEqual([[4, '75 cm', '76 cm'], [0, '74 cm', '75 cm']]);
  });

  test('undoing and redoing are steps too', () => {
    const hand = FIT().do(type(0, 1, '75 cm')).travel('undone').travel('redone');
    expect(lookBack(hand.book, hand.steps).steps.map(({ step: { way }, cells: [only] }) => [way, only?.before?.raw, only?.after?.raw])).toEqual([
      ['redone', '74 cm', '75 cm'], ['undone', '75 cm', '74 cm'], ['done', '74 cm', '75 cm'],
    ]);
  });

  test('so many at a time', () => {
    const hand = FIT().do(...Array.from({ length: 7 }, (_, at) => type(0, 0, `Waist ${at}`)));
    expect(lookBack(hand.book, hand.steps, { most: 5 })).toMatchObject({ earlier: true, steps: { length: 5 } });
    expect(lookBack(hand.book, hand.steps, { most: 7 }).earlier).toBe(false);
  });

  test('a paste names its first cells and counts the rest', () => {
    const cells = Array.from({ length: 5 }, (_, row) => ({ row, col: 3, cell: { raw: `${row}` } }));
    const hand = FIT().do({ do: 'many', label: 'paste 5 cells in Fit', edits: [{ do: 'setCells', sheet: 1, cells }] });
    expect(lookBack(hand.book, hand.steps).steps[0]).toMatchObject({ more: 2, cells: [{ place: 'D1 of Fit' }, { place: 'D2 of Fit' }, { place: 'D3 of Fit' }] });
  });

  test('steps that do not belong to the workbook are not looked at', () => {
    const hand = FIT().do({ do: 'removeSheet', sheet: 2 });
    expect(lookBack(bookOf([], [['other']]), hand.steps).steps).toEqual([]);
  });
});

describe('restoring', () => {
  test('the workbook as it was, as one step that can be undone', () => {
    const hand = FIT().do(type(0, 1, '75 cm'), { do: 'insertRows', sheet: 1, at: 0, count: 1 }, type(1, 1, '')).travel('undone').travel('redone').do(type(3, 0, 'x'));
    const before = hand.book;
    const edit = restoreBookEdit(hand.steps, 1, '10:01');
    expect(edit).toMatchObject({ label: 'restore the workbook as it was before 10:01' });
    hand.do(edit);
    expect(hand.book).toStrictEqual(hand.books[1]);
    hand.travel('undone');
    expect(hand.book).toStrictEqual(before);
  });

  test('a cell, with a formula that still points at its cells', () => {
    const hand = FIT().do(type(2, 1, ''), { do: 'insertRows', sheet: 1, at: 1, count: 1 }, { do: 'renameSheet', sheet: 1, name: 'Body' });
    hand.do(restoreCellEdit(hand.book, hand.steps, 0, { sheet: 1, row: 3, col: 1 }, '10:00'));
    expect(textsOf(hand.book, 1)[3]).toEqual(['Ease', '=B3-B1']);
    expect(hand.steps.at(-1)!.entry.label).toBe('restore B4 of Body as it was before 10:00');
  });

  test('also when its rows went and came back meanwhile', () => {
    const hand = FIT().do(type(2, 1, '1 cm'), { do: 'removeRows', sheet: 1, at: 0, count: 3 }).travel('undone');
    hand.do(restoreCellEdit(hand.book, hand.steps, 0, { sheet: 1, row: 2, col: 1 }, '10:00'));
    expect(textsOf(hand.book, 1)[2]).toEqual(['Ease', '=B2-B1']);
  });

  test('also when undoing gave back the edge of a block since then', () => {
    const hand = new Hand(bookOf([['1 cm'], ['2 cm'], ['3 cm'], ['=SUM(A1:A3)']])).do({ do: 'removeRows', sheet: 1, at: 0, count: 1 });
    hand.travel('undone').do(type(3, 0, ''));
    hand.do(restoreCellEdit(hand.book, hand.steps, 1, { sheet: 1, row: 3, col: 0 }, '10:00'));
    expect(textsOf(hand.book, 1)[3]).toEqual(['=SUM(A1:A3)']);
  });

  test('with its look, its note and its input mark', () => {
    const marked = { raw: '74 cm', look: { strong: true }, input: true, note: 'over the blouse' } as const;
    const hand = FIT().do({ do: 'setCells', sheet: 1, cells: [{ row: 0, col: 1, cell: marked }] }, type(0, 1, ''));
    hand.do(restoreCellEdit(hand.book, hand.steps, 1, { sheet: 1, row: 0, col: 1 }, '10:00'));
    expect(cellAt(hand.book.sheets[0]!, 0, 1)).toEqual(marked);
  });

  test('finds where a cell of then is now', () => {
    const hand = FIT().do(type(0, 0, 'x'), { do: 'insertRows', sheet: 1, at: 0, count: 2 }, { do: 'removeRows', sheet: 1, at: 0, count: 5 }).travel('undone');
    expect(placeNow(hand.steps, 0, { sheet: 1, row: 0, col: 0 })).toEqual({ sheet: 1, row: 2, col: 0 });
    hand.do({ do: 'removeRows', sheet: 1, at: 2, count: 1 });
    expect(placeNow(hand.steps, 0, { sheet: 1, row: 0, col: 0 })).toBeNull();
  });

  test('not from before the cell was there', () => {
    const hand = FIT().do(type(0, 0, 'x'), { do: 'insertRows', sheet: 1, at: 0, count: 1 });
    expect(() => restoreCellEdit(hand.book, hand.steps, 0, { sheet: 1, row: 0, col: 0 }, '10:00')).toThrow('A1 was not there yet before 10:00');
  });
});

/** Random work with undoing and redoing among it. */
const work = fc.array(fc.oneof({ weight: 5, arbitrary: seed }, fc.constantFrom('undone' as const, 'redone' as const)), { minLength: 1, maxLength: 14 });
const START = bookOf([['Waist', '74 cm'], ['Hip', '98 cm', '=B2-B1'], ['', '=Skirt!A1'], ['=SUM(B1:B3)']], [['=fit!b2', '=$A$1'], [], ['2 1/4 in']]);

function worked(parts: readonly (Parameters<typeof editFrom>[0] | 'undone' | 'redone')[]): Hand {
  const hand = new Hand(START);
  for (const part of parts) {
    if (typeof part === 'string') hand.travel(part);
    else {
      try {
        hand.do(editFrom(part, hand.book));
      } catch (error) {
        if (!(error instanceof EditRefused)) throw error;
      }
    }
  }
  return hand;
}

test('after any work, any time can be gone back to exactly, and what can be undone is known from the steps alone', () => {
  let steps = 0;
  fc.assert(fc.property(work, fc.nat(13), (parts, back) => {
    const hand = worked(parts);
    expect(historyAfter(hand.steps)).toEqual(hand.history);
    if (hand.steps.length === 0) return;
    const index = back % hand.steps.length;
    steps += hand.steps.length;
    expect(apply(restoreBookEdit(hand.steps, index, 'then'), hand.book).book).toStrictEqual(hand.books[index]);
    expect(lookBack(hand.book, hand.steps).steps).toHaveLength(hand.steps.length);
  }), { numRuns: 300 });
  expect(steps).toBeGreaterThan(600);
}, 60_000);

test('places before and after an edit are each other’s', () => {
  let followed = 0;
  fc.assert(fc.property(work, fc.nat(9), fc.nat(5), (parts, row, col) => {
    const hand = worked(parts);
    for (const [at, { way, entry }] of hand.steps.entries()) {
      if (!hand.books[at]!.sheets.some(({ id }) => id === 1)) continue;
      const edit = way === 'undone' ? entry.inverse : entry.edit;
      const place = { sheet: 1, row, col };
      const after = placeAfter(edit, place);
      if (!after) continue;
      followed += 1;
      expect(placeBefore(edit, after)).toEqual(place);
    }
  }), { numRuns: 1500 });
  expect(followed).toBeGreaterThan(500);
}, 60_000);

test('a cell that was not touched is restored to what it is', () => {
  let same = 0;
  fc.assert(fc.property(work, fc.nat(13), fc.nat(3), fc.nat(2), (parts, back, row, col) => {
    const hand = worked(parts.filter((part) => typeof part === 'string' || part.kind < 8 || part.kind === 30 || part.kind === 33));
    if (hand.steps.length === 0 || !hand.book.sheets.some(({ id }) => id === 1)) return;
    const place = { sheet: 1, row, col };
    let edit: Edit;
    try {
      edit = restoreCellEdit(hand.book, hand.steps, back % hand.steps.length, place, 'then');
    } catch (error) {
      expect(error).toBeInstanceOf(EditRefused);
      return;
    }
    // A formula may have lost its cells by then, and got them back since; or have lost them since.
    if (JSON.stringify([edit, cellAt(hand.book.sheets.find(({ id }) => id === 1)!, row, col)]).includes('#REF!')) return;
    same += 1;
    expect(apply(edit, hand.book).book).toStrictEqual(hand.book);
  }), { numRuns: 2000 });
  expect(same).toBeGreaterThan(100);
}, 60_000);
