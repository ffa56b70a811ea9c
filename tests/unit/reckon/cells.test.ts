/** What is typed in cells, and what comes back. */
import { describe, expect, test } from 'vitest';
import { Desk } from './desk.ts';

describe('typed texts', () => {
  test.each([
    ['2 1/4 in', '2.25 in'], ['2¼"', '2.25 in'], ["5'6\"", '5.5 ft'], ['5,5 cm', '5.5 cm'], ['12', '12'], ['-3.5', '-3.5'], ['3 %', '3 %'], ['30°', '30°'],
    ['250 cm²', '250 cm²'], ['86–90 cm', '86.0–90.0 cm'], ['Pleated skirt', 'Pleated skirt'], ['10/12', '10/12'], ['2026-11-03', '2026-11-03'], ['XS', 'XS'],
    ["'5 cm", '5 cm'], ["'=A1", '=A1'], ['TRUE', 'TRUE'], ['false', 'FALSE'], ['8 buttons', '8 buttons'], [' ', ' '], ['=', '! Nothing stands after the =.'],
    ['#N/A', '! There is no value for this.'], ['#ref!', '! Points at cells that were removed.'], ['#DIV/0!', '! Divides by 0.'],
  ])('%s gives %s', (raw, shown) => expect(new Desk({ A1: raw }).show('A1')).toBe(shown));

  test.each(['1/0', '2 1/0 in', '2 5/4 in'])('%s is a figure that is wrong', (raw) => {
    const desk = new Desk({ A1: raw, B1: '=A1*2' });
    expect(desk.show('A1')).toMatch(/^! ./);
    expect(desk.show('B1')).toBe(`! A1: ${desk.show('A1').slice(2)}`);
  });

  test('a figure beyond what a cell can hold is an error, not a number', () => {
    const desk = new Desk({ A1: `${'9'.repeat(400)} cm`, B1: '=A1+1 cm', A2: '1e308', B2: '=9^400', C2: '=B2*0' });
    expect(['A1', 'B1', 'A2', 'B2', 'C2'].map((cell) => desk.result(cell).kind)).toEqual(['text', 'error', 'text', 'error', 'error']);
  });
});

describe('formulas', () => {
  const desk = new Desk(['Fit', { A1: '10 cm', A2: '4', A3: 'say "no"', A4: 'back\\slash' }], ["Aunt's", { A1: '1 in' }]);

  test.each([
    ['=2 1/4 in + 1/4 in', '2.5 in'], ['=1 yd 4 in', '1 yd 4 in'], ['=10-3/8"', '! 10 has no unit: write 10 in or 10 cm.'], ['=A1×2', '20 cm'], ['=A1÷A2', '2.5 cm'], ['=A1−1 cm', '9 cm'],
    ['=SUM(A1;2 cm)', '12 cm'], ['=SUM(A1,2 cm)', '12 cm'], ["='Aunt''s'!A1*2", '2 in'], ['=A3&"!"', 'say "no"!'], ['="a""b"', 'a"b'], ['="a\\"', 'a\\'], ['=A4', 'back\\slash'],
    ['=a1', '10 cm'], ['=sum(a1)', '10 cm'], ['=IF(A1>5 cm;"wide";"narrow")', 'wide'], ['=A1', '10 cm'], ['=A1 + A1', '20 cm'], ['= A1 ', '10 cm'],
    ['=ROUND(A1/3;1)', '3.3 cm'], ['=B9', ''], ['=TRUE', 'TRUE'], ['=A1:A2', '! This gives a block of cells, and a cell holds one value: choose one, or reckon with them, as in SUM(A1:A9).'],
  ])('%s gives %s', (formula, shown) => expect(desk.work(formula)).toBe(shown));

  test.each([
    ['=Gone!A1', /There is no sheet called ‘Gone’/],
    ['=nope(1)', /^! There is no function NOPE\.$/],
    ['=PLEET.DEPTH(A1)', /^! There is no function PLEET\.DEPTH\.$/],
    ['=wasit', /^! There is no name ‘wasit’ in this workbook\.$/],
    ['=A1+', /stops after/], ['=(A1', /not closed/], ['=A1)', /without its/], ['=SUM(', /not closed|stops/], ['=2 5/4 in', /no fraction/],
    ['=TT.QUANTITY(1,2)', /no function/], ['=OFFSET(A1,1,1)', /OFFSET/], ['=VERSION()', /There is no function VERSION/], ['=FORMULATEXT(A1)', /There is no function FORMULATEXT/],
    ['=#REF!+1', /^! Points at cells that were removed\.$/], ['=MATCH(1)', /^! MATCH has too few or too many values in its brackets: it takes 2 to 3 \(value; among; way\), and got 1\.$/],
    ['=ROUND(1,2,3)', /too few or too many|takes 1 or 2/], ['=INDEX(A1:A2,9)', /^! INDEX was asked for row 9, and A1:A2 has 2: /], ['=VLOOKUP("x",A1:A3,1,FALSE)', /^! VLOOKUP did not find “x” among A1:A3: /],
  ])('%s says why not', (formula, why) => expect(desk.work(formula)).toMatch(why));
});

