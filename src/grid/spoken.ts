/** What a screen reader says of a cell: value, second system, where it comes from, and what hangs on it. */
import type { CellArea, CellPlace, CellView, Selection } from './view.ts';
import { cellName, columnName } from '../formula/index.ts';
import { areaOf, isSingle, type Ground } from './select.ts';

type Stretch = readonly [first: number, last: number] | null;

function origin(cell: CellView): string {
  if (cell.kind === 'waiting') return 'being worked out';
  if (cell.formula) return 'worked out';
  return cell.typed ? 'typed' : '';
}

/** `null` when the cell's own text says it all. `lines`: so many of its lines can be seen. Called for every cell that is drawn, so it makes no lists. */
export function spokenCell(cell: CellView, lines = 1, found = false): string | null {
  const { text, kind } = cell;
  let said = kind === 'error' ? `Error: ${text}` : text;
  const add = (part: string | undefined): void => {
    if (part) said = said === '' ? part : `${said}, ${part}`;
  };
  add(cell.also);
  add(origin(cell));
  if (cell.input) add('to fill in');
  if (found) add('found');
  if (cell.caution) add(`Pin: ${cell.caution}`);
  if (cell.acknowledged) add(`Acknowledged pin: ${cell.acknowledged}`);
  if (cell.note) add(`Note: ${cell.note}`);
  const cut = text.includes('\n') && text.split('\n').length > lines;
  return said === text && !cut ? null : said;
}

const figure = (n: number): string => n.toLocaleString('en-GB');

function counted(n: number, one: string, hidden: number): string {
  return `${figure(n)} ${n === 1 ? one : `${one}s`}${hidden ? `, ${figure(hidden)} of them hidden` : ''}`;
}

/** "B2 to C9 selected, 8 rows, 2 columns"; empty for one cell, whose own name is read. */
export function spokenSelection(selection: Selection, ground: Ground): string {
  if (isSingle(selection)) return '';
  const { top, left, bottom, right } = areaOf(selection);
  const { rows, cols, rowCount, colCount } = ground;
  const down = counted(bottom - top + 1, 'row', rows.hiddenIn(top, bottom));
  const across = counted(right - left + 1, 'column', cols.hiddenIn(left, right));
  const allRows = rows.rank(top) === 0 && bottom === rowCount - 1;
  const allCols = cols.rank(left) === 0 && right === colCount - 1;
  if (allRows && allCols) return 'All cells selected';
  if (allRows) return `${whole(across)} selected`;
  if (allCols) return `${whole(down)} selected`;
  return `${spokenArea({ top, left, bottom, right })} selected, ${down}, ${across}`;
}

const whole = (words: string): string => words.replace(' ', ' whole ');

function inWords([first, last]: readonly [number, number], one: string, name: (index: number) => string): string {
  return first === last ? `${one} ${name(first)} is hidden` : `${one}s ${name(first)} to ${name(last)} are hidden`;
}

/** What a column's heading says besides its title; empty when that is all. */
export function spokenColumn(only: string | undefined, before: Stretch, after: Stretch): string {
  return [
    only ? `only rows where it is ${only}` : '',
    before ? `${inWords(before, 'column', columnName)} before it` : '',
    after ? `${inWords(after, 'column', columnName)} after it` : '',
  ].filter(Boolean).join(', ');
}

/** A row's number and what is hidden beside it. */
export function spokenRow(row: number, above: Stretch, below: Stretch): string {
  const number = (index: number): string => String(index + 1);
  return [number(row), above ? `${inWords(above, 'row', number)} above it` : '', below ? `${inWords(below, 'row', number)} below it` : ''].filter(Boolean).join(', ');
}

/** When a cell was asked for that does not show. */
export function spokenElsewhere(asked: CellPlace, now: CellPlace): string {
  return `${cellName(asked.row, asked.col)} is hidden; this is ${cellName(now.row, now.col)}.`;
}

function spokenArea(area: CellArea): string {
  return `${cellName(area.top, area.left)} to ${cellName(area.bottom, area.right)}`;
}

/** How to use the cells, said once when the focus comes to them. */
export function howTo(readonly: boolean): string {
  return readonly
    ? 'Arrow keys move. These cells can be read and copied, not changed. Press Escape and then Tab to leave.'
    : 'Arrow keys move. Type to write anew, press Enter or F2 to edit, Delete to empty. Tab moves on once you have moved; press Escape and then Tab to leave.';
}
