/** Tables of usual values, and one figure of a span. */
import { describe, expect, it } from 'vitest';
import { isFault } from '../../../src/quantities/index.ts';
import { functionNamed, work } from '../../../src/sewing/index.ts';
import type { SewingFunction, Value } from '../../../src/sewing/index.ts';
import { block, EXAMPLE_NAMES } from './charts.ts';
import { cellValue, evaluate, outcomeOf, Told } from './formula.ts';

const value = (formula: string): Value => evaluate(formula, EXAMPLE_NAMES);
const told = (formula: string): string => {
  try {
    evaluate(formula, EXAMPLE_NAMES);
  } catch (error) {
    if (error instanceof Told) return error.message;
    throw error;
  }
  throw new Error(`${formula} has a result`);
};
const sentence = (table: Value, ...words: string[]): string => {
  const outcome = work(functionNamed('EASE.USUAL') as SewingFunction, [table, ...words]);
  return isFault(outcome) ? outcome.sentence : `gave ${JSON.stringify(outcome.value)}`;
};

describe('a table of usual values', () => {
  it('gives the range of the one row that fits, in its own unit', () => {
    expect(value('=EASE.USUAL(usual ease, "Dress", " bust", "fitted")')).toEqual(cellValue('5–8 cm'));
    expect(value('=STITCH.USUAL(usual needles, "poplin")')).toEqual(cellValue('2–2.5'));
    expect(value('=FULLNESS.USUAL(usual fullness, "ruffle")')).toEqual(cellValue('2–3'));
  });

  it('gives one figure where the row has one', () => {
    expect(value('=EASE.USUAL(usual ease, "dress", "hip", "fitted")')).toEqual(cellValue('1 1/2 in'));
    expect(value('=SHOP.STEP(usual steps, "cloth by the yard")')).toEqual(cellValue('1/8 yd'));
    expect(value('=NEEDLE.USUAL(usual needles, "jersey")')).toBe('75/11 ball point');
  });

  it('covers every row that fits where several do', () => {
    expect(value('=EASE.USUAL(usual ease, "dress", "bust")')).toEqual(cellValue('5–15 cm'));
  });

  it('finds a row by its first words', () => {
    expect(value('=FULLNESS.USUAL(usual fullness, "gathers")')).toEqual(cellValue('1.5–2'));
  });

  it('knows ease below nothing', () => {
    expect(value('=EASE.USUAL(usual ease, "knit top", "bust", "close")')).toEqual(cellValue('-5 to 0 cm'));
  });

  it('says where each figure comes from in its working', () => {
    expect(outcomeOf('=EASE.USUAL(usual ease, "dress", "bust", "fitted")', EXAMPLE_NAMES).steps.map((step) => step.words)).toEqual(['the table’s figures for dress, bust, fitted; their source: invented']);
    expect(outcomeOf('=EASE.USUAL(usual ease, "dress", "bust")', EXAMPLE_NAMES).steps).toHaveLength(3);
  });

  it('can be changed: its columns may stand in any order and a span may stand in one cell', () => {
    const mine = block('source | to | from | level | fit | garment | notes', 'mine | 9 cm | 7 cm | waist | | coat | warm', 'mine | | 3–4 cm | bust | | coat | ');
    expect(sentence(mine, 'coat', 'waist')).toBe(`gave ${JSON.stringify(cellValue('7–9 cm'))}`);
    expect(sentence(mine, 'coat', 'bust')).toBe(`gave ${JSON.stringify(cellValue('3–4 cm'))}`);
  });

  it.each<[string, string]>([
    ['=EASE.USUAL(usual ease, "cape", "bust")', 'The table has no garment “cape”; it has dress and knit top.'],
    ['=EASE.USUAL(usual ease, "dress", "knee")', 'The table has no level “knee” for dress; it has bust and hip.'],
    ['=EASE.USUAL(usual ease, "dress", "bust", "tight")', 'The table has no fit “tight” for dress, bust; it has fitted and loose.'],
    ['=EASE.USUAL(usual fullness, "dress", "bust")', 'The table has no column headed “garment”; its first row has style, from, to and source. Give the table with its headings.'],
    ['=FULLNESS.USUAL(usual allowances, "ruffle")', 'The table has no column headed “style”; its first row has where, from, to and source. Give the table with its headings.'],
    ['=NEEDLE.USUAL(usual needles, "canvas")', 'The table has no cloth “canvas”; it has poplin and jersey.'],
  ])('%s', (formula, expected) => {
    expect(told(formula)).toBe(expected);
  });

  it.each<[string, Value, string]>([
    ['bare figures', block('garment | level | fit | from | to', 'dress | bust | a | 5 | 8'), 'The table has no length under “from” and “to” for dress, bust, a: write figures with their units.'],
    ['no figure', block('garment | level | fit | from | to', 'dress | bust | a | | 8 cm'), 'The table has no length under “from” and “to” for dress, bust, a: write figures with their units.'],
    ['figures the wrong way round', block('garment | level | fit | from | to', 'dress | bust | a | 9 cm | 8 cm'), 'In the table, “from” is more than “to” for dress, bust, a: put the smaller figure first.'],
    ['headings only', block('garment | level | fit | from | to'), 'The table has no garment “dress”; it has none.'],
    ['an empty block', block(''), 'The table has no column headed “garment”; its first row has no words. Give the table with its headings.'],
  ])('says what is wrong with %s', (_, table, expected) => {
    expect(sentence(table, 'dress', 'bust')).toBe(expected);
  });

  it('refuses two rows where one figure is asked for', () => {
    const twice = work(functionNamed('SHOP.STEP') as SewingFunction, [block('sold | step', 'cloth | 10 cm', 'cloth | 5 cm'), 'cloth']);
    expect(twice).toEqual({ sentence: 'The table has more than one row for cloth: give each its own words.' });
  });
});

describe('one figure of a span', () => {
  it.each<[string, string, string]>([
    ['SPAN.LOW', '5–8 cm', '5 cm'], ['SPAN.HIGH', '5–8 cm', '8 cm'], ['SPAN.MIDDLE', '5–8 cm', '6.5 cm'], ['SPAN.MIDDLE', '7 cm', '7 cm'],
    ['SPAN.LOW', '1.5–2', '1.5'], ['SPAN.HIGH', '3 %', '3 %'], ['SPAN.MIDDLE', '34–36 in', '35 in'],
  ])('%s of %s is %s', (name, span, expected) => {
    expect(work(functionNamed(name) as SewingFunction, [cellValue(span)])).toMatchObject({ value: cellValue(expected) });
  });
});
