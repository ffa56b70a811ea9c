import { describe, expect, test } from 'vitest';
import { EditRefused, KINDS, apply, bookText, labelOf, readBook, readBookText, recordCalled, recordsOf, writeBook } from '../../../src/workbook/index.ts';
import type { Book, Edit } from '../../../src/workbook/index.ts';
import { readEdit } from '../../../src/keeping/read-edit.ts';
import { bookOf, frozen } from './help.ts';

const TICKET = { leftOut: ['=Fit!B4'], pictures: ['=Skirt!$A$2', '=SUM(Fit!A1:A9)'] };
const keep: Edit = { do: 'setRecord', kind: 'ticket', id: '1', data: TICKET };
const START = bookOf([['Waist', '74 cm']]);
const WITH = frozen(apply(keep, START).book);

const after = (edit: Edit, book: Book = WITH): Book => apply(edit, book).book;
const ticket = (book: Book) => recordCalled(book, 'ticket', '1');

test('comes, changes and goes, each undone exactly', () => {
  expect(recordsOf(WITH, 'ticket')).toEqual([{ kind: 'ticket', id: '1', data: TICKET }]);
  const applied = apply(keep, START);
  expect(apply(applied.inverse, applied.book).book).toStrictEqual(START);
  const change = apply({ ...keep, data: { ...TICKET, leftOut: [] } } as Edit, WITH);
  expect(ticket(change.book)?.leftOut).toEqual([]);
  expect(apply(change.inverse, change.book).book).toStrictEqual(WITH);
  const gone = apply({ do: 'setRecord', kind: 'ticket', id: '1', data: null }, WITH);
  expect('records' in gone.book).toBe(false);
  expect(apply(gone.inverse, gone.book).book).toStrictEqual(WITH);
  expect(apply(keep, WITH).book).toBe(WITH);
});

test('goes back to its place in the list', () => {
  const two = after({ ...keep, id: '2' } as Edit);
  const gone = apply({ do: 'setRecord', kind: 'ticket', id: '1', data: null }, two);
  expect(apply(gone.inverse, gone.book).book).toStrictEqual(two);
});

describe('what it points at is followed', () => {
  test.each<[string, Edit, readonly string[]]>([
    ['rows come', { do: 'insertRows', sheet: 1, at: 1, count: 2 }, ['=Fit!B6', '=Skirt!$A$2', '=SUM(Fit!A1:A11)']],
    ['rows come where nothing is typed', { do: 'insertRows', sheet: 2, at: 0, count: 1 }, ['=Fit!B4', '=Skirt!$A$3', '=SUM(Fit!A1:A9)']],
    ['columns go', { do: 'removeColumns', sheet: 1, at: 0, count: 1 }, ['=Fit!A4', '=Skirt!$A$2', '=SUM(#REF!)']],
    ['the sheet is called otherwise', { do: 'renameSheet', sheet: 1, name: 'My fit' }, ["='My fit'!B4", '=Skirt!$A$2', "=SUM('My fit'!A1:A9)"]],
    ['the sheet goes', { do: 'removeSheet', sheet: 2 }, ['=Fit!B4', '=#REF!', '=SUM(Fit!A1:A9)']],
    ['cells move', { do: 'moveCells', from: { sheet: 1, top: 3, left: 1, bottom: 3, right: 1 }, to: { sheet: 2, row: 7, col: 0 } }, ['=Skirt!A8', '=Skirt!$A$2', '=SUM(Fit!A1:A9)']],
    ['a sheet that it speaks of comes', { do: 'addSheet', sheet: { id: 3, name: 'Hem', rows: [], widths: {} }, at: 0 }, ['=Fit!B4', '=Skirt!$A$2', '=SUM(Fit!A1:A9)']],
  ])('%s', (_, edit, formulas) => {
    const applied = apply(edit, WITH);
    const { leftOut, pictures } = ticket(applied.book)!;
    expect([...leftOut, ...pictures]).toEqual(formulas);
    expect(apply(applied.inverse, applied.book).book).toStrictEqual(WITH);
  });

  test('inside a joined edit too', () => {
    const edit: Edit = { do: 'many', label: 'x', edits: [{ do: 'insertRows', sheet: 1, at: 0, count: 1 }, { do: 'renameSheet', sheet: 1, name: 'F' }] };
    const applied = apply(edit, WITH);
    expect(ticket(applied.book)!.leftOut).toEqual(['=F!B5']);
    expect(apply(applied.inverse, applied.book).book).toStrictEqual(WITH);
  });
});

test('in a file: read back equal, damaged ones left out and named', () => {
  expect(readBookText(bookText(WITH))).toStrictEqual({ book: WITH, problems: [] });
  const file = JSON.parse(JSON.stringify(writeBook(WITH))) as { records: unknown[] };
  file.records.push({ kind: 'ticket', id: '2', data: { leftOut: [7] } }, { kind: 'nothing of ours', id: '3', data: {} }, 5, { kind: 'ticket', id: '1', data: TICKET });
  const { book, problems } = readBook(file);
  expect(book).toStrictEqual(WITH);
  expect(problems).toEqual([
    'Entry 2 (the choice for the cutting ticket) of what the workbook keeps besides its cells could not be read and was left out.',
    'Entry 3 of what the workbook keeps besides its cells could not be read and was left out.',
    'Entry 4 of what the workbook keeps besides its cells could not be read and was left out.',
    'Entry 5 (the choice for the cutting ticket) of what the workbook keeps besides its cells could not be read and was left out.',
  ]);
});

test('out of the journal: only what its kind lets through', () => {
  expect(readEdit(JSON.parse(JSON.stringify(keep)))).toEqual(keep);
  expect(readEdit({ ...keep, at: 0, data: null })).toEqual({ ...keep, at: 0, data: null });
  expect(readEdit({ ...keep, kind: '__proto__' })).toBeNull();
  expect(readEdit({ ...keep, data: { leftOut: ['no formula'], pictures: [] } })).toBeNull();
  expect(readEdit({ ...keep, data: undefined })).toBeNull();
});

test('what cannot be kept is refused with a sentence', () => {
  expect(() => apply({ ...keep, data: { leftOut: ['B4'], pictures: [] } } as Edit, START)).toThrow(EditRefused);
});

test('each kind says what it is called', () => {
  expect(labelOf(keep, START)).toBe('keep the choice for the cutting ticket');
  expect(labelOf(keep, WITH)).toBe('change the choice for the cutting ticket');
  expect(labelOf({ do: 'setRecord', kind: 'ticket', id: '1', data: null }, WITH)).toBe('take away the choice for the cutting ticket');
  for (const { called } of Object.values(KINDS)) expect(called).toMatch(/^(an?|the) /);
});
