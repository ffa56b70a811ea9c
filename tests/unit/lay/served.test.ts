/** The worker's manners: it refuses with sentences, hears a cancel soon, and never hangs on a hostile request. */
import { describe, expect, it } from 'vitest';
import type { LayNews } from '../../../src/lay/index.ts';
import { Served } from '../../../workers/lay/served.ts';
import { bodice, box, cloth, piece } from './help.ts';

const aim = { want: 'least length' } as const;

/** Processor milliseconds, so that a busy machine does not count. */
const spent = (): number => process.cpuUsage().user / 1000;

/** Sixty different stars with hollows, five of each: the most that is taken on. */
const crowd = Array.from({ length: 60 }, (_, k) => piece(`Star ${k + 1}`, Array.from({ length: 16 }, (_, i) => {
  const radius = (i % 2 === 0 ? 90 : 45) + ((k * 7 + i * 13) % 29);
  return [radius * Math.cos((i * Math.PI) / 8), radius * Math.sin((i * Math.PI) / 8)] as const;
}), { count: 5 }));

describe('the served search', () => {
  it('refuses what cannot be laid', async () => {
    const answer = await new Served().lay({ pieces: [piece('Wide', box(100, 2000))], cloth: cloth(), aim, seed: 1 }, () => undefined);
    expect(answer).toEqual({ outcome: 'refused', sentences: ['“Wide” needs 2000 mm across and the cloth is 1400 mm wide: allow a turn, choose a wider cloth, or piece it together.'] });
  });

  it('says no with the proof', async () => {
    const answer = await new Served().lay({ pieces: [piece('Square', box(500, 500), { count: 12 })], cloth: cloth({ length: 2000 }), aim: { want: 'fits' }, seed: 1 }, () => undefined);
    expect(answer).toMatchObject({ outcome: 'done', found: null, sentence: 'The pieces do not fit: together they cover 107.2 % of the cloth at hand.' });
  });

  it.each([['a bodice', bodice], ['300 pieces of 60 outlines', crowd]])('stops within 100 ms of a cancel: %s', async (_, pieces) => {
    const served = new Served();
    const answer = served.lay({ pieces, cloth: cloth(), aim, seed: 1 }, () => undefined);
    await new Promise((done) => setTimeout(done, 300));
    const from = spent();
    served.cancel();
    expect((await answer).outcome).toBe('cancelled');
    expect(spent() - from).toBeLessThan(100);
  });

  it('gives each better layout, and the last as the answer', async () => {
    const news: LayNews[] = [];
    const answer = await new Served().lay({ pieces: bodice, cloth: cloth(), aim, seed: 1, most: 0.05 }, (one) => news.push(one));
    expect(answer).toMatchObject({ outcome: 'done', found: news.at(-1) });
  });

  it('a second request ends the first', async () => {
    const served = new Served();
    const first = served.lay({ pieces: bodice, cloth: cloth(), aim, seed: 1 }, () => undefined);
    await new Promise((done) => setTimeout(done, 50));
    const second = served.lay({ pieces: bodice, cloth: cloth(), aim, seed: 2, most: 0.01 }, () => undefined);
    expect((await first).outcome).toBe('cancelled');
    expect((await second).outcome).toBe('done');
  });
});
