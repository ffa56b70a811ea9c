import { beforeEach, afterEach, describe, expect, test, vi } from 'vitest';
import { Shelf, daysLeft, putBack } from '../../../src/keeping/index.ts';
import { pictureOf } from '../../../src/keeping/shelf-picture.ts';
import { EditRefused, bookText, emptyBook, type Book } from '../../../src/workbook/index.ts';
import { bookOf, textsOf } from '../workbook/help.ts';
import { Hand, failing, stores, tab, tamper, typed } from './help.ts';

const DAY = 86_400_000;
const START = Date.UTC(2026, 2, 1, 12);

beforeEach(() => { vi.useFakeTimers({ toFake: ['Date'], now: START }); });
afterEach(() => { vi.useRealTimers(); });

const titled = (id: string, title: string, person = 'Mara'): Book => ({ ...bookOf([['Waist', '74 cm']]), id, title, person });

/** A tab that has worked on a workbook. */
async function worked(id: string, title: string) {
  const { keeper, database } = tab();
  const hand = new Hand(keeper, titled(id, title));
  await keeper.begin(hand.book);
  await hand.do(typed(5, `${title} typed`));
  return { keeper, hand, shelf: new Shelf(database) };
}

describe('the shelf', () => {
  test('shows title, person, last change, and the first rows', async () => {
    const { shelf } = await worked('a', 'Skirt');
    expect(await shelf.list()).toEqual([{
      id: 'a', title: 'Skirt', person: 'Mara', changedAt: new Date(START).toISOString(), savedAt: null, putAway: false, binnedAt: null,
      picture: [['Waist', '74 cm', ''], ['Skirt typed', '', '']],
    }]);
  });

  test('a damaged card is shown as far as it can be read', async () => {
    const { shelf } = await worked('a', 'Skirt');
    await tamper('shelf', { id: 'b', title: 7, changedAt: null, picture: 'none', binnedAt: {}, seq: 'x' });
    expect(await shelf.list()).toEqual([expect.objectContaining({ id: 'a' }), {
      id: 'b', title: '', person: '', changedAt: '', savedAt: null, putAway: false, binnedAt: null, picture: [],
    }]);
  });

  test('adding never takes another one’s place', async () => {
    const { shelf, hand } = await worked('a', 'Skirt');
    const id = await shelf.add({ ...hand.book, title: 'From a file' });
    expect(id).not.toBe('a');
    expect((await tab().keeper.load('a'))!.book).toEqual(hand.book);
    expect(await tab().keeper.load(id)).toEqual({ book: { ...hand.book, id, title: 'From a file' }, problems: [] });
  });

  test('copying takes the last edit along and leaves the first alone', async () => {
    const { shelf, hand } = await worked('a', 'Skirt');
    const { id, problems } = await shelf.copy('a');
    expect(problems).toEqual([]);
    expect((await tab().keeper.load(id))!.book).toEqual({ ...hand.book, id, title: 'Skirt (copy)' });
    expect((await tab().keeper.load('a'))!.book).toEqual(hand.book);
    expect((await shelf.list()).map(({ title }) => title)).toContain('Skirt (copy)');
    const third = await shelf.copy(id);
    expect((await tab().keeper.load(third.id))!.book.title).toBe('Skirt (copy 2)');
    await expect(shelf.copy('none')).rejects.toMatchObject({ why: 'gone' });
  });

  test('renaming is an edit like any other: it can be undone, and the keeper goes on from it', async () => {
    const { shelf, hand, keeper } = await worked('a', 'Skirt');
    await keeper.close();
    await shelf.rename('a', 'Sunday skirt', 'Ines');
    const next = tab().keeper;
    const loaded = (await next.load('a'))!;
    expect(loaded).toEqual({ book: { ...hand.book, title: 'Sunday skirt', person: 'Ines' }, problems: [] });
    await new Hand(next, loaded.book).do(typed(6, 'more'));
    expect(next.state.state).toBe('kept');
    expect((await shelf.list())[0]).toMatchObject({ title: 'Sunday skirt', person: 'Ines' });
    await expect(shelf.rename('a', 'x'.repeat(201), '')).rejects.toBeInstanceOf(EditRefused);
    await expect(shelf.rename('none', 'x', '')).rejects.toMatchObject({ why: 'gone' });
  });

  test('put away and taken out again; marks stay when it is worked on', async () => {
    const { shelf, hand } = await worked('a', 'Skirt');
    await shelf.putAway('a');
    await shelf.savedAsFile('a');
    await hand.do(typed(7, 'more'));
    expect(await shelf.list()).toEqual([expect.objectContaining({ putAway: true, savedAt: new Date(START).toISOString() })]);
    await shelf.takeOut('a');
    expect((await shelf.list())[0]!.putAway).toBe(false);
    // One that has no card yet is not an error.
    await shelf.opened('none');
    await shelf.savedAsFile('none');
  });

  test('the workbook used last opens, which may be one that was only looked at', async () => {
    const { shelf } = await worked('a', 'First');
    vi.setSystemTime(START + 1000);
    await worked('b', 'Second');
    expect((await tab().keeper.load())!.book.id).toBe('b');
    vi.setSystemTime(START + 2000);
    await shelf.opened('a');
    expect((await tab().keeper.load())!.book.id).toBe('a');
    await shelf.throwAway('a');
    expect((await tab().keeper.load())!.book.id).toBe('b');
    await shelf.throwAway('b');
    expect(await tab().keeper.load()).toBeNull();
  });
});

