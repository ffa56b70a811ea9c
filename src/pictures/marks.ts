/**
 * What a picture is before it is SVG: plain data, so that a test can look at
 * every number and every text of it without a browser. Coordinates are the
 * units of the view box, which are pixels at the width of the working panel.
 */

/** How a mark looks; the class that `styles.ts` gives its colour, width and dashes. Each is told from the others by more than its colour. */
export type Look =
  | 'cloth' | 'piece' | 'under' | 'layer' | 'edge' | 'thin'
  | 'fold' | 'place' | 'level' | 'seam' | 'old' | 'new' | 'new-cloth'
  | 'body' | 'zone' | 'hatch'
  | 'tape' | 'dim' | 'dim-new' | 'dim-pin' | 'arrow' | 'reach' | 'dot' | 'chosen';

export interface PathMark {
  readonly kind: 'path';
  readonly look: Look;
  readonly d: string;
}

export interface TextMark {
  readonly kind: 'text';
  readonly x: number;
  /** The line the letters stand on. */
  readonly y: number;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly text: string;
  /** A remark about the picture, not a part of it. */
  readonly soft?: true;
}

export type Mark = PathMark | TextMark;

export interface Picture {
  /** What the picture shows, in words, with the same figures. */
  readonly alt: string;
  readonly width: number;
  readonly height: number;
  readonly marks: readonly Mark[];
}
