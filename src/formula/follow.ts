/**
 * References that follow their cells, by rewriting the text of a formula. All
 * spelling is kept but for what must change. The rules are the engine's own
 * (HyperFormula's dependency transformers), so that the text and the engine,
 * which moves its own references, agree:
 * - a single reference shifts with its cell; `$` makes no difference;
 * - an area or a run of whole rows or columns grows when rows are inserted after
 *   its first and not after its last, shrinks when part of it is removed;
 * - what is removed altogether becomes `#REF!`;
 * - moved cells are followed by what points at them, an area only when all of it
 *   moves; what points at the cells they land on stays.
 * Moved rows and columns have rules of our own (see move.ts), by which the engine is told the texts.
 */
import { MAX_COLUMNS, MAX_ROWS, onSheet, respell } from './address.ts';
import { isDigit, isLatin, isSpace } from './characters.ts';
import { runAfterMove } from './move.ts';
import { foldName, sameName } from './names.ts';
import { isPlainlySpelt, plainReferences, plainlySpelt } from './plain.ts';
import type { PlainReference } from './plain.ts';
import { sheetIdOf } from './sheet-name.ts';
import { sheetInFormula } from './sheets.ts';
import { isFormula, tokenize } from './tokens.ts';
import type { ChangeOfReferences, Corner, LineMove, Reference, Run, SheetName, Token } from './types.ts';

const GONE = '#REF!';

type Structure = Extract<ChangeOfReferences, { readonly do: 'insertRows' | 'removeRows' | 'insertColumns' | 'removeColumns' }>;
type Lines = Extract<ChangeOfReferences, { readonly do: 'moveRows' | 'moveColumns' }>;
type Move = Extract<ChangeOfReferences, { readonly do: 'moveCells' }>;

/** The formula with some of its tokens written otherwise; the same string when none is. */
function rewriteTokens(formula: string, names: readonly string[] | undefined, write: (token: Token) => string): string {
  let result = '';
  let kept = 0;
  for (const token of tokenize(formula, names)) {
    const text = write(token);
    if (text === token.text) continue;
    result += formula.slice(kept, token.start) + text;
    kept = token.start + token.text.length;
  }
  return kept === 0 ? formula : result + formula.slice(kept);
}

function rewriteEach(formula: string, write: (reference: Reference, text: string) => string): string {
  const plain = plainReferences(formula);
  if (plain !== undefined) return rewritePlain(formula, plain, write);
  return rewriteTokens(formula, undefined, (token) => (token.reference === undefined ? token.text : write(token.reference, token.text)));
}

/** As `respell`, which reads the old spelling first, where that is not needed. */
function respelt(text: string, from: Corner, to: Corner | undefined, sheet?: string): string {
  return sheet === undefined && isPlainlySpelt(text) ? plainlySpelt(from, to) : respell(text, from, to, sheet);
}

function rewritePlain(formula: string, references: readonly PlainReference[], write: (reference: Reference, text: string) => string): string {
  let result = '';
  let kept = 0;
  for (const { start, end, reference } of references) {
    const was = formula.slice(start, end);
    const text = write(reference, was);
    if (text === was) continue;
    result += formula.slice(kept, start) + text;
    kept = end;
  }
  return kept === 0 ? formula : result + formula.slice(kept);
}

/**
 * The formula as it stands `dRow` rows down and `dCol` columns to the right:
 * relative references move, `$` ones stay, and what would leave the sheet
 * becomes `#REF!`. Text that is no formula stays as it is.
 */
export function shiftCopy(formula: string, dRow: number, dCol: number): string {
  if (!isFormula(formula) || (dRow === 0 && dCol === 0)) return formula;
  const shift = (corner: Corner): Corner => ({
    ...corner,
    row: corner.row === null || corner.rowFixed ? corner.row : corner.row + dRow,
    col: corner.col === null || corner.colFixed ? corner.col : corner.col + dCol,
  });
  return rewriteEach(formula, ({ from, to }, text) => {
    const start = shift(from);
    const end = to && shift(to);
    return onSheet(start) && (end === undefined || onSheet(end)) ? respelt(text, start, end) : GONE;
  });
}

