import { isFault, UNITS } from '../quantities/index.ts';
import { quoted } from './characters.ts';
import { asTwo, decimalAround, decimalBefore, joinDecimals, readingsOf, twoReadings } from './decimal-comma.ts';
import type { Piece } from './decimal-comma.ts';
import type { Frame } from './dialect-frame.ts';
import { engineCall, engineError, engineNameOf, engineReference, engineSign, engineString, engineUnit } from './engine-words.ts';
import type { Word } from './engine-words.ts';
import { insteadOf, lacksUnit } from './instead.ts';
import { isFormula, LIMITS, tokenize } from './tokens.ts';
import type { EngineContext, FormulaFault, Instead, Token } from './types.ts';

/** Characters a formula may have. */
export const MAX_LENGTH = 8_192;
/** Brackets that may be open at once. */
export const MAX_DEPTH = 64;
/**
 * Operators in one row, brackets inside them counted in. The engine works a row
 * of operators out by calling itself: 1,000 still went well when measured and
 * 2,000 ran out of stack.
 */
export const MAX_TERMS = 500;

/**
 * A formula in the dialect of HyperFormula 3.5.0, set up with
 * `functionArgSeparator: ','`, `decimalSeparator: '.'`, `arrayColumnSeparator: ';'`,
 * `arrayRowSeparator: '|'`, `maxRows: MAX_ROWS` and `maxColumns: MAX_COLUMNS`.
 *
 * - A figure with a unit becomes a call of `QUANTITY_CALL`, a sheet `S<id>`, a name
 *   its `engineName`; `;` between arguments becomes `,`; TRUE becomes `TRUE()`.
 * - Operators bind as OpenFormula says (part 4, 5.5), which is also how the engine
 *   binds them: `-2^2` is 4 and `2^3^2` is 64. Only a second `%` needs brackets.
 * - Spaces go; a row of signs becomes at most two.
 *
 * Every fault of grammar is found here, so that the engine never has to refuse a
 * text without saying why. Never throws; takes time in proportion to the length.
 */
export function toEngine(formula: string, context: EngineContext): { readonly text: string } | FormulaFault {
  if (!isFormula(formula)) return { sentence: 'A formula begins with =.', start: 0, end: formula.length };
  if (formula.length > MAX_LENGTH) {
    return {
      sentence: `This formula has ${formula.length.toLocaleString('en')} characters; ${MAX_LENGTH.toLocaleString('en')} is the most. Work parts of it out in cells of their own.`,
      start: 0, end: formula.length,
    };
  }
  return new Translation(joinDecimals(tokenize(formula, context.names)), context).run();
}

/** Walks the tokens once, always knowing whether a value or an operator must come next. */
class Translation {
  private readonly out: string[] = ['='];
  private readonly frames: Frame[] = [];
  private frame: Frame;
  private at = 1;
  private wantsValue = true;
  private minuses = 0;
  private percents = 0;
  /** Where in the output the last value begins, without its signs. */
  private valueAt = 0;
  private fault: FormulaFault | undefined;

  constructor(private readonly tokens: readonly Token[], private readonly context: EngineContext) {
    this.frame = this.open('formula', tokens[0] ?? { kind: 'operator', text: '=', start: 0 });
  }

  run(): { readonly text: string } | FormulaFault {
    for (; this.at < this.tokens.length && this.fault === undefined; this.at += 1) this.take(this.token(this.at));
    if (this.fault === undefined) this.finish();
    return this.fault ?? { text: this.out.join('') };
  }

  private take(token: Token): void {
    switch (token.kind) {
      case 'space': return;
      case 'bad': return this.refuse(token, token.sentence ?? `${quoted(token.text)} has no meaning in a formula.`, lacksUnit(token));
      case 'operator': return this.operator(token);
      case 'separator': return this.separator(token);
      case 'bracket': return this.bracket(token);
      default: return this.wantsValue ? this.value(token) : this.missingOperator(token);
    }
  }

  private value(token: Token): void {
    switch (token.kind) {
      case 'number': return this.put({ text: String(token.value) });
      case 'unit': return this.unit(token);
      case 'string': return this.put({ text: engineString(token) });
      case 'truth': return this.put({ text: `${token.text.toUpperCase()}()` });
      case 'reference': return this.put(engineReference(token, this.context), token);
      case 'name': return this.put(engineNameOf(token, this.context), token);
      case 'error': return this.put(engineError(token), token);
      case 'function': return this.call(token);
      default: return this.refuse(token, `${quoted(token.text)} cannot stand here.`);
    }
  }

