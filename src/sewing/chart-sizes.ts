/** The sizes of a chart in their order, and the scale that they make. */
import { sizeKey, sizeNumber, stepsBelowZero } from './chart-labels.ts';
import type { SizeLabel } from './chart-labels.ts';

/** Step from 0 down to 00 where the chart does not show one (common practice: sizes of this kind go by twos). */
const USUAL_STEP = 2;

export class ChartSizes {
  /** Smallest first where they are numbers, otherwise as the chart has them. */
  readonly labels: readonly SizeLabel[];
  /** `order[place]` is where the size stands in the labels given. */
  readonly order: readonly number[];
  /** Whether every size is a number, so that a number between two of them means something. */
  readonly numbered: boolean;
  /** Each size on the scale: its number, or 1, 2, 3 … where sizes are not numbers. Rises. */
  readonly scale: readonly number[];
  private readonly byKey: ReadonlyMap<string, number>;
  /** What was asked for before. */
  private readonly found = new Map<number | string, number | undefined>();

  constructor(labels: readonly SizeLabel[]) {
    const numbers = numbersOf(labels);
    this.numbered = numbers !== null;
    this.order = labels.map((_, i) => i);
    if (numbers !== null) this.order = [...this.order].sort((a, b) => (numbers[a] as number) - (numbers[b] as number));
    this.labels = this.order.map((i) => labels[i] as SizeLabel);
    this.scale = this.order.map((i, place) => numbers?.[i] ?? place + 1);
    this.byKey = new Map(this.labels.map((label, place) => [label.key, place]));
  }

  get count(): number {
    return this.labels.length;
  }

  label(place: number): SizeLabel {
    return this.labels[place] as SizeLabel;
  }

  at(place: number): number {
    return this.scale[place] as number;
  }

  /** The place of the size called so, or undefined. */
  called(size: number | string): number | undefined {
    let place = this.found.get(size);
    if (place === undefined && !this.found.has(size)) {
      place = this.byKey.get(sizeKey(String(size)));
      this.found.set(size, place);
    }
    return place;
  }

  /** The place in `scale` of the last size that is not above `number`; −1 below the first. */
  notAbove(number: number): number {
    let [low, high] = [0, this.count];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (this.at(middle) <= number) low = middle + 1;
      else high = middle;
    }
    return low - 1;
  }
}

/** What number each label is; null when one of them is none, or two are the same. */
function numbersOf(labels: readonly SizeLabel[]): number[] | null {
  const plain = labels.map((label) => sizeNumber(label.text));
  const rising = plain.filter((n) => n !== null).sort((a, b) => a - b);
  const step = rising.includes(0) ? (rising[rising.indexOf(0) + 1] ?? USUAL_STEP) : USUAL_STEP;
  const numbers: number[] = [];
  for (const [i, label] of labels.entries()) {
    const below = stepsBelowZero(label.text);
    const number = below === null ? plain[i] : -below * step;
    if (number === null || number === undefined) return null;
    numbers.push(number);
  }
  return new Set(numbers).size === numbers.length ? numbers : null;
}
