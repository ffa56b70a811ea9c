import { readFileSync, readdirSync } from 'node:fs';
import { Ajv } from 'ajv';
import { toJsonSchema } from '@valibot/to-json-schema';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { FILE_VERSION, apply, bookText, readBookText, writeBook } from '../../../src/workbook/index.ts';
import type { Book } from '../../../src/workbook/index.ts';
import { crc32 } from '../../../src/workbook/checksum.ts';
import { bookFileSchema } from '../../../src/workbook/file-schema.ts';
import { area, bookOf, editFrom, seed, textsOf } from './help.ts';

const book: Book = apply({
  do: 'many', label: '', edits: [
    { do: 'setCells', sheet: 1, cells: [
      { row: 0, col: 1, cell: { raw: '74 cm', look: { unit: 'in', step: 16, strong: true }, input: true, note: 'over the slip' } },
      { row: 3, col: 0, cell: { raw: 'Hip' } }, { row: 3, col: 1, cell: { raw: '98,5 cm' } },
    ] },
    { do: 'setTitle', title: 'Pleated skirt', person: 'Mara' },
    { do: 'setFrozen', sheet: 1, rows: 1, columns: 1 },
    { do: 'setHidden', sheet: 2, axis: 'rows', runs: [[2, 4]] },
    { do: 'setAbout', sheet: 2, about: 'knife pleats' },
  ],
}, bookOf([['Waist'], ['=waist*2']], [['1/2 in'], ['', '3']], [{ name: 'waist', area: area(1, 0, 1), kind: 'cells' }])).book;
const text = bookText(book);

const schema = toJsonSchema(bookFileSchema, { errorMode: 'ignore', target: 'draft-07' });
const valid = new Ajv({ strict: false }).compile(schema);

describe('the checksum', () => {
  test('is CRC-32: the check value of the “123456789” that catalogues of such sums give (RFC 1952, section 8)', () => {
    expect(crc32('123456789')).toBe('cbf43926');
    expect(crc32('')).toBe('00000000');
  });

  test('spaces do not matter, a changed figure does', () => {
    expect(readBookText(JSON.stringify(JSON.parse(text)))).toStrictEqual({ book, problems: [] });
    expect(readBookText(JSON.stringify(JSON.parse(text), null, 4))).toStrictEqual({ book, problems: [] });
    const changed = readBookText(text.replace('74 cm', '47 cm'));
    expect(textsOf(changed.book!, 1)[0]).toEqual(['Waist', '47 cm']);
    expect(changed.problems).toEqual([expect.stringMatching(/not as it was saved.*before you cut/)]);
  });

  test('a file without one, made by hand, is read as it is', () => {
    expect(readBookText(JSON.stringify(writeBook(book)))).toStrictEqual({ book, problems: [] });
  });
});

describe('the text', () => {
  test('has a cell a line and reads back equal', () => {
    expect(text.split('\n')).toContain('[3,0,"Hip"],');
    expect(readBookText(text)).toStrictEqual({ book, problems: [] });
    expect(readBookText(`\uFEFF${text.replace(/\n/g, '\r\n')}`)).toStrictEqual({ book, problems: [] });
  });

  test('holds for any workbook that edits can make', () => {
    fc.assert(fc.property(fc.array(seed, { maxLength: 12 }), (seeds) => {
      let made = book;
      for (const each of seeds) {
        try {
          made = apply(editFrom(each, made), made).book;
        } catch {
          // Refused: the workbook is as it was.
        }
      }
      const written = bookText(made);
      expect(readBookText(written)).toStrictEqual({ book: made, problems: [] });
      expect(valid(JSON.parse(written)) || valid.errors).toBe(true);
    }), { numRuns: 200 });
  });
});

describe('the schema in the repository', () => {
  test('is what files are read with (`npm run test:unit -- -u` writes it anew)', async () => {
    await expect(`${JSON.stringify(schema, null, 2)}\n`).toMatchFileSnapshot('../../../src/workbook/workbook.schema.json');
  });

  test.each([
    ['another format', (file: Record<string, unknown>) => { file['format'] = 'x'; }],
    ['no sheets', (file: Record<string, unknown>) => { delete file['sheets']; }],
    ['a cell in row -1', (file: Record<string, unknown>) => { (file['sheets'] as { cells: unknown[] }[])[0]!.cells.push([-1, 0, 'x']); }],
    ['a number for a text', (file: Record<string, unknown>) => { (file['sheets'] as { cells: unknown[] }[])[0]!.cells.push([9, 0, 7]); }],
  ])('refuses %s', (_, spoil) => {
    const file = JSON.parse(text) as Record<string, unknown>;
    expect(valid(file)).toBe(true);
    spoil(file);
    expect(valid(file)).toBe(false);
  });
});

