import fc from 'fast-check';
import { expect, it } from 'vitest';
import { point, Polygon, segment } from '@flatten-js/core';
import { areaOf, boundsOf, layFaults, type Outline } from '../../../../src/lay/index.ts';
import { layPrint, readPieces, SHAPE_WORDS, type SheetPiece } from '../../../../src/lay/shapes/index.ts';
import { cloth } from '../help.ts';
import { cellOf, only, read, rowsOf, sentenceOf, shape } from './help.ts';

const size = (outline: Outline): readonly [number, number] => {
  const { from, to } = boundsOf(outline);
  return [to[0] - from[0], to[1] - from[1]];
};
const included = { allowance: 'included' } as const;
const cm = fc.integer({ min: 20, max: 900 }).map((tenths) => tenths / 10);

it('reads a rectangle with its counts, cut, turns and cloth', () => {
  const piece = only({ piece: 'Waistband', shape: 'rectangle', length: '80 cm', width: '8 cm', count: '2', cut: 'pair', turns: 'none', cloth: 'Contrast', ...included });
  expect(piece).toMatchObject({ name: 'Waistband', row: 1, cloth: 'contrast', cut: 'pair', count: 2, turns: [0], allowance: 0 });
  expect(size(piece.outline)).toEqual([800, 80]);
});

it('needs no column but its own, in any order, and passes others over', () => {
  const { pieces, sentences } = readPieces([
    [cellOf('My skirt')],
    [cellOf('width (cm)'), cellOf('Remark'), cellOf(' SHAPE '), cellOf('Piece'), cellOf('Length')],
    [cellOf('40 cm'), cellOf('soft'), cellOf('Panel'), cellOf('Front'), cellOf('60 cm')],
  ], []);
  expect(sentences).toEqual([]);
  expect(pieces[0]).toMatchObject({ name: 'Front', row: 2, cloth: 'main', cut: 'single', count: 1, turns: [0, 180], allowance: 0 });
});

it('a band folded in two, and a strip on the bias', () => {
  expect(size(only({ piece: 'a', shape: 'folded band', length: '70 cm', width: '3 cm', ...included }).outline)).toEqual([700, 60]);
  const strip = only({ piece: 'a', shape: 'bias strip', length: '70 cm', width: '3 cm', ...included });
  expect(areaOf(strip.outline)).toBeCloseTo(700 * 30, 6);
  expect(size(strip.outline)[0]).toBeCloseTo((700 + 30) * Math.SQRT1_2, 9);
  expect(size(only({ piece: 'a', shape: 'rectangle', length: '70 cm', width: '3 cm', grain: 'crosswise', ...included }).outline).map(Math.round)).toEqual([30, 700]);
});

it('a piece measured with a tape: widths at levels left and right of the grain line', () => {
  const given = [
    { piece: 'Front', shape: 'taper', left: '0', right: '12 cm', ...included },
    { down: '20 cm', left: '1 cm', right: '24 cm' },
    { down: '42 cm', right: '22 cm' },
  ] as const;
  const [first, ...more] = given;
  const piece = only({ ...first, left: '0 cm' }, ...more);
  expect(areaOf(piece.outline)).toBeCloseTo(200 * (120 + 250) / 2 + 220 * (250 + 220) / 2, 6);
  // Right of the grain line is where across grows.
  expect(boundsOf(piece.outline)).toEqual({ from: [0, -10], to: [420, 240] });
  const step = only({ piece: 'Front', shape: 'stepped', length: '50 cm', right: '10 cm', left: '10 cm', ...included }, { down: '20 cm', left: '10 cm', right: '25 cm' });
  expect(areaOf(step.outline)).toBeCloseTo(200 * 200 + 300 * 350, 6);
});

it('a taper by two widths, and further down than its last width', () => {
  expect(areaOf(only({ piece: 'a', shape: 'taper', length: '60 cm', width: '20 cm', lower: '40 cm', ...included }).outline)).toBeCloseTo(600 * 300, 6);
  expect(areaOf(only({ piece: 'a', shape: 'taper', length: '60 cm', width: '20 cm', ...included }, { down: '30 cm', width: '40 cm' }).outline)).toBeCloseTo(300 * 300 + 300 * 400, 6);
});

