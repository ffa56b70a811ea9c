/**
 * A comma parts arguments, and half the world writes it in numbers. Where it can
 * be either, nothing is guessed: a wrong number spoils cloth.
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

export function twoReadings({ text }: Piece): string {
  const comma = text.indexOf(',');
  const before = text.slice(0, comma);
  const after = text.slice(comma + 1);
  const one = after.includes('.') ? before + after : `${before}.${after}`;
  return `${text} can be read two ways: write ${one}, or ${before}; ${after} for two arguments.`;
}
