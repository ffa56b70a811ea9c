import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isFault } from '../../../src/quantities/index.ts';
import { engineName, engineSheet, MAX_DEPTH, MAX_LENGTH, MAX_TERMS, toEngine } from '../../../src/formula/index.ts';
import { newEngine, withoutUnits } from './engine.ts';
import { formulaLike } from './texts.ts';

const context = {
  sheets: [{ id: 1, name: 'Skirt' }, { id: 7, name: "Anna's sheet" }],
  ownSheet: 1,
  names: ['bust', 'full bust', 'hip2', 'taille é'],
};

function text(formula: string): string {
  const result = toEngine(formula, context);
  return isFault(result) ? `refused: ${result.sentence}` : result.text;
}

const engine = newEngine();
engine.addSheet(engineSheet(1));
engine.addSheet(engineSheet(7));
engine.setCellContents({ sheet: 0, row: 0, col: 0 }, [[3, 4], [5, 6]]);
engine.setCellContents({ sheet: 1, row: 0, col: 0 }, 70);
for (const [i, name] of context.names.entries()) engine.addNamedExpression(engineName(name), 100 + i);

/** What the engine makes of a formula. */
function value(formula: string): unknown {
  engine.setCellContents({ sheet: 0, row: 9, col: 9 }, withoutUnits(text(formula)));
  return engine.getCellValue({ sheet: 0, row: 9, col: 9 });
}

