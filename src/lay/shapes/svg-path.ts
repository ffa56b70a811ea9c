/** Path data of SVG as outlines: shortened commands and arcs are written out by svgpath, curves become points. */
import svgpath from 'svgpath';
import type { Point } from '../types.ts';

export interface Subpath {
  readonly points: readonly Point[];
  readonly closed: boolean;
}

/** Reads nothing of a path that cannot be read to its end. `transform` as SVG writes it, inner before outer. */
export function subpaths(d: string, transforms: readonly string[], scale: number, tolerance: number): readonly Subpath[] | null {
  const path = svgpath(d);
  if ((path as unknown as { err: string }).err) return null;
  for (const transform of transforms) path.transform(transform);
  path.scale(scale).abs().unshort().unarc();
  const found: { points: Point[]; closed: boolean }[] = [];
  let now: Point[] = [];
  let closed = false;
  const end = (): void => {
    if (now.length > 1) found.push({ points: now, closed });
    closed = false;
  };
  path.iterate((segment, _, x, y) => {
    const from: Point = [x, y];
    switch (segment[0]) {
      case 'M':
        end();
        now = [[segment[1], segment[2]]];
        break;
      case 'L': now.push([segment[1], segment[2]]); break;
      case 'H': now.push([segment[1], y]); break;
      case 'V': now.push([x, segment[1]]); break;
      case 'C': now.push(...cubic(from, [segment[1], segment[2]], [segment[3], segment[4]], [segment[5], segment[6]], tolerance)); break;
      case 'Q': {
        const [cx, cy, ex, ey] = [segment[1], segment[2], segment[3], segment[4]];
        // A quadratic curve is a cubic one whose handles lie two thirds of the way to its own.
        now.push(...cubic(from, [x + (2 / 3) * (cx - x), y + (2 / 3) * (cy - y)], [ex + (2 / 3) * (cx - ex), ey + (2 / 3) * (cy - ey)], [ex, ey], tolerance));
        break;
      }
      case 'Z': case 'z': {
        closed = true;
        const first = now[0];
        end();
        now = first ? [first] : [];
        break;
      }
      default: break;
    }
  });
  end();
  return found;
}

/** No curve of a sewing pattern needs more. */
const MOST_STEPS = 400;

/**
 * Without its first point. Straight pieces of equal steps leave a cubic curve by
 * at most √3 ÷ 18 … 1 ÷ 8 of its largest second difference times 6 over the
 * square of their number; the bound taken is 6 ÷ 8.
 */
function cubic(a: Point, b: Point, c: Point, d: Point, tolerance: number): Point[] {
  const bent = Math.max(Math.hypot(a[0] - 2 * b[0] + c[0], a[1] - 2 * b[1] + c[1]), Math.hypot(b[0] - 2 * c[0] + d[0], b[1] - 2 * c[1] + d[1]));
  const steps = Math.min(MOST_STEPS, Math.max(1, Math.ceil(Math.sqrt((0.75 * bent) / tolerance))));
  return Array.from({ length: steps }, (_, i): Point => {
    const t = (i + 1) / steps, u = 1 - t;
    const at = (axis: 0 | 1): number => u * u * u * a[axis] + 3 * u * u * t * b[axis] + 3 * u * t * t * c[axis] + t * t * t * d[axis];
    return i === steps - 1 ? d : [at(0), at(1)];
  });
}
