/** Whatever is done to a block of cells, what does not show of it stays as it is. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { changeLook, fillDown, fillRight, lookOff } from '../../../src/app/arrange.ts';
import { Clipboard } from '../../../src/app/clipboard.ts';
import { Desk } from '../../../src/app/desk.ts';
import { sheetTable } from '../../../src/app/out-tables.ts';
import { clearArea, pasteTable, structure, toggleInput, toggleLook } from '../../../src/app/wishes.ts';
import { textsOf as shownTexts } from '../../../src/grid/grid-clipboard.ts';
import { toTsv } from '../../../src/grid/clipboard.ts';
import { groundOf } from '../../../src/grid/select.ts';
import { sheetView } from '../../../src/app/sheet-view.ts';
import { apply, hiddenColumns, hiddenRows, inRuns, type Area, type Book, type Edit, type Runs, type Sheet } from '../../../src/workbook/index.ts';
import { area, bookOf, textsOf } from '../workbook/help.ts';

const LETTERS = 'abcdef';
const FULL = bookOf(Array.from({ length: 10 }, (_, row) => Array.from(LETTERS, (letter) => `${letter}${row + 1}`)));

function hidden(book: Book, filter: Runs, rows: Runs, columns: Runs): Book {
  const edits: Edit[] = [
    { do: 'setHidden', sheet: 1, axis: 'rows', runs: rows },
    { do: 'setHidden', sheet: 1, axis: 'columns', runs: columns },
    { do: 'setFilter', sheet: 1, filter: filter.length === 0 ? null : { area: { top: 0, left: 0, bottom: 9, right: 5 }, conditions: [{ col: 0, test: 'filled', text: '' }], hides: filter } },
  ];
  return apply({ do: 'many', label: '', edits }, book).book;
}

/** Rows 3, 4 and 7 do not match, column C is hidden by hand. */
const FILTERED = hidden(FULL, [[2, 3], [6, 6]], [], [[2, 2]]);

function deskOf(book: Book, selected: Area): Desk {
  const desk = new Desk(book);
  desk.selectArea(selected);
  return desk;
}

function copy(desk: Desk, cut = false): { root: EventTarget; text: string } {
  const root = new EventTarget();
  new Clipboard().listen(root, desk);
  const view = sheetView(desk.sheet, desk.results, desk.showAs, false);
  const text = toTsv(shownTexts(view, desk.area, groundOf(view, () => 10)));
  root.dispatchEvent(new CustomEvent(cut ? 'tt-cut' : 'tt-copy', { detail: { area: desk.area, text, data: null } }));
  return { root, text };
}

function pasteAt(desk: Desk, from: { root: EventTarget; text: string }, to: Area): void {
  desk.selectArea(to);
  from.root.dispatchEvent(new CustomEvent('tt-paste', { detail: { area: to, text: from.text, table: from.text.split('\n').map((line) => line.split('\t')) } }));
}

const column = (sheet: Sheet, col: number): (string | undefined)[] => sheet.rows.map((row) => row?.[col]?.raw);

