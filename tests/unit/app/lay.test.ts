import { describe, expect, test } from 'vitest';
import { readChoice, NO_CHOICE } from '../../../src/app/lay-choices.ts';
import { faultsOf, foundKept, keptFrom, leftOf, usedOf, type Found } from '../../../src/app/lay-found.ts';
import { HandLay } from '../../../src/app/lay-hand.ts';
import { planOf, svgOf } from '../../../src/app/lay-paper.ts';
import { piecesOf } from '../../../src/app/lay-pieces.ts';
import { drawingOf, lengthUp } from '../../../src/app/lay-view.ts';
import { inHerUnits, remarksOn, standingOf } from '../../../src/app/lay-words.ts';
import { layoutFaults, placesOf, type Cloth, type Piece } from '../../../src/lay/index.ts';
import { Results } from '../../../src/reckoning/index.ts';
import { apply, emptyBook, tidyRecord, type Book, type Lay } from '../../../src/workbook/index.ts';

const AS = { system: 'own', inchStep: 8 } as const;
const PIECES: readonly Piece[] = [
  { name: 'Front', outline: [[0, 0], [600, 0], [600, 300], [0, 300]], cut: 'single', count: 1, turns: [0, 180] },
  { name: 'Back', outline: [[0, 0], [500, 0], [500, 200], [0, 200]], cut: 'single', count: 2, turns: [0] },
];
const CLOTH: Cloth = { width: 800, length: 1500, flaws: [], oneWay: false, alike: false, fold: 'open', gap: 0 };

/** Front and one Back beside each other, the other Back behind. */
function found(cloth: Cloth = CLOTH): Found {
  const way = { turn: 0, mirrored: false };
  return {
    names: ['Front', 'Back'], first: 2, places: placesOf(PIECES, cloth), cloth, weighed: 2, print: 'p',
    layout: { laid: [{ place: 0, way, at: [0, 0] }, { place: 1, way, at: [0, 300] }, { place: 1, way, at: [600, 0] }], length: 1100 },
    density: (600 * 300 + 2 * 500 * 200) / (1100 * 800),
  };
}

describe('what she typed', () => {
  const read = (cloth: Partial<Lay['cloth']>, more: Partial<Lay> = {}) => readChoice({ ...NO_CHOICE, ...more, cloth: { ...NO_CHOICE.cloth, ...cloth } });

  test('becomes cloth in mm', () => {
    expect(read({ width: '55 in', length: '2.5 m', shrinkAlong: '3 %', gap: '0', repeatAcross: '6 cm', fold: 'partly', foldAt: '40 cm' }).cloth)
      .toEqual({ width: 1397, length: 2500, flaws: [], oneWay: false, alike: false, fold: 'partly', gap: 0, foldAt: 400, repeat: { along: 0, across: 60 }, shrinkage: { along: 0.03, across: 0 } });
    expect(readChoice({ ...NO_CHOICE, cloth: { ...NO_CHOICE.cloth, width: '137,5 cm' } }, ',').cloth?.width).toBe(1375);
  });

  test.each([
    ['width', { width: '140' }, '140 has no unit: type 140 cm or 140 in'],
    ['width', { width: '' }, 'Give the usable width'],
    ['width', { width: 'wide' }, '“wide” is not understood'],
    ['shrinkAlong', { shrinkAlong: '3' }, '3 is no percentage'],
    ['remnant', { remnant: [{ along: '0', across: '0' }] }, 'at least 3 corners'],
    ['flaw-0-length', { flaws: [{ along: '1 cm', across: '1 cm', length: '', width: '2 cm' }] }, 'Flaw 1 has no size'],
  ] as const)('%s that is wrong gets a sentence', (field, cloth, sentence) => {
    const { cloth: none, faults } = read(cloth as Partial<Lay['cloth']>);
    expect(none).toBeNull();
    expect(faults).toEqual([{ field, sentence: expect.stringContaining(sentence) as string }]);
  });

  test('a wrong price of another cloth stops no search on this one', () => {
    const { cloth, faults } = read({}, { offers: [{ width: '150 cm', price: 'much' }] });
    expect(cloth?.width).toBe(1400);
    expect(faults.map(({ field }) => field)).toEqual(['offer-0-price']);
  });

  test('a remnant gives the cloth its width and length, and flaws are rectangles', () => {
    const { cloth } = read({ remnant: [{ along: '0', across: '0' }, { along: '90 cm', across: '0' }, { along: '0', across: '50 cm' }], flaws: [{ along: '10 cm', across: '5 cm', length: '2 cm', width: '3 cm' }] });
    expect(cloth).toMatchObject({ width: 500, length: 900, flaws: [[[100, 50], [120, 50], [120, 80], [100, 80]]] });
  });
});

