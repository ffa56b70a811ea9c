/**
 * What shapes a sheet in the grid besides its texts: hidden rows and columns,
 * conditions, and rows that are taller because a text in them has line breaks.
 * Looked up once for each state of the sheet: most edits change none of it.
 */
import { isFormula } from '../formula/index.ts';
import { hiddenColumns, hiddenRows, usedArea, type Condition, type Row, type Runs, type Sheet } from '../workbook/index.ts';

type Tall = readonly (readonly [row: number, lines: number])[];

const NONE: Tall = [];
const linesOfRow = new WeakMap<Row, number>();
const tallOf = new WeakMap<Sheet['rows'], Tall>();
const usedOf = new WeakMap<Sheet['rows'], { readonly rows: number; readonly cols: number }>();
const rowsHidden = new WeakMap<object, { readonly by: Sheet['hidden']; readonly rows: Runs }>();

/** Lines of the text with the most of them; a formula is one line, however its result is. */
function lines(row: Row): number {
  let most = linesOfRow.get(row);
  if (most !== undefined) return most;
  most = 1;
  for (const cell of row) {
    if (cell?.raw.includes('\n') && !isFormula(cell.raw)) most = Math.max(most, cell.raw.split('\n').length);
  }
  linesOfRow.set(row, most);
  return most;
}

export function tallRows({ rows }: Sheet): Tall {
  const known = tallOf.get(rows);
  if (known) return known;
  const tall: [number, number][] = [];
  rows.forEach((row, at) => {
    if (row && lines(row) > 1) tall.push([at, lines(row)]);
  });
  const made = tall.length ? tall : NONE;
  tallOf.set(rows, made);
  return made;
}

/** Counts of rows and columns that hold something. */
export function usedBy(sheet: Sheet): { readonly rows: number; readonly cols: number } {
  let used = usedOf.get(sheet.rows);
  if (used) return used;
  const area = usedArea(sheet);
  used = area ? { rows: area.bottom + 1, cols: area.right + 1 } : { rows: 0, cols: 0 };
  usedOf.set(sheet.rows, used);
  return used;
}

/** The same lists for as long as nothing was hidden, shown or matched. */
export function hiddenOf(sheet: Sheet): { readonly rows: Runs; readonly cols: Runs } | undefined {
  const { hidden, filter } = sheet;
  if (!hidden && !filter) return undefined;
  const cols = hiddenColumns(sheet);
  if (!filter) return { rows: hiddenRows(sheet), cols };
  let known = rowsHidden.get(filter);
  if (known?.by !== hidden || !known) rowsHidden.set(filter, known = { by: hidden, rows: hiddenRows(sheet) });
  return { rows: known.rows, cols };
}

/** As it goes on after "only" and after "where it is". */
function inWords({ test, text }: Condition): string {
  switch (test) {
    case 'is': return `“${text}”`;
    case 'isNot': return `not “${text}”`;
    case 'has': return `with “${text}” in it`;
    case 'hasNot': return `without “${text}” in it`;
    case 'more': return `more than ${text}`;
    case 'atLeast': return `at least ${text}`;
    case 'less': return `less than ${text}`;
    case 'atMost': return `at most ${text}`;
    case 'empty': return 'empty';
    case 'filled': return 'filled';
  }
}

export function conditionOf({ filter }: Sheet, col: number): string | undefined {
  return filter?.conditions.filter((each) => each.col === col).map(inWords).join(' and ') || undefined;
}
