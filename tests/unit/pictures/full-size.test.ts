/** A quarter circle over pages: nothing of it is missing, nothing is there twice, and every page can be measured. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CHECK, MOST_RADIUS, TILE, arcTiles, clearance, tilePath } from '../../../src/pictures/index.ts';

const radii = fc.double({ min: 5, max: MOST_RADIUS, noNaN: true });

describe('a quarter circle at full size', () => {
  it('has every part of the curve on just one page, and inside it', () => {
    fc.assert(fc.property(radii, (radius) => {
      const tiles = arcTiles(radius);
      const arcs = tiles.flatMap((tile) => tile.arcs.map(([from, to]) => ({ from, to, tile }))).sort((a, b) => a.from - b.from);
      expect(arcs[0]!.from).toBe(0);
      expect(arcs.at(-1)!.to).toBe(Math.PI / 2);
      arcs.forEach(({ from, to, tile }, at) => {
        if (at > 0) expect(from - arcs[at - 1]!.to).toBeLessThan(1e-9);
        for (let n = 0; n <= 8; n++) {
          const angle = from + ((to - from) * n) / 8;
          const [x, y] = [radius * Math.cos(angle) - tile.column * TILE.width, radius * Math.sin(angle) - tile.row * TILE.height];
          expect(Math.min(x, y, TILE.width - x, TILE.height - y)).toBeGreaterThan(-1e-6);
        }
      });
      expect(arcs.reduce((sum, { from, to }) => sum + radius * (to - from), 0)).toBeCloseTo((radius * Math.PI) / 2, 6);
    }));
  });

  it('names each join alike on both pages', () => {
    fc.assert(fc.property(radii, (radius) => {
      const tiles = arcTiles(radius);
      const back = { left: 'right', right: 'left', top: 'bottom', bottom: 'top' } as const;
      tiles.forEach((tile, at) => tile.joins.forEach((join) => {
        expect(tiles[join.page - 1]!.joins).toContainEqual({ side: back[join.side], letter: join.letter, page: at + 1 });
      }));
      // The curve leaves every page but the last over a join, or just through a corner.
      const lone = tiles.filter(({ joins }) => joins.length === 0);
      if (tiles.length > 1) expect(lone.length).toBeLessThanOrEqual(1);
    }));
  });

  it('has a whole check square on every page, beside the curve wherever there is room for it', () => {
    let crossed = 0;
    let pages = 0;
    fc.assert(fc.property(radii, (radius) => {
      for (const { column, row, check: [x, y] } of arcTiles(radius)) {
        expect(Math.min(x, y, TILE.width - CHECK.inch - x, TILE.height - CHECK.inch - y)).toBeGreaterThanOrEqual(3 - 1e-9);
        pages += 1;
        const chosen = clearance(radius, column * TILE.width + x, row * TILE.height + y);
        if (chosen > 0) continue;
        crossed += 1;
        for (const [left, bottom] of [[3, 3], [3, 121], [75, 3], [75, 121], [39, 62]] as const) {
          expect(clearance(radius, column * TILE.width + left, row * TILE.height + bottom)).toBeLessThanOrEqual(chosen + 1);
        }
      }
    }));
    expect(crossed / pages).toBeLessThan(0.25);
  });

  it('is drawn in millimetres, from the upper left corner of the page', () => {
    const [tile] = arcTiles(124);
    expect(arcTiles(124)).toHaveLength(1);
    expect(tilePath(tile!, 124)).toBe('M124 226A124 124 0 0 0 0 102');
    expect(arcTiles(0)).toEqual([]);
    // By hand, by Pythagoras: at 452 mm up (two pages) the curve is 560.4 mm across, so still on the fourth page; at 540 mm across it is 476.2 mm up.
    expect(arcTiles(720).map(({ column, row }) => `${column},${row}`)).toEqual(['3,0', '3,1', '3,2', '2,2', '1,2', '1,3', '0,3']);
  });
});