it('a part of a circle skirt has the area of its ring, from the inside and as near as its curves are', () => {
  fc.assert(fc.property(cm, cm, fc.double({ min: 0.02, max: 0.95, noNaN: true }), (radius, length, part) => {
    const { outline } = only({ piece: 'a', shape: 'sector', radius: `${radius} cm`, length: `${length} cm`, part: String(part), ...included });
    const [inner, outer] = [radius * 10, (radius + length) * 10];
    expect(Math.abs(areaOf(outline) - Math.PI * part * (outer ** 2 - inner ** 2))).toBeLessThan(0.1 * 2 * Math.PI * part * (outer + inner) + 1e-6);
    // The middle of the hem lies on the grain line, straight below the middle of the waist.
    expect(Math.max(...outline.map(([along, across]) => Math.hypot(along, across)))).toBeLessThan(2 * outer + 1);
  }));
});

it('the seam of a gore is as long as its middle', () => {
  fc.assert(fc.property(cm, cm, cm, (length, width, lower) => {
    const { outline } = only({ piece: 'a', shape: 'gore', length: `${length} cm`, width: `${width} cm`, lower: `${Math.min(lower, width + length)} cm`, ...included });
    const top = outline.findIndex(([along, across]) => along === 0 && across > 0);
    const seam = [outline.at(top - 1)!, outline[top]!];
    expect(Math.hypot(seam[0]![0] - seam[1]![0], seam[0]![1] - seam[1]![1])).toBeCloseTo(length * 10, 6);
    expect(boundsOf(outline).to[0]).toBeCloseTo(length * 10, 0);
  }));
});

it('a godet by its part and by its hem is the same', () => {
  const hem = 2 * Math.PI * 30 * 0.25;
  const one = only({ piece: 'a', shape: 'godet', length: '30 cm', part: '1/4', ...included }), other = only({ piece: 'a', shape: 'godet', length: '30 cm', lower: `${hem} cm`, ...included });
  expect(areaOf(other.outline)).toBeCloseTo(areaOf(one.outline), 3);
  expect(areaOf(one.outline) / (Math.PI * 300 ** 2 / 4)).toBeGreaterThan(0.999);
});

it('a sleeve is as long and wide as it is told, and its cap covers half of its box', () => {
  const { outline } = only({ piece: 'a', shape: 'sleeve', length: '58 cm', width: '34 cm', lower: '22 cm', cap: '14 cm', ...included });
  expect(size(outline)).toEqual([580, 340]);
  expect(areaOf(outline)).toBeCloseTo(140 * 340 / 2 + 440 * (340 + 220) / 2, 0);
});

it('scales: every figure twice as long, four times the area', () => {
  const figures = { length: 60, width: 22, lower: 40, radius: 18, cap: 12 };
  const at = (k: number) => Object.fromEntries(Object.entries(figures).map(([column, length]) => [column, `${length * k} cm`]));
  for (const { words: [word] } of SHAPE_WORDS) {
    const area = (k: number): number => areaOf(only({ piece: 'a', shape: word!, part: '1/3', ...at(k), ...(word === 'stepped' ? { lower: '' } : {}), ...included }).outline);
    expect(area(2) / area(1)).toBeGreaterThan(3.995);
    expect(area(2) / area(1)).toBeLessThan(4.005);
  }
});

it('every word makes a piece that can be laid, with an allowance, single and on the fold', () => {
  for (const { words } of SHAPE_WORDS) {
    for (const shape of words) {
      for (const cut of ['single', 'pair', ...(shape === 'bias strip' ? [] : ['fold'])]) {
        const piece = only({ piece: shape, shape, length: '60 cm', width: '22 cm', lower: shape === 'stepped' ? '' : '40 cm', radius: '18 cm', part: '1/3', cap: '12 cm', cut, allowance: '1.5 cm' });
        expect(layFaults([piece], cloth())).toEqual([]);
        expect(piece.outline.length).toBeLessThan(400);
      }
    }
  }
});

/** How far the corners of the cutting line are from the seam line, told by a library that had no part in making it. */
function fromSeam({ seam, outline }: SheetPiece): number[] {
  const edges = edgesOf(seam).map(([[a, b], [c, d]]) => segment(point(a, b), point(c, d)));
  return outline.map(([along, across]) => Math.min(...edges.map((edge) => edge.distanceTo(point(along, across))[0])));
}

const edgesOf = (outline: Outline) => outline.map((from, i) => [from, outline[(i + 1) % outline.length]!] as const);

