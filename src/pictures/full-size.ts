/**
 * A quarter circle at full size over several pages: which part of the curve
 * lies on which page, where pages join, and where a square to check the scale
 * by has room. Lengths are mm, angles radians; the centre of the circle is the
 * origin, x goes right and y up, and the curve runs from the x axis to the y axis.
 */
import { place } from './scale.ts';

/** The part of a page that is drawn on. Both A4 (210 × 297) and Letter (215.9 × 279.4) hold it with margins of 12 mm. */
export const TILE = { width: 180, height: 226 } as const;
/** Sides of the two squares to measure before cutting. */
export const CHECK = { cm: 100, inch: 101.6 } as const;
/** Beyond this it would be more pages than anybody joins. */
export const MOST_RADIUS = 2000;

export interface Join {
  readonly side: 'left' | 'right' | 'top' | 'bottom';
  /** The same on both pages. */
  readonly letter: string;
  /** The page that lies there, counted from 1. */
  readonly page: number;
}

export interface Tile {
  readonly column: number;
  readonly row: number;
  /** The parts of the curve on it, from one angle to the next. */
  readonly arcs: readonly (readonly [from: number, to: number])[];
  readonly joins: readonly Join[];
  /** Lower left corner of the check square, within the tile. */
  readonly check: readonly [x: number, y: number];
}

const QUARTER = Math.PI / 2;

/** The tiles that the curve crosses, in its order; none for a radius that is not above 0. */
export function arcTiles(radius: number, { width, height }: { readonly width: number; readonly height: number } = TILE): readonly Tile[] {
  if (!(radius > 0)) return [];
  const cuts = [0, QUARTER];
  for (let x = width; x < radius; x += width) cuts.push(Math.acos(x / radius));
  for (let y = height; y < radius; y += height) cuts.push(Math.asin(y / radius));
  cuts.sort((a, b) => a - b);
  const found = new Map<string, { column: number; row: number; arcs: (readonly [number, number])[] }>();
  cuts.slice(1).forEach((to, at) => {
    const from = cuts[at]!;
    if (to - from < 1e-12) return;
    const middle = (from + to) / 2;
    const [column, row] = [Math.floor((radius * Math.cos(middle)) / width), Math.floor((radius * Math.sin(middle)) / height)];
    const key = `${column} ${row}`;
    const tile = found.get(key) ?? { column, row, arcs: [] };
    found.set(key, tile);
    tile.arcs.push([from, to]);
  });
  const tiles = [...found.values()];
  const joins: Join[][] = tiles.map(() => []);
  let letters = 0;
  tiles.forEach((tile, at) => {
    for (const [side, across, dx, dy] of [['right', 'left', 1, 0], ['top', 'bottom', 0, 1]] as const) {
      const other = tiles.findIndex(({ column, row }) => column === tile.column + dx && row === tile.row + dy);
      if (other < 0) continue;
      const letter = letterOf(letters++);
      joins[at]!.push({ side, letter, page: other + 1 });
      joins[other]!.push({ side: across, letter, page: at + 1 });
    }
  });
  return tiles.map((tile, at) => ({ ...tile, joins: joins[at]!, check: checkPlace(radius, tile.column * width, tile.row * height, width, height) }));
}

/** A to Z, then AA. */
export function letterOf(at: number): string {
  return (at >= 26 ? letterOf(Math.floor(at / 26) - 1) : '') + String.fromCharCode(65 + (at % 26));
}

/** Where on a tile the square lies farthest from the curve. */
function checkPlace(radius: number, left: number, bottom: number, width: number, height: number): readonly [number, number] {
  const margin = 3;
  const places = (room: number): number[] => {
    const end = Math.max(margin, room - CHECK.inch - margin);
    return Array.from({ length: 13 }, (_, i) => margin + ((end - margin) * i) / 12);
  };
  let best: readonly [number, number] = [margin, margin];
  let most = -Infinity;
  for (const x of places(width)) {
    for (const y of places(height)) {
      const room = clearance(radius, left + x, bottom + y);
      if (room > most) [best, most] = [[x, y], room];
    }
  }
  return best;
}

/** From a check square whose lower left corner is here to the curve; below 0 where the curve crosses it. */
export function clearance(radius: number, x: number, y: number): number {
  return Math.max(Math.hypot(x, y) - radius, radius - Math.hypot(x + CHECK.inch, y + CHECK.inch));
}

/** The curve on a tile as a path of SVG in mm, y down, from the tile's upper left corner. */
export function tilePath(tile: Tile, radius: number, { width, height }: { readonly width: number; readonly height: number } = TILE): string {
  const at = (angle: number): string => `${place(radius * Math.cos(angle) - tile.column * width)} ${place(height - (radius * Math.sin(angle) - tile.row * height))}`;
  return tile.arcs.map(([from, to]) => `M${at(from)}A${place(radius)} ${place(radius)} 0 0 0 ${at(to)}`).join('');
}
