/** What must hold for every quantity, tried on random ones. A failing seed is printed by fast-check. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { add, amountIn, compare, divide, down, exactAmount, exactText, inBase, isFault, multiply, nearest, negate, quantity, readQuantity, show, showSpan, showText, subtract, UNIT_CODES, UNITS, up } from '../../../src/quantities/index.ts';
import type { Fault, Quantity, ShowAs, UnitCode } from '../../../src/quantities/index.ts';

const RUNS = { numRuns: 2_000 };
const LENGTHS = ['mm', 'cm', 'm', 'in', 'ft', 'yd'] as const;

const anyUnit = fc.constantFrom(...UNIT_CODES);
const lengthUnit = fc.constantFrom(...LENGTHS);
/** As people measure: fractions, decimals, and results of sums with all the digits of a double. */
const anyAmount = fc.oneof(
  fc.integer({ min: -20_000, max: 20_000 }).map((n) => n / 64),
  fc.integer({ min: -1_000_000, max: 1_000_000 }).map((n) => n / 1000),
  fc.double({ min: -5000, max: 5000, noNaN: true }),
  fc.double({ min: -1, max: 1, noNaN: true }),
);
const anyQuantity = fc.tuple(anyAmount, anyUnit).map(([amount, unit]) => quantity(amount, unit));
const anyLength = fc.tuple(anyAmount, lengthUnit).map(([amount, unit]) => quantity(amount, unit));
const anyShowAs: fc.Arbitrary<ShowAs> = fc.record({
  system: fc.constantFrom('own', 'cm', 'in', 'both'),
  inchStep: fc.constantFrom(8, 16, 32),
  decimalMark: fc.constantFrom('.', ','),
  plain: fc.boolean(),
  decimals: fc.option(fc.integer({ min: 0, max: 6 }), { nil: undefined }),
  unit: fc.option(anyUnit, { nil: undefined }),
}, { requiredKeys: ['system', 'inchStep'] });

function sure(x: Quantity | Fault): Quantity {
  if (isFault(x)) throw new Error(x.sentence);
  return x;
}

function read(text: string): Quantity {
  const reading = readQuantity(text);
  if (reading.kind !== 'quantity') throw new Error(`${JSON.stringify(text)} was read as ${JSON.stringify(reading)}`);
  return reading.quantity;
}

/** The finest that the shown unit shows, in base units, written down apart from the code under test. */
function shownStep(text: string, as: ShowAs): number {
  if (/[a-z²°%]$/.test(text) && !/\d[.,]\d/.test(text) && / (in|ft|yd)$/.test(text) && as.decimals === undefined) return 25.4 / as.inchStep;
  const unit = UNIT_CODES.find((code) => code !== '' && (text.endsWith(` ${UNITS[code].sign}`) || text.endsWith(` ${code}`) || (code === 'deg' && text.endsWith('°')))) ?? '';
  const usual: Record<UnitCode, number> = { '': 3, '%': 1, mm: 1, cm: 1, m: 2, in: NaN, ft: NaN, yd: NaN, mm2: 0, cm2: 0, m2: 2, in2: 1, ft2: 2, yd2: 2, deg: 1, rad: 3 };
  return UNITS[unit].size / 10 ** (as.decimals ?? usual[unit]);
}

