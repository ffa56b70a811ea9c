import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inBase, isFault } from '../../../src/quantities/index.ts';
import { functionNamed, readChart, work } from '../../../src/sewing/index.ts';
import type { Outcome, SewingFunction, Value , SizeChart} from '../../../src/sewing/index.ts';
import { LETTERS, MISSES, chart } from './charts.ts';
import { evaluate, Told } from './formula.ts';

const names = { misses: chart(...MISSES), letters: chart(...LETTERS) };
const value = (formula: string): unknown => {
  const got = evaluate(formula, names);
  return typeof got === 'object' && 'dimension' in got ? got.value : got;
};
const told = (formula: string): string => {
  try {
    evaluate(formula, names);
  } catch (error) {
    if (error instanceof Told) return error.message;
    throw error;
  }
  throw new Error(`${formula} has a result`);
};
const fn = (name: string): SewingFunction => functionNamed(name) as SewingFunction;
const cautions = (outcome: Outcome): string[] => ('sentence' in outcome ? [] : outcome.cautions.map((caution) => caution.sentence));
const inches = (n: number): Value => inBase(n * 25.4, 'in');

describe('SIZE.AT on a chart of figures', () => {
  it.each([
    ['37 in', 'nearest', 10], ['36.7 in', 'nearest', 8], ['37 in', 'not under', 10], ['37 in', 'not over', 8], ['36 3/4 in', 'nearest', 10],
    ['31 7/16 in', 'nearest', 0], ['31 1/8 in', 'nearest', '00'], ['37 1/4 in', 'not under', 10], ['37 1/4 in', 'not over', 10],
    ['39 1/2 in', 'nearest', 12], ['30 7/8 in', 'nearest', '00'], ['20 in', 'not under', '00'], ['60 in', 'not over', 12],
  ])('bust %s, %s', (girth, rule, size) => {
    expect(value(`=SIZE.AT(misses, "bust", ${girth}, "${rule}")`)).toBe(size);
  });

  it('gives a number for a label that is a number, and a text for one that is text', () => {
    expect(evaluate('=SIZE.AT(misses, "bust", 37 in)', names)).toEqual({ value: 10, dimension: 'number', unit: '' });
    expect(evaluate('=SIZE.AT(misses, "bust", 31 in)', names)).toBe('00');
  });

  it('refuses what lies too far outside, and names the end of the chart', () => {
    expect(told('=SIZE.AT(misses, "bust", 39 5/8 in)')).toBe('The size chart’s largest bust girth is 38 ¾ in (size 12), and 39 ⅝ in is too far above it for any size of this chart.');
    expect(told('=SIZE.AT(misses, "bust", 30 3/4 in)')).toBe('The size chart’s smallest bust girth is 31 ⅛ in (size 00), and 30 ¾ in is too far below it for any size of this chart.');
    expect(told('=SIZE.AT(misses, "bust", 40 in, "not under")')).toBe('Every size of the chart is under 40 in: its largest bust girth is 38 ¾ in (size 12).');
    expect(told('=SIZE.AT(misses, "bust", 20 in, "not over")')).toBe('Every size of the chart is over 20 in: its smallest bust girth is 31 ⅛ in (size 00).');
  });

  it('warns just outside the chart, and far outside where a rule still finds a size', () => {
    expect(cautions(work(fn('SIZE.AT'), [names.misses, 'bust', inches(39.4)]))).toEqual(['The measure lies outside the size chart, by no more than half a step: the largest size is given, with less ease than meant. The chart’s figure for it is this.']);
    expect(cautions(work(fn('SIZE.AT'), [names.misses, 'bust', inches(31)]))[0]).toMatch(/smallest size is given, with more ease/);
    expect(cautions(work(fn('SIZE.AT'), [names.misses, 'bust', inches(20), 'not under']))[0]).toMatch(/far from it/);
    expect(cautions(work(fn('SIZE.AT'), [names.misses, 'bust', inches(31), 'not under']))).toEqual([]);
    expect(cautions(work(fn('SIZE.AT'), [names.misses, 'bust', inches(60), 'not over']))[0]).toMatch(/far from it/);
    expect(cautions(work(fn('SIZE.AT'), [names.misses, 'bust', inches(37)]))).toEqual([]);
  });

  it('skips sizes without a figure, and takes the larger of equal ones', () => {
    const gaps = chart(' | 8 | 10 | 12 | 14', 'bust | 90 cm |  | 98 cm | 98 cm', 'hip | 97 cm | 99 cm | 101 cm | 103 cm');
    const at = (girth: number, rule: string): unknown => {
      const outcome = work(fn('SIZE.AT'), [gaps, 'bust', inBase(girth, 'cm'), rule]);
      return isFault(outcome) || typeof outcome.value === 'string' || 'low' in outcome.value ? outcome : outcome.value.value;
    };
    expect([at(930, 'nearest'), at(940, 'nearest'), at(980, 'nearest'), at(980, 'not under'), at(980, 'not over')]).toEqual([8, 14, 14, 12, 14]);
  });

  it('has only one size to offer where there is one figure', () => {
    const single = chart(' | 8 | 10', 'bust | 90 cm | ', 'hip | 97 cm | 99 cm');
    expect(work(fn('SIZE.AT'), [single, 'bust', inBase(900, 'cm')])).toMatchObject({ value: { value: 8 }, cautions: [] });
    expect(isFault(work(fn('SIZE.AT'), [single, 'bust', inBase(901, 'cm')]))).toBe(true);
  });
});

