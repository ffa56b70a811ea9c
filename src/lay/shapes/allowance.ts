/**
 * Allowance added outwards. Seam lines are drawn on until they meet, as one
 * cuts; a point sharper than the limit is cut off square.
 */
import { ClipperOffset, Clipper64, ClipType, EndType, FillRule, JoinType, type Path64 } from 'clipper2-ts';
import { areaOf, boundsOf } from '../outline.ts';
import type { Outline, Point } from '../types.ts';
import type { SeamPiece } from './types.ts';

/** The library reckons in whole numbers: this many to a millimetre. */
const FINE = 10_000;

/** A corner reaches out at most so many times the allowance, which is a point of 29°. */
const MOST_REACH = 4;

const fine = (outline: Outline): Path64 => outline.map(([along, across]) => ({ x: Math.round(along * FINE), y: Math.round(across * FINE) }));
const coarse = (path: Path64): Point[] => path.map(({ x, y }) => [x / FINE, y / FINE]);

/** The cutting line, or `null` where the allowance closes up an opening of the piece. */
export function cuttingLine({ seam, allowance, cut }: Pick<SeamPiece, 'seam' | 'allowance' | 'cut'>): Outline | null {
  if (allowance === 0) return seam;
  const offset = new ClipperOffset(MOST_REACH);
  offset.addPaths(cut === 'fold' ? openedOut(seam) : [fine(seam)], JoinType.Miter, EndType.Polygon);
  const wider: Path64[] = [];
  offset.execute(allowance * FINE, wider);
  const outlines = cut === 'fold' ? half(wider) : wider;
  if (outlines.length !== 1) return null;
  const line = coarse(outlines[0]!);
  return areaOf(line) > 0 ? line : null;
}

/** Both halves of a piece whose fold edge is at across = 0, joined there, so that no allowance goes along the fold. */
function openedOut(seam: Outline): Path64[] {
  const one = fine(seam);
  const clip = new Clipper64();
  clip.addSubject([one, one.map(({ x, y }) => ({ x, y: -y })).reverse()]);
  const whole: Path64[] = [];
  clip.execute(ClipType.Union, FillRule.NonZero, whole);
  return whole;
}

function half(whole: Path64[]): Path64[] {
  const { from, to } = boundsOf(whole.flatMap((path) => path.map(({ x, y }): Point => [x, y])));
  const clip = new Clipper64();
  clip.addSubject(whole);
  clip.addClip([[{ x: from[0] - 1, y: 0 }, { x: to[0] + 1, y: 0 }, { x: to[0] + 1, y: to[1] + 1 }, { x: from[0] - 1, y: to[1] + 1 }]]);
  const upper: Path64[] = [];
  clip.execute(ClipType.Intersection, FillRule.NonZero, upper);
  return upper;
}
