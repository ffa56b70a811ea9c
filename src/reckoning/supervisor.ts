/**
 * Owns the engine's worker: starts it, gives it one thing to do at a time,
 * watches the clock, and when it dies starts another from the workbook. A call
 * made here always ends, with an answer or with a sentence; comlink by itself
 * waits for ever on a dead worker.
 */
import type { Remote } from 'comlink';
import type { Book, CellAddress, Effect } from '../workbook/types.ts';
import { EngineGone, RunningEngine } from './running-engine.ts';
import type { BackAnswer, BackSearch, ChangeSet, Example, FunctionCard, Reckoner, Trial, TrialMore, TrialResults, Working } from './protocol.ts';
import { WorkerLost } from './worker-lost.ts';

/** `stopped`: it was started three times in vain, or by `stop`; `open` starts it again. */
export type SupervisorState = 'starting' | 'ready' | 'working' | 'restarting' | 'stopped';

/** Milliseconds that each call may take, and that a new worker with nothing to do must live to count as sound. */
export interface Limits {
  readonly start: number;
  readonly open: number;
  readonly apply: number;
  readonly question: number;
  readonly tryOut: number;
  readonly sound: number;
}

export const USUAL_LIMITS: Limits = { start: 15_000, open: 60_000, apply: 30_000, question: 15_000, tryOut: 60_000, sound: 5_000 };

const RESTARTS = 2;
const ASKED_AT_MOST = 2;
const ANY_WORKBOOK = -1;

export class StateEvent extends Event {
  constructor(readonly state: SupervisorState) {
    super('state');
  }
}

export class ChangesEvent extends Event {
  constructor(readonly changes: ChangeSet) {
    super('changes');
  }
}

export interface SupervisorOptions {
  /** Makes a worker that serves a `Reckoner` through comlink. */
  readonly start: () => Worker;
  /** The workbook as it stands now. It must hold an edit by the end of the turn in which `apply` got its effects. */
  readonly book: () => Book;
  readonly limits?: Partial<Limits>;
}

interface Question {
  readonly ask: (engine: Remote<Reckoner>) => Promise<unknown>;
  readonly limit: number;
  /** It must be answered from this revision or a later one. */
  readonly revision: number;
  /** A failure inside it may leave the engine other than it was. */
  readonly disturbs: boolean;
  readonly resolve: (answer: never) => void;
  readonly reject: (error: unknown) => void;
  asked: number;
}

export class Supervisor extends EventTarget {
  readonly #options: SupervisorOptions;
  readonly #limits: Limits;
  #state: SupervisorState = 'starting';
  #engine: RunningEngine | null = null;
  #catalogue: readonly FunctionCard[] | null = null;
  #revision = 0;
  /** The revision that the worker has answered. */
  #answered = -1;
  /** Answers to revisions before this one are about a workbook that is no longer open. */
  #openedAt = 0;
  #mustOpen = true;
  #effects: Effect[] = [];
  #questions: Question[] = [];
  #lastWasUpdate = false;
  #running = false;
  #restarts = 0;
  #searches = 0;
  #searching = 0;

  constructor(options: SupervisorOptions) {
    super();
    this.#options = options;
    this.#limits = { ...USUAL_LIMITS, ...options.limits };
  }

  /** `starting` until the first workbook has been worked out. */
  get state(): SupervisorState {
    return this.#state;
  }

  /** The number of the workbook as it stands now. It only ever ascends. */
  get revision(): number {
    return this.#revision;
  }

  override addEventListener(type: 'state', listener: (event: StateEvent) => void, options?: AddEventListenerOptions): void;
  override addEventListener(type: 'changes', listener: (event: ChangesEvent) => void, options?: AddEventListenerOptions): void;
  override addEventListener(type: string, listener: EventListenerOrEventListenerObject | null, options?: AddEventListenerOptions | boolean): void;
  override addEventListener(type: string, listener: unknown, options?: AddEventListenerOptions | boolean): void {
    super.addEventListener(type, listener as EventListener | null, options);
  }