describe('SIZE.AT on a chart of ranges', () => {
  it.each([['82 cm', 'S'], ['89.9 cm', 'S'], ['90 cm', 'M'], ['106.9 cm', 'L']])('bust %s', (girth, size) => {
    for (const rule of ['nearest', 'not under', 'not over']) expect(value(`=SIZE.AT(letters, "bust", ${girth}, "${rule}")`)).toBe(size);
  });

  it('shares a gap half and half, and says so', () => {
    expect(value('=SIZE.AT(letters, "waist", 82.9 cm)')).toBe('M');
    expect(value('=SIZE.AT(letters, "waist", 83 cm)')).toBe('L');
    expect(cautions(work(fn('SIZE.AT'), [names.letters, 'waist', inBase(830, 'cm')]))[0]).toMatch(/gap between two ranges/);
    expect(cautions(work(fn('SIZE.AT'), [names.letters, 'waist', inBase(840, 'cm')]))).toEqual([]);
  });

  it('shares an overlap half and half, and says so', () => {
    const sheet = chart('size | bust', 'S | 80–92 cm', 'M | 90–100 cm');
    expect(work(fn('SIZE.AT'), [sheet, 'bust', inBase(909, 'cm')])).toMatchObject({ value: 'S' });
    expect(work(fn('SIZE.AT'), [sheet, 'bust', inBase(910, 'cm')])).toMatchObject({ value: 'M' });
    expect(cautions(work(fn('SIZE.AT'), [sheet, 'bust', inBase(910, 'cm')]))[0]).toMatch(/Two ranges/);
  });

  it('refuses what lies outside', () => {
    expect(told('=SIZE.AT(letters, "bust", 81.9 cm)')).toBe('The size chart’s bust starts at 82 cm (size S), and 81.9 cm is below it.');
    expect(told('=SIZE.AT(letters, "bust", 107 cm)')).toBe('The size chart’s bust goes up to, but does not include, 107 cm (size L), and 107 cm is not below it.');
  });
});

