/**
 * From the cloth's own lengths to the search's grid of whole numbers and back.
 * The grid is tied to the cloth and the pieces, not to a unit, so that a
 * layout in inches and the same in millimetres are one search. Cloth that will
 * shrink is searched as it will be then, where every turn of a piece has one
 * form, and stretched again for the layout.
 */
import { areaOf, bandOf, boundsOf, clothWidth, foldDepth, stretchOf, tiesOf, type Cloth, type Laid, type Layout, type Outline, type Place, type Point, type Ties } from '../../src/lay/index.ts';
import { difference, grownMitred, grownRound, type Path64 } from './clip.ts';
import { anticlockwise, ringArea, tidy, type Ring } from './flat.ts';
import { applied, matrixOf, type Item, type Lattice, type Shapes } from './shapes.ts';
import { simplifyOutwards } from './simplify.ts';
import type { Kept } from './table.ts';

/** Grid units along the longest thing: as many as leave products of two lengths exact. */
const UNITS = 30_000_000;

/** Of the width, how far pieces may stick out: less than the check allows, more than the margins between pieces that fill the width add up to. */
const SLACK = 0.9e-6;

/** Of a piece's size, how far its outline may be simplified before the gap is put around it, and the points it may have then. */
const FINE = 0.0005;
const MOST_GROWN = 200;

/** A layout to begin with, and the pieces that are not in it. */
export interface Given {
  readonly kept: Kept;
  readonly missing: readonly number[];
}

/** How each group of pieces lies to the print, along and across. */
export type Phases = readonly Point[];

export class Grid {
  readonly scale: number;
  readonly width: number;
  readonly items: Item[];
  /** Fixed things, where they lie on the cloth. */
  readonly obstacles: Ring[];
  readonly #below: number;
  readonly #stretch: Point;
  readonly #ties: Ties;
  /** Of each place, the middle of its outline's bounds, in grid units: the search turns pieces about it. */
  readonly #middle: [number, number][] = [];

  constructor(readonly places: readonly Place[], readonly cloth: Cloth, readonly phases: Phases = []) {
    this.#stretch = stretchOf(cloth);
    this.#ties = tiesOf(places, cloth, String);
    const width = clothWidth(cloth) / this.#stretch[1];
    const odd = [...cloth.flaws, ...(cloth.remnant ? [cloth.remnant] : [])];
    const spans = [...places.map(({ outline }) => outline), ...odd].map((outline) => {
      const { from, to } = boundsOf(outline);
      return Math.max(to[0] - from[0], to[1] - from[1]);
    });
    this.scale = UNITS / Math.max(width, ...spans);
    this.width = width * (1 + SLACK) * this.scale;
    this.#below = (width * SLACK * this.scale) / 2;
    const half = (cloth.gap / 2) * this.scale;
    this.items = places.map((place, i) => this.#item(place, i, half));
    this.obstacles = this.#around(half);
    for (const ring of this.obstacles) this.items.push({ ring, bare: ring, count: 1, ways: [{ turn: 0, mirrored: false }], fixed: true });
  }

  /** Side of a piece of middling area, in grid units. */
  get middling(): number {
    const count = this.places.reduce((sum, place) => sum + place.count, 0);
    return this.scale * Math.sqrt(this.places.reduce((sum, { outline, count: n }) => sum + n * areaOf(outline), 0) / count);
  }

  #flat(outline: Outline): Ring {
    return outline.flatMap(([along, across]) => [along * this.scale, across * this.scale]);
  }

