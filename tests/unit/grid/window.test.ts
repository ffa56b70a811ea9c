import { describe, expect, it } from 'vitest';
import fc from 'fast-check';
import { RowAxis } from '../../../src/grid/row-axis.ts';
import { columnAt, columnEdges, columnWindow, covers, planColumns, planRows, reveal, rowWindow, GAP } from '../../../src/grid/window.ts';
import { axisOf } from './axis.ts';

const even = (rowCount: number): RowAxis => new RowAxis({ rowCount });

describe('rows in the document', () => {
  it('cover every view, whatever the scroll position and whatever is hidden or tall', () => {
    fc.assert(fc.property(axisOf(), fc.double({ min: 0, max: 1, noNaN: true }), fc.integer({ min: 100, max: 2000 }), fc.constantFrom(-1 as const, 0 as const, 1 as const), ({ axis }, share, height, towards) => {
      const top = Math.floor(share * Math.max(0, axis.height - height));
      const run = rowWindow(axis, top, height, towards);
      expect(covers(run, axis, top, height)).toBe(true);
      expect(run.end - run.first).toBeLessThan(height / 30 + 40);
    }));
  });

  it('reach further the way the user goes', () => {
    const down = rowWindow(even(100_000), 30_000, 600, 1);
    const up = rowWindow(even(100_000), 30_000, 600, -1);
    expect(down.end).toBeGreaterThan(up.end);
    expect(down.first).toBeGreaterThan(up.first);
  });

  it('do not change for every pixel', () => {
    const runs = new Set(Array.from({ length: 120 }, (_, i) => JSON.stringify(rowWindow(even(1000), 9_000 + i, 600, 1))));
    expect(runs.size).toBeLessThanOrEqual(3);
  });

  it('always hold the active row, in order, with its gap', () => {
    fc.assert(fc.property(axisOf(), fc.nat(500), fc.integer({ min: 1, max: 60 }), fc.nat(999), ({ axis }, from, count, asked) => {
      const first = Math.min(from, axis.shown.count - 1);
      const keep = axis.shown.nearest(Math.min(asked, axis.rowCount - 1));
      const plan = planRows({ first, end: Math.min(axis.shown.count, first + count) }, keep, axis);
      expect(plan.rows).toContain(keep);
      expect(new Set(plan.rows).size).toBe(plan.rows.length);
      // Every row is where its number says, laid out one under another with the one gap.
      let y = plan.top;
      for (const row of plan.rows) {
        if (row !== GAP) {
          expect(axis.shown.has(row)).toBe(true);
          expect(y).toBe(axis.top(row));
        }
        y += row === GAP ? plan.gap : axis.heightOf(row);
      }
    }));
  });

  it('leave out a row that is not there, and those that stay in view by themselves', () => {
    expect(planRows({ first: 0, end: 3 }, 9, even(5)).rows).toEqual([0, 1, 2]);
    expect(planRows({ first: 10, end: 12 }, 1, even(50), 2).rows).toEqual([10, 11]);
    expect(rowWindow(even(50), 60, 90, 0, 2).first).toBe(2);
  });
});

describe('columns in the document', () => {
  const edges = columnEdges(200, (col) => 40 + (col % 7) * 10);

  it('are found by their place', () => {
    for (let col = 0; col < 200; col++) {
      expect(columnAt(edges, edges[col]!)).toBe(col);
      expect(columnAt(edges, edges[col + 1]! - 0.5)).toBe(col);
    }
    expect(columnAt(edges, -5)).toBe(0);
    expect(columnAt(edges, 1e9)).toBe(199);
  });

  it('are all there when there are few', () => {
    expect(columnWindow(columnEdges(26, () => 118), 2000, 300)).toEqual({ first: 0, end: 26 });
  });

  it('cover the view, and the tracks add up to the whole width', () => {
    fc.assert(fc.property(fc.nat(12_000), fc.integer({ min: 200, max: 2000 }), fc.nat(199), fc.nat(3), (left, width, keep, from) => {
      const run = columnWindow(edges, left, width);
      expect(edges[run.first]!).toBeLessThanOrEqual(Math.min(left, edges[199]!));
      expect(edges[run.end]!).toBeGreaterThanOrEqual(Math.min(left + width, edges[200]!));
      const tracks = planColumns(run, keep, edges, from);
      const total = tracks.reduce((sum, track) => sum + ('gap' in track ? track.gap : edges[track.col + 1]! - edges[track.col]!), 0);
      expect(total).toBeCloseTo(edges[200]! - edges[from]!, 6);
      if (keep >= from) expect(tracks).toContainEqual({ col: keep });
    }));
  });
});

describe('hidden columns', () => {
  it('have no track, and the others keep their places', () => {
    const edges = columnEdges(6, (col) => (col === 2 || col === 3 ? 0 : 50));
    expect(planColumns({ first: 0, end: 6 }, 0, edges)).toEqual([{ col: 0 }, { col: 1 }, { col: 4 }, { col: 5 }]);
    expect(planColumns({ first: 4, end: 6 }, 0, edges)).toEqual([{ col: 0 }, { gap: 50 }, { col: 4 }, { col: 5 }]);
    expect(columnAt(edges, 100)).toBe(4);
  });
});

describe('bringing into view', () => {
  it('moves as little as it can', () => {
    expect(reveal(100, 300, 150, 180)).toBe(100);
    expect(reveal(100, 300, 60, 90)).toBe(60);
    expect(reveal(100, 300, 390, 420)).toBe(120);
  });
  it('shows the beginning of what is larger than the view', () => {
    expect(reveal(100, 50, 200, 400)).toBe(200);
  });
});