describe('showing and reading', () => {
  it('reads what is shown back to the shown step, in all units, systems and steps', () => {
    fc.assert(fc.property(anyQuantity, anyShowAs, (q, as) => {
      const text = showText(q, as);
      const back = read(text);
      expect(back.dimension).toBe(q.dimension);
      const step = shownStep(text, as);
      expect(Math.abs(back.value - q.value), `${text} ${step}`).toBeLessThanOrEqual(step * 0.5 * (1 + 1e-6) + Math.abs(q.value) * 1e-15);
      // Shown again the same way, what was read is the same text: nothing creeps.
      expect(showText(inBase(back.value, q.unit), as)).toBe(text);
    }), RUNS);
  });

  it('says exact exactly when the shown text has the whole value', () => {
    fc.assert(fc.property(anyQuantity, anyShowAs, (q, as) => {
      const text = showText(q, as);
      const off = Math.abs(read(text).value - q.value);
      const step = shownStep(text, as);
      if (show(q, as).exact) expect(off).toBeLessThanOrEqual(step * 2e-9 + Math.abs(q.value) * 2e-15);
      else expect(off).toBeGreaterThan(step * 1e-10);
    }), RUNS);
  });

  it('never changes the quantity', () => {
    fc.assert(fc.property(anyQuantity, anyShowAs, (q, as) => {
      const before = { ...q };
      show(Object.freeze(q), Object.freeze(as));
      showText(q, as);
      exactText(q);
      expect(q).toStrictEqual(before);
    }), RUNS);
  });

  it('shows −x as the mirror image of x', () => {
    fc.assert(fc.property(anyQuantity, anyShowAs, (q, as) => {
      const bare = (x: Quantity): string => show(x, as).main.replace(/^[−-]/, '');
      expect(bare(negate(q))).toBe(bare(q));
    }), RUNS);
  });

  it('reads shown spans back', () => {
    fc.assert(fc.property(anyAmount, anyAmount, anyUnit, fc.constantFrom<ShowAs['inchStep']>(8, 16, 32), fc.boolean(), (a, b, unit, inchStep, plain) => {
      const as: ShowAs = { system: 'own', inchStep, plain };
      const [low, high] = [quantity(Math.min(a, b), unit), quantity(Math.max(a, b), unit)];
      const text = showSpan({ low, high }, as).main;
      const reading = readQuantity(text);
      expect(reading.kind, text).toBe('span');
      if (reading.kind !== 'span') return;
      expect(show(reading.span.low, { ...as, unit }).main).toBe(show(low, as).main);
      expect(show(reading.span.high, { ...as, unit }).main).toBe(show(high, as).main);
    }), RUNS);
  });
});

describe('exact text', () => {
  const digits = fc.integer({ min: 0, max: 999_999_999 });
  const typed = fc.oneof(
    fc.tuple(digits, fc.integer({ min: 0, max: 999_999 }), anyUnit).map(([whole, part, unit]) => `${whole}.${String(part).padStart(6, '0')} ${UNITS[unit].sign}`.trim()),
    fc.tuple(fc.integer({ min: 0, max: 9999 }), fc.constantFrom(2, 4, 8, 16, 32, 64), fc.nat(63), anyUnit).map(([whole, bottom, top, unit]) => `${whole} ${top % bottom}/${bottom} ${UNITS[unit].sign}`.trim()),
    fc.tuple(fc.nat(99), fc.nat(35), fc.nat(63), fc.constantFrom('yd', 'ft')).map(([whole, inches, part, unit]) => `${whole} ${unit} ${inches} ${part}/64 in`),
    fc.tuple(fc.nat(99), fc.constantFrom('⅓', '⅔'), lengthUnit).map(([whole, third, unit]) => `${whole}${third} ${unit}`),
  );

  it('gives back, to the last bit, every value that came from reading', () => {
    fc.assert(fc.property(typed, fc.boolean(), (text, minus) => {
      const q = read(minus ? `-${text}` : text);
      const back = read(exactText(q));
      expect(back.value).toBe(q.value);
      expect(back.unit).toBe(q.unit);
      expect(read(`${exactAmount(q)} ${UNITS[q.unit].sign}`).value).toBe(q.value);
      expect(exactAmount(q).replace(/^-?[0.]*|\./g, '').length).toBeLessThanOrEqual(17);
    }), RUNS);
  });

  it('is as short as what was typed', () => {
    fc.assert(fc.property(digits, fc.integer({ min: 1, max: 999_999 }), anyUnit, (whole, part, unit) => {
      const figure = `${whole}.${String(part).padStart(6, '0')}`.replace(/0+$/, '');
      expect(exactAmount(read(`${figure} ${UNITS[unit].sign}`))).toBe(figure);
    }), RUNS);
  });

  it('gives back every double that a sum may come to', () => {
    fc.assert(fc.property(fc.double({ min: -1e14, max: 1e14, noNaN: true }), anyUnit, (value, unit) => {
      fc.pre(Math.abs(value / UNITS[unit].size) < 1e15);
      const q = inBase(value, unit);
      expect(read(exactText(q)).value).toBe(q.value);
    }), RUNS);
  });

  it('agrees with quantity: an amount read is an amount given', () => {
    fc.assert(fc.property(anyAmount, anyUnit, (amount, unit) => {
      const q = quantity(amount, unit);
      expect(Math.abs(quantity(amountIn(q, unit), unit).value - q.value)).toBeLessThanOrEqual(Math.abs(q.value) * 4e-16);
      fc.pre(!String(amount).includes('e'));
      expect(read(`${amount} ${UNITS[unit].sign}`.trim()).value).toBe(q.value);
    }), RUNS);
  });
});

