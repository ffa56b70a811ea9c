/**
 * Pieces, cloth, and layouts. Lengths are millimetres in the app; nothing here
 * depends on that, so the published test sets may keep their own units. The
 * first coordinate runs along the cloth (the grain), the second across it.
 */
export type Point = readonly [along: number, across: number];

/** A closed outline without its first point repeated; either way round. */
export type Outline = readonly Point[];

/** How a piece is cut: as drawn, in mirrored pairs, or with its edge at across = 0 on the fold. */
export type Cut = 'single' | 'pair' | 'fold';

export interface Piece {
  readonly name: string;
  /** With seam allowance; grain along the first coordinate. */
  readonly outline: Outline;
  readonly cut: Cut;
  /** Single pieces, pairs, or pieces on the fold. */
  readonly count: number;
  /** Allowed turns in degrees, anticlockwise; 0 lies as drawn. */
  readonly turns: readonly number[];
}

export interface Cloth {
  /** Usable, between the selvedges, opened out. */
  readonly width: number;
  /** The length at hand; null when it is to be bought. */
  readonly length: number | null;
  /** An odd-shaped remnant instead of a strip: `width` and `length` are then its bounds. */
  readonly remnant?: Outline;
  /** Places that no piece may touch. */
  readonly flaws: readonly Outline[];
  /** Nap or print with an up and a down: no piece may be turned past a quarter. */
  readonly oneWay: boolean;
  /** Both sides alike, so that a piece may be laid face down. */
  readonly alike: boolean;
  /** Folded lengthwise the fold is at across = 0, and each place is cut from two layers. */
  readonly fold: 'open' | 'lengthwise';
  /** Between pieces. */
  readonly gap: number;
}

export type Aim =
  | { readonly want: 'least length' }
  | { readonly want: 'fits' }
  | { readonly want: 'largest left'; readonly width?: number }
  | { readonly want: 'room for'; readonly pieces: readonly Piece[] };

/** What the search lays: one outline for each place on the cloth. */
export interface Place {
  /** The piece's position in the list. */
  readonly piece: number;
  readonly outline: Outline;
  readonly count: number;
  readonly ways: readonly Way[];
  /** True when the edge at across = 0 has to lie on the cloth's fold. */
  readonly onFold: boolean;
}

/** Mirrored across the grain first (across becomes −across), then turned anticlockwise. */
export interface Way {
  readonly turn: number;
  readonly mirrored: boolean;
}

export interface Laid {
  /** Position in the list of places. */
  readonly place: number;
  readonly way: Way;
  /** Where the outline's own origin lies on the cloth. */
  readonly at: Point;
}

/** The free rectangle that an aim asked for. */
export interface Rectangle {
  readonly at: Point;
  readonly length: number;
  readonly width: number;
}

export interface Layout {
  readonly laid: readonly Laid[];
  /** The cloth's length that is used, from its cut end to the furthest piece. */
  readonly length: number;
  readonly left?: Rectangle;
}
