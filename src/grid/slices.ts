/** Long work on the page in short slices, between which it can draw and hear keys. */

/** Milliseconds of one slice: a frame is 16, and other things want their part of it. */
const SLICE = 8;

interface Scheduler {
  yield?(): Promise<void>;
}

const pause = (): Promise<void> => (globalThis as { scheduler?: Scheduler }).scheduler?.yield?.() ?? new Promise((done) => setTimeout(done));

/** Calls `each` with 0 up to `count`, as many as fit into a slice at a time. Stops early when `each` gives false, and says whether it came to the end. */
export async function inSlices(count: number, each: (index: number) => boolean | void): Promise<boolean> {
  let until = performance.now() + SLICE;
  for (let index = 0; index < count; index++) {
    if (each(index) === false) return false;
    if (performance.now() < until) continue;
    await pause();
    until = performance.now() + SLICE;
  }
  return true;
}
