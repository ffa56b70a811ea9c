import { describe, expect, test } from 'vitest';
import { EditRefused, apply, hiddenColumns, hiddenRows, labelOf, readBook, rowShows, sheetFromTemplate, templateFrom, writeBook } from '../../../src/workbook/index.ts';
import type { Book, Edit, Filter } from '../../../src/workbook/index.ts';
import { bookOf } from './help.ts';

const BOOK = bookOf([['Waist', '74 cm'], ['Hip', '98 cm'], ['Bust', '91 cm'], ['Back', '41 cm'], ['Knee', '58 cm']]);
const FILTER: Filter = { area: { top: 1, left: 0, bottom: 4, right: 1 }, conditions: [{ col: 1, test: 'more', text: '60 cm' }], hides: [[3, 4]] };

function after(book: Book, ...edits: Edit[]): Book {
  return edits.reduce((now, edit) => {
    const applied = apply(edit, now);
    expect(apply(applied.inverse, applied.book).book).toStrictEqual(now);
    return applied.book;
  }, book);
}
const fit = (book: Book) => book.sheets[0]!;

describe('hidden rows and columns', () => {
  test('are on the sheet, and told in the label', () => {
    const edit: Edit = { do: 'setHidden', sheet: 1, axis: 'rows', runs: [[3, 3], [1, 2]] };
    expect(labelOf(edit, BOOK)).toBe('hide 3 rows of Fit');
    const book = after(BOOK, edit);
    expect(hiddenRows(fit(book))).toEqual([[1, 3]]);
    expect([0, 1, 3, 4].map((row) => rowShows(fit(book), row))).toEqual([true, false, false, true]);
    const back: Edit = { do: 'setHidden', sheet: 1, axis: 'rows', runs: [] };
    expect(labelOf(back, book)).toBe('show 3 rows of Fit');
    expect(after(book, back)).toStrictEqual(BOOK);
  });

  test('move with the rows that come and go; what comes between shows', () => {
    const book = after(BOOK, { do: 'setHidden', sheet: 1, axis: 'rows', runs: [[1, 3]] });
    expect(hiddenRows(fit(after(book, { do: 'insertRows', sheet: 1, at: 2, count: 2 })))).toEqual([[1, 1], [4, 5]]);
    expect(hiddenRows(fit(after(book, { do: 'removeRows', sheet: 1, at: 0, count: 2 })))).toEqual([[0, 1]]);
    expect(hiddenRows(fit(after(book, { do: 'moveRows', sheet: 1, at: 4, count: 1, to: 0 })))).toEqual([[2, 4]]);
    expect(hiddenColumns(fit(after(BOOK, { do: 'setHidden', sheet: 1, axis: 'columns', runs: [[1, 1]] }, { do: 'insertColumns', sheet: 1, at: 0, count: 1 })))).toEqual([[2, 2]]);
  });

  test('all of them at once are refused', () => {
    expect(() => apply({ do: 'setHidden', sheet: 1, axis: 'columns', runs: [[0, 999]] }, BOOK)).toThrow('Not all columns of Fit can be hidden');
  });
});

describe('rows and columns kept in view', () => {
  test('grow and shrink with what comes and goes among them', () => {
    const book = after(BOOK, { do: 'setFrozen', sheet: 1, rows: 2, columns: 1 });
    expect(fit(book).frozen).toEqual({ rows: 2, columns: 1 });
    expect(fit(after(book, { do: 'insertRows', sheet: 1, at: 1, count: 1 })).frozen).toEqual({ rows: 3, columns: 1 });
    expect(fit(after(book, { do: 'insertRows', sheet: 1, at: 2, count: 1 })).frozen).toEqual({ rows: 2, columns: 1 });
    expect(fit(after(book, { do: 'removeRows', sheet: 1, at: 0, count: 4 })).frozen).toEqual({ rows: 0, columns: 1 });
    expect(fit(after(book, { do: 'setFrozen', sheet: 1, rows: 0, columns: 0 }))).not.toHaveProperty('frozen');
  });

  test('are no more than leave room for the rest', () => {
    expect(() => apply({ do: 'setFrozen', sheet: 1, rows: 41, columns: 0 }, BOOK)).toThrow(EditRefused);
    const book = after(BOOK, { do: 'setFrozen', sheet: 1, rows: 40, columns: 0 });
    expect(fit(after(book, { do: 'insertRows', sheet: 1, at: 0, count: 3 })).frozen).toEqual({ rows: 40, columns: 0 });
  });

  test.each([
    [2, 1, 'keep 2 rows and 1 column of Fit in view'], [1, 0, 'keep 1 row of Fit in view'], [0, 0, 'let all of Fit scroll'],
  ])('%d and %d: %s', (rows, columns, label) => {
    expect(labelOf({ do: 'setFrozen', sheet: 1, rows, columns }, BOOK)).toBe(label);
  });
});

