import { describe, expect, it } from 'vitest';
import { groundOf } from '../../../src/grid/select.ts';
import { spokenCell, spokenColumn, spokenElsewhere, spokenRow, spokenSelection } from '../../../src/grid/spoken.ts';
import { NO_VIEW, type CellView, type SheetView } from '../../../src/grid/view.ts';

const cell = (part: Partial<CellView>): CellView => ({ text: '7.6 cm', kind: 'figure', input: false, formula: false, ...part });

describe('what is said of a cell', () => {
  it('is its own text when there is no more to say', () => {
    expect(spokenCell(cell({ text: 'Body waist', kind: 'text' }))).toBeNull();
  });
  it('tells the second system and where the figure comes from', () => {
    expect(spokenCell(cell({ also: '3 in', formula: true }))).toBe('7.6 cm, 3 in, worked out');
    expect(spokenCell(cell({ also: '3 in', typed: true }))).toBe('7.6 cm, 3 in, typed');
  });
  it('tells pins, notes, faults and what is to be filled in', () => {
    expect(spokenCell(cell({ formula: true, caution: 'Little ease.', note: 'see toile' }))).toBe('7.6 cm, worked out, Pin: Little ease., Note: see toile');
    expect(spokenCell(cell({ formula: true, acknowledged: 'Little ease. a knit' }))).toBe('7.6 cm, worked out, Acknowledged pin: Little ease. a knit');
    expect(spokenCell(cell({ text: 'EASE needs a length.', kind: 'error', formula: true }))).toBe('Error: EASE needs a length., worked out');
    expect(spokenCell(cell({ text: '', kind: 'text', input: true }))).toBe('to fill in');
    expect(spokenCell(cell({ text: '…', kind: 'waiting', formula: true }))).toBe('…, being worked out');
  });
});

describe('what is said of a selection', () => {
  const between = (top: number, left: number, bottom: number, right: number, hidden?: SheetView['hidden']) =>
    spokenSelection({ anchor: { row: top, col: left }, focus: { row: bottom, col: right } }, groundOf({ ...NO_VIEW, ...(hidden && { hidden }) }, () => 1));
  it('is nothing for one cell', () => expect(between(3, 3, 3, 3)).toBe(''));
  it('names the corners and the size', () => expect(between(1, 1, 8, 2)).toBe('B2 to C9 selected, 8 rows, 2 columns'));
  it('knows whole rows, columns and sheets', () => {
    expect(between(2, 0, 2, 25)).toBe('1 whole row selected');
    expect(between(0, 1, 99, 2)).toBe('2 whole columns selected');
    expect(between(0, 0, 99, 25)).toBe('All cells selected');
  });
  it('counts what is hidden among it, for it is copied and emptied with the rest', () => {
    expect(between(1, 1, 8, 2, { rows: [[2, 5]], cols: [] })).toBe('B2 to C9 selected, 8 rows, 4 of them hidden, 2 columns');
    expect(between(0, 1, 99, 1, { rows: [[2, 5]], cols: [[0, 0]] })).toBe('1 whole column selected');
  });
});

describe('what is said of what is hidden', () => {
  it('stands at the headings beside it', () => {
    expect(spokenRow(9, [2, 8], null)).toBe('10, rows 3 to 9 are hidden above it');
    expect(spokenRow(9, [8, 8], [10, 99])).toBe('10, row 9 is hidden above it, rows 11 to 100 are hidden below it');
    expect(spokenColumn('more than 5 cm', [0, 1], null)).toBe('only rows where it is more than 5 cm, columns A to B are hidden before it');
    expect(spokenColumn(undefined, null, null)).toBe('');
  });
  it('tells where she is instead', () => expect(spokenElsewhere({ row: 4, col: 0 }, { row: 5, col: 0 })).toBe('A5 is hidden; this is A6.'));
});

describe('a text of several lines', () => {
  it('is read whole where not all of its lines show', () => {
    const lines = cell({ text: 'Cut two\non the fold', kind: 'text' });
    expect(spokenCell(lines, 1)).toBe('Cut two\non the fold');
    expect(spokenCell(lines, 2)).toBeNull();
  });
  it('says that it was found', () => expect(spokenCell(cell({ text: 'hip', kind: 'text' }), 1, true)).toBe('hip, found'));
});
