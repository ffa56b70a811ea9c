/**
 * Fewer points on a curve, and never less piece: the simplified outline holds
 * the whole of the given one, so that a layout of simplified pieces is a layout
 * of the pieces. A point in a hollow may go; so may an edge between two bulging
 * corners when its neighbours are prolonged until they meet.
 */
import { anticlockwise, crossesItself, type Ring } from './flat.ts';

/**
 * @param tolerance how far the outline may move outwards for one point less
 * @param most points that may be left; above it the tolerance grows
 */
export function simplifyOutwards(ring: Ring, tolerance: number, most = Infinity): Ring {
  const made = simplified(ring, tolerance, 0);
  const simple = crossesItself(made) ? ring : made;
  if (simple.length / 2 <= most) return simple;
  const fewer = simplified(simple, Infinity, most);
  if (fewer.length / 2 <= most && !crossesItself(fewer)) return fewer;
  // Whatever else its edge does, the piece lies within its hull.
  const hull = anticlockwise(hullOf(ring));
  return hull.length / 2 <= most ? hull : simplified(hull, Infinity, most);
}

/** Takes the point away that adds the least, as long as there are more than `enough`, or one within the tolerance. */
function simplified(ring: Ring, tolerance: number, enough: number): Ring {
  let left = ring.length / 2;
  const x = Float64Array.from({ length: left }, (_, i) => ring[2 * i]!), y = Float64Array.from({ length: left }, (_, i) => ring[2 * i + 1]!);
  const next = Int32Array.from({ length: left }, (_, i) => (i + 1) % left), before = Int32Array.from({ length: left }, (_, i) => (i + left - 1) % left);
  /** What taking each point away adds in area; Infinity where it may not go. */
  const added = new Float64Array(left);
  const meetX = new Float64Array(left), meetY = new Float64Array(left);
  const turn = (a: number, b: number, c: number): number => (x[b]! - x[a]!) * (y[c]! - y[a]!) - (y[b]! - y[a]!) * (x[c]! - x[a]!);

  /** A point in a hollow just goes; with a bulging one goes its edge to the next, and it moves to where their neighbours meet. */
  const weigh = (i: number): void => {
    const a = before[i]!, b = next[i]!, c = next[b]!;
    added[i] = Infinity;
    const here = turn(a, i, b);
    meetX[i] = NaN;
    if (here <= 0) {
      const chord = Math.hypot(x[b]! - x[a]!, y[b]! - y[a]!);
      if (chord > 0 && -here / chord <= tolerance) added[i] = -here / 2;
      return;
    }
    if (turn(i, b, c) <= 0) return;
    const ux = x[i]! - x[a]!, uy = y[i]! - y[a]!, vx = x[b]! - x[c]!, vy = y[b]! - y[c]!;
    const cross = ux * vy - uy * vx;
    if (cross >= 0) return;
    const wx = x[b]! - x[i]!, wy = y[b]! - y[i]!;
    const t = (wx * vy - wy * vx) / cross;
    if (!(t > 0)) return;
    const mx = x[i]! + ux * t, my = y[i]! + uy * t;
    const edge = Math.hypot(wx, wy);
    const away = Math.abs(wx * (my - y[i]!) - wy * (mx - x[i]!)) / edge;
    // Two edges that hardly meet would make a spike.
    if (away > tolerance || away > edge * 20) return;
    added[i] = (edge * away) / 2;
    meetX[i] = Math.round(mx);
    meetY[i] = Math.round(my);
  };

  let first = 0;
  for (let i = 0; i < left; i++) weigh(i);
  while (left > 4 && left > enough) {
    let best = -1, least = Infinity;
    for (let i = first, n = 0; n < left; n++, i = next[i]!) {
      if (added[i]! < least) {
        least = added[i]!;
        best = i;
      }
    }
    if (best < 0) break;
    let gone = best;
    if (!Number.isNaN(meetX[best]!)) {
      x[best] = meetX[best]!;
      y[best] = meetY[best]!;
      gone = next[best]!;
    }
    const a = before[gone]!, b = next[gone]!;
    next[a] = b;
    before[b] = a;
    first = a;
    left--;
    for (const near of [before[before[a]!]!, before[a]!, a, b, next[b]!]) weigh(near);
  }
  const out: number[] = [];
  for (let i = first, n = 0; n < left; n++, i = next[i]!) out.push(x[i]!, y[i]!);
  return out;
}

/** The convex hull (monotone chain, Andrew 1979). */
function hullOf(ring: Ring): Ring {
  const points = Array.from({ length: ring.length / 2 }, (_, i) => [ring[2 * i]!, ring[2 * i + 1]!] as const).sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  const half = (list: typeof points): (readonly [number, number])[] => {
    const kept: (readonly [number, number])[] = [];
    for (const point of list) {
      for (;;) {
        const b = kept.at(-1), a = kept.at(-2);
        if (!a || !b || (b[0] - a[0]) * (point[1] - a[1]) - (b[1] - a[1]) * (point[0] - a[0]) > 0) break;
        kept.pop();
      }
      kept.push(point);
    }
    return kept.slice(0, -1);
  };
  return [...half(points), ...half(points.slice().reverse())].flat();
}