describe('a change reaches what depends on it, and no more', () => {
  test('only changed cells are told', () => {
    const desk = new Desk({ A1: '10 cm', B1: '=A1*2', C1: '=B1+1 cm', D1: '=MAX(A1;20 cm)', E1: '=D1*2', F1: '5' });
    const changes = desk.type({ A1: '12 cm' });
    expect(changes.sheets.map(({ row, col }) => [...col].map((c, i) => `${'ABCDEF'[c]}${row[i]! + 1}`).sort())).toEqual([['A1', 'B1', 'C1']]);
    expect(desk.show('E1')).toBe('40 cm');
  });

  test('a figure typed in another way is another result, though it changes nothing after it', () => {
    const desk = new Desk({ A1: '1 in', B1: '=A1>2 cm', C1: '=IF(B1;1;2)' });
    const changes = desk.type({ A1: '2.54 cm' });
    expect(changes.sheets[0]!.kind).toHaveLength(1);
    expect([desk.show('A1'), desk.show('B1')]).toEqual(['2.54 cm', 'TRUE']);
  });

  test('the same text changes nothing', () => {
    const desk = new Desk({ A1: '1 in', B1: '=A1*2' });
    expect(desk.engine.apply(9, [{ do: 'cells', sheet: 1, cells: [{ row: 0, col: 0, raw: '1 in' }] }]).sheets.flatMap(({ col }) => [...col])).not.toContain(1);
  });

  test('an emptied cell is told as empty', () => {
    const desk = new Desk({ A1: '1 in', B1: '=A1*2' });
    desk.type({ A1: '' });
    expect([desk.result('A1'), desk.show('B1')]).toEqual([{ kind: 'empty' }, '0']);
  });

  test('every change set answers its revision', () => {
    const desk = new Desk({ A1: '1' });
    expect(desk.last).toMatchObject({ revision: 1, whole: true });
    expect(desk.type({ A1: '2' })).toMatchObject({ revision: 2, whole: false });
    expect(desk.last.took).toBeGreaterThanOrEqual(0);
  });
});

