import fc from 'fast-check';
import { expect, test } from 'vitest';
import { exactText, readQuantity, show, showSpan, showText, UNIT_CODES, type Quantity, type ShowAs } from '../../../src/quantities/index.ts';
import { NO_FIGURE, TIME, fuzz, typed } from './cases.ts';

const as: fc.Arbitrary<ShowAs> = fc.record({
  system: fc.constantFrom('own', 'cm', 'in', 'both'), inchStep: fc.constantFrom(8, 16, 32), decimalMark: fc.constantFrom('.', ','), plain: fc.boolean(),
  decimals: fc.option(fc.nat(10), { nil: undefined }), unit: fc.option(fc.constantFrom(...UNIT_CODES), { nil: undefined }),
}, { requiredKeys: ['system', 'inchStep'] });

function sound(q: Quantity): void {
  expect(Number.isFinite(q.value)).toBe(true);
  const again = readQuantity(exactText(q));
  expect(again.kind === 'quantity' && again.quantity.value, `${exactText(q)} reads back`).toBe(q.value);
}

test('typed figures', () => {
  fuzz('quantities', fc.tuple(typed, as), ([text, how]) => {
    const reading = readQuantity(text, how.decimalMark ? { decimalMark: how.decimalMark } as never : {});
    switch (reading.kind) {
      case 'quantity': {
        sound(reading.quantity);
        const { main, also = '' } = show(reading.quantity, how);
        for (const said of [main, also, showText(reading.quantity, how)]) expect(said).not.toMatch(NO_FIGURE);
        break;
      }
      case 'span': {
        sound(reading.span.low);
        sound(reading.span.high);
        const { main, also = '' } = showSpan(reading.span, how);
        for (const said of [main, also]) expect(said).not.toMatch(NO_FIGURE);
        break;
      }
      case 'refused': expect(reading.sentence.length).toBeGreaterThan(10); break;
      case 'text': break;
    }
  });
}, TIME);
