import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readEdit } from '../../../src/keeping/read-edit.ts';
import { EditRefused, apply, emptyBook, readBook, writeBook, type Book, type Edit } from '../../../src/workbook/index.ts';
import { bookOf, editFrom, seed } from '../workbook/help.ts';
import { Hand, stores, tab, tamper, typed } from './help.ts';

/** A workbook with three edits in its journal, not yet in the snapshot. */
async function stored(): Promise<Book> {
  const hand = new Hand(tab().keeper, bookOf([['Waist', '74 cm']]));
  await hand.keeper.begin(hand.book);
  await hand.do(typed(4, 'first'));
  await hand.do({ do: 'insertRows', sheet: 1, at: 0, count: 1 });
  await hand.do(typed(0, 'third'));
  return hand.book;
}

const textOf = (book: Book) => book.sheets.flatMap(({ rows }) => rows.flatMap((row) => row?.map((cell) => cell?.raw ?? '') ?? [])).filter(Boolean);

describe('a damaged snapshot', () => {
  test('that is cut off: what is in the journal is still put together, and all of it is set aside, not thrown away', async () => {
    await stored();
    const { books: [snapshot], journal } = await stores();
    await tamper('books', { ...snapshot, json: snapshot!.json.slice(0, 100) });
    const { keeper } = tab();
    const loaded = await keeper.load();
    expect(loaded!.problems[0]).toMatch(/could not be read/);
    expect(textOf(loaded!.book)).toEqual(['third', 'first']);
    // Looking alone changes nothing, but she can see already what will be set aside.
    expect(await keeper.aside()).toEqual([expect.objectContaining({ key: null, json: snapshot!.json.slice(0, 100), problems: loaded!.problems })]);
    expect((await stores()).journal).toEqual(journal);
    expect((await stores()).books[0]!.json).toBe(snapshot!.json.slice(0, 100));
    // The first edit after it does: the whole workbook takes its place, the damaged one is set aside.
    const hand = new Hand(keeper, loaded!.book);
    await hand.do(typed(9, 'after'));
    const { aside, journal: left } = await stores();
    expect(left).toEqual([]);
    expect(aside).toHaveLength(1);
    expect(aside[0]).toMatchObject({ json: snapshot!.json.slice(0, 100), problems: loaded!.problems });
    expect(await keeper.aside()).toEqual([{ ...aside[0], key: 1 }]);
    const again = await tab().keeper.load();
    expect(again!.problems).toEqual([]);
    expect(again!.book).toEqual(hand.book);
  });

  test('of which a part can be read', async () => {
    const book = await stored();
    const { books: [snapshot] } = await stores();
    const json = JSON.parse(snapshot!.json) as { sheets: { cells: unknown[] }[] };
    json.sheets[0]!.cells[1] = ['no cell'];
    await tamper('books', { ...snapshot, json: JSON.stringify(json) });
    const loaded = await tab().keeper.load();
    expect(loaded!.problems.length).toBeGreaterThanOrEqual(2);
    expect(textOf(loaded!.book)).toEqual(textOf(book).filter((text) => text !== '74 cm'));
  });

  test('that is missing', async () => {
    await stored();
    const { books: [snapshot] } = await stores();
    await tamper('books', { ...snapshot, id: 'another' });
    const database = await import('idb').then(({ openDB }) => openDB('tape-and-tally'));
    await database.delete('books', snapshot!.id);
    database.close();
    const loaded = await tab().keeper.load(snapshot!.id);
    expect(loaded!.problems[0]).toMatch(/missing/);
  });
});

