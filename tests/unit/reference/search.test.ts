/** Looking for functions by what one wants, among all that there are; and typing them. */
import { describe, expect, it } from 'vitest';
import { complete, signatureAt } from '../../../src/grid/completion.ts';
import { ReferenceSearch } from '../../../src/panels/reference-search.ts';
import { argumentInWords, signatureOf } from '../../../src/panels/reference-words.ts';
import type { FunctionCard } from '../../../src/reckoning/protocol.ts';
import { Engine } from '../../../workers/reckon/engine.ts';

const cards = new Engine().catalogue();
const search = new ReferenceSearch(cards);
const first = (sought: string, count = 1): string[] => search.find(sought).slice(0, count).map(({ name }) => name);
const cardOf = (name: string): FunctionCard => cards.find((card) => card.name === name)!;

describe('the reference finds', () => {
  it.each([
    ['how deep should pleats be', 'PLEAT.DEPTH'],
    ['How deep should pleats be?', 'PLEAT.DEPTH'],
    ['pleet depth', 'PLEAT.DEPTH'],
    ['which size am I', 'SIZE.AT'],
    ['how much fabric do I need', 'CLOTH.BUY'],
    ['how many buttons', 'BUTTON.COUNT'],
    ['circle skirt radius', 'CIRCLE.RADIUS'],
    ['which needle', 'NEEDLE.USUAL'],
    ['average', 'AVERAGE'],
    ['mean', 'AVERAGE'],
    ['is it empty', 'ISBLANK'],
    ['how old', 'DATEDIF'],
    ['remainder', 'MOD'],
    ['square root', 'SQRT'],
    ['standard deviation', 'STDEV'],
    ['count if', 'COUNTIF'],
    ['look up in the chart', 'XLOOKUP'],
    ['VLOOKUP', 'VLOOKUP'],
    ['=pleat.depth(', 'PLEAT.DEPTH'],
    ['if', 'IF'],
    ['or', 'OR'],
    ['when', 'IF'],
  ])('%s: %s', (sought, name) => {
    expect(first(sought)).toEqual([name]);
  });

  it('rounding up to a step by the words of a tape', () => {
    expect(first('round up to eighths', 3)).toEqual(expect.arrayContaining(['STEP.UP', 'CEILING']));
  });

  it.each(cards.filter(({ trade }) => trade).flatMap((card) => card.asks.map((ask) => [ask, card.name])))('%s: %s', (ask, name) => {
    expect(first(ask, 4)).toContain(name);
  });

  it('every function by its name', () => {
    for (const { name } of cards) expect(first(name)).toEqual([name]);
  });

  it('all of them for nothing, none for what nobody asks', () => {
    expect(search.find('  ')).toEqual(cards);
    expect(search.find('xyzzy')).toEqual([]);
  });
});

describe('a call in words', () => {
  it('shows what may be left out and given again', () => {
    expect(signatureOf(cardOf('ROUND'))).toBe('ROUND(figure, [places])');
    expect(signatureOf(cardOf('COUNTIFS'))).toBe('COUNTIFS(block, condition, …)');
    expect(argumentInWords(cardOf('PLEAT.DEPTH'), 3)).toBe('one of "knife", "box", "inverted"; may be left out');
    expect(argumentInWords(cardOf('COUNTIFS'), 0)).toBe('a block of cells; may be given again');
    expect(argumentInWords(cardOf('FACT'), 0)).toBe('a plain number');
  });
});

describe('the entry line, with every function', () => {
  const words = { cards, names: ['waist', 'full bust'], sheets: ['Fit'] };
  const offered = (formula: string): string[] => complete(formula, formula.length, words)?.choices.map(({ text }) => text) ?? [];
  const trade = new Set(cards.filter((card) => card.trade).map(({ name }) => name));

  it('offers the trade before the standard functions that begin as well', () => {
    for (const letter of 'abcdefghilmopqrstuvw') {
      const functions = offered(`=${letter}`).filter((text) => text.length > 1 && text.startsWith(letter.toUpperCase()) && cardOf(text));
      const kinds = functions.map((name) => trade.has(name));
      expect(kinds, functions.join(' ')).toEqual([...kinds].sort((a, b) => Number(b) - Number(a)));
    }
    expect(offered('=pl')[0]).toBe('PLEAT.DEPTH');
    expect(offered('=sum')[0]).toBe('SUM');
  });

  it('knows which argument is meant past the last that has a name', () => {
    const at = (formula: string) => signatureAt(formula, formula.length, cards)?.arg;
    expect([at('=SUM('), at('=SUM(1,2,'), at('=COUNTIFS(A1:A2,1,B1:B2,'), at('=COUNTIFS(A1:A2,1,B1:B2,2,')]).toEqual([0, 0, 1, 0]);
    expect(at('=ROUND(1,2,3')).toBe(1);
  });

  it('stays fast: a key in a few milliseconds', () => {
    const keys = 200;
    const start = performance.now();
    for (let i = 0; i < keys; i++) {
      const formula = `=PLEAT.DEPTH(B2, ${'sabcdefgh'[i % 9]}`;
      complete(formula, formula.length, words);
      signatureAt(formula, formula.length, cards);
    }
    const each = (performance.now() - start) / keys;
    console.log(`Completing among ${cards.length} functions: ${each.toFixed(2)} ms a key.`);
    expect(each).toBeLessThan(10);
  });
});
