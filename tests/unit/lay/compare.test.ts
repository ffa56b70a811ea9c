/** Folded, open, one-way, several widths and prices: what is run, and what it comes to in the shop. */
import { describe, expect, it } from 'vitest';
import { compared, comparisons, type LayRequest } from '../../../src/lay/index.ts';
import { all, bodice, box, cloth, piece } from './help.ts';

const request: LayRequest = { pieces: bodice, cloth: cloth({ length: 1500, gap: 3, alike: true, foldAt: 300, fold: 'partly' }), aim: { want: 'fits' }, seed: 5, most: 0.05 };
const shop = { step: 100, per: 1000 };

describe('comparing cloths', () => {
  it('makes a request for the least length of each width, fold and way, in this order', () => {
    const rows = comparisons(request, { folds: ['open', 'lengthwise'], oneWay: [false, true], offers: [{ width: 1400, price: 12 }, { width: 1100, price: null }] });
    expect(rows.map(({ offer, fold, oneWay }) => [offer.width, fold, oneWay])).toEqual([
      [1400, 'open', false], [1400, 'open', true], [1400, 'lengthwise', false], [1400, 'lengthwise', true],
      [1100, 'open', false], [1100, 'open', true], [1100, 'lengthwise', false], [1100, 'lengthwise', true],
    ]);
    expect(rows[5]!.request).toEqual({ pieces: bodice, aim: { want: 'least length' }, seed: 5, most: 0.05, cloth: cloth({ width: 1100, oneWay: true, gap: 3, alike: true }) });
  });

  it('tells beforehand what cannot be laid so', () => {
    const [row] = comparisons(request, { folds: ['crosswise'], oneWay: [true], offers: [{ width: 1400, price: 12 }] });
    expect(row!.refused).toEqual([expect.stringContaining('Folded crosswise')]);
    expect(compared(row!, { outcome: 'refused', sentences: row!.refused }, shop)).toBeNull();
  });

  it('counts the cloth opened out, cut up to the step, and its cost', () => {
    const bands = { ...request, cloth: cloth(), pieces: [piece('Band', box(340, 1400), { cut: 'pair' })] };
    const [open, crosswise] = comparisons(bands, { folds: ['open', 'crosswise'], oneWay: [false], offers: [{ width: 1400, price: 12.5 }] }).map((row) => {
      const { job, news } = all(row.request);
      return compared(row, { outcome: 'done', found: news.at(-1)!, places: job.places }, shop);
    });
    for (const row of [open, crosswise]) {
      expect(row!.length).toBeCloseTo(680, 2);
      expect(row!.toBuy).toBe(700);
      expect(row!.cost).toBeCloseTo(8.75, 10);
    }
  });

  it('does not buy another step for what rounding adds, and no cost without a price', () => {
    const [row] = comparisons(request, { folds: ['open'], oneWay: [false], offers: [{ width: 1400, price: null }] });
    const of = (length: number): unknown => compared(row!, { outcome: 'done', found: { layout: { laid: [], length }, density: 1, weighed: 0 }, places: [] }, shop);
    expect(of(1200.0004)).toEqual({ length: 1200.0004, toBuy: 1200, cost: null });
    expect(of(1200.2)).toEqual({ length: 1200.2, toBuy: 1300, cost: null });
  });
});
