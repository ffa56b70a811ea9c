/** Cloth folded crosswise and partly, and cloth that will shrink: what is laid, that the search lays it, and that the check sees when it is not so. */
import { describe, expect, it } from 'vitest';
import { areaOf, boundsOf, clothLength, clothWidth, foldChoices, laidOutline, layFaults, layoutFaults, lengthUsed, placesOf, type Layout, type Way } from '../../../src/lay/index.ts';
import { all, bodice, box, cloth, piece } from './help.ts';

const asDrawn: Way = { turn: 0, mirrored: false };
const crosswise = cloth({ fold: 'crosswise' });
const partly = cloth({ fold: 'partly' });

describe('cloth folded crosswise', () => {
  it('gives both of a pair from one place, two of what is its own mirror image, and lays what is cut on the fold opened out', () => {
    const places = placesOf(bodice, crosswise);
    expect(places.map(({ piece: i, count, layers }) => [bodice[i]!.name, count, layers])).toEqual([['Front', 1, 2], ['Back', 1, 2], ['Sleeve', 1, 2], ['Facing', 2, 2]]);
    expect(areaOf(places[1]!.outline)).toBeCloseTo(2 * areaOf(bodice[1]!.outline), 6);
    expect(places.every(({ onFold }) => !onFold)).toBe(true);
  });

  it('lies in the whole width, on half of the length', () => {
    expect(clothWidth(crosswise)).toBe(1400);
    expect(clothLength({ ...crosswise, length: 3000 })).toBe(1500);
    expect(lengthUsed({ length: 700 }, crosswise)).toBe(1400);
  });

  it('is searched, and its density counts both layers on twice the length', () => {
    const { news, job } = all({ pieces: bodice, cloth: crosswise, most: 0.2 });
    const { layout, density } = news.at(-1)!;
    expect(layoutFaults(layout, job.places, crosswise)).toEqual([]);
    expect(density).toBeCloseTo((2 * job.places.reduce((sum, { outline, count }) => sum + count * areaOf(outline), 0)) / (2 * layout.length * 1400), 12);
  });

  it('refuses one-way cloth, and a piece that may not be turned', () => {
    expect(layFaults(bodice, cloth({ fold: 'crosswise', oneWay: true }))).toEqual(['Folded crosswise, the lower layer of one-way cloth would lie upside down: fold it lengthwise, or lay it open.']);
    expect(layFaults([piece('Front', bodice[0]!.outline, { cut: 'pair', turns: [0] })], crosswise)).toEqual(['“Front” may not be turned round, and folded crosswise its lower layer lies head to tail: allow a half turn, or fold the cloth lengthwise.']);
    // Of a piece that is cut once, the lower layer is waste and may lie as it likes.
    expect(layFaults([piece('Yoke', bodice[0]!.outline, { turns: [0] })], crosswise)).toEqual([]);
  });

  it('takes only half turns whose other layer is allowed as well', () => {
    const [place] = placesOf([piece('Front', bodice[0]!.outline, { cut: 'pair', turns: [0, 180, 90] })], crosswise);
    expect(new Set(place!.ways.map(({ turn }) => turn))).toEqual(new Set([0, 180]));
  });

  it('says how much of the length is there when it is folded', () => {
    expect(layFaults([piece('Leg', box(1100, 200))], cloth({ fold: 'crosswise', length: 2000 }))).toEqual(['“Leg” needs 1100 mm of length and 1000 mm is there when the cloth at hand is folded crosswise: open the cloth, or take more.']);
  });

  it('the check finds one-way cloth, and a piece laid on a fold that is not there', () => {
    const places = placesOf([piece('Square', box(100, 100), { cut: 'pair' })], crosswise);
    const layout: Layout = { length: 100, laid: [{ place: 0, way: asDrawn, at: [0, 0] }] };
    expect(layoutFaults(layout, places, crosswise)).toEqual([]);
    expect(layoutFaults(layout, places, { ...crosswise, oneWay: true })).toEqual(['Place 1 lies against the one way of the cloth.']);
    expect(layoutFaults(layout, places, cloth())).toEqual(['Place 1 is to be cut from two layers, and the cloth is not folded.']);
    expect(layoutFaults(layout, [{ ...places[0]!, onFold: true }], crosswise)).toEqual(['Place 1 does not lie on the fold.']);
  });
});

