import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Point } from '../../../../src/lay/index.ts';
import { mmPerPixel, planeThrough, type Known } from '../../../../src/lay/shapes/index.ts';

/** A camera made by hand: above a plane, tilted, turned, with a focal length in pixels (the pinhole model). */
function camera({ tilt, turn, height, focal, x0, y0 }: { tilt: number; turn: number; height: number; focal: number; x0: number; y0: number }) {
  return ([mx, my]: Point): Point => {
    const [x, y] = [mx - x0, my - y0];
    const [u, v] = [x * Math.cos(turn) - y * Math.sin(turn), x * Math.sin(turn) + y * Math.cos(turn)];
    const depth = height + v * Math.sin(tilt);
    return [800 + (focal * u) / depth, 600 + (focal * v * Math.cos(tilt)) / depth];
  };
}

const cameras = fc.record({
  tilt: fc.double({ min: -0.6, max: 0.6, noNaN: true }), turn: fc.double({ min: -0.7, max: 0.7, noNaN: true }),
  height: fc.double({ min: 900, max: 2500, noNaN: true }), focal: fc.double({ min: 700, max: 2500, noNaN: true }),
  x0: fc.double({ min: 100, max: 500, noNaN: true }), y0: fc.double({ min: 100, max: 350, noNaN: true }),
});

const RECTANGLE: readonly Point[] = [[0, 0], [600, 0], [600, 450], [0, 450]];
const MIDDLES: readonly Point[] = [[300, 0], [600, 225], [300, 450], [0, 225]];
const seen = (look: (mm: Point) => Point, places: readonly Point[]): Known[] => places.map((mm) => ({ mm, px: look(mm) }));
const place = fc.tuple(fc.double({ min: 0, max: 600, noNaN: true }), fc.double({ min: 0, max: 450, noNaN: true }));

it('gives back every place of a plane that a known camera looked at, there and back', () => {
  fc.assert(fc.property(cameras, place, (given, mm) => {
    const look = camera(given);
    for (const places of [RECTANGLE, [...RECTANGLE, ...MIDDLES]]) {
      const plane = planeThrough(seen(look, places))!;
      const px = look(mm);
      expect(Math.hypot(plane.toMm(px)[0] - mm[0], plane.toMm(px)[1] - mm[1])).toBeLessThan(1e-6);
      expect(Math.hypot(plane.toPx(mm)[0] - px[0], plane.toPx(mm)[1] - px[1])).toBeLessThan(1e-6);
      expect(plane.residual).toBeLessThan(1e-6);
    }
  }));
});

it('straight from above, a pixel is the height over the focal length everywhere', () => {
  const plane = planeThrough(seen(camera({ tilt: 0, turn: 0.3, height: 1500, focal: 1200, x0: 300, y0: 225 }), RECTANGLE))!;
  for (const mm of [[0, 0], [300, 225], [590, 20]] as const) expect(mmPerPixel(plane, plane.toPx(mm))).toBeCloseTo(1500 / 1200, 9);
});

it('a pixel is the more mm the farther away the mat is', () => {
  const plane = planeThrough(seen(camera({ tilt: 0.5, turn: 0, height: 1500, focal: 1200, x0: 300, y0: 225 }), RECTANGLE))!;
  expect(mmPerPixel(plane, plane.toPx([300, 440]))).toBeGreaterThan(1.2 * mmPerPixel(plane, plane.toPx([300, 10])));
});

it('the middles of the sides tell of a corner that was set wrongly, four corners alone do not', () => {
  const look = camera({ tilt: 0.3, turn: 0.1, height: 1500, focal: 1200, x0: 300, y0: 225 });
  const off = (places: readonly Point[]): Known[] => seen(look, places).map((known, i) => (i === 1 ? { ...known, px: [known.px[0] + 8, known.px[1]] } : known));
  expect(planeThrough(off(RECTANGLE))!.residual).toBeLessThan(1e-6);
  expect(planeThrough(off([...RECTANGLE, ...MIDDLES]))!.residual).toBeGreaterThan(2);
});

it('places on a line, twice the same, too few, or beyond the horizon make no plane', () => {
  const at = (...px: readonly Point[]): Known[] => px.map((one, i) => ({ px: one, mm: RECTANGLE[i]! }));
  expect(planeThrough(at([0, 0], [10, 0], [20, 0], [0, 9]))).toBeNull();
  expect(planeThrough(at([0, 0], [0, 0], [20, 20], [0, 20]))).toBeNull();
  expect(planeThrough(at([0, 0], [10, 0], [20, 9]))).toBeNull();
  // The corners of a bow tie.
  expect(planeThrough(at([0, 0], [10, 0], [0, 10], [10, 10]))).toBeNull();
});
