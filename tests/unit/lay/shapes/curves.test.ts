/** Drawn curves and path data against exact geometry and a library that had no part in making them. */
import { arc, point, Polygon, segment } from '@flatten-js/core';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { areaOf } from '../../../../src/lay/index.ts';
import { drawnOutline } from '../../../../src/lay/shapes/index.ts';
import { subpaths } from '../../../../src/lay/shapes/svg-path.ts';

const length = fc.double({ min: 20, max: 900, noNaN: true });

it('a bent edge adds two thirds of its chord times how far it bends out', () => {
  fc.assert(fc.property(length, length, fc.double({ min: 1, max: 200, noNaN: true }), (width, height, out) => {
    const outline = drawnOutline({ points: [{ x: 0, y: 0 }, { x: width, y: 0, through: { x: width + out, y: height / 2 } }, { x: width, y: height }, { x: 0, y: height }] });
    expect(outline.some(([x, y]) => Math.abs(x - width - out) < 1e-9 && Math.abs(y - height / 2) < 1e-9)).toBe(true);
    const exact = width * height + (2 / 3) * height * out;
    expect(exact - areaOf(outline)).toBeGreaterThan(-1e-6);
    expect(exact - areaOf(outline)).toBeLessThan(0.1 * (height + 2 * out));
  }));
});

it('path data with arcs has the area of the same arcs drawn by another library', () => {
  fc.assert(fc.property(length, fc.double({ min: 20, max: 300, noNaN: true }), fc.double({ min: 0.2, max: 3, noNaN: true }), fc.double({ min: 0.2, max: 5, noNaN: true }), (inner, deep, angle, scale) => {
    const outer = inner + deep;
    const at = (radius: number, turn: number): readonly [number, number] => [radius * Math.cos(turn), radius * Math.sin(turn)];
    const [a, b, c, d] = [at(inner, 0), at(outer, 0), at(outer, angle), at(inner, angle)];
    const polygon = new Polygon();
    polygon.addFace([
      segment(point(...a), point(...b)), arc(point(0, 0), outer, 0, angle, true), segment(point(...c), point(...d)), arc(point(0, 0), inner, angle, 0, false),
    ]);
    const large = angle > Math.PI ? 1 : 0;
    const read = subpaths(`M${a.join(' ')}L${b.join(' ')}A${outer} ${outer} 0 ${large} 1 ${c.join(' ')}L${d.join(' ')}A${inner} ${inner} 0 ${large} 0 ${a.join(' ')}Z`, [], scale, 0.1)!;
    expect(read).toHaveLength(1);
    expect(read[0]!.closed).toBe(true);
    const outline = drawnOutline(read[0]!);
    // Every point lies within 0.2 mm and the 0.03 % by which arcs are missed.
    const off = outline.map(([x, y]) => polygon.distanceTo(point(x / scale, y / scale))[0] * scale);
    expect(Math.max(...off)).toBeLessThan(0.2 + 3e-4 * outer * scale);
    const exact = Math.abs(polygon.area()) * scale * scale;
    expect(Math.abs(areaOf(outline) - exact)).toBeLessThan((0.2 + 3e-4 * outer * scale) * (2 * deep + angle * (inner + outer)) * scale);
  }), { numRuns: 60 });
});

it('a cubic curve is met within the tolerance by few quadratic ones', () => {
  const near = fc.tuple(fc.double({ min: -400, max: 400, noNaN: true }), fc.double({ min: -400, max: 400, noNaN: true }));
  fc.assert(fc.property(near, near, near, (b, c, d) => {
    const { points } = subpaths(`M0 0C${b.join(' ')} ${c.join(' ')} ${d.join(' ')}L500 500`, [], 1, 0.1)![0]!;
    const on = (t: number): readonly [number, number] => {
      const u = 1 - t;
      return [3 * u * u * t * b[0] + 3 * u * t * t * c[0] + t ** 3 * d[0], 3 * u * u * t * b[1] + 3 * u * t * t * c[1] + t ** 3 * d[1]];
    };
    const count = points.filter(({ through }) => through).length;
    expect(count).toBeLessThan(40);
    for (let i = 0; i < count; i++) {
      const [p, q, through] = [points[i]!, points[i + 1]!, points[i]!.through!];
      for (const s of [0.2, 0.4, 0.7]) {
        const u = 1 - s, cx = 2 * through.x - (p.x + q.x) / 2, cy = 2 * through.y - (p.y + q.y) / 2;
        const [x, y] = on((i + s) / count);
        expect(Math.hypot(u * u * p.x + 2 * u * s * cx + s * s * q.x - x, u * u * p.y + 2 * u * s * cy + s * s * q.y - y)).toBeLessThan(0.1001);
      }
    }
  }));
});

it('transforms go from the inside out, and what cannot be read is not read in part', () => {
  const [read] = subpaths('M0 0H10V20z', ['rotate(90)', 'translate(5 0)'], 2, 0.1)!;
  expect(read!.points.map(({ x, y }) => [Math.round(x), Math.round(y)])).toEqual([[10, 0], [10, 20], [-30, 20]]);
  expect(subpaths('M0 0 L10 nonsense', [], 1, 0.1)).toBeNull();
});
