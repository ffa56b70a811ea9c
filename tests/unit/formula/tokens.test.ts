import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isFormula, tokenize } from '../../../src/formula/index.ts';
import { formulaLike } from './texts.ts';

/** Kinds and texts, spaces left out. */
function pieces(formula: string, names?: readonly string[]): string[] {
  return tokenize(formula, names).filter((t) => t.kind !== 'space').map((t) => `${t.kind} ${t.text}`);
}

describe('tokens', () => {
  it('tells the classes apart for colouring', () => {
    expect(pieces('=SUM(A1:$B$2; 2 1/4 in)*"x"&full+TRUE-#REF!>=3%')).toEqual([
      'operator =', 'function SUM', 'bracket (', 'reference A1:$B$2', 'separator ;', 'unit 2 1/4 in', 'bracket )', 'operator *', 'string "x"',
      'operator &', 'name full', 'operator +', 'truth TRUE', 'operator -', 'error #REF!', 'operator >=', 'number 3', 'operator %',
    ]);
  });

  it('reads references of every form', () => {
    for (const text of ['A1', '$A$1', 'a$1', 'A1:B2', 'B:B', '$B:C', '3:3', '$3:5', 'Skirt!A1', "'My sheet'!A1:B2", "'Anna''s'!B:B", 'A1 : B2', 'Hem!A1:Hem!B2', 'Größe!A1', 'ALL1000000']) {
      expect(pieces(`=${text}`)).toEqual(['operator =', `reference ${text}`]);
    }
    expect(tokenize("='Anna''s'!$B2:C$3")[1]?.reference).toEqual({
      sheet: "Anna's",
      from: { row: 1, col: 1, rowFixed: false, colFixed: true },
      to: { row: 2, col: 2, rowFixed: true, colFixed: false },
    });
  });

  it('takes a cell beyond the end of a sheet for a word', () => {
    expect(pieces('=AMM1+A1000001+A0')).toEqual(['operator =', 'name AMM1', 'operator +', 'name A1000001', 'operator +', 'name A0']);
    expect(pieces('=bust2')).toEqual(['operator =', 'name bust2']);
  });

  it('takes a word before a bracket for a function, whatever it looks like', () => {
    expect(pieces('=LOG10(2)')[1]).toBe('function LOG10');
    expect(pieces('=A1(2)')[1]).toBe('function A1');
    expect(pieces('=SUM (2)')[1]).toBe('function SUM');
    expect(pieces('=TRUE()')[1]).toBe('function TRUE');
  });

  it('knows a unit only after a figure', () => {
    expect(pieces('=cm2+5 cm2')).toEqual(['operator =', 'reference cm2', 'operator +', 'unit 5 cm2']);
    expect(pieces('=in+5in')).toEqual(['operator =', 'name in', 'operator +', 'unit 5in']);
    expect(pieces('=m(5 m)')).toEqual(['operator =', 'function m', 'bracket (', 'unit 5 m', 'bracket )']);
  });

  it('takes a double quote right after a figure for inches, and any other for a text', () => {
    expect(pieces('=A1&"x"')).toEqual(['operator =', 'reference A1', 'operator &', 'string "x"']);
    expect(pieces('=2"+3"')).toEqual(['operator =', 'unit 2"', 'operator +', 'unit 3"']);
    expect(pieces('=IF(A1>2","yes","no")').slice(5)).toEqual(['unit 2"', 'separator ,', 'string "yes"', 'separator ,', 'string "no"', 'bracket )']);
    expect(pieces('=2 "x"').slice(1)).toEqual(['number 2', 'string "x"']);
    expect(pieces('="2"&3')).toEqual(['operator =', 'string "2"', 'operator &', 'number 3']);
  });

  it('takes a single quote right after a figure for feet, but not one that begins a sheet', () => {
    expect(pieces(`=5'6"`)).toEqual(['operator =', `unit 5'6"`]);
    expect(pieces(`=5'*2`)).toEqual(['operator =', `unit 5'`, 'operator *', 'number 2']);
    expect(pieces(`=2+'My sheet'!A1`).slice(2)).toEqual(['operator +', `reference 'My sheet'!A1`]);
    expect(pieces(`=2'My sheet'!A1`).slice(1)).toEqual(['number 2', `reference 'My sheet'!A1`]);
  });

  it('takes the longest known name', () => {
    const names = ['bust', 'full bust', 'full bust height', 'taille é'];
    expect(pieces('=full bust+Full  Bust  height*bust', names)).toEqual([
      'operator =', 'name full bust', 'operator +', 'name Full  Bust  height', 'operator *', 'name bust',
    ]);
    expect(pieces('=full busts', names)).toEqual(['operator =', 'name full', 'name busts']);
    expect(pieces('=TAILLE É', names)).toEqual(['operator =', 'name TAILLE É']);
  });

  it('says what is wrong with a text that does not end', () => {
    expect(tokenize('="abc').at(-1)).toMatchObject({ kind: 'bad', text: '"abc', sentence: expect.stringContaining('no closing quote') });
    expect(tokenize("='abc").at(-1)).toMatchObject({ kind: 'bad', sentence: expect.stringContaining('no closing quote') });
  });

  it('gives the formula back, whatever it is', () => {
    const whole = (formula: string): void => {
      const tokens = tokenize(formula, ['full bust', 'é a']);
      expect(tokens.map((t) => t.text).join('')).toBe(formula);
      let at = 0;
      for (const token of tokens) {
        expect(token.start).toBe(at);
        expect(token.text.length).toBeGreaterThan(0);
        at += token.text.length;
      }
    };
    fc.assert(fc.property(formulaLike, whole), { numRuns: 1500 });
    fc.assert(fc.property(fc.string({ unit: 'binary', maxLength: 200 }), whole), { numRuns: 1000 });
  }, 30_000);

  it('takes time in proportion to the length', () => {
    const took = (formula: string): number => {
      const start = process.cpuUsage();
      tokenize(formula, ['a a a a a a b', 'full bust']);
      return process.cpuUsage(start).user / 1_000;
    };
    for (const piece of ['"', "'", 'A1:', "A1:'", '1 ', '1/2 ', 'a ', '1 yd ', '#', '$', "1'", 'a!', ' ', '9']) {
      const formula = `=${piece.repeat(100_000 / piece.length)}`;
      // Milliseconds of the processor: a quadratic reader takes many thousands for this, a linear one some tens.
      expect(took(formula), piece).toBeLessThan(2_000);
    }
  }, 30_000);
});

describe('isFormula', () => {
  it('goes by the first character alone', () => {
    expect(isFormula('=A1')).toBe(true);
    expect(isFormula('=')).toBe(true);
    expect(isFormula(' =A1')).toBe(false);
    expect(isFormula('')).toBe(false);
  });
});
