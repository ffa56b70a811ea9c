/** The plot of a run: what lies where, in which units, and that what cannot be drawn is not. */
import { describe, expect, test } from 'vitest';
import { picturesBeside, runPlot, twoLengths, type Picture, type RunPlot } from '../../../src/pictures/index.ts';
import { quantity, type ShowAs } from '../../../src/quantities/index.ts';

const AS: ShowAs = { system: 'own', inchStep: 8 };
const PLOT: RunPlot = {
  input: { name: 'Pleats', unit: '', as: AS }, result: { name: 'Flat width', unit: 'cm', as: AS }, apart: true, pins: [],
  points: [4, 5, 6, 7, 8].map((x) => ({ x, y: 1000 + 250 * x })),
};
const textsOf = (picture: Picture | null): string[] => (picture?.marks ?? []).flatMap((mark) => (mark.kind === 'text' ? [mark.text.replace(/\u00a0/g, ' ')] : []));
const dots = (picture: Picture | null): [number, number][] => (picture?.marks ?? []).flatMap((mark) => {
  if (mark.kind !== 'path' || mark.look !== 'dot') return [];
  const [x, y] = mark.d.slice(1).split(/[A ]/).map(Number);
  return [[x!, y!] as [number, number]];
});
const count = (picture: Picture | null, look: string): number => (picture?.marks ?? []).filter((mark) => mark.kind === 'path' && mark.look === look).length;

describe('a plot of a run', () => {
  test('has its dots where the figures are', () => {
    const placed = dots(runPlot(PLOT));
    expect(placed).toHaveLength(5);
    // Equal steps of the input and of the result are equal steps on the plot; a larger result lies higher.
    for (let i = 1; i < 5; i++) {
      expect(placed[i]![0] - placed[i - 1]![0]).toBeCloseTo(placed[1]![0] - placed[0]![0], 1);
      expect(placed[i]![1] - placed[i - 1]![1]).toBeCloseTo(placed[1]![1] - placed[0]![1], 1);
      expect(placed[i]![1]).toBeLessThan(placed[i - 1]![1]);
    }
  });
  test('has round figures on its axes, in the units of the sheet', () => {
    expect(textsOf(runPlot(PLOT))).toEqual(expect.arrayContaining(['200.0 cm', '300.0 cm', '4', '8', 'Pleats']));
    const inches = textsOf(runPlot({ ...PLOT, result: { ...PLOT.result, as: { ...AS, system: 'in' } } }));
    expect(inches).toEqual(expect.arrayContaining(['80 in', '120 in']));
    const small = textsOf(runPlot({ ...PLOT, result: { ...PLOT.result, unit: 'in' }, points: [1, 2, 3].map((x) => ({ x, y: 25.4 * (1 + x / 8) })) }));
    expect(small).toEqual(expect.arrayContaining(['1 ⅛ in', '1 ¼ in', '1 ⅜ in']));
  });
  test('joins the dots unless nothing lies between them, and never over a value without a result', () => {
    expect(count(runPlot(PLOT), 'new')).toBe(0);
    expect(count(runPlot({ ...PLOT, apart: false }), 'new')).toBe(1);
    const broken = runPlot({ ...PLOT, apart: false, points: PLOT.points.map((point) => (point.x === 6 ? { ...point, y: null } : point)) });
    expect([count(broken, 'new'), dots(broken).length]).toEqual([2, 4]);
    expect(broken!.alt).toContain('There is no result for 1 of 5 values.');
  });
  test('marks each pin from where it begins to where it ends, in a lane with its number', () => {
    const pinned = runPlot({ ...PLOT, pins: [{ number: 1, from: 6, to: 7 }, { number: 2, from: 8, to: 8 }] })!;
    expect([count(pinned, 'zone'), count(pinned, 'dim-pin')]).toEqual([2, 2]);
    expect(textsOf(pinned)).toEqual(expect.arrayContaining(['pin 1', 'pin 2']));
    expect(pinned.alt).toContain('Pin 1 from 6 to 7.');
    expect(pinned.height).toBeGreaterThan(runPlot(PLOT)!.height);
  });
  test('of a level result has room above and below, of one value is a dot', () => {
    const level = runPlot({ ...PLOT, points: PLOT.points.map(({ x }) => ({ x, y: 700 })) })!;
    expect(new Set(dots(level).map(([, y]) => y)).size).toBe(1);
    expect(dots(level)[0]![1]).toBeGreaterThan(14);
    expect(dots(runPlot({ ...PLOT, points: [{ x: 8, y: 0 }] }))).toHaveLength(1);
  });
  test('is none where there is no figure', () => expect(runPlot({ ...PLOT, points: [{ x: 1, y: null }] })).toBeNull());
  test('says in words what it shows', () => {
    expect(runPlot(PLOT)!.alt.replace(/\u00a0/g, ' ')).toBe('Flat width over Pleats from 4 to 8: least 200.0 cm with 4, most 300.0 cm with 8. The figures are in the table.');
  });
});

describe('pictures beside one another', () => {
  const ease = (finished: number) => ({ name: 'EASE', given: [{ name: 'finished', value: quantity(finished, 'cm') }, { name: 'body', value: quantity(80, 'cm') }], result: quantity(finished - 80, 'cm') });
  const body = (picture: Picture | null): string | undefined => picture?.marks.find((mark) => mark.kind === 'path' && mark.look === 'body' )?.kind === 'path'
    ? (picture.marks.find((mark) => mark.kind === 'path' && mark.look === 'body') as { d: string }).d : undefined;

  test('are to one scale: the same body is as long in each', () => {
    const pictures = picturesBeside([ease(84), ease(160), null], AS);
    expect(pictures[2]).toBeNull();
    expect(body(pictures[0]!)).toBeDefined();
    expect(body(pictures[0]!)).toBe(body(pictures[1]!));
    expect(body(picturesBeside([ease(84)], AS)[0]!), 'alone it fills its room').not.toBe(body(pictures[0]!));
  });
  test('leave other pictures as they are', () => {
    const alone = () => JSON.stringify(twoLengths({ base: { name: 'Body', of: 'the body', length: 800 }, other: { name: 'Garment', length: 900 }, more: 'ease', less: 'less', unit: 'cm' }, AS));
    const before = alone();
    picturesBeside([ease(84), ease(400)], AS);
    expect(alone()).toBe(before);
  });
});
