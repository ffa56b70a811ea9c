/** Times things against each other, in turns, so that what else the machine does falls on both. */

export interface Contender {
  readonly name: string;
  /** Called before each run, not timed; gives what `run` gets. */
  readonly before?: () => unknown;
  readonly run: (ready: never) => unknown;
}

export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2;
}

/** Processor time of this process, which other programs' work does not lengthen as it does the clock's. */
function worked(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

export interface Manner {
  /**
   * Without a full collection of garbage before each run. That collection makes
   * the tests even, but with the objects it throws away the compiled code that
   * knows them (V8's "weak objects"), so that each run compiles its code anew:
   * it times programs as they are just after they start. A page in use is not
   * collected so and keeps its code; what is left is what it costs there.
   */
  readonly warm?: true;
  /**
   * Timed by the clock, for runs of a millisecond: the processor time of the
   * engine's own threads would be most of what is timed.
   */
  readonly clock?: true;
}

/** Milliseconds of processor time of each run, after a first one that does not count. */
export function race(contenders: readonly Contender[], rounds: number, { warm, clock }: Manner = {}): number[][] {
  const now = clock ? (): number => performance.now() : worked;
  const times = contenders.map((): number[] => []);
  for (let round = -1; round < rounds; round++) {
    contenders.forEach(({ before, run }, i) => {
      const ready = before?.() as never;
      if (!warm) (globalThis as { gc?: () => void }).gc?.();
      const start = now();
      run(ready);
      if (round >= 0) times[i]!.push(now() - start);
    });
  }
  return times;
}

const figure = (ms: number): string => (ms < 10 ? ms.toFixed(2) : ms.toFixed(0));

/** One line: how long ours takes beside the other, and what was aimed at. */
export function report(what: string, ours: readonly number[], other: readonly number[], aim: string, turned = false): void {
  const [mine, theirs] = [median(ours), median(other)];
  const ratio = turned ? theirs / mine : mine / theirs;
  console.log(`${what.padEnd(62)} ${ratio.toFixed(2).padStart(7)}   aim ${aim}   (${figure(mine)} ms, ${figure(theirs)} ms, median of ${ours.length})`);
}
