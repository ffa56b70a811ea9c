/**
 * A comma parts arguments, and half the world writes it in numbers. It is a
 * decimal comma where it can be nothing else: outside a function's brackets, and
 * inside them where a `;` parts the arguments. Where it can be either, nothing
 * is guessed: a wrong number spoils cloth.
 */
import type { Token } from './types.ts';

/** A stretch of the formula. */
export type Piece = Pick<Token, 'text' | 'start'>;

const isWhole = (token: Token | undefined): token is Token => token?.kind === 'number' && /^\d+$/.test(token.text);

/** The `5,5 cm` that ends with the figure at a place: a bare number, a comma and a figure with a unit, close together. */
export function decimalBefore(tokens: readonly Token[], at: number): Piece | undefined {
  const [number, comma, figure] = tokens.slice(Math.max(0, at - 2), at + 1);
  if (!isWhole(number) || comma?.text !== ',' || figure === undefined) return undefined;
  // `5,2 1/4 in` and `5,½ in` have one reading only.
  if (!/^\d+(?:\.\d+)?(?![\d./⁄\s]*[\d½⅓⅔¼¾⅛⅜⅝⅞])/.test(figure.text)) return undefined;
  return { text: `${number.text},${figure.text}`, start: number.start };
}

/** The `2,5` around the comma at a place: two bare numbers close together. */
export function decimalAround(tokens: readonly Token[], at: number): Piece | undefined {
  const [before, comma, after] = tokens.slice(at - 1, at + 2);
  if (!isWhole(before) || comma?.text !== ',' || !isWhole(after)) return undefined;
  return { text: `${before.text},${after.text}`, start: before.start };
}

/** The comma at a place, if it may stand in a number. */
function pieceAt(tokens: readonly Token[], comma: number): Piece | undefined {
  return decimalAround(tokens, comma) ?? (tokens[comma + 1]?.kind === 'unit' ? decimalBefore(tokens, comma + 1) : undefined);
}

/** `1,234` may be one and a bit, or more than a thousand. */
const mayBeThousands = ({ text }: Piece): boolean => /^[1-9]\d{0,2},\d{3}(?!\d)/.test(text);

/** What can stand instead of a piece that can be read in two ways. */
export function readingsOf(piece: Piece): readonly string[] {
  const { text } = piece;
  const comma = text.indexOf(',');
  const [before, after] = [text.slice(0, comma), text.slice(comma + 1)];
  const one = after.includes('.') || mayBeThousands(piece) ? [before + after] : [];
  return [...(after.includes('.') ? [] : [`${before}.${after}`]), ...one];
}

export function twoReadings(piece: Piece): string {
  const { before, after } = split(piece);
  return `${piece.text} can be read two ways: write ${readingsOf(piece)[0]}, or ${before}; ${after} for two arguments.`;
}

/** As two arguments of a function. */
export function asTwo(piece: Piece): string {
  const { before, after } = split(piece);
  return `${before}; ${after}`;
}

function split({ text }: Piece): { readonly before: string; readonly after: string } {
  const comma = text.indexOf(',');
  return { before: text.slice(0, comma), after: text.slice(comma + 1) };
}

/** What commas between figures may be in one pair of brackets, or outside of all. */
export interface CommaFrame {
  /** The function's name, an opening bracket, or nothing outside of all brackets. */
  readonly opener: Token | undefined;
  readonly kind: 'sum' | 'call' | 'list';
  /** Commas that may stand in a number, by their place among the tokens. */
  readonly maybe: number[];
  /** All that part arguments. */
  readonly separators: number[];
  semicolon: boolean;
}

/** Looks through a formula, finished or not. */
export function commaFrames(tokens: readonly Token[]): readonly CommaFrame[] {
  const found: CommaFrame[] = [];
  const open: CommaFrame[] = [];
  const enter = (opener: Token | undefined, kind: CommaFrame['kind']): void => {
    const frame: CommaFrame = { opener, kind, maybe: [], separators: [], semicolon: false };
    found.push(frame);
    open.push(frame);
  };
  enter(undefined, 'sum');
  let called: Token | undefined;
  for (const [at, token] of tokens.entries()) {
    const frame = open.at(-1)!;
    if (token.kind === 'bracket') {
      if (token.text === '(') enter(called ?? token, called === undefined ? 'sum' : 'call');
      else if (token.text === '{') enter(token, 'list');
      else if (open.length > 1) open.pop();
    } else if (token.kind === 'separator') {
      frame.separators.push(at);
      if (token.text === ';') frame.semicolon = true;
      else if (token.text === ',' && pieceAt(tokens, at)) frame.maybe.push(at);
    }
    if (token.kind !== 'space') called = token.kind === 'function' ? token : undefined;
  }
  return found;
}

/** The commas of a frame that can be read as decimal ones: neither `1,2,3`, which has no reading, nor `1,234`, which has two. */
export function decimalCommas(tokens: readonly Token[], { maybe }: CommaFrame): readonly number[] {
  return maybe.filter((at) => !maybe.includes(at - 2) && !maybe.includes(at + 2) && !mayBeThousands(pieceAt(tokens, at)!)
    && /^\d+(?![.\d])/.test(tokens[at + 1]!.text));
}

/** The tokens with the figures whose comma can only be a decimal one as one token each, its text as it was typed. */
export function joinDecimals(tokens: readonly Token[]): readonly Token[] {
  if (!tokens.some(({ kind, text }) => kind === 'separator' && text === ',')) return tokens;
  const commas = commaFrames(tokens).filter(({ kind, semicolon }) => kind === 'sum' || (kind === 'call' && semicolon)).flatMap((frame) => decimalCommas(tokens, frame));
  return commas.length === 0 ? tokens : joinAt(tokens, new Set(commas));
}

export function joinAt(tokens: readonly Token[], commas: ReadonlySet<number>): readonly Token[] {
  const joined: Token[] = [];
  for (let at = 0; at < tokens.length; at += 1) {
    const token = tokens[at]!;
    if (!commas.has(at + 1)) {
      joined.push(token);
      continue;
    }
    const figure = tokens[at + 2]!;
    const digits = /^\d+/.exec(figure.text)![0];
    const amount = Number(`${token.text}.${digits}`);
    const text = `${token.text},${figure.text}`;
    joined.push(figure.kind === 'unit'
      ? { ...figure, text, start: token.start, parts: figure.parts!.map((part, i) => (i === 0 ? { ...part, amount } : part)) }
      : { kind: 'number', text, start: token.start, value: amount });
    at += 2;
  }
  return joined;
}
