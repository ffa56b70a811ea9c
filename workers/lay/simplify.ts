/**
 * Fewer points on a curve, and never less piece: the simplified outline holds
 * the whole of the given one, so that a layout of simplified pieces is a layout
 * of the pieces. A point in a hollow may go; so may an edge between two bulging
 * corners when its neighbours are prolonged until they meet.
 */
import { crossesItself, type Ring } from './flat.ts';

interface Step {
  readonly at: number;
  readonly added: number;
  /** Where the neighbours of a bulging edge meet; null when a hollow's point just goes. */
  readonly meet: readonly [number, number] | null;
}

/** @param tolerance how far the outline may move outwards */
export function simplifyOutwards(ring: Ring, tolerance: number): Ring {
  let now = ring.slice();
  for (;;) {
    const step = cheapest(now, tolerance);
    if (!step) break;
    const next = now.slice();
    const n = now.length / 2;
    if (step.meet) {
      const after = (step.at + 1) % n;
      next[2 * step.at] = step.meet[0];
      next[2 * step.at + 1] = step.meet[1];
      next.splice(2 * after, 2);
    } else {
      next.splice(2 * step.at, 2);
    }
    now = next;
  }
  return crossesItself(now) ? ring : now;
}

function cheapest(ring: Ring, tolerance: number): Step | null {
  const n = ring.length / 2;
  if (n <= 4) return null;
  let best: Step | null = null;
  const x = (i: number): number => ring[2 * ((i + n) % n)]!;
  const y = (i: number): number => ring[2 * ((i + n) % n) + 1]!;
  const turn = (a: number, b: number, c: number): number => (x(b) - x(a)) * (y(c) - y(a)) - (y(b) - y(a)) * (x(c) - x(a));
  for (let i = 0; i < n; i++) {
    const here = turn(i - 1, i, i + 1);
    if (here <= 0) {
      const chord = Math.hypot(x(i + 1) - x(i - 1), y(i + 1) - y(i - 1));
      if (chord > 0 && -here / chord <= tolerance && (!best || -here / 2 < best.added)) best = { at: i, added: -here / 2, meet: null };
      continue;
    }
    if (turn(i, i + 1, i + 2) <= 0) continue;
    const ux = x(i) - x(i - 1), uy = y(i) - y(i - 1);
    const vx = x(i + 1) - x(i + 2), vy = y(i + 1) - y(i + 2);
    const cross = ux * vy - uy * vx;
    if (cross >= 0) continue;
    const wx = x(i + 1) - x(i), wy = y(i + 1) - y(i);
    const t = (wx * vy - wy * vx) / cross;
    if (!(t > 0)) continue;
    // Rounded away from the middle of the edge, so that the whole-number corner stays outside.
    const mx = x(i) + ux * t, my = y(i) + uy * t;
    const away = Math.abs(wx * (my - y(i)) - wy * (mx - x(i))) / Math.hypot(wx, wy);
    const added = (Math.hypot(wx, wy) * away) / 2;
    if (away > tolerance || (best && added >= best.added)) continue;
    best = { at: i, added, meet: [Math.round(mx), Math.round(my)] };
  }
  return best;
}
