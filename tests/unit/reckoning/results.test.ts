import { describe, expect, test } from 'vitest';
import fc from 'fast-check';
import { UNIT_CODES } from '../../../src/quantities/index.ts';
import { KIND, Results, type ChangeSet, type Result, type SheetChanges } from '../../../src/reckoning/index.ts';
import type { Effect } from '../../../src/workbook/types.ts';

interface Placed {
  readonly row: number;
  readonly col: number;
  readonly result: Result;
}

/** Columns as the worker would send them. */
function columns(sheet: number, cells: readonly Placed[]): SheetChanges {
  const spans = cells.some(({ result }) => result.kind === 'span');
  const of = <T>(pick: (result: Result) => T) => cells.map(({ result }) => pick(result));
  return {
    sheet,
    row: Uint32Array.from(cells, ({ row }) => row),
    col: Uint16Array.from(cells, ({ col }) => col),
    kind: Uint8Array.from(of(({ kind }) => KIND[kind])),
    number: Float64Array.from(of((r) => r.kind === 'quantity' ? r.value : r.kind === 'span' ? r.low : r.kind === 'truth' ? Number(r.truth) : 0)),
    unit: Uint8Array.from(of((r) => 'unit' in r ? UNIT_CODES.indexOf(r.unit) : 0)),
    high: spans ? Float64Array.from(of((r) => r.kind === 'span' ? r.high : 0)) : null,
    text: of((r) => r.kind === 'text' ? r.text : r.kind === 'error' ? r.sentence : null).filter((t) => t !== null),
  };
}

const changeSet = (revision: number, sheets: readonly SheetChanges[], whole = false): ChangeSet => ({ revision, whole, sheets, took: 0 });
const cm = (value: number): Result => ({ kind: 'quantity', value: value * 10, unit: 'cm' });
const EMPTY: Result = { kind: 'empty' };

describe('taking results in', () => {
  test('every kind comes out as it went in', () => {
    const cells: Placed[] = [
      { row: 0, col: 0, result: cm(74.5) },
      { row: 0, col: 1, result: { kind: 'text', text: 'Waist' } },
      { row: 255, col: 0, result: { kind: 'span', low: 860, high: 900, unit: 'cm' } },
      { row: 256, col: 0, result: { kind: 'truth', truth: true } },
      { row: 256, col: 1, result: { kind: 'truth', truth: false } },
      { row: 999_999, col: 999, result: { kind: 'error', sentence: '2 has no unit: write 2 in or 2 cm.' } },
      { row: 5, col: 3, result: { kind: 'text', text: '' } },
      { row: 6, col: 3, result: { kind: 'quantity', value: -0.03, unit: '%' } },
    ];
    const results = new Results();
    expect(results.apply(changeSet(0, [columns(1, cells), columns(2, [{ row: 0, col: 0, result: cm(1) }])], true))).toBe(true);
    for (const { row, col, result } of cells) expect(results.at(1, row, col)).toEqual(result);
    expect(results.at(2, 0, 0)).toEqual(cm(1));
    expect(results.at(1, 1, 1)).toEqual(EMPTY);
    expect(results.at(3, 0, 0)).toEqual(EMPTY);
  });

  test('a changed kind leaves nothing of the old one behind', () => {
    const results = new Results();
    const put = (revision: number, result: Result) => results.apply(changeSet(revision, [columns(1, [{ row: 3, col: 3, result }])]));
    put(1, { kind: 'error', sentence: 'wrong' });
    put(2, cm(3));
    expect(results.at(1, 3, 3)).toEqual(cm(3));
    put(3, { kind: 'text', text: 'a' });
    expect(results.at(1, 3, 3)).toEqual({ kind: 'text', text: 'a' });
    put(4, EMPTY);
    expect(results.at(1, 3, 3)).toEqual(EMPTY);
  });

  test('late and doubled answers are left out', () => {
    const results = new Results();
    const put = (revision: number, value: number, whole = false) => results.apply(changeSet(revision, [columns(1, [{ row: 0, col: 0, result: cm(value) }])], whole));
    expect(put(2, 2)).toBe(true);
    expect(put(1, 1)).toBe(false);
    expect(put(2, 22)).toBe(false);
    expect(put(1, 1, true)).toBe(false);
    expect(results.at(1, 0, 0)).toEqual(cm(2));
    expect(results.revision).toBe(2);
  });

  test('a whole set clears every sheet', () => {
    const results = new Results();
    results.apply(changeSet(1, [columns(1, [{ row: 0, col: 0, result: cm(1) }]), columns(2, [{ row: 0, col: 0, result: cm(1) }])]));
    results.apply(changeSet(2, [columns(1, [{ row: 1, col: 0, result: cm(2) }])], true));
    expect(results.at(1, 0, 0)).toEqual(EMPTY);
    expect(results.at(2, 0, 0)).toEqual(EMPTY);
    expect(results.at(1, 1, 0)).toEqual(cm(2));
  });
});

