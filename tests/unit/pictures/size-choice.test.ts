/** The pictures of a choice of sizes, from data alone. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { blendedEdge, sizeOutline } from '../../../src/pictures/index.ts';
import type { BlendedEdge, Picture, SizeOutline } from '../../../src/pictures/index.ts';
import { expectSound, points, texts } from './sound.ts';

const CM = { system: 'cm', inchStep: 8 } as const;
const BOTH = { system: 'both', inchStep: 16 } as const;

const EDGE: BlendedEdge = {
  levels: [{ name: 'bust', size: 0, down: 170, usual: true }, { name: 'waist', size: 0, down: 210 }, { name: 'hip', size: 1 }],
  sizes: [{ name: '12', girths: [920, 740, 980] }, { name: '14', girths: [960, 780, 1020] }],
  seams: 2, unit: 'cm',
};
const OUTLINE: SizeOutline = {
  levels: [
    { name: 'bust', body: 930, size: '12', girth: 980, left: 50, smaller: 940, larger: 1020 },
    { name: 'waist', body: 760, size: '12', girth: 780, left: 20, smaller: 740, larger: 820 },
    { name: 'hip', body: 1030, size: '14', girth: 1080, left: 50, smaller: 1040, larger: 1120 },
  ],
  isEase: true, unit: 'cm',
};

const across = (picture: Picture, look: string): [number, number][][] => picture.marks.flatMap((mark) => (mark.kind === 'path' && mark.look === look ? [points(mark.d)] : []));
const all = (picture: Picture): string[] => texts(picture).map(({ text }) => text);

describe('the blended edge', () => {
  it('is to scale: the gap between the lines against the distance between the levels', () => {
    const picture = blendedEdge(EDGE, CM);
    const [small, large] = across(picture, 'old');
    const heights = across(picture, 'level').map(([from]) => from![1]);
    const at = (line: [number, number][], y: number): number => line.filter((point) => Math.abs(point[1] - y) < 0.02).at(-1)![0];
    const perMm = (heights[2]! - heights[0]!) / 380;
    for (const y of heights) expect((at(large!, y) - at(small!, y)) / perMm).toBeCloseTo(10, 0);
    // The line to cut lies on size 12 at bust and waist, and on size 14 at the hip.
    const [cut] = across(picture, 'new');
    expect([at(cut!, heights[0]!), at(cut!, heights[1]!), at(cut!, heights[2]!)]).toEqual([at(small!, heights[0]!), at(small!, heights[1]!), at(large!, heights[2]!)]);
  });

  it('says the sizes, the distances and whether they are hers, and how far apart the lines lie', () => {
    expect(all(blendedEdge(EDGE, CM))).toEqual(expect.arrayContaining(['bust', 'size 12', 'size 14', 'lines apart', '1.0 cm', '17.0 cm', '(usual)', '21.0 cm', 'lines of size 12 and size 14']));
    expect(blendedEdge(EDGE, CM).alt).toBe('The edge to cut, from the top down: bust size 12, where the lines of 12 and 14 lie 1.0 cm apart, then 17.0 cm (usual) down; waist size 12, where the lines of 12 and 14 lie 1.0 cm apart, then 21.0 cm down; hip size 14, where the lines of 12 and 14 lie 1.0 cm apart.');
  });

  it('is sound whatever it is given', () => {
    const any = fc.tuple(fc.integer({ min: 2, max: 6 }), fc.integer({ min: 1, max: 4 })).chain(([levels, sizes]) => fc.record({
      levels: fc.tuple(...Array.from({ length: levels }, (_, i) => fc.record({
        name: fc.constantFrom('bust', 'waist', 'a level with a very long name indeed'), size: fc.integer({ min: 0, max: sizes - 1 }),
        ...(i < levels - 1 && { down: fc.double({ min: 5, max: 900, noNaN: true }) }), usual: fc.boolean(),
      }))),
      sizes: fc.tuple(...Array.from({ length: sizes }, (_, s) => fc.record({
        name: fc.constantFrom('12', 'extra extra large + 2', 'M'),
        girths: fc.tuple(...Array.from({ length: levels }, () => fc.double({ min: 300, max: 1800, noNaN: true }).map((girth) => girth + s * 40))),
      }))),
      seams: fc.integer({ min: 1, max: 6 }), unit: fc.constantFrom('cm' as const, 'in' as const),
    }));
    fc.assert(fc.property(any, fc.constantFrom(CM, BOTH), (edge, as) => expectSound(blendedEdge(edge as BlendedEdge, as))), { numRuns: 400 });
  });
});

describe('the outline of sizes', () => {
  it('says sizes and ease, and draws the sizes beside the chosen ones', () => {
    const picture = sizeOutline(OUTLINE, CM);
    expect(all(picture)).toEqual(expect.arrayContaining(['bust', '93.0 cm', 'size 12', '+5.0 cm', 'size 14', 'one size smaller and one larger']));
    expect(across(picture, 'thin')).toHaveLength(4 + 1);
    expect(picture.alt).toBe('Sizes by level and the ease they leave, from the top down: bust size 12 on a body of 93.0 cm, +5.0 cm; waist size 12 on a body of 76.0 cm, +2.0 cm; hip size 14 on a body of 103.0 cm, +5.0 cm.');
  });

  it('tells a difference of body measures from ease', () => {
    const picture = sizeOutline({ ...OUTLINE, isEase: false, levels: OUTLINE.levels.map(({ smaller: _, ...level }) => level) }, BOTH);
    expect(all(picture).join(' ')).toContain('the chart’s body for the sizes to cut; on the right, how much larger it is');
    expect(all(picture)).toContain('one size larger');
  });

  it('is sound whatever it is given', () => {
    const girth = fc.double({ min: 200, max: 2000, noNaN: true });
    const any = fc.record({
      levels: fc.array(fc.record({ name: fc.constantFrom('bust', 'a level with a very long name indeed'), body: girth, size: fc.constantFrom('12', 'extra extra large + 2'), girth, left: fc.double({ min: -300, max: 300, noNaN: true }), smaller: girth, larger: girth }), { minLength: 1, maxLength: 9 }),
      isEase: fc.boolean(), unit: fc.constantFrom('cm' as const, 'in' as const),
    });
    fc.assert(fc.property(any, fc.constantFrom(CM, BOTH), (outline, as) => expectSound(sizeOutline(outline, as))), { numRuns: 400 });
  });
});
