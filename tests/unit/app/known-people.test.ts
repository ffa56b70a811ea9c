/** Who is known on this device: the open workbook's people first, then those of the shelf; what is damaged or in the bin is passed over. */
import { expect, test } from 'vitest';
import { gathered, knownPeople } from '../../../src/app/known-people.ts';
import { dayInWords, today } from '../../../src/app/days.ts';
import { KeepingTrouble, type Shelf } from '../../../src/keeping/index.ts';
import { NOBODY, joined } from '../../../src/people/index.ts';
import { emptyBook, type Book, type MeasureSet, type Person } from '../../../src/workbook/index.ts';
import { demoBook } from '../../../src/app/demo.ts';

const set = (id: string, day: string, waist: string): MeasureSet => ({ id, day, by: '', remark: '', measures: [{ of: 'waist', raw: waist }] });
const withPerson = (id: string, title: string, person: Partial<Person>): Book => ({ ...emptyBook(id), title, records: [{ kind: 'person', id: 'p', data: { ...NOBODY, name: 'Mara', ...person } }] });
const card = (id: string, binnedAt: string | null = null) => ({ id, title: id, person: '', changedAt: '2026-11-01T10:00:00Z', savedAt: null, putAway: false, binnedAt, picture: [] });

const OPEN = withPerson('open', 'Coat', { sets: [set('a', '2025-10-04', '74 cm')] });
const books: Readonly<Record<string, Book>> = { open: OPEN, dress: withPerson('dress', 'Dress', { sets: [set('b', '2026-11-03', '76 cm')] }), demo: demoBook('demo'), thrown: withPerson('thrown', 'Thrown', { name: 'Nobody' }) };
const shelf = {
  list: async () => [card('open'), card('damaged'), card('dress'), card('demo'), card('thrown', '2026-11-20T10:00:00Z')],
  read: async (id: string) => {
    if (id === 'damaged') throw new KeepingTrouble('gone');
    return { book: books[id]!, problems: [] };
  },
} as unknown as Shelf;

test('everybody once a workbook, then joined by who they are', async () => {
  const known = await knownPeople(OPEN, shelf, '2026-11-25');
  expect(known.map(({ key, title, fromCells }) => [key, title, fromCells])).toEqual([['open p', 'Coat', false], ['dress p', 'Dress', false], ['demo cells of demo', 'Linden tea dress', true]]);
  const people = gathered(known, (here, there) => ({ ...here, person: joined(here.person, there.person).person }));
  expect(people.map(({ person }) => [person.name, person.sets.map(({ id }) => id)])).toEqual([['Mara', ['a', 'b']], ['Aunt Oda', ['cells of demo']]]);
});

test('without a shelf only the open workbook is asked', async () => {
  expect((await knownPeople(OPEN, null, '2026-11-25')).map(({ key }) => key)).toEqual(['open p']);
});

test('days in words; what is no day stays as it is', () => {
  expect([dayInWords('2026-11-03'), dayInWords('2026-11-03', 'short'), dayInWords('someday')]).toEqual(['3 November 2026', '3 Nov 2026', 'someday']);
  expect(today(new Date(2026, 0, 5, 23, 59))).toBe('2026-01-05');
});
