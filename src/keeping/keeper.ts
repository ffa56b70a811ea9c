/**
 * Keeps the open workbook: every edit into the journal in the order in which it
 * was made, a snapshot now and then. The state tells the truth at any moment.
 */
import { writeBook, type Book, type Edit, type Step } from '../workbook/index.ts';
import type { Database, JournalEntry, SetAside, ShelfCard } from './database.ts';
import { readAside, readStored } from './journal.ts';
import { makeAgain, replay } from './replay.ts';
import type { BookAt } from './result-store.ts';
import { readSteps } from './step-store.ts';
import { KeepingTrouble, type Why } from './trouble.ts';
import { Writer, type Kept, type WriterOptions } from './writer.ts';

/** `at`: ISO time at which the last edit was kept, `null` before the first. `waiting`: edits not kept yet. */
export type KeepState =
  | { readonly state: 'kept'; readonly at: string | null }
  | { readonly state: 'keeping'; readonly waiting: number }
  | { readonly state: 'not kept'; readonly why: Why; readonly sentence: string; readonly waiting: number };

export interface Loaded {
  readonly book: Book;
  /** What could not be read or made again, one sentence each. */
  readonly problems: readonly string[];
}

export type AsideFound = SetAside & { readonly key: number | null };

export type KeeperOptions = Partial<WriterOptions>;

const USUAL: WriterOptions = {
  snapshotEdits: 200, snapshotQuiet: 30_000, slow: 10_000, retry: [250, 30_000],
  whenIdle: (work) => {
    if (typeof requestIdleCallback === 'function') requestIdleCallback(work, { timeout: 5_000 });
    else setTimeout(work);
  },
};

/** Says `state` whenever it may have changed. */
export class Keeper extends EventTarget {
  readonly #database: Database;
  readonly #writer: Writer;
  #kept: Kept | null = null;
  /** The last edit of the workbook as it was loaded; `null` when not all of it could be made again. */
  #whole: { readonly id: string; readonly seq: number } | null = null;

