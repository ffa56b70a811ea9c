/**
 * What cells give, as far as sorting and matching ask. The workbook holds no
 * results; whoever asks brings them along, as a function of the place.
 */
import type { Dimension } from '../quantities/index.ts';
import { letterRank, numberRank, sizeKey } from './sizes.ts';

/** `value` in base units (mm, mm², degrees, the bare number); of a span its low end. */
export type PlainValue =
  | { readonly kind: 'empty' }
  | { readonly kind: 'number'; readonly value: number; readonly dimension: Dimension }
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'truth'; readonly truth: boolean }
  | { readonly kind: 'error' };

/** Row and column count from 0. */
export type ValueAt = (row: number, col: number) => PlainValue;

type Order = (a: PlainValue, b: PlainValue) => number;

/** Button 2 before Button 10, and without regard to case. */
const collator = new Intl.Collator(undefined, { numeric: true });

const KINDS: readonly PlainValue['kind'][] = ['number', 'text', 'truth', 'error', 'empty'];
const DIMENSIONS: readonly Dimension[] = ['number', 'length', 'area', 'angle'];

const usual: Order = (a, b) => {
  if (a.kind !== b.kind) return KINDS.indexOf(a.kind) - KINDS.indexOf(b.kind);
  if (a.kind === 'number' && b.kind === 'number') return DIMENSIONS.indexOf(a.dimension) - DIMENSIONS.indexOf(b.dimension) || a.value - b.value;
  if (a.kind === 'text' && b.kind === 'text') return collator.compare(a.text.trim(), b.text.trim());
  return a.kind === 'truth' && b.kind === 'truth' ? Number(a.truth) - Number(b.truth) : 0;
};

/** As it would stand in a size chart; `null` for what cannot be a size. */
function asLabel(value: PlainValue): string | null {
  if (value.kind === 'text') return value.text;
  return value.kind === 'number' && value.dimension === 'number' ? String(value.value) : null;
}

const byRank = (rank: (value: PlainValue) => number | undefined): Order => (a, b) => {
  const [first, second] = [rank(a), rank(b)];
  return first === undefined || second === undefined ? usual(a, b) : first - second;
};

/**
 * How the values of one column follow each other. Sizes are sizes only when
 * all of the column are, and when it matters: plain numbers are numbers.
 *
 * @param charts the sizes of the workbook's charts, each list in its own order
 */
export function orderOf(values: readonly PlainValue[], charts: readonly (readonly string[])[]): Order {
  const labels = values.filter(({ kind }) => kind !== 'empty').map(asLabel);
  if (labels.length === 0 || labels.every((label) => label === null || numberRank(label) === Number(label))) return usual;
  if (labels.some((label) => label === null)) return usual;
  const keys = new Set(labels.map((label) => sizeKey(label ?? '')));
  // A chart of numbers is in the order of its numbers, whatever the order of its columns.
  const chart = charts.find((sizes) => {
    const known = new Set(sizes.map(sizeKey));
    return [...keys].every((key) => known.has(key)) && sizes.some((size) => numberRank(size) === null);
  });
  if (chart) {
    const ranks = new Map(chart.map((size, at) => [sizeKey(size), at]));
    return byRank((value) => ranks.get(sizeKey(asLabel(value) ?? '')));
  }
  const rank = (label: string): number | null => letterRank(label) ?? numberRank(label);
  if (labels.every((label) => label !== null && rank(label) !== null)) {
    // Numbers before letters, where a column has both.
    return byRank((value) => {
      const label = asLabel(value) ?? '';
      const letters = letterRank(label);
      return letters === null ? numberRank(label) ?? undefined : 100_000 + letters;
    });
  }
  return usual;
}
