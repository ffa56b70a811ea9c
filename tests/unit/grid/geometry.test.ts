import { describe, expect, it } from 'vitest';
import { Geometry } from '../../../src/grid/geometry.ts';
import { HEAD_HEIGHT, ROW_HEIGHT } from '../../../src/grid/window.ts';
import { NO_VIEW } from '../../../src/grid/view.ts';

const view = { ...NO_VIEW, rowCount: 100, colCount: 26, width: (col: number) => (col === 0 ? 200 : 100) };

describe('where cells are', () => {
  const wide = new Geometry(view, 900);
  const port = { top: 300, left: 250, width: 900, height: 628 };
  it('is told of a point on the view', () => {
    expect(wide.targetAt(port, 5, 5)).toEqual({ part: 'corner' });
    expect(wide.targetAt(port, wide.rowHead + 1, 5)).toEqual({ part: 'column', col: 1 });
    expect(wide.targetAt(port, 5, HEAD_HEIGHT + 1)).toEqual({ part: 'row', row: 10 });
    expect(wide.targetAt(port, wide.rowHead + 60, HEAD_HEIGHT + 35)).toEqual({ part: 'cell', place: { row: 11, col: 2 } });
  });
  it('stands for the nearest cell outside of them', () => {
    expect(wide.cellAt(port, -50, -50)).toEqual({ row: 10, col: 1 });
    expect(wide.cellAt({ ...port, top: 2400 }, 5000, 5000).row).toBe(99);
  });
  it('scrolls a hidden cell out from under the headings', () => {
    expect(wide.reveal(port, { row: 0, col: 0 })).toEqual({ top: 0, left: 0 });
    expect(wide.reveal(port, { row: 12, col: 3 })).toEqual({ top: 300, left: 250 });
    const { top } = wide.reveal(port, { row: 40, col: 3 });
    expect(41 * ROW_HEIGHT - top).toBe(628 - HEAD_HEIGHT);
  });
});

describe('on a narrow view', () => {
  const narrow = new Geometry(view, 390);
  const port = { top: 0, left: 300, width: 390, height: 600 };
  it('the first column stays, and leaves room for another', () => {
    expect(narrow.sticky).toBeGreaterThan(100);
    expect(narrow.sticky).toBeLessThanOrEqual(390 * 0.38 + 1);
    expect(new Geometry(view, 900).sticky).toBe(0);
    expect(new Geometry(view, 200).sticky).toBe(0);
  });
  it('a point on it is its cell, wherever the others are scrolled to', () => {
    expect(narrow.targetAt(port, narrow.rowHead + 20, HEAD_HEIGHT + 5)).toEqual({ part: 'cell', place: { row: 0, col: 0 } });
  });
  it('a cell is shown beside it, not under it', () => {
    const { left } = narrow.reveal(port, { row: 0, col: 1 });
    expect(narrow.edges[1]! - left).toBe(narrow.sticky);
    expect(narrow.reveal(port, { row: 0, col: 0 }).left).toBe(300);
  });
});
