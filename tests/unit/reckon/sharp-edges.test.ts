/** Where engines of this kind go wrong: each edge with what is due there, from what is typed to what the cell shows. */
import { describe, expect, test } from 'vitest';
import { MAX_ROWS } from '../../../src/formula/index.ts';
import { Results } from '../../../src/reckoning/results.ts';
import { Engine } from '../../../workers/reckon/engine.ts';
import { Host } from '../../../workers/reckon/host.ts';
import { Desk } from './desk.ts';

describe('a sheet that there is not', () => {
  test('is named in the sentence, hurts no other cell, and is there as soon as it is added', () => {
    const desk = new Desk({ A1: '=Gone!A1 + 1 cm', B1: '2 cm', C1: '=B1*2' });
    expect(desk.show('A1')).toBe('! There is no sheet called ‘Gone’: write another sheet’s name, or add a sheet of that name.');
    desk.type({ A1: '=Gone!A1*3', B1: '3 cm' });
    expect([desk.show('A1'), desk.show('C1')]).toEqual([expect.stringMatching(/^! There is no sheet called/) as string, '6 cm']);
    desk.type({ A1: '=B1' });
    expect(desk.show('A1')).toBe('3 cm');
    const fresh = new Results();
    fresh.apply(new Engine().open(1, desk.book));
    expect(fresh.at(1, 0, 0)).toEqual(desk.result('A1'));
  });
});

describe('quotes in texts', () => {
  const desk = new Desk({ A1: '=""""', A2: '="a ""b"" c"', A3: '="it\'s"', A4: '="back\\slash"&"\\"', A5: '="3/8"" deep"', A6: '=LEN("""")', A7: '=""' });
  test.each([['A1', '"'], ['A2', 'a "b" c'], ['A3', "it's"], ['A4', 'back\\slash\\'], ['A5', '3/8" deep'], ['A6', '1'], ['A7', '']])('%s is %s', (cell, shown) => expect(desk.show(cell)).toBe(shown));
});

describe('the end of a sheet', () => {
  test('is at row 1,000,000', () => expect(MAX_ROWS).toBe(1_000_000));
  test('its last row works, and past it a sentence says where the end is', () => {
    const desk = new Desk({ A1: '5 cm', B1: '=A1000000+A1', C1: '=A1000001', D1: '=SUM(A1:A1000001)', E1: '=SUM(A1:A1000000)', F1: '=A1:C1000000' });
    desk.edit({ do: 'setCells', sheet: 1, cells: [{ row: 999_999, col: 0, cell: { raw: '7 cm' } }] });
    expect([desk.show('B1'), desk.show('E1')]).toEqual(['12 cm', '12 cm']);
    for (const cell of ['C1', 'D1']) expect(desk.show(cell)).toMatch(/^! .*a sheet ends at column ALL and row 1,000,000/);
    expect(desk.show('F1')).toMatch(/^! .*3,000,000 cells, and a block in a formula can have 1,000,000/);
  }, 60_000);
});

describe('a function that throws', () => {
  test('spoils its own cell only, and later edits go on', () => {
    const host = new Host();
    host.names.setSheets([{ id: 1, name: 'Fit' }]);
    host.formulas.setMeanings([{ id: 1, name: 'Fit' }], []);
    host.build([{ id: 1, rows: [[{ raw: '5' }, { raw: '=ABS(A1)' }, { raw: '=A1*2' }, { raw: '=B1+1' }]] }], []);
    // What the engine's own function does with a value that it was never made for.
    const { interpreter } = host.inside._evaluator;
    const evaluate = interpreter.evaluateAst;
    interpreter.evaluateAst = (ast, state) => {
      if (ast.procedureName === 'ABS') throw new TypeError('made to fail');
      return evaluate(ast, state);
    };
    const place = (col: number) => ({ sheet: 1, row: 0, col });
    host.setCell(place(1), '=MAX(ABS(A1))');
    host.setCell(place(0), '6');
    host.recompute();
    expect(host.valueAt(place(1))).toMatchObject({ message: 'This could not be worked out with these values.' });
    expect(host.valueAt(place(2))).toBe(12);
    interpreter.evaluateAst = evaluate;
    host.setCell(place(0), '-7');
    host.recompute();
    expect([1, 2, 3].map((col) => host.valueAt(place(col)))).toEqual([7, -14, 8]);
  });
});