describe('SIZE.BETWEEN', () => {
  it.each([
    ['misses', 'straight waist', '31 in', 10 + 2 * (0.5 / 1.75)], ['misses', 'bust', '37 1/4 in', 10], ['misses', 'bust', '31 7/16 in', -1],
    ['letters', 'bust', '82 cm', 0.5], ['letters', 'bust', '86 cm', 1], ['letters', 'bust', '90 cm', 1.5], ['letters', 'bust', '94 cm', 2],
    ['letters', 'waist', '83 cm', 2.5], ['letters', 'hip', '98 cm', 1.5], ['letters', 'hip', '102 cm', 2],
  ])('%s, %s %s', (name, measure, girth, place) => {
    expect(value(`=SIZE.BETWEEN(${name}, "${measure}", ${girth})`)).toBeCloseTo(place, 12);
  });

  it('counts 000 two steps below 0, by the step that the chart has there', () => {
    const fours = chart(" | '000 | '00 | 0 | 4 | 8", 'bust | 76 cm | 78 cm | 80 cm | 84 cm | 88 cm');
    expect(work(fn('SIZE.BETWEEN'), [fours, 'bust', inBase(760, 'cm')])).toMatchObject({ value: { value: -8 } });
    expect(work(fn('SIZE.MEASURE'), [fours, 'bust', inBase(-6, '')])).toMatchObject({ value: { value: 770 } });
    expect(work(fn('SIZE.MEASURE'), [fours, 'bust', '000'])).toMatchObject({ value: { value: 760 } });
  });

  it('counts sizes by order where numbers have ranges', () => {
    const ranges = chart('size | bust_cm | bust_from_cm | bust_to_cm', '104 | 104 cm | 102 cm | 107 cm', '110 | 110 cm | 107 cm | 113 cm');
    expect(work(fn('SIZE.BETWEEN'), [ranges, 'bust', inBase(1040, 'cm')])).toMatchObject({ value: { value: 1 } });
    expect(work(fn('SIZE.MEASURE'), [ranges, 'bust', inBase(107, '')])).toMatchObject({ value: { value: 1070 } });
  });

  it('refuses what has no one place', () => {
    const falls = chart(' | 8 | 10 | 12', 'rise | 30 cm | 29 cm | 31 cm');
    expect(work(fn('SIZE.BETWEEN'), [falls, 'rise', inBase(295, 'cm')])).toEqual({ sentence: 'In the size chart, rise does not rise from each size to the next, so a measure has no one place between sizes: SIZE.AT gives the size.' });
    expect(work(fn('SIZE.AT'), [falls, 'rise', inBase(304, 'cm')])).toMatchObject({ value: { value: 8 } });
    expect(told('=SIZE.BETWEEN(misses, "bust", 39 in)')).toBe('39 in lies outside the size chart, whose largest bust girth is 38 ¾ in (size 12).');
    expect(told('=SIZE.BETWEEN(letters, "bust", 120 cm)')).toMatch(/not below it/);
    const down = chart('size | bust', 'L | 98–106 cm', 'M | 90–98 cm');
    expect(isFault(work(fn('SIZE.BETWEEN'), [down, 'bust', inBase(950, 'cm')]))).toBe(true);
  });

  it('reckons across a size without a figure, and says so', () => {
    const gaps = chart(' | 8 | 10 | 12', 'bust | 90 cm |  | 98 cm', 'hip | 97 cm | 99 cm | 101 cm');
    const outcome = work(fn('SIZE.BETWEEN'), [gaps, 'bust', inBase(940, 'cm')]);
    expect(outcome).toMatchObject({ value: { value: 10 } });
    expect(cautions(outcome)).toEqual(['The size chart has no bust for size 10, which lies between: the position is reckoned across it.']);
  });
});