/** The id of the sheet that a reference is to; `undefined` when there is none, or when its two ends are on two. */
export function sheetOfReference({ sheet, toSheet }: Reference, ownSheet: SheetName, sheets: readonly SheetName[]): number | undefined {
  const id = sheet === undefined ? ownSheet.id : sheetIdOf(sheet, sheets);
  return toSheet === undefined || sheetIdOf(toSheet, sheets) === id ? id : undefined;
}

/** The formula with other corners in some of its references; `null` leaves one as it is. All other spelling is kept. */
export function replaceCorners(
  formula: string, corners: (reference: Reference) => { readonly from: Corner; readonly to?: Corner } | null,
): string {
  if (!isFormula(formula)) return formula;
  return rewriteEach(formula, (reference, text) => {
    const next = corners(reference);
    return next === null ? text : respelt(text, next.from, next.to);
  });
}

/**
 * The formula after a change, or the same string when nothing in it changes (or
 * when it is no formula). `ownSheet` (the one it stands on) and `sheets` as they were before the change.
 */
export function rewriteReferences(
  formula: string, ownSheet: SheetName, sheets: readonly SheetName[], change: ChangeOfReferences,
): string {
  if (!isFormula(formula)) return formula;
  const sheetOf = (reference: Reference): number | undefined => sheetOfReference(reference, ownSheet, sheets);
  switch (change.do) {
    case 'insertRows': case 'removeRows': case 'insertColumns': case 'removeColumns': {
      if (ownSheet.id !== change.sheet && !formula.includes('!')) return formula;
      if (!mayReach(formula, change)) return formula;
      return rewriteEach(formula, (reference, text) => (sheetOf(reference) === change.sheet ? afterStructure(reference, text, change) : text));
    }
    case 'moveRows': case 'moveColumns': {
      if (ownSheet.id !== change.sheet && !formula.includes('!')) return formula;
      if (!mayBeMoved(formula, axisOf(change.do), change)) return formula;
      return rewriteEach(formula, (reference, text) => (sheetOf(reference) === change.sheet ? afterLines(reference, text, change) : text));
    }
    case 'moveCells': {
      const { from, to } = change;
      if (from.sheet === to.sheet && (!hasRowFrom(formula, from.top) || (ownSheet.id !== from.sheet && !formula.includes('!')))) return formula;
      return rewriteEach(formula, (reference, text) => {
        const sheet = sheetOf(reference);
        return sheet === undefined ? text : afterMove(reference, text, sheet, ownSheet, sheets, change);
      });
    }
    case 'renameSheet':
      if (!formula.includes('!')) return formula;
      return rewriteEach(formula, (reference, text) => (
        reference.sheet !== undefined && sheetOf(reference) === change.sheet
          ? respelt(text, reference.from, reference.to, sheetInFormula(change.name)) : text));
    case 'removeSheet':
      if (ownSheet.id !== change.sheet && !formula.includes('!')) return formula;
      return rewriteEach(formula, (reference, text) => (sheetOf(reference) === change.sheet ? GONE : text));
    case 'renameName': {
      const from = foldName(change.from);
      if (!foldName(formula).includes(from)) return formula;
      return rewriteTokens(formula, change.names, (token) => (
        token.kind === 'name' && sameName(token.text, from) ? change.to : token.text));
    }
  }
}

/**
 * False when a formula cannot name anything at or after the place of the change.
 * Looks at runs of digits (or letters) only, so it may say true for nothing,
 * never false for something.
 */
function mayReach(formula: string, { do: what, at }: Structure): boolean {
  return axisOf(what) === 'row' ? hasRowFrom(formula, at) : hasColumnFrom(formula, at);
}

const axisOf = (what: (Structure | Lines)['do']): 'row' | 'col' => (what === 'insertRows' || what === 'removeRows' || what === 'moveRows' ? 'row' : 'col');

/**
 * As `mayReach`, for rows or columns that change places: what is named wholly
 * before or after them all stays, and so does a block that holds them all.
 */
export function mayBeMoved(formula: string, axis: 'row' | 'col', { at, count, to }: LineMove): boolean {
  const [low, high] = [Math.min(at, to), Math.max(at + count, to)];
  return axis === 'row' ? hasRowFrom(formula, low, high) : hasColumnFrom(formula, low, high);
}

