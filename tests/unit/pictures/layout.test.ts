/** The parts that keep labels apart. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hatch, sector, torn } from '../../../src/pictures/draw.ts';
import { lanes, OUTSIDE } from '../../../src/pictures/lanes.ts';
import { fit, place, spread } from '../../../src/pictures/scale.ts';
import { shortened, textWidth, wrapped } from '../../../src/pictures/text.ts';
import { points } from './sound.ts';

const px = fc.double({ min: 12, max: 308, noNaN: true });
const label = fc.constantFrom('5.0 cm', '1 15/16 in', '12.5 cm (4 15/16 in) deep', 'a', 'overlap 4.0 cm');

describe('a scale', () => {
  it('fills the narrower side and asks nothing for a side of 0', () => {
    expect(fit(100, 50, 200, 200)).toBe(2);
    expect(fit(50, 100, 200, 200)).toBe(2);
    expect(fit(0, 100, 200, 200)).toBe(2);
    expect(fit(0, 0, 200, 200)).toBe(1);
  });

  it('lets nothing into a picture that is no number', () => {
    expect(() => place(NaN)).toThrow(RangeError);
    expect(() => place(Infinity)).toThrow(RangeError);
    expect(Object.is(place(-0.001), 0)).toBe(true);
  });
});

describe('labels along a line', () => {
  it('keep their order and their distance, and end in the room when there is enough', () => {
    fc.assert(fc.property(fc.array(fc.record({ at: fc.double({ min: -50, max: 300, noNaN: true }), size: fc.double({ min: 5, max: 40, noNaN: true }) }), { minLength: 1, maxLength: 12 }), (wishes) => {
      const starts = spread(wishes, 0, 250, 3);
      const order = wishes.map((_, i) => i).sort((a, b) => wishes[a]!.at - wishes[b]!.at);
      order.forEach((i, n) => {
        expect(starts[i]).toBeGreaterThanOrEqual(-1e-9);
        const next = order[n + 1];
        if (next !== undefined) expect(starts[next]! - starts[i]! - wishes[i]!.size).toBeGreaterThanOrEqual(3 - 1e-9);
      });
      const all = wishes.reduce((sum, { size }) => sum + size + 3, -3);
      if (all <= 250) expect(Math.max(...starts.map((start, i) => start + wishes[i]!.size))).toBeLessThanOrEqual(250 + 1e-9);
    }));
  });

  it('stay where they wish when nothing is in the way', () => {
    expect(spread([{ at: 100, size: 10 }, { at: 20, size: 10 }], 0, 200, 3)).toEqual([95, 15]);
  });
});

describe('lanes of dimensions', () => {
  it('hold every dimension once, within the plate, with nothing meeting in a lane', () => {
    fc.assert(fc.property(fc.array(fc.record({ from: px, to: px, text: label }), { maxLength: 10 }), (dims) => {
      const rows = lanes(dims, 12, 308);
      expect(rows.flat()).toHaveLength(dims.length);
      for (const row of rows) {
        const taken = row.map((dim) => {
          const over = Math.abs(dim.to - dim.from) < 18 ? OUTSIDE : 0;
          const end = dim.textFrom + textWidth(dim.text);
          expect(dim.textFrom).toBeGreaterThanOrEqual(12);
          expect(end).toBeLessThanOrEqual(308 + 1e-9);
          return [Math.min(dim.textFrom, dim.from - over, dim.to - over), Math.max(end, dim.from + over, dim.to + over)] as const;
        }).sort((a, b) => a[0] - b[0]);
        taken.forEach(([, end], i) => expect(taken[i + 1]?.[0] ?? Infinity).toBeGreaterThan(end));
      }
    }));
  });

  it('put what lies apart into one lane', () => {
    expect(lanes([{ from: 20, to: 80, text: '5.0 cm' }, { from: 200, to: 260, text: '5.0 cm' }], 12, 308)).toHaveLength(1);
    expect(lanes([{ from: 20, to: 80, text: '5.0 cm' }, { from: 60, to: 260, text: '5.0 cm' }], 12, 308)).toHaveLength(2);
  });
});

describe('texts', () => {
  it('are wrapped to a width and lose no word that fits', () => {
    fc.assert(fc.property(fc.array(fc.constantFrom('pleat', 'deep', '12.5', 'cm', 'Überlänge', 'a'), { minLength: 1, maxLength: 30 }), (words) => {
      const lines = wrapped(words.join(' '), 100);
      expect(lines.join(' ')).toBe(words.join(' '));
      for (const each of lines) expect(textWidth(each)).toBeLessThanOrEqual(100);
    }));
  });

  it('are cut with three dots where one word is too wide', () => {
    expect(shortened('a level with a very long name', 80)).toMatch(/^a level.*…$/);
    expect(textWidth(shortened('x'.repeat(100), 80))).toBeLessThanOrEqual(80);
    expect(shortened('bust', 80)).toBe('bust');
  });
});

describe('paths', () => {
  it('hatch inside their box alone', () => {
    fc.assert(fc.property(fc.double({ min: 0.1, max: 200, noNaN: true }), fc.double({ min: 0.1, max: 80, noNaN: true }), (width, height) => {
      for (const [x, y] of points(hatch(10, 20, width, height))) {
        expect(x).toBeGreaterThanOrEqual(10 - 0.01);
        expect(x).toBeLessThanOrEqual(10 + width + 0.01);
        expect(y).toBeGreaterThanOrEqual(20 - 0.01);
        expect(y).toBeLessThanOrEqual(20 + height + 0.01);
      }
    }));
  });

  it('tear from end to end', () => {
    const edge = torn(50, 10, 70);
    expect(edge[0]).toEqual([50, 10]);
    expect(edge.at(-1)).toEqual([50, 70]);
  });

  it('close a whole ring as two circles and a part of it as one outline', () => {
    expect(sector([0, 0], 10, 20, 0, 2 * Math.PI).match(/Z/g)).toHaveLength(2);
    expect(sector([0, 0], 10, 20, 0, Math.PI).match(/Z/g)).toHaveLength(1);
  });
});
