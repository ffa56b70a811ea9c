/** LAY.LENGTH, LAY.LEFT and LAY.DENSITY: a figure that may be out of date never looks fresh. */
import { expect, it } from 'vitest';
import { readPieces, layPrint, type PieceCell } from '../../../src/lay/shapes/index.ts';
import { recordCalled, type Lay, type Shape } from '../../../src/workbook/index.ts';
import { Desk, type Cells } from './desk.ts';

const PIECES: Cells = {
  A1: 'Piece', B1: 'Shape', C1: 'Length', D1: 'Width', E1: 'How many', F1: 'Allowance', G1: 'Cloth', H1: 'Remark',
  A2: 'Front', B2: 'rectangle', C2: "='Skirt'!B1 + 2 cm", D2: '50 cm', E2: '2', F2: '1.5 cm',
  A3: 'Pocket', B3: 'Patch', F3: 'included',
  A4: 'Lining', B4: 'rectangle', C4: '60 cm', D4: '50 cm', F4: 'included', G4: 'lining',
};

const patch: Shape = { name: 'Patch', points: [{ x: 0, y: 0 }, { x: 120, y: 0 }, { x: 120, y: 140 }, { x: 0, y: 150 }], grain: [{ x: 60, y: 10 }, { x: 60, y: 130 }], marks: [], from: 'board', file: '', error: 0.5 };

/** The print of the pieces as the page reads them from its results. */
function printOf(desk: Desk, lay: Pick<Lay, 'aim' | 'cloth'>): string {
  const rows = Array.from({ length: 6 }, (_, row) => Array.from({ length: 8 }, (__, col): PieceCell => desk.results.at(desk.book.sheets[1]!.id, row, col)));
  return layPrint({ which: lay.cloth.which, second: false }, readPieces(rows, [patch]).pieces, []);
}

function kept(desk: Desk, more: Partial<Lay> = {}, length = 2140): Lay {
  const cloth = { which: 'main', width: '140 cm', length: '', gap: '', shrinkAlong: '', shrinkAcross: '', repeatAlong: '', repeatAcross: '', fold: 'open', foldAt: '', oneWay: false, alike: false, remnant: [], flaws: [] } as const;
  const lay = { name: 'Dress', pieces: '=Pieces!A1:H50', second: '', cloth, aim: 'least length', leftWidth: '', price: '', shop: '', offers: [], ...more } as const;
  return {
    ...lay,
    kept: {
      print: printOf(desk, lay), names: ['Front'], first: 1, places: [], length, density: 0.86,
      cloth: { width: 1400, length: 2500, flaws: [], oneWay: false, alike: false, fold: 'open', gap: 0 },
      layout: { laid: [], length },
    },
  };
}

function open(): Desk {
  const desk = new Desk(['Skirt', { B1: '60 cm', A5: '=LAY.LENGTH("dress")', A6: '=CLOTH.BUY(A5, 3 %, 10 cm)', A7: '=LAY.DENSITY("Dress")', A8: '=LAY.LEFT("Dress")', A9: '=LAY.LEFT(B9, "area")', B9: 'Dress' }], ['Pieces', PIECES]);
  desk.edit({ do: 'setRecord', kind: 'shape', id: 's', data: patch });
  desk.edit({ do: 'setRecord', kind: 'lay', id: 'l', data: kept(desk) });
  return desk;
}

const OLDER = 'The layout “Dress”, 214 cm long, is older than its pieces: lay them again and keep the layout.';

it('reads a kept layout by its name, and Cloth to buy takes it', () => {
  const desk = open();
  expect(['A5', 'A6', 'A7', 'A8', 'A9'].map((cell) => desk.show(cell))).toEqual(['214 cm', '230 cm', '86 %', '36 cm', '5040 cm²']);
  // Shown in the unit in which the width of its cloth was typed.
  const { cloth, ...lay } = kept(desk);
  desk.edit({ do: 'setRecord', kind: 'lay', id: 'l', data: { ...lay, cloth: { ...cloth, width: '55 in' } } });
  expect(desk.result('A5')).toEqual({ kind: 'quantity', value: 2140, unit: 'in' });
});

it('says so when a piece changes, by any figure of another sheet, and is fresh again when it is as it was', () => {
  const desk = open();
  desk.type({ B1: '61 cm' });
  expect(desk.show('A5')).toBe(`! ${OLDER}`);
  expect(desk.show('A6')).toContain('older than its pieces');
  desk.type({ B1: '600 mm' });
  expect(desk.show('A5')).toBe('214 cm');
});

