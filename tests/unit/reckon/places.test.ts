/** Sheets, names, and rows and columns that come and go. */
import { describe, expect, test } from 'vitest';
import { Desk } from './desk.ts';

describe('names', () => {
  test('of cells and blocks, with spaces and accents', () => {
    const desk = new Desk({ A1: '70 cm', A2: '92 cm', A3: '98 cm' });
    desk.name('waist', 'A1');
    desk.name('full bust', 'A2');
    desk.name('Hüfte', 'A3');
    desk.name('all three', 'A1:A3');
    desk.type({ B1: '=full bust-waist', B2: '=Hüfte*2', B3: '=SUM(all three)', B4: '=FULL  BUST', B5: '=MAX(all three)-MIN(all three)' });
    expect(['B1', 'B2', 'B3', 'B4', 'B5'].map((cell) => desk.show(cell))).toEqual(['22 cm', '196 cm', '260 cm', '92 cm', '28 cm']);
    desk.type({ A2: '93 cm' });
    expect(['B1', 'B3', 'B4'].map((cell) => desk.show(cell))).toEqual(['23 cm', '261 cm', '93 cm']);
  });

  test('may be used before they are given', () => {
    const desk = new Desk({ A1: '70 cm', B1: '=waist*2', B2: '=full bust+1 cm' });
    expect([desk.show('B1'), desk.show('B2').slice(0, 2)]).toEqual(['! There is no name ‘waist’ in this workbook.', '! ']);
    desk.name('waist', 'A1');
    desk.name('full bust', 'A1');
    expect([desk.show('B1'), desk.show('B2')]).toEqual(['140 cm', '71 cm']);
    desk.name('waist', null);
    expect(desk.show('B1')).toBe('! There is no name ‘waist’ in this workbook.');
  });

  test('point elsewhere, and are called otherwise', () => {
    const desk = new Desk({ A1: '70 cm', A2: '80 cm', B1: '=ROWS(girths)' });
    desk.name('waist', 'A1');
    desk.name('girths', 'A1:A2');
    desk.type({ C1: '=waist', C2: '=SUM(girths)' });
    expect(desk.show('B1')).toBe('2');
    desk.edit({ do: 'setName', name: 'waist', target: { area: desk.area('A2'), kind: 'cells' } });
    desk.edit({ do: 'setName', name: 'girths', target: { area: desk.area('A1:A5'), kind: 'cells' } });
    expect([desk.show('C1'), desk.show('B1')]).toEqual(['80 cm', '5']);
    desk.edit({ do: 'renameName', name: 'waist', to: 'natural waist' });
    expect([desk.show('C1'), desk.book.sheets[0]!.rows[0]![2]!.raw]).toEqual(['80 cm', '=natural waist']);
  });

  test('whose cells were removed say so', () => {
    const desk = new Desk({ A1: '70 cm', A3: '1' });
    desk.name('waist', 'A1');
    desk.type({ B3: '=waist*2' });
    desk.edit({ do: 'removeRows', sheet: 1, at: 0, count: 1 });
    expect(desk.show('B2')).toBe('! The cells that ‘waist’ stood for were removed.');
  });

  test('follow rows that come above them or within, read or not read since', () => {
    const desk = new Desk({ A1: '1 cm', A2: '2 cm', A3: '3 cm' });
    desk.name('all', 'A1:A3');
    desk.edit({ do: 'insertRows', sheet: 1, at: 0, count: 1 });
    desk.edit({ do: 'insertRows', sheet: 1, at: 2, count: 1 });
    desk.type({ A3: '10 cm', C1: '=SUM(all)' });
    expect(desk.show('C1')).toBe('16 cm');
    desk.type({ D1: '=INDEX(all,1)', D2: '=COUNTIF(all,"> 2 cm")' });
    expect([desk.show('D1'), desk.show('D2')]).toEqual(['1 cm', '2']);
  });
});

