/** The cutting ticket: what is on it by itself, what is left off, and that its figures are the grid's. */
import { describe, expect, it } from 'vitest';
import { demoBook } from '../../../src/app/demo.ts';
import { putSizesEdit } from '../../../src/app/size-choice-sheet.ts';
import { sheetView } from '../../../src/app/sheet-view.ts';
import { WHOLE_TICKET, cautionTexts, inOtherSystem, ticketOf, ticketParts } from '../../../src/app/ticket.ts';
import { TICKET, rowKey, ticketKeys, ticketRecord } from '../../../src/app/ticket-choice.ts';
import type { ShowAs } from '../../../src/quantities/index.ts';
import { Results } from '../../../src/reckoning/index.ts';
import { apply, emptySheet, sheetById, type Book } from '../../../src/workbook/index.ts';
import { Engine } from '../../../workers/reckon/engine.ts';

const HEAD = { title: 'Linden tea dress', person: 'Aunt Oda', date: '25 November 2026' };
const OWN: ShowAs = { system: 'own', inchStep: 8 };
const book = demoBook('test');
const resultsOf = (of: Book): Results => {
  const results = new Results();
  results.apply(new Engine().open(1, of));
  return results;
};
const results = resultsOf(book);
const rowOf = (label: string, from = '', as = OWN) => ticketParts(book, results, as).flatMap(({ rows }) => rows).find((row) => row.label === label && row.from === from)!;

