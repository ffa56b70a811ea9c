import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { HyperFormula } from 'hyperformula';
import { isFault } from '../../../src/quantities/index.ts';
import { cellName, engineSheet, MAX_ROWS, rewriteReferences, shiftCopy, toEngine } from '../../../src/formula/index.ts';
import type { ChangeOfReferences } from '../../../src/formula/index.ts';
import { newEngine } from './engine.ts';
import { formulaLike } from './texts.ts';

const skirt = { id: 0, name: 'Skirt' };
const hem = { id: 1, name: 'My hem' };
const sheets = [skirt, hem];

function after(formula: string, change: ChangeOfReferences, own = skirt): string {
  return rewriteReferences(formula, own, sheets, change);
}

/** A row or column that changed and came back is written in the usual way: no leading zeros, letters of one size. */
function plain(formula: string): string {
  return formula.toUpperCase().replace(/(?<=[A-Z$:\s])0+(?=\d)/g, '');
}

const insertRows = (at: number, count = 1, sheet = 0): ChangeOfReferences => ({ do: 'insertRows', sheet, at, count });
const removeRows = (at: number, count = 1, sheet = 0): ChangeOfReferences => ({ do: 'removeRows', sheet, at, count });
const insertColumns = (at: number, count = 1, sheet = 0): ChangeOfReferences => ({ do: 'insertColumns', sheet, at, count });
const removeColumns = (at: number, count = 1, sheet = 0): ChangeOfReferences => ({ do: 'removeColumns', sheet, at, count });

describe('references follow inserted and removed rows and columns', () => {
  it.each<[string, ChangeOfReferences, string]>([
    ['=A1+$A$2+a3', insertRows(1), '=A1+$A$3+a4'],
    ['=SUM(B2:B5)', insertRows(1), '=SUM(B3:B6)'],
    ['=SUM(B2:B5)', insertRows(2, 3), '=SUM(B2:B8)'],
    ['=SUM(B2:B5)', insertRows(4), '=SUM(B2:B6)'],
    ['=SUM(B2:B5)', insertRows(5), '=SUM(B2:B5)'],
    ['=SUM( $B5 : b$2 )', insertRows(2), '=SUM( $B6 : b$2 )'],
    ['=SUM(B:B)+SUM(3:5)', insertRows(3), '=SUM(B:B)+SUM(3:6)'],
    ['=SUM(B:C)+SUM(3:5)', insertColumns(2), '=SUM(B:D)+SUM(3:5)'],
    ['=SUM(B:C)', insertColumns(0), '=SUM(C:D)'],
    ['=SUM($B:$C)', removeColumns(1), '=SUM($B:$B)'],
    ['=SUM(B:C)', removeColumns(1, 2), '=SUM(#REF!)'],
    ['=A2*2 1/4 in', removeRows(0), '=A1*2 1/4 in'],
    ['=A2+A4', removeRows(1), '=#REF!+A3'],
    ['=SUM(A2:A6)', removeRows(3, 9), '=SUM(A2:A3)'],
    ['=SUM(A2:A6)', removeRows(0, 3), '=SUM(A1:A3)'],
    ['=SUM(A2:A6)', removeRows(1, 5), '=SUM(#REF!)'],
    ['=SUM(Z1:AA1)', insertColumns(26), '=SUM(Z1:AB1)'],
    ['=Skirt!A5+\'My hem\'!A5', insertRows(0), '=Skirt!A6+\'My hem\'!A5'],
    ['=Skirt!A5+\'my HEM\'!A5:B7', insertRows(5, 2, 1), '=Skirt!A5+\'my HEM\'!A5:B9'],
    ['="A5"&A5', insertRows(0), '="A5"&A6'],
    ['=5 cm2+cm2', insertRows(0), '=5 cm2+cm3'],
    ['=LOG10(A10)', insertRows(0), '=LOG10(A11)'],
    ['=bust 2+A2', insertRows(0), '=bust 2+A3'],
    ['=Skirt!A1:Skirt!A3', insertRows(1), '=Skirt!A1:Skirt!A4'],
    [`=A${MAX_ROWS}`, insertRows(0), '=#REF!'],
    [`=SUM(A5:A${MAX_ROWS})`, insertRows(5), `=SUM(A5:A${MAX_ROWS})`],
    ['A5 is where the hem goes', insertRows(0), 'A5 is where the hem goes'],
  ])('%s', (formula, change, expected) => {
    expect(after(formula, change)).toBe(expected);
  });

  it('gives the same text when nothing changes', () => {
    expect(after('=A1+SUM(B2:B5)', insertRows(5))).toBe('=A1+SUM(B2:B5)');
    expect(after('=SUM(A:A;#REF!)', insertRows(0))).toBe('=SUM(A:A;#REF!)');
    expect(after('=A1', insertRows(0, 1, 1))).toBe('=A1');
  });

  it('never throws, and inserting and removing at one place changes nothing', () => {
    const place = fc.nat({ max: 12 });
    const count = fc.integer({ min: 1, max: 4 });
    fc.assert(fc.property(formulaLike, place, count, (formula, at, n) => {
      // What reaches to the last row or column is cut there, so it is left out.
      fc.pre(!formula.includes('ALL1000000'));
      expect(plain(after(after(formula, insertRows(at, n)), removeRows(at, n))), formula).toBe(plain(formula));
      expect(plain(after(after(formula, insertColumns(at, n)), removeColumns(at, n))), formula).toBe(plain(formula));
    }), { numRuns: 2000 });
  });
});

