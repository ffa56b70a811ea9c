/** One tab writes a workbook; the others read it and take over in turn. */

/**
 * `writing`: this tab alone may write. `reading`: another tab does; `taken` is
 * called when it is this one's turn. `unguarded`: the browser has no locks (or
 * refused), so nobody can tell; the journal turns the second writer away.
 */
export interface Claim {
  readonly mode: 'writing' | 'reading' | 'unguarded';
  /** Lets the next tab have it, or leaves the queue. Ends when that is done. */
  release(): Promise<void>;
}

/**
 * Claims a workbook.
 *
 * @param taken called once when a tab that was told `reading` has become the
 *   one to write. It must load the workbook again before it writes anything.
 */
export async function claim(bookId: string, taken: () => void, locks: LockManager | undefined = globalThis.navigator?.locks): Promise<Claim> {
  if (!locks) return UNGUARDED;
  const name = `tape-and-tally workbook ${bookId}`;
  return new Promise((resolve) => {
    const lock = new Hold();
    const ended = locks.request(name, { ifAvailable: true }, (free) => {
      if (!free) return resolve(queue(name, taken, locks));
      resolve({ mode: 'writing', release: () => lock.end(ended) });
      return lock.held;
    });
    ended.catch(() => resolve(UNGUARDED));
  });
}

const UNGUARDED: Claim = { mode: 'unguarded', release: async () => undefined };

function queue(name: string, taken: () => void, locks: LockManager): Claim {
  const lock = new Hold();
  const left = new AbortController();
  const ended = locks.request(name, { signal: left.signal }, () => {
    taken();
    return lock.held;
  });
  ended.catch(() => undefined);
  return {
    mode: 'reading',
    release: () => {
      // Too late to leave the queue when it has come to its end; then it lets go.
      left.abort();
      return lock.end(ended);
    },
  };
}

/** A lock is held until a promise ends. */
class Hold {
  #letGo!: () => void;
  readonly held = new Promise<void>((resolve) => { this.#letGo = resolve; });

  /** @param ended ends when the lock manager has taken the lock back, or never gave it. */
  end(ended: Promise<unknown>): Promise<void> {
    this.#letGo();
    return ended.then(() => undefined, () => undefined);
  }
}
