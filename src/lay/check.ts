/**
 * Proof that a layout can be cut. It shares nothing with the search: pieces
 * are laid from their own outlines, pairs that meet are handed to a polygon
 * clipping library, and the area of what they have in common is measured.
 */
import { difference, intersection, type Geom } from 'polyclip-ts';
import { areaOf, boundsOf, laidOutline, type Bounds } from './outline.ts';
import { clothWidth } from './places.ts';
import type { Cloth, Layout, Outline, Place, Point } from './types.ts';

/** Of the smaller piece's area: what two pieces may have in common. */
export const MOST_OVERLAP = 1e-6;

/** Of the cloth's width: how far a piece may stick out across, so that two halves of the width fit beside each other. */
const MOST_OUTSIDE = 1e-6;

interface Lying {
  readonly name: string;
  readonly outline: Outline;
  readonly bounds: Bounds;
  readonly area: number;
}

/** What is wrong with the layout, one sentence each; empty when it is proven. */
export function layoutFaults(layout: Layout, places: readonly Place[], cloth: Cloth, nameOf = (place: number): string => `Place ${place + 1}`): readonly string[] {
  const faults: string[] = [];
  const lying: Lying[] = layout.laid.map(({ place, way, at }) => {
    const outline = laidOutline(places[place]?.outline ?? [], way, at);
    return { name: nameOf(place), outline, bounds: boundsOf(outline), area: areaOf(outline) };
  });
  places.forEach(({ count }, i) => {
    const laid = layout.laid.filter(({ place }) => place === i).length;
    if (laid !== count) faults.push(`${nameOf(i)} is laid ${laid} times instead of ${count}.`);
  });
  layout.laid.forEach(({ place, way }, i) => {
    if (!places[place]?.ways.some(({ turn, mirrored }) => turn === way.turn && mirrored === way.mirrored)) faults.push(`${nameOf(place)} is turned by ${way.turn}°${way.mirrored ? ' and mirrored' : ''}, which is not allowed.`);
    faults.push(...outside(lying[i]!, layout, places[place]!, cloth));
  });
  const order = lying.slice().sort((a, b) => a.bounds.from[0] - b.bounds.from[0]);
  for (let i = 0; i < order.length; i++) {
    const one = order[i]!;
    for (let j = i + 1; j < order.length && order[j]!.bounds.from[0] < one.bounds.to[0] + cloth.gap; j++) {
      const fault = together(one, order[j]!, cloth.gap);
      if (fault) faults.push(fault);
    }
  }
  for (const flaw of cloth.flaws) {
    const hole: Lying = { name: 'a flaw', outline: flaw, bounds: boundsOf(flaw), area: areaOf(flaw) };
    for (const one of lying) {
      const common = commonArea(one, hole);
      if (common > MOST_OVERLAP * Math.min(one.area, hole.area)) faults.push(`${one.name} lies on a flaw.`);
    }
  }
  return faults;
}

function outside(one: Lying, layout: Layout, place: Place, cloth: Cloth): string[] {
  const width = clothWidth(cloth);
  const slack = MOST_OUTSIDE * width;
  const rounding = 1e-9 * Math.max(width, layout.length);
  const { from, to } = one.bounds;
  if (from[0] < -rounding || from[1] < -slack || to[1] > width + slack || to[0] > layout.length + rounding) return [`${one.name} sticks out of the cloth.`];
  if (place.onFold && Math.abs(from[1]) > slack) return [`${one.name} does not lie on the fold.`];
  if (cloth.remnant) {
    const beyond = difference(closed(one.outline), closed(cloth.remnant)).reduce((sum, polygon) => sum + polygonArea(polygon), 0);
    if (beyond > MOST_OVERLAP * one.area) return [`${one.name} sticks out of the remnant.`];
  }
  return [];
}

