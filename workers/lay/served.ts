/** What the worker does when asked: one search at a time, listening for a cancel while it works. */
import type { LayAnswer, LayNews, LayRequest, LayWorker } from '../../src/lay/index.ts';
import { Job } from './job.ts';

/** Milliseconds of work between two looks at the post: a cancel is heard within a few of them. */
const TURN = 25;

/** A turn of the event loop. A browser's timer would be slowed to 4 ms; in Node, where the tests run, messages go before timers. */
const post = new MessageChannel();
const pause = (): Promise<void> => new Promise((done) => {
  if (typeof setImmediate === 'function') {
    setImmediate(done);
    return;
  }
  post.port1.onmessage = () => done();
  post.port2.postMessage(null);
});

export class Served implements LayWorker {
  #now = 0;

  async lay(request: LayRequest, better: (news: LayNews) => void): Promise<LayAnswer> {
    const mine = ++this.#now;
    const job = new Job(request);
    if (job.sentences.length > 0) return { outcome: 'refused', sentences: job.sentences };
    const { proof } = job;
    if (proof) return { outcome: 'done', found: null, places: job.places, sentence: proof };
    let until = performance.now() + TURN;
    let count = 0;
    for (const step of job.run()) {
      if (step) better(job.found!);
      // Reading the clock after every move would cost more than some moves.
      if (!step && ++count % 16 > 0) continue;
      if (performance.now() < until) continue;
      await pause();
      if (mine !== this.#now) return { outcome: 'cancelled', found: job.found, places: job.places };
      until = performance.now() + TURN;
    }
    const { found, sentence, without } = job;
    return { outcome: 'done', found, places: job.places, ...(sentence ? { sentence } : {}), ...(without ? { without } : {}) };
  }

  cancel(): void {
    this.#now++;
  }

  alive(): true {
    return true;
  }
}
