/** What one would use instead: a box packer from the registry, and bottom-left fill alone. Lengths. */
import { MaxRectsPacker } from 'maxrects-packer';
import { boundsOf, placesOf, type Cloth, type Piece } from '../../../src/lay/index.ts';
import { Grid } from '../../../workers/lay/grid.ts';
import { Search } from '../../../workers/lay/search.ts';
import { Shapes, prepared } from '../../../workers/lay/shapes.ts';

/** The packer heeds `allowRotation` only of what has its own `_allowRotation` beside it. */
class Box {
  x = 0;
  y = 0;
  rot = false;
  oversized = false;
  readonly _allowRotation: boolean;

  constructor(public width: number, public height: number, readonly allowRotation: boolean) {
    this._allowRotation = allowRotation;
  }
}

/** The shortest strip into which the packer gets every piece's bounding box; a box is turned by a quarter only where its piece may be. */
export function boxes(pieces: readonly Piece[], { width }: Cloth): number {
  const sizes = pieces.flatMap(({ outline, count, turns }) => {
    const { from, to } = boundsOf(outline);
    const quarter = turns.some((turn) => Math.abs(turn % 180) === 90);
    return Array.from({ length: count }, () => ({ length: to[0] - from[0], width: to[1] - from[1], quarter }));
  });
  // The packer knows whole numbers best.
  const unit = width / 10_000;
  const fitsSo = (length: number, ordered: boolean): boolean => {
    const packer = new MaxRectsPacker<Box>(Math.floor(length / unit), 10_000, 0, { smart: false, pot: false, square: false, allowRotation: sizes.some(({ quarter }) => quarter) });
    const list = sizes.map(({ length: long, width: wide, quarter }) => new Box(Math.ceil(long / unit), Math.ceil(wide / unit), quarter));
    if (ordered) packer.addArray(list);
    else for (const box of list) packer.add(box);
    const [bin, ...more] = packer.bins;
    const packed = bin!.rects;
    if (packed.some(({ rot, allowRotation }) => rot && !allowRotation)) throw new Error('The packer has turned a box that may not be turned.');
    return more.length === 0 && packed.length === sizes.length && packed.every((rect) => !rect.oversized);
  };
  // In the set's own order, or in the packer's, the largest first.
  const fits = (length: number): boolean => fitsSo(length, false) || fitsSo(length, true);
  // One behind the other they always fit.
  let high = sizes.reduce((sum, size) => sum + Math.max(size.length, size.width) + unit, 0), low = 0;
  while (high - low > high * 1e-4) {
    const middle = (low + high) / 2;
    if (fits(middle)) high = middle;
    else low = middle;
  }
  // It may fail on a length and succeed on a shorter one.
  const least = sizes.reduce((sum, size) => sum + size.length * size.width, 0) / width;
  for (let length = least; length < high; length *= 1.002) if (fits(length)) return length;
  return high;
}

/** Bottom-left fill of the outlines, the largest first. */
export function bottomLeftOnly(pieces: readonly Piece[], cloth: Cloth): number {
  const grid = new Grid(placesOf(pieces, cloth), cloth);
  const search = new Search(new Shapes(grid.items, grid.items.map((item) => prepared(item, 0, grid.items.length))), grid.width, 1);
  for (const step of search.start()) void step;
  return search.best.length / grid.scale;
}
