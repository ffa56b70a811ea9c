import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { callAt, MAX_ROWS, referencesIn, wordAt } from '../../../src/formula/index.ts';
import { formulaLike } from './texts.ts';

/** The formula without its `|`, and where that stood. */
function caret(marked: string): [string, number] {
  const at = marked.indexOf('|');
  return [marked.slice(0, at) + marked.slice(at + 1), at];
}

describe('the call around the caret', () => {
  it.each([
    ['=PLEAT.DEPTH(|', 'PLEAT.DEPTH', 0],
    ['=PLEAT.DEPTH(A1; |', 'PLEAT.DEPTH', 1],
    ['=PLEAT.DEPTH(A1, B2|, 3)', 'PLEAT.DEPTH', 1],
    ['=SUM(ROUND(A1;1);|)', 'SUM', 1],
    ['=SUM(ROUND(A1;|1);2)', 'ROUND', 1],
    ['=SUM((A1+|2);2)', 'SUM', 0],
    ['=SUM({1;2};|2)', 'SUM', 1],
    ['=SUM({1;|2};2)', 'SUM', 0],
    ['=SUM("a;b(";|2)', 'SUM', 1],
    ['=SUM (1;|2)', 'SUM', 1],
    ['=SUM(2 1/4|', 'SUM', 0],
    ['=SUM("a|', 'SUM', 0],
  ])('%s', (marked, name, arg) => {
    expect(callAt(...caret(marked))).toMatchObject({ name, arg });
  });

  it.each(['=SU|M(1)', '=SUM|(1)', '=SUM(1)|', '=(1+|2)', '=|', '|=SUM(1)'])('is none in %s', (marked) => {
    expect(callAt(...caret(marked))).toBeNull();
  });

  it('says where the name begins', () => {
    expect(callAt('=1+SUM(2', 8)).toEqual({ name: 'SUM', arg: 0, start: 3 });
  });
});

describe('the word at the caret', () => {
  const names = ['full bust', 'bust point to waist', 'waist'];

  it.each([
    ['=PLEAT.D|', { text: 'PLEAT.D', start: 1, end: 8 }],
    ['=1+SU|M(2)', { text: 'SU', start: 3, end: 6 }],
    ['=SUM(wa|', { text: 'wa', start: 5, end: 7 }],
    ['=SUM(full b|', { text: 'full b', start: 5, end: 11 }],
    ['=bust point to w|', { text: 'bust point to w', start: 1, end: 16 }],
    ['=full wa|', null],
    ['=T|', { text: 'T', start: 1, end: 2 }],
  ])('%s', (marked, expected) => {
    expect(wordAt(...caret(marked), names)).toEqual(expected);
  });

  it.each(['=|', '="wa|', '=2 i|', '=A1 wa|', '=A1|', '=(1) wa|', '=5|', '=SUM(|', '=wa |'])('is none in %s', (marked) => {
    expect(wordAt(...caret(marked), names)).toBeNull();
  });
});

describe('the references of a formula', () => {
  it('come in the order written, with their cells', () => {
    expect(referencesIn("=SUM(B3:$A$1;'My sheet'!C:C)+2 cm2+a1")).toEqual([
      { text: 'B3:$A$1', start: 5, area: { top: 0, left: 0, bottom: 2, right: 1 } },
      { text: "'My sheet'!C:C", start: 13, sheet: 'My sheet', area: { top: 0, left: 2, bottom: MAX_ROWS - 1, right: 2 } },
      { text: 'a1', start: 35, area: { top: 0, left: 0, bottom: 0, right: 0 } },
    ]);
  });
});

it('nothing at the caret throws, whatever is typed', () => {
  fc.assert(fc.property(formulaLike, fc.nat({ max: 60 }), (formula, at) => {
    callAt(formula, at);
    wordAt(formula, at, ['full bust', 'é']);
    for (const { text, start } of referencesIn(formula)) expect(formula.slice(start, start + text.length)).toBe(text);
  }), { numRuns: 2000 });
});