describe('with rows that do not match and a hidden column', () => {
  test('emptying empties what shows, and says what it left', () => {
    const desk = deskOf(FILTERED, area(1, 0, 0, 4, 3));
    clearArea(desk, desk.area);
    expect(textsOf(desk.book, 1).slice(0, 5)).toEqual([
      ['', '', 'c1', '', 'e1', 'f1'], ['', '', 'c2', '', 'e2', 'f2'], ['a3', 'b3', 'c3', 'd3', 'e3', 'f3'], ['a4', 'b4', 'c4', 'd4', 'e4', 'f4'], ['', '', 'c5', '', 'e5', 'f5'],
    ]);
    expect(desk.said).toBe('Emptied 9 cells; 2 hidden rows and 1 hidden column left as before.');
    expect(desk.history.done.length).toBe(1);
    desk.undo();
    expect(desk.book).toEqual(FILTERED);
  });

  test('with nothing hidden in the block nothing is said of it', () => {
    const desk = deskOf(FILTERED, area(1, 0, 0, 1, 1));
    clearArea(desk, desk.area);
    expect(desk.said).toBe('');
  });

  test('emptying empty cells over filled ones out of sight changes nothing, and says why', () => {
    const empty = hidden(bookOf([['a'], [''], ['c'], ['']]), [[2, 2]], [], []);
    const desk = deskOf(empty, area(1, 1, 0, 3, 0));
    clearArea(desk, desk.area);
    expect(desk.book).toBe(empty);
    expect(desk.said).toBe('There is nothing to empty in the cells that show; 1 hidden row left as before.');
  });

  test('a copy takes what shows, and its lines go into rows that show', () => {
    const desk = deskOf(FILTERED, area(1, 1, 0, 4, 1));
    const clip = copy(desk);
    expect(clip.text).toBe('a2\tb2\na5\tb5');
    expect(desk.said).toBe('Copied the cells that show, without 2 hidden rows.');
    pasteAt(desk, clip, area(1, 5, 4));
    expect(column(desk.sheet, 4).slice(5)).toEqual(['a2', 'e7', 'a5', 'e9', 'e10']);
    expect(desk.said).toBe('Pasted into the cells that show; 1 hidden row left as before.');
    expect(desk.area).toEqual(area(1, 5, 4, 7, 5));
    expect(desk.history.done.length).toBe(1);
  });

  test('a formula adjusts by as many rows as it moved, seen or not', () => {
    const book = hidden(bookOf([['1', '=A1'], ['2'], ['3'], ['4']]), [[1, 2]], [], []);
    const desk = deskOf(book, area(1, 0, 1));
    const clip = copy(desk);
    pasteAt(desk, clip, area(1, 0, 2, 3, 2));
    expect(column(desk.sheet, 2)).toEqual(['=B1', undefined, undefined, '=B4']);
  });

  test('a table from elsewhere goes into rows that show, and fills a selection as often as it fits', () => {
    const desk = deskOf(FILTERED, area(1, 0, 0));
    pasteTable(desk, [['x', 'y', 'z'], ['u', 'v']], area(1, 1, 1));
    expect(textsOf(desk.book, 1).slice(1, 5)).toEqual([
      ['a2', 'x', 'c2', 'y', 'z', 'f2'], ['a3', 'b3', 'c3', 'd3', 'e3', 'f3'], ['a4', 'b4', 'c4', 'd4', 'e4', 'f4'], ['a5', 'u', 'c5', 'v', 'e5', 'f5'],
    ]);
    pasteTable(desk, [['q']], area(1, 4, 0, 7, 0));
    expect(column(desk.sheet, 0).slice(4, 8)).toEqual(['q', 'q', 'a7', 'q']);
  });

  test('past the end of the sheet a paste is refused as a whole', () => {
    const desk = deskOf(hidden(FULL, [], [[10, 999_998]], []), area(1, 9, 0));
    pasteTable(desk, [['1'], ['2'], ['3']], area(1, 9, 0));
    expect(desk.said).toContain('past the edge of Fit');
    expect(column(desk.sheet, 0)[9]).toBe('a10');
  });

  test('what is cut is one block: with something hidden in it, or where it goes, nothing moves', () => {
    const desk = deskOf(FILTERED, area(1, 1, 0, 4, 0));
    pasteAt(desk, copy(desk, true), area(1, 0, 8));
    expect(desk.said).toContain('2 hidden rows among the cells that were cut');
    desk.selectArea(area(1, 0, 0, 1, 0));
    pasteAt(desk, copy(desk, true), area(1, 5, 0));
    expect(desk.said).toContain('1 hidden row where the cut cells would go');
    expect(desk.book).toBe(FILTERED);
  });

  test('removing rows removes those that show, as one step', () => {
    const desk = deskOf(FILTERED, area(1, 1, 0, 5, 0));
    structure(desk, 'removeRows');
    expect(column(desk.sheet, 0)).toEqual(['a1', 'a3', 'a4', 'a7', 'a8', 'a9', 'a10']);
    expect(hiddenRows(desk.sheet)).toEqual([[1, 3]]);
    expect(desk.said).toBe('Removed 3 rows; 2 hidden rows left as before.');
    desk.undo();
    expect(desk.book).toEqual(FILTERED);
  });

  test('as many rows are put in as are selected and show', () => {
    const desk = deskOf(FILTERED, area(1, 1, 0, 4, 0));
    structure(desk, 'insertRows');
    expect(column(desk.sheet, 0).slice(0, 4)).toEqual(['a1', undefined, undefined, 'a2']);
  });

  test('rows that lie in very many places are not removed one by one', () => {
    const many = hidden(bookOf(Array.from({ length: 3_000 }, (_, row) => [String(row)])), Array.from({ length: 1_500 }, (_, at) => [at * 2, at * 2] as const), [], []);
    const desk = deskOf(many, area(1, 0, 0, 2_999, 0));
    structure(desk, 'removeRows');
    expect(desk.said).toContain('Sort the rows first');
    expect(desk.book).toBe(many);
  });

  test('a fill goes on over the rows that show', () => {
    const book = hidden(bookOf([['1'], ['2'], ['x'], [''], ['']]), [[2, 2]], [], []);
    const desk = deskOf(book, area(1, 0, 0, 4, 0));
    fillDown(desk);
    expect(column(desk.sheet, 0)).toEqual(['1', '2', 'x', '3', '4']);
    expect(desk.said).toBe('Filled the cells that show; 1 hidden row left as before.');
  });
});