describe('cloth folded partly', () => {
  const at240 = cloth({ fold: 'partly', foldAt: 240 });

  it('lies as wide as the fold and what is single beside it', () => {
    expect(clothWidth(at240)).toBe(1160);
  });

  it('tries the fold as deep as the pieces on it need, and other depths up to half of the cloth', () => {
    const choices = foldChoices(bodice, partly);
    expect(choices[0]).toBeCloseTo(240, 2);
    expect(choices.at(-1)).toBe(700);
    expect(choices.length).toBeLessThanOrEqual(6);
    expect(foldChoices(bodice, at240)).toEqual([240]);
  });

  it('takes the pieces on the fold into it, and one-sided single pieces beside it', () => {
    const places = placesOf([...bodice, piece('Yoke', bodice[0]!.outline)], at240);
    const of = (name: string): unknown[] => places.filter(({ piece: i }) => [...bodice, { name: 'Yoke' }][i]!.name === name).map(({ layers, count, onFold }) => [layers, count, onFold]);
    expect(of('Back')).toEqual([[2, 1, true]]);
    expect(of('Yoke')).toEqual([[1, 1, false]]);
    // The front is wider than the fold is deep: one as drawn and one mirrored, beside it.
    expect(of('Front')).toEqual([[1, 1, false], [1, 1, false]]);
  });

  it('cuts every piece as often as it is wanted, whatever the depth', () => {
    for (const foldAt of foldChoices(bodice, partly)) {
      const cut = new Map<string, number>();
      for (const { piece: i, count, layers, onFold } of placesOf(bodice, { ...partly, foldAt })) {
        cut.set(bodice[i]!.name, (cut.get(bodice[i]!.name) ?? 0) + count * (onFold ? 1 : layers!));
      }
      const { Facing, ...others } = Object.fromEntries(cut);
      expect(others).toEqual({ Front: 2, Back: 1, Sleeve: 2 });
      // Three are wanted; from two layers come four.
      expect([3, 4]).toContain(Facing);
    }
  });

  it('is searched: the layout tells where the fold is, and every place lies where its layers are', () => {
    const { news, job } = all({ pieces: bodice, cloth: partly, most: 1 });
    for (const { layout, places } of news) {
      expect(layout.foldAt).toBeGreaterThanOrEqual(240);
      expect(layoutFaults(layout, places!, partly)).toEqual([]);
      expect(places).toEqual(placesOf(bodice, { ...partly, foldAt: layout.foldAt! }));
    }
    expect(job.places).toEqual(news.at(-1)!.places);
  });

  it('keeps to the depth that is given', () => {
    const { news } = all({ pieces: bodice, cloth: at240 });
    expect(news.at(-1)!.layout.foldAt).toBe(240);
  });

  it('says which piece does not go beside or into the fold', () => {
    expect(layFaults([piece('Circle', box(400, 1000))], cloth({ fold: 'partly', foldAt: 300 }))).toEqual(['“Circle” needs 1000 mm across; folded partly the cloth is 300 mm wide in the fold and 800 mm beside it: put the fold elsewhere, open the cloth, or allow a turn.']);
    expect(layFaults([piece('Circle', box(400, 1000))], partly)).not.toEqual([]);
    expect(layFaults(bodice, cloth({ fold: 'partly', foldAt: 701 }))).toEqual(['The folded part has to be more than nothing and at most half of the cloth, 700 mm deep: give another depth, or leave it empty.']);
    expect(layFaults([piece('Cape', box(900, 750), { cut: 'fold' })], partly)).toEqual(['Folded partly the cloth is 700 mm deep at most, and a piece on the fold needs more: open the cloth.']);
  });

  it('the check finds pieces in the wrong part, across its edge, and a fold elsewhere', () => {
    const places = placesOf([piece('Square', box(100, 100))], at240).map((place) => ({ ...place, layers: 1 as const, count: 1 }));
    const layout = (across: number, more = {}): Layout => ({ length: 100, laid: [{ place: 0, way: asDrawn, at: [0, across] }], ...more });
    expect(layoutFaults(layout(240), places, at240)).toEqual([]);
    expect(layoutFaults(layout(200), places, at240)).toEqual(['Place 1 is to be cut from one layer and lies where there are two.']);
    expect(layoutFaults(layout(1061), places, at240)).toEqual(['Place 1 sticks out of the cloth.']);
    const double = places.map((place) => ({ ...place, layers: 2 as const }));
    expect(layoutFaults(layout(140), double, at240)).toEqual([]);
    expect(layoutFaults(layout(141), double, at240)).toEqual(['Place 1 is to be cut from two layers and lies where there is one.']);
    expect(layoutFaults(layout(240, { foldAt: 239 }), places, at240)).toEqual(['The fold does not lie where it was asked for.']);
    expect(layoutFaults(layout(240, { foldAt: 800 }), places, partly)).toContain('The fold lies where this cloth cannot be folded.');
  });
});

