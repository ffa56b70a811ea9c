/** What becomes of her wishes in the panel for choosing a size. */
import { beforeEach, describe, expect, it } from 'vitest';
import { Desk } from '../../../src/app/desk.ts';
import { SizeChoice } from '../../../src/app/size-choice.ts';
import { apply, emptyBook, type CellChange, type Person } from '../../../src/workbook/index.ts';
import { Engine } from '../../../workers/reckon/engine.ts';

const CELLS = ['size | bust | waist | hip', '10 | 88 cm | 70 cm | 94 cm', '12 | 92 cm | 74 cm | 98 cm', '14 | 96 cm | 78 cm | 102 cm', '', 'Bust | 36 1/4 in', 'Waist | 29 in', 'Seat | 101 cm', 'Knee | 38 cm'];
const NORA: Person = {
  name: 'Nora', child: false, notes: '', worked: [], put: [],
  sets: [
    { id: 'a', day: '2025-01-01', by: '', remark: '', measures: [{ of: 'bust', raw: '90 cm' }, { of: 'hip', raw: '99 cm' }] },
    { id: 'b', day: '2026-01-01', by: '', remark: '', measures: [{ of: 'bust', raw: '96 cm' }, { of: 'upper chest', raw: '91 cm' }, { of: 'knee', raw: '38 cm' }] },
  ],
};

let desk: Desk;
let choice: SizeChoice;

beforeEach(() => {
  let book = emptyBook('test');
  const sheet = book.sheets[0]!.id;
  const cells = CELLS.flatMap((row, r) => row.split('|').map((raw, col): CellChange => ({ row: r, col, cell: raw.trim() === '' ? null : { raw: raw.trim() } })));
  for (const edit of [
    { do: 'setCells', sheet, cells },
    { do: 'setName', name: 'chart', target: { area: { sheet, top: 0, left: 0, bottom: 3, right: 3 }, kind: 'chart' } },
    { do: 'setName', name: 'waist', target: { area: { sheet, top: 6, left: 1, bottom: 6, right: 1 }, kind: 'cells' } },
    { do: 'setRecord', kind: 'person', id: 'nora', data: NORA },
  ] as const) book = apply(edit, book).book;
  desk = new Desk(book);
  desk.results.apply(new Engine().open(1, book));
  choice = new SizeChoice({ desk, draw: () => undefined });
});

const raws = (): Record<string, string> => Object.fromEntries(choice.view.levels.map(({ level, raw }) => [level, raw]));
const select = (top: number, left: number, bottom = top, right = left): void => desk.selectArea({ sheet: desk.sheetId, top, left, bottom, right });
const ask = (change: Parameters<SizeChoice['change']>[0], from = new EventTarget()): void => choice.change(change, from);

describe('measures', () => {
  it('that the workbook has by name are there when it is opened, and what she typed stays', () => {
    choice.opened();
    expect(raws()).toEqual({ 'high bust': '', bust: '', waist: '=waist', hip: '' });
    ask({ change: 'measure', level: 'waist', value: '70 cm' });
    choice.opened();
    expect(raws()['waist']).toBe('70 cm');
  });

  it('are taken from a cell, from a block, or of a person', () => {
    select(5, 1);
    expect(choice.view.candidate).toMatch(/ B6$/);
    ask({ change: 'take', level: 'bust' });
    expect(raws()['bust']).toMatch(/!B6$/);
    select(0, 1);
    expect(choice.view.candidate).toBe('');
    select(5, 0, 8, 1);
    expect(choice.view.block).toMatch(/ A6:B9$/);
    ask({ change: 'take-block' });
    expect(Object.values(raws()).map((raw) => raw.replace(/.*!/, ''))).toEqual(['', 'B6', '=waist', 'B8']);
    expect(choice.view.people).toEqual([{ id: 'nora', name: 'Nora' }]);
    ask({ change: 'person', value: 'nora' });
    expect(raws()).toEqual({ 'high bust': '91 cm', bust: '96 cm', waist: '=waist', hip: '99 cm' });
  });

  it('and style, ease, distance and weights are kept as they were typed', () => {
    ask({ change: 'person', value: 'nora' });
    ask({ change: 'style', value: 'knit' });
    ask({ change: 'changeCost', value: '1/2 in' });
    ask({ change: 'apart', value: '1' });
    ask({ change: 'seams', value: '4' });
    ask({ change: 'down', level: 'bust', value: 'far' });
    ask({ change: 'ease', level: 'bust', end: 'low', value: '2 cm' });
    const { style, change, apart, seams, answer } = choice.view;
    expect([style, change, apart, seams]).toEqual(['knit', '1/2 in', '1', '4']);
    expect(answer?.blends[0]).toMatchObject({ raw: 'far', fault: expect.stringMatching(/^“far” is no length/) as string });
  });
});

describe('putting it in the sheet', () => {
  it('is one edit at the selected cell, goes there, and is not offered twice', () => {
    ask({ change: 'person', value: 'nora' });
    select(0, 0);
    expect(choice.view.targetFault).toBe('It would cover A1, which is filled: select a cell with as much room to its right and below it.');
    const before = desk.book;
    ask({ change: 'put' });
    expect(desk.book).toBe(before);

    select(12, 0);
    const went: unknown[] = [];
    const page = new EventTarget();
    page.addEventListener('tt-go', (event) => went.push((event as CustomEvent).detail));
    ask({ change: 'put' }, page);
    expect(went).toMatchObject([{ area: { top: 12, left: 0 } }]);
    expect(desk.steps).toHaveLength(1);
    expect(desk.said).toMatch(/^The sizes are in .* A13:\w+\. Undo takes them out again\.$/);
    expect(choice.view).toMatchObject({ isThere: true, targetFault: '' });
    ask({ change: 'put' }, page);
    expect(desk.steps).toHaveLength(1);

    desk.undo();
    expect(desk.book.sheets[0]!.rows).toEqual(before.sheets[0]!.rows);
    select(12, 0);
    expect(choice.view).toMatchObject({ isThere: false, targetFault: '' });
  });
});
