/**
 * What shapes a sheet in the grid besides its texts: hidden rows and columns,
 * conditions, and rows that are taller because a text in them has line breaks.
 * Looked up once for each state of the sheet: most edits change none of it.
 */
import { isFormula } from '../formula/index.ts';
import { hiddenColumns, hiddenRows, usedArea, type Condition, type Row, type Runs, type Sheet, type SheetId } from '../workbook/index.ts';

type Tall = readonly (readonly [row: number, lines: number])[];

const NONE: Tall = [];
const usedOf = new WeakMap<Sheet['rows'], { readonly rows: number; readonly cols: number }>();
const rowsHidden = new WeakMap<object, { readonly by: Sheet['hidden']; readonly rows: Runs }>();

interface Known {
  readonly rows: Sheet['rows'];
  readonly tall: Tall;
}

/** Each sheet as it was last looked at: an edit leaves nearly all rows as they are. */
const lastSeen = new Map<SheetId, Known>();

/** Lines of the text with the most of them; a formula is one line, however its result is. */
function lines(row: Row): number {
  let most = 1;
  for (let col = 0; col < row.length; col++) {
    const raw = row[col]?.raw;
    if (raw === undefined || isFormula(raw) || !raw.includes('\n')) continue;
    most = Math.max(most, raw.split('\n').length);
  }
  return most;
}

export function tallRows({ id, rows }: Sheet): Tall {
  const known = lastSeen.get(id) ?? { rows: [], tall: NONE };
  if (known.rows === rows) return known.tall;
  const { rows: before } = known;
  const most = Math.min(rows.length, before.length);
  let head = 0;
  while (head < most && rows[head] === before[head]) head++;
  let tail = 0;
  while (tail < most - head && rows[rows.length - 1 - tail] === before[before.length - 1 - tail]) tail++;
  const shift = rows.length - before.length;
  const made: (readonly [number, number])[] = known.tall.filter(([at]) => at < head);
  for (let at = head; at < rows.length - tail; at++) {
    const row = rows[at];
    const count = row ? lines(row) : 1;
    if (count > 1) made.push([at, count]);
  }
  for (const [at, count] of known.tall) if (at >= before.length - tail) made.push([at + shift, count]);
  const same = made.length === known.tall.length && made.every(([at, count], i) => at === known.tall[i]![0] && count === known.tall[i]![1]);
  // The same list while it says the same, so that the grid keeps its measures.
  const tall = same ? known.tall : made;
  lastSeen.set(id, { rows, tall });
  return tall;
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
