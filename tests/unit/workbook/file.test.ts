import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { LIMITS, apply, emptyBook, readBook, writeBook } from '../../../src/workbook/index.ts';
import type { Book } from '../../../src/workbook/index.ts';
import { area, bookOf, textsOf } from './help.ts';

const book: Book = apply({
  do: 'many', label: '', edits: [
    { do: 'setCells', sheet: 1, cells: [
      { row: 0, col: 1, cell: { raw: '74 cm', look: { unit: 'in', step: 16, decimals: 2, strong: true, heading: true, align: 'end' }, input: true, note: 'over the slip' } },
      { row: 4, col: 0, cell: { raw: '', note: '<b>not bold</b>' } },
    ] },
    { do: 'setTitle', title: 'Pleated skirt', person: 'Mara' },
    { do: 'setWidth', sheet: 1, col: 3, width: 140 },
    { do: 'setAbout', sheet: 2, about: 'knife pleats' },
    { do: 'setSettings', settings: { show: 'both', inchStep: 16 } },
    { do: 'setName', name: 'gone', target: { area: null, kind: 'cells' } },
  ],
}, bookOf([['Waist'], ['=waist*2']], [['1/2 in']], [{ name: 'waist', area: area(1, 0, 1), kind: 'cells' }])).book;

const file = (): ReturnType<typeof JSON.parse> => JSON.parse(JSON.stringify(writeBook(book)));

test('the file is what its description says', () => {
  expect(writeBook(book)).toStrictEqual({
    format: 'tape-and-tally/workbook', version: 2, id: 'test', title: 'Pleated skirt', person: 'Mara',
    settings: { show: 'both', inchStep: 16 }, nextSheetId: 3,
    sheets: [
      { id: 1, name: 'Fit', widths: [[3, 140]], cells: [
        [0, 0, 'Waist'],
        [0, 1, '74 cm', { look: { unit: 'in', step: 16, decimals: 2, strong: true, heading: true, align: 'end' }, input: true, note: 'over the slip' }],
        [1, 0, '=waist*2'],
        [4, 0, '', { note: '<b>not bold</b>' }],
      ] },
      { id: 2, name: 'Skirt', about: 'knife pleats', widths: [], cells: [[0, 0, '1/2 in']] },
    ],
    names: [{ name: 'gone', kind: 'cells', area: null }, { name: 'waist', kind: 'cells', area: [1, 0, 1, 0, 1] }],
  });
});

test('it is read back equal', () => {
  expect(readBook(file())).toStrictEqual({ book, problems: [] });
});

describe('refused whole', () => {
  test.each([null, undefined, 7, 'text', [], {}, { format: 'other/thing', version: 1 }, { format: 3 }])('%j', (json) => {
    expect(readBook(json)).toEqual({ book: null, problems: ['This is not a workbook file of Tape & Tally.'] });
  });

  test('a later version, with what to do', () => {
    const { book: none, problems } = readBook({ ...file(), version: 99 });
    expect(none).toBeNull();
    expect(problems).toEqual([expect.stringMatching(/later version.*format is 99.*reads up to 2/)]);
  });
});

