/**
 * The largest rectangle left of the length at hand. Of the cloth's whole width
 * it is what the least length leaves. Of a width that is wanted it may lie
 * beside pieces: then it is laid as one more piece, without seam or grain, and
 * made longer as long as everything still fits.
 */
import { clothLength, clothWidth, laidOutline, boundsOf, stretchOf, type LayRequest, type Layout, type Piece, type Place, type Rectangle } from '../../src/lay/index.ts';

/** Of the rectangle's length, what it grows by at first and at least. */
export const GROW = { from: 0.1, to: 0.005 };

/** What the whole width leaves behind the layout; null when nothing is. */
export function behind(layout: Layout, { cloth, aim }: LayRequest): Rectangle | null {
  const length = clothLength(cloth);
  if ((aim.want !== 'largest left' && aim.want !== 'room for') || length === null || cloth.remnant || layout.length >= length) return null;
  const width = layout.foldAt === undefined ? clothWidth(cloth) : cloth.width - layout.foldAt;
  return { at: [layout.length, 0], length: length - layout.length, width: Math.min((aim.want === 'largest left' ? aim.width : undefined) ?? Infinity, width) };
}

/** The request in which the rectangle is the last piece. It is cloth and not a piece to be sewn: it does not grow by what the cloth will shrink. */
export function withRectangle(request: LayRequest, length: number, width: number): LayRequest {
  const [longer, wider] = stretchOf(request.cloth);
  const outline: Piece['outline'] = [[0, 0], [length / longer, 0], [length / longer, width / wider], [0, width / wider]];
  const rectangle: Piece = { name: 'What is left', outline, cut: 'single', count: 1, turns: [0, 180] };
  // What it was begun from has no rectangle in it.
  return { ...request, start: undefined, aim: { want: 'fits' }, pieces: [...request.pieces, rectangle] };
}

/** Takes the rectangle, piece number `piece`, out of such a layout again. */
export function apart(layout: Layout, all: readonly Place[], piece: number): { layout: Layout; places: readonly Place[] } {
  const last = all.findIndex((place) => place.piece === piece);
  const rectangle = layout.laid.find(({ place }) => place === last)!;
  const { from, to } = boundsOf(laidOutline(all[last]!.outline, rectangle.way, rectangle.at));
  const laid = layout.laid.filter((each) => each !== rectangle);
  const length = Math.max(...laid.map(({ place, way, at }) => boundsOf(laidOutline(all[place]!.outline, way, at)).to[0]));
  return { layout: { ...layout, laid, length, left: { at: from, length: to[0] - from[0], width: to[1] - from[1] } }, places: all.slice(0, last) };
}
