import { describe, expect, test } from 'vitest';
import { EditRefused, apply, focusOf, labelOf } from '../../../src/workbook/index.ts';
import type { Book, Edit } from '../../../src/workbook/index.ts';
import { area, bookOf, textsOf } from './help.ts';

function thereAndBack(edit: Edit, book: Book): Book {
  const { book: after, inverse } = apply(edit, book);
  expect(apply(inverse, after).book).toStrictEqual(book);
  return after;
}

describe('rows', () => {
  const book = bookOf(
    [['a', '1'], ['b', '2', '=b2*2'], ['c', '3'], ['d', '4'], ['sum', '=SUM(B1:B4)', '=$B$2', '=Fit!B2']],
    [['=Fit!B2', '=B2']],
    [{ name: 'waist', area: area(1, 1, 1), kind: 'cells' }, { name: 'all', area: area(1, 0, 0, 3, 1), kind: 'cells' }],
  );
  const edit: Edit = { do: 'moveRows', sheet: 1, at: 1, count: 1, to: 4 };

  test('go before the row that is named, and everything follows', () => {
    const after = thereAndBack(edit, book);
    expect(textsOf(after, 1)).toEqual([['a', '1'], ['c', '3'], ['d', '4'], ['b', '2', '=b4*2'], ['sum', '=SUM(B1:B4)', '=$B$4', '=Fit!B4']]);
    expect(textsOf(after, 2)).toEqual([['=Fit!B4', '=B2']]);
    expect(after.names.map((each) => each.area)).toEqual([area(1, 0, 0, 3, 1), area(1, 3, 1)]);
    expect(labelOf(edit, book)).toBe('move 1 row of Fit');
    expect(focusOf(edit, book)).toEqual({ sheet: 1, top: 3, bottom: 3, left: 0, right: 999 });
  });

  test('the way back is as short as the way there', () => {
    expect(apply(edit, book).inverse).toEqual({ do: 'moveRows', sheet: 1, at: 3, count: 1, to: 1 });
  });

  test('the engine is told of the places, the cells that moved, and of what it would follow otherwise', () => {
    const { effects } = apply(edit, book);
    expect(effects.slice(0, 2)).toEqual([{ do: 'removeRows', sheet: 1, at: 1, count: 1 }, { do: 'insertRows', sheet: 1, at: 3, count: 1 }]);
    expect(effects[2]).toEqual({
      do: 'cells', sheet: 1, cells: [
        { row: 3, col: 0, raw: 'b' }, { row: 3, col: 1, raw: '2' }, { row: 3, col: 2, raw: '=b4*2' },
        { row: 4, col: 1, raw: '=SUM(B1:B4)' }, { row: 4, col: 2, raw: '=$B$4' }, { row: 4, col: 3, raw: '=Fit!B4' },
      ],
    });
  });

  test('several at once, upwards', () => {
    const after = thereAndBack({ do: 'moveRows', sheet: 1, at: 2, count: 2, to: 0 }, book);
    expect(textsOf(after, 1).map(([first]) => first)).toEqual(['c', 'd', 'a', 'b', 'sum']);
  });

  test('beyond all that is filled', () => {
    const after = thereAndBack({ do: 'moveRows', sheet: 1, at: 0, count: 1, to: 9 }, book);
    expect(textsOf(after, 1).map(([first = '']) => first)).toEqual(['b', 'c', 'd', 'sum', '', '', '', '', 'a']);
    expect(textsOf(after, 1)[3]![1]).toBe('=SUM(B1:B3)');
  });

  test('to where they are: the same workbook', () => {
    for (const to of [1, 2]) expect(apply({ ...edit, to } as Edit, book).book).toBe(book);
    expect(apply({ do: 'moveRows', sheet: 1, at: 50, count: 2, to: 60 }, book).book).toBe(book);
  });

  test.each([[-1, 1, 3], [0, 0, 3], [0, 1, 1_000_001], [999_999, 2, 0], [0.5, 1, 3]])('at %d, %d, to %d is refused', (at, count, to) => {
    expect(() => apply({ do: 'moveRows', sheet: 1, at, count, to }, book)).toThrow(EditRefused);
  });
});

test('columns take their widths along', () => {
  const wide = apply({ do: 'setWidth', sheet: 1, col: 0, width: 200 }, bookOf([['x', 'y', 'z', '=A1&c1'], ['1']])).book;
  const after = thereAndBack({ do: 'moveColumns', sheet: 1, at: 0, count: 1, to: 3 }, wide);
  expect(textsOf(after, 1)).toEqual([['y', 'z', 'x', '=C1&b1'], ['', '', '1']]);
  expect(after.sheets[0]!.widths).toEqual({ 2: 200 });
});
