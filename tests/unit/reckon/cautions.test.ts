/** Which cautions reach the page, from which calls, and when they go. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cellName } from '../../../src/formula/index.ts';
import { Results } from '../../../src/reckoning/results.ts';
import type { Edit } from '../../../src/workbook/index.ts';
import { Engine } from '../../../workers/reckon/engine.ts';
import { Desk } from './desk.ts';

function pins(desk: Desk, cell: string, sheet = 0): string[] {
  const { sheet: id, row, col } = desk.cell(cell, sheet);
  return desk.results.pins.at(id, row, col).map(({ by, mend, cure }) => {
    const at = cure?.cell ? ` in ${cure.cell.row},${cure.cell.col}` : '';
    return `${by}${mend?.kind === 'quantity' ? ` ${Math.round(mend.value * 1e6) / 1e6} ${mend.unit}` : ''}${cure ? ` ${cure.way} ${cure.put}${at}` : ''}`;
  });
}

const TIGHT = ['EASE 940 cm atLeast finished in 0,0'];

describe('cautions', () => {
  it('come with the cells of a workbook that is opened, and with those that an edit changes', () => {
    const desk = new Desk({ A1: '90 cm', A2: '94 cm', A3: '=EASE(A1, A2)' });
    expect(pins(desk, 'A3')).toEqual(TIGHT);
    desk.type({ A1: '96 cm' });
    expect(pins(desk, 'A3')).toEqual([]);
    desk.type({ A1: '36 in' });
    expect(pins(desk, 'A3')).toEqual(['EASE 940 in atLeast finished in 0,0']);
  });

  it('are those of inner calls too: in sums, in brackets, in other functions', () => {
    const desk = new Desk({ A1: '90 cm', A2: '94 cm' });
    for (const formula of ['=2 * EASE(A1, A2)', '=(EASE(A1, A2))', '=SUM(1 cm, EASE(A1, A2), 2 cm)', '=ABS(-EASE(A1, A2))', '=IF(EASE(A1, A2) < 0 cm, "tight", "")', '=SEAM.GAIN(EASE(A1, A2), 2)', '=IFERROR(EASE(A1, A2), 0 cm)', '=IF(FALSE, EASE(A1, A2), EASE(A1, A2))']) {
      desk.type({ B1: formula });
      expect(pins(desk, 'B1'), formula).toEqual(TIGHT);
    }
    desk.type({ B1: '=EASE(A1, A2) + SEAM.LEFT(1.5 cm, 1 cm)' });
    expect(pins(desk, 'B1')).toHaveLength(2);
    desk.type({ B1: '=EASE(A1, A2) + EASE(A1, A2)' });
    expect(pins(desk, 'B1')).toEqual(TIGHT);
  });

  it('of IF are those of the branch that is taken', () => {
    const desk = new Desk({ A1: '90 cm', A2: '94 cm', A3: 'yes', A4: '=IF(A3 = "yes", EASE(A1, A2), 0 cm)' });
    expect(pins(desk, 'A4')).toEqual(TIGHT);
    desk.type({ A3: 'no' });
    expect(pins(desk, 'A4')).toEqual([]);
    desk.type({ A3: 'yes' });
    expect(pins(desk, 'A4')).toEqual(TIGHT);
    desk.type({ A4: '=IFS(A3 = "no", EASE(A1, A2), TRUE, 2 cm)' });
    expect(pins(desk, 'A4')).toEqual([]);
    desk.type({ A4: '=CHOOSE(2, EASE(A1, A2), 2 cm)' });
    expect(pins(desk, 'A4')).toEqual([]);
  });

  it('change though the result does not', () => {
    const desk = new Desk({ A1: '5 mm', A2: '=SEAM.ROOM(A1, 2)' });
    expect(pins(desk, 'A2')).toHaveLength(1);
    desk.type({ A1: '6 mm' });
    expect(desk.show('A2')).toBe('0 mm');
    expect(pins(desk, 'A2')).toEqual([]);
  });

  it('go when the formula goes, becomes an error or turns in a circle', () => {
    for (const now of ['', '5 cm', '=EASE(A1, 7)', '=A3', '=A1']) {
      const desk = new Desk({ A1: '90 cm', A2: '94 cm', A3: '=EASE(A1, A2)' });
      desk.type({ A3: now });
      expect(pins(desk, 'A3'), now).toEqual([]);
    }
  });

  it('move with rows and columns, and so does the cell that mends them', () => {
    const desk = new Desk({ A1: '90 cm', A2: '94 cm', A3: '=EASE(A1, A2)' });
    const { id } = desk.book.sheets[0]!;
    desk.edit({ do: 'insertRows', sheet: id, at: 0, count: 2 });
    expect(pins(desk, 'A5')).toEqual(['EASE 940 cm atLeast finished in 2,0']);
    expect(pins(desk, 'A3')).toEqual([]);
    desk.edit({ do: 'insertColumns', sheet: id, at: 0, count: 1 });
    expect(pins(desk, 'B5')).toEqual(['EASE 940 cm atLeast finished in 2,1']);
    desk.edit({ do: 'removeRows', sheet: id, at: 0, count: 1 });
    expect(pins(desk, 'B4')).toEqual(['EASE 940 cm atLeast finished in 1,1']);
    desk.edit({ do: 'removeRows', sheet: id, at: 3, count: 1 });
    expect(desk.results.pins.of(id)).toEqual([]);
  });

  it('know the cell that a name stands for, and none for a sum', () => {
    const desk = new Desk({ A1: '90 cm', A2: '94 cm', A3: '=EASE(waist, A2)', A4: '=EASE(A1 + 1 cm, A2)', B1: '90 cm' });
    desk.name('waist', 'A1');
    expect(pins(desk, 'A3')).toEqual(TIGHT);
    expect(pins(desk, 'A4')).toEqual(['EASE 940 cm atLeast finished']);
    desk.name('waist', 'B1');
    expect(pins(desk, 'A3')).toEqual(['EASE 940 cm atLeast finished in 0,1']);
  });

  it('have another print when a figure is another, and the same for the same figure in another unit', () => {
    const desk = new Desk({ A1: '90 cm', A2: '94 cm', A3: '=EASE(A1, A2)' });
    const { sheet } = desk.cell('A3');
    const print = () => desk.results.pins.at(sheet, 2, 0)[0]!.print;
    const first = print();
    desk.type({ A1: '900 mm' });
    expect(print()).toBe(first);
    desk.type({ A1: '90.1 cm' });
    expect(print()).not.toBe(first);
    desk.type({ A1: '90 cm' });
    expect(print()).toBe(first);
  });

  it('are not left behind by values that were only tried out', () => {
    const desk = new Desk({ A1: '96 cm', A2: '94 cm', A3: '=EASE(A1, A2)' });
    desk.engine.tryOut([{ label: 'tight', values: [{ cell: desk.cell('A1'), raw: '90 cm' }] }], [desk.cell('A3')]);
    desk.type({ C1: '1' });
    expect(pins(desk, 'A3')).toEqual([]);
    desk.type({ A1: '90 cm' });
    expect(pins(desk, 'A3')).toEqual(TIGHT);
  });

  it('of a block of results hang on the cell with the formula', () => {
    const desk = new Desk({ A1: '90 cm', A2: '94 cm', C1: '=MAX(A1:A2) - EASE(A1, A2) + 0 * B1:B2', B1: '1 cm', B2: '2 cm' });
    expect(pins(desk, 'C2')).toEqual([]);
  });

  it('late answers put them where their cells stand now', () => {
    const desk = new Desk({ A1: '90 cm', A2: '94 cm' });
    const { id } = desk.book.sheets[0]!;
    const late = desk.engine.apply(2, [{ do: 'cells', sheet: id, cells: [{ row: 2, col: 0, raw: '=EASE(A1, A2)' }] }]);
    desk.results.shift(3, [{ do: 'insertRows', sheet: id, at: 1, count: 1 }]);
    desk.results.apply(late);
    expect(desk.results.pins.of(id).map(({ row }) => row)).toEqual([3]);
    expect(desk.results.apply(late)).toBe(false);
  });

  it('are after any edits those of the workbook opened anew', () => {
    const place = fc.tuple(fc.nat(5), fc.nat(3)).map(([row, col]) => cellName(row, col));
    const figure = fc.constantFrom('90 cm', '94 cm', '98 cm', '5 mm', '1.5 cm', 'no', '');
    const formula = fc.tuple(place, place, place).chain(([a, b, c]) => fc.constantFrom(
      `=EASE(${a}, ${b})`, `=SEAM.LEFT(${a}, ${b})`, `=SEAM.ROOM(${a}, 2)`, `=IF(${c} = "no", 1 cm, EASE(${a}, ${b}))`, `=${a} + EASE(${b}, 94 cm)`, `=SUM(${a}:${b})`, `=EASE(ease, ${b})`,
    ));
    const edit = fc.oneof(
      fc.tuple(place, fc.oneof(figure, formula)).map(([cell, raw]) => (desk: Desk) => void desk.type({ [cell]: raw })),
      fc.tuple(fc.constantFrom('insertRows', 'removeRows', 'insertColumns', 'removeColumns'), fc.nat(4), fc.integer({ min: 1, max: 2 }))
        .map(([act, at, count]) => (desk: Desk) => void desk.edit({ do: act, sheet: desk.book.sheets[0]!.id, at, count } as Edit)),
      place.map((cell) => (desk: Desk) => void desk.name('ease', cell)),
    );
    let pinned = 0;
    fc.assert(fc.property(fc.array(edit, { minLength: 4, maxLength: 14 }), (edits) => {
      const desk = new Desk({ A1: '90 cm', A2: '94 cm', A3: '=EASE(A1, A2)', B1: '=EASE(A1, A2) + A3', B2: '=SEAM.LEFT(A1, A2)' });
      for (const each of edits) {
        each(desk);
        const fresh = new Results();
        fresh.apply(new Engine().open(1, desk.book));
        const { id } = desk.book.sheets[0]!;
        expect(desk.results.pins.of(id)).toEqual(fresh.pins.of(id));
        pinned += desk.results.pins.of(id).length;
      }
    }), { numRuns: 40, seed: 11 });
    expect(pinned).toBeGreaterThan(100);
  });
});
