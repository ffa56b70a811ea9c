/** Where the tape goes, for every measure there is; and a measure over time. */
import { expect, test } from 'vitest';
import { MEASURES } from '../../../src/people/index.ts';
import { TAPED, overTime, tapeOnBody, type Picture } from '../../../src/pictures/index.ts';

const numbers = ({ marks }: Picture): number[][] => marks.map((mark) => (mark.kind === 'text' ? [mark.x, mark.y] : [...mark.d.matchAll(/-?\d+(?:\.\d+)?/g)].map(([n]) => Number(n))));

test('every measure has its drawing, and there is none of a measure that is not', () => {
  expect([...TAPED].sort()).toEqual(MEASURES.map(({ key }) => key).sort());
  expect(tapeOnBody('round the fist')).toBe(null);
  expect(tapeOnBody('toString')).toBe(null);
});

test.each(TAPED)('%s: inside the picture, with a tape, and named for those who do not see it', (key) => {
  const picture = tapeOnBody(key)!;
  expect(picture.alt).toContain(key);
  expect(picture.marks.filter((mark) => mark.kind === 'path' && mark.look === 'tape')).toHaveLength(1);
  for (const n of numbers(picture).flat()) {
    expect(n).toBeGreaterThanOrEqual(0);
    expect(n).toBeLessThanOrEqual(picture.height);
  }
});

const moments = (...figures: readonly number[]) => figures.map((mm, index) => ({ day: `20${20 + index}-01-01`, when: `1 Jan 20${20 + index}`, mm }));

test('over time: higher is more, later is further right, days are to scale, and all figures are in its words', () => {
  const picture = overTime({ name: 'Waist', unit: 'cm', moments: moments(740, 760, 750) }, { system: 'own', inchStep: 8 });
  const dots = picture.marks.flatMap((mark) => (mark.kind === 'path' && mark.look === 'dot' ? [/^M([\d.]+) ([\d.]+)/.exec(mark.d)!.slice(1).map(Number)] : []));
  expect(dots).toHaveLength(3);
  const [first, second, third] = dots as [number[], number[], number[]];
  expect(second[1]!).toBeLessThan(third[1]!);
  expect(third[1]!).toBeLessThan(first[1]!);
  // 2020 has 366 days, 2021 has 365.
  expect((second[0]! - first[0]!) / (third[0]! - second[0]!)).toBeCloseTo(366 / 365, 3);
  expect(picture.alt).toBe('Waist over time: 1 Jan 2020 74.0 cm; 1 Jan 2021 76.0 cm; 1 Jan 2022 75.0 cm.');
});

test.each([[[740]], [[740, 740]], [Array.from({ length: 40 }, (_, i) => 700 + i)], [[400, 1800]]])('any number of days: inside the picture, and labels do not run into each other', (figures) => {
  const picture = overTime({ name: 'Waist', unit: 'in', moments: moments(...figures) }, { system: 'both', inchStep: 16 });
  for (const [x, y] of numbers(picture).filter(({ length }) => length === 2)) {
    expect(x).toBeGreaterThanOrEqual(0);
    expect(x).toBeLessThanOrEqual(picture.width);
    expect(y).toBeGreaterThan(8);
    expect(y).toBeLessThanOrEqual(picture.height);
  }
});
