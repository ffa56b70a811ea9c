import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { moveBack, placeAfterMove, rewriteReferences, runAfterMove } from '../../../src/formula/index.ts';
import type { LineMove } from '../../../src/formula/index.ts';

const SHEETS = [{ id: 1, name: 'Fit' }, { id: 2, name: 'Skirt' }];
const rows = (formula: string, at: number, count: number, to: number, own = 0): string =>
  rewriteReferences(formula, SHEETS[own]!, SHEETS, { do: 'moveRows', sheet: 1, at, count, to });
const columns = (formula: string, at: number, count: number, to: number): string =>
  rewriteReferences(formula, SHEETS[0]!, SHEETS, { do: 'moveColumns', sheet: 1, at, count, to });

/** A move within 14 places, to somewhere that is none of what moves. */
const moves: fc.Arbitrary<LineMove> = fc.record({ at: fc.nat(9), count: fc.integer({ min: 1, max: 4 }), to: fc.nat(14) })
  .filter(({ at, count, to }) => to <= at || to >= at + count);

/** The order of 16 places after a move, as hands would do it. */
function byHand({ at, count, to }: LineMove): number[] {
  const places = Array.from({ length: 20 }, (_, place) => place);
  const taken = places.splice(at, count);
  places.splice(to <= at ? to : to - count, 0, ...taken);
  return places;
}

test('each place goes where taking out and putting in brings it, and comes back', () => {
  fc.assert(fc.property(moves, (move) => {
    const order = byHand(move);
    for (const [now, before] of order.entries()) {
      expect(placeAfterMove(before, move)).toBe(now);
      expect(placeAfterMove(now, moveBack(move))).toBe(before);
    }
  }));
});

test('a run whose members stay side by side is just those members', () => {
  let kept = 0;
  fc.assert(fc.property(moves, fc.nat(14), fc.nat(5), (move, first, length) => {
    const run = { first, last: first + length };
    const now = byHand(move).flatMap((before, place) => (before >= first && before <= run.last ? [place] : []));
    const after = runAfterMove(run, move);
    expect(after.first).toBeLessThanOrEqual(after.last);
    if (now.at(-1)! - now[0]! === length) {
      kept += 1;
      expect(after).toEqual({ first: now[0], last: now.at(-1) });
    }
  }), { numRuns: 2000 });
  expect(kept).toBeGreaterThan(300);
});

test('to a place among themselves nothing moves', () => {
  for (const to of [2, 3, 5]) {
    const move = { at: 2, count: 3, to };
    for (let place = 0; place < 8; place++) expect([placeAfterMove(place, move), placeAfterMove(place, moveBack(move))]).toEqual([place, place]);
    expect(runAfterMove({ first: 1, last: 3 }, move)).toEqual({ first: 1, last: 3 });
    expect(rows('=A3:A4', 2, 3, to)).toBe('=A3:A4');
  }
});

describe('in formulas', () => {
  test('a single cell follows, with its dollars and its spelling', () => {
    expect(rows('=a3 + $B$3', 2, 1, 8)).toBe('=a8 + $B$8');
    expect(rows('=A5', 2, 1, 8)).toBe('=A4');
    expect(rows('=A9', 2, 1, 8)).toBe('=A9');
    expect(columns('=b1 + $C2', 1, 1, 5)).toBe('=e1 + $B2');
  });

  test('a block keeps its rows when one of them goes elsewhere in it, to its very edge too', () => {
    expect(rows('=SUM(A1:A10)', 4, 1, 0)).toBe('=SUM(A1:A10)');
    expect(rows('=SUM(A1:A10)', 4, 1, 10)).toBe('=SUM(A1:A10)');
    expect(rows('=SUM(A1:A10)', 0, 2, 5)).toBe('=SUM(A1:A10)');
  });

  test('a row that leaves the block is no longer in it; one that comes between is', () => {
    expect(rows('=SUM(A1:A10)', 4, 1, 20)).toBe('=SUM(A1:A9)');
    expect(rows('=SUM(A1:A10)', 20, 2, 5)).toBe('=SUM(A1:A12)');
    expect(rows('=SUM(A3:A10)', 20, 2, 2)).toBe('=SUM(A5:A12)');
  });

  test('whole rows and columns follow; those across the move stay', () => {
    expect(rows('=SUM(3:3)', 2, 1, 8)).toBe('=SUM(8:8)');
    expect(rows('=SUM(B:B)', 2, 1, 8)).toBe('=SUM(B:B)');
    expect(rows('=SUM(A1:A1000000)', 2, 1, 8)).toBe('=SUM(A1:A1000000)');
    expect(columns('=SUM(B:B)', 1, 1, 5)).toBe('=SUM(E:E)');
  });

  test('only references to the sheet of the move change', () => {
    expect(rows('=A3 + Skirt!A3', 2, 1, 8)).toBe('=A8 + Skirt!A3');
    expect(rows('=A3 + fit!A3', 2, 1, 8, 1)).toBe('=A3 + fit!A8');
  });
});