it('the allowance lies at its own distance all round, corners drawn on until the lines meet', () => {
  const rectangle = only({ piece: 'a', shape: 'rectangle', length: '60 cm', width: '20 cm', allowance: '15 mm' });
  expect(size(rectangle.outline)).toEqual([630, 230]);
  expect(areaOf(rectangle.outline)).toBeCloseTo(630 * 230, 6);
  fc.assert(fc.property(cm, cm, cm, fc.integer({ min: 1, max: 40 }), (length, width, lower, mm) => {
    const piece = only({ piece: 'a', shape: 'taper', length: `${length} cm`, width: `${width} cm`, lower: `${lower} cm`, allowance: `${mm} mm` });
    const polygon = new Polygon(piece.seam.map(([along, across]) => point(along, across)));
    // The middle of every edge of the cutting line lies the allowance away from the seam, unless its corner was too sharp.
    const middles = edgesOf(piece.outline).map(([[a, b], [c, d]]) => polygon.distanceTo(point((a + c) / 2, (b + d) / 2))[0]);
    expect(Math.min(...middles, ...fromSeam(piece))).toBeGreaterThan(mm - 0.001);
    expect(Math.max(...fromSeam(piece))).toBeLessThan(4 * mm + 0.001);
    expect(middles.filter((away) => Math.abs(away - mm) < 0.001).length).toBeGreaterThanOrEqual(4);
  }), { numRuns: 60 });
});

it('a corner sharper than 29° is cut off square', () => {
  const sharp = only({ piece: 'a', shape: 'godet', length: '40 cm', part: '0.03', allowance: '1 cm' });
  expect(-boundsOf(sharp.outline).from[0]).toBeLessThan(40);
  expect(-boundsOf(sharp.outline).from[0]).toBeGreaterThan(9.99);
});

it('on the fold half of the piece is laid, with no allowance along the fold', () => {
  fc.assert(fc.property(fc.constantFrom('rectangle', 'gore', 'sector', 'sleeve', 'taper'), fc.integer({ min: 0, max: 30 }), (shape, mm) => {
    const row = { piece: 'a', shape, length: '60 cm', width: '24 cm', lower: '40 cm', radius: '18 cm', part: '1/4', cap: '12 cm', allowance: `${mm} mm` };
    const whole = only(row), half = only({ ...row, cut: 'fold' });
    expect(boundsOf(half.outline).from[1]).toBe(0);
    expect(areaOf(half.outline)).toBeCloseTo(areaOf(whole.outline) / 2, 0);
  }));
});

it('a half measured from the fold stays a half', () => {
  const piece = only({ piece: 'Back', shape: 'taper', cut: 'fold', right: '10 cm', allowance: '1 cm' }, { down: '40 cm', right: '24 cm' });
  expect(boundsOf(piece.seam)).toEqual({ from: [0, 0], to: [400, 240] });
  expect(boundsOf(piece.outline).from[1]).toBe(0);
  expect(sentenceOf({ piece: 'Back', shape: 'taper', cut: 'fold', left: '2 cm', right: '10 cm', ...included }, { down: '40 cm', right: '24 cm' })).toMatch(/^“Back” is cut on the fold, and its Left and Right differ/);
});

it('a drawn shape lies with its grain along, the same way round', () => {
  const { pieces, sentences } = readPieces(rowsOf({ piece: 'Upper collar', shape: 'collar', cut: 'single', ...included }), [shape({ marks: [{ mark: 'centre back', x: 0, y: 30 }] })]);
  expect(sentences).toEqual([]);
  // Grain to the right on the board: along is x, and across grows upwards, so that nothing is mirrored.
  expect(pieces[0]!.outline).toEqual([[220, 30], [220, -40], [0, -30], [0, 30]]);
  expect(pieces[0]!.matches).toEqual([{ mark: 'centre back', at: [0, 0] }]);
});

