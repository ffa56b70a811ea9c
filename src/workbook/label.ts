/** What an edit is called, after "Undo: ", and where it happens. */
import { areaName, cellName, columnName, placeAfterMove, sameName } from '../formula/index.ts';
import type { LineMove } from '../formula/index.ts';
import { areaAt, sameArea } from './area.ts';
import { cellAt, nameCalled, sheetById } from './book.ts';
import { sameAcknowledged } from './cells.ts';
import { LIMITS, plural } from './limits.ts';
import { KINDS } from './records/index.ts';
import type { RecordKindCard } from './records/index.ts';
import { NO_RUNS, countOf } from './runs.ts';
import { recordCalled } from './set-record.ts';
import type { Area, Book, Cell, CellChange, Edit, Runs, SheetId } from './types.ts';

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
  if (!sameAcknowledged(cell.acknowledged, old?.acknowledged)) return 'change the pins on';
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

function labelOfHidden({ sheet: id, axis, runs }: Extract<Edit, { do: 'setHidden' }>, book: Book): string {
  const change = countOf(runs) - countOf(sheetById(book, id)?.hidden?.[axis] ?? NO_RUNS);
  const what = axis === 'rows' ? 'row' : 'column';
  if (change === 0) return `hide other ${what}s of ${calledSheet(book, id)}`;
  return `${change > 0 ? 'hide' : 'show'} ${plural(Math.abs(change), what)} of ${calledSheet(book, id)}`;
}

function labelOfFrozen({ sheet, rows, columns }: Extract<Edit, { do: 'setFrozen' }>, book: Book): string {
  if (rows === 0 && columns === 0) return `let all of ${calledSheet(book, sheet)} scroll`;
  const kept = [rows > 0 ? plural(rows, 'row') : '', columns > 0 ? plural(columns, 'column') : ''].filter((each) => each !== '');
  return `keep ${kept.join(' and ')} of ${calledSheet(book, sheet)} in view`;
}

function labelOfRecord({ kind, id, data }: Extract<Edit, { do: 'setRecord' }>, book: Book): string {
  const card = KINDS[kind] as RecordKindCard<unknown>;
  const old = recordCalled(book, kind, id);
  const shown = data ?? old;
  const title = shown === undefined ? '' : card.title(shown);
  const what = title === '' ? card.called : `${card.called}, ${title}`;
  return data === null ? `take away ${what}` : old === undefined ? `keep ${what}` : `change ${what}`;
}

/** In lower case, without a full stop: "type in B4 of Fit". `book` is the workbook before the edit. */
export function labelOf(edit: Edit, book: Book): string {
  switch (edit.do) {
    case 'setCells': return labelOfCells(book, edit.sheet, edit.cells);
    case 'insertRows': return `insert ${plural(edit.count, 'row')} in ${calledSheet(book, edit.sheet)}`;
    case 'removeRows': return `remove ${plural(edit.count, 'row')} from ${calledSheet(book, edit.sheet)}`;
    case 'insertColumns': return `insert ${plural(edit.count, 'column')} in ${calledSheet(book, edit.sheet)}`;
    case 'removeColumns': return `remove ${plural(edit.count, 'column')} from ${calledSheet(book, edit.sheet)}`;
    case 'moveRows': return `move ${plural(edit.count, 'row')} of ${calledSheet(book, edit.sheet)}`;
    case 'moveColumns': return `move ${plural(edit.count, 'column')} of ${calledSheet(book, edit.sheet)}`;
    case 'orderRows': return `sort ${plural(edit.order.length, 'row')} in ${calledSheet(book, edit.area.sheet)}`;
    case 'acknowledge': return `${edit.pins.length > 0 ? 'acknowledge' : 'put back'} pins on ${cellName(edit.row, edit.col)} of ${calledSheet(book, edit.sheet)}`;
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
    case 'setHidden': return labelOfHidden(edit, book);
    case 'setFrozen': return labelOfFrozen(edit, book);
    case 'setFilter': return edit.filter
      ? `show only rows that match in ${calledSheet(book, edit.sheet)}`
      : `show also rows that do not match in ${calledSheet(book, edit.sheet)}`;
    case 'setSettings': return 'change how lengths show';
    case 'setTitle': return 'change the title';
    case 'setRecord': return labelOfRecord(edit, book);
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

/** Where moved rows or columns stand afterwards. */
function stretchOf({ at, count, to }: LineMove): { readonly top: number; readonly bottom: number } {
  const top = placeAfterMove(at, { at, count, to });
  return { top, bottom: top + count - 1 };
}

/** The first stretch that is hidden, or shown again. */
function hiddenFocus({ sheet, axis, runs }: Extract<Edit, { do: 'setHidden' }>, book: Book): Area {
  const old = sheetById(book, sheet)?.hidden?.[axis] ?? NO_RUNS;
  const differs = (a: Runs, b: Runs) => a.find(([first, last]) => !b.some((other) => other[0] === first && other[1] === last));
  const [first, last] = differs(runs, old) ?? differs(old, runs) ?? [0, 0];
  return axis === 'rows'
    ? { sheet, top: first, bottom: last, left: 0, right: LIMITS.columns - 1 }
    : { sheet, top: 0, bottom: LIMITS.rows - 1, left: first, right: last };
}

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
    case 'moveRows': return { sheet: edit.sheet, ...stretchOf(edit), left: 0, right: LIMITS.columns - 1 };
    case 'moveColumns': {
      const { top: left, bottom: right } = stretchOf(edit);
      return { sheet: edit.sheet, top: 0, bottom: LIMITS.rows - 1, left, right };
    }
    case 'orderRows': return edit.area;
    case 'acknowledge': return { sheet: edit.sheet, top: edit.row, bottom: edit.row, left: edit.col, right: edit.col };
    case 'moveCells': return areaAt(edit.from, edit.to);
    case 'addSheet': return corner(edit.sheet.id);
    case 'removeSheet':
    case 'renameSheet':
    case 'moveSheet':
    case 'setAbout':
    case 'setFrozen': return corner(edit.sheet);
    case 'setHidden': return hiddenFocus(edit, book);
    case 'setFilter': return edit.filter ? { sheet: edit.sheet, ...edit.filter.area } : corner(edit.sheet);
    case 'setWidth': return { sheet: edit.sheet, top: 0, bottom: LIMITS.rows - 1, left: edit.col, right: edit.col };
    case 'setName': return edit.target?.area ?? nameCalled(book, edit.name)?.area ?? null;
    case 'renameName': return nameCalled(book, edit.name)?.area ?? null;
    case 'setSettings':
    case 'setTitle':
    case 'setRecord': return null;
    case 'many':
      for (const part of edit.edits) {
        const area = focusOf(part, book);
        if (area) return area;
      }
      return null;
  }
}
