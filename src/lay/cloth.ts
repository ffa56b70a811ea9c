/** The cloth as it lies on the table: how wide and long that is, and what of it a layout takes. */
import type { Cloth, Layout, Place, Point } from './types.ts';

/** How deep the fold is; nothing on cloth that is not folded lengthwise. */
export function foldDepth({ width, fold, foldAt }: Cloth): number {
  if (fold === 'lengthwise') return width / 2;
  return fold === 'partly' ? Math.min(foldAt ?? width / 2, width / 2) : 0;
}

/** The width in which pieces lie. */
export const clothWidth = (cloth: Cloth): number => cloth.width - foldDepth(cloth);

/** The length in which pieces lie; null when it is to be bought. */
export const clothLength = ({ length, fold }: Cloth): number | null => (length !== null && fold === 'crosswise' ? length / 2 : length);

/** The length of cloth that a layout takes, opened out. */
export const lengthUsed = ({ length }: Pick<Layout, 'length'>, { fold }: Cloth): number => (fold === 'crosswise' ? 2 * length : length);

/** The cloth with its fold where the layout has it. */
export const clothOf = (cloth: Cloth, { foldAt }: Pick<Layout, 'foldAt'>): Cloth => (foldAt === undefined ? cloth : { ...cloth, foldAt });

/** Times longer and wider than after it has shrunk. */
export const stretchOf = ({ shrinkage }: Cloth): Point => [1 / (1 - (shrinkage?.along ?? 0)), 1 / (1 - (shrinkage?.across ?? 0))];

/** From where to where across the cloth a place may lie: folded partly, two-layered places in the fold and the others behind it. */
export function bandOf({ layers }: Pick<Place, 'layers'>, cloth: Cloth): readonly [from: number, to: number] {
  if (cloth.fold !== 'partly') return [0, clothWidth(cloth)];
  const depth = foldDepth(cloth);
  return layers === 2 ? [0, depth] : [depth, clothWidth(cloth)];
}