/** Rows from `at` on, and before `end`. */
function hasRowFrom(formula: string, at: number, end = Infinity): boolean {
  let row = 0;
  for (let p = 0; p < formula.length; p += 1) {
    const code = formula.charCodeAt(p);
    row = isDigit(code) ? row * 10 + code - 48 : 0;
    if (row > at && row <= end && (end === Infinity || !isDigit(formula.charCodeAt(p + 1)))) return true;
  }
  return false;
}

function hasColumnFrom(formula: string, at: number, end = Infinity): boolean {
  let col = 0;
  let letters = 0;
  for (let p = 0; p < formula.length; p += 1) {
    const code = formula.charCodeAt(p);
    letters = isLatin(code) ? letters + 1 : 0;
    col = letters === 0 || letters > 3 ? 0 : col * 26 + (code & 31);
    // A column has a digit, `$` or `:` beside it, perhaps with space between; in `SUM(` there is none.
    if (col > at && col <= end && (besideColumn(formula.charCodeAt(p + 1)) || besideColumn(formula.charCodeAt(p - letters)))) return true;
  }
  return false;
}

function besideColumn(code: number): boolean {
  return isDigit(code) || code === 36 || code === 58 || isSpace(code);
}

/** `undefined` when nothing is left. */
function runAfter({ first, last }: Run, change: Structure, limit: number): Run | undefined {
  const { at, count } = change;
  if (change.do === 'insertRows' || change.do === 'insertColumns') {
    const start = first >= at ? first + count : first;
    const end = last >= at ? last + count : last;
    return start < limit ? { first: start, last: Math.min(end, limit - 1) } : undefined;
  }
  const after = at + count;
  if (first >= at && last < after) return undefined;
  return {
    first: first >= after ? first - count : Math.min(first, at),
    last: last >= after ? last - count : Math.min(last, at - 1),
  };
}

function afterStructure(reference: Reference, text: string, change: Structure): string {
  const axis = axisOf(change.do);
  return withRun(reference, text, axis, (run) => runAfter(run, change, axis === 'row' ? MAX_ROWS : MAX_COLUMNS));
}

function afterLines(reference: Reference, text: string, change: Lines): string {
  return withRun(reference, text, axisOf(change.do), (run) => runAfterMove(run, change));
}

/** The reference with other rows, or columns, in it. */
function withRun({ from, to }: Reference, text: string, axis: 'row' | 'col', after: (run: Run) => Run | undefined): string {
  const a = from[axis];
  const b = to === undefined ? a : to[axis];
  if (a === null || b === null) return text;
  const run = after({ first: Math.min(a, b), last: Math.max(a, b) });
  if (run === undefined) return GONE;
  // The ends stay the way round they were written.
  const [start, end] = a <= b ? [run.first, run.last] : [run.last, run.first];
  return start === a && end === b ? text : respelt(text, { ...from, [axis]: start }, to && { ...to, [axis]: end });
}

function afterMove(
  reference: Reference, text: string, sheet: number, ownSheet: SheetName, sheets: readonly SheetName[], { from: area, to: target, formulaMoves = false }: Move,
): string {
  const { from, to } = reference;
  const inside = (corner: Corner): boolean => corner.row !== null && corner.col !== null
    && corner.row >= area.top && corner.row <= area.bottom && corner.col >= area.left && corner.col <= area.right;
  const follows = sheet === area.sheet && inside(from) && (to === undefined || inside(to));
  const newSheet = follows ? target.sheet : sheet;
  const newOwn = formulaMoves ? target.sheet : ownSheet.id;
  const move = (corner: Corner): Corner => (follows ? {
    ...corner, row: (corner.row ?? 0) + target.row - area.top, col: (corner.col ?? 0) + target.col - area.left,
  } : corner);
  const start = move(from);
  const end = to && move(to);
  if (!onSheet(start) || (end !== undefined && !onSheet(end))) return GONE;
  const samePrefix = reference.sheet === undefined ? newSheet === newOwn : newSheet === sheet;
  if (samePrefix) return follows ? respelt(text, start, end) : text;
  const name = sheets.find(({ id }) => id === newSheet)?.name;
  return name === undefined ? text : respelt(text, start, end, sheetInFormula(name));
}
