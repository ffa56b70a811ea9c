/** Choosing a size at the workbook: what is shown, and that the sheet works out the same. */
import { describe, expect, it } from 'vitest';
import { easeTable } from '../../../src/app/size-choice-ease.ts';
import { measuresIn, pointingAt } from '../../../src/app/size-choice-cells.ts';
import { inTheWay, putSizesEdit, sizeArea } from '../../../src/app/size-choice-sheet.ts';
import { NO_WISH, sizesFor, type Sized, type SizeWish } from '../../../src/app/size-choice-view.ts';
import { shippedTemplate } from '../../../src/app/shipped.ts';
import type { ShowAs } from '../../../src/quantities/index.ts';
import { Results } from '../../../src/reckoning/index.ts';
import { apply, emptyBook, sheetById, type Book, type CellChange } from '../../../src/workbook/index.ts';
import { Engine } from '../../../workers/reckon/engine.ts';

const BODY = ['size | bust | waist | hip', '10 | 88 cm | 70 cm | 94 cm', '12 | 92 cm | 74 cm | 98 cm', '14 | 96 cm | 78 cm | 102 cm', '16 | 100 cm | 82 cm | 106 cm', '18 | 104 cm | 86 cm | 110 cm'];
const FINISHED = ['size | bust | waist | hip | finished bust | finished waist | finished hip', '10 | 88 cm | 70 cm | 94 cm | 94 cm | 74 cm | 100 cm', '12 | 92 cm | 74 cm | 98 cm | 98 cm | 78 cm | 104 cm', '14 | 96 cm | 78 cm | 102 cm | 102 cm | 82 cm | 108 cm'];
const LETTERS = ['code | bust from | bust to | waist from | waist to | hip from | hip to', 'S | 82 cm | 90 cm | 66 cm | 74 cm | 90 cm | 98 cm', 'M | 90 cm | 98 cm | 74 cm | 82 cm | 98 cm | 106 cm', 'L | 98 cm | 107 cm | 82 cm | 91 cm | 106 cm | 115 cm'];
const CM: ShowAs = { system: 'cm', inchStep: 8 };

const cells = (rows: readonly string[], top = 0, left = 0): CellChange[] =>
  rows.flatMap((row, r) => row.split('|').map((raw, c): CellChange => ({ row: top + r, col: left + c, cell: raw.trim() === '' ? null : { raw: raw.trim() } })));

/** A chart from A1, and a person's measures from K1. */
function bookWith(chart: readonly string[], measures: readonly string[] = []): Book {
  let book = emptyBook('test');
  const sheet = book.sheets[0]!.id;
  const [first = ''] = chart;
  book = apply({ do: 'setCells', sheet, cells: [...cells(chart), ...cells(measures, 0, 10)] }, book).book;
  return apply({ do: 'setName', name: 'our chart', target: { area: { sheet, top: 0, left: 0, bottom: chart.length - 1, right: first.split('|').length - 1 }, kind: 'chart' } }, book).book;
}

function worked(book: Book): Results {
  const results = new Results();
  results.apply(new Engine().open(1, book));
  return results;
}

function sized(book: Book, wish: Partial<SizeWish>, as = CM): Sized {
  const results = worked(book);
  return sizesFor({ book, results, wish: { ...NO_WISH, ...wish }, as, table: easeTable(book, results, shippedTemplate('usual-values')) });
}

const shownSizes = ({ view }: Sized): string[] => view.answer?.levels.map(({ size }) => size) ?? [view.sentence];

/** Puts the choice on the first sheet from row 31 and gives the block's results as texts. */
function inSheet(book: Book, choice: Sized): string[][] {
  const at = { sheet: book.sheets[0]!.id, row: 30, col: 1 };
  const edit = putSizesEdit(choice.put!, at, book.sheets[0]!);
  const done = apply(edit, book);
  expect(apply(done.inverse, done.book).book).toEqual(book);
  const results = worked(done.book);
  const { top, left, bottom, right } = sizeArea(choice.put!, at);
  return Array.from({ length: bottom - top + 1 }, (_, r) => Array.from({ length: right - left + 1 }, (__, c) => {
    const result = results.at(at.sheet, top + r, left + c);
    if (result.kind === 'quantity') return String(Number(result.value.toFixed(6)));
    return result.kind === 'text' ? result.text : result.kind === 'error' ? `error: ${result.sentence}` : '';
  }));
}