describe('every version ever written opens', () => {
  const folder = new URL('./files/', import.meta.url);
  const files = readdirSync(folder);

  test('there is a file of each', () => {
    const versions = new Set(files.map((name) => Number(/^version-(\d+)/.exec(name)?.[1])));
    expect([...versions].sort((a, b) => a - b)).toEqual(Array.from({ length: FILE_VERSION }, (_, i) => i + 1));
  });

  test.each(files)('%s, with nothing left out', async (name) => {
    const { book: found, problems } = readBookText(readFileSync(new URL(name, folder), 'utf8'));
    expect(problems).toEqual([]);
    // What it means now, so that a later reader cannot quietly read it otherwise.
    const meaning = writeBook(found!);
    await expect(`${JSON.stringify({ ...meaning, version: 'any' }, null, 1)}\n`).toMatchFileSnapshot(`./meaning/${name}`);
    expect(readBookText(bookText(found!))).toStrictEqual({ book: found, problems: [] });
  });
});

describe('a damaged file opens as far as it can', () => {
  test('one damaged cell costs that cell alone, and is named by its line', () => {
    const at = text.split('\n').indexOf('[3,0,"Hip"],');
    const { book: found, problems } = readBookText(text.replace('[3,0,"Hip"]', '[3,0,"Hi'));
    expect(textsOf(found!, 1)).toEqual([['Waist', '74 cm'], ['=waist*2'], [], ['', '98,5 cm']]);
    expect(problems).toEqual([`Line ${at + 1} of the file is damaged and was left out.`]);
  });

  test.each(['title', 'settings', 'format', 'checksum', 'id'])('the line of the %s', (key) => {
    const damaged = text.replace(new RegExp(`^"${key}": .*$`, 'm'), `"${key}": #!`);
    const { book: found, problems } = readBookText(damaged);
    expect(found!.sheets).toStrictEqual(book.sheets);
    expect(problems[0]).toMatch(/^Line \d+ of the file is damaged/);
  });

  test('cut off anywhere: what is there is what was in it, never half a text, and it is said', () => {
    const all = new Map(book.sheets.flatMap((sheet) => textsOf(book, sheet.id).flatMap((line, row) => line.map((raw, col) => [`${sheet.id} ${row} ${col}`, raw] as const))));
    const counts: number[] = [];
    for (let end = 0; end < text.length - 2; end++) {
      const { book: found, problems } = readBookText(text.slice(0, end));
      expect(problems.length, `at ${end}`).toBeGreaterThan(0);
      let count = 0;
      for (const sheet of found?.sheets ?? []) {
        textsOf(found!, sheet.id).forEach((line, row) => line.forEach((raw, col) => {
          if (raw === '') return;
          expect(raw, `at ${end}`).toBe(all.get(`${sheet.id} ${row} ${col}`));
          count++;
        }));
      }
      counts.push(count);
    }
    expect(counts.at(-1)).toBe([...all.values()].filter(Boolean).length);
    expect(counts.every((count, at) => at === 0 || count >= counts[at - 1]!), 'more of the file never gives fewer cells').toBe(true);
  });

  test('so does one that is all on one line', () => {
    const line = JSON.stringify(writeBook(book));
    const { book: found, problems } = readBookText(line.slice(0, line.indexOf('"Hip"') + 3));
    expect(textsOf(found!, 1)).toEqual([['Waist', '74 cm'], ['=waist*2']]);
    expect(problems[0]).toBe('The file is cut off or damaged so that its end cannot be read. The last that was read is row 2 of Fit.');
  });

  test('any damage: nothing throws, and whatever differs is said', () => {
    fc.assert(fc.property(fc.nat(text.length - 1), fc.nat(40), fc.string({ maxLength: 6 }), (at, length, instead) => {
      const damaged = text.slice(0, at) + instead + text.slice(at + length);
      const { book: found, problems } = readBookText(damaged);
      if (problems.length === 0) expect(found).toStrictEqual(book);
    }), { numRuns: 400 });
  });
});

describe('a foreign file', () => {
  test.each([
    ['empty', '', 'The file is empty.'],
    ['blank', '  \n', 'The file is empty.'],
    ['a table', 'size;bust\n36;84', /not a workbook file.*CSV/],
    ['packed', 'PK\u0003\u0004…', /not a workbook file/],
    ['a template', '{"format": "tape-and-tally/template", "version": 1}', /a template.*Start a sheet/],
    ['other JSON', '{"name": "something else"}', 'This is not a workbook file of Tape & Tally.'],
    ['a list', '[1, 2', /not a workbook file/],
    ['deep braces', '{'.repeat(50_000), /not a workbook file/],
    ['deep brackets', '['.repeat(100_000), /not a workbook file/],
  ])('%s', (_, content, sentence) => {
    const { book: none, problems } = readBookText(content);
    expect(none).toBeNull();
    expect(problems).toEqual([typeof sentence === 'string' ? sentence : expect.stringMatching(sentence)]);
  });

  test('a file of a later version is told apart from a damaged one', () => {
    expect(readBookText(text.replace(`"version": ${FILE_VERSION}`, `"version": ${FILE_VERSION + 1}`))).toEqual({ book: null, problems: [expect.stringMatching(/later version/)] });
  });
});
