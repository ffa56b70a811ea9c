/**
 * Proof that a layout can be cut. It shares nothing with the search: pieces
 * are laid from their own outlines, pairs that meet are handed to a polygon
 * clipping library, and the area of what they have in common is measured.
 */
import { difference, intersection, type Geom } from 'polyclip-ts';
import { areaOf, boundsOf, laidOutline, type Bounds } from './outline.ts';
import type { Cloth, Layout, Outline, Place, Point, Way } from './types.ts';

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
export function layoutFaults(layout: Layout, places: readonly Place[], given: Cloth, nameOf = (place: number): string => `Place ${place + 1}`): readonly string[] {
  const cloth = layout.foldAt === undefined ? given : { ...given, foldAt: layout.foldAt };
  const faults = [...foldFaults(layout, given)];
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
    faults.push(...outside(lying[i]!, layout, places[place]!, cloth), ...wayFaults(lying[i]!.name, way, places[place]!, cloth));
  });
  faults.push(...offPrint(layout, places, cloth, nameOf));
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

/** The fold lies where it was asked for, and leaves cloth on both sides. */
function foldFaults({ foldAt }: Layout, cloth: Cloth): string[] {
  if (foldAt === undefined) return [];
  if (cloth.fold !== 'partly' || !(foldAt > 0 && foldAt <= (cloth.width / 2) * (1 + 1e-9))) return ['The fold lies where this cloth cannot be folded.'];
  return cloth.foldAt !== undefined && cloth.foldAt !== foldAt ? ['The fold does not lie where it was asked for.'] : [];
}

/** Of the cloth as it lies: how wide, and how much of that from the fold is double. */
function spread({ width, fold, foldAt }: Cloth): { lying: number; double: number } {
  if (fold === 'open') return { lying: width, double: 0 };
  if (fold === 'crosswise') return { lying: width, double: width };
  const double = fold === 'lengthwise' ? width / 2 : Math.min(foldAt ?? width / 2, width / 2);
  return { lying: width - double, double };
}

/** Layers, nap and shrinkage, from the cloth itself and not from what the places allow. */
function wayFaults(name: string, { turn, stretch }: Way, { layers = 1 }: Place, cloth: Cloth): string[] {
  const faults: string[] = [];
  const upright = Math.cos((turn * Math.PI) / 180) > 1e-9;
  if (cloth.oneWay && (!upright || (layers === 2 && cloth.fold === 'crosswise'))) faults.push(`${name} lies against the one way of the cloth.`);
  const { along = 0, across = 0 } = cloth.shrinkage ?? {};
  const [longer, wider] = stretch ?? [1, 1];
  if (Math.abs(longer * (1 - along) - 1) > 1e-9 || Math.abs(wider * (1 - across) - 1) > 1e-9) faults.push(`${name} is not laid larger by what the cloth will shrink.`);
  return faults;
}

/** Points with one mark lie at one place of the print. */
function offPrint({ laid }: Layout, places: readonly Place[], { width, repeat }: Cloth, nameOf: (place: number) => string): string[] {
  if (!repeat) return [];
  const faults: string[] = [];
  const first = new Map<string, { name: string; at: Point }>();
  for (const { place, way, at } of laid) {
    for (const { mark, at: own } of places[place]?.matches ?? []) {
      const [point] = laidOutline([own], way, at);
      const other = first.get(mark);
      if (!other) {
        first.set(mark, { name: nameOf(place), at: point! });
        continue;
      }
      const off = ([repeat.along, repeat.across] as const).some((every, axis) => every > 0 && Math.abs(fromWhole((point![axis]! - other.at[axis]!) / every)) * every > MOST_OUTSIDE * Math.max(width, every));
      if (off) faults.push(`${nameOf(place)} does not meet the print at “${mark}” where ${other.name} does.`);
    }
  }
  return faults;
}

const fromWhole = (value: number): number => value - Math.round(value);