describe('a damaged journal', () => {
  const change = async (seq: number, edit: unknown) => {
    const { journal } = await stores();
    await tamper('journal', { ...journal.find((entry) => entry.seq === seq), edit });
  };

  test.each([
    ['of a kind that is not known', { do: 'turnInsideOut', sheet: 1 }],
    ['without its parts', { do: 'setCells', sheet: 1 }],
    ['with a number for a text', { do: 'setCells', sheet: 1, cells: [{ row: 0, col: 0, cell: { raw: 5 } }] }],
    ['that is not even an object', 'typed 5'],
    ['that is nothing', null],
    ['named like a part of every object', { do: 'constructor' }],
  ])('an edit %s: it and what comes after are left out, listed and set aside', async (_, edit) => {
    const book = await stored();
    await change(3, edit);
    const { keeper } = tab();
    const loaded = await keeper.load();
    expect(loaded!.problems).toEqual([expect.stringMatching(/cannot be read. It and the 1 after it were set aside/)]);
    expect(textOf(loaded!.book)).toEqual(textOf(book).filter((text) => text !== 'third'));
    const hand = new Hand(keeper, loaded!.book);
    await hand.do(typed(9, 'after'));
    const [aside] = await keeper.aside();
    expect(aside!.entries.map(({ seq }) => seq)).toEqual([3, 4]);
    expect(aside!.entries[0]!.edit).toEqual(edit);
    const again = await tab().keeper.load();
    expect(again).toEqual({ book: hand.book, problems: [] });
  });

  test('an edit that cannot be made: the others are', async () => {
    const book = await stored();
    await change(2, typed(0, 'nowhere', 77));
    const { keeper } = tab();
    const loaded = await keeper.load();
    expect(loaded!.problems).toEqual([expect.stringMatching(/could not be made again and was set aside: .*sheet/)]);
    expect(textOf(loaded!.book)).toEqual(textOf(book).filter((text) => text !== 'first'));
    await new Hand(keeper, loaded!.book).do(typed(9, 'after'));
    expect((await keeper.aside())[0]!.entries.map(({ edit }) => edit)).toEqual([typed(0, 'nowhere', 77)]);
  });

  test('an edit is missing: what comes after may belong elsewhere and is set aside', async () => {
    await stored();
    const { openDB } = await import('idb');
    const database = await openDB('tape-and-tally');
    await database.delete('journal', ['test', 3]);
    database.close();
    const loaded = await tab().keeper.load();
    expect(loaded!.problems).toEqual([expect.stringMatching(/is missing/)]);
    expect(textOf(loaded!.book)).not.toContain('third');
  });

  test('the last edit is missing: it is said', async () => {
    await stored();
    const { openDB } = await import('idb');
    const database = await openDB('tape-and-tally');
    await database.delete('journal', ['test', 4]);
    database.close();
    const { keeper } = tab();
    const loaded = await keeper.load();
    expect(loaded!.problems).toEqual([expect.stringMatching(/missing from what was kept/)]);
    const hand = new Hand(keeper, loaded!.book);
    await hand.do(typed(9, 'after'));
    expect(await tab().keeper.load()).toEqual({ book: hand.book, problems: [] });
  });

  test('whatever stands in the storage: loading gives a workbook that can be kept, and no text of the journal goes under', async () => {
    const json = fc.oneof(fc.json(), fc.string(), fc.constant(JSON.stringify(writeBook(emptyBook('test')))));
    const scribble = fc.oneof(fc.jsonValue(), fc.record({ do: fc.constantFrom('setCells', 'many', 'addSheet', 'moveCells', 'setName'), sheet: fc.anything({ maxDepth: 1, withBigInt: false }), cells: fc.jsonValue(), edits: fc.jsonValue(), at: fc.integer() }));
    await fc.assert(fc.asyncProperty(json, fc.array(scribble, { maxLength: 4 }), async (text, edits) => {
      globalThis.indexedDB = new (await import('fake-indexeddb')).IDBFactory();
      await stored();
      const { books: [snapshot], journal } = await stores();
      await tamper('books', { ...snapshot, json: text });
      await tamper('journal', ...edits.map((edit, index) => ({ ...journal[0], seq: 2 + index, edit })));
      const { keeper } = tab();
      const loaded = (await keeper.load())!;
      expect(readBook(writeBook(loaded.book)).problems).toEqual([]);
      const hand = new Hand(keeper, loaded.book);
      await hand.do(typed(3, 'after'));
      expect((await tab().keeper.load())).toEqual({ book: hand.book, problems: [] });
      if (loaded.problems.length === 0) return;
      const [aside] = await keeper.aside();
      expect(aside!.json === text || aside!.entries.length > 0).toBe(true);
    }), { numRuns: 150 });
  });
});

test('every edit that can be made reads back from storage as what it was', () => {
  fc.assert(fc.property(fc.array(seed, { maxLength: 8 }), (seeds) => {
    let book = bookOf([['Waist', '74 cm'], ['=B1']], [['2 1/4 in']]);
    for (const each of seeds) {
      const edit: Edit = editFrom(each, book);
      try {
        const applied = apply(edit, book);
        for (const made of [edit, applied.inverse]) expect(readEdit(structuredClone(made))).not.toBeNull();
        expect(apply(readEdit(structuredClone(edit))!, book).book).toStrictEqual(applied.book);
        expect(apply(readEdit(structuredClone(applied.inverse))!, applied.book).book).toStrictEqual(book);
        book = applied.book;
      } catch (error) {
        if (!(error instanceof EditRefused)) throw error;
      }
    }
  }), { numRuns: 300 });
});

test('an edit nested deeper than anybody could make it is no edit', () => {
  let edit: unknown = { do: 'setTitle', title: '', person: '' };
  for (let depth = 0; depth < 100_000; depth++) edit = { do: 'many', label: '', edits: [edit] };
  expect(readEdit(edit)).toBeNull();
});
