/** Words that are not known, and formulas that can be meant in a few ways. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { figuresIn, nearest, wordMends, withUnits } from '../../../src/formula/index.ts';

const words = { names: ['full bust', 'waist', 'hüfte'], functions: ['SUM', 'EASE', 'PLEAT.DEPTH', 'ROUND'], sheets: ['Fit', "Aunt's measures"] };
const mends = (formula: string): string[] => wordMends(formula, words).map((each) => each.formula);

describe('the nearest known word', () => {
  it('allows one slip in three letters, whatever the case, accents and spaces', () => {
    expect(nearest('waste', ['waist', 'hip'])).toBe('waist');
    expect(nearest('Fullbust', words.names)).toBe('full bust');
    expect(nearest('hufte', words.names)).toBe('hüfte');
    expect(nearest('shoulder', words.names)).toBeUndefined();
    expect(nearest('x', ['waist'])).toBeUndefined();
    expect(nearest('', [])).toBeUndefined();
  });
});

describe('mends of a formula', () => {
  it.each([
    ['=ES(A1;A2)', []],
    ['=EASY(A1;A2)', ['=EASE(A1;A2)']],
    ['=pleatdepth(A1)', ['=PLEAT.DEPTH(A1)']],
    ['=waste*2', ['=waist*2']],
    ['=ful bust - 2 in', ['=full bust - 2 in']],
    ['=Fitt!A1+1', ['=Fit!A1+1']],
    ["='Aunts measures'!A1", ["='Aunt''s measures'!A1"]],
    ['=SUM(A1;A2', ['=SUM(A1;A2)']],
    ['=SUM((A1;A2', []],
    ['=ROUND((A1+A2;1', []],
    ['=A1+2 1/4', ['=A1+2 1/4 in']],
    ['=SUM(5,5 cm)', ['=SUM(5.5 cm)', '=SUM(5; 5 cm)']],
    ['=1,234+A1', ['=1.234+A1', '=1234+A1']],
    ['=waist+full bust', []],
    ['=A1+', []],
  ] as const)('%s', (formula, expected) => expect(mends(formula)).toEqual(expected));

  it('never throws', () => fc.assert(fc.property(fc.string({ maxLength: 60 }), (text) => { wordMends(`=${text}`, words); figuresIn(`=${text}`); })));
});

describe('giving figures their unit', () => {
  it('writes it after each, in place', () => {
    expect(withUnits('=A1 + 2*( 3,5 )', [0, 1], [2, 3.5], 'in')).toEqual({ formula: '=A1 + 2 in*( 3,5 in )', written: ['2', '3,5'] });
    expect(withUnits('=A1+30', [0], [30], 'deg')!.formula).toBe('=A1+30°');
  });

  it('refuses figures that are not the ones meant', () => {
    expect(withUnits('=A1+2', [0], [3], 'in')).toBeNull();
    expect(withUnits('=A1+2', [4], [2], 'in')).toBeNull();
    expect(withUnits('=1/3 yd+2', [0], [3], 'in')).toBeNull();
  });
});