  /**
   * Works the whole workbook out anew: for each workbook that is opened, and to
   * try again after `stopped`. Questions about the one before are rejected.
   */
  open(): number {
    this.#mustOpen = true;
    this.#effects = [];
    this.#restarts = 0;
    this.#openedAt = ++this.#revision;
    const old = this.#questions.filter(({ revision }) => revision !== ANY_WORKBOOK);
    for (const question of old) this.#reject(question, new WorkerLost('Another workbook was opened before this was worked out.'));
    if (this.#state === 'stopped') this.#become('starting');
    void this.#run();
    return this.#revision;
  }

  /** Tells the worker of an edit. Gives the revision of the workbook with it, for `Results.shift`. */
  apply(effects: readonly Effect[]): number {
    if (effects.length === 0) return this.#revision;
    this.#revision++;
    // An edit does not wait for a search, whose answer would be about a sheet that is no more.
    if (this.#searching > 0) this.cancelSearch();
    // Nothing is remembered for a stopped worker: it will be told the whole workbook.
    if (this.#state !== 'stopped') {
      for (const effect of effects) this.#effects.push(effect);
      void this.#run();
    }
    return this.#revision;
  }

  working(cell: CellAddress): Promise<Working> {
    return this.#ask((engine) => engine.working(cell));
  }

  dependents(of: readonly CellAddress[]): Promise<readonly CellAddress[]> {
    return this.#ask((engine) => engine.dependents(of));
  }

  tryOut(trials: readonly Trial[], outputs: readonly CellAddress[], more: TrialMore = {}): Promise<TrialResults> {
    return this.#ask((engine) => engine.tryOut(trials, outputs, more), { limit: this.#limits.tryOut, disturbs: true });
  }

  inputsOf(result: CellAddress): Promise<readonly CellAddress[]> {
    return this.#ask((engine) => engine.inputsOf(result));
  }

  /** `null` when it was cancelled, or an edit came meanwhile. */
  workBack(search: BackSearch): Promise<BackAnswer | null> {
    const mine = ++this.#searches;
    this.#searching++;
    return this.#ask((engine) => (mine === this.#searches ? engine.workBack(search) as Promise<BackAnswer | null> : Promise.resolve(null)), { limit: this.#limits.tryOut, disturbs: true })
      .finally(() => { this.#searching--; });
  }

  /** Gives up every search that was asked for. */
  cancelSearch(): void {
    this.#searches++;
    // It is spoken to beside what it is doing; a worker that is gone does not answer, and need not.
    if (this.#engine?.ready) this.#engine.remote.cancelSearch().catch(() => undefined);
  }

  /** Every function there is; the same for every workbook. */
  async catalogue(): Promise<readonly FunctionCard[]> {
    return this.#catalogue ?? this.#ask(async () => this.#catalogue!, { revision: ANY_WORKBOOK });
  }

  /** What a formula gives in an empty cell; the same for every workbook. */
  example(formula: string): Promise<Example> {
    return this.#ask((engine) => engine.example(formula), { revision: ANY_WORKBOOK });
  }

  /** Ends the worker. What was asked is rejected. */
  stop(): void {
    this.#stop(new WorkerLost('Working out was stopped.'));
  }

  #ask<T>(ask: (engine: Remote<Reckoner>) => Promise<T>, { limit = this.#limits.question, disturbs = false, revision = this.#revision } = {}): Promise<T> {
    if (this.#state === 'stopped') return Promise.reject(couldNotStart());
    return new Promise<T>((resolve, reject) => {
      this.#questions.push({ ask, limit, revision, disturbs, resolve, reject, asked: 0 });
      void this.#run();
    });
  }

  /** Does what is waiting, one thing after the other: the worker could not do two at once, and each gets its own time. */
  async #run(): Promise<void> {
    if (this.#running || this.#state === 'stopped') return;
    this.#running = true;
    // Edits of one turn of the page's loop go as one.
    await Promise.resolve();
    while (!this.#isStopped()) {
      let engine = this.#engine;
      try {
        engine ??= this.#launch();
        if (!engine.ready) await this.#greet(engine);
        else if (this.#mustOpen) await this.#open(engine);
        else if (!await this.#next(engine)) break;
      } catch (error) {
        this.#lost(error, engine);
      }
    }
    this.#running = false;
    if (!this.#isStopped()) this.#become('ready');
  }

  #launch(): RunningEngine {
    const engine: RunningEngine = new RunningEngine(this.#options.start(), (reason) => this.#lost(reason, engine));
    this.#engine = engine;
    this.#mustOpen = true;
    return engine;
  }

  /** The first answer shows that the worker's script is loaded and listens. */
  async #greet(engine: RunningEngine): Promise<void> {
    this.#catalogue = await engine.within(this.#limits.start, engine.remote.catalogue());
    engine.ready = true;
  }

  async #open(engine: RunningEngine): Promise<void> {
    if (this.#state === 'ready') this.#become('working');
    this.#mustOpen = false;
    this.#effects = [];
    const revision = ++this.#revision;
    const changes = await engine.within(this.#limits.open, engine.remote.open(revision, this.#options.book()));
    engine.openedAt ??= Date.now();
    this.#take(changes);
  }

  /** Does the next thing. An edit waits for one question at most, a question for one update. False when nothing waits. */
  async #next(engine: RunningEngine): Promise<boolean> {
    const question = this.#questions[0];
    const edited = this.#effects.length > 0;
    if (!question && !edited) return false;
    this.#become('working');
    engine.sound = true;
    const questionFirst = question && (!edited || (this.#lastWasUpdate && question.revision <= this.#answered));
    this.#lastWasUpdate = !questionFirst;
    await (questionFirst ? this.#answer(engine, question) : this.#update(engine));
    return true;
  }

  async #update(engine: RunningEngine): Promise<void> {
    const effects = this.#effects;
    this.#effects = [];
    this.#take(await engine.within(this.#limits.apply, engine.remote.apply(this.#revision, effects)));
  }

  async #answer(engine: RunningEngine, question: Question): Promise<void> {
    question.asked++;
    try {
      const answer = await engine.within(question.limit, question.ask(engine.remote));
      this.#questions = this.#questions.filter((each) => each !== question);
      question.resolve(answer as never);
    } catch (error) {
      const gone = error instanceof EngineGone;
      if (!gone) this.#reject(question, error);
      else if (question.asked >= ASKED_AT_MOST) this.#reject(question, failedTwice(error));
      if (gone) throw error;
      if (question.disturbs) this.#mustOpen = true;
    }
  }

  #take(changes: ChangeSet): void {
    if (changes.revision < this.#openedAt) return;
    this.#answered = changes.revision;
    this.dispatchEvent(new ChangesEvent(changes));
  }

  #reject(question: Question, error: unknown): void {
    this.#questions = this.#questions.filter((each) => each !== question);
    question.reject(error);
  }

  /** The worker is of no more use: starts another, unless that was tried enough. */
  #lost(reason: unknown, engine: RunningEngine | null): void {
    if (this.#isStopped() || engine !== this.#engine) return;
    if (engine?.wasSound(this.#limits.sound)) this.#restarts = 0;
    this.#engine = null;
    engine?.end(reason);
    if (this.#restarts >= RESTARTS) {
      this.#stop(couldNotStart(reason));
      return;
    }
    this.#restarts++;
    this.#become('restarting');
    void this.#run();
  }

  #stop(reason: WorkerLost): void {
    const engine = this.#engine;
    this.#engine = null;
    this.#effects = [];
    engine?.end(reason);
    for (const question of this.#questions) this.#reject(question, reason);
    this.#become('stopped');
  }

  #isStopped(): boolean {
    return this.#state === 'stopped';
  }

  #become(state: SupervisorState): void {
    if (state === this.#state) return;
    this.#state = state;
    this.dispatchEvent(new StateEvent(state));
  }
}

const couldNotStart = (cause?: unknown): WorkerLost => new WorkerLost(
  'The figures cannot be worked out just now: the part of this page that does it stopped, and did not start again. Nothing typed is lost. Choose Try again.',
  { cause },
);

const failedTwice = (cause: unknown): WorkerLost => new WorkerLost(
  'This could not be worked out: it was tried twice and took too long or failed. The rest goes on. Change the figures, then ask again.',
  { cause },
);