it('a drawn half lies with its straight edge on the fold, whichever side it was drawn on', () => {
  for (const x of [1, -1]) {
    const half = shape({ name: 'Back', points: [{ x: 0, y: 0 }, { x: 150 * x, y: 20 }, { x: 240 * x, y: 400 }, { x: 0.4 * x, y: 402 }], grain: [{ x: 50 * x, y: 50 }, { x: 50 * x, y: 350 }] });
    const [piece] = readPieces(rowsOf({ piece: 'Back', shape: 'Back', cut: 'fold', allowance: '1 cm' }), [half]).pieces;
    expect(boundsOf(piece!.outline).from[1]).toBe(0);
    expect(layFaults([piece!], cloth())).toEqual([]);
    expect(piece!.seam.filter(([, across]) => across === 0)).toHaveLength(2);
  }
  const round = shape({ points: [{ x: 0, y: 0 }, { x: 100, y: 50 }, { x: 0, y: 100 }, { x: -100, y: 50 }], grain: [{ x: 0, y: 0 }, { x: 0, y: 90 }] });
  expect(readPieces(rowsOf({ piece: 'a', shape: 'collar', cut: 'fold', ...included }), [round]).sentences[0]!.sentence).toMatch(/no straight edge along its grain line/);
});

it('turns: none, half, quarter, a tilt as a word or an angle', () => {
  const turns = (typed: string): readonly number[] => only({ piece: 'a', shape: 'rectangle', length: '60 cm', width: '20 cm', turns: typed, ...included }).turns;
  expect(turns('none')).toEqual([0]);
  expect(turns('Half turn')).toEqual([0, 180]);
  expect(turns('quarter turn')).toEqual([0, 90, 180, 270]);
  expect(turns('3°')).toEqual([0, -3, 3]);
  expect(turns('tilt up to 10°')).toEqual([0, -10, -5, 5, 10]);
  expect(turns('half turn, tilt 2°')).toEqual([0, -2, 2, 180, 178, 182]);
});

it.each([
  [{ piece: 'Cuff', shape: 'round', ...included }, '“Cuff” has “round” for Shape, which is none: write rectangle, folded band, bias strip, taper, stepped, sector, gore, godet or sleeve.'],
  [{ piece: 'Cuff', ...included }, '“Cuff” has no Shape: write rectangle, folded band, bias strip, taper, stepped, sector, gore, godet or sleeve.'],
  [{ shape: 'gore' }, 'A row of the list has no name for its piece: fill in Piece, or Down for more widths of the piece above it.'],
  [{ piece: 'Cuff', shape: 'rectangle', length: '20 cm', ...included }, '“Cuff” is a rectangle, and has no Width yet: fill it in.'],
  [{ piece: 'Cuff', shape: 'rectangle', length: '20', width: '5 cm', ...included }, 'The Length of “Cuff” has no unit: write 20 cm or 20 in.'],
  [{ piece: 'Cuff', shape: 'rectangle', length: '20°', width: '5 cm', ...included }, '“Cuff” needs a length for Length, and 20.0° is none.'],
  [{ piece: 'Cuff', shape: 'rectangle', length: 'long', width: '5 cm', ...included }, '“Cuff” needs a length for Length, and “long” is none.'],
  [{ piece: 'Cuff', shape: 'rectangle', length: '-20 cm', width: '5 cm', ...included }, 'The Length of “Cuff” is −20.0 cm: it has to be more than 0.'],
  [{ piece: 'Cuff', shape: 'rectangle', length: '60 m', width: '5 cm', ...included }, 'The Length of “Cuff” is 60.00 m, which is longer than any piece: look at its unit.'],
  [{ piece: 'Cuff', shape: 'rectangle', length: '#B4 has no value yet.', width: '5 cm', ...included }, 'The Length of “Cuff” cannot be worked out: B4 has no value yet.'],
  [{ piece: 'Cuff', shape: 'rectangle', length: '20 cm', width: '5 cm' }, '“Cuff” has no Allowance: give what is added all round, or write included.'],
  [{ piece: 'Cuff', shape: 'rectangle', length: '20 cm', width: '5 cm', allowance: 'yes' }, '“Cuff” has “yes” for Allowance: give a length, or write included.'],
  [{ piece: 'Cuff', shape: 'rectangle', length: '20 cm', width: '5 cm', count: '1.5', ...included }, '“Cuff” is to be cut 1.5 times: How many has to be a whole number from 0 to 300.'],
  [{ piece: 'Cuff', shape: 'rectangle', length: '20 cm', width: '5 cm', cut: 'double', ...included }, '“Cuff” has “double” for Cut: write single, pair or fold.'],
  [{ piece: 'Cuff', shape: 'rectangle', length: '20 cm', width: '5 cm', turns: 'any', ...included }, '“Cuff” has “any” for Turns: write none, half turn, quarter turn, or tilt 5°, or both, as in half turn, tilt 5°.'],
  [{ piece: 'Cuff', shape: 'rectangle', length: '20 cm', width: '5 cm', turns: 'tilt 60°', ...included }, '“Cuff” may tilt by 60.0°: at most 45° is a tilt.'],
  [{ piece: 'Cuff', shape: 'bias strip', length: '20 cm', width: '5 cm', cut: 'fold', ...included }, '“Cuff” is cut on the fold, which runs along the grain: leave its Grain lengthwise, or cut it single.'],
  [{ piece: 'Skirt', shape: 'sector', radius: '12 cm', length: '60 cm', part: '1', ...included }, '“Skirt” is a whole circle or more, which has no beginning to cut from: give half the Part, and twice How many.'],
  [{ piece: 'Godet', shape: 'godet', length: '30 cm', ...included }, '“Godet” is a godet, and needs Part or Lower width: fill one in.'],
  [{ piece: 'Yoke', shape: 'stepped', length: '30 cm', ...included }, '“Yoke” needs widths: fill in Left and Right, or Width, and more rows below it with Down.'],
  [{ piece: 'Sleeve', shape: 'sleeve', length: '12 cm', width: '30 cm', lower: '20 cm', cap: '12 cm', ...included }, '“Sleeve” has a cap as high as it is long: make its Length more, or its Cap height less.'],
] as const)('says what is wrong, of which piece, and what to do: %o', (row, sentence) => {
  expect(sentenceOf(row)).toBe(sentence);
});

