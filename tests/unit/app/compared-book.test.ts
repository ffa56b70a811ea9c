/** The same inputs in another workbook. */
import { expect, test } from 'vitest';
import { inputsThatDiffer, typedThere } from '../../../src/app/compared-book.ts';
import { apply, emptyBook, type Book, type Edit } from '../../../src/workbook/index.ts';
import { cellName } from '../../../src/formula/index.ts';

const cells = (rows: readonly (readonly string[])[], heading = 0): Edit => ({
  do: 'setCells', sheet: 1,
  cells: rows.flatMap((texts, row) => texts.map((raw, col) => ({ row, col, cell: raw === '' ? null : { raw, ...(col > 0 && row > heading && { input: true as const }), ...(row === heading && { look: { heading: true as const } }) } }))),
});
function book(rows: readonly (readonly string[])[], ...more: Edit[]): Book {
  return [{ do: 'renameSheet', sheet: 1, name: 'Fit' } satisfies Edit, cells(rows), ...more].reduce((made, edit) => apply(edit, made).book, emptyBook('a'));
}
const at = (row: number, col = 1) => ({ sheet: 1, row, col });

const THIS = book([['Fit', 'Bust', 'Waist'], ['Body', '94 cm', '77 cm'], ['Ease', '6 cm', '2 cm'], ['Room', '=B2+B3', '']]);

test('goes by the words beside and above, though rows were added', () => {
  const other = book([['Fit', 'Bust', 'Waist'], ['Taken by', 'me', ''], ['Body', '92 cm', '=B3-10 cm'], ['Ease', '6 cm', '3 cm']]);
  expect([typedThere(THIS, other, at(1)), typedThere(THIS, other, at(2)), typedThere(THIS, other, at(2, 2))]).toEqual(['92 cm', '6 cm', '3 cm']);
  expect(typedThere(THIS, other, at(1, 2)), 'what is worked out there has no typed figure').toBeNull();
  expect(typedThere(THIS, other, at(3)), 'no such row').toBeNull();
  expect(inputsThatDiffer(THIS, other).map(({ row, col }) => cellName(row, col))).toEqual(['B2', 'C3']);
});

test('of rows with the same words takes the first for the first, and none for one that was added', () => {
  const needs = (...rows: readonly (readonly string[])[]): Book => book([['What is needed', 'For', 'Needed'], ...rows]);
  const other = needs(['Main cloth', 'skirt', '1.2 m'], ['Main cloth', 'bodice', '0.8 m']);
  const here = needs(['Main cloth', 'skirt', '1.4 m'], ['Buttons', 'front', '9'], ['Main cloth', 'bodice', '0.9 m'], ['Main cloth', 'longer skirt', '3 in']);
  expect([1, 3, 4].map((row) => typedThere(here, other, at(row)))).toEqual(['skirt', 'bodice', null]);
});

test('goes by the name where there is one, wherever it stands', () => {
  const name = (row: number): Edit => ({ do: 'setName', name: 'ease wanted', target: { area: { sheet: 1, top: row, bottom: row, left: 1, right: 1 }, kind: 'cells' } });
  const other = book([['Fit', 'Bust'], ['Something else', '1 cm'], ['And this', '9 cm']], name(2), { do: 'renameSheet', sheet: 1, name: 'Another' });
  const named = apply(name(2), THIS).book;
  expect([typedThere(named, other, at(2)), typedThere(THIS, other, at(2))]).toEqual(['9 cm', null]);
  expect(inputsThatDiffer(named, other)).toEqual([at(2)]);
});

test('a sheet that is not there has none', () => expect(inputsThatDiffer(THIS, emptyBook('b'))).toEqual([]));
