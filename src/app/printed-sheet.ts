/**
 * A sheet as it goes on paper: the cells that the grid shows, from the same
 * view, cut into tables that fit a page's width and begin with their headings.
 * Notes and pins become numbered footnotes. Pure.
 */
import { cellName, columnName } from '../formula/index.ts';
import type { CellView, SheetView } from '../grid/index.ts';
import type { Footnote, PaperHead, PrintedCell, PrintedRow, PrintedSheet, PrintedTable } from '../panels/index.ts';
import { textWidth } from '../pictures/index.ts';
import { frozenOf, hiddenColumns, hiddenRows, inRuns, usedArea, type Sheet } from '../workbook/index.ts';
import { cellAt } from '../workbook/index.ts';
import { columnLabel, rowLabel } from './places.ts';

/** Width of a page's cells in pixels of CSS: 186 mm upright and 255 mm across, which A4 and Letter both have, less the row numbers. */
export const ROOM = { upright: 675, across: 935 } as const;
/** A cell on paper beside the same cell on the screen: letters of 8.5 pt. The narrowest that columns are pressed to, with texts in more lines. */
const NATURAL = 0.79;
const PRESSED = 0.62;
/** Around a text in its cell, in pixels. */
const PADDING = 9;
/** A sheet of more rows is no paper to work by, and would hold up the browser. */
export const MOST_ROWS = 3000;

export function printedSheet(sheet: Sheet, view: SheetView, head: PaperHead, room: number = ROOM.upright): PrintedSheet {
  const area = usedArea(sheet);
  const base = { what: 'sheet', ...head, name: sheet.name, about: sheet.about ?? '' } as const;
  if (!area) return { ...base, tables: [], footnotes: [], missing: ['This sheet is empty.'] };
  const [rowsHidden, columnsHidden] = [hiddenRows(sheet), hiddenColumns(sheet)];
  const showing = (count: number, hidden: Parameters<typeof inRuns>[0]): number[] => Array.from({ length: count }, (_, at) => at).filter((at) => !inRuns(hidden, at));
  const all = showing(area.bottom + 1, rowsHidden);
  const rows = all.slice(0, MOST_ROWS);
  const columns = showing(area.right + 1, columnsHidden);
  const notes = footnotesOf(sheet, view, rows, columns);
  const frozen = rows.filter((row) => row < frozenOf(sheet).rows);
  const sections = sectionsOf(view, rows, columns, frozen);
  const tables = columnGroups(columns, (col) => view.width(col), room).flatMap((group) => sections.map((section) => tableOf(view, section, group, room, notes.marks)));
  const left = [
    area.bottom + 1 - all.length > 0 && `Rows that are hidden in the sheet are not printed: ${area.bottom + 1 - all.length}.`,
    area.right + 1 - columns.length > 0 && `Columns that are hidden in the sheet are not printed: ${area.right + 1 - columns.length}.`,
    all.length > rows.length && `Only the first ${MOST_ROWS.toLocaleString('en')} of ${all.length.toLocaleString('en')} rows are printed. Save the sheet as CSV to have all of it.`,
  ];
  return { ...base, tables: tables.filter((table) => table.heading.length + table.rows.length > 0), footnotes: notes.footnotes, missing: left.filter((each) => each !== false) };
}

interface Section {
  readonly heading: readonly number[];
  readonly rows: readonly number[];
}

/** A new section wherever a row begins with a heading; with rows kept in view there is one, and they are its headings. */
function sectionsOf(view: SheetView, rows: readonly number[], columns: readonly number[], frozen: readonly number[]): Section[] {
  if (frozen.length > 0) return [{ heading: frozen, rows: rows.slice(frozen.length) }];
  const filled = (row: number): boolean => columns.some((col) => (view.cell(row, col)?.text ?? '') !== '');
  const isHeading = (row: number): boolean => columns.map((col) => view.cell(row, col)).find((cell) => cell && (cell.text !== '' || cell.heading))?.heading ?? false;
  const sections: { heading: number[]; rows: number[] }[] = [];
  for (const row of rows) {
    const last = sections.at(-1);
    if (isHeading(row)) {
      if (last && last.rows.length === 0) last.heading.push(row);
      else sections.push({ heading: [row], rows: [] });
    } else if (last) last.rows.push(row);
    else sections.push({ heading: [], rows: [row] });
  }
  // Empty rows that part sections are white space on paper anyway.
  return sections.map((section) => ({ heading: section.heading, rows: section.rows.slice(0, section.rows.findLastIndex(filled) + 1) }));
}

