/** What the commands about rows, columns and looks make of a selection. */
import { expect } from '@open-wc/testing';
import { changeLook, fillDown, fillRight, filterAgain, filterOff, freeze, hide, lookOff, looksMixed, moveLines, unfreeze, unhide } from '../../../src/app/arrange.ts';
import { textAt, valueAt } from '../../../src/app/cell-values.ts';
import { ARRANGE_COMMANDS, FIND_COMMANDS } from '../../../src/app/arrange-commands.ts';
import { COMMANDS, keysInWords } from '../../../src/app/commands.ts';
import { Desk } from '../../../src/app/desk.ts';
import { LookingBack } from '../../../src/app/looking-back.ts';
import { readArea } from '../../../src/formula/index.ts';
import { apply, emptyBook } from '../../../src/workbook/index.ts';

function desk(texts: readonly (readonly string[])[]): Desk {
  const cells = texts.flatMap((line, row) => line.map((raw, col) => ({ row, col, cell: raw ? { raw } : null })));
  return new Desk(apply({ do: 'setCells', sheet: 1, cells }, emptyBook('desk')).book);
}
function select(on: Desk, block: string): void {
  const { top, left, bottom, right } = readArea(block)!;
  on.selectArea({ sheet: 1, top, left, bottom, right });
}
const texts = ({ sheet }: Desk): string[][] => sheet.rows.map((row) => (row ?? []).map((cell) => cell?.raw ?? ''));
const said = (on: Desk): string => on.history.done.at(-1)?.label ?? '';

describe('filling a selection', () => {
  it('goes on from the rows that are filled', () => {
    const on = desk([['10', 'x'], ['12', '']]);
    select(on, 'A1:B4');
    fillDown(on);
    expect(texts(on)).to.deep.equal([['10', 'x'], ['12'], ['14', 'x'], ['16']]);
    expect(said(on)).to.equal('fill 4 cells in Sheet 1');
  });
  it('copies the first row over rows that are all filled', () => {
    const on = desk([['10'], ['99'], ['98']]);
    select(on, 'A1:A3');
    fillDown(on);
    expect(texts(on)).to.deep.equal([['10'], ['10'], ['10']]);
  });
  it('copies what could go on, when that is wanted', () => {
    const on = desk([['Button 1', 'Button 2', '', '']]);
    select(on, 'A1:D1');
    fillRight(on, true);
    expect(texts(on)).to.deep.equal([['Button 1', 'Button 2', 'Button 1', 'Button 2']]);
    on.undo();
    select(on, 'A1:D1');
    fillRight(on);
    expect(texts(on)).to.deep.equal([['Button 1', 'Button 2', 'Button 3', 'Button 4']]);
  });
  it('of whole columns goes as far as anything is filled', () => {
    const on = desk([['1', 'a'], ['', 'b'], ['', 'c']]);
    select(on, 'A:A');
    fillDown(on);
    expect(texts(on)).to.deep.equal([['1', 'a'], ['1', 'b'], ['1', 'c']]);
  });
  it('needs something to fill', () => {
    const on = desk([['1']]);
    fillDown(on);
    expect(on.said).to.contain('Select the cells to fill as well');
    fillRight(on);
    expect(on.said).to.contain('to their right');
  });
});

describe('hiding', () => {
  it('goes on beside what was hidden, and shows it again', () => {
    const on = desk([['a'], ['b'], ['c']]);
    select(on, 'A1:A2');
    hide(on, 'rows');
    expect(on.sheet.hidden?.rows).to.deep.equal([[0, 1]]);
    expect(on.selection.focus).to.deep.equal({ row: 2, col: 0 });
    expect(said(on)).to.equal('hide 2 rows of Sheet 1');
    unhide(on, 'rows');
    expect(on.sheet.hidden === undefined, 'nothing hidden is selected: all of it shows').to.equal(true);
    select(on, 'B1');
    hide(on, 'columns');
    select(on, 'D1');
    hide(on, 'columns');
    select(on, 'A1:C1');
    unhide(on, 'columns');
    expect(on.sheet.hidden?.columns).to.deep.equal([[3, 3]]);
  });
});

describe('moving', () => {
  it('takes the selection along, over what is hidden', () => {
    const on = desk([['a', 'x'], ['b'], ['c']]);
    on.do({ do: 'setHidden', sheet: 1, axis: 'rows', runs: [[1, 1]] });
    select(on, 'A1');
    moveLines(on, 'rows', 1);
    expect(texts(on).map(([first]) => first)).to.deep.equal(['b', 'c', 'a']);
    expect(on.selection.focus).to.deep.equal({ row: 2, col: 0 });
    moveLines(on, 'columns', -1);
    expect(on.selection.focus).to.deep.equal({ row: 2, col: 0 });
    moveLines(on, 'columns', 1);
    expect(texts(on)[2]).to.deep.equal(['x', 'a']);
  });
});

describe('keeping in view', () => {
  it('what is above and to the left of the cell', () => {
    const on = desk([['a']]);
    freeze(on);
    expect(on.said).to.contain('Go to the first cell that is to scroll');
    select(on, 'B3');
    freeze(on);
    expect(on.sheet.frozen).to.deep.equal({ rows: 2, columns: 1 });
    unfreeze(on);
    expect(on.sheet.frozen === undefined).to.equal(true);
  });
});

