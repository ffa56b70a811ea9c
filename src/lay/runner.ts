/**
 * The page's end of the search: one worker, or two with different seeds where
 * there are the cores for it, the better of whose layouts counts. A worker that
 * dies is started anew from the best layout so far; a cancel is answered in
 * 100 ms whatever the workers do. With one worker the same request gives the
 * same layouts; with two only each of them does, and which is better first is
 * a matter of the machine.
 */
import { proxy, wrap, type Endpoint, type Remote } from 'comlink';
import { clothLength } from './cloth.ts';
import type { LayAnswer, LayNews, LayRequest, LayResult, LayWorker } from './protocol.ts';
import type { Place } from './types.ts';

/** What a worker is to the runner. */
export type LayPort = Endpoint & { terminate(): void };

export interface RunnerOptions {
  /** Makes a worker that serves a `LayWorker` through comlink. */
  readonly start: () => LayPort;
  /** How many search at once: 1, or 2 where there are two cores. */
  readonly workers: number;
  /** Milliseconds in which a cancel is answered, between two signs of life, and without one until a worker counts as dead. */
  readonly limits?: Partial<Limits>;
}

interface Limits {
  readonly cancel: number;
  readonly beat: number;
  readonly dead: number;
}

const USUAL: Limits = { cancel: 80, beat: 5_000, dead: 20_000 };
const RESTARTS = 2;
/** Between the seeds of two workers. */
const SEEDS_APART = 104_729;

/** Every worker died, and died again when it was started anew. */
export class LayWorkerDied extends Error {
  override readonly name = 'LayWorkerDied';
}

/** A browser tells how many cores there are; the page needs little of its own while she waits. */
export const workersFor = (cores: number): number => (cores >= 2 ? 2 : 1);

export class LayRunner {
  readonly #options: RunnerOptions;
  readonly #limits: Limits;
  #hands: (Hand | null)[];
  #cancel: (() => void) | null = null;
  #run = 0;

  constructor(options: RunnerOptions) {
    this.#options = options;
    this.#limits = { ...USUAL, ...options.limits };
    this.#hands = new Array<Hand | null>(options.workers).fill(null);
  }

  /**
   * One search at a time: a second one cancels the first.
   * @param better told of each layout that is better than all before
   * @throws LayWorkerDied
   */
  async lay(request: LayRequest, better: (news: LayNews) => void): Promise<LayAnswer> {
    this.cancel();
    const run = ++this.#run;
    let best: LayNews | null = null;
    let going = true;
    const take = (news: LayNews): void => {
      if (!going || (best && !isBetter(news, best, request))) return;
      best = news;
      better(news);
    };
    const cancelled = new Promise<'cancelled'>((done) => {
      this.#cancel = () => done('cancelled');
    });
    const lanes = this.#hands.map((_, k) => this.#lane(k, request, take, () => best, () => going));
    const all = this.#together(lanes, request);
    all.catch(() => undefined);
    const answer = await Promise.race([all, cancelled]);
    if (answer !== 'cancelled') {
      going = false;
      // The other worker may still be looking for what is found.
      if (run === this.#run) this.cancel();
      return answer.outcome === 'refused' ? answer : joined(answer, best);
    }
    const soon = await this.#stopped(lanes);
    going = false;
    const found: LayNews | null = best;
    return { outcome: 'cancelled', found, places: (found as LayNews | null)?.places ?? soon };
  }

  /** Stops the search; its `lay` answers at once with the best so far. */
  cancel(): void {
    if (!this.#cancel) return;
    this.#cancel();
    this.#cancel = null;
    for (const hand of this.#hands) hand?.cancel();
  }

  /** Ends the workers and takes their memory back. */
  end(): void {
    this.cancel();
    for (const hand of this.#hands) hand?.end();
    this.#hands = this.#hands.map(() => null);
  }

  #hand(k: number): Hand {
    return (this.#hands[k] ??= new Hand(this.#options.start(), this.#limits, (hand) => {
      if (this.#hands[k] === hand) this.#hands[k] = null;
    }));
  }

  /** One worker's answer, started anew from the best so far when it dies. */
  async #lane(k: number, request: LayRequest, take: (news: LayNews) => void, best: () => LayNews | null, going: () => boolean): Promise<LayAnswer> {
    for (let starts = 0; ; starts++) {
      const start = starts === 0 ? request.start : (best()?.layout ?? request.start);
      try {
        const answer = await this.#hand(k).lay({ ...request, seed: request.seed + k * SEEDS_APART, ...(start && { start }) }, take);
        // The answer can overtake the news of it.
        if (answer.outcome !== 'refused' && answer.found) take(answer.found);
        return answer;
      } catch (error) {
        if (!(error instanceof LayWorkerDied)) throw error;
        if (starts >= RESTARTS || !going()) throw error;
      }
    }
  }

  /** The answers of all; of one alone where it says all there is to say, or where the others died. */
  async #together(lanes: readonly Promise<LayAnswer>[], request: LayRequest): Promise<LayAnswer> {
    const enough = new Promise<LayAnswer>((done) => {
      for (const lane of lanes) {
        void lane.then((answer) => {
          const over = answer.outcome === 'refused' || answer.found === null || (request.aim.want === 'fits' && !answer.sentence);
          if (over && answer.outcome !== 'cancelled') done(answer);
        }, () => undefined);
      }
    });
    const every = Promise.allSettled(lanes).then((results) => {
      const answers = results.flatMap((result) => (result.status === 'fulfilled' ? [result.value] : []));
      if (answers.length === 0) throw (results[0] as PromiseRejectedResult).reason;
      return answers.reduce((one, other) => (one.outcome !== 'refused' && other.outcome !== 'refused' && other.found && (!one.found || isBetter(other.found, one.found, request)) ? other : one));
    });
    return Promise.race([enough, every]);
  }

