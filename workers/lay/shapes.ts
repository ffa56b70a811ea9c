/**
 * The pieces as the search knows them: each allowed way of laying a piece is a
 * shape in whole grid units around its own origin. For two shapes the depth map is made when it is first asked for; pairs that are turns or
 * mirror images of each other, or the same pair seen from the other side,
 * share one.
 */
import type { Way } from '../../src/lay/index.ts';
import { convexParts } from './convex.ts';
import { DepthMaps } from './depth-maps.ts';
import { anticlockwise, ringArea, tidy, type Ring } from './flat.ts';
import { noFit } from './no-fit.ts';
import { simplifyOutwards } from './simplify.ts';

/** What is laid: an outline in grid units, how often, and how it may lie. */
export interface Item {
  /** With half the gap around it. */
  readonly ring: Ring;
  /** Without the gap. */
  readonly bare: Ring;
  readonly count: number;
  readonly ways: readonly Way[];
  /** On the fold: its lower edge lies on the cloth's. */
  readonly onFold?: boolean;
  /** Never moved: a flaw in the cloth, or what lies outside a remnant. */
  readonly fixed?: boolean;
  /** From where to where across the cloth it has to lie; left out: anywhere. */
  readonly band?: readonly [low: number, high: number];
  /** Where its origin may lie along and across; null: anywhere. Such an item has one way. */
  readonly lattice?: readonly [Lattice | null, Lattice | null];
}

/** `first`, and whole steps of `every` from there. */
export interface Lattice {
  readonly first: number;
  readonly every: number;
}

/** An item's outline as its maps are made from it. */
export interface Prepared {
  readonly simple: Ring;
  readonly parts: readonly Ring[];
}

/** More items than this have smaller maps of fewer points, for the memory's and the time's sake. */
const MANY = 30;
const MOST_POINTS = { few: 48, many: 24 };

/** Takes some milliseconds for an outline of many points. Obstacles are simplified too: what grows outwards there only takes cloth away. */
export function prepared({ ring }: Item, tolerance: number, items: number): Prepared {
  const simple = simplifyOutwards(tidy(anticlockwise(ring.map(Math.round))), tolerance, items > MANY ? MOST_POINTS.many : MOST_POINTS.few);
  return { simple, parts: convexParts(simple) };
}

/** Numbers of a pair of shapes. */
export const PAIR = 10;

type Matrix = readonly [number, number, number, number];

export function matrixOf({ turn, mirrored }: Way): Matrix {
  const quarter = (((turn / 90) % 4) + 4) % 4;
  const [c, s] = Number.isInteger(quarter)
    ? [[1, 0, -1, 0][quarter]!, [0, 1, 0, -1][quarter]!]
    : [Math.cos((turn * Math.PI) / 180), Math.sin((turn * Math.PI) / 180)];
  return mirrored ? [c, s, s, -c] : [c, -s, s, c];
}

export const applied = (m: Matrix, ring: Ring): number[] => {
  const out: number[] = [];
  for (let i = 0; i < ring.length; i += 2) out.push(m[0] * ring[i]! + m[1] * ring[i + 1]!, m[2] * ring[i]! + m[3] * ring[i + 1]!);
  return out;
};

interface Shape {
  readonly item: number;
  readonly way: Way;
  readonly matrix: Matrix;
  /** True when the matrix keeps whole numbers whole. */
  readonly exact: boolean;
  readonly parts: readonly Ring[];
}

export class Shapes {
  readonly shapes: Shape[] = [];
  /** Of each item, its shapes. */
  readonly ofItem: number[][] = [];
  /** Of each item, every way that was allowed: its shape, and where that lies when the way lies at 0. */
  readonly waysOfItem: { readonly way: Way; readonly shape: number; readonly shift: readonly [number, number] }[][] = [];
  readonly maps: DepthMaps;
  /** Bounds without the gap, from the origin: left, bottom, right, top of each shape. */
  readonly bare: Float64Array;
  /** Bounds with the gap. */
  readonly reach: Float64Array;
  readonly area: Float64Array;
  /** Of each shape, what keeps its origin to the print: first and step along, first and step across; step 0: nothing does. */
  readonly lattice: Float64Array;
  /**
   * Of each pair (moving, lying), together because they are read together: the
   * matrix that takes an offset into the map, then the map's left, bottom,
   * cells per unit, columns, rows and first cell; the last is −1 before the map is made.
   */
  readonly pairs: Float64Array;
  readonly #mapOf = new Map<number, number>();
  readonly #shared = new Map<string, number>();
  readonly count: number;

