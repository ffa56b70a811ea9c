/** What a screen reader says of a cell: value, second system, where it comes from, and what hangs on it. */
import type { CellArea, CellView, Selection } from './view.ts';
import { cellName } from '../formula/index.ts';
import { areaOf, isSingle } from './select.ts';

function origin(cell: CellView): string {
  if (cell.kind === 'waiting') return 'being worked out';
  if (cell.formula) return 'worked out';
  return cell.typed ? 'typed' : '';
}

/** `null` when the cell's own text says it all. */
export function spokenCell(cell: CellView): string | null {
  const parts = [
    cell.kind === 'error' ? `Error: ${cell.text}` : cell.text,
    cell.also ?? '',
    origin(cell),
    cell.input ? 'to fill in' : '',
    cell.caution ? `Pin: ${cell.caution}` : '',
    cell.note ? `Note: ${cell.note}` : '',
  ].filter((part) => part !== '');
  return parts.length === 1 && parts[0] === cell.text ? null : parts.join(', ');
}

const counted = (n: number, one: string): string => `${n.toLocaleString('en-GB')} ${n === 1 ? one : `${one}s`}`;

/** "B2 to C9 selected, 8 rows, 2 columns"; empty for one cell, whose own name is read. */
export function spokenSelection(selection: Selection, rowCount: number, colCount: number): string {
  if (isSingle(selection)) return '';
  const area = areaOf(selection);
  const rows = area.bottom - area.top + 1;
  const cols = area.right - area.left + 1;
  if (rows === rowCount && cols === colCount) return 'All cells selected';
  if (rows === rowCount) return `${counted(cols, 'whole column')} selected`;
  if (cols === colCount) return `${counted(rows, 'whole row')} selected`;
  return `${spokenArea(area)} selected, ${counted(rows, 'row')}, ${counted(cols, 'column')}`;
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
