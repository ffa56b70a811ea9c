import fc from 'fast-check';
import { expect, test } from 'vitest';
import { show, showSpan, UNITS, type Quantity } from '../../../src/quantities/index.ts';
import type { Result } from '../../../src/reckoning/protocol.ts';
import { cellAt, EditRefused } from '../../../src/workbook/index.ts';
import { formulaLike } from '../formula/texts.ts';
import { Desk } from '../reckon/desk.ts';
import { HOSTILE_TEXTS, NO_FIGURE, TIME, fuzz, typed } from './cases.ts';

const BASE = { A1: '74 cm', A2: '2 1/4 in', A3: '12', A4: '10 %', A5: 'text', B1: '=A1/4', B2: '=A1+A2', B3: '=SUM(A1:A2)', B4: '86-90 cm' } as const;
const fresh = (): Desk => new Desk(BASE, ['Hem', { A1: '5 cm' }]);
let desk = fresh();
const FUNCTIONS = desk.engine.catalogue().map(({ name }) => name);

const argument: fc.Arbitrary<string> = fc.oneof(
  fc.constantFrom('A1', 'A2', 'A3', 'A4', 'A5', 'B4', 'C9', 'A1:A5', 'A1:B5', 'A:A', 'Hem!A1', 'Nowhere!A1', 'D1', 'TRUE', '""', '"bust"', '1/0', '{1,2;3,4}', ''),
  fc.double({ noNaN: true, noDefaultInfinity: true }).map(String), fc.constantFrom('-1', '0', '0 cm', '-5 cm', '1e308', '1e308 cm', '1e-300 in', '360 °', '-100%', '9'.repeat(400)),
);
const call = fc.tuple(fc.constantFrom(...FUNCTIONS), fc.array(argument, { maxLength: 7 })).map(([name, given]) => `${name}(${given.join(',')})`);
const formula: fc.Arbitrary<string> = fc.oneof(
  { weight: 5, arbitrary: call.map((text) => `=${text}`) },
  { weight: 2, arbitrary: fc.tuple(call, fc.constantFrom('+', '-', '*', '/', '^', '&', '<', '='), call).map((parts) => `=${parts.join('')}`) },
  { weight: 3, arbitrary: formulaLike },
  { weight: 1, arbitrary: typed.map((text) => `=${text}`) },
  { weight: 1, arbitrary: fc.constantFrom(...HOSTILE_TEXTS).map((text) => `=${text}`) },
);

const counted = (value: number, unit: Quantity['unit']): Quantity => ({ value, unit, dimension: UNITS[unit].dimension });

const FAR = /[A-Za-z]\$?\d{5,}|\d{5,}:|:\$?\d{5,}/;

function sound(result: Result): void {
  switch (result.kind) {
    case 'error': expect(result.sentence.length).toBeGreaterThan(5); break;
    case 'quantity':
      expect(Number.isFinite(result.value), 'a figure').toBe(true);
      expect(show(counted(result.value, result.unit), { system: 'both', inchStep: 8 }).main).not.toMatch(NO_FIGURE);
      break;
    case 'span':
      expect(showSpan({ low: counted(result.low, result.unit), high: counted(result.high, result.unit) }, { system: 'cm', inchStep: 8 }).main).not.toMatch(NO_FIGURE);
      break;
    default: break;
  }
}

test('formulas', () => {
  const before = Object.fromEntries(Object.keys(BASE).map((cell) => [cell, desk.show(cell)]));
  let turn = 0;
  fuzz('formulas', formula, (text) => {
    // A cell near the last row makes every whole column of its sheet as long: the library holds each place of it, and memory ends.
    if (FAR.test(text)) return;
    try {
      desk.type({ D1: text });
    } catch (error) {
      if (error instanceof EditRefused) return;
      throw error;
    }
    const { sheet, row, col } = desk.cell('D1');
    expect(cellAt(desk.book.sheets[0]!, row, col)?.raw, 'it stays as it was typed').toBe(text);
    const result = desk.result('D1');
    sound(result);
    if (++turn % 4 === 0) desk.engine.working({ sheet, row, col });
    // What it must not touch.
    if (turn % 50 === 0) for (const [cell, said] of Object.entries(before)) expect(desk.show(cell), cell).toBe(said);
    // No case shall be slow by what many before it left behind.
    if (turn % 500 === 0) desk = fresh();
  });
}, TIME);