  private put(word: Word, token?: Token): void {
    if (isFault(word)) return this.refuse(token ?? this.token(this.at), word.sentence);
    this.sign();
    this.valueAt = this.out.length;
    this.out.push(word.text);
    this.valueDone(1);
  }

  private valueDone(depth: number): void {
    this.frame.empty = false;
    this.frame.deepest = Math.max(this.frame.deepest, depth);
    this.wantsValue = false;
    this.percents = 0;
  }

  /** One minus stays one; more than one become two, which still make a number of a text, or one. */
  private sign(): void {
    if (this.minuses > 0) this.out.push(this.minuses % 2 === 1 ? '-' : '--');
    this.minuses = 0;
  }

  private unit(token: Token): void {
    const decimal = decimalBefore(this.tokens, this.at);
    if (decimal !== undefined) return this.refuseReadings(decimal);
    const [part, second] = token.parts ?? [];
    if (part !== undefined && second === undefined && UNITS[part.unit].dimension === 'length' && this.following().text === '^') {
      return this.refuse({ ...token, text: `${token.text}^` }, `${quoted(`${token.text}^2`)} can be read two ways: write ${part.amount / (part.over ?? 1)} ${part.unit}2 for an area, or (${token.text})^2 for a square.`);
    }
    this.put({ text: engineUnit(token.parts ?? []) });
  }

  private operator(token: Token): void {
    const sign = engineSign(token.text);
    if (sign === ':') return this.refuse(token, this.noBlock());
    if (this.wantsValue) {
      if (sign !== '+' && sign !== '-') return this.missingValue(token);
      if (sign === '-') this.minuses += 1;
      this.frame.empty = false;
      return;
    }
    this.frame.operators += 1;
    if (sign !== '%') {
      this.out.push(sign);
      this.wantsValue = true;
      return;
    }
    this.percents += 1;
    if (this.percents > 1) {
      this.out[this.valueAt] = `(${this.out[this.valueAt]}`;
      this.out.push(')');
    }
    this.out.push('%');
  }

  /** What is wrong around a : that makes no block. */
  private noBlock(): string {
    const beyond = [this.previous(), this.following()].find(({ kind, text }) => kind === 'name' && /^[A-Za-z]{1,3}\d+$/.test(text));
    return beyond === undefined
      ? 'A : needs a cell on each side, as in A1:B9, or two columns or two rows, as in A:C or 3:5.'
      : `${quoted(beyond.text)} is no cell: ${LIMITS}.`;
  }

  private call(token: Token): void {
    const word = engineCall(token);
    if (isFault(word)) return this.refuse(token, word.sentence);
    while (this.token(this.at).text !== '(') this.at += 1;
    this.sign();
    this.out.push(word.text);
    this.frame = this.open('call', token);
  }

  private bracket(token: Token): void {
    switch (token.text) {
      case '(': case '{': {
        if (!this.wantsValue) return this.missingOperator(token);
        if (token.text === '{' && this.frames.some((frame) => frame.kind === 'list')) return this.refuse(token, 'A list in { } cannot hold another list.');
        this.sign();
        this.out.push(token.text);
        this.frame = this.open(token.text === '(' ? 'group' : 'list', token);
        return;
      }
      case '}': return this.frame.kind === 'list' ? this.close(token) : this.refuse(token, 'There is a } without its {.');
      default: return this.frame.kind === 'call' || this.frame.kind === 'group' ? this.close(token) : this.refuse(token, 'There is a ) without its (.');
    }
  }

  private open(kind: Frame['kind'], token: Token): Frame {
    if (this.frames.length > MAX_DEPTH) this.refuse(token, `More than ${MAX_DEPTH} brackets are open at once here: work a part out in a cell of its own.`);
    const frame: Frame = {
      kind, token, out: this.out.length - 1, empty: true, operators: 0, deepest: 0, most: 0, semicolon: false, cells: 0, width: 0,
    };
    this.frames.push(frame);
    this.wantsValue = true;
    return frame;
  }

  private close(token: Token): void {
    const { frame } = this;
    if (this.wantsValue && !(frame.kind === 'call' && frame.empty)) return this.missingValue(token);
    if (frame.kind === 'list' && !this.endRow(token)) return;
    if (frame.semicolon && frame.decimal !== undefined) return this.refuseReadings(frame.decimal);
    this.endArgument(token);
    this.frames.pop();
    this.frame = this.frames.at(-1) ?? frame;
    this.out.push(token.text);
    this.valueAt = frame.out;
    this.valueDone(frame.most + 1);
  }

