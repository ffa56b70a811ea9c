/**
 * A lay: which pieces on which cloth, what is wanted of it, and the layout that
 * she keeps. What she typed stays as she typed it; lengths of what is kept are mm.
 */
import * as v from 'valibot';
import type { RecordKindCard } from './kind.ts';
import { figure, formula, line } from './parts.ts';

/** As much as `src/lay` will lay. */
const MOST = { points: 4_000, places: 60, laid: 300, names: 600, flaws: 40, corners: 60, offers: 8 } as const;

export type LayPoint = readonly [along: number, across: number];

export interface LayWay {
  readonly turn: number;
  readonly mirrored: boolean;
  readonly stretch?: LayPoint;
}

/** What lies on the cloth, as it was when the layout was found. */
export interface LayPlace {
  /** In the list of names. */
  readonly piece: number;
  readonly outline: readonly LayPoint[];
  readonly count: number;
  readonly ways: readonly LayWay[];
  readonly onFold: boolean;
  readonly layers?: 1 | 2;
  readonly matches?: readonly { readonly at: LayPoint; readonly mark: string }[];
}

export interface LayRectangle {
  readonly at: LayPoint;
  readonly length: number;
  readonly width: number;
}

export interface LayCloth {
  readonly width: number;
  readonly length: number | null;
  readonly remnant?: readonly LayPoint[];
  readonly flaws: readonly (readonly LayPoint[])[];
  readonly oneWay: boolean;
  readonly alike: boolean;
  readonly fold: 'open' | 'lengthwise' | 'partly' | 'crosswise';
  readonly foldAt?: number;
  readonly repeat?: { readonly along: number; readonly across: number };
  readonly shrinkage?: { readonly along: number; readonly across: number };
  readonly gap: number;
}

export interface KeptLayout {
  /** Of the pieces that it was made from (`layPrint` of `src/lay/shapes`, which the engine compares with; `laidFrom` there says which of the rows are laid): another print, and it is older than its pieces. */
  readonly print: string;
  /** Names of the pieces, those of the second list last. */
  readonly names: readonly string[];
  /** How many of the names are of the first list. */
  readonly first: number;
  readonly places: readonly LayPlace[];
  readonly cloth: LayCloth;
  readonly layout: {
    readonly laid: readonly { readonly place: number; readonly way: LayWay; readonly at: LayPoint }[];
    readonly length: number;
    readonly left?: LayRectangle;
    readonly foldAt?: number;
  };
  /** Cloth to cut in the shop, opened out. */
  readonly length: number;
  /** Of the cloth used, the part that the pieces cover, 0 to 1. */
  readonly density: number;
}

/** Texts as they were typed; empty where nothing was. */
export interface ClothTyped {
  /** Which cloth: the pieces of this one are laid; empty for all of them. */
  readonly which: string;
  readonly width: string;
  /** At hand. */
  readonly length: string;
  readonly gap: string;
  readonly shrinkAlong: string;
  readonly shrinkAcross: string;
  readonly repeatAlong: string;
  readonly repeatAcross: string;
  readonly fold: LayCloth['fold'];
  readonly foldAt: string;
  readonly oneWay: boolean;
  readonly alike: boolean;
  /** Corners of an odd-shaped remnant, from the cut end and from the selvedge, in order around it. */
  readonly remnant: readonly { readonly along: string; readonly across: string }[];
  /** Rectangles that no piece may touch. */
  readonly flaws: readonly { readonly along: string; readonly across: string; readonly length: string; readonly width: string }[];
}

export interface Lay {
  readonly name: string;
  /** The block of the pieces' rows, with its headings: `=Pieces!A1:J20`; empty where there is none yet. */
  readonly pieces: string;
  /** That of the second list, laid in what is left. */
  readonly second: string;
  readonly cloth: ClothTyped;
  readonly aim: 'least length' | 'fits' | 'largest left' | 'room for';
  /** Of the rectangle that is wanted. */
  readonly leftWidth: string;
  /** For a metre. */
  readonly price: string;
  /** In steps of this length the shop cuts. */
  readonly shop: string;
  /** Other cloths to compare with: their widths and prices. */
  readonly offers: readonly { readonly width: string; readonly price: string }[];
  /** `null`: what she chose last, and no layout. */
  readonly kept: KeptLayout | null;
}

const most = <T extends v.GenericSchema<unknown, unknown>>(item: T, count: number) => v.pipe(v.array(item), v.maxLength(count));
const point = v.tuple([figure, figure]);
const outline = most(point, MOST.points);
const whole = v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(MOST.names));
const two = v.object({ along: figure, across: figure });
const way = v.object({ turn: figure, mirrored: v.boolean(), stretch: v.exactOptional(point) });
const rectangle = v.object({ at: point, length: figure, width: figure });
const fold = v.picklist(['open', 'lengthwise', 'partly', 'crosswise']);
const formulaOrNone = v.union([v.literal(''), formula]);

const place = v.object({
  piece: whole,
  outline,
  count: whole,
  ways: most(way, 64),
  onFold: v.boolean(),
  layers: v.exactOptional(v.picklist([1, 2])),
  matches: v.exactOptional(most(v.object({ at: point, mark: line }), MOST.corners)),
});

const cloth = v.object({
  width: figure,
  length: v.nullable(figure),
  remnant: v.exactOptional(outline),
  flaws: most(outline, MOST.flaws),
  oneWay: v.boolean(),
  alike: v.boolean(),
  fold,
  foldAt: v.exactOptional(figure),
  repeat: v.exactOptional(two),
  shrinkage: v.exactOptional(two),
  gap: figure,
});

const kept = v.object({
  print: line,
  names: most(line, MOST.names),
  first: whole,
  places: most(place, MOST.places),
  cloth,
  layout: v.object({
    laid: most(v.object({ place: whole, way, at: point }), MOST.laid),
    length: figure,
    left: v.exactOptional(rectangle),
    foldAt: v.exactOptional(figure),
  }),
  length: figure,
  density: figure,
});

const clothTyped = v.object({
  which: line, width: line, length: line, gap: line, shrinkAlong: line, shrinkAcross: line, repeatAlong: line, repeatAcross: line,
  fold, foldAt: line, oneWay: v.boolean(), alike: v.boolean(),
  remnant: most(v.object({ along: line, across: line }), MOST.corners),
  flaws: most(v.object({ along: line, across: line, length: line, width: line }), MOST.flaws),
});

export const layKind: RecordKindCard<Lay> = {
  called: 'a lay',
  schema: v.object({
    name: line,
    pieces: formulaOrNone,
    second: formulaOrNone,
    cloth: clothTyped,
    aim: v.picklist(['least length', 'fits', 'largest left', 'room for']),
    leftWidth: line,
    price: line,
    shop: line,
    offers: most(v.object({ width: line, price: line }), MOST.offers),
    kept: v.nullable(kept),
  }),
  title: ({ name }) => name,
  follow: (data, rewrite) => {
    const follow = (text: string): string => (text === '' ? text : rewrite(text));
    const pieces = follow(data.pieces), second = follow(data.second);
    return pieces === data.pieces && second === data.second ? data : { ...data, pieces, second };
  },
};
