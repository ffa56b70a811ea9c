/**
 * 1986 measured women through the engine: SIZE.AT and SIZE.BETWEEN against the
 * letter sizes, and the figures of the survey. Expected counts and figures were
 * computed from the same data, from ≤ girth < to.
 */
import { beforeAll, describe, expect, it } from 'vitest';
import type { Result } from '../../src/reckoning/protocol.ts';
import { LETTERS, LETTER_SIZES } from './data/letter-sizes.ts';
import { WOMEN } from './data/survey-women.ts';
import { amountOf, reckon } from './reckon.ts';

const MEASURES = [['bust', 'A', 'D', 'G'], ['waist', 'B', 'E', 'H'], ['hip', 'C', 'F', 'I']] as const;
const LAST = WOMEN.length;
const FIGURES = {
  L1: `=COUNT(A1:A${LAST})`,
  L2: `=AVERAGE(A1:A${LAST})`,
  L3: `=STDEV(A1:A${LAST})`,
  L4: `=STDEV(B1:B${LAST})`,
  L5: `=AVERAGE(C1:C${LAST})`,
  L6: `=STDEV(C1:C${LAST})`,
  L7: `=COUNTIF(A1:A${LAST}, ">1000 mm")`,
  L8: `=CORREL(M1:M${LAST}, N1:N${LAST})`,
};

function cells(): Record<string, string> {
  const typed: Record<string, string> = { ...FIGURES };
  for (const [i, woman] of WOMEN.entries()) {
    // A correlation is one of plain numbers.
    typed[`M${i + 1}`] = `=AMOUNT(A${i + 1}, "mm")`;
    typed[`N${i + 1}`] = `=AMOUNT(C${i + 1}, "mm")`;
    for (const [measure, girth, size, place] of MEASURES) {
      typed[`${girth}${i + 1}`] = `${woman[measure]} mm`;
      typed[`${size}${i + 1}`] = `=SIZE.AT(letters, "${measure}", ${girth}${i + 1})`;
      typed[`${place}${i + 1}`] = `=SIZE.BETWEEN(letters, "${measure}", ${girth}${i + 1})`;
    }
  }
  return typed;
}

/** Which of the letter sizes a cell holds, or null where the girth lies outside them. */
function letterIn(result: Result): number | null {
  if (result.kind === 'error') {
    expect(result.sentence).toMatch(/^The size chart’s .* (?:is below it|is not below it)\.$/);
    return null;
  }
  expect(result.kind).toBe('text');
  return LETTERS.indexOf((result as { readonly text: (typeof LETTERS)[number] }).text);
}

describe('1986 women of the survey', () => {
  let at: (cell: string) => Result;
  let places: (number | null)[][];

  beforeAll(async () => {
    at = await reckon(cells(), { letters: LETTER_SIZES });
    places = WOMEN.map((_, i) => MEASURES.map(([, , size]) => letterIn(at(`${size}${i + 1}`))));
  }, 60_000);

  it('SIZE.BETWEEN, rounded half up, agrees with SIZE.AT for every girth', () => {
    for (const [i, letters] of places.entries()) {
      for (const [m, [, , , place]] of MEASURES.entries()) {
        const result = at(`${place}${i + 1}`);
        if (letters[m] === null) expect(result.kind).toBe('error');
        else expect(Math.floor(amountOf(result, '') + 0.5) - 1).toBe(letters[m]);
      }
    }
  });

  const inside = (): number[][] => places.filter((letters): letters is number[] => !letters.includes(null));
  it('272 have bust, waist and hip in one letter size', () => {
    expect(inside().filter((letters) => new Set(letters).size === 1)).toHaveLength(272);
  });
  it('376 have three different letters', () => {
    expect(inside().filter((letters) => new Set(letters).size === 3)).toHaveLength(376);
  });
  it('2 have at least one girth outside the table', () => {
    expect(places.filter((letters) => letters.includes(null))).toHaveLength(2);
  });
  it('540 have a spread of two letters or more', () => {
    expect(inside().filter((letters) => Math.max(...letters) - Math.min(...letters) >= 2)).toHaveLength(540);
  });

  it.each<[string, keyof typeof FIGURES, number, '' | 'mm', number]>([
    ['women', 'L1', 1986, '', 0], ['mean chest', 'L2', 946.858006, 'mm', 1e-5], ['standard deviation of the chest', 'L3', 82.699115, 'mm', 1e-5],
    ['standard deviation of the waist', 'L4', 99.931771, 'mm', 1e-5], ['mean seat', 'L5', 1021.247734, 'mm', 1e-5], ['standard deviation of the seat', 'L6', 75.894711, 'mm', 1e-5],
    ['chest over 1000 mm', 'L7', 486, '', 0], ['correlation of chest and seat', 'L8', 0.742875, '', 1e-5],
  ])('%s', (_, cell, expected, unit, tolerance) => {
    expect(Math.abs(amountOf(at(cell), unit) - expected)).toBeLessThanOrEqual(tolerance);
  });
});