  private separator(token: Token): void {
    const { frame } = this;
    if (frame.kind === 'formula' || frame.kind === 'group') {
      const decimal = decimalAround(this.tokens, this.at) ?? decimalBefore(this.tokens, this.at + 1);
      if (decimal !== undefined) {
        const readings = readingsOf(decimal);
        return this.refuse(decimal, `${quoted(decimal.text)} can be read two ways: write ${readings.join(' or ')}.`, insteadOf(decimal, readings));
      }
      return this.refuse(token, `${quoted(token.text)} parts arguments and can stand only inside a function’s brackets.`);
    }
    if (this.wantsValue && !(frame.kind === 'call' && frame.empty)) return this.missingValue(token);
    if (frame.kind === 'call') {
      if (token.text === '|') return this.refuse(token, 'A | parts the rows of a list in { }; arguments are parted by ; or a comma.');
      if (token.text === ';') frame.semicolon = true;
      else frame.decimal ??= decimalAround(this.tokens, this.at);
      this.out.push(',');
    } else {
      frame.cells += 1;
      if (token.text === '|' && !this.endRow(token, 0)) return;
      this.out.push(token.text === '|' ? '|' : ';');
    }
    this.endArgument(token);
    frame.empty = true;
    this.wantsValue = true;
  }

  /** All rows of a list must be of one length. */
  private endRow(token: Token, extra = 1): boolean {
    const { frame } = this;
    const cells = frame.cells + extra;
    if (frame.width !== 0 && frame.width !== cells) {
      this.refuse(token, 'The rows of a list in { } must have the same number of values: ; parts values and | parts rows.');
      return false;
    }
    frame.width = cells;
    frame.cells = 0;
    return true;
  }

  private endArgument(token: Token): void {
    const { frame } = this;
    frame.most = Math.max(frame.most, frame.operators + frame.deepest);
    frame.operators = 0;
    frame.deepest = 0;
    if (frame.most > MAX_TERMS) this.refuse(token, `More than ${MAX_TERMS} operators stand in one row here: use SUM, or work a part out in a cell of its own.`);
  }

  private finish(): void {
    const last = this.tokens.findLast((token) => token.kind !== 'space') ?? this.frame.token;
    if (this.frame.kind !== 'formula') {
      const { token, kind } = this.frame;
      const end = last.start + last.text.length;
      const closing = this.frames.slice(1).reverse().map((frame) => (frame.kind === 'list' ? '}' : ')')).join('');
      return this.refuse(token, `The bracket ${kind === 'call' ? `after ${quoted(token.text)}` : quoted(token.text)} is not closed: put a ${kind === 'list' ? '}' : ')'} where it ends.`,
        this.wantsValue ? [] : [{ start: end, end, text: closing }]);
    }
    if (this.tokens.every((token, i) => i === 0 || token.kind === 'space')) return this.refuse(last, 'Nothing stands after the =.');
    if (this.wantsValue) return this.refuse(last, `The formula stops after ${quoted(last.text)}: a figure, a cell or a name must follow.`);
    this.endArgument(last);
  }

  private missingValue(token: Token): void {
    this.refuse(token, `Before ${quoted(token.text)} a figure, a cell or a name is missing.`);
  }

  private missingOperator(token: Token): void {
    const before = this.previous();
    const pair = `${quoted(before.text)} and ${quoted(token.text)}`;
    if (before.kind === 'number' && token.kind === 'name') {
      return this.refuse(token, `${quoted(token.text)} after ${before.text} is no unit: write in, cm, mm, m, ft or yd, or put an operator between them.`);
    }
    if (before.kind === 'name' && token.kind === 'name') {
      return this.refuse(token, `No name ${quoted(`${before.text} ${token.text}`)} is known here; or an operator (+ - * /) is missing between ${pair}.`);
    }
    this.refuse(token, `An operator (+ - * /) is missing between ${pair}.`);
  }

  private previous(): Token {
    let at = this.at - 1;
    while (this.token(at).kind === 'space') at -= 1;
    return this.token(at);
  }

  private following(): Token {
    let at = this.at + 1;
    while (this.token(at).kind === 'space') at += 1;
    return this.token(at);
  }

  private token(at: number): Token {
    return this.tokens[at] ?? NOTHING;
  }

  private refuseReadings(piece: Piece): void {
    this.refuse(piece, twoReadings(piece), insteadOf(piece, [...readingsOf(piece), asTwo(piece)]));
  }

  private refuse(token: Piece, sentence: string, instead: readonly Instead[] = []): void {
    this.fault ??= { sentence, start: token.start, end: token.start + token.text.length, ...(instead.length > 0 && { instead }) };
  }
}

const NOTHING: Token = { kind: 'bracket', text: '', start: 0 };
