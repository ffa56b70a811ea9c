import { describe, expect, it } from 'vitest';
import { complete, signatureAt, take, type Words } from '../../../src/grid/completion.ts';
import { slotAt } from '../../../src/grid/pointing.ts';
import type { FunctionCard } from '../../../src/reckoning/protocol.ts';

const card = (name: string, ...args: string[]): FunctionCard => ({
  name, trade: true, topic: 'pleat', about: `about ${name}`, asks: [], rule: '', source: '', example: '', needs: [], units: '', differs: '', repeats: 0,
  args: args.map((each) => ({ name: each, about: `what ${each} is`, kind: 'length', optional: false })),
});
const words: Words = {
  cards: [card('PLEAT.DEPTH', 'cloth', 'finished', 'pleats'), card('PLEAT.CLOTH', 'finished', 'depth'), card('EASE', 'body', 'garment'), card('EASE.PERCENT', 'body', 'garment')],
  names: ['waist', 'full bust', 'ease wanted'],
  sheets: ['Fit', 'Size chart'],
};
const found = (formula: string, caret = formula.length): string[] => complete(formula, caret, words)?.choices.map((each) => each.text) ?? [];

describe('completion', () => {
  it('offers functions, names and sheets that begin with the word, then those that hold it', () => {
    expect(found('=PL')).toEqual(['PLEAT.DEPTH', 'PLEAT.CLOTH']);
    expect(found('=2*wa')).toEqual(['waist', 'ease wanted']);
    expect(found('=dep')).toEqual(['PLEAT.DEPTH']);
    expect(found('=bust')).toContain('full bust');
    expect(found('=Siz')).toContain('Size chart');
  });
  it('is silent outside formulas, in strings and after a figure', () => {
    expect(found('PL')).toEqual([]);
    expect(found('="PL')).toEqual([]);
    expect(found('=2 c')).toEqual([]);
  });
  it('puts the exact function first and takes it with its bracket', () => {
    const completion = complete('=EASE', 5, words)!;
    expect(completion.choices.map((each) => each.text)).toEqual(['EASE', 'ease wanted', 'EASE.PERCENT']);
    expect(take('=EASE', completion, completion.choices[0]!)).toEqual({ text: '=EASE(', caret: 6 });
  });
  it('adds no second bracket', () => {
    const completion = complete('=EA(B2)', 3, words)!;
    expect(take('=EA(B2)', completion, completion.choices[0]!).text).toBe('=EASE(B2)');
  });
  it('writes a sheet as a formula has it', () => {
    const completion = complete('=Size', 5, words)!;
    const sheet = completion.choices.find((each) => each.kind === 'sheet')!;
    expect(take('=Size', completion, sheet).text).toBe("='Size chart'!");
  });
  it('leaves a whole name to Enter', () => {
    expect(complete('=waist', 6, words)).toBeNull();
    expect(complete('=B2', 3, { ...words, names: ['b2b ease'] })?.whole ?? true).toBe(true);
  });
});

describe('signature', () => {
  it('follows the caret through the arguments', () => {
    expect(signatureAt('=PLEAT.DEPTH(B2, 3', 18, words.cards)).toMatchObject({ arg: 1, card: { name: 'PLEAT.DEPTH' } });
    expect(signatureAt('=pleat.depth(B2, EASE(', 22, words.cards)).toMatchObject({ arg: 0, card: { name: 'EASE' } });
    expect(signatureAt('=EASE(1,2,3,4', 13, words.cards)).toMatchObject({ arg: 1 });
    expect(signatureAt('=B2+', 4, words.cards)).toBeNull();
  });
});

describe('where a reference can be pointed at', () => {
  const slot = (marked: string, last = null as null | { start: number; end: number }) => {
    const caret = marked.indexOf('|');
    return slotAt(marked.replace('|', ''), caret, caret, words.names, last);
  };
  it.each(['=|', '=B2+|', '=B2 + |', '=EASE(|', '=EASE(B2, |', '=EASE(B2;|)', '=-|', '=(|', '=B2>=|'])('%s', (text) => {
    expect(slot(text)).not.toBeNull();
  });
  it.each(['|', 'B2+|', '=B2|', '=5|', '=waist|', '="a+|"', '=EASE(B2)|', '=3%|', '=+|B2', '=2 cm|'])('not %s', (text) => {
    expect(slot(text)).toBeNull();
  });
  it('gives way to the next one pointed at, as long as nothing else is typed', () => {
    expect(slot('=B2+C4|', { start: 4, end: 6 })).toEqual({ start: 4, end: 6 });
    expect(slot('=B2|+C4', { start: 4, end: 6 })).toBeNull();
  });
});
