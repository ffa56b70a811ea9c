import fc from 'fast-check';
import { expect, test } from 'vitest';
import { demoBook } from '../../../src/app/demo.ts';
import { EditRefused, apply, bookText, readBook, readBookText, writeBook } from '../../../src/workbook/index.ts';
import { bookOf } from '../workbook/help.ts';
import { TIME, damage, damaged, fuzz } from './cases.ts';

const small = apply({ do: 'many', label: '', edits: [
  { do: 'setFrozen', sheet: 1, rows: 1, columns: 1 }, { do: 'setHidden', sheet: 2, axis: 'rows', runs: [[2, 4]] }, { do: 'setWidth', sheet: 1, col: 2, width: 90 },
  { do: 'setFilter', sheet: 1, filter: { area: { top: 0, left: 0, bottom: 1, right: 1 }, conditions: [{ col: 0, test: 'has', text: 'Wai' }], hides: [[1, 1]] } },
  { do: 'setCells', sheet: 1, cells: [{ row: 0, col: 2, cell: { raw: '', note: 'a note', look: { unit: 'in', step: 16 }, input: true } }] },
] }, bookOf([['Waist', '74 cm'], ['=waist*2']], [['1/2 in']], [{ name: 'waist', area: { sheet: 1, top: 0, left: 1, bottom: 0, right: 1 }, kind: 'cells' }])).book;
const books = [small, demoBook('demo')] as const;
const texts = books.map(bookText);

const input = fc.oneof(
  { weight: 4, arbitrary: damage.map((changes) => ({ book: 0, text: JSON.stringify(damaged(writeBook(small), changes)) })) },
  { weight: 1, arbitrary: damage.map((changes) => ({ book: 1, text: JSON.stringify(damaged(writeBook(books[1]), changes)) })) },
  { weight: 4, arbitrary: fc.tuple(fc.nat(texts[0]!.length), fc.nat(30), fc.string({ maxLength: 5 })).map(([at, length, instead]) => ({ book: 0, text: texts[0]!.slice(0, at) + instead + texts[0]!.slice(at + length) })) },
  { weight: 1, arbitrary: fc.nat(texts[0]!.length).map((end) => ({ book: 0, text: texts[0]!.slice(0, end) })) },
  { weight: 1, arbitrary: fc.oneof(fc.json(), fc.string({ unit: 'binary' })).map((text) => ({ book: 0, text })) },
);

test('workbook files', () => {
  fuzz('workbook files', input, ({ book: which, text }) => {
    const { book, problems } = readBookText(text);
    if (!book) {
      expect(problems.length).toBeGreaterThan(0);
      return;
    }
    expect(readBook(writeBook(book)), 'what was read is whole').toStrictEqual({ book, problems: [] });
    // With a checksum, whatever differs is said.
    if (problems.length === 0 && text.includes('"checksum"')) expect(book).toStrictEqual(books[which]);
    try {
      apply({ do: 'insertRows', sheet: book.sheets[0]!.id, at: 0, count: 1 }, book);
    } catch (error) {
      if (!(error instanceof EditRefused)) throw error;
    }
  });
}, TIME);
