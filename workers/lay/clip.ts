/**
 * The parts of the clipping library that the search uses. They are taken from
 * their own files: the library's front door holds triangulation and much else
 * in one object, which would come along and make the worker a fifth larger.
 */
import { ClipType, FillRule, PathType, type Path64, type Paths64 } from 'clipper2-ts/dist/Core.js';
import { Clipper64 } from 'clipper2-ts/dist/Engine.js';
import { ClipperOffset, EndType, JoinType } from 'clipper2-ts/dist/Offset.js';

export type { Path64 };

/** What any of the paths covers. */
export const union = (paths: Paths64): Paths64 => clipped(ClipType.Union, paths, []);

/** What the first cover and the second do not. */
export const difference = (paths: Paths64, without: Paths64): Paths64 => clipped(ClipType.Difference, paths, without);

function clipped(kind: ClipType, paths: Paths64, others: Paths64): Paths64 {
  const clipper = new Clipper64();
  clipper.addPaths(paths, PathType.Subject);
  clipper.addPaths(others, PathType.Clip);
  const found: Paths64 = [];
  clipper.execute(kind, FillRule.NonZero, found);
  return found;
}

/** Grown by `distance`, with corners prolonged. Negative: shrunk. */
export const grownMitred = (path: Path64, distance: number): Paths64 => grown(path, distance, JoinType.Miter, 0);

/** Grown by `distance`, with round corners of chords that are at most `fine` inside the true arc. */
export const grownRound = (path: Path64, distance: number, fine: number): Paths64 => grown(path, distance, JoinType.Round, fine);

function grown(path: Path64, distance: number, join: JoinType, fine: number): Paths64 {
  const offset = new ClipperOffset(2, fine);
  offset.addPaths([path], join, EndType.Polygon);
  const found: Paths64 = [];
  offset.execute(distance, found);
  return found;
}
