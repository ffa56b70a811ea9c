/**
 * Closing in on a crossing between two inputs whose results lie on two sides of
 * what is wanted. The steps are those of T. R. Chandrupatla, "A new hybrid
 * quadratic/bisection algorithm for finding the zero of a nonlinear function
 * without using derivatives", Advances in Engineering Software 28 (1997),
 * 145–149: inverse quadratic interpolation where the last three points allow
 * it, else halving, so that a jump or a pole is closed in on as surely as a zero.
 */
import type { Known } from './known.ts';
import type { Point, Trying } from './types.ts';

/** The two last points, on two sides of what is wanted (or one of them on it); or an input between them that has no result. */
export type Closed = { readonly ends: readonly [Point, Point] } | { readonly hole: number };

/** Halving alone takes fewer for any two doubles of like size. */
const MOST_STEPS = 200;

/** @param from,to with results on two sides of `wanted` */
export function* closeIn(known: Known, wanted: number, from: Point, to: Point): Trying<Closed> {
  let [a, b] = [to, from];
  let t = 0.5;
  for (let n = 0; n < MOST_STEPS; n++) {
    const x = a.x + t * (b.x - a.x);
    // No double lies between them.
    if (x === a.x || x === b.x) {
      const middle = a.x + (b.x - a.x) / 2;
      if (middle === a.x || middle === b.x) break;
      t = 0.5;
      continue;
    }
    const y = yield* known.at(x);
    if (y === null) return { hole: x };
    let c: Point;
    if (Math.sign(y - wanted) === Math.sign(a.y - wanted)) c = a;
    else {
      c = b;
      b = a;
    }
    a = { x, y };
    if (y === wanted) return { ends: [a, a] };
    t = nextStep(wanted, a, b, c);
    const least = (2 ** -53 * Math.max(Math.abs(a.x), Math.abs(b.x))) / Math.abs(b.x - a.x);
    if (least >= 0.5) {
      t = 0.5;
      continue;
    }
    t = Math.min(1 - least, Math.max(least, t));
  }
  return { ends: [a, b] };
}

/** How far from `a` towards `b` to try next. */
function nextStep(wanted: number, a: Point, b: Point, c: Point): number {
  const [fa, fb, fc] = [a.y - wanted, b.y - wanted, c.y - wanted];
  const xi = (a.x - b.x) / (c.x - b.x);
  const phi = (fa - fb) / (fc - fb);
  if (!(phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi)) return 0.5;
  const t = (fa / (fb - fa)) * (fc / (fb - fc)) + ((c.x - a.x) / (b.x - a.x)) * (fa / (fc - fa)) * (fb / (fc - fb));
  return Number.isFinite(t) ? t : 0.5;
}