describe('following rows and columns', () => {
  const filled = () => {
    const results = new Results();
    const cells: Placed[] = [];
    for (let row = 0; row < 600; row++) cells.push({ row, col: 2, result: row % 50 === 0 ? { kind: 'text', text: `row ${row}` } : cm(row) });
    results.apply(changeSet(1, [columns(1, cells)], true));
    return results;
  };

  test('rows put in across block edges', () => {
    const results = filled();
    results.shift(2, [{ do: 'insertRows', sheet: 1, at: 250, count: 300 }]);
    expect(results.at(1, 249, 2)).toEqual(cm(249));
    expect(results.at(1, 250, 2)).toEqual(EMPTY);
    expect(results.at(1, 549, 2)).toEqual(EMPTY);
    expect(results.at(1, 550, 2)).toEqual({ kind: 'text', text: 'row 250' });
    expect(results.at(1, 899, 2)).toEqual(cm(599));
    expect(results.at(1, 900, 2)).toEqual(EMPTY);
  });

  test('a late answer speaks of the rows as they were', () => {
    const results = filled();
    results.shift(3, [{ do: 'insertRows', sheet: 1, at: 10, count: 2 }, { do: 'removeColumns', sheet: 1, at: 0, count: 1 }]);
    results.apply(changeSet(2, [columns(1, [
      { row: 20, col: 2, result: { kind: 'error', sentence: 'moved' } },
      { row: 21, col: 0, result: { kind: 'text', text: 'its column is gone' } },
      { row: 5, col: 2, result: { kind: 'text', text: 'stayed' } },
    ])]));
    expect(results.at(1, 22, 1)).toEqual({ kind: 'error', sentence: 'moved' });
    expect(results.at(1, 5, 1)).toEqual({ kind: 'text', text: 'stayed' });
    expect(results.at(1, 23, 0)).toEqual(EMPTY);
    // The answer to the move itself speaks of the new rows.
    results.apply(changeSet(3, [columns(1, [{ row: 20, col: 1, result: cm(1) }])]));
    expect(results.at(1, 20, 1)).toEqual(cm(1));
    expect(results.at(1, 22, 1)).toEqual({ kind: 'error', sentence: 'moved' });
  });

  test('a removed sheet has no results, not even late ones', () => {
    const results = filled();
    results.shift(3, [{ do: 'sheets', sheets: [{ id: 2, name: 'Fit' }] }]);
    expect(results.at(1, 1, 2)).toEqual(EMPTY);
    results.apply(changeSet(2, [columns(1, [{ row: 1, col: 2, result: cm(1) }])]));
    expect(results.at(1, 1, 2)).toEqual(EMPTY);
  });
});

