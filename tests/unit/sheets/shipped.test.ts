/** What ships as data: every template and the demo garment open without an error and say what they should. */
import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import linden from '../../../sheets/demo.json';
import { demoBook } from '../../../src/app/demo.ts';
import { SHIPPED_IDS, shippedTemplate } from '../../../src/app/shipped.ts';
import { chartEdit } from '../../../src/app/chart-edit.ts';
import { cellName, readArea } from '../../../src/formula/index.ts';
import { Results, type Result } from '../../../src/reckoning/index.ts';
import { apply, emptyBook, filledCells, sheetFromTemplate, sheetNamed, type Book } from '../../../src/workbook/index.ts';
import { Engine } from '../../../workers/reckon/engine.ts';

const CHART = 'cm,10,12,14\nBust,88,92,97\nWaist,70,74,79\nHip,95,99,104';

function workedOut(book: Book): (sheet: string, cell: string) => Result {
  const results = new Results();
  results.apply(new Engine().open(1, book));
  return (sheet, cell) => {
    const area = readArea(cell)!;
    return results.at(sheetNamed(book, sheet)!.id, area.top, area.left);
  };
}

/** Every cell that shows an error, with its sentence. */
function errorsIn(book: Book): string[] {
  const at = workedOut(book);
  return book.sheets.flatMap((sheet) => [...filledCells(sheet)].flatMap(({ row, col }) => {
    const result = at(sheet.name, cellName(row, col));
    return result.kind === 'error' ? [`${sheet.name} ${cellName(row, col)}: ${result.sentence}`] : [];
  }));
}

describe('shipped templates', () => {
  it('are all the files of sheets/templates', () => {
    const files = readdirSync('sheets/templates').map((file) => file.replace(/\.json$/, ''));
    expect([...SHIPPED_IDS].sort()).toEqual(files.sort());
  });

  it.each(SHIPPED_IDS)('%s starts without an error in a workbook that has a size chart', (id) => {
    const withChart = apply(chartEdit(CHART, { sheet: 'Chart', name: 'chart' }, emptyBook('test')).edit, emptyBook('test')).book;
    const { edit, problems } = sheetFromTemplate(shippedTemplate(id), withChart);
    expect(problems).toEqual([]);
    const book = apply(edit, withChart).book;
    expect(errorsIn(book)).toEqual([]);
  });

  it.each(SHIPPED_IDS)('%s has inputs to fill in, a note, and words beside every figure', (id) => {
    const template = shippedTemplate(id);
    expect(template.note.length).toBeGreaterThan(20);
    expect(template.sheet.cells.some(([, , , more]) => more?.input)).toBe(true);
    const labelled = new Set(template.sheet.cells.filter(([, col, raw]) => col === 0 && raw !== '').map(([row]) => row));
    expect(template.sheet.cells.filter(([row, , raw]) => raw.startsWith('=') && !labelled.has(row))).toEqual([]);
  });

  it('have a source beside every usual value', () => {
    const { names, sheet } = shippedTemplate('usual-values');
    expect(names.map(({ name }) => name)).toEqual(['usual ease', 'usual fullness', 'usual allowances', 'usual steps', 'usual needles']);
    for (const { area: [top, left, bottom, right] } of names) {
      const raw = (row: number, col: number): string => sheet.cells.find(([r, c]) => r === row && c === col)?.[2] ?? '';
      expect([raw(top, left), raw(top, right)]).toEqual([expect.stringMatching(/^[A-Z]/), 'Source']);
      for (let row = top + 1; row <= bottom; row += 1) expect(raw(row, right), raw(row, left)).toMatch(/read|from memory|common practice|exact geometry|exercise/);
    }
  });

  it('say of a child’s garment who decides, and never that it complies', () => {
    const words = shippedTemplate('child-notes').sheet.cells.map(([, , raw]) => raw).join(' ');
    expect(words).toContain('local rules and licensed practice');
    expect(words).not.toMatch(/is safe|complies with the|certified|meets the rule/i);
  });

  it('the fit sheet says that it needs a size chart when there is none', () => {
    const { problems } = sheetFromTemplate(shippedTemplate('fit'), emptyBook('test'));
    expect(problems.join(' ')).toContain('chart');
  });
});

describe('the demo garment', () => {
  const book = demoBook('demo');
  const at = workedOut(book);

  it('opens without an error in any cell', () => {
    expect(errorsIn(book)).toEqual([]);
  });

  it('is filled through the templates that a dress with a pleated skirt takes, on at most eleven sheets', () => {
    expect(book.sheets.length).toBeLessThanOrEqual(11);
    expect(book.sheets.map(({ name }) => name)).toEqual(['Size chart', 'Measures', 'Usual values', 'Fit', 'Alterations', 'Skirt', 'Front fastening', 'Contrast band', 'Circle skirt', 'Pieces', 'To buy']);
    expect(linden.sheets.map(({ template }) => template).filter((id) => !SHIPPED_IDS.includes(id))).toEqual([]);
  });

  it('takes its usual ease from the table on its own sheet, whose figures can be changed', () => {
    // The table has 2 1/2 in for a dress at the bust, average.
    expect(at('Fit', 'B17')).toEqual({ kind: 'quantity', value: 63.5, unit: 'in' });
    const sheet = sheetNamed(book, 'Usual values')!;
    const row = [...filledCells(sheet)].find(({ col, cell, row: r }) => col === 3 && cell.raw === '2 1/2 in' && r > 15)!.row;
    const changed = apply({ do: 'setCells', sheet: sheet.id, cells: [{ row, col: 3, cell: { raw: '5 cm' } }] }, book).book;
    expect(workedOut(changed)('Fit', 'B17')).toEqual({ kind: 'quantity', value: 50, unit: 'cm' });
  });

  it('spreads the change at the waist over its seams, until nothing is left to find', () => {
    const [wanted, left] = [at('Alterations', 'B4'), at('Alterations', 'B6')];
    expect(wanted.kind === 'quantity' && wanted.value).toBeLessThan(0);
    expect(left.kind === 'quantity' && Math.abs(left.value)).toBeLessThan(1e-9);
  });

  it('follows from its own measures and chart', () => {
    // Bust 94 cm lies 2/5 of the way from 16 (92) to 18 (97): exact arithmetic.
    expect(at('Fit', 'B4')).toEqual({ kind: 'quantity', value: 16, unit: '' });
    const position = at('Fit', 'B5');
    expect(position.kind === 'quantity' && position.value).toBeCloseTo(16.8, 9);
    // Ease on this body: size 16 with 8 cm drawn in is 100 cm, less 94 cm.
    const ease = at('Fit', 'B13');
    expect(ease.kind === 'quantity' && ease.value).toBeCloseTo(60, 9);
  });

  it('gives the pleat depth back from the flat width that it worked out', () => {
    const typed = at('Skirt', 'B10');
    const check = at('Skirt', 'B16');
    expect(typed.kind === 'quantity' && check.kind === 'quantity' && check.value - typed.value).toBeCloseTo(0, 9);
  });
});
