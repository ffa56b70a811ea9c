/** The working of plain formulas: each part with its value, from the engine itself. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { WorkingPart } from '../../../src/reckoning/protocol.ts';
import { MOST_PARTS } from '../../../workers/reckon/tree.ts';
import { Desk, said, steady } from './desk.ts';
import type { Cells } from './desk.ts';

const CELLS: Cells = { A1: '10 in', A2: '3 cm', A3: '4', A4: '12 1/2 in', A5: 'words', B1: '=A1*2' };

function lines(part: WorkingPart, depth = 0): string[] {
  const value = part.unused ? 'not used' : part.value === null ? '—' : said(part.value);
  return [`${' '.repeat(depth)}${part.text} = ${value}`, ...part.parts.flatMap((each) => lines(each, depth + 1))];
}

function treeOf(formula: string): string[] | undefined {
  const desk = new Desk({ ...CELLS, Z1: formula });
  const { tree } = desk.engine.working(desk.cell('Z1'));
  return tree && lines(tree);
}

describe('a formula as a tree', () => {
  test.each([
    ['=A1-2 in+B1', ['A1 − 2 in + B1 = 28 in', ' A1 = 10 in', ' 2 in = 2 in', ' B1 = 20 in']],
    ['=A1*(A4-A1)/A1', ['A1 × (A4 − A1) ÷ A1 = 2.5 in', ' A1 = 10 in', ' A4 − A1 = 2.5 in', '  A4 = 12.5 in', '  A1 = 10 in', ' A1 = 10 in']],
    ['=IF(A1>5 in;A1;A2)', ['IF(A1 > 5 in; A1; A2) = 10 in', ' A1 > 5 in = TRUE', '  A1 = 10 in', '  5 in = 5 in', ' A1 = 10 in', ' A2 = not used']],
    ['=SUM(A1:A2)*2', ['SUM(A1:A2) × 2 = 22.362204724409448 in', ' SUM(A1:A2) = 11.181102362204724 in', '  A1:A2 = —']],
    ['=waist+2 1/4 in', ['waist + 2 ¼ in = 12.25 in', ' waist = 10 in', ' 2 ¼ in = 2.25 in']],
    ['=-A1', ['−A1 = -10 in', ' A1 = 10 in']],
    ['=A1+2', ['A1 + 2 = ! 2 has no unit: write 2 in or 2 cm.', ' A1 = 10 in']],
    ['=IFERROR(A1+2;A1)', ['IFERROR(A1 + 2; A1) = 10 in', ' A1 + 2 = ! 2 has no unit: write 2 in or 2 cm.', '  A1 = 10 in', ' A1 = 10 in']],
    ['=CHOOSE(2;A1;A2)', ['CHOOSE(2; A1; A2) = 3 cm', ' A1 = not used', ' A2 = 3 cm']],
    ['="a"&A5', ['“a” & A5 = awords', ' A5 = words']],
  ])('%s', (formula, expected) => {
    const desk = new Desk({ ...CELLS });
    desk.name('waist', 'A1');
    desk.type({ Z1: formula });
    expect(lines(desk.engine.working(desk.cell('Z1')).tree!).map((line) => line.replace(/(\.\d{10})\d+/, '$1'))).toEqual(expected.map((line) => line.replace(/(\.\d{10})\d+/, '$1')));
  });

  test('of nothing but a figure or a cell there is none', () => expect(['=2 in', '=A1', '=(2+3)'].map(treeOf)).toEqual([undefined, undefined, undefined]));

  test('of chance there is none, since it would be of another figure', () => {
    expect(treeOf('=RAND()*A1')).toBeUndefined();
    expect(treeOf('=RAND()<2')).toBeUndefined();
  });

  test('is cut where it is too long to be read', () => {
    const desk = new Desk({ A1: '1 in', Z1: `=${Array.from({ length: 400 }, () => 'A1').join('+')}` });
    const { tree, treeCut, result } = desk.engine.working(desk.cell('Z1'));
    expect([lines(tree!).length <= MOST_PARTS + 1, treeCut, steady(said(result))]).toEqual([true, true, '400 in']);
  });

  test('calls within it have their steps and what they warn of; those not used have not', () => {
    const desk = new Desk({ A1: '40 in', A2: '38 in', Z1: '=IF(A1>A2;EASE(A1;A2);EASE(A2;A1))*2+EASE(A1;A1)' });
    const { call, inner } = desk.engine.working(desk.cell('Z1'));
    expect([call, inner!.map(({ name, steps }) => [name, steady(said(steps.at(-1)!.value))])]).toEqual([undefined, [['EASE', '2 in'], ['EASE', '0 in']]]);
    const warned = new Desk({ A1: '10 in', A2: '12 in', Z1: '=IF(TRUE;EASE(A1;A2);0 in)', Z2: '=EASE(A1;A2)' });
    const alone = warned.engine.working(warned.cell('Z2')).call!.cautions;
    expect(warned.engine.working(warned.cell('Z1')).inner![0]!.cautions).toEqual(alone);
  });

  test('its root is what the cell shows, and a sum is the sum of its parts, for any formula', () => {
    const figure = fc.constantFrom('A1', 'A2', 'A3', 'A4', 'B1', '2', '2.5 cm', '1 1/4 in', 'A9');
    const formula = fc.letrec<{ sum: string }>((tie) => ({
      sum: fc.oneof({ maxDepth: 4 }, figure,
        fc.tuple(tie('sum'), fc.constantFrom('+', '-', '*', '/', '>', '='), tie('sum')).map((each) => each.join('')),
        tie('sum').map((each) => `(${each})`), tie('sum').map((each) => `-${each}`),
        fc.tuple(fc.constantFrom('SUM', 'MAX', 'EASE', 'IFERROR', 'MROUND'), tie('sum'), tie('sum')).map(([name, a, b]) => `${name}(${a};${b})`),
        fc.tuple(tie('sum'), tie('sum'), tie('sum')).map((each) => `IF(${each.join(';')})`)),
    })).sum;
    const desk = new Desk(CELLS);
    fc.assert(fc.property(formula, (text) => {
      desk.type({ Z1: `=${text}` });
      const { result, tree } = desk.engine.working(desk.cell('Z1'));
      expect(result).toEqual(desk.result('Z1'));
      if (!tree) return;
      expect(tree.value).toEqual(result);
      const rowOf = (part: WorkingPart): void => {
        // Each part is worked out alone, in a cell of its own, to the same value.
        if (!part.unused && part.value !== null && !part.text.includes('…') && part.value.kind !== 'error' && part.value.kind !== 'empty') {
          const alone = part.text.replaceAll('−', '-').replaceAll('×', '*').replaceAll('÷', '/').replaceAll('¼', '1/4');
          expect(said(new Desk({ ...CELLS, Z2: `=${alone}` }).result('Z2')), `${part.text} in ${text}`).toBe(said(part.value));
        }
        part.parts.forEach(rowOf);
      };
      if (tree.parts.length < 4) rowOf(tree);
    }), { numRuns: 150 });
  }, 60_000);
});
