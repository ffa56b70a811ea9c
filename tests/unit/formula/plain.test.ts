import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { respell } from '../../../src/formula/address.ts';
import { isPlainlySpelt, plainReferences, plainlySpelt } from '../../../src/formula/plain.ts';
import { tokenize } from '../../../src/formula/index.ts';
import { formulaLike } from './texts.ts';

const byTokens = (formula: string) => tokenize(formula).flatMap(({ start, text, reference }) => (reference ? [{ start, end: start + text.length, reference }] : []));

/** Made of plain parts only, so that most of them are plain. */
const plainly = fc.array(fc.oneof(
  fc.constantFrom('A1', '$B$2', 'AA10', 'C$3', '$D4', 'A1:B2', '$A$1:$C9', 'SUM(', 'IF(', ')', '+', '-', '*', '/', ' ', ', ', ';', '<=', '"A1"', '"a"', '5', '2.5', 'cm', 'in', 'waist', 'hip_1', 'SIZE.AT(', 'TRUE', 'ALL1000000', 'AMM1', 'A0', 'A01', ':', 'm2', 'M2', '1/4', ' ft ', 'LOG10('),
), { maxLength: 14 }).map((parts) => `=${parts.join('')}`);

describe('plain references', () => {
  it.each([
    ['=B2*2', ['B2']],
    ['=SUM(B1:Z1)+$A$1', ['B1:Z1', '$A$1']],
    ['=IF(A1>B1,"C1 or ""D1",A2)', null],
    ['=IF(A1>B1,"C1",A2)', ['A1', 'B1', 'A2']],
    ['=C3+2 1/4 in+1 cm', ['C3']],
    ['=EASE(waist, B2)', ['B2']],
    ['=12', []],
    ['=b2', null], ['=B02', null], ['=Fit!B2', null], ['=B:B', null], ['=3:5', null], ['=B2 : C3', null], ['=5A1', null], ['=5 M2', null], ['=A1(', null], ['=LOG10(A1)', null], ['=B2:C3:D4', null],
  ])('%s', (formula, expected) => {
    expect(plainReferences(formula)?.map(({ start, end }) => formula.slice(start, end)) ?? null).toEqual(expected);
  });

  it('are those that the tokenizer finds', () => {
    let plain = 0;
    fc.assert(fc.property(fc.oneof(formulaLike, plainly), (formula) => {
      const found = plainReferences(formula);
      if (found === undefined) return;
      plain++;
      expect(found).toEqual(byTokens(formula));
    }), { numRuns: 30_000 });
    expect(plain).toBeGreaterThan(1_000);
  });

  it('are written as any other spelling is kept', () => {
    fc.assert(fc.property(plainly, fc.nat(900), fc.nat(90_000), (formula, col, row) => {
      for (const { start, end, reference: { from, to } } of byTokens(formula)) {
        const text = formula.slice(start, end);
        if (!isPlainlySpelt(text)) continue;
        const moved = { ...from, col, row };
        expect(plainlySpelt(from, to)).toBe(text);
        expect(plainlySpelt(moved, to)).toBe(respell(text, moved, to));
      }
    }), { numRuns: 3_000 });
  });
});