describe('arithmetic', () => {
  it('adds in any order and takes back what was added', () => {
    fc.assert(fc.property(anyLength, anyLength, (a, b) => {
      expect(sure(add(a, b)).value).toBe(sure(add(b, a)).value);
      expect(sure(add(a, b)).unit).toBe(a.unit);
      expect(Math.abs(sure(subtract(sure(add(a, b)), b)).value - a.value)).toBeLessThanOrEqual(1e-14 * (Math.abs(a.value) + Math.abs(b.value)) * 4);
      expect(sure(subtract(a, b)).value).toBe(negate(sure(subtract(b, a))).value);
    }), RUNS);
  });

  it('scales: k times every length is k times their sum, and k² times their area', () => {
    fc.assert(fc.property(anyLength, anyLength, fc.double({ min: 0.01, max: 100, noNaN: true }), (a, b, k) => {
      const times = (q: Quantity, f: number): Quantity => sure(multiply(q, quantity(f, '')));
      const near = (x: Quantity, y: Quantity, size: number): void => {
        expect(x.dimension).toBe(y.dimension);
        expect(x.unit).toBe(y.unit);
        expect(Math.abs(x.value - y.value)).toBeLessThanOrEqual(1e-13 * size + 1e-300);
      };
      near(sure(add(times(a, k), times(b, k))), times(sure(add(a, b)), k), k * (Math.abs(a.value) + Math.abs(b.value)));
      near(sure(multiply(times(a, k), times(b, k))), times(sure(multiply(a, b)), k * k), k * k * Math.abs(a.value * b.value));
    }), RUNS);
  });

  it('divides what was multiplied, with the dimension of the first', () => {
    fc.assert(fc.property(anyLength, anyLength, (a, b) => {
      fc.pre(Math.abs(b.value) > 1e-100);
      const back = sure(divide(sure(multiply(a, b)), b));
      expect(back.dimension).toBe('length');
      expect(back.unit).toBe(a.unit);
      expect(Math.abs(back.value - a.value)).toBeLessThanOrEqual(1e-14 * Math.abs(a.value) + 1e-200);
    }), RUNS);
  });

  it('compares as subtraction does, in both directions', () => {
    fc.assert(fc.property(anyLength, anyLength, (a, b) => {
      const order = compare(a, b);
      expect(compare(b, a)).toBe(order === 0 ? 0 : -(order as number));
      const difference = sure(subtract(a, b)).value;
      if (order === 0) expect(Math.abs(difference)).toBeLessThan(1e-6);
      else expect(Math.sign(difference)).toBe(order);
    }), RUNS);
  });

  it('gives a right dimension or a sentence for any two quantities, never NaN or Infinity', () => {
    fc.assert(fc.property(anyQuantity, anyQuantity, (a, b) => {
      for (const sum of [add, subtract, multiply, divide, nearest, up, down]) {
        const result = sum(a, b);
        if (isFault(result)) expect(result.sentence).toMatch(/^[^]{10,300}\.$/);
        else expect(Number.isFinite(result.value) && UNITS[result.unit].dimension === result.dimension).toBe(true);
      }
    }), RUNS);
  });
});