describe('read as far as it can be', () => {
  function damaged(change: (json: ReturnType<typeof file>) => void): { book: Book; problems: string[] } {
    const json = file();
    change(json);
    const { book: read, problems } = readBook(json);
    return { book: read!, problems };
  }

  test('a cell that is no cell is left out; its neighbours stay', () => {
    for (const bad of [null, 'x', [0, 0], [-1, 0, 'x'], [0, 1000, 'x'], [1e6, 0, 'x'], [0.5, 0, 'x'], ['0', 0, 'x'], [0, 0, 7], [0, 0, null], [9, 9, 'x'.repeat(LIMITS.characters + 1)]]) {
      const { book: read, problems } = damaged((json) => json.sheets[0].cells.splice(1, 0, bad));
      expect(read).toStrictEqual(book);
      expect(problems).toEqual(['Sheet Fit: entry 2 of its cells could not be read and was left out.']);
    }
  });

  test('a damaged look, mark or note does not cost the text', () => {
    for (const bad of [{ look: { unit: 'furlong' } }, { look: 3 }, { input: 'yes' }, { note: 5 }, 'x', { look: { step: 7 } }, { look: { decimals: 99 } }]) {
      const { book: read, problems } = damaged((json) => { json.sheets[0].cells[1][3] = bad; });
      expect(read.sheets[0]?.rows[0]?.[1]).toStrictEqual({ raw: '74 cm' });
      expect(problems).toEqual(['Sheet Fit, B1: its look, note, input mark or acknowledged pins could not be read; its text was kept.']);
    }
  });

  test('a cell that is there twice keeps its first text', () => {
    const { book: read, problems } = damaged((json) => json.sheets[0].cells.push([0, 0, 'again']));
    expect(read).toStrictEqual(book);
    expect(problems).toEqual(['Sheet Fit, A1: the file has this cell twice; the first was kept.']);
  });

  test('cells in any order come to the same workbook', () => {
    const { book: read, problems } = damaged((json) => json.sheets[0].cells.reverse());
    expect(read).toStrictEqual(book);
    expect(problems).toEqual([]);
  });

  test('sheets without a good name, or with one twice, get another', () => {
    const { book: read, problems } = damaged((json) => { json.sheets[0].name = 7; json.sheets[1].name = 'sheet 1'; });
    expect(read.sheets.map(({ name }) => name)).toEqual(['Sheet 1', 'sheet 1 2']);
    expect(problems).toEqual([
      'The name of sheet 1 could not be read: it is now called Sheet 1.', 'The name of sheet 2 had to be changed: it is now called sheet 1 2.',
    ]);
  });

  test('ids that are missing, doubled or absurd are given anew, and never below those that stay', () => {
    const { book: read } = damaged((json) => {
      json.sheets.push({ id: 2, name: 'C', widths: [], cells: [] }, { id: 1e300, name: 'D', widths: [], cells: [] }, { id: '__proto__', name: 'E', widths: [], cells: [] }, 'not a sheet');
      json.nextSheetId = 2;
    });
    expect(read.sheets.map(({ id }) => id)).toEqual([1, 2, 3, 4, 5]);
    expect(read.nextSheetId).toBe(6);
  });

  test('a name of an absurd sheet id follows its sheet', () => {
    const { book: read } = damaged((json) => { json.sheets[1].id = -4; json.names[1].area[0] = -4; });
    expect(read.names[1]).toEqual({ name: 'waist', kind: 'cells', area: area(2, 0, 1) });
  });

  test('names: bad ones are left out, ones without cells are kept', () => {
    const { book: read, problems } = damaged((json) => {
      json.names = [
        { name: 'A1', kind: 'cells', area: [1, 0, 0, 0, 0] }, { name: '__proto__', kind: 'cells', area: null }, 5,
        { name: 'hip', kind: 'cells', area: [9, 0, 0, 0, 0] }, { name: 'bust', kind: 'chart', area: [1, 3, 0, 0, 0] },
        { name: 'HIP', kind: 'cells', area: null }, { name: 'hem', area: [1, 0, 0, 1, 1] },
      ];
    });
    expect(read.names).toEqual([
      { name: 'bust', kind: 'chart', area: null }, { name: 'hem', kind: 'cells', area: area(1, 0, 0, 1, 1) }, { name: 'hip', kind: 'cells', area: null },
    ]);
    expect(problems).toHaveLength(7);
    expect(problems[0]).toMatch(/^Entry 1 of the names for cells was left out: ‘A1’ is the name of a cell/);
    expect(problems).toContain('Entry 6 of the names for cells was left out: the name HIP is there twice.');
  });

  test('the rest of the book', () => {
    const { book: read, problems } = damaged((json) => {
      Object.assign(json, { version: 'one', id: 4, title: 'x'.repeat(201), person: null, settings: { show: 'feet' }, names: 'none' });
      Object.assign(json.sheets[0], { widths: [[0, 5], [1, 80], 'x'], about: 9 });
      json.sheets[1].cells = 'none';
      json.sheets[1].widths = {};
    });
    expect(read).toMatchObject({ id: '', title: '', person: '', settings: { show: 'own', inchStep: 8 }, names: [] });
    expect(read.sheets[0]).toMatchObject({ widths: { 1: 80 } });
    expect(problems).toHaveLength(11);
  });

  test('without any sheet there is an empty one', () => {
    const { book: read, problems } = damaged((json) => { json.sheets = 'none'; json.names = []; });
    expect(read.sheets).toEqual(emptyBook('').sheets);
    expect(problems).toEqual(['The file has no sheets that could be read.']);
  });

  test('a thousand bad cells are a hundred sentences and a number', () => {
    const { problems } = damaged((json) => { json.sheets[0].cells = Array.from({ length: 1000 }, () => 0); });
    expect(problems).toHaveLength(101);
    expect(problems.at(-1)).toBe('And 900 more of these.');
  });

  test('too many sheets', () => {
    const { book: read, problems } = damaged((json) => { json.sheets = Array.from({ length: 300 }, (_, at) => ({ id: at + 1, name: `S ${at}`, cells: [], widths: [] })); });
    expect(read.sheets).toHaveLength(250);
    expect(problems).toEqual(['The file has 300 sheets; the first 250 were kept.']);
  });

  test('a small file that would take up a great deal of memory', () => {
    const { book: read, problems } = damaged((json) => {
      json.sheets = [0, 1].map((sheet) => ({ id: sheet + 1, name: `S${sheet}`, widths: [], cells: Array.from({ length: 12_000 }, (_, row) => [row * 20, 999, 'x']) }));
    });
    expect(read.sheets[0]?.rows).toHaveLength(11_999 * 20 + 1);
    expect(problems.at(-1)).toMatch(/^And [\d,]+ more/);
    expect(problems[0]).toMatch(/left out, because cells lie too far apart/);
  });
});

