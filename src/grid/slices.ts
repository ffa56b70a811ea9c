/** Long work on the page in short slices, between which it can draw and hear keys. */

/** Milliseconds of one slice: a frame is 16, and other things want their part of it. */
const SLICE = 8;

interface Scheduler {
  yield?(): Promise<void>;
}

const pause = (): Promise<void> => (globalThis as { scheduler?: Scheduler }).scheduler?.yield?.() ?? new Promise((done) => setTimeout(done));

/** Calls `each` with 0 up to `count`, as many as fit into a slice at a time. Stops early when `each` gives false, and says whether it came to the end. */
export async function inSlices(count: number, each: (index: number) => boolean | void): Promise<boolean> {
  return startSlices(count, each) ?? true;
}

/** As `inSlices`, but `null` when all of it fitted into the first slice and is done. */
export function startSlices(count: number, each: (index: number) => boolean | void): Promise<boolean> | null {
  let index = 0;
  let stopped = false;
  const slice = (): boolean => {
    const until = performance.now() + SLICE;
    while (index < count) {
      if (each(index++) === false) stopped = true;
      if (stopped || performance.now() >= until) break;
    }
    return stopped || index >= count;
  };
  if (slice()) return stopped ? Promise.resolve(false) : null;
  const rest = async (): Promise<boolean> => {
    do await pause(); while (!slice());
    return !stopped;
  };
  return rest();
}
