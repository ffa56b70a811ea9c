/** Files made to do harm: they open, and all that is in them is text. The page itself is tried in the journey of the workbooks. */
import { readFileSync } from 'node:fs';
import { afterEach, expect, test } from 'vitest';
import { chartSheetEdit } from '../../../src/app/chart-edit.ts';
import { show, UNITS } from '../../../src/quantities/index.ts';
import { readTable } from '../../../src/tables/index.ts';
import { apply, bookText, emptyBook, filledCells, readBookText, readTemplate, sheetFromTemplate, type Book } from '../../../src/workbook/index.ts';
import { Engine } from '../../../workers/reckon/engine.ts';
import { Results } from '../../../src/reckoning/results.ts';
import { NO_FIGURE } from './cases.ts';

const file = (name: string): string => readFileSync(new URL(`./hostile/${name}`, import.meta.url), 'utf8');

afterEach(() => {
  for (const thing of [{}, [], () => 0] as object[]) expect((thing as { polluted?: unknown }).polluted).toBeUndefined();
});

/** Every result of a workbook, as it would show. */
function shown(book: Book): Record<string, string> {
  const engine = new Engine();
  const results = new Results();
  results.apply(engine.open(1, book));
  const said: Record<string, string> = {};
  for (const sheet of book.sheets) {
    for (const { row, col, cell } of filledCells(sheet)) {
      const result = results.at(sheet.id, row, col);
      said[cell.raw] = result.kind === 'quantity' ? show({ value: result.value, unit: result.unit, dimension: UNITS[result.unit].dimension }, { system: 'cm', inchStep: 8 }).main
        : result.kind === 'text' ? result.text : result.kind === 'error' ? `! ${result.sentence}` : result.kind;
    }
  }
  return said;
}

/** Formulas that give something: a link's label, which leads nowhere, and the text of a cell on a sheet with an odd name. */
const HARMLESS = new Map([['=HYPERLINK("http://example.invalid","x")', 'x'], ['=__proto__!A1', '<script>alert(1)</script>']]);

test('a workbook', () => {
  const { book, problems } = readBookText(file('workbook.json'));
  expect(problems).toEqual(['Entry 1 of the names for cells was left out: A name begins with a letter, such as bust or full bust.']);
  expect(book!.title).toBe("<script>document.title='taken'</script>");
  const said = shown(book!);
  for (const [raw, text] of Object.entries(said)) {
    expect(text, raw).not.toMatch(NO_FIGURE);
    // What is no formula shows as it stands or as why it is no figure.
    if (!raw.startsWith('=')) expect(text === raw || text.startsWith('! '), `${raw} shows as ${text}`).toBe(true);
    else if (HARMLESS.has(raw)) expect(text).toBe(HARMLESS.get(raw));
    else expect(text, raw).toMatch(/^! /);
  }
  expect(Object.keys(said)).toHaveLength(15);
  expect(readBookText(bookText(book!))).toStrictEqual({ book, problems: [] });
});

test('a size chart in CSV: nothing in it is worked out', () => {
  const reading = readTable(file('chart.csv'));
  if ('sentence' in reading) throw new Error(reading.sentence);
  const book = emptyBook('a');
  const made = apply(chartSheetEdit(reading, { sheet: '__proto__', name: 'constructor' }, book).edit, book).book;
  const raws = [...filledCells(made.sheets.at(-1)!)].map(({ cell }) => cell.raw);
  expect(raws.filter((raw) => raw.startsWith('='))).toEqual([]);
  expect(raws).toContain("'=1+1");
  for (const text of Object.values(shown(made))) expect(text).not.toMatch(NO_FIGURE);
});

test('a template', () => {
  const { template } = readTemplate(JSON.parse(file('template.json')));
  const book = emptyBook('a');
  const made = apply(sheetFromTemplate(template!, book).edit, book).book;
  for (const [raw, text] of Object.entries(shown(made))) {
    expect(text, raw).not.toMatch(NO_FIGURE);
    if (raw.startsWith('=')) expect(text, raw).toMatch(/^! /);
  }
});
