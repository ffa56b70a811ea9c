/**
 * Which workbook a tab has open stands in its address, so that loading the page
 * again, or a bookmark, comes back to it. Going to another workbook loads the
 * page anew: nothing of the one before can stay behind on the screen.
 */
import type { Keeper } from '../keeping/index.ts';

/** What people and other pages may put there is not trusted: it only chooses among the workbooks that are here. */
export function bookAtAddress(): string | null {
  const [, id] = /^#([\w-]{1,80})$/.exec(location.hash) ?? [];
  return id ?? null;
}

export function addressOf(id: string): void {
  history.replaceState(null, '', `#${id}`);
  // Only from now on: by hand, by a bookmark, or by `goTo`.
  addEventListener('hashchange', () => location.reload());
}

export function goTo(id: string): void {
  if (location.hash === `#${id}`) location.reload();
  else location.hash = id;
}

/** The browser asks before it closes a page that still holds what is kept nowhere else. */
export function warnBeforeLeaving(keeper: Keeper): void {
  addEventListener('beforeunload', (event) => {
    const { state } = keeper;
    if (state.state !== 'kept' && state.waiting > 0) event.preventDefault();
  });
}
