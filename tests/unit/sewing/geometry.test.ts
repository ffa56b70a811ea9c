/**
 * Geometry against an independent library for points, arcs and polygons: shapes
 * are drawn in it, and what it measures must be what the functions say.
 */
import { arc, BooleanOperations, Line, point, Polygon, segment, vector } from '@flatten-js/core';
import type { Arc, Point, Segment } from '@flatten-js/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inBase } from '../../../src/quantities/index.ts';
import type { Quantity } from '../../../src/quantities/index.ts';
import { functionNamed, work } from '../../../src/sewing/index.ts';
import type { SewingFunction, Value } from '../../../src/sewing/index.ts';
import { isFault } from '../../../src/quantities/index.ts';
import { sectorBox } from '../../../src/sewing/circle-pieces.ts';

const cm = (value: number): Value => inBase(value, 'mm');
const bare = (value: number): Value => inBase(value, '');

function result(name: string, ...values: Value[]): number | undefined {
  const outcome = work(functionNamed(name) as SewingFunction, values);
  return isFault(outcome) ? undefined : (outcome.value as Quantity).value;
}

const sure = (name: string, ...values: Value[]): number => result(name, ...values) as number;
const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const close = (a: number, b: number, of = 1): void => expect(Math.abs(a - b)).toBeLessThanOrEqual(1e-7 * Math.max(1, Math.abs(of), Math.abs(b)));

const polygonOf = (...corners: readonly (readonly [number, number])[]): Polygon => new Polygon(corners.map(([x, y]) => point(x, y)));

/** A ring sector of less than a whole circle, its middle along the x axis. */
function ringSector(inner: number, outer: number, angle: number): Polygon {
  const [from, to] = [-angle / 2, angle / 2];
  const at = (radius: number, turn: number): Point => point(radius * Math.cos(turn), radius * Math.sin(turn));
  const edges: (Arc | Segment)[] = [
    segment(at(inner, from), at(outer, from)),
    arc(point(0, 0), outer, from, to, true),
    segment(at(outer, to), at(inner, to)),
    arc(point(0, 0), inner, to, from, false),
  ];
  const polygon = new Polygon();
  polygon.addFace(edges);
  return polygon;
}

describe('circles', () => {
  it('the waist and the hem of a sector cut by CIRCLE.RADIUS are as long as they should be', () => {
    fc.assert(fc.property(between(500, 1200), between(0.05, 0.95), between(100, 1200), (waist, part, length) => {
      const radius = sure('CIRCLE.RADIUS', cm(waist), bare(part));
      const angle = 2 * Math.PI * part;
      close(arc(point(0, 0), radius, 0, angle, true).length, waist);
      close(arc(point(0, 0), radius + length, 0, angle, true).length, sure('CIRCLE.SWEEP', cm(radius), cm(length), bare(part)));
    }), { numRuns: 200, seed: 11 });
  });

  it('the hem’s raw edge is as much longer than the fold, and than the round it is sewn to, as the functions say', () => {
    fc.assert(fc.property(between(300, 900), between(1, 60), between(0.05, 0.95), (radius, hem, part) => {
      const round = (at: number): number => arc(point(0, 0), at, 0, 2 * Math.PI * part, true).length;
      close(round(radius + hem) - round(radius), sure('HEM.FULLNESS', cm(hem), bare(part)), round(radius));
      close(round(radius + hem) - round(radius - hem), sure('HEM.EASED', cm(hem), bare(part)), round(radius));
      close((round(radius + hem) - round(radius - hem)) / round(radius - hem), sure('HEM.CURVE', cm(hem), cm(radius)));
    }), { numRuns: 200, seed: 12 });
  });

  it('a piece takes the box that the library puts round its sector, and no more area than the box', () => {
    fc.assert(fc.property(between(50, 300), between(100, 900), between(0.05, 0.95), fc.constantFrom(0, 1, 2), (inner, length, part, turned) => {
      const outer = inner + length;
      const angle = 2 * Math.PI * part;
      const turn = [-angle / 2, 0, 0.3][turned] as number;
      const shape = ringSector(inner, outer, angle).rotate(turn + angle / 2, point(0, 0));
      const box = sectorBox(inner, outer, angle, 0, turn);
      close(box.along, shape.box.width, outer);
      close(box.across, shape.box.height, outer);
      close(shape.area(), (angle / 2) * (outer ** 2 - inner ** 2), outer ** 2);
    }), { numRuns: 300, seed: 13 });
  });

  it('CIRCLE.LONGEST just lies on the cloth', () => {
    fc.assert(fc.property(between(60, 200), between(0.05, 0.95), between(700, 1600), (radius, part, width) => {
      const length = result('CIRCLE.LONGEST', cm(radius), bare(part), cm(width));
      const heights = (outer: number): number => {
        const shape = ringSector(radius, outer, 2 * Math.PI * part);
        const edge = shape.rotate(Math.PI * part, point(0, 0));
        return Math.min(...[shape, edge].flatMap(({ box }) => [box.width, box.height]));
      };
      if (length === undefined) expect(heights(radius * 1.001)).toBeGreaterThan(width);
      else close(heights(radius + length), width, width);
    }), { numRuns: 200, seed: 14 });
  });

  it('a godet’s hem and angle are those of its arc', () => {
    fc.assert(fc.property(between(50, 600), between(0.02, 0.98), (length, part) => {
      const hem = arc(point(0, 0), length, 0, 2 * Math.PI * part, true);
      close(hem.length, sure('GODET.ARC', cm(length), bare(part)));
      close((hem.sweep * 180) / Math.PI, sure('GODET.ANGLE', cm(hem.length), cm(length)));
    }), { numRuns: 200, seed: 15 });
  });
});

