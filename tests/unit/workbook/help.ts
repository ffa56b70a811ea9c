/** Small workbooks for the tests, and random edits of them. */
import fc from 'fast-check';
import { columnName } from '../../../src/formula/index.ts';
import { EditRefused, apply, cellAt, emptyBook, fillEdit, findAll, filterEdit, replaceEdit, sheetById, sortEdit } from '../../../src/workbook/index.ts';
import type { Area, Book, Cell, CellChange, ComparisonRecord, Edit, FindQuery, Lay, Look, NamedArea, Person, PlainValue, RunRecord, Shape, SheetId, Ticket } from '../../../src/workbook/index.ts';

/** Freezes all of it, so that a change in place throws. */
export function frozen<T>(value: T): T {
  if (typeof value !== 'object' || value === null || Object.isFrozen(value)) return value;
  Object.freeze(value);
  for (const part of Object.values(value)) frozen(part);
  return value;
}

/** A sheet's texts as lines of cells, for setting up and for reading off. */
export function textsOf(book: Book, sheet: SheetId): string[][] {
  const rows = book.sheets.find(({ id }) => id === sheet)?.rows ?? [];
  return rows.map((row) => (row ?? []).map((cell) => cell?.raw ?? ''));
}

export function cellsFrom(texts: readonly (readonly string[])[]): CellChange[] {
  return texts.flatMap((line, row) => line.map((raw, col) => ({ row, col, cell: raw === '' ? null : { raw } })));
}

/** Two sheets, Fit (1) and Skirt (2), and the names given. */
export function bookOf(fit: readonly (readonly string[])[], skirt: readonly (readonly string[])[] = [], names: readonly NamedArea[] = []): Book {
  const edits: Edit[] = [
    { do: 'renameSheet', sheet: 1, name: 'Fit' },
    { do: 'addSheet', sheet: { id: 2, name: 'Skirt', rows: [], widths: {} }, at: 1 },
    ...names.map(({ name, area, kind }): Edit => ({ do: 'setName', name, target: { area, kind } })),
    { do: 'setCells', sheet: 1, cells: cellsFrom(fit) },
    { do: 'setCells', sheet: 2, cells: cellsFrom(skirt) },
  ];
  return frozen(apply({ do: 'many', label: '', edits }, emptyBook('test')).book);
}

export function area(sheet: SheetId, top: number, left: number, bottom = top, right = left): Area {
  return { sheet, top, left, bottom, right };
}

const SHEET_NAMES = ['Fit', 'Skirt', 'My measures', "Aunt's", 'fit 2', 'Hem'];
const NAMES = ['waist', 'full bust', 'bust', 'Hüfte', 'chart_1', 'Waist', 'hip_1'];
const LOOKS: readonly Look[] = [{ unit: 'cm' }, { step: 16, strong: true }, { decimals: 2, align: 'end' }, { heading: true }, { italic: true, border: 'below' }];

/** A formula with references of all kinds, as odd as hands write them. */
const formula: fc.Arbitrary<string> = fc.array(fc.oneof(
  fc.tuple(
    fc.constantFrom('', '', '', 'Fit!', 'skirt!', "'My measures'!", "'Aunt''s'!", 'Hem!', "'fit 2'!"),
    fc.constantFrom('A', 'b', 'C', '$D', 'e', 'AA'),
    fc.constantFrom('1', '$2', '3', '4', '$5', '9', '12'),
    fc.constantFrom('', '', ':c6', ':$B$3', ' : D4'),
  ).map((parts) => parts.join('')),
  fc.constantFrom(...NAMES),
  fc.constantFrom('2 1/4 in', '5,5 cm', '"a1"', 'SUM(A1;B2)', 'SIZE.AT(bust; full bust, C3)', 'B:B', '2:4', '#REF!', '(', 'Fit!'),
), { minLength: 1, maxLength: 4 }).map((parts) => `=${parts.join(' + ')}`);

const text: fc.Arbitrary<string> = fc.oneof(
  { weight: 3, arbitrary: formula },
  { weight: 1, arbitrary: fc.constantFrom('', '2 1/4 in', 'Hip', '91 cm', ' ', '__proto__') },
  { weight: 1, arbitrary: fc.string({ maxLength: 6 }) },
);

