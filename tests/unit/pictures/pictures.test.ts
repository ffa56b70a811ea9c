/** What single pictures show: to scale, in agreement with the functions, and in words. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  bodyEase, buttonStand, circleOnCloth, dart, gathers, godet, pictureFor, pleatPanel, pleatSection, seamEdge, tierDepths,
  type Picture, type PictureCall, type PleatKind,
} from '../../../src/pictures/index.ts';
import { inBase, isFault, quantity } from '../../../src/quantities/index.ts';
import type { Quantity, ShowAs, UnitCode } from '../../../src/quantities/index.ts';
import { functionNamed, work } from '../../../src/sewing/index.ts';
import { expectSound, points, texts } from './sound.ts';

const CM: ShowAs = { system: 'cm', inchStep: 8 };
const cm = (n: number): Quantity => quantity(n, 'cm');

/** Lengths of the picture's dimension lines, in the order in which they were drawn. */
function tapes({ marks }: Picture): number[] {
  return marks.flatMap((mark) => {
    if (mark.kind === 'text' || mark.look !== 'tape') return [];
    const [from, to] = points(mark.d) as [[number, number], [number, number]];
    return [Math.hypot(to[0] - from[0], to[1] - from[1])];
  });
}

const words = (picture: Picture): string => texts(picture).map(({ text }) => text).join(' ');
const has = (picture: Picture, look: string): boolean => picture.marks.some((mark) => mark.kind === 'path' && mark.look === look);

describe('to scale', () => {
  const lengths = fc.double({ min: 5, max: 500, noNaN: true });

  it('both ways in a dart and a godet', () => {
    fc.assert(fc.property(lengths, lengths, (intake, length) => {
      const [across, along] = tapes(dart({ intake, length, unit: 'cm' }, CM));
      expect(across! * length).toBeCloseTo(along! * intake, -1);
    }));
    const [along] = tapes(godet({ length: 300, arc: 200, unit: 'cm' }, CM));
    const hem = godet({ length: 300, arc: 200, unit: 'cm' }, CM).marks.find((mark) => mark.kind === 'path' && mark.look === 'new');
    const [start, , end] = points((hem as { d: string }).d);
    expect(Math.hypot(start![0] - end![0], start![1] - end![1]) / along!).toBeCloseTo(2 * Math.sin(200 / 300 / 2), 2);
  });

  it('along a seam and its allowance', () => {
    const [out, allowance, left] = tapes(seamEdge({ allowance: 15, shift: 5, least: 6, unit: 'cm' }, CM));
    expect(out! / allowance!).toBeCloseTo(5 / 15, 3);
    expect(left! / allowance!).toBeCloseTo(10 / 15, 3);
  });

  it('in gathers', () => {
    fc.assert(fc.property(lengths, fc.double({ min: 1, max: 6, noNaN: true }), (finished, ratio) => {
      const [cut, gathered] = tapes(gathers({ cloth: finished * ratio, finished, unit: 'cm' }, CM));
      expect(cut! / gathered!).toBeCloseTo(ratio, 1);
    }));
  });

  it('in tiers of different depth, which end where they should', () => {
    const [whole, first, middle, last] = tapes(tierDepths({ length: 750, step: 40, tiers: 3, marked: 2, unit: 'cm' }, CM));
    expect([first! / whole!, middle! / whole!, last! / whole!].map((part) => Math.round(part * 750))).toEqual([210, 250, 290]);
  });
});

describe('pleats', () => {
  it('are marked where they overlap just when the function says so', () => {
    fc.assert(fc.property(fc.constantFrom<PleatKind>('knife', 'box', 'inverted'), fc.integer({ min: 1, max: 60 }), fc.integer({ min: 300, max: 1200 }), fc.integer({ min: 0, max: 3000 }), (kind, pleats, finished, more) => {
      const outcome = work(functionNamed('PLEAT.DEPTH')!, [inBase(finished + more, 'cm'), inBase(finished, 'cm'), inBase(pleats, ''), kind]);
      if (isFault(outcome)) throw new Error(outcome.sentence);
      const picture = pleatSection({ kind, depth: (outcome.value as Quantity).value, spacing: finished / pleats, pleats, unit: 'cm' }, CM);
      const overlap = outcome.cautions.some(({ sentence }) => sentence.includes('overlap'));
      expect(has(picture, 'zone')).toBe(overlap);
      expect(picture.alt.includes('Folds overlap')).toBe(overlap);
    }));
  });

  it('say by how much they overlap', () => {
    expect(words(pleatSection({ kind: 'knife', depth: 100, spacing: 50, pleats: 20, unit: 'cm' }, CM))).toContain('overlap 5.0 cm');
    expect(words(pleatSection({ kind: 'box', depth: 76, spacing: 136, pleats: 8, unit: 'cm' }, CM))).toContain('overlap 1.6 cm');
    expect(words(pleatSection({ kind: 'box', depth: 50, spacing: 160, face: 80, pleats: 8, unit: 'cm' }, CM))).toContain('overlap 2.0 cm');
    expect(words(pleatSection({ kind: 'inverted', depth: 80, spacing: 120, pleats: 6, unit: 'cm' }, CM))).toContain('overlap 4.0 cm');
  });

  it('are cut short with three dots when they are many', () => {
    const many = pleatPanel({ kind: 'knife', pleats: 60, depth: 8, finished: 960, allowance: 15, unit: 'cm' }, CM);
    expect(words(many)).toContain('… and 56 more');
    expect(many.marks.length).toBeLessThan(120);
  });
});

