/** Measures in a sheet: put as one edit, followed by a newer set, and never over what she typed. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { NOBODY, putEdit, putRows, standing, useEdit, workedFrom } from '../../../src/people/index.ts';
import { EditRefused, apply, nameCalled, recordCalled, type Book, type Edit, type MeasureSet, type Person } from '../../../src/workbook/index.ts';
import { demoBook } from '../../../src/app/demo.ts';
import { area, bookOf, textsOf } from '../workbook/help.ts';

const set = (id: string, day: string, waist: string, hip: string): MeasureSet => ({ id, day, by: '', remark: '', measures: [{ of: 'waist', raw: waist }, { of: 'hip', raw: hip }] });
const MARA: Person = { ...NOBODY, name: 'Mara', sets: [set('a', '2025-10-04', '74 cm', '98 cm')] };
const keep = (data: Person): Edit => ({ do: 'setRecord', kind: 'person', id: 'p', data });
const withMara = (book: Book, data = MARA): Book => apply(keep(data), book).book;
const START = withMara(bookOf([['Fit']]));
const WISH = { at: { sheet: 2, row: 1, col: 0 }, of: ['waist', 'hip', 'bust'], names: true };
const mara = (book: Book): Person => recordCalled(book, 'person', 'p')!;
const newer = (book: Book): Book => apply(keep({ ...mara(book), sets: [...mara(book).sets, set('b', '2026-11-03', '76 cm', '98 cm')] }), book).book;

describe('putting', () => {
  const { book, inverse } = apply(putEdit(START, 'p', WISH), START);

  test('labels, input cells beside them, names, and where each went', () => {
    expect(textsOf(book, 2)).toEqual([[], ['Measures of Mara', ''], ['Waist', '74 cm'], ['Hip', '98 cm']]);
    expect(book.sheets[1]!.rows[2]![1]).toEqual({ raw: '74 cm', input: true });
    expect(nameCalled(book, 'waist')!.area).toEqual(area(2, 2, 1));
    expect(mara(book).put).toEqual([{ of: 'waist', cell: '=Skirt!B3', raw: '74 cm' }, { of: 'hip', cell: '=Skirt!B4', raw: '98 cm' }]);
    expect(apply(inverse, book).book).toEqual(START);
  });

  test('a name that is taken is left to its cell', () => {
    const taken = withMara(bookOf([['70 cm']], [], [{ name: 'waist', area: area(1, 0, 0), kind: 'cells' }]));
    expect(putRows(taken, MARA, WISH).map(({ name }) => name)).toEqual([null, 'hip']);
    expect(nameCalled(apply(putEdit(taken, 'p', WISH), taken).book, 'waist')!.area).toEqual(area(1, 0, 0));
  });

  test.each([
    ['over something', { ...WISH, at: { sheet: 1, row: 0, col: 0 } }, /^A1 of Fit is not empty/],
    ['with nothing to put', { ...WISH, of: ['bust'] }, /^There are no measures of Mara/],
    ['past the end', { ...WISH, at: { sheet: 2, row: 999_999, col: 0 } }, /^There is no room/],
    ['on no sheet', { ...WISH, at: { sheet: 9, row: 0, col: 0 } }, /^That sheet is no longer/],
  ])('%s it is refused with a sentence', (_, wish, sentence) => {
    expect(() => putEdit(START, 'p', wish)).toThrow(EditRefused);
    expect(() => putEdit(START, 'p', wish)).toThrow(sentence);
  });
});

describe('a newer set', () => {
  const put = apply(putEdit(START, 'p', WISH), START).book;

  test('is used where the old figures stand, as one edit, wherever the cells have gone meanwhile', () => {
    const moved = apply({ do: 'insertRows', sheet: 2, at: 0, count: 3 }, apply({ do: 'renameSheet', sheet: 2, name: 'My skirt' }, newer(put)).book).book;
    expect(mara(moved).put[0]!.cell).toBe("='My skirt'!B6");
    const all = standing(moved, mara(moved));
    expect(all.map(({ of, state }) => [of, state])).toEqual([['waist', 'older'], ['hip', 'same']]);
    const used = apply(useEdit(moved, 'p', all.filter(({ state }) => state === 'older')), moved);
    expect(used.book.sheets[1]!.rows[5]![1]).toEqual({ raw: '76 cm', input: true });
    expect(standing(used.book, mara(used.book)).map(({ state }) => state)).toEqual(['same', 'same']);
    expect(apply(used.inverse, used.book).book).toEqual(moved);
  });

  test('what was typed over by hand is told apart, and what was removed is left alone', () => {
    const typed = apply({ do: 'setCells', sheet: 2, cells: [{ row: 2, col: 1, cell: { raw: '75 cm', input: true } }] }, newer(put)).book;
    expect(standing(typed, mara(typed))[0]).toMatchObject({ of: 'waist', now: '75 cm', state: 'by hand' });
    const gone = apply({ do: 'removeRows', sheet: 2, at: 2, count: 1 }, newer(put)).book;
    expect(standing(gone, mara(gone)).map(({ of }) => of)).toEqual(['hip']);
    expect(() => useEdit(gone, 'p', [])).toThrow(/^Tick at least one/);
  });

  test('a cell that holds a figure of an older set is as good as put there', () => {
    const old = withMara(bookOf([['74 cm']], [], [{ name: 'waist', area: area(1, 0, 0), kind: 'cells' }]), { ...MARA, sets: [...MARA.sets, set('b', '2026-11-03', '76 cm', '98 cm')] });
    expect(standing(old, mara(old))[0]).toMatchObject({ of: 'waist', now: '74 cm', state: 'older' });
  });

  test('a cell that only bears the name is offered, a formula under it is not', () => {
    const named = (raw: string) => withMara(bookOf([[raw]], [], [{ name: 'waist', area: area(1, 0, 0), kind: 'cells' }]));
    const offered = standing(named('70 cm'), MARA);
    expect(offered).toMatchObject([{ of: 'waist', now: '70 cm', state: 'named' }]);
    expect(standing(named('=2*35 cm'), MARA)).toEqual([]);
    expect(standing(named('74 cm'), MARA)[0]!.state).toBe('same');
    const used = apply(useEdit(named('70 cm'), 'p', offered), named('70 cm')).book;
    expect([textsOf(used, 1)[0], mara(used).put]).toEqual([['74 cm'], [{ of: 'waist', cell: '=Fit!A1', raw: '74 cm' }]]);
  });

  test('wherever they are put, using the newest changes those cells and no others', () => {
    fc.assert(fc.property(fc.nat(30), fc.nat(10), fc.subarray(['waist', 'hip'], { minLength: 1 }), (row, col, of) => {
      const there = newer(apply(putEdit(START, 'p', { ...WISH, of, at: { sheet: 2, row, col } }), START).book);
      const all = standing(there, mara(there)).filter(({ state }) => state === 'older');
      if (all.length === 0) return;
      const after = apply(useEdit(there, 'p', all), there).book;
      const changed = textsOf(after, 2).flatMap((line, r) => line.flatMap((raw, c) => (raw === textsOf(there, 2)[r]![c] ? [] : [[r, c, raw]])));
      expect(changed).toEqual([[row + 1, col + 1, '76 cm']]);
    }));
  });
});

test('what worked, read from a workbook of the templates', () => {
  const demo = demoBook('demo');
  const found = workedFrom(demo, (sheet, row, col) => sheet.rows[row]?.[col]?.raw ?? '');
  expect(found.sizes.map(({ level }) => level)).toEqual(['bust', 'waist', 'hip']);
  expect(found.ease).toHaveLength(3);
  expect(found.length).toBe('71 cm');
});
