/** Which names an edit would take the cells from, and how many formulas use them. */
import { describe, expect, test } from 'vitest';
import { apply, emptyBook, emptySheet, namesLost, sheetFromTemplate, type Book, type Edit } from '../../../src/workbook/index.ts';
import { shippedTemplate } from '../../../src/app/shipped.ts';

const perform = (book: Book, ...edits: Edit[]): Book => edits.reduce((each, edit) => apply(edit, each).book, book);
const cell = (row: number, col: number, raw: string) => ({ row, col, cell: { raw } });

const book = perform(emptyBook('x'),
  { do: 'addSheet', sheet: emptySheet(2, 'Fit'), at: 1 },
  { do: 'setName', name: 'full bust', target: { kind: 'cells', area: { sheet: 1, top: 1, left: 1, bottom: 1, right: 1 } } },
  { do: 'setName', name: 'bust', target: { kind: 'cells', area: { sheet: 1, top: 2, left: 1, bottom: 2, right: 1 } } },
  { do: 'setName', name: 'chart', target: { kind: 'chart', area: { sheet: 1, top: 4, left: 0, bottom: 9, right: 3 } } },
  { do: 'setCells', sheet: 1, cells: [cell(1, 1, '94 cm'), cell(2, 1, '90 cm'), cell(1, 5, '=full bust')] },
  { do: 'setCells', sheet: 2, cells: [cell(0, 0, '=Full  Bust*2+bust'), cell(1, 0, '=bust'), cell(2, 0, '="full bust"'), cell(3, 0, 'bust')] });

const lost = (edit: Edit) => namesLost(edit, book).map(({ name, uses }) => `${name} ${uses}`);

describe('names that lose their cells', () => {
  test.each<[string, Edit, string[]]>([
    ['rows, and the formulas in them do not count', { do: 'removeRows', sheet: 1, at: 1, count: 1 }, ['full bust 1']],
    ['several rows', { do: 'removeRows', sheet: 1, at: 0, count: 3 }, ['bust 2', 'full bust 1']],
    ['a part of a block is not all of it', { do: 'removeRows', sheet: 1, at: 4, count: 3 }, []],
    ['a whole block that nothing uses', { do: 'removeRows', sheet: 1, at: 4, count: 6 }, ['chart 0']],
    ['columns', { do: 'removeColumns', sheet: 1, at: 1, count: 1 }, ['bust 2', 'full bust 2']],
    ['a sheet', { do: 'removeSheet', sheet: 1 }, ['bust 2', 'chart 0', 'full bust 1']],
    ['another sheet', { do: 'removeSheet', sheet: 2 }, []],
    ['a block in two steps', { do: 'many', label: '', edits: [{ do: 'removeRows', sheet: 1, at: 7, count: 3 }, { do: 'removeRows', sheet: 1, at: 4, count: 3 }] }, ['chart 0']],
    ['a name itself', { do: 'setName', name: 'BUST', target: null }, ['bust 2']],
    ['a name that nothing uses', { do: 'setName', name: 'chart', target: null }, []],
    ['an edit that is refused says so itself', { do: 'removeSheet', sheet: 9 }, []],
    ['an edit that removes nothing', { do: 'setCells', sheet: 1, cells: [cell(1, 1, '')] }, []],
  ])('%s', (_, edit, expected) => expect(lost(edit)).toEqual(expected));
});

describe('a template that needs a name', () => {
  test('says that it is missing, and also that its cells were removed', () => {
    const template = shippedTemplate('fit');
    expect(sheetFromTemplate(template, emptyBook('y')).problems).toEqual([expect.stringContaining('uses chart, which this workbook does not have')]);
    expect(sheetFromTemplate(template, book).problems).toEqual([]);
    const without = perform(book, { do: 'removeRows', sheet: 1, at: 4, count: 6 });
    expect(sheetFromTemplate(template, without).problems).toEqual([expect.stringContaining('uses the name chart, whose cells were removed')]);
  });
});
