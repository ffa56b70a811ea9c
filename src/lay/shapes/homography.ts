/**
 * Straightens a photograph of a flat thing: from places in the picture to mm on
 * the plane and back, by a projective map through known places. Eight figures
 * from four places or more, by least squares.
 *
 * Source: R. Hartley, A. Zisserman, Multiple View Geometry in Computer Vision
 * (2nd ed., 2004), section 4.1, with its normalisation of the places (from memory).
 */
import type { Point } from '../types.ts';

/** A place of the picture in pixels, and the same place on the plane in mm. */
export interface Known {
  readonly px: Point;
  readonly mm: Point;
}

export interface Plane {
  toMm(px: Point): Point;
  toPx(mm: Point): Point;
  /** The largest distance, in mm, between a known place and where its picture says it is. With four places it says nothing. */
  readonly residual: number;
}

type Nine = readonly [number, number, number, number, number, number, number, number, number];

/** `null` where the places do not span a plane: three of them on a line, or two the same. */
export function planeThrough(known: readonly Known[]): Plane | null {
  if (known.length < 4) return null;
  const from = steadied(known.map(({ px }) => px)), to = steadied(known.map(({ mm }) => mm));
  if (!from || !to) return null;
  const rows: number[][] = [];
  const wanted: number[] = [];
  known.forEach((_, i) => {
    const [x, y] = from.points[i]!, [u, v] = to.points[i]!;
    rows.push([x, y, 1, 0, 0, 0, -u * x, -u * y], [0, 0, 0, x, y, 1, -v * x, -v * y]);
    wanted.push(u, v);
  });
  const found = leastSquares(rows, wanted);
  if (!found) return null;
  const middle = [...found, 1] as unknown as Nine;
  const forth = times(times(to.back, middle), from.forth);
  const back = inverse(forth);
  if (!back) return null;
  // Every known place has to lie before the camera: on the same side of the horizon.
  const sides = known.map(({ px: [x, y] }) => Math.sign(forth[6] * x + forth[7] * y + forth[8]));
  if (sides.some((side) => side === 0 || side !== sides[0])) return null;
  const toMm = (px: Point): Point => through(forth, px);
  const residual = Math.max(...known.map(({ px, mm }) => distance(toMm(px), mm)));
  return { toMm, toPx: (mm) => through(back, mm), residual };
}

/** How many mm a pixel is at a place, in the direction in which it is most. */
export function mmPerPixel(plane: Plane, [x, y]: Point): number {
  const here = plane.toMm([x, y]), right = plane.toMm([x + 1, y]), down = plane.toMm([x, y + 1]);
  // The larger singular value of the two steps, as they may be skew.
  const [a, b, c, d] = [right[0] - here[0], down[0] - here[0], right[1] - here[1], down[1] - here[1]];
  const sum = a * a + b * b + c * c + d * d, area = a * d - b * c;
  return Math.sqrt((sum + Math.sqrt(Math.max(0, sum * sum - 4 * area * area))) / 2);
}

const distance = (a: Point, b: Point): number => Math.hypot(a[0] - b[0], a[1] - b[1]);

function through([a, b, c, d, e, f, g, h, i]: Nine, [x, y]: Point): Point {
  const w = g * x + h * y + i;
  return [(a * x + b * y + c) / w, (d * x + e * y + f) / w];
}

/** Moved to their middle and brought to one size, so that the sums keep their digits. */
function steadied(points: readonly Point[]): { readonly points: readonly Point[]; readonly forth: Nine; readonly back: Nine } | null {
  const n = points.length;
  const mx = points.reduce((sum, [x]) => sum + x, 0) / n, my = points.reduce((sum, [, y]) => sum + y, 0) / n;
  const size = points.reduce((sum, point) => sum + distance(point, [mx, my]), 0) / n / Math.SQRT2;
  if (!(size > 1e-9)) return null;
  return {
    points: points.map(([x, y]) => [(x - mx) / size, (y - my) / size]),
    forth: [1 / size, 0, -mx / size, 0, 1 / size, -my / size, 0, 0, 1],
    back: [size, 0, mx, 0, size, my, 0, 0, 1],
  };
}

function times(a: Nine, b: Nine): Nine {
  const at = (r: number, c: number): number => a[3 * r]! * b[c]! + a[3 * r + 1]! * b[3 + c]! + a[3 * r + 2]! * b[6 + c]!;
  return [at(0, 0), at(0, 1), at(0, 2), at(1, 0), at(1, 1), at(1, 2), at(2, 0), at(2, 1), at(2, 2)];
}

function inverse([a, b, c, d, e, f, g, h, i]: Nine): Nine | null {
  const [p, q, r] = [e * i - f * h, f * g - d * i, d * h - e * g];
  const whole = a * p + b * q + c * r;
  const scale = Math.hypot(a, b, c) * Math.hypot(d, e, f) * Math.hypot(g, h, i);
  if (!(Math.abs(whole) > scale * 1e-12)) return null;
  return [p / whole, (c * h - b * i) / whole, (b * f - c * e) / whole, q / whole, (a * i - c * g) / whole, (c * d - a * f) / whole, r / whole, (b * g - a * h) / whole, (a * e - b * d) / whole];
}

/** By Householder reflections; `null` where the places leave a figure open. */
function leastSquares(given: readonly (readonly number[])[], wanted: readonly number[]): number[] | null {
  const a = given.map((row) => [...row]), b = [...wanted];
  const n = a[0]!.length;
  for (let col = 0; col < n; col++) {
    const length = Math.hypot(...a.slice(col).map((row) => row[col]!));
    if (length < 1e-9) return null;
    const alpha = a[col]![col]! > 0 ? -length : length;
    const v = a.slice(col).map((row, i) => (i === 0 ? row[col]! - alpha : row[col]!));
    const size = v.reduce((sum, each) => sum + each * each, 0);
    const reflect = (get: (row: number) => number, set: (row: number, value: number) => void): void => {
      const share = (2 * v.reduce((sum, each, i) => sum + each * get(col + i), 0)) / size;
      v.forEach((each, i) => set(col + i, get(col + i) - share * each));
    };
    for (let other = col; other < n; other++) reflect((row) => a[row]![other]!, (row, value) => { a[row]![other] = value; });
    reflect((row) => b[row]!, (row, value) => { b[row] = value; });
  }
  const x = new Array<number>(n).fill(0);
  for (let row = n - 1; row >= 0; row--) {
    const rest = b[row]! - a[row]!.slice(row + 1).reduce((sum, each, i) => sum + each * x[row + 1 + i]!, 0);
    if (Math.abs(a[row]![row]!) < 1e-9) return null;
    x[row] = rest / a[row]![row]!;
  }
  return x;
}