describe('the bin', () => {
  test('keeps for 30 days, to the hour, and then all of it goes', async () => {
    const { shelf, hand, keeper } = await worked('a', 'Skirt');
    await worked('b', 'Other');
    await keeper.close();
    await tamper('aside', { book: 'a', at: '', problems: [], json: 'x', entries: [] });
    await shelf.throwAway('a');
    const { binnedAt } = (await shelf.list()).find(({ id }) => id === 'a')!;
    expect(daysLeft(binnedAt!, new Date(START))).toBe(30);
    for (const [passed, left] of [[0, 30], [29.9, 1], [-400, 30]] as const) {
      const now = new Date(START + passed * DAY);
      await shelf.emptyBin(now);
      expect((await shelf.list()).map(({ id }) => id).sort()).toEqual(['a', 'b']);
      expect(daysLeft(binnedAt!, now)).toBe(left);
    }
    await shelf.takeBack('a');
    await shelf.emptyBin(new Date(START + 31 * DAY));
    expect((await tab().keeper.load('a'))!.book).toEqual(hand.book);
    await shelf.throwAway('a');
    await shelf.emptyBin(new Date(START + 30 * DAY));
    const left = await stores();
    expect([left.books, left.shelf, left.journal].map((store) => [...new Set((store as { id?: string; book?: string }[]).map((each) => each.id ?? each.book))])).toEqual([['b'], ['b'], ['b']]);
    expect(left.aside).toEqual([]);
  });

  test('only what lies in it can be removed for good', async () => {
    const { shelf } = await worked('a', 'Skirt');
    await shelf.remove('a');
    expect(await shelf.list()).toHaveLength(1);
    await shelf.throwAway('a');
    await shelf.remove('a');
    expect(await shelf.list()).toEqual([]);
  });

  test('a date that cannot be read never empties it', async () => {
    const { shelf } = await worked('a', 'Skirt');
    const { shelf: [card] } = await stores();
    await tamper('shelf', { ...card, binnedAt: 'long ago' });
    await shelf.emptyBin(new Date(START + 99 * DAY));
    expect(await shelf.list()).toHaveLength(1);
  });

  test('an edit in another tab takes it out: what is worked on is not thrown away', async () => {
    const { shelf, hand } = await worked('a', 'Skirt');
    await shelf.throwAway('a');
    await hand.do(typed(7, 'more'));
    expect((await shelf.list())[0]!.binnedAt).toBeNull();
  });
});

test('a full device changes nothing, and says so', async () => {
  const { shelf, hand } = await worked('a', 'Skirt');
  const before = await stores();
  const calls: [method: 'put' | 'add', call: () => Promise<unknown>][] = [
    ['add', () => shelf.add(hand.book)], ['add', () => shelf.copy('a')], ['add', () => shelf.rename('a', 'x', '')],
    ['put', () => shelf.rename('a', 'x', '')], ['put', () => shelf.putAway('a')], ['put', () => shelf.throwAway('a')],
  ];
  for (const [method, call] of calls) {
    const full = failing(method, 'QuotaExceededError');
    await expect(call()).rejects.toMatchObject({ why: 'full' });
    full.mend();
    expect(await stores()).toEqual(before);
  }
});

test('the picture is short, of the first sheet with something in it', () => {
  const long = bookOf([], Array.from({ length: 50 }, (_, row) => (row === 1 ? [] : [`row ${row} ${'x'.repeat(99)}`, 'b', 'c', 'd'])));
  const picture = pictureOf(long);
  expect(picture.map((line) => line.length)).toEqual([3, 3, 3, 3, 3, 3]);
  expect(picture.map(([first]) => first!.slice(0, 6))).toEqual(['row 0 ', 'row 2 ', 'row 3 ', 'row 4 ', 'row 5 ', 'row 6 ']);
  expect(picture.flat().every((text) => text.length <= 28)).toBe(true);
  expect(pictureOf(emptyBook('a'))).toEqual([]);
});

describe('what was set aside comes back as a workbook of its own', () => {
  const entry = (seq: number, edit: unknown) => ({ book: 'a', seq, at: '', edit });

  test('the damaged copy as far as it can be read, with the changes that can be made', () => {
    const json = bookText(titled('a', 'Skirt')).slice(0, -60);
    const { book, made, problems } = putBack({ json, entries: [entry(2, typed(3, 'two')), entry(3, 'nonsense'), entry(4, typed(4, 'four')), entry(5, typed(0, 'x', 77))] }, emptyBook('open'));
    expect(made).toBe(2);
    expect(textsOf(book!, 1)).toEqual([['Waist', '74 cm'], [], [], ['two'], ['four']]);
    expect(problems.at(-2)).toBe('Change 3 could not be made again: it cannot be read.');
    expect(problems.at(-1)).toMatch(/^Change 5 could not be made again: .*sheet/);
  });

  test('changes alone go on top of what is open', () => {
    const open = titled('a', 'Skirt');
    const { book, made } = putBack({ json: null, entries: [entry(2, typed(3, 'two'))] }, open);
    expect([made, textsOf(book!, 1)]).toEqual([1, [['Waist', '74 cm'], [], [], ['two']]]);
    expect(textsOf(open, 1)).toEqual([['Waist', '74 cm']]);
  });

  test('when nothing can be used, it says so', () => {
    expect(putBack({ json: '{{{', entries: [] }, emptyBook('open'))).toMatchObject({ book: null, made: 0, problems: [expect.stringMatching(/not a workbook file/)] });
  });

  test('it can be thrown away', async () => {
    const { keeper } = await worked('a', 'Skirt');
    await tamper('aside', { book: 'a', at: '', problems: ['damaged'], json: 'x', entries: [] });
    const [found] = await keeper.aside();
    await keeper.forgetAside(found!.key!);
    expect(await keeper.aside()).toEqual([]);
  });
});
