/** What an edit is called, after "Undo: ", and where it happens. */
import { areaName, cellName, columnName, sameName } from '../formula/index.ts';
import { areaAt, sameArea } from './area.ts';
import { cellAt, nameCalled, sheetById } from './book.ts';
import { LIMITS, plural } from './limits.ts';
import type { Area, Book, Cell, CellChange, Edit, SheetId } from './types.ts';

function calledSheet(book: Book, id: SheetId): string {
  return sheetById(book, id)?.name ?? 'a sheet that is gone';
}

function placed(book: Book, area: Area): string {
  return `${areaName(area)} of ${calledSheet(book, area.sheet)}`;
}

/** What is done to a cell, the weightiest thing first. */
function verbFor(old: Cell | undefined, cell: Cell | null): string {
  if (cell === null || (cell.raw === '' && (old?.raw ?? '') !== '')) return 'empty';
  if (cell.raw !== (old?.raw ?? '')) return 'type in';
  if (cell.note !== old?.note) return 'change the note on';
  if (cell.input !== old?.input) return cell.input ? 'set the input mark on' : 'take the input mark off';
  return 'change the look of';
}

function labelOfCells(book: Book, id: SheetId, cells: readonly CellChange[]): string {
  const sheet = sheetById(book, id);
  const name = calledSheet(book, id);
  const verbs = new Set(cells.map(({ row, col, cell }) => verbFor(sheet && cellAt(sheet, row, col), cell)));
  const [verb = 'change'] = verbs.size === 1 ? verbs : ['change'];
  const [first] = cells;
  if (cells.length === 1 && first) return `${verb} ${cellName(first.row, first.col)} of ${name}`;
  return `${verb === 'type in' ? 'fill' : verb} ${plural(cells.length, 'cell')} in ${name}`;
}

function labelOfName(edit: Extract<Edit, { do: 'setName' }>, book: Book): string {
  const { name, target } = edit;
  const old = nameCalled(book, name);
  if (!target) return `take the name ${name} away`;
  if (!target.area) return `change the name ${name}`;
  if (!old) return `name ${placed(book, target.area)} ${name}`;
  return sameArea(old.area, target.area) ? `change the name ${name}` : `let ${name} stand for ${placed(book, target.area)}`;
}

/** In lower case, without a full stop: "type in B4 of Fit". `book` is the workbook before the edit. */
export function labelOf(edit: Edit, book: Book): string {
  switch (edit.do) {
    case 'setCells': return labelOfCells(book, edit.sheet, edit.cells);
    case 'insertRows': return `insert ${plural(edit.count, 'row')} in ${calledSheet(book, edit.sheet)}`;
    case 'removeRows': return `remove ${plural(edit.count, 'row')} from ${calledSheet(book, edit.sheet)}`;
    case 'insertColumns': return `insert ${plural(edit.count, 'column')} in ${calledSheet(book, edit.sheet)}`;
    case 'removeColumns': return `remove ${plural(edit.count, 'column')} from ${calledSheet(book, edit.sheet)}`;
    case 'moveCells': {
      const from = edit.from.sheet === edit.to.sheet ? areaName(edit.from) : placed(book, edit.from);
      return `move ${from} to ${cellName(edit.to.row, edit.to.col)} of ${calledSheet(book, edit.to.sheet)}`;
    }
    case 'addSheet': return `add the sheet ${edit.sheet.name}`;
    case 'removeSheet': return `remove the sheet ${calledSheet(book, edit.sheet)}`;
    case 'renameSheet': return `rename the sheet ${calledSheet(book, edit.sheet)} to ${edit.name}`;
    case 'moveSheet': return `move the sheet ${calledSheet(book, edit.sheet)}`;
    case 'setAbout': return `change the line about ${calledSheet(book, edit.sheet)}`;
    case 'setName': return labelOfName(edit, book);
    case 'renameName': return sameName(edit.name, edit.to) ? `spell the name ${edit.to}` : `rename ${edit.name} to ${edit.to}`;
    case 'setWidth': return `set the width of column ${columnName(edit.col)} of ${calledSheet(book, edit.sheet)}`;
    case 'setSettings': return 'change how lengths show';
    case 'setTitle': return 'change the title';
    case 'many': return edit.label;
  }
}

/** The block around some places. */
function around(sheet: SheetId, cells: readonly CellChange[]): Area | null {
  const [first] = cells;
  if (!first) return null;
  let { row: top, row: bottom, col: left, col: right } = first;
  for (const { row, col } of cells) {
    if (row < top) top = row;
    if (row > bottom) bottom = row;
    if (col < left) left = col;
    if (col > right) right = col;
  }
  return { sheet, top, left, bottom, right };
}

const corner = (sheet: SheetId): Area => ({ sheet, top: 0, left: 0, bottom: 0, right: 0 });

/**
 * Where an edit happens, for the selection to go there when it is undone or
 * redone; `null` for one that is not about cells or a sheet. `book` is the
 * workbook before the edit.
 */
export function focusOf(edit: Edit, book: Book): Area | null {
  switch (edit.do) {
    case 'setCells': return around(edit.sheet, edit.cells);
    case 'insertRows':
    case 'removeRows': return { sheet: edit.sheet, top: edit.at, bottom: edit.at + edit.count - 1, left: 0, right: LIMITS.columns - 1 };
    case 'insertColumns':
    case 'removeColumns': return { sheet: edit.sheet, top: 0, bottom: LIMITS.rows - 1, left: edit.at, right: edit.at + edit.count - 1 };
    case 'moveCells': return areaAt(edit.from, edit.to);
    case 'addSheet': return corner(edit.sheet.id);
    case 'removeSheet':
    case 'renameSheet':
    case 'moveSheet':
    case 'setAbout': return corner(edit.sheet);
    case 'setWidth': return { sheet: edit.sheet, top: 0, bottom: LIMITS.rows - 1, left: edit.col, right: edit.col };
    case 'setName': return edit.target?.area ?? nameCalled(book, edit.name)?.area ?? null;
    case 'renameName': return nameCalled(book, edit.name)?.area ?? null;
    case 'setSettings':
    case 'setTitle': return null;
    case 'many':
      for (const part of edit.edits) {
        const area = focusOf(part, book);
        if (area) return area;
      }
      return null;
  }
}
