/**
 * Ticks that are kept with the workbook. A tick stands by a cell and knows the
 * figures it was set for: when they are others, it no longer counts.
 */
import { cellName, sheetInFormula } from '../formula/index.ts';
import { exactText, inBase } from '../quantities/index.ts';
import type { Result } from '../reckoning/index.ts';
import { cellPointedAt, recordCalled, sheetById, type Book, type CellAddress, type Edit } from '../workbook/index.ts';

export type TickList = 'bought' | 'table';

/** `was`: the figures that it was set for, in words; only where they are others now. */
export type TickState = { readonly state: 'no' | 'yes' } | { readonly state: 'changed'; readonly was: string };

const NO_TICK: TickState = { state: 'no' };

/** As a record points at a cell. */
export function formulaOf(book: Book, { sheet, row, col }: CellAddress): string {
  return `=${sheetInFormula(sheetById(book, sheet)?.name ?? '')}!${cellName(row, col)}`;
}

export const cellKey = ({ sheet, row, col }: CellAddress): string => `${sheet} ${row} ${col}`;

/** Figures so that the same ones give the same text; digits that only sums make are left out. */
export function printOf(results: readonly Result[]): string {
  const figure = (value: number, unit: Parameters<typeof inBase>[1]): string => exactText(inBase(Number(value.toPrecision(11)), unit));
  return results.map((result) => {
    switch (result.kind) {
      case 'quantity': return figure(result.value, result.unit);
      case 'span': return `${figure(result.low, result.unit)}–${figure(result.high, result.unit)}`;
      case 'text': return result.text;
      case 'truth': return result.truth ? 'yes' : 'no';
      default: return '';
    }
  }).filter((text) => text !== '').join(', ');
}

/** Asks for the state of a tick by its cell and the figures that stand there now. */
export function ticksOf(book: Book, list: TickList): (cell: CellAddress, now: string) => TickState {
  const kept = new Map<string, string>();
  for (const { cell, was } of recordCalled(book, 'ticks', list)?.ticks ?? []) {
    const at = cellPointedAt(book, cell);
    if (at) kept.set(cellKey(at), was);
  }
  return (cell, now) => {
    const was = kept.get(cellKey(cell));
    return was === undefined ? NO_TICK : was === now ? { state: 'yes' } : { state: 'changed', was };
  };
}

/** Sets ticks for the figures of now, or (`now: null`) takes them off. Ticks whose cells are gone go with them. */
export function tickEdit(book: Book, list: TickList, changes: readonly { readonly cell: CellAddress; readonly now: string | null }[]): Edit {
  const changed = new Set(changes.map(({ cell }) => cellKey(cell)));
  const others = (recordCalled(book, 'ticks', list)?.ticks ?? []).filter(({ cell }) => {
    const at = cellPointedAt(book, cell);
    return at !== null && !changed.has(cellKey(at));
  });
  const ticks = [...others, ...changes.flatMap(({ cell, now }) => (now === null ? [] : [{ cell: formulaOf(book, cell), was: now }]))];
  return { do: 'setRecord', kind: 'ticks', id: list, data: ticks.length === 0 ? null : { ticks } };
}