/** Columns side by side on a page. A later page begins with the first column again, which says what its rows are. */
export function columnGroups(columns: readonly number[], width: (col: number) => number, room: number): readonly (readonly number[])[] {
  const least = (col: number): number => width(col) * PRESSED;
  const [first] = columns;
  const groups: number[][] = [[]];
  let used = 0;
  for (const col of columns) {
    if (used > 0 && used + least(col) > room) {
      const label = first !== undefined && least(first) <= room / 2 ? [first] : [];
      groups.push(label);
      used = label.reduce((sum, each) => sum + least(each), 0);
    }
    groups.at(-1)!.push(col);
    used += least(col);
  }
  return groups.filter((group) => group.length > 0);
}

function tableOf(view: SheetView, section: Section, columns: readonly number[], room: number, marks: ReadonlyMap<string, readonly number[]>): PrintedTable {
  const natural = columns.map((col) => view.width(col) * NATURAL);
  const total = natural.reduce((sum, each) => sum + each, 0);
  const pixels = natural.map((each) => (each * Math.min(room, total)) / total);
  const spare = Math.max(0, room - total);
  const row = (at: number): PrintedRow => ({ number: at + 1, cells: cellsOf(view, at, columns, pixels, spare, marks) });
  const share = (each: number): number => Math.round((10_000 * each) / room) / 100;
  return {
    columns: columns.map((col, at) => ({ letter: columnName(col), share: share(pixels[at]!) })),
    spare: share(spare),
    heading: section.heading.map(row),
    rows: section.rows.map(row),
  };
}

/** The cells of a row; a text reaches over empty cells beside it as far as it needs, as it does in the grid. */
function cellsOf(view: SheetView, row: number, columns: readonly number[], pixels: readonly number[], spare: number, marks: ReadonlyMap<string, readonly number[]>): PrintedCell[] {
  const made: PrintedCell[] = [];
  for (let at = 0; at < columns.length;) {
    const cell = view.cell(row, columns[at]!);
    const printed = cellOf(cell, marks.get(`${row},${columns[at]!}`) ?? []);
    let span = 1;
    if (printed.text !== '' && (printed.kind === 'text' || printed.kind === 'error') && printed.align === 'start') {
      const needs = Math.max(...printed.text.split('\n').map(textWidth)) * (printed.strong ? 1.15 : 1.03) + PADDING;
      let has = pixels[at]! + (at === columns.length - 1 ? spare : 0);
      while (has < needs && at + span < columns.length && columns[at + span] === columns[at]! + span && (view.cell(row, columns[at + span]!)?.text ?? '') === '') {
        has += pixels[at + span]! + (at + span === columns.length - 1 ? spare : 0);
        span += 1;
      }
    }
    made.push({ ...printed, span });
    at += span;
  }
  return made;
}

function cellOf(cell: CellView | null, marks: readonly number[]): PrintedCell {
  const kind = !cell || cell.kind === 'text' || cell.kind === 'truth' || cell.kind === 'waiting' ? 'text' : cell.kind === 'error' ? 'error' : cell.typed ? 'typed' : 'figure';
  return {
    text: cell?.text ?? '', ...(cell?.also !== undefined && { also: cell.also }), span: 1, kind, marks,
    align: cell?.align ?? (kind === 'figure' || kind === 'typed' ? 'end' : 'start'),
    strong: Boolean(cell?.strong || cell?.heading), italic: cell?.italic ?? false,
    ...(cell?.border && { border: cell.border }),
  };
}

function footnotesOf(sheet: Sheet, view: SheetView, rows: readonly number[], columns: readonly number[]): { footnotes: Footnote[]; marks: Map<string, number[]> } {
  const footnotes: Footnote[] = [];
  const marks = new Map<string, number[]>();
  for (const row of rows) {
    for (const col of columns) {
      const cell = view.cell(row, col);
      if (!cell) continue;
      const label = [rowLabel(sheet, row, col) || (cellAt(sheet, row, col)?.raw ?? ''), columnLabel(sheet, row, col)].filter((words) => words !== '' && !words.startsWith('=')).join(', ');
      const place = label ? `${cellName(row, col)} (${label})` : cellName(row, col);
      for (const [kind, text] of [['pin', cell.caution], ['acknowledged', cell.acknowledged], ['note', cell.note]] as const) {
        if (text === undefined || text === '') continue;
        const number = footnotes.length + 1;
        footnotes.push({ number, place, kind, text });
        const key = `${row},${col}`;
        marks.set(key, [...(marks.get(key) ?? []), number]);
      }
    }
  }
  return { footnotes, marks };
}
