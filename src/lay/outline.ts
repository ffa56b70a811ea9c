/** Plain geometry of outlines: bounds, area, laying, crossing. */
import type { Outline, Point, Way } from './types.ts';

export interface Bounds {
  readonly from: Point;
  readonly to: Point;
}

export function boundsOf(outline: Outline): Bounds {
  let left = Infinity, bottom = Infinity, right = -Infinity, top = -Infinity;
  for (const [along, across] of outline) {
    left = Math.min(left, along);
    right = Math.max(right, along);
    bottom = Math.min(bottom, across);
    top = Math.max(top, across);
  }
  return { from: [left, bottom], to: [right, top] };
}

/** The area inside, never negative. */
export function areaOf(outline: Outline): number {
  let sum = 0;
  outline.forEach(([along, across], i) => {
    const [nextAlong, nextAcross] = outline[(i + 1) % outline.length]!;
    sum += along * nextAcross - nextAlong * across;
  });
  return Math.abs(sum) / 2;
}

/** The outline as it lies on the cloth. */
export function laidOutline(outline: Outline, { turn, mirrored, stretch }: Way, at: Point): Outline {
  const [cos, sin] = turnOf(turn);
  const [longer, wider] = stretch ?? [1, 1];
  return outline.map(([along, across]) => {
    const side = mirrored ? -across : across;
    return [(along * cos - side * sin) * longer + at[0], (along * sin + side * cos) * wider + at[1]];
  });
}

/** Exact for quarter turns, whose sine is not quite 0 or 1 in floating point. */
function turnOf(degrees: number): [cos: number, sin: number] {
  const quarter = (((degrees / 90) % 4) + 4) % 4;
  if (Number.isInteger(quarter)) return [[1, 0, -1, 0][quarter]!, [0, 1, 0, -1][quarter]!];
  const radians = (degrees * Math.PI) / 180;
  return [Math.cos(radians), Math.sin(radians)];
}

/** The edges that cross, as their numbers counted from 1, or null. Touching at one point counts. */
export function crossing(outline: Outline): readonly [number, number] | null {
  const n = outline.length;
  // Sorted by where edges begin along the grain, so that only edges side by side are compared: 5,000 points take milliseconds.
  const spans = outline.map((from, i) => {
    const to = outline[(i + 1) % n]!;
    return { i, from, to, low: Math.min(from[0], to[0]), high: Math.max(from[0], to[0]) };
  }).sort((a, b) => a.low - b.low || a.i - b.i);
  for (let k = 0; k < n; k++) {
    const one = spans[k]!;
    for (let m = k + 1; m < n && spans[m]!.low <= one.high; m++) {
      const other = spans[m]!;
      const apart = Math.abs(one.i - other.i);
      if (apart === 1 || apart === n - 1) continue;
      if (meet(one.from, one.to, other.from, other.to)) return one.i < other.i ? [one.i + 1, other.i + 1] : [other.i + 1, one.i + 1];
    }
  }
  return null;
}

const side = (a: Point, b: Point, p: Point): number => Math.sign((b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0]));

function meet(a: Point, b: Point, c: Point, d: Point): boolean {
  if (Math.max(a[1], b[1]) < Math.min(c[1], d[1]) || Math.max(c[1], d[1]) < Math.min(a[1], b[1])) return false;
  if (Math.max(a[0], b[0]) < Math.min(c[0], d[0]) || Math.max(c[0], d[0]) < Math.min(a[0], b[0])) return false;
  return side(a, b, c) * side(a, b, d) <= 0 && side(c, d, a) * side(c, d, b) <= 0;
}

/** Without points that repeat the one before, and without a last point that repeats the first. */
export function withoutRepeats(outline: Outline): Outline {
  const same = (a: Point, b: Point): boolean => a[0] === b[0] && a[1] === b[1];
  const kept = outline.filter((point, i) => i === 0 || !same(point, outline[i - 1]!));
  return kept.length > 1 && same(kept[0]!, kept[kept.length - 1]!) ? kept.slice(0, -1) : kept;
}

/** True when all points lie on one line, or as good as. */
export function isThin(outline: Outline): boolean {
  const first = outline[0]!;
  const away = ([along, across]: Point): number => Math.hypot(along - first[0], across - first[1]);
  const far = outline.reduce((most, point) => (away(point) > away(most) ? point : most), first);
  const length = away(far);
  const off = Math.max(...outline.map((point) => Math.abs((far[0] - first[0]) * (point[1] - first[1]) - (far[1] - first[1]) * (point[0] - first[0]))));
  return off <= length * length * 1e-6;
}