  constructor(database: Database, options: KeeperOptions = {}) {
    super();
    this.#database = database;
    this.#writer = new Writer(database, { ...USUAL, ...options }, () => this.dispatchEvent(new Event('state')));
    database.addEventListener('blocked', () => this.#writer.say(new KeepingTrouble('blocked')));
    database.addEventListener('opened', () => this.#writer.say(null));
  }

  get state(): KeepState {
    const { trouble, waiting, keptAt } = this.#writer;
    if (trouble) return { state: 'not kept', why: trouble.why, sentence: trouble.sentence, waiting };
    return waiting > 0 ? { state: 'keeping', waiting } : { state: 'kept', at: keptAt };
  }

  /** The open workbook and its last edit, when all of it is on the disk. */
  get at(): BookAt | null {
    const kept = this.#kept;
    return kept && !kept.whole && kept.stored === kept.seq && this.state.state === 'kept' ? { book: kept.id, seq: kept.seq } : null;
  }

  /**
   * The stored workbook, the one asked for or the one changed last, and from
   * now on the one that is kept; `null` when there is none. Edits of it that
   * still wait, because another tab wrote meanwhile, are made to it again.
   *
   * @throws {KeepingTrouble} when nothing can be read just now; nothing was changed.
   */
  async load(id?: string): Promise<Loaded | null> {
    await this.#writer.halt();
    try {
      const stored = await readStored(this.#database, id);
      if (!stored) return null;
      const { book, seq, problems, left, damaged } = replay(stored.id, stored);
      const kept: Kept = {
        id: stored.id, book, seq, stored: stored.card?.seq ?? null, journaled: stored.entries.length, whole: false, aside: null,
      };
      const again = this.#putOnTop(kept, stored.card);
      const all = [...problems, ...again.problems];
      if (all.length > 0) {
        // What is on the disk stays as it is until the whole workbook can take its place.
        kept.whole = true;
        kept.aside = { book: kept.id, problems: all, json: damaged ?? again.replaced, entries: [...left, ...again.left] };
      }
      this.#kept = kept;
      this.#whole = all.length > 0 ? null : { id: kept.id, seq: kept.seq };
      this.#writer.keptAt = stored.card?.changedAt ?? null;
      this.#writer.say(null);
      return { book: kept.book, problems: all };
    } finally {
      this.#writer.resume();
    }
  }

  /** Starts to keep a workbook that is not stored yet, and ends when it is. */
  begin(book: Book): Promise<void> {
    return this.#writer.add(this.#fresh(book), null);
  }

  /**
   * Keeps an edit, `book` being the workbook after it. Ends when it is on the
   * disk; never rejects: `state` says when it takes longer, and why. A workbook
   * that was neither loaded nor begun is begun by it. `step` is what the edit
   * was, for `steps` after the next loading.
   */
  keep(edit: Edit, book: Book, step: Step | null = null): Promise<void> {
    const kept = this.#kept?.id === book.id ? this.#kept : this.#fresh(book);
    kept.book = book;
    return this.#writer.add(kept, edit, step);
  }

  /** What was done to the workbook before it was loaded, as far back as is known without a gap. Never rejects. */
  async steps(): Promise<readonly Step[]> {
    const whole = this.#whole;
    if (!whole) return [];
    return readSteps(this.#database, whole.id, whole.seq).catch(() => []);
  }

  /** Tries at once what failed before, instead of when its time has come. */
  retry(): void {
    this.#writer.retry();
  }

  /** Ends when nothing waits any more, or when it can go no further by itself. */
  settled(): Promise<void> {
    return this.#writer.settled();
  }

  /**
   * What was set aside of the open workbook because it could not be read; also
   * what will be set aside by the next edit, `key: null`, because until then it
   * lies where it always lay.
   *
   * @throws {KeepingTrouble}
   */
  async aside(): Promise<readonly AsideFound[]> {
    const kept = this.#kept;
    if (!kept) return [];
    const stored = await readAside(this.#database, kept.id);
    return kept.aside ? [...stored, { ...kept.aside, at: new Date().toISOString(), key: null }] : stored;
  }

  /**
   * Throws away for good what was set aside.
   *
   * @throws {KeepingTrouble}
   */
  forgetAside(key: number): Promise<void> {
    return this.#database.write(['aside'], (transaction) => transaction.objectStore('aside').delete(key));
  }

  /** Writes no more, and lets go of the storage. What waits is not written. */
  async close(): Promise<void> {
    await this.#writer.halt();
    await this.#database.close();
  }

  #fresh(book: Book): Kept {
    return this.#kept = { id: book.id, book, seq: 0, stored: null, journaled: 0, whole: true, aside: null };
  }

  /** Makes the edits that still wait for this workbook to what is stored of it. */
  #putOnTop(kept: Kept, card: ShelfCard | undefined): { problems: readonly string[]; left: readonly JournalEntry[]; replaced: string | null } {
    const waiting = this.#writer.takeOut(kept.id);
    // The last write may have reached the disk although the browser could not say so.
    const own = card?.writer === this.#writer.mark;
    const stored = own ? card.seq : 0;
    const rest = waiting.filter(({ edit, seq }) => edit && seq > stored);
    const entries = rest.map(({ edit, at }, index): JournalEntry => ({ book: kept.id, seq: kept.seq + 1 + index, at, edit }));
    const { book, seq, problems, left } = makeAgain(kept.book, kept.seq, entries);
    kept.book = book;
    kept.seq = seq;
    this.#writer.putBack(rest.map((each, index) => ({ ...each, kept, seq: entries[index]!.seq })));
    for (const each of waiting) if (!rest.includes(each)) each.done();

    const before = waiting[0]?.kept;
    if (own || !before?.whole || before.stored !== null) return { problems, left, replaced: null };
    const replaced = 'Another workbook was kept here under the same number. What you typed was put on top of it, and a copy of what was on the screen was set aside.';
    return { problems: [replaced, ...problems], left, replaced: JSON.stringify(writeBook(before.book)) };
  }
}