const cell: fc.Arbitrary<Cell | null> = fc.oneof(
  { weight: 1, arbitrary: fc.constant(null) },
  {
    weight: 4,
    arbitrary: fc.record({
      raw: text,
      look: fc.constantFrom(undefined, undefined, {}, ...LOOKS),
      input: fc.constantFrom(undefined, true as const),
      note: fc.constantFrom(undefined, '', 'as measured'),
      acknowledged: fc.constantFrom(undefined, [], [{ print: 'a1', note: '' }], [{ print: 'b2', note: 'as worn' }, { print: 'c3', note: '' }]),
    }, { requiredKeys: ['raw'], noNullPrototype: true }) as fc.Arbitrary<Cell>,
  },
);

const place = fc.nat(11);
const across = fc.nat(6);
const change = fc.record({ row: place, col: across, cell });

/**
 * What a random edit is made of. It becomes an edit only when the workbook it
 * meets is known, so that most edits can be done and the rest must be refused.
 */
export interface Seed {
  readonly kind: number;
  readonly sheet: number;
  readonly other: number;
  readonly row: number;
  readonly col: number;
  readonly count: number;
  readonly name: string;
  readonly to: string;
  readonly sheetName: string;
  readonly cells: readonly CellChange[];
  readonly more: readonly Seed[];
}

const flat = {
  kind: fc.nat(59), sheet: fc.nat(5), other: fc.nat(5), row: place, col: across, count: fc.integer({ min: 1, max: 4 }),
  name: fc.constantFrom(...NAMES), to: fc.constantFrom(...NAMES), sheetName: fc.constantFrom(...SHEET_NAMES),
  cells: fc.array(change, { minLength: 1, maxLength: 6 }),
};

export const seed: fc.Arbitrary<Seed> = fc.record({
  ...flat, more: fc.array(fc.record({ ...flat, more: fc.constant([]) }), { maxLength: 3 }),
});

/** The edit that a seed makes of this workbook; one that does nothing where the wish itself is refused. */
export function editFrom(from: Seed, book: Book): Edit {
  try {
    return wishedFrom(from, book);
  } catch (error) {
    if (!(error instanceof EditRefused)) throw error;
    return { do: 'many', label: 'refused', edits: [] };
  }
}

const FIND: FindQuery = { text: 'b', places: { value: true, formula: true, note: true, result: false }, whole: false, matchCase: false, sheet: null };

