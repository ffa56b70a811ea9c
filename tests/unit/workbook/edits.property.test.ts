import { isDeepStrictEqual } from 'node:util';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  EditRefused, NO_HISTORY, apply, emptyBook, entryOf, readBook, record, redo, undo, writeBook,
} from '../../../src/workbook/index.ts';
import type { Applied, Book, Edit, History } from '../../../src/workbook/index.ts';
import { bookOf, area, editFrom, frozen, seed } from './help.ts';
import type { Seed } from './help.ts';
import { Mirror } from './mirror.ts';

const SEED = 20_251;

const START = bookOf(
  [['Waist', '74 cm'], ['Hip', '98 cm', '=B2-B1'], ['', "=Skirt!A1 + waist"], ['=SUM(B1:B3)', '=full bust * 2', "='My measures'!A1"]],
  [['=fit!b2', '=$A$1'], [], ['2 1/4 in']],
  [{ name: 'waist', area: area(1, 0, 1), kind: 'cells' }, { name: 'chart_1', area: area(1, 0, 0, 3, 1), kind: 'chart' }],
);

/** Compares fast, and shows the difference when there is one. */
function expectSame(got: unknown, wanted: unknown): void {
  if (!isDeepStrictEqual(got, wanted)) expect(got).toStrictEqual(wanted);
}

/** `null` when the edit is refused, which must be with a sentence. */
function tried(edit: Edit, book: Book): Applied | null {
  try {
    return frozen(apply(edit, book));
  } catch (error) {
    if (!(error instanceof EditRefused)) throw error;
    expect(error.sentence).toMatch(/^\S.*\.$/u);
    return null;
  }
}

function play(seeds: readonly Seed[], each: (edit: Edit, before: Book, applied: Applied) => void): Book {
  let book = START;
  for (const part of seeds) {
    const edit = frozen(editFrom(part, book));
    const applied = tried(edit, book);
    if (!applied) continue;
    each(edit, book, applied);
    book = applied.book;
  }
  return book;
}

const sequences = fc.array(seed, { minLength: 1, maxLength: 20 });

test('1,000 random sequences: each inverse restores exactly, undo of all gives the start, redo gives the end', () => {
  let done = 0;
  fc.assert(fc.property(sequences, (seeds) => {
    let history: History = NO_HISTORY;
    const end = play(seeds, (edit, before, applied) => {
      expectSame(apply(applied.inverse, applied.book).book, before);
      history = record(history, entryOf(edit, before, applied, '2025-11-25T10:00:00Z'));
      done += 1;
    });
    let book = end;
    for (let step = undo(history); step; step = undo(history)) {
      book = apply(step.edit, book).book;
      history = step.history;
    }
    expectSame(book, START);
    for (let step = redo(history); step; step = redo(history)) {
      book = apply(step.edit, book).book;
      history = step.history;
    }
    expectSame(book, end);
  }), { numRuns: 1000, seed: SEED });
  expect(done).toBeGreaterThan(5000); // otherwise nearly all were refused and this says little
}, 120_000);

test('an inverse is undone by its own inverse', () => {
  fc.assert(fc.property(sequences, (seeds) => {
    play(seeds, (_edit, _before, applied) => {
      const back = apply(applied.inverse, applied.book);
      expectSame(apply(back.inverse, back.book).book, applied.book);
    });
  }), { numRuns: 200, seed: SEED });
}, 60_000);

test.each(['leaves', 'moves'] as const)('the effects alone keep an engine in step with the workbook; beyond its sheet it %s references', (beyond) => {
  fc.assert(fc.property(sequences, (seeds) => {
    const mirror = new Mirror(START, beyond);
    play(seeds, (edit, before, applied) => {
      const wayBack = new Mirror(before, beyond);
      wayBack.take(applied.effects);
      wayBack.take(apply(applied.inverse, applied.book).effects);
      wayBack.expectToMirror(before);
      mirror.take(applied.effects);
      mirror.expectToMirror(applied.book);
      void edit;
    });
  }), { numRuns: 400, seed: SEED });
}, 60_000);

test('what is written is read back equal, with nothing to complain of', () => {
  fc.assert(fc.property(sequences, (seeds) => {
    const book = play(seeds, () => undefined);
    const { book: read, problems } = readBook(JSON.parse(JSON.stringify(writeBook(book))));
    expect(problems).toEqual([]);
    expectSame(read, book);
  }), { numRuns: 500, seed: SEED });
}, 60_000);

test('an edit that changes nothing gives the same workbook back', () => {
  fc.assert(fc.property(sequences, (seeds) => {
    play(seeds, (_edit, before, applied) => {
      const { book, inverse, effects } = apply({ do: 'many', label: '', edits: [] }, applied.book);
      expect(book).toBe(applied.book);
      expect(effects).toEqual([]);
      expect(apply(inverse, book).book).toBe(book);
      if (applied.book === before) expect(applied.effects).toEqual([]);
    });
  }), { numRuns: 50, seed: SEED });
  expect(emptyBook('x')).toStrictEqual(readBook(writeBook(emptyBook('x'))).book);
});
