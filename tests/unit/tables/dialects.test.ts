/** One chart, written in many ways, is always read as the same chart. */
import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { quantity, type Quantity, type Span } from '../../../src/quantities/index.ts';
import { readTable, type ChartReading } from '../../../src/tables/index.ts';
import { read } from './support.ts';

const SIZES = {
  even: ['6', '8', '10', '12', '14', '16', '18'], zero: ['00', '0', '2', '4', '6', '8', '10'], letters: ['XXS', 'XS', 'S', 'M', 'L', 'XL', '2XL'],
  pairs: ['8/10', '12/14', '16/18', '20/22', '24/26', '28/30', '32/34'], codes: ['3AR', '5AR', '7AR', '9AR', '11AR', '13AR', '15AR'],
  bodies: ['145/72A', '150/76A', '155/80A', '160/84A', '165/88A', '170/92A', '175/96A'],
} as const;
const MEASURES = ['Bust', 'Waist', 'High hip', 'Hip', 'Back waist length', 'Shoulder length', 'Upper arm girth', 'Inside leg'];

/** A figure of the chart, before it is written: in eighths of an inch, or hundredths of a centimetre. */
type Figure =
  | { readonly kind: 'one'; readonly parts: number }
  | { readonly kind: 'range'; readonly parts: number; readonly wide: number }
  | { readonly kind: 'none'; readonly sign: string }
  | { readonly kind: 'odd'; readonly text: string };

const figures = fc.oneof(
  { weight: 12, arbitrary: fc.record({ kind: fc.constant('one' as const), parts: fc.integer({ min: 40, max: 900 }) }) },
  { weight: 2, arbitrary: fc.record({ kind: fc.constant('range' as const), parts: fc.integer({ min: 40, max: 900 }), wide: fc.integer({ min: 1, max: 40 }) }) },
  { weight: 2, arbitrary: fc.record({ kind: fc.constant('none' as const), sign: fc.constantFrom('', '-', '–', 'n/a', 'NA', '.') }) },
  { weight: 1, arbitrary: fc.record({ kind: fc.constant('odd' as const), text: fc.constantFrom('3O', 'ask', '38?', '2 5/4', '~40', '12 hooks') }) },
);

const charts = fc.record({
  unit: fc.constantFrom('in' as const, 'cm' as const),
  sizes: fc.constantFrom(...Object.keys(SIZES) as (keyof typeof SIZES)[]),
  sizeCount: fc.integer({ min: 3, max: 7 }),
  measureCount: fc.integer({ min: 2, max: 8 }),
  figures: fc.array(figures, { minLength: 56, maxLength: 56 }),
});

const dialects = fc.record({
  separator: fc.constantFrom(',' as const, ';' as const, '\t' as const),
  encoding: fc.constantFrom('utf-8', 'utf-8 mark', 'utf-16le mark', 'utf-16be mark', 'utf-16le', 'utf-16be', 'windows-1252', 'pasted' as const),
  comma: fc.boolean(),
  across: fc.boolean(),
  unitAt: fc.constantFrom('brackets', 'words', 'underscore', 'comma', 'square', 'corner', 'note above', 'note below', 'cells', 'beside' as const),
  fraction: fc.constantFrom('slash', 'sign', 'decimal' as const),
  dash: fc.constantFrom('–', '-', ' - ', ' to '),
  title: fc.boolean(),
  quotes: fc.boolean(),
  newline: fc.constantFrom('\n', '\r\n'),
  margin: fc.boolean(),
});
type Chart = typeof charts extends fc.Arbitrary<infer T> ? T : never;
type Dialect = typeof dialects extends fc.Arbitrary<infer T> ? T : never;

const EIGHTHS = ['', '⅛', '¼', '⅜', '½', '⅝', '¾', '⅞'];
/** Windows-1252 has only these of the fraction signs. */
const EIGHTHS_1252 = ['', '1/8', '¼', '3/8', '½', '5/8', '¾', '7/8'];

