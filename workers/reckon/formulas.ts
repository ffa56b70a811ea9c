/**
 * From a typed formula to the engine's syntax tree. Formulas that say the same
 * of the cells around them (`=A1*2` in B1, `=A2*2` in B2) share one tree, so
 * that a column of them is translated and read once.
 */
import { columnNumber, MAX_ROWS, toEngine } from '../../src/formula/index.ts';
import type { SheetName } from '../../src/formula/index.ts';
import { isFault } from '../../src/quantities/index.ts';
import { EngineFormula } from './content.ts';
import { extent, SHARED_REACH } from './reach.ts';
import type { Predictor } from './reach.ts';
import { OURS } from './sentences.ts';
import type { Inside, ParseResult, Place } from './internals.ts';

/** Trees kept at most; then they are forgotten and gathered anew. */
const KEPT = 20_000;

const REFERENCE = /(\$?)([A-Z]{1,3})(\$?)([1-9][0-9]{0,6})(?![\w.]|\s*[(!])/y;
/** Figures and units that no reference can hide in, texts, functions, and signs; a space may stand beside a sign only. */
const WORD = /\d+(?: \d+)?(?:\/\d+|\.\d+)? ?(?:mm|cm|m|in|ft|yd)(?=\s*(?:[-+*/)=<>&,;]|$))|\d+(?:\.\d+)?(?=\s*(?:[-+*/^)=<>&;]|,\D|$))|"[^"\\]*"(?!")|[A-Z][A-Z0-9.]*\(|\s*[-+*/^()=<>&,;]\s*/y;

/**
 * What a formula says of the cells around `place`: its text, with each
 * reference by its distance from there. `undefined` when it has anything that
 * needs a closer look, such as texts, names and other sheets.
 */
export function relativeText(formula: string, place: Place): string | undefined {
  let text = '=';
  /** The `$`s of a reference just before a colon. */
  let first: string | undefined;
  for (let at = 1; at < formula.length;) {
    REFERENCE.lastIndex = at;
    const reference = REFERENCE.exec(formula);
    if (reference !== null) {
      const [whole, colFixed, letters, rowFixed, digits] = reference as unknown as [string, string, string, string, string];
      const col = columnNumber(letters);
      const row = Number(digits) - 1;
      if (col === undefined || row >= MAX_ROWS) return undefined;
      // Ends that are fixed in different ways change their order from cell to cell.
      if (first !== undefined && first !== colFixed + rowFixed + (colFixed === rowFixed)) return undefined;
      text += `${colFixed}${colFixed === '' ? col - place.col : col}${rowFixed === '' ? 'r' : 'R'}${rowFixed === '' ? row - place.row : row};`;
      at += whole.length;
      first = undefined;
      if (formula.charCodeAt(at) === 58 && formula.charCodeAt(at - whole.length - 1) !== 58) {
        text += ':';
        at += 1;
        first = colFixed + rowFixed + (colFixed === rowFixed);
      }
      continue;
    }
    if (first !== undefined) return undefined;
    WORD.lastIndex = at;
    const word = WORD.exec(formula);
    if (word === null) return undefined;
    text += word[0];
    at += word[0].length;
  }
  return first === undefined ? text : undefined;
}

export class Formulas {
  /** There was a formula that could not be read; it may be gone. */
  metUnreadable = false;
  readonly #trees = new Map<string, ParseResult>();
  #sheets: readonly SheetName[] = [];
  #names: readonly string[] = [];

  readonly #predictor: Predictor;

  /** Takes the place of the engine's parser. */
  constructor(parser: Inside['_parser'], predictor: Predictor) {
    this.#predictor = predictor;
    const parse = parser.parse.bind(parser);
    const read = (text: string, place: Place): ParseResult => {
      const result = parse(text, place);
      // The engine looks trees up by how it would write them, which need not be how they were written.
      if (result.errors.length === 0) parser.rememberNewAst(result.ast);
      return result;
    };
    parser.parse = (formula, place) => (formula instanceof EngineFormula ? read(formula.text, place) : this.#tree(formula as string, place, read));
  }

  get sheets(): readonly SheetName[] {
    return this.#sheets;
  }

  /** What words in formulas can mean from now on. */
  setMeanings(sheets: readonly SheetName[], names: readonly string[]): void {
    this.#sheets = sheets;
    this.#names = names;
  }

  #tree(formula: string, place: Place, read: (text: string, place: Place) => ParseResult): ParseResult {
    const key = relativeText(formula, place);
    const known = key === undefined ? undefined : this.#trees.get(key);
    if (known !== undefined) return known;
    const translated = toEngine(formula, { sheets: this.#sheets, names: this.#names, ownSheet: place.sheet });
    if (isFault(translated)) return this.#unreadable(translated.sentence);
    const result = read(translated.text, place);
    if (result.errors.length > 0) {
      this.metUnreadable = true;
      return result;
    }
    const { most, fault } = extent(result, place, this.#predictor);
    if (fault !== undefined) return this.#unreadable(fault);
    // One that reaches over many cells may reach over too many elsewhere, so it is looked at each time.
    if (key !== undefined && most < SHARED_REACH) {
      if (this.#trees.size >= KEPT) this.#trees.clear();
      this.#trees.set(key, result);
    }
    return result;
  }

  /** What the engine makes of a formula that cannot be read: a cell that keeps its text and shows an error with this message. */
  #unreadable(sentence: string): ParseResult {
    this.metUnreadable = true;
    return {
      ast: { type: 'ERROR' },
      errors: [{ type: 'ParserError', message: OURS + sentence }],
      hasVolatileFunction: false,
      hasStructuralChangeFunction: false,
      dependencies: [],
    };
  }
}
