import { describe, expect, it } from 'vitest';
import { spokenCell, spokenSelection } from '../../../src/grid/spoken.ts';
import type { CellView } from '../../../src/grid/view.ts';

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
    expect(spokenCell(cell({ text: 'EASE needs a length.', kind: 'error', formula: true }))).toBe('Error: EASE needs a length., worked out');
    expect(spokenCell(cell({ text: '', kind: 'text', input: true }))).toBe('to fill in');
    expect(spokenCell(cell({ text: '…', kind: 'waiting', formula: true }))).toBe('…, being worked out');
  });
});

describe('what is said of a selection', () => {
  const between = (top: number, left: number, bottom: number, right: number) => spokenSelection({ anchor: { row: top, col: left }, focus: { row: bottom, col: right } }, 100, 26);
  it('is nothing for one cell', () => expect(between(3, 3, 3, 3)).toBe(''));
  it('names the corners and the size', () => expect(between(1, 1, 8, 2)).toBe('B2 to C9 selected, 8 rows, 2 columns'));
  it('knows whole rows, columns and sheets', () => {
    expect(between(2, 0, 2, 25)).toBe('1 whole row selected');
    expect(between(0, 1, 99, 2)).toBe('2 whole columns selected');
    expect(between(0, 0, 99, 25)).toBe('All cells selected');
  });
});
