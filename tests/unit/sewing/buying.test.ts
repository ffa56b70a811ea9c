/** The list to buy: rows added up, the cupboard taken off, and what is refused. */
import { describe, expect, it } from 'vitest';
import fc from 'fast-check';
import { inBase, isFault, type Quantity } from '../../../src/quantities/index.ts';
import { functionNamed, work, type Value } from '../../../src/sewing/index.ts';
import { block } from './charts.ts';

const needs = block('ask for | for | needed', 'Main cloth | skirt | 1.6 m', 'main  CLOTH | bodice | 90 cm', 'buttons | front | 11', 'lining | skirt |', 'ribbon | hem | 2 m', 'ribbon | bows | 3');
const cupboard = block('at home | width | there is', 'main cloth | 150 cm | 40 cm', 'main cloth | 90 cm | 2 m', 'buttons | | 3', 'buttons | | 2');

const result = (name: string, ...values: Value[]): Quantity | string => {
  const outcome = work(functionNamed(name)!, values);
  return isFault(outcome) ? outcome.sentence : (outcome.value as Quantity);
};
const value = (name: string, ...values: Value[]): number | string => {
  const found = result(name, ...values);
  return typeof found === 'string' ? found : found.value;
};
const cm = (n: number): Quantity => inBase(n * 10, 'cm');
const number = (n: number): Quantity => inBase(n, '');
const percent = (n: number): Quantity => inBase(n / 100, '%');

describe('what is needed', () => {
  it('is added up over all rows that ask for it, in the unit of the first', () => {
    expect(result('BUY.NEEDED', needs, 'main cloth')).toEqual(inBase(2500, 'm'));
    expect(result('BUY.NEEDED', needs, 'Buttons')).toEqual(number(11));
  });

  it.each([
    ['velvet', 'The list asks for no “velvet”; it has Main cloth, buttons, lining and ribbon.'],
    ['lining', 'The list has no figure yet for lining, skirt: write one, or take the row out.'],
    ['ribbon', 'The list has lengths for ribbon, and something else for ribbon, bows: one thing is bought either by length or by number.'],
  ])('says what is wrong with %s', (what, sentence) => {
    expect(result('BUY.NEEDED', needs, what)).toBe(sentence);
  });

  it('needs a list with its headings', () => {
    expect(result('BUY.NEEDED', block('main cloth | 1 m'), 'main cloth')).toBe('The list has no column headed “needed”; its first row has main cloth and 1 m. Give the list with its headings.');
    expect(result('BUY.NEEDED', block('a | needed', 'lining | -1 m'), 'lining')).toBe('The list has a figure below 0 for lining: nothing can be less than none.');
  });
});

describe('what is at home', () => {
  it('counts where it is wide enough, and is nothing where there is none', () => {
    expect(value('CUPBOARD.LENGTH', cupboard, 'main cloth', cm(140))).toBe(400);
    expect(value('CUPBOARD.LENGTH', cupboard, 'main cloth', cm(90))).toBe(2400);
    expect(value('CUPBOARD.LENGTH', cupboard, 'main cloth')).toBe(2400);
    expect(value('CUPBOARD.LENGTH', cupboard, 'velvet', cm(140))).toBe(0);
    expect(value('CUPBOARD.COUNT', cupboard, 'buttons')).toBe(5);
    expect(value('CUPBOARD.COUNT', cupboard, 'zips')).toBe(0);
    expect(value('CUPBOARD.LENGTH', block('at home | there is'), 'velvet')).toBe(0);
  });
});

describe('what to buy', () => {
  it.each<[string, Value[], number]>([
    // 2.10 m lack; before washing 2.164948… m; up to 2.20 m: exact arithmetic.
    ['BUY.LENGTH', [cm(250), cm(40), percent(3), cm(10)], 2200],
    ['BUY.LENGTH', [cm(250), cm(250), percent(3), cm(10)], 0],
    ['BUY.LENGTH', [cm(250), cm(300)], 0],
    ['BUY.LENGTH', [cm(0)], 0],
    ['BUY.COUNT', [number(11), number(3), number(4)], 2],
    ['BUY.COUNT', [number(11), number(12), number(4)], 0],
    ['BUY.COUNT', [number(12), number(0), number(4)], 3],
    ['THREAD.REELS', [cm(12_000), cm(2_000), cm(10_000)], 1],
    ['THREAD.REELS', [cm(12_001), cm(2_000), cm(10_000)], 2],
  ])('%s %#', (name, values, expected) => {
    expect(value(name, ...values)).toBe(expected);
  });

  it('is what CLOTH.BUY gives for what lacks', () => {
    const length = fc.integer({ min: 1, max: 50_000 }).map((n) => n / 10);
    fc.assert(fc.property(length, length, fc.integer({ min: 0, max: 20 }), fc.constantFrom(50, 100, 114.3), (needed, home, shrinks, step) => {
      const mm = (n: number): Quantity => inBase(n, 'mm');
      const bought = value('BUY.LENGTH', mm(needed), mm(home), percent(shrinks), mm(step));
      const lacks = needed - home;
      expect(bought).toBe(lacks <= 0 ? 0 : value('CLOTH.BUY', mm(lacks), percent(shrinks), mm(step)));
    }));
  });

  it('is told with the rows that make it up', () => {
    const outcome = work(functionNamed('BUY.NEEDED')!, [needs, 'main cloth'], true);
    expect(isFault(outcome) ? [] : outcome.steps.map(({ words }) => words)).toEqual(['with Main cloth, skirt', 'with main  CLOTH, bodice']);
  });
});
