/**
 * Writes what waits, in order, one transaction after the other. What fails
 * stays in memory and is tried again until it can be written.
 */
import { writeBook, type Book, type Edit, type Step } from '../workbook/index.ts';
import type { Database, JournalEntry, SetAside, ShelfCard } from './database.ts';
import { Cleared, writeEntries, writeSnapshot } from './journal.ts';
import { pictureOf } from './shelf-picture.ts';
import { pruneSteps, storedStep, writeSteps } from './step-store.ts';
import { KeepingTrouble, troubleFrom } from './trouble.ts';

export interface WriterOptions {
  /** A snapshot is made after so many edits, */
  readonly snapshotEdits: number;
  /** or so many milliseconds after the last one. */
  readonly snapshotQuiet: number;
  /** A write that takes longer, in milliseconds, is said to be slow. */
  readonly slow: number;
  /** The shortest and the longest wait before it tries again, in milliseconds. */
  readonly retry: readonly [shortest: number, longest: number];
  /** Calls back when the page has nothing better to do. */
  readonly whenIdle: (work: () => void) => void;
}

/** A workbook that is being kept. */
export interface Kept {
  readonly id: string;
  /** The workbook after the last edit that was handed over. */
  book: Book;
  /** The number of that edit. */
  seq: number;
  /** The last edit known to be stored; `null` when the workbook is not stored yet. */
  stored: number | null;
  /** Edits in the journal since the snapshot. */
  journaled: number;
  /** The next write must be the whole workbook: there is no snapshot, or none to be relied on. */
  whole: boolean;
  /** What that write has to set aside, because it takes the place of it. */
  aside: Omit<SetAside, 'at'> | null;
}

export interface Waiting {
  readonly kept: Kept;
  readonly seq: number;
  readonly at: string;
  /** `null`: the workbook as it came, before any edit. */
  readonly edit: Edit | null;
  /** For looking back; `null` when nobody will. */
  readonly step: Step | null;
  readonly done: () => void;
}

export class Writer {
  /** Differs from tab to tab, so that each knows its own writing. */
  readonly mark = crypto.getRandomValues(new Uint32Array(4)).join('-');
  trouble: KeepingTrouble | null = null;
  /** ISO time at which the last edit was on the disk. */
  keptAt: string | null = null;

  readonly #database: Database;
  readonly #options: WriterOptions;
  readonly #changed: () => void;
  #queue: Waiting[] = [];
  #snapshotOf: Kept | null = null;
  #run: Promise<void> = Promise.resolve();
  #remembering: Promise<void> = Promise.resolve();
  #running = false;
  #halted = false;
  /** Counts the times it was halted: what was planned before is off. */
  #stretch = 0;
  #failures = 0;
  #wake: (() => void) | null = null;
  #quiet: ReturnType<typeof setTimeout> | undefined;

  constructor(database: Database, options: WriterOptions, changed: () => void) {
    this.#database = database;
    this.#options = options;
    this.#changed = changed;
  }

  get waiting(): number {
    return this.#queue.length;
  }

  /** Takes the next edit of a workbook. Ends when it is on the disk. */
  add(kept: Kept, edit: Edit | null, step: Step | null = null): Promise<void> {
    return new Promise((done) => {
      this.putBack([{ kept, seq: ++kept.seq, at: new Date().toISOString(), edit, step, done }]);
      this.#changed();
    });
  }

  /** Takes out what waits for a workbook. */
  takeOut(id: string): readonly Waiting[] {
    const out = this.#queue.filter(({ kept }) => kept.id === id);
    this.#queue = this.#queue.filter(({ kept }) => kept.id !== id);
    return out;
  }

  putBack(waiting: readonly Waiting[]): void {
    this.#queue.push(...waiting);
    this.#start();
  }

  say(trouble: KeepingTrouble | null): void {
    this.trouble = trouble;
    this.#changed();
  }

