/** Why pieces cannot fit what is at hand, whatever the layout. */
import { intersection, union, type Geom } from 'polyclip-ts';
import { bandOf, clothLength, clothWidth, stretchOf } from './cloth.ts';
import { areaOf, boundsOf } from './outline.ts';
import type { Cloth, Outline, Place } from './types.ts';

/** What rounding may add to an area or a length. */
const ROUNDING = 1e-9;

/** One sentence; null when nothing proves it, which does not mean that they fit. */
export function proofAgainst(places: readonly Place[], cloth: Cloth): string | null {
  const length = clothLength(cloth);
  if (length === null) return null;
  return tooMuchOnFold(places, cloth, length) ?? tooMuch(places, cloth, length);
}

/** Edges on the fold lie one behind the other. */
function tooMuchOnFold(places: readonly Place[], cloth: Cloth, length: number): string | null {
  const needs = stretchOf(cloth)[0] * places.reduce((sum, { outline, count, onFold }) => (onFold ? sum + count * foldEdge(outline) : sum), 0);
  if (needs <= length * (1 + ROUNDING)) return null;
  return `The pieces do not fit: those on the fold need ${percent(needs / length)} of its length. Open the cloth, or take more of it.`;
}

/** Of an outline, how long its edge at 0 across is: what no other piece on the fold can have. */
function foldEdge(outline: Outline): number {
  const { from, to } = boundsOf(outline);
  const slack = (to[1] - from[1]) * ROUNDING;
  return outline.reduce((sum, [along, across], i) => {
    const [nextAlong, nextAcross] = outline[(i + 1) % outline.length]!;
    return Math.abs(across) <= slack && Math.abs(nextAcross) <= slack ? sum + Math.abs(nextAlong - along) : sum;
  }, 0);
}

function tooMuch(places: readonly Place[], cloth: Cloth, length: number): string | null {
  const [longer, wider] = stretchOf(cloth);
  const covered = (which: (place: Place) => boolean): number => longer * wider * places.filter(which).reduce((sum, { outline, count }) => sum + count * areaOf(outline), 0);
  if (cloth.fold === 'partly') {
    for (const [layers, part] of [[2, 'in its folded part'], [1, 'in its single part']] as const) {
      const [from, to] = bandOf({ layers }, cloth);
      const needs = covered((place) => place.layers === layers), room = roomIn(cloth, [from, to], length);
      if (needs > room * (1 + ROUNDING) && needs > 0) return `The pieces do not fit: together they cover ${percent(needs / room)} of the cloth at hand ${part}.`;
    }
    return null;
  }
  const needs = covered(() => true), room = roomIn(cloth, [0, clothWidth(cloth)], length);
  return needs > room * (1 + ROUNDING) ? `The pieces do not fit: together they cover ${percent(needs / room)} of the cloth at hand.` : null;
}

/** The area on which pieces may lie, without flaws. */
function roomIn({ remnant, flaws }: Cloth, [low, high]: readonly [number, number], length: number): number {
  const band: Geom = [[[0, low], [length, low], [length, high], [0, high], [0, low]]];
  const inside = remnant ? intersection(band, closed(remnant)) : [band];
  const total = areasOf(inside as Polygons);
  if (flaws.length === 0) return total;
  const lost = intersection(inside as Geom, union(closed(flaws[0]!), ...flaws.slice(1).map(closed)));
  return total - areasOf(lost as Polygons);
}

type Polygons = readonly (readonly (readonly [number, number][])[])[];

const areasOf = (polygons: Polygons): number => polygons.reduce((sum, rings) => sum + rings.reduce((area, ring, i) => area + (i === 0 ? 1 : -1) * areaOf(ring.slice(0, -1)), 0), 0);

const closed = (outline: Outline): Geom => [[...outline, outline[0]!].map(([along, across]) => [along, across] as [number, number])];

/** Never “100 %” for more than all. */
const percent = (part: number): string => (Number.isFinite(part) ? `${Math.max(part < 1.01 ? 100.1 : 0, Math.ceil(part * 1000) / 10)} %` : 'more than all');
