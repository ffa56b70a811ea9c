/**
 * Where pieces may lie so that the print meets: points with one mark have to
 * lie at one place of the repeat, which ties the places of pieces to each other
 * along and across. Pieces tied together, directly or through others, are a
 * group; how the whole group lies to the print is free.
 */
import { laidOutline } from './outline.ts';
import type { Cloth, Place } from './types.ts';

/** The place's origin lies at the group's phase + `offset`, and whole repeats from there. */
export interface Tie {
  /** Null for those tied to a piece on the fold: their phase is 0. */
  readonly group: number | null;
  readonly offset: number;
}

export interface Ties {
  /** Of each place; null when it may lie anywhere in this direction. */
  readonly along: readonly (Tie | null)[];
  readonly across: readonly (Tie | null)[];
  readonly groups: number;
  /** Marks that contradict each other, one sentence each. */
  readonly faults: readonly string[];
}

const NO_OFFSET = 1e-7;

export function tiesOf(places: readonly Place[], { repeat, width }: Cloth, nameOf: (place: number) => string): Ties {
  const none = places.map(() => null);
  if (!repeat || places.every(({ matches }) => !matches)) return { along: none, across: none, groups: 0, faults: [] };
  const marks = [...new Set(places.flatMap(({ matches }) => matches?.map(({ mark }) => mark) ?? []))];
  const faults: string[] = [];
  const solve = (axis: 0 | 1): readonly (Found | null)[] => {
    const every = axis === 0 ? repeat.along : repeat.across;
    if (!(every > 0)) return none;
    const chain = new Chain(places.length + marks.length + 1);
    /** On the fold a place's origin lies at 0 across. */
    const fixed = places.length + marks.length;
    const off = (between: number): number => Math.abs(between - Math.round(between / every) * every);
    places.forEach(({ matches, ways, onFold }, p) => {
      if (!matches) return;
      for (const { at, mark } of matches) {
        // All ways of a place that meets the print have one turn, so its points lie at one distance from its origin.
        const own = laidOutline([at], ways[0]!, [0, 0])[0]![axis]!;
        const apart = off(chain.join(p, places.length + marks.indexOf(mark), own));
        if (apart > NO_OFFSET * width) faults.push(`The print cannot meet at “${mark}” of ${nameOf(p)}: its other marks put it ${Math.round(apart * 10) / 10} mm away ${axis === 0 ? 'along' : 'across'} the cloth. Take out one of its marks, or move a match point.`);
      }
      if (onFold && axis === 1 && off(chain.join(p, fixed, 0)) > NO_OFFSET * width) faults.push(`The print cannot meet at the marks of ${nameOf(p)} while it lies on the fold: lay it on open cloth, or take out a mark.`);
    });
    const still = chain.find(fixed);
    return places.map(({ matches }, p) => {
      if (!matches) return null;
      const { root, offset } = chain.find(p);
      return root === still.root ? { root: null, offset: offset - still.offset } : { root, offset };
    });
  };
  const [along, across] = [solve(0), solve(1)];
  const roots = [...new Set([...along, ...across].flatMap((found) => found?.root ?? []))];
  const tie = (found: Found | null): Tie | null => found && { group: found.root === null ? null : roots.indexOf(found.root), offset: found.offset };
  return { along: along.map(tie), across: across.map(tie), groups: roots.length, faults };
}

interface Found {
  readonly root: number | null;
  readonly offset: number;
}

/** Nodes at known distances from each other, joined as they are told (union and find with offsets). */
class Chain {
  readonly #above: number[];
  readonly #offset: number[];

  constructor(count: number) {
    this.#above = Array.from({ length: count }, (_, i) => i);
    this.#offset = new Array<number>(count).fill(0);
  }

  /** The node's offset from the root of its chain. */
  find(node: number): { root: number; offset: number } {
    let offset = 0, at = node;
    while (this.#above[at] !== at) {
      offset += this.#offset[at]!;
      at = this.#above[at]!;
    }
    return { root: at, offset };
  }

  /** `other` lies `ahead` of `node`; gives by how much they already lie otherwise. */
  join(node: number, other: number, ahead: number): number {
    const a = this.find(node), b = this.find(other);
    const off = b.offset - a.offset - ahead;
    if (a.root === b.root) return off;
    this.#above[b.root] = a.root;
    this.#offset[b.root] = -off;
    return 0;
  }
}
