import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readEdit } from '../../../src/keeping/read-edit.ts';
import type { Edit } from '../../../src/workbook/index.ts';
import { bookOf, editFrom, seed } from '../workbook/help.ts';

const BOOK = bookOf([['Waist', '74 cm'], ['Hip', '98 cm', '=B2-B1']], [['=fit!b2']]);

test('every kind of edit comes out of storage as it went in', () => {
  const kinds = new Set<Edit['do']>();
  fc.assert(fc.property(seed, (part) => {
    const edit = editFrom(part, BOOK);
    kinds.add(edit.do);
    const read = readEdit(structuredClone(edit));
    // A record comes out in its normal form.
    if (JSON.stringify(edit).includes('"setRecord"')) expect(readEdit(structuredClone(read))).toEqual(read);
    else expect(read).toEqual(edit);
    expect(read).not.toBeNull();
  }), { numRuns: 2000 });
  expect([...kinds].sort()).toEqual([
    'acknowledge', 'addSheet', 'insertColumns', 'insertRows', 'many', 'moveCells', 'moveColumns', 'moveRows', 'moveSheet', 'orderRows', 'removeColumns', 'removeRows', 'removeSheet', 'renameName',
    'renameSheet', 'setAbout', 'setCells', 'setFilter', 'setFrozen', 'setHidden', 'setName', 'setRecord', 'setSettings', 'setTitle', 'setWidth',
  ]);
});

test.each<unknown>([
  { do: 'setHidden', sheet: 1, axis: 'diagonals', runs: [] },
  { do: 'setHidden', sheet: 1, axis: 'rows', runs: [[1]] },
  { do: 'setFilter', sheet: 1, filter: { area: {}, conditions: [], hides: [] } },
  { do: 'setFilter', sheet: 1, filter: { area: { top: 0, left: 0, bottom: 1, right: 1 }, conditions: [{ col: 0, test: 'magic', text: '' }], hides: [] } },
  { do: 'moveRows', sheet: 1, at: 1, count: 1 },
  { do: 'setFrozen', sheet: 1, rows: -1, columns: 0 },
  { do: 'orderRows', area: { sheet: 1, top: 0, left: 0, bottom: 1, right: 1 }, order: [1, 0.5] },
])('%j is no edit', (stored) => expect(readEdit(stored)).toBeNull());
