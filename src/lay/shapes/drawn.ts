/** A drawn shape as an outline on the cloth: turned so that its grain line runs along. */
import { boundsOf, withoutRepeats } from '../outline.ts';
import type { Match, Outline, Point } from '../types.ts';
import { bend } from './curves.ts';
import type { DrawnShape } from './types.ts';

/** Its points, curves as points near enough together, in mm as drawn. */
export function drawnOutline({ points }: Pick<DrawnShape, 'points'>): Outline {
  return withoutRepeats(points.flatMap(({ x, y, through }, i): Point[] => {
    const next = points[(i + 1) % points.length]!;
    return through ? bend([x, y], [through.x, through.y], [next.x, next.y]) : [[next.x, next.y]];
  }));
}

export interface Turned {
  readonly outline: Outline;
  readonly matches: readonly Match[];
}

/** Its upper end at along = 0, its grain line at across = 0. */
export function alongGrain(shape: Pick<DrawnShape, 'points' | 'grain' | 'marks'>): Turned {
  const [from, to] = shape.grain;
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const [gx, gy] = [(to.x - from.x) / length, (to.y - from.y) / length];
  const turn = ([x, y]: Point): Point => [(x - from.x) * gx + (y - from.y) * gy, (x - from.x) * gy - (y - from.y) * gx];
  const turned = drawnOutline(shape).map(turn);
  const top = boundsOf(turned).from[0];
  const down = ([along, across]: Point): Point => [along - top, across + 0];
  return { outline: turned.map(down), matches: shape.marks.map(({ mark, x, y }) => ({ mark, at: down(turn([x, y])) })) };
}

/** Nearer the grain than this, in mm, an edge can lie on the fold. */
const STRAIGHT = 1;

/**
 * Half of a piece with its fold edge at across = 0: the longest edge along the
 * grain at one of its two sides. Both halves are alike, so that it may be
 * mirrored. `null` when there is no such edge.
 */
export function onFold({ outline, matches }: Turned): Turned | null {
  const { from, to } = boundsOf(outline);
  const edgeAt = (side: number): number => outline.reduce((most, point, i) => {
    const next = outline[(i + 1) % outline.length]!;
    const lies = Math.abs(point[1] - side) <= STRAIGHT && Math.abs(next[1] - side) <= STRAIGHT;
    return lies ? Math.max(most, Math.abs(next[0] - point[0])) : most;
  }, 0);
  const [left, right] = [edgeAt(from[1]), edgeAt(to[1])];
  if (Math.max(left, right) <= STRAIGHT) return null;
  const side = left >= right ? from[1] : to[1];
  // A hand does not draw or click a fold edge to the last hair: what lies within the slack of it lies on it.
  const straightened = ([along, across]: Point): Point => [along, Math.abs(across - side) <= STRAIGHT ? 0 : Math.abs(across - side)];
  return { outline: outline.map(straightened), matches: matches.map(({ mark, at }) => ({ mark, at: straightened(at) })) };
}
