import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  engineName, engineSheet, foldName, nameFromEngine, nameShapeFault, sameName, sheetFromEngine, sheetInFormula, tokenize,
} from '../../../src/formula/index.ts';
import { newEngine } from './engine.ts';

describe('names', () => {
  it('are one name whatever their case and spaces', () => {
    expect(sameName('Full  Bust', 'full\u00a0bust')).toBe(true);
    expect(engineName('Full  Bust')).toBe(engineName('full bust'));
    expect(engineName('full bust')).toBe('N_full_20_bust');
    expect(engineName('É')).toBe(engineName('e\u0301'));
  });

  it('have an engine name that turns back and that the engine takes', () => {
    const engine = newEngine();
    fc.assert(fc.property(fc.string({ unit: 'binary', minLength: 1, maxLength: 20 }), (name) => {
      const folded = foldName(name);
      fc.pre(folded !== '');
      const encoded = engineName(name);
      expect(nameFromEngine(encoded)).toBe(folded);
      expect(nameFromEngine(encoded.toLowerCase())).toBe(folded);
      expect(engine.isItPossibleToAddNamedExpression(encoded, 1), encoded).toBe(true);
    }), { numRuns: 200 });
    for (const name of ['a1', 'R1C1', 'offset', 'true', 'n', '_', '1', 'TT.QUANTITY']) {
      expect(engine.isItPossibleToAddNamedExpression(engineName(name), 1), name).toBe(true);
      expect(engine.validateFormula(`=${engineName(name)}*2`), name).toBe(true);
    }
  }, 30_000);

  it('are not made from texts that are no engine names', () => {
    for (const text of ['full', 'N_', 'N_a b', 'N_a_20', 'N_a_110000_', 'S1', 'N__61_']) expect(nameFromEngine(text), text).toBeUndefined();
  });

  it('must be words that a formula cannot take for something else', () => {
    for (const name of ['bust', 'full bust', 'taille é', 'bust 2', '_x', 'size.one', 'hip2', 'bust2', 'm', 'in']) expect(nameShapeFault(name), name).toBeNull();
    const refused: readonly (readonly [string, string])[] = [
      ['', 'at least one letter'], ['  ', 'at least one letter'], ['2 bust', 'begins with a letter'], ["Anna's bust", '‘'], ['hip-line', 'take ‘-’ out'],
      ['A1', 'name of a cell'], ['front cm2', 'name of a cell'], ['true', 'meaning of its own'], ['x'.repeat(65), 'at most 64'],
    ];
    for (const [name, part] of refused) expect(nameShapeFault(name), name).toContain(part);
  });

  it('stand in a formula as one token when they may be names', () => {
    fc.assert(fc.property(fc.string({ unit: 'grapheme', maxLength: 12 }), (name) => {
      fc.pre(nameShapeFault(name) === null);
      const text = name.trim();
      expect(tokenize(`=${text}+1`, [name]).map((t) => t.text)).toEqual(['=', text, '+', '1']);
    }), { numRuns: 2000 });
  });
});

describe('sheets', () => {
  it('have an engine name that turns back', () => {
    expect(engineSheet(12)).toBe('S12');
    expect(sheetFromEngine('S12')).toBe(12);
    expect(sheetFromEngine('Skirt')).toBeUndefined();
  });

  it('stand in a formula in quotes when they need them', () => {
    expect(sheetInFormula('Skirt')).toBe('Skirt');
    expect(sheetInFormula('My sheet')).toBe("'My sheet'");
    expect(sheetInFormula("Anna's")).toBe("'Anna''s'");
    expect(sheetInFormula('2024')).toBe("'2024'");
    expect(sheetInFormula('A1')).toBe("'A1'");
    fc.assert(fc.property(fc.string({ unit: 'grapheme', minLength: 1, maxLength: 12 }), (name) => {
      const [, token] = tokenize(`=${sheetInFormula(name)}!A1:B2`);
      expect(token?.reference?.sheet).toBe(name);
    }), { numRuns: 1000 });
  });
});
