import { isDeepStrictEqual } from 'node:util';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { EditRefused, apply, emptyBook, readTemplate, sheetFromTemplate, templateFrom } from '../../../src/workbook/index.ts';
import type { Book, Template } from '../../../src/workbook/index.ts';
import { area, bookOf, editFrom, frozen, seed, textsOf } from './help.ts';

const book: Book = frozen(apply({
  do: 'many', label: '', edits: [
    { do: 'setCells', sheet: 1, cells: [{ row: 0, col: 1, cell: { raw: '74 cm', input: true, look: { unit: 'in' }, note: 'over the slip' } }] },
    { do: 'setWidth', sheet: 1, col: 0, width: 150 },
    { do: 'setAbout', sheet: 1, about: 'ease at each level' },
  ],
}, bookOf(
  [['Waist'], ['Hip', '98 cm'], ['=waist + B2', "=Fit!$B$1 + 'FIT'!a1:B2", '=skirt length + Skirt!A1 + Skirt!B1', '="Fit!A1"', '=SUM(chart)']],
  [['60 cm', '=Fit!B1']],
  [
    { name: 'waist', area: area(1, 0, 1), kind: 'cells' }, { name: 'chart', area: area(1, 0, 0, 1, 1), kind: 'chart' },
    { name: 'skirt length', area: area(2, 0, 0), kind: 'cells' }, { name: 'unused', area: area(2, 0, 1), kind: 'cells' },
  ],
)).book);

const kept = templateFrom(book, 1, 'Fit between sizes', 'for a straight skirt');

describe('keeping a sheet', () => {
  test('formulas, looks, marks, notes, widths and its own names are kept', () => {
    expect(kept).toStrictEqual({
      format: 'tape-and-tally/template', version: 1, name: 'Fit between sizes', note: 'for a straight skirt',
      sheet: {
        cells: [
          [0, 0, 'Waist'], [0, 1, '74 cm', { look: { unit: 'in' }, input: true, note: 'over the slip' }],
          [1, 0, 'Hip'], [1, 1, '98 cm'],
          [2, 0, '=waist + B2'], [2, 1, '=$B$1 + a1:B2'], [2, 2, '=skirt length + Skirt!A1 + Skirt!B1'], [2, 3, '="Fit!A1"'], [2, 4, '=SUM(chart)'],
        ],
        widths: [[0, 150]], about: 'ease at each level',
      },
      names: [{ name: 'chart', kind: 'chart', area: [0, 0, 1, 1] }, { name: 'waist', kind: 'cells', area: [0, 1, 0, 1] }],
      needs: ['skirt length', 'Skirt'],
    });
  });

  test('a sheet that needs nothing says nothing of it', () => {
    expect(templateFrom(bookOf([['1', '=A1', '=nobody']]), 1, 'T', '')).not.toHaveProperty('needs');
  });

  test('it needs a name that a sheet can have', () => {
    expect(() => templateFrom(book, 1, ' ', '')).toThrow(new EditRefused('A template needs a name.'));
    expect(() => templateFrom(book, 1, 'x'.repeat(61), '')).toThrow("A template's name has at most 60 characters");
    expect(() => templateFrom(book, 9, 'T', '')).toThrow(EditRefused);
  });

  test('it can be written and read', () => {
    expect(readTemplate(JSON.parse(JSON.stringify(kept)))).toStrictEqual({ template: kept, problems: [] });
  });
});

describe('starting a sheet', () => {
  const started = (template: Template, from: Book): { after: Book; problems: string[]; sheet: number } => {
    const { edit, sheet, problems } = sheetFromTemplate(template, from);
    const { book: after, inverse } = apply(edit, from);
    expect(apply(inverse, after).book).toStrictEqual(from);
    expect(edit).toMatchObject({ do: 'many', label: `start the sheet ${after.sheets.at(-1)?.name}` });
    return { after, problems, sheet };
  };

  test('elsewhere: as it was, and what is missing is said', () => {
    const { after, problems, sheet } = started(kept, emptyBook('x'));
    expect(sheet).toBe(2);
    expect(after.sheets[1]).toMatchObject({ id: 2, name: 'Fit between sizes', widths: { 0: 150 }, about: 'ease at each level' });
    expect(textsOf(after, 2)[2]).toEqual(['=waist + B2', '=$B$1 + a1:B2', '=skirt length + Skirt!A1 + Skirt!B1', '="Fit!A1"', '=SUM(chart)']);
    expect(after.sheets[1]?.rows[0]?.[1]).toStrictEqual({ raw: '74 cm', look: { unit: 'in' }, input: true, note: 'over the slip' });
    expect(after.names).toEqual([
      { name: 'chart', kind: 'chart', area: area(2, 0, 0, 1, 1) }, { name: 'waist', kind: 'cells', area: area(2, 0, 1) },
    ]);
    expect(problems).toEqual([
      expect.stringContaining('uses skirt length, which this workbook does not have'),
      expect.stringContaining('uses Skirt, which this workbook does not have'),
    ]);
  });

  test('where its names are taken: they are numbered, and its formulas use its own', () => {
    const { after, problems } = started(kept, book);
    expect(problems).toEqual([]);
    expect(textsOf(after, 3)[2]).toEqual(['=waist 2 + B2', '=$B$1 + a1:B2', '=skirt length + Skirt!A1 + Skirt!B1', '="Fit!A1"', '=SUM(chart 2)']);
    expect(after.names.map(({ name, area: at }) => [name, at?.sheet])).toEqual([
      ['chart', 1], ['chart 2', 3], ['skirt length', 2], ['unused', 2], ['waist', 1], ['waist 2', 3],
    ]);
    expect(textsOf(after, 1)).toEqual(textsOf(book, 1));
  });

  test('twice and thrice', () => {
    const twice = started(kept, started(kept, book).after).after;
    expect(twice.sheets.map(({ name }) => name)).toEqual(['Fit', 'Skirt', 'Fit between sizes', 'Fit between sizes 2']);
    expect(textsOf(twice, 4)[2]?.[0]).toBe('=waist 3 + B2');
  });

  test('the engine knows the names before it reads the formulas', () => {
    const { edit } = sheetFromTemplate(kept, book);
    expect(apply(edit, book).effects.map((effect) => effect.do)).toEqual(['sheets', 'name', 'name', 'cells']);
  });

  test('a new name is not given to what the template needs from elsewhere', () => {
    const template: Template = {
      ...kept, name: 'Skirt', needs: ['waist 2', 'Skirt'],
      sheet: { cells: [[0, 0, '=waist + waist 2 + Skirt!A1']], widths: [] },
      names: [{ name: 'waist', kind: 'cells', area: [0, 0, 0, 0] }, { name: 'waist 3', kind: 'cells', area: [1, 0, 1, 0] }],
    };
    const bare = bookOf([['1']], [], [{ name: 'Waist', area: area(1, 0, 0), kind: 'cells' }]);
    const { after } = started(template, apply({ do: 'removeSheet', sheet: 2 }, bare).book);
    expect(after.sheets.map(({ name }) => name)).toEqual(['Fit', 'Skirt 2']);
    expect(textsOf(after, 3)).toEqual([['=waist 4 + waist 2 + Skirt!A1']]);
  });
});

