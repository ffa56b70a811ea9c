/** What of a sheet shows: rows and columns that are hidden, kept in view, or left out because they do not match. */
import { placeAfterMove, runAfterMove } from '../formula/index.ts';
import type { LineMove } from '../formula/index.ts';
import { isArea, opposite, shiftArea } from './area.ts';
import type { Axis, Shift } from './area.ts';
import { withSheet } from './book.ts';
import { LIMITS, checkLine, isIndex } from './limits.ts';
import { mustHaveSheet, unchanged } from './outcome.ts';
import type { Outcome } from './outcome.ts';
import { EditRefused } from './refused.ts';
import { NO_RUNS, inRuns, joinRuns, moveRuns, normalRuns, sameRuns, shiftRuns } from './runs.ts';
import type { Book, Condition, Edit, Filter, Frozen, Hidden, Runs, Sheet } from './types.ts';

type EditOf<Do extends Edit['do']> = Extract<Edit, { do: Do }>;

/** Each is there only when it says something. */
export type Showing = Pick<Sheet, 'hidden' | 'frozen' | 'filter'>;

const ALL_SCROLLS: Frozen = { rows: 0, columns: 0 };
const ALL_SHOWN: Hidden = { rows: NO_RUNS, columns: NO_RUNS };

export const frozenOf = (sheet: Sheet): Frozen => sheet.frozen ?? ALL_SCROLLS;

/** Every row that does not show: hidden by hand, or not matching the filter. */
export function hiddenRows({ hidden = ALL_SHOWN, filter }: Sheet): Runs {
  return filter ? joinRuns(hidden.rows, filter.hides) : hidden.rows;
}

export const hiddenColumns = ({ hidden = ALL_SHOWN }: Sheet): Runs => hidden.columns;

export function rowShows({ hidden = ALL_SHOWN, filter }: Sheet, row: number): boolean {
  return !inRuns(hidden.rows, row) && !(filter && inRuns(filter.hides, row));
}

const limitOf = (axis: Axis): number => (axis === 'rows' ? LIMITS.rows : LIMITS.columns);

function withShowing(sheet: Sheet, showing: Showing): Sheet {
  const next: { -readonly [Key in keyof Sheet]: Sheet[Key] } = { ...sheet };
  delete next.hidden;
  delete next.frozen;
  delete next.filter;
  return Object.assign(next, normalShowing(showing));
}

function normalShowing({ hidden, frozen, filter }: Showing): Showing {
  return {
    ...(hidden && (hidden.rows.length > 0 || hidden.columns.length > 0) && { hidden }),
    ...(frozen && (frozen.rows > 0 || frozen.columns > 0) && { frozen }),
    ...(filter && { filter }),
  };
}

/** What a sheet from anywhere shows, in normal form. Throws `EditRefused` for what no sheet can have. */
export function tidyShowing({ hidden, frozen, filter }: Showing, name = 'a sheet'): Showing {
  if (frozen) checkFrozen(name, frozen);
  return normalShowing({
    hidden: hidden && { rows: normalRuns(hidden.rows, LIMITS.rows), columns: normalRuns(hidden.columns, LIMITS.columns) },
    frozen: frozen && { rows: frozen.rows + 0, columns: frozen.columns + 0 },
    filter: filter && tidyFilter(filter),
  });
}

function checkFrozen(name: string, { rows, columns }: Frozen): void {
  if (isIndex(rows, LIMITS.frozen + 1) && isIndex(columns, LIMITS.frozen + 1)) return;
  throw new EditRefused(`At most ${LIMITS.frozen} rows and ${LIMITS.frozen} columns of ${name} can be kept in view: choose a cell nearer to the top left.`);
}

function tidyFilter({ area: { top, left, bottom, right }, conditions, hides }: Filter): Filter {
  if (!isArea({ top, left, bottom, right })) throw new EditRefused('The rows to match lie outside the sheet.');
  for (const { col, text } of conditions) {
    if (!isIndex(col, LIMITS.columns)) throw new EditRefused('The column to match lies outside the sheet.');
    checkLine(text, 'What is to be matched');
  }
  return {
    area: { top: top + 0, left: left + 0, bottom: bottom + 0, right: right + 0 },
    conditions: conditions.map(({ col, test, text }) => ({ col: col + 0, test, text })),
    hides: normalRuns(hides, LIMITS.rows),
  };
}

function sameFilter(a: Filter | undefined, b: Filter | undefined): boolean {
  if (!a || !b) return a === b;
  return sameRuns(a.hides, b.hides)
    && a.area.top === b.area.top && a.area.left === b.area.left && a.area.bottom === b.area.bottom && a.area.right === b.area.right
    && a.conditions.length === b.conditions.length
    && a.conditions.every(({ col, test, text }, at) => col === b.conditions[at]!.col && test === b.conditions[at]!.test && text === b.conditions[at]!.text);
}

export function setHidden({ sheet: id, axis, runs: given }: EditOf<'setHidden'>, book: Book): Outcome {
  const sheet = mustHaveSheet(book, id);
  const old = sheet.hidden ?? ALL_SHOWN;
  const runs = normalRuns(given, limitOf(axis));
  if (sameRuns(old[axis], runs)) return unchanged(book);
  if (runs.some(([first, last]) => first === 0 && last === limitOf(axis) - 1)) {
    throw new EditRefused(`Not all ${axis} of ${sheet.name} can be hidden: nothing would be left to select.`);
  }
  return {
    book: withSheet(book, withShowing(sheet, { ...sheet, hidden: { ...old, [axis]: runs } })),
    undo: [{ do: 'setHidden', sheet: id, axis, runs: old[axis] }],
    effects: [],
  };
}

