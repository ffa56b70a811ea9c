/** Small layouts for the tests. Figures in millimetres, invented. */
import fc from 'fast-check';
import type { Cloth, LayNews, LayRequest, Outline, Piece } from '../../../src/lay/index.ts';
import { Job } from '../../../workers/lay/job.ts';

export const cloth = (more: Partial<Cloth> = {}): Cloth => ({ width: 1400, length: null, flaws: [], oneWay: false, alike: false, fold: 'open', gap: 0, ...more });

export const box = (length: number, width: number): Outline => [[0, 0], [length, 0], [length, width], [0, width]];

export const piece = (name: string, outline: Outline, more: Partial<Piece> = {}): Piece => ({ name, outline, cut: 'single', count: 1, turns: [0, 180], ...more });

/** A bodice of sorts: a bulging front with a hollow, a back, a sleeve with curves. */
export const bodice: readonly Piece[] = [
  piece('Front', [[0, 0], [420, 0], [430, 140], [330, 250], [180, 230], [60, 290], [0, 260]], { cut: 'pair' }),
  piece('Back', [[0, 0], [440, 0], [440, 180], [300, 240], [0, 230]], { cut: 'fold' }),
  piece('Sleeve', Array.from({ length: 24 }, (_, i) => [250 + 250 * Math.cos((i * Math.PI) / 12), 160 + (120 + 40 * Math.sin((i * Math.PI) / 8)) * Math.sin((i * Math.PI) / 12)] as const), { cut: 'pair' }),
  piece('Facing', box(380, 60), { count: 3 }),
];

/** Runs a request to its end; every layout given out, in order. */
export function all(request: Partial<LayRequest> & Pick<LayRequest, 'pieces'>): { news: LayNews[]; job: Job } {
  const job = new Job({ cloth: cloth(), aim: { want: 'least length' }, seed: 1, most: 0.05, ...request });
  const news: LayNews[] = [];
  for (const better of job.run()) if (better) news.push(job.found!);
  return { news, job };
}

export const length = (request: Parameters<typeof all>[0]): number => all(request).news.at(-1)!.layout.length;

/** Stars: outlines around a middle, bulging and hollow. */
export const outline = (most: number): fc.Arbitrary<Outline> =>
  fc.array(fc.double({ min: 0.25, max: 1, noNaN: true }), { minLength: 3, maxLength: 9 }).map((radii) =>
    radii.map((radius, i) => {
      const angle = (2 * Math.PI * i) / radii.length;
      return [most * (1 + radius * Math.cos(angle)), most * (1 + radius * Math.sin(angle))] as const;
    }));

export const pieces = (most = 300): fc.Arbitrary<readonly Piece[]> =>
  fc.array(fc.record({ outline: outline(most), count: fc.integer({ min: 1, max: 3 }), cut: fc.constantFrom('single' as const, 'pair' as const) }), { minLength: 1, maxLength: 5 })
    .map((list) => list.map((each, i) => piece(`Piece ${i + 1}`, each.outline, { count: each.count, cut: each.cut })));
