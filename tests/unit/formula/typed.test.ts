/** Decimal commas between what is typed, what is kept and what is shown. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { asKept, asShown, toEngine } from '../../../src/formula/index.ts';
import type { DecimalMark, Manner } from '../../../src/formula/index.ts';

const COUNTS: Readonly<Record<string, { least: number; most: number }>> = {
  ABS: { least: 1, most: 1 }, ROUND: { least: 1, most: 2 }, SUM: { least: 1, most: Infinity }, MOD: { least: 2, most: 2 }, EASE: { least: 2, most: 2 },
};
const manner = (mark: DecimalMark): Manner => ({ mark, names: ['full bust'], countOf: (name) => COUNTS[name] });
const kept = (typed: string, mark: DecimalMark): string => {
  const outcome = asKept(typed, manner(mark));
  return 'formula' in outcome ? outcome.formula : `? ${outcome.piece}: ${outcome.oneNumber} | ${outcome.twoArguments}`;
};

describe('a typed formula as it is kept', () => {
  const cases: readonly (readonly [typed: string, withPoint: string, withComma?: string])[] = [
    ['=ROUND(2,5;1)', '=ROUND(2.5;1)'],
    ['=A1+2,5', '=A1+2.5'],
    ['=2,5 cm*2', '=2.5 cm*2'],
    ['=SUM((2,5);1)', '=SUM((2.5);1)'],
    ['=SUM(1,2)', '=SUM(1,2)', '? 1,2: =SUM(1.2) | =SUM(1;2)'],
    ['=SUM(1, 2)', '=SUM(1, 2)'],
    ['=SUM(A1,B1)', '=SUM(A1,B1)'],
    ['=SUM(1.5,B1)', '=SUM(1.5,B1)'],
    ['=ABS(2,5)', '=ABS(2,5)', '=ABS(2.5)'],
    ['=MOD(7,2)', '=MOD(7,2)'],
    ['=ROUND(2,5)', '=ROUND(2,5)', '? 2,5: =ROUND(2.5) | =ROUND(2;5)'],
    ['=NOSUCH(2,5)', '=NOSUCH(2,5)', '? 2,5: =NOSUCH(2.5) | =NOSUCH(2;5)'],
    ['=SUM(5,5 cm)', '? 5,5 cm: =SUM(5.5 cm) | =SUM(5;5 cm)'],
    ['=EASE(A1,5,5 cm)', '? 5,5 cm: =EASE(A1,5.5 cm) | =EASE(A1,5;5 cm)', '=EASE(A1,5.5 cm)'],
    ['=SUM(1,2;3)', '=SUM(1.2;3)'],
    ['="1,2"&2,5', '="1,2"&2.5'],
    ['={1,2}', '={1,2}', '? 1,2: ={1.2} | ={1;2}'],
    ['=SUM(1,2,3)', '=SUM(1,2,3)'],
    ['5,5 cm', '5,5 cm'],
    ['not, a formula 2,5', 'not, a formula 2,5'],
  ];
  for (const [typed, point, comma = point] of cases) {
    it(typed, () => expect([kept(typed, '.'), kept(typed, ',')]).toEqual([point, comma]));
  }
});

describe('a kept formula as it is shown', () => {
  it('has the workbook’s decimal sign', () => {
    const shown = (formula: string): string => asShown(formula, manner(','));
    expect(shown('=ROUND(2.5;1)')).toBe('=ROUND(2,5;1)');
    expect(shown('=ROUND(2.5,1)')).toBe('=ROUND(2,5;1)');
    expect(shown('=A1+2.5 cm')).toBe('=A1+2,5 cm');
    expect(shown('=ABS(2.5)')).toBe('=ABS(2,5)');
    expect(shown('=SUM(2.5)')).toBe('=SUM(2.5)');
    expect(shown('="2.5"&A1')).toBe('="2.5"&A1');
    expect(shown('2.5 cm')).toBe('2.5 cm');
    expect(asShown('=ROUND(2.5,1)', manner('.'))).toBe('=ROUND(2.5,1)');
  });

  it('means the same when it is typed again, whatever the sign', () => {
    const figure = fc.constantFrom('2', '2.5', '2.05 cm', '3 in', 'A1', 'full bust', '1/4 in', '"1,2"');
    const gap = fc.constantFrom('', ' ');
    const formula = fc.letrec<{ sum: string; part: string }>((tie) => ({
      part: fc.oneof({ maxDepth: 3 }, figure, fc.tuple(fc.constantFrom('ABS', 'ROUND', 'SUM', 'MOD', 'EASE'), fc.array(tie('sum'), { minLength: 1, maxLength: 3 }), fc.constantFrom('; ', ';', ', ')).map(([name, args, by]) => `${name}(${args.join(by)})`), tie('sum').map((sum) => `(${sum})`)),
      sum: fc.oneof({ maxDepth: 3 }, tie('part'), fc.tuple(tie('part'), gap, fc.constantFrom('+', '-', '*'), gap, tie('part')).map((each) => each.join(''))),
    })).sum.map((sum) => `=${sum}`);
    const meaning = (text: string): unknown => toEngine(text, { sheets: [], ownSheet: 0, names: ['full bust'] });
    fc.assert(fc.property(formula, fc.constantFrom<DecimalMark>('.', ','), (text, mark) => {
      const again = asKept(asShown(text, manner(mark)), manner(mark));
      // What is ambiguous is asked about; it is never read as something else.
      expect('formula' in again ? meaning(again.formula) : [meaning(again.oneNumber), meaning(again.twoArguments)]).toEqual('formula' in again ? meaning(text) : expect.arrayContaining([meaning(text)]));
    }), { numRuns: 2000 });
  });
});