describe('a circle skirt on its cloth', () => {
  const length = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

  it('has as many pieces as the function counts, all of them on the cloth', () => {
    let drawn = 0;
    fc.assert(fc.property(length(20, 1200), length(50, 1200), fc.constantFrom(0.25, 0.5, 0.75, 1, 1.3, 2), length(700, 3200), fc.constantFrom(0, 15), (radius, long, part, width, allowance) => {
      const picture = circleOnCloth({ radius, length: long, part, width, allowance, unit: 'cm' }, CM);
      const values = [radius, long, part, width, allowance].map((n, i) => inBase(n, i === 2 ? '' : 'cm'));
      const outcome = work(functionNamed('CIRCLE.PIECES')!, values);
      expect(picture === undefined).toBe(isFault(outcome));
      if (picture === undefined || isFault(outcome)) return;
      drawn += 1;
      const pieces = (outcome.value as Quantity).value;
      const cloth = picture.marks.find((mark) => mark.kind === 'path' && mark.look === 'cloth') as { d: string };
      const [[left, top], , [right, bottom]] = points(cloth.d) as [[number, number], unknown, [number, number]];
      const outlines = picture.marks.filter((mark) => mark.kind === 'path' && mark.look === 'piece') as { d: string }[];
      // A piece that is joined has strips of allowance at its two straight edges.
      const whole = part / pieces > 1 - 1e-9;
      expect(outlines).toHaveLength(pieces * (whole || allowance === 0 ? 1 : 3));
      for (const { d } of outlines) {
        for (const [x, y] of points(d)) {
          expect(x).toBeGreaterThan(left - 0.05);
          expect(x).toBeLessThan(right + 0.05);
          expect(y).toBeGreaterThan(top - 0.05);
          expect(y).toBeLessThan(bottom + 0.05);
        }
      }
    }), { numRuns: 300 });
    expect(drawn).toBeGreaterThan(100);
  });
});

describe('buttons', () => {
  it('have every place written when there is room, and the first, the last and the marked one always', () => {
    expect(words(buttonStand({ first: 20, last: 620, buttons: 11, unit: 'cm' }, CM))).toMatch(/1: 2\.0 cm.*2: 8\.0 cm.*10: 56\.0 cm.*11: 62\.0 cm/);
    fc.assert(fc.property(fc.integer({ min: 2, max: 100 }), fc.nat(), (buttons, n) => {
      const marked = 1 + (n % buttons);
      const text = words(buttonStand({ first: 20, last: 620, buttons, marked, unit: 'cm' }, CM));
      expect(text).toContain('1: 2.0 cm');
      expect(text).toContain(`${buttons}: 62.0 cm`);
      expect(text).toMatch(new RegExp(`\\b${marked}: \\S+ cm ←`));
    }));
    expect(words(buttonStand({ first: 20, last: 620, buttons: 40, unit: 'cm' }, CM))).toContain('1 … 40');
  });

  it('tell how far a level is from one', () => {
    const picture = buttonStand({ first: 15, last: 600, buttons: 9, levels: [{ name: 'bust', at: 200 }, { name: 'hip', at: 600 }], unit: 'cm' }, CM);
    expect(words(picture)).toContain('bust 20.0 cm 3.4 cm off');
    expect(words(picture)).not.toContain('60.0 cm 0.0 cm off');
  });
});

describe('a body', () => {
  it('is sound for one level and for many, for ease and for a garment smaller than the body', () => {
    const level = fc.record({ name: fc.constantFrom('bust', 'waist', 'hip', 'a level with a very long name', '臀围'), body: fc.double({ min: 200, max: 2000, noNaN: true }), finished: fc.double({ min: 0, max: 3000, noNaN: true }) });
    fc.assert(fc.property(fc.array(level, { minLength: 1, maxLength: 12 }), fc.constantFrom<ShowAs>(CM, { system: 'both', inchStep: 16 }, { system: 'in', inchStep: 8 }), (levels, as) => expectSound(bodyEase({ levels, unit: 'cm' }, as))));
  });

  it('draws the garment to the scale of the body', () => {
    const picture = bodyEase({ levels: [{ name: 'hip', body: 1000, finished: 1500 }], unit: 'cm' }, CM);
    const ends = picture.marks.flatMap((mark) => (mark.kind === 'path' && mark.look === 'new' ? [points(mark.d)[0]![0]] : []));
    const level = picture.marks.find((mark) => mark.kind === 'path' && mark.look === 'level') as { d: string };
    const [from, to] = points(level.d);
    expect((ends[1]! - ends[0]!) / (to![0] - from![0])).toBeCloseTo(1.5, 2);
  });
});