describe('the rows of a sheet', () => {
  const book = (rows: readonly (readonly string[])[]): Book => apply({
    do: 'many', label: '', edits: [{ do: 'renameSheet', sheet: 1, name: 'Pieces' }, { do: 'setCells', sheet: 1, cells: rows.flatMap((texts, row) => texts.map((raw, col) => ({ row, col, cell: raw ? { raw } : null }))) }],
  }, emptyBook('lay')).book;
  const HEAD = ['Piece', 'Shape', 'How many', 'Cut', 'Cloth', 'Length', 'Width'];
  const lay = (which = ''): Lay => ({ ...NO_CHOICE, pieces: '=Pieces!A1:Z500', cloth: { ...NO_CHOICE.cloth, which } });

  test('are the pieces of the chosen cloth, and a row that is none is told with its place', () => {
    const read = piecesOf(lay('main'), book([HEAD, ['Panel', 'rectangle', '2', 'single', 'main', '60 cm', '30 cm'], ['Lining', 'rectangle', '1', 'pair', 'lining', '50 cm', '20 cm'], ['Odd', 'blob', '1']]), new Results());
    expect(read.first.map(({ name, count, cut }) => [name, count, cut])).toEqual([['Panel', 2, 'single']]);
    expect(read.cloths).toEqual(['main', 'lining']);
    expect(read.sentences).toEqual([{ sentence: expect.stringContaining('Odd') as string, place: { sheet: 1, top: 3, bottom: 3, left: 0, right: 0 } }]);
  });

  test('have another print once a figure changes, and the same once it is changed back', () => {
    const print = (length: string) => piecesOf(lay(), book([HEAD, ['Panel', 'rectangle', '2', 'single', 'main', length, '30 cm']]), new Results()).print;
    expect(print('60 cm')).toBe(print('600 mm'));
    expect(print('60 cm')).not.toBe(print('60.1 cm'));
  });

  test('a list whose sheet is gone is told', () => {
    const gone = apply({ do: 'removeSheet', sheet: 1 }, apply({ do: 'addSheet', sheet: { id: 2, name: 'Other', rows: [], widths: {} }, at: 1 }, book([HEAD])).book).book;
    expect(piecesOf(lay(), gone, new Results()).sentences[0]!.sentence).toContain('was removed');
  });
});

describe('what is drawn equals what is said', () => {
  test('the cloth to cut is where the furthest piece ends', () => {
    const drawing = drawingOf(found({ ...CLOTH, length: null }), AS);
    const ends = Math.max(...drawing.pieces.flatMap(({ outline }) => outline.map(([along]) => along)));
    expect(drawing.cutAt).toBe(ends);
    expect(ends).toBe(usedOf(found()));
    expect(lengthUp(usedOf(found()), AS)).toBe('110.0 cm (43 ⅜ in)');
    expect(remarksOn(found({ ...CLOTH, length: null }), { price: 12, step: 200, aim: 'least length', without: [] }, AS)).toContain('In the shop it is 120.0 cm (47 ¼ in), for 14.40.');
  });

  test('cloth to cut is never said to be shorter than it is', () => {
    expect(lengthUp(1100.01, AS)).toBe('110.1 cm (43 ⅜ in)');
    expect(lengthUp(1101.8, { ...AS, system: 'in' })).toBe('43 ½ in (110.2 cm)');
  });

  test('what is left is said, drawn, and free', () => {
    const drawing = drawingOf(found(), AS);
    expect(leftOf(found())).toEqual({ at: [1100, 0], length: 400, width: 800 });
    expect(drawing.left).toMatchObject({ at: [1100, 0], length: 400, width: 800, words: ['40.0 cm left', '80.0 cm'] });
    expect(remarksOn(found(), { price: null, step: 100, aim: 'least length', without: [] }, AS)).toContain('Left in one piece: 40.0 cm (15 ¾ in) along the cloth and 80.0 cm (31 ½ in) across it.');
    expect(leftOf(found({ ...CLOTH, flaws: [[[1300, 300], [1310, 300], [1310, 310], [1300, 310]]] }))).toBeNull();
  });

  test('a rectangle that is not free does not pass', () => {
    const { layout, ...rest } = found();
    expect(faultsOf({ ...rest, layout })).toEqual([]);
    expect(faultsOf({ ...rest, layout: { ...layout, left: { at: [1000, 0], length: 200, width: 400 } } })).toEqual(['What is said to be left is not free.']);
  });

  test('two points of each piece on the plan lie on its outline, measured from the selvedge', () => {
    const plan = planOf(found(), AS, 'Dress', [], { title: '', person: '', date: '' });
    expect(plan.rows.map(({ order, name, a, b }) => [order, name, a, b])).toEqual([
      [1, 'Front', ['0.0 cm', '0.0 cm'], ['60.0 cm', '30.0 cm']],
      [2, 'Back', ['0.0 cm', '30.0 cm'], ['50.0 cm', '50.0 cm']],
      [3, 'Back', ['60.0 cm', '0.0 cm'], ['110.0 cm', '20.0 cm']],
    ]);
    const folded = planOf({ ...found(), cloth: { ...CLOTH, fold: 'lengthwise', width: 1600 } }, AS, 'Dress', [], { title: '', person: '', date: '' });
    expect(folded.rows[0]!.a).toEqual(['0.0 cm', '80.0 cm']);
  });

  test('the SVG file is as large as the cloth, in mm, and keeps names harmless', () => {
    const text = svgOf({ ...found(), names: ['<b> & "x"', 'Back'] }, AS, 'A & B');
    expect(text).toContain('<svg xmlns="http://www.w3.org/2000/svg" width="1530mm" height="830mm" viewBox="-15 -15 1530 830">');
    expect(text).toContain('d="M0 800L600 800L600 500L0 500Z"');
    expect(text).not.toMatch(/<b>|& B/);
  });

  test('how it stands, with the tries it took', () => {
    const asked = { most: 3 } as never;
    expect(standingOf({ standing: 'looking', found: found(), asked }, 12_300, AS)).toBe('Found in 2.0 million tries; still looking, 12 s.');
    expect(standingOf({ standing: 'done', found: { ...found(), weighed: 0.5 }, asked }, 0, AS)).toBe('Found in 500,000 tries, looking briefly.');
    expect(standingOf({ standing: 'done', found: null, asked }, 0, AS)).toBe('Nothing was found.');
    expect(inHerUnits('“Front” needs 1479.4 mm across', AS)).toBe('“Front” needs 147.9 cm (58 ¼ in) across');
  });
});

