/** Asks the browser not to clear this page's storage when it runs short. */

/** `refused`: it may still be cleared when the device runs short. `unknown`: the browser cannot be asked. */
export type Persistence = 'granted' | 'refused' | 'unknown';

let asked: Promise<Persistence> | null = null;

/** To be called after the first real edit. Asks once, however often it is called. */
export function askToPersist(storage: StorageManager | undefined = globalThis.navigator?.storage): Promise<Persistence> {
  return asked ??= ask(storage);
}

async function ask(storage: StorageManager | undefined): Promise<Persistence> {
  if (typeof storage?.persist !== 'function') return 'unknown';
  try {
    return await storage.persisted() || await storage.persist() ? 'granted' : 'refused';
  } catch {
    return 'unknown';
  }
}
