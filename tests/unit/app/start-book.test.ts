/** A workbook to begin with: every garment computes, holds her figures and nobody else's, and says where a figure is only usual. */
import { describe, expect, test } from 'vitest';
import { GARMENTS, MORE_SHEETS } from '../../../src/app/garments.ts';
import { calledInChart, startBook, type StartWish } from '../../../src/app/start-book.ts';
import { NOBODY, standing } from '../../../src/people/index.ts';
import { Results } from '../../../src/reckoning/index.ts';
import { readTable, type ChartReading } from '../../../src/tables/index.ts';
import { cellAt, filledCells, nameCalled, readBookText, bookText, recordsOf, sheetNamed, type Book, type Person } from '../../../src/workbook/index.ts';
import { Engine } from '../../../workers/reckon/engine.ts';

const reading = readTable('Measure (cm),10,12,14,16,18\nBust girth,80,84,88,92,97\nHigh bust,78,82,86,90,94\nWaist,62,66,70,74,79\nHip girth,87,91,95,99,104');
if ('sentence' in reading) throw new Error(reading.sentence);
const CHART: ChartReading = reading;

const mara = (measures: Record<string, string>, more: Partial<Person> = {}): Person => ({
  ...NOBODY, name: 'Mara',
  sets: [{ id: 's', day: '2026-11-20', by: 'Ilse', remark: '', measures: Object.entries(measures).map(([of, raw]) => ({ of, raw })) }], ...more,
});
const LEAST = { bust: '36 1/4 in', waist: '75 cm', hip: '98.5 cm' };
const wish = (more: Partial<StartWish> = {}): StartWish => ({
  garment: 'dress', more: [], title: 'Summer dress', show: 'both', personId: 'p', person: mara(LEAST), years: '', chart: CHART, ease: [], length: '', remember: [], ...more,
});
const resultsOf = (book: Book): Results => {
  const results = new Results();
  results.apply(new Engine().open(1, book));
  return results;
};
/** Every cell whose result is an error, with its sentence. */
const errorsIn = (book: Book): string[] => {
  const results = resultsOf(book);
  return book.sheets.flatMap((sheet) => [...filledCells(sheet)].flatMap(({ row, col, cell }) => {
    const result = results.at(sheet.id, row, col);
    return result.kind === 'error' ? [`${sheet.name} ${row + 1} ${col + 1} ${cell.raw}: ${result.sentence}`] : [];
  }));
};
const raw = (book: Book, sheet: string, row: number, col: number) => cellAt(sheetNamed(book, sheet)!, row, col)?.raw;

describe('every garment', () => {
  test.each(GARMENTS.map(({ id }) => id))('%s computes from just what it asks for, with every sheet that can come besides', (garment) => {
    const { asks } = GARMENTS.find(({ id }) => id === garment)!;
    const measures = Object.fromEntries(asks.map((of) => [of, LEAST[of as keyof typeof LEAST]]));
    const book = startBook(wish({ garment, person: mara(measures, { child: true }), years: '7', more: MORE_SHEETS.map(({ template }) => template) }));
    expect(errorsIn(book)).toEqual([]);
    expect(readBookText(bookText(book)).problems).toEqual([]);
  });

  test.each(GARMENTS.map(({ id, cloth }) => [id, cloth]))('%s brings its cloth to the list of what to buy, which has no price, need or store of anyone else', (garment, cloth) => {
    const book = startBook(wish({ garment, person: mara({ ...LEAST, 'waist to hip': '20 cm' }) }));
    const buy = sheetNamed(book, 'To buy')!;
    const main = buy.rows.findIndex((row) => row?.[0]?.raw === 'Main cloth');
    expect(cellAt(buy, main, 2)!.raw).toBe(cloth ?? '0 m');
    expect(cellAt(buy, main, 2)!.note ?? '').toMatch(cloth ? /^$/ : /pattern’s envelope/);
    const results = resultsOf(book);
    const figures = [...filledCells(buy)].flatMap(({ row, col, cell }) => {
      const result = results.at(buy.id, row, col);
      return cell.raw.startsWith('=') && result.kind === 'quantity' && row !== main && col === 6 ? [result.value] : [];
    });
    // Only the main cloth, and the thread that sews it.
    expect(figures.filter((value) => value > 0)).toHaveLength(cloth ? 2 : 1);
  });
});

