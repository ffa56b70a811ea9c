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
  /** Points that meet the print: on cloth with a repeat, points with the same mark lie at the same place of the print. */
  readonly matches?: readonly Match[];
}

export interface Match {
  /** On the piece, in its outline's coordinates. */
  readonly at: Point;
  /** What pieces that meet there have in common, such as “side seam”. */
  readonly mark: string;
}

/** How far the print or check repeats, on the cloth as it is laid; 0: not in this direction. */
export interface Repeat {
  readonly along: number;
  readonly across: number;
}

/** Of the cloth as it is laid, the part that washing takes away, 0 to less than 1: 0.03 is 3 %. */
export interface Shrinkage {
  readonly along: number;
  readonly across: number;
}

/**
 * Lengthwise: selvedge to selvedge, the fold at across = 0. Partly: the same
 * with the fold only `foldAt` deep; the rest lies single behind the folded part.
 * Crosswise: end to end, the fold across the cloth at along = 0. Each place in
 * a folded part is cut from two layers, the lower one mirrored.
 */
export type Fold = 'open' | 'lengthwise' | 'partly' | 'crosswise';

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
  readonly fold: Fold;
  /** Folded partly: how deep, from the fold to where the single part begins. Left out: the search tries a few. */
  readonly foldAt?: number;
  readonly repeat?: Repeat;
  /** Pieces are laid on the cloth before it shrinks, larger by what it will lose. */
  readonly shrinkage?: Shrinkage;
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
  /** From how many layers one place is cut; from two come the piece and its mirror image. */
  readonly layers?: 1 | 2;
  /** The piece's own points that meet the print. */
  readonly matches?: readonly Match[];
}

/** Mirrored across the grain first (across becomes −across), then turned anticlockwise, then stretched. */
export interface Way {
  readonly turn: number;
  readonly mirrored: boolean;
  /** On cloth that will shrink: times longer along and across the cloth, after the turn. `laidOutline` heeds it. */
  readonly stretch?: Point;
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
  /** As it lies, from the cut end (folded crosswise: from the fold) to the furthest piece; `lengthUsed` tells the cloth it takes. */
  readonly length: number;
  readonly left?: Rectangle;
  /** Cloth folded partly: where the search has put the fold. Its places are those of `clothOf(cloth, layout)`. */
  readonly foldAt?: number;
}
