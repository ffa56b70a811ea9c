/**
 * Random formulas as trees, and what they come to by a small evaluator that
 * shares nothing with the engine: a figure is a number of mm, mm² or 1 with the
 * power of the length that it is. Texts of the trees are what the engine gets.
 */
import fc from 'fast-check';

/** 0 a plain number, 1 a length, 2 an area. */
export interface Figure {
  readonly power: number;
  readonly value: number;
}

/** A figure, or an error of whatever kind. */
export type Outcome = Figure | 'error';

export interface Node {
  readonly text: string;
  work(words: Words): Outcome;
}

type Words = ReadonlyMap<string, Outcome>;
type Block = readonly Figure[];

const length = (value: number): Figure => ({ power: 1, value });
const plain = (value: number): Figure => ({ power: 0, value });

/** The cells that the formulas use, as they are typed, and what they are. */
export const TYPED: Readonly<Record<string, string>> = {
  A1: '20 cm', A2: '30 cm', A3: '50 cm', A4: '10 in', A5: '500 mm', B1: '2', B2: '3', B3: '5', B4: '3', B5: '7', C1: '400 cm2', C2: '0.5 m2', C3: '900 cm2',
};
const CELLS: Readonly<Record<string, Figure>> = {
  A1: length(200), A2: length(300), A3: length(500), A4: length(254), A5: length(500), B1: plain(2), B2: plain(3), B3: plain(5), B4: plain(3), B5: plain(7),
  C1: { power: 2, value: 40_000 }, C2: { power: 2, value: 500_000 }, C3: { power: 2, value: 90_000 },
};
const column = (col: string, from: number, to: number): string[] => Array.from({ length: to - from + 1 }, (_, i) => `${col}${from + i}`);
const BLOCKS: Readonly<Record<string, readonly string[]>> = {
  'A1:A3': column('A', 1, 3), 'A1:A5': column('A', 1, 5), 'B1:B3': column('B', 1, 3), 'B1:B5': column('B', 1, 5), 'C1:C3': column('C', 1, 3), 'A1:B1': ['A1', 'B1'],
};
const blockOf = (text: string): Block => BLOCKS[text]!.map((cell) => CELLS[cell]!);
/** Blocks in ascending order. */
const SORTED = ['A1:A3', 'B1:B3'];

const alike = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b));
const onePower = (figures: Block): number | undefined => (figures.every(({ power }) => power === figures[0]!.power) ? figures[0]!.power : undefined);
const made = (power: number, value: number): Outcome => (power < 0 || power > 2 || !Number.isFinite(value) ? 'error' : { power, value });
/** What is left of figures that cancel each other is the noise of doubles, and none. */
function sum(values: readonly number[]): number {
  const all = values.reduce((a, b) => a + b, 0);
  return Math.abs(all) < 1e-12 * Math.max(...values.map(Math.abs)) ? 0 : all;
}
const mean = (values: readonly number[]): number => sum(values) / values.length;
const numbers = (figures: Block): number[] => figures.map(({ value }) => value);

const SIGNS: Readonly<Record<string, (a: Figure, b: Figure) => Outcome>> = {
  '+': (a, b) => (a.power === b.power ? made(a.power, sum([a.value, b.value])) : 'error'),
  '-': (a, b) => (a.power === b.power ? made(a.power, sum([a.value, -b.value])) : 'error'),
  '*': (a, b) => made(a.power + b.power, a.value * b.value),
  '/': (a, b) => (b.value === 0 ? 'error' : made(a.power - b.power, a.value / b.value)),
};

/** Functions of figures of one kind. */
const OF_ONE_KIND: Readonly<Record<string, (values: readonly number[], power: number) => Outcome>> = {
  SUM: (values, power) => made(power, sum(values)),
  AVERAGE: (values, power) => made(power, mean(values)),
  MIN: (values, power) => made(power, Math.min(...values)),
  MAX: (values, power) => made(power, Math.max(...values)),
  MEDIAN: (values, power) => {
    const sorted = [...values].sort((a, b) => a - b);
    return made(power, (sorted[Math.floor((sorted.length - 1) / 2)]! + sorted[Math.ceil((sorted.length - 1) / 2)]!) / 2);
  },
  STDEV: (values, power) => (values.length < 2 ? 'error' : made(power, Math.sqrt(sum(values.map((value) => (value - mean(values)) ** 2)) / (values.length - 1)))),
  VAR: (values, power) => (values.length < 2 ? 'error' : made(2 * power, sum(values.map((value) => (value - mean(values)) ** 2)) / (values.length - 1))),
  MODE: (values, power) => {
    const counted = values.map((value) => ({ value, count: values.filter((other) => alike(other, value)).length }));
    const most = Math.max(...counted.map(({ count }) => count));
    return most < 2 ? 'error' : made(power, Math.min(...counted.filter(({ count }) => count === most).map(({ value }) => value)));
  },
};

