/** The proof: what overlaps, sticks out, is turned or counted wrongly is found; what touches is allowed. */
import { describe, expect, it } from 'vitest';
import { layoutFaults, placesOf, type Layout, type Way } from '../../../src/lay/index.ts';
import { box, cloth, piece } from './help.ts';

const places = placesOf([piece('Square', box(100, 100), { count: 2 })], cloth());
const asDrawn: Way = { turn: 0, mirrored: false };
const two = (at: readonly [number, number], way = asDrawn, length = 300): Layout => ({ length, laid: [{ place: 0, way: asDrawn, at: [0, 0] }, { place: 0, way, at }] });

describe('the check of a layout', () => {
  it('allows pieces that touch along an edge and at a corner', () => {
    expect(layoutFaults(two([100, 0]), places, cloth())).toEqual([]);
    expect(layoutFaults(two([100, 100]), places, cloth())).toEqual([]);
  });

  it('measures an overlap', () => {
    expect(layoutFaults(two([50, 50]), places, cloth())).toEqual(['Place 1 and Place 1 overlap by 2.50e+3.']);
    expect(layoutFaults(two([0, 0]), places, cloth())).toHaveLength(1);
    expect(layoutFaults(two([99.9, 0]), places, cloth())).toHaveLength(1);
  });

  it('lets a millionth of the smaller piece pass, and no more', () => {
    // 100 × 0.00009 of 10,000 is 0.9 millionths.
    expect(layoutFaults(two([100 - 0.00009, 0]), places, cloth())).toEqual([]);
    expect(layoutFaults(two([100 - 0.00011, 0]), places, cloth())).toHaveLength(1);
  });

  it('finds one piece wholly inside another', () => {
    const nested = placesOf([piece('Large', box(300, 300)), piece('Small', box(10, 10))], cloth());
    expect(layoutFaults({ length: 300, laid: [{ place: 0, way: asDrawn, at: [0, 0] }, { place: 1, way: asDrawn, at: [100, 100] }] }, nested, cloth())).toHaveLength(1);
  });

  it('finds what sticks out along and across', () => {
    expect(layoutFaults(two([100, -1]), places, cloth())).toEqual(['Place 1 sticks out of the cloth.']);
    expect(layoutFaults(two([100, 1301]), places, cloth())).toHaveLength(1);
    expect(layoutFaults(two([201, 0]), places, cloth())).toHaveLength(1);
    // A half turn carries the square to the other side of its own origin.
    expect(layoutFaults(two([250, 50], { turn: 180, mirrored: false }), places, cloth())).toEqual(['Place 1 sticks out of the cloth.']);
    expect(layoutFaults(two([250, 100], { turn: 180, mirrored: false }), places, cloth())).toEqual([]);
  });

  it('finds turns that are not allowed and wrong counts', () => {
    expect(layoutFaults(two([300, 200], { turn: 90, mirrored: false }), places, cloth())).toEqual(['Place 1 is turned by 90°, which is not allowed.']);
    expect(layoutFaults({ ...two([100, 0]), laid: two([100, 0]).laid.slice(1) }, places, cloth())).toEqual(['Place 1 is laid 1 times instead of 2.']);
  });

  it('finds a gap that is too small', () => {
    expect(layoutFaults(two([105, 0]), places, cloth({ gap: 5 }))).toEqual([]);
    expect(layoutFaults(two([104, 0]), places, cloth({ gap: 5 }))).toEqual(['Place 1 and Place 1 are nearer than the gap.']);
  });

  it('knows the fold, flaws and the edge of a remnant', () => {
    const onFold = placesOf([piece('Back', box(100, 50), { cut: 'fold' })], cloth({ fold: 'lengthwise' }));
    const at = (across: number): Layout => ({ length: 100, laid: [{ place: 0, way: asDrawn, at: [0, across] }] });
    expect(layoutFaults(at(0), onFold, cloth({ fold: 'lengthwise' }))).toEqual([]);
    expect(layoutFaults(at(1), onFold, cloth({ fold: 'lengthwise' }))).toEqual(['Place 1 does not lie on the fold.']);
    expect(layoutFaults(two([100, 0]), places, cloth({ flaws: [[[190, 90], [220, 90], [220, 120]]] }))).toEqual(['Place 1 lies on a flaw.']);
    expect(layoutFaults(two([100, 0]), places, cloth({ length: 1000, remnant: [[0, 0], [190, 0], [190, 1400], [0, 1400]] }))).toEqual(['Place 1 sticks out of the remnant.']);
  });
});
