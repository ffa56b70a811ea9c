/** What the panel of drawn shapes shows, and what it asks for. */

/** A part of what is drawn that can be moved. */
export interface BoardPart {
  readonly kind: 'point' | 'bend' | 'grain' | 'mark' | 'corner';
  /** Its number, from 0. */
  readonly at: number;
}

export interface BoardSpot {
  readonly part: BoardPart;
  /** On the board, in its own units. */
  readonly x: number;
  readonly y: number;
  /** What it is and where, in words. */
  readonly label: string;
  readonly chosen: boolean;
}

/** Everything in the board's own units: mm, or pixels of a photograph. */
export interface BoardView {
  readonly box: { readonly x: number; readonly y: number; readonly width: number; readonly height: number };
  readonly spots: readonly BoardSpot[];
  /** Path data of the outline, curves and all. */
  readonly outline: string;
  /** The lines of the squared board; strong at every tenth. */
  readonly fine: string;
  readonly strong: string;
  readonly grain: string;
  readonly photo: ImageBitmap | null;
}

/** A figure to type: shown as it would be typed. */
export interface ShapeRow {
  readonly part: BoardPart;
  readonly label: string;
  readonly x: string;
  readonly y: string;
  /** How far the edge to the next point bends out; `null` where nothing bends. */
  readonly bend: string | null;
}

export interface TraceView {
  readonly file: string;
  /** The corners are being set; else the outline is. */
  readonly setting: boolean;
  readonly across: string;
  readonly down: string;
  readonly middles: boolean;
  /** How well the picture was straightened; empty while it is not. */
  readonly fit: string;
  readonly sentence: string;
}

export interface ShapesView {
  readonly shapes: readonly { readonly id: string; readonly name: string; readonly about: string }[];
  /** The one that is open. */
  readonly id: string;
  readonly name: string;
  /** Where it came from, how large it is, and how far off it may be. */
  readonly about: string;
  readonly board: BoardView | null;
  readonly rows: readonly ShapeRow[];
  readonly chosen: BoardPart | null;
  readonly step: string;
  readonly steps: readonly string[];
  readonly bendable: boolean;
  readonly removable: boolean;
  readonly trace: TraceView | null;
  /** What was left out of a file, and what could not be done. */
  readonly sentences: readonly string[];
  readonly canUndo: boolean;
  readonly canRedo: boolean;
  readonly readonly: boolean;
}