function amountOf(parts: number, chart: Chart, dialect: Dialect): string {
  const decimal = (n: number): string => String(n).replace('.', dialect.comma ? ',' : '.');
  if (chart.unit === 'cm') return decimal(parts / 5);
  const whole = Math.floor(parts / 8);
  const eighth = parts % 8;
  if (dialect.fraction === 'decimal') return decimal(parts / 8);
  if (eighth === 0) return String(whole);
  if (dialect.fraction === 'sign' && dialect.encoding !== 'windows-1252') return `${whole}${EIGHTHS[eighth]}`;
  if (dialect.fraction === 'sign' && EIGHTHS_1252[eighth]!.length === 1) return `${whole}${EIGHTHS_1252[eighth]}`;
  const [top, bottom] = eighth % 4 === 0 ? [1, 2] : eighth % 2 === 0 ? [eighth / 2, 4] : [eighth, 8];
  return `${whole} ${top}/${bottom}`;
}

function written(figure: Figure, chart: Chart, dialect: Dialect): string {
  const unit = dialect.unitAt === 'cells' ? ` ${chart.unit}` : '';
  const dash = dialect.encoding === 'windows-1252' && dialect.dash === '–' ? '-' : dialect.dash;
  switch (figure.kind) {
    case 'one': return amountOf(figure.parts, chart, dialect) + unit;
    case 'range': return amountOf(figure.parts, chart, dialect) + dash + amountOf(figure.parts + figure.wide, chart, dialect) + unit;
    case 'none': return dialect.encoding === 'windows-1252' && figure.sign === '–' ? '-' : figure.sign;
    case 'odd': return figure.text;
  }
}

const valueIn = (parts: number, chart: Chart): Quantity => quantity(chart.unit === 'cm' ? parts / 5 : parts / 8, chart.unit);

function headed(name: string, { unitAt }: Dialect, { unit }: Chart): string {
  const words = unit === 'cm' ? 'centimetres' : 'inches';
  switch (unitAt) {
    case 'brackets': return `${name} (${unit})`;
    case 'square': return `${name} [${unit}]`;
    case 'words': return `${name} in ${words}`;
    case 'underscore': return `${name.toLowerCase().replaceAll(' ', '_')}_${unit}`;
    case 'comma': return `${name}, ${unit}`;
    default: return name;
  }
}

function parts(chart: Chart): { sizes: readonly string[]; measures: readonly string[]; at: (m: number, s: number) => Figure } {
  const sizes = SIZES[chart.sizes].slice(0, chart.sizeCount);
  const measures = MEASURES.slice(0, chart.measureCount);
  // The first figure of each size and each measure is there, so that no line of the table is empty.
  const at = (m: number, s: number): Figure => (m === 0 || s === 0 ? { kind: 'one', parts: 200 + m + s } : chart.figures[m * 7 + s]!);
  return { sizes, measures, at };
}

function fileOf(chart: Chart, dialect: Dialect): Uint8Array | string {
  const { sizes, measures, at } = parts(chart);
  const corner = dialect.unitAt === 'corner' ? (dialect.across ? `measurement_${chart.unit}` : `Size (${chart.unit})`) : dialect.across ? 'Measure' : 'Size';
  const heads = measures.map((name) => headed(name, dialect, chart));
  const beside = dialect.unitAt === 'beside';
  const table = dialect.across
    ? [[corner, ...(beside ? ['Unit'] : []), ...sizes], ...measures.map((_, m) => [heads[m]!, ...(beside ? [chart.unit] : []), ...sizes.map((_, s) => written(at(m, s), chart, dialect))])]
    : [[corner, ...heads], ...(beside ? [['', ...measures.map(() => chart.unit)]] : []), ...sizes.map((size, s) => [size, ...measures.map((_, m) => written(at(m, s), chart, dialect))])];
  const note = `All measures in ${chart.unit === 'cm' ? 'centimetres' : 'inches'}`;
  const rows = [
    ...(dialect.title ? [['Marigold blouse'], ['']] : []),
    ...(dialect.unitAt === 'note above' ? [[note]] : []),
    ...(dialect.margin ? table.map((row) => ['', ...row]) : table),
    ...(dialect.unitAt === 'note below' ? [[''], [note]] : []),
  ];
  const text = Papa.unparse(rows as string[][], { delimiter: dialect.separator, quotes: dialect.quotes, newline: dialect.newline });
  const wide = (little: boolean): number[] => [...text].flatMap((c) => {
    const code = c.charCodeAt(0);
    return little ? [code & 255, code >> 8] : [code >> 8, code & 255];
  });
  switch (dialect.encoding) {
    case 'utf-8': return new TextEncoder().encode(text);
    case 'utf-8 mark': return new TextEncoder().encode(`\uFEFF${text}`);
    case 'utf-16le mark': return Uint8Array.from([0xff, 0xfe, ...wide(true)]);
    case 'utf-16be mark': return Uint8Array.from([0xfe, 0xff, ...wide(false)]);
    case 'utf-16le': return Uint8Array.from(wide(true));
    case 'utf-16be': return Uint8Array.from(wide(false));
    case 'windows-1252': return Uint8Array.from([...text].map((c) => c.charCodeAt(0)));
    default: return text;
  }
}