  constructor(readonly items: readonly Item[], outlines: readonly Prepared[]) {
    this.maps = new DepthMaps(items.length > MANY ? 24 : 48);
    const bare: Ring[] = [];
    const rings: Ring[] = [];
    items.forEach((item, i) => {
      const { simple, parts } = outlines[i]!;
      const seen = new Map<string, number>();
      this.ofItem.push([]);
      this.waysOfItem.push([]);
      for (const way of item.ways) {
        const matrix = matrixOf(way);
        const turned = applied(matrix, item.bare);
        const key = likeness(turned);
        const like = seen.get(key);
        if (like !== undefined) {
          const one = bounds(turned), other = bounds(bare[like]!);
          this.waysOfItem[i]!.push({ way, shape: like, shift: [one[0] - other[0], one[1] - other[1]] });
          continue;
        }
        seen.set(key, this.shapes.length);
        this.waysOfItem[i]!.push({ way, shape: this.shapes.length, shift: [0, 0] });
        this.ofItem[i]!.push(this.shapes.length);
        const exact = Number.isInteger(way.turn / 90);
        this.shapes.push({
          item: i, way, matrix, exact,
          parts: parts.map((part) => {
            const laid = applied(matrix, part);
            return anticlockwise(exact ? laid : laid.map(Math.round));
          }),
        });
        bare.push(turned);
        rings.push(applied(matrix, simple));
      }
    });
    const n = this.count = this.shapes.length;
    this.bare = new Float64Array(4 * n);
    this.reach = new Float64Array(4 * n);
    this.area = new Float64Array(n);
    this.lattice = new Float64Array(4 * n);
    for (let s = 0; s < n; s++) {
      this.bare.set(bounds(bare[s]!), 4 * s);
      const [along, across] = items[this.shapes[s]!.item]!.lattice ?? [null, null];
      this.lattice.set([along?.first ?? 0, along?.every ?? 0, across?.first ?? 0, across?.every ?? 0], 4 * s);
      this.area[s] = Math.abs(ringArea(bare[s]!));
      const [l, b, r, t] = bounds(rings[s]!);
      this.reach.set([l - 2, b - 2, r + 2, t + 2], 4 * s);
    }
    this.pairs = new Float64Array(PAIR * n * n).fill(-1);
  }

  /** The map for `moving` seen from `lying`, made now if need be. */
  map(moving: number, lying: number): number {
    const place = moving * this.count + lying;
    const made = this.#mapOf.get(place);
    if (made !== undefined) return made;
    const a = this.shapes[lying]!;
    const b = this.shapes[moving]!;
    const wayOnly = a.exact && b.exact;
    let matrix: Matrix = [1, 0, 0, 1];
    let key: string;
    let rings: () => Ring[];
    if (!wayOnly) {
      key = `${lying} ${moving}`;
      rings = () => noFit(a.parts, b.parts);
    } else if (a.item < b.item || (a.item === b.item && this.#order(a, b))) {
      const back = transposed(a.matrix);
      const rest = times(back, b.matrix);
      key = `${a.item}:${b.item}:${rest.join()}`;
      matrix = back;
      rings = () => noFit(this.#base(a), this.#base(b).map((part) => anticlockwise(applied(rest, part))));
    } else {
      const back = transposed(b.matrix);
      const rest = times(back, a.matrix);
      key = `${b.item}:${a.item}:${rest.join()}`;
      matrix = [-back[0], -back[1], -back[2], -back[3]];
      rings = () => noFit(this.#base(b), this.#base(a).map((part) => anticlockwise(applied(rest, part))));
    }
    let map = this.#shared.get(key);
    if (map === undefined) {
      map = this.maps.add(rings());
      this.#shared.set(key, map);
    }
    this.pairs.set(matrix, PAIR * place);
    this.pairs.set(this.maps.maps.subarray(6 * map, 6 * map + 6), PAIR * place + 4);
    this.#mapOf.set(place, map);
    return map;
  }

  #base(shape: Shape): Ring[] {
    return shape.parts.map((part) => anticlockwise(applied(transposed(shape.matrix), part)));
  }

  /** Of two ways of one item, which is taken as the lying one, so that both orders share a map. */
  #order(a: Shape, b: Shape): boolean {
    const one = times(transposed(a.matrix), b.matrix).join();
    const other = times(transposed(b.matrix), a.matrix).join();
    return one <= other;
  }
}

const transposed = (m: Matrix): Matrix => [m[0], m[2], m[1], m[3]];
// Adding zero takes the sign from a negative zero, which would make two keys of one.
const times = (a: Matrix, b: Matrix): Matrix => [a[0] * b[0] + a[1] * b[2] + 0, a[0] * b[1] + a[1] * b[3] + 0, a[2] * b[0] + a[3] * b[2] + 0, a[2] * b[1] + a[3] * b[3] + 0];

export function bounds(ring: Ring): [number, number, number, number] {
  let left = Infinity, bottom = Infinity, right = -Infinity, top = -Infinity;
  for (let i = 0; i < ring.length; i += 2) {
    left = Math.min(left, ring[i]!);
    right = Math.max(right, ring[i]!);
    bottom = Math.min(bottom, ring[i + 1]!);
    top = Math.max(top, ring[i + 1]!);
  }
  return [left, bottom, right, top];
}

/** The same for outlines that cover each other when moved without a turn. */
function likeness(ring: Ring): string {
  const [left, bottom] = bounds(ring);
  const points: string[] = [];
  for (let i = 0; i < ring.length; i += 2) points.push(`${Math.round((ring[i]! - left) / 4)},${Math.round((ring[i + 1]! - bottom) / 4)}`);
  return points.sort().join(' ');
}
