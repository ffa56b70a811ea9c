import { expect, test } from 'vitest';
import { TILE, layPages, layPicture, layRuler, type DrawnLay, type LaidPiece } from '../../../src/pictures/index.ts';

const piece = (id: number, outline: LaidPiece['outline'], more: Partial<LaidPiece> = {}): LaidPiece =>
  ({ id, order: id + 1, name: 'Skirt front', count: 'cut 2', outline, grain: 0, second: false, wrong: '', ...more });

const lay = (pieces: readonly LaidPiece[], more: Partial<DrawnLay> = {}): DrawnLay => ({
  width: 700, length: 1500, cutAt: null, edges: { low: 'fold', high: 'selvedge', start: 'cut edge' }, foldAt: null, oneWay: false, remnant: null, flaws: [], left: null, pieces, ...more,
});

const pointsOf = (d: string): [number, number][] => [...d.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)]);
const texts = (marks: readonly { kind: string }[]): string[] => marks.flatMap((mark) => ('text' in mark ? [String(mark.text)] : []));

test('every point lies to scale, along to the right and across upwards', () => {
  const { pieces: [drawn], width, height } = layPicture(lay([piece(0, [[0, 0], [720, 0], [720, 300], [0, 250.5]])]), { scale: 0.5, text: 11 });
  expect([width, height]).toEqual([750, 350]);
  expect(pointsOf(drawn!.d)).toEqual([[0, 350], [360, 350], [360, 200], [0, 224.75]]);
});

test('a piece says its place in the order, its name and how it is cut; a narrow one as much as has room', () => {
  const scale = { scale: 0.5, text: 11 };
  const said = (outline: LaidPiece['outline'], more: Partial<LaidPiece> = {}): string[] => texts(layPicture(lay([piece(4, outline, more)]), scale).pieces[0]!.marks);
  expect(said([[0, 0], [720, 0], [720, 300], [0, 300]])).toEqual(['5 Skirt front', 'cut 2']);
  expect(said([[0, 0], [720, 0], [720, 300], [0, 300]], { wrong: 'overlaps' })).toEqual(['5 Skirt front', 'overlaps']);
  expect(said([[0, 0], [60, 0], [60, 60], [0, 60]])).toEqual(['5']);
});

test('words and grain line stay inside an outline with a bay', () => {
  const bay: LaidPiece['outline'] = [[0, 0], [800, 0], [800, 400], [600, 400], [600, 80], [200, 80], [200, 400], [0, 400]];
  const { marks } = layPicture(lay([piece(0, bay)]), { scale: 0.5, text: 11 }).pieces[0]!;
  const grain = marks.flatMap((mark) => (mark.kind === 'path' && mark.look === 'lay-grain' ? pointsOf(mark.d) : []));
  // In the picture the bay is 100 to 300 wide and lies between 150 and 310 from the top.
  for (const [x, y] of grain) expect(x > 100 && x < 300 && y > 150 && y < 310).toBe(false);
  expect(Math.abs(grain[0]![1] - grain[1]![1])).toBeLessThan(1e-6);
});

test('on one-way cloth the grain line has one head, and an arrow shows the way', () => {
  const heads = (oneWay: boolean): number => layPicture(lay([piece(0, [[0, 0], [700, 0], [700, 300], [0, 300]])], { oneWay }), { scale: 0.5, text: 11 })
    .pieces[0]!.marks.reduce((sum, mark) => sum + (mark.kind === 'path' && mark.look === 'lay-head' ? mark.d.split('Z').length - 1 : 0), 0);
  expect([heads(false), heads(true)]).toEqual([2, 1]);
  expect(texts(layPicture(lay([], { oneWay: true }), { scale: 0.5, text: 11 }).over)).toContain('one way');
});

test('edges are named, and what is left is dimensioned', () => {
  const picture = layPicture(lay([], { left: { at: [900, 0], length: 600, width: 700, words: ['60.0 cm left', '70.0 cm'] } }), { scale: 0.5, text: 11 });
  expect(texts(picture.over)).toEqual(['fold', 'selvedge', 'cut end']);
  expect(texts(picture.under)).toEqual(['60.0 cm left', '70.0 cm']);
});

test.each([['cm', 10], ['in', 25.4]] as const)('a ruler in %s has its numbers where they are', (unit, each) => {
  for (const scale of [0.1, 0.5, 3]) {
    const along = layRuler('along', 1500, unit, { scale, text: 11 });
    expect(along.numbers.length).toBeGreaterThan(2);
    for (const { at, text } of along.numbers) expect(at).toBeCloseTo(Number(text) * each * scale, 1);
    for (const { at, text } of layRuler('across', 700, unit, { scale, text: 11 }).numbers) expect(at).toBeCloseTo((700 - Number(text) * each) * scale, 1);
  }
});

test('pages hold every point of every piece, and join to pages that join back', () => {
  const pieces = [piece(0, [[0, 0], [720, 0], [720, 300], [0, 250]]), piece(1, [[1200, 500], [1490, 500], [1400, 690]])];
  for (const scale of [1, 2, 5]) {
    const { tiles } = layPages(lay(pieces), scale);
    for (const [along, across] of pieces.flatMap(({ outline }) => outline)) {
      const [x, y] = [along / scale, (700 - across) / scale];
      expect(tiles.some((tile) => x >= tile.x && x <= tile.x + TILE.width && y >= tile.y && y <= tile.y + TILE.height)).toBe(true);
    }
    tiles.forEach(({ joins }, at) => {
      for (const { letter, page } of joins) expect(tiles[page - 2]!.joins.filter((join) => join.letter === letter)).toMatchObject([{ page: at + 2 }]);
    });
  }
  // Between the two nothing is cut.
  expect(layPages(lay(pieces), 1).tiles.length).toBeLessThan(Math.ceil(1500 / TILE.width) * Math.ceil(700 / TILE.height));
});