function wishedFrom(from: Seed, book: Book): Edit {
  const { kind, row, col, count, name, to, sheetName, cells } = from;
  const sheet = book.sheets[from.sheet % book.sheets.length]?.id ?? 1;
  const other = book.sheets[from.other % book.sheets.length]?.id ?? 1;
  const block = area(sheet, row, col, row + count - 1, col + (from.other % 3));
  switch (kind) {
    case 0: case 1: return { do: 'insertRows', sheet, at: row, count };
    case 2: case 3: return { do: 'removeRows', sheet, at: row, count };
    case 4: case 5: return { do: 'insertColumns', sheet, at: col, count };
    case 6: case 7: return { do: 'removeColumns', sheet, at: col, count };
    case 8: case 9: case 10: return { do: 'moveCells', from: block, to: { sheet: other, row: (row + from.kind * count) % 9, col: from.other } };
    case 11: case 12: case 13: {
      const id = from.other === 5 ? sheet : book.nextSheetId + (from.other === 4 ? 2 : 0);
      const rows = [[undefined, cells[0]?.cell ?? undefined], [], undefined];
      return { do: 'addSheet', sheet: { id, name: sheetName, rows, widths: { [col]: 90 }, about: from.other % 2 ? 'for trying' : '' }, at: from.sheet % (book.sheets.length + 1) };
    }
    case 14: case 15: return { do: 'removeSheet', sheet };
    case 16: case 17: return { do: 'renameSheet', sheet, name: sheetName };
    case 18: return { do: 'moveSheet', sheet, to: from.other };
    case 19: return { do: 'setAbout', sheet, about: from.other % 2 ? 'for trying' : '' };
    case 20: case 21: case 22: return { do: 'setName', name, target: { area: from.other === 5 ? null : block, kind: from.other % 2 ? 'chart' : 'cells' } };
    case 23: return { do: 'setName', name, target: null };
    case 24: case 25: return { do: 'renameName', name: book.names[from.other % 7]?.name ?? name, to };
    case 26: return { do: 'setWidth', sheet, col, width: from.other % 2 ? 60 + count : null };
    case 27: return { do: 'setSettings', settings: { show: from.other % 2 ? 'both' : 'own', inchStep: from.other % 3 ? 16 : 8, ...(from.other % 5 === 0 && { decimalMark: ',' as const }) } };
    case 28: return { do: 'setTitle', title: sheetName, person: name };
    case 29: return { do: 'many', label: 'several', edits: manyFrom(from.more, book) };
    case 30: case 31: case 32: return { do: 'moveRows', sheet, at: row, count, to: (row + from.other * 3 + from.sheet) % 13 };
    case 33: case 34: return { do: 'moveColumns', sheet, at: col, count: 1 + (count % 2), to: (col + from.other + from.sheet) % 8 };
    case 35: case 36: return { do: 'setHidden', sheet, axis: from.other % 2 ? 'rows' : 'columns', runs: [[row, row + count - 1], [row + from.other + 2, row + 9]] };
    case 37: return { do: 'setFrozen', sheet, rows: row, columns: from.other };
    case 38: return {
      do: 'setFilter', sheet,
      filter: from.other === 5 ? null : {
        area: { top: row, left: col, bottom: row + count + 3, right: col + from.other },
        conditions: [{ col, test: 'has', text: name }, { col: col + 1, test: 'empty', text: '' }],
        hides: [[row, row], [row + 2, row + 2 + from.sheet]],
      },
    };
    case 40: return { do: 'orderRows', area: { ...block, right: col + from.other, bottom: row + count }, order: orderFrom(from, count + 1) };
    case 39: return sortEdit(book, { ...block, bottom: row + count + 2 }, [{ col, descending: from.other > 3 }, { col: col + 1 }], valuesOf(book, sheet));
    case 41: case 42: {
      const down = from.other % 2 === 0;
      const source = area(sheet, row, col, row + (from.other % 3), col + 1);
      return fillEdit(book, source, down ? { ...source, bottom: source.bottom + count } : { ...source, right: source.right + count });
    }
    case 43: return replaceEdit(book, findAll(book, FIND), FIND, to);
    case 44: return filterEdit(book, { ...block, bottom: row + 4 }, [{ col, test: 'has', text: 'a' }], valuesOf(book, sheet), (r, c) => sheetText(book, sheet, r, c));
    case 45: case 46: return { do: 'acknowledge', sheet, row, col, pins: from.other === 5 ? [] : [{ print: to, note: name }] };
    case 47: return { do: 'setRecord', kind: 'ticket', id: String(from.other % 3), data: from.count === 4 ? null : ticketOf(from) };
    case 48: return { do: 'setRecord', kind: 'ticks', id: String(from.other % 3), data: from.count === 4 ? null : { ticks: ticketOf(from).leftOut.map((cell) => ({ cell, was: to })) } };
    case 49: return { do: 'setRecord', kind: 'person', id: String(from.other % 3), data: from.count === 4 ? null : personOf(from) };
    case 50: return { do: 'setRecord', kind: 'lay', id: String(from.other % 3), data: from.count === 4 ? null : layOf(from) };
    case 51: return { do: 'setRecord', kind: 'shape', id: String(from.other % 3), data: from.count === 4 ? null : shapeOf(from) };
    case 54: return { do: 'setRecord', kind: 'mark', id: String(from.other % 3), data: from.count === 4 ? null : { say: to, at: ticketOf(from).leftOut[0]!, was: from.other % 2 ? to : null } };
    case 52: return { do: 'setRecord', kind: 'comparison', id: String(from.other % 3), data: from.count === 4 ? null : comparisonOf(from) };
    case 53: return { do: 'setRecord', kind: 'run', id: String(from.other % 3), data: from.count === 4 ? null : runOf(from) };
    default: return { do: 'setCells', sheet, cells };
  }
}

