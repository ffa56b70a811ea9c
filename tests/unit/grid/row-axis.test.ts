import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { RowAxis } from '../../../src/grid/row-axis.ts';
import { Shown } from '../../../src/grid/shown.ts';
import { axisOf, runsOf } from './axis.ts';

describe('which rows show', () => {
  it('is the same as in a plain list', () => {
    fc.assert(fc.property(fc.array(fc.boolean(), { minLength: 1, maxLength: 60 }), (hidden) => {
      fc.pre(hidden.includes(false));
      const shown = new Shown(runsOf(hidden), hidden.length);
      const list = hidden.flatMap((each, at) => (each ? [] : [at]));
      expect(shown.count).toBe(list.length);
      list.forEach((index, rank) => {
        expect(shown.at(rank)).toBe(index);
        expect(shown.rank(index)).toBe(rank);
        expect(shown.step(index, 1)).toBe(list[Math.min(rank + 1, list.length - 1)]);
        expect(shown.step(index, -3)).toBe(list[Math.max(0, rank - 3)]);
      });
      hidden.forEach((each, index) => {
        expect(shown.has(index)).toBe(!each);
        const next = list.find((at) => at >= index);
        expect(shown.nearest(index)).toBe(next ?? list.at(-1));
        expect(shown.rank(index)).toBe(list.filter((at) => at < index).length);
        for (const last of [index, index + 4]) {
          if (last < hidden.length) expect(shown.hiddenIn(index, last)).toBe(hidden.slice(index, last + 1).filter(Boolean).length);
        }
      });
    }));
  });

  it('steps from a hidden one to the next that shows', () => {
    const shown = new Shown([[2, 4]], 8);
    expect([shown.step(3, 1), shown.step(3, -1)]).toEqual([5, 1]);
  });

  it('tells of the stretch beside one', () => {
    const shown = new Shown([[0, 1], [4, 4], [7, 9]], 10);
    expect(shown.hiddenBefore(2)).toEqual([0, 1]);
    expect(shown.hiddenBefore(5)).toEqual([4, 4]);
    expect(shown.hiddenBefore(3)).toBeNull();
    expect(shown.hiddenToEnd(6)).toEqual([7, 9]);
    expect(shown.hiddenToEnd(3)).toBeNull();
  });

  it('is never nothing: where all are hidden, all show', () => {
    expect(new Shown([[0, 99]], 20).count).toBe(20);
    expect(new Shown([], 5).all).toBe(true);
  });
});

describe('where rows lie', () => {
  it('is the sum of the heights above', () => {
    fc.assert(fc.property(axisOf(), ({ axis, heights }) => {
      let y = 0;
      heights.forEach((height, row) => {
        expect(axis.top(row)).toBe(y);
        expect(axis.heightOf(row)).toBe(height);
        if (height > 0) expect([axis.at(y), axis.at(y + height - 1)]).toEqual([row, row]);
        y += height;
      });
      expect(axis.height).toBe(y);
      expect(axis.top(heights.length)).toBe(y);
      const last = heights.findLastIndex((height) => height > 0);
      expect([axis.at(-50), axis.at(y + 50)]).toEqual([heights.findIndex((height) => height > 0), last]);
    }));
  });

  it('takes no looking up where nothing is hidden or tall', () => {
    const axis = new RowAxis({ rowCount: 1_000_000 });
    expect([axis.top(999_999), axis.at(29_999_970), axis.height]).toEqual([29_999_970, 999_999, 30_000_000]);
  });

  it('is found quickly where a filter leaves every other row', () => {
    const axis = new RowAxis({ rowCount: 100_000, hidden: { rows: Array.from({ length: 50_000 }, (_, i): [number, number] => [2 * i, 2 * i]) } });
    expect(axis.height).toBe(50_000 * 30);
    for (let rank = 0; rank < 50_000; rank += 997) expect(axis.at(rank * 30 + 29)).toBe(2 * rank + 1);
  });
});