const runs = (limit: number): fc.Arbitrary<Runs> => fc.uniqueArray(fc.nat(limit - 2), { maxLength: 4 }).map((places) => {
  const sorted = places.sort((a, b) => a - b);
  return sorted.reduce<[number, number][]>((all, place) => {
    const last = all.at(-1);
    if (last && place <= last[1] + 1) last[1] = place;
    else all.push([place, place]);
    return all;
  }, []);
});

const block = fc.tuple(fc.nat(9), fc.nat(9), fc.nat(5), fc.nat(5)).map(([a, b, c, d]) => area(1, Math.min(a, b), Math.min(c, d), Math.max(a, b), Math.max(c, d)));

const ACTIONS: Record<string, (desk: Desk, to: Area) => void> = {
  clear: (desk) => clearArea(desk, desk.area),
  look: (desk) => changeLook(desk, { strong: true }),
  lookOff,
  heading: (desk) => toggleLook(desk, 'heading'),
  input: toggleInput,
  fillDown: (desk) => fillDown(desk),
  fillRight: (desk) => fillRight(desk, true),
  copyAndPaste: (desk, to) => pasteAt(desk, copy(desk), to),
  cutAndPaste: (desk, to) => pasteAt(desk, copy(desk, true), to),
  paste: (desk, to) => pasteTable(desk, [['1 cm', ''], ['2 cm', '=A1']], to),
};

test('no cell that does not show is ever changed, and every action is one step that can be taken back', () => {
  fc.assert(fc.property(fc.constantFrom(...Object.keys(ACTIONS)), block, block, runs(10), runs(10), runs(6), (what, from, to, filter, rows, columns) => {
    const before = hidden(FULL, filter, rows, columns);
    const desk = deskOf(before, from);
    ACTIONS[what]!(desk, to);
    const [sheet] = before.sheets as [Sheet];
    const [now] = desk.book.sheets as [Sheet];
    for (let row = 0; row < 10; row++) {
      for (let col = 0; col < 6; col++) {
        if (inRuns(hiddenRows(sheet), row) || inRuns(hiddenColumns(sheet), col)) expect(now.rows[row]?.[col], `${what}: row ${row}, column ${col}`).toEqual(sheet.rows[row]?.[col]);
      }
    }
    expect(desk.history.done.length).toBeLessThanOrEqual(1);
    while (desk.history.done.length) desk.undo();
    expect(desk.book).toEqual(before);
  }), { numRuns: 1_500 });
});

test('what a paste puts in is what was copied, line for line of what shows', () => {
  fc.assert(fc.property(block, fc.nat(9), fc.nat(5), runs(10), runs(6), (from, row, col, filter, columns) => {
    const before = hidden(FULL, filter, [], columns);
    const desk = deskOf(before, from);
    const clip = copy(desk);
    if (clip.text.trim() === '') return;
    pasteAt(desk, clip, area(1, row, col));
    const again = deskOf(desk.book, desk.area);
    expect(copy(again).text).toBe(clip.text);
  }), { numRuns: 600 });
});

test('a table that goes out has only what shows', () => {
  const table = (at: Area): string[] => sheetTable(deskOf(FILTERED, at), at).map((cells) => cells.map((cell) => (cell.kind === 'text' ? cell.text : '')).join(' '));
  expect(table(area(1, 1, 1, 4, 3))).toEqual(['b2 d2', 'b5 d5']);
  expect(table(area(1, 0, 0, 999_999, 999))).toEqual(['a1 b1 d1 e1 f1', 'a2 b2 d2 e2 f2', 'a5 b5 d5 e5 f5', 'a6 b6 d6 e6 f6', 'a8 b8 d8 e8 f8', 'a9 b9 d9 e9 f9', 'a10 b10 d10 e10 f10']);
});