describe('signs', () => {
  // OASIS OpenDocument 1.4 part 4, 5.5: a sign before a figure binds first, and ^ goes from the left.
  test.each([
    ['=-2^2', '4'], ['=2^3^2', '64'], ['=0-2^2', '-4'], ['=-2 cm*-2', '4 cm'], ['=2^-1', '0.5'], ['=50%%', '0.5 %'], ['=--2', '2'], ['=10-3/8"', '! ‘3/8"’'], ['=10 in-3/8 in', '9.625 in'], ['=2 1/4 in', '2.25 in'], ['=(2 cm)^2', '4 cm²'], ['=1−2', '-1'], ['=2×3÷4', '1.5'], ['=1\u00a0+\u00a02', '3'],
  ])('%s is %s', (formula, shown) => {
    const got = new Desk({ A1: formula }).show('A1');
    if (shown.startsWith('!')) expect(got).toMatch(/^! /);
    else expect(got).toBe(shown);
  });
  test('a mixed fraction in a cell is no date', () => expect(new Desk({ A1: '2 1/4', B1: '=A1*2' }).show('B1')).toBe('4.5'));
  test('a decimal comma is told from one between arguments', () => expect(new Desk({ A1: '=SUM(5,5 cm; 2 cm)' }).show('A1')).toBe('7.5 cm'));
});

describe('results that fill several cells', () => {
  test('never go over what was typed, and come back when there is room', () => {
    const desk = new Desk({ A1: '1 cm', A2: '2 cm', A3: '3 cm', C2: 'mine', C1: '=SORT(A1:A3;1;-1)' });
    expect([desk.show('C1'), desk.show('C2'), desk.show('C3')]).toEqual(['! The result needs more cells than are free here: empty the cells below and to the right.', 'mine', '']);
    desk.type({ C2: '' });
    expect([desk.show('C1'), desk.show('C2'), desk.show('C3')]).toEqual(['3 cm', '2 cm', '1 cm']);
    desk.type({ C3: '9 in' });
    expect([desk.show('C1'), desk.show('C2'), desk.show('C3')]).toEqual([expect.stringMatching(/^! The result needs more cells/) as string, '', '9 in']);
  });
  test.each([
    ['=INDEX(A1:B3;0;2)', ['4 cm', '5 cm', '6 cm']], ['=INDEX(A1:B3;2)', ['2 cm', '', '']], ['=SORTBY(A1:A3;B1:B3;-1)', ['3 cm', '2 cm', '1 cm']], ['=TREND(A1:A3;{1|2|3})', ['1 cm', '2 cm', '3 cm']], ['=LET(x;A1:A3;INDEX(x;0))', ['1 cm', '2 cm', '3 cm']],
  ])('%s', (formula, shown) => {
    const desk = new Desk({ A1: '1 cm', A2: '2 cm', A3: '3 cm', B1: '4 cm', B2: '5 cm', B3: '6 cm', D1: formula });
    expect(['D1', 'D2', 'D3'].map((cell) => desk.show(cell))).toEqual(shown);
    desk.type({ D2: 'mine' });
    expect(desk.show('D2')).toBe('mine');
  });
  test('a 0 that comes from a cell makes no room, and says so', () => {
    const desk = new Desk({ A1: '1 cm', A2: '2 cm', B1: '3 cm', B2: '4 cm', C1: '0', D1: '=INDEX(A1:B2;C1;0)', F1: '=SUM(INDEX(A1:B2;C1;0))' });
    expect([desk.show('D1'), desk.show('F1')]).toEqual(['! INDEX got its 0 from another cell, and cannot make room for a whole row or column then: write the 0 into the formula.', '10 cm']);
    desk.type({ C1: '2' });
    expect([desk.show('D1'), desk.show('E1'), desk.show('F1')]).toEqual(['2 cm', '4 cm', '6 cm']);
  });
});

test('a result that is the same figure again stops a change', () => {
  const desk = new Desk({ A1: '10 cm', B1: '=MIN(A1;5 cm)', C1: '=B1*2' });
  const { sheets } = desk.type({ A1: '12 cm' });
  expect(sheets.flatMap(({ col }) => [...col])).toEqual([0]);
});
