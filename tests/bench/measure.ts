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

/**
 * Milliseconds of processor time of each run, after a first one that does not
 * count. Runs of a millisecond are timed by the clock and without tidying up
 * between them, since the engine's own threads would be most of what is timed.
 */
export function race(contenders: readonly Contender[], rounds: number, short = false): number[][] {
  const now = short ? (): number => performance.now() : worked;
  const times = contenders.map((): number[] => []);
  for (let round = -1; round < rounds; round++) {
    contenders.forEach(({ before, run }, i) => {
      const ready = before?.() as never;
      if (!short) (globalThis as { gc?: () => void }).gc?.();
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
