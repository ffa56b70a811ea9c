/** Many formulas that ask one size chart share what was read of it, and never longer than it is right. */
import { describe, expect, test } from 'vitest';
import { Results } from '../../../src/reckoning/results.ts';
import type { Edit } from '../../../src/workbook/index.ts';
import { Engine } from '../../../workers/reckon/engine.ts';
import { Desk, said } from './desk.ts';

const CHART = {
  A1: 'Measure', B1: '8', C1: '10', D1: '12',
  A2: 'bust', B2: '80 cm', C2: '84 cm', D2: '88 cm',
  A3: 'waist', B3: '62 cm', C3: '66 cm', D3: '70 cm',
};
const asking = Array.from({ length: 30 }, (_, i): [string, string][] => [
  [`F${i + 1}`, i % 2 === 0 ? 'bust' : 'waist'], [`G${i + 1}`, String(8 + (i % 5))], [`H${i + 1}`, `=SIZE.MEASURE($A$1:$D$3,F${i + 1},G${i + 1})`],
  [`I${i + 1}`, `=SIZE.STEP($A$1:$D$${i < 15 ? 3 : 4},F${i + 1},8)`],
]).flat();

/** Every result, in the engine that was told of the edits. */
function all(results: Results): string[] {
  return Array.from({ length: 40 }, (_, row) => Array.from({ length: 12 }, (_, col) => said(results.at(1, row, col)))).flat();
}

function opened(desk: Desk): string[] {
  const fresh = new Results();
  fresh.apply(new Engine().open(1, desk.book));
  return all(fresh);
}

describe('a chart that many formulas ask', () => {
  const edits: readonly (readonly [string, Edit])[] = [
    ['a figure is another', { do: 'setCells', sheet: 1, cells: [{ row: 1, col: 2, cell: { raw: '85 cm' } }] }],
    ['a size is called otherwise', { do: 'setCells', sheet: 1, cells: [{ row: 0, col: 2, cell: { raw: '11' } }] }],
    ['a row comes above it', { do: 'insertRows', sheet: 1, at: 0, count: 1 }],
    ['a row comes within it', { do: 'insertRows', sheet: 1, at: 2, count: 1 }],
    ['a column comes before it', { do: 'insertColumns', sheet: 1, at: 0, count: 2 }],
    ['a row of it goes', { do: 'removeRows', sheet: 1, at: 1, count: 1 }],
    ['its first row goes', { do: 'removeRows', sheet: 1, at: 0, count: 1 }],
    ['its last row goes, so that two blocks become one', { do: 'removeRows', sheet: 1, at: 3, count: 1 }],
    ['a column of it goes', { do: 'removeColumns', sheet: 1, at: 2, count: 1 }],
    ['all of it goes', { do: 'removeColumns', sheet: 1, at: 0, count: 4 }],
    ['it is emptied', { do: 'setCells', sheet: 1, cells: [0, 1, 2].flatMap((row) => [0, 1, 2, 3].map((col) => ({ row, col, cell: null }))) }],
  ];

  test.each(edits)('%s', (_, edit) => {
    const desk = new Desk({ ...CHART, ...Object.fromEntries(asking) });
    expect(desk.show('H1')).toBe('80 cm');
    desk.edit(edit);
    expect(all(desk.results)).toEqual(opened(desk));
    // A cell far from the chart, so that formulas ask what was kept.
    desk.edit({ do: 'setCells', sheet: 1, cells: Array.from({ length: 5 }, (_, row) => ({ row: row + 6, col: 6, cell: { raw: '9' } })) });
    expect(all(desk.results)).toEqual(opened(desk));
  });

  test('one edit after the other', () => {
    const desk = new Desk({ ...CHART, ...Object.fromEntries(asking) });
    for (const [, edit] of edits) {
      desk.edit(edit);
      expect(all(desk.results)).toEqual(opened(desk));
    }
  });

  test('the same words on two sheets mean each sheet’s own', () => {
    const other = { ...CHART, B2: '100 cm', H1: '=SIZE.MEASURE($A$1:$D$3,"bust",8)', H2: '=SIZE.MEASURE($A$1:$D$3,"bust",8)' };
    const desk = new Desk({ ...CHART, H1: '=SIZE.MEASURE($A$1:$D$3,"bust",8)', H2: '=SIZE.MEASURE($A$1:$D$3,"bust",8)' }, ['Other', other]);
    expect([desk.show('H1'), desk.show('H2'), desk.show('H1', 1), desk.show('H2', 1)]).toEqual(['80 cm', '80 cm', '100 cm', '100 cm']);
  });

  test('a size is found again however it was asked for before', () => {
    const desk = new Desk({ ...CHART, F1: '=SIZE.MEASURE($A$1:$D$3,"bust",10)', F2: '=SIZE.MEASURE($A$1:$D$3,"bust","size 10")', F3: '=SIZE.MEASURE($A$1:$D$3,"bust","x")', F4: '=SIZE.MEASURE($A$1:$D$3,"bust","x")', F5: '=SIZE.MEASURE($A$1:$D$3,"bust",11)' });
    expect([desk.show('F1'), desk.show('F2'), desk.show('F5')]).toEqual(['84 cm', '84 cm', '86 cm']);
    expect(desk.show('F3')).toMatch(/^! The size chart has no size x/);
    expect(desk.show('F4')).toBe(desk.show('F3'));
  });
});

test('a formula that uses a cell by itself and in a block is joined with it once', () => {
  const many = Object.fromEntries(Array.from({ length: 100 }, (_, i) => [`C${i + 1}`, `=A1+SUM(A1:A3)+A1*$A$1`]));
  const desk = new Desk({ A1: '1', A2: '2', A3: '3', ...many, D1: '=A1' });
  expect([desk.show('C1'), desk.show('C100')]).toEqual(['8', '8']);
  desk.type({ ...Object.fromEntries(Object.keys(many).map((cell) => [cell, '5'])), A1: '2' });
  expect([desk.show('C1'), desk.show('C100'), desk.show('D1')]).toEqual(['5', '5', '2']);
  expect(desk.engine.dependents([desk.cell('A1')])).toEqual([desk.cell('D1')]);
});