describe('a dress', () => {
  const book = startBook(wish());

  test('opens on size and ease, which come out of her measures and the chart', () => {
    expect(book.sheets.map(({ name }) => name)).toEqual(['Fit', 'Alterations', 'Measures', 'Size chart', 'Usual values', 'To buy']);
    const [fit] = book.sheets;
    const results = resultsOf(book);
    // Bust 36 1/4 in is 92.075 cm: size 16 has 92. Waist 75: 16 has 74. Hip 98.5: 16 has 99.
    expect([1, 2, 3].map((col) => results.at(fit!.id, 9, col))).toMatchObject([{ value: 16 }, { value: 16 }, { value: 16 }]);
    expect(raw(book, 'Fit', 2, 1)).toBe('Bust girth');
  });

  test('is not longer than its pattern until she says so', () => {
    expect(raw(book, 'Alterations', 23, 0)).toBe('Longer by');
    expect(resultsOf(book).at(sheetNamed(book, 'Alterations')!.id, 26, 1)).toMatchObject({ kind: 'quantity', value: 0 });
  });

  test('no figure of the template stays among her measures', () => {
    const measures = sheetNamed(book, 'Measures')!;
    const figures = book.names.filter(({ area }) => area?.sheet === measures.id).map(({ name, area }) => [name, cellAt(measures, area!.top, area!.left)?.raw ?? ''] as const).filter(([, typed]) => typed !== '');
    expect(Object.fromEntries(figures)).toEqual(LEAST);
    expect([raw(book, 'Measures', 0, 1), raw(book, 'Measures', 16, 1), raw(book, 'Measures', 17, 1)]).toEqual(['Mara', '2026-11-20', 'Ilse']);
  });

  test('where a figure is the template’s, its cell says so', () => {
    expect([1, 2, 3].map((col) => cellAt(sheetNamed(book, 'Fit')!, 10, col)?.note)).toEqual(Array(3).fill(expect.stringMatching(/not this pattern’s/)));
    expect([1, 2].map((col) => cellAt(sheetNamed(startBook(wish({ garment: 'skirt' })), 'Fit')!, 10, col)?.note ?? '')).toEqual(['', expect.stringMatching(/not this pattern’s/)]);
    expect(cellAt(sheetNamed(book, 'Fit')!, 24, 1)).toMatchObject({ raw: '20 cm', note: expect.stringMatching(/not hers/) });
    const measured = startBook(wish({ person: mara({ ...LEAST, 'waist to hip': '19 cm' }) }));
    expect(cellAt(sheetNamed(measured, 'Fit')!, 24, 1)).toEqual({ raw: '=waist to hip', input: true });
  });

  test('the record knows where each measure stands', () => {
    const { data } = recordsOf(book, 'person')[0]!;
    expect(standing(book, data).map(({ of, state }) => [of, state])).toEqual([['bust', 'same'], ['waist', 'same'], ['hip', 'same']]);
  });

  test('measures of her own have rows and names too', () => {
    const own = startBook(wish({ person: mara({ ...LEAST, 'round the fist': '22 cm' }) }));
    const area = nameCalled(own, 'round the fist')!.area!;
    expect(cellAt(sheetNamed(own, 'Measures')!, area.top, 1)).toEqual({ raw: '22 cm', input: true });
    const { data } = recordsOf(own, 'person')[0]!;
    expect(standing(own, data)).toHaveLength(4);
    expect(errorsIn(own)).toEqual([]);
  });

  test('without a chart the sheet Fit waits for one, and the rest is there', () => {
    const waiting = startBook(wish({ chart: null }));
    expect(waiting.sheets.map(({ name }) => name)).not.toContain('Size chart');
    expect(errorsIn(waiting).filter((line) => !/^(Fit|Alterations) /.test(line))).toEqual([]);
  });
});

test('what worked last time: ease by level, length, and the lines to remember, none of them read as a formula', () => {
  const book = startBook(wish({ garment: 'pleated-skirt', ease: [{ level: 'Waist', raw: '1 cm' }, { level: 'hip', raw: '5 cm' }], length: '26 in', remember: ['=narrow shoulder', '1 cm off the back', 'below the knee'] }));
  expect([raw(book, 'Skirt', 3, 1), raw(book, 'Skirt', 4, 1), raw(book, 'Skirt', 19, 1)]).toEqual(['1 cm', '5 cm', '26 in']);
  expect([1, 2, 3].map((row) => raw(book, 'To remember', row, 0))).toEqual(["'=narrow shoulder", "'1 cm off the back", 'below the knee']);
  expect(errorsIn(book)).toEqual([]);
});

test('a child’s garment brings the notes on cords, fire and small parts; an age that is not told counts as 0', () => {
  const book = startBook(wish({ garment: 'pleated-skirt', person: mara(LEAST, { child: true }) }));
  const notes = sheetNamed(book, 'Child’s garment')!;
  expect([cellAt(notes, 0, 0)?.raw, cellAt(notes, 3, 1)]).toEqual(['Child’s garment: what to check', { raw: '', input: true }]);
  expect(notes.about).toMatch(/local rules and licensed practice decide/);
});

test.each([['bust', 'Bust girth'], ['waist', 'Waist'], ['hip', 'Hip girth'], ['head', undefined]])('%s is called %s in the chart', (level, name) => {
  expect(calledInChart(CHART, level)).toBe(name);
});
