import { describe, expect, it } from 'vitest';
import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { readQuantity } from '../../../src/quantities/index.ts';
import { asText, chartSheet, type ChartReading } from '../../../src/tables/index.ts';
import { readChart } from '../../../src/sewing/index.ts';
import { fixture, read, valueOf } from './support.ts';

const raws = (reading: ChartReading): string[][] => chartSheet(reading, 'Chart').sheet.rows.map((row) => [...(row ?? [])].map((cell) => cell?.raw ?? ''));

/** The named block as the size functions get it. */
function chartOf(reading: ChartReading) {
  const { sheet, area } = chartSheet(reading, 'Chart');
  const grid = Array.from({ length: area.bottom - area.top + 1 }, (_, r) => Array.from({ length: area.right - area.left + 1 }, (_, c) => {
    const raw = sheet.rows[area.top + r]?.[area.left + c]?.raw ?? '';
    return raw === '' ? null : valueOf(raw);
  }));
  const chart = readChart(grid);
  if ('sentence' in chart) throw new Error(chart.sentence);
  return chart;
}

describe('asText', () => {
  it.each([['00', "'00"], ['1/2', "'1/2"], ['36-38', "'36-38"], ['6m', "'6m"], ['=A1', "'=A1"], ["'s", "''s"], ['true', "'true"], ['2 5/4', "'2 5/4"], ["'=A1", "'=A1"], ['XS', 'XS'], ['10/12', '10/12'], ['160/84A', '160/84A'], ['', '']])('%s', (text, raw) => {
    expect(asText(text)).toBe(raw);
  });
});

describe('the sheet of a chart', () => {
  it('keeps her orientation, her fractions, her sizes', () => {
    const { sheet, area } = chartSheet(read(fixture('astm-d5585-11e1-misses-in-fractions.csv')), 'Misses');
    expect(area).toEqual({ top: 0, left: 0, bottom: 9, right: 12 });
    expect(sheet).toMatchObject({ name: 'Misses', about: 'sizes 00 – 20, in' });
    expect(sheet.rows[0]!.slice(0, 4).map((cell) => cell?.raw)).toEqual(['measurement', "'00", '0', '2']);
    expect(sheet.rows[0]!.every((cell) => cell?.look?.heading)).toBe(true);
    expect(sheet.rows[5]!.slice(0, 3).map((cell) => cell?.raw)).toEqual(['bust girth', '31 1/8 in', '31 3/4 in']);
  });
  it('keeps titles and notes around the chart, outside of the named block', () => {
    const { area } = chartSheet(read(fixture('titles-and-notes-cm.csv')), 'Chart');
    const rows = raws(read(fixture('titles-and-notes-cm.csv')));
    expect(area).toEqual({ top: 3, left: 0, bottom: 9, right: 5 });
    expect([rows[0], rows[1], rows[2], rows[11]]).toEqual([['Heather block'], ['All measures in centimetres, taken over underwear'], [], ['Note: sizes run small, see the card']]);
  });
  it('keeps what stands to the left of the chart', () => {
    const rows = raws(read('group,measure,8,10\n,,,\nupper,bust (cm),84,88\n,waist (cm),68,72\n,hip (cm),92,96', { firstColumn: 1 }));
    expect(rows[1]!.slice(0, 3)).toEqual(['upper', 'bust', '84 cm']);
  });
  it('keeps what cannot be read as text, with the reason as a note', () => {
    const reading = read(fixture('unreadable.csv'));
    const { sheet, marks } = chartSheet(reading, 'Chart');
    expect(marks).toHaveLength(reading.unreadable.length);
    marks.forEach(({ row, col, sentence }, i) => {
      const cell = sheet.rows[row]![col]!;
      expect(valueOf(cell.raw)).toBe(reading.unreadable[i]!.text);
      expect(cell.note).toBe(sentence);
    });
  });
  it('works no formula of a file out', () => {
    for (const raw of raws(read(fixture('formulas.csv'))).flat()) expect(raw.startsWith('=')).toBe(false);
  });
  it('gives a first column of figures a column of names before it', () => {
    expect(raws(read('bust_cm,waist_cm\n76,60\n80,64'))).toEqual([['size', 'bust', 'waist'], ['76', '76 cm', '60 cm'], ['80', '80 cm', '64 cm']]);
  });
  it('has cells that are read as the figures of the reading', () => {
    for (const name of readdirSync(new URL('fixtures', import.meta.url))) {
      const reading = read(fixture(name));
      for (const cell of reading.cells.flat()) {
        if (cell.kind !== 'figure') continue;
        const found = readQuantity(cell.raw);
        expect(found.kind === 'quantity' ? found.quantity : found.kind === 'span' ? found.span : found).toEqual(cell.value);
      }
    }
  });
});

describe('the size functions', () => {
  it('find 00 beside 0, and every measure', () => {
    const reading = read(fixture('astm-d5585-11e1-misses-in-fractions.csv'));
    const chart = chartOf(reading);
    expect(chart.sizes).toEqual(reading.sizeLabels.map(({ label }) => label));
    expect(chart.measures).toEqual(reading.measures.map(({ name }) => name));
  });
  it.each(['titles-and-notes-cm.csv', 'two-heading-rows.csv', 'units-in-cells.csv', 'both-units-side-by-side.csv', 'unit-column.csv', 'sizes-down-letters-offset.csv', 'semicolon-decimal-comma-windows-1252.csv'])('read %s', (name) => {
    const reading = read(fixture(name));
    const chart = chartOf(reading);
    for (const measure of reading.measures) {
      if (measure.kind === 'lengths') expect(chart.measure(measure.name), measure.name).not.toHaveProperty('sentence');
    }
  });
});

/** `SIZE_TABLES=folder` reads every chart of a folder as well: files whose names end in `-cm.csv` or have `-in` in them. */
const folder = process.env['SIZE_TABLES'] ?? '';
describe.skipIf(!existsSync(folder))('charts of another folder', () => {
  for (const name of existsSync(folder) ? readdirSync(folder).filter((each) => each.endsWith('.csv')) : []) {
    it(`${name} is read whole, without a guess`, () => {
      const reading = read(new Uint8Array(readFileSync(join(folder, name))));
      expect(reading.unreadable).toEqual([]);
      expect(reading.unit).toMatchObject({ value: name.includes('-cm') ? 'cm' : 'in', by: 'file' });
      expect([reading.sizes.by, reading.headerRow.by, reading.separator?.by]).toEqual(['file', 'file', 'file']);
      const chart = chartOf(reading);
      for (const { name: measure, kind } of reading.measures) {
        if (kind === 'lengths') expect(chart.measure(measure.replace(/ (?:from|to)$/, ''))).not.toHaveProperty('sentence');
      }
    });
  }
});
