/**
 * Random edits of a workbook, each told to the engine by its effects alone:
 * afterwards every result is the same as in an engine that was opened with the
 * workbook as it then is.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cellName } from '../../../src/formula/index.ts';
import { Results } from '../../../src/reckoning/results.ts';
import { apply, EditRefused, usedArea } from '../../../src/workbook/index.ts';
import type { Book, CellChange, Edit } from '../../../src/workbook/index.ts';
import { Engine } from '../../../workers/reckon/engine.ts';
import { bookOf, editFrom, seed } from '../workbook/help.ts';
import type { Seed } from '../workbook/help.ts';
import { said } from './desk.ts';

const ref = fc.tuple(
  fc.constantFrom('', '', '', '', 'Fit!', 'Skirt!', "'My measures'!"), fc.constantFrom('A', 'B', '$C', 'D'), fc.constantFrom('1', '2', '$3', '4', '5', '6', '9'),
).map((parts) => parts.join(''));
const block = fc.tuple(ref, fc.constantFrom('A', 'B', 'C', '$D'), fc.constantFrom('2', '5', '$6', '8')).map(([first, col, row]) => `${first}:${col}${row}`);
const column = fc.constantFrom('B:B', 'A:C', 'Fit!C:D', '2:3');
const name = fc.constantFrom('waist', 'full bust', 'bust', 'hip_1');
const operand = fc.oneof({ weight: 5, arbitrary: ref }, { weight: 1, arbitrary: name }, { weight: 2, arbitrary: fc.constantFrom('2', '3 cm', '1/4 in', '10%', '"x"', 'TRUE', '0', '45°') });
const sum = fc.tuple(operand, fc.constantFrom('+', '-', '*', '/', '&', '=', '>', '^'), operand).map((parts) => parts.join(' '));
const many = fc.oneof({ weight: 3, arbitrary: block }, { weight: 1, arbitrary: column }, { weight: 1, arbitrary: name });
const call = fc.oneof(
  fc.tuple(fc.constantFrom('SUM', 'MIN', 'MAX', 'AVERAGE', 'COUNT', 'COUNTA', 'MEDIAN', 'PRODUCT', 'COUNTBLANK', 'STDEV', 'SUMSQ', 'ROWS', 'COLUMNS'), many).map(([fn, of]) => `${fn}(${of})`),
  fc.tuple(many, many).map(([a, b]) => `SUMPRODUCT(${a},${b})`),
  fc.tuple(many, fc.constantFrom('"> 5 cm"', '">2"', '"x"', '3 cm')).map(([a, b]) => `COUNTIF(${a},${b})`),
  fc.tuple(block, fc.constantFrom('"> 5 cm"', '"<>3"')).map(([a, b]) => `SUMIF(${a},${b})`),
  fc.tuple(operand, many).map(([a, b]) => `MATCH(${a},${b},0)`),
  fc.tuple(operand, block, fc.constantFrom('1', '2')).map(([a, b, c]) => `VLOOKUP(${a},${b},${c},FALSE())`),
  fc.tuple(block, fc.constantFrom('1', '2', '3')).map(([a, b]) => `INDEX(${a},${b},1)`),
  fc.tuple(operand, operand).map(([a, b]) => `EASE(${a};${b})`),
  fc.tuple(operand, operand).map(([a, b]) => `SEAM.SHIFT(${a};${b})`),
  fc.tuple(many, operand).map(([a, b]) => `SIZE.MEASURE(${a};"waist";${b})`),
  fc.tuple(sum, operand, operand).map(([a, b, c]) => `IF(${a},${b},${c})`),
  fc.tuple(operand, operand).map(([a, b]) => `IFERROR(${a},${b})`),
  operand.map((a) => `ROUND(${a},1)`),
  fc.constantFrom('NOPE(1)', 'ROW()', 'COLUMN()', 'ROW(A3)', 'PI()', 'TRANSPOSE(A1:B2)', 'ARRAYFORMULA(A1:A3*2)', 'FILTER(A1:A4,B1:B4)', 'SORT(B1:B4)', 'UNIQUE(A1:A5)'),
);
const formula = fc.oneof(sum, sum, call, fc.tuple(call, fc.constantFrom('+', '*'), operand).map((parts) => parts.join(' ')), fc.constantFrom('', '(', 'A1 A2', 'Gone!A1', '#REF! + 1', 'full bust line'))
  .map((text) => `=${text}`);
const typed = fc.oneof(
  { weight: 5, arbitrary: formula },
  { weight: 3, arbitrary: fc.constantFrom('10 cm', '2 1/4 in', '5', '3', '5 %', '86–90 cm', '12.5 mm', '100 cm²', '45°', '1 yd', '10', '12') },
  { weight: 2, arbitrary: fc.constantFrom('', 'waist', 'XS', '1/0', '8 buttons', 'TRUE', '#N/A', '2026-11-03', "'5 cm", 'size') },
);
const cells = fc.array(
  fc.record({ row: fc.nat(8), col: fc.nat(4), cell: typed.map((raw) => (raw === '' ? null : { raw })) }, { noNullPrototype: true }),
  { minLength: 1, maxLength: 8 },
) as fc.Arbitrary<CellChange[]>;

interface Step {
  readonly seed: Seed;
  readonly cells: readonly CellChange[];
  readonly undo: boolean;
}

const step: fc.Arbitrary<Step> = fc.record({ seed, cells, undo: fc.integer({ min: 0, max: 9 }).map((n) => n < 2) });

/** Fills random edits with cells whose results mean something. */
function withCells(from: Step): Seed {
  return { ...from.seed, cells: from.cells, more: from.seed.more.map((more) => ({ ...more, cells: from.cells })) };
}