describe('references follow moved cells', () => {
  const move = (top: number, left: number, bottom: number, right: number, row: number, col: number, toSheet = 0, formulaMoves = false): ChangeOfReferences => ({
    do: 'moveCells', from: { sheet: 0, top, left, bottom, right }, to: { sheet: toSheet, row, col }, formulaMoves,
  });

  it.each<[string, ChangeOfReferences, string]>([
    ['=A1+$B$2+C3', move(0, 0, 1, 1, 4, 3), '=D5+$E$6+C3'],
    ['=SUM(A1:B2)', move(0, 0, 1, 1, 4, 3), '=SUM(D5:E6)'],
    ['=SUM(A1:B3)', move(0, 0, 1, 1, 4, 3), '=SUM(A1:B3)'],
    ['=SUM(A:A)+SUM(1:1)', move(0, 0, 1, 1, 4, 3), '=SUM(A:A)+SUM(1:1)'],
    // What points at the cells that were written over still points at that place, as the engine has it.
    ['=D5', move(0, 0, 1, 1, 4, 3), '=D5'],
    ['=A1+C3', move(0, 0, 1, 1, 4, 3, 1), "='My hem'!D5+C3"],
    ['=SUM(A1:B2)', move(0, 0, 1, 1, 4, 3, 1), "=SUM('My hem'!D5:E6)"],
    ['=Skirt!A1', move(0, 0, 1, 1, 4, 3, 1), "='My hem'!D5"],
    ['=A1+C3+\'My hem\'!C4', move(0, 0, 1, 1, 4, 3, 1, true), '=D5+Skirt!C3+\'My hem\'!C4'],
    ['=A1+B:B', move(0, 0, 1, 1, 4, 3, 1, true), '=D5+Skirt!B:B'],
    ['=B2', move(1, 1, 1, 1, MAX_ROWS, 0), '=#REF!'],
  ])('%s', (formula, change, expected) => {
    expect(after(formula, change)).toBe(expected);
  });

  it('follows from another sheet', () => {
    expect(after('=Skirt!A1+A1', move(0, 0, 0, 0, 4, 3), hem)).toBe('=Skirt!D5+A1');
    expect(after('=Skirt!A1+A1', move(0, 0, 0, 0, 4, 3, 1), hem)).toBe("='My hem'!D5+A1");
  });
});

describe('sheets and names', () => {
  it('follows a renamed sheet, with quotes when they are needed', () => {
    const rename = (name: string): ChangeOfReferences => ({ do: 'renameSheet', sheet: 1, name });
    expect(after("='my hem'!A1+Skirt!A1", rename('Hem'))).toBe('=Hem!A1+Skirt!A1');
    expect(after("='My hem'!$a$1:b2", rename("Anna's"))).toBe("='Anna''s'!$a$1:b2");
    expect(after("='My hem'!A1:'My hem'!B2", rename('Hem'))).toBe('=Hem!A1:Hem!B2');
    expect(after("='My hem'!B:C", rename('A1'))).toBe("='A1'!B:C");
    expect(after('="My hem!A1"', rename('Hem'))).toBe('="My hem!A1"');
  });

  it('marks what pointed at a removed sheet', () => {
    const remove: ChangeOfReferences = { do: 'removeSheet', sheet: 1 };
    expect(after("=SUM('My hem'!A1:B2)+A1", remove)).toBe('=SUM(#REF!)+A1');
    expect(after('=Other!A1', remove)).toBe('=Other!A1');
  });

  it('follows a renamed name, but not inside another', () => {
    const rename: ChangeOfReferences = { do: 'renameName', from: 'bust', to: 'high bust', names: ['bust', 'full bust'] };
    expect(after('=Bust+full bust*BUST()+"bust"', rename)).toBe('=high bust+full bust*BUST()+"bust"');
  });
});

