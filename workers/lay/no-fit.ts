/**
 * The no-fit polygon of two outlines: all places of the second's centre,
 * seen from the first's, where the two overlap. It is the union of the
 * Minkowski sums of the first's convex parts and the second's, pointed the
 * other way.
 */
import { union, type Path64 } from './clip.ts';
import { convexSum } from './convex.ts';
import { tidy, type Ring } from './flat.ts';

/** Rings of the boundary: outer ones anticlockwise, holes (places where the second fits inside a hollow of the first) clockwise. */
export function noFit(firstParts: readonly Ring[], secondParts: readonly Ring[]): Ring[] {
  const pointed = secondParts.map((part) => part.map((v) => -v));
  const sums: Path64[] = [];
  for (const one of firstParts) for (const other of pointed) sums.push(convexSum(one, other));
  const joined = sums.length === 1 ? sums : union(sums);
  return joined.map((path) => tidy(path.flatMap(({ x, y }) => [x, y]))).filter((ring) => ring.length >= 6);
}
