/**
 * What was worked out last is kept with the workbook, so that the next start
 * shows it at once. It counts only for just that edit, and the engine's first
 * answer takes its place, whatever it was.
 */
import type { Keeper, ResultStore } from '../keeping/index.ts';
import { readLast } from '../reckoning/index.ts';
import type { Desk } from './desk.ts';

/** More take longer to read than to work out. */
const MOST = 20_000;
/** Milliseconds without a new result. */
const QUIET = 1_500;

export async function showLastResults(desk: Desk, keeper: Keeper, store: ResultStore): Promise<void> {
  const at = keeper.at;
  if (!at) return;
  const last = readLast(await store.get(at));
  if (last && keeper.at?.seq === at.seq) desk.showLast(last);
}

export function keepLastResults(desk: Desk, keeper: Keeper, store: ResultStore): void {
  let quiet: ReturnType<typeof setTimeout> | undefined;
  const later = (): void => {
    clearTimeout(quiet);
    quiet = setTimeout(keep, QUIET);
  };
  const keep = (): void => {
    const at = keeper.at;
    if (desk.waiting || at?.book !== desk.book.id) later();
    else void store.put(at, desk.results.toKeep(MOST));
  };
  desk.addEventListener('results', later);
}
