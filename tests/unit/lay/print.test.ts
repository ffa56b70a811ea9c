/** Pieces that meet a print or a check: points with one mark lie at one place of the repeat. */
import { describe, expect, it } from 'vitest';
import { laidOutline, layFaults, layoutFaults, placesOf, type Cloth, type Layout, type Piece, type Place } from '../../../src/lay/index.ts';
import { all, bodice, box, cloth, piece } from './help.ts';

const repeat = { along: 120, across: 80 };
const check = cloth({ repeat });

/** Front and back meet at the side seam; front and sleeve at the armhole. */
const matching: readonly Piece[] = [
  { ...bodice[0]!, matches: [{ at: [180, 230], mark: 'side seam' }, { at: [330, 250], mark: 'armhole' }] },
  { ...bodice[1]!, cut: 'pair', matches: [{ at: [300, 240], mark: 'side seam' }] },
  { ...bodice[2]!, matches: [{ at: [250, 160], mark: 'armhole' }] },
  bodice[3]!,
];
const stripes = cloth({ repeat: { along: 120, across: 0 } });

/** Where in the repeat every point of a mark lies, whole repeats taken away. */
function phases(layout: Layout, places: readonly Place[], mark: string, axis: 0 | 1, every: number): number[] {
  return layout.laid.flatMap(({ place, way, at }) => (places[place]!.matches ?? []).filter((match) => match.mark === mark).map((match) => {
    const value = laidOutline([match.at], way, at)[0]![axis];
    return value - Math.floor(value / every) * every;
  }));
}

const together = (values: readonly number[], every: number): boolean => values.every((value) => Math.min(Math.abs(value - values[0]!), every - Math.abs(value - values[0]!)) < 0.01);

describe('meeting the print', () => {
  it('lays pieces with a mark one way up only, and the others as ever', () => {
    const places = placesOf(matching, stripes);
    for (const { piece: i, ways } of places) expect(ways.length).toBe(i === 3 ? 2 : 1);
    // Without a repeat the marks mean nothing.
    expect(placesOf(matching, cloth())[0]!.ways.length).toBe(2);
  });

  it.each<[string, Cloth]>([
    ['stripes across the cloth', stripes], ['stripes, folded lengthwise', { ...stripes, fold: 'lengthwise' }],
    ['stripes, folded partly, shrinking', { ...stripes, fold: 'partly', shrinkage: { along: 0.04, across: 0.01 } }],
  ])('every layout meets: %s', (_, on) => {
    const { news, job } = all({ pieces: matching, cloth: on, most: 0.3 });
    expect(news.length).toBeGreaterThan(0);
    for (const { layout, places = job.places } of news) {
      expect(layoutFaults(layout, places, on)).toEqual([]);
      for (const mark of ['side seam', 'armhole']) expect(together(phases(layout, places, mark, 0, 120), 120)).toBe(true);
    }
  });

  it('meets a check along and across', () => {
    const yoked = [piece('Yoke', bodice[0]!.outline, { matches: [{ at: [100, 100], mark: 'middle' }] }), piece('Panel', box(500, 300), { count: 3, matches: [{ at: [0, 150], mark: 'middle' }] }), bodice[2]!];
    const { news, job } = all({ pieces: yoked, cloth: check, most: 0.5 });
    const { layout } = news.at(-1)!;
    expect(layoutFaults(layout, job.places, check)).toEqual([]);
    expect(together(phases(layout, job.places, 'middle', 0, 120), 120)).toBe(true);
    expect(together(phases(layout, job.places, 'middle', 1, 80), 80)).toBe(true);
  });

  it('takes no less cloth than without a print, and no more than a repeat a piece', () => {
    const panels = [piece('Panel', box(500, 700), { count: 6, matches: [{ at: [0, 0], mark: 'hem' }] })];
    // Two side by side, three rows; each row begins at whole repeats: 0, 600, 1200.
    const { news } = all({ pieces: panels, cloth: stripes });
    expect(news.at(-1)!.layout.length).toBeCloseTo(1700, 1);
  });

  it('says which marks contradict each other', () => {
    const torn = [piece('Front', box(400, 300), { matches: [{ at: [0, 0], mark: 'hem' }, { at: [100, 0], mark: 'waist' }] }), piece('Back', box(400, 300), { matches: [{ at: [0, 0], mark: 'hem' }, { at: [130, 0], mark: 'waist' }] })];
    expect(layFaults(torn, stripes)).toEqual(['The print cannot meet at “waist” of “Back”: its other marks put it 30 mm away along the cloth. Take out one of its marks, or move a match point.']);
    // A whole repeat further on is the same place of the print.
    expect(layFaults([torn[0]!, { ...torn[1]!, matches: [{ at: [0, 0], mark: 'hem' }, { at: [220, 0], mark: 'waist' }] }], stripes)).toEqual([]);
  });

  it('knows that a piece on the fold cannot move across', () => {
    const onFold = { ...bodice[1]!, matches: [{ at: [300, 240] as const, mark: 'side seam' }] };
    const other = { ...onFold, name: 'Other', matches: [{ at: [300, 200] as const, mark: 'side seam' }] };
    expect(layFaults([onFold, other], { ...check, fold: 'lengthwise' })).toEqual(['The print cannot meet at the marks of “Other” while it lies on the fold: lay it on open cloth, or take out a mark.']);
    const { news, job } = all({ pieces: [onFold, piece('Side', box(400, 300), { cut: 'pair', matches: [{ at: [0, 0], mark: 'side seam' }] })], cloth: { ...check, fold: 'lengthwise' } });
    expect(layoutFaults(news.at(-1)!.layout, job.places, { ...check, fold: 'lengthwise' })).toEqual([]);
  });

  it('says when the print cannot meet within the width', () => {
    const wide = [piece('Wide', box(300, 1350), { matches: [{ at: [0, 0], mark: 'hem' }] }), piece('Other', box(300, 1350), { matches: [{ at: [0, 200], mark: 'hem' }] })];
    const { job } = all({ pieces: wide, cloth: cloth({ repeat: { along: 0, across: 300 } }) });
    expect(job.sentences).toEqual(['The print cannot meet within the width of the cloth: take out a mark, or choose a wider cloth.']);
  });

  it('refuses a repeat of less than nothing and a point without a figure', () => {
    expect(layFaults(matching, cloth({ repeat: { along: -1, across: 0 } }))).toEqual(['The repeat of the print cannot be less than nothing: give its lengths, or 0 where it does not repeat.']);
    expect(layFaults([piece('Front', box(100, 100), { matches: [{ at: [NaN, 0], mark: 'hem' }] })], stripes)).toEqual(['“Front” has a match point without a figure: give it two lengths.']);
  });

  it('the check finds a piece that is moved off the print by a millimetre, along and across', () => {
    const places = placesOf([piece('Panel', box(100, 100), { count: 2, matches: [{ at: [50, 50], mark: 'hem' }] })], check);
    const layout = (along: number, across: number): Layout => ({ length: 400, laid: [{ place: 0, way: places[0]!.ways[0]!, at: [0, 0] }, { place: 0, way: places[0]!.ways[0]!, at: [along, across] }] });
    expect(layoutFaults(layout(120, 0), places, check)).toEqual([]);
    expect(layoutFaults(layout(240, 400), places, check)).toEqual([]);
    const fault = ['Place 1 does not meet the print at “hem” where Place 1 does.'];
    expect(layoutFaults(layout(121, 0), places, check)).toEqual(fault);
    expect(layoutFaults(layout(240, 401), places, check)).toEqual(fault);
  });
});