function outside(one: Lying, layout: Layout, place: Place, cloth: Cloth): string[] {
  const { lying: width, double } = spread(cloth);
  const slack = MOST_OUTSIDE * width;
  const rounding = 1e-9 * Math.max(width, layout.length);
  const { from, to } = one.bounds;
  if (from[0] < -rounding || from[1] < -slack || to[1] > width + slack || to[0] > layout.length + rounding) return [`${one.name} sticks out of the cloth.`];
  const layers = place.layers ?? (cloth.fold === 'open' ? 1 : 2);
  if (layers === 2 && to[1] > double + slack) return [cloth.fold === 'open' ? `${one.name} is to be cut from two layers, and the cloth is not folded.` : `${one.name} is to be cut from two layers and lies where there is one.`];
  if (layers === 1 && from[1] < double - slack) return [`${one.name} is to be cut from one layer and lies where there are two.`];
  if (place.onFold && (cloth.fold === 'open' || cloth.fold === 'crosswise' || Math.abs(from[1]) > slack)) return [`${one.name} does not lie on the fold.`];
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
  if (gap > 0 && distance(one, other, gap) < gap * (1 - 1e-6)) return `${one.name} and ${other.name} are nearer than the gap.`;
  return null;
}

/** The area that both cover. Pairs that plainly lie apart are not clipped: that takes a hundred times as long. */
function commonArea(one: Lying, other: Lying): number {
  if (one.bounds.from[0] > other.bounds.to[0] || other.bounds.from[0] > one.bounds.to[0] || one.bounds.from[1] > other.bounds.to[1] || other.bounds.from[1] > one.bounds.to[1]) return 0;
  if (!edgesMeet(one, other) && !holds(one.outline, other.outline[0]!) && !holds(other.outline, one.outline[0]!)) return 0;
  return intersection(closed(one.outline), closed(other.outline)).reduce((sum, polygon) => sum + polygonArea(polygon), 0);
}

const closed = (outline: Outline): Geom => [[...outline, outline[0]!].map(([along, across]) => [along, across] as [number, number])];

const polygonArea = (rings: readonly (readonly [number, number][])[]): number => rings.reduce((sum, ring, i) => sum + (i === 0 ? 1 : -1) * areaOf(ring.slice(0, -1)), 0);

/** True when edges touch or cross. Errs towards true near touching, which costs time and no truth. Only edges that reach into the bounds of both are compared. */
function edgesMeet(one: Lying, other: Lying): boolean {
  const left = Math.max(one.bounds.from[0], other.bounds.from[0]), right = Math.min(one.bounds.to[0], other.bounds.to[0]);
  const bottom = Math.max(one.bounds.from[1], other.bounds.from[1]), top = Math.min(one.bounds.to[1], other.bounds.to[1]);
  const within = ({ outline }: Lying): (readonly [Point, Point])[] => outline.flatMap((a, i) => {
    const b = outline[(i + 1) % outline.length]!;
    const away = Math.max(a[0], b[0]) < left || Math.min(a[0], b[0]) > right || Math.max(a[1], b[1]) < bottom || Math.min(a[1], b[1]) > top;
    return away ? [] : [[a, b] as const];
  });
  const others = within(other);
  for (const [a, b] of within(one)) {
    for (const [c, d] of others) {
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

/** The least distance between the edges of two outlines that lie apart, where that is less than `gap`. Points further than that from the other's bounds are passed over. */
function distance(one: Lying, other: Lying, gap: number): number {
  let least = Infinity;
  for (const [points, edges] of [[one, other], [other, one]] as const) {
    const { from, to } = edges.bounds;
    for (const point of points.outline) {
      if (point[0] < from[0] - gap || point[0] > to[0] + gap || point[1] < from[1] - gap || point[1] > to[1] + gap) continue;
      edges.outline.forEach((start, i) => {
        const end = edges.outline[(i + 1) % edges.outline.length]!;
        if (Math.min(start[0], end[0]) > point[0] + gap || Math.max(start[0], end[0]) < point[0] - gap) return;
        least = Math.min(least, toEdge(point, start, end));
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