describe('copies', () => {
  it.each([
    ['=A1+$A1+A$1+$A$1', 1, 2, '=C2+$A2+C$1+$A$1'],
    ['=SUM(B:$C)+SUM(3:$5)', 1, 1, '=SUM(C:$C)+SUM(4:$5)'],
    ['=Skirt!a1', 1, 1, '=Skirt!b2'],
    ['=A1+B2', -1, 0, '=#REF!+B1'],
    ['=SUM(A1:B2)', 0, -1, '=SUM(#REF!)'],
    ['=2 1/4 in', 3, 3, '=2 1/4 in'],
    ['A1', 1, 1, 'A1'],
  ])('%s', (formula, dRow, dCol, expected) => {
    expect(shiftCopy(formula, dRow, dCol)).toBe(expected);
  });

  it('comes back the way it went', () => {
    fc.assert(fc.property(formulaLike, fc.nat({ max: 50 }), fc.nat({ max: 50 }), (formula, dRow, dCol) => {
      fc.pre(!formula.includes('ALL1000000'));
      expect(plain(shiftCopy(shiftCopy(formula, dRow, dCol), -dRow, -dCol)), formula).toBe(plain(formula));
    }), { numRuns: 2000 });
  });
});

/** Formulas by cell, changed as the workbook changes them: the texts by `rewriteReferences`, the places by hand. */
interface Placed {
  readonly sheet: number;
  readonly row: number;
  readonly col: number;
  readonly formula: string;
}

const SIZE = 9;

const change = fc.oneof(
  fc.record({
    do: fc.constantFrom('insertRows' as const, 'removeRows' as const, 'insertColumns' as const, 'removeColumns' as const),
    sheet: fc.nat({ max: 1 }), at: fc.nat({ max: SIZE }), count: fc.integer({ min: 1, max: 3 }),
  }),
  fc.record({
    do: fc.constant('moveCells' as const),
    from: fc.record({ sheet: fc.nat({ max: 1 }), top: fc.nat({ max: SIZE }), left: fc.nat({ max: SIZE }), height: fc.nat({ max: 3 }), width: fc.nat({ max: 3 }) }),
    to: fc.record({ row: fc.nat({ max: SIZE }), col: fc.nat({ max: SIZE }) }),
    // A move by nothing makes the engine lose its own nodes, and nobody asks for one.
  }).filter(({ from, to }) => from.top !== to.row || from.left !== to.col).map(({ from, to }): ChangeOfReferences => ({
    do: 'moveCells',
    from: { sheet: from.sheet, top: from.top, left: from.left, bottom: from.top + from.height, right: from.left + from.width },
    to: { sheet: from.sheet, ...to },
  })),
);

const corner = fc.tuple(fc.boolean(), fc.nat({ max: SIZE }), fc.boolean(), fc.nat({ max: SIZE }))
  .map(([c, col, r, row]) => cellName(row, col).replace(/([A-Z]+)(\d+)/, `${c ? '$$' : ''}$1${r ? '$$' : ''}$2`));
const letters = fc.tuple(fc.constantFrom('', '$'), fc.nat({ max: SIZE })).map(([d, col]) => d + cellName(0, col).slice(0, -1));
const digits = fc.tuple(fc.constantFrom('', '$'), fc.integer({ min: 1, max: SIZE + 1 })).map((p) => p.join(''));
const range = fc.oneof(corner, fc.tuple(corner, corner).map((p) => p.join(':')), fc.tuple(letters, letters).map((p) => p.join(':')), fc.tuple(digits, digits).map((p) => p.join(':')));
const reference = fc.tuple(fc.constantFrom('', '', 'Skirt!', "'My hem'!"), range).map((p) => p.join(''));
const formulaOf = fc.array(reference, { minLength: 1, maxLength: 3 }).map((refs) => `=${refs.map((r) => `ROWS(${r})`).join('+')}`);
const placed = fc.uniqueArray(
  fc.record({ sheet: fc.nat({ max: 1 }), row: fc.nat({ max: SIZE }), col: fc.nat({ max: SIZE }), formula: formulaOf }),
  { minLength: 3, maxLength: 8, selector: ({ sheet, row, col }) => `${sheet} ${row} ${col}` },
);

