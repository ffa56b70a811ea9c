import { describe, expect, test } from 'vitest';
import { KIND, Results, readLast } from '../../../src/reckoning/index.ts';
import type { ChangeSet, SheetChanges } from '../../../src/reckoning/index.ts';

const caution = { by: 'EASE', sentence: 'Too little.', print: 'p' };
const sheet: SheetChanges = {
  sheet: 1, row: Uint32Array.of(0, 3, 300, 9), col: Uint16Array.of(0, 2, 2, 5),
  kind: Uint8Array.of(KIND.quantity, KIND.text, KIND.span, KIND.error), number: Float64Array.of(740, 0, 860, 0), unit: Uint8Array.of(1, 0, 1, 0),
  high: Float64Array.of(NaN, NaN, 900, NaN), text: ['Waist', 'No.'], cautions: [{ at: 0, cautions: [caution] }],
};
const answer = (revision: number, sheets: readonly SheetChanges[]): ChangeSet => ({ revision, whole: true, sheets, took: 1 });

function filled(): Results {
  const results = new Results();
  results.apply(answer(1, [sheet]));
  return results;
}

const all = (results: Results) => [results.at(1, 0, 0), results.at(1, 3, 2), results.at(1, 300, 2), results.at(1, 9, 5), results.pins.at(1, 0, 0)];

test('what is kept shows the same at the next start, and is forgotten at the first answer', () => {
  const kept = structuredClone(filled().toKeep(100));
  const next = new Results();
  next.showLast(readLast(kept)!);
  expect(all(next)).toEqual(all(filled()));
  expect([next.areLast, next.revision]).toEqual([true, -1]);
  expect(next.apply(answer(1, []))).toBe(true);
  expect(next.areLast).toBe(false);
  expect(next.at(1, 0, 0)).toEqual({ kind: 'empty' });
});

test('what was typed or moved meanwhile is not shown in the old place', () => {
  const next = new Results();
  next.shift(1, [{ do: 'insertRows', sheet: 1, at: 1, count: 2 }, { do: 'cells', sheet: 1, cells: [{ row: 0, col: 0, raw: 'x' }] }]);
  next.showLast(filled().toKeep(100)!);
  expect(next.at(1, 0, 0)).toEqual({ kind: 'empty' });
  expect(next.at(1, 5, 2)).toEqual({ kind: 'text', text: 'Waist' });
});

test('nothing is shown over an answer, and too many results are not kept', () => {
  const results = filled();
  results.showLast([]);
  expect(results.areLast).toBe(false);
  expect(results.at(1, 3, 2)).toEqual({ kind: 'text', text: 'Waist' });
  expect(results.toKeep(3)).toBeNull();
  expect(new Results().toKeep(3)).toBeNull();
});

describe('what storage spoilt is not shown', () => {
  const damaged: readonly (readonly [string, unknown])[] = [
    ['nothing', null], ['a text', 'x'], ['no sheets in it', [5]], ['null in it', [null]],
    ['a column short', [{ ...sheet, col: Uint16Array.of(1) }]], ['numbers as a list', [{ ...sheet, number: [1, 2, 3, 4] }]],
    ['a text short', [{ ...sheet, text: ['Waist'] }]], ['no high ends', [{ ...sheet, high: null }]],
    ['a caution without a place', [{ ...sheet, cautions: [{ at: 9, cautions: [caution] }] }]],
    ['a caution without a sentence', [{ ...sheet, cautions: [{ at: 0, cautions: [{ by: 'x', print: 'y' }] }] }]],
  ];
  test.each(damaged)('%s', (_, stored) => expect(readLast(stored)).toBeNull());
  test('but what is whole is', () => expect(readLast([sheet])).toEqual([sheet]));
});