/** Functions of two blocks, y and x. */
const OF_PAIRS: Readonly<Record<string, (ys: Block, xs: Block) => Outcome>> = {
  SLOPE: (ys, xs) => line(ys, xs, (m, _, y, x) => made(y - x, m)),
  INTERCEPT: (ys, xs) => line(ys, xs, (_, b, y) => made(y, b)),
  CORREL: (ys, xs) => line(ys, xs, (m) => made(0, m * deviation(xs) / deviation(ys))),
  COVAR: (ys, xs) => line(ys, xs, (m, _, y, x) => made(x + y, m * deviation(xs) ** 2 / xs.length)),
};

const deviation = (figures: Block): number => Math.sqrt(sum(numbers(figures).map((value) => (value - mean(numbers(figures))) ** 2)));

function line(ys: Block, xs: Block, take: (m: number, b: number, y: number, x: number) => Outcome): Outcome {
  const [y, x] = [onePower(ys), onePower(xs)];
  if (ys.length !== xs.length || y === undefined || x === undefined) return 'error';
  const [meanY, meanX] = [mean(numbers(ys)), mean(numbers(xs))];
  const m = sum(xs.map(({ value }, i) => (value - meanX) * (ys[i]!.value - meanY))) / deviation(xs) ** 2;
  return take(m, sum([meanY, -m * meanX]), y, x);
}

const node = (text: string, work: Node['work']): Node => ({ text, work });
/** Works with outcomes that are no error. */
const given = (nodes: readonly Node[], words: Words, work: (...figures: Figure[]) => Outcome): Outcome => {
  const outcomes = nodes.map((each) => each.work(words));
  return outcomes.includes('error') ? 'error' : work(...outcomes as Figure[]);
};

const blockText = fc.constantFrom(...Object.keys(BLOCKS));
const WORDS = ['ease', 'part', 'rest'];

