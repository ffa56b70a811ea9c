/** What is too large is refused at once, with a sentence that says how much there is and how much there may be. */
import { expect, test } from 'vitest';
import { LIMITS as TABLE_LIMITS, readTable, sizeFault } from '../../../src/tables/index.ts';
import { EditRefused, LIMITS, MOST_FILE_BYTES, apply, emptyBook, readBookText, readTemplate, type Edit } from '../../../src/workbook/index.ts';
import { readQuantity } from '../../../src/quantities/index.ts';
import { Desk } from '../reckon/desk.ts';

/** Milliseconds that it works, of two tries the faster: what else the machine does is not counted. */
function within<T>(limit: number, work: () => T): T {
  let best = Infinity;
  let result: T | undefined;
  for (let turn = 0; turn < 2; turn++) {
    const [start, before] = [performance.now(), process.cpuUsage()];
    result = work();
    const { user, system } = process.cpuUsage(before);
    best = Math.min(best, performance.now() - start, (user + system) / 1_000);
  }
  expect(best).toBeLessThan(limit);
  return result as T;
}

function refused(edit: Edit): string {
  try {
    apply(edit, emptyBook('a'));
  } catch (error) {
    if (error instanceof EditRefused) return error.sentence;
    throw error;
  }
  throw new Error('It was not refused.');
}

const typed = (raw: string, row = 0, col = 0): Edit => ({ do: 'setCells', sheet: 1, cells: [{ row, col, cell: { raw } }] });
const sentenceOf = (reading: ReturnType<typeof readTable>): string => 'sentence' in reading ? reading.sentence : 'read';

test('a CSV file of 200 MB is not even read', () => {
  expect(sizeFault(200 * 1024 * 1024)!.sentence).toMatch(/has 200 MB; at most 20 MB can be read/);
  expect(sizeFault(TABLE_LIMITS.bytes)).toBeNull();
});

test('CSV: a million columns, a million rows, a field of a megabyte', () => {
  expect(sentenceOf(within(1_000, () => readTable('1,'.repeat(1_000_000))))).toMatch(/has [\d,]+ columns; a sheet has 1,000/);
  expect(sentenceOf(within(1_000, () => readTable('1,2,3\n'.repeat(1_000_000))))).toMatch(/more than 200,000 cells/);
  expect(sentenceOf(within(1_000, () => readTable(`size,10,12\nbust,${'x'.repeat(1_000_000)},3`)))).toMatch(/has 1,000,000 characters; a cell can hold 32,767/);
});

test('a formula of a megabyte', () => {
  expect(within(1_000, () => refused(typed(`=${'1+'.repeat(500_000)}1`)))).toMatch(/1,000,002 characters.*32,767/);
});

test('10,000 nested brackets, and as long a formula as a cell holds', () => {
  const desk = new Desk({ A1: '74 cm' });
  const formulas: readonly [formula: string, said: RegExp][] = [
    [`=${'('.repeat(10_000)}1${')'.repeat(10_000)}`, /20,002 characters; 8,192 is the most/],
    [`=${'('.repeat(4_000)}1${')'.repeat(4_000)}`, /More than 64 brackets are open/],
    [`=${'SUM('.repeat(1_500)}A1${')'.repeat(1_500)}`, /More than 64 brackets are open/],
    [`=${'-'.repeat(8_000)}1`, /./],
    [`=${'1+'.repeat(4_000)}1`, /More than 500 operators/],
    [`="${'x'.repeat(8_000)}"`, /./],
    [`=${'{'.repeat(4_000)}`, /./],
    [`=${'A1:'.repeat(2_000)}A1`, /./],
    [`=SUM(${'A1,'.repeat(2_000)}A1)`, /./],
  ];
  for (const [formula, said] of formulas) {
    within(1_000, () => desk.type({ B1: formula }));
    expect(desk.show('B1'), formula.slice(0, 20)).toMatch(said);
    expect(desk.show('A1')).toBe('74 cm');
  }
});

test('a cell, a note, a title, a name; past the last row and column', () => {
  expect(refused(typed('x'.repeat(LIMITS.characters + 1)))).toMatch(/32,768 characters.*32,767/);
  expect(refused({ do: 'setCells', sheet: 1, cells: [{ row: 0, col: 0, cell: { raw: '', note: 'x'.repeat(1_000_000) } }] })).toMatch(/1,000,000 characters/);
  expect(refused({ do: 'setTitle', title: 'x'.repeat(1_000_000), person: '' })).toMatch(/1,000,000 characters.*200/);
  expect(refused({ do: 'setName', name: 'n'.repeat(1_000), target: { area: null, kind: 'cells' } })).toMatch(/60/);
  expect(refused(typed('x', LIMITS.rows, 0)).length).toBeGreaterThan(20);
  expect(refused(typed('x', 0, LIMITS.columns)).length).toBeGreaterThan(20);
});

test('workbook files: nested deep, wide, scattered, and as large as memory', () => {
  expect(MOST_FILE_BYTES).toBe(100_000_000);
  for (const text of ['['.repeat(1_000_000), '{"a":'.repeat(1_000_000), `"${'x'.repeat(5_000_000)}`, '1'.repeat(5_000_000)]) {
    expect(within(1_000, () => readBookText(text)).book).toBeNull();
  }
  const sheet = (cells: unknown) => JSON.stringify({ format: 'tape-and-tally/workbook', version: 1, id: 'a', title: '', person: '', settings: { show: 'own', inchStep: 8 }, nextSheetId: 2, sheets: [{ id: 1, name: 'S', widths: [], cells }], names: [] });
  // Few cells, so far apart that a page could not hold the rows between.
  const { book, problems } = within(3_000, () => readBookText(sheet(Array.from({ length: 50 }, (_, at) => [at * 20_000, 999, 'x']))));
  expect([book!.sheets[0]!.rows.length > 0, problems.length]).toEqual([true, 0]);
  const far = within(3_000, () => readBookText(sheet(Array.from({ length: 30_000 }, (_, at) => [at * 33, 999, 'x']))));
  expect(far.problems[0]).toMatch(/cells lie too far apart/);
  expect(within(1_000, () => readBookText(sheet([[0, 0, 'x'.repeat(1_000_000)]]))).problems).toEqual([expect.stringMatching(/could not be read/)]);
});

test('a template of nothing but sheets in sheets', () => {
  let deep: unknown = {};
  for (let depth = 0; depth < 5_000; depth++) deep = { sheet: deep };
  expect(within(1_000, () => readTemplate({ format: 'tape-and-tally/template', version: 1, sheet: deep })).problems.length).toBeGreaterThan(0);
});

test('a figure with more digits than any figure has', () => {
  for (const text of ['9'.repeat(400), '9'.repeat(100_000), `1${' '.repeat(100_000)}cm`, '1/'.repeat(50_000), `${'1 '.repeat(199)}in`, '-'.repeat(100_000), `0.${'0'.repeat(100_000)}1 cm`]) {
    const reading = within(200, () => readQuantity(text));
    expect(reading.kind === 'refused' || reading.kind === 'text').toBe(true);
  }
});