describe('the panel and the sheet', () => {
  it.each<[string, readonly string[], Partial<SizeWish>, string[]]>([
    ['body measures', BODY, { measures: { bust: '92 cm', waist: '74', hip: '43 1/4 in' } }, ['12', '14', '18']],
    ['a full skirt', BODY, { style: 'full skirt', measures: { bust: '92 cm', waist: '74 cm', hip: '110 cm' } }, ['12', '12', '12']],
    ['one size', BODY, { apart: '0', measures: { bust: '92 cm', waist: '74 cm', hip: '102 cm' } }, ['14', '14', '14']],
    ['a cost of her own', BODY, { change: '4 in', measures: { bust: '92 cm', waist: '74 cm', hip: '101 cm' } }, ['12', '12', '12']],
    ['a continued size', BODY, { measures: { bust: '108 cm', waist: '90 cm' } }, ['20', '20']],
    ['letters', LETTERS, { measures: { bust: '93 cm', waist: '80 cm', hip: '118 cm' } }, ['M', 'M', 'L + 1']],
    ['high bust', BODY, { measures: { 'high bust': '87 cm', bust: '100 cm', waist: '74 cm' } }, ['12', '12']],
    ['finished measures and the usual ease', FINISHED, { garment: 'dress', measures: { bust: '92 cm', waist: '76 cm', hip: '102 cm' } }, ['12', '12', '14']],
    ['ease of her own', FINISHED, { measures: { bust: '92 cm' }, ease: { bust: { low: '9', high: '11 cm' } } }, ['14']],
  ])('agree: %s', (_, chart, wish, expected) => {
    const book = bookWith(chart);
    const choice = sized(book, wish);
    expect(shownSizes(choice)).toEqual(expected);
    const sheet = inSheet(book, choice);
    expect(sheet.flat().filter((text) => text.startsWith('error'))).toEqual([]);
    const size = sheet[0]!.indexOf('Size');
    const levels = sheet.slice(1, sheet.findIndex((row, i) => i > 0 && row[0] === '')).filter(([name]) => name !== 'high bust');
    expect(levels.map((row) => row[size])).toEqual(expected);
    // What each size leaves is what the panel shows beside it, to the millimetre that it shows.
    const shown = choice.view.answer!.beside.flatMap(({ sizes }) => sizes.map((one) => Number.parseFloat(one!.left.replace('−', '-'))));
    for (const [i, mm] of levels.flatMap((row) => row.slice(size + 1).map(Number)).entries()) expect(Math.abs(mm / 10 - shown[i]!)).toBeLessThanOrEqual(0.05 + 1e-9);
  });

  it('put the blend with its gaps, and the alteration for a fuller bust', () => {
    const book = bookWith(BODY);
    const sheet = inSheet(book, sized(book, { measures: { 'high bust': '87 cm', bust: '100 cm', waist: '78 cm', hip: '106 cm' }, downs: { waist: '21 cm' } }));
    expect(sheet.find(([name]) => name === 'Bust to waist')?.slice(0, 6)).toEqual(['Bust to waist', '12', '14', '170', '10', '10']);
    expect(sheet.find(([name]) => name === 'Waist to hip')?.slice(0, 6)).toEqual(['Waist to hip', '14', '16', '210', '10', '10']);
    expect(sheet.find(([name]) => name?.startsWith('The size is chosen'))?.[1]).toBe('920');
    expect(sheet.find(([name]) => name?.startsWith('Widen'))?.[1]).toBe('40');
  });

  it('follow the cells that measures were taken from', () => {
    const book = bookWith(BODY, ['Bust | 92 cm', 'Seat | 110 cm']);
    const sheet = book.sheets[0]!;
    const results = worked(book);
    const found = measuresIn(results, { sheet: sheet.id, top: 0, left: 10, bottom: 5, right: 11 });
    expect([...found].map(([level, { row, col }]) => [level, row, col])).toEqual([['bust', 0, 11], ['hip', 1, 11]]);
    const measures = Object.fromEntries([...found].map(([level, cell]) => [level, pointingAt(book, cell)]));
    expect(measures).toEqual({ bust: `=${sheet.name.includes(' ') ? `'${sheet.name}'` : sheet.name}!L1`, hip: `=${sheet.name.includes(' ') ? `'${sheet.name}'` : sheet.name}!L2` });
    const choice = sized(book, { measures });
    expect(shownSizes(choice)).toEqual(['14', '18']);
    expect(choice.put?.levels.map(({ raw }) => raw)).toEqual([measures['bust'], measures['hip']]);
    const named = apply({ do: 'setName', name: 'her bust', target: { area: { sheet: sheet.id, top: 0, left: 11, bottom: 0, right: 11 }, kind: 'cells' } }, book).book;
    expect(pointingAt(named, { sheet: sheet.id, row: 0, col: 11 })).toBe('=her bust');
    expect(shownSizes(sized(named, { measures: { bust: '=her bust' } }))).toEqual(['12']);
  });

  it('find what is in the way', () => {
    const book = bookWith(BODY);
    const { put } = sized(book, { measures: { bust: '92 cm' } });
    const [sheet] = [sheetById(book, book.sheets[0]!.id)!];
    expect(inTheWay(sheet, sizeArea(put!, { row: 0, col: 0 }))).toBe('A1');
    expect(inTheWay(sheet, sizeArea(put!, { row: 20, col: 0 }))).toBeUndefined();
  });
});

