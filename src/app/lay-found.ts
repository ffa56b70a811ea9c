/** A layout with all that it speaks of, and the page's own proof of it. */
import { boundsOf, clothLength, clothOf, clothWidth, laidOutline, layoutFaults, lengthUsed, placesOf, type Cloth, type Laid, type LayNews, type Layout, type Outline, type Piece, type Place, type Rectangle } from '../lay/index.ts';
import type { KeptLayout } from '../workbook/index.ts';

export interface Found {
  readonly names: readonly string[];
  /** How many of the names are of the first list. */
  readonly first: number;
  readonly places: readonly Place[];
  readonly cloth: Cloth;
  readonly layout: Layout;
  /** Of the cloth used, the part that is covered, 0 to 1. */
  readonly density: number;
  /** Places tried, in millions; `null` for one that was kept or made by hand. */
  readonly weighed: number | null;
  /** Of its pieces. */
  readonly print: string;
}

export const nameOf = ({ names, places }: Pick<Found, 'names' | 'places'>, place: number): string => names[places[place]?.piece ?? -1] ?? `Piece ${place + 1}`;

export const outlineOf = ({ places }: Pick<Found, 'places'>, { place, way, at }: Laid): Outline => laidOutline(places[place]?.outline ?? [], way, at);

/** The cloth to cut in the shop, opened out, in mm. */
export const usedOf = ({ layout, cloth }: Found): number => lengthUsed(layout, cloth);

/** Empty when it is proven, by the check that the search has no part in. */
export function faultsOf(found: Found): readonly string[] {
  const faults = layoutFaults(found.layout, found.places, found.cloth, (place) => `“${nameOf(found, place)}”`);
  const left = found.layout.left;
  return left && !isFree(found, left) ? [...faults, 'What is said to be left is not free.'] : faults;
}

/** What the worker sent, as it was asked for. */
export function foundFrom(news: LayNews, asked: { readonly pieces: readonly Piece[]; readonly second: readonly Piece[]; readonly cloth: Cloth; readonly print: string }): Found {
  const pieces = [...asked.pieces, ...asked.second];
  const cloth = clothOf(asked.cloth, news.layout);
  return {
    names: pieces.map(({ name }) => name), first: asked.pieces.length, places: news.places ?? placesOf(pieces, cloth), cloth,
    layout: news.layout, density: news.density, weighed: news.weighed, print: asked.print,
  };
}

export const keptFrom = (found: Found): KeptLayout => ({
  print: found.print, names: found.names, first: found.first, places: found.places, cloth: found.cloth, layout: found.layout, length: usedOf(found), density: found.density,
});

export const foundKept = ({ print, names, first, places, cloth, layout, density }: KeptLayout): Found => ({ print, names, first, places, cloth, layout, density, weighed: null });

/** The rectangle that is left: the one that was asked for, else what the whole width leaves behind the layout. */
export function leftOf(found: Found): Rectangle | null {
  const known = LEFT.get(found);
  if (known !== undefined) return known;
  const left = leftBehind(found);
  LEFT.set(found, left);
  return left;
}

/** Proving it takes the polygon library, and a layout that is shown is drawn often. */
const LEFT = new WeakMap<Found, Rectangle | null>();

function leftBehind(found: Found): Rectangle | null {
  const { layout, cloth } = found;
  if (layout.left) return layout.left;
  const length = clothLength(cloth);
  if (length === null || cloth.remnant || length - layout.length < 1) return null;
  const behind: Rectangle = { at: [layout.length, 0], length: length - layout.length, width: clothWidth(cloth) };
  return isFree(found, behind) ? behind : null;
}

function isFree({ layout, places, cloth }: Found, { at, length, width }: Rectangle): boolean {
  const atHand = clothLength(cloth);
  const slack = 1e-6 * cloth.width;
  if (atHand !== null && at[0] + length > atHand + slack) return false;
  if (at[0] < -slack || at[1] < -slack || at[1] + width > clothWidth(cloth) + slack) return false;
  const box: Outline = [at, [at[0] + length, at[1]], [at[0] + length, at[1] + width], [at[0], at[1] + width]];
  const other: Place = { piece: 0, outline: box, count: 1, ways: [{ turn: 0, mirrored: false }], onFold: false, layers: cloth.fold === 'open' ? 1 : 2 };
  // Laid as one more piece on cloth without a gap; the ways of all have been looked at already.
  const open: Cloth = { width: clothWidth(cloth), length: null, flaws: cloth.flaws, ...(cloth.remnant && { remnant: cloth.remnant }), oneWay: false, alike: false, fold: 'open', gap: 0 };
  const lying = layout.laid.map((laid): Place => ({ piece: 0, outline: outlineOf({ places }, laid), count: 1, ways: [{ turn: 0, mirrored: false }], onFold: false, layers: 1 }));
  const all = [...lying, { ...other, layers: 1 as const }];
  const reach = Math.max(at[0] + length, layout.length, ...lying.map(({ outline }) => boundsOf(outline).to[0]));
  return layoutFaults({ laid: all.map((_, place) => ({ place, way: { turn: 0, mirrored: false }, at: [0, 0] })), length: reach }, all, open).length === 0;
}
