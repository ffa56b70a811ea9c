/** What cannot be laid is said in one sentence that names the piece and what to do, and said soon. */
import { describe, expect, it } from 'vitest';
import { layFaults, type Outline } from '../../../src/lay/index.ts';
import { bodice, box, cloth, piece } from './help.ts';

const said = (outline: Outline, more = {}): readonly string[] => layFaults([piece('Yoke', outline, more)], cloth());

const circle = (points: number): Outline => Array.from({ length: points }, (_, i) => [200 + 200 * Math.cos((2 * Math.PI * i) / points), 200 + 200 * Math.sin((2 * Math.PI * i) / points)] as const);

describe('what cannot be laid', () => {
  it('says nothing about a bodice', () => {
    expect(layFaults(bodice, cloth())).toEqual([]);
    expect(layFaults(bodice, cloth({ fold: 'lengthwise', oneWay: true, gap: 5 }))).toEqual([]);
  });

  it.each<[string, readonly string[], string]>([
    ['an outline that crosses itself', said([[0, 0], [100, 100], [100, 0], [0, 100]]), 'The outline of “Yoke” crosses or touches itself where edges 1 and 3 meet: put its points in order around it.'],
    ['no area', said([[0, 0], [100, 0], [200, 0]]), 'The outline of “Yoke” encloses no area: check its points.'],
    ['one point', said([[5, 5], [5, 5]]), 'The outline of “Yoke” has too few different points: give at least 3.'],
    ['a point without a figure', said([[0, 0], [100, NaN], [0, 100]]), 'The outline of “Yoke” has a point without a figure: give every point two lengths.'],
    ['5,000 points', said(circle(5000)), 'The outline of “Yoke” has 5000 points, and 2000 is the most: draw its curves with fewer points.'],
    ['wider than the cloth', said(box(300, 1500)), '“Yoke” needs 1500 mm across and the cloth is 1400 mm wide: allow a turn, choose a wider cloth, or piece it together.'],
    ['no whole count', said(box(10, 10), { count: 1.5 }), '“Yoke” is to be cut 1.5 times: give a whole number, 0 or more.'],
    ['beyond the fold', said([[0, -5], [100, -5], [100, 50], [0, 50]], { cut: 'fold' }), '“Yoke” is cut on the fold but reaches beyond it: its fold edge has to be its lowest edge, at 0 across.'],
    ['too many', said(box(10, 10), { count: 301 }), 'These are 301 places to lay, and 300 is the most: lay fewer pieces at a time.'],
  ])('says what is wrong: %s', (_, sentences, expected) => {
    expect(sentences).toEqual([expected]);
  });

  it('allows a wide piece that may be turned', () => {
    expect(said(box(300, 1500), { turns: [0, 90] })).toEqual([]);
  });

  it('says what is longer than the length at hand', () => {
    expect(layFaults([piece('Leg', box(1100, 200))], cloth({ length: 1000 }))).toEqual(['“Leg” needs 1100 mm of length and 1000 mm is at hand: allow a turn, or take more cloth.']);
  });

  it('looks at 2,000 points quickly', () => {
    const begun = process.cpuUsage().user;
    expect(said(circle(2000))).toEqual([]);
    expect((process.cpuUsage().user - begun) / 1000).toBeLessThan(1500);
  });
});
