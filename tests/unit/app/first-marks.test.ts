import { expect, test } from 'vitest';
import { demoBook } from '../../../src/app/demo.ts';
import { marksToTry } from '../../../src/app/first-marks.ts';
import { apply, cellAt, emptyBook, recordsOf, sheetNamed, type Book, type Edit } from '../../../src/workbook/index.ts';

const said = (book: Book) => marksToTry(book).map(({ say }) => say);
const demo = demoBook('demo');
const typed = (name: string, row: number, col: number, raw: string): Edit => ({ do: 'setCells', sheet: sheetNamed(demo, name)!.id, cells: [{ row, col, cell: { raw } }] });

test('the demo garment says three things to try, each at a filled cell that may be changed', () => {
  expect(said(demo)).toEqual(['Change the waist', 'Choose another size', 'Lay the pieces']);
  for (const { area, lays } of marksToTry(demo)) {
    if (!lays) expect(cellAt(demo.sheets.find(({ id }) => id === area!.sheet)!, area!.top, area!.left)?.input).toBe(true);
  }
});

test('each goes when it was done, and is back when that is undone', () => {
  const changed = apply(typed('Measures', 5, 1, '80 cm'), demo);
  expect(said(changed.book)).toEqual(['Choose another size', 'Lay the pieces']);
  expect(said(apply(changed.inverse, changed.book).book)).toEqual(said(demo));
  expect(said(apply(typed('Fit', 9, 1, '18'), changed.book).book)).toEqual(['Lay the pieces']);
});

test('they follow their cells, and go with them', () => {
  const moved = apply({ do: 'insertRows', sheet: sheetNamed(demo, 'Measures')!.id, at: 0, count: 2 }, demo).book;
  expect(marksToTry(moved)[0]).toMatchObject({ say: 'Change the waist', area: { top: 7 } });
  const gone = apply({ do: 'removeSheet', sheet: sheetNamed(demo, 'Fit')!.id }, demo).book;
  expect(said(gone)).toEqual(['Change the waist', 'Lay the pieces']);
});

test('a workbook of her own has none', () => {
  expect(said(emptyBook('x'))).toEqual([]);
  expect(recordsOf(demo, 'mark')).toHaveLength(3);
});