describe('SIZE.MEASURE and SIZE.STEP', () => {
  it.each([
    ['=SIZE.MEASURE(misses, "bust", 10)', 37.25 * 25.4], ['=SIZE.MEASURE(misses, "bust", "10")', 37.25 * 25.4], ['=SIZE.MEASURE(misses, "bust", "size 10")', 37.25 * 25.4],
    ['=SIZE.MEASURE(misses, "bust", 11)', 38 * 25.4], ['=SIZE.MEASURE(misses, "bust", "00")', 31.125 * 25.4], ['=SIZE.MEASURE(misses, "bust", -1)', 31.4375 * 25.4],
    ['=SIZE.MEASURE(letters, "bust", "m")', 940], ['=SIZE.MEASURE(letters, "bust", 2)', 940], ['=SIZE.MEASURE(letters, "bust", 2.5)', 980], ['=SIZE.MEASURE(letters, "hip", 2.5)', 1062.5],
    ['=SIZE.STEP(misses, "bust", 10)', 1.5 * 25.4], ['=SIZE.STEP(misses, "bust", 11)', 1.5 * 25.4], ['=SIZE.STEP(letters, "bust", "S")', 80],
    ['=BLEND.GAP(misses, "bust", 10, 12, 2)', 0.375 * 25.4], ['=BLEND.GAP(misses, "bust", 12, 10)', 0.375 * 25.4],
  ])('%s', (formula, mm) => {
    expect(value(formula)).toBeCloseTo(mm, 9);
  });

  it.each([
    ['=SIZE.MEASURE(misses, "bust", 14)', 'Size 14 lies outside the size chart, which goes from 00 to 12.'],
    ['=SIZE.MEASURE(misses, "bust", "1X")', 'The size chart has no size 1X; it has 00, 0, 2, 4, 6, 8, 10 and 12.'],
    ['=SIZE.MEASURE(letters, "bust", "XL")', 'The size chart has no size XL; it has S, M and L.'],
    ['=SIZE.MEASURE(letters, "bust", 10)', 'The size chart has no size 10: write a label (S, M and L), or a count from 1 to 3.'],
    ['=SIZE.STEP(misses, "bust", 12)', 'Size 12 is the last of the size chart: there is no next one.'],
    ['=SIZE.STEP(letters, "bust", "L")', 'Size L is the last of the size chart: there is no next one.'],
  ])('%s is refused', (formula, sentence) => {
    expect(told(formula)).toBe(sentence);
  });

  it('names the size and the measure of a missing figure', () => {
    const gaps = chart(' | 8 | 10 | 12', 'bust | 90 cm | n/a | 98 cm', 'hip | 97 cm | 99 cm | 101 cm');
    for (const size of [10, 9, 11]) {
      expect(work(fn('SIZE.MEASURE'), [gaps, 'bust', inBase(size, '')])).toEqual({ sentence: 'The size chart has no bust for size 10.' });
    }
  });

  it('says in the working that a figure stands for a range', () => {
    const outcome = work(fn('SIZE.MEASURE'), [names.letters, 'bust', 'M'], true);
    expect(isFault(outcome) ? [] : outcome.steps.map((step) => step.words)).toEqual(['the bust of size M, which stands for its range']);
  });
});

/** Charts of up to twelve numbered sizes with figures in whole millimetres, in any order. */
const anyFigures = fc.array(fc.integer({ min: 600, max: 900 }), { minLength: 1, maxLength: 12 });
function figureChart(figures: readonly number[]): SizeChart {
  const read = readChart([[null, ...figures.map((_, i) => inBase(2 * i, ''))], ['bust', ...figures.map((mm) => inBase(mm, 'cm'))]]);
  if (isFault(read)) throw new Error(read.sentence);
  return read;
}

function rangeChart(edges: readonly (readonly [number, number])[]): SizeChart {
  const read = readChart([[null, 'bust'], ...edges.map(([low, high], i) => [`${String.fromCharCode(65 + i)}XL`, { low: inBase(low, 'cm'), high: inBase(high, 'cm') }])]);
  if (isFault(read)) throw new Error(read.sentence);
  return read;
}
/** Rising ranges that touch or leave gaps. */
const anyRanges = fc.array(fc.tuple(fc.integer({ min: 0, max: 30 }), fc.integer({ min: 10, max: 90 })), { minLength: 1, maxLength: 9 }).map((steps) => {
  let at = 700;
  return steps.map(([gap, width]) => {
    const low = at + gap;
    at = low + width;
    return [low, at] as const;
  });
});

