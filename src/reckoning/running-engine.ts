/** One worker from its start to its end, and the promise that every call made of it ends. */
import { wrap, type Remote } from 'comlink';
import type { Reckoner } from './protocol.ts';

/** The worker died, was ended, or did not answer in time. */
export class EngineGone extends Error {
  override readonly name = 'EngineGone';
}

export class RunningEngine {
  readonly remote: Remote<Reckoner>;
  /** Its script is loaded and answers. */
  ready = false;
  /** Was given work after it had opened the workbook. */
  sound = false;
  /** Time, by `Date.now()`, at which it had first opened a workbook. */
  openedAt: number | null = null;

  readonly #worker: Worker;
  readonly #gone: Promise<never>;
  #go!: (error: EngineGone) => void;

  /** @param failed told once of an error outside any call: a script that does not load, a message that cannot be read. */
  constructor(worker: Worker, failed: (reason: EngineGone) => void) {
    this.#worker = worker;
    this.remote = wrap<Reckoner>(worker);
    this.#gone = new Promise((_, reject) => { this.#go = reject; });
    this.#gone.catch(() => undefined);
    const listener = (event: Event) => {
      event.preventDefault();
      failed(new EngineGone((event as ErrorEvent).message || event.type));
    };
    worker.addEventListener('error', listener, { once: true });
    worker.addEventListener('messageerror', listener, { once: true });
  }

  /** The answer, or `EngineGone` after `limit` milliseconds or when the worker ends before. */
  within<T>(limit: number, answer: Promise<T>): Promise<T> {
    let timer: ReturnType<typeof setTimeout> | undefined;
    const late = new Promise<never>((_, reject) => {
      timer = setTimeout(() => reject(new EngineGone(`No answer in ${limit} ms.`)), limit);
    });
    return Promise.race([answer, this.#gone, late]).finally(() => clearTimeout(timer));
  }

  /** False for a worker that never opened the workbook, or fell over by itself soon after. */
  wasSound(milliseconds: number): boolean {
    return this.sound || (this.openedAt !== null && Date.now() - this.openedAt >= milliseconds);
  }

  end(reason: unknown): void {
    this.#worker.terminate();
    this.#go(new EngineGone('The worker was ended.', { cause: reason }));
  }
}
