/** Working, dependents, trials and the catalogue. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { FUNCTIONS } from '../../../src/sewing/index.ts';
import { Desk, said, steady } from './desk.ts';
import type { Cells } from './desk.ts';

const CHART: Cells = { A1: 'Size', B1: '8', C1: '10', D1: '12', A2: 'Bust', B2: '35 in', C2: '36 in', D2: '37 1/2 in', A3: 'Waist', B3: '27 in', C3: '28 in', D3: '29 1/2 in' };

describe('working', () => {
  const desk = new Desk(['Fit', { ...CHART, A5: '74.5 cm', A6: '70 cm', B5: '=EASE(A5;A6)', B6: '=(EASE(A5;waist girth))', B7: '=EASE(A5;A9)', B8: '=A5-A6+Skirt!A1', B9: '=SUM(A5:A6)', C5: '=SIZE.MEASURE(chart;"waist";10)', C6: '=SIZE.MEASURE(A1:D3;"Waist";A5)' }], ['Skirt', { A1: '1 cm' }]);
  desk.name('waist girth', 'A6');
  desk.edit({ do: 'setName', name: 'Chart', target: { area: desk.area('A1:D3'), kind: 'chart' } });

  test('of a function of the trade: its rule, what was put in and from where, steps that end with the result', () => {
    const { result, call, uses } = desk.engine.working(desk.cell('B5'));
    expect(said(result)).toBe('4.5 cm');
    expect(call).toMatchObject({ name: 'EASE', about: expect.any(String), rule: expect.any(String), source: expect.any(String) });
    expect(call!.given.map(({ name, value, from }) => [name, said(value), from])).toEqual([['finished', '74.5 cm', desk.area('A5')], ['body', '70 cm', desk.area('A6')]]);
    expect(said(call!.steps.at(-1)!.value)).toBe('4.5 cm');
    expect(call!.steps.at(-1)!.sum.map((part) => (typeof part === 'string' ? part : said(part))).join('')).toContain('74.5 cm');
    expect(uses.map(({ text, value }) => [text, value && said(value)])).toEqual([['A5', '74.5 cm'], ['A6', '70 cm']]);
  });

  test('in brackets and from a name', () => {
    const { call, uses } = desk.engine.working(desk.cell('B6'));
    expect(call!.given[1]!.from).toEqual(desk.area('A6'));
    expect(uses.map(({ text }) => text)).toEqual(['A5', 'waist girth']);
  });

  test('of one that has no result: what was put in, and why', () => {
    const { result, call } = desk.engine.working(desk.cell('B7'));
    expect(result).toEqual({ kind: 'error', sentence: 'A9 has no value yet.' });
    expect([call!.steps, call!.given[1]!.value]).toEqual([[], { kind: 'empty' }]);
  });

  test('of a chart, named or pointed at', () => {
    const { result, call, uses } = desk.engine.working(desk.cell('C5'));
    expect([said(result), call!.given[0]!.from, uses.map(({ text, value }) => [text, value])]).toEqual(['28 in', desk.area('A1:D3'), [['Chart', null]]]);
    expect(said(desk.engine.working(desk.cell('C6')).result)).toMatch(/^! /);
  });

  test('of a plain formula: what it uses', () => {
    const { call, uses } = desk.engine.working(desk.cell('B8'));
    expect(call).toBeUndefined();
    expect(uses.map(({ text, area, value }) => [text, area, value && said(value)])).toEqual([['A5', desk.area('A5'), '74.5 cm'], ['A6', desk.area('A6'), '70 cm'], ['Skirt!A1', desk.area('A1', 1), '1 cm']]);
    expect(desk.engine.working(desk.cell('B9')).uses).toEqual([{ text: 'A5:A6', area: desk.area('A5:A6'), value: null }]);
  });

  test('of a typed figure, an empty cell, a formula that cannot be read, a sheet that is gone', () => {
    expect(desk.engine.working(desk.cell('A5'))).toEqual({ result: { kind: 'quantity', value: 745, unit: 'cm' }, uses: [] });
    expect(desk.engine.working(desk.cell('Z50'))).toEqual({ result: { kind: 'empty' }, uses: [] });
    expect(desk.engine.working({ sheet: 99, row: 0, col: 0 })).toEqual({ result: { kind: 'empty' }, uses: [] });
    expect(new Desk({ A1: '=(' }).engine.working({ sheet: 1, row: 0, col: 0 })).toMatchObject({ result: { kind: 'error' }, uses: [] });
  });

  test('changes nothing', () => {
    const before = desk.show('B5');
    desk.engine.working(desk.cell('B5'));
    expect(desk.edit({ do: 'setTitle', title: 'x', person: '' }).sheets).toEqual([]);
    expect(desk.show('B5')).toBe(before);
  });
});

describe('size charts', () => {
  test('follow their cells, whether named or pointed at', () => {
    const desk = new Desk({ ...CHART, F1: '=SIZE.MEASURE(A1:D3;"waist";10)' });
    desk.edit({ do: 'setName', name: 'chart', target: { area: desk.area('A1:D3'), kind: 'chart' } });
    desk.type({ F2: '=SIZE.MEASURE(chart;"waist";10)', F3: '=SIZE.AT(chart;"bust";36 1/4 in)' });
    expect(['F1', 'F2', 'F3'].map((cell) => desk.show(cell))).toEqual(['28 in', '28 in', '10']);
    desk.type({ C3: '28 1/4 in' });
    expect([desk.show('F1'), desk.show('F2')]).toEqual(['28.25 in', '28.25 in']);
    desk.edit({ do: 'insertRows', sheet: 1, at: 2, count: 1 });
    desk.type({ A3: 'Hip', B3: '37 in', C3: '38 in', D3: '39 in', F5: '=SIZE.MEASURE(chart;"hip";12)' });
    expect([desk.show('F1'), desk.show('F2'), desk.show('F5')]).toEqual(['28.25 in', '28.25 in', '39 in']);
    desk.edit({ do: 'removeRows', sheet: 1, at: 3, count: 1 });
    expect(desk.show('F2')).toMatch(/^! .*no measure called “waist”/);
  });

  test('that are no charts say what is missing', () => {
    const desk = new Desk({ A1: 'x', F1: '=SIZE.MEASURE(A1:B2;"waist";10)', F2: '=SIZE.MEASURE(A1;"waist";10)', F3: '=EASE(A1:A2;1 cm)' });
    expect([desk.show('F1').slice(0, 2), desk.show('F2').slice(0, 2), desk.show('F3')]).toEqual(['! ', '! ', '! EASE takes one cell for finished, and got a block of cells.']);
  });

  test('a figure that is left out is the usual one; a cell that is empty is not filled in yet', () => {
    const desk = new Desk({ A1: '70 cm', B1: '=CIRCLE.RADIUS(A1;1;A9)', B2: '=CIRCLE.RADIUS(A1;1)', B3: '=EASE(;A1)' });
    expect([desk.show('B1'), desk.result('B2').kind, desk.show('B3')]).toEqual(['! A9 has no value yet.', 'quantity', '! EASE has no value for finished yet.']);
  });
});

describe('dependents', () => {
  const desk = new Desk(['Fit', { A1: '1 cm', A2: '=A1*2', A3: '=SUM(A1:A2)', B1: '=full bust', B2: '5', B3: '=B2', C1: '=TRANSPOSE(A1:A2)', E9: '=SUM(F:F)' }], ['Skirt', { A1: '=Fit!A3', B9: '=A1' }]);
  desk.name('full bust', 'A2');
  const of = (cell: string): string[] => desk.engine.dependents([desk.cell(cell)]).map(({ sheet, row, col }) => `${sheet}:${'ABCDEF'[col]}${row + 1}`);

  test('in reading order, through blocks, names, sheets and blocks of results', () => {
    expect(of('A1')).toEqual(['1:B1', '1:C1', '1:A2', '1:A3', '2:A1', '2:B9']);
    expect(of('B2')).toEqual(['1:B3']);
    expect(of('A3')).toEqual(['2:A1', '2:B9']);
    expect(of('Z9')).toEqual([]);
  });

  test('of a cell that is empty in a column that is used whole', () => expect(of('F3')).toEqual(['1:E9']));
  test('of none, of a sheet that is gone', () => expect([desk.engine.dependents([]), desk.engine.dependents([{ sheet: 9, row: 0, col: 0 }])]).toEqual([[], []]));
});

describe('trials', () => {
  const cells: Cells = { ...CHART, A5: '10', A6: '31 in', B5: '=SIZE.MEASURE(A1:D3;"waist";A5)', B6: '=B5-A6', B7: '="size "&A5', B8: '=B6>0 in', B9: '=1/0' };
  const outputs = ['B5', 'B6', 'B7', 'B8', 'B9'];

  test('give every result under every set of values, and the difference from the first', () => {
    const desk = new Desk(cells);
    const { results, differences } = desk.engine.tryOut([
      { label: 'ten', values: [{ cell: desk.cell('A5'), raw: '10' }] },
      { label: 'twelve, hers', values: [{ cell: desk.cell('A5'), raw: '12' }, { cell: desk.cell('A6'), raw: '=29 in + 1/2 in' }] },
      { label: 'wrong', values: [{ cell: desk.cell('A5'), raw: '1/0' }] },
    ], outputs.map((cell) => desk.cell(cell)));
    expect(results.map((row) => row.map((each) => steady(said(each)).slice(0, 12)))).toEqual([
      ['28 in', '-3 in', 'size 10', 'FALSE', '! Divides by'], ['29.5 in', '0 in', 'size 12', 'FALSE', '! Divides by'], ['! A5: “1/0” ', '! A5: “1/0” ', '! A5: “1/0” ', '! A5: “1/0” ', '! Divides by'],
    ]);
    expect(differences.map((row) => row.map((each) => each && steady(said(each))))).toEqual([['0 in', '0 in', '', null, null], ['1.5 in', '3 in', 'size 12', null, null], [null, null, null, null, null]]);
  });

  test('leave no trace: not in results, not in what is told next, not in formulas', () => {
    const desk = new Desk({ ...cells, C5: '=TRANSPOSE(A5:A6)' });
    const seen = [...outputs, 'A5', 'A6', 'C5', 'D5'].map((cell) => desk.show(cell));
    const trials = ['12', '=A6*2', '', '=(', 'text', '2 cm'].map((raw) => ({ label: raw, values: [{ cell: desk.cell('A5'), raw }, { cell: desk.cell('D5'), raw: 'in the way' }, { cell: desk.cell('B6'), raw }] }));
    desk.engine.tryOut(trials, outputs.map((cell) => desk.cell(cell)));
    expect(desk.edit({ do: 'setCells', sheet: 1, cells: [{ row: 50, col: 0, cell: { raw: 'x' } }] }).sheets.flatMap(({ row }) => [...row]).filter((row) => row !== 50 && row !== 4)).toEqual([]);
    expect([...outputs, 'A5', 'A6', 'C5', 'D5'].map((cell) => desk.show(cell))).toEqual(seen);
    desk.type({ A5: '8' });
    expect([desk.show('B5'), desk.show('C5')]).toEqual(['27 in', '8']);
    expect(steady(desk.show('B6'))).toBe('-4 in');
  });

  test('that cannot be done change nothing either', () => {
    const desk = new Desk(cells);
    expect(() => desk.engine.tryOut([{ label: 'x', values: [{ cell: desk.cell('A5'), raw: '12' }] }], [{ sheet: 99, row: 0, col: 0 }])).toThrow(/no longer in this workbook/);
    expect(() => desk.engine.tryOut([{ label: 'x', values: [{ cell: { sheet: 99, row: 0, col: 0 }, raw: '12' }] }], [])).toThrow(/no longer in this workbook/);
    desk.type({ Z1: 'x' });
    expect(desk.show('B5')).toBe('28 in');
    expect(desk.engine.tryOut([], [])).toEqual({ results: [], differences: [] });
  });

  test('of random figures equal typing them', () => {
    const start: Cells = { A1: '10 cm', A2: '3', B1: '=A1*A2', B2: '=A1+2 in', B3: '=SUM(A1:B2)', B4: '=IF(A1>12 cm;"wide";"narrow")', B5: '=A1/A9' };
    const typed = fc.constantFrom('10 cm', '4 in', '7', '', '1/0', '=B9', '=A2*1 cm', 'wide', '86–90 cm', '50 %');
    fc.assert(fc.property(fc.array(fc.record({ A1: typed, A2: typed }), { minLength: 1, maxLength: 4 }), (sets) => {
      const desk = new Desk(start);
      const asked = ['B1', 'B2', 'B3', 'B4', 'B5'];
      const { results } = desk.engine.tryOut(sets.map((set) => ({ label: '', values: Object.entries(set).map(([cell, raw]) => ({ cell: desk.cell(cell), raw })) })), asked.map((cell) => desk.cell(cell)));
      const shown = (of: Desk): string[] => asked.map((cell) => of.show(cell));
      sets.forEach((set, i) => expect(results[i]!.map(said)).toEqual(shown(new Desk({ ...start, ...set }))));
      desk.type({ Z1: 'x' });
      expect(shown(desk)).toEqual(shown(new Desk(start)));
    }), { numRuns: 60 });
  }, 60_000);
});

describe('the catalogue', () => {
  const { engine } = new Desk({});

  test('has every function of the trade', () => {
    const names = engine.catalogue().map(({ name }) => name);
    for (const { name } of FUNCTIONS) expect(names).toContain(name);
    expect(new Set(names).size).toBe(names.length);
  });

  test('says all that a card needs', () => {
    for (const card of engine.catalogue()) {
      expect([card.about, card.source, card.example].every((text) => text.length > 0), card.name).toBe(true);
      expect(card.example, card.name).toMatch(/^=/);
    }
  });

  test('can be sent to the page', () => expect(structuredClone(engine.catalogue())).toEqual(engine.catalogue()));
});