describe('blocks of results', () => {
  test('fill the cells after the formula, and go with it', () => {
    const desk = new Desk({ A1: '1 in', A2: '2 cm', C1: '=TRANSPOSE(A1:A2)' });
    expect([desk.show('C1'), desk.show('D1')]).toEqual(['1 in', '2 cm']);
    desk.type({ A2: '3 cm' });
    expect(desk.show('D1')).toBe('3 cm');
    desk.type({ C1: '' });
    expect([desk.show('C1'), desk.show('D1')]).toEqual(['', '']);
  });

  test('say when there is no room, and come when there is', () => {
    const desk = new Desk({ A1: '1 in', A2: '2 cm', C1: '=TRANSPOSE(A1:A2)', D1: 'in the way' });
    expect(desk.show('C1')).toBe('! The result needs more cells than are free here: empty the cells below and to the right.');
    desk.type({ D1: '' });
    expect([desk.show('C1'), desk.show('D1')]).toEqual(['1 in', '2 cm']);
    desk.type({ D1: 'again' });
    expect([desk.show('C1').slice(0, 3), desk.show('D1')]).toEqual(['! T', 'again']);
  });

  test('of two that want the same cells, the first on the sheet has them, whichever was typed first', () => {
    const desk = new Desk({ A1: '1', A2: '2', A3: '3' });
    desk.type({ C2: '=ARRAYFORMULA(A1:A3*10)' });
    desk.type({ C1: '=ARRAYFORMULA(A1:A2*2)' });
    expect(desk.show('C1')).toMatch(/needs more cells/); // C2 has a formula of its own.
    desk.type({ C1: '', B2: '=TRANSPOSE(A1:A2)' });
    expect(desk.show('B2')).toMatch(/needs more cells/);
    desk.type({ B2: '', D1: '=ARRAYFORMULA(A1:A3*1)', C2: '', C3: '=TRANSPOSE(A1:A3)' });
    expect([desk.show('D3'), desk.show('C3').slice(0, 1)]).toEqual(['3', '!']);
  });

  test('are seen by whole columns', () => {
    const desk = new Desk({ A1: '1', A2: '2', E1: '=SUM(B:C)' });
    desk.type({ B2: '=TRANSPOSE(A1:A2)' });
    expect(desk.show('E1')).toBe('3');
    desk.type({ A2: '5' });
    expect(desk.show('E1')).toBe('6');
    desk.type({ B2: '' });
    expect(desk.show('E1')).toBe('0');
  });

  test('follow rows that come within them', () => {
    const desk = new Desk({ A1: '1', A2: '2', A3: '3', C1: '=ARRAYFORMULA(A1:A3*10)', E1: '=C3' });
    desk.edit({ do: 'insertRows', sheet: 1, at: 1, count: 1 });
    expect(['C1', 'C2', 'C3', 'C4', 'E1'].map((cell) => desk.show(cell))).toEqual(['10', '0', '20', '30', '30']);
  });
});

describe('formulas that ask for too much', () => {
  test.each([
    ['=SUM(A1:ALL1000000)', 'A1:ALL1000000 has 1,000,000,000 cells, and a block in a formula can have 1,000,000: use whole columns instead, as in A:C.'],
    ['=SEQUENCE(1000000;1000)', 'The results would fill 1,000,000,000 cells; one formula can fill 100,000.'],
    ['=SEQUENCE(A1;A2)', 'SEQUENCE can give 100,000 numbers at most.'],
    ['=TRANSPOSE(A:A)', 'The results would fill whole columns or rows: name the block that is meant, as in A1:A100.'],
    ['=SUM(ARRAYFORMULA(B1:B9000*TRANSPOSE(B1:B9000)))', 'These blocks of cells make more than 1,000,000 sums: use smaller ones.'],
    ['=REPT("x";1e9)', 'This could not be worked out with these values.'],
  ])('%s is refused', (formula, sentence) => {
    const cells = { A1: '1000000', A2: '1000', Z99: formula };
    expect(new Desk(cells).show('Z99')).toBe(`! ${sentence}`);
    const desk = new Desk({ A1: '1000000', A2: '1000' });
    expect(desk.sentence(formula)).toBe(sentence);
  });

  test('names of whole columns and rows cost no more than what is in them', () => {
    const desk = new Desk({ A1: '1 cm', A2: '2 cm', B1: '3 cm' });
    desk.edit({ do: 'setName', name: 'lengths', target: { area: { sheet: 1, top: 0, left: 0, bottom: 999_999, right: 0 }, kind: 'cells' } });
    desk.edit({ do: 'setName', name: 'first', target: { area: { sheet: 1, top: 0, left: 0, bottom: 0, right: 999 }, kind: 'cells' } });
    desk.type({ C5: '=SUM(lengths)', C6: '=SUM(first)', C7: '=ROWS(lengths)' });
    expect([desk.show('C5'), desk.show('C6'), desk.show('C7')]).toEqual(['3 cm', '4 cm', '1000000']);
    desk.type({ A900: '10 cm' });
    expect(desk.show('C5')).toBe('13 cm');
  });
});

test('a function that fails inside the library spoils only its own cell', () => {
  const desk = new Desk({ A1: '1', B1: '=SPLIT("a b";7)', C1: '=A1+1', D1: '=B1' });
  expect([desk.show('C1'), desk.show('B1').slice(0, 1), desk.show('D1').slice(0, 1)]).toEqual(['2', '!', '!']);
  desk.type({ A1: '5' });
  expect(desk.show('C1')).toBe('6');
});

test('an engine that has no workbook says so', () => {
  const { engine } = new Desk({});
  expect(() => new (engine.constructor as new () => typeof engine)().apply(1, [])).toThrow('No workbook has been opened');
});
