/** Closing in on where a result comes nearest to what is wanted and turns round: the golden section, which needs no derivative. */
import type { Known } from './known.ts';
import type { Trying } from './types.ts';

const GOLDEN = (Math.sqrt(5) - 1) / 2;
/** After these the stretch is less than 1e-8 of what it was; nearer a turning point cannot be told from its neighbours. */
const STEPS = 42;

/**
 * Tries inputs between `low` and `high` until the result has crossed what is
 * wanted or the turning point is found. What was met is in `known`.
 * @param side on which the results lie: 1 above, -1 below
 */
export function* turn(known: Known, wanted: number, low: number, high: number, side: number, round: (x: number) => number): Trying<void> {
  let [a, b] = [low, high];
  const away = function* (x: number): Trying<number> {
    const y = yield* known.at(round(x));
    return y === null ? Infinity : (y - wanted) * side;
  };
  let [p, q] = [b - GOLDEN * (b - a), a + GOLDEN * (b - a)];
  let [fp, fq] = [yield* away(p), yield* away(q)];
  for (let n = 0; n < STEPS && fp > 0 && fq > 0 && round(p) !== round(q); n++) {
    if (fp <= fq) {
      [b, q, fq] = [q, p, fp];
      p = b - GOLDEN * (b - a);
      fp = yield* away(p);
    } else {
      [a, p, fp] = [p, q, fq];
      q = a + GOLDEN * (b - a);
      fq = yield* away(q);
    }
  }
}
