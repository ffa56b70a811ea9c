import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { areaName, cellName, columnName, columnNumber, looksLikeCell, MAX_COLUMNS, MAX_ROWS, readArea } from '../../../src/formula/index.ts';

describe('columns and cells', () => {
  it('count from A', () => {
    expect([0, 25, 26, 51, 52, 701, 702, 999].map(columnName)).toEqual(['A', 'Z', 'AA', 'AZ', 'BA', 'ZZ', 'AAA', 'ALL']);
    for (let col = 0; col < MAX_COLUMNS; col += 1) expect(columnNumber(columnName(col))).toBe(col);
    expect(columnNumber('all')).toBe(999);
    for (const text of ['ALM', 'ZZZ', 'AAAA', '', 'A1', 'É', '1']) expect(columnNumber(text), text).toBeUndefined();
    expect(cellName(0, 0)).toBe('A1');
    expect(cellName(MAX_ROWS - 1, 27)).toBe('AB1000000');
  });

  it('are told from words', () => {
    for (const text of ['A1', '$B$3', 'cm2', 'ALL1000000']) expect(looksLikeCell(text), text).toBe(true);
    for (const text of ['A0', 'AMM1', 'A1000001', 'bust2', 'A', '1', 'A1:B2', 'A1 ', '']) expect(looksLikeCell(text), text).toBe(false);
  });
});

describe('areas', () => {
  it('read in every form', () => {
    expect(readArea('B2')).toEqual({ top: 1, left: 1, bottom: 1, right: 1 });
    expect(readArea(' $C$4:a2 ')).toEqual({ top: 1, left: 0, bottom: 3, right: 2 });
    expect(readArea('B:$C')).toEqual({ top: 0, left: 1, bottom: MAX_ROWS - 1, right: 2 });
    expect(readArea('3:5')).toEqual({ top: 2, left: 0, bottom: 4, right: MAX_COLUMNS - 1 });
    expect(readArea("'Anna''s sheet'!B2")).toEqual({ sheet: "Anna's sheet", top: 1, left: 1, bottom: 1, right: 1 });
    for (const text of ['', 'B', '3', 'A1:B', 'A1:', 'A1 B2', 'bust', 'A0', 'A1+B2', '=A1', 'A1(']) expect(readArea(text), text).toBeUndefined();
  });

  it('come back as they were written out', () => {
    const row = fc.nat({ max: MAX_ROWS - 1 });
    const col = fc.nat({ max: MAX_COLUMNS - 1 });
    fc.assert(fc.property(row, row, col, col, (a, b, c, d) => {
      const box = { top: Math.min(a, b), bottom: Math.max(a, b), left: Math.min(c, d), right: Math.max(c, d) };
      expect(readArea(areaName(box))).toEqual(box);
    }));
    expect(areaName({ top: 0, left: 1, bottom: MAX_ROWS - 1, right: 2 })).toBe('B:C');
    expect(areaName({ top: 2, left: 0, bottom: 4, right: MAX_COLUMNS - 1 })).toBe('3:5');
    expect(areaName({ top: 1, left: 1, bottom: 1, right: 1 })).toBe('B2');
  });
});