test('keys of the prototype are data like any other', () => {
  const json = JSON.parse(JSON.stringify({ ...file(), title: '__proto__' }).replace('"format"', '"__proto__":{"polluted":1},"constructor":{"prototype":{"polluted":1}},"format"'));
  json.sheets[0].name = '__proto__';
  json.sheets[0].cells.push([7, 0, '__proto__', JSON.parse('{"__proto__":{"polluted":1},"look":{"__proto__":{"strong":true},"unit":"cm"}}')]);
  const { book: read, problems } = readBook(json);
  expect(problems).toEqual([]);
  expect(({} as { polluted?: number }).polluted).toBeUndefined();
  expect(read?.title).toBe('__proto__');
  expect(read?.sheets[0]?.name).toBe('__proto__');
  expect(read?.sheets[0]?.rows[7]?.[0]).toStrictEqual({ raw: '__proto__', look: { unit: 'cm' } });
  expect(readBook(JSON.parse(JSON.stringify(writeBook(read!))))).toStrictEqual({ book: read, problems: [] });
});

test('an accented or bidirectional text, a lone surrogate and 400 digits come back as they were', () => {
  const odd = ['\u202eabc', '\ud800', '9'.repeat(400), '1e308', '=1e308*10', '½ é ｅ', '\0', '"\n\t'];
  const full = apply({ do: 'setCells', sheet: 1, cells: odd.map((raw, row) => ({ row, col: 0, cell: { raw } })) }, emptyBook('x')).book;
  const { book: read, problems } = readBook(JSON.parse(JSON.stringify(writeBook(full))));
  expect(problems).toEqual([]);
  expect(textsOf(read!, 1).map(([raw]) => raw)).toEqual(odd);
});

/** Random JSON put somewhere into a good file, or instead of it. */
test('5,000 random files never throw, and what comes out is a workbook that can be written and read again', () => {
  const anything = fc.anything({ withSparseArray: true, withNullPrototype: true, maxDepth: 3 });
  const key = fc.constantFrom('version', 'id', 'title', 'settings', 'nextSheetId', 'sheets', 'names', '__proto__', 'constructor');
  const inside = fc.constantFrom('id', 'name', 'about', 'widths', 'cells', '0', '__proto__');
  let whole = 0;
  fc.assert(fc.property(anything, key, inside, fc.nat(2), fc.nat(4), (value, top, part, how, at) => {
    const json = how === 0 ? value : file();
    if (how === 1) json[top] = value;
    if (how === 2) {
      const list = (json[top === 'names' ? 'names' : 'sheets'] as Record<string, unknown>[]);
      const entry = list[at % 2]!;
      if (part === 'cells' && at > 1) (entry['cells'] as unknown[] | undefined)?.splice(1, 1, value);
      else entry[part] = value;
    }
    const { book: read, problems } = readBook(json);
    expect(problems.every((problem) => typeof problem === 'string')).toBe(true);
    if (!read) return;
    whole += 1;
    expect(readBook(JSON.parse(JSON.stringify(writeBook(read))))).toStrictEqual({ book: read, problems: [] });
    apply({ do: 'insertRows', sheet: read.sheets[0]!.id, at: 0, count: 1 }, read);
  }), { numRuns: 5_000, seed: 20_251 });
  expect(whole).toBeGreaterThan(2_500);
}, 60_000);
