/** What the page makes of what the worker says: only proven layouts, and a sentence when it is no more. */
import { expose } from 'comlink';
import { afterEach, expect, test } from 'vitest';
import { faultsOf } from '../../../src/app/lay-found.ts';
import { LaySearch, type Asked } from '../../../src/app/lay-search.ts';
import type { Cloth, LayNews, LayPort, LayWorker } from '../../../src/lay/index.ts';
import type { SheetPiece } from '../../../src/lay/shapes/index.ts';
import { Served } from '../../../workers/lay/served.ts';

const piece = (name: string, length: number, width: number, count: number): SheetPiece => {
  const outline = [[0, 0], [length, 0], [length, width], [0, width]] as const;
  return { name, outline, seam: outline, cut: 'single', count, turns: [0, 180], row: 1, cloth: 'main', allowance: 0 };
};
const CLOTH: Cloth = { width: 800, length: null, flaws: [], oneWay: false, alike: false, fold: 'open', gap: 0 };
const ASKED: Asked = { pieces: [piece('Front', 600, 300, 1), piece('Back', 500, 200, 2)], second: [], cloth: CLOTH, aim: { want: 'least length' }, print: 'p', most: 0.05 };

const ends: (() => void)[] = [];
afterEach(() => ends.splice(0).forEach((end) => end()));

function search(serve: () => LayWorker, dies = (): boolean => false): { search: LaySearch; changes: () => number; starts: () => number } {
  let changes = 0, starts = 0;
  const made = new LaySearch(() => { changes++; }, (): LayPort => {
    starts++;
    const { port1, port2 } = new MessageChannel();
    expose(serve(), port2);
    if (dies()) setTimeout(() => port1.dispatchEvent(new Event('error', { cancelable: true })), 1);
    return Object.assign(port1, { terminate: () => { port1.close(); port2.close(); } });
  });
  ends.push(() => made.end());
  return { search: made, changes: () => changes, starts: () => starts };
}

/** Says that it found what it did not. */
class Wrong extends Served {
  override async lay(...[, better]: Parameters<Served['lay']>): ReturnType<Served['lay']> {
    const way = { turn: 0, mirrored: false };
    const places = [{ piece: 0, outline: ASKED.pieces[0]!.outline, count: 1, ways: [way], onFold: false }, { piece: 1, outline: ASKED.pieces[1]!.outline, count: 2, ways: [way], onFold: false }];
    const news: LayNews = { layout: { laid: [{ place: 0, way, at: [0, 0] }, { place: 1, way, at: [10, 10] }, { place: 1, way, at: [0, 400] }], length: 600 }, density: 0.9, weighed: 1, places };
    better(news);
    return { outcome: 'done', found: news, places };
  }
}

class Deaf extends Served {
  override lay(): Promise<never> {
    return new Promise(() => undefined);
  }
}

test('a layout is shown once the page has proven it itself', async () => {
  const { search: made, changes } = search(() => new Served());
  await made.start(ASKED);
  expect(made.standing).toBe('done');
  expect(faultsOf(made.found!)).toEqual([]);
  expect(made.found).toMatchObject({ names: ['Front', 'Back'], first: 2, print: 'p' });
  expect(changes()).toBeGreaterThan(1);
});

test('one that does not pass is never shown, and she is told', async () => {
  const { search: made } = search(() => new Wrong());
  await made.start(ASKED);
  expect(made.found).toBeNull();
  expect(made.sentences).toEqual([expect.stringContaining('did not pass the check')]);
});

test('what cannot be laid is refused with the reason', async () => {
  const { search: made } = search(() => new Served());
  await made.start({ ...ASKED, pieces: [piece('Panel', 900, 900, 1)] });
  expect(made.standing).toBe('refused');
  expect(made.sentences[0]).toContain('“Panel”');
});

test('a worker that dies again and again is told, and can be started anew', async () => {
  let dead = true;
  const { search: made, starts } = search(() => (dead ? new Deaf() : new Served()), () => dead);
  await made.start(ASKED);
  expect(made.standing).toBe('dead');
  expect(made.sentences).toEqual([expect.stringContaining('start it again')]);
  expect(starts()).toBe(3);
  dead = false;
  await made.start(ASKED);
  expect(made.standing).toBe('done');
  expect(faultsOf(made.found!)).toEqual([]);
});

test('stopping ends even a search that hears nothing', async () => {
  const { search: made } = search(() => new Deaf());
  const over = made.start(ASKED);
  made.stop();
  await over;
  expect(made.standing).toBe('stopped');
});
