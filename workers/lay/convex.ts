/**
 * Cuts an outline into convex parts: ears are cut off, then parts are joined
 * again across every cut that is not needed (Hertel and Mehlhorn 1983). The
 * no-fit polygon of two outlines is the union of the sums of their parts.
 */
import type { Ring } from './flat.ts';

const turn = (ax: number, ay: number, bx: number, by: number, cx: number, cy: number): number => (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);

/** Triples of vertex numbers. The outline is anticlockwise and does not cross itself. */
function ears(ring: Ring): number[][] {
  const left = Array.from({ length: ring.length / 2 }, (_, i) => i);
  const x = (i: number): number => ring[2 * i]!;
  const y = (i: number): number => ring[2 * i + 1]!;
  const triangles: number[][] = [];
  while (left.length > 3) {
    const n = left.length;
    let chosen = -1;
    let chosenScore = -Infinity;
    for (let k = 0; k < n; k++) {
      const a = left[(k + n - 1) % n]!, b = left[k]!, c = left[(k + 1) % n]!;
      const area = turn(x(a), y(a), x(b), y(b), x(c), y(c));
      if (area < 0) continue;
      const free = left.every((p) => {
        if (p === a || p === b || p === c) return true;
        if ((x(p) === x(a) && y(p) === y(a)) || (x(p) === x(b) && y(p) === y(b)) || (x(p) === x(c) && y(p) === y(c))) return true;
        return turn(x(a), y(a), x(b), y(b), x(p), y(p)) < 0 || turn(x(b), y(b), x(c), y(c), x(p), y(p)) < 0 || turn(x(c), y(c), x(a), y(a), x(p), y(p)) < 0;
      });
      if (!free) continue;
      // The shortest cut first: it makes fewer slivers.
      const score = -((x(a) - x(c)) ** 2 + (y(a) - y(c)) ** 2);
      if (score > chosenScore) {
        chosenScore = score;
        chosen = k;
      }
    }
    // Rounding can leave no ear: then the outline touches itself, and any corner will do.
    if (chosen < 0) chosen = 0;
    triangles.push([left[(chosen + n - 1) % n]!, left[chosen]!, left[(chosen + 1) % n]!]);
    left.splice(chosen, 1);
  }
  triangles.push(left);
  return triangles;
}

function isConvex(part: readonly number[], ring: Ring): boolean {
  const n = part.length;
  for (let i = 0; i < n; i++) {
    const a = part[i]! * 2, b = part[(i + 1) % n]! * 2, c = part[(i + 2) % n]! * 2;
    if (turn(ring[a]!, ring[a + 1]!, ring[b]!, ring[b + 1]!, ring[c]!, ring[c + 1]!) < 0) return false;
  }
  return true;
}

/** `one` and `other` joined across an edge they share, or null. */
function joined(one: readonly number[], other: readonly number[]): number[] | null {
  for (let i = 0; i < one.length; i++) {
    const from = one[i]!, to = one[(i + 1) % one.length]!;
    const j = other.indexOf(to);
    if (j < 0 || other[(j + 1) % other.length] !== from) continue;
    const around = Array.from({ length: one.length }, (_, k) => one[(i + 1 + k) % one.length]!);
    const inside = Array.from({ length: other.length - 2 }, (_, k) => other[(j + 2 + k) % other.length]!);
    return [...around, ...inside];
  }
  return null;
}

export function convexParts(ring: Ring): Ring[] {
  const parts = ears(ring);
  for (let i = 0; i < parts.length; i++) {
    for (let j = i + 1; j < parts.length; j++) {
      const both = joined(parts[i]!, parts[j]!);
      if (!both || !isConvex(both, ring)) continue;
      parts[i] = both;
      parts.splice(j, 1);
      j = i;
    }
  }
  return parts.map((part) => part.flatMap((k) => [ring[2 * k]!, ring[2 * k + 1]!]));
}

/** Sum of two convex rings, both anticlockwise: their edges merged by direction. */
export function convexSum(one: Ring, other: Ring): { x: number; y: number }[] {
  const n = one.length / 2;
  const m = other.length / 2;
  let i = lowest(one);
  let j = lowest(other);
  const sum: { x: number; y: number }[] = [];
  for (let a = 0, b = 0; a < n || b < m;) {
    sum.push({ x: one[2 * i]! + other[2 * j]!, y: one[2 * i + 1]! + other[2 * j + 1]! });
    const i2 = (i + 1) % n, j2 = (j + 1) % m;
    const ux = one[2 * i2]! - one[2 * i]!, uy = one[2 * i2 + 1]! - one[2 * i + 1]!;
    const vx = other[2 * j2]! - other[2 * j]!, vy = other[2 * j2 + 1]! - other[2 * j + 1]!;
    const cross = ux * vy - uy * vx;
    const first = a < n && (b >= m || cross >= 0);
    const second = b < m && (a >= n || cross <= 0);
    if (first) {
      i = i2;
      a++;
    }
    if (second) {
      j = j2;
      b++;
    }
  }
  return sum;
}

function lowest(ring: Ring): number {
  let best = 0;
  for (let i = 1; i < ring.length / 2; i++) {
    const dy = ring[2 * i + 1]! - ring[2 * best + 1]!;
    if (dy < 0 || (dy === 0 && ring[2 * i]! < ring[2 * best]!)) best = i;
  }
  return best;
}