export function setFrozen({ sheet: id, rows, columns }: EditOf<'setFrozen'>, book: Book): Outcome {
  const sheet = mustHaveSheet(book, id);
  const old = frozenOf(sheet);
  if (old.rows === rows && old.columns === columns) return unchanged(book);
  checkFrozen(sheet.name, { rows, columns });
  return {
    book: withSheet(book, withShowing(sheet, { ...sheet, frozen: { rows: rows + 0, columns: columns + 0 } })),
    undo: [{ do: 'setFrozen', sheet: id, ...old }],
    effects: [],
  };
}

export function setFilter({ sheet: id, filter: given }: EditOf<'setFilter'>, book: Book): Outcome {
  const sheet = mustHaveSheet(book, id);
  const filter = given ? tidyFilter(given) : undefined;
  if (sameFilter(sheet.filter, filter)) return unchanged(book);
  return {
    book: withSheet(book, withShowing(sheet, { ...sheet, filter })),
    undo: [{ do: 'setFilter', sheet: id, filter: sheet.filter ?? null }],
    effects: [],
  };
}

/** The sheet with what shows of it after rows or columns came or went; the same sheet when that is all one. */
export function shiftShowing(sheet: Sheet, shift: Shift): Sheet {
  return following(sheet, shift.axis, {
    runs: (runs) => shiftRuns(runs, shift, limitOf(shift.axis)),
    count: (count) => {
      const { at, count: by } = shift;
      if (at >= count) return count;
      return shift.kind === 'insert' ? Math.min(count + by, LIMITS.frozen) : count - Math.min(by, count - at);
    },
    area: (area) => shiftArea({ sheet: sheet.id, ...area }, shift),
    place: (place) => {
      if (place < shift.at) return place;
      if (shift.kind === 'insert') return place + shift.count < limitOf(shift.axis) ? place + shift.count : null;
      return place < shift.at + shift.count ? null : place - shift.count;
    },
  });
}

/** As `shiftShowing`, after rows or columns changed places. */
export function moveShowing(sheet: Sheet, axis: Axis, move: LineMove): Sheet {
  return following(sheet, axis, {
    runs: (runs) => moveRuns(runs, move),
    count: (count) => count,
    area: (area) => {
      const [start, end] = axis === 'rows' ? ['top', 'bottom'] as const : ['left', 'right'] as const;
      const { first, last } = runAfterMove({ first: area[start], last: area[end] }, move);
      return { ...area, [start]: first, [end]: last };
    },
    place: (place) => placeAfterMove(place, move),
  });
}

interface Rules {
  readonly runs: (runs: Runs) => Runs;
  /** How many are kept in view. */
  readonly count: (count: number) => number;
  readonly area: (area: Filter['area']) => Filter['area'] | null;
  readonly place: (place: number) => number | null;
}

function following(sheet: Sheet, axis: Axis, rules: Rules): Sheet {
  const { hidden, frozen, filter } = sheet;
  if (!hidden && !frozen && !filter) return sheet;
  const next: Showing = {
    hidden: hidden && { ...hidden, [axis]: rules.runs(hidden[axis]) },
    frozen: frozen && { ...frozen, [axis]: rules.count(frozen[axis]) },
    filter: filter && filterAfter(filter, axis, rules),
  };
  return sameShowing(sheet, next) ? sheet : withShowing(sheet, next);
}

function filterAfter({ area: old, conditions, hides }: Filter, axis: Axis, rules: Rules): Filter | undefined {
  const area = rules.area(old);
  if (!area) return undefined;
  const { top, left, bottom, right } = area;
  return {
    area: { top, left, bottom, right },
    conditions: axis === 'rows' ? conditions : conditions.flatMap((condition): Condition[] => {
      const col = rules.place(condition.col);
      return col === null ? [] : [{ ...condition, col }];
    }),
    hides: axis === 'rows' ? rules.runs(hides) : hides,
  };
}

function sameShowing(a: Showing, b: Showing): boolean {
  const [hiddenA, hiddenB] = [a.hidden ?? ALL_SHOWN, b.hidden ?? ALL_SHOWN];
  const [frozenA, frozenB] = [a.frozen ?? ALL_SCROLLS, b.frozen ?? ALL_SCROLLS];
  return sameRuns(hiddenA.rows, hiddenB.rows) && sameRuns(hiddenA.columns, hiddenB.columns)
    && frozenA.rows === frozenB.rows && frozenA.columns === frozenB.columns
    && sameFilter(a.filter, b.filter);
}

/** What the opposite change does not bring back by itself; `back` is what it brings. */
function restoringShowing(old: Sheet, back: Sheet): Edit[] {
  const edits: Edit[] = [];
  const [was, is] = [old.hidden ?? ALL_SHOWN, back.hidden ?? ALL_SHOWN];
  for (const axis of ['rows', 'columns'] as const) {
    if (!sameRuns(was[axis], is[axis])) edits.push({ do: 'setHidden', sheet: old.id, axis, runs: was[axis] });
  }
  const [keptBefore, keptAfter] = [frozenOf(old), frozenOf(back)];
  if (keptBefore.rows !== keptAfter.rows || keptBefore.columns !== keptAfter.columns) edits.push({ do: 'setFrozen', sheet: old.id, ...keptBefore });
  if (!sameFilter(old.filter, back.filter)) edits.push({ do: 'setFilter', sheet: old.id, filter: old.filter ?? null });
  return edits;
}

export const lostByShift = (old: Sheet, shift: Shift): Edit[] =>
  restoringShowing(old, shiftShowing(shiftShowing(old, shift), opposite(shift)));

export const lostByMove = (old: Sheet, axis: Axis, move: LineMove, back: LineMove): Edit[] =>
  restoringShowing(old, moveShowing(moveShowing(old, axis, move), axis, back));
