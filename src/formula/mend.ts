/** What would mend a formula, found in its text alone. */
import { isFault, UNITS } from '../quantities/index.ts';
import type { UnitCode } from '../quantities/index.ts';
import { joinDecimals } from './decimal-comma.ts';
import { toEngine } from './dialect.ts';
import { foldName } from './names.ts';
import { nearest } from './nearest.ts';
import { foldSheet } from './sheet-name.ts';
import { sheetInFormula } from './sheets.ts';
import { tokenize } from './tokens.ts';
import type { Instead, Token } from './types.ts';

/** The words that a formula of this workbook can hold. */
export interface Words {
  readonly names: readonly string[];
  readonly functions: readonly string[];
  readonly sheets: readonly string[];
}

export interface WordMend {
  /** As it stands there now. */
  readonly wrong: string;
  readonly right: string;
  readonly kind: 'name' | 'function' | 'sheet' | 'reading' | 'bracket';
  /** The whole formula, mended. */
  readonly formula: string;
}

/** For words that are not known, the nearest that is; for a fault of grammar that can only be meant in a few ways, each of them. */
export function wordMends(formula: string, words: Words): readonly WordMend[] {
  const tokens = joinDecimals(tokenize(formula, words.names));
  const unknown = tokens.flatMap((_, at) => {
    const found = unknownWord(tokens, at, words);
    return found ? [{ ...found, formula: replaced(formula, found) }] : [];
  });
  if (unknown.length > 0) return unknown.map(({ start, end, text, kind, formula: mended }) => ({ wrong: formula.slice(start, end), right: text, kind, formula: mended }));
  const sheets = words.sheets.map((name, id) => ({ id, name }));
  const translated = toEngine(formula, { sheets, names: words.names, ownSheet: 0 });
  if (!isFault(translated)) return [];
  return (translated.instead ?? []).map((instead) => ({
    wrong: formula.slice(instead.start, instead.end), right: instead.text,
    kind: instead.start === instead.end ? 'bracket' : 'reading', formula: replaced(formula, instead),
  }));
}

function replaced(formula: string, { start, end, text }: Instead): string {
  return formula.slice(0, start) + text + formula.slice(end);
}

function unknownWord(tokens: readonly Token[], at: number, { names, functions, sheets }: Words): (Instead & { readonly kind: WordMend['kind'] }) | undefined {
  const token = tokens[at]!;
  const end = token.start + token.text.length;
  switch (token.kind) {
    case 'function': {
      if (functions.length === 0 || functions.includes(token.text.toUpperCase())) return undefined;
      const near = nearest(token.text, functions);
      return near === undefined ? undefined : { start: token.start, end, text: near, kind: 'function' };
    }
    case 'name': {
      if (tokens[at - 2]?.kind === 'name' && tokens[at - 1]?.kind === 'space') return undefined;
      const last = lastOfWords(tokens, at);
      const stop = last.start + last.text.length;
      const written = tokens.filter(({ start }) => start >= token.start && start < stop).map(({ text }) => text).join('');
      if (names.some((name) => foldName(name) === foldName(written))) return undefined;
      const near = nearest(written, names);
      return near === undefined ? undefined : { start: token.start, end: stop, text: near, kind: 'name' };
    }
    case 'reference': {
      const sheet = token.reference?.sheet;
      if (sheet === undefined || sheets.some((name) => foldSheet(name) === foldSheet(sheet))) return undefined;
      const near = nearest(sheet, sheets);
      const mark = token.text.lastIndexOf('!');
      return near === undefined || mark < 0 ? undefined : { start: token.start, end: token.start + mark, text: sheetInFormula(near), kind: 'sheet' };
    }
    default: return undefined;
  }
}

/** The last of the words that stand in a row: a name of several words that is not known is several tokens. */
function lastOfWords(tokens: readonly Token[], first: number): Token {
  let at = first;
  while (tokens[at + 1]?.kind === 'space' && tokens[at + 2]?.kind === 'name') at += 2;
  return tokens[at]!;
}

/** A figure without a unit, by its place in the formula; what the engine is given besides has no place. */
export interface PlainFigure {
  readonly token: Token | null;
  readonly value: number;
}

/**
 * Every plain number that the engine is given of a formula, in order. Most stand
 * there themselves; a third of a yard and a quote in a text bring others.
 */
export function figuresIn(formula: string, names: readonly string[] = []): readonly PlainFigure[] {
  return joinDecimals(tokenize(formula, names)).flatMap((token): readonly PlainFigure[] => {
    switch (token.kind) {
      case 'number': return [{ token, value: token.value ?? NaN }];
      case 'unit': return (token.parts ?? []).flatMap(({ over }) => (over === undefined ? [] : [{ token: null, value: over }]));
      case 'string': return [...token.text.slice(1, -1).replaceAll('""', '"')].flatMap((each) => (each === '"' ? [{ token: null, value: 34 }] : each === '\\' ? [{ token: null, value: 92 }] : []));
      default: return [];
    }
  });
}

/** The formula with a unit after some of its figures; `null` when they are not the ones meant. */
export function withUnits(formula: string, figures: readonly number[], values: readonly number[], unit: UnitCode, names: readonly string[] = []): { readonly formula: string; readonly written: readonly string[] } | null {
  const all = figuresIn(formula, names);
  const chosen = figures.map((at) => all[at]);
  if (chosen.some((figure, i) => !figure?.token || figure.value !== values[i])) return null;
  const tokens = chosen.map((figure) => figure!.token!);
  const mended = [...tokens].sort((a, b) => b.start - a.start).reduce((text, token) => {
    const end = token.start + token.text.length;
    return `${text.slice(0, end)}${unit === 'deg' ? '' : ' '}${UNITS[unit].sign}${text.slice(end)}`;
  }, formula);
  return { formula: mended, written: tokens.map(({ text }) => text) };
}
