import { describe, expect, it } from 'vitest';
import { Geometry } from '../../../src/grid/geometry.ts';
import { ROW_HEIGHT } from '../../../src/grid/row-axis.ts';
import { HEAD_HEIGHT } from '../../../src/grid/window.ts';
import { NO_VIEW } from '../../../src/grid/view.ts';

const view = { ...NO_VIEW, rowCount: 100, colCount: 26, width: (col: number) => (col === 0 ? 200 : 100) };

describe('where cells are', () => {
  const wide = new Geometry(view, { width: 900, height: 628 });
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
  const narrow = new Geometry(view, { width: 390, height: 600 });
  const port = { top: 0, left: 300, width: 390, height: 600 };
  it('the first column stays, and leaves room for another', () => {
    expect(narrow.stay.width).toBeGreaterThan(100);
    expect(narrow.stay.width).toBeLessThanOrEqual(390 * 0.38 + 1);
    expect(new Geometry(view, { width: 900, height: 628 }).stay.width).toBe(0);
    expect(new Geometry(view, { width: 200, height: 600 }).stay.width).toBe(0);
  });
  it('a point on it is its cell, wherever the others are scrolled to', () => {
    expect(narrow.targetAt(port, narrow.rowHead + 20, HEAD_HEIGHT + 5)).toEqual({ part: 'cell', place: { row: 0, col: 0 } });
  });
  it('a cell is shown beside it, not under it', () => {
    const { left } = narrow.reveal(port, { row: 0, col: 1 });
    expect(narrow.edges[1]! - left).toBe(narrow.stay.width);
    expect(narrow.reveal(port, { row: 0, col: 0 }).left).toBe(300);
  });
});

describe('rows and columns that stay in view', () => {
  const frozen = (rows: number, cols: number, width = 900, height = 628) => new Geometry({ ...view, frozen: { rows, cols } }, { width, height });
  const port = { top: 300, left: 250, width: 900, height: 628 };

  it('take their room, wherever the rest is scrolled to', () => {
    const { stay } = frozen(2, 1);
    expect(stay).toEqual({ rows: 2, cols: 1, width: 200, height: 60 });
    const geometry = frozen(2, 1);
    expect(geometry.targetAt(port, geometry.rowHead + 10, HEAD_HEIGHT + 31)).toEqual({ part: 'cell', place: { row: 1, col: 0 } });
    expect(geometry.targetAt(port, geometry.rowHead + 210, HEAD_HEIGHT + 61)).toEqual({ part: 'cell', place: { row: 12, col: 3 } });
    expect(geometry.targetAt(port, 3, HEAD_HEIGHT + 5)).toEqual({ part: 'row', row: 0 });
  });

  it('never lie over a cell that is shown', () => {
    const geometry = frozen(2, 1);
    const { top, left } = geometry.reveal(port, { row: 10, col: 1 });
    expect(geometry.rows.top(10) - top).toBe(60);
    expect(geometry.edges[1]! - left).toBe(200);
    expect(geometry.reveal(port, { row: 1, col: 0 })).toEqual({ top: 300, left: 250 });
    expect(geometry.reveal({ ...port, top: 0, left: 0 }, { row: 2, col: 1 })).toEqual({ top: 0, left: 0 });
  });

  it('are as many as leave room for the rest', () => {
    expect(frozen(40, 20).stay.rows).toBe(Math.floor((628 - HEAD_HEIGHT - 90) / ROW_HEIGHT));
    expect(frozen(40, 20).stay.width).toBeLessThanOrEqual(900 - 110);
    expect(frozen(3, 3, 320, 180).stay).toMatchObject({ rows: 2, cols: 1 });
    expect(frozen(3, 3, 320, 100).stay.rows).toBe(0);
  });

  it('count hidden ones among them', () => {
    const geometry = new Geometry({ ...view, frozen: { rows: 3, cols: 2 }, hidden: { rows: [[1, 1]], cols: [[0, 0]] } }, { width: 900, height: 628 });
    expect(geometry.stay).toEqual({ rows: 3, cols: 2, width: 100, height: 60 });
    expect(geometry.cellAt({ ...port, top: 0, left: 0 }, geometry.rowHead + 5, HEAD_HEIGHT + 35)).toEqual({ row: 2, col: 1 });
  });
});
