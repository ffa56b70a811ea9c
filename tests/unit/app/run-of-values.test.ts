/** A run of values: which values, where pins begin and end, and how it goes out. */
import { describe, expect, test } from 'vitest';
import { pinsAlong, runTable, runValues } from '../../../src/app/run-of-values-table.ts';
import { NO_RUN } from '../../../src/panels/run-of-values.ts';
import { inBase, exactText, quantity, type ShowAs, type UnitCode } from '../../../src/quantities/index.ts';
import type { TrialPin } from '../../../src/reckoning/index.ts';
import { writeCsv } from '../../../src/tables/index.ts';

const AS: ShowAs = { system: 'own', inchStep: 8 };
const texts = (from: string, to: string, step: string, unit: UnitCode) => {
  const values = runValues({ from, to, step }, unit);
  return 'sentence' in values ? values.sentence : values.map((value) => exactText(inBase(value, unit)));
};

describe('the values', () => {
  test('go from one end to the other, each to the last bit as it would be typed', () => {
    expect(texts('4', '8', '1', '')).toEqual(['4', '5', '6', '7', '8']);
    expect(texts('0.1 cm', '0.5 cm', '0.1 cm', 'cm')).toEqual(['0.1 cm', '0.2 cm', '0.3 cm', '0.4 cm', '0.5 cm']);
    expect(texts('1 in', '1 1/2 in', '1/8 in', 'in')).toEqual(['1 in', '1.125 in', '1.25 in', '1.375 in', '1.5 in']);
    expect(texts('61 cm', '63 cm', '5 mm', 'cm')).toEqual(['61 cm', '61.5 cm', '62 cm', '62.5 cm', '63 cm']);
  });
  test('begin where she says, also between steps, and stay within the end', () => expect(texts('4', '9', '2', '')).toEqual(['4', '6', '8']));
  test('one alone', () => expect(texts('4', '4', '1', '')).toEqual(['4']));
  test.each([
    ['4', '20', '', '', 'Steps: write how far apart the values are.'],
    ['20', '4', '1', '', 'It cannot go from more to less: write the smaller figure first.'],
    ['4', 'many', '1', '', 'To: “many” is no figure: write a number, such as 8.'],
    ['4', '20', '1', 'cm', 'From: “4” is of another kind: write a length with its unit, such as 80 cm or 31 1/2 in.'],
    ['4', '20', '0', '', 'Steps: write a step above 0, or leave it empty where any value can be cut.'],
    ['0', '1000', '1', '', 'That is 1,001 values, and a run has at most 200: write larger steps, or begin and end nearer together.'],
  ] as const)('%s to %s in steps of “%s”: a sentence', (from, to, step, unit, sentence) => expect(texts(from, to, step, unit)).toBe(sentence));
});

const pin = (row: number, sentence: string, value: number): TrialPin => ({
  cell: { sheet: 1, row, col: 1 }, caution: { by: 'EASE', sentence, print: `${row} ${value}`, mend: { kind: 'quantity', value, unit: 'cm' } },
});

describe('pins along the way', () => {
  const values = [4, 5, 6, 7, 8];
  const all = [[pin(9, 'Too tight by this.', 10)], [pin(9, 'Too tight by this.', 20), pin(2, 'Overlaps.', 1)], [], [pin(9, 'Too tight by this.', 30)], [pin(9, 'Too tight by this.', 40)]];
  const along = pinsAlong(values, all, '', AS, AS, ({ cell }) => `row ${cell.row + 1}`);

  test('the same of the same cell is one, with the stretches on which it is; in the order of the sheet', () => {
    expect(along.listed).toEqual([
      { number: 1, place: 'row 3', where: 'with 5', sentence: 'Overlaps. 0.1 cm' },
      { number: 2, place: 'row 10', where: 'from 4 to 5, from 7 to 8', sentence: 'Too tight by 1.0 cm.' },
    ]);
    expect(along.at).toEqual([[2], [1, 2], [], [2], [2]]);
    expect(along.stretches).toEqual([{ number: 1, from: 5, to: 5 }, { number: 2, from: 4, to: 5 }, { number: 2, from: 7, to: 8 }]);
  });

  test('a file has the run with the sentences of its pins, and what begins like a formula is guarded', () => {
    const as = AS;
    const grid = runTable({
      ...NO_RUN, input: { cell: null, label: '=Pleats', place: 'Skirt B8', as }, results: [{ cell: null, label: 'Flat width', place: 'Skirt B15', as }], pins: along.listed,
      values: [4, 5].map((n, at) => ({ shown: String(n), now: false, results: [{ kind: 'quantity', value: quantity(200 + n, 'cm').value, unit: 'cm' } as const], pins: along.at[at]! })),
    }, [quantity(4, ''), quantity(5, '')]);
    const { text, guarded } = writeCsv(grid, { numbers: 'shown', show: AS, unit: 'cells', separator: ',', decimalMark: '.', mark: false });
    expect(text.trimEnd().split('\r\n')).toEqual(["'=Pleats,Flat width,Pins", '4,204.0 cm,row 10: Too tight by 1.0 cm.', '5,205.0 cm,row 3: Overlaps. 0.1 cm row 10: Too tight by 1.0 cm.']);
    expect(guarded).toBe(1);
  });
});