describe('what the panel says', () => {
  it('asks for a chart, then for measures', () => {
    expect(shownSizes(sized(emptyBook('none'), {}))[0]).toMatch(/^There is no size chart in this workbook yet\./);
    expect(shownSizes(sized(bookWith(BODY), {}))[0]).toBe('Type the measures, or take them from cells: then the sizes are shown here.');
    expect(shownSizes(sized(bookWith(['size | knee', '10 | 40 cm', '12 | 42 cm']), {}))[0]).toMatch(/^This size chart has no girths/);
  });

  it('does without a bust, though a high bust was typed', () => {
    expect(shownSizes(sized(bookWith(BODY), { measures: { 'high bust': '86 cm', waist: '74 cm' } }))).toEqual(['12']);
    expect(shownSizes(sized(bookWith(BODY), { measures: { 'high bust': '86 cm' } }))[0]).toMatch(/^Type the measures/);
  });

  it('keeps what was typed and says what is wrong with it', () => {
    const { view } = sized(bookWith(BODY), { measures: { bust: 'ninety', waist: '=Nowhere!A1', hip: '-3 cm' }, change: 'much' });
    expect(view.levels.map(({ raw, fault }) => [raw, fault])).toEqual([
      ['', ''], ['ninety', '“ninety” is no length: type a figure with its unit, such as 94 cm or 37 1/4 in.'],
      ['=Nowhere!A1', '“Nowhere!A1” is neither a cell with its sheet, such as Measures!B3, nor the name of one.'], ['-3 cm', 'A measure is more than 0.'],
    ]);
    expect(view.changeFault).toMatch(/^“much” is no length/);
  });

  it('reads a figure without a unit in the workbook’s system, and shows it', () => {
    const inches: ShowAs = { system: 'in', inchStep: 8 };
    const { view, put } = sized(bookWith(BODY), { measures: { bust: '36 1/4' } }, inches);
    expect(view.levels[1]?.reads).toBe('36 ¼ in');
    expect(put?.levels[0]?.raw).toBe('36 1/4 in');
    expect(view.answer?.levels[0]?.why).toBe('Bust: size 12. The chart’s 36 ¼ in for it is just the body’s 36 ¼ in.');
  });

  it('says the sizes, the blend and the usual ease with its source', () => {
    const choice = sized(bookWith(FINISHED), { garment: 'skirt', measures: { waist: '74 cm', hip: '103 cm' } });
    expect(choice.view.answer?.sentence).toBe('Cut size 12 at the waist and 14 at the hip.');
    expect(choice.view.answer?.blends).toMatchObject([{ label: 'Waist to hip', usual: '20 cm', sentence: 'From size 12 to size 14 over 20.0 cm (usual). At each seam edge their lines lie 1.0 cm apart at the waist and 1.0 cm at the hip.' }]);
    expect(choice.view.levels.map(({ ease }) => ease?.usual)).toEqual([
      undefined, 'The table', expect.stringContaining('1.3 cm to 1.9 cm; their source: costume textbook'), expect.stringContaining('3.0 cm to 5.0 cm; their source: from memory'),
    ].map((each, i) => (i === 1 ? '' : each)));
    expect(choice.put?.levels.map(({ ease }) => ease && [ease.low, ease.high])).toEqual([['0.5 in', '0.75 in'], ['3 cm', '5 cm']]);
  });
});