describe('matching again', () => {
  it('takes in what was typed since', () => {
    const on = desk([['Part'], ['back'], ['front'], ['cuff']]);
    on.do({ do: 'setFilter', sheet: 1, filter: { area: { top: 1, left: 0, bottom: 3, right: 0 }, conditions: [{ col: 0, test: 'has', text: 'f' }], hides: [[1, 1]] } });
    filterAgain(on);
    expect(on.said).to.equal('The same rows match as before.');
    on.do({ do: 'setCells', sheet: 1, cells: [{ row: 2, col: 0, cell: { raw: 'sleeve' } }] });
    filterAgain(on);
    expect(on.sheet.filter?.hides).to.deep.equal([[1, 2]]);
    filterOff(on);
    expect(on.sheet.filter === undefined).to.equal(true);
  });
});

describe('looks', () => {
  it('go to every cell of the selection, empty ones too, and come off again', () => {
    const on = desk([['a', '']]);
    select(on, 'A1:B1');
    expect(looksMixed(on)).to.equal(false);
    changeLook(on, { border: 'below' });
    expect(on.sheet.rows[0]).to.deep.equal([{ raw: 'a', look: { border: 'below' } }, { raw: '', look: { border: 'below' } }]);
    select(on, 'A1');
    changeLook(on, { strong: true, border: undefined });
    expect(on.sheet.rows[0]![0]).to.deep.equal({ raw: 'a', look: { strong: true } });
    select(on, 'A1:B1');
    expect(looksMixed(on)).to.equal(true);
    lookOff(on);
    expect(on.sheet.rows).to.deep.equal([[{ raw: 'a' }]]);
  });
});

describe('what cells give', () => {
  it('is what was typed, as long as the engine has not answered', () => {
    const on = desk([['2 1/4 in', '86–90 cm', "'10", 'Back', '=A1', '']]);
    const [value, text] = [valueAt(on, 1), textAt(on, 1)];
    expect([0, 1, 2, 3, 4, 5].map((col) => value(0, col))).to.deep.equal([
      { kind: 'number', value: 57.15, dimension: 'length' }, { kind: 'number', value: 860, dimension: 'length' },
      { kind: 'text', text: '10' }, { kind: 'text', text: 'Back' }, { kind: 'empty' }, { kind: 'empty' },
    ]);
    expect([2, 3, 5].map((col) => text(0, col))).to.deep.equal(['10', 'Back', '']);
    expect(valueAt(on, 9)(0, 0)).to.deep.equal({ kind: 'empty' });
  });
});

describe('looking back', () => {
  it('leads to where a cell is now, and puts back what was there', () => {
    const on = desk([['a', '1 cm']]);
    const back = new LookingBack(() => on);
    on.do({ do: 'setCells', sheet: 1, cells: [{ row: 0, col: 1, cell: { raw: '2 cm' } }] });
    on.do({ do: 'insertRows', sheet: 1, at: 0, count: 3 });
    const [insert, type] = back.shown.rows;
    expect([insert!.label, insert!.canPutBack, type!.canPutBack]).to.deep.equal(['insert 3 rows in Sheet 1', false, true]);
    expect(type!.area).to.deep.equal({ sheet: 1, top: 3, left: 1, bottom: 3, right: 1 });
    expect(back.shown).to.equal(back.shown);
    back.putBack(type!.index);
    expect(on.sheet.rows[3]![1]).to.deep.equal({ raw: '1 cm' });
    expect(on.selection.focus).to.deep.equal({ row: 3, col: 1 });
    expect(back.shown.rows.find(({ index }) => index === type!.index)?.canPutBack, 'it is as it was').to.equal(false);
    select(on, 'B4');
    back.showCell(true);
    expect(back.shown.rows.map(({ label }) => label.replace(/ as it was.*/, ''))).to.deep.equal(['restore B4 of Sheet 1', 'type in B1 of Sheet 1']);
    back.restoreBook(0);
    expect(texts(on)).to.deep.equal([['a', '1 cm']]);
    on.undo();
    expect(on.sheet.rows[3]![1]).to.deep.equal({ raw: '1 cm' });
  });
  it('says marks, notes and looks in words', () => {
    const on = desk([['a']]);
    const set = (cell: object) => on.do({ do: 'setCells', sheet: 1, cells: [{ row: 0, col: 0, cell: { raw: 'a', ...cell } }] });
    set({ note: 'twice' });
    set({ note: 'twice', input: true });
    set({ note: 'twice', input: true, look: { unit: 'cm', decimals: 2, strong: true, align: 'centre', border: 'around' } });
    const back = new LookingBack(() => on);
    expect(back.shown.rows.map(({ cells: [only] }) => [only!.before, only!.after])).to.deep.equal([
      ['plain', 'in cm, 2 decimals, strong, at the middle, border around'], ['no input', 'an input'], ['no note', 'note: twice'],
    ]);
  });
});

describe('the table of commands', () => {
  it('has each id and each key once', () => {
    const ids = COMMANDS.map(({ id }) => id);
    const keys = COMMANDS.flatMap((each) => (each.keys ? [each.keys] : []));
    expect(new Set(ids).size).to.equal(ids.length);
    expect(new Set(keys).size).to.equal(keys.length);
    for (const { id } of [...FIND_COMMANDS, ...ARRANGE_COMMANDS]) expect(ids).to.include(id);
  });
  it('writes keys for people', () => {
    expect(keysInWords('Alt+Shift+ArrowUp', false)).to.equal('Alt + Shift + ↑');
    expect(keysInWords('$mod+KeyF', true)).to.equal('⌘ + F');
  });
});