describe('cloth that will shrink', () => {
  const shrinking = cloth({ shrinkage: { along: 0.05, across: 0.02 } });

  it('lays every turn larger by what the cloth loses along and across, not the piece', () => {
    const [place] = placesOf([piece('Band', box(950, 98), { turns: [0, 90] })], shrinking);
    const spans = place!.ways.map((way) => {
      const { from, to } = boundsOf(laidOutline(place!.outline, way, [0, 0]));
      return [to[0] - from[0], to[1] - from[1]].map((value) => Math.round(value * 1000) / 1000);
    });
    expect(spans).toEqual([[1000, 100], [103.158, 969.388]]);
  });

  it('is searched, with a flaw that lies on the cloth as it is now', () => {
    const flawed = cloth({ shrinkage: { along: 0.05, across: 0.02 }, length: 2000, flaws: [[[200, 600], [260, 600], [260, 660], [200, 660]]], gap: 4 });
    const { news, job } = all({ pieces: bodice, cloth: flawed, most: 0.2 });
    expect(news.length).toBeGreaterThan(1);
    for (const { layout } of news) expect(layoutFaults(layout, job.places, flawed)).toEqual([]);
  });

  it('takes as much more cloth as it loses', () => {
    // Four quarters fill the shrunk cloth: 600 mm of it, of 5 % more before.
    const quarters = [piece('Quarter', box(300, 1400 * 0.49), { count: 4 })];
    expect(all({ pieces: quarters, cloth: shrinking }).news.at(-1)!.layout.length).toBeCloseTo(600 / 0.95, 2);
  });

  it('leaves a rectangle of cloth as it is now', () => {
    const { news } = all({ pieces: [piece('Square', box(475, 686), { count: 3 })], cloth: { ...shrinking, length: 1500 }, aim: { want: 'largest left', width: 700 }, most: 0.02 });
    const { left } = news.at(-1)!.layout;
    expect(left!.width).toBeCloseTo(700, 6);
    expect(left!.length).toBeGreaterThan(950);
    expect(left!.length).toBeLessThanOrEqual(1000.01);
  });

  it('says what is too wide once it is enlarged', () => {
    expect(layFaults([piece('Panel', box(300, 1390))], shrinking)).toEqual(['“Panel” needs 1418.4 mm across and the cloth is 1400 mm wide: allow a turn, choose a wider cloth, or piece it together.']);
    expect(layFaults(bodice, cloth({ shrinkage: { along: 0.6, across: 0 } }))).toEqual(['The cloth can shrink by 0 % to 50 %: give what a washed square of it has lost.']);
  });

  it('the check finds a piece that is not laid larger', () => {
    const places = placesOf([piece('Square', box(95, 98))], shrinking);
    const layout = (way: Way): Layout => ({ length: 100, laid: [{ place: 0, way, at: [0, 0] }] });
    expect(layoutFaults(layout(places[0]!.ways[0]!), places, shrinking)).toEqual([]);
    expect(layoutFaults(layout(asDrawn), places, shrinking)).toEqual(['Place 1 is not laid larger by what the cloth will shrink.']);
  });
});
