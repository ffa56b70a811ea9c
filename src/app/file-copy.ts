/**
 * A file on disk that follows the workbook while the page is open: written
 * again, whole, a moment after each change. Only where the browser lets a page
 * keep hold of a file (File System Access).
 */
import { bookText, type Book } from '../workbook/index.ts';
import { writeTo, type FileHandle } from './file-on-disk.ts';

export type CopyState =
  | { readonly state: 'following'; readonly name: string; readonly at: string | null }
  | { readonly state: 'failed'; readonly name: string; readonly why: string };

/** Milliseconds of quiet after which it is written. */
const QUIET = 1_500;

/** Says `state` when it was written, or could not be. */
export class FileCopy extends EventTarget {
  #handle: FileHandle;
  #book: () => Book;
  #written: Book | null = null;
  #due: ReturnType<typeof setTimeout> | undefined;
  #writing: Promise<void> = Promise.resolve();
  #ended = false;
  state: CopyState;

  constructor(handle: FileHandle, book: () => Book, private readonly quiet = QUIET) {
    super();
    this.#handle = handle;
    this.#book = book;
    this.state = { state: 'following', name: handle.name, at: null };
  }

  /** To be called whenever something may have changed. */
  changed(): void {
    if (this.#ended || this.#book() === this.#written) return;
    clearTimeout(this.#due);
    this.#due = setTimeout(() => void this.write(), this.quiet);
  }

  /** Writes now; one after the other. Never rejects: what failed is tried again at the next change. */
  write(): Promise<void> {
    return this.#writing = this.#writing.then(() => this.#write());
  }

  end(): void {
    this.#ended = true;
    clearTimeout(this.#due);
  }

  async #write(): Promise<void> {
    const book = this.#book();
    if (this.#ended || book === this.#written) return;
    const { name } = this.#handle;
    try {
      await writeTo(this.#handle, new Blob([bookText(book)], { type: 'application/json' }));
      this.#written = book;
      this.state = { state: 'following', name, at: new Date().toISOString() };
    } catch (error) {
      this.state = { state: 'failed', name, why: error instanceof Error ? error.message : String(error) };
    }
    this.dispatchEvent(new Event('state'));
  }
}