it('a remark, another cloth’s pieces and a row that moves change nothing', () => {
  const desk = open();
  desk.type({ H2: 'cut last', C4: '70 cm' }, 1);
  expect(desk.show('A5')).toBe('214 cm');
  desk.edit({ do: 'insertRows', sheet: desk.book.sheets[1]!.id, at: 0, count: 2 });
  desk.edit({ do: 'renameSheet', sheet: desk.book.sheets[1]!.id, name: 'My pieces' });
  expect(recordCalled(desk.book, 'lay', 'l')?.pieces).toBe("='My pieces'!A3:H52");
  expect(desk.show('A5')).toBe('214 cm');
  desk.type({ D4: '51 cm' }, 1);
  expect(desk.show('A5')).toBe(`! ${OLDER}`);
});

it('says so when a drawn shape changes', () => {
  const desk = open();
  desk.edit({ do: 'setRecord', kind: 'shape', id: 's', data: { ...patch, points: patch.points.with(3, { x: 0, y: 152 }) } });
  expect(desk.show('A5')).toBe(`! ${OLDER}`);
  desk.edit({ do: 'setRecord', kind: 'shape', id: 's', data: patch });
  expect(desk.show('A5')).toBe('214 cm');
});

it('says so in a trial of other figures, and nowhere else', () => {
  const desk = open();
  const { results } = desk.engine.tryOut([{ label: 'as it is', values: [] }, { label: 'longer', values: [{ cell: desk.cell('B1'), raw: '64 cm' }] }], [desk.cell('A5')]);
  expect(results.map(([result]) => result!.kind)).toEqual(['quantity', 'error']);
  desk.type({ C1: '1' });
  expect(desk.show('A5')).toBe('214 cm');
  expect(desk.engine.dependents([desk.cell('B1')]).map(({ row }) => row)).toContain(4);
});

it('follows a layout that is kept anew, goes, or loses its list', () => {
  const desk = open();
  desk.edit({ do: 'setRecord', kind: 'lay', id: 'l', data: kept(desk, {}, 2030) });
  expect(desk.show('A5')).toBe('203 cm');
  desk.edit({ do: 'removeSheet', sheet: desk.book.sheets[1]!.id });
  expect(desk.show('A5')).toBe('! The pieces of the layout “Dress” can no longer be read, so that nobody knows whether it still fits: show the lay its list of pieces again.');
  desk.edit({ do: 'setRecord', kind: 'lay', id: 'l', data: null });
  expect(desk.show('A5')).toBe('! LAY.LENGTH found no kept layout called “dress”: keep one on the lay first.');
  desk.edit({ do: 'setRecord', kind: 'lay', id: 'm', data: { ...kept(open(), { name: 'Camisole' }) } });
  expect(desk.show('A5')).toBe('! LAY.LENGTH found no kept layout called “dress”: there is “Camisole”.');
});

it('a workbook that is opened with its layouts reads them at once', () => {
  const desk = open();
  const again = desk.show('A5');
  desk.open();
  expect(desk.show('A5')).toBe(again);
  desk.type({ B1: '61 cm' });
  desk.open();
  expect(desk.show('A5')).toBe(`! ${OLDER}`);
});

it('has examples that work, and a working', () => {
  const desk = open();
  expect(desk.engine.example('=LAY.LENGTH("dress")').results[0]![0]).toEqual({ kind: 'quantity', value: 1800, unit: 'cm' });
  expect(desk.engine.example('=LAY.LEFT("dress", "area")').results[0]![0]).toEqual({ kind: 'quantity', value: 720_000, unit: 'cm2' });
  expect(desk.engine.working(desk.cell('A5')).call?.steps.map(({ words }) => words)).toEqual(['cloth to cut for the kept layout']);
  expect(desk.engine.working(desk.cell('A5')).call?.given[0]).toMatchObject({ name: 'layout', value: { kind: 'text', text: 'dress' } });
});

it('a layout of the pieces that need its own length goes round in a circle', () => {
  const desk = open();
  desk.type({ C4: '=Skirt!A5', G4: 'main' }, 1);
  expect(desk.show('A5')).toMatch(/^! Goes round in a circle/);
});