test('two long names that are cut to the same end get different numbers', () => {
  const long = ['x'.repeat(60), `${'x'.repeat(59)}y`];
  const taken = bookOf([], [], long.map((name) => ({ name, area: area(1, 0, 0), kind: 'cells' })));
  const { edit, sheet } = sheetFromTemplate(templateFrom(taken, 1, 'Long', ''), taken);
  expect(apply(edit, taken).book.names.filter(({ area: at }) => at?.sheet === sheet).map(({ name }) => name)).toEqual([
    `${'x'.repeat(58)} 2`, `${'x'.repeat(58)} 3`,
  ]);
});

describe('reading a template', () => {
  test.each([null, 4, {}, { format: 'tape-and-tally/workbook', version: 1 }])('%j is none', (json) => {
    expect(readTemplate(json)).toEqual({ template: null, problems: ['This is not a template file of Tape & Tally.'] });
  });

  test('a later version is refused', () => {
    expect(readTemplate({ ...kept, version: 9 })).toMatchObject({ template: null, problems: [expect.stringContaining('later version')] });
  });

  test('what is damaged is left out and said', () => {
    const { template, problems } = readTemplate({
      ...kept, name: 5, note: [], needs: ['Skirt', 4],
      sheet: { cells: [[0, 0, 'x'], [0, 1], [1, 1, 'y', { look: { unit: 'x' } }]], widths: [[0, 1]], about: {} },
      names: [{ name: 'waist', kind: 'cells', area: [1, 0, 0, 0] }, { name: 'in', kind: 'cells', area: [0, 0, 0, 0] }, { name: 'hip', kind: 'chart', area: [0, 0, 1, 1] }],
    });
    expect(template).toStrictEqual({
      format: 'tape-and-tally/template', version: 1, name: 'Template', note: '',
      sheet: { cells: [[0, 0, 'x'], [1, 1, 'y']], widths: [] },
      names: [{ name: 'hip', kind: 'chart', area: [0, 0, 1, 1] }], needs: ['Skirt'],
    });
    expect(problems).toHaveLength(9);
  });

  test('3,000 random files never throw, and what comes out can be started from', () => {
    const anything = fc.anything({ withNullPrototype: true, maxDepth: 3 });
    const key = fc.constantFrom('version', 'name', 'note', 'sheet', 'names', 'needs', '__proto__');
    const part = fc.constantFrom('cells', 'widths', 'about', '__proto__');
    let started = 0;
    fc.assert(fc.property(anything, key, part, fc.nat(2), (value, top, inside, how) => {
      const json = JSON.parse(JSON.stringify(kept));
      if (how === 1) json[top] = value;
      if (how === 2) json.sheet[inside] = value;
      const { template } = readTemplate(how === 0 ? value : json);
      if (!template) return;
      started += 1;
      const { edit } = sheetFromTemplate(template, book);
      apply(edit, book);
    }), { numRuns: 3_000, seed: 20_251 });
    expect(started).toBeGreaterThan(1_000);
  }, 60_000);
});

test('any sheet of a random workbook can be kept, read, and started from, and undone', () => {
  fc.assert(fc.property(fc.array(seed, { maxLength: 12 }), (seeds) => {
    let now = book;
    for (const part of seeds) {
      try {
        now = apply(editFrom(part, now), now).book;
      } catch (error) {
        if (!(error instanceof EditRefused)) throw error;
      }
    }
    const template = templateFrom(now, now.sheets[0]!.id, 'Again', '');
    const read = readTemplate(JSON.parse(JSON.stringify(template)));
    expect(read.problems).toEqual([]);
    if (!isDeepStrictEqual(read.template, template)) expect(read.template).toStrictEqual(template);
    const { book: after, inverse } = apply(sheetFromTemplate(template, now).edit, now);
    expect(isDeepStrictEqual(apply(inverse, after).book, now)).toBe(true);
    // In an empty workbook nothing is renamed, so that the sheet is the very same.
    const alone = apply(sheetFromTemplate(template, emptyBook('x')).edit, emptyBook('x')).book;
    expect(templateFrom(alone, 2, 'Again', '').sheet).toEqual(template.sheet);
  }), { numRuns: 300, seed: 20_251 });
}, 60_000);