  #item(place: Place, index: number, half: number): Item {
    const { outline, count, ways, onFold } = place;
    const { from, to } = boundsOf(outline);
    const middle: [number, number] = [Math.round(((from[0] + to[0]) / 2) * this.scale), Math.round(((from[1] + to[1]) / 2) * this.scale)];
    this.#middle.push(middle);
    const bare = this.#flat(outline).map((value, i) => value - middle[i % 2]!);
    const [low, high] = bandOf(place, this.cloth).map((across) => (across / this.#stretch[1]) * this.scale);
    const lattice = [this.#lattice(index, 0), this.#lattice(index, 1)] as const;
    // A curve of many points becomes one of very many when it grows: first to what the search knows of it.
    const ring = half > 0 ? offset(simplifyOutwards(tidy(anticlockwise(bare.map(Math.round))), FINE * this.scale * Math.sqrt(areaOf(outline)), MOST_GROWN), half) : bare;
    return { bare, ring, count, ways, onFold, band: [low!, high! + 2 * this.#below], lattice };
  }

  /** Where the print lets the place's middle lie; null: anywhere. */
  #lattice(index: number, axis: 0 | 1): Lattice | null {
    const tie = this.#ties[axis === 0 ? 'along' : 'across'][index];
    if (!tie) return null;
    const every = this.cloth.repeat![axis === 0 ? 'along' : 'across'];
    const units = this.scale / this.#stretch[axis];
    const phase = tie.group === null ? 0 : (this.phases[tie.group]?.[axis] ?? 0);
    // Pieces that meet the print have one way to lie.
    const middle = applied(matrixOf(this.places[index]!.ways[0]!), this.#middle[index]!);
    return { first: (phase + tie.offset) * units + middle[axis]! + (axis === 0 ? 0 : this.#below), every: every * units };
  }

  /** An outline on the cloth, as it will be when it has shrunk. */
  #shrunk(outline: Outline): Outline {
    return outline.map(([along, across]) => [along / this.#stretch[0], across / this.#stretch[1]]);
  }

  /** Flaws, and what lies around a remnant, as rings on the cloth. Pieces carry half the gap, which an edge does not ask for. */
  #around(half: number): Ring[] {
    const { cloth } = this;
    const rings = cloth.flaws.map((flaw) => this.#flat(this.#shrunk(flaw)));
    if (cloth.remnant) {
      const shrunk = this.#shrunk(cloth.remnant);
      const { from, to } = boundsOf(shrunk);
      const [left, bottom, right, top] = [from[0] * this.scale, from[1] * this.scale, to[0] * this.scale, to[1] * this.scale];
      const middle = (bottom + top) / 2, rim = this.scale * (to[0] - from[0]) * 0.05;
      const remnant = [toPath(this.#flat(shrunk))];
      // In two halves, so that what is left of each has no hole.
      for (const [low, high] of [[bottom - rim, middle], [middle, top + rim]] as const) {
        const frame = [toPath([left - rim, low, right + rim, low, right + rim, high, left - rim, high])];
        rings.push(...difference(frame, remnant).map(toRing));
      }
    }
    return half > 0 ? rings.flatMap((ring) => grownMitred(toPath(ring), -half).map(toRing)) : rings;
  }

  /** The layout that the search has found, in the cloth's own lengths. */
  layoutOf({ x, y, shape }: Kept, shapes: Shapes): Layout {
    const laid: Laid[] = [];
    let length = 0;
    const [longer, wider] = this.#stretch;
    for (let p = 0; p < x.length; p++) {
      const { item, way, matrix } = shapes.shapes[shape[p]!]!;
      if (item >= this.places.length) continue;
      const middle = applied(matrix, this.#middle[item]!);
      laid.push({ place: item, way, at: [((x[p]! - middle[0]!) / this.scale) * longer, ((y[p]! - middle[1]! - this.#below) / this.scale) * wider] });
      length = Math.max(length, ((x[p]! + shapes.bare[4 * shape[p]! + 2]!) / this.scale) * longer);
    }
    return this.cloth.fold === 'partly' ? { laid, length, foldAt: foldDepth(this.cloth) } : { laid, length };
  }

  /** The other way, and which pieces are not in the layout; null when it is not of these places. */
  keptOf({ laid, length }: Layout, shapes: Shapes): Given | null {
    const x: number[] = [], y: number[] = [], shape: number[] = [], missing: number[] = [];
    const [longer, wider] = this.#stretch;
    for (const [i, { count }] of this.places.entries()) {
      const of = laid.filter(({ place }) => place === i).slice(0, count);
      for (let k = of.length; k < count; k++) missing.push(x.length + k);
      for (const { way, at } of of) {
        const found = shapes.waysOfItem[i]!.find((one) => one.way.turn === way.turn && one.way.mirrored === way.mirrored);
        if (!found) return null;
        const middle = applied(matrixOf(way), this.#middle[i]!);
        shape.push(found.shape);
        x.push((at[0] / longer) * this.scale + middle[0]! + found.shift[0]);
        y.push((at[1] / wider) * this.scale + middle[1]! + this.#below + found.shift[1]);
      }
      for (let k = of.length; k < count; k++) {
        shape.push(shapes.ofItem[i]![0]!);
        x.push(0);
        y.push(0);
      }
    }
    this.obstacles.forEach((_, i) => {
      shape.push(shapes.ofItem[this.places.length + i]![0]!);
      x.push(0);
      y.push(0);
    });
    return { kept: { x: Float64Array.from(x), y: Float64Array.from(y), shape: Int32Array.from(shape), length: (length / longer) * this.scale }, missing };
  }
}

const toPath = (ring: Ring): Path64 => Array.from({ length: ring.length / 2 }, (_, i) => ({ x: Math.round(ring[2 * i]!), y: Math.round(ring[2 * i + 1]!) }));
const toRing = (path: Path64): Ring => path.flatMap(({ x, y }) => [x, y]);

/** Grown outwards on all sides: a little more, because the round corners are made of chords. */
function offset(ring: Ring, distance: number): Ring {
  const rings = grownRound(toPath(anticlockwise(ring)), distance * 1.003 + 2, distance * 0.002).map(toRing);
  // A narrow hollow can close; the outer ring is the one that counts.
  return rings.reduce((most, each) => (Math.abs(ringArea(each)) > Math.abs(ringArea(most)) ? each : most));
}
