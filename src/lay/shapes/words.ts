/**
 * Shapes by a word and a few figures. A figure is that of the whole piece,
 * opened out; a piece cut on the fold along its middle is halved afterwards.
 * Exact geometry, but for the sleeve, whose cap is an even wave.
 */
import type { Outline, Point } from '../types.ts';
import { arc, bow } from './curves.ts';
import type { Column } from './columns.ts';

/** The figures of a row that has the word; lengths in mm. */
export type Figures = Readonly<Partial<Record<Column, number>>>;

/** Widths on either side of the grain line, so far down from the top. */
export interface Level {
  readonly down: number;
  readonly left: number;
  readonly right: number;
}

export interface ShapeWord {
  readonly words: readonly string[];
  readonly about: string;
  /** The columns that have to be filled in. */
  readonly needs: readonly Column[];
  /** Of these the first that is filled in will do. */
  readonly oneOf?: readonly Column[];
  /** Reads rows below with widths at levels. */
  readonly levels?: true;
  /** Lies at half a right angle to the grain. */
  readonly bias?: true;
  /** @throws ShapeFault */
  outline(figures: Figures, levels: readonly Level[]): Outline;
}

/** Why figures make no shape: the rest of a sentence that begins with the piece's name. */
export class ShapeFault extends Error {}

const box = (length: number, width: number): Outline => [[0, width / 2], [0, -width / 2], [length, -width / 2], [length, width / 2]];

function sector(inner: number, outer: number, part: number): Outline {
  const half = Math.PI * part;
  const hem = arc([-inner, 0], outer, half, -half);
  const top: Point[] = inner > 0 ? arc([-inner, 0], inner, -half, half) : [[0, 0]];
  return shifted([...hem, ...top]);
}

/** With its top at along = 0. */
function shifted(outline: Outline): Outline {
  const top = Math.min(...outline.map(([along]) => along));
  return outline.map(([along, across]) => [along - top, across]);
}

function tapered(levels: readonly Level[]): Outline {
  return [...levels.map(({ down, right }): Point => [down, right]).reverse(), ...levels.map(({ down, left }): Point => [down, 0 - left])];
}

/** Alike on both sides of the grain line. */
export const level = (down: number, width: number): Level => ({ down, left: width / 2, right: width / 2 });

/** Below its last width a piece goes straight on to its length. */
function drawnOn(levels: readonly Level[], length: number | undefined): readonly Level[] {
  const last = levels[levels.length - 1]!;
  if (length === undefined || length === last.down) return levels;
  if (length < last.down) throw new ShapeFault('has a width below its end: make its Length more, or Down less');
  return [...levels, { ...last, down: length }];
}

function gore(length: number, top: number, bottom: number): Outline {
  const lean = (bottom - top) / 2;
  const slant = Math.hypot(length, lean);
  // The hem is raised at the seams so that they are as long as the middle.
  const side = length * (length / slant), half = top / 2 + lean * (length / slant);
  return [[0, top / 2], [0, -top / 2], ...bow(half, side, length).reverse()];
}

/** So many straight pieces make the wave of a cap. */
const CAP_STEPS = 64;

export const SHAPE_WORDS: readonly ShapeWord[] = [
  {
    words: ['rectangle', 'panel', 'pleated panel', 'band', 'strip'],
    about: 'Length along the grain and Width across it; of a pleated panel the width of its cloth.',
    needs: ['length', 'width'],
    outline: ({ length = 0, width = 0 }) => box(length, width),
  },
  {
    words: ['folded band'],
    about: 'a band that is folded along its length: Length, and the finished Width, of which it takes two.',
    needs: ['length', 'width'],
    outline: ({ length = 0, width = 0 }) => box(length, 2 * width),
  },
  {
    words: ['bias strip'],
    about: 'Length and Width; it lies at 45° to the grain.',
    needs: ['length', 'width'],
    bias: true,
    outline: ({ length = 0, width = 0 }) => box(length, width),
  },
  {
    words: ['taper'],
    about: 'straight sides between widths: Length, Width at the top and Lower width; or rows below it with Down, and Left and Right of the grain line.',
    needs: [],
    levels: true,
    outline(figures, levels) {
      if (levels.length >= 2) return tapered(drawnOn(levels, figures.length));
      const { length, width, lower } = figures;
      if (length === undefined || width === undefined || lower === undefined) throw new ShapeFault('needs a Length, a Width and a Lower width, or at least two rows with Down, Left and Right');
      return tapered([level(0, width), level(length, lower)]);
    },
  },
  {
    words: ['stepped'],
    about: 'widths that change by steps: Length; and rows with Down, where a step begins, and Left and Right of the grain line.',
    needs: ['length'],
    levels: true,
    outline({ length = 0 }, levels) {
      if (levels.length === 0) throw new ShapeFault('needs widths: fill in Left and Right, or Width, and more rows below it with Down');
      const last = levels[levels.length - 1]!;
      if (last.down >= length) throw new ShapeFault('has a step that begins below its end: make its Length more, or Down less');
      return tapered(levels.flatMap((level, i) => [level, { ...level, down: levels[i + 1]?.down ?? length }]));
    },
  },
  {
    words: ['sector', 'circle skirt'],
    about: 'a part of a circle skirt: Radius at the waist, Length, and Part of a whole circle, less than 1.',
    needs: ['radius', 'length', 'part'],
    outline({ radius = 0, length = 0, part = 0 }) {
      if (part > MOST_PART) throw new ShapeFault('is a whole circle or more, which has no beginning to cut from: give half the Part, and twice How many');
      return sector(radius, radius + length, part);
    },
  },
  {
    words: ['gore'],
    about: 'Length in the middle, Width at the top and Lower width; its hem is raised at the seams so that they are as long as the middle.',
    needs: ['length', 'width', 'lower'],
    outline: ({ length = 0, width = 0, lower = 0 }) => gore(length, width, lower),
  },
  {
    words: ['godet'],
    about: 'Length from its point to the hem, and Part of a whole circle, or Lower width measured along its hem.',
    needs: ['length'],
    oneOf: ['part', 'lower'],
    outline({ length = 0, part, lower = 0 }) {
      const share = part ?? lower / (2 * Math.PI * length);
      if (share > MOST_PART) throw new ShapeFault('is a whole circle or more: give a smaller Part, or make it longer');
      return sector(0, length, share);
    },
  },
  {
    words: ['sleeve'],
    about: 'Length over all, Width at the upper arm, Lower width at the wrist and Cap height. The cap is an even wave, good enough to lay by; a drafted cap is a drawn shape.',
    needs: ['length', 'width', 'lower', 'cap'],
    outline({ length = 0, width = 0, lower = 0, cap = 0 }) {
      if (cap >= length) throw new ShapeFault('has a cap as high as it is long: make its Length more, or its Cap height less');
      const top = Array.from({ length: CAP_STEPS + 1 }, (_, i): Point => [(cap * (1 + Math.cos((2 * Math.PI * i) / CAP_STEPS))) / 2, width / 2 - (width * i) / CAP_STEPS]);
      return [...top, [length, -lower / 2], [length, lower / 2]];
    },
  },
];

/** A ring that is nearly closed has no room for its two edges. */
const MOST_PART = 0.98;

export const shapeWord = (text: string): ShapeWord | undefined => SHAPE_WORDS.find(({ words }) => words.includes(text.toLowerCase()));
