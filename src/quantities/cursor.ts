/** A place in a text that moves on as it is read, and the characters that reading knows. */
export interface Cursor {
  readonly text: string;
  at: number;
}

type Character = string | undefined;

export const isDigit = (c: Character): boolean => c !== undefined && c >= '0' && c <= '9';
export const isLetter = (c: Character): boolean => c !== undefined && /\p{L}/u.test(c);
/** Any space, the non-breaking and the thin ones too. */
export const isSpace = (c: Character): boolean => c !== undefined && /\s/.test(c);
export const isSlash = (c: Character): boolean => c === '/' || c === '⁄' || c === '∕';
export const isHyphen = (c: Character): boolean => c === '-' || c === '‐' || c === '‑';
/** Dashes part the ends of a span; before a figure they are what word processors make of a minus. */
export const isDash = (c: Character): boolean => c === '–' || c === '—' || c === '‒' || c === '−';

export function skipSpaces(c: Cursor): void {
  while (isSpace(c.text[c.at])) c.at += 1;
}