describe('rounding', () => {
  const anyStep = fc.oneof(
    fc.constantFrom(8, 16, 32, 4, 2, 1).map((n) => quantity(1 / n, 'in')),
    fc.constantFrom(0.1, 0.25, 0.5, 1, 5).map((n) => quantity(n, 'cm')),
    fc.constantFrom(0.1, 1, 5).map((n) => quantity(n, 'mm')),
    fc.constantFrom(1 / 8, 1 / 4).map((n) => quantity(n, 'yd')),
  );

  it('goes to a mark: down is not above, up is not below, nearest is the nearer of the two', () => {
    fc.assert(fc.property(anyLength, anyStep, (q, step) => {
      const [below, near, above] = [sure(down(q, step)), sure(nearest(q, step)), sure(up(q, step))];
      const slack = step.value * 1e-8 + Math.abs(q.value) * 1e-15;
      expect(below.value).toBeLessThanOrEqual(q.value + slack);
      expect(above.value).toBeGreaterThanOrEqual(q.value - slack);
      expect(Math.abs(near.value - q.value)).toBeLessThanOrEqual(step.value / 2 + slack);
      expect([below.value, above.value]).toContain(near.value);
      expect(above.value - below.value).toBeLessThanOrEqual(step.value + slack);
      for (const marked of [below, near, above]) {
        const steps = marked.value / step.value;
        expect(Math.abs(steps - Math.round(steps))).toBeLessThan(1e-6);
      }
    }), RUNS);
  });

  it('leaves what is on a mark where it is, to the last bit', () => {
    fc.assert(fc.property(anyLength, anyStep, (q, step) => {
      const marked = sure(nearest(q, step));
      for (const round of [nearest, up, down]) expect(sure(round(marked, step)).value).toBe(marked.value);
    }), RUNS);
  });

  it('sends every tie in inches to the greater', () => {
    fc.assert(fc.property(fc.integer({ min: -100_000, max: 100_000 }), fc.constantFrom(2, 4, 8, 16, 32), (n, part) => {
      const step = quantity(1 / part, 'in');
      const tie = quantity((n + 0.5) / part, 'in');
      expect(sure(nearest(tie, step)).value).toBe(quantity((n + 1) / part, 'in').value);
    }), RUNS);
  });
});

describe('reading anything at all', () => {
  const character = fc.constantFrom(...'0123456789  .,,-–−/⁄½⅜⅓"\'″°%²^+eEmcinftydMto\u00a0\u2009xsq×'.split(''));
  const anyText = fc.oneof(
    fc.array(character, { maxLength: 24 }).map((list) => list.join('')),
    fc.array(fc.constantFrom('1', '12', '2 1/4', '1/0', ' ', ' ', 'in', 'cm', 'yd', "'", '"', '-', '–', ' to ', '%', 'sq cm', '½', '1,234', '.5', '-'), { maxLength: 9 }).map((list) => list.join('')),
    fc.string({ unit: 'binary', maxLength: 30 }),
  );

  it('never throws, and never gives NaN, Infinity or a negative zero', () => {
    fc.assert(fc.property(anyText, (text) => {
      const reading = readQuantity(text);
      const values = reading.kind === 'quantity' ? [reading.quantity] : reading.kind === 'span' ? [reading.span.low, reading.span.high] : [];
      for (const q of values) {
        expect(Number.isFinite(q.value) && !Object.is(q.value, -0)).toBe(true);
        expect(UNITS[q.unit].dimension).toBe(q.dimension);
        expect(show(q, { system: 'both', inchStep: 8 }).main).not.toMatch(/NaN|Infinity|undefined/);
      }
      if (reading.kind === 'span') expect(reading.span.low.value).toBeLessThanOrEqual(reading.span.high.value);
      if (reading.kind === 'refused') expect(reading.sentence).toMatch(/^[A-Z“][^]{20,260}[.)]$/);
    }), { numRuns: 20_000 });
  });

  it('takes a time that grows no faster than the text', () => {
    const pieces = ['1 ', '1/2 ', '1-', '1.', '1,', '12', '1 yd ', '- ', '½', 'to ', "1'", '1 1/2 in ', '1\u00a0', '/', '1/', '-1/2', 'sq ', '1 sq ', "'", '1 to '];
    const start = performance.now();
    for (const piece of pieces) {
      for (let i = 0; i < 50; i += 1) readQuantity(piece.repeat(Math.ceil(400 / piece.length)).slice(0, 400));
      readQuantity(piece.repeat(500_000));
    }
    // 20 patterns, 50 times each at the greatest length, about 0.1 ms a time; a blow-up would take hours.
    expect(performance.now() - start).toBeLessThan(3_000);
  });
});
