/**
 * From a typed formula to the engine's syntax tree. Formulas that say the same
 * of the cells around them (`=A1*2` in B1, `=A2*2` in B2) share one tree, so
 * that a column of them is translated and read once.
 */
import { MAX_COLUMNS, MAX_ROWS, toEngine } from '../../src/formula/index.ts';
import type { SheetName } from '../../src/formula/index.ts';
import { isFault } from '../../src/quantities/index.ts';
import { EngineFormula } from './content.ts';
import { withLayouts } from './functions/lay.ts';
import { extent, SHARED_REACH } from './reach.ts';
import type { Predictor } from './reach.ts';
import { OURS } from './sentences.ts';
import type { Inside, ParseResult, Place } from './internals.ts';

/** Trees kept at most; then they are forgotten and gathered anew. */
const KEPT = 20_000;

/** Figures and units that no reference can hide in, texts, functions, and signs with spaces before them. */
const WORD = /\d+(?: \d+)?(?:\/\d+|\.\d+)? ?(?:mm|cm|m|in|ft|yd)(?=\s*(?:[-+*/)=<>&,;]|$))|\d+(?:\.\d+)?(?=\s*(?:[-+*/^)=<>&;]|,\D|$))|"[^"\\]*"(?!")|[A-Z][A-Z0-9.]*\(|\s+(?=[-+*/^()=<>&,;])/y;
/** What makes the end of a reference no end: more of a word, a call, a sheet's name. */
const NO_END = /[\w.]|\s*[(!]/y;

const [SPACE, DOLLAR, COLON] = [32, 36, 58];
const isSign = (code: number): boolean => SIGNS[code] === 1;
const SIGNS = new Uint8Array(128);
for (const sign of '+-*/^()=<>&,;') SIGNS[sign.charCodeAt(0)] = 1;

/**
 * What a formula says of the cells around `place`: its text, with each
 * reference by its distance from there. `undefined` when it has anything that
 * needs a closer look, such as names and other sheets. Written out by hand: it
 * is run for every formula of a workbook that is opened.
 */
export function relativeText(formula: string, place: Place, rows?: Rows): string | undefined {
  let text = '';
  /** Up to here the formula is in `text`. */
  let taken = 0;
  /** The `$`s of a reference just before a colon; -1 after anything else. */
  let first = -1;
  let at = 1;
  while (at < formula.length) {
    const code = formula.charCodeAt(at);
    if (isSign(code) && first < 0) {
      at += 1;
      while (formula.charCodeAt(at) === SPACE) at += 1;
      continue;
    }
    const reference = scanReference(formula, at);
    if (reference !== undefined) {
      const { col, row, digits, fixed, end } = reference;
      // Ends that are fixed in different ways change their order from cell to cell.
      if (first >= 0 && (first !== fixed || fixed === 1 || fixed === 2)) return undefined;
      const colText = (fixed & 1) === 0 ? `c${col - place.col}` : `C${col}`;
      const rowText = (fixed & 2) === 0 ? `r${row - place.row}` : `R${row}`;
      text += `${formula.slice(taken, at)}[${colText}${rowText}]`;
      if (rows !== undefined && (fixed & 2) === 0) rows.push({ from: digits, to: end, offset: row - place.row });
      at = taken = end;
      if (first < 0 && formula.charCodeAt(at) === COLON) {
        first = fixed;
        at += 1;
      } else {
        first = -1;
      }
      continue;
    }
    if (first >= 0) return undefined;
    WORD.lastIndex = at;
    if (!WORD.test(formula)) return undefined;
    at = WORD.lastIndex;
  }
  return first < 0 ? text + formula.slice(taken) : undefined;
}

/** A cell at a place of the formula, if one stands there and is on the sheet. `fixed`: 1 for a `$` before the column, 2 for one before the row. */
function scanReference(formula: string, at: number): { col: number; row: number; digits: number; fixed: number; end: number } | undefined {
  let end = at;
  let fixed = 0;
  if (formula.charCodeAt(end) === DOLLAR) {
    fixed = 1;
    end += 1;
  }
  let col = 0;
  const letters = end;
  for (let code = formula.charCodeAt(end); code >= 65 && code <= 90; code = formula.charCodeAt(++end)) col = col * 26 + code - 64;
  if (end === letters || end > letters + 3 || col > MAX_COLUMNS) return undefined;
  if (formula.charCodeAt(end) === DOLLAR) {
    fixed |= 2;
    end += 1;
  }
  let row = 0;
  const digits = end;
  for (let code = formula.charCodeAt(end); code >= 48 && code <= 57; code = formula.charCodeAt(++end)) row = row * 10 + code - 48;
  if (end === digits || end > digits + 7 || row > MAX_ROWS || formula.charCodeAt(digits) === 48) return undefined;
  NO_END.lastIndex = end;
  return end < formula.length && NO_END.test(formula) ? undefined : { col: col - 1, row: row - 1, digits, fixed, end };
}

/** Where in a formula the numbers of rows stand that move with it, and how far each row is from the formula's own. */
type Rows = { readonly from: number; readonly to: number; readonly offset: number }[];

/**
 * A formula as it goes down a column: its text but for the numbers of the rows
 * that move with it. Comparing a formula with the one above is much quicker
 * than taking it apart.
 */
class Run {
  /** Before, between and after the numbers. */
  readonly #pieces: readonly string[];
  readonly #offsets: readonly number[];

  /** @param rows as `relativeText` found them in the formula */
  constructor(formula: string, rows: Rows, readonly tree: Tree) {
    this.#pieces = [...rows, undefined].map((row, i) => formula.slice(rows[i - 1]?.to ?? 0, row?.from));
    this.#offsets = rows.map(({ offset }) => offset);
  }

  /** Whether a formula of the same column says the same in `row` as this one in its own. */
  holds(formula: string, row: number): boolean {
    let at = 0;
    for (let i = 0; i < this.#offsets.length; i++) {
      const piece = this.#pieces[i]!;
      if (!formula.startsWith(piece, at)) return false;
      at += piece.length;
      if (formula.charCodeAt(at) === 48) return false;
      const due = row + 1 + this.#offsets[i]!;
      let found = 0;
      for (let code = formula.charCodeAt(at); code >= 48 && code <= 57; code = formula.charCodeAt(++at)) found = found * 10 + code - 48;
      if (found !== due || due < 1 || due > MAX_ROWS) return false;
    }
    const last = this.#pieces[this.#offsets.length]!;
    return formula.length === at + last.length && formula.endsWith(last);
  }
}

/** How a formula is to be understood, and whether its result is sure to fill one cell. */
export interface Tree extends ParseResult {
  readonly single: boolean;
}

export class Formulas {
  /** There was a formula that could not be read; it may be gone. */
  metUnreadable = false;
  readonly #trees = new Map<string, Tree>();
  /** By column, what its formulas said last, and once two said the same, the run that they begin. */
  readonly #latest: (Tree | undefined)[] = [];
  readonly #runs: (Run | undefined)[] = [];
  readonly #read: (text: string, place: Place) => ParseResult;
  #sheets: readonly SheetName[] = [];
  #names: readonly string[] = [];

  readonly #predictor: Predictor;

  /** Takes the place of the engine's parser. */
  constructor(parser: Inside['_parser'], predictor: Predictor) {
    this.#predictor = predictor;
    const parse = parser.parse.bind(parser);
    this.#read = (text, place) => {
      const result = parse(text, place);
      // The engine looks trees up by how it would write them, which need not be how they were written.
      if (result.errors.length === 0) parser.rememberNewAst(result.ast);
      return result;
    };
    parser.parse = (formula, place) => (formula instanceof EngineFormula ? this.#read(formula.text, place) : this.treeOf(formula as string, place));
  }

  get sheets(): readonly SheetName[] {
    return this.#sheets;
  }

  /** What words in formulas can mean from now on. */
  setMeanings(sheets: readonly SheetName[], names: readonly string[]): void {
    this.#sheets = sheets;
    this.#names = names;
  }

  /** A typed formula as it is to be understood at a place. */
  treeOf(formula: string, place: Place): Tree {
    const run = this.#runs[place.col];
    if (run?.holds(formula, place.row) === true) return run.tree;
    const key = relativeText(formula, place);
    const known = key === undefined ? undefined : this.#trees.get(key);
    if (known !== undefined) {
      if (this.#latest[place.col] === known && run?.tree !== known) this.#begin(formula, place, known);
      this.#latest[place.col] = known;
      return known;
    }
    const translated = toEngine(formula, { sheets: this.#sheets, names: this.#names, ownSheet: place.sheet });
    if (isFault(translated)) return this.#unreadable(translated.sentence);
    const result = withLayouts(translated.text, this.#read(translated.text, place));
    if (result.errors.length > 0) {
      this.metUnreadable = true;
      return { ...result, single: true };
    }
    const { most, single, fault } = extent(result, place, this.#predictor);
    if (fault !== undefined) return this.#unreadable(fault);
    const tree = { ...result, single };
    // One that reaches over many cells may reach over too many elsewhere, so it is looked at each time.
    if (key !== undefined && most < SHARED_REACH) {
      if (this.#trees.size >= KEPT) this.#trees.clear();
      this.#trees.set(key, tree);
    }
    return tree;
  }

  #begin(formula: string, place: Place, tree: Tree): void {
    const rows: Rows = [];
    relativeText(formula, place, rows);
    this.#runs[place.col] = new Run(formula, rows, tree);
  }

  /** What the engine makes of a formula that cannot be read: a cell that keeps its text and shows an error with this message. */
  #unreadable(sentence: string): Tree {
    this.metUnreadable = true;
    return {
      ast: { type: 'ERROR' },
      errors: [{ type: 'ParserError', message: OURS + sentence }],
      hasVolatileFunction: false,
      hasStructuralChangeFunction: false,
      dependencies: [],
      single: true,
    };
  }
}
