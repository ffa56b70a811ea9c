/**
 * Random formulas with figures of all units, through everything that happens to a
 * workbook: typed, a row put in above and taken out again, the sheet and a name
 * renamed, undone, loaded from the journal of this device, and written to a file
 * and read again. Afterwards each has the text and the value that it had.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { Results } from '../../../src/reckoning/results.ts';
import type { Result } from '../../../src/reckoning/protocol.ts';
import { apply, bookText, cellAt, emptyBook, readBookText, sheetById } from '../../../src/workbook/index.ts';
import type { Book, CellChange, Edit } from '../../../src/workbook/index.ts';
import { Engine } from '../../../workers/reckon/engine.ts';
import { Hand, tab } from '../keeping/help.ts';

const FORMULAS = 20_000;
const COLUMNS = 20;

const literal = fc.oneof(
  fc.tuple(fc.nat({ max: 40 }), fc.constantFrom(' 1/2', ' 3/8', '¼', ' 15/16', ''), fc.constantFrom(' in', '"', ' ft', ' yd')).map((parts) => parts.join('')),
  fc.tuple(fc.integer({ min: 1, max: 2_000 }).map((n) => n / 8), fc.constantFrom(' cm', ' mm', 'cm', ' m')).map((parts) => parts.join('')),
  fc.constantFrom('5,7 cm', '1 yd 4 in', '45°', '12 %', '3 m2', '3', '0.1'),
);
const place = fc.constantFrom('$A$1', '$B$2', '$A$1:$B$2', 'waist', 'full bust');
const part: fc.Arbitrary<string> = fc.oneof(
  { weight: 4, arbitrary: literal }, { weight: 2, arbitrary: place }, { weight: 1, arbitrary: fc.tuple(literal, fc.constantFrom(' + ', '-', '*', ' / '), place).map((parts) => parts.join('')).map((text) => `(${text})`) },
  { weight: 1, arbitrary: fc.tuple(fc.constantFrom('SUM', 'MAX', 'round', 'IF', 'MODE', 'AVERAGE'), literal, literal).map(([name, a, b]) => `${name}(${a}; ${b})`) },
  { weight: 1, arbitrary: literal.map((text) => `LET(ease; ${text}; ease + ease)`) }, { weight: 1, arbitrary: literal.map((text) => `"a ""b"" ${text.replaceAll('"', '""')}"`) },
);
const formula = fc.array(fc.tuple(fc.constantFrom('+', ' - ', ' * ', '/', ' & '), part), { minLength: 1, maxLength: 3 }).map((parts) => `=${parts.map(([sign, text], i) => (i === 0 ? text : sign + text)).join('')}`);

/** Rows above the formulas: what they point at, and room for a row. */
const TOP = 4;
const START: readonly CellChange[] = [['70 cm', '36 in'], ['2', '12.5 mm']].flatMap((cells, row) => cells.map((raw, col) => ({ row, col, cell: { raw } })));

function begin(): Book {
  const edits: Edit[] = [
    { do: 'setCells', sheet: 1, cells: START },
    { do: 'setName', name: 'waist', target: { area: { sheet: 1, top: 0, left: 0, bottom: 0, right: 0 }, kind: 'cells' } },
    { do: 'setName', name: 'full bust', target: { area: { sheet: 1, top: 1, left: 1, bottom: 1, right: 1 }, kind: 'cells' } },
  ];
  return apply({ do: 'many', label: '', edits }, emptyBook('survive')).book;
}

type Kept = readonly (readonly [raw: string | undefined, result: Result])[];

/** Texts and results of the formulas, by an engine that is opened with the workbook. */
function read(book: Book, count: number): Kept {
  const results = new Results();
  results.apply(new Engine().open(1, book));
  return Array.from({ length: count }, (_, i) => {
    const [row, col] = [TOP + Math.floor(i / COLUMNS), i % COLUMNS];
    return [cellAt(sheetById(book, 1)!, row, col)?.raw, results.at(1, row, col)];
  });
}

describe('formulas with figures of all units', () => {
  test(`${FORMULAS.toLocaleString('en')} of them survive`, async () => {
    const formulas = fc.sample(formula, { numRuns: FORMULAS, seed: 20_261_125 });
    const hand = new Hand(tab().keeper, begin());
    await hand.keeper.begin(hand.book);
    await hand.do({ do: 'setCells', sheet: 1, cells: formulas.map((raw, i) => ({ row: TOP + Math.floor(i / COLUMNS), col: i % COLUMNS, cell: { raw } })) });
    const due = read(hand.book, FORMULAS);
    expect(due.map(([raw]) => raw)).toEqual(formulas);
    const figures = due.filter(([, { kind }]) => kind === 'quantity').length;
    console.log(`${FORMULAS} formulas with units, of which ${figures} give figures`);
    expect(figures).toBeGreaterThan(FORMULAS / 5);

    const name = hand.book.sheets[0]!.name;
    const there: Edit[] = [
      { do: 'insertRows', sheet: 1, at: 1, count: 1 }, { do: 'renameSheet', sheet: 1, name: "Aunt's measures" },
      { do: 'renameName', name: 'waist', to: 'tummy' },
    ];
    const back: Edit[] = [];
    for (const edit of there) {
      back.unshift(apply(edit, hand.book).inverse);
      await hand.do(edit);
    }
    // The row is in: the fixed references are others now, and the values the same.
    const moved = new Results();
    moved.apply(new Engine().open(1, hand.book));
    for (let i = 0; i < FORMULAS; i += 7) {
      const at = moved.at(1, TOP + 1 + Math.floor(i / COLUMNS), i % COLUMNS);
      if (due[i]![1].kind !== 'error') expect(at, formulas[i]).toEqual(due[i]![1]);
    }
    for (const edit of back) await hand.do(edit);
    expect(hand.book.sheets[0]!.name).toBe(name);
    const same = (found: Kept): void => {
      for (const [i, [raw, result]] of found.entries()) {
        if (raw !== due[i]![0] || JSON.stringify(result) !== JSON.stringify(due[i]![1])) expect([raw, result]).toEqual(due[i]);
      }
    };
    same(read(hand.book, FORMULAS));
    const loaded = await tab().keeper.load();
    expect(loaded!.problems).toEqual([]);
    same(read(loaded!.book, FORMULAS));
    const file = readBookText(bookText(loaded!.book));
    expect(file.problems).toEqual([]);
    same(read(file.book!, FORMULAS));
  }, 300_000);
});
