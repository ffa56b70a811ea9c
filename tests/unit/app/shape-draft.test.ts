import { point, Polygon, type Edge } from '@flatten-js/core';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { aboutShape, boardOf, bulge, canLose, moved, rowsOf, snapped, without, withBulge, withPoint } from '../../../src/app/shape-draft.ts';
import { areaOf } from '../../../src/lay/index.ts';
import { drawnOutline } from '../../../src/lay/shapes/index.ts';
import type { Shape } from '../../../src/workbook/index.ts';

const AS = { system: 'own', inchStep: 8 } as const;

const square: Shape = {
  name: 'Yoke', points: [{ x: 0, y: 0 }, { x: 200, y: 0 }, { x: 200, y: 100 }, { x: 0, y: 100 }],
  grain: [{ x: 100, y: 20 }, { x: 100, y: 80 }], marks: [], from: 'board', file: '', error: 0.5,
};

it('snaps to the crossing of the squares', () => {
  expect(snapped({ x: 12.6, y: -3 }, 5)).toEqual({ x: 15, y: -5 });
  expect(snapped({ x: -1, y: 1 }, 5)).toEqual({ x: 0, y: 0 });
});

it('an edge bends out by a typed figure, either way round the outline, and straight again', () => {
  for (const shape of [square, { ...square, points: square.points.toReversed() }]) {
    for (let at = 0; at < 4; at++) {
      const bent = withBulge(shape, at, 12);
      expect(bulge(bent, at)).toBeCloseTo(12, 3);
      expect(areaOf(drawnOutline(bent))).toBeGreaterThan(20_000);
      expect(areaOf(drawnOutline(withBulge(shape, at, -12)))).toBeLessThan(20_000);
      expect(withBulge(bent, at, 0)).toEqual(shape);
    }
  }
});

it('a point more on an edge changes nothing of the outline, bent or straight', () => {
  fc.assert(fc.property(fc.nat(3), fc.integer({ min: -40, max: 90 }), (at, out) => {
    const shape = withBulge(square, at, out);
    const more = withPoint(shape, at);
    expect(more.points).toHaveLength(5);
    expect(Math.abs(areaOf(drawnOutline(more)) - areaOf(drawnOutline(shape)))).toBeLessThan(0.1 * 250);
    const before = new Polygon(drawnOutline(shape).map(([x, y]) => point(x, y)));
    for (const [x, y] of drawnOutline(more)) expect(Math.min(...[...before.edges].map((edge) => (edge as Edge).shape.distanceTo(point(x, y))[0]))).toBeLessThan(0.11);
  }));
});

it('moving a point takes its curves along by half; three points are the least', () => {
  const bent = moved(square, { kind: 'bend', at: 1 }, { x: 230, y: 50 });
  expect(moved(bent, { kind: 'point', at: 2 }, { x: 220, y: 120 }).points[1]!.through).toEqual({ x: 240, y: 60 });
  const three = without(square, { kind: 'point', at: 0 });
  expect(three.points).toHaveLength(3);
  expect([canLose(square, { kind: 'point', at: 0 }), canLose(three, { kind: 'point', at: 0 }), canLose(square, { kind: 'grain', at: 0 })]).toEqual([true, false, false]);
});

it('says its figures as they would be typed, in the workbook’s units', () => {
  expect(rowsOf(withBulge(square, 1, 12.5), AS)[1]).toMatchObject({ label: 'Point 2', x: '20 cm', y: '0 cm', bend: '1.25 cm' });
  expect(rowsOf(square, { ...AS, system: 'in' })[1]!.x).toBe('7.874 in');
  expect(rowsOf(square, { ...AS, decimalMark: ',' })[2]).toMatchObject({ y: '10 cm' });
  expect(aboutShape(square, AS)).toBe('Drawn on the board. 20.0 cm wide, 10.0 cm high, 200 cm². Its outline may be off by 0.5 mm.');
});

it('a shape of very many points is held by its figures and its grain line', () => {
  const many = { ...square, points: Array.from({ length: 400 }, (_, i) => ({ x: 200 * Math.cos(i / 64), y: 200 * Math.sin(i / 64) })) };
  expect(boardOf(many, null, 5, null, null, AS).spots).toHaveLength(2);
  expect(boardOf(many, { kind: 'point', at: 7 }, 5, null, null, AS).spots).toHaveLength(4);
});
