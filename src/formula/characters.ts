/** Which characters can stand where. Plain ASCII goes the quick way: a fill or an inserted row reads 100,000 formulas. */

const LETTER = /\p{L}/u;
const WORD = /[\p{L}\p{M}\p{Nd}]/u;

export function isDigit(code: number): boolean {
  return code >= 48 && code <= 57;
}

/** A to Z, either case. */
export function isLatin(code: number): boolean {
  return (code >= 97 && code <= 122) || (code >= 65 && code <= 90);
}

/** All that a keyboard, a web page or a word processor puts for a space. */
export function isSpace(code: number): boolean {
  if (code < 128) return code === 32 || (code >= 9 && code <= 13);
  return code === 0xa0 || (code >= 0x2000 && code <= 0x200a) || code === 0x202f || code === 0x205f
    || code === 0x2028 || code === 0x2029 || code === 0x3000 || code === 0xfeff || code === 0x1680;
}

export function skipSpaces(text: string, at: number): number {
  let p = at;
  while (p < text.length && isSpace(text.charCodeAt(p))) p += 1;
  return p;
}

function characterAt(text: string, at: number): string {
  return String.fromCodePoint(text.codePointAt(at) ?? 0);
}

/** Length in UTF-16 units of the character at a place. */
export function widthAt(text: string, at: number): number {
  return (text.codePointAt(at) ?? 0) > 0xffff ? 2 : 1;
}

/** A letter of any script, or `_`. */
export function startsWord(text: string, at: number): boolean {
  const code = text.charCodeAt(at);
  if (code < 128) return isLatin(code) || code === 95;
  return at < text.length && LETTER.test(characterAt(text, at));
}

/** A letter, an accent, a digit, `_` or `.`. */
export function insideWord(text: string, at: number): boolean {
  const code = text.charCodeAt(at);
  if (code < 128) return isLatin(code) || isDigit(code) || code === 95 || code === 46;
  return at < text.length && WORD.test(characterAt(text, at));
}

/** Where the run of word characters that begins at `at` ends; `at` itself when there is none. */
export function wordEnd(text: string, at: number): number {
  let p = at;
  while (p < text.length && insideWord(text, p)) p += text.charCodeAt(p) < 128 ? 1 : widthAt(text, p);
  return p;
}

/** Where the digits that begin at `at` end. */
export function digitsEnd(text: string, at: number): number {
  let p = at;
  while (isDigit(text.charCodeAt(p))) p += 1;
  return p;
}

/** A piece of a formula as it is quoted in a sentence. */
export function quoted(piece: string): string {
  const plain = piece.trim().replace(/\s+/g, ' ');
  return `‘${plain.length > 40 ? `${plain.slice(0, 39)}…` : plain}’`;
}
