/** From millimetres to the picture's units, and room for labels along a line. */

/**
 * A coordinate to a hundredth, so that the same figures give the same text.
 * @throws RangeError for what is no finite number: nothing of the kind may get into a picture.
 */
export function place(x: number): number {
  if (!Number.isFinite(x)) throw new RangeError('A picture was given a figure that is not finite.');
  return Math.round(x * 100) / 100 + 0;
}

/** Picture units for one millimetre, the same both ways, such that `width` × `height` (mm) fill the room. A side of 0 asks for no room. */
export function fit(width: number, height: number, roomWidth: number, roomHeight: number): number {
  const scale = Math.min(width > 0 ? roomWidth / width : Infinity, height > 0 ? roomHeight / height : Infinity);
  const fitting = Math.min(Number.isFinite(scale) ? scale : 1, beside.most);
  beside.least = Math.min(beside.least, fitting);
  return fitting;
}

/** The largest scale allowed just now, and the least that was taken. */
let beside: { readonly most: number; least: number } = { most: Infinity, least: Infinity };

/** Draws with no scale above `most`; tells the least scale that was taken. */
export function atMostScale<T>(most: number, draw: () => T): { readonly drawn: T; readonly least: number } {
  const before = beside;
  const now = beside = { most, least: Infinity };
  try {
    return { drawn: draw(), least: now.least };
  } finally {
    beside = before;
  }
}

export interface Wish {
  /** Where its middle would best be. */
  readonly at: number;
  readonly size: number;
}

/**
 * Starts of labels along a line, in the order of their wishes, each as near its
 * wish as the others let it and none before `low`. They end before `high` when
 * there is room for all.
 */
export function spread(wishes: readonly Wish[], low: number, high: number, gap: number): number[] {
  const order = wishes.map((_, i) => i).sort((a, b) => wishes[a]!.at - wishes[b]!.at);
  const starts = new Array<number>(wishes.length);
  let from = low;
  for (const i of order) {
    starts[i] = Math.max(from, wishes[i]!.at - wishes[i]!.size / 2);
    from = starts[i] + wishes[i]!.size + gap;
  }
  let to = Math.max(high, low + wishes.reduce((sum, { size }) => sum + size + gap, -gap));
  for (const i of order.reverse()) {
    starts[i] = Math.min(starts[i]!, to - wishes[i]!.size);
    to = starts[i] - gap;
  }
  return starts;
}
