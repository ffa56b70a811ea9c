/** Path data of SVG as outlines: shortened commands and arcs are written out by svgpath, cubic curves become quadratic ones. */
import svgpath from 'svgpath';
import type { Point } from '../types.ts';
import type { DrawnPoint } from './types.ts';

export interface Subpath {
  readonly points: readonly DrawnPoint[];
  readonly closed: boolean;
}

const at = ([x, y]: Point): DrawnPoint => ({ x, y });

/**
 * `null` for a path that cannot be read to its end.
 * @param transforms as SVG writes them, the innermost first
 * @param scale mm for a unit of the drawing
 * @param tolerance in mm, by which a curve may be missed
 */
export function subpaths(d: string, transforms: readonly string[], scale: number, tolerance: number): readonly Subpath[] | null {
  const path = svgpath(d);
  if ((path as unknown as { err: string }).err) return null;
  for (const transform of transforms) path.transform(transform);
  path.scale(scale).abs().unshort().unarc();
  const found: Subpath[] = [];
  let now: DrawnPoint[] = [];
  const end = (closed: boolean): void => {
    if (now.length > 1) found.push({ points: now, closed });
  };
  const curve = (from: Point, b: Point, c: Point, to: Point): void => {
    for (const { through, to: next } of quadratics(from, b, c, to, tolerance)) {
      const last = now.pop()!;
      now.push({ x: last.x, y: last.y, through: at(through) }, at(next));
    }
  };
  path.iterate((segment, _, x, y) => {
    switch (segment[0]) {
      case 'M':
        end(false);
        now = [at([segment[1], segment[2]])];
        break;
      case 'L': now.push(at([segment[1], segment[2]])); break;
      case 'H': now.push(at([segment[1], y])); break;
      case 'V': now.push(at([x, segment[1]])); break;
      case 'C': curve([x, y], [segment[1], segment[2]], [segment[3], segment[4]], [segment[5], segment[6]]); break;
      case 'Q': {
        const [cx, cy, ex, ey] = [segment[1], segment[2], segment[3], segment[4]];
        // The handles of the same curve as a cubic one lie two thirds of the way to its own.
        curve([x, y], [x + (2 / 3) * (cx - x), y + (2 / 3) * (cy - y)], [ex + (2 / 3) * (cx - ex), ey + (2 / 3) * (cy - ey)], [ex, ey]);
        break;
      }
      case 'Z': case 'z': {
        const [first] = now;
        end(true);
        now = first ? [{ x: first.x, y: first.y }] : [];
        break;
      }
      default: break;
    }
  });
  end(false);
  return found;
}

/** No curve of a sewing pattern needs more. */
const MOST_STEPS = 100;

/**
 * Equal parts of a cubic curve as quadratic ones with the same ends and
 * directions halved, which miss it by √3 ÷ 36 of its third difference over the
 * cube of their number.
 */
function quadratics(a: Point, b: Point, c: Point, d: Point, tolerance: number): { readonly through: Point; readonly to: Point }[] {
  const third = Math.hypot(d[0] - 3 * c[0] + 3 * b[0] - a[0], d[1] - 3 * c[1] + 3 * b[1] - a[1]);
  const steps = Math.min(MOST_STEPS, Math.max(1, Math.ceil(Math.cbrt((Math.sqrt(3) / 36) * (third / tolerance)) - 1e-9)));
  const on = (t: number): Point => {
    const u = 1 - t;
    const axis = (i: 0 | 1): number => u * u * u * a[i] + 3 * u * u * t * b[i] + 3 * u * t * t * c[i] + t * t * t * d[i];
    return [axis(0), axis(1)];
  };
  return Array.from({ length: steps }, (_, i) => ({ through: on((i + 0.5) / steps), to: i === steps - 1 ? d : on((i + 1) / steps) }));
}