function together(one: Lying, other: Lying, gap: number): string | null {
  if (one.bounds.from[1] >= other.bounds.to[1] + gap || other.bounds.from[1] >= one.bounds.to[1] + gap) return null;
  const common = commonArea(one, other);
  if (common > MOST_OVERLAP * Math.min(one.area, other.area)) return `${one.name} and ${other.name} overlap by ${common.toPrecision(3)}.`;
  if (gap > 0 && distance(one.outline, other.outline) < gap * (1 - 1e-6)) return `${one.name} and ${other.name} are nearer than the gap.`;
  return null;
}

/** The area that both cover. Pairs that plainly lie apart are not clipped: that takes a hundred times as long. */
function commonArea(one: Lying, other: Lying): number {
  if (one.bounds.from[0] > other.bounds.to[0] || other.bounds.from[0] > one.bounds.to[0] || one.bounds.from[1] > other.bounds.to[1] || other.bounds.from[1] > one.bounds.to[1]) return 0;
  if (!edgesMeet(one.outline, other.outline) && !holds(one.outline, other.outline[0]!) && !holds(other.outline, one.outline[0]!)) return 0;
  return intersection(closed(one.outline), closed(other.outline)).reduce((sum, polygon) => sum + polygonArea(polygon), 0);
}

const closed = (outline: Outline): Geom => [[...outline, outline[0]!].map(([along, across]) => [along, across] as [number, number])];

const polygonArea = (rings: readonly (readonly [number, number][])[]): number => rings.reduce((sum, ring, i) => sum + (i === 0 ? 1 : -1) * areaOf(ring.slice(0, -1)), 0);

/** True when edges touch or cross. Errs towards true near touching, which costs time and no truth. */
function edgesMeet(one: Outline, other: Outline): boolean {
  for (let i = 0; i < one.length; i++) {
    const a = one[i]!, b = one[(i + 1) % one.length]!;
    for (let j = 0; j < other.length; j++) {
      const c = other[j]!, d = other[(j + 1) % other.length]!;
      if (Math.max(a[0], b[0]) < Math.min(c[0], d[0]) || Math.max(c[0], d[0]) < Math.min(a[0], b[0])) continue;
      if (Math.max(a[1], b[1]) < Math.min(c[1], d[1]) || Math.max(c[1], d[1]) < Math.min(a[1], b[1])) continue;
      if (apart(a, b, c, d) || apart(c, d, a, b)) continue;
      return true;
    }
  }
  return false;
}

/** Both ends of c–d are clearly on one side of a–b. */
function apart(a: Point, b: Point, c: Point, d: Point): boolean {
  const one = (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
  const other = (b[0] - a[0]) * (d[1] - a[1]) - (b[1] - a[1]) * (d[0] - a[0]);
  const doubt = 1e-12 * (Math.abs(b[0]) + Math.abs(b[1]) + Math.abs(a[0]) + Math.abs(a[1])) * (Math.abs(c[0]) + Math.abs(c[1]) + Math.abs(d[0]) + Math.abs(d[1]) + Math.abs(a[0]) + Math.abs(a[1]));
  return (one > doubt && other > doubt) || (one < -doubt && other < -doubt);
}

function holds(outline: Outline, [along, across]: Point): boolean {
  let inside = false;
  for (let i = 0, j = outline.length - 1; i < outline.length; j = i++) {
    const [ax, ay] = outline[i]!, [bx, by] = outline[j]!;
    if (ay > across !== by > across && along < ((bx - ax) * (across - ay)) / (by - ay) + ax) inside = !inside;
  }
  return inside;
}

/** The least distance between the edges of two outlines that lie apart. */
function distance(one: Outline, other: Outline): number {
  let least = Infinity;
  for (const [points, edges] of [[one, other], [other, one]] as const) {
    for (const point of points) {
      edges.forEach((from, i) => {
        least = Math.min(least, toEdge(point, from, edges[(i + 1) % edges.length]!));
      });
    }
  }
  return least;
}

function toEdge(p: Point, a: Point, b: Point): number {
  const dx = b[0] - a[0], dy = b[1] - a[1];
  const t = Math.max(0, Math.min(1, ((p[0] - a[0]) * dx + (p[1] - a[1]) * dy) / (dx * dx + dy * dy)));
  return Math.hypot(p[0] - a[0] - t * dx, p[1] - a[1] - t * dy);
}
