import { describe, expect, it } from 'vitest';
import { areaOf, at, firstCell, goTo, groundOf, lastUsed, rowEnd, step, trimmed, wholeColumns, wholeRows, within } from '../../../src/grid/select.ts';
import type { CellView, SheetView } from '../../../src/grid/view.ts';

/** A picture of a sheet: `x` is filled. */
function ground(picture: string, rowCount = 20, colCount = 10, hidden?: SheetView['hidden']) {
  const rows = picture.trim().split('\n').map((line) => line.trim());
  const cell: CellView = { text: 'x', kind: 'text', input: false, formula: false };
  const view: SheetView = { id: 1, name: 'Fit', rowCount, colCount, ...(hidden && { hidden }), width: () => 100, cell: (row, col) => (rows[row]?.[col] === 'x' ? cell : null) };
  return groundOf(view, () => 8);
}

describe('one step', () => {
  const empty = ground('.');
  it('stops at the edges and never wraps', () => {
    expect(step({ row: 0, col: 0 }, 'up', 'one', empty)).toEqual({ row: 0, col: 0 });
    expect(step({ row: 0, col: 0 }, 'left', 'one', empty)).toEqual({ row: 0, col: 0 });
    expect(step({ row: 19, col: 9 }, 'down', 'one', empty)).toEqual({ row: 19, col: 9 });
    expect(step({ row: 19, col: 9 }, 'right', 'one', empty)).toEqual({ row: 19, col: 9 });
  });
  it('goes a page', () => {
    expect(step({ row: 3, col: 2 }, 'down', 'page', empty)).toEqual({ row: 11, col: 2 });
    expect(step({ row: 3, col: 2 }, 'up', 'page', empty)).toEqual({ row: 0, col: 2 });
  });
});

describe('to the edge of a block', () => {
  const sheet = ground(`
    x.xxx
    x....
    x....
    .....
    x....`);
  it('goes to the last cell of the block it is in', () => {
    expect(step({ row: 0, col: 0 }, 'down', 'block', sheet)).toEqual({ row: 2, col: 0 });
    expect(step({ row: 0, col: 2 }, 'right', 'block', sheet)).toEqual({ row: 0, col: 4 });
    expect(step({ row: 0, col: 4 }, 'left', 'block', sheet)).toEqual({ row: 0, col: 2 });
  });
  it('jumps over empty cells to the next block', () => {
    expect(step({ row: 2, col: 0 }, 'down', 'block', sheet)).toEqual({ row: 4, col: 0 });
    expect(step({ row: 0, col: 0 }, 'right', 'block', sheet)).toEqual({ row: 0, col: 2 });
    expect(step({ row: 4, col: 0 }, 'up', 'block', sheet)).toEqual({ row: 2, col: 0 });
  });
  it('goes to the edge of the sheet when there is no more', () => {
    expect(step({ row: 4, col: 0 }, 'down', 'block', sheet)).toEqual({ row: 19, col: 0 });
    expect(step({ row: 0, col: 4 }, 'right', 'block', sheet)).toEqual({ row: 0, col: 9 });
    expect(step({ row: 3, col: 3 }, 'left', 'block', sheet)).toEqual({ row: 3, col: 0 });
  });
});

describe('what is used', () => {
  const sheet = ground(`
    x.x
    ..
    .x`);
  it('is found by looking', () => {
    expect(sheet.used).toEqual({ rows: 3, cols: 3 });
    expect(lastUsed(sheet)).toEqual({ row: 2, col: 2 });
    expect(lastUsed(ground('.'))).toEqual({ row: 0, col: 0 });
  });
  it('ends a row at its last filled cell', () => {
    expect(rowEnd(0, sheet)).toEqual({ row: 0, col: 2 });
    expect(rowEnd(2, sheet)).toEqual({ row: 2, col: 1 });
    expect(rowEnd(7, sheet)).toEqual({ row: 7, col: 0 });
  });
  it('limits a copy of whole rows and columns, but not of a block', () => {
    expect(trimmed(areaOf(wholeColumns(1, 1, sheet)), sheet)).toEqual({ top: 0, left: 1, bottom: 2, right: 1 });
    expect(trimmed(areaOf(wholeRows(2, 2, sheet)), sheet)).toEqual({ top: 2, left: 0, bottom: 2, right: 2 });
    expect(trimmed(areaOf(wholeColumns(8, 8, sheet)), sheet)).toEqual({ top: 0, left: 8, bottom: 2, right: 8 });
    expect(trimmed({ top: 0, left: 0, bottom: 9, right: 5 }, sheet)).toEqual({ top: 0, left: 0, bottom: 9, right: 5 });
  });
});

describe('a selection', () => {
  it('keeps its anchor when it is extended and lets it go otherwise', () => {
    const extended = goTo(at(2, 2), { row: 5, col: 1 }, true);
    expect(extended).toEqual({ anchor: { row: 2, col: 2 }, focus: { row: 5, col: 1 } });
    expect(areaOf(extended)).toEqual({ top: 2, left: 1, bottom: 5, right: 2 });
    expect(goTo(extended, { row: 0, col: 0 }, false)).toEqual(at(0, 0));
  });
  it('is drawn in where the sheet got smaller', () => {
    const same = at(3, 3);
    const { rows, cols } = ground('.', 10, 10);
    expect(within(same, rows, cols)).toBe(same);
    expect(within(at(30, 3), rows, cols)).toEqual(at(9, 3));
  });
});

describe('hidden rows and columns', () => {
  const sheet = ground(`
    xxxxx
    x.x.x
    x.x.x
    x.x.x
    ....x`, 20, 10, { rows: [[1, 2], [18, 19]], cols: [[0, 0], [3, 3]] });

  it('are passed over by every move', () => {
    expect(step({ row: 0, col: 2 }, 'down', 'one', sheet)).toEqual({ row: 3, col: 2 });
    expect(step({ row: 3, col: 2 }, 'up', 'one', sheet)).toEqual({ row: 0, col: 2 });
    expect(step({ row: 0, col: 2 }, 'right', 'one', sheet)).toEqual({ row: 0, col: 4 });
    expect(step({ row: 0, col: 1 }, 'left', 'one', sheet)).toEqual({ row: 0, col: 1 });
    expect(step({ row: 0, col: 1 }, 'down', 'page', sheet)).toEqual({ row: 10, col: 1 });
    expect(step({ row: 17, col: 1 }, 'down', 'one', sheet)).toEqual({ row: 17, col: 1 });
    expect(step({ row: 0, col: 4 }, 'down', 'block', sheet)).toEqual({ row: 4, col: 4 });
    expect(step({ row: 4, col: 4 }, 'down', 'block', sheet)).toEqual({ row: 17, col: 4 });
    expect(step({ row: 0, col: 1 }, 'right', 'block', sheet)).toEqual({ row: 0, col: 4 });
    expect([firstCell(sheet), lastUsed(sheet), rowEnd(1, sheet)]).toEqual([{ row: 0, col: 1 }, { row: 4, col: 4 }, { row: 1, col: 4 }]);
  });

  it('are never where the active cell is', () => {
    expect(within(at(1, 0), sheet.rows, sheet.cols)).toEqual(at(3, 1));
    expect(within(at(19, 3), sheet.rows, sheet.cols)).toEqual(at(17, 4));
    const block = { anchor: { row: 2, col: 3 }, focus: { row: 0, col: 2 } };
    expect(within(block, sheet.rows, sheet.cols)).toBe(block);
  });
});
