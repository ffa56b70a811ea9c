/** What can be completed at the caret of a formula, and which argument of which function is being typed. Pure. */
import { callAt, foldName, looksLikeCell, sheetInFormula, wordAt } from '../formula/index.ts';
import type { FunctionCard } from '../reckoning/protocol.ts';

/** The words that a formula in this workbook may use. */
export interface Words {
  readonly cards: readonly FunctionCard[];
  readonly names: readonly string[];
  readonly sheets: readonly string[];
}

export interface Choice {
  readonly kind: 'function' | 'name' | 'sheet';
  readonly text: string;
  readonly about: string;
  /** What stands in the formula when it is taken. */
  readonly insert: string;
}

export interface Completion {
  /** The part of the formula that a choice replaces. */
  readonly start: number;
  readonly end: number;
  readonly choices: readonly Choice[];
  /** The word is already one that can stand there, so Enter must not change it. */
  readonly whole: boolean;
}

const MOST = 40;

/** 0: is the word; 1: begins with it; 2: a part of it does; 3: holds it; -1: no match. */
function rank(text: string, word: string): number {
  const folded = foldName(text);
  if (folded.startsWith(word)) return folded === word ? 0 : 1;
  const at = folded.indexOf(word);
  if (at < 0) return -1;
  if (/[.\s]/.test(folded[at - 1]!)) return 2;
  return word.length >= 3 ? 3 : -1;
}

export function complete(formula: string, caret: number, words: Words): Completion | null {
  const at = wordAt(formula, caret, words.names);
  if (!at || at.text === '') return null;
  const word = foldName(at.text);
  const bracketFollows = /^\s*\(/.test(formula.slice(at.end));
  const all: Choice[] = [
    ...words.names.map((name): Choice => ({ kind: 'name', text: name, about: 'name', insert: name })),
    ...words.cards.map((card): Choice => ({ kind: 'function', text: card.name, about: card.about, insert: bracketFollows ? card.name : `${card.name}(` })),
    ...words.sheets.map((name): Choice => ({ kind: 'sheet', text: name, about: 'sheet', insert: `${sheetInFormula(name)}!` })),
  ];
  const choices = all
    .filter((choice) => !bracketFollows || choice.kind === 'function')
    .map((choice) => ({ choice, rank: rank(choice.text, word) }))
    .filter((each) => each.rank >= 0)
    .sort((a, b) => a.rank - b.rank)
    .slice(0, MOST)
    .map((each) => each.choice);
  if (!choices.length) return null;
  const named = choices.find((choice) => foldName(choice.text) === word);
  // Nothing is left to complete.
  if (named && choices.length === 1 && (named.kind === 'name' || bracketFollows)) return null;
  return { start: at.start, end: at.end, choices, whole: (named !== undefined && named.kind === 'name') || looksLikeCell(at.text) };
}

/** The formula and the caret after a choice is taken. */
export function take(formula: string, completion: Completion, choice: Choice): { readonly text: string; readonly caret: number } {
  const text = formula.slice(0, completion.start) + choice.insert + formula.slice(completion.end);
  return { text, caret: completion.start + choice.insert.length };
}

export interface Signature {
  readonly card: FunctionCard;
  /** The argument the caret is in; the last one when there are more than the card names. */
  readonly arg: number;
}

export function signatureAt(formula: string, caret: number, cards: readonly FunctionCard[]): Signature | null {
  const call = callAt(formula, caret);
  if (!call) return null;
  const name = call.name.toUpperCase();
  const card = cards.find((each) => each.name === name);
  return card ? { card, arg: argumentAt(card, call.arg) } : null;
}

/** Past the last argument come those again that may be repeated. */
function argumentAt({ args, repeats }: FunctionCard, place: number): number {
  if (place < args.length || repeats === 0) return Math.min(place, args.length - 1);
  return args.length - repeats + ((place - args.length) % repeats);
}