describe('translation to the engine’s dialect', () => {
  it.each([
    ['=2 1/4 in', '=TT.QUANTITY(2.25,5)'],
    ['=A1*5,5', '=A1*5.5'],
    ['=5,5 cm', '=TT.QUANTITY(5.5,3)'],
    ['=1,5 yd 4 in', '=(TT.QUANTITY(1.5,7)+TT.QUANTITY(4,5))'],
    ['=ROUND(2,5;1)', '=ROUND(2.5,1)'],
    ['=MAX(5,5 cm;A1)', '=MAX(TT.QUANTITY(5.5,3),A1)'],
    ['=SUM((1,25);2)', '=SUM((1.25),2)'],
    ['=SUM(1,2)', '=SUM(1,2)'],
    ['=2,05+0,125', '=2.05+0.125'],
    ['=PLEAT.DEPTH(a1; $B2:c$3 ; "knife")', '=PLEAT.DEPTH(A1,$B2:C$3,"knife")'],
    ['=Skirt!A1+\'anna\'\'s SHEET\'!B:B', '=S1!A1+S7!B:B'],
    ['=3 : 5', '=3:5'],
    ['=Skirt!A1:skirt!B2', '=S1!A1:B2'],
    ['=Full  Bust × 2 ÷ bust − hip2', '=N_full_20_bust*2/N_bust-N_hip2'],
    ['=A1≤2\u00a0', '=A1<=2'],
    ['=taille é≠1', `=${engineName('taille é')}<>1`],
    ['=true', '=TRUE()'],
    ['=sum(,1)', '=SUM(,1)'],
    ['=Skirt!#ref!', '=#REF!'],
    ['={1,2|3;4}', '={1;2|3;4}'],
    ['=- - -A1', '=-A1'],
    ['=--A1', '=--A1'],
    ['=2-+-3', '=2--3'],
    ['=5%%%', '=((5%)%)%'],
    ['=-(1+2)%%', '=-((1+2)%)%'],
    ['=1E5', '=100000'],
    ['=1 yd 4 in', '=(TT.QUANTITY(1,7)+TT.QUANTITY(4,5))'],
    ['=⅓ yd', '=(TT.QUANTITY(1,7)/3)'],
    ['=“x"y”', '=("x"&CHAR(34)&"y")'],
    ['=unknown', '=N_unknown'],
  ])('%s', (formula, expected) => {
    expect(text(formula)).toBe(expected);
  });

  it.each([
    // OpenFormula part 4, 5.5: prefix minus binds before ^, and ^ goes from left to right.
    ['=-2^2', 4],
    ['=2^3^2', 64],
    ['=2^-1', 0.5],
    ['=-5%', -0.05],
    ['=5%%', 0.0005],
    ['=1+2*3', 7],
    ['=(1+2)*3', 9],
    ['=10-3/8"', 10 - 9.525],
    ['=A1/8 in', 3 / 203.2],
    ['=2"+3"', 127],
    [`=5'6"`, 1676.4],
    ['=1 yd 4 in', 1016],
    ['=SUM({1;2|3;4})', 10],
    ['=INDEX({1;2|3;4};2;1)', 3],
    ['=INDEX({SUM(1;1);2|3;4};1;1)', 2],
    ['=SUM(A1:B2)', 18],
    ['=SUM(B:B)', 10],
    ['=SUM(1:1)', 7],
    ["='Anna''s sheet'!A1+full bust", 171],
    ['=hip2', 102],
    ['=TRUE', true],
    ['=1=1=TRUE', true],
    ['="a""b"', 'a"b'],
    ['="\\"', '\\'],
    ['="a\\""b\\\\"', 'a\\"b\\\\'],
    ['=""', ''],
    ['=""""', '"'],
    ['=LEN("""\\")', 2],
    ['="2"&"""', 'refused'],
    ['=IF(A1>2","yes","no")', 'no'],
    ['=--"5"', 5],
    ['=IF(A1>1;"yes";"no")', 'yes'],
  ])('the engine works %s out', (formula, expected) => {
    if (expected === 'refused') expect(text(formula)).toMatch(/^refused/);
    else if (typeof expected === 'number') expect(value(formula)).toBeCloseTo(expected, 12);
    else expect(value(formula)).toBe(expected);
  });

  it.each([
    ['=', 'Nothing stands after the ='],
    ['=   ', 'Nothing stands after the ='],
    ['=1+', 'stops after ‘+’'],
    ['=*2', 'Before ‘*’'],
    ['=SUM(1;+)', 'Before ‘)’'],
    ['=SUM(-;1)', 'Before ‘;’'],
    ['=SUM(A1', 'The bracket after ‘SUM’ is not closed'],
    ['=(A1', 'The bracket ‘(’ is not closed'],
    ['={1', 'put a } where'],
    ['=A1)', 'without its ('],
    ['=SUM({1)', 'without its ('],
    ['=(1}', 'without its {'],
    ['=()', 'Before ‘)’'],
    ['=A1 B1', 'missing between ‘A1’ and ‘B1’'],
    ['=2(3)', 'missing between ‘2’ and ‘(’'],
    ['=full bst', '‘full bst’'],
    ['="abc', 'no closing quote'],
    ['=Skirt2!A1', 'There is no sheet called ‘Skirt2’'],
    ["='No such'!A1:B2", 'There is no sheet called ‘No such’'],
    ["=Skirt!A1:'Anna''s sheet'!B2", 'both ends must be on one sheet'],
    ['=A1:Skirt!B2', 'both ends must be on one sheet'],
    ['=A1:B', 'A : needs a cell on each side'],
    ['=AMM1', 'column ALL'],
    ['=A1000001', 'row 1,000,000'],
    ['=A0', 'row 1,000,000'],
    ['=$AMM$1', 'is no cell'],
    ['=Skirt!AMM1', 'is no cell'],
    ['=OFFSET(A1;1;1)', 'INDEX'],
    ['=TT.QUANTITY(1;5)', 'no function called'],
    ['=ж(1)', 'no function called'],
    ['=#WRONG!', 'no error'],
    ['=1;2', 'inside a function’s brackets'],
    ['=(1;2)', 'inside a function’s brackets'],
    ['=SUM(1|2)', 'parts the rows of a list'],
    ['={1;2|3}', 'same number of values'],
    ['={{1}}', 'another list'],
    ['=86–90 cm', 'a range such as 86–90 cm'],
    ['=A1@', '‘@’ has no meaning'],
    ['A1', 'begins with ='],
  ])('refuses %s with a sentence', (formula, part) => {
    const result = toEngine(formula, context);
    expect(isFault(result) ? result.sentence : result).toContain(part);
    if (!isFault(result)) return;
    expect(result.sentence).toMatch(/\.$/);
    expect(result.start).toBeGreaterThanOrEqual(0);
    expect(result.end).toBeLessThanOrEqual(formula.length);
  });

  it('keeps to its limits, and the engine can work out what is within them', () => {
    const nested = (n: number): string => `=${'ABS('.repeat(n)}1${')'.repeat(n)}`;
    expect(value(nested(MAX_DEPTH))).toBe(1);
    expect(text(nested(MAX_DEPTH + 1))).toContain('brackets are open at once');
    const row = (n: number): string => `=A1${'+A1'.repeat(n)}`;
    expect(value(row(MAX_TERMS - 1))).toBe(3 * MAX_TERMS);
    expect(text(row(MAX_TERMS + 1))).toContain('operators stand in one row');
    // A long row inside the first value of another is as deep as both together.
    expect(text(`=(${row(300).slice(1)})${'+A1'.repeat(300)}`)).toContain('operators stand in one row');
    expect(value(`=SUM(${Array.from({ length: 60 }, () => row(40).slice(1)).join(';')})`)).toBe(3 * 41 * 60);
    expect(value(`=${'-'.repeat(8_000)}A1`)).toBe(3);
    expect(text(`=${' '.repeat(MAX_LENGTH)}1`)).toContain('characters');
  });

  it('never throws, and never gives the engine a text that it cannot read', () => {
    const check = (formula: string): void => {
      const result = toEngine(formula, context);
      if (isFault(result)) {
        expect(result.sentence).not.toBe('');
        return;
      }
      expect(result.text, formula).toMatch(/^=/);
      expect(engine.validateFormula(result.text), `${formula} became ${result.text}`).toBe(true);
    };
    let good = 0;
    fc.assert(fc.property(formulaLike, (formula) => {
      if (!isFault(toEngine(formula, context))) good += 1;
      check(formula);
    }), { numRuns: 3000 });
    fc.assert(fc.property(fc.string({ unit: 'binary', maxLength: 200 }), (s) => check(`=${s}`)), { numRuns: 500 });
    fc.assert(fc.property(wellFormed, check), { numRuns: 1000 });
    expect(good).toBeGreaterThan(50);
  }, 30_000);

  it('takes every formula that is built by the rules', () => {
    fc.assert(fc.property(wellFormed, (formula) => {
      expect(text(formula), formula).not.toMatch(/^refused/);
    }), { numRuns: 1000 });
  });
});

