/** What can stand in a formula instead of what cannot be read. */
import type { Piece } from './decimal-comma.ts';
import type { Instead, Token } from './types.ts';

export function insteadOf({ start, text }: Piece, texts: readonly string[]): readonly Instead[] {
  return texts.map((each) => ({ start, end: start + text.length, text: each }));
}

/** `2 1/4` is a figure of the tape that only lacks its unit. */
export function lacksUnit(token: Token): readonly Instead[] {
  return /^\d+\s+\d+\/(?:2|4|8|16|32|64)$/.test(token.text) ? insteadOf(token, [`${token.text} in`]) : [];
}
