/** What one would use instead: a box packer from the registry, and bottom-left fill alone. Lengths. */
import { MaxRectsPacker } from 'maxrects-packer';
import { boundsOf, placesOf, type Cloth, type Piece } from '../../../src/lay/index.ts';
import { Grid } from '../../../workers/lay/grid.ts';
import { Search } from '../../../workers/lay/search.ts';
import { Shapes, prepared } from '../../../workers/lay/shapes.ts';

/** The shortest strip into which the packer gets every piece's bounding box; boxes are turned where the pieces may be. */
export function boxes(pieces: readonly Piece[], { width }: Cloth): number {
  const sizes = pieces.flatMap(({ outline, count, turns }) => {
    const { from, to } = boundsOf(outline);
    return Array.from({ length: count }, () => ({ length: to[0] - from[0], width: to[1] - from[1], turns: turns.includes(90) }));
  });
  // The packer knows whole numbers best.
  const unit = width / 10_000;
  const fits = (length: number): boolean => {
    const packer = new MaxRectsPacker(Math.floor(length / unit), 10_000, 0, { smart: false, pot: false, square: false, allowRotation: true });
    for (const size of sizes) packer.add({ x: 0, y: 0, width: Math.ceil(size.length / unit), height: Math.ceil(size.width / unit), allowRotation: size.turns } as never);
    return packer.bins.length === 1 && packer.bins.every(({ rects }) => rects.every((rect) => !('oversized' in rect)));
  };
  let high = sizes.reduce((sum, size) => sum + Math.max(size.length, size.width), 0), low = 0;
  while (high - low > high * 1e-4) {
    const middle = (low + high) / 2;
    if (fits(middle)) high = middle;
    else low = middle;
  }
  return high;
}

/** Bottom-left fill of the outlines, the largest first. */
export function bottomLeftOnly(pieces: readonly Piece[], cloth: Cloth): number {
  const grid = new Grid(placesOf(pieces, cloth), cloth);
  const search = new Search(new Shapes(grid.items, grid.items.map((item) => prepared(item, 0, grid.items.length))), grid.width, 1);
  for (const step of search.start()) void step;
  return search.best.length / grid.scale;
}