/** Formulas built by the grammar, with spaces thrown in. */
const wellFormed = fc.letrec((tie) => ({
  value: fc.oneof(
    { depthSize: 'small', withCrossShrink: true },
    fc.constantFrom('A1', '$B$2:C3', 'B:B', "'Anna''s sheet'!A1", 'Skirt!2:3', '5', '2.5', '1e3', '2 1/4 in', '⅜"', `5'6"`, '(5 cm)', '30°', '"x"', '"a""b\\"', 'TRUE', 'full bust', 'taille é', '{1;2|-3;4 in}', '#N/A'),
    fc.tuple(fc.constantFrom('-', '+', '- '), tie('value')).map((p) => p.join('')),
    fc.tuple(fc.constantFrom('(', '( '), tie('sum'), fc.constant(')')).map((p) => p.join('')),
    fc.tuple(tie('value'), fc.constant(' %')).map((p) => p.join('')),
    fc.tuple(fc.constantFrom('SUM(', 'ease.x(', 'IF ('), fc.array(tie('sum'), { maxLength: 3 }), fc.constantFrom('; ', ' ; ')).map(([name, args, by]) => `${name}${args.join(by)})`),
  ),
  sum: fc.oneof(
    { depthSize: 'small' },
    tie('value'),
    fc.tuple(tie('value'), fc.constantFrom(' + ', '-', ' × ', ' * ', '&', '<=', ' ≠ ', '='), tie('sum')).map((p) => p.join('')),
  ),
})).sum.map((sum) => `=${sum as string}`);
