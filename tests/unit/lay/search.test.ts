/** What the search promises, whatever the pieces. Run by places weighed, never by the clock. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { areaOf, boundsOf, layoutFaults, placesOf, type Cloth } from '../../../src/lay/index.ts';
import { Job } from '../../../workers/lay/job.ts';
import { all, bodice, box, cloth, length, piece, pieces } from './help.ts';

const runs = { numRuns: 6 };

describe('the search', () => {
  it('gives only layouts that pass the check, each shorter than the one before', () => {
    fc.assert(fc.property(pieces(), fc.constantFrom(0, 4), (list, gap) => {
      const { news, job } = all({ pieces: list, cloth: cloth({ gap }) });
      expect(news.length).toBeGreaterThan(0);
      for (const { layout } of news) expect(layoutFaults(layout, job.places, cloth({ gap }))).toEqual([]);
      for (let i = 1; i < news.length; i++) expect(news[i]!.layout.length).toBeLessThan(news[i - 1]!.layout.length);
    }), runs);
  });

  it('gives the same layouts for the same seed', () => {
    expect(all({ pieces: bodice, seed: 7 }).news).toEqual(all({ pieces: bodice, seed: 7 }).news);
  });

  it('does better than bottom-left fill on a bodice', () => {
    const { news } = all({ pieces: bodice, seed: 3, most: 1 });
    expect(news.at(-1)!.layout.length).toBeLessThan(news[0]!.layout.length * 0.98);
  });

  it('scales: twice and 25.4 times as large gives the layout twice and 25.4 times as large', () => {
    fc.assert(fc.property(pieces(), fc.constantFrom(2, 25.4), (list, k) => {
      const large = list.map((each) => ({ ...each, outline: each.outline.map(([along, across]) => [along * k, across * k] as const) }));
      const one = length({ pieces: list }), other = length({ pieces: large, cloth: cloth({ width: 1400 * k }) });
      expect(other / k / one).toBeCloseTo(1, 4);
    }), runs);
  });

  it('is not worse with wider cloth or fewer pieces, begun from the layout there was', () => {
    fc.assert(fc.property(pieces(), (list) => {
      const start = all({ pieces: list }).news.at(-1)!.layout;
      expect(length({ pieces: list, cloth: cloth({ width: 1500 }), start })).toBeLessThanOrEqual(start.length);
      const fewer = list.map((each, i) => (i === 0 ? { ...each, count: each.count - 1 } : each));
      if (fewer.every(({ count }) => count === 0)) return;
      const places = placesOf(fewer, cloth());
      // The places of a piece of which none is left are gone, and those after them move up.
      const gone = placesOf(list, cloth()).length - places.length;
      const left = start.laid.filter(({ place }) => place >= gone).map((each) => ({ ...each, place: each.place - gone }))
        .filter(({ place }, i, laid) => laid.slice(0, i).filter((other) => other.place === place).length < places[place]!.count);
      expect(length({ pieces: fewer, start: { ...start, laid: left } })).toBeLessThanOrEqual(start.length);
    }), runs);
  });

  it('is not worse with more time', () => {
    fc.assert(fc.property(pieces(), fc.constantFrom<Partial<Cloth>>({}, { fold: 'partly' }, { gap: 3, fold: 'lengthwise' }), (list, more) => {
      const [little, much] = [0.02, 0.08].map((most) => all({ pieces: list, cloth: cloth(more), most }).news);
      if (little!.length > 0) expect(much!.at(-1)!.layout.length).toBeLessThanOrEqual(little!.at(-1)!.layout.length);
      expect(much!.slice(0, little!.length).map(({ layout }) => layout)).toEqual(little!.map(({ layout }) => layout));
    }), runs);
  });

  it('never takes less cloth than the pieces cover', () => {
    fc.assert(fc.property(pieces(), (list) => {
      const { news, job } = all({ pieces: list });
      const area = job.places.reduce((sum, { outline, count }) => sum + count * areaOf(outline), 0);
      expect(news.at(-1)!.layout.length * 1400).toBeGreaterThanOrEqual(area);
      expect(news.at(-1)!.density).toBeCloseTo(area / (news.at(-1)!.layout.length * 1400), 12);
    }), runs);
  });

  it('lays four quarters exactly', () => {
    // Boxes of half the width: two columns of two, 600 long, which no layout can beat.
    expect(length({ pieces: [piece('Quarter', box(300, 700), { count: 4 })] })).toBeCloseTo(600, 2);
  });

  it('begins from pieces that were moved by hand into each other', () => {
    const { layout } = all({ pieces: bodice }).news.at(-1)!;
    const laid = layout.laid.map((each, i) => (i === 0 ? { ...each, at: [each.at[0] + 60, each.at[1] + 40] as const } : each));
    const { news, job } = all({ pieces: bodice, start: { ...layout, laid }, most: 0.1 });
    expect(layoutFaults({ ...layout, laid }, job.places, cloth())).not.toEqual([]);
    expect(layoutFaults(news[0]!.layout, job.places, cloth())).toEqual([]);
    expect(news[0]!.layout.length).toBeLessThan(layout.length * 1.25);
  });

  it('begins from a symmetric piece that lies the other way round', () => {
    const start = all({ pieces: [piece('Band', box(500, 100), { count: 2 })] }).news.at(-1)!.layout;
    const turned = { ...start, laid: start.laid.map(({ place, at }) => ({ place, way: { turn: 180, mirrored: false }, at: [at[0] + 500, at[1] + 100] as const })) };
    expect(all({ pieces: [piece('Band', box(500, 100), { count: 2 })], start: turned }).news[0]!.layout.laid).toEqual(turned.laid);
  });

  it('stops by itself', () => {
    const { news } = all({ pieces: [piece('Band', box(500, 100))], most: undefined });
    expect(news.at(-1)!.layout.length).toBeCloseTo(500, 2);
  });
});

describe('cloth', () => {
  it('takes one-way as no half turn', () => {
    const { news } = all({ pieces: bodice, cloth: cloth({ oneWay: true }) });
    for (const { way } of news.at(-1)!.layout.laid) expect(way.turn).toBe(0);
  });

  it('folded lengthwise lays one of each pair, and fold edges on the fold', () => {
    const folded = cloth({ fold: 'lengthwise' });
    const { news, job } = all({ pieces: bodice, cloth: folded });
    const { layout } = news.at(-1)!;
    const names = layout.laid.map(({ place }) => bodice[job.places[place]!.piece]!.name).sort();
    // Three facings come from two places, because the facing is its own mirror image.
    expect(names).toEqual(['Back', 'Facing', 'Facing', 'Front', 'Sleeve']);
    const back = layout.laid.find(({ place }) => job.places[place]!.onFold)!;
    expect(back.at[1]).toBeCloseTo(0, 2);
    expect(layoutFaults(layout, job.places, folded)).toEqual([]);
  });

  it('open lays a piece on the fold opened out, and pairs as one and its mirror image', () => {
    const places = placesOf(bodice, cloth());
    const back = places.find(({ piece: i }) => bodice[i]!.name === 'Back')!;
    expect(areaOf(back.outline)).toBeCloseTo(2 * areaOf(bodice[1]!.outline), 6);
    expect(boundsOf(back.outline).from[1]).toBeCloseTo(-240, 9);
    expect(places.filter(({ piece: i }) => bodice[i]!.name === 'Front').map(({ ways }) => ways[0]!.mirrored)).toEqual([false, true]);
  });

  it('keeps off flaws and inside a remnant', () => {
    const odd = cloth({
      length: 1500, remnant: [[0, 0], [1500, 0], [1500, 900], [1100, 1400], [0, 1400]],
      flaws: [[[200, 600], [260, 600], [260, 660], [200, 660]]],
    });
    const { news, job } = all({ pieces: bodice, cloth: odd, aim: { want: 'fits' }, most: 2 });
    expect(news.length).toBeGreaterThan(0);
    expect(layoutFaults(news.at(-1)!.layout, job.places, odd)).toEqual([]);
    expect(news.at(-1)!.layout.length).toBeLessThanOrEqual(1500);
  });

  it('lays a free tilt at the angles given', () => {
    const tilted = [piece('Godet', [[0, 0], [900, 200], [0, 400]], { count: 4, turns: [0, 180, 12.5, 192.5] })];
    const { news, job } = all({ pieces: tilted });
    expect(layoutFaults(news.at(-1)!.layout, job.places, cloth())).toEqual([]);
  });
});

describe('other aims', () => {
  it('stops as soon as the pieces fit the length at hand', () => {
    const { news } = all({ pieces: bodice, cloth: cloth({ length: 2000 }), aim: { want: 'fits' }, most: undefined });
    expect(news).toHaveLength(1);
  });

  it('proves by area that they cannot', () => {
    const job = new Job({ pieces: [piece('Square', box(500, 500), { count: 12 })], cloth: cloth({ length: 2000 }), aim: { want: 'fits' }, seed: 1 });
    expect(job.proof).toBe('The pieces do not fit: together they cover 107.2 % of the cloth at hand.');
  });

  it('finds room for a second list of pieces', () => {
    const { news, job } = all({ pieces: bodice, cloth: cloth({ length: 900 }), aim: { want: 'room for', pieces: [piece('Strap', box(300, 40), { count: 2 })] }, most: 2 });
    expect(news.at(-1)!.layout.length).toBeLessThanOrEqual(900);
    expect(news.at(-1)!.layout.laid).toHaveLength(job.places.reduce((sum, { count }) => sum + count, 0));
  });

  it('tells what is left when the second list is laid too', () => {
    const { layout } = all({ pieces: bodice, cloth: cloth({ length: 1500 }), aim: { want: 'room for', pieces: [piece('Strap', box(300, 40), { count: 2 })] } }).news.at(-1)!;
    expect(layout.left).toEqual({ at: [layout.length, 0], length: 1500 - layout.length, width: 1400 });
  });

  it('keeps the layout of the first list and lays the second between and behind it', () => {
    const start = all({ pieces: bodice }).news.at(-1)!.layout;
    const { news, job } = all({ pieces: bodice, cloth: cloth({ length: 1000 }), start, aim: { want: 'room for', pieces: [piece('Strap', box(150, 30), { count: 2 })] } });
    const { layout } = news[0]!;
    for (const one of start.laid) {
      const same = layout.laid.find(({ place, at }) => place === one.place && Math.abs(at[0] - one.at[0]) < 0.01 && Math.abs(at[1] - one.at[1]) < 0.01);
      expect(same?.way).toEqual(one.way);
    }
    expect(layoutFaults(layout, job.places, cloth())).toEqual([]);
  });

  it('tells for which pieces of the second list there is room', () => {
    const second = [piece('Coat', box(900, 900)), piece('Strap', box(300, 40), { count: 2 })];
    const { news, job } = all({ pieces: bodice, cloth: cloth({ length: 950 }), aim: { want: 'room for', pieces: second }, most: 0.3 });
    expect(job.sentence).toBe('There is room for “Strap”, and not for “Coat” as well.');
    expect(job.without).toEqual([0]);
    const { layout, places } = news.at(-1)!;
    expect(layout.length).toBeLessThanOrEqual(950);
    expect(layoutFaults(layout, places!, cloth())).toEqual([]);
    expect(places!.map(({ piece: i }) => [...bodice, ...second][i]!.name)).toEqual(['Front', 'Front', 'Back', 'Sleeve', 'Sleeve', 'Facing', 'Strap']);
  });

  it('says by how much the best layout is too long', () => {
    const { job } = all({ pieces: [piece('Square', box(500, 800), { count: 3 })], cloth: cloth({ length: 1400 }), aim: { want: 'fits' } });
    expect(job.sentence).toBe('No layout was found that fits: the shortest takes 7.2 % more than the cloth at hand.');
  });

  it('proves by the fold and without the flaws that they cannot fit', () => {
    const proof = (more: Parameters<typeof cloth>[0], pieces = [piece('Back', box(600, 100), { cut: 'fold' as const, count: 3 })]): string | null => new Job({ pieces, cloth: cloth({ length: 1500, ...more }), aim: { want: 'fits' }, seed: 1 }).proof;
    expect(proof({ fold: 'lengthwise' })).toBe('The pieces do not fit: those on the fold need 120 % of its length. Open the cloth, or take more of it.');
    expect(proof({ fold: 'open' })).toBeNull();
    const half = [piece('Half', box(1500, 700))];
    expect(proof({}, half)).toBeNull();
    // Two flaws that overlap are taken away once.
    const flaws = [box(1500, 500), box(1500, 600)];
    expect(proof({ flaws }, half)).toBeNull();
    expect(proof({ flaws: [...flaws, box(1500, 800)] }, half)).toBe('The pieces do not fit: together they cover 116.7 % of the cloth at hand.');
  });

  it('leaves a rectangle of the wanted width beside the pieces', () => {
    const { news, job } = all({ pieces: [piece('Square', box(500, 700), { count: 3 })], cloth: cloth({ length: 1500 }), aim: { want: 'largest left', width: 700 }, most: 0.02 });
    const { left, laid } = news.at(-1)!.layout;
    // Three squares leave the fourth quarter and what is behind: 500 + 500, of which the last steps of growing may miss a little.
    expect(left!.width).toBeCloseTo(700, 6);
    expect(left!.length).toBeGreaterThan(950);
    expect(left!.length).toBeLessThanOrEqual(1000.01);
    const apart = [...job.places, { ...job.places[0]!, outline: box(left!.length, 700), count: 1 }];
    expect(layoutFaults({ length: 1500, laid: [...laid, { place: 1, way: { turn: 0, mirrored: false }, at: left!.at }] }, apart, cloth())).toEqual([]);
  });

  it('leaves the whole width behind the least length', () => {
    const { news } = all({ pieces: bodice, cloth: cloth({ length: 1500 }), aim: { want: 'largest left' } });
    const { left, length: used } = news.at(-1)!.layout;
    expect(left).toEqual({ at: [used, 0], length: 1500 - used, width: 1400 });
  });

  it('asks for the length at hand', () => {
    expect(new Job({ pieces: bodice, cloth: cloth(), aim: { want: 'fits' }, seed: 1 }).sentences).toEqual(['To see what fits, or what is left, give the length of cloth at hand.']);
  });
});
