import { expect, test } from 'vitest';
import { NO_HISTORY, apply, entryOf, focusOf, labelOf, record, redo, undo } from '../../../src/workbook/index.ts';
import type { Area, Book, Edit, History } from '../../../src/workbook/index.ts';
import { area, bookOf, frozen, textsOf } from './help.ts';

const book = bookOf([['74 cm', '98 cm']], [], [{ name: 'waist', area: area(1, 0, 0), kind: 'cells' }]);
const typing = (raw: string): Edit => ({ do: 'setCells', sheet: 1, cells: [{ row: 3, col: 1, cell: { raw } }] });

function act(edit: Edit, [now, history]: [Book, History], at = '2025-11-25T10:00:00.000Z'): [Book, History] {
  const applied = apply(edit, now);
  return [applied.book, frozen(record(history, entryOf(edit, now, applied, at)))];
}

test('an entry says what, when and where', () => {
  const [, history] = act(typing('1 in'), [book, NO_HISTORY], '2025-11-25T10:01:00.000Z');
  expect(history.done).toMatchObject([{ label: 'type in B4 of Fit', at: '2025-11-25T10:01:00.000Z', area: area(1, 3, 1), edit: typing('1 in') }]);
});

test('undo and redo go back and forth, one action at a time', () => {
  const first = act(typing('1 in'), [book, NO_HISTORY]);
  const [second, history] = act(typing('2 in'), first);
  const back = undo(history)!;
  expect(back.entry.label).toBe('type in B4 of Fit');
  expect(apply(back.edit, second).book).toStrictEqual(first[0]);
  const start = undo(back.history)!;
  expect(undo(start.history)).toBeNull();
  expect(start.history.undone).toHaveLength(2);
  const again = redo(start.history)!;
  expect(textsOf(apply(again.edit, book).book, 1)[3]).toEqual(['', '1 in']);
  expect(redo(again.history)!.history).toStrictEqual(history);
  expect(redo(history)).toBeNull();
});

test('a new action forgets what had been undone', () => {
  const [, history] = act(typing('1 in'), [book, NO_HISTORY]);
  const back = undo(history)!.history;
  const [, next] = act(typing('3 in'), [book, back]);
  expect(next.undone).toEqual([]);
  expect(next.done).toHaveLength(1);
});

const cells = (...list: readonly (readonly [number, number, string | null, object?])[]): Edit => ({
  do: 'setCells', sheet: 1, cells: list.map(([row, col, raw, rest]) => ({ row, col, cell: raw === null ? null : { raw, ...rest } })),
});

test.each<[Edit, string, Area | null]>([
  [typing('x'), 'type in B4 of Fit', area(1, 3, 1)],
  [cells([0, 0, null]), 'empty A1 of Fit', area(1, 0, 0)],
  [cells([0, 0, '', { look: { strong: true } }]), 'empty A1 of Fit', area(1, 0, 0)],
  [cells([0, 0, '74 cm', { look: { strong: true } }]), 'change the look of A1 of Fit', area(1, 0, 0)],
  [cells([0, 0, '74 cm', { input: true }]), 'set the input mark on A1 of Fit', area(1, 0, 0)],
  [cells([0, 0, '74 cm', { note: 'n' }], [0, 1, '98 cm', { note: 'n' }]), 'change the note on 2 cells in Fit', area(1, 0, 0, 0, 1)],
  [cells([0, 0, null], [0, 1, null]), 'empty 2 cells in Fit', area(1, 0, 0, 0, 1)],
  [cells([2, 4, 'x'], [1, 6, 'y'], [5, 5, 'z']), 'fill 3 cells in Fit', area(1, 1, 4, 5, 6)],
  [cells([0, 0, null], [2, 0, 'x']), 'change 2 cells in Fit', area(1, 0, 0, 2, 0)],
  [{ do: 'insertRows', sheet: 2, at: 4, count: 2 }, 'insert 2 rows in Skirt', area(2, 4, 0, 5, 999)],
  [{ do: 'removeRows', sheet: 2, at: 4, count: 1 }, 'remove 1 row from Skirt', area(2, 4, 0, 4, 999)],
  [{ do: 'insertColumns', sheet: 2, at: 1, count: 1 }, 'insert 1 column in Skirt', area(2, 0, 1, 999_999, 1)],
  [{ do: 'removeColumns', sheet: 2, at: 1, count: 1200 }, 'remove 1,200 columns from Skirt', area(2, 0, 1, 999_999, 1200)],
  [{ do: 'moveCells', from: area(1, 0, 0, 1, 1), to: { sheet: 1, row: 4, col: 3 } }, 'move A1:B2 to D5 of Fit', area(1, 4, 3, 5, 4)],
  [{ do: 'moveCells', from: area(1, 0, 0), to: { sheet: 2, row: 4, col: 3 } }, 'move A1 of Fit to D5 of Skirt', area(2, 4, 3)],
  [{ do: 'addSheet', sheet: { id: 3, name: 'Hem', rows: [], widths: {} }, at: 0 }, 'add the sheet Hem', area(3, 0, 0)],
  [{ do: 'removeSheet', sheet: 1 }, 'remove the sheet Fit', area(1, 0, 0)],
  [{ do: 'renameSheet', sheet: 1, name: 'Cut' }, 'rename the sheet Fit to Cut', area(1, 0, 0)],
  [{ do: 'moveSheet', sheet: 1, to: 1 }, 'move the sheet Fit', area(1, 0, 0)],
  [{ do: 'setAbout', sheet: 1, about: 'x' }, 'change the line about Fit', area(1, 0, 0)],
  [{ do: 'setName', name: 'hip', target: { area: area(1, 0, 1), kind: 'cells' } }, 'name B1 of Fit hip', area(1, 0, 1)],
  [{ do: 'setName', name: 'waist', target: { area: area(1, 0, 1), kind: 'cells' } }, 'let waist stand for B1 of Fit', area(1, 0, 1)],
  [{ do: 'setName', name: 'waist', target: { area: area(1, 0, 0), kind: 'chart' } }, 'change the name waist', area(1, 0, 0)],
  [{ do: 'setName', name: 'waist', target: null }, 'take the name waist away', area(1, 0, 0)],
  [{ do: 'renameName', name: 'waist', to: 'middle' }, 'rename waist to middle', area(1, 0, 0)],
  [{ do: 'renameName', name: 'waist', to: 'Waist' }, 'spell the name Waist', area(1, 0, 0)],
  [{ do: 'setWidth', sheet: 1, col: 2, width: 90 }, 'set the width of column C of Fit', area(1, 0, 2, 999_999, 2)],
  [{ do: 'setSettings', settings: { show: 'cm', inchStep: 8 } }, 'change how lengths show', null],
  [{ do: 'setTitle', title: 'T', person: 'P' }, 'change the title', null],
  [{ do: 'many', label: 'keep both', edits: [{ do: 'setTitle', title: 'T', person: 'P' }, typing('x')] }, 'keep both', area(1, 3, 1)],
  [{ do: 'insertRows', sheet: 9, at: 0, count: 1 }, 'insert 1 row in a sheet that is gone', area(9, 0, 0, 0, 999)],
])('%j', (edit, label, where) => {
  expect(labelOf(edit, book)).toBe(label);
  expect(focusOf(edit, book)).toEqual(where);
});