export const { formula } = fc.letrec<{ formula: Node; figure: Node; leaf: Node }>((tie) => {
  const figure = tie('figure');
  const one = (text: (a: string) => string, work: (a: Figure) => Outcome): fc.Arbitrary<Node> => figure.map((a) => node(text(a.text), (words) => given([a], words, work)));
  return {
    formula: figure,
    leaf: fc.oneof(
      { weight: 4, arbitrary: fc.constantFrom(...Object.keys(CELLS)).map((cell) => node(cell, () => CELLS[cell]!)) },
      { weight: 1, arbitrary: fc.constantFrom(['2', plain(2)], ['0.5', plain(0.5)], ['3', plain(3)]).map(([text, value]) => node(text as string, () => value as Figure)) },
      { weight: 2, arbitrary: fc.constantFrom(['5 cm', 50], ['2 1/4 in', 57.15], ['8 mm', 8], ['(1/8 in)', 3.175]).map(([text, mm]) => node(text as string, () => length(mm as number))) },
      // Only within a LET does a word mean anything.
      { weight: 1, arbitrary: fc.constantFrom(...WORDS).map((word) => node(word, (words) => words.get(word) ?? 'error')) },
    ),
    figure: fc.oneof({ maxDepth: 4, withCrossShrink: true },
      { weight: 4, arbitrary: tie('leaf') },
      { weight: 5, arbitrary: fc.tuple(figure, fc.constantFrom(...Object.keys(SIGNS)), figure).map(([a, sign, b]) => node(sign === '/' ? `(${a.text}/(${b.text}))` : `(${a.text}${sign}${b.text})`, (words) => given([a, b], words, SIGNS[sign]!))) },
      { weight: 1, arbitrary: one((a) => `-${a}`, ({ power, value }) => made(power, -value)) },
      { weight: 1, arbitrary: one((a) => `ABS(${a})`, ({ power, value }) => made(power, Math.abs(value))) },
      { weight: 1, arbitrary: one((a) => `SQRT(ABS(${a}))`, ({ power, value }) => (power === 1 ? 'error' : made(power / 2, Math.sqrt(Math.abs(value))))) },
      { weight: 3, arbitrary: fc.tuple(fc.constantFrom(...Object.keys(OF_ONE_KIND)), fc.array(figure, { minLength: 1, maxLength: 3 }), fc.option(blockText)).map(([name, args, block]) => node(
        `${name}(${[...args.map(({ text }) => text), ...(block === null ? [] : [block])].join(';')})`,
        (words) => given(args, words, (...figures) => {
          const all = block === null ? figures : [...figures, ...blockOf(block)];
          const power = onePower(all);
          return power === undefined ? 'error' : OF_ONE_KIND[name]!(numbers(all), power);
        }),
      )) },
      { weight: 2, arbitrary: fc.tuple(fc.constantFrom(...Object.keys(OF_PAIRS)), blockText, blockText).map(([name, ys, xs]) => node(`${name}(${ys};${xs})`, () => OF_PAIRS[name]!(blockOf(ys), blockOf(xs)))) },
      { weight: 1, arbitrary: fc.tuple(figure, blockText, blockText).map(([at, ys, xs]) => node(`FORECAST(${at.text};${ys};${xs})`, (words) => given([at], words, (x) => (
        onePower([x, ...blockOf(xs)]) === undefined ? 'error' : line(blockOf(ys), blockOf(xs), (m, b, power) => made(power, sum([m * x.value, b]))))))) },
      { weight: 1, arbitrary: fc.tuple(blockText, blockText).map(([ys, xs]) => node(`SUM(TREND(${ys};${xs}))`, () => line(blockOf(ys), blockOf(xs), (m, b, power) => made(power, sum(numbers(blockOf(xs)).map((x) => m * x + b)))))) },
      { weight: 1, arbitrary: fc.tuple(blockText, blockText).map(([a, b]) => node(`SUMPRODUCT(${a};${b})`, () => {
        const [left, right] = [blockOf(a), blockOf(b)];
        const products = left.map((each, i) => (right[i] === undefined ? 'error' : SIGNS['*']!(each, right[i])));
        // A1:B1 lies across, and fits only itself.
        if (left.length !== right.length || (a === 'A1:B1') !== (b === 'A1:B1') || products.includes('error')) return 'error';
        const power = onePower(products as Figure[]);
        return power === undefined ? 'error' : made(power, sum(numbers(products as Figure[])));
      })) },
      { weight: 1, arbitrary: fc.tuple(figure, blockText, fc.boolean()).map(([asked, block, up]) => node(`RANK(${asked.text};${block};${up ? 1 : 0})`, (words) => given([asked], words, (figure_) => {
        const values = numbers(blockOf(block));
        if (onePower([figure_, ...blockOf(block)]) === undefined || !values.some((value) => alike(value, figure_.value))) return 'error';
        return made(0, 1 + values.filter((value) => !alike(value, figure_.value) && (up ? value < figure_.value : value > figure_.value)).length);
      }))) },
      { weight: 1, arbitrary: fc.tuple(figure, fc.constantFrom(...SORTED), fc.constantFrom('A1:A3', 'B1:B3', 'C1:C3')).map(([asked, among, give]) => node(`LOOKUP(${asked.text};${among};${give})`, (words) => given([asked], words, (figure_) => {
        if (onePower([figure_, ...blockOf(among)]) === undefined) return 'error';
        const place = numbers(blockOf(among)).findLastIndex((value) => value <= figure_.value || alike(value, figure_.value));
        return place < 0 ? 'error' : blockOf(give)[place]!;
      }))) },
      { weight: 1, arbitrary: fc.tuple(blockText, fc.integer({ min: 1, max: 6 }), fc.boolean()).map(([block, place, least]) => node(`${least ? 'SMALL' : 'LARGE'}(${block};${place})`, () => {
        const power = onePower(blockOf(block));
        const value = numbers(blockOf(block)).sort((a, b) => (least ? a - b : b - a))[place - 1];
        return power === undefined || value === undefined ? 'error' : made(power, value);
      })) },
      { weight: 1, arbitrary: fc.tuple(fc.constantFrom('A1:A5', 'B1:B5'), fc.constantFrom('A1:A5', 'B1:B5'), fc.integer({ min: 1, max: 5 })).map(([block, by, place]) => node(`INDEX(SORTBY(${block};${by};-1);${place};1)`, () => {
        const keys = numbers(blockOf(by));
        return blockOf(block)[keys.map((_, i) => i).sort((a, b) => (alike(keys[a]!, keys[b]!) ? a - b : keys[b]! - keys[a]!))[place - 1]!]!;
      })) },
      { weight: 1, arbitrary: fc.tuple(fc.constantFrom('A1:A5', 'B1:B5'), fc.integer({ min: 0, max: 8 })).map(([block, above]) => node(`AVERAGEIFS(${block};B1:B5;">${above}")`, () => {
        const fits = blockOf(block).filter((_, i) => blockOf('B1:B5')[i]!.value > above);
        return fits.length === 0 ? 'error' : made(fits[0]!.power, mean(numbers(fits)));
      })) },
      { weight: 1, arbitrary: fc.tuple(figure, figure, figure, figure).map((parts) => node(`IF(${parts[0]!.text}>${parts[1]!.text};${parts[2]!.text};${parts[3]!.text})`, (words) => given(parts.slice(0, 2), words, (a, b) => {
        if (a.power !== b.power) return 'error';
        return parts[a.value > b.value && !alike(a.value, b.value) ? 2 : 3]!.work(words);
      }))) },
      { weight: 2, arbitrary: fc.tuple(fc.constantFrom(...WORDS), figure, figure).map(([word, value, rest]) => node(`LET(${word};${value.text};${rest.text})`, (words) => rest.work(new Map([...words, [word, value.work(words)]])))) },
    ),
  };
});