function comparisonOf(from: Seed): ComparisonRecord {
  const { leftOut, pictures } = ticketOf(from);
  const { to, name, other } = from;
  return {
    title: name, cases: ['As it is', to, '14'], against: other % 3, inputs: leftOut.map((cell) => ({ cell, values: [null, to, '14 in'] })),
    ...(other > 2 && { picture: pictures[0]! }),
  };
}

function runOf(from: Seed): RunRecord {
  const { leftOut } = ticketOf(from);
  return { title: from.name, input: leftOut[1]!, from: '4', to: String(from.row), step: '1/2 in', results: [...leftOut, `=Fit!A${from.count}`] };
}

/** Some order of so many rows. */
function orderFrom({ row, other, sheet }: Seed, rows: number): number[] {
  const left = Array.from({ length: rows }, (_, at) => at);
  return Array.from(left, (_, at) => left.splice((row + other * at + sheet) % left.length, 1)[0]!);
}

/** Its formulas say their sheet, as a record's do. */
function ticketOf({ row, col, count, sheetName, to, cells }: Seed): Ticket {
  const cell = `${columnName(col)}${row + 1}`;
  const texts = cells.map((each) => each.cell?.raw ?? '').filter((raw) => raw.startsWith('='));
  return { leftOut: [`=Fit!${cell}`, `='${sheetName.replaceAll("'", "''")}'!$${columnName(col + 1)}$${row + count}:${cell}`], pictures: [`=${to} + Skirt!${cell}`, ...texts] };
}

function personOf({ row, col, count, other, name, to, sheetName, cells }: Seed): Person {
  const raw = (cells[0]?.cell?.raw ?? '').slice(0, 200);
  const day = `2026-0${1 + other}-0${count}`;
  return {
    name: sheetName, child: count === 1, notes: to,
    sets: [{ id: `a${row}`, day, by: to, remark: '', measures: [{ of: 'waist', raw }, { of: 'her own', raw: '1/2 in' }] }, { id: 'b', day: '2026-02-01', by: '', remark: name, measures: [] }],
    worked: [{ id: 'w', garment: name, day, sizes: [{ level: 'bust', raw: '14' }], ease: [], length: '', alterations: '', remark: '' }],
    put: [{ of: 'waist', cell: `='${sheetName.replaceAll("'", "''")}'!${columnName(col)}${row + 1}`, raw }],
  };
}

function layOf({ row, col, count, sheetName, name, other }: Seed): Lay {
  const block = `${columnName(col)}${row + 1}:${columnName(col + 3)}${row + count}`;
  return {
    name, pieces: `=Fit!${block}`, second: other === 1 ? '' : `='${sheetName.replaceAll("'", "''")}'!${block}`,
    cloth: { which: 'main', width: '140 cm', length: '', gap: '', shrinkAlong: '3 %', shrinkAcross: '', repeatAlong: '', repeatAcross: '', fold: 'open', foldAt: '', oneWay: false, alike: true, remnant: [], flaws: [] },
    aim: 'least length', leftWidth: '', price: String(count), shop: '', offers: [], kept: null,
  };
}

function shapeOf({ row, col, count, sheetName, to }: Seed): Shape {
  return {
    name: sheetName, file: to, from: count === 1 ? 'board' : 'file', error: 0.1 * row,
    points: [{ x: 0, y: 0 }, { x: 100 + col, y: 0, through: { x: 80.5, y: 90 } }, { x: 0, y: 100 + row }],
    grain: [{ x: 10, y: 5 }, { x: 10, y: 95 }], marks: [{ mark: 'side seam', x: col, y: row }],
  };
}

const sheetText = (book: Book, sheet: SheetId, row: number, col: number): string => cellAt(sheetById(book, sheet)!, row, col)?.raw ?? '';

function valuesOf(book: Book, sheet: SheetId) {
  return (row: number, col: number): PlainValue => {
    const text = sheetText(book, sheet, row, col);
    return text === '' ? { kind: 'empty' } : { kind: 'text', text };
  };
}

/** Each made of the workbook as the ones before leave it. */
function manyFrom(seeds: readonly Seed[], book: Book): Edit[] {
  let now = book;
  return seeds.map((part) => {
    const edit = editFrom(part, now);
    try {
      now = apply(edit, now).book;
    } catch {
      // The whole will be refused; that is a case too.
    }
    return edit;
  });
}