describe('in words', () => {
  const call = (name: string, ...values: (Quantity | string)[]): PictureCall => {
    const fn = functionNamed(name)!;
    const outcome = work(fn, values);
    if (isFault(outcome) || typeof outcome.value === 'string') throw new Error(`${name} has no figure`);
    return { name, given: values.map((value, i) => ({ name: fn.args[Math.min(i, fn.args.length - 1)]!.name, value })), result: outcome.value as Quantity };
  };
  const alt = (as: ShowAs, ...of: Parameters<typeof call>): string => pictureFor(call(...of), as)!.alt;
  const n = (value: number): Quantity => quantity(value, '');
  const inch = (value: number, unit: UnitCode = 'in'): Quantity => quantity(value, unit);

  it.each([
    ['Cross-section of 20 knife pleats, 5.0 cm apart; each fold is 5.0 cm deep. Folds do not overlap.', alt(CM, 'PLEAT.DEPTH', cm(300), cm(100), n(20), 'knife')],
    ['A panel of 239.0 cm, pleated to 92.0 cm by 18 knife pleats, 5.1 cm apart, each fold 4.0 cm deep. A seam allowance of 1.5 cm is at each side.', alt(CM, 'PLEAT.CLOTH', cm(92), n(18), cm(4), 'knife', cm(1.5))],
    ['A seam taken in by 3/8 in: the allowance grows from 1/2 in to 7/8 in.'.replace('3/8', '⅜').replace('1/2', '½').replace('7/8', '⅞'), alt({ system: 'in', inchStep: 8 }, 'SEAM.LEFT', inch(0.5), inch(-0.375))],
    ['Half circle: radius 21.4 cm from the centre to the cutting line. Waist seam 72.0 cm round, 22.9 cm from the centre.', alt(CM, 'CIRCLE.RADIUS', cm(72), n(0.5), cm(1.5))],
    ['A circle skirt on cloth 140.0 cm wide: whole circle in 2 equal pieces, 2 joins, in 2 rows on 304.0 cm of cloth. Radius 11.0 cm, length 65.0 cm. The straight edges have an allowance of 1.5 cm.', alt(CM, 'CIRCLE.CLOTH', cm(11), cm(65), n(1), cm(140), cm(1.5))],
    ['13 buttons 5.5 cm apart, from 0.0 cm to 66.0 cm.', alt(CM, 'BUTTON.GAP', cm(0), cm(66), n(13))],
    ['A dart 1.5 cm wide with legs of 8.0 cm, moved about its point to legs of 16.0 cm, is 3.0 cm wide there; the angle stays 10.8°.', alt(CM, 'DART.MOVED', cm(1.5), cm(8), cm(16))],
    ['Body 92.0 cm, garment 98.0 cm: ease 6.0 cm, 6.5 % of the body.', alt(CM, 'EASE', cm(98), cm(92))],
    ['A godet 30.0 cm long with a hem of 20.0 cm: 38.2° at its point.', alt(CM, 'GODET.ANGLE', cm(20), cm(30))],
    ['Cloth cut 105.0 cm (41 ⅜ in) long is gathered to 70.0 cm (27 ½ in): 1.5 times the finished length.', alt({ system: 'both', inchStep: 8 }, 'GATHER.CLOTH', cm(70), n(1.5))],
  ])('%s', (expected, said) => expect(said).toBe(expected));

  it('take usual values where none are given, and the unit of the first length', () => {
    expect(alt({ system: 'own', inchStep: 8 }, 'SEAM.LEFT', inch(5 / 8), inch(1 / 2))).toContain('at least ¼ in must be left');
    expect(alt({ system: 'own', inchStep: 8 }, 'PLEAT.DEPTH', quantity(3, 'm'), cm(100), n(20))).toContain('5.0 cm deep');
  });

  it('have no picture where there is nothing to draw', () => {
    expect(pictureFor({ name: 'CONVERT', given: [], result: n(1) }, CM)).toBeUndefined();
    expect(pictureFor({ name: 'EASE', given: [], result: 'M' }, CM)).toBeUndefined();
    expect(pictureFor({ name: 'EASE', given: [{ name: 'finished', value: inBase(1e30, 'cm') }, { name: 'body', value: cm(92) }], result: inBase(1e30, 'cm') }, CM)).toBeUndefined();
  });
});
