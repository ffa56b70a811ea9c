/** Reads a published strip packing instance (JSON with `items` and `strip_height`), so that the search can be measured against the literature. */
import type { Cloth, Piece, Point } from './types.ts';

interface Item {
  readonly id: number;
  readonly demand: number;
  readonly allowed_orientations: readonly number[];
  readonly shape: { readonly data: readonly Point[] };
}

export interface Published {
  readonly pieces: readonly Piece[];
  readonly cloth: Cloth;
}

export function readPublished(json: { readonly items: readonly Item[]; readonly strip_height: number }): Published {
  return {
    pieces: json.items.map(({ id, demand, allowed_orientations: turns, shape }) => ({ name: `Piece ${id + 1}`, outline: shape.data, cut: 'single', count: demand, turns })),
    cloth: { width: json.strip_height, length: null, flaws: [], oneWay: false, alike: false, fold: 'open', gap: 0 },
  };
}
