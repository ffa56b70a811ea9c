/** What stands at the caret while a formula is being typed; the formula may be unfinished. */
import { boxOf } from './address.ts';
import { joinDecimals } from './decimal-comma.ts';
import { foldName } from './names.ts';
import { tokenize } from './tokens.ts';
import type { Box, Token } from './types.ts';

export interface Call {
  readonly name: string;
  /** Which argument the caret is in, from 0. */
  readonly arg: number;
  /** Where the function's name begins. */
  readonly start: number;
}

/** The innermost call whose brackets the caret is between, or `null`. */
export function callAt(formula: string, caret: number): Call | null {
  const open: (Call | null)[] = [];
  let called: Token | undefined;
  for (const token of joinDecimals(tokenize(formula))) {
    if (token.start + token.text.length > caret) break;
    if (token.kind === 'bracket') {
      if (token.text === '(') open.push(called === undefined ? null : { name: called.text, arg: 0, start: called.start });
      else if (token.text === '{') open.push(null);
      else open.pop();
    } else if (token.kind === 'separator') {
      const call = open.pop();
      if (call !== undefined) open.push(call && { ...call, arg: call.arg + 1 });
    }
    if (token.kind !== 'space') called = token.kind === 'function' ? token : undefined;
  }
  return open.findLast((call) => call !== null) ?? null;
}

export interface WordAtCaret {
  /** What is typed of it before the caret. */
  readonly text: string;
  readonly start: number;
  /** Where the whole word ends, so that a completion can replace it. */
  readonly end: number;
}

/**
 * The word being typed at the caret, for completion; `null` where no function
 * and no name can stand, such as inside a text or after a figure. With `names`,
 * goes back over the words before it that begin one of these.
 */
export function wordAt(formula: string, caret: number, names: readonly string[] = []): WordAtCaret | null {
  const tokens = tokenize(formula, names);
  const at = tokens.findIndex((token) => token.start < caret && caret <= token.start + token.text.length);
  const token = tokens[at];
  if (token === undefined || !(token.kind === 'name' || token.kind === 'function' || token.kind === 'truth')) return null;
  const folded = names.map(foldName);
  let first = at;
  for (let i = at; isWord(tokens[i]); i -= 2) {
    const typed = foldName(formula.slice(tokens[i]?.start, caret));
    if (i < at && folded.some((name) => name.startsWith(typed))) first = i;
    if (tokens[i - 1]?.kind !== 'space') break;
  }
  let before = first - 1;
  while (tokens[before]?.kind === 'space') before -= 1;
  if (!leavesRoom(tokens[before])) return null;
  const start = tokens[first]?.start ?? token.start;
  return { text: formula.slice(start, caret), start, end: token.start + token.text.length };
}

function isWord(token: Token | undefined): boolean {
  return token !== undefined && (token.kind === 'name' || token.kind === 'function' || token.kind === 'number');
}

/** True when a value can follow. */
function leavesRoom(token: Token | undefined): boolean {
  return token !== undefined && (token.kind === 'separator' || (token.kind === 'operator' && token.text !== '%')
    || (token.kind === 'bracket' && (token.text === '(' || token.text === '{')));
}

export interface FormulaReference {
  readonly text: string;
  readonly start: number;
  /** As written, without quotes; not there for the formula's own sheet. */
  readonly sheet?: string;
  readonly area: Box;
}

/** Every reference, in the order written. */
export function referencesIn(formula: string, names: readonly string[] = []): FormulaReference[] {
  return tokenize(formula, names).flatMap(({ text, start, reference }) => {
    if (reference === undefined) return [];
    const area = boxOf(reference);
    return [reference.sheet === undefined ? { text, start, area } : { text, start, sheet: reference.sheet, area }];
  });
}