describe('a filter', () => {
  const book = after(BOOK, { do: 'setFilter', sheet: 1, filter: FILTER });

  test('hides its rows beside those hidden by hand', () => {
    expect(hiddenRows(fit(book))).toEqual([[3, 4]]);
    expect(hiddenRows(fit(after(book, { do: 'setHidden', sheet: 1, axis: 'rows', runs: [[1, 1]] })))).toEqual([[1, 1], [3, 4]]);
  });

  test('moves with its block, and goes when all of it is removed', () => {
    const down = fit(after(book, { do: 'insertRows', sheet: 1, at: 0, count: 1 })).filter!;
    expect(down).toEqual({ ...FILTER, area: { ...FILTER.area, top: 2, bottom: 5 }, hides: [[4, 5]] });
    expect(fit(after(book, { do: 'insertColumns', sheet: 1, at: 1, count: 1 })).filter!.conditions).toEqual([{ col: 2, test: 'more', text: '60 cm' }]);
    expect(fit(after(book, { do: 'removeColumns', sheet: 1, at: 1, count: 1 })).filter!.conditions).toEqual([]);
    expect(fit(after(book, { do: 'removeRows', sheet: 1, at: 1, count: 4 }))).not.toHaveProperty('filter');
    expect(fit(after(book, { do: 'moveRows', sheet: 1, at: 4, count: 1, to: 1 })).filter!.hides).toEqual([[1, 1], [4, 4]]);
  });

  test('is taken off again', () => {
    expect(after(book, { do: 'setFilter', sheet: 1, filter: null })).toStrictEqual(BOOK);
  });
});

test('a removed sheet comes back with all that was set on it', () => {
  const book = after(BOOK, { do: 'setFrozen', sheet: 1, rows: 1, columns: 0 }, { do: 'setFilter', sheet: 1, filter: FILTER }, { do: 'setHidden', sheet: 1, axis: 'columns', runs: [[3, 4]] });
  after(book, { do: 'removeSheet', sheet: 1 });
});

describe('in files', () => {
  const book = after(BOOK, { do: 'setFrozen', sheet: 1, rows: 1, columns: 1 }, { do: 'setFilter', sheet: 1, filter: FILTER }, { do: 'setHidden', sheet: 1, axis: 'columns', runs: [[3, 4]] });

  test('all of it is read back; a file without any of it is one in which all shows', () => {
    expect(readBook(JSON.parse(JSON.stringify(writeBook(book))))).toEqual({ book, problems: [] });
    expect(writeBook(BOOK).sheets[0]).not.toHaveProperty('frozen');
    expect(readBook(writeBook(BOOK)).book).toStrictEqual(BOOK);
  });

  test('what is damaged is left out, with a sentence, and the cells stay', () => {
    const file = JSON.parse(JSON.stringify(writeBook(book))) as { sheets: Record<string, unknown>[] };
    Object.assign(file.sheets[0]!, { hidden: { rows: [[5, 2]], columns: [] }, frozen: { rows: 9999, columns: 0 }, filter: { area: 'all' } });
    const { book: read, problems } = readBook(file);
    expect(read!.sheets[0]).toStrictEqual(BOOK.sheets[0]);
    expect(problems).toEqual([
      'Sheet Fit: which rows and columns are hidden could not be read; all of it shows.',
      'Sheet Fit: which rows and columns stay in view could not be read; all of it shows.',
      'Sheet Fit: which rows are to match could not be read; all of it shows.',
    ]);
  });

  test('a template keeps what is hidden and what stays in view, and no filter', () => {
    const template = templateFrom(book, 1, 'Measures', '');
    const { edit, sheet } = sheetFromTemplate(template, BOOK);
    const made = after(BOOK, edit).sheets.find(({ id }) => id === sheet)!;
    expect(made.frozen).toEqual({ rows: 1, columns: 1 });
    expect(made.hidden).toEqual({ rows: [], columns: [[3, 4]] });
    expect(made).not.toHaveProperty('filter');
  });
});
