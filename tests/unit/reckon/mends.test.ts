/** Where an error begins, and what would mend it. */
import { describe, expect, test } from 'vitest';
import { withUnits } from '../../../src/formula/index.ts';
import type { UnitMend, Working } from '../../../src/reckoning/protocol.ts';
import { cellName } from '../../../src/formula/index.ts';
import { Desk } from './desk.ts';
import type { Cells } from './desk.ts';

const workingOf = (cells: Cells, cell: string): Working => {
  const desk = new Desk(cells);
  return desk.engine.working(desk.cell(cell));
};

/** Each mend as the formula that it makes, or as the cell and unit that it is for. */
function offered(cells: Cells, cell = 'Z1'): string[] {
  const own = new Desk({}).cell(cell);
  return (workingOf(cells, cell).fault?.mends ?? []).map((mend: UnitMend) => {
    if (mend.figures.length === 0) return `${cellName(mend.cell.row, mend.cell.col)}: ${mend.values[0]} ${mend.unit}`;
    expect(mend.cell).toEqual(own);
    return withUnits(cells[cell]!, mend.figures, mend.values, mend.unit)!.formula;
  });
}

describe('a figure that only lacks its unit', () => {
  const cases: readonly (readonly [formula: string, ...mends: string[]])[] = [
    ['=A1+2', '=A1+2 in', '=A1+2 cm'],
    ['=A2+2', '=A2+2 cm', '=A2+2 in'],
    ['=A1-3/8', '=A1-3/8 in', '=A1-3/8 cm'],
    ['=(A1)-(1+2)', '=(A1)-(1 in+2 in)', '=(A1)-(1 cm+2 cm)'],
    ['=IF(A1>10;1;0)', '=IF(A1>10 in;1;0)', '=IF(A1>10 cm;1;0)'],
    ['=A1+-2', '=A1+-2 in', '=A1+-2 cm'],
    ['=SUM(A1;2)', '=SUM(A1;2 in)', '=SUM(A1;2 cm)'],
    ['=EASE(A1;30)', '=EASE(A1;30 in)', '=EASE(A1;30 cm)'],
    ['=EASE(38;36)', '=EASE(38 cm;36 cm)', '=EASE(38 in;36 in)'],
    ['="a "" b"&(A1+2)', '="a "" b"&(A1+2 in)', '="a "" b"&(A1+2 cm)'],
    ['=1/3 yd+A1+2', '=1/3 yd+A1+2 yd', '=1/3 yd+A1+2 cm'],
    ['=A1+B1', 'B1: 3 in', 'B1: 3 cm'],
    ['=SUM(A1:B1)', 'B1: 3 in', 'B1: 3 cm'],
    ['=A1+A1*A1'], ['=LEFT("ab";A1)'], ['=A1+C9'], ['=1/0'], ['=A1+"x"'], ['=2+3'],
  ];
  for (const [formula, ...mends] of cases) {
    test(formula, () => expect(offered({ A1: '10 in', A2: '20 cm', B1: '3', Z1: formula })).toEqual(mends));
  }

  test('every offer gives a result when it is taken', () => {
    for (const [formula] of cases) {
      const desk = new Desk({ A1: '10 in', A2: '20 cm', B1: '3', Z1: formula });
      for (const mend of desk.engine.working(desk.cell('Z1')).fault?.mends ?? []) {
        const raw = mend.figures.length > 0 ? withUnits(formula, mend.figures, mend.values, mend.unit)!.formula : `${mend.values[0]} ${mend.unit}`;
        const mended = new Desk({ A1: '10 in', A2: '20 cm', B1: '3', Z1: formula, [mend.figures.length > 0 ? 'Z1' : cellName(mend.cell.row, mend.cell.col)]: raw });
        expect(mended.result('Z1').kind, raw).not.toBe('error');
      }
    }
  });

  test('is not offered where the error began elsewhere', () => {
    expect(offered({ A1: '10 in', B1: '=A1+2', Z1: '=B1*3' })).toEqual([]);
  });

  test('follows rows that are put in', () => {
    const desk = new Desk({ A1: '10 in', A5: '=A1+2' });
    desk.edit({ do: 'insertRows', sheet: 1, at: 1, count: 2 });
    expect(desk.engine.working(desk.cell('A7')).fault!.mends.map(({ cell, unit }) => [cell.row, unit])).toEqual([[6, 'in'], [6, 'cm']]);
  });

  test('looking changes nothing', () => {
    const desk = new Desk({ A1: '10 in', A2: '=A1+2', A3: '=A1*2' });
    desk.engine.working(desk.cell('A2'));
    desk.type({ A1: '11 in' });
    expect([desk.show('A2').slice(0, 1), desk.show('A3')]).toEqual(['!', '22 in']);
  });
});

describe('the first cause', () => {
  const chain: Cells = { A1: '1 cm', B1: '=A1+B3', ...Object.fromEntries(Array.from({ length: 9 }, (_, i) => [`C${i + 1}`, i === 0 ? '=B1*2' : `=C${i}+A1`])) };

  test('of a chain of ten cells is the empty cell, with a way there', () => {
    const working = workingOf(chain, 'C9');
    expect(working.result).toEqual({ kind: 'error', sentence: 'B3 has no value yet.' });
    expect(working.fault!.cause).toEqual({ cell: { sheet: 1, row: 2, col: 1 }, text: 'B3' });
    expect(workingOf(chain, 'B1').fault!.cause!.text).toBe('B3');
  });

  test('is the cell that has its own sentence', () => {
    const working = workingOf({ B3: '=1/0', B4: '=B3+1', B5: '=B4+1' }, 'B5');
    expect([working.result, working.fault!.cause!.text]).toEqual([{ kind: 'error', sentence: 'B3: Divides by 0.' }, 'B3']);
  });

  test('is named with its sheet from another, and in a function of the trade', () => {
    const desk = new Desk(['Fit', { B1: '=EASE(B3;30 in)' }], ['Cloth', { A1: '=Fit!B1*2' }]);
    expect(desk.show('A1', 1)).toBe('! Fit!B3 has no value yet.');
    expect(desk.engine.working(desk.cell('A1', 1)).fault!.cause).toEqual({ cell: { sheet: 1, row: 2, col: 1 }, text: 'Fit!B3' });
  });

  test('of an error of its own is no other cell', () => expect(workingOf({ A1: '=1/0' }, 'A1').fault).toEqual({ mends: [] }));

  test('of a circle is its cells in order', () => {
    const { fault, tree, result } = workingOf({ A1: '=B2+1', B2: '=C3', C3: '=A1' }, 'B2');
    const cells = fault!.circle!.map(({ text }) => text);
    expect([...cells, cells[0]].join(' ')).toMatch(/A1 B2 C3 A1|B2 C3 A1 B2|C3 A1 B2 C3/);
    expect([tree, result.kind]).toEqual([undefined, 'error']);
    expect(workingOf({ A1: '=A1' }, 'A1').fault!.circle!.map(({ text }) => text)).toEqual(['A1']);
  });
});
