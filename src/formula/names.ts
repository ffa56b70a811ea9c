import { looksLikeCell } from './address.ts';
import { skipSpaces, startsWord, wordEnd } from './characters.ts';

/** Characters a name may have. */
const MAX_NAME = 64;

/** One spelling for all ways to write a name: small letters, single spaces. */
export function foldName(name: string): string {
  return name.normalize('NFC').trim().replace(/\s+/g, ' ').toLowerCase();
}

/** True when two texts are the same name. */
export function sameName(a: string, b: string): boolean {
  return foldName(a) === foldName(b);
}

/**
 * Why a text cannot be a name for cells, or `null`. Says nothing about names
 * already taken. A name is one or more words of letters, digits, `_` and full
 * stops; no word of it may look like a cell, so that a formula's references can
 * be told apart without knowing the names.
 */
export function nameShapeFault(name: string): string | null {
  const plain = name.trim();
  if (plain === '') return 'A name needs at least one letter.';
  if (plain.length > MAX_NAME) return `A name can have at most ${MAX_NAME} characters; this one has ${plain.length}.`;
  if (!startsWord(plain, 0)) return 'A name begins with a letter, such as ‘bust’ or ‘full bust’.';
  const words = plain.split(/\s+/);
  for (const word of words) {
    const end = wordEnd(word, 0);
    if (end < word.length) {
      return `A name has only letters, digits, spaces, full stops and _; take ‘${String.fromCodePoint(word.codePointAt(end) ?? 0)}’ out.`;
    }
    if (looksLikeCell(word)) return `‘${word}’ is the name of a cell; put another word, or a _ between the letters and the digits.`;
  }
  if (words.length === 1 && /^(?:true|false)$/i.test(plain)) return `‘${plain}’ has a meaning of its own in formulas; choose another name.`;
  return null;
}

/**
 * The name under which the engine knows a name; the same for every spelling of
 * one name. `N_`, then small letters a to z and digits as they are and every
 * other character as `_hex_`: ‘full bust’ is `N_full_20_bust`. The `_` in second
 * place keeps it from ever looking like a cell (HyperFormula's rule for named
 * expressions: a letter or `_` first, then letters, digits, `_` and `.`, and
 * neither `A1` nor `R1C1`).
 */
export function engineName(name: string): string {
  let text = 'N_';
  for (const character of foldName(name)) {
    text += /[a-z0-9]/.test(character) ? character : `_${(character.codePointAt(0) ?? 0).toString(16)}_`;
  }
  return text;
}

/** Turns `engineName` round; gives the folded name, or `undefined` for a text that is no such name. */
export function nameFromEngine(text: string): string | undefined {
  if (!/^N_(?:[a-z0-9]|_[0-9a-f]{1,6}_)+$/i.test(text)) return undefined;
  const name = text.slice(2).toLowerCase().replace(/_([0-9a-f]+)_/g, (_, hex: string) => {
    const code = parseInt(hex, 16);
    return code <= 0x10ffff ? String.fromCodePoint(code) : '_';
  });
  return engineName(name).toLowerCase() === text.toLowerCase() ? name : undefined;
}

/** Names by their first word, for the longest match. */
export interface NameIndex {
  readonly names: ReadonlySet<string>;
  /** The most words that a name beginning with this word has. */
  readonly words: ReadonlyMap<string, number>;
}

const indexes = new WeakMap<readonly string[], NameIndex>();

export function nameIndex(names: readonly string[]): NameIndex {
  const known = indexes.get(names);
  if (known !== undefined) return known;
  const folded = names.map(foldName);
  const words = new Map<string, number>();
  for (const name of folded) {
    const [first = '', ...rest] = name.split(' ');
    words.set(first, Math.max(words.get(first) ?? 0, rest.length + 1));
  }
  const index = { names: new Set(folded), words };
  indexes.set(names, index);
  return index;
}

/** Where the longest known name that begins with the word from `at` to `end` ends; `end` when only the word itself stands there. */
export function longestName(text: string, at: number, end: number, index: NameIndex): number {
  const most = index.words.get(foldName(text.slice(at, end)));
  if (most === undefined) return end;
  let found = end;
  let p = end;
  for (let n = 1; n < most; n += 1) {
    const next = skipSpaces(text, p);
    const stop = wordEnd(text, next);
    if (next === p || stop === next) break;
    p = stop;
    if (index.names.has(foldName(text.slice(at, p)))) found = p;
  }
  return found;
}