  /** Finishes the write in hand and begins no other. */
  async halt(): Promise<void> {
    this.#halted = true;
    this.#stretch++;
    this.#snapshotOf = null;
    clearTimeout(this.#quiet);
    this.#wake?.();
    await this.#run;
  }

  resume(): void {
    this.#halted = false;
    this.#failures = 0;
    this.#start();
  }

  /** Ends the wait before the next try. */
  retry(): void {
    this.#wake?.();
    this.#start();
  }

  /** Ends when there is nothing more to write, or it cannot go on by itself. */
  async settled(): Promise<void> {
    while (this.#running) await this.#run;
    await this.#remembering;
  }

  #start(): void {
    if (this.#running || this.#halted) return;
    this.#running = true;
    this.#run = this.#writeAll();
  }

  async #writeAll(): Promise<void> {
    while (!this.#halted && (this.#queue.length > 0 || this.#snapshotOf)) {
      const first = this.#queue[0];
      try {
        if (first) await this.#timed(() => this.#writeBatch(first.kept));
        else await this.#timed(() => this.#writeSnapshot());
      } catch (error) {
        if (!await this.#mayGoOn(error, first?.kept ?? null)) break;
      }
    }
    this.#running = false;
  }

  async #writeBatch(kept: Kept): Promise<void> {
    const end = this.#queue.findIndex((each) => each.kept !== kept);
    const batch = this.#queue.slice(0, end < 0 ? undefined : end);
    const last = batch.at(-1)!;
    if (kept.whole) {
      await this.#writeWhole(kept, last.at);
    } else {
      const entries = batch.map(({ seq, at, edit }): JournalEntry => ({ book: kept.id, seq, at, edit }));
      await writeEntries(this.#database, kept.stored, entries, this.#card(kept, last.seq, last.at));
      kept.stored = last.seq;
      kept.journaled += batch.length;
    }
    this.#queue.splice(0, batch.length);
    this.keptAt = new Date().toISOString();
    this.#failures = 0;
    this.say(null);
    for (const { done } of batch) done();
    this.#planSnapshot(kept);
    this.#remembering = this.#remember(kept, batch);
  }

  /** All of it is kept already, so that nothing waits for this; should it fail, what can be gone back to begins after it. */
  async #remember({ id }: Kept, batch: readonly Waiting[]): Promise<void> {
    const steps = batch.flatMap(({ seq, step }) => (step ? [storedStep(id, seq, step)] : []));
    await writeSteps(this.#database, steps).catch(() => undefined);
  }

  /** The whole workbook, in place of its journal. */
  async #writeWhole(kept: Kept, changedAt: string): Promise<void> {
    const { book, seq, aside } = kept;
    const savedAt = new Date().toISOString();
    const snapshot = { id: kept.id, savedAt, seq, json: JSON.stringify(writeBook(book)) };
    await writeSnapshot(this.#database, kept.stored, snapshot, this.#card(kept, seq, changedAt), aside && { ...aside, at: savedAt });
    Object.assign(kept, { stored: seq, journaled: 0, whole: false, aside: null });
  }

  /** All edits are kept already, so that nothing is lost or said when it fails; the next edits bring another. */
  async #writeSnapshot(): Promise<void> {
    const kept = this.#snapshotOf!;
    this.#snapshotOf = null;
    try {
      await this.#writeWhole(kept, this.keptAt ?? new Date().toISOString());
      await pruneSteps(this.#database, kept.id).catch(() => undefined);
    } catch (error) {
      if (error instanceof Cleared) this.#startOver(kept);
    }
  }

  #planSnapshot(kept: Kept): void {
    clearTimeout(this.#quiet);
    if (kept.journaled === 0) return;
    const stretch = this.#stretch;
    const due = () => {
      if (stretch !== this.#stretch) return;
      this.#snapshotOf = kept;
      this.#start();
    };
    if (kept.journaled >= this.#options.snapshotEdits) this.#options.whenIdle(due);
    else this.#quiet = setTimeout(() => this.#options.whenIdle(due), this.#options.snapshotQuiet);
  }

  #card({ id, book }: Kept, seq: number, changedAt: string): ShelfCard {
    const { title, person } = book;
    return { id, title, person, changedAt, seq, writer: this.mark, picture: pictureOf(book) };
  }

  /** After a failure: waits as long as is due. False when only the page or the person can help. */
  async #mayGoOn(error: unknown, kept: Kept | null): Promise<boolean> {
    if (error instanceof Cleared && kept) {
      this.#startOver(kept);
      return true;
    }
    const trouble = troubleFrom(error);
    this.say(trouble);
    if (trouble.why === 'elsewhere') return false;
    const [shortest, longest] = this.#options.retry;
    await this.#pause(Math.min(longest, shortest * 2 ** this.#failures++));
    return true;
  }

  /** The browser's storage was emptied. What is on the screen is all there is: it must be written whole. */
  #startOver(kept: Kept): void {
    kept.stored = null;
    kept.whole = true;
    this.#snapshotOf = kept;
  }

  async #pause(milliseconds: number): Promise<void> {
    let timer: ReturnType<typeof setTimeout> | undefined;
    await new Promise<void>((resolve) => {
      timer = setTimeout(resolve, milliseconds);
      this.#wake = resolve;
    });
    clearTimeout(timer);
    this.#wake = null;
  }

  /** Says so when edits wait long, for their own writing or for a snapshot's. */
  async #timed(work: () => Promise<void>): Promise<void> {
    const timer = setInterval(() => {
      if (this.#queue.length > 0 && !this.trouble) this.say(new KeepingTrouble('slow'));
    }, this.#options.slow);
    try {
      await work();
    } finally {
      clearInterval(timer);
    }
  }
}