describe('a cutting ticket', () => {
  it.each(['own', 'cm', 'in', 'both'] as const)('has the figures of the grid, shown %s', (system) => {
    const as: ShowAs = { system, inchStep: 16 };
    const { parts } = ticketOf(book, results, WHOLE_TICKET, as, HEAD);
    let figures = 0;
    for (const figure of parts.flatMap(({ rows }) => rows.flatMap((row) => row.figures))) {
      const { sheet, row, col } = figure.cell;
      const cell = sheetView(sheetById(book, sheet)!, results, as, false).cell(row, col)!;
      expect(figure.main).toBe(cell.text);
      if (system === 'both') expect(figure.also).toBe(cell.also);
      figures += 1;
    }
    expect(figures).toBeGreaterThan(100);
  });

  it('begins with the sizes at their levels, then seam by seam, then sheet by sheet', () => {
    const parts = ticketParts(book, results, OWN);
    expect(parts.map(({ name }) => name).slice(0, 3)).toEqual(['Sizes by level', 'Seam by seam', 'Measures']);
    expect(rowOf('Size to cut', 'Fit').figures.map(({ head, main }) => `${head} ${main}`)).toEqual(['Bust 16', 'Waist 18', 'Hip 16']);
    // How far an edge moves is on it though somebody typed it, with the seam's other figures.
    expect(rowOf('Side seams', 'Alterations').figures.map(({ head, main, kind }) => [head, main, kind])).toEqual([
      ['Alike', '2', 'typed'], ['Allowance', '1.5 cm', 'typed'], ['Edge moves', '−0.4 cm', 'figure'], ['Girth', '−1.8 cm', 'figure'], ['Left in it', '1.9 cm', 'figure'],
    ]);
  });

  it('has the sizes that were chosen level by level, and their blends', () => {
    const level = (name: string, raw: string) => ({ name, raw, measure: name });
    const wish = { chart: 'chart', style: 'fitted', change: '1 cm', apart: '2', seams: '2', levels: [level('bust', '88 cm'), level('waist', '70 cm'), level('hip', '104 cm')], isEase: false, downs: [{ raw: '17 cm', usual: true }, { raw: '20 cm', usual: true }] };
    const id = book.nextSheetId;
    const added = apply({ do: 'addSheet', at: 0, sheet: emptySheet(id, 'Sizes') }, book).book;
    const chosen = apply(putSizesEdit(wish, { sheet: id, row: 0, col: 0 }, sheetById(added, id)!), added).book;
    const [sizes] = ticketParts(chosen, resultsOf(chosen), OWN);
    const texts = sizes!.rows.filter(({ from }) => from === 'Sizes').map(({ label, figures }) => `${label}: ${figures.map(({ head, main }) => `${head} ${main}`).join(', ')}`);
    expect(texts.slice(0, 3)).toEqual(['bust: Size 14', 'waist: Size 14', 'hip: Size 18']);
    expect(texts.slice(3).map((text) => text.split(', Lines')[0])).toEqual(['Bust to waist: From size 14, To size 14, Over 17.0 cm', 'Waist to hip: From size 14, To size 18, Over 20.0 cm']);
  });

  it('by itself has one size for a level: the one to cut, and not what led there', () => {
    const parts = ticketParts(book, results, OWN);
    const { out } = ticketKeys(book, parts, cautionTexts(book, results, OWN));
    expect(parts[0]!.rows.map(({ label, key }) => `${label}${out.includes(key) ? ' left off' : ''}`)).toEqual(['Nearest size left off', 'Size to cut', 'Best single size left off']);
  });

  it('has a size that was typed over the formula', () => {
    const fit = book.sheets.find(({ name }) => name === 'Fit')!;
    const typed = apply({ do: 'setCells', sheet: fit.id, cells: [1, 2, 3].map((col) => ({ row: 9, col, cell: { raw: '20', input: true } })) }, book).book;
    const row = ticketParts(typed, resultsOf(typed), OWN)[0]!.rows.find(({ label }) => label === 'Size to cut')!;
    expect(row.figures.map(({ main, kind }) => [main, kind])).toEqual([['20', 'typed'], ['20', 'typed'], ['20', 'typed']]);
  });

  it('leaves off what is not wanted; and with the last row of a sheet its cautions', () => {
    const whole = ticketOf(book, results, WHOLE_TICKET, OWN, HEAD);
    expect(whole.cautions.some(({ place }) => place.startsWith('Circle skirt'))).toBe(true);
    const circle = whole.parts.find(({ name }) => name === 'Circle skirt')!;
    const out = new Set(circle.rows.map(({ key }) => key));
    const less = ticketOf(book, results, { out }, OWN, HEAD);
    expect(less.parts.map(({ name }) => name)).toEqual(whole.parts.map(({ name }) => name).filter((name) => name !== 'Circle skirt'));
    expect(less.cautions).toEqual(whole.cautions.filter(({ place }) => !place.startsWith('Circle skirt')));
    const [first] = circle.rows;
    expect(ticketOf(book, results, { out: new Set([first!.key]) }, OWN, HEAD).parts.find(({ name }) => name === 'Circle skirt')!.rows).toEqual(circle.rows.slice(1));
  });

  it('has no caution that was acknowledged', () => {
    const whole = ticketOf(book, results, WHOLE_TICKET, OWN, HEAD);
    const [pin] = book.sheets.flatMap(({ id }) => results.pins.of(id));
    const { sheet, row, col, cautions } = pin!;
    const seen = apply({ do: 'acknowledge', sheet, row, col, pins: cautions.map(({ print }) => ({ print, note: '' })) }, book).book;
    expect(ticketOf(seen, results, WHOLE_TICKET, OWN, HEAD).cautions).toHaveLength(whole.cautions.length - cautions.length);
  });

  it('has a key for every row', () => {
    const keys = ticketParts(book, results, OWN).flatMap(({ rows }) => rows.map(({ key }) => key));
    expect(new Set(keys).size).toBe(keys.length);
  });

  it('says how many rows of each part are not on it', () => {
    const [first, second] = ticketParts(book, results, OWN).find(({ name }) => name === 'Skirt')!.rows;
    expect(ticketOf(book, results, { out: new Set([first!.key, second!.key]) }, OWN, HEAD).left).toEqual([{ name: 'Skirt', rows: 2 }]);
    expect(ticketOf(book, results, WHOLE_TICKET, OWN, HEAD).left).toEqual([]);
  });

  it('offers a picture only where the whole formula is one call that has one', () => {
    expect(rowOf('Each seam edge moves by', 'Fit').pictured).not.toBeNull();
    expect(rowOf('Nearest size', 'Fit').pictured).toBeNull();
  });

  it('has the other system beside each length, whichever the grid shows', () => {
    const length = { kind: 'quantity', value: 254, unit: 'in' } as const;
    expect(inOtherSystem(length, undefined, OWN)).toBe('25.4 cm');
    expect(inOtherSystem(length, undefined, { ...OWN, system: 'cm' })).toBe('10 in');
    expect(inOtherSystem(length, undefined, { ...OWN, system: 'in' })).toBe('25.4 cm');
    expect(inOtherSystem({ ...length, unit: 'cm' }, { raw: '', look: { unit: 'in' } }, OWN)).toBe('25.4 cm');
    expect(inOtherSystem({ ...length, unit: '' }, undefined, OWN)).toBeUndefined();
  });
});

