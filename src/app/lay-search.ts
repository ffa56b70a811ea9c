/** One search after another: what it was asked, what it found so far, and how it stands. */
import { LayRunner, workersFor, type Aim, type Cloth, type LayPort, type LayRequest, type Layout } from '../lay/index.ts';
import type { SheetPiece } from '../lay/shapes/index.ts';
import { faultsOf, foundFrom, type Found } from './lay-found.ts';
import { startLayWorker } from '../reckoning/index.ts';

export interface Asked {
  readonly pieces: readonly SheetPiece[];
  readonly second: readonly SheetPiece[];
  readonly cloth: Cloth;
  readonly aim: Aim;
  readonly print: string;
  /** Places to weigh, in millions; `undefined`: until more would not pay. */
  readonly most?: number;
  readonly start?: Layout;
}

export type Standing = 'idle' | 'looking' | 'done' | 'stopped' | 'refused' | 'dead';

/** The same request gives the same layouts, today and tomorrow. */
const SEED = 1;

const DEAD = 'The search for layouts has stopped working. Nothing that was found is lost: start it again.';
const FAILED = 'The search gave out a layout that did not pass the check, so it is not shown. Start it again, or change the cloth a little.';

export class LaySearch {
  standing: Standing = 'idle';
  found: Found | null = null;
  /** Why it was refused, what it said at its end, or that it died. */
  sentences: readonly string[] = [];
  asked: Asked | null = null;
  /** Of the second list, by position, those that there was no room for. */
  without: readonly number[] = [];
  #run = 0;
  #runner: { readonly workers: number; readonly runner: LayRunner } | null = null;

  /** @param changed called whenever there is something new to show */
  constructor(private readonly changed: () => void, private readonly begin: () => LayPort = startLayWorker) {}

  async start(asked: Asked): Promise<void> {
    const run = ++this.#run;
    const mine = (): boolean => run === this.#run;
    this.asked = asked;
    this.standing = 'looking';
    this.found = null;
    this.sentences = [];
    this.without = [];
    this.changed();
    const { pieces, cloth, aim, most, start } = asked;
    const request: LayRequest = { pieces: pieces.map(plain), cloth, aim, seed: SEED, ...(most !== undefined && { most }), ...(start && { start }) };
    try {
      const answer = await this.#runnerFor(most).lay(request, (news) => {
        if (mine()) this.#take(foundFrom(news, asked));
      });
      if (!mine()) return;
      if (answer.outcome === 'refused') {
        this.standing = 'refused';
        this.sentences = answer.sentences;
      } else {
        this.standing = answer.outcome === 'done' ? 'done' : 'stopped';
        if (answer.found) this.#take(foundFrom({ ...answer.found, places: answer.places }, asked));
        this.without = answer.without ?? [];
        if (answer.sentence) this.sentences = [...this.sentences, answer.sentence];
      }
    } catch {
      if (!mine()) return;
      this.standing = 'dead';
      this.sentences = [DEAD];
    }
    this.changed();
  }

  stop(): void {
    if (this.standing === 'looking') this.#runner?.runner.cancel();
  }

  /** Forgets what was found, and gives the worker's memory back. */
  end(): void {
    this.#run++;
    this.standing = 'idle';
    this.#runner?.runner.end();
    this.#runner = null;
  }

  clear(): void {
    if (this.standing === 'looking') this.#runner?.runner.cancel();
    this.#run++;
    this.standing = 'idle';
    this.found = null;
    this.sentences = [];
  }

  /** A short search is to be the same each time, so it has one worker. */
  #runnerFor(most: number | undefined): LayRunner {
    const workers = most === undefined ? workersFor(navigator.hardwareConcurrency) : 1;
    if (this.#runner?.workers !== workers) {
      this.#runner?.runner.end();
      this.#runner = { workers, runner: new LayRunner({ start: this.begin, workers }) };
    }
    return this.#runner.runner;
  }

  #take(found: Found): void {
    if (faultsOf(found).length > 0) {
      if (!this.sentences.includes(FAILED)) this.sentences = [...this.sentences, FAILED];
      return;
    }
    this.found = found;
    this.changed();
  }
}

/** Only what the search reads goes to the worker. */
export const plain = ({ name, outline, cut, count, turns, matches }: SheetPiece) => ({ name, outline, cut, count, turns, ...(matches && { matches }) });
