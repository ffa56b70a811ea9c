/** Results written out to be kept until the next start, and read in again. */
import type { SheetId } from '../workbook/types.ts';
import { BLOCK_ROWS, type Column } from './block.ts';
import type { PinnedCell } from './pins.ts';
import { KIND, type SheetChanges } from './protocol.ts';

/** All of one sheet. */
export function sheetResults(sheet: SheetId, columns: readonly (Column | undefined)[], pinned: readonly PinnedCell[]): SheetChanges {
  const row: number[] = [];
  const col: number[] = [];
  const kind: number[] = [];
  const number: number[] = [];
  const unit: number[] = [];
  const high: number[] = [];
  const text: string[] = [];
  const at = new Map<string, number>();
  columns.forEach((column, c) => column?.forEach((block, blockAt) => {
    for (let place = 0; block && place < BLOCK_ROWS; place++) {
      const what = block.kind[place]!;
      if (what === KIND.empty) continue;
      const r = blockAt * BLOCK_ROWS + place;
      at.set(`${r} ${c}`, row.length);
      row.push(r);
      col.push(c);
      kind.push(what);
      number.push(block.number[place]!);
      unit.push(block.unit[place]!);
      high.push(what === KIND.span ? block.high?.[place] ?? NaN : NaN);
      if (what === KIND.text || what === KIND.error) text.push(block.text?.[place] ?? '');
    }
  }));
  const cautions = pinned.flatMap((cell) => {
    const place = at.get(`${cell.row} ${cell.col}`);
    return place === undefined ? [] : [{ at: place, cautions: cell.cautions }];
  });
  return {
    sheet, row: Uint32Array.from(row), col: Uint16Array.from(col), kind: Uint8Array.from(kind), number: Float64Array.from(number),
    unit: Uint8Array.from(unit), high: kind.includes(KIND.span) ? Float64Array.from(high) : null, text,
    ...(cautions.length > 0 && { cautions }),
  };
}

/** What storage gave, if it is a list of results; `null` for anything else. */
export function readLast(stored: unknown): readonly SheetChanges[] | null {
  return Array.isArray(stored) && stored.every(isSheet) ? stored : null;
}

function isSheet(given: unknown): given is SheetChanges {
  if (typeof given !== 'object' || given === null) return false;
  const { sheet, row, col, kind, number, unit, high, text, cautions = [] } = given as Partial<Record<keyof SheetChanges, unknown>>;
  if (!(row instanceof Uint32Array && col instanceof Uint16Array && kind instanceof Uint8Array && number instanceof Float64Array && unit instanceof Uint8Array)) return false;
  const words = kind.filter((what) => what === KIND.text || what === KIND.error).length;
  const spans = kind.includes(KIND.span);
  return typeof sheet === 'number'
    && [col, kind, number, unit].every(({ length }) => length === row.length)
    && (high === null ? !spans : high instanceof Float64Array && high.length === row.length)
    && Array.isArray(text) && text.length === words && text.every((each) => typeof each === 'string')
    && Array.isArray(cautions) && cautions.every(isPinned(row.length));
}

const isPinned = (count: number) => (given: unknown): boolean => {
  const { at, cautions } = given as { at?: unknown; cautions?: unknown };
  return typeof at === 'number' && at >= 0 && at < count && Array.isArray(cautions)
    && cautions.every((caution: unknown) => {
      const { by, sentence, print } = caution as Record<string, unknown>;
      return [by, sentence, print].every((each) => typeof each === 'string');
    });
};
