import type { Known } from './known.ts';
import type { Trying } from './types.ts';

const HALVINGS = 1_100;

/** The last input from `inside` towards `outside` for which something still holds: halves until no double lies between. */
export function* edge(known: Known, inside: number, outside: number, holds: (y: number | null) => boolean): Trying<number> {
  let [last, beyond] = [inside, outside];
  for (let n = 0; n < HALVINGS; n++) {
    const middle = last + (beyond - last) / 2;
    // A result that is not for the last few bits of an input is none to cut by.
    if (middle === last || middle === beyond || Math.abs(beyond - last) <= 1e-13 * Math.max(Math.abs(last), Math.abs(beyond))) break;
    if (holds(yield* known.at(middle))) last = middle;
    else beyond = middle;
  }
  return last;
}