const START = bookOf(
  [['waist', '70 cm', '=B1*2', '=SUM(B1:B3)'], ['bust', '92 cm', '=B2-B1', '=D1+Skirt!A1'], ['hip', '98 cm', '=waist+2 cm', '=C3/B1'], ['x', '3', '=C4', '=D3+1']],
  [['10 cm', '=Fit!B1'], ['2', '=A1*A2'], ['=SUM(Fit!B:B)', '=full bust + 1 in']],
  [{ name: 'waist', area: { sheet: 1, top: 0, left: 1, bottom: 0, right: 1 }, kind: 'cells' }, { name: 'full bust', area: { sheet: 1, top: 0, left: 0, bottom: 3, right: 3 }, kind: 'chart' }],
);

function outcomes(book: Book, results: Results): Record<string, string> {
  const all: Record<string, string> = {};
  for (const sheet of book.sheets) {
    const used = usedArea(sheet);
    // Blocks of results reach beyond what is typed.
    const [bottom, right] = [Math.max(used?.bottom ?? 0, 20) + 8, Math.max(used?.right ?? 0, 8) + 8];
    for (let row = 0; row <= bottom; row++) {
      for (let col = 0; col <= right; col++) {
        const result = results.at(sheet.id, row, col);
        if (result.kind !== 'empty') all[`${sheet.name} ${cellName(row, col)}`] = `${sheet.rows[row]?.[col]?.raw ?? ''} → ${said(result)}`;
      }
    }
  }
  return all;
}

function rebuilt(book: Book): Results {
  const results = new Results();
  results.apply(new Engine().open(1, book));
  return results;
}

/** Plays the steps; gives what the page then shows and what it should. */
function play(steps: readonly Step[]): { readonly shown: Record<string, string>; readonly due: Record<string, string>; readonly done: readonly Edit[] } {
  const engine = new Engine();
  const results = new Results();
  let book: Book = START;
  let revision = 1;
  results.apply(engine.open(revision, book));
  const done: Edit[] = [];
  const take = (edit: Edit): Edit | null => {
    let applied;
    try {
      applied = apply(edit, book);
    } catch (error) {
      if (error instanceof EditRefused) return null;
      throw error;
    }
    if (applied.book === book) return null;
    book = applied.book;
    revision += 1;
    done.push(edit);
    results.shift(revision, applied.effects);
    results.apply(engine.apply(revision, applied.effects));
    return applied.inverse;
  };
  for (const each of steps) {
    const inverse = take(editFrom(withCells(each), book));
    if (inverse && each.undo) take(inverse);
  }
  return { shown: outcomes(book, results), due: outcomes(book, rebuilt(book)), done };
}

describe('results after random edits are those of a rebuild', () => {
  test('1,000 sequences', { timeout: 900_000 }, () => {
    fc.assert(fc.property(fc.array(step, { minLength: 1, maxLength: 10 }), (steps) => {
      const { shown, due } = play(steps);
      expect(shown).toEqual(due);
    }), { numRuns: Number(process.env['SEQUENCES'] ?? 1000), interruptAfterTimeLimit: 880_000, markInterruptAsFailure: true, ...(process.env['SEED'] && { seed: Number(process.env['SEED']) }) });
  });
});