it('a faulty row takes no other with it', () => {
  const { pieces, sentences } = read(
    { piece: 'Front', shape: 'rectangle', length: '60 cm', width: '40 cm', ...included },
    { piece: 'Cuff', shape: 'round', ...included },
    {},
    { piece: 'Back', shape: 'rectangle', length: '60 cm', width: '40 cm', ...included },
  );
  expect(pieces.map(({ name, row }) => [name, row])).toEqual([['Front', 1], ['Back', 4]]);
  expect(sentences.map(({ row }) => row)).toEqual([2]);
});

it('widths out of order, doubled or below the end are refused', () => {
  const base = { piece: 'Front', shape: 'taper', right: '10 cm', ...included };
  expect(sentenceOf(base, { down: '20 cm', right: '12 cm' }, { down: '20 cm', right: '14 cm' })).toMatch(/^The widths of “Front” have to stand from the top down/);
  expect(sentenceOf(base, { down: '20 cm', right: '12 cm', width: '14 cm' })).toMatch(/^“Front” has a Width beside a Left or Right/);
  expect(sentenceOf({ ...base, length: '10 cm' }, { down: '20 cm', right: '12 cm' })).toMatch(/^“Front” has a width below its end/);
  expect(sentenceOf({ ...base, down: '5 cm' }, { down: '20 cm', right: '12 cm' })).toMatch(/^The first width of “Front” has to be at its top/);
  expect(sentenceOf({ ...base, shape: 'stepped', length: '20 cm' }, { down: '20 cm', right: '12 cm' })).toMatch(/^“Front” has a step that begins below its end/);
});

it('rows without headings say so', () => {
  expect(readPieces([[cellOf('Front'), cellOf('rectangle')]], []).sentences).toEqual([{ row: null, sentence: 'There is no row of headings among these: a list of pieces begins with one that has Piece and Shape.' }]);
});

it('the print of a lay changes with what is laid, and with nothing else', () => {
  const row = { piece: 'Front', shape: 'rectangle', length: '60 cm', width: '40 cm', allowance: '1 cm' } as const;
  const lining = { ...row, piece: 'Lining', cloth: 'lining' } as const;
  const print = (...rows: Parameters<typeof rowsOf>): string => layPrint({ which: 'main', second: false }, readPieces(rowsOf(...rows), []).pieces, []);
  const now = print(row, lining);
  expect(print(row)).toBe(now);
  expect(print({ ...lining, width: '41 cm' }, row)).toBe(now);
  expect(print({ ...row, width: '600 mm' , length: '40 cm' }, lining)).not.toBe(now);
  for (const more of [{ width: '40.1 cm' }, { allowance: '1.5 cm' }, { count: '2' }, { cut: 'pair' }, { turns: 'none' }, { piece: 'Back' }, { cloth: 'contrast' }]) expect(print({ ...row, ...more }, lining)).not.toBe(now);
});
