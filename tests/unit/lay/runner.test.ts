/** One worker or two: the better of both, cancelled at once, started anew when one dies, the same again with one. */
import { expose } from 'comlink';
import { afterEach, describe, expect, it } from 'vitest';
import { layoutFaults, LayRunner, LayWorkerDied, workersFor, type LayNews, type LayPort, type LayRequest, type LayWorker } from '../../../src/lay/index.ts';
import { Served } from '../../../workers/lay/served.ts';
import { bodice, box, cloth, piece } from './help.ts';

const request: LayRequest = { pieces: bodice, cloth: cloth(), aim: { want: 'least length' }, seed: 1, most: 0.1 };

const ends: (() => void)[] = [];
afterEach(() => ends.splice(0).forEach((end) => end()));

/** A port as a worker would be; the page's end of it can be made to die. */
function port(serve: LayWorker): LayPort & { die(): void } {
  const { port1, port2 } = new MessageChannel();
  expose(serve, port2);
  const terminate = (): void => {
    port1.close();
    port2.close();
    void serve.cancel();
  };
  return Object.assign(port1, { terminate, die: () => port1.dispatchEvent(new Event('error', { cancelable: true })) });
}

function runner(workers: number, serve: () => LayWorker = () => new Served(), limits = {}): { runner: LayRunner; ports: ReturnType<typeof port>[] } {
  const ports: ReturnType<typeof port>[] = [];
  const made = new LayRunner({
    workers, limits, start: () => {
      ports.push(port(serve()));
      return ports.at(-1)!;
    },
  });
  ends.push(() => made.end());
  return { runner: made, ports };
}

async function run(of: LayRunner, more: Partial<LayRequest> = {}): Promise<{ news: LayNews[]; answer: Awaited<ReturnType<LayRunner['lay']>> }> {
  const news: LayNews[] = [];
  const answer = await of.lay({ ...request, ...more }, (one) => news.push(one));
  return { news, answer };
}

/** A worker that hears nothing. */
class Deaf extends Served {
  override lay(): Promise<never> {
    return new Promise(() => undefined);
  }

  override alive(): never {
    throw new Error('deaf');
  }
}

describe('the runner', () => {
  it('with one worker gives the same layouts every time', async () => {
    const one = await run(runner(1).runner), other = await run(runner(1).runner);
    expect(one.news.map(({ layout }) => layout)).toEqual(other.news.map(({ layout }) => layout));
    expect(one.answer).toMatchObject({ outcome: 'done', found: { layout: one.news.at(-1)!.layout } });
  });

  it('with two gives each better layout of either, and the best as the answer', async () => {
    const { news, answer } = await run(runner(2).runner);
    for (let i = 1; i < news.length; i++) expect(news[i]!.layout.length).toBeLessThan(news[i - 1]!.layout.length);
    const alone = await Promise.all([1, 1 + 104_729].map((seed) => run(runner(1).runner, { seed })));
    const best = Math.min(...alone.map((each) => each.news.at(-1)!.layout.length));
    expect(answer).toMatchObject({ outcome: 'done', found: { layout: { length: best } } });
  });

  it('refuses with the sentences', async () => {
    const { answer } = await run(runner(2).runner, { pieces: [piece('Wide', box(100, 2000))] });
    expect(answer).toMatchObject({ outcome: 'refused', sentences: [expect.stringContaining('“Wide” needs 2000 mm across')] });
  });

  it.each([1, 2])('cancels within 100 ms and keeps the best so far: %i', async (workers) => {
    const { runner: one } = runner(workers);
    const news: LayNews[] = [];
    const answer = one.lay({ ...request, most: undefined }, (each) => news.push(each));
    await new Promise((done) => setTimeout(done, 300));
    const from = performance.now();
    one.cancel();
    expect(await answer).toMatchObject({ outcome: 'cancelled', found: { layout: news.at(-1)!.layout } });
    // The processor may be shared; the promise is 100 ms.
    expect(performance.now() - from).toBeLessThan(300);
    // And the workers are free for the next.
    expect((await run(one)).answer).toMatchObject({ outcome: 'done' });
  });

  it('ends a worker that does not hear a cancel', async () => {
    const { runner: one, ports } = runner(1, () => new Deaf(), { cancel: 30 });
    const answer = one.lay(request, () => undefined);
    await new Promise((done) => setTimeout(done, 20));
    one.cancel();
    expect(await answer).toMatchObject({ outcome: 'cancelled', found: null });
    void one.lay(request, () => undefined).catch(() => undefined);
    expect(ports).toHaveLength(2);
  });

  it('a second search cancels the first', async () => {
    const { runner: one } = runner(2);
    const first = one.lay({ ...request, most: undefined }, () => undefined);
    await new Promise((done) => setTimeout(done, 50));
    const second = run(one);
    expect((await first).outcome).toBe('cancelled');
    expect((await second).answer).toMatchObject({ outcome: 'done' });
  });

  it('starts a worker that dies anew, from the best so far', async () => {
    const { runner: one, ports } = runner(1);
    const news: LayNews[] = [];
    const answer = one.lay({ ...request, most: 3 }, (each) => {
      news.push(each);
      if (news.length === 3) ports[0]!.die();
    });
    const { found } = (await answer) as { found: LayNews };
    expect(ports).toHaveLength(2);
    expect(found.layout.length).toBeLessThanOrEqual(news[2]!.layout.length);
    expect(layoutFaults(found.layout, found.places!, request.cloth)).toEqual([]);
  });

  it('goes on with the other when one dies again and again, and says so when both do', async () => {
    let made = 0;
    const sick = runner(2, () => (made++ === 1 ? new Served() : new Deaf()), { beat: 20, dead: 500 });
    expect((await run(sick.runner)).answer).toMatchObject({ outcome: 'done' });
    await expect(run(runner(2, () => new Deaf(), { beat: 20, dead: 500 }).runner)).rejects.toThrow(LayWorkerDied);
  });

  it('uses two workers where there are two cores', () => {
    expect([1, 2, 8].map(workersFor)).toEqual([1, 2, 2]);
  });
});