  /** Waits for the workers, which were told to stop, and ends one that does not hear. */
  async #stopped(lanes: readonly Promise<LayAnswer>[]): Promise<readonly Place[]> {
    const hands = this.#hands.slice();
    let places: readonly Place[] = [];
    const heard = lanes.map((lane, k) => lane.then((answer) => {
      if (answer.outcome !== 'refused') places = answer.places;
      hands[k] = null;
    }, () => undefined));
    await Promise.race([Promise.all(heard), new Promise((done) => setTimeout(done, this.#limits.cancel))]);
    for (const hand of hands) hand?.end();
    return places;
  }
}

/** One worker, and the promise that every call of it ends. */
class Hand {
  readonly #port: LayPort;
  readonly #remote: Remote<LayWorker>;
  readonly #limits: Limits;
  readonly #gone: Promise<never>;
  #go!: (error: LayWorkerDied) => void;

  constructor(port: LayPort, limits: Limits, private readonly ended: (hand: Hand) => void) {
    this.#port = port;
    this.#limits = limits;
    this.#remote = wrap<LayWorker>(port);
    this.#gone = new Promise((_, reject) => {
      this.#go = reject;
    });
    this.#gone.catch(() => undefined);
    const failed = (event: Event): void => {
      event.preventDefault();
      this.end((event as ErrorEvent).message || event.type);
    };
    for (const kind of ['error', 'messageerror']) port.addEventListener(kind, failed as EventListener);
  }

  async lay(request: LayRequest, better: (news: LayNews) => void): Promise<LayAnswer> {
    let over = false;
    const answer = this.#remote.lay(request, proxy(better)).finally(() => {
      over = true;
    });
    void this.#watch(() => over);
    return Promise.race([answer, this.#gone]);
  }

  cancel(): void {
    this.#remote.cancel().catch(() => undefined);
  }

  end(why = 'The worker was ended.'): void {
    this.#port.terminate();
    this.#go(new LayWorkerDied(why));
    this.ended(this);
  }

  /** A worker that the browser has ended without a word gives no sign of life. */
  async #watch(over: () => boolean): Promise<void> {
    for (;;) {
      await new Promise((done) => setTimeout(done, this.#limits.beat));
      if (over()) return;
      const alive = this.#remote.alive().then(() => true, () => false);
      const sign = await Promise.race([alive, new Promise<false>((done) => setTimeout(() => done(false), this.#limits.dead))]);
      if (over()) return;
      if (!sign) {
        this.end('The worker gives no sign of life.');
        return;
      }
    }
  }
}

/** Of two layouts for one request, whether the first is to be preferred. */
function isBetter(one: LayNews, other: LayNews, { aim, cloth }: LayRequest): boolean {
  const atHand = clothLength(cloth) ?? Infinity;
  const fits = ({ layout }: LayNews): boolean => layout.length <= atHand;
  if (fits(one) !== fits(other)) return fits(one);
  if (aim.want === 'room for' && one.layout.laid.length !== other.layout.laid.length) return one.layout.laid.length > other.layout.laid.length;
  if (aim.want === 'largest left') {
    const room = ({ layout: { left } }: LayNews): number => (left ? left.length * left.width : 0);
    if (room(one) !== room(other)) return room(one) > room(other);
  }
  return one.layout.length < other.layout.length;
}

const joined = (answer: LayResult, best: LayNews | null): LayResult => (best && answer.found ? { ...answer, found: best, places: best.places ?? answer.places } : answer);