describe('sheets', () => {
  test('that are not there are refused, and formulas mend themselves when they come', () => {
    const desk = new Desk(['Fit', { A1: '=Skirt!A1*2', B1: '=A1' }]);
    expect(desk.show('A1')).toMatch(/^! There is no sheet called ‘Skirt’/);
    desk.edit({ do: 'addSheet', sheet: { id: 2, name: 'Skirt', rows: [[{ raw: '5 cm' }]], widths: {} }, at: 1 });
    expect([desk.show('A1'), desk.show('B1')]).toEqual(['10 cm', '10 cm']);
    desk.edit({ do: 'removeSheet', sheet: 2 });
    expect([desk.show('A1'), desk.show('B1')]).toEqual(['! Points at cells that were removed.', '! A1: Points at cells that were removed.']);
  });

  test('come back by undo as they were', () => {
    const desk = new Desk(['Fit', { A1: '=SUM(Skirt!A1:A2)' }], ['Skirt', { A1: '5 cm', A2: '=A1*2' }]);
    const before = desk.book;
    desk.edit({ do: 'removeSheet', sheet: 2 });
    desk.edit({ do: 'addSheet', sheet: before.sheets[1]!, at: 1 });
    desk.edit({ do: 'setCells', sheet: 1, cells: [{ row: 0, col: 0, cell: { raw: '=SUM(Skirt!A1:A2)' } }] });
    expect([desk.show('A1'), desk.show('A2', 1)]).toEqual(['15 cm', '10 cm']);
  });

  test('may have any name', () => {
    const desk = new Desk(['S2', { A1: '1 cm', B1: "='S1'!A1" }], ['S1', { A1: '2 cm', B1: '=S2!A1', C1: "='S2'!A1+A1" }]);
    expect([desk.show('B1'), desk.show('B1', 1), desk.show('C1', 1)]).toEqual(['2 cm', '1 cm', '3 cm']);
    desk.edit({ do: 'renameSheet', sheet: 1, name: "It's: 50% (!)" });
    expect(desk.show('C1', 1)).toBe('3 cm');
  });

  test('a cell in the last row and column is no burden', () => {
    const desk = new Desk({ A1: '1 cm', ALL1000000: '2 cm', B1: '=ALL1000000*2' });
    expect(desk.show('B1')).toBe('4 cm');
    desk.edit({ do: 'removeRows', sheet: 1, at: 5, count: 10 });
    expect([desk.show('B1'), desk.show('ALL999990')]).toEqual(['4 cm', '2 cm']);
  });
});

describe('rows and columns', () => {
  test('formulas follow, and results that only moved are not told again', () => {
    const desk = new Desk({ A1: '1 cm', A2: '2 cm', A3: '=SUM(A1:A2)', B3: '=A3*2' });
    const changes = desk.edit({ do: 'insertRows', sheet: 1, at: 1, count: 1 });
    expect(changes.sheets.flatMap(({ row }) => [...row])).toEqual([]);
    expect([desk.show('A4'), desk.show('B4')]).toEqual(['3 cm', '6 cm']);
    desk.type({ A2: '10 cm' });
    expect(desk.show('B4')).toBe('26 cm');
  });

  test('removed ones take what pointed at them along', () => {
    const desk = new Desk({ A1: '1 cm', A2: '2 cm', A3: '3 cm', B1: '=A2*2', C1: '=SUM(A1:A3)' });
    desk.edit({ do: 'removeRows', sheet: 1, at: 1, count: 1 });
    expect([desk.show('B1'), desk.show('C1')]).toEqual(['! Points at cells that were removed.', '4 cm']);
  });

  test('what is typed and moved in one edit is told where it ends', () => {
    const desk = new Desk({ A1: '1 cm', B1: '=A1*2' });
    desk.edit({ do: 'many', label: 'both', edits: [
      { do: 'setCells', sheet: 1, cells: [{ row: 0, col: 0, cell: { raw: '5 cm' } }] },
      { do: 'insertRows', sheet: 1, at: 0, count: 3 },
      { do: 'setCells', sheet: 1, cells: [{ row: 0, col: 0, cell: { raw: 'top' } }] },
    ] });
    expect([desk.show('A1'), desk.show('A4'), desk.show('B4')]).toEqual(['top', '5 cm', '10 cm']);
  });

  test('whole columns keep up with what is added', () => {
    const desk = new Desk({ A1: '1 cm', C1: '=SUM(A:A)' });
    desk.type({ A500: '2 cm' });
    expect(desk.show('C1')).toBe('3 cm');
    desk.edit({ do: 'insertColumns', sheet: 1, at: 0, count: 1 });
    expect(desk.show('D1')).toBe('3 cm');
  });
});