describe('against a plain map', () => {
  const ROWS = 40;
  const COLS = 6;
  const SCALE = 30;

  class Model {
    cells = new Map<string, Result>();
    shift(effect: Effect): void {
      const before = [...this.cells].map(([key, result]) => ({ place: key.split(' ').map(Number) as [number, number, number], result }));
      this.cells.clear();
      for (const { place: [sheet, row, col], result } of before) {
        let place: [number, number] | null = [row, col];
        if (effect.do === 'sheets') place = effect.sheets.some(({ id }) => id === sheet) ? place : null;
        else if ('count' in effect && effect.sheet === sheet) {
          const axis = effect.do.endsWith('Rows') ? 0 : 1;
          if (effect.do.startsWith('insert')) {
            if (place[axis] >= effect.at) place[axis] += effect.count;
          } else if (place[axis] >= effect.at + effect.count) place[axis] -= effect.count;
          else if (place[axis] >= effect.at) place = null;
        }
        if (place) this.cells.set(`${sheet} ${place[0]} ${place[1]}`, result);
      }
    }
  }

  const result: fc.Arbitrary<Result> = fc.oneof(
    fc.constant(EMPTY),
    fc.record({ kind: fc.constant('quantity' as const), value: fc.double({ noNaN: true }), unit: fc.constantFrom(...UNIT_CODES) }),
    fc.record({ kind: fc.constant('span' as const), low: fc.integer(), high: fc.integer(), unit: fc.constantFrom(...UNIT_CODES) }),
    fc.record({ kind: fc.constant('text' as const), text: fc.string() }),
    fc.record({ kind: fc.constant('truth' as const), truth: fc.boolean() }),
    fc.record({ kind: fc.constant('error' as const), sentence: fc.string() }),
  );
  const sheet = fc.constantFrom(1, 2);
  // Rows are spread out so that a few of them cross many blocks.
  const row = fc.nat(ROWS - 1).map((n) => n * SCALE);
  const step = fc.oneof(
    fc.record({
      do: fc.constant('answer' as const), sheet, whole: fc.integer({ min: 0, max: 9 }).map((n) => n === 0),
      cells: fc.uniqueArray(fc.record({ row, col: fc.nat(COLS - 1), result }), { selector: ({ row, col }) => `${row} ${col}`, maxLength: 20 }),
    }),
    fc.record({
      do: fc.constantFrom('insertRows' as const, 'removeRows' as const), sheet, at: fc.nat(ROWS * SCALE), count: fc.integer({ min: 1, max: 700 }),
    }),
    fc.record({
      do: fc.constantFrom('insertColumns' as const, 'removeColumns' as const), sheet, at: fc.nat(COLS), count: fc.integer({ min: 1, max: 3 }),
    }),
    fc.record({ do: fc.constant('sheets' as const), sheets: fc.constantFrom([{ id: 1, name: 'a' }], [{ id: 1, name: 'b' }, { id: 2, name: 'c' }]) }),
  );

  test('any sequence of answers and moves, the worker up to five edits behind', () => {
    fc.assert(fc.property(fc.array(step, { maxLength: 30 }), fc.nat(5), (steps, lag) => {
      const results = new Results();
      const model = new Model();
      /** What the worker, far behind, will answer; in its own coordinates. */
      const behind: { revision: number; set: ChangeSet; moves: Effect[] }[] = [];
      const answerOldest = () => {
        const { revision, set } = behind.shift()!;
        // The model takes the answer at the places where its cells stand after the moves still to be answered.
        const asSent = new Results();
        asSent.apply(set);
        const late = new Model();
        for (const { sheet: s, row: rows, col: cols } of set.sheets) {
          rows.forEach((r, i) => late.cells.set(`${s} ${r} ${cols[i]}`, asSent.at(s, r, cols[i]!)));
        }
        for (const { moves } of behind) for (const move of moves) late.shift(move);
        if (set.whole) model.cells.clear();
        for (const [key, each] of late.cells) model.cells.set(key, each);
        expect(results.apply(set)).toBe(true);
        expect(results.revision).toBe(revision);
      };
      steps.forEach((each, index) => {
        const revision = index + 1;
        if (each.do === 'answer') behind.push({ revision, set: changeSet(revision, [columns(each.sheet, each.cells)], each.whole), moves: [] });
        else {
          results.shift(revision, [each]);
          model.shift(each);
          behind.push({ revision, set: changeSet(revision, []), moves: [each] });
        }
        while (behind.length > lag) answerOldest();
      });
      while (behind.length) answerOldest();
      const stray: string[] = [];
      for (const s of [1, 2]) for (let c = 0; c < COLS + 90; c++) for (let r = 0; r < ROWS * SCALE + 100; r++) {
        if (results.at(s, r, c).kind !== 'empty' && !model.cells.has(`${s} ${r} ${c}`)) stray.push(`${s} ${r} ${c}`);
      }
      expect(stray).toEqual([]);
      for (const [key, each] of model.cells) {
        const [s, r, c] = key.split(' ').map(Number) as [number, number, number];
        expect(results.at(s, r, c)).toEqual(each);
      }
    }), { numRuns: 300 });
  });
});

describe('rows that change places', () => {
  const order = (top: number, rows: readonly number[], left = 0, right = 0): Effect => ({ do: 'orderRows', area: { sheet: 1, top, left, bottom: top + rows.length - 1, right }, order: rows });

  test('results go with them, over the edges of blocks too, and what is beside them stays', () => {
    const at = [254, 255, 256, 257, 258];
    const cells = at.flatMap((row): Placed[] => [{ row, col: 0, result: row === 256 ? { kind: 'text', text: 'words' } : cm(row) }, { row, col: 1, result: cm(-row) }]);
    const results = new Results();
    results.apply(changeSet(1, [columns(1, cells)], true));
    results.shift(2, [order(255, [2, 0, 1])]);
    expect(at.map((row) => results.at(1, row, 0))).toEqual([cm(254), cm(257), cm(255), { kind: 'text', text: 'words' }, cm(258)]);
    expect(at.map((row) => results.at(1, row, 1))).toEqual(at.map((row) => cm(-row)));
    results.shift(3, [order(255, [1, 2, 0])]);
    expect(at.map((row) => results.at(1, row, 0))).toEqual([cm(254), cm(255), { kind: 'text', text: 'words' }, cm(257), cm(258)]);
  });

  test('a late answer is taken in where its cells stand now', () => {
    const results = new Results();
    results.apply(changeSet(1, [columns(1, [{ row: 0, col: 0, result: cm(1) }, { row: 2, col: 0, result: cm(3) }])], true));
    results.shift(3, [order(0, [2, 0, 1])]);
    results.apply(changeSet(2, [columns(1, [{ row: 0, col: 0, result: cm(10) }, { row: 0, col: 1, result: cm(11) }])]));
    expect([0, 1, 2].map((row) => results.at(1, row, 0))).toEqual([cm(3), cm(10), EMPTY]);
    expect(results.at(1, 0, 1)).toEqual(cm(11));
  });
});
