/**
 * 1986 measured women in three size charts: the sizes that are recommended at
 * bust, waist and hip are those that a search of every combination finds, under
 * the cost as it is stated in words (`COST_IN_WORDS`), which is written down
 * here a second time. Women: the Anthropometric Survey of U.S. Army Personnel,
 * 2012; charts: the standards named in `data/size-levels.ts`.
 */
import { describe, expect, it } from 'vitest';
import { inBase, isFault, readQuantity } from '../../src/quantities/index.ts';
import { adviseSizes, CellBlock, functionNamed, readChart, STYLES, work } from '../../src/sewing/index.ts';
import type { SewingFunction, SizeChart, Style, Value } from '../../src/sewing/index.ts';
import { JIS_A, LETTER_SIZES, MISSES_1995 } from './data/size-levels.ts';
import { WOMEN } from './data/survey-women.ts';

const LEVELS = ['bust', 'waist', 'hip'] as const;
type Three = readonly [number, number, number];

/** Whole millionths of a millimetre: every sum of them is exact. */
const micro = (mm: number): number => Math.round(mm * 1e6);

interface Body {
  readonly label: string;
  /** From and to by level, in millionths of a millimetre; the same twice where the chart has one figure. */
  readonly low: Three;
  readonly high: Three;
}

function cellOf(raw: string): Value {
  if (raw === '') return null;
  const reading = readQuantity(raw);
  return reading.kind === 'quantity' ? reading.quantity : raw.replace(/^'/, '');
}

function read(rows: readonly (readonly string[])[]): SizeChart {
  const chart = readChart(rows.map((row) => row.map(cellOf)));
  if (isFault(chart)) throw new Error(chart.sentence);
  return chart;
}

const IN = 25.4;

/** The charts once more, as bare figures, with two sizes more at each end where the chart's last step says what they are. */
const letters = LETTER_SIZES.slice(1).map((row): Body => {
  const cm = row.slice(1).map((cell) => micro(Number.parseFloat(cell) * 10));
  return { label: row[0], low: [cm[0]!, cm[2]!, cm[4]!], high: [cm[1]!, cm[3]!, cm[5]!] };
});
const jis = JIS_A.slice(1).filter((row) => row[2] !== '').map((row): Body => {
  const cm = row.slice(1).map((cell) => micro(Number.parseFloat(cell) * 10)) as unknown as Three;
  return { label: row[0], low: cm, high: cm };
});
const inches = (text: string): number => {
  const [whole = 0, above = 0, below = 1] = text.split(/[^\d]+/).filter((part) => part !== '').map(Number);
  return micro((whole + above / below) * IN);
};
const misses = MISSES_1995[0].slice(1).map((label, i): Body => {
  const at = [1, 2, 3].map((row) => inches(MISSES_1995[row]![i + 1]!)) as unknown as Three;
  return { label, low: at, high: at };
});

const three = (one: (level: number) => number): Three => [one(0), one(1), one(2)];

/** Two more sizes at either end: ranges go on by their width, figures by the last step. */
function continued(sizes: readonly Body[], names: readonly [string, string, string, string]): readonly Body[] {
  const on = (end: Body, inner: Body, steps: number, label: string): Body => {
    const step = (level: number): number => (end.low[level] === end.high[level] ? end.low[level]! - inner.low[level]! : Math.sign(end.low[0] - inner.low[0]) * (end.high[level]! - end.low[level]!));
    return { label, low: three((level) => end.low[level]! + steps * step(level)), high: three((level) => end.high[level]! + steps * step(level)) };
  };
  const [first, second, penultimate, last] = [sizes[0]!, sizes[1]!, sizes.at(-2)!, sizes.at(-1)!];
  return [on(first, second, 2, names[0]), on(first, second, 1, names[1]), ...sizes, on(last, penultimate, 1, names[2]), on(last, penultimate, 2, names[3])];
}

const CHARTS: readonly { readonly name: string; readonly chart: SizeChart; readonly sizes: readonly Body[] }[] = [
  { name: 'letter sizes in the manner of EN 13402-3', chart: read(LETTER_SIZES), sizes: continued(letters, ['XXS − 2', 'XXS − 1', '3XL + 1', '3XL + 2']) },
  // Its outermost sizes have no waist, so that there is no step to go on by.
  { name: 'JIS L 4005, A type', chart: read(JIS_A), sizes: jis },
  // Two steps below size 2 would be number −2, which is no size’s name.
  { name: 'ASTM D5585-95, from memory', chart: read(MISSES_1995), sizes: continued(misses, ['2 − 2', '0', '22', '24']) },
];

const SMALL: Readonly<Record<Style, number>> = { fitted: 2, 'semi-fitted': 2, 'full skirt': 2, knit: 1 };
/** In fortieths, so that a tenth of half the way between two whole numbers is whole too, with half the weight. */
const WEIGHT: Readonly<Record<Style, Three>> = { fitted: [40, 40, 40], 'semi-fitted': [40, 20, 40], 'full skirt': [40, 40, 0], knit: [40, 40, 40] };

/** Ease from and to by level, in millionths of a millimetre. */
type Wanted = Pick<Body, 'low' | 'high'>;

/** Every combination of sizes at three levels. */
function search(girths: Three, sizes: readonly Body[], style: Style, change: number, apart: number, ease?: Wanted): readonly string[] {
  const off = LEVELS.map((_, level) => sizes.map(({ low, high }) => {
    const girth = micro(girths[level]!);
    const [least, most] = ease === undefined ? [girth, girth] : [girth + ease.low[level]!, girth + ease.high[level]!];
    const misfit = least > high[level]! ? SMALL[style] * (least - high[level]!) : Math.max(0, low[level]! - most);
    // Twice the way to the middle of the range, which counts a tenth.
    const middle = ease === undefined ? 0 : Math.abs(low[level]! + high[level]! - least - most);
    return WEIGHT[style][level]! * misfit + (WEIGHT[style][level]! / 20) * middle;
  }));
  let best: readonly [cost: number, changes: number, ...at: readonly number[]] = [Infinity, 0];
  for (let b = 0; b < sizes.length; b += 1) {
    for (let w = Math.max(0, b - apart); w <= Math.min(sizes.length - 1, b + apart); w += 1) {
      for (let h = Math.max(0, w - apart); h <= Math.min(sizes.length - 1, w + apart); h += 1) {
        const changes = Math.abs(b - w) + Math.abs(w - h);
        const cost = off[0]![b]! + off[1]![w]! + off[2]![h]! + 40 * micro(change) * changes;
        // Sizes rise from the first loop to the last, so a later one of equals is the larger from the top down.
        if (cost < best[0] || (cost === best[0] && changes <= best[1])) best = [cost, changes, b, w, h];
      }
    }
  }
  return best.slice(2).map((at) => sizes[at as number]!.label);
}

const CHOOSE = functionNamed('SIZE.CHOOSE') as SewingFunction;

describe.each(CHARTS)('1986 women in $name', ({ chart, sizes }) => {
  it.each(STYLES)('%s: every recommendation is that of a search of all combinations', (style) => {
    const preferences = { style, change: 10, apart: 2 };
    const need = [0, 0, 0, 0];
    let outside = 0;
    for (const { bust, waist, hip } of WOMEN) {
      const advice = adviseSizes(chart, [{ name: 'bust', girth: bust }, { name: 'waist', girth: waist }, { name: 'hip', girth: hip }], preferences, String);
      if (isFault(advice)) throw new Error(advice.sentence);
      const got = advice.levels.map(({ size }) => size.text);
      expect(got).toEqual(search([bust, waist, hip], sizes, style, 10, 2));
      need[new Set(got).size]! += 1;
      if (advice.levels.some(({ size }) => size.beyond !== 0)) outside += 1;
    }
    console.info(`${style}: ${need[1]} women need one size, ${need[2]} two, ${need[3]} three; ${outside} have a size that continues the chart`);
    expect(need[1]! + need[2]! + need[3]!).toBe(1986);
  });

  it.each([[0, 2], [25, 1], [3, 9]])('a change that counts %d mm, at most %d sizes apart: the same', (change, apart) => {
    for (const { bust, waist, hip } of WOMEN.filter((_, i) => i % 10 === 0)) {
      const advice = adviseSizes(chart, [{ name: 'bust', girth: bust }, { name: 'waist', girth: waist }, { name: 'hip', girth: hip }], { style: 'fitted', change, apart }, String);
      if (isFault(advice)) throw new Error(advice.sentence);
      expect(advice.levels.map(({ size }) => size.text)).toEqual(search([bust, waist, hip], sizes, 'fitted', change, apart));
    }
  });

  it('SIZE.CHOOSE gives the same in a sheet', () => {
    for (const { bust, waist, hip } of WOMEN.filter((_, i) => i % 5 === 0)) {
      const measures = new CellBlock([['bust', inBase(bust, 'cm')], ['waist', inBase(waist, 'in')], ['hip', inBase(hip, 'mm')]]);
      const got = LEVELS.map((level) => {
        const outcome = work(CHOOSE, [chart, measures, level]);
        if (isFault(outcome)) throw new Error(outcome.sentence);
        return typeof outcome.value === 'object' && 'value' in outcome.value ? String(outcome.value.value) : outcome.value;
      });
      expect(got).toEqual(search([bust, waist, hip], sizes, 'fitted', 10, 2));
    }
  });
});

describe('1986 women in a chart with finished measures', () => {
  // The body measures of ASTM D5585-95 (from memory) and what an encyclopaedia article on ease has beyond them: 2 1/2, 1 and 3 in.
  const EASE = [2.5, 1, 3];
  const rows = MISSES_1995.slice(1).map((row, level) => [`finished ${row[0]}`, ...row.slice(1).map((cell) => `${inches(cell) / 1e6 + EASE[level]! * IN} mm`)]);
  const chart = read([MISSES_1995[0], ...MISSES_1995.slice(1), ...rows]);
  const garments = misses.map((size): Body => {
    const at = three((level) => size.low[level]! + micro(EASE[level]! * IN));
    return { ...size, low: at, high: at };
  });
  const sizes = continued(garments, ['2 − 2', '0', '22', '24']);
  const wanted: Wanted = { low: three((level) => micro([50, 20, 40][level]!)), high: three((level) => micro([76, 30, 80][level]!)) };

  it.each(STYLES)('%s: every recommendation is that of a search of all combinations', (style) => {
    const need = [0, 0, 0, 0];
    for (const { bust, waist, hip } of WOMEN) {
      const measured = [bust, waist, hip].map((girth, level) => ({ name: LEVELS[level]!, girth, ease: { low: wanted.low[level]! / 1e6, high: wanted.high[level]! / 1e6 } }));
      const advice = adviseSizes(chart, measured, { style, change: 10, apart: 2 }, String);
      if (isFault(advice)) throw new Error(advice.sentence);
      const got = advice.levels.map(({ size }) => size.text);
      expect(got).toEqual(search([bust, waist, hip], sizes, style, 10, 2, wanted));
      need[new Set(got).size]! += 1;
    }
    console.info(`${style}, by finished measures: ${need[1]} women need one size, ${need[2]} two, ${need[3]} three`);
    expect(need[1]! + need[2]! + need[3]!).toBe(1986);
  });
});
