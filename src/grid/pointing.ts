/** Where a formula being typed can take a reference to a cell that the user points at. Pure. */
import { areaName, isFormula, tokenize } from '../formula/index.ts';
import { areaOf } from './select.ts';
import type { Selection } from './view.ts';

/** The part of the text that a reference replaces; empty where it goes in between. */
export interface Slot {
  readonly start: number;
  readonly end: number;
}

/**
 * After a sign, an opening bracket or a separator a reference may stand; one
 * that was just pointed at (`last`) gives way to the next as long as the caret
 * stays behind it.
 */
export function slotAt(text: string, start: number, end: number, names: readonly string[], last: Slot | null): Slot | null {
  if (!isFormula(text)) return null;
  if (last && start === last.end && end === last.end && last.end > last.start) return last;
  const before = tokenize(text, names).filter((token) => token.kind !== 'space' && token.start < start);
  const token = before.at(-1);
  if (!token || token.start + token.text.length > start) return null;
  const opens = token.kind === 'separator' || (token.kind === 'operator' && token.text !== '%') || (token.kind === 'bracket' && /[({]$/.test(token.text));
  if (!opens) return null;
  // A word right behind the caret would run into the reference.
  return end < text.length && /^[\p{L}\p{N}$.']/u.test(text.slice(end)) ? null : { start, end };
}

/** How the pointed cells are written: one cell alone, or a block. */
export const pointedName = (selection: Selection): string => areaName(areaOf(selection));