describe('what goes on the ticket', () => {
  const parts = ticketParts(book, results, OWN);
  const cautions = cautionTexts(book, results, OWN);
  const labels = (of: Book, out: readonly string[]): string[] => ticketParts(of, resultsOf(of), OWN).flatMap(({ rows }) => rows.filter(({ key }) => !out.includes(key)).map(({ label }) => label));
  const usual = ticketKeys(book, parts, cautions);

  it('is by itself what is cut by, and all button places or none', () => {
    const on = labels(book, usual.out);
    expect(on).toEqual(expect.arrayContaining(['Size to cut', 'Side seams', 'Centre back seam', 'Flat width to cut', 'Length to cut', 'Outer radius to cut', 'Button 1', 'Button 11']));
    for (const off of ['Usual ease', 'Bust less upper chest', 'Main cloth', 'Together', 'Body measure', 'Check: depth from that width', 'Side front seams']) expect(on).not.toContain(off);
  });

  it('has sizes and seams that change where there is no room for the rest', () => {
    const long = ticketKeys(book, parts, () => Array.from({ length: 40 }, () => 'x'.repeat(300)));
    expect(labels(book, long.out)).toEqual(['Size to cut', 'Each seam edge moves by', 'Side seams', 'Centre back seam', 'Each edge moves', 'Most that they can be let out', 'Stands in it if taken in']);
    expect(labels(book, ticketKeys(book, parts, () => []).out).length).toBeGreaterThanOrEqual(labels(book, usual.out).length);
  });

  it('is kept with the workbook once she chose, and follows its rows', () => {
    const skirt = book.sheets.find(({ name }) => name === 'Skirt')!;
    const row = parts.flatMap(({ rows }) => rows).find(({ label, sheet }) => label === 'Flat width to cut' && sheet === skirt.id)!;
    const data = ticketRecord(book, parts, { out: [row.key], pictures: [row.key] });
    expect(data).toEqual({ leftOut: ['=Skirt!B15'], pictures: ['=Skirt!B15'] });
    const kept = apply({ do: 'setRecord', kind: 'ticket', id: TICKET, data }, book).book;
    const moved = apply({ do: 'renameSheet', sheet: skirt.id, name: 'Box pleats, 2026' }, apply({ do: 'insertRows', sheet: skirt.id, at: 2, count: 2 }, kept).book).book;
    const keys = ticketKeys(moved, ticketParts(moved, resultsOf(moved), OWN), () => []);
    expect(keys).toEqual({ out: [rowKey(skirt.id, 16)], pictures: [rowKey(skirt.id, 16)] });
    expect(labels(moved, keys.out)).toHaveLength(labels(book, []).length - 1);
    const gone = apply({ do: 'removeSheet', sheet: skirt.id }, moved).book;
    expect(ticketKeys(gone, [], () => [])).toEqual({ out: [], pictures: [] });
  });
});
