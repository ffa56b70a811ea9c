/**
 * The results of a workbook as they were last, so that the next start can show
 * them before the engine is up. Worth nothing but time: what cannot be written
 * or read is done without.
 */
import type { Database } from './database.ts';

/** A workbook as it is after an edit. */
export interface BookAt {
  readonly book: string;
  readonly seq: number;
}

export class ResultStore {
  readonly #database: Database;

  constructor(database: Database) {
    this.#database = database;
  }

  /** In the place of what was kept of that workbook before. `null`: nothing is. Never rejects. */
  async put({ book, seq }: BookAt, results: object | null): Promise<void> {
    await this.#database.write(['results'], async (transaction) => {
      const store = transaction.objectStore('results');
      await (results ? store.put({ book, seq, results }) : store.delete(book));
    }).catch(() => undefined);
  }

  /** `null` when there are none of just that edit. Never rejects. */
  async get({ book, seq }: BookAt): Promise<unknown> {
    const stored = await this.#database.read(['results'], (transaction) => transaction.objectStore('results').get(book)).catch(() => undefined);
    return stored?.seq === seq ? stored.results : null;
  }
}