describe('by hand', () => {
  test('what is wrong is told of both pieces, as the whole check tells it, and gone when it is undone', () => {
    const hand = new HandLay(found());
    hand.begin();
    hand.move(2, [-100, 0]);
    hand.end();
    expect([...hand.wrongs.keys()].sort()).toEqual([0, 2]);
    expect(hand.wrongs.get(0)).toEqual(['“Front” and “Back” overlap.']);
    expect(layoutFaults(hand.now.layout, hand.now.places, hand.now.cloth)).not.toEqual([]);
    expect(hand.now.layout.length).toBe(1000);
    hand.undo();
    expect(hand.wrongs.size).toBe(0);
    expect(hand.now.layout).toEqual(found().layout);
    expect([hand.changed, hand.canUndo]).toEqual([false, false]);
  });

  test('outside, and beyond the length at hand', () => {
    const hand = new HandLay(found());
    hand.move(1, [0, 400]);
    expect(hand.wrongs.get(1)).toEqual(['“Back” sticks out of the cloth.']);
    hand.move(1, [0, -400]);
    expect(hand.wrongs.size).toBe(0);
    hand.move(2, [600, 0]);
    expect(hand.wrongs.get(2)).toEqual(['“Back” reaches beyond the length at hand.']);
  });

  test('a piece turns about its middle through its allowed ways only', () => {
    const hand = new HandLay(found());
    expect([hand.mayTurn(0), hand.mayTurn(1)]).toEqual([true, false]);
    hand.turn(0);
    expect(hand.now.layout.laid[0]).toMatchObject({ way: { turn: 180 }, at: [600, 300] });
    hand.turn(0);
    expect(hand.now.layout.laid[0]).toMatchObject({ way: { turn: 0 }, at: [0, 0] });
  });

  test('a piece on the fold stays on it', () => {
    const pieces: readonly Piece[] = [{ ...PIECES[0]!, cut: 'fold', turns: [0, 180] }];
    const cloth: Cloth = { ...CLOTH, fold: 'lengthwise' };
    const places = placesOf(pieces, cloth);
    const hand = new HandLay({ ...found(cloth), names: ['Front'], places, layout: { laid: [{ place: 0, way: places[0]!.ways[0]!, at: [0, 0] }], length: 600 } });
    hand.move(0, [50, 80]);
    expect(hand.now.layout.laid[0]!.at).toEqual([50, 0]);
    hand.turn(0);
    expect(faultsOf(hand.now)).toEqual([]);
  });
});

test('a layout is kept whole and comes back as it was', () => {
  const lay: Lay = { ...NO_CHOICE, name: 'Dress', kept: keptFrom(found()) };
  const record = tidyRecord('lay', '1', JSON.parse(JSON.stringify(lay)));
  expect(record?.data).toEqual(lay);
  const back = foundKept((record!.data as Lay).kept!);
  expect(back).toEqual({ ...found(), weighed: null });
  expect(faultsOf(back)).toEqual([]);
});