describe('bias', () => {
  /** The square's part between two lines along the bias, at these distances from the corner; its area is that of the strip. */
  function band(side: number, from: number, to: number): number {
    const far = 4 * side;
    const along = (at: number): readonly [readonly [number, number], readonly [number, number]] => {
      const shift = at * Math.SQRT2;
      return [[shift - far, far], [shift + far, -far]];
    };
    const [[a, b], [c, d]] = [along(from), along(to)];
    const square = polygonOf([0, 0], [side, 0], [side, side], [0, side]);
    return Math.abs(BooleanOperations.intersect(square, polygonOf(a, b, d, c)).area());
  }

  it('strips cut from the diagonal outwards have the lengths that BIAS.STRIPS adds up', () => {
    fc.assert(fc.property(between(200, 900), between(15, 90), (side, strip) => {
      const diagonal = side / Math.SQRT2;
      let [whole, n] = [0, 0];
      while ((n + 1) * strip <= diagonal) {
        whole += 2 * (band(side, diagonal + n * strip, diagonal + (n + 1) * strip) / strip);
        n += 1;
      }
      close(whole, sure('BIAS.STRIPS', cm(side), cm(strip), cm(0)), whole);
    }), { numRuns: 60, seed: 16 });
  });

  it('the parallelogram of the continuous method has the rounds and lengths that BIAS.CONTINUOUS says', () => {
    fc.assert(fc.property(between(200, 900), between(15, 60), between(0, 12), (side, strip, seam) => {
      // The upper triangle keeps what lies above its stitching line, the lower what lies below its own; they meet along it.
      const leg = side - seam;
      const sheet = polygonOf([0, 0], [0, -leg], [leg, 0], [leg, leg]);
      const apart = point(0, 0).distanceTo(new Line(point(0, -leg), point(leg, 0)))[0];
      const rounds = Math.floor(apart / strip + 1e-9);
      // Joined to a tube, both straight ends lose a seam.
      const trimmed = BooleanOperations.intersect(sheet, polygonOf([seam, -2 * side], [leg - seam, -2 * side], [leg - seam, 2 * side], [seam, 2 * side]));
      const round = Math.abs(trimmed.area()) / apart;
      const said = result('BIAS.CONTINUOUS', cm(side), cm(strip), cm(seam));
      close(said ?? 0, rounds * round, side);
      // The area rule never promises less.
      expect(said ?? 0).toBeLessThanOrEqual(sure('BIAS.LENGTH', cm(side), cm(strip), cm(seam)) * (1 + 1e-9));
    }), { numRuns: 100, seed: 17 });
  });

  it('BIAS.SIDE is the least side that gives the length', () => {
    fc.assert(fc.property(between(300, 9000), between(15, 60), between(0, 12), (length, strip, seam) => {
      const side = sure('BIAS.SIDE', cm(length), cm(strip), cm(seam));
      expect(sure('BIAS.CONTINUOUS', cm(side * (1 + 1e-9)), cm(strip), cm(seam))).toBeGreaterThanOrEqual(length * (1 - 1e-9));
      for (const less of [0.9999, 0.99, 0.9]) expect(result('BIAS.CONTINUOUS', cm(side * less), cm(strip), cm(seam)) ?? 0).toBeLessThan(length);
    }), { numRuns: 200, seed: 18 });
  });
});

