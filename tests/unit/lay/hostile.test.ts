/** Outlines that a search could choke on: it goes on in short steps, hears a cancel, and what it gives out can be cut. */
import { describe, expect, it } from 'vitest';
import { layCautions, layFaults, layoutFaults, type Cloth, type Outline, type Piece } from '../../../src/lay/index.ts';
import { Job } from '../../../workers/lay/job.ts';
import { Served } from '../../../workers/lay/served.ts';
import { simplifyOutwards } from '../../../workers/lay/simplify.ts';
import { all, bodice, box, cloth, piece } from './help.ts';

/** Processor milliseconds, so that a busy machine does not count. */
const spent = (): number => process.cpuUsage().user / 1000;

const circle = (points: number): Outline => Array.from({ length: points }, (_, i) => [200 * Math.cos((2 * Math.PI * i) / points), 200 * Math.sin((2 * Math.PI * i) / points)] as const);

/** Notched all around, as if cut with pinking shears. */
const pinked = (points: number): Outline => circle(points).map(([along, across], i) => (i % 2 === 0 ? [along, across] : [along * 0.8, across * 0.8]));

const hostile: [string, readonly Piece[], Partial<Cloth>][] = [
  ['circles of 2,000 points', [piece('Circle', circle(2000), { count: 5 })], {}],
  ['the same with a gap', [piece('Circle', circle(2000), { count: 5 })], { gap: 5 }],
  ['200 notches', [piece('Pinked', pinked(400), { count: 5 })], {}],
  ['1,000 notches with a gap', [piece('Pinked', pinked(2000), { count: 5 })], { gap: 5 }],
  ['300 boxes of 60 sizes', Array.from({ length: 60 }, (_, i) => piece(`Box ${i + 1}`, box(100 + i, 60 + i), { count: 5 })), {}],
];

describe('hostile outlines', () => {
  it.each(hostile)('are laid in short steps: %s', (_, pieces, more) => {
    const job = new Job({ pieces, cloth: cloth(more), aim: { want: 'least length' }, seed: 1, most: 5 });
    let longest = 0;
    for (let at = spent(), steps = job.run(), step = steps.next(); !step.done && (!job.found || job.found.weighed < 0.3); step = steps.next()) {
      longest = Math.max(longest, spent() - at);
      at = spent();
    }
    // A step is what a cancel in the worker waits for; the page does not wait longer than 100 ms for the worker.
    expect(longest).toBeLessThan(500);
    expect(layoutFaults(job.found!.layout, job.places, cloth(more))).toEqual([]);
  });

  it('a cancel is heard while outlines of many points are prepared', async () => {
    const served = new Served();
    const answer = served.lay({ pieces: Array.from({ length: 20 }, (_, i) => piece(`Pinked ${i + 1}`, pinked(2000 - 2 * i))), cloth: cloth(), aim: { want: 'least length' }, seed: 1 }, () => undefined);
    await new Promise((done) => setTimeout(done, 100));
    const from = spent();
    served.cancel();
    expect((await answer).outcome).toBe('cancelled');
    expect(spent() - from).toBeLessThan(200);
  });

  it.each([48, 24, 12])('an outline simplified to %i points still holds the whole piece', (most) => {
    for (const outline of [circle(500), pinked(400), bodice[0]!.outline]) {
      const ring = outline.flatMap(([along, across]) => [Math.round(along * 1e5), Math.round(across * 1e5)]);
      const simple = simplifyOutwards(ring, 0, most);
      expect(simple.length / 2).toBeLessThanOrEqual(Math.max(most, 4));
      const around = Array.from({ length: simple.length / 2 }, (_, i) => [simple[2 * i]!, simple[2 * i + 1]!] as const);
      for (let i = 0; i < ring.length; i += 2) expect(outsideBy(around, ring[i]!, ring[i + 1]!)).toBeLessThan(2);
    }
  });

  it('units that do not go together are seen', () => {
    const inches = piece('Front', bodice[0]!.outline.map(([along, across]) => [along / 25.4, across / 25.4] as const));
    expect(layCautions([...bodice, inches])).toEqual(['“Front” is 16.9 mm by 11.4 mm, far smaller than the other pieces: check the unit it is given in.']);
    expect(layCautions(bodice)).toEqual([]);
    expect(all({ pieces: [...bodice, inches], most: 0.01 }).job.sentence).toBe(layCautions([...bodice, inches])[0]);
    const metres = piece('Back', bodice[0]!.outline.map(([along, across]) => [along / 1000, across / 1000] as const));
    expect(layFaults([...bodice, metres], cloth())).toEqual(['“Back” is only 0.43 mm long on cloth 1400 mm wide: check the unit it is given in.']);
    const large = piece('Sleeve', box(30_000, 30_000));
    expect(layFaults([...bodice, large], cloth())).toEqual(['“Sleeve” needs 30000 mm across and the cloth is 1400 mm wide: check the unit it is given in.']);
  });
});

/** How far a point lies outside an outline; 0 inside. */
function outsideBy(outline: Outline, x: number, y: number): number {
  let inside = false, least = Infinity;
  outline.forEach(([ax, ay], i) => {
    const [bx, by] = outline[(i + 1) % outline.length]!;
    if (ay > y !== by > y && x < ((bx - ax) * (y - ay)) / (by - ay) + ax) inside = !inside;
    const dx = bx - ax, dy = by - ay;
    const t = Math.max(0, Math.min(1, ((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy)));
    least = Math.min(least, Math.hypot(x - ax - t * dx, y - ay - t * dy));
  });
  return inside ? 0 : least;
}
