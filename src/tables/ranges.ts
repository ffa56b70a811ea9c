/** Two measures that are the ends of one (`bust_from`, `bust_to`) as one measure of ranges (`74–82 cm`). */
import { readQuantity } from '../quantities/index.ts';
import { magnitude } from './figure.ts';
import type { ChartCell, Measure } from './reading.ts';

/** A measure while it is put together. */
export interface Draft extends Measure {
  readonly end: { readonly of: string; readonly which: 'low' | 'high' } | null;
  readonly cells: readonly ChartCell[];
}

export const plainName = (name: string): string => name.toLowerCase().replace(/[_\s]+/g, ' ').trim();

/** One range of two ends; `null` when they do not make one. */
function joined(low: ChartCell, high: ChartCell): ChartCell | null {
  if (low.kind === 'none' && high.kind === 'none') return low;
  if (low.kind !== 'figure' || high.kind !== 'figure' || 'low' in low.value || 'low' in high.value) return null;
  if (low.value.unit !== high.value.unit || magnitude(low.value) > magnitude(high.value)) return null;
  const raw = `${low.raw.replace(/\s*\p{L}+$/u, '')}–${high.raw}`;
  const read = readQuantity(raw);
  return read.kind === 'span' ? { kind: 'figure', raw, value: read.span, at: low.at } : null;
}

/**
 * Joins every pair whose ends can all be read and whose name no other measure
 * has. Other pairs stay two measures, which the size functions understand too.
 */
export function joinRanges(drafts: readonly Draft[]): { readonly drafts: readonly Draft[]; readonly remarks: readonly string[] } {
  const names = new Set(drafts.map(({ name }) => plainName(name)));
  const remarks: string[] = [];
  const gone = new Set<Draft>();
  const made = new Map<Draft, Draft>();
  for (const low of drafts) {
    if (low.end?.which !== 'low') continue;
    const base = plainName(low.end.of);
    const highs = drafts.filter(({ end }) => end?.which === 'high' && plainName(end.of) === base);
    const lows = drafts.filter(({ end }) => end?.which === 'low' && plainName(end.of) === base);
    const high = highs[0];
    if (!high || highs.length > 1 || lows.length > 1 || names.has(base)) continue;
    const cells = low.cells.map((cell, s) => joined(cell, high.cells[s]!));
    if (!cells.every((cell) => cell !== null)) {
      remarks.push(`“${low.name}” and “${high.name}” stay two measures, because some of their ends do not make a range.`);
      continue;
    }
    made.set(low, { ...low, name: low.end.of, end: null, cells });
    gone.add(high);
    remarks.push(`“${low.name}” and “${high.name}” are put together as ranges of “${low.end.of}”.`);
  }
  return { drafts: drafts.filter((draft) => !gone.has(draft)).map((draft) => made.get(draft) ?? draft), remarks };
}
