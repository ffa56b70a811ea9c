import { describe, expect, it } from 'vitest';
import fc from 'fast-check';
import { columnAt, columnEdges, columnWindow, covers, planColumns, planRows, reveal, rowWindow, GAP, ROW_HEIGHT } from '../../../src/grid/window.ts';

describe('rows in the document', () => {
  it('cover every view, whatever the scroll position', () => {
    fc.assert(fc.property(fc.integer({ min: 1, max: 100_000 }), fc.nat(3_000_000), fc.integer({ min: 100, max: 2000 }), fc.constantFrom(-1 as const, 0 as const, 1 as const), (rowCount, wanted, height, towards) => {
      const top = Math.min(wanted, Math.max(0, rowCount * ROW_HEIGHT - height));
      const run = rowWindow(top, height, rowCount, towards);
      expect(covers(run, top, height, rowCount)).toBe(true);
      expect(run.end - run.first).toBeLessThan(height / ROW_HEIGHT + 40);
    }));
  });

  it('reach further the way the user goes', () => {
    const down = rowWindow(30_000, 600, 100_000, 1);
    const up = rowWindow(30_000, 600, 100_000, -1);
    expect(down.end).toBeGreaterThan(up.end);
    expect(down.first).toBeGreaterThan(up.first);
  });

  it('do not change for every pixel', () => {
    const runs = new Set(Array.from({ length: 120 }, (_, i) => JSON.stringify(rowWindow(9_000 + i, 600, 1000, 1))));
    expect(runs.size).toBeLessThanOrEqual(3);
  });

  it('always hold the active row, in order, with its gap', () => {
    fc.assert(fc.property(fc.nat(500), fc.integer({ min: 1, max: 60 }), fc.nat(999), (first, count, keep) => {
      const plan = planRows({ first, end: first + count }, keep, 1000);
      expect(plan.rows).toContain(keep);
      expect(new Set(plan.rows).size).toBe(plan.rows.length);
      // Every row is where its number says, laid out one under another with the one gap.
      let y = plan.top;
      for (const row of plan.rows) {
        if (row !== GAP) expect(y).toBe(row * ROW_HEIGHT);
        y += row === GAP ? plan.gap : ROW_HEIGHT;
      }
    }));
  });

  it('leave out a row that is not there', () => {
    expect(planRows({ first: 0, end: 3 }, 9, 5).rows).toEqual([0, 1, 2]);
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
    fc.assert(fc.property(fc.nat(12_000), fc.integer({ min: 200, max: 2000 }), fc.array(fc.nat(199), { maxLength: 2 }), (left, width, keep) => {
      const run = columnWindow(edges, left, width);
      expect(edges[run.first]!).toBeLessThanOrEqual(Math.min(left, edges[199]!));
      expect(edges[run.end]!).toBeGreaterThanOrEqual(Math.min(left + width, edges[200]!));
      const tracks = planColumns(run, keep, edges);
      const total = tracks.reduce((sum, track) => sum + ('gap' in track ? track.gap : edges[track.col + 1]! - edges[track.col]!), 0);
      expect(total).toBeCloseTo(edges[200]!, 6);
      for (const col of keep) expect(tracks).toContainEqual({ col });
    }));
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