describe('panels and seams', () => {
  const gore = (length: number, top: number, bottom: number): Polygon => polygonOf([-bottom / 2, 0], [bottom / 2, 0], [top / 2, length], [-top / 2, length]);

  it('a gore’s side, and gores head to tail, are as the library measures them', () => {
    fc.assert(fc.property(between(300, 900), between(60, 200), between(60, 450), fc.integer({ min: 1, max: 9 }), (length, top, bottom, gores) => {
      close(sure('GORE.SEAM', cm(length), cm(top), cm(bottom)), point(bottom / 2, 0).distanceTo(point(top / 2, length))[0]);
      let row: Polygon | undefined;
      for (let n = 0; n < gores; n += 1) {
        const flipped = n % 2 === 0 ? gore(length, top, bottom) : gore(length, top, bottom).rotate(Math.PI, point(0, length / 2));
        const placed = flipped.translate(vector((n * (top + bottom)) / 2, 0));
        row = row === undefined ? placed : BooleanOperations.unify(row, placed);
      }
      const width = (row as Polygon).box.width;
      // They touch and do not overlap.
      close((row as Polygon).area(), (gores * length * (top + bottom)) / 2, length * width);
      expect(sure('GORE.CLOTH', bare(gores), cm(length), cm(top), cm(bottom), cm(width * (1 + 1e-9)), 'any')).toBe(length);
      if (gores > 1) expect(sure('GORE.CLOTH', bare(gores), cm(length), cm(top), cm(bottom), cm(width * 0.999), 'any')).toBeGreaterThan(length);
    }), { numRuns: 60, seed: 19 });
  });

  it('a curved edge moved outwards grows by SEAM.CURVE', () => {
    fc.assert(fc.property(between(60, 400), between(-40, 40), between(5, 359), (radius, shift, degrees) => {
      const long = (at: number): number => arc(point(0, 0), at, 0, (degrees * Math.PI) / 180, true).length;
      close(sure('SEAM.CURVE', cm(shift), inBase(degrees, 'deg')), long(radius + shift) - long(radius), radius);
    }), { numRuns: 200, seed: 20 });
  });

  it('a carried-on side meets LENGTHEN.WIDTH', () => {
    fc.assert(fc.property(between(10, 200), between(300, 900), between(100, 500), between(501, 900), (amount, length, top, bottom) => {
      const side = new Line(point(top / 2, 0), point(bottom / 2, length));
      const hem = new Line(point(0, length + amount), point(1, length + amount));
      const [met] = side.intersect(hem);
      close(sure('LENGTHEN.WIDTH', cm(amount), cm(length), cm(top), cm(bottom)), 2 * (met as Point).x);
      close(sure('LENGTHEN.SEAM', cm(amount), cm(length), cm(top), cm(bottom)), point(bottom / 2, length).distanceTo(met as Point)[0]);
    }), { numRuns: 200, seed: 21 });
  });

  it('a dart’s legs, angle and width belong to one triangle', () => {
    fc.assert(fc.property(between(1, 80), between(40, 250), (intake, length) => {
      const [tip, one, other] = [point(0, length), point(-intake / 2, 0), point(intake / 2, 0)];
      close(sure('DART.LEG', cm(intake), cm(length)), tip.distanceTo(one)[0]);
      const [leg, far] = [vector(tip, one), vector(tip, other)];
      const angle = (Math.min(leg.angleTo(far), far.angleTo(leg)) * 180) / Math.PI;
      close(sure('DART.ANGLE', cm(intake), cm(length)), angle, 90);
      close(sure('DART.WIDTH', inBase(angle, 'deg'), cm(length)), intake, length);
    }), { numRuns: 200, seed: 22 });
  });

  it('an armhole swung by SHOULDER.PIVOT moves the shoulder by the change', () => {
    fc.assert(fc.property(between(-30, 30), between(80, 200), (change, slash) => {
      const angle = (sure('SHOULDER.PIVOT', cm(change), cm(slash)) * Math.PI) / 180;
      close(point(slash, 0).rotate(angle, point(0, 0)).distanceTo(point(slash, 0))[0], Math.abs(change), slash);
    }), { numRuns: 200, seed: 23 });
  });
});
