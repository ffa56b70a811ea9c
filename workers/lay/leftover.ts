/**
 * The largest rectangle left of the length at hand. Of the cloth's whole width
 * it is what the least length leaves. Of a width that is wanted it may lie
 * beside pieces: then it is laid as one more piece, without seam or grain, and
 * made longer as long as everything still fits.
 */
import { clothWidth, laidOutline, boundsOf, type LayRequest, type Layout, type Piece, type Place, type Rectangle } from '../../src/lay/index.ts';

/** Of the rectangle's length, what it grows by at first and at least. */
export const GROW = { from: 0.1, to: 0.005 };

/** What the whole width leaves behind the layout; null when nothing is. */
export function behind(layout: Layout, { cloth, aim }: LayRequest): Rectangle | null {
  if (aim.want !== 'largest left' || cloth.length === null || cloth.remnant || layout.length >= cloth.length) return null;
  return { at: [layout.length, 0], length: cloth.length - layout.length, width: Math.min(aim.width ?? Infinity, clothWidth(cloth)) };
}

/** The request in which the rectangle is the last piece. */
export function withRectangle(request: LayRequest, length: number, width: number): LayRequest {
  const rectangle: Piece = { name: 'What is left', outline: [[0, 0], [length, 0], [length, width], [0, width]], cut: 'single', count: 1, turns: [0] };
  // What it was begun from has no rectangle in it.
  return { ...request, start: undefined, aim: { want: 'fits' }, pieces: [...request.pieces, rectangle] };
}

/** Takes the rectangle out of such a layout again. */
export function apart(layout: Layout, places: readonly Place[]): Layout {
  const last = places.length - 1;
  const rectangle = layout.laid.find(({ place }) => place === last)!;
  const { from, to } = boundsOf(laidOutline(places[last]!.outline, rectangle.way, rectangle.at));
  const laid = layout.laid.filter((each) => each !== rectangle);
  const length = Math.max(...laid.map(({ place, way, at }) => boundsOf(laidOutline(places[place]!.outline, way, at)).to[0]));
  return { laid, length, left: { at: from, length: to[0] - from[0], width: to[1] - from[1] } };
}
