/** Curves as points near enough together. */
import type { Point } from '../types.ts';

/** Points of a curve lie on it, and the straight edges between them leave it by at most this, in mm. */
export const TOLERANCE = 0.1;

/** From one angle to another round a centre, both ends with it. Angles in radians from along towards across. */
export function arc(centre: Point, radius: number, from: number, to: number): Point[] {
  const step = 2 * Math.acos(Math.max(0, 1 - TOLERANCE / radius));
  const steps = Math.max(1, Math.ceil(Math.abs(to - from) / step - 1e-9));
  return Array.from({ length: steps + 1 }, (_, i): Point => {
    const angle = from + ((to - from) * i) / steps;
    return [centre[0] + radius * Math.cos(angle), centre[1] + radius * Math.sin(angle)];
  });
}

/** From a point beside the middle round to the other side, by a circle through the middle further along: for a hem. */
export function bow(half: number, side: number, middle: number): Point[] {
  const rise = middle - side;
  if (rise < 1e-9) return [[side, half], [side, -half]];
  const radius = (half * half + rise * rise) / (2 * rise);
  const centre = middle - radius;
  const angle = Math.atan2(half, side - centre);
  return arc([centre, 0], radius, angle, -angle);
}

/** From a point on a quadratic curve through another half way to a third: without the first point, the last with it. */
export function bend(from: Point, through: Point, to: Point, tolerance = TOLERANCE): Point[] {
  const control: Point = [2 * through[0] - (from[0] + to[0]) / 2, 2 * through[1] - (from[1] + to[1]) / 2];
  const bent = Math.hypot(from[0] - 2 * control[0] + to[0], from[1] - 2 * control[1] + to[1]);
  // Straight pieces of a quadratic curve leave it by a quarter of its bend over the square of their number.
  // An even number, so that the point half way is one of them.
  const steps = bent < 1e-9 ? 1 : 2 * Math.ceil(Math.sqrt(bent / (4 * tolerance)) / 2 - 1e-9);
  return Array.from({ length: steps }, (_, i): Point => {
    const t = (i + 1) / steps, u = 1 - t;
    return i === steps - 1 ? to : [u * u * from[0] + 2 * u * t * control[0] + t * t * to[0], u * u * from[1] + 2 * u * t * control[1] + t * t * to[1]];
  });
}
