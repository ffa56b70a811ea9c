/** Paths of SVG from points, arcs and tears. All angles are in radians, from the right towards the bottom of the page. */
import { place } from './scale.ts';

export type Point = readonly [x: number, y: number];

const at = ([x, y]: Point): string => `${place(x)} ${place(y)}`;

export function line(...points: readonly Point[]): string {
  return points.map((point, i) => `${i === 0 ? 'M' : 'L'}${at(point)}`).join('');
}

export const area = (...points: readonly Point[]): string => `${line(...points)}Z`;

export const box = (x: number, y: number, width: number, height: number): string =>
  area([x, y], [x + width, y], [x + width, y + height], [x, y + height]);

export const polar = ([x, y]: Point, radius: number, angle: number): Point => [x + radius * Math.cos(angle), y + radius * Math.sin(angle)];

/** On from where the path is; in halves, because an arc that ends where it began would be nothing. */
function arcTo(centre: Point, radius: number, from: number, to: number): string {
  const sweep = to > from ? 1 : 0;
  const middle = (from + to) / 2;
  return [middle, to].map((angle) => `A${place(radius)} ${place(radius)} 0 0 ${sweep} ${at(polar(centre, radius, angle))}`).join('');
}

export function arc(centre: Point, radius: number, from: number, to: number): string {
  return `M${at(polar(centre, radius, from))}${arcTo(centre, radius, from, to)}`;
}

export const circle = (centre: Point, radius: number): string => `${arc(centre, radius, 0, 2 * Math.PI)}Z`;

/** A ring sector, `outer` > `inner` ≥ 0, `to` > `from`. */
export function sector(centre: Point, inner: number, outer: number, from: number, to: number): string {
  if (to - from > 2 * Math.PI - 1e-9) return circle(centre, outer) + (inner > 0 ? `${arc(centre, inner, 2 * Math.PI, 0)}Z` : '');
  return `${arc(centre, outer, from, to)}L${at(polar(centre, inner, to))}${inner > 0 ? arcTo(centre, inner, to, from) : ''}Z`;
}

/** An edge where the cloth goes on but the picture stops. */
export function torn(x: number, top: number, bottom: number): Point[] {
  const teeth = Math.max(2, 2 * Math.round((bottom - top) / 12));
  return Array.from({ length: teeth + 1 }, (_, i) => [x + (i === 0 || i === teeth ? 0 : i % 2 === 0 ? -2.5 : 2.5), top + ((bottom - top) * i) / teeth] as const);
}

/** The same from left to right. */
export const tornAcross = (y: number, left: number, right: number): Point[] => torn(y, left, right).map(([aside, along]) => [along, aside] as const);

/** Slanting lines inside a box, so that a zone shows in black and white. */
export function hatch(x: number, y: number, width: number, height: number): string {
  const step = 5;
  let d = '';
  for (let start = x - height + step; start < x + width; start += step) {
    const [low, high] = [Math.max(start, x), Math.min(start + height, x + width)];
    if (high > low) d += line([low, y + height - (low - start)], [high, y + height - (high - start)]);
  }
  return d;
}

/** A fold of cloth seen from the hem: on from `y1` to `y2` round the edge at `x`, the cloth lying to the left (−1) or right (1) of it. */
export function turn(x: number, y1: number, y2: number, cloth: -1 | 1, width: number): string {
  const across = Math.min(Math.abs(y2 - y1) / 2, width);
  const clockwise = (cloth === -1) === (y2 > y1) ? 1 : 0;
  return `L${at([x + cloth * across, y1])}A${place(across)} ${place(Math.abs(y2 - y1) / 2)} 0 0 ${clockwise} ${at([x + cloth * across, y2])}`;
}

/** A smooth line on from a point where the path is, upright at every point. */
export function flowOn(from: Point, points: readonly Point[]): string {
  return points.map((point, i) => {
    const before = points[i - 1] ?? from;
    const middle = (before[1] + point[1]) / 2;
    return `C${at([before[0], middle])} ${at([point[0], middle])} ${at(point)}`;
  }).join('');
}

export const flowing = (points: readonly Point[]): string => line(points[0]!) + flowOn(points[0]!, points.slice(1));

/** The head of an arrow whose point is here and which flies this way. */
export function arrowHead(tip: Point, angle: number): string {
  return area(tip, polar(tip, 6, angle + Math.PI - 0.35), polar(tip, 6, angle + Math.PI + 0.35));
}