function engineText(formula: string, own: number): string {
  const result = toEngine(formula, { sheets, ownSheet: own, names: [] });
  if (isFault(result)) throw new Error(`${formula}: ${result.sentence}`);
  return result.text;
}

/** Where a cell is after the change, or `undefined` when it is gone. */
function carried(cell: Placed, done: ChangeOfReferences): Placed | undefined {
  if (done.do === 'moveCells') {
    const { from, to } = done;
    if (cell.sheet !== from.sheet) return cell;
    const dRow = to.row - from.top;
    const dCol = to.col - from.left;
    const inside = (row: number, col: number): boolean => row >= from.top && row <= from.bottom && col >= from.left && col <= from.right;
    if (inside(cell.row, cell.col)) return { ...cell, row: cell.row + dRow, col: cell.col + dCol };
    return inside(cell.row - dRow, cell.col - dCol) ? undefined : cell;
  }
  if (!('count' in done) || cell.sheet !== done.sheet) return cell;
  const axis = done.do.endsWith('Rows') ? 'row' : 'col';
  if (cell[axis] < done.at) return cell;
  if (done.do.startsWith('insert')) return { ...cell, [axis]: cell[axis] + done.count };
  return cell[axis] < done.at + done.count ? undefined : { ...cell, [axis]: cell[axis] - done.count };
}

function doInEngine(engine: HyperFormula, done: ChangeOfReferences, sheetOf: (id: number) => number): void {
  if (done.do === 'moveCells') {
    const { top, left, bottom, right } = done.from;
    const sheet = sheetOf(done.from.sheet);
    engine.moveCells({ start: { sheet, row: top, col: left }, end: { sheet, row: bottom, col: right } }, { ...done.to, sheet: sheetOf(done.to.sheet) });
  } else if (done.do === 'insertRows') engine.addRows(sheetOf(done.sheet), [done.at, done.count]);
  else if (done.do === 'removeRows') engine.removeRows(sheetOf(done.sheet), [done.at, done.count]);
  else if (done.do === 'insertColumns') engine.addColumns(sheetOf(done.sheet), [done.at, done.count]);
  else if (done.do === 'removeColumns') engine.removeColumns(sheetOf(done.sheet), [done.at, done.count]);
}

describe('the engine moves its own references to the same cells', () => {
  it('through random inserts, removals and moves', () => {
    let changes = 0;
    let gone = 0;
    const engine = newEngine();
    fc.assert(fc.property(placed, fc.array(change, { minLength: 1, maxLength: 6 }), (start, steps) => {
      const inEngine = new Map(sheets.map(({ id }) => {
        if (engine.doesSheetExist(engineSheet(id))) engine.removeSheet(engine.getSheetId(engineSheet(id)) ?? 0);
        return [id, engine.getSheetId(engine.addSheet(engineSheet(id))) ?? 0];
      }));
      const at = ({ sheet, row, col }: { sheet: number; row: number; col: number }): { sheet: number; row: number; col: number } => ({ sheet: inEngine.get(sheet) ?? 0, row, col });
      // The engine leaves changes beyond its last used cell out, so the sheets are made big enough for all of them.
      for (const { id } of sheets) engine.setCellContents(at({ sheet: id, row: 40, col: 40 }), 1);
      let cells: readonly Placed[] = start;
      for (const cell of cells) engine.setCellContents(at(cell), engineText(cell.formula, cell.sheet));
      for (const step of steps) {
        doInEngine(engine, step, (sheet) => inEngine.get(sheet) ?? 0);
        cells = cells.flatMap((cell) => {
          const own = cell.sheet === 0 ? skirt : hem;
          const next = carried(cell, step);
          return next === undefined ? [] : [{ ...next, formula: rewriteReferences(cell.formula, own, sheets, step) }];
        });
        changes += 1;
        for (const cell of cells) {
          const theirs = engine.getCellFormula(at(cell)) ?? '';
          // Both put the ends in order; where two ends meet, which of them has the `$` is chance.
          const inOrder = (text: string): string => engine.normalizeFormula(text).replaceAll('$', '');
          expect(inOrder(engineText(cell.formula, cell.sheet)), `${cell.formula} after ${JSON.stringify(steps)}`).toBe(inOrder(theirs));
          if (theirs.includes('#REF!')) gone += 1;
        }
      }
    }), { numRuns: 150 });
    expect(changes).toBeGreaterThan(300);
    expect(gone).toBeGreaterThan(20);
  }, 60_000);
});