describe('against a plain search through the chart', () => {
  const run = (name: string, ...values: Value[]): unknown => {
    const outcome = work(fn(name), values);
    return isFault(outcome) ? null : typeof outcome.value === 'string' ? outcome.value : 'low' in outcome.value ? outcome.value : outcome.value.value;
  };

  it('SIZE.AT by all rules', () => {
    fc.assert(
      fc.property(anyFigures, fc.integer({ min: 1190, max: 1810 }), (figures, doubled) => {
        const girth = doubled / 2;
        const sheet = figureChart(figures);
        const all = [...figures.entries()];
        const least = Math.min(...figures.map((mm) => Math.abs(mm - girth)));
        const sorted = [...new Set(figures)].sort((a, b) => a - b);
        const [first = 0, second = first, last = 0, beforeLast = last] = [sorted[0], sorted[1], sorted.at(-1), sorted.at(-2)];
        const tooFar = girth > last + (last - beforeLast) / 2 || girth < first - (second - first) / 2;
        const nearest = all.filter(([, mm]) => Math.abs(mm - girth) === least).map(([i]) => 2 * i);
        expect(run('SIZE.AT', sheet, 'bust', inBase(girth, 'cm'))).toBe(tooFar ? null : Math.max(...nearest));
        const notUnder = all.filter(([, mm]) => mm >= girth).map(([i]) => 2 * i);
        expect(run('SIZE.AT', sheet, 'bust', inBase(girth, 'cm'), 'not under')).toBe(notUnder.length > 0 ? Math.min(...notUnder) : null);
        const notOver = all.filter(([, mm]) => mm <= girth).map(([i]) => 2 * i);
        expect(run('SIZE.AT', sheet, 'bust', inBase(girth, 'cm'), 'not over')).toBe(notOver.length > 0 ? Math.max(...notOver) : null);
      }),
      { seed: 3, numRuns: 1000 },
    );
  });

  it('SIZE.AT and SIZE.BETWEEN on ranges: rounding half up agrees', () => {
    let inside = 0;
    fc.assert(
      fc.property(anyRanges, fc.integer({ min: 1380, max: 2600 }), (edges, doubled) => {
        const girth = doubled / 2;
        const sheet = rangeChart(edges);
        const size = run('SIZE.AT', sheet, 'bust', inBase(girth, 'cm'));
        const place = run('SIZE.BETWEEN', sheet, 'bust', inBase(girth, 'cm'));
        const holding = edges.findIndex(([low, high]) => low <= girth && girth < high);
        if (holding >= 0) expect(size).toBe(sheet.sizes[holding]);
        expect(size === null).toBe(girth < (edges[0]?.[0] ?? 0) || girth >= (edges.at(-1)?.[1] ?? 0));
        expect(place === null).toBe(size === null);
        if (typeof place !== 'number') return;
        inside += 1;
        expect(sheet.sizes[Math.floor(place + 0.5) - 1]).toBe(size);
        expect(run('SIZE.MEASURE', sheet, 'bust', inBase(place, ''))).toBeCloseTo(girth, 9);
      }),
      { seed: 4, numRuns: 1000 },
    );
    expect(inside).toBeGreaterThan(100);
  });

  it('SIZE.MEASURE of SIZE.BETWEEN is the girth again, and both rise', () => {
    fc.assert(
      fc.property(anyFigures, fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true }), (figures, a, b) => {
        const rising = [...new Set(figures)].sort((x, y) => x - y);
        const sheet = figureChart(rising);
        const [low = 0, high = 0] = [rising[0], rising.at(-1)];
        const [one, other] = [low + a * (high - low), low + b * (high - low)];
        const [first, second] = [one, other].map((girth) => run('SIZE.BETWEEN', sheet, 'bust', inBase(girth, 'cm')) as number) as [number, number];
        expect(run('SIZE.MEASURE', sheet, 'bust', inBase(first, ''))).toBeCloseTo(one, 5);
        if (one < other) expect(first).toBeLessThanOrEqual(second);
      }),
      { seed: 5, numRuns: 500 },
    );
  });
});

it('looks sizes up quickly', () => {
  const figures = Array.from({ length: 60 }, (_, i) => 600 + 20 * i);
  const sheet = figureChart(figures);
  const once = (): void => void work(fn('SIZE.MEASURE'), [sheet, 'bust', inBase(51, '')]);
  for (let i = 0; i < 1000; i += 1) once();
  const start = performance.now();
  for (let i = 0; i < 10_000; i += 1) once();
  // A plain search by rows and columns takes 2 s for as many; this takes some hundredths.
  expect(performance.now() - start).toBeLessThan(1000);
});