/** What a dialect does not say cannot be understood: this one says its unit and its decimal mark. */
function check(reading: ChartReading, chart: Chart, dialect: Dialect): void {
  const { sizes, measures, at } = parts(chart);
  expect(reading.sizes.value).toBe(dialect.across ? 'across' : 'down');
  expect(reading.sizeLabels.map(({ label }) => label)).toEqual(sizes);
  expect(reading.measures.map(({ name }) => name.toLowerCase())).toEqual(measures.map((name) => name.toLowerCase()));
  const odd: string[] = [];
  measures.forEach((_, m) => sizes.forEach((_, s) => {
    const figure = at(m, s);
    const cell = reading.cells[m]![s]!;
    const place = `${measures[m]} at ${sizes[s]}`;
    if (figure.kind === 'none') expect(cell.kind, place).toBe('none');
    else if (figure.kind === 'odd') {
      expect(cell, place).toMatchObject({ kind: 'unreadable', raw: figure.text });
      odd.push(figure.text);
    } else {
      const low = valueIn(figure.parts, chart);
      const value: Quantity | Span = figure.kind === 'one' ? low : { low, high: valueIn(figure.parts + figure.wide, chart) };
      expect(cell.kind === 'figure' ? cell.value : cell, place).toEqual(value);
    }
  }));
  expect(reading.unreadable.map(({ text }) => text).sort()).toEqual(odd.sort());
  for (const { row, col, text } of reading.unreadable) expect(reading.rows[row]![col]).toBe(text);
}

describe('a chart in any dialect', () => {
  it('is read as it was written', () => {
    let read1252 = 0;
    fc.assert(fc.property(charts, dialects, (chart, dialect) => {
      if (dialect.encoding === 'windows-1252') read1252++;
      check(read(fileOf(chart, dialect)), chart, dialect);
    }), { numRuns: 1_200 });
    expect(read1252).toBeGreaterThan(80);
  });

  it('never throws, whatever the text', () => {
    const pieces = fc.constantFrom(',', ';', '\t', '\n', '"', "'", '=', '1', '36 1/4', '½', 'in', 'cm', 'Bust', 'Size', '-', '–', '8', '10/12', '(', ')', ' ', '.', '\u0000', '\uFEFF', 'from', 'to', '%');
    fc.assert(fc.property(fc.array(pieces, { maxLength: 80 }), (all) => {
      const reading = readTable(all.join(''));
      if ('sentence' in reading) expect(reading.sentence).toMatch(/\.$/);
      else for (const cell of reading.cells.flat()) if (cell.kind === 'figure') expect(Number.isNaN('low' in cell.value ? cell.value.low.value : cell.value.value)).toBe(false);
    }), { numRuns: 3_000 });
    fc.assert(fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
      readTable(bytes);
    }), { numRuns: 2_000 });
  });
});
