/** A sheet on paper: every cell of the grid is there once, with the grid's own text; headings, footnotes and what is left out. */
import { describe, expect, it } from 'vitest';
import { demoBook } from '../../../src/app/demo.ts';
import { MOST_ROWS, ROOM, columnGroups, printedSheet } from '../../../src/app/printed-sheet.ts';
import { pageRules, quoted } from '../../../src/app/page-rules.ts';
import { sheetView } from '../../../src/app/sheet-view.ts';
import type { SheetView } from '../../../src/grid/index.ts';
import type { PrintedSheet } from '../../../src/panels/index.ts';
import type { ShowAs } from '../../../src/quantities/index.ts';
import { Results } from '../../../src/reckoning/index.ts';
import { apply, usedArea, type Book, type Edit, type Sheet } from '../../../src/workbook/index.ts';
import { Engine } from '../../../workers/reckon/engine.ts';

const HEAD = { title: 'Linden tea dress', person: 'Aunt Oda', date: '25 November 2026' };
const BOTH: ShowAs = { system: 'both', inchStep: 8 };
const book = demoBook('test');

function resultsOf(of: Book): Results {
  const results = new Results();
  results.apply(new Engine().open(1, of));
  return results;
}
const results = resultsOf(book);

function onPaper(sheet: Sheet, room?: number, of = results): { view: SheetView; printed: PrintedSheet } {
  const view = sheetView(sheet, of, BOTH, false);
  return { view, printed: printedSheet(sheet, view, HEAD, room) };
}

/** Texts by place, as the tables have them. */
function textsOf({ tables }: PrintedSheet): Map<string, { text: string; also?: string | undefined }> {
  const found = new Map<string, { text: string; also?: string | undefined }>();
  for (const { columns, heading, rows } of tables) {
    for (const { number, cells } of [...heading, ...rows]) {
      let at = 0;
      for (const { text, also, span } of cells) {
        if (text !== '') found.set(`${columns[at]!.letter}${number}`, { text, also });
        at += span;
      }
      expect(at).toBe(columns.length);
    }
  }
  return found;
}

const edited = (edit: Edit): Book => apply(edit, book).book;
const fit = book.sheets.find(({ name }) => name === 'Fit')!;

describe('a printed sheet', () => {
  it.each(book.sheets.flatMap((sheet) => [ROOM.upright, ROOM.across].map((room) => [sheet.name, room, sheet] as const)))('has all that the grid shows of %s in %i px', (_, room, sheet) => {
    const { view, printed } = onPaper(sheet, room);
    const texts = textsOf(printed);
    const area = usedArea(sheet)!;
    let shown = 0;
    for (let row = 0; row <= area.bottom; row++) {
      for (let col = 0; col <= area.right; col++) {
        const cell = view.cell(row, col);
        if (!cell || cell.text === '') continue;
        shown += 1;
        expect(texts.get(`${view.columnTitle!(col)}${row + 1}`)).toEqual({ text: cell.text, also: cell.also });
      }
    }
    expect(shown).toBeGreaterThan(3);
    expect(texts.size).toBe(shown);
    expect(printed.missing).toEqual([]);
    for (const { columns, spare } of printed.tables) expect(columns.reduce((sum, { share }) => sum + share, spare)).toBeCloseTo(100, 0);
  });

  it('begins a table with each heading row, or repeats the rows that are kept in view', () => {
    const { printed } = onPaper(fit);
    expect(printed.tables.map(({ heading }) => heading[0]!.cells[0]!.text)).toEqual(
      ['Fit between sizes', 'What to cut', 'Taking in or letting out', 'Blend from waist to hip', 'Blend from bust to waist', 'One size for all three levels']);
    const frozen = edited({ do: 'setFrozen', sheet: fit.id, rows: 1, columns: 0 }).sheets.find(({ id }) => id === fit.id)!;
    const { printed: kept } = onPaper(frozen);
    expect(kept.tables).toHaveLength(1);
    expect(kept.tables[0]!.heading.map(({ number }) => number)).toEqual([1]);
  });

  it('tells pins and notes in footnotes, whose numbers stand in their cells', () => {
    const noted = edited({ do: 'setCells', sheet: fit.id, cells: [{ row: 1, col: 1, cell: { raw: '=bust', note: 'over the blouse' } }] });
    const { printed } = onPaper(noted.sheets.find(({ id }) => id === fit.id)!, undefined, resultsOf(noted));
    expect(printed.footnotes[0]).toEqual({ number: 1, place: 'B2 (Body measure, Bust)', kind: 'note', text: 'over the blouse' });
    expect(printed.footnotes.filter(({ kind }) => kind === 'pin').length).toBeGreaterThan(0);
    const marks = printed.tables.flatMap(({ rows }) => rows.flatMap(({ cells }) => cells.flatMap((cell) => cell.marks)));
    expect(marks).toEqual(printed.footnotes.map(({ number }) => number));
  });

  it('says what is hidden, and prints no more rows than paper is for', () => {
    const hidden = edited({ do: 'setHidden', sheet: fit.id, axis: 'rows', runs: [[4, 6]] }).sheets.find(({ id }) => id === fit.id)!;
    const { printed } = onPaper(hidden);
    expect(printed.missing).toEqual(['Rows that are hidden in the sheet are not printed: 3.']);
    expect([...textsOf(printed).keys()].filter((place) => /^\D+[567]$/.test(place))).toEqual([]);
    const long = edited({ do: 'setCells', sheet: fit.id, cells: [{ row: MOST_ROWS + 9, col: 0, cell: { raw: 'last' } }] }).sheets.find(({ id }) => id === fit.id)!;
    expect(onPaper(long).printed.missing).toEqual(['Only the first 3,000 of 3,010 rows are printed. Save the sheet as CSV to have all of it.']);
  });

  it('goes on beside the first column where a page is not wide enough', () => {
    expect(columnGroups([0, 1, 2, 3, 4], (col) => (col === 0 ? 200 : 300), 675)).toEqual([[0, 1, 2], [0, 3, 4]]);
    expect(columnGroups([0, 1], () => 5000, 675)).toEqual([[0], [1]]);
  });

  it('gives nothing of a title to the rules but a string', () => {
    expect(quoted('a "b" \\ c\n}')).toBe('"a \\22 b\\22  \\5c  c\\a }"');
    expect(pageRules('x', { paper: 'Letter', across: true })).toContain('size: Letter landscape;');
    expect(pageRules('x', null)).not.toContain('size:');
  });
});
